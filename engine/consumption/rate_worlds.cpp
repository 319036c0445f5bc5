// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_worlds.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace undermark {

namespace {

// Cells of the standard normal: means of equal steps, each a normal of its own so wide
// that all together are the standard normal again (means have variance 1 - kWithin^2).
constexpr double kWithin = 0.6;
constexpr double kCellStep = 0.55;
constexpr int kCells = 4;            // on either side of the middle
constexpr int kRounds = 6;           // of moving the factors
constexpr double kMetWithin = 1e-3;  // of a quantile, relative
constexpr double kGain = 1.3;        // road and level take away a part of every move
constexpr double kMostMoved = 0.5;   // of a logarithm

struct Cell {
    double weight;
    double score;
};

std::vector<Cell> cells(int eachSide)
{
    const double spread = std::sqrt(1 - kWithin * kWithin);
    const double step = kCellStep * double(kCells) / eachSide;
    std::vector<Cell> found;
    double sum = 0;
    for (int k = -eachSide; k <= eachSide; ++k) {
        const double score = step * k;
        found.push_back({std::exp(-0.5 * std::pow(score / spread, 2)), score});
        sum += found.back().weight;
    }
    for (Cell& cell : found)
        cell.weight /= sum;
    return found;
}

// Probability that what is used is below x times what factor 1 uses, with road and level,
// and its derivative by log x.
std::pair<double, double> usedLaw(const std::vector<RateWorld>& worlds, const Promise& promise, double x)
{
    double below = 0, slope = 0;
    const double rest = promise.roadVariance * x + promise.levelVariance * x * x;
    const double restSlope = promise.roadVariance * x + 2 * promise.levelVariance * x * x;
    for (const RateWorld& world : worlds) {
        const double sd = std::sqrt(world.factorSd * world.factorSd + rest);
        const double z = (x - world.factorMean) / sd;
        below += world.weight * normalCdf(z);
        slope += world.weight * normalDensity(z)
            * (x - 0.5 * z * restSlope / sd) / sd;
    }
    return {below, slope};
}

// Log of the quantile: Newton's steps within a bracket.
double usedQuantile(const std::vector<RateWorld>& worlds, const Promise& promise, double p, double guess)
{
    double low = guess - 1, high = guess + 1, at = guess;
    for (int i = 0; i < 30; ++i) {
        const auto [below, slope] = usedLaw(worlds, promise, std::exp(at));
        (below > p ? high : low) = at;
        const double step = (p - below) / std::max(slope, 1e-12);
        if (std::abs(step) < 0.1 * kMetWithin)
            return at + step;
        at = at + step > low && at + step < high ? at + step : (low + high) / 2;
    }
    return at;
}

// Log of the common factor at a score: the law with its tail and factors, less what road
// and level add by themselves.
double logFactor(const Promise& promise, const HeavyTail& law, double score)
{
    const double p = std::clamp(normalCdf(score), 1e-9, 1 - 1e-9);
    const double away = valueAt(promise.factors.all(), score) * (law.quantile(p) - law.mean);
    const double rest = promise.roadVariance + promise.levelVariance;
    const double own = std::max(away * away - rest * score * score, 0.01 * away * away);
    return law.mean + std::copysign(std::sqrt(own), score);
}

// Worlds before their factors are moved, and where each lies in the whole law.
struct Placed {
    std::vector<RateWorld> worlds;
    std::vector<double> score;
};

Placed place(const Promise& promise)
{
    Placed placed;
    for (const LogLawPart& part : promise.rate) {
        for (const Cell& cell : cells(promise.rate.size() == 1 ? kCells : kCells / 2)) {
            const double low = std::exp(logFactor(promise, part.law, cell.score - kWithin));
            const double high = std::exp(logFactor(promise, part.law, cell.score + kWithin));
            placed.worlds.push_back({part.weight * cell.weight, (low + high) / 2, (high - low) / 2});
            const double p = mixtureCdf(promise.rate, part.law.mean + part.law.sd * cell.score, 1);
            placed.score.push_back(normalQuantile(std::clamp(p, 1e-9, 1 - 1e-9)));
        }
    }
    return placed;
}

// Factors rise with their scores: where road and level alone already scatter more than is
// promised, the factors hardly scatter at all.
void keepOrder(std::vector<RateWorld>& worlds, const std::vector<std::size_t>& byScore, std::size_t middle)
{
    for (std::size_t i = middle + 1; i < byScore.size(); ++i) {
        double& factor = worlds[byScore[i]].factorMean;
        factor = std::max(factor, worlds[byScore[i - 1]].factorMean);
    }
    for (std::size_t i = middle; i-- > 0;) {
        double& factor = worlds[byScore[i]].factorMean;
        factor = std::min(factor, worlds[byScore[i + 1]].factorMean);
    }
}

} // namespace

std::vector<RateWorld> worldsOf(const Promise& promise)
{
    const Placed placed = place(promise);
    std::array<double, kPromises.size()> wanted{}, moved{};
    for (std::size_t k = 0; k < wanted.size(); ++k)
        wanted[k] = mixtureQuantile(promise.rate, kPromises[k], promise.factors[k]);
    std::vector<RateWorld> worlds = placed.worlds;
    std::vector<std::size_t> byScore(worlds.size());
    std::iota(byScore.begin(), byScore.end(), std::size_t(0));
    std::ranges::sort(byScore, {}, [&](std::size_t i) { return placed.score[i]; });
    const auto middle = std::size_t(
        std::ranges::min_element(byScore, {}, [&](std::size_t i) { return std::abs(placed.score[i]); })
        - byScore.begin());
    for (int round = 0; round < kRounds; ++round) {
        double worst = 0;
        for (std::size_t k = 0; k < wanted.size(); ++k) {
            const double met = usedQuantile(worlds, promise, kPromises[k], wanted[k]);
            worst = std::max(worst, std::abs(met - wanted[k]));
            moved[k] = std::clamp(moved[k] + kGain * (wanted[k] - met), -kMostMoved, kMostMoved);
        }
        if (worst < kMetWithin)
            break;
        for (std::size_t i = 0; i < worlds.size(); ++i)
            worlds[i].factorMean = placed.worlds[i].factorMean * std::exp(valueAt(moved, placed.score[i]));
        keepOrder(worlds, byScore, middle);
    }
    return worlds;
}

} // namespace undermark
