// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_rows.h"

#include "app/car/plan_sentences.h"
#include "engine/base/format.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kRiskWorthSaying = 0.0005;
constexpr Minutes kWaitWorthSaying{0.5};
constexpr double kNineOfTen = 1.645;       // deviations to either side
constexpr double kSpreadWorthSaying = 0.5; // L
constexpr Volume kClimbWorthSaying = Volume::fromLitres(0.05);

// A note of several, each in so many words.
class Note {
public:
    explicit Note(const SentenceWriter& write) : m_write(write) {}
    void add(const Sentence& sentence)
    {
        text += (text.empty() ? "" : "; ") + m_write(sentence);
    }
    std::string text;

private:
    const SentenceWriter& m_write;
};

// "07:05", also of the day after.
std::string timeOfDay(Minutes clock)
{
    const int minutes = int(std::fmod(clock.count(), 24 * 60.0));
    return format("%02d:%02d", minutes / 60, minutes % 60);
}

void addStop(const PlanRequest& request, const Plan& plan, const PlannedStop& stop, Note& note)
{
    const RoutePoint& point = request.route.points[stop.point];
    if (const auto clock = plan.passages[stop.point].clock)
        note.add(Sentence::of("about %1", timeOfDay(*clock)));
    if (stop.wait >= kWaitWorthSaying)
        note.add(Sentence::of("wait %1 min for the opening", amount(stop.wait.count(), 0)));
    const bool crew = point.fuel == FuelSource::crew;
    if (stop.cans == 1)
        note.add(crew ? Sentence::of("pour 1 can of the crew") : Sentence::of("pour 1 can"));
    else if (stop.cans > 1)
        note.add(crew ? Sentence::of("pour %1 cans of the crew", counted(std::size_t(stop.cans)))
                      : Sentence::of("pour %1 cans", counted(std::size_t(stop.cans))));
    if (point.fuel == FuelSource::zone)
        note.add(Sentence::of("zone"));
    if (const double spread = kNineOfTen * stop.buySd.litres(); spread > kSpreadWorthSaying)
        note.add(Sentence::of("to the click, expect %1 to %2",
                              amount(std::max(stop.buy.litres() - spread, 0.0), 0),
                              amount(stop.buy + Volume::fromLitres(spread), 0)));
    if (point.mostPurchase)
        note.add(Sentence::of("at most %1", amount(*point.mostPurchase)));
    if (point.detour && *point.detour > Distance())
        note.add(Sentence::of("%1 off the way", amount(*point.detour, 1)));
    if (!stop.why.empty())
        note.add(stop.why);
    if (point.stopTime)
        note.add(Sentence::of("%1 min", amount(point.stopTime->count(), 0)));
}

Sentence goPastSentence(const Tank& tank, Volume with)
{
    if (with > tank.capacity)
        return Sentence::of("not to be passed");
    if (const auto gauge = gaugeAt(tank, with))
        return Sentence::of("past only with %1 (gauge %2)", amount(with),
                            amount(gauge->percent(), 0, "%"));
    return Sentence::of("past only with %1", amount(with));
}

void addTimes(const RoutePoint& point, const Passage& passage, Note& note)
{
    if (point.rest && *point.rest > Minutes{})
        note.add(Sentence::of("rests %1 min", amount(point.rest->count(), 0)));
    if (!passage.late)
        return;
    const Minutes late = *passage.late;
    note.add(late >= kWaitWorthSaying
                 ? Sentence::of("due %1, late by %2 min", timeOfDay(*point.due), amount(late.count(), 0))
                 : Sentence::of("due %1, %2 min to spare", timeOfDay(*point.due),
                                amount(std::max(-late.count(), 0.0), 0)));
}

// Of the litres to the next row.
Sentence climbSentence(const Estimate<Volume>& climb)
{
    return climb.mean > Volume() ? Sentence::of("the climb takes %1, give or take %2", amount(climb.mean), amount(climb.sd))
                                 : Sentence::of("downhill saves %1, give or take %2", amount(-1 * climb.mean), amount(climb.sd));
}

// What one does where the stop turns out to be closed.
Sentence closedSentence(const PlanRequest& request, const Passage& passage)
{
    if (passage.arrive.mean < passage.goPast->with)
        return Sentence::of("if closed nothing else is sure to be reached");
    return Sentence::of("if closed on to %1", placeName(request.route.points[passage.goPast->next]));
}

