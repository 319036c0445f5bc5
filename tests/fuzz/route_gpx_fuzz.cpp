// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_gpx.h"
#include "tests/fuzz/plan_answer.h"

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    if (const auto file = readRouteGpx(input.path(), {.fuelWaypoints = "pump"}))
        fuzz::planAlong(file->route);
    return 0;
}
