// SPDX-License-Identifier: GPL-3.0-or-later
//
// A log of fills, and the forecasts made from it.
#include "engine/consumption/backtest.h"
#include "engine/tables/fill_log.h"
#include "tests/fuzz/fuzz_input.h"

#include <cmath>

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    const auto file = readFillLog(input.path());
    if (!file)
        return 0;
    ConsumptionSetup setup;
    setup.modes = {{kTown, std::nullopt}, {kMotorway, std::nullopt}};
    const Backtest test = backtest(intervalsFrom(file->rows, {}), ConsumptionModel(setup));
    for (const TankForecast& tank : test.forecasts)
        for (const Band& band : tank.forecast.bands)
            fuzz::require(band.low <= band.high);
    return 0;
}
