// SPDX-License-Identifier: GPL-3.0-or-later
//
// Any bytes as a logbook: opened for reading, everything in it loaded and learnt
// from. Reading never changes the file.
#include "engine/logbook/logbook.h"
#include "engine/outlook/outlook.h"
#include "tests/fuzz/fuzz_input.h"

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const fuzz::InputFile input(data, size);
    auto logbook = Logbook::open(input.path(), OpenMode::readOnly, std::chrono::milliseconds(0));
    if (!logbook)
        return 0;
    const auto vehicles = logbook->vehicles();
    if (!vehicles)
        return 0;
    for (const Entry<Vehicle>& vehicle : *vehicles) {
        auto log = logbook->load(vehicle.id);
        if (!log)
            continue;
        if (const auto car = learn(std::move(*log)))
            (void)outlook(*car, Question{});
    }
    return 0;
}
