// SPDX-License-Identifier: GPL-3.0-or-later
//
// How good the consumption forecast is: on the real log beside the repository,
// where it is present, and on simulated cars of known truth. Prints a table;
// judges nothing.
#include "engine/consumption/backtest.h"
#include "engine/tables/fill_log.h"
#include "tests/support/simulated_car.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <string>

using namespace undermark;

namespace {

// Split conformal: the k-th smallest score, k = ceil((n + 1)(1 - alpha)); infinite where
// k > n (Vovk et al. 2005; Lei et al. 2018).
double splitConformal(std::span<const double> scores, double alpha)
{
    std::vector<double> sorted(scores.begin(), scores.end());
    std::ranges::sort(sorted);
    // The small term keeps (n + 1)(1 - alpha) from rounding above a whole number.
    const double rank = std::ceil((double(sorted.size()) + 1) * (1 - alpha) - 1e-9);
    if (rank > double(sorted.size()))
        return std::numeric_limits<double>::infinity();
    return sorted[std::size_t(std::max(rank, 1.0)) - 1];
}

// A vehicle of which nothing is stated.
ConsumptionModel freshModel()
{
    ConsumptionSetup setup;
    for (const char* name : {kTown, kOpenRoad, kMotorway, kSpecialStage})
        setup.modes.push_back({name, std::nullopt});
    return ConsumptionModel(setup);
}

std::vector<Interval> tanksOf(std::vector<Fill> fills)
{
    if (!fills.empty() && !fills.front().odometer) {   // km since the fill before: begin with one
        Fill begin = fills.front();
        begin.volume = Volume();
        fills.insert(fills.begin(), begin);
    }
    return intervalsFrom(fills, {});
}

void printRow(const char* name, const BandScores& s)
{
    std::printf("  %-15s n %4zu  coverage %.3f %.3f %.3f  width %4.0f %4.0f %4.0f  score %6.1f %6.1f %6.1f\n",
                name, s.count, s.coverage[0], s.coverage[1], s.coverage[2], s.width[0].km(),
                s.width[1].km(), s.width[2].km(), s.intervalScore[0].km(), s.intervalScore[1].km(),
                s.intervalScore[2].km());
}

// Interval scores of the rival: EWMA(.3) with a split conformal band of the
// relative errors so far.
BandScores rival(std::span<const Interval> tanks)
{
    BandScores mean;
    std::vector<double> errors;
    double rate = 0;
    for (std::size_t i = 0; i < tanks.size(); ++i) {
        const double now = (tanks[i].burnt.mean / tanks[i].distance).litresPerKm();
        if (i > 0) {
            const double km = tanks[i].burnt.mean.litres() / rate;
            const double actual = tanks[i].distance.km();
            for (std::size_t k = 0; i >= kWarmUpTanks && k < 3; ++k) {
                const double most = *std::ranges::max_element(errors);
                const double half = km * std::min(splitConformal(errors, 1 - kBandLevels[k]), most);
                mean.width[k] += Distance::fromKm(2 * half);
                mean.coverage[k] += std::abs(actual - km) <= half;
                mean.intervalScore[k] += Distance::fromKm(
                    intervalScore(km - half, km + half, actual, kBandLevels[k]));
            }
            mean.count += i >= kWarmUpTanks;
            errors.push_back(std::abs(actual / km - 1));
        }
        rate = i == 0 ? now : 0.7 * rate + 0.3 * now;
    }
    for (std::size_t k = 0; k < 3; ++k) {
        mean.coverage[k] /= double(mean.count);
        mean.width[k] = mean.width[k] / double(mean.count);
        mean.intervalScore[k] = mean.intervalScore[k] / double(mean.count);
    }
    return mean;
}

// How far pooled coverages of many cars may be from the level by chance: cars
// differ in more than chance, so the sd is that between the cars' own.
class Pooled {
public:
    void add(const BandScores& car)
    {
        for (std::size_t k = 0; k < kBandLevels.size(); ++k) {
            m_sum[k] += car.coverage[k];
            m_squares[k] += car.coverage[k] * car.coverage[k];
        }
        ++m_cars;
    }

