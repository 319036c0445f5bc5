// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/points_csv.h"

#include "engine/tables/csv_reader.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace undermark {

namespace {

enum PointColumn : std::size_t { kPointAdded, kPointSignal, kPointSignal2, kPointSignalSd, kPointReadings, kPointLoad };
constexpr std::array<CsvColumn, 6> kPointColumns{{{"added_l", true},
                                             {"signal", true},
                                             {"signal2", false},
                                             {"signal_sd", false},
                                             {"readings", false},
                                             {"load", false}}};
const NumberRange kReadingCount{1.0, 1e9, Sentence::of("a whole number of 1 or more")};
const NumberRange kSwitch{0.0, 1.0, Sentence::of("0 or 1")};

struct Row {
    CalibrationPoint point;
    bool loaded = false;
};

Result<std::optional<double>> wholeNumber(const CsvReader& reader, PointColumn column,
                                          const NumberRange& range)
{
    const auto value = reader.optionalNumber(column, range);
    if (value && *value && **value != std::floor(**value))
        return fail(
            reader.errorAt(column, Sentence::of("this must be a whole number"), range.words));
    return value;
}

Result<Row> readRow(const CsvReader& reader)
{
    const auto added = reader.number(kPointAdded, kNotNegative);
    const auto signal = reader.number(kPointSignal);
    const auto signal2 = reader.optionalNumber(kPointSignal2);
    const auto signalSd = reader.optionalNumber(kPointSignalSd, kNotNegative);
    const auto readings = wholeNumber(reader, kPointReadings, kReadingCount);
    const auto load = wholeNumber(reader, kPointLoad, kSwitch);
    if (!added || !signal)
        return fail(!added ? added.error() : signal.error());
    for (const auto* value : {&signal2, &signalSd, &readings, &load})
        if (!*value)
            return fail(value->error());
    Row row;
    row.point.added = Volume::fromLitres(*added);
    row.point.signal = Signal::of(*signal);
    if (*signal2)
        row.point.signal2 = Signal::of(**signal2);
    if (*signalSd)
        row.point.signalSd = Signal::of(**signalSd);
    row.point.readings = static_cast<int>(readings->value_or(1.0));
    row.loaded = load->value_or(0.0) == 1.0;
    return row;
}

Result<PointsFile> checked(PointsFile read, const std::string& file)
{
    const auto refuse = [&file](Sentence detail, Sentence expected, std::string found) {
        return fail(ErrorCode::badInput, std::move(detail),
                    {.file = file, .column = std::string(kPointColumns[kPointAdded].name)},
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
    auto reader = CsvReader::open(file, kPointColumns);
    if (!reader)
        return fail(reader.error());
    PointsFile read;
    for (const std::string& name : reader->unknownColumns())
        read.warnings.push_back(
            Sentence::of("%1: column '%2' is not known and not used", file.string(), name));
    for (;;) {
        const Result<bool> more = reader->nextRow();
        if (!more)
            return fail(more.error());
        if (!*more)
            break;
        const Result<Row> row = readRow(*reader);
        if (!row)
            return fail(row.error());
        (row->loaded ? read.loaded : read.points).push_back(row->point);
    }
    return checked(std::move(read), file.string());
}

} // namespace undermark
