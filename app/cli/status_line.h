// SPDX-License-Identifier: GPL-3.0-or-later
//
// How far long work has got: a line on stderr, shown only to a person at a terminal, and wiped
// before the answer.
#pragma once

#include <string>

namespace undermark {

class StatusLine {
public:
    StatusLine();
    ~StatusLine();
    StatusLine(const StatusLine&) = delete;
    StatusLine& operator=(const StatusLine&) = delete;

    // In place of what it said before.
    void say(const std::string& text);

private:
    bool m_terminal;
    std::string m_shown;
};

} // namespace undermark
