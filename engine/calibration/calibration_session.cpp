// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/calibration/calibration_session.h"

#include "engine/calibration/calibration_doubt.h"
#include "engine/calibration/verification.h"

#include <algorithm>

namespace undermark {

namespace {

CalibrationStage after(CalibrationStage stage)
{
    return CalibrationStage(int(stage) + 1);
}

bool isTakenOut(const DraftLevel& level) { return level.poured < Volume(); }

// Points of a calibration as the levels that they were, up to where fuel was taken out again.
std::vector<DraftLevel> levelsOf(const std::vector<CalibrationPoint>& points)
{
    std::vector<DraftLevel> levels;
    Volume before;
    for (const CalibrationPoint& point : points) {
        DraftLevel level{point.added - before, {}};
        if (isTakenOut(level))
            break;
        level.readings.push_back({{}, point.signal, point.signal2, point.signalSd, point.readings, true});
        levels.push_back(std::move(level));
        before = point.added;
    }
    return levels;
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

void CalibrationSession::choose(const std::string& unit)
{
    if (isPreparing())
        m_draft.unit = unit;
}

void CalibrationSession::chooseTank(const std::optional<std::string>& tank)
{
    if (isPreparing())
        m_draft.tank = tank;
}

void CalibrationSession::knowLobes(const LobeVolumes& lobes)
{
    if (m_draft.wiring != TankWiring::inSeries || m_draft.firstLobe || m_draft.secondLobe)
        return;
    m_draft.firstLobe = lobes.first;
    m_draft.secondLobe = lobes.second;
}

// A level as it would be, its litres as the draft counts them: 0 where none are moved,
// negative where taken out. Nothing where they are missing.
std::optional<DraftLevel> CalibrationSession::changed(std::size_t level,
                                                      const std::optional<DraftReading>& reading,
                                                      std::optional<Volume> moved) const
{
    DraftLevel next = isTaken(level) ? m_draft.levels[level] : m_draft.current;
    const bool movesLitres = isTaken(level) ? level > 0 : takesLitres();
    const bool out = isTaken(level) ? next.poured < Volume() : takesOut();
    if (movesLitres && (!moved || *moved == Volume()))
        return std::nullopt;
    next.poured = !movesLitres ? Volume() : out ? -*moved : *moved;
    if (reading && isTaken(level))
        next.readings.clear();
    if (reading)
        next.readings.push_back(*reading);
    return next;
}

Result<DraftReading> CalibrationSession::typed(std::optional<Signal> first,
                                               std::optional<Signal> second,
                                               std::chrono::duration<double> time) const
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
    return reading;
}

Result<void> CalibrationSession::take(const DraftReading& reading, std::optional<Volume> moved)
{
    auto level = changed(m_draft.levels.size(), reading, moved);
    if (!level)
        return failInput(Sentence::of("How much was poured comes first."));
    m_draft.current = std::move(*level);
    return {};
}

Result<void> CalibrationSession::correct(std::size_t level,
                                         const std::optional<DraftReading>& reading,
                                         std::optional<Volume> moved)
{
    auto corrected = isTaken(level) ? changed(level, reading, moved) : std::nullopt;
    if (!corrected)
        return failInput(Sentence::of("A level needs its litres and at least one reading."));
    m_draft.levels[level] = std::move(*corrected);
    return {};
}

std::optional<Sentence> CalibrationSession::doubt(std::size_t level,
                                                  const std::optional<DraftReading>& reading,
                                                  std::optional<Volume> moved, Volume capacity) const
{
    const auto next = changed(level, reading, moved);
    if (!next || next->readings.empty())
        return std::nullopt;
    std::vector<DraftLevel> levels(m_draft.levels.begin(),
                                   m_draft.levels.begin() + std::ptrdiff_t(std::min(level, m_draft.levels.size())));
    levels.push_back(*next);
    const auto points = pointsOf(levels);
    return doubtOf(std::span(points).first(points.size() - 1), points.back(), capacity);
}

Result<void> CalibrationSession::checkCautions() const
{
    if (isPreparing() && std::ranges::find(m_draft.acknowledged, false) != m_draft.acknowledged.end())
        return failInput(Sentence::of("Touch every caution once it holds here."));
    return {};
}

Result<void> CalibrationSession::takeUp(const Calibration& kept)
{
    if (auto sound = checkCautions(); !sound)
        return sound;
    if (kept.points.empty())
        return failInput(Sentence::of("There is no calibration to take up."));
    m_draft.levels = levelsOf(kept.points);
    m_draft.wiring = kept.points.front().signal2 ? TankWiring::twoSignals
        : kept.lobes                              ? TankWiring::inSeries
                                                  : TankWiring::oneSender;
    m_draft.zeroMark = kept.zeroMark;
    m_draft.firstLobe = m_draft.secondLobe = std::nullopt;
    if (kept.lobes) {
        m_draft.firstLobe = kept.lobes->first;
        m_draft.secondLobe = kept.lobes->second;
    }
    moveTo(CalibrationStage::verify);
    return {};
}

bool CalibrationSession::isAsIn(const Calibration& kept) const
{
    constexpr Volume kSame = Volume::fromLitres(1e-9); // pours are added up again
    const auto poured = [](const std::vector<DraftLevel>& levels) {
        return pointsOf({levels.begin(), std::ranges::find_if(levels, isTakenOut)});
    };
    const auto same = [&](const CalibrationPoint& a, const CalibrationPoint& b) {
        return abs(a.added - b.added) < kSame && a.signal == b.signal && a.signal2 == b.signal2;
    };
    std::optional<LobeVolumes> lobes;
    if (m_draft.firstLobe && m_draft.secondLobe)
        lobes = LobeVolumes{*m_draft.firstLobe, *m_draft.secondLobe};
    return m_draft.zeroMark == kept.zeroMark && lobes == kept.lobes
        && std::ranges::equal(poured(m_draft.levels), poured(levelsOf(kept.points)), same);
}

Result<void> CalibrationSession::next(std::optional<Volume> moved)
{
    if (auto sound = checkCautions(); !sound)
        return sound;
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
        auto level = changed(m_draft.levels.size(), {}, moved); // its litres as told last
        if (!level || level->readings.empty())
            return failInput(Sentence::of("A level needs its litres and at least one reading."));
        m_draft.levels.push_back(std::move(*level));
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
    calibration.tank = m_draft.tank;
    if (m_draft.firstLobe && m_draft.secondLobe)
        calibration.lobes = LobeVolumes{*m_draft.firstLobe, *m_draft.secondLobe};
    return calibration;
}

Result<std::optional<VerificationRecord>>
CalibrationSession::verification(const Sender& sender, Volume measuredSd, Instant time) const
{
    std::vector<CalibrationPoint> poured, takenOut;
    const std::vector<CalibrationPoint> all = pointsOf(m_draft.levels);
    for (std::size_t i = 0; i < all.size(); ++i)
        (m_draft.levels[i].poured < Volume() ? takenOut : poured).push_back(all[i]);
    if (takenOut.empty())
        return std::nullopt;
    const auto gauge = Gauge::calibrate(poured, sender);
    const auto tried = gauge ? verify(*gauge, takenOut, measuredSd) : fail(gauge.error());
    if (!tried)
        return fail(tried.error());
    VerificationRecord record = recordOf(*tried, time);
    record.tank = m_draft.tank;
    return record;
}

} // namespace undermark
