// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a record must not contradict in the logbook as it stands: names that are taken, modes
// that are not there or are still needed. Errors: badInput, notFound. Only for logbook.cpp.
#pragma once

#include "engine/logbook/ledger.h"

#include <set>

namespace undermark::logbook {

inline std::set<std::string> modeNames(const SQLite::Database& database, RowId vehicle)
{
    std::set<std::string> names;
    for (const Entry<Mode>& mode : readInForce<Mode>(database, vehicle))
        names.insert(mode.value.name);
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

// What a value must not contradict in the logbook as it stands. `modes` are the
// names of the vehicle's modes; a new mode's name is added to them.
template <class T>
Result<void> fits(const T& value, std::set<std::string>& modes)
{
    std::optional<std::string> named;
    if constexpr (std::is_same_v<T, Mode>) {
        if (!modes.insert(value.name).second)
            return failInput(Sentence::of("there is a mode of that name already"), {}, value.name);
    } else if constexpr (std::is_same_v<T, Trip> || std::is_same_v<T, Proof>) {
        named = value.mode;
    }
    if (named && !modes.contains(*named))
        return notFound(Sentence::of("the vehicle has no such mode"), *named);
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
        std::set<std::string> modes = modeNames(database, *entry.vehicle);
        if constexpr (std::is_same_v<T, Mode>) {
            const std::string name = readVersions<Mode>(database, entry.id).front().value.name;
            if (value.name != name)
                return failInput(Sentence::of("a mode keeps its name"), Sentence::just(name),
                                 value.name);
            if (rowInForce(database, entry.id))
                modes.erase(name);
        }
        return fits(value, modes);
    }
}

// A mode that trips name must stay.
inline Result<void> mayBeUndone(const SQLite::Database& database, const Found& entry)
{
    if (entry.kind != tableOf<Mode>().kind || standingRows(database, entry.id) > 1)
        return {};
    const std::string name = readVersions<Mode>(database, entry.id).front().value.name;
    if (modeIsUsed(database, *entry.vehicle, name))
        return failInput(Sentence::of("trips or proofs name this mode"), {}, name);
    return {};
}

} // namespace undermark::logbook
