// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/logbook.h"

#include "engine/logbook/contradictions.h"
#include "engine/logbook/logbook_impl.h"
#include "engine/logbook/schema.h"
#include "engine/logbook/validate.h"

#include <sqlite3.h>

#include <algorithm>
#include <set>

namespace undermark {

using namespace logbook;

namespace {

using SQLite::TransactionBehavior;

Sentence noSuchEntry()
{
    return Sentence::of("there is no such entry");
}

} // namespace

const Entry<Calibration>* VehicleLog::latestCalibration(const std::optional<std::string>& tank) const
{
    const auto latest = std::find_if(calibrations.rbegin(), calibrations.rend(),
                                     [&](const auto& each) { return each.value.tank == tank; });
    return latest == calibrations.rend() ? nullptr : &*latest;
}

const VerificationRecord* VehicleLog::latestVerification() const
{
    const auto latest = std::find_if(verifications.rbegin(), verifications.rend(),
                                     [](const auto& each) { return !each.value.tank; });
    const bool isOfIt =
        latest != verifications.rend() && calibration && latest->value.time >= calibration->value.time;
    return isOfIt ? &latest->value : nullptr;
}

Logbook::Logbook(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
Logbook::Logbook(Logbook&&) noexcept = default;
Logbook& Logbook::operator=(Logbook&&) noexcept = default;
Logbook::~Logbook() = default;

Result<Logbook> Logbook::open(const std::filesystem::path& file, OpenMode mode,
                              std::chrono::milliseconds busyTimeout)
{
    auto database = openDatabase(file, mode, busyTimeout);
    if (!database)
        return fail(database.error());
    return Logbook(std::unique_ptr<Impl>(new Impl{std::move(*database), file}));
}

const std::filesystem::path& Logbook::file() const { return m_impl->file; }

Result<EntryId> Logbook::addVehicle(const Vehicle& vehicle, Instant now)
{
    if (const auto valid = validateTime(now).and_then([&] { return validate(vehicle); }); !valid)
        return fail(valid.error());
    return guarded(m_impl->file, [&]() -> Result<EntryId> {
        SQLite::Transaction transaction(m_impl->database, TransactionBehavior::IMMEDIATE);
        if (const auto free = nameIsFree(m_impl->database, vehicle.name, {}); !free)
            return fail(free.error());
        LedgerRow row;
        row.recorded = now;
        const auto [id, uuid] = Writer<Vehicle>(m_impl->database).write(row, vehicle);
        row.vehicle = id;
        Writer<Mode> modes(m_impl->database);
        for (const char* name : kStandardModes)
            modes.write(row, Mode{name, std::nullopt});
        transaction.commit();
        return uuid;
    });
}

Result<std::vector<Entry<Vehicle>>> Logbook::vehicles() const
{
    return guarded(m_impl->file, [&]() -> Result<std::vector<Entry<Vehicle>>> {
        return readInForce<Vehicle>(m_impl->database, std::nullopt);
    });
}

template <class T>
Result<EntryId> Logbook::add(const EntryId& vehicle, const T& value, Instant now)
{
    const auto added = addAll(vehicle, std::span<const T>(&value, 1), now);
    if (!added)
        return fail(added.error());
    return added->front();
}

template <class T>
Result<std::vector<EntryId>> Logbook::addAll(const EntryId& vehicle, std::span<const T> values,
                                             Instant now)
{
    auto valid = validateTime(now);
    for (const T& value : values)
        valid = valid.and_then([&] { return validate(value); });
    if (!valid)
        return fail(valid.error());
    return guarded(m_impl->file, [&]() -> Result<std::vector<EntryId>> {
        SQLite::Transaction transaction(m_impl->database, TransactionBehavior::IMMEDIATE);
        const auto owner = vehicleOf(m_impl->database, vehicle);
        if (!owner)
            return fail(owner.error());
        Names names = namesFor<T>(m_impl->database, owner->id, values);
        LedgerRow row;
        row.vehicle = owner->id;
        row.recorded = now;
        Writer<T> writer(m_impl->database);
        std::vector<EntryId> ids;
        for (const T& value : values) {
            if (const auto fitting = fits(value, names); !fitting)
                return fail(fitting.error());
            ids.push_back(writer.write(row, value).second);
        }
        transaction.commit();
        return ids;
    });
}

template <class T>
Result<std::vector<Entry<T>>> Logbook::entries(const EntryId& vehicle) const
{
    return guarded(m_impl->file, [&]() -> Result<std::vector<Entry<T>>> {
        SQLite::Transaction snapshot(m_impl->database);
        const auto owner = vehicleOf(m_impl->database, vehicle);
        if (!owner)
            return fail(owner.error());
        return readInForce<T>(m_impl->database, owner->id);
    });
}

Result<VehicleLog> Logbook::load(const EntryId& vehicle) const
{
    return guarded(m_impl->file, [&]() -> Result<VehicleLog> {
        SQLite::Database& database = m_impl->database;
        SQLite::Transaction snapshot(database);
        const auto owner = vehicleOf(database, vehicle);
        if (!owner)
            return fail(owner.error());
        VehicleLog log;
        auto vehicles = readInForce<Vehicle>(database, std::nullopt);
        log.vehicle = std::move(*std::ranges::find(vehicles, vehicle, &Entry<Vehicle>::id));
        log.modes = readInForce<Mode>(database, owner->id);
        if (log.modes.empty())
            throw SQLite::Exception("a vehicle without a mode of driving", SQLITE_CORRUPT);
        log.calibrations = readInForce<Calibration>(database, owner->id);
        if (const Entry<Calibration>* latest = log.latestCalibration(std::nullopt))
            log.calibration = *latest;
        log.fills = readInForce<Fill>(database, owner->id);
        log.trips = readInForce<Trip>(database, owner->id);
        log.proofs = readInForce<Proof>(database, owner->id);
        log.tanks = readInForce<ExtraTank>(database, owner->id);
        log.verifications = readInForce<VerificationRecord>(database, owner->id);
        log.photos = readInForce<Photo>(database, owner->id);
        log.pumps = readInForce<OwnPump>(database, owner->id);
        log.handOvers = readInForce<HandOverRecord>(database, owner->id);
        log.sources = readInForce<LiveSource>(database, owner->id);
        log.levels = readInForce<LevelRecord>(database, owner->id);
        log.state = stateOf(database);
        return log;
    });
}

template <class T>
Result<void> Logbook::supersede(const EntryId& id, const T& value, Instant now)
{
    if (const auto valid = validateTime(now).and_then([&] { return validate(value); }); !valid)
        return valid;
    return guarded(m_impl->file, [&]() -> Result<void> {
        SQLite::Transaction transaction(m_impl->database, TransactionBehavior::IMMEDIATE);
        const auto entry = findEntry(m_impl->database, id, tableOf<T>().kind);
        if (!entry)
            return notFound(noSuchEntry(), id.uuid);
        if (const auto fitting = fitsAsCorrection(m_impl->database, id, *entry, value); !fitting)
            return fitting;
        LedgerRow row;
        row.vehicle = entry->vehicle;
        row.recorded = now;
        row.corrects = entry->id;
        row.revision = nextRevision(m_impl->database, entry->id);
        Writer<T>(m_impl->database).write(row, value);
        transaction.commit();
        return {};
    });
}

// Within a transaction.
static Result<void> withdraw(const SQLite::Database& database, const EntryId& id, Instant now)
{
    const auto entry = findEntry(database, id);
    if (!entry)
        return notFound(Sentence::of("there is no such entry"), id.uuid);
    LedgerRow row;
    row.withdraws = rowInForce(database, entry->id);
    if (!row.withdraws)
        return failInput(Sentence::of("nothing of this entry is left to undo"), {}, id.uuid);
    if (const auto free = mayBeUndone(database, *entry); !free)
        return free;
    row.vehicle = entry->vehicle;
    row.recorded = now;
    row.corrects = entry->id;
    row.revision = nextRevision(database, entry->id);
    LedgerWriter(database, entry->kind.c_str()).write(row);
    return {};
}

Result<void> Logbook::undo(const EntryId& id, Instant now)
{
    return undoAll(std::span(&id, 1), now);
}

Result<void> Logbook::undoAll(std::span<const EntryId> ids, Instant now)
{
    if (const auto valid = validateTime(now); !valid)
        return valid;
    return guarded(m_impl->file, [&]() -> Result<void> {
        SQLite::Transaction transaction(m_impl->database, TransactionBehavior::IMMEDIATE);
        for (const EntryId& id : ids)
            if (const auto done = withdraw(m_impl->database, id, now); !done)
                return done;
        transaction.commit();
        return {};
    });
}

template <class T>
Result<std::vector<Version<T>>> Logbook::versions(const EntryId& id) const
{
    return guarded(m_impl->file, [&]() -> Result<std::vector<Version<T>>> {
        SQLite::Transaction snapshot(m_impl->database);
        const auto entry = findEntry(m_impl->database, id, tableOf<T>().kind);
        if (!entry)
            return notFound(noSuchEntry(), id.uuid);
        return readVersions<T>(m_impl->database, entry->id);
    });
}

Result<std::int64_t> Logbook::dataVersion() const
{
    return guarded(m_impl->file, [&]() -> Result<std::int64_t> {
        return m_impl->database.execAndGet("PRAGMA data_version").getInt64();
    });
}

Result<FileState> Logbook::state() const
{
    return guarded(m_impl->file, [&]() -> Result<FileState> { return stateOf(m_impl->database); });
}

Result<std::optional<std::int64_t>> Logbook::newerSchema() const
{
    return guarded(m_impl->file, [&]() -> Result<std::optional<std::int64_t>> {
        const std::int64_t version = m_impl->database.execAndGet("PRAGMA user_version").getInt64();
        return version > kSchemaVersion ? std::optional(version) : std::nullopt;
    });
}

Result<void> Logbook::checkIntegrity() const
{
    return guarded(m_impl->file, [&]() -> Result<void> {
        std::string found = m_impl->database.execAndGet("PRAGMA integrity_check(1)").getString();
        if (found == "ok" && SQLite::Statement(m_impl->database, "PRAGMA foreign_key_check").executeStep())
            found = "a row that refers to one that is not there";
        if (found == "ok")
            return {};
        return fail(ErrorCode::damaged, withWhatToDo(Sentence::of("the logbook is damaged")),
                    {m_impl->file.string()}, {}, found);
    });
}

// NOLINTBEGIN(bugprone-macro-parentheses): T is a type
#define UNDERMARK_CORRECTABLE(T)                                                                   \
    template Result<void> Logbook::supersede(const EntryId&, const T&, Instant);                   \
    template Result<std::vector<Version<T>>> Logbook::versions(const EntryId&) const;
#define UNDERMARK_OF_VEHICLE(T)                                                                    \
    UNDERMARK_CORRECTABLE(T)                                                                       \
    template Result<EntryId> Logbook::add(const EntryId&, const T&, Instant);                      \
    template Result<std::vector<EntryId>> Logbook::addAll(const EntryId&, std::span<const T>,      \
                                                          Instant);                                \
    template Result<std::vector<Entry<T>>> Logbook::entries(const EntryId&) const;
// NOLINTEND(bugprone-macro-parentheses)
UNDERMARK_CORRECTABLE(Vehicle)
UNDERMARK_OF_VEHICLE(Mode)
UNDERMARK_OF_VEHICLE(Calibration)
UNDERMARK_OF_VEHICLE(Fill)
UNDERMARK_OF_VEHICLE(Trip)
UNDERMARK_OF_VEHICLE(Proof)
UNDERMARK_OF_VEHICLE(ExtraTank)
UNDERMARK_OF_VEHICLE(VerificationRecord)
UNDERMARK_OF_VEHICLE(LiveSource)
UNDERMARK_OF_VEHICLE(OwnPump)
UNDERMARK_OF_VEHICLE(Photo)
UNDERMARK_OF_VEHICLE(HandOverRecord)
UNDERMARK_OF_VEHICLE(LevelRecord)

} // namespace undermark
