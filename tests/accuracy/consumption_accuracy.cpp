// SPDX-License-Identifier: GPL-3.0-or-later
//
// How good the consumption forecast is: on real logs beside the repository, where they
// are present, and on simulated cars of known truth. Prints a table;
// judges nothing.
#include "engine/consumption/backtest.h"
#include "engine/tables/fill_log.h"
#include "tests/support/harsh_world.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <map>
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
ConsumptionModel freshModel(const FilterConstants& constants = {})
{
    ConsumptionSetup setup;
    setup.constants = constants;
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
        std::printf("  kept with 99 %% %.4f, 90 %% %.3f, 10 %% %.3f\n", test.kept.p99, test.kept.p90,
                    test.kept.p10);
        printRow("one tank", test.oneTank);
        printRow("three tanks", test.threeTanks);
    }
}

struct LeftOut {
    const char* name;
    void (*change)(FilterConstants&);
};

// What each constant is worth: by how much the mean error rises without it, by log.
constexpr LeftOut kLeftOut[] = {
    {"days since the last fill", [](FilterConstants& c) { c.days = false; }},
    {"season", [](FilterConstants& c) { c.season = false; }},
    {"size of the stretch", [](FilterConstants& c) { c.size = false; }},
    {"bound on what one teaches", [](FilterConstants& c) { c.bound = 1e9; }},
    {"fast part", [](FilterConstants& c) { c.fast = 1e-6; }},
    {"shared click", [](FilterConstants& c) { c.click = 1e-4; }},
    {"walk of the level", [](FilterConstants& c) { c.levelWalk = 1e-6; }},
    {"walk of the level x 4", [](FilterConstants& c) { c.levelWalk *= 4; }},
    {"fading of coefficients", [](FilterConstants& c) { c.fade = 1; }},
    {"two odd ones are a change", [](FilterConstants& c) { c.turn = 1e9; }},
};

void reportConstants(const std::vector<std::vector<Interval>>& logs)
{
    std::printf("rise of the mean error, %%, by log, without\n");
    std::vector<double> whole;
    for (const auto& log : logs)
        whole.push_back(backtest(log, freshModel()).meanError);
    for (const LeftOut& one : kLeftOut) {
        FilterConstants constants;
        one.change(constants);
        std::printf("  %-26s", one.name);
        double mean = 0;
        for (std::size_t i = 0; i < logs.size(); ++i) {
            const double rise = backtest(logs[i], freshModel(constants)).meanError / whole[i] - 1;
            std::printf(" %6.1f", 100 * rise);
            mean += rise / double(logs.size());
        }
        std::printf("   mean %5.1f\n", 100 * mean);
    }
}

// One log left out: the constant that is best for the other logs, halved or doubled, or as
// it is, and what that makes of the one left out.
void reportLeftOutLogs(const std::vector<std::vector<Interval>>& logs)
{
    constexpr std::array<std::pair<const char*, double FilterConstants::*>, 6> kConstants{{
        {"walk of the level", &FilterConstants::levelWalk}, {"fast part", &FilterConstants::fast},
        {"its memory", &FilterConstants::fastKeep}, {"click", &FilterConstants::click},
        {"bound", &FilterConstants::bound}, {"scale", &FilterConstants::scale}}};
    std::vector<std::pair<std::string, FilterConstants>> variants{{"as they are", {}}};
    for (const auto& [name, member] : kConstants)
        for (const double factor : {0.5, member == &FilterConstants::fastKeep ? 1.4 : 2.0}) {
            FilterConstants constants;
            constants.*member *= factor;
            variants.emplace_back(std::string(name) + (factor < 1 ? " less" : " more"), constants);
        }
    std::vector<std::vector<double>> error;
    for (const auto& [name, constants] : variants)
        for (error.emplace_back(); const auto& log : logs)
            error.back().push_back(backtest(log, freshModel(constants)).meanError);
    std::printf("constants chosen without the log they are judged on\n");
    for (std::size_t left = 0; left < logs.size(); ++left) {
        const auto onOthers = [&](const std::vector<double>& errors) {
            double sum = 0;
            for (std::size_t i = 0; i < logs.size(); ++i)
                sum += i == left ? 0 : errors[i] / error[0][i];
            return sum;
        };
        const auto best = std::ranges::min_element(error, {}, onOthers) - error.begin();
        std::printf("  log %zu: %-24s mean error %.4f, as they are %.4f\n", left + 1,
                    variants[std::size_t(best)].first.c_str(), error[std::size_t(best)][left], error[0][left]);
    }
}

// How often promises were kept in a world harder than the model (harsh_world.h).
class Promises {
public:
    void add(const ConsumptionModel& model, const test::HarshTank& tank)
    {
        Circumstances now;
        now.begin = tank.stretch.begin;
        const DistanceForecast ahead = model.forecastDistance(tank.stretch.burnt.mean, now);
        m_n += 1;
        m_p99 += tank.truth_km >= ahead.p99().km();
        m_p90 += tank.truth_km >= ahead.p90().km();
        m_p10 += tank.truth_km >= ahead.p10().km();
        m_sharpness += ahead.p99().km() / tank.truth_km;
    }
    void print(const std::string& name) const
    {
        if (m_n > 0)
            std::printf("  %-34s n %5.0f  99 %% %.3f  90 %% %.3f  10 %% %.3f  sure/true %.2f\n", name.c_str(),
                        m_n, m_p99 / m_n, m_p90 / m_n, m_p10 / m_n, m_sharpness / m_n);
    }

private:
    double m_n = 0, m_p99 = 0, m_p90 = 0, m_p10 = 0, m_sharpness = 0;
};

