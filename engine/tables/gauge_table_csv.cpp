// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gauge_table_csv.h"

#include <charconv>

namespace undermark {

namespace {

// Always with a decimal point, whatever locale a toolkit has set.
std::string digits(double value, std::chars_format style, int precision)
{
    char text[400];   // the longest double in fixed style takes some 320
    const auto end = std::to_chars(text, text + sizeof text, value, style, precision).ptr;
    return {text, end};
}

} // namespace

std::string gaugeTableCsv(const GaugeTable& table, GaugeUnit unit, int decimals)
{
    std::string text = unit == GaugeUnit::percent ? "signal,percent\n" : "signal,litres\n";
    for (const GaugeTableRow& row : table.rows)
        text += digits(row.signal.value(), std::chars_format::general, 8) + ','
            + digits(row.value, std::chars_format::fixed, decimals) + '\n';
    return text;
}

} // namespace undermark
