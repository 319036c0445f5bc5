// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/drive_journal.h"

#include <nlohmann/json.hpp>

#include <cerrno>
#include <cmath>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <sys/file.h>
#include <unistd.h>
#include <utility>

namespace undermark {

namespace {

std::string lineOf(const JournalDrive& drive)
{
    nlohmann::json ways = nlohmann::json::array();
    for (const ModeWay& way : drive.ways)
        ways.push_back({{"mode", way.mode}, {"km", way.way.km()}});
    nlohmann::json levels = nlohmann::json::array();
    for (const FollowedTank& each : drive.levels)
        levels.push_back({{"tank", each.tank.value_or(std::string())},
                          {"added_l", each.added.mean.litres()},
                          {"sd_l", each.added.sd.litres()}});
    return nlohmann::json{{"drive", drive.id},
                          {"car", drive.car},
                          {"time", drive.time.time_since_epoch().count()},
                          {"ways", ways},
                          {"levels", levels}}
               .dump()
        + '\n';
}

std::optional<JournalDrive> driveIn(const std::string& line)
{
    const nlohmann::json json = nlohmann::json::parse(line, nullptr, false);
    JournalDrive drive;
    try {
        drive.id = json.at("drive").get<std::string>();
        drive.car = json.at("car").get<std::string>();
        drive.time = Instant(std::chrono::seconds(json.at("time").get<std::int64_t>()));
        for (const auto& way : json.at("ways"))
            drive.ways.push_back({way.at("mode").get<std::string>(), Distance::fromKm(way.at("km").get<double>())});
        for (const auto& each : json.value("levels", nlohmann::json::array())) { // (none before schema 3)
            const auto tank = each.at("tank").get<std::string>();
            drive.levels.push_back({tank.empty() ? std::nullopt : std::optional(tank),
                                    {Volume::fromLitres(each.at("added_l").get<double>()),
                                     Volume::fromLitres(each.at("sd_l").get<double>())}});
        }
    } catch (const nlohmann::json::exception&) {
        return std::nullopt;
    }
    return drive;
}

} // namespace

std::vector<Trip> tripsOf(const JournalDrive& drive)
{
    std::vector<Trip> trips;
    for (const ModeWay& way : drive.ways) {
        Trip trip;
        trip.time = drive.time;
        trip.distance = way.way;
        trip.mode = way.mode;
        trip.journalId = drive.id + '/' + way.mode;
        trips.push_back(std::move(trip));
    }
    return trips;
}

std::vector<LevelRecord> levelsOf(const JournalDrive& drive)
{
    std::vector<LevelRecord> levels;
    for (const FollowedTank& each : drive.levels) {
        LevelRecord level;
        level.time = drive.time;
        level.added = each.added;
        level.origin = LevelOrigin::followed;
        level.tank = each.tank;
        level.journalId = drive.id + "/level" + (each.tank ? '/' + *each.tank : std::string());
        levels.push_back(std::move(level));
    }
    return levels;
}

Error DriveJournal::problem() const
{
    return Error{ErrorCode::fileAccess, Sentence::just("the drive cannot be kept: " + std::string(std::strerror(errno))),
                 {m_file.string()}};
}

Result<DriveJournal> DriveJournal::open(const std::filesystem::path& file)
{
    DriveJournal journal(file, ::open(file.c_str(), O_RDWR | O_APPEND | O_CREAT | O_CLOEXEC, 0600));
    if (journal.m_handle < 0)
        return fail(journal.problem());
    if (::flock(journal.m_handle, LOCK_EX | LOCK_NB) != 0)
        return fail(Error{ErrorCode::busy, Sentence::of("another program keeps this car's drive"), {file.string()}});
    return journal;
}

DriveJournal::DriveJournal(DriveJournal&& other) noexcept { *this = std::move(other); }

DriveJournal& DriveJournal::operator=(DriveJournal&& other) noexcept
{
    std::swap(m_file, other.m_file);
    std::swap(m_handle, other.m_handle);
    return *this;
}

DriveJournal::~DriveJournal()
{
    if (m_handle >= 0)
        ::close(m_handle);
}

std::optional<JournalDrive> DriveJournal::drive() const
{
    std::ifstream in(m_file);
    std::optional<JournalDrive> newest;
    for (std::string line; std::getline(in, line) && !in.eof();) // (without its end it is not whole)
        if (auto drive = driveIn(line))
            newest = std::move(drive);
    return newest;
}

Result<void> DriveJournal::note(const JournalDrive& drive)
{
    const std::string line = lineOf(drive);
    const bool whole = ::write(m_handle, line.data(), line.size()) == static_cast<ssize_t>(line.size());
    if (!whole || ::fdatasync(m_handle) != 0)
        return fail(problem());
    return {};
}

Result<void> DriveJournal::clear()
{
    if (::ftruncate(m_handle, 0) != 0 || ::fsync(m_handle) != 0)
        return fail(problem());
    return {};
}

} // namespace undermark