Note noteOf(const PlanRequest& request, const Plan& plan, const PlanRow& row, const SentenceWriter& write)
{
    const RoutePoint& point = request.route.points[row.point];
    const Passage& passage = plan.passages[row.point];
    Note note(write);
    const auto gap = std::ranges::lower_bound(plan.gaps, row.point, {}, &Gap::from);
    if (gap != plan.gaps.end() && gap->from == row.point && gap->noReturn)
        note.add(gap->oneWay ? Sentence::of("one way from %1", amount(*gap->noReturn, 1))
                             : Sentence::of("no return after %1", amount(*gap->noReturn, 1)));
    if (row.goPast)
        note.add(goPastSentence(request.tank, *row.goPast));
    if (row.stop) {
        addStop(request, plan, *row.stop, note);
        if (passage.goPast && sellsFuel(request.rules, point))
            note.add(closedSentence(request, passage));
    }
    else if (point.fuel == FuelSource::pump)
        note.add(Sentence::of("pump passed"));
    else if (point.fuel == FuelSource::zone)
        note.add(Sentence::of("zone passed"));
    else if (point.fuel == FuelSource::crew)
        note.add(Sentence::of("crew passed"));
    if (row.climb.mean > kClimbWorthSaying || -1 * row.climb.mean > kClimbWorthSaying)
        note.add(climbSentence(row.climb));
    if (passage.dry >= kRiskWorthSaying)
        note.add(Sentence::of("dry %1 %", riskPart(passage.dry)));
    if (point.idle && *point.idle > Minutes{})
        note.add(Sentence::of("idles %1 min", amount(point.idle->count(), 0)));
    addTimes(point, passage, note);
    if (point.timed)
        note.add(Sentence::of("timed"));
    if (row.point + 1 == request.route.points.size() && request.tank.end > Volume())
        note.add(Sentence::of("%1 wanted here", amount(request.tank.end)));
    return note;
}

} // namespace

namespace {

void addSection(const std::string& mode, const Passage& behind, PlanRow& row)
{
    row.needs += behind.used;
    row.climb.mean += behind.climb.mean;
    row.climb.sd += behind.climb.mean < Volume() ? -1 * behind.climb.sd : behind.climb.sd; // one common error
    if (std::ranges::find(row.modes, mode) == row.modes.end())
        row.modes.push_back(mode);
}

} // namespace

std::vector<PlanRow> planRows(const PlanRequest& request, const Plan& plan,
                              const std::vector<std::size_t>& points, const SentenceWriter& write)
{
    const std::size_t count = points.empty() ? plan.passages.size() : points.size();
    const auto pointOf = [&](std::size_t k) { return points.empty() ? k : points[k]; };
    std::vector<PlanRow> rows;
    rows.reserve(count);
    auto stop = plan.stops.begin();
    for (std::size_t k = 0; k < count; ++k) {
        PlanRow row;
        row.point = pointOf(k);
        const Passage& passage = plan.passages[row.point];
        row.at = request.route.points[row.point].at;
        if (k > 0)
            row.leg = row.at - rows.back().at;
        for (std::size_t i = row.point + 1; k + 1 < count && i <= pointOf(k + 1); ++i)
            addSection(request.route.points[i - 1].mode, plan.passages[i], row);
        row.climb.sd = std::max(row.climb.sd, -1 * row.climb.sd);
        row.even = std::max(passage.arrive.mean, Volume());
        row.sure = std::max(passage.sure, Volume());
        row.leave = std::max(passage.leave, Volume()); // rounding may leave it a hair below
        if (passage.goPast)
            row.goPast = passage.goPast->with;
        while (stop != plan.stops.end() && stop->point < row.point)
            ++stop;
        if (stop != plan.stops.end() && stop->point == row.point)
            row.stop = &*stop;
        row.note = noteOf(request, plan, row, write).text;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::optional<Fraction> gaugeAt(const Tank& tank, Volume usable)
{
    if (!tank.zeroMark || usable < *tank.zeroMark || usable > tank.capacity)
        return std::nullopt;
    return Fraction::fromRatio((usable - *tank.zeroMark) / (tank.capacity - *tank.zeroMark));
}

std::vector<std::size_t> stopsAndEnds(const Plan& plan)
{
    std::vector<std::size_t> points{0};
    for (const PlannedStop& stop : plan.stops) {
        if (stop.point != points.back())
            points.push_back(stop.point);
    }
    if (points.back() + 1 != plan.passages.size())
        points.push_back(plan.passages.size() - 1);
    return points;
}

} // namespace undermark
