// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/calibration_guide.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kCautions = 5;

CalibrationDraft freshDraft()
{
    CalibrationDraft draft;
    draft.acknowledged.assign(kCautions, false);
    return draft;
}

CalibrationStage after(CalibrationStage stage)
{
    return CalibrationStage(int(stage) + 1);
}

} // namespace

CalibrationGuide::CalibrationGuide(Car& car, Units units, QObject* parent)
    : QObject(parent), m_car(car), m_format(units)
{
    connect(&m_form, &NumberForm::edited, this, [this] {
        m_problem.reset();
        m_resumed = false;
        if (reviewing())
            keepReview();
        emit changed();
    });
    connect(&m_live, &LiveSignal::changed, this, &CalibrationGuide::liveChanged);
    takeUp();
}

std::filesystem::path CalibrationGuide::draftFile() const
{
    return undermark::draftFile(m_car.folder(), m_car.shownCar());
}

void CalibrationGuide::takeUp()
{
    m_problem.reset();
    m_saved = false;
    m_draft = freshDraft();
    const auto found = findDraft(draftFile());
    if (!found)
        m_problem = noticeOf(found.error());
    else if (*found)
        m_draft = **found;
    m_draft.acknowledged.resize(kCautions, false);
    m_resumed = started();
    m_live.setCount(twoSignals() ? 2 : 1);
    m_live.forget();
    showStage();
}

void CalibrationGuide::setFormat(const UnitFormat& format)
{
    m_format = format;
    showStage();
}

bool CalibrationGuide::started() const
{
    return m_draft.stage != CalibrationStage::prepare;
}

bool CalibrationGuide::takesLitres() const
{
    return started() && m_draft.stage != CalibrationStage::drained && !reviewing();
}

QList<NumberEntry> CalibrationGuide::entries() const
{
    const bool out = m_draft.stage == CalibrationStage::verify;
    const bool reads = started() && !reviewing();
    const QString unit = QString::fromStdString(sender().unit);
    const bool lobes = reviewing() && m_draft.wiring == TankWiring::inSeries;
    return {{Litres, out ? tr("taken out") : tr("poured in"), m_format.volumeUnit(), {}, false,
             takesLitres()},
            {Reading, twoSignals() ? tr("reading, lobe with the pump") : tr("reading"), unit, {},
             false, reads},
            {SecondReading, tr("reading, other lobe"), unit, {}, false, reads && twoSignals()},
            {Zero, tr("zero mark above drained"), m_format.volumeUnit(), {}, false, reviewing()},
            {FirstLobe, tr("one lobe holds, if known"), m_format.volumeUnit(), {}, false, lobes},
            {SecondLobe, tr("the other lobe holds"), m_format.volumeUnit(), {}, false, lobes}};
}

void CalibrationGuide::showStage()
{
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    if (m_draft.current.poured != Volume{}) {
        m_form.setText(Litres, m_format.typed(abs(m_draft.current.poured)));
        m_form.activate(Reading);
    }
    if (reviewing() && m_draft.levels.size() > 1) // the base poured after draining
        m_form.setText(Zero, m_format.typed(m_draft.zeroMark.value_or(m_draft.levels[1].poured)),
                       !m_draft.zeroMark);
    if (reviewing() && m_draft.firstLobe)
        m_form.setText(FirstLobe, m_format.typed(*m_draft.firstLobe));
    if (reviewing() && m_draft.secondLobe)
        m_form.setText(SecondLobe, m_format.typed(*m_draft.secondLobe));
    emit changed();
}

void CalibrationGuide::keep()
{
    m_resumed = false;
    if (const auto kept = keepDraft(m_draft, draftFile()); !kept)
        m_problem = noticeOf(kept.error());
}

// What is typed at the review, as far as it is a number yet.
void CalibrationGuide::keepReview()
{
    m_draft.zeroMark = m_format.volumeFrom(m_form.text(Zero));
    m_draft.firstLobe = m_format.volumeFrom(m_form.text(FirstLobe));
    m_draft.secondLobe = m_format.volumeFrom(m_form.text(SecondLobe));
    keep();
}

void CalibrationGuide::refuse(const Sentence& why)
{
    m_problem = {Notice::Severity::error, why};
    emit changed();
}

void CalibrationGuide::acknowledge(int caution)
{
    if (!preparing() || caution < 0 || std::size_t(caution) >= m_draft.acknowledged.size())
        return;
    m_draft.acknowledged[std::size_t(caution)] = !m_draft.acknowledged[std::size_t(caution)];
    m_problem.reset();
    keep();
    emit changed();
}

