// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/fill_log.h"

namespace undermark {

namespace {

constexpr CsvColumn kMeters[]{{"km"}, {"odometer_km"}};

Result<void> hasItsKm(const Fill& fill, const Where& where)
{
    const bool since = where.column == kMeters[0].name;
    const NumberRange& range = since ? kPositive : kNotNegative;
    if (since ? !fill.sinceLast : !fill.odometer)
        return fail(ErrorCode::badInput, Sentence::of("the number is missing"), where, range.words);
    if (since && !(*fill.sinceLast > Distance()))
        return fail(ErrorCode::badInput, Sentence::of("the number is outside what is possible"),
                    where, range.words, "0");
    return {};
}

} // namespace

Result<Imported<Fill>> readFillLog(const std::filesystem::path& file)
{
    const auto header = CsvReader::open(file, kMeters);
    if (!header)
        return fail(header.error());
    const bool since = header->has(0);
    if (since == header->has(1))
        return fail(ErrorCode::badInput,
                    Sentence::of("the header must name one of km and odometer_km"),
                    {file.string(), header->line(), "km"}, Sentence::of("km or odometer_km"),
                    Sentence::part(since ? Sentence::of("both") : Sentence::of("neither")));
    const std::string meter(kMeters[since ? 0 : 1].name);
    ImportOptions options;
    options.columns = {{since ? "trip_meter_km" : "odometer_km", meter}};
    auto log = readTable<Fill>(file, options);
    if (!log)
        return log;
    for (std::size_t i = 0; i < log->rows.size(); ++i)
        if (auto has = hasItsKm(log->rows[i], {file.string(), log->lines[i], meter}); !has)
            return fail(has.error());
    return log;
}

} // namespace undermark
