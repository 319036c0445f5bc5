// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/pumps_along.h"
#include "tests/fuzz/fuzz_input.h"

using namespace undermark;

// The bytes as a map's extract, and as the text of opening hours.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    GeoLine line;
    line.join({0, 0});
    line.join({0, .02});
    if (const auto found = findPumpsAlong(line, input.path(), {}))
        for (const PumpAlong& pump : found->pumps)
            fuzz::require(pump.detour >= 2 * pump.off && pump.at <= line.length());
    if (const auto hours = OpeningHours::parse({reinterpret_cast<const char*>(data), size}))
        for (int day = 1; day <= 28; ++day)
            for (const auto& span : hours->on(std::chrono::year(2026) / 2 / day))
                fuzz::require(span.from >= 0 && span.from < span.to && span.to <= 24 * 60);
    // libosmium keeps the descriptor of a file whose header it refuses: thousands run out of them.
    for (int descriptor = 3; descriptor < 16; ++descriptor)
        ::close(descriptor);
    return 0;
}
