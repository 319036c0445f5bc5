// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a record must not contradict in the logbook as it stands: names that are taken, modes
// and tanks that are not there or are still needed, what the car wrote and is there already. Errors: badInput, notFound. Only for logbook.cpp.
#pragma once

#include "engine/logbook/ledger.h"

#include <set>

namespace undermark::logbook {

// What entries of a vehicle may name, or must not name once more.
struct Names {
    std::set<std::string> modes, tanks, journal;

    template <class T>
    std::set<std::string>& of() { return std::is_same_v<T, Mode> ? modes : tanks; }
};

template <class T>
std::set<std::string> namesOf(const SQLite::Database& database, RowId vehicle)
{
    std::set<std::string> names;
    for (const Entry<T>& entry : readInForce<T>(database, vehicle))
        names.insert(entry.value.name);
    return names;
}

// `values` are about to be added: those of the car's journal are looked up.
template <class T>
Names namesFor(const SQLite::Database& database, RowId vehicle, std::span<const T> values)
{
    Names names{namesOf<Mode>(database, vehicle), namesOf<ExtraTank>(database, vehicle), {}};
    if constexpr (kOfJournal<T>)
        for (const T& value : values)
            if (value.journalId && journalHas(database, tableOf<T>(), vehicle, *value.journalId))
                names.journal.insert(*value.journalId);
    return names;
}

inline Result<void> nameIsFree(const SQLite::Database& database, const std::string& name,
                               const EntryId& except)
{
    for (const Entry<Vehicle>& other : readInForce<Vehicle>(database, std::nullopt))
        if (other.value.name == name && other.id != except)
            return failInput(Sentence::of("there is a vehicle of that name already"), {}, name);
    return {};
}

inline Sentence nameIsTaken(const Mode&)
{
    return Sentence::of("there is a mode of that name already");
}
inline Sentence nameIsTaken(const ExtraTank&)
{
    return Sentence::of("there is a tank of that name already");
}
inline Sentence keepsItsName(const Mode&) { return Sentence::of("a mode keeps its name"); }
inline Sentence keepsItsName(const ExtraTank&) { return Sentence::of("a tank keeps its name"); }

// What a value must not contradict in the logbook as it stands. A name that it brings is
// added to `names`.
template <class T>
Result<void> fits(const T& value, Names& names)
{
    std::optional<std::string> mode, tank;
    if constexpr (kIsNamed<T>)
        if (!names.of<T>().insert(value.name).second)
            return failInput(nameIsTaken(value), {}, value.name);
    if constexpr (kIsOneOf<T, Trip, Proof>)
        mode = value.mode;
    if constexpr (kOfTank<T>)
        tank = value.tank;
    if (mode && !names.modes.contains(*mode))
        return notFound(Sentence::of("the vehicle has no such mode"), *mode);
    if (tank && !names.tanks.contains(*tank))
        return notFound(Sentence::of("the vehicle has no such tank"), *tank);
    if constexpr (kOfJournal<T>)
        if (value.journalId && !names.journal.insert(*value.journalId).second)
            return failInput(Sentence::of("this trip of the car's journal is kept already"), {},
                             *value.journalId);
    return {};
}

// What a correction must not contradict; `entry` is the one that it corrects.
template <class T>
Result<void> fitsAsCorrection(const SQLite::Database& database, const EntryId& id,
                              const Found& entry, const T& value)
{
    if constexpr (std::is_same_v<T, Vehicle>) {
        return nameIsFree(database, value.name, id);
    } else {
        Names names = namesFor<T>(database, *entry.vehicle, {});
        if constexpr (kIsNamed<T>) {
            const std::string name = readVersions<T>(database, entry.id).front().value.name;
            if (value.name != name)
                return failInput(keepsItsName(value), Sentence::just(name), value.name);
            if (rowInForce(database, entry.id))
                names.of<T>().erase(name);
        }
        return fits(value, names);
    }
}

template <class T>
Result<void> isNotNamed(const SQLite::Database& database, const Found& entry, Sentence why)
{
    const std::string name = readVersions<T>(database, entry.id).front().value.name;
    if (isNamed(database, *entry.vehicle, tableOf<T>().kind, name))
        return failInput(std::move(why), {}, name);
    return {};
}

// What other entries name must stay.
inline Result<void> mayBeUndone(const SQLite::Database& database, const Found& entry)
{
    if (standingRows(database, entry.id) > 1)
        return {};
    if (entry.kind == tableOf<Mode>().kind)
        return isNotNamed<Mode>(database, entry, Sentence::of("trips or proofs name this mode"));
    if (entry.kind == tableOf<ExtraTank>().kind)
        return isNotNamed<ExtraTank>(database, entry,
                                     Sentence::of("other entries name this tank"));
    return {};
}

} // namespace undermark::logbook
