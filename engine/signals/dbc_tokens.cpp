// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/dbc_tokens.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::string_view kSpace = " \t\r\n";
constexpr std::string_view kMarks = ":;,()[]";
constexpr std::string_view kWordEnds = " \t\r\n:;,()[]\"";

long lineEnds(std::string_view text)
{
    return std::ranges::count(text, '\n');
}

} // namespace

DbcToken DbcTokens::cut(DbcToken::Kind kind, std::size_t length)
{
    m_last = m_rest.substr(0, length);
    m_rest.remove_prefix(length);
    const bool leads = m_leads;
    m_leads = false;
    return {kind, m_last, leads};
}

DbcToken DbcTokens::next()
{
    const std::size_t blank = std::min(m_rest.find_first_not_of(kSpace), m_rest.size());
    const long ends = lineEnds(m_rest.substr(0, blank));
    m_leads = m_leads || ends > 0;
    m_line += m_ends + ends;
    m_ends = 0;
    m_rest.remove_prefix(blank);
    if (m_rest.empty())
        return cut(DbcToken::end, 0);
    if (m_rest.front() == '"') {
        const std::size_t close = m_rest.find('"', 1);
        if (close == std::string_view::npos)
            return cut(DbcToken::unended, m_rest.size());
        DbcToken token = cut(DbcToken::quoted, close + 1);
        m_ends = lineEnds(token.text);
        token.text = token.text.substr(1, close - 1);
        return token;
    }
    if (kMarks.find(m_rest.front()) != std::string_view::npos)
        return cut(DbcToken::mark, 1);
    return cut(DbcToken::word, std::min(m_rest.find_first_of(kWordEnds), m_rest.size()));
}

} // namespace undermark
