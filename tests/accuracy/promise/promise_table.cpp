// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/accuracy/promise/promise_table.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace undermark::test {

namespace {

constexpr std::array kPromised{0.99, 0.90, 0.50, 0.10};

// "97.8 (0.6) <"
std::string coverage(int held, int n, double promised)
{
    const double share = double(held) / n;
    const double error = std::sqrt(promised * (1.0 - promised) / n);
    const char* verdict = share < promised - 2.6 * error ? " <" : share > promised + 2.6 * error ? " >" : "";
    char text[40];
    std::snprintf(text, sizeof text, "%.1f (%.1f)%s", 100.0 * share,
                  100.0 * std::sqrt(share * (1.0 - share) / n), verdict);
    return text;
}

double quantile(std::vector<double> values, double share)
{
    const auto at = values.begin() + std::ptrdiff_t(share * double(values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

} // namespace

void PromiseTable::add(int place, const std::string& row, const Distances& promised, double trueKm)
{
    Row& into = m_rows[place];
    into.label = row;
    const std::array<Distance, 4> distances{promised.p99, promised.p90, promised.p50, promised.p10};
    for (std::size_t i = 0; i < distances.size(); ++i)
        into.held[i] += trueKm >= distances[i].km();
    const double least = std::max(trueKm, 0.1);
    into.sure.push_back(promised.p99.km() / least);
    into.even.push_back(promised.p50.km() / least);
}

void PromiseTable::addRefused(int place, const std::string& row)
{
    m_rows[place].label = row;
    ++m_rows[place].refused;
}

void PromiseTable::print() const
{
    std::printf("\n| %-38s |    n | sure 99 %%     | 90 %%          | even 50 %%     | hopeful 10 %%  | sure/true | could be |\n"
                "|----------------------------------------|-----:|---------------|---------------|---------------|---------------|----------:|---------:|\n",
                m_title.c_str());
    for (const auto& [place, row] : m_rows) {
        const int n = int(row.sure.size());
        if (n == 0)
            continue;
        std::printf("| %-38s | %4d |", row.label.c_str(), n);
        for (std::size_t i = 0; i < kPromised.size(); ++i)
            std::printf(" %-13s |", coverage(row.held[i], n, kPromised[i]).c_str());
        std::printf("      %.2f |     %.2f |\n", quantile(row.sure, 0.5),
                    quantile(row.even, 0.5) / quantile(row.even, 0.99));
    }
    for (const auto& [place, row] : m_rows)
        if (row.refused > 0)
            std::printf("\nno answer to \"%s\": %d cars\n", row.label.c_str(), row.refused);
}

} // namespace undermark::test
