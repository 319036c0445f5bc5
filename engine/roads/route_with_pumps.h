// SPDX-License-Identifier: GPL-3.0-or-later
//
// A route with the fuel stations found along its track as points where one may stop.
#pragma once

#include "engine/planning/plan.h"
#include "engine/roads/pumps_along.h"
#include "engine/tables/route_csv.h"

namespace undermark {

// When one drives, by the planner's own clock but for the stops, which are not planned yet.
class DriveClock {
public:
    // `way`: route, departure and speeds of a request; all have to be there. One starts at `from`.
    DriveClock(std::chrono::year_month_day day, PlanRequest way, Distance from = {});

    // Minutes since the midnight of the day of departure. What lies before `from` is passed there.
    Minutes passing(Distance at) const;
    // The day, and the minute of it.
    std::pair<std::chrono::year_month_day, int> dayAndMinute(Distance at) const;

private:
    Minutes since(Distance at) const; // the route's start

    std::chrono::year_month_day m_day;
    PlanRequest m_way;
    std::vector<Minutes> m_times;
    Distance m_from;
};

enum class OnArrival { open, closed, unknown };

// Whether it is open when one passes. `hours`: the span of that day that holds or follows it,
// where it is open at all and not the whole day.
struct Arrival {
    OnArrival state = OnArrival::unknown;
    std::optional<OpeningHours::Span> hours;
};
Arrival arrivalAt(const PumpAlong& pump, const DriveClock& clock);

// The chance that a pump whose hours are not known is open when one passes `at`. The others along the track with known hours are counted, over a prior worth two of them: .9 from 6 to 22,
// else .5 (common practice, no source).
double chanceOfBeingOpen(const std::vector<PumpAlong>& pumps, const DriveClock& clock, Distance at);

// With a clock pumps that are closed when passed are left out, and the others get the hours of
// that day. Names that several bear get their kilometre behind them. Without a clock every pump is taken
// and none has hours. Notes say what was left out, and of how many the hours are not known.
struct RouteWithPumps {
    RouteFile file;
    std::vector<Sentence> notes;
};
RouteWithPumps withPumps(RouteFile file, const std::vector<PumpAlong>& pumps,
                         const std::optional<DriveClock>& clock);

} // namespace undermark
