// SPDX-License-Identifier: GPL-3.0-or-later
//
// A DBC file, and a map beside it after a line of its own ("%%").
#include "engine/base/error.h"
#include "engine/signals/frame_values.h"
#include "tests/fuzz/fuzz_input.h"

#include <cmath>

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view all(reinterpret_cast<const char*>(data), size);
    const std::size_t end = all.find("%%");
    const auto dbc = Dbc::parse(all.substr(0, end), "a.dbc");
    if (!dbc)
        fuzz::require(!describe(dbc.error()).empty() && dbc.error().where.line > 0);
    else
        for (const Dbc::Entry& entry : dbc->entries()) {
            CanFrame frame{.id = entry.signal.match.id, .extended = entry.signal.match.extended, .length = 8};
            frame.data.fill(0xA5);
            const auto value = entry.signal.valueIn(frame);
            fuzz::require(!value || std::isfinite(*value));
        }
    if (end != std::string_view::npos) {
        const auto rules = parseFrameMap(all.substr(end + 2), "map.json", dbc ? &*dbc : nullptr);
        fuzz::require(rules || !describe(rules.error()).empty());
    }
    return 0;
}