void CalibrationGuide::chooseWiring(int wiring)
{
    if (!preparing() || wiring < 0 || wiring >= wirings().size())
        return;
    m_draft.wiring = TankWiring(wiring);
    m_live.setCount(twoSignals() ? 2 : 1);
    keep();
    showStage();
}

std::optional<Volume> CalibrationGuide::typedLitres() const
{
    if (!takesLitres())
        return Volume{};
    const auto litres = m_format.volumeFrom(m_form.text(Litres));
    if (!litres || *litres == Volume{})
        return std::nullopt;
    return m_draft.stage == CalibrationStage::verify ? -*litres : *litres;
}

void CalibrationGuide::go()
{
    m_problem.reset();
    m_saved = false;
    if (preparing()) {
        if (std::ranges::find(m_draft.acknowledged, false) != m_draft.acknowledged.end()) {
            refuse(Sentence::of("Touch every caution once it holds here."));
            return;
        }
        goOn(CalibrationStage::drained);
    } else if (reviewing()) {
        save();
    } else if (!m_form.text(Reading).isEmpty() || !m_form.text(SecondReading).isEmpty()) {
        takeTyped();
    } else if (m_draft.stage == CalibrationStage::pours) {
        goOn(CalibrationStage::pours);
    } else {
        goOn(after(m_draft.stage));
    }
}

void CalibrationGuide::takeTyped()
{
    const auto signal = m_format.numberFrom(m_form.text(Reading));
    const auto second = m_format.numberFrom(m_form.text(SecondReading));
    if (!signal || (twoSignals() && !second)) {
        refuse(twoSignals() ? Sentence::of("A level takes the readings of both lobes.")
                            : Sentence::of("This is not a reading."));
        m_form.activate(signal ? SecondReading : Reading);
        return;
    }
    DraftReading reading;
    reading.signal = Signal::of(*signal);
    if (twoSignals())
        reading.second = Signal::of(*second);
    take(reading);
}

void CalibrationGuide::take(const DraftReading& reading)
{
    const auto litres = typedLitres();
    if (!litres) {
        refuse(Sentence::of("How much was poured comes first."));
        m_form.activate(Litres);
        return;
    }
    m_draft.current.poured = *litres;
    m_draft.current.readings.push_back(reading);
    m_draft.current.readings.back().time = m_car.time().time_since_epoch();
    keep();
    m_form.setText(Reading, {});
    m_form.setText(SecondReading, {});
    m_form.activate(Reading);
    emit changed();
}

// The level being taken is done; nothing was taken where it has no readings.
void CalibrationGuide::goOn(CalibrationStage next)
{
    if (started()) {
        const auto litres = typedLitres();
        if (m_draft.current.readings.empty() || !litres) {
            refuse(Sentence::of("A level needs its litres and at least one reading."));
            return;
        }
        m_draft.current.poured = *litres; // as it was typed last
        m_draft.levels.push_back(m_draft.current);
    }
    moveTo(next);
}

void CalibrationGuide::moveTo(CalibrationStage next)
{
    // Two signals are calibrated by what goes in alone (fitSaddle).
    if (twoSignals() && next == CalibrationStage::verify)
        next = CalibrationStage::review;
    m_draft.current = {};
    m_draft.stage = next;
    m_live.forget();
    keep();
    showStage();
}

void CalibrationGuide::other()
{
    m_problem.reset();
    if (m_draft.stage != CalibrationStage::pours && m_draft.stage != CalibrationStage::verify)
        return;
    if (m_draft.current.readings.empty())
        moveTo(after(m_draft.stage));
    else
        goOn(after(m_draft.stage));
}

void CalibrationGuide::back()
{
    m_problem.reset();
    if (!m_draft.current.readings.empty()) {
        m_draft.current.readings.pop_back();
    } else if (!m_draft.levels.empty()) {
        const std::size_t last = m_draft.levels.size() - 1;
        const bool wasOut = m_draft.levels.back().poured < Volume{};
        m_draft.current = m_draft.levels.back();
        m_draft.levels.pop_back();
        if (wasOut)
            m_draft.stage = CalibrationStage::verify;
        else if (last <= 1)
            m_draft.stage = last == 0 ? CalibrationStage::drained : CalibrationStage::base;
        else if (m_draft.stage > CalibrationStage::full)
            m_draft.stage = CalibrationStage::full;
        else
            m_draft.stage = CalibrationStage::pours;
    } else {
        m_draft.stage = CalibrationStage::prepare;
    }
    keep();
    showStage();
}

void CalibrationGuide::startAgain()
{
    dropDraft(draftFile());
    takeUp();
}

Sender CalibrationGuide::sender() const
{
    const auto car = m_car.knowledge();
    return car ? (*car)->vehicle().sender : Sender{};
}

} // namespace undermark
