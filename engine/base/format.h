// SPDX-License-Identifier: GPL-3.0-or-later
//
// printf into a string: sentences with numbers in them. The compiler checks the arguments
// against the pattern.
#pragma once

#include <string>

namespace undermark {

// At most 1,023 bytes; what is longer is cut. Always with a decimal point: no program
// of ours sets the C locale.
[[gnu::format(printf, 1, 2)]] std::string format(const char* pattern, ...);

} // namespace undermark
