// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/error.h"

namespace undermark {

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
    std::string found = error.found.empty() ? "" : "found '" + error.found + "'";
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
