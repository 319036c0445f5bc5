// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the guided calibration says.
#include "app/screen/tank/calibration_guide.h"
#include "engine/calibration/circuit.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr int kWantedReadings = 5;
constexpr double kWantedLitres = 0.3;  // a reading is settled when it is known to this
constexpr double kWantedShare = 0.005; // of the sweep, before two levels tell what a litre is

} // namespace

QString CalibrationGuide::title() const
{
    switch (m_draft.stage) {
    case CalibrationStage::prepare:
        return tr("1 of 7: Prepare");
    case CalibrationStage::drained:
        return tr("2 of 7: Drained");
    case CalibrationStage::base:
        return tr("3 of 7: Base pour");
    case CalibrationStage::pours:
        return tr("4 of 7: Pour in steps");
    case CalibrationStage::full:
        return tr("5 of 7: Full");
    case CalibrationStage::verify:
        return tr("6 of 7: Verify");
    case CalibrationStage::review:
        return tr("7 of 7: Review");
    }
    return {};
}

QString CalibrationGuide::text() const
{
    switch (m_draft.stage) {
    case CalibrationStage::prepare:
        return tr("Touch each line once it holds here and now.");
    case CalibrationStage::drained:
        return tr("Pump out until the pump spits, and stop there. Car level. Read the sender.");
    case CalibrationStage::base:
        return tr("Pour a measured base: what will be under the zero mark. Wait, then read.");
    case CalibrationStage::pours:
        return tr("Pour a measured amount, wait, read. The more steps, the better the curve.");
    case CalibrationStage::full:
        return tr("Fill to the first click of the nozzle. Type what went in since the last step.");
    case CalibrationStage::verify:
        return tr("Take a measured amount out again and read: driving goes down, too.");
    case CalibrationStage::review:
        if (m_draft.wiring == TankWiring::inSeries)
            return tr("What each lobe holds tells how far their unequal emptying can mislead.");
        return tr("Look at the curve and the findings, choose the zero mark, save.");
    }
    return {};
}

QList<Caution> CalibrationGuide::cautions() const
{
    const QString texts[] = {
        tr("Engine cold and off, no ignition source, ventilated: petrol vapour ignites."),
        tr("Earthed. Approved containers, filled on the ground, never past their nominal volume."),
        tr("Extinguisher in reach, eyes and skin protected."),
        tr("Pressure relieved before the fuel line is opened; pumping stops at the first spit (a "
           "diesel run dry can ruin its injection); the battery is watched."),
        tr("Local law comes first; a qualified person works on the fuel system."),
    };
    QList<Caution> all;
    for (std::size_t i = 0; i < std::size(texts); ++i)
        all.append({texts[i], m_draft.acknowledged.at(i)});
    return all;
}

QStringList CalibrationGuide::wirings() const
{
    return {tr("One sender"), tr("Saddle tank, senders in series"), tr("Saddle tank, two signals")};
}

QString CalibrationGuide::reading(Signal signal) const
{
    return tr("%1 %2").arg(m_format.typed(signal.value(), 4), QString::fromStdString(sender().unit));
}

QString CalibrationGuide::reading(Signal signal, std::optional<Signal> second) const
{
    return second ? tr("%1, other lobe %2").arg(reading(signal), reading(*second)) : reading(signal);
}

Signal CalibrationGuide::tolerance(bool second) const
{
    const auto of = [second](const auto& each, Signal first) { return second ? each.value_or(first) : first; };
    const auto all = pointsOf(m_draft.levels);
    if (all.size() > 1) {
        const Volume litres = all.back().added - all.front().added;
        const double sweep = std::abs((of(all.back().signal2, all.back().signal) -
                                       of(all.front().signal2, all.front().signal)).value());
        if (litres > Volume{} && sweep > 0.0)
            return Signal::of(kWantedLitres * sweep / litres.litres());
    }
    if (const auto span = possibleSpan(sender()))
        return (span->highest - span->lowest) * kWantedShare;
    const auto live = second ? m_live.second() : m_live.first();
    if (!live.empty())
        return abs(live.front().signal) * kWantedShare;
    const auto& readings = m_draft.current.readings;
    return readings.empty() ? Signal()
                            : abs(of(readings.front().second, readings.front().signal)) * kWantedShare;
}

QList<Fact> CalibrationGuide::facts() const
{
    return reviewing() ? reviewFacts() : readingFacts();
}