    void print(const char* what) const
    {
        std::printf("  coverage %s", what);
        for (std::size_t k = 0; k < kBandLevels.size(); ++k) {
            const double mean = m_sum[k] / m_cars;
            const double variance = (m_squares[k] / m_cars - mean * mean) / (m_cars - 1);
            std::printf("  %.3f (sd %.4f)", mean, std::sqrt(variance));
        }
        std::printf("\n");
    }

private:
    std::array<double, 3> m_sum{}, m_squares{};
    double m_cars = 0;
};

// One tank ahead, of the tanks that were written down right.
BandScores withoutSlips(const Backtest& test, std::span<const Interval> tanks,
                        const test::SimulatedLog& log)
{
    BandScores mean;
    for (const TankForecast& each : test.forecasts) {
        if (log.slip[tanks[each.tank].lastFill])
            continue;
        ++mean.count;
        for (std::size_t k = 0; k < kBandLevels.size(); ++k) {
            const Band& band = each.forecast.bands[k];
            mean.coverage[k] += band.low <= each.actual && each.actual <= band.high;
        }
    }
    for (double& coverage : mean.coverage)
        coverage /= double(mean.count);
    return mean;
}

double best(const BaselineErrors& b) { return std::min({b.last, b.mean5, b.mean10, b.ewma}); }

void reportLog(const char* name, std::span<const Interval> tanks)
{
    for (const bool pace : {true, false}) {
        const Backtest test = backtest(tanks, freshModel(), pace);
        std::printf("%s, %s: %zu tanks, %zu forecasts\n", name,
                    pace ? "litres and date" : "litres and season only", test.tanks,
                    test.forecasts.size());
        std::printf("  mean error %.4f; last %.4f, mean of 5 %.4f, of 10 %.4f, EWMA %.4f; "
                    "%.1f %% below the best\n", test.meanError, test.baseline.last,
                    test.baseline.mean5, test.baseline.mean10, test.baseline.ewma,
                    100 * (1 - test.meanError / best(test.baseline)));
        std::printf("  over-promised by more than 10 %%: %.3f; flagged %zu (%.1f %%)\n",
                    test.overPromised, test.flags.size(),
                    100.0 * double(test.flags.size()) / double(test.tanks));
        printRow("one tank", test.oneTank);
        printRow("three tanks", test.threeTanks);
    }
    printRow("EWMA+conformal", rival(tanks));
}

void reportSimulated(std::size_t cars, std::size_t seed)
{
    for (const bool pace : {true, false}) {
        std::size_t below = 0, within = 0, checks = 0, flags = 0, slips = 0, caught = 0, tanks = 0;
        double gain = 0, dullGain = 0, dull = 0;
        std::array<double, 3> score{};
        Pooled oneTank, sound, threeTanks;
        for (std::size_t c = 0; c < cars; ++c) {
            std::mt19937_64 random(seed + c);
            const test::CarTruth car = test::randomCar(random);
            const test::SimulatedLog log = test::simulate(car, 100 + 40 * (c % 6), random);
            const auto intervals = intervalsFrom(log.fills, {});
            const Backtest t = backtest(intervals, freshModel(), pace);
            const BandScores other = rival(intervals);
            gain += 1 - t.meanError / best(t.baseline);
            if (car.paceTells < 1) {
                dullGain += 1 - t.meanError / best(t.baseline);
                ++dull;
            }
            below += t.meanError <= 0.95 * best(t.baseline);
            tanks += t.tanks;
            flags += t.flags.size();
            for (const FillFlag& flag : t.flags)
                caught += log.slip[intervals[flag.fill].lastFill];
            slips += std::size_t(std::ranges::count(log.slip, true));
            oneTank.add(t.oneTank);
            sound.add(withoutSlips(t, intervals, log));
            threeTanks.add(t.threeTanks);
            for (std::size_t k = 0; k < 3; ++k) {
                score[k] += t.oneTank.intervalScore[k] / other.intervalScore[k] / double(cars);
                const double p = kBandLevels[k];
                within += std::abs(t.oneTank.coverage[k] - p)
                    <= 2.6 * std::sqrt(p * (1 - p) / double(t.oneTank.count));
                ++checks;
            }
        }
        std::printf("%zu simulated cars, %s\n  mean gain on the best baseline %.1f %%, 5 %% or more for "
                    "%zu; bands within 2.6 sd %zu of %zu\n", cars,
                    pace ? "litres and date" : "litres and season only",
                    100 * gain / double(cars), below, within, checks);
        std::printf("  gain on the %.0f cars whose pace tells little %.1f %%\n", dull,
                    100 * dullGain / std::max(dull, 1.0));
        oneTank.print("one tank   ");
        sound.print("without the slips");
        threeTanks.print("three tanks");
        std::printf("  score against EWMA+conformal %.3f %.3f %.3f\n", score[0], score[1], score[2]);
        std::printf("  flagged %zu of %zu tanks; %zu of %zu slips caught\n", flags, tanks, caught, slips);
    }
}

// A tenth of a tank ahead, which no log of fills can tell: forecast before each
// simulated tank, judged by the distance that its first tenth truly gave.
void reportTenths(std::size_t cars, std::size_t seed, double topUps)
{
    Pooled pooled;
    for (std::size_t c = 0; c < cars; ++c) {
        std::mt19937_64 random(seed + c);
        test::CarTruth car = test::randomCar(random);
        car.topUps = topUps;
        const test::SimulatedLog log = test::simulate(car, 200, random);
        ConsumptionModel model = freshModel();
        BandScores own;
        for (const Interval& tank : intervalsFrom(log.fills, {})) {
            Circumstances now;
            now.begin = tank.begin;
            const DistanceForecast ahead =
                model.forecastDistance(Volume::fromLitres(log.tenth_l), now, 0);
            if (model.observed() >= kWarmUpTanks && tank.burnt.mean.litres() > 2 * log.tenth_l) {
                ++own.count;
                const Distance actual = Distance::fromKm(log.tenth_km[tank.firstFill]);
                for (std::size_t k = 0; k < 3; ++k)
                    own.coverage[k] += ahead.bands[k].low <= actual && actual <= ahead.bands[k].high;
            }
            if (!judge(model, tank, std::nullopt))
                model.observe(tank);
        }
        for (double& coverage : own.coverage)
            coverage /= double(own.count);
        pooled.add(own);
    }
    std::printf("%zu simulated cars, %.0f %% of the tanks topped up early\n", cars, 100 * topUps);
    pooled.print("a tenth of a tank");
}

} // namespace

// [CARS] [SEED]: simulated cars, and the seed of the first.
int main(int count, char** arguments)
{
    const std::size_t cars = count > 1 ? std::stoul(arguments[1]) : 60;
    const std::size_t seed = count > 2 ? std::stoul(arguments[2]) : 1;
    const std::filesystem::path file = UNDERMARK_SHARED_DATA "/fills_2012_2018.csv";
    if (std::filesystem::exists(file)) {
        if (const auto log = readFillLog(file))
            reportLog("the real log", tanksOf(log->rows));
    } else {
        std::printf("the real log is not here: skipped\n");
    }
    reportSimulated(cars, seed);
    reportTenths(cars, seed, 0);
    reportTenths(cars, seed, 0.2);
    return 0;
}
