// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/consumption_model.h"

#include "engine/base/normal_law.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace undermark {

namespace {

constexpr double kShortShare = 0.2;
// Evidence of the usual mix fades by 1/e over this.
constexpr Distance kMixMemory = Distance::fromKm(15000);

// How often an entry is a slip, and how often the car has changed since the last one.
// Forgotten fills make too little fuel, trailers and winters too much; judgement.
constexpr double kSlipMore = 0.010, kSlipLess = 0.020;
constexpr double kChangeMore = 0.012, kChangeLess = 0.002;
constexpr double kSlipSpread = 0.7;        // of the logarithm
constexpr double kChangeSpread = 0.20;    // normal: no car doubles over night
constexpr double kStandsOut = 2;           // scores; less is taken for ordinary at once,
constexpr std::size_t kFew = 4;            // but while fewer stretches than this are known
constexpr std::size_t kMostBranches = 4;
constexpr double kLeastWeight = 0.01;      // of a branch that goes on
constexpr double kLeastWeightOfFew = 0.002;
constexpr double kSameHills_m = 1;         // of height: less is rounding
constexpr double kAlike = 0.25;            // sd between branches that are taken for one

} // namespace

double daysBetween(Instant begin, Instant end)
{
    const auto days = std::chrono::floor<std::chrono::days>(end) - std::chrono::floor<std::chrono::days>(begin);
    return std::max(double(days.count()), 0.0);
}

ConsumptionModel::ConsumptionModel(ConsumptionSetup setup)
    : m_setup(std::move(setup)), m_prior(ratePrior(m_setup.modes, m_setup.facts)),
      m_branches{{1.0, RateFilter(m_prior, m_setup.constants)}}, m_mix(m_prior.usualMixKm)
{
}

std::optional<std::size_t> ConsumptionModel::indexOf(const std::string& mode) const
{
    const auto found = std::ranges::find(m_setup.modes, mode, &Mode::name);
    if (found == m_setup.modes.end())
        return std::nullopt;
    return std::size_t(found - m_setup.modes.begin());
}

std::optional<Instant> ConsumptionModel::orLast(const Circumstances& now) const
{
    return now.begin ? now.begin : m_lastEnd;
}

// The rates hold the usual hills: as these become others, so do the rates.
void ConsumptionModel::observeClimb(const Interval& interval)
{
    const UsualClimb before = m_climb;
    m_climb.fade(std::exp(-(interval.distance / kMixMemory)));
    m_climb.observe(interval.climbed, interval.climbedOver);
    if (!before.isKnown() || m_climb.perKm() == before.perKm())
        return;
    const FilterStretch usual = ahead(Volume::fromLitres(likeliest().usual_l()), {});
    for (Branch& branch : m_branches)
        branch.filter.addHills(usual, m_climb.perKm() - before.perKm());
}

FilterStretch ConsumptionModel::stretchOf(const Interval& interval) const
{
    FilterStretch stretch;
    stretch.quantity.assign(m_prior.base.size(), 0.0);
    double unknown_km = interval.distance.km();
    for (const auto& [mode, distance] : interval.byMode)
        if (const auto index = indexOf(mode)) {
            stretch.quantity[*index] += distance.km();
            unknown_km -= distance.km();
        }
    const std::vector<double> mix = m_mix.shares();
    for (std::size_t i = 0; i < mix.size(); ++i)
        stretch.quantity[i] += std::max(unknown_km, 0.0) * mix[i];
    stretch.quantity[mix.size()] = interval.idleHours;
    stretch.quantity[mix.size() + 1] = interval.coldStarts;
    const Distance unusual = interval.climbed - interval.climbedOver * m_climb.perKm();
    if (m_climb.isKnown() && std::abs(unusual.metres()) > kSameHills_m) // else what this stretch climbs is the usual
        stretch.quantity.back() = unusual.km();
    stretch.litres = interval.burnt.mean.litres();
    stretch.levelSd_l = interval.burnt.sd.litres();
    stretch.clickEnds = interval.clickEnds;
    stretch.follows = m_observed > 0 && interval.firstFill == m_lastFill;
    stretch.days = daysBetween(interval.begin, interval.end);
    stretch.middle = interval.begin + (interval.end - interval.begin) / 2;
    return stretch;
}

