// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/calibration_guide.h"

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

CalibrationGuide::CalibrationGuide(CarService& car, Units units, QObject* parent)
    : QObject(parent), m_car(car), m_format(units)
{
    connect(&m_form, &NumberForm::edited, this, [this] {
        m_problem.reset();
        m_resumed = false;
        emit changed();
    });
    takeUp();
}

void CalibrationGuide::takeUp()
{
    m_problem.reset();
    m_saved = false;
    m_draft = freshDraft();
    const auto found = findDraft(m_car.folder());
    if (!found)
        m_problem = noticeText(found.error());
    else if (*found)
        m_draft = **found;
    m_draft.acknowledged.resize(kCautions, false);
    m_resumed = started();
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
    return {{Litres, out ? tr("taken out") : tr("poured in"), m_format.volumeUnit(), {}, false,
             takesLitres()},
            {Reading, tr("reading"), QString::fromStdString(sender().unit), {}, false,
             started() && !reviewing()},
            {Zero, tr("zero mark above drained"), m_format.volumeUnit(), {}, false, reviewing()}};
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
    emit changed();
}

void CalibrationGuide::keep()
{
    m_resumed = false;
    if (const auto kept = keepDraft(m_draft, m_car.folder()); !kept)
        m_problem = noticeText(kept.error());
}

bool CalibrationGuide::refuse(const QString& why)
{
    m_problem = noticeText(Notice{Notice::Severity::error, why.toStdString()});
    emit changed();
    return false;
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
            refuse(tr("Touch every caution once it holds here."));
            return;
        }
        goOn(CalibrationStage::drained);
    } else if (reviewing()) {
        save();
    } else if (!m_form.text(Reading).isEmpty()) {
        takeReading();
    } else if (m_draft.stage == CalibrationStage::pours) {
        goOn(CalibrationStage::pours);
    } else {
        goOn(after(m_draft.stage));
    }
}

void CalibrationGuide::takeReading()
{
    const auto litres = typedLitres();
    const auto signal = m_format.numberFrom(m_form.text(Reading));
    if (!litres) {
        refuse(tr("How much was poured comes first."));
        m_form.activate(Litres);
        return;
    }
    if (!signal) {
        refuse(tr("This is not a reading."));
        return;
    }
    m_draft.current.poured = *litres;
    m_draft.current.readings.push_back(
        {std::chrono::duration<double>(m_car.time().time_since_epoch()), Signal::of(*signal)});
    keep();
    m_form.setText(Reading, {});
    m_form.activate(Reading);
    emit changed();
}

// The level being taken is done; nothing was taken where it has no readings.
void CalibrationGuide::goOn(CalibrationStage next)
{
    if (started()) {
        const auto litres = typedLitres();
        if (m_draft.current.readings.empty() || !litres) {
            refuse(tr("A level needs its litres and at least one reading."));
            return;
        }
        m_draft.current.poured = *litres; // as it was typed last
        m_draft.levels.push_back(m_draft.current);
        m_draft.current = {};
    }
    m_draft.stage = next;
    keep();
    showStage();
}

void CalibrationGuide::other()
{
    m_problem.reset();
    if (m_draft.stage == CalibrationStage::pours || m_draft.stage == CalibrationStage::verify) {
        if (!m_draft.current.readings.empty())
            return goOn(after(m_draft.stage));
        m_draft.stage = after(m_draft.stage);
        m_draft.current = {};
        keep();
        showStage();
    }
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
    dropDraft(m_car.folder());
    takeUp();
}

void CalibrationGuide::save()
{
    const auto zero = m_format.volumeFrom(m_form.text(Zero));
    if (!zero) {
        refuse(tr("Where the zero mark is, is missing."));
        return;
    }
    m_draft.zeroMark = zero;
    Calibration calibration;
    calibration.points = pointsOf(m_draft.levels);
    calibration.zeroMark = *zero;
    if (const auto saved = m_car.saveCalibration(calibration); !saved) {
        m_problem = noticeText(saved.error());
        emit changed();
        return;
    }
    startAgain();
    m_saved = true;
    emit changed();
    emit stored();
}

std::vector<CalibrationPoint> CalibrationGuide::points() const
{
    std::vector<DraftLevel> levels = m_draft.levels;
    if (!m_draft.current.readings.empty())
        levels.push_back(m_draft.current);
    return pointsOf(levels);
}

std::optional<CalibrationFit> CalibrationGuide::fit() const
{
    const auto all = points();
    if (all.size() < 2)
        return std::nullopt;
    auto fitted = fitCalibration(all, sender());
    return fitted ? std::optional(std::move(*fitted)) : std::nullopt;
}

Sender CalibrationGuide::sender() const
{
    const auto car = m_car.knowledge();
    return car ? (*car)->vehicle().sender : Sender{};
}

} // namespace undermark
