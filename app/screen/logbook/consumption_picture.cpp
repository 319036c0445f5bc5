// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/consumption_picture.h"

#include "app/screen/logbook/log_lines.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

struct ConsumptionWords {
    Q_DECLARE_TR_FUNCTIONS(ConsumptionWords)
};

constexpr double kTail = 0.05; // outside a 90 % band, on either side
constexpr double kRoom = 0.02; // of the width, left of the first and right of the last mark
constexpr int kMostTicks = 5;
constexpr std::size_t kUnsure = 3; // the first bands are so wide that they would flatten the rest

ForeseenStretch foresee(const ConsumptionModel& model, const Interval& stretch, bool learnt)
{
    const HeavyTail law = model.predictLogRatio(stretch);
    const Volume expected = model.expectedLitres(stretch);
    const auto rate = [&](double logRatio) { return std::exp(logRatio) * expected / stretch.distance; };
    return {stretch.end,
            stretch.burnt.mean / stretch.distance,
            rate(law.mean),
            rate(law.quantile(kTail)),
            rate(law.quantile(1.0 - kTail)),
            learnt};
}

} // namespace

std::vector<ForeseenStretch> foreseenStretches(const CarKnowledge& car, std::size_t most)
{
    const Screened& known = car.consumption;
    const std::size_t count = known.intervals.size();
    ConsumptionModel model(known.model.setup());
    std::vector<ForeseenStretch> stretches;
    for (std::size_t i = 0; i < count; ++i) {
        if (i + most >= count)
            stretches.push_back(foresee(model, known.intervals[i], isBelieved(known.beliefs[i])));
        model.observe(known.intervals[i], known.beliefs[i]);
    }
    return stretches;
}

PlotPicture consumptionPicture(const std::vector<ForeseenStretch>& stretches,
                               const UnitFormat& format)
{
    PlotPicture picture;
    if (stretches.size() < 2)
        return picture;
    const double first = double(stretches.front().end.time_since_epoch().count());
    const double last = double(stretches.back().end.time_since_epoch().count());
    const auto x = [&](const ForeseenStretch& stretch) {
        const double at = double(stretch.end.time_since_epoch().count());
        return kRoom + (1.0 - 2 * kRoom) * (last > first ? (at - first) / (last - first) : 0.5);
    };
    double low = format.inUnit(stretches.front().burnt), high = low;
    const auto include = [&](Consumption rate) {
        low = std::min(low, format.inUnit(rate));
        high = std::max(high, format.inUnit(rate));
    };
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        include(stretches[i].burnt);
        if (i >= kUnsure || stretches.size() <= kUnsure) {
            include(stretches[i].low);
            include(stretches[i].high);
        }
    }
    const PlotAxis axis = PlotAxis::around(low, high, kMostTicks);
    const auto y = [&](Consumption rate) { return 1.0 - axis.share(format.inUnit(rate)); };
    int odd = 0;
    for (const ForeseenStretch& stretch : stretches) {
        picture.band.append({x(stretch), y(stretch.high)});
        picture.line.append({x(stretch), y(stretch.expected)});
        picture.marks.append({x(stretch), y(stretch.burnt), 0.0, !stretch.learnt});
        odd += stretch.learnt ? 0 : 1;
    }
    for (auto stretch = stretches.rbegin(); stretch != stretches.rend(); ++stretch)
        picture.band.append({x(*stretch), y(stretch->low)});
    picture.band.append(picture.band.front());
    picture.yTicks = axis.ticks(format, true);
    picture.yTitle = format.rateUnit();
    const ForeseenStretch& middle = stretches[stretches.size() / 2];
    picture.xTicks = {{x(stretches.front()), dateText(stretches.front().end), true, false},
                      {x(middle), dateText(middle.end), true, true},
                      {x(stretches.back()), dateText(stretches.back().end), true, false}};
    picture.spoken = ConsumptionWords::tr("Consumption, tanks: %1, the last one %2; "
                                          "expected before it: %3 to %4")
                         .arg(int(stretches.size()))
                         .arg(format.rate({stretches.back().burnt, {}}),
                              format.rate({stretches.back().low, {}}),
                              format.rate({stretches.back().high, {}}));
    if (odd > 0)
        picture.spoken += u' ' + ConsumptionWords::tr("Kept out as odd: %1.").arg(odd);
    return picture;
}

} // namespace undermark
