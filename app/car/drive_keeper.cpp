// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/drive_keeper.h"

#include "app/car/told.h"
#include "engine/logbook/uuid.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr Seconds kNoteEvery{10.0};
constexpr const char* kJournalName = "drive-journal.jsonl";

} // namespace

std::vector<FollowedTank> levelsToKeep(const LiveLevel& level)
{
    if (!level.known() || level.state().rising)
        return {};
    std::vector<FollowedTank> levels{{std::nullopt, level.state().level}};
    for (const auto& [tank, litres] : level.tankLevels())
        levels.push_back({tank, litres});
    return levels;
}

Result<DriveKeeper> DriveKeeper::start(Car& car)
{
    const Result<VehicleLog> log = car.log();
    Result<DriveJournal> journal =
        log ? DriveJournal::open(car.folder() / kJournalName) : Result<DriveJournal>(fail(log.error()));
    if (!journal)
        return fail(journal.error());
    DriveKeeper keeper(car, std::move(*journal));
    keeper.m_driven = log->vehicle.id.uuid;
    for (const Entry<Mode>& mode : log->modes)
        keeper.m_modes.push_back(mode.value.name);
    if (const auto left = keeper.m_journal.drive())
        if (const auto recorded = keeper.record(*left); !recorded)
            return fail(recorded.error());
    return keeper;
}

namespace {

// Not twice: then it is there.
template <class T>
Result<void> recordOnce(Car& car, const T& value)
{
    const auto kept = car.record(value);
    const bool isThere = kept || (kept.error().code == ErrorCode::badInput && kept.error().found == Part(*value.journalId));
    return isThere ? Result<void>() : fail(kept.error());
}

} // namespace

// The journal goes only once all is in the logbook, which takes no journal id twice.
Result<bool> DriveKeeper::record(JournalDrive drive)
{
    const std::string shown = m_car->shownCar();
    if (drive.car != shown)
        if (const auto turned = m_car->showCar(drive.car); !turned)
            return fail(turned.error());
    if (const Result<VehicleLog> log = m_car->log()) {
        const Instant last = lastRecorded(*log).value_or(drive.time);
        if (drive.time < last)
            drive.levels.clear();
        drive.time = std::max(drive.time, last);
    }
    Result<bool> done = true;
    for (const Trip& trip : tripsOf(drive))
        if (const auto kept = recordOnce(*m_car, trip); !kept)
            done = fail(kept.error());
    for (const LevelRecord& level : levelsOf(drive))
        if (const auto kept = recordOnce(*m_car, level); !kept && kept.error().code != ErrorCode::notFound)
            done = fail(kept.error()); // (its tank may be gone)
    if (drive.car != shown)
        (void)m_car->showCar(shown);
    if (done)
        if (const auto cleared = m_journal.clear(); !cleared)
            return fail(cleared.error());
    return done;
}

std::string DriveKeeper::modeOf(const Sample& sample, const std::string& said)
{
    if (sample.speed)
        m_speedMode.add(sample.time, *sample.speed);
    if (said.empty() && !m_speedMode.mode())
        return {};
    const std::string mode = said.empty() ? *m_speedMode.mode() : said;
    return std::ranges::find(m_modes, mode) != m_modes.end() ? mode : m_modes.front();
}

Result<bool> DriveKeeper::take(const Sample& sample, const std::string& mode)
{
    const Result<bool> over = look(sample.time);
    const std::string known = modeOf(sample, mode);
    m_ways.add(sample, known);
    if (!known.empty()) // its first half minute was driven so, too
        m_ways.rename({}, known);
    if (!over)
        return over;
    const bool due = !m_notedAt || std::abs((sample.time - *m_notedAt).count()) >= kNoteEvery.count();
    if (due && !m_ways.ways().empty())
        if (const auto noted = note(sample.time); !noted)
            return fail(noted.error());
    return over;
}

Result<void> DriveKeeper::note(Seconds now)
{
    m_notedAt = now;
    if (m_id.empty())
        m_id = logbook::newUuid();
    DrivenWays ways = m_ways;
    ways.rename({}, m_modes.front());
    return m_journal.note({m_id, m_driven, m_car->time(), ways.ways(),
                           fillIsMissing() ? std::vector<FollowedTank>() : m_levels});
}

bool DriveKeeper::fillIsMissing()
{
    if (!m_fuelAt)
        return false;
    const Result<VehicleLog> log = m_car->log();
    if (log && log->vehicle.id.uuid == m_driven && !log->fills.empty() && log->fills.back().value.time >= *m_fuelAt)
        m_fuelAt.reset();
    return m_fuelAt.has_value();
}

Result<bool> DriveKeeper::look(Seconds now)
{
    return m_ways.over(now) ? end() : false;
}

Result<bool> DriveKeeper::fuelWentIn()
{
    m_fuelAt = m_car->time();
    return end();
}

Result<bool> DriveKeeper::end()
{
    if (m_ways.ways().empty())
        return false;
    if (const auto noted = note(m_notedAt.value_or(Seconds{})); !noted)
        return fail(noted.error());
    const auto drive = m_journal.drive();
    m_ways.startAnew();
    m_id.clear();
    m_notedAt.reset();
    return drive ? record(*drive) : false;
}

} // namespace undermark
