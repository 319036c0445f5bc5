// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/screening.h"

#include <algorithm>

namespace undermark {

namespace {

// Slips that need no consumption: litres above capacity, odometer going back.
std::vector<FillFlag> plainSlips(std::span<const Fill> fills, const ScreenOptions& options)
{
    std::vector<FillFlag> flags;
    std::optional<Distance> last;
    for (std::size_t i = 0; i < fills.size(); ++i) {
        const Fill& fill = fills[i];
        if (last && fill.odometer && !fill.odometerReset && *fill.odometer <= *last) {
            FillFlag flag;
            flag.fill = i;
            flag.cause = FlagCause::odometerBackward;
            flag.text = Sentence::of("odometer %1 after %2: was the dash swapped?",
                                     amount(*fill.odometer), amount(*last));
            flags.push_back(std::move(flag));
        }
        if (fill.odometer)
            last = fill.odometer;
        const auto capacity = i < options.tankOfFill.size() ? std::optional(options.tankOfFill[i]) : options.capacity;
        if (capacity && !fitsTank(fill.volume, *capacity)) {
            FillFlag flag;
            flag.fill = i;
            flag.cause = FlagCause::moreThanFits;
            flag.text =
                Sentence::of("%1 were pumped but the tank takes %2: was a can filled as well?",
                             amount(fill.volume), amount(*capacity));
            flags.push_back(std::move(flag));
        }
    }
    return flags;
}

FillFlag paysBack(const Interval& stretch)
{
    FillFlag flag;
    flag.fill = stretch.lastFill;
    flag.cause = FlagCause::wrongOdometer;
    flag.text =
        Sentence::of("%1 are measured from the doubtful odometer before", amount(stretch.distance));
    return flag;
}

// What the judge proposes for a stretch, as figures of the fill that ended it. Of
// several fills it is not known which one slipped.
void proposeForFill(FillFlag& flag, const Interval& stretch, const Fill& begin)
{
    if (flag.cause == FlagCause::wrongOdometer && begin.odometer && flag.distance && !stretch.byTripMeter)
        flag.odometer = *begin.odometer + *flag.distance;
    if (stretch.lastFill > stretch.firstFill + 1)
        flag.volume = std::nullopt;
    if (flag.odometer || stretch.lastFill > stretch.firstFill + 1)
        flag.distance = std::nullopt;
}

} // namespace

Screened screen(std::span<const Fill> fills, std::span<const Trip> trips, ConsumptionModel model,
                const ScreenOptions& options)
{
    std::vector<Interval> intervals = intervalsFrom(fills, trips, options.intervals);
    Screened result{std::move(model), plainSlips(fills, options), std::move(intervals), {}};
    const auto rulingOn = [&](std::size_t fill) {
        return fill < options.rulings.size() ? options.rulings[fill] : std::nullopt;
    };
    std::erase_if(result.flags, [&](const FillFlag& flag) { return rulingOn(flag.fill).has_value(); });
    std::vector<bool> slipped(fills.size(), false);
    for (const FillFlag& flag : result.flags)
        slipped[flag.fill] = true;
    bool makesUp = false;   // the stretch before had a wrong odometer, this one pays it back
    for (std::size_t i = 0; i < result.intervals.size(); ++i) {
        const Interval& stretch = result.intervals[i];
        Belief belief = Belief::open;
        if (const auto ruling = rulingOn(stretch.lastFill))
            belief = *ruling ? Belief::ruledTrue : Belief::leftOut;
        else if (slipped[stretch.lastFill])
            belief = Belief::leftOut;
        std::optional<FillFlag> flag;
        if (belief == Belief::open) {
            const Interval* next = i + 1 < result.intervals.size() ? &result.intervals[i + 1] : nullptr;
            flag = judge(result.model, stretch, options.capacity, next);
            if (makesUp)
                flag = paysBack(stretch);
            else if (flag)
                proposeForFill(*flag, stretch, fills[stretch.firstFill]);
        }
        makesUp = !makesUp && flag && flag->cause == FlagCause::wrongOdometer;
        if (flag) {
            belief = Belief::doubtful;
            result.flags.push_back(*flag);
        }
        result.beliefs.push_back(belief);
        result.model.observe(stretch, belief);
    }
    std::ranges::stable_sort(result.flags, {}, &FillFlag::fill);
    return result;
}

} // namespace undermark
