// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/import_csv.h"

#include "engine/tables/csv_writer.h"
#include "engine/tables/record_reader.h"

#include <cmath>
#include <map>
#include <set>

namespace undermark {

namespace {

enum OtherColumn { kVehicle, kId };

// What columns do not say one by one.
Result<void> together(const Fill&, const RecordReader<Fill>&) { return {}; }

Result<void> together(const Trip& trip, const RecordReader<Trip>& reader)
{
    if (trip.mode.empty())
        return fail(reader.csv().errorAt(reader.column("mode"),
                                         Sentence::of("a trip needs its driving mode"),
                                         Sentence::of("a mode of the vehicle")));
    if (!(trip.distance > Distance()) && !trip.idle)
        return fail(reader.csv().errorAt(reader.column("km"),
                                         Sentence::of("a trip without kilometres needs idle minutes"),
                                         Sentence::of("km above 0")));
    return {};
}

Result<void> together(const LevelRecord& level, const RecordReader<LevelRecord>& reader)
{
    const auto lacks = [&](const char* column, Sentence what, Sentence expected) {
        return fail(reader.csv().errorAt(reader.column(column), std::move(what), std::move(expected)));
    };
    if (!level.signal && !level.usable && !level.added)
        return lacks("signal", Sentence::of("a level needs a reading or litres"), Sentence::of("a number"));
    if (!level.signal && (level.signal2 || level.signalSd))
        return lacks("signal", Sentence::of("a second reading or a noise goes with a reading"), Sentence::of("a number"));
    return {};
}

// Numbers that came through a table are equal to its digits, not to the last bit.
long long rounded(double value) { return std::llround(value * 1e6); }

auto keyOf(const Fill& fill)
{
    const Distance km = fill.odometer.value_or(fill.sinceLast.value_or(Distance()));
    return std::tuple(fill.time, rounded(fill.volume.litres()), rounded(km.km()));
}

auto keyOf(const Trip& trip) { return std::tuple(trip.time, rounded(trip.distance.km()), trip.mode); }

auto keyOf(const LevelRecord& level)
{
    const auto litres = [](const auto& estimate) { return estimate ? rounded(estimate->mean.litres()) : -1; };
    return std::tuple(level.time, level.tank, level.signal ? rounded(level.signal->value()) : 0, litres(level.usable),
                      litres(level.added));
}

template <class T>
std::vector<std::size_t> newOnes(const Imported<T>& file, const std::vector<Entry<T>>& known,
                                 bool onceInFile)
{
    std::set<std::string> ids;
    std::map<decltype(keyOf(T{})), int> unclaimed;
    for (const Entry<T>& entry : known) {
        ids.insert(entry.id.uuid);
        ++unclaimed[keyOf(entry.value)];
    }
    std::set<decltype(keyOf(T{}))> seen;
    std::vector<std::size_t> fresh;
    for (std::size_t i = 0; i < file.rows.size(); ++i) {
        const auto key = keyOf(file.rows[i]);
        const bool again = !seen.insert(key).second && onceInFile;
        const auto like = unclaimed.find(key);
        const bool isKnown = like != unclaimed.end() && like->second > 0;
        if (isKnown)
            --like->second;
        if (!again && !isKnown && !ids.contains(file.ids[i]))
            fresh.push_back(i);
    }
    return fresh;
}

template <class T>
bool hasNeeded(const std::set<std::string>& header, const ImportOptions& options)
{
    return std::ranges::all_of(logbook::tableOf<T>().csvFields(), [&](const auto& field) {
        const auto renamed = options.columns.find(field.name);
        return !field.needed
            || header.contains(renamed == options.columns.end() ? std::string(field.name)
                                                                : renamed->second);
    });
}

} // namespace

Result<TableKind> tableKind(const std::filesystem::path& file, const ImportOptions& options)
{
    const auto csv = CsvReader::open(file, {});
    if (!csv)
        return fail(csv.error());
    const std::set<std::string> header(csv->unknownColumns().begin(), csv->unknownColumns().end());
    const auto has = [&header](const char* column) { return header.contains(column); };
    if (has("signal") && (has("poured_l") || has("total_l")) && !has("origin"))
        return TableKind::points;
    if (has("date") && has("kind"))
        return TableKind::proofs;
    if (hasNeeded<Fill>(header, options))
        return TableKind::fills;
    if (hasNeeded<Trip>(header, options))
        return TableKind::trips;
    return has("date") && (has("signal") || has("usable_l")) ? TableKind::levels : TableKind::unknown;
}

template <class T>
Result<Imported<T>> readTable(const std::filesystem::path& file, const ImportOptions& options)
{
    auto reader = RecordReader<T>::open(file, options, {{"vehicle"}, {"id"}});
    if (!reader)
        return fail(reader.error());
    const CsvReader& csv = reader->csv();
    Imported<T> all;
    all.unknownColumns = csv.unknownColumns();
    for (;;) {
        const auto more = reader->nextRow();
        if (!more)
            return fail(more.error());
        if (!*more)
            break;
        const std::string_view vehicle = csv.text(reader->other(kVehicle));
        if (!vehicle.empty() && !options.vehicle.empty() && plainText(vehicle) != options.vehicle) {
            ++all.ofOthers;
            continue;
        }
        auto record = reader->record();
        if (!record)
            return fail(record.error());
        if (const auto sound = together(*record, *reader); !sound)
            return fail(sound.error());
        if (all.rows.size() == kMostImportedRows)
            return fail(csv.errorAt(0, Sentence::of("the file is too long"),
                                    Sentence::of("%1 rows at most", counted(kMostImportedRows))));
        all.rows.push_back(std::move(*record));
        all.lines.push_back(csv.line());
        all.ids.emplace_back(csv.text(reader->other(kId)));
    }
    if (all.rows.empty() && all.ofOthers == 0)
        return fail(csv.errorAt(0, Sentence::of("the file holds no row"), Sentence::of("at least one")));
    return all;
}

template Result<Imported<Fill>> readTable(const std::filesystem::path&, const ImportOptions&);
template Result<Imported<Trip>> readTable(const std::filesystem::path&, const ImportOptions&);
template Result<Imported<LevelRecord>> readTable(const std::filesystem::path&, const ImportOptions&);

std::vector<std::size_t> newRows(const Imported<Fill>& file, const std::vector<Entry<Fill>>& known)
{
    return newOnes(file, known, true);
}

std::vector<std::size_t> newRows(const Imported<Trip>& file, const std::vector<Entry<Trip>>& known)
{
    return newOnes(file, known, false);
}

std::vector<std::size_t> newRows(const Imported<LevelRecord>& file, const std::vector<Entry<LevelRecord>>& known)
{
    return newOnes(file, known, true);
}

} // namespace undermark
