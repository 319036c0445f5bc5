// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration's live source: what it says, how far it has settled.
#include "app/screen/tank/calibration_guide.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

QString seconds(LiveSignal::Seconds time)
{
    return QString::number(std::max(1, int(std::lround(time.count()))));
}

// How many independent readings a series is worth: those that would know its
// mean as well. One where the display does not move at all.
int independent(const SettledReading& reading)
{
    if (!reading.sd || !reading.standardError || *reading.standardError <= Signal())
        return 1;
    const double ratio = *reading.sd / *reading.standardError;
    return std::clamp(int(ratio * ratio), 1, reading.readings);
}

} // namespace

std::optional<DraftReading> CalibrationGuide::settledNow() const
{
    if (m_live.gathered() < LiveSignal::kShortest)
        return std::nullopt;
    const SettledReading first = settle(m_live.first(), tolerance());
    const SettledReading second = settle(m_live.second(), tolerance(true));
    if (!first.settled || (twoSignals() && !second.settled))
        return std::nullopt;
    DraftReading reading;
    reading.signal = first.mean;
    if (twoSignals())
        reading.second = second.mean;
    reading.sd = first.sd;
    reading.readings = independent(first);
    reading.settled = true;
    return reading;
}

void CalibrationGuide::takeLive()
{
    m_problem.reset();
    if (preparing() || reviewing())
        return;
    const auto reading = settledNow();
    if (reading) {
        take(*reading);
        m_live.forget(); // the same is not taken twice
        return;
    }
    refuse(Sentence::of("It has not settled: wait, or type the reading."));
}

QString CalibrationGuide::liveReading() const
{
    if (m_live.state() == LiveSignal::State::none)
        return {};
    if (m_live.first().empty())
        return tr("no reading");
    return reading(m_live.first().back().signal,
                   twoSignals() ? std::optional(m_live.second().back().signal) : std::nullopt);
}

QString CalibrationGuide::liveState() const
{
    switch (m_live.state()) {
    case LiveSignal::State::none:
        return {};
    case LiveSignal::State::waiting:
        return tr("waiting for the first reading");
    case LiveSignal::State::silent:
        return tr("silent for %1 s: look at its cable").arg(seconds(m_live.quietFor()));
    case LiveSignal::State::ended:
        return tr("the source has ended");
    case LiveSignal::State::live:
        break;
    }
    if (settledNow())
        return tr("settled");
    if (m_live.gathered() < LiveSignal::kShortest)
        return tr("settling: %1 s more").arg(seconds(LiveSignal::kShortest - m_live.gathered()));
    return tr("still moving");
}

// " (0.3 L)" where there is a curve to tell it by.
QString CalibrationGuide::inLitres(Signal spread, Signal at) const
{
    const auto fitted = fit();
    if (!fitted || !fitted->curve)
        return {};
    const Volume litres =
        Volume::fromLitres(abs(spread).value() * fitted->curve->litresPerSignal(at));
    const double up = std::ceil(m_format.inUnit(litres) * 100.0) / 100.0; // as all spreads
    return tr(" (%1 %2)").arg(m_format.number(up, 2), m_format.volumeUnit());
}

QList<Fact> CalibrationGuide::liveFacts() const
{
    if (m_live.state() == LiveSignal::State::none)
        return {};
    QList<Fact> facts;
    const SettledReading first = settle(m_live.first(), tolerance());
    if (first.readings > 0) {
        const SettledReading second = settle(m_live.second(), tolerance(true));
        facts.append({tr("source, mean of %1").arg(first.readings),
                      reading(first.mean, twoSignals() ? std::optional(second.mean) : std::nullopt)});
    }
    if (first.standardError)
        facts.append({tr("known to ±"),
                      reading(*first.standardError) + inLitres(*first.standardError, first.mean)});
    if (first.driftPerSecond) {
        const Signal aMinute = *first.driftPerSecond * 60.0;
        facts.append({tr("drift a minute"), reading(aMinute) + inLitres(aMinute, first.mean)});
    }
    if (m_live.refused() > 0)
        facts.append({tr("lines not read"),
                      tr("%1, the last: %2").arg(m_live.refused()).arg(m_live.lastRefused())});
    return facts;
}

} // namespace undermark
