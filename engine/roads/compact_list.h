// SPDX-License-Identifier: GPL-3.0-or-later
//
// Values collected without order, each kept once.
#pragma once

#include <algorithm>
#include <deque>

namespace undermark {

// add() in amortised O(log n). Holds at most about twice the different values, and no copy of
// them all while it grows.
template <class T>
class CompactList {
public:
    void add(const T& value)
    {
        m_values.push_back(value);
        if (m_values.size() >= m_next) {
            compact();
            m_next = std::max(kFirst, 2 * m_values.size());
        }
    }

    void compact()
    {
        std::sort(m_values.begin(), m_values.end());
        m_values.erase(std::unique(m_values.begin(), m_values.end()), m_values.end());
    }

    const std::deque<T>& values() const { return m_values; } // in order after compact()
    void clear() { m_values = {}; }

private:
    static constexpr std::size_t kFirst = 1 << 18;
    std::deque<T> m_values;
    std::size_t m_next = kFirst;
};

} // namespace undermark
