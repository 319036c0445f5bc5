// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/log_window.h"

#include <algorithm>

namespace undermark {

// What is known and the count must be of one state. Another program may write between
// the two: then what is known is learnt anew, which settles it unless it never pauses.
Result<void> LogWindow::readCount()
{
    for (int attempt = 0; attempt < 3; ++attempt) {
        const auto known = m_car.knowledge();
        if (!known)
            return fail(known.error());
        const auto count = m_car.logCount(m_kind);
        if (!count)
            return fail(count.error());
        if (count->state == (*known)->log.state) {
            m_known = *known;
            m_count = int(count->rows);
            return {};
        }
    }
    return fail(ErrorCode::busy, Sentence::of("another program is writing to the logbook"));
}

void LogWindow::open(std::optional<LogKind> kind)
{
    m_kind = kind;
    m_known.reset();
    m_count = 0;
    m_pages.clear();
    m_outdated = false;
    m_problem.reset();
    if (const auto read = readCount(); !read)
        m_problem = read.error();
}

const LogRow* LogWindow::row(int number)
{
    if (number < 0 || number >= m_count)
        return nullptr;
    const LoadedRows* found = page(number - number % kPageRows);
    return found ? &found->rows[std::size_t(number - found->first)] : nullptr;
}

// A page is reached from the nearest row that is known: an end of the list, or of a page
// in memory. So sliding costs a page, and a jump the rows up to it.
LogPageWish LogWindow::wishFor(int first) const
{
    const int end = std::min(first + kPageRows, m_count);
    LogPageWish wish{m_kind, {}, false, first, end - first};
    const auto nearer = [&](bool newer, int skip, std::optional<LogPlace> from) {
        if (skip >= 0 && skip < wish.skip) {
            wish.newer = newer;
            wish.skip = skip;
            wish.from = from;
        }
    };
    nearer(true, m_count - end, std::nullopt);
    for (const LoadedRows& page : m_pages) {
        nearer(false, first - page.first - int(page.rows.size()), page.rows.back().place);
        nearer(true, page.first - end, page.rows.front().place);
    }
    return wish;
}

const LogWindow::LoadedRows* LogWindow::page(int first)
{
    const auto kept = std::ranges::find(m_pages, first, &LoadedRows::first);
    if (kept != m_pages.end()) {
        m_pages.splice(m_pages.begin(), m_pages, kept);
        return &m_pages.front();
    }
    if (m_outdated || m_problem)
        return nullptr;
    const LogPageWish wish = wishFor(first);
    auto read = m_car.logPage(wish);
    if (!read) {
        m_problem = read.error();
    } else if (read->state != m_known->log.state) {
        m_outdated = true;
    } else if (std::ssize(read->rows) != wish.rows) { // one state, yet not as counted
        m_problem = Error{ErrorCode::damaged, Sentence::of("rows of the logbook are missing")};
    } else {
        m_pages.push_front({first, std::move(read->rows)});
        if (m_pages.size() > kPages)
            m_pages.pop_back();
        return &m_pages.front();
    }
    return nullptr;
}

std::optional<int> LogWindow::find(const LogRow& entry)
{
    const auto found = m_car.logRow(m_kind, entry);
    return found ? std::optional(int(*found)) : std::nullopt;
}

} // namespace undermark
