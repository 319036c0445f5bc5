// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/points_csv.h"

#include "engine/tables/record_reader.h"

#include <algorithm>

namespace undermark {

namespace {

using PointReader = RecordReader<logbook::PlacedPoint>;

// The columns beside a point's.
const logbook::ColumnRange kOff0On1{0, 1, nullptr, Sentence::of("0 or 1")};
const logbook::CsvShape kLoad{"load", logbook::Measure::count, false, nullptr, &kOff0On1};
constexpr const char* kPoured = "poured_l";
constexpr const char* kTotal = "total_l";
constexpr const char* kEither = "added_l"; // could be read in both ways

// Exactly one of the two says the litres.
Result<void> checkLitres(const PointReader& reader, const std::string& file)
{
    const bool total = reader.csv().has(reader.column(kTotal));
    const bool poured = reader.csv().has(reader.other(1));
    const Sentence expected =
        Sentence::of("poured_l, the litres put in at each step, or total_l, the litres since the "
                     "tank was drained");
    if (reader.csv().has(reader.other(2)))
        return fail(ErrorCode::badInput,
                    Sentence::of("added_l can be read in two ways, which makes a tank wrong by "
                                 "half"),
                    {.file = file, .line = 1, .column = kEither}, expected);
    if (total && poured)
        return fail(ErrorCode::badInput, Sentence::of("the litres stand there twice"),
                    {.file = file, .line = 1, .column = kPoured},
                    Sentence::of("one of poured_l and total_l"));
    if (!total && !poured)
        return fail(ErrorCode::badInput, Sentence::of("a column of litres is missing"),
                    {.file = file, .line = 1}, expected);
    return {};
}

Result<PointsFile> checked(PointsFile read, const std::string& file, bool takenOut)
{
    const auto refuse = [&file](Sentence detail, Sentence expected, std::string found) {
        return fail(ErrorCode::badInput, std::move(detail), {.file = file},
                    std::move(expected), std::move(found));
    };
    if (read.points.size() < 2)
        return refuse(
            Sentence::of("a calibration needs the drained tank and at least one step above it"),
            Sentence::of("two or more rows"), std::to_string(read.points.size()));
    const auto [lowest, highest] = std::ranges::minmax_element(read.points, {}, &CalibrationPoint::added);
    const Volume drained = lowest->added;
    if (highest->added == drained)
        return refuse(Sentence::of("every row has the same litres"),
                      Sentence::of("litres that differ"), {});
    if (drained.litres() != 0.0 && !takenOut)
        read.warnings.push_back(
            Sentence::of("litres are counted from the row with the fewest, which is "
                         "taken as the drained tank"));
    for (auto* rows : {&read.points, &read.loaded})
        for (CalibrationPoint& point : *rows)
            point.added = point.added - drained;
    return read;
}

// As they stand; steps are counted from `start`, and `takenOut` says whether one was negative.
Result<PointsFile> rowsOf(const std::filesystem::path& file, Volume start, bool& takenOut)
{
    const ImportOptions options;   // litres, and our names
    auto reader = PointReader::open(file, options, {{kLoad.name}, {kPoured}, {kEither}},
                                    kTotal);
    if (!reader)
        return fail(reader.error());
    if (const auto sound = checkLitres(*reader, file.string()); !sound)
        return fail(sound.error());
    const bool poured = reader->csv().has(reader->other(1));
    Volume total = start;
    PointsFile read;
    for (const std::string& name : reader->csv().unknownColumns())
        read.warnings.push_back(
            Sentence::of("%1: column '%2' is not known and not used", file.string(), name));
    for (;;) {
        const Result<bool> more = reader->nextRow();
        if (!more)
            return fail(more.error());
        if (!*more)
            break;
        auto point = reader->record();
        if (!point)
            return fail(point.error());
        if (poured) {
            const auto step = reader->csv().number(reader->other(1));
            if (!step)
                return fail(step.error());
            total += Volume::fromLitres(*step);
            takenOut = takenOut || *step < 0;
            point->added = total;
        }
        const auto load = cellOf(reader->csv(), reader->other(0), kLoad, options);
        if (!load)
            return fail(load.error());
        (*load == logbook::Cell(1.0) ? read.loaded : read.points).push_back(*point);
    }
    return read;
}

} // namespace

Result<PointsFile> readPoints(const std::filesystem::path& file)
{
    bool takenOut = false;
    auto read = rowsOf(file, Volume(), takenOut);
    return read ? checked(std::move(*read), file.string(), takenOut) : read;
}

Result<PointsFile> readLevels(const std::filesystem::path& file, Volume start)
{
    bool takenOut = false;
    auto read = rowsOf(file, start, takenOut);
    if (read && read->points.empty())
        return fail(ErrorCode::badInput, Sentence::of("there is no row of a level"), {.file = file.string()},
                    Sentence::of("one or more rows"));
    return read;
}

} // namespace undermark