FilterStretch ConsumptionModel::ahead(Volume burnt, const Circumstances& now) const
{
    FilterStretch stretch;
    stretch.quantity = m_mix.shares();
    stretch.quantity.resize(m_prior.base.size(), 0.0);
    stretch.litres = burnt.litres();
    stretch.days = now.days;
    if (const auto begin = orLast(now)) {
        const double days = now.days.value_or(likeliest().usualDays());
        stretch.middle = *begin + std::chrono::seconds(std::llround(days / 2 * 86400));
    }
    return stretch;
}

std::vector<LogLawPart> ConsumptionModel::law(const FilterStretch& ahead) const
{
    std::vector<LogLawPart> parts;
    for (const Branch& branch : m_branches)
        parts.push_back({branch.weight, branch.filter.law(ahead)});
    return parts;
}

// Which promises this stretch would have kept, odd or not.
void ConsumptionModel::score(const FilterStretch& stretch, std::span<const RateFilter::Surprise> seen)
{
    const double y = std::log(stretch.litres);
    const auto below = [y](const std::vector<LogLawPart>& parts, const PromiseFactors& factors) {
        std::array<bool, kPromises.size()> hit{};
        for (std::size_t k = 0; k < hit.size(); ++k)
            hit[k] = mixtureCdf(parts, y, factors[k]) <= kPromises[k];
        return hit;
    };
    if (isShort(Volume::fromLitres(stretch.litres))) {
        m_shortFactors.observe(below(law(stretch), factorsFor(stretch)));
        return;
    }
    std::vector<LogLawPart> parts;
    for (std::size_t i = 0; i < seen.size(); ++i)
        parts.push_back({m_branches[i].weight,
                         {seen[i].expected.mean, m_setup.constants.promisedMore * seen[i].expected.sd()}});
    m_factors.observe(below(parts, m_factors));
    FilterStretch withoutDays = stretch;
    withoutDays.days.reset();
    m_aheadFactors.observe(below(law(withoutDays), m_aheadFactors));
}

void ConsumptionModel::observe(const Interval& interval, Belief belief)
{
    if (belief == Belief::leftOut)
        return;
    const FilterStretch stretch = stretchOf(interval);
    std::vector<RateFilter::Surprise> seen;
    for (const Branch& branch : m_branches)
        seen.push_back(branch.filter.surprise(stretch));
    score(stretch, seen);
    std::vector<Branch> next;
    for (std::size_t i = 0; i < seen.size(); ++i)
        split(std::move(m_branches[i]), stretch, seen[i], belief, next);
    m_branches = std::move(next);
    prune();
    observeClimb(interval);
    m_mix.fade(std::exp(-(interval.distance / kMixMemory)));
    for (const auto& [mode, distance] : interval.byMode)
        if (const auto index = indexOf(mode))
            m_mix.observe(*index, distance);
    m_lastEnd = interval.end;
    m_lastFill = interval.lastFill;
    ++m_observed;
}

// An ordinary stretch, a slip, or a change of the car: whatever is likely enough.
void ConsumptionModel::split(Branch branch, const FilterStretch& stretch,
                             const RateFilter::Surprise& seen, Belief belief,
                             std::vector<Branch>& into) const
{
    const bool more = seen.error > 0;
    const bool standsOut = std::abs(seen.score()) > kStandsOut;
    const std::size_t known = branch.filter.learnt();
    if (standsOut || known < kFew) {
        // A slip of a short stretch is as large as one of a long one, in litres. Where the
        // user rules that it is none, it may still have been one odd tank that passes.
        const HeavyTail law{0, kSlipSpread / (seen.isShort ? seen.expected.size : 1.0)};
        into.push_back({branch.weight * (more ? kSlipMore : kSlipLess) * std::exp(law.logDensity(seen.error)),
                        branch.filter});
        if (belief == Belief::ruledTrue)
            into.back().filter.learn(stretch, seen);
        else
            into.back().filter.skip(stretch, seen);
    }
    if (standsOut && known > 1) {
        const double sd = std::hypot(seen.expected.sd(), kChangeSpread);
        into.push_back({branch.weight * (more ? kChangeMore : kChangeLess) * normalDensity(seen.error / sd) / sd,
                        branch.filter});
        into.back().filter.change(kChangeSpread);
        into.back().filter.learn(stretch, seen);
    }
    const HeavyTail ordinary{0, m_setup.constants.promisedMore * seen.expected.sd()};
    branch.weight *= std::exp(ordinary.logDensity(seen.error));
    branch.filter.learn(stretch, seen);
    into.push_back(std::move(branch));
}

