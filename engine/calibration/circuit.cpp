// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/circuit.h"

namespace undermark {

namespace {

constexpr double kOpenShare = 0.99;          // of the supply, behind a pull-up
constexpr double kRatiometricMargin = 0.02;  // of the supply, at either end

Signal signalOf(double value) { return Signal::of(value); }

} // namespace

bool readsVoltsBehindPullUp(const Sender& sender)
{
    return sender.circuit == CircuitKind::resistive && (sender.unit == "V" || sender.unit == "mV");
}

std::optional<SignalSpan> possibleSpan(const Sender& sender)
{
    const auto upTo = [](double highest) { return SignalSpan{signalOf(0.0), signalOf(highest)}; };
    const double perVolt = sender.unit == "mV" ? 1000.0 : 1.0;
    const bool volts = sender.unit == "V" || sender.unit == "mV";
    if (sender.circuit == CircuitKind::percent)
        return upTo(100.0);
    if (sender.circuit == CircuitKind::counts || (sender.circuit == CircuitKind::resistive && !volts))
        return std::nullopt;
    if (volts)
        return sender.supplyVolts ? std::optional(upTo(*sender.supplyVolts * perVolt)) : std::nullopt;
    if (sender.circuit == CircuitKind::ratiometric)
        return upTo(sender.unit == "%" ? 100.0 : 1.0);
    return std::nullopt;
}

Sender readIn(const Sender& sender, const std::string& unit)
{
    if (unit == sender.unit)
        return sender;
    Sender read;
    read.unit = unit;
    if (unit == "ohm")
        read.circuit = CircuitKind::resistive;
    else if (unit == "%")
        read.circuit = CircuitKind::percent;
    else if (unit == "counts")
        read.circuit = CircuitKind::counts;
    return read;
}

std::optional<CircuitFault> circuitFault(Signal reading, const Sender& sender)
{
    if (!isFinite(reading))
        return CircuitFault::impossible;
    const bool mayBeNegative = sender.circuit == CircuitKind::direct && !sender.supplyVolts;
    if (reading < signalOf(0.0) && !mayBeNegative)
        return CircuitFault::impossible;
    const std::optional<SignalSpan> span = possibleSpan(sender);
    if (!span)
        return std::nullopt;
    const double share = reading / span->highest;
    if (sender.circuit == CircuitKind::ratiometric) {
        if (share > 1.0 + kRatiometricMargin)
            return CircuitFault::impossible;
        if (share < kRatiometricMargin || share > 1.0 - kRatiometricMargin)
            return share < 0.5 ? CircuitFault::shorted : CircuitFault::open;
        return std::nullopt;
    }
    // A supply is seldom exactly nominal: a tenth above it is still "open".
    if (readsVoltsBehindPullUp(sender) && share >= kOpenShare && share <= 1.1)
        return CircuitFault::open;
    return share > 1.0 ? std::optional(CircuitFault::impossible) : std::nullopt;
}

} // namespace undermark
