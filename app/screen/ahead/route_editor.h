// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route changed row by row, without Qt.
//
// Guarantees (each has a test in tests/app/screen/ahead/route_editor_test.cpp):
//  * after every edit the route is one that checkRoute accepts; an edit that would
//    make it another is refused (badInput) and changes nothing;
//  * undo() gives back exactly the route before the last edit that changed it.
#pragma once

#include "engine/planning/route.h"

#include <deque>

namespace undermark {

// What happens to the rows behind one whose distance changes.
enum class Behind {
    moves, // along: their own legs stay, the route gets longer or shorter
    stays, // where it is: the leg after the changed row makes up for it
};

// What a navigator changes of a row. The first row has no leg.
struct RowEdit {
    RoutePoint point; // as it shall be; what-ifs name rows: not empty, and no two alike. Where it
                      // is and what is climbed behind it are the road's, and stay
    std::optional<Distance> leg; // from the row before; absent: as it is
    Behind behind = Behind::moves;
};

class RouteEditor {
public:
    RouteEditor() = default;
    explicit RouteEditor(Route route) : m_route(std::move(route)) {}

    const Route& route() const { return m_route; }
    std::optional<Distance> leg(std::size_t row) const; // nothing for the first row
    // The row as it is, to be changed and given to change().
    RowEdit row(std::size_t row) const;

    Result<void> change(std::size_t row, const RowEdit& edit);
    // A row without fuel half-way to the next one, or at the finish where there is none
    // (and then it is the new finish). badInput where the file would be too long.
    Result<void> addAfter(std::size_t row, const std::string& name);
    // The road stays as long as it is, unless the row is the start or the finish.
    Result<void> remove(std::size_t row);

    bool canUndo() const { return !m_past.empty(); }
    void undo();

private:
    Result<void> take(Route route);

    Route m_route;
    std::deque<Route> m_past; // the newest last
};

} // namespace undermark
