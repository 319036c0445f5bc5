// SPDX-License-Identifier: GPL-3.0-or-later
//
// Promised distances against true ones, counted and printed row by row.
#pragma once

#include "engine/range/range_law.h"

#include <array>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace undermark::test {

class PromiseTable {
public:
    explicit PromiseTable(std::string title) : m_title(std::move(title)) {}

    // One car's answer; rows are printed in the order of `place`. A row should hold a car
    // once, so that its answers are independent.
    void add(int place, const std::string& row, const Distances& promised, double trueKm);
    // What it is that could not be answered.
    void addRefused(int place, const std::string& row);
    // In markdown: how often the truth was at least as far as promised at 99, 90, 50 and
    // 10 %, in per cent with its standard error, "<" where that is under the promise and
    // ">" where it is over it by more than 2.6 of the errors that the promise would have;
    // the median of sure over true; and what that could be, were even drawn down by one
    // factor for the whole row so that exactly 99 % held.
    void print() const;

private:
    struct Row {
        std::string label;
        int refused = 0;
        std::array<int, 4> held{};
        std::vector<double> sure, even;   // over true
    };
    std::string m_title;
    std::map<int, Row> m_rows;
};

} // namespace undermark::test