// Weights to sum 1, the likeliest first; what hardly counts or has become alike goes.
void ConsumptionModel::prune()
{
    if (m_branches.size() == 1) {
        m_branches.front().weight = 1;
        return;
    }
    std::ranges::stable_sort(m_branches, std::greater{}, &Branch::weight);
    double sum = 0;
    for (const Branch& branch : m_branches)
        sum += branch.weight;
    const double least = m_observed < kFew ? kLeastWeightOfFew : kLeastWeight;
    std::vector<Branch> kept;
    std::vector<HeavyTail> laws;
    for (Branch& branch : m_branches) {
        branch.weight /= sum;
        const HeavyTail law = branch.filter.law(ahead(Volume::fromLitres(branch.filter.usual_l()), {}));
        const auto alike = std::ranges::find_if(laws, [&](const HeavyTail& other) {
            return std::abs(law.mean - other.mean) < kAlike * other.sd
                && std::abs(std::log(law.sd / other.sd)) < kAlike;
        });
        if (alike != laws.end()) {
            kept[std::size_t(alike - laws.begin())].weight += branch.weight;
            continue;
        }
        if (!kept.empty() && (branch.weight < least || kept.size() == kMostBranches))
            continue;
        laws.push_back(law);
        kept.push_back(std::move(branch));
    }
    sum = std::accumulate(kept.begin(), kept.end(), 0.0,
                          [](double s, const Branch& branch) { return s + branch.weight; });
    for (Branch& branch : kept)
        branch.weight /= sum;
    std::ranges::stable_sort(kept, std::greater{}, &Branch::weight);
    m_branches = std::move(kept);
}

bool ConsumptionModel::isShort(Volume burnt) const
{
    return burnt.litres() <= kShortShare * likeliest().usual_l();
}

DistanceForecast ConsumptionModel::distances(const FilterStretch& ahead, const PromiseFactors& factors) const
{
    const auto parts = law(ahead);
    DistanceForecast forecast;
    const double sd = parts.front().law.sd;
    forecast.point = Distance::fromKm(ahead.litres / std::exp(mixtureQuantile(parts, 0.5, 1) + sd * sd));
    for (std::size_t k = 0; k < kPromises.size(); ++k)
        forecast.promised[k] = Distance::fromKm(
            ahead.litres / std::exp(mixtureQuantile(parts, kPromises[k], factors[k])));
    // The promises lie in pairs about the middle, the narrowest band innermost.
    for (std::size_t k = 0; k < kBandLevels.size(); ++k)
        forecast.bands[k] = {forecast.promised[4 + k], forecast.promised[3 - k]};
    return forecast;
}

// Whole tanks have taught nothing of what only a few kilometres of road add.
PromiseFactors ConsumptionModel::factorsFor(const FilterStretch& stretch) const
{
    const PromiseFactors tank =
        (stretch.days ? m_factors : m_aheadFactors).diluted(likeliest().fromShortness(stretch));
    return isShort(Volume::fromLitres(stretch.litres)) ? m_shortFactors.over(tank) : tank;
}

DistanceForecast ConsumptionModel::forecastDistance(Volume burnt, const Circumstances& now,
                                                    int clickEnds) const
{
    FilterStretch stretch = ahead(burnt, now);
    stretch.clickEnds = clickEnds;
    return distances(stretch, factorsFor(stretch));
}