// The readings at this level.
QList<Fact> CalibrationGuide::readingFacts() const
{
    const auto& readings = m_draft.current.readings;
    if (readings.empty())
        return {{tr("readings"), m_live.state() == LiveSignal::State::none
                                     ? tr("none yet; five make it sure")
                                     : tr("none yet; one that has settled is enough")}};
    const CalibrationPoint all = pointsOf({m_draft.current}).front();
    std::vector<TimedSignal> first, second;
    for (const DraftReading& each : readings) {
        first.push_back({each.time, each.signal});
        second.push_back({each.time, each.second.value_or(each.signal)});
    }
    const SettledReading settled = settle(first, tolerance());
    const bool sure = std::ranges::any_of(readings, &DraftReading::settled) ||
                      (settled.settled && (!twoSignals() || settle(second, tolerance(true)).settled));
    const int missing = kWantedReadings - int(readings.size());
    const QString word = sure          ? tr("settled")
                         : missing > 0 ? tr("not settled: read %1 times more").arg(missing)
                                       : tr("still moving: wait and read again");
    const QString spread = settled.standardError
                               ? tr(" ± %1").arg(m_format.typed(settled.standardError->value(), 4))
                               : QString();
    return {{tr("readings"), QString::number(readings.size())},
            {tr("mean"), reading(all.signal, all.signal2) + spread},
            {tr("state"), word}};
}

QList<Fact> CalibrationGuide::done() const
{
    QList<Fact> levels;
    const auto all = pointsOf(m_draft.levels);
    for (std::size_t i = 0; i < all.size(); ++i)
        levels.prepend({i == 0 ? tr("drained") : m_format.volume({all[i].added, {}}),
                       reading(all[i].signal, all[i].signal2)});
    return levels;
}

// With two signals a lobe may well stand still, but not both.
std::optional<Notice> CalibrationGuide::stillness() const
{
    const auto all = points();
    if (all.size() < 2 || all.back().added <= all.front().added)
        return std::nullopt;
    const auto moved = [](Signal from, Signal to) {
        return abs(to - from) > abs(from) * kWantedShare;
    };
    if (moved(all.front().signal, all.back().signal) ||
        moved(all.front().signal2.value_or(Signal()), all.back().signal2.value_or(Signal())))
        return std::nullopt;
    return Notice{
        Notice::Severity::error,
        Sentence::of("Neither signal has moved while %1 went in. Look at the wiring and the "
                     "ground.",
                     amount(all.back().added))};
}

QList<NoticeText> CalibrationGuide::notices() const
{
    std::vector<Notice> notices;
    if (m_problem)
        notices.push_back(*m_problem);
    if (m_saved)
        notices.push_back(
            {Notice::Severity::info, Sentence::of("The calibration is in the logbook.")});
    if (m_resumed)
        notices.push_back(
            {Notice::Severity::info, Sentence::of("Taken up where it was left: nothing is lost.")});
    const auto still = twoSignals() ? stillness() : std::nullopt;
    if (still)
        notices.push_back(*still);
    if (const auto why = twoSignals() && reviewing() ? whyNoCurve() : std::nullopt)
        notices.push_back(noticeOf(*why));
    QList<NoticeText> texts;
    for (const Notice& notice : notices)
        texts.append(noticeText(notice, m_format));
    return twoSignals() ? texts : texts + noticeTexts(findings(), m_format);
}

std::vector<Notice> CalibrationGuide::findings() const
{
    std::vector<Notice> found;
    if (const auto fitted = fit()) {
        // What only the whole sweep can tell waits for the review.
        for (const Finding& finding : fitted->findings)
            if (finding.severity == Severity::error || reviewing())
                found.push_back(noticeOf(finding));
    }
    return found;
}

QString CalibrationGuide::goWord() const
{
    if (preparing())
        return tr("All of it holds");
    if (reviewing())
        return tr("Save this calibration");
    if (!m_form.text(Reading).isEmpty() || !m_form.text(SecondReading).isEmpty())
        return tr("Take this reading");
    return m_draft.stage == CalibrationStage::pours ? tr("Next pour") : tr("Next step");
}

QString CalibrationGuide::otherWord() const
{
    if (m_draft.stage == CalibrationStage::pours)
        return tr("Now fill it up");
    return m_draft.stage == CalibrationStage::verify ? tr("Without verifying") : QString();
}

QString CalibrationGuide::backWord() const
{
    if (preparing())
        return {};
    return m_draft.current.readings.empty() ? tr("One step back") : tr("Last reading away");
}

} // namespace undermark
