// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/error.h"

namespace undermark {

namespace {

constexpr std::size_t kMostFound = 60; // bytes: enough to find the place again

// What was found, fit for one line: bytes that are no printable text become '?',
// and what is too long ends in three dots, not in the middle of a letter.
std::string shown(const std::string& found)
{
    std::string text;
    for (std::size_t i = 0; i < found.size();) {
        const auto first = static_cast<unsigned char>(found[i]);
        const std::size_t bytes = first < 0x80   ? 1
                                  : first < 0xc2 ? 0
                                  : first < 0xe0 ? 2
                                  : first < 0xf0 ? 3
                                  : first < 0xf5 ? 4
                                                 : 0;
        bool sound = bytes > 0 && i + bytes <= found.size() && first >= 0x20 && first != 0x7f;
        for (std::size_t k = 1; sound && k < bytes; ++k)
            sound = (static_cast<unsigned char>(found[i + k]) & 0xc0) == 0x80;
        const std::size_t step = sound ? bytes : 1;
        if (text.size() + step > kMostFound)
            return text + "...";
        text += sound ? found.substr(i, step) : "?";
        i += step;
    }
    return text;
}

} // namespace

std::string describe(const Error& error)
{
    std::string text;
    if (!error.file.empty())
        text += error.file + ":";
    if (error.line > 0)
        text += std::to_string(error.line) + ":";
    if (!text.empty())
        text += " ";
    if (!error.column.empty())
        text += "column '" + error.column + "': ";
    text += error.detail;
    std::string found = error.found.empty() ? "" : "found '" + shown(error.found) + "'";
    std::string expected = error.expected.empty() ? "" : "expected " + error.expected;
    if (!expected.empty() && !found.empty())
        text += " (" + expected + ", " + found + ")";
    else if (!expected.empty() || !found.empty())
        text += " (" + expected + found + ")";
    return text;
}

tl::unexpected<Error> failInput(std::string detail, std::string expected, std::string found)
{
    return fail({.code = ErrorCode::badInput,
                 .detail = std::move(detail),
                 .file = {},
                 .line = 0,
                 .column = {},
                 .expected = std::move(expected),
                 .found = std::move(found)});
}

} // namespace undermark
