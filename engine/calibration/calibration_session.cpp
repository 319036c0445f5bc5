// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_session.h"

#include <algorithm>

namespace undermark {

namespace {

CalibrationStage after(CalibrationStage stage)
{
    return CalibrationStage(int(stage) + 1);
}

} // namespace

CalibrationSession::CalibrationSession(CalibrationDraft draft) : m_draft(std::move(draft))
{
    m_draft.acknowledged.resize(kCautions, false);
}

void CalibrationSession::acknowledge(std::size_t caution)
{
    if (isPreparing() && caution < kCautions)
        m_draft.acknowledged[caution] = !m_draft.acknowledged[caution];
}

void CalibrationSession::choose(TankWiring wiring)
{
    if (isPreparing())
        m_draft.wiring = wiring;
}

// As the draft counts them: 0 where none are moved, negative where taken out.
std::optional<Volume> CalibrationSession::signedLitres(std::optional<Volume> moved) const
{
    if (!takesLitres())
        return Volume();
    if (!moved || *moved == Volume())
        return std::nullopt;
    return takesOut() ? -*moved : *moved;
}

Result<void> CalibrationSession::takeTyped(std::optional<Signal> first, std::optional<Signal> second,
                                           std::chrono::duration<double> time,
                                           std::optional<Volume> moved)
{
    if (hasTwoSignals() && (!first || !second))
        return failInput(Sentence::of("A level takes the readings of both lobes."));
    if (!first)
        return failInput(Sentence::of("This is not a reading."));
    DraftReading reading;
    reading.time = time;
    reading.signal = *first;
    if (hasTwoSignals())
        reading.second = second;
    return take(reading, moved);
}

Result<void> CalibrationSession::take(const DraftReading& reading, std::optional<Volume> moved)
{
    const auto litres = signedLitres(moved);
    if (!litres)
        return failInput(Sentence::of("How much was poured comes first."));
    m_draft.current.poured = *litres;
    m_draft.current.readings.push_back(reading);
    return {};
}

Result<void> CalibrationSession::next(std::optional<Volume> moved)
{
    if (isPreparing() && std::ranges::find(m_draft.acknowledged, false) != m_draft.acknowledged.end())
        return failInput(Sentence::of("Touch every caution once it holds here."));
    if (isReviewing())
        return {};
    return finish(stage() == CalibrationStage::pours ? stage() : after(stage()), moved);
}

Result<void> CalibrationSession::skip(std::optional<Volume> moved)
{
    if (!canSkip())
        return {};
    if (!m_draft.current.readings.empty())
        return finish(after(stage()), moved);
    moveTo(after(stage()));
    return {};
}

// The level being taken is done.
Result<void> CalibrationSession::finish(CalibrationStage next, std::optional<Volume> moved)
{
    if (!isPreparing()) {
        const auto litres = signedLitres(moved);
        if (m_draft.current.readings.empty() || !litres)
            return failInput(Sentence::of("A level needs its litres and at least one reading."));
        m_draft.current.poured = *litres;   // as it was told last
        m_draft.levels.push_back(m_draft.current);
    }
    moveTo(next);
    return {};
}

void CalibrationSession::moveTo(CalibrationStage next)
{
    // Two signals are calibrated by what goes in alone (fitLobes).
    if (hasTwoSignals() && next == CalibrationStage::verify)
        next = CalibrationStage::review;
    m_draft.current = {};
    m_draft.stage = next;
}

void CalibrationSession::back()
{
    if (!m_draft.current.readings.empty()) {
        m_draft.current.readings.pop_back();
        return;
    }
    if (m_draft.levels.empty()) {
        m_draft.stage = CalibrationStage::prepare;
        return;
    }
    m_draft.current = std::move(m_draft.levels.back());
    m_draft.levels.pop_back();
    const std::size_t before = m_draft.levels.size();
    if (m_draft.current.poured < Volume())
        m_draft.stage = CalibrationStage::verify;
    else if (before <= 1)
        m_draft.stage = before == 0 ? CalibrationStage::drained : CalibrationStage::base;
    else if (stage() > CalibrationStage::full)
        m_draft.stage = CalibrationStage::full;
    else
        m_draft.stage = CalibrationStage::pours;
}

void CalibrationSession::review(std::optional<Volume> zeroMark, std::optional<Volume> firstLobe,
                                std::optional<Volume> secondLobe)
{
    m_draft.zeroMark = zeroMark;
    m_draft.firstLobe = firstLobe;
    m_draft.secondLobe = secondLobe;
}

std::optional<Volume> CalibrationSession::zeroMark() const
{
    if (m_draft.zeroMark || m_draft.levels.size() < 2)
        return m_draft.zeroMark;
    return m_draft.levels[1].poured;
}

std::vector<CalibrationPoint> CalibrationSession::points() const
{
    std::vector<DraftLevel> levels = m_draft.levels;
    if (!m_draft.current.readings.empty())
        levels.push_back(m_draft.current);
    return pointsOf(levels);
}

Result<Gauge> CalibrationSession::gauge(const Sender& sender) const
{
    return Gauge::calibrate(points(), sender);
}

std::optional<Error> CalibrationSession::whyNoCurve(const Sender& sender) const
{
    const Result<Gauge> made = gauge(sender);
    if (made && made->isKnown())
        return std::nullopt;
    if (hasTwoSignals())
        return made.error();
    return failInput(Sentence::of("These readings allow no curve")).value();
}

Result<Calibration> CalibrationSession::calibration(const Sender& sender,
                                                    std::optional<Volume> zeroMark) const
{
    if (!zeroMark)
        return failInput(Sentence::of("Where the zero mark is, is missing."));
    if (auto why = whyNoCurve(sender))
        return fail(std::move(*why));
    Calibration calibration;
    calibration.points = pointsOf(m_draft.levels);
    calibration.zeroMark = *zeroMark;
    return calibration;
}

} // namespace undermark
