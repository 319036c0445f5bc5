// SPDX-License-Identifier: GPL-3.0-or-later
//
// Calibration points, and the curve that is fitted through them.
#include "engine/calibration/calibrate.h"
#include "engine/tables/points_csv.h"
#include "tests/fuzz/fuzz_input.h"

#include <cmath>

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    const auto file = readPoints(input.path());
    if (!file)
        return 0;
    const auto fit = fitCalibration(file->points, Sender{}, {.loaded = file->loaded});
    if (!fit || !fit->curve)
        return 0;
    const LevelCurve& curve = *fit->curve;
    const Signal middle = (curve.lowest().signal + curve.highest().signal) * 0.5;
    const LevelReading read = curve.read(middle);
    fuzz::require(!std::isnan(read.added.mean.litres()) && !(read.added.sd < Volume()));
    return 0;
}
