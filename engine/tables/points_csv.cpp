// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/points_csv.h"

#include "engine/tables/record_reader.h"

#include <algorithm>

namespace undermark {

namespace {

using PointReader = RecordReader<logbook::PlacedPoint>;

// The one column beside a point's.
const logbook::ColumnRange kOff0On1{0, 1, nullptr, Sentence::of("0 or 1")};
const logbook::CsvShape kLoad{"load", logbook::Measure::count, false, nullptr, &kOff0On1};

Result<PointsFile> checked(PointsFile read, const std::string& file)
{
    const auto refuse = [&file](Sentence detail, Sentence expected, std::string found) {
        return fail(ErrorCode::badInput, std::move(detail),
                    {.file = file, .column = "added_l"},
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
    if (drained.litres() != 0.0)
        read.warnings.push_back(
            Sentence::of("litres are counted from the row with the fewest, which is "
                         "taken as the drained tank"));
    for (auto* rows : {&read.points, &read.loaded})
        for (CalibrationPoint& point : *rows)
            point.added = point.added - drained;
    return read;
}

} // namespace

Result<PointsFile> readPoints(const std::filesystem::path& file)
{
    const ImportOptions options;   // litres, and our names
    auto reader = PointReader::open(file, options, {{kLoad.name}});
    if (!reader)
        return fail(reader.error());
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
        const auto load = cellOf(reader->csv(), reader->other(0), kLoad, options);
        if (!load)
            return fail(load.error());
        (*load == logbook::Cell(1.0) ? read.loaded : read.points).push_back(*point);
    }
    return checked(std::move(read), file.string());
}

} // namespace undermark