DistanceForecast ConsumptionModel::forecastTanks(Volume burnt, const Circumstances& now, int tanks,
                                                 const PromiseFactors& factors) const
{
    FilterStretch stretch = ahead(burnt, now);
    stretch.tanks = tanks;
    return distances(stretch, factors);
}

ConsumptionModel::Oddity ConsumptionModel::oddity(const Interval& interval) const
{
    const RateFilter::Surprise seen = likeliest().surprise(stretchOf(interval));
    const HeavyTail law{0, m_setup.constants.promisedMore * seen.expected.sd()};
    return {seen.error, law.oddity(seen.error), law.logDensity(seen.error)};
}

Volume ConsumptionModel::expectedLitres(const Interval& interval) const
{
    return Volume::fromLitres(likeliest().expectedLitres(stretchOf(interval)));
}

HeavyTail ConsumptionModel::predictLogRatio(const Interval& interval) const
{
    return {0, likeliest().law(stretchOf(interval)).sd};
}

HeavyTail ConsumptionModel::trendNow(const Circumstances& now) const
{
    return likeliest().rates(orLast(now)).trend;
}

// Over one usual stretch from a full tank, against a usual mix of this rate.
Promise ConsumptionModel::promise(const Circumstances& now, double usual_lPerKm) const
{
    const RateFilter& filter = likeliest();
    FilterStretch stretch = ahead(Volume::fromLitres(filter.usual_l()), now);
    stretch.clickEnds = 0;
    const std::vector<LogLawPart> withoutClick = law(stretch);
    stretch.clickEnds = 1;
    Promise promise{law(stretch), factorsFor(stretch), 0, 0};
    for (std::size_t i = 0; i < withoutClick.size(); ++i)
        promise.rate[i].law.mean = withoutClick[i].law.mean - std::log(usual_lPerKm);
    promise.roadVariance = filter.roadVariance();
    promise.levelVariance = std::pow(filter.lastClick().sd.litres() / filter.usual_l(), 2);
    return promise;
}

ModeRates ConsumptionModel::rates(const Circumstances& now) const
{
    const auto count = Eigen::Index(m_setup.modes.size());
    const RateFilter& filter = likeliest();
    const FilterStretch middle = ahead(Volume::fromLitres(filter.usual_l()), now);
    const RateFilter::Rates known = filter.rates(middle.middle);
    const std::vector<double> mix = m_mix.shares();
    Eigen::VectorXd mean(count);
    for (Eigen::Index i = 0; i < count; ++i)
        mean[i] = m_prior.base[std::size_t(i)] * std::exp(known.now[std::size_t(i)]);
    const double usual = mean.dot(Eigen::Map<const Eigen::VectorXd>(mix.data(), count));

    // What all modes share is as much as leaves the rest a covariance: 1 / (1' T^-1 1).
    const auto items = Eigen::Index(m_prior.base.size());
    const Eigen::MatrixXd total =
        Eigen::Map<const Eigen::MatrixXd>(known.nowCovariance.data(), items, items).topLeftCorner(count, count);
    const double common = 1 / Eigen::VectorXd::Ones(count).dot(
                                  Eigen::LDLT<Eigen::MatrixXd>(total).solve(Eigen::VectorXd::Ones(count)));
    ModeRates rates;
    rates.worlds = worldsOf(promise(now, usual));
    double factor = 0, square = 0;
    for (const RateWorld& world : rates.worlds)
        factor += world.weight * world.factorMean;
    const double more = 1 + (now.burnsMore ? now.burnsMore->mean.ratio() : 0.0);
    const double moreSd = now.burnsMore ? now.burnsMore->sd.ratio() / more : 0.0;
    for (RateWorld& world : rates.worlds) {
        world.factorMean /= factor;
        world.factorSd = std::hypot(world.factorSd / factor, world.factorMean * moreSd);
        square += world.weight * (std::pow(world.factorMean, 2) + std::pow(world.factorSd, 2));
    }
    mean *= factor * more;
    for (Eigen::Index i = 0; i < count; ++i) {
        rates.modes.push_back(m_setup.modes[std::size_t(i)].name);
        rates.mean.push_back(Consumption::fromLitresPerKm(mean[i]));
        rates.usualMix.push_back(Fraction::fromRatio(mix[std::size_t(i)]));
        for (Eigen::Index j = 0; j < count; ++j) {
            const double own = std::max(total(i, j) - common, i == j ? 0.0 : -1.0);
            rates.residual.push_back(mean[i] * mean[j] * own);
            rates.covariance.push_back(mean[i] * mean[j] * (square * (1 + own) - 1));
        }
    }
    const LongRunRates longRun = this->longRun();
    rates.idle = longRun.idle;
    rates.coldStart = longRun.coldStart;
    rates.climb = {longRun.climb.mean * more, longRun.climb.sd * more};
    rates.usualClimb = m_climb.perKm();
    rates.tauSquaredPerKm = filter.roadVariance() * filter.usual_l() * usual * factor * more;
    rates.clickSd = clickSd();
    rates.lastClick = filter.lastClick();
    rates.degreesOfFreedom = HeavyTail::kDegreesOfFreedom;
    return rates;
}

