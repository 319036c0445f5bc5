// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/source_fuzz.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    undermark::fuzz::checkSource("nmea:x", data, size);
    return 0;
}
