// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/nearest_word.h"

#include <algorithm>

namespace undermark {

namespace {

// Row by row of the table of distances between the beginnings of `a` and of `b`.
std::size_t slipsBetween(const std::string& a, const std::string& b)
{
    std::vector<std::size_t> beforeLast, last(b.size() + 1), row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        beforeLast = last;
        last = row;
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = a[i - 1] == b[j - 1];
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (same ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], beforeLast[j - 2] + 1);
        }
    }
    return row[b.size()];
}

} // namespace

std::string nearestWord(const std::string& typed, const std::vector<std::string>& words)
{
    std::string nearest;
    std::size_t most = std::max<std::size_t>(1, typed.size() / 3) + 1;
    for (const std::string& word : words) {
        const bool begun = typed.size() > 1 && word.starts_with(typed);
        const std::size_t slips = begun ? 1 : slipsBetween(typed, word);
        if (slips < most) {
            most = slips;
            nearest = word;
        }
    }
    return nearest;
}

} // namespace undermark
