// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/error.h"

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

Sentence sentenceOf(const Error& error)
{
    const auto* text = std::get_if<std::string>(&error.found);
    const Part found = text ? Part(shown(*text)) : error.found;
    const bool finds = !text || !text->empty();
    Sentence what = error.detail;
    if (!error.expected.empty() && finds)
        what = Sentence::of("%1 (expected %2, found '%3')", what, error.expected, found);
    else if (!error.expected.empty())
        what = Sentence::of("%1 (expected %2)", what, error.expected);
    else if (finds)
        what = Sentence::of("%1 (found '%2')", what, found);
    if (!error.where.column.empty())
        what = Sentence::of("column '%1': %2", error.where.column, what);
    std::string place = error.where.file;
    if (error.where.line > 0)
        place += (place.empty() ? "" : ":") + std::to_string(error.where.line);
    return place.empty() ? what : Sentence::of("%1: %2", place, what);
}

std::string describe(const Error& error)
{
    return english(sentenceOf(error));
}

tl::unexpected<Error> fail(ErrorCode code, Sentence detail, Where where, Sentence expected,
                           Part found)
{
    return fail(
        Error{code, std::move(detail), std::move(where), std::move(expected), std::move(found)});
}

tl::unexpected<Error> failInput(Sentence detail, Sentence expected, Part found)
{
    return fail(ErrorCode::badInput, std::move(detail), {}, std::move(expected), std::move(found));
}

} // namespace undermark
