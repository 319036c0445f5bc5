// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/fill_columns.h"

#include "engine/logbook/column_of.h"

#include <array>

namespace undermark::logbook {

namespace {

bool isYes(const Cell& cell) { return std::get<std::int64_t>(cell) != 0; }

constexpr std::array kRulings{"counted", "left-out"};
constexpr std::array kRulingsTold{"counts", "left out"};

template <const auto& words>
Cell rulingOf(const Fill& fill)
{
    return fill.counted ? Cell(std::string(words[*fill.counted ? 0 : 1])) : Cell();
}

} // namespace

std::vector<CsvField<Fill>> extentInTables()
{
    return {{{"full", Measure::yesNo},
             {[](const Fill& fill) -> Cell { return std::int64_t(fill.extent != FillExtent::partial); },
              [](Fill& fill, const Cell& cell) {
                  fill.extent = isYes(cell) ? FillExtent::full : FillExtent::partial;
                  return true;
              }}},
            {{"to_the_neck", Measure::yesNo},
             {[](const Fill& fill) -> Cell { return std::int64_t(fill.extent == FillExtent::neck); },
              [](Fill& fill, const Cell& cell) {
                  if (isYes(cell))
                      fill.extent = FillExtent::neck;
                  return true;
              }}}};
}

CsvField<Fill> totalPrice(const ColumnRange& range)
{
    return {{"price_total", Measure::number, false, &range},
            {nullptr, [](Fill& fill, const Cell& cell) {
                 if (!fill.pricePerLitre && fill.volume > Volume())
                     fill.pricePerLitre = *numberIn(cell) / fill.volume.litres();
                 return true;
             }}};
}

Column<Fill> ruling()
{
    return {{"ruling", "ruling", CellType::text, false, ColumnOf<Fill>::oneOf("ruling", kRulings)},
            {&rulingOf<kRulings>,
             [](Fill& fill, const Cell& cell) {
                 const auto* word = std::get_if<std::string>(&cell);
                 if (word)
                     fill.counted = *word == kRulings[0];
                 return word ? *word == kRulings[0] || *word == kRulings[1]
                             : std::holds_alternative<std::monostate>(cell);
             }},
            {ColumnOf<Fill>::yesNo<&Fill::counted>("counted")},
            CsvField<Fill>{{"ruling", Measure::text}, {&rulingOf<kRulingsTold>}}};
}

} // namespace undermark::logbook
