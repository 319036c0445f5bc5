// SPDX-License-Identifier: GPL-3.0-or-later
//
// Text from outside that is to be shown: on one line, and without what a terminal would obey.
#pragma once

#include <string>
#include <string_view>

namespace undermark {

// Sound UTF-8 without control characters (U+0000 to 1F, 7F to 9F).
bool isPlainUtf8(std::string_view text);

// The same text with a ? for each control character but the end of a line, and for each byte
// that is no UTF-8.
std::string printable(std::string_view text);

} // namespace undermark
