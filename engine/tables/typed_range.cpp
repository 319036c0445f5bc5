// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/typed_range.h"

#include "engine/tables/import_csv.h"

namespace undermark {

NumberRange typedRange(const logbook::CsvShape& shape)
{
    if (shape.measure == logbook::Measure::temperature)
        return kFuelTemperature;
    if (shape.typed)
        return {shape.typed->lowest, shape.typed->highest, shape.typed->words};
    return shape.range->lowest > 0 ? kPositive : shape.range->lowest == 0 ? kNotNegative : kAnyNumber;
}

} // namespace undermark
