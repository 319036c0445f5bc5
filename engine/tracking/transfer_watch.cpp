// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/transfer_watch.h"

#include "engine/tracking/sender_reading.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr double kFall = 0.06;     // of the total, or of the own tank
constexpr double kMoved = 0.012;   // of the total
// With less of it a lobe or tank is as good as empty: the play of the arm and a float that rests
// just above the floor let an empty one read so much.
constexpr double kEmpty = 0.03;
constexpr double kMuch = 0.08;
// Of a further tank, on hills that tilt it by 1.5 %:
constexpr double kMovedOfOther = 0.025;
constexpr Seconds kHills{240.0};
// of one that stands level, a quarter of what it should fall, for its shape is another.
constexpr double kLevelFall = 0.12;
constexpr double kLevelMoved = 0.03;
constexpr double kAgain = 3.0;       // so many times `moved` is flow once more
constexpr double kLongerPause = 1.25;
constexpr double kLongestPause = 3.0; // of the fall
constexpr Seconds kFlowEnds{600.0};

} // namespace

TransferLimits TransferLimits::ofSaddle(Volume total)
{
    return {.fall = kFall * total, .moved = kMoved * total, .empty = kEmpty * total, .much = kMuch * total};
}

TransferLimits TransferLimits::ofLevel(Volume own, Volume other)
{
    return {.fall = kLevelFall * own, .moved = kLevelMoved * other, .empty = kEmpty * other, .much = kMuch * other,
            .smoothing = kHills};
}

TransferLimits TransferLimits::ofPumped(Volume own, Volume other)
{
    const Volume moved = kMovedOfOther * other;
    // (A pump that gives less than half of what is burnt is not told from none.)
    return {.fall = std::max(kFall * own, 2.0 * moved), .moved = moved, .empty = kEmpty * other,
            .much = kMuch * other, .comesFirst = true, .smoothing = kHills};
}

void TransferWatch::lookFromHere()
{
    m_drunkFrom = m_drunk.litres();
    m_otherFrom = m_other.litres();
    m_fell = 0.0;
}

void TransferWatch::refilled()
{
    m_top = m_low = m_other.litres();
    m_told = 0.0;
}

TransferWatch::Found TransferWatch::add(Seconds time, Volume drunk, const LevelObservation& other)
{
    const double seconds = (time - std::exchange(m_time, time)).count();
    m_drunk.add(drunk.litres(), seconds);
    m_other.add(other.level.mean.litres(), seconds);
    if (!m_running) {
        m_running = m_other.settled();
        refilled();
        lookFromHere();
        m_movedAt = time;
        return Found::nothing;
    }
    m_top = std::max(m_top, m_other.litres());
    m_low = std::min(m_low, m_other.litres());
    const bool filled = m_other.litres() - m_low > m_limits.much.litres();
    if (filled)
        refilled();
    // (On a stop, and where the reading need not move, nothing is seen of a flow.)
    const bool hidden = other.kind != ReadingKind::exact || other.flat > m_limits.moved;
    m_empty = m_other.litres() < m_limits.empty.litres();
    m_drunkFrom = std::max(m_drunkFrom, m_drunk.litres());
    m_fell = std::max(m_fell, fallen().litres());
    m_movedAt = std::min(m_movedAt, time); // (a clock may go back)
    const bool moved = m_otherFrom - m_other.litres() > m_limits.moved.litres();
    if (moved) {
        m_movedAt = time;
        m_otherFrom = m_other.litres();
    }
    return m_said ? judgeStopped(filled) : judgeFlowing(filled || moved || hidden || m_empty);
}

TransferWatch::Found TransferWatch::judgeStopped(bool filled)
{
    const bool flows = m_stood - m_other.litres() > kAgain * m_limits.moved.litres();
    if (!filled && !m_empty && !flows)
        return Found::nothing;
    if (flows)
        m_pause = std::max(m_pause, m_fell);
    m_said = false;
    lookFromHere();
    return Found::goesOn;
}

TransferWatch::Found TransferWatch::judgeFlowing(bool anew)
{
    if (anew)
        lookFromHere();
    const bool expected = !m_limits.comesFirst || m_top - m_other.litres() >= m_limits.much.litres();
    const double usual = m_limits.fall.litres();
    const double fall = std::clamp(kLongerPause * m_pause, usual, kLongestPause * usual);
    if (!expected || fallen().litres() < fall)
        return Found::nothing;
    m_said = true;
    m_stood = m_other.litres();
    return Found::stopped;
}

std::optional<Volume> TransferWatch::flowEnded()
{
    const double more = cameOver().litres() - m_told;
    if (more < m_limits.much.litres() || (!m_empty && m_time - m_movedAt < kFlowEnds))
        return std::nullopt;
    m_told += more;
    return Volume::fromLitres(more);
}

TransferWatch::Found TransferWatch::add(Seconds time, const Gauge& gauge, const SenderReading& reading)
{
    if (!gauge.hasTwoSignals() || !reading.other)
        return Found::nothing;
    // (One reading may lie on a flat piece by its slosh alone: the mean is what stands or falls.)
    LevelObservation other = observe(gauge.lobes()[1], *reading.other);
    other.flat = {};
    return add(time, gauge.lobes()[0].read(reading.signal).added.mean, other);
}

} // namespace undermark
