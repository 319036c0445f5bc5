// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the guided calibration says.
#include "app/screen/tank/calibration_guide.h"

namespace undermark {

// Of several tanks with the one that it is of.
QString CalibrationGuide::title() const
{
    return m_tankWord.isEmpty() ? step() : tr("%1 (%2)").arg(step(), m_tankWord);
}

QString CalibrationGuide::step() const
{
    if (m_corrected)
        return tr("Correct a level");
    switch (m_session.stage()) {
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
    if (m_corrected)
        return tr("Type it as it was. A reading typed here takes the place of all at this level.");
    switch (m_session.stage()) {
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
        if (m_session.draft().wiring == TankWiring::inSeries)
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
        all.append({texts[i], m_session.draft().acknowledged.at(i)});
    return all;
}

QStringList CalibrationGuide::wirings() const
{
    return {tr("One sender"), tr("Saddle tank, senders in series"), tr("Saddle tank, two signals")};
}

QStringList meterUnits(const Sender& own)
{
    QStringList all(std::begin(kMeterUnits), std::end(kMeterUnits));
    const QString unit = QString::fromStdString(own.unit);
    if (!all.contains(unit))
        all.prepend(unit);
    return all;
}

int CalibrationGuide::unit() const
{
    return int(units().indexOf(QString::fromStdString(sender().unit)));
}

QString CalibrationGuide::reading(Signal signal) const
{
    return tr("%1 %2").arg(m_format.typed(signal.value(), 4), QString::fromStdString(sender().unit));
}

QString CalibrationGuide::reading(Signal signal, std::optional<Signal> second) const
{
    return second ? tr("%1, other lobe %2").arg(reading(signal), reading(*second)) : reading(signal);
}

QList<Fact> CalibrationGuide::facts() const
{
    if (m_corrected)
        return {};
    return reviewing() ? reviewFacts() : readingFacts();
}

// The readings at this level.
QList<Fact> CalibrationGuide::readingFacts() const
{
    const auto& readings = m_session.draft().current.readings;
    if (readings.empty())
        return {{tr("readings"), m_live.state() == LiveSignal::State::none
                                     ? tr("none yet; five make it sure")
                                     : tr("none yet; one that has settled is enough")}};
    const CalibrationPoint all = pointsOf({m_session.draft().current}).front();
    const auto state = m_session.settling(sender(), liveSeries());
    const int missing = CalibrationSession::kWantedReadings - int(readings.size());
    const QString word = state == CalibrationSession::Settling::settled ? tr("settled")
                         : state == CalibrationSession::Settling::tooFew
                             ? tr("not settled: read %1 times more").arg(missing)
                             : tr("still moving: wait and read again");
    const auto error = m_session.current(sender(), liveSeries()).standardError;
    const QString spread = error ? tr(" ± %1").arg(m_format.typed(error->value(), 4)) : QString();
    return {{tr("readings"), QString::number(readings.size())},
            {tr("mean"), reading(all.signal, all.signal2) + spread},
            {tr("state"), word}};
}

QStringList CalibrationGuide::done() const
{
    QStringList levels;
    const auto all = pointsOf(m_session.draft().levels);
    for (std::size_t i = 0; i < all.size(); ++i)
        levels.prepend(tr("%1: %2").arg(i == 0 ? tr("drained") : m_format.volume({all[i].added, {}}),
                                        reading(all[i].signal, all[i].signal2)));
    return levels;
}

QList<NoticeText> CalibrationGuide::notices() const
{
    std::vector<Notice> notices;
    if (m_problem)
        notices.push_back(*m_problem);
    if (m_saved)
        notices.push_back(
            {Severity::info, Sentence::of("The calibration is in the logbook.")});
    if (m_resumed)
        notices.push_back(
            {Severity::info, Sentence::of("Taken up where it was left: nothing is lost.")});
    QList<NoticeText> texts;
    for (const Notice& notice : notices)
        texts.append(noticeText(notice, m_format));
    std::vector<Notice> found;
    for (const Finding& finding : m_session.findings(sender()))
        found.push_back(noticeOf(finding));
    return texts + noticeTexts(found, m_format);
}

QString CalibrationGuide::goWord() const
{
    if (m_doubted)
        return tr("Change it");
    if (m_corrected)
        return tr("Save the correction");
    if (preparing())
        return tr("All of it holds");
    if (reviewing())
        return tr("Save this calibration");
    if (isTyped())
        return tr("Take this reading");
    return m_session.stage() == CalibrationStage::pours ? tr("Next pour") : tr("Next step");
}

QString CalibrationGuide::otherWord() const
{
    if (m_doubted)
        return tr("Keep it");
    if (m_corrected)
        return {};
    if (preparing())
        return keptCalibration() ? tr("Take up the last one") : QString();
    if (m_session.stage() == CalibrationStage::pours)
        return tr("Now fill it up");
    return m_session.stage() == CalibrationStage::verify ? tr("Without verifying") : QString();
}

QString CalibrationGuide::backWord() const
{
    if (preparing() || m_doubted)
        return {};
    if (m_corrected)
        return tr("Leave it as it was");
    return m_session.draft().current.readings.empty() ? tr("One step back") : tr("Last reading away");
}

} // namespace undermark
