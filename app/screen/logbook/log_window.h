// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log as it is listed, a few pages of it in memory. Everything it gives is of one
// state of the logbook, that of open(): what is written later, by this program or
// another, shows as outdated() and nothing else.
#pragma once

#include "app/car/car.h"

#include <list>
#include <memory>
#include <optional>

namespace undermark {

class LogWindow {
public:
    static constexpr int kPageRows = 64;
    static constexpr std::size_t kPages = 4;

    // `car` outlives the window. Empty until open().
    explicit LogWindow(Car& car) : m_car(car) {}

    // The list of today; `kind` absent: every entry. Where it cannot be read, problem()
    // says why and there are no rows.
    void open(std::optional<LogKind> kind);
    std::optional<LogKind> kind() const { return m_kind; }
    int count() const { return m_count; }
    // What the rows are of; empty where problem() was there from the start.
    const Knowledge& known() const { return m_known; }

    // Nothing where its page cannot be had any more: outdated() or problem() tells.
    // Good until the next call.
    const LogRow* row(int number);
    // The row where this entry stands today, or would stand if it is gone.
    std::optional<int> find(const LogRow& entry);

    bool outdated() const { return m_outdated; }
    const std::optional<Error>& problem() const { return m_problem; }

private:
    struct LoadedRows {
        int first = 0; // number of its first row
        std::vector<LogRow> rows;
    };
    Result<void> readCount();
    const LoadedRows* page(int first);
    LogPageWish wishFor(int first) const;

    Car& m_car;
    std::optional<LogKind> m_kind;
    Knowledge m_known;
    int m_count = 0;
    std::list<LoadedRows> m_pages; // the one asked for last in front
    bool m_outdated = false;
    std::optional<Error> m_problem;
};

} // namespace undermark
