// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/status_line.h"

#include <cstdio>
#include <unistd.h>

namespace undermark {

StatusLine::StatusLine() : m_terminal(isatty(STDERR_FILENO) != 0) {}

StatusLine::~StatusLine()
{
    say("");
}

void StatusLine::say(const std::string& text)
{
    if (!m_terminal || text == m_shown)
        return;
    std::fprintf(stderr, "\r%*s\r%s", int(m_shown.size()), "", text.c_str());
    m_shown = text;
}

} // namespace undermark