LongRunRates ConsumptionModel::longRun() const
{
    const std::size_t count = m_setup.modes.size();
    const RateFilter::Rates known = likeliest().rates(std::nullopt);
    const auto cost = [&](std::size_t i) { return m_prior.base[i] * std::exp(known.longRun[i]); };
    const auto covariance = [&](std::size_t i, std::size_t j) {
        return cost(i) * cost(j) * known.longRunCovariance[i * m_prior.base.size() + j];
    };
    LongRunRates rates;
    for (std::size_t i = 0; i < count; ++i) {
        rates.rate.push_back(Consumption::fromLitresPerKm(cost(i)));
        for (std::size_t j = 0; j < count; ++j)
            rates.covariance.push_back(covariance(i, j));
    }
    const auto sdOf = [&](std::size_t i) { return std::sqrt(covariance(i, i)); };
    rates.idle = {FlowRate::fromLitresPerHour(cost(count)), FlowRate::fromLitresPerHour(sdOf(count))};
    rates.coldStart = {Volume::fromLitres(cost(count + 1)), Volume::fromLitres(sdOf(count + 1))};
    // Mean and spread of the log-normal law, as mass and efficiency state them.
    const double variance = known.longRunCovariance.back(), climb = cost(count + 2) * std::exp(variance / 2);
    rates.climb = {Consumption::fromLitresPerKm(climb), Consumption::fromLitresPerKm(climb * std::sqrt(std::expm1(variance)))};
    return rates;
}

std::vector<double> ConsumptionModel::usualMix() const { return m_mix.shares(); }

RateForecast ConsumptionModel::forecast(const Mix& ahead, const Circumstances& now) const
{
    const ModeRates all = rates(now);
    const std::size_t count = all.modes.size();
    std::vector<double> share(count, 0.0);
    double total_km = 0;
    double unknown_km = 0;
    for (const auto& [mode, distance] : ahead) {
        total_km += distance.km();
        if (const auto index = indexOf(mode))
            share[*index] += distance.km();
        else
            unknown_km += distance.km();
    }
    if (!(total_km > 0))
        total_km = unknown_km = 1;
    double mean = 0;
    double variance = 0;
    for (std::size_t i = 0; i < count; ++i)
        share[i] = (share[i] + unknown_km * all.usualMix[i].ratio()) / total_km;
    for (std::size_t i = 0; i < count; ++i) {
        mean += share[i] * all.mean[i].litresPerKm();
        for (std::size_t j = 0; j < count; ++j)
            variance += share[i] * share[j] * all.covariance[i * count + j];
    }
    return {{Consumption::fromLitresPerKm(mean), Consumption::fromLitresPerKm(std::sqrt(variance))},
            all.tauSquaredPerKm};
}

} // namespace undermark
