// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fields of a line as it came over a wire. Strict: a field is wholly what it should be,
// or it is nothing. Nothing allocates.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace undermark {

// Without blanks, tabs and line ends at both ends.
std::string_view trimmed(std::string_view text);

// The text before the next `separator`, which is taken off `rest` with it; the last field
// leaves `rest` empty.
std::string_view nextField(std::string_view& rest, char separator);
// The same by blanks and tabs, any number of them; empty where there is no word more.
std::string_view nextWord(std::string_view& rest);

// A finite number with a decimal point, as std::from_chars reads it.
std::optional<double> numberIn(std::string_view text);
// Numbers separated by commas, blanks around them allowed; how many they are. 0 where
// anything else is among them, or more than `out` holds.
std::size_t numbersIn(std::string_view line, std::span<double> out);

// 1 to 8 digits, hexadecimal or decimal (base 16 or 10).
std::optional<std::uint32_t> wholeIn(std::string_view digits, int base);
// Two digits a byte, nothing between; how many bytes. Nothing where a digit is none or odd,
// or there are more than `out` holds.
std::optional<std::size_t> hexBytesIn(std::string_view digits, std::span<std::uint8_t> out);

} // namespace undermark
