// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace undermark {

// A stretch of a text in one kind of letters, coded as its font takes it.
struct LetterRun {
    bool western;      // WinAnsi (Latin-1 and some quotes and dashes), which the built-in fonts set;
    std::string bytes; // else UTF-8
};
// In their order; none for an empty text.
std::vector<LetterRun> letterRuns(const std::string& text);

// The text without its last letter, of UTF-8.
std::string withoutLastLetter(std::string text);

} // namespace undermark
