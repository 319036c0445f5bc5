// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the guided calibration says.
#include "app/calibration_guide.h"
#include "app/tank_picture.h"
#include "engine/calibration/circuit.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kWantedLitres = 0.3;  // a reading is settled when it is known to this
constexpr double kWantedShare = 0.005; // of the sweep, before two levels tell what a litre is

QString sinceSpread(const UnitFormat& format, const SettledReading& reading)
{
    return reading.standardError
               ? CalibrationGuide::tr(" ± %1").arg(format.typed(reading.standardError->value(), 4))
               : QString();
}

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

QString CalibrationGuide::reading(Signal signal) const
{
    return tr("%1 %2").arg(m_format.typed(signal.value(), 4), QString::fromStdString(sender().unit));
}

Signal CalibrationGuide::tolerance() const
{
    const auto all = pointsOf(m_draft.levels);
    if (all.size() > 1) {
        const Volume litres = all.back().added - all.front().added;
        const double sweep = std::abs((all.back().signal - all.front().signal).value());
        if (litres > Volume{} && sweep > 0.0)
            return Signal::of(kWantedLitres * sweep / litres.litres());
    }
    if (const auto span = possibleSpan(sender()))
        return (span->highest - span->lowest) * kWantedShare;
    const auto& readings = m_draft.current.readings;
    return readings.empty() ? Signal() : abs(readings.front().signal) * kWantedShare;
}

QList<Fact> CalibrationGuide::facts() const
{
    if (reviewing()) {
        const auto fitted = fit();
        if (!fitted || !fitted->curve)
            return {};
        QList<Fact> facts{
            {tr("levels"), QString::number(m_draft.levels.size())},
            {tr("signal"), *fitted->direction == SignalDirection::rising ? tr("rises as litres rise")
                                                                         : tr("falls as litres rise")}};
        if (fitted->residualSd)
            facts.append({tr("a point misses the curve by"), m_format.volume({*fitted->residualSd, {}})});
        return facts;
    }
    const SettledReading settled = settle(m_draft.current.readings, tolerance());
    if (settled.readings == 0)
        return {{tr("readings"), tr("none yet; five make it sure")}};
    const QString word = settled.settled ? tr("settled")
                         : settled.readings < 5
                             ? tr("not settled: read %1 times more").arg(5 - settled.readings)
                             : tr("still moving: wait and read again");
    return {{tr("readings"), QString::number(settled.readings)},
            {tr("mean"), reading(settled.mean) + sinceSpread(m_format, settled)},
            {tr("state"), word}};
}

QList<Fact> CalibrationGuide::done() const
{
    QList<Fact> levels;
    const auto all = pointsOf(m_draft.levels);
    for (std::size_t i = 0; i < all.size(); ++i)
        levels.prepend({i == 0 ? tr("drained") : m_format.volume({all[i].added, {}}),
                       reading(all[i].signal)});
    return levels;
}

QList<NoticeText> CalibrationGuide::notices() const
{
    QList<NoticeText> notices;
    if (m_problem)
        notices.append(*m_problem);
    if (m_saved)
        notices.append(noticeText(Notice{Notice::Severity::info,
                                         tr("The calibration is in the logbook.").toStdString()}));
    if (m_resumed)
        notices.append(noticeText(Notice{
            Notice::Severity::info, tr("Taken up where it was left: nothing is lost.").toStdString()}));
    const auto fitted = fit();
    if (!fitted)
        return notices;
    std::vector<Notice> found;
    for (const Finding& finding : fitted->findings) {
        // What only the whole sweep can tell waits for the review.
        if (finding.severity == Severity::error || reviewing())
            found.push_back({finding.severity == Severity::error     ? Notice::Severity::error
                             : finding.severity == Severity::warning ? Notice::Severity::warning
                                                                     : Notice::Severity::info,
                             finding.text});
    }
    return notices + noticeTexts(found);
}

PlotPicture CalibrationGuide::plot() const
{
    const auto fitted = fit();
    if (!fitted)
        return {};
    std::optional<Volume> zero;
    if (m_draft.levels.size() > 1)
        zero = m_format.volumeFrom(m_form.text(Zero)).value_or(m_draft.levels[1].poured);
    return tankPicture(points(), *fitted, sender(), zero, m_format);
}

QString CalibrationGuide::goWord() const
{
    if (preparing())
        return tr("All of it holds");
    if (reviewing())
        return tr("Save this calibration");
    if (!m_form.text(Reading).isEmpty())
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
