// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/pdf_letters.h"

#include <algorithm>
#include <optional>
#include <string_view>

namespace undermark {

namespace {

// What WinAnsi has beyond Latin-1, of what our sentences use.
struct Beyond {
    std::string_view utf8;
    char winAnsi;
};
constexpr Beyond kBeyond[] = {{"…", '\x85'}, {"‘", '\x91'}, {"’", '\x92'}, {"“", '\x93'},
                              {"”", '\x94'}, {"„", '\x84'}, {"–", '\x96'}, {"—", '\x97'},
                              {"€", '\x80'}, {"œ", '\x9c'}, {"Œ", '\x8c'}};

std::optional<char> winAnsiOf(std::string_view letter)
{
    const auto first = static_cast<unsigned char>(letter[0]);
    if (letter.size() == 1)
        return first < 0x20 ? ' ' : letter[0];
    const auto* beyond = std::ranges::find(kBeyond, letter, &Beyond::utf8);
    if (beyond != std::end(kBeyond))
        return beyond->winAnsi;
    if (letter.size() == 2 && first <= 0xc3)
        return static_cast<char>(((first & 0x03) << 6) | (static_cast<unsigned char>(letter[1]) & 0x3f));
    return std::nullopt;
}

} // namespace

std::vector<LetterRun> letterRuns(const std::string& text)
{
    std::vector<LetterRun> runs;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t length = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        const std::string_view letter = std::string_view(text).substr(i, length);
        const auto western = winAnsiOf(letter);
        if (runs.empty() || runs.back().western != western.has_value())
            runs.push_back({western.has_value(), {}});
        if (western)
            runs.back().bytes += *western;
        else
            runs.back().bytes += letter;
        i += length;
    }
    return runs;
}

std::string withoutLastLetter(std::string text)
{
    while (!text.empty()) {
        const bool begins = (static_cast<unsigned char>(text.back()) & 0xc0) != 0x80;
        text.pop_back();
        if (begins)
            break;
    }
    return text;
}

} // namespace undermark
