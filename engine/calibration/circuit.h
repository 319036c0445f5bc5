// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a sender's circuit can and cannot give.
#pragma once

#include "engine/base/records.h"

#include <array>
#include <optional>

namespace undermark {

enum class CircuitFault {
    open,       // a wire or connector is off: the reading sits at the supply
    shorted,    // the signal wire touches ground
    impossible, // outside anything this circuit can give: another circuit or unit
};

struct SignalSpan {
    Signal lowest;
    Signal highest;
};

// True where the readings are volts behind a pull-up and not ohms.
bool readsVoltsBehindPullUp(const Sender& sender);

// Readings that this circuit can give, ends included: 0 to the supply for volts,
// 0 to 100 for percent, 0 to 1 (or 0 to 100, unit "%") for a share of the
// supply, 0 upwards for ohms and counts. Nothing where there is no upper end.
std::optional<SignalSpan> possibleSpan(const Sender& sender);

// The units in which a meter shows a sender.
inline constexpr std::array kMeterUnits{"V", "ohm", "%", "mA", "counts"};
// The sender as a meter shows it in `unit`: itself where that is its unit already, else all
// that the unit tells of the circuit; supply, pull-up and resolution are those of before no
// longer.
Sender readIn(const Sender& sender, const std::string& unit);

// The fault that a reading points to, or nothing. Behind a pull-up, within 1 %
// of the supply is open. A ratiometric sender (0.07-0.14 Vs empty, 0.85-0.92 Vs
// full, service literature) is shorted under 2 % and open above 98 %. Zero ohms
// is not called a short, since 0-90 ohm senders exist.
std::optional<CircuitFault> circuitFault(Signal reading, const Sender& sender);

} // namespace undermark
