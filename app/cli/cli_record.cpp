// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_record.h"

#include "app/cli/cli_logbook.h"
#include "engine/tables/typed_range.h"

#include <algorithm>

namespace undermark {

using logbook::Cell;
using logbook::CsvShape;
using logbook::Measure;

namespace {

CLI::Option& addColumn(CLI::App& command, const CsvShape& shape, TypedCell& typed)
{
    std::string flag = std::string("--") + shape.name;
    std::ranges::replace(flag, '_', '-');
    if (shape.measure == Measure::text)
        return addText(command, flag, typed.text, shape.about);
    if (shape.measure == Measure::yesNo)
        return addFlag(command, flag, typed.yes, shape.about);
    CsvShape asked = shape;
    if (shape.asked)
        asked.range = shape.asked;
    if (shape.measure == Measure::count)
        return addCount(command, flag, typed.count, typedRange(asked), shape.about);
    return addNumber(command, flag, typed.number, typedRange(asked), shape.about);
}

} // namespace

Cell TypedCell::cell() const
{
    if (number)
        return *number;
    if (count)
        return std::int64_t(*count);
    if (!text.empty())
        return text;
    return yes ? Cell(std::int64_t(1)) : Cell();
}

void addTyped(CLI::App& command, const CsvShape& shape, TypedCell& typed)
{
    CLI::Option& option = addColumn(command, shape, typed);
    if (shape.needed)
        required(option);
}

Json cellJson(const Cell& cell, Measure measure)
{
    if (const auto* number = std::get_if<double>(&cell))
        return *number;
    if (const auto* text = std::get_if<std::string>(&cell))
        return *text;
    const auto* whole = std::get_if<std::int64_t>(&cell);
    if (!whole)
        return {};
    if (measure == Measure::date)
        return dateJson(Instant(std::chrono::seconds(*whole)));
    return measure == Measure::yesNo ? Json(*whole != 0) : Json(*whole);
}

} // namespace undermark
