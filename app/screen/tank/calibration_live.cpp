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

} // namespace

void CalibrationGuide::listen()
{
    const auto log = m_car.log();
    m_live.setTank(log ? placeOfTank(furtherNames(*log), tankName(tank())).value_or(0) : 0);
    m_live.setCount(m_session.hasTwoSignals() ? 2 : 1);
}

void CalibrationGuide::takeLive()
{
    m_problem.reset();
    if (!m_session.takesReadings() || m_corrected)
        return;
    auto reading = settledNow();
    if (!reading) {
        accept(failInput(Sentence::of("It has not settled: wait, or type the reading.")));
        return;
    }
    reading->time = m_car.time().time_since_epoch();
    take(*reading);
}

QString CalibrationGuide::liveReading() const
{
    if (m_live.state() == LiveSignal::State::none)
        return {};
    if (m_live.first().empty())
        return tr("no reading");
    return reading(m_live.first().back().signal,
                   m_session.hasTwoSignals() ? std::optional(m_live.second().back().signal) : std::nullopt);
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
    if (m_live.gathered() < CalibrationSession::kShortest)
        return tr("settling: %1 s more").arg(seconds(CalibrationSession::kShortest - m_live.gathered()));
    return tr("still moving");
}

// " (0.3 L)" where there is a curve to tell it by.
QString CalibrationGuide::inLitres(Signal spread, Signal at) const
{
    const auto gauge = m_session.gauge(sender());
    if (!gauge || !gauge->curve())
        return {};
    const Volume litres =
        Volume::fromLitres(abs(spread).value() * gauge->curve()->litresPerSignal(at));
    const double up = std::ceil(m_format.inUnit(litres) * 100.0) / 100.0; // as all spreads
    return tr(" (%1 %2)").arg(m_format.number(up, 2), m_format.volumeUnit());
}

QList<Fact> CalibrationGuide::liveFacts() const
{
    if (m_live.state() == LiveSignal::State::none)
        return {};
    QList<Fact> facts;
    const SettledReading first = settle(m_live.first(), m_session.tolerance(0, sender(), liveSeries()));
    if (first.readings > 0) {
        const SettledReading second = settle(m_live.second(), m_session.tolerance(1, sender(), liveSeries()));
        facts.append({tr("source, mean of %1").arg(first.readings),
                      reading(first.mean, m_session.hasTwoSignals() ? std::optional(second.mean) : std::nullopt)});
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
                      tr("%1, the first: %2").arg(m_live.refused()).arg(m_live.firstRefused())});
    return facts;
}

} // namespace undermark
