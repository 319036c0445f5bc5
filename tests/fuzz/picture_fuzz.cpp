// SPDX-License-Identifier: GPL-3.0-or-later
//
// What of a file is a picture: what was kept is one, and nothing more can be taken off it.
#include "engine/logbook/picture.h"
#include "tests/fuzz/fuzz_input.h"

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view all(reinterpret_cast<const char*>(data), size);
    const auto picture = pictureIn(all);
    if (!picture)
        return 0;
    fuzz::require(picture->bytes.size() <= size);
    const auto again = pictureIn(picture->bytes);
    fuzz::require(again && again->bytes == picture->bytes && again->format == picture->format);
    return 0;
}
