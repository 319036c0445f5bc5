// SPDX-License-Identifier: GPL-3.0-or-later
//
// calibration_campaign [CARS] [SEED]: how sure a level read off a calibration is. Cars of
// calibration_world.h are calibrated with 2 to 12 points, driven down to a level by
// chance, and read once, at rest and moving. Prints, of the tank's capacity, what the
// level missed by and what it said it would; how often the truth was at least the litres
// promised at 80, 90 and 99 %; and how much was promised. Then the same for the litres
// under the gauge's zero, and by kind of tank.
#include "tests/accuracy/calibration_world.h"

#include <boost/math/distributions/normal.hpp>

#include <cstdio>
#include <cstdlib>

using namespace undermark;
using namespace undermark::test;

namespace {

constexpr std::array kCounts{2, 3, 4, 5, 8, 12};
constexpr std::array kConfidence{0.80, 0.90, 0.99};

struct Tally {
    int readings = 0, oneSided = 0;
    double missed = 0.0, stated = 0.0, high = 0.0, promised = 0.0;
    int promises = 0;
    std::array<int, 3> held{};

    // `truth`, `mean` and `sd` as shares of the capacity.
    void add(double truth, double mean, double sd)
    {
        ++readings;
        missed += (mean - truth) * (mean - truth);
        stated += sd * sd;
        high += mean - truth;
        for (std::size_t i = 0; i < kConfidence.size(); ++i) {
            const double z = boost::math::quantile(boost::math::normal(), kConfidence[i]);
            held[i] += std::max(0.0, mean - z * sd) <= truth;
            if (i == 2 && truth > 0.25) {
                promised += std::max(0.0, mean - z * sd) / truth;
                ++promises;
            }
        }
    }
    void print(const char* what) const
    {
        const double n = readings;
        std::printf("| %-28s | %6d | %5.2f | %5.2f | %+5.2f | %5.1f | %5.1f | %5.2f | %5.2f |\n", what, readings,
                    100 * std::sqrt(missed / n), 100 * std::sqrt(stated / n), 100 * high / n,
                    100 * held[0] / n, 100 * held[1] / n, 100 * held[2] / n,
                    promises ? promised / promises : 0.0);
    }
};

void heading(const char* what)
{
    std::printf("\n| %-28s |    n   | missed| stated| high  |  80 %% |  90 %% |  99 %% | sure  |\n"
                "|------------------------------|-------:|------:|------:|------:|------:|------:|------:|------:|\n",
                what);
}

struct Campaign {
    std::array<std::array<Tally, 2>, kCounts.size()> levels;   // at rest, moving
    std::array<Tally, kCounts.size()> zeros;
    std::array<std::array<Tally, kCounts.size()>, kTankKinds.size()> kinds;   // at rest
    int noCurve = 0;

    void drive(std::size_t count, std::size_t kind, Random& random)
    {
        WorldCar car(TankKind(kind), random);
        const auto points = car.calibrate(kCounts[count], kCounts[count] > 2 && chance(random, 0.2), random);
        Sender sender;
        sender.resolution = Signal::of(car.sender.step());
        const auto gauge = Gauge::calibrate(points, sender);
        if (!gauge || !gauge->isKnown()) {
            ++noCurve;
            return;
        }
        const double litres = car.fullL() * between(random, 0.06, 0.99);
        const double slosh = between(random, 0.01, 0.045);
        for (const bool moving : {false, true}) {
            const double shown = car.sender.read(car.heightAt(litres), -1, random,
                                                 moving ? normal(random, slosh) : 0.0);
            const auto level = gauge->readDriving({Signal::of(shown), std::nullopt}, std::nullopt,
                                                   moving ? Motion::moving : Motion::atRest);
            const double mean = level->added.mean.litres(), sd = level->added.sd.litres();
            if (level->bound == LevelBound::atMost) {   // somewhere under a bound, not a level
                ++levels[count][moving].oneSided;
                continue;
            }
            levels[count][moving].add(litres / car.capacityL, mean / car.capacityL, sd / car.capacityL);
            if (!moving)
                kinds[kind][count].add(litres / car.capacityL, mean / car.capacityL, sd / car.capacityL);
        }
        if (kCounts[count] > 2) {
            const Estimate<Volume> zero = gauge->knownDriving(points[1].added);
            zeros[count].add(car.zeroOnTheWayDownL() / car.capacityL, zero.mean.litres() / car.capacityL,
                             zero.sd.litres() / car.capacityL);
        }
    }
};

} // namespace

int main(int argc, char** argv)
{
    const int cars = argc > 1 ? std::atoi(argv[1]) : 20000;
    Random random(argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1);
    Campaign campaign;
    for (int i = 0; i < cars; ++i)
        campaign.drive(std::size_t(i) % kCounts.size(), random() % kTankKinds.size(), random);
    for (const bool moving : {false, true}) {
        heading(moving ? "level, read moving" : "level, read at rest");
        for (std::size_t i = 0; i < kCounts.size(); ++i)
            campaign.levels[i][moving].print((std::to_string(kCounts[i]) + " points").c_str());
    }
    heading("litres under zero");
    for (std::size_t i = 1; i < kCounts.size(); ++i)
        campaign.zeros[i].print((std::to_string(kCounts[i]) + " points").c_str());
    for (const std::size_t count : {std::size_t(1), std::size_t(3)}) {
        heading((std::to_string(kCounts[count]) + " points, at rest").c_str());
        for (std::size_t kind = 0; kind < kTankKinds.size(); ++kind)
            campaign.kinds[kind][count].print(kTankKinds[kind]);
    }
    std::printf("\n%d calibrations allowed no curve\n", campaign.noCurve);
}
