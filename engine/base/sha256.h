// SPDX-License-Identifier: GPL-3.0-or-later
//
// The hash by which a photo is known and found (FIPS 180-4).
#pragma once

#include <string>
#include <string_view>

namespace undermark {

// SHA-256 of the bytes, in 64 lower-case hexadecimal digits (Nettle).
std::string sha256(std::string_view bytes);

} // namespace undermark
