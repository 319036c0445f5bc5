// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/record_reader.h"

#include "engine/tables/csv_writer.h"
#include "engine/tables/typed_range.h"

#include <cmath>

namespace undermark {

using logbook::Cell;
using logbook::CsvShape;
using logbook::Measure;

namespace {

const NumberRange kFuelFahrenheit{-76, 176, Sentence::of("degrees Fahrenheit from -76 to 176")};

Consumption rateOf(double number, RateUnit unit)
{
    switch (unit) {
    case RateUnit::kmPerLitre: return Consumption::fromKmPerLitre(number);
    case RateUnit::mpgUs: return Consumption::fromMpgUs(number);
    case RateUnit::mpgImperial: return Consumption::fromMpgImperial(number);
    case RateUnit::litresPer100Km: break;
    }
    return Consumption::fromLitresPer100Km(number);
}

// From the file's unit to litres, km, degrees Celsius or L/100 km.
double converted(double number, Measure measure, const ImportOptions& options)
{
    switch (measure) {
    case Measure::volume: return (options.litre * number).litres();
    case Measure::distance: return (options.km * number).km();
    case Measure::pricePerVolume: return 1.0 / options.litre.litres() * number;
    case Measure::temperature: return options.fahrenheit ? (number - 32.0) / 1.8 : number;
    case Measure::rate: return rateOf(number, options.rate).litresPer100Km();
    default: return number;
    }
}

Result<Cell> numberOf(const CsvReader& csv, std::size_t column, const CsvShape& shape,
                      const ImportOptions& options)
{
    if (!shape.needed && csv.text(column).empty())
        return Cell();
    const bool inFahrenheit = shape.measure == Measure::temperature && options.fahrenheit;
    const NumberRange range = inFahrenheit ? kFuelFahrenheit : typedRange(shape);
    const auto number = csv.number(column, range);
    if (!number)
        return fail(number.error());
    if (shape.measure == Measure::count && *number != std::floor(*number))
        return fail(csv.errorAt(column, Sentence::of("this must be a whole number"), range.words));
    return Cell(converted(*number, shape.measure, options));
}

Result<Cell> dateOf(const CsvReader& csv, std::size_t column, DateOrder order)
{
    const auto time = parseDate(csv.text(column), order);
    if (!time)
        return fail(csv.errorAt(column, time.error().detail, time.error().expected));
    return Cell(std::int64_t(time->time_since_epoch().count()));
}

Result<Cell> yesNoOf(const CsvReader& csv, std::size_t column)
{
    const std::string_view text = csv.text(column);
    if (text.empty())
        return Cell();
    if (text != "1" && text != "0")
        return fail(csv.errorAt(column, Sentence::of("this is neither yes nor no"),
                                Sentence::of("1 or 0")));
    return Cell(std::int64_t(text == "1"));
}

} // namespace

Result<void> rename(std::vector<CsvColumn>& columns, const ImportOptions& options)
{
    std::string names;
    for (const CsvColumn& column : columns)
        names += (names.empty() ? "" : ", ") + std::string(column.name);
    std::vector<CsvColumn> renamed = columns;
    for (const auto& [ours, theirs] : options.columns) {
        const auto found = std::ranges::find(columns, ours, &CsvColumn::name);
        if (found == columns.end())
            return failInput(Sentence::of("this is not a column that can be imported"),
                             Sentence::just(names), ours);
        renamed[std::size_t(found - columns.begin())] = {theirs, true};
    }
    columns = std::move(renamed);
    return {};
}

Result<Cell> cellOf(const CsvReader& csv, std::size_t column, const CsvShape& shape,
                    const ImportOptions& options)
{
    switch (shape.measure) {
    case Measure::date: return dateOf(csv, column, options.dates);
    case Measure::yesNo: return yesNoOf(csv, column);
    case Measure::text: {
        const std::string_view text = plainText(csv.text(column));
        return text.empty() ? Cell() : Cell(std::string(text));
    }
    default: return numberOf(csv, column, shape, options);
    }
}

} // namespace undermark
