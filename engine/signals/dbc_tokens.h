// SPDX-License-Identifier: GPL-3.0-or-later
//
// A DBC file as words, quoted texts and marks, with the line they stand on.
#pragma once

#include <string_view>

namespace undermark {

struct DbcToken {
    enum Kind { word, quoted, mark, end, unended } kind = end;
    std::string_view text; // without its quotes
    bool leads = false;    // the first of its line

    bool is(std::string_view what) const { return (kind == word || kind == mark) && text == what; }
};

class DbcTokens {
public:
    explicit DbcTokens(std::string_view text) : m_rest(text) {}

    // Marks are : ; , ( ) [ and ]. Words hold whatever else is not blank, so that "8|16@1+"
    // is one.
    DbcToken next();
    long line() const { return m_line; }              // of the last one
    std::string_view last() const { return m_last; }  // its text

private:
    DbcToken cut(DbcToken::Kind kind, std::size_t length);

    std::string_view m_rest;
    std::string_view m_last;
    long m_line = 1;
    long m_ends = 0;      // line ends within the last token
    bool m_leads = true;  // the next one
};

} // namespace undermark