// A logbook begun at every tank of the real logs in turn: what its first forecasts are worth.
void reportBeginnings(const std::vector<std::vector<Interval>>& logs)
{
    constexpr std::array<std::size_t, 6> kAskedAt{1, 2, 3, 5, 8, 20};
    std::printf("a log begun at each tank of the real ones, litres and season only\n");
    std::map<std::size_t, Promises> all;
    for (const auto& log : logs)
        for (std::size_t begin = 0; begin + kAskedAt.back() < log.size(); ++begin) {
            ConsumptionModel model = freshModel();
            for (std::size_t i = 0; i <= kAskedAt.back(); ++i) {
                const Interval& tank = log[begin + i];
                if (std::ranges::count(kAskedAt, i) > 0)
                    all[i].add(model, {.stretch = tank, .truth_km = tank.distance.km(), .slip = false});
                model.observe(tank);
            }
        }
    for (const auto& [stretches, kept] : all)
        kept.print("after " + std::to_string(stretches) + " stretches");
}

void reportHarsh(const char* name, const test::HarshSetup& setup, std::size_t cars, std::size_t seed,
                 std::initializer_list<int> askedAt, bool byKind = false)
{
    std::printf("%s, %zu vehicles of each kind\n", name, cars);
    std::map<std::string, Promises> promises;
    for (const test::Kind& kind : test::kKinds)
        for (std::size_t c = 0; c < cars; ++c) {
            std::mt19937_64 random(1000 * (seed + c) + std::size_t(&kind - test::kKinds.data()));
            const test::HarshLog log = test::harshLog(kind, setup, random);
            ConsumptionSetup fresh = freshModel().setup();
            fresh.facts.capacity = Volume::fromLitres(log.capacity_l);
            ConsumptionModel model(fresh);
            for (std::size_t i = 0; i < log.tanks.size(); ++i) {
                const test::HarshTank& tank = log.tanks[i];
                if (std::ranges::count(askedAt, int(i)) && !tank.slip)
                    promises[(byKind ? std::string(kind.name) + ", " : "") + "after "
                             + (i < 10 ? " " : "") + std::to_string(i) + " stretches"].add(model, tank);
                model.observe(tank.stretch);
            }
        }
    for (const auto& [what, kept] : promises)
        kept.print(what);
}

void reportSimulated(std::size_t cars, std::size_t seed)
{
    for (const bool pace : {true, false}) {
        std::size_t below = 0, within = 0, checks = 0, flags = 0, slips = 0, caught = 0, tanks = 0;
        double gain = 0, dullGain = 0, dull = 0;
        Pooled oneTank, sound, threeTanks;
        for (std::size_t c = 0; c < cars; ++c) {
            std::mt19937_64 random(seed + c);
            const test::CarTruth car = test::randomCar(random);
            const test::SimulatedLog log = test::simulate(car, 100 + 40 * (c % 6), random);
            const auto intervals = intervalsFrom(log.fills, {});
            const Backtest t = backtest(intervals, freshModel(), pace);
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
    std::vector<std::vector<Interval>> logs;
    for (const char* name : {"fills_2012_2018.csv", "logs/minivan_fills.csv", "logs/wagon_fills.csv"}) {
        const std::filesystem::path file = std::filesystem::path(UNDERMARK_SHARED_DATA) / name;
        const auto log = readFillLog(file);
        if (!log) {
            std::printf("%s is not here: skipped\n", name);
            continue;
        }
        logs.push_back(tanksOf(log->rows));
        reportLog(name, logs.back());
    }
    reportConstants(logs);
    if (logs.size() > 1)
        reportLeftOutLogs(logs);
    reportBeginnings(logs);
    reportSimulated(cars, seed);
    reportTenths(cars, seed, 0);
    reportTenths(cars, seed, 0.2);
    test::HarshSetup harsh;
    reportHarsh("harsh world", harsh, 4 * cars, seed, {0, 1, 2, 4, 8, 20});
    reportHarsh("harsh world, by kind", harsh, 4 * cars, seed, {0, 1, 8}, true);
    harsh.slipAt = 1;
    reportHarsh("a fill forgotten before the second stretch", harsh, 4 * cars, seed, {2, 3, 4, 5, 8});
    harsh.slipAt = 8;
    reportHarsh("a fill forgotten before the ninth", harsh, 4 * cars, seed, {9, 10, 12});
    harsh.slipAt = -1;
    harsh.changeAt = 12;
    for (const double by : {1.15, 1.3, 1.5}) {
        harsh.changeBy = by;
        std::printf("from the 13th stretch x %.2f: ", by);
        reportHarsh("harsh world", harsh, 4 * cars, seed, {12, 13, 14, 15, 16, 20});
    }
    return 0;
}
