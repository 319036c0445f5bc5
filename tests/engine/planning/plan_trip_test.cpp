// SPDX-License-Identifier: GPL-3.0-or-later
//
// The confidence of the whole way: kept, the risk being shared equally among the arrivals,
// at a cost hardly above the least. Compared with every combination of stops, the risk
// being shared in many ways, and with plans drawn by chance.
#include "engine/planning/evaluate.h"
#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/search/solve.h"
#include "tests/support/plan_exhaustive.h"
#include "tests/support/plan_oracles.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <boost/math/distributions/normal.hpp>

using namespace undermark;
using namespace undermark::planning;

namespace {

// The least objective with the whole way's risk kept, over a grid of confidences
// for each arrival, the best of it improved by small random steps.
class SharedRisk : public test::Exhaustive {
public:
    SharedRisk(const PlanRequest& request, const Problem& problem)
        : Exhaustive(problem), m_risk(1 - request.tripConfidence->value()), m_z(m_allowed.size(), m_allowed[0].z)
    {
    }

    std::optional<double> improved()
    {
        auto best = optimum();
        if (!best)
            return best;
        m_kinds = m_bestKinds;
        setQuantiles(m_bestZ);
        std::mt19937 random(7);
        std::normal_distribution<double> normal;
        for (int i = 0; i < 1500; ++i) {
            const std::vector<double> before = m_z;
            std::vector<double> tried = m_z;
            for (double& z : tried)
                z += normal(random) * 0.3 * std::exp(-i / 250.0);
            setQuantiles(tried);
            const auto found = cheapest();
            if (found && keepsRisk(*found) && found->objective < *best)
                best = found->objective;
            else
                setQuantiles(before);
        }
        return best;
    }

private:
    void tryKinds() override { tryArrival(1); }

    void setQuantiles(const std::vector<double>& z)
    {
        m_z = z;
        for (std::size_t i = 0; i < z.size(); ++i)
            m_allowed[i] = AllowedRisk::ofQuantile(z[i]);
    }

    bool keepsRisk(const Found& found) const
    {
        return riskOfTrip(m_problem, arrivalsOf(m_problem, found.purchases)).belowFloor <= m_risk;
    }

    void tryArrival(std::size_t i)
    {
        if (i == m_z.size()) {
            const auto found = cheapest();
            if (!found || !keepsRisk(*found) || found->objective >= m_bestOfAll)
                return;
            note(found);
            m_bestOfAll = found->objective;
            m_bestKinds = m_kinds;
            m_bestZ = m_z;
            return;
        }
        for (const double z : {1.645, 1.8, 2.0, 2.3, 2.8}) { // 1.645: what is allowed in all
            m_z[i] = z;
            m_allowed[i] = AllowedRisk::ofQuantile(z);
            tryArrival(i + 1);
        }
    }

    double m_risk;
    std::vector<double> m_z;
    double m_bestOfAll = kNoLimit;
    std::vector<int> m_bestKinds;
    std::vector<double> m_bestZ;
};

PlanRequest smallTrip(unsigned seed, bool legNoise)
{
    PlanRequest request = test::withRisk(test::longRoute(3, seed, 150));
    request.tank.start.mean = Volume::fromLitres(25);
    request.tank.fullSd = Volume::fromLitres(0.8);
    request.stopCost = seed % 3;
    request.rates.legNoiseSd = legNoise ? 0.08 : 0.0;
    request.confidence = Probability::of(0.9);
    request.tripConfidence = Probability::of(0.95);
    if (seed % 4 == 0)
        request.aim = Aim::weight;
    if (seed % 3 == 0) // a skewed law with a heavy tail
        request.rates.worlds = {{0.6, 0.97, 0.02}, {0.3, 1.0, 0.06}, {0.1, 1.18, 0.1}};
    return request;
}

// Six places with limits, minimum purchases, detours and hours, through two modes.
PlanRequest fullTrip(unsigned seed)
{
    PlanRequest request = test::withRisk(test::longRoute(6, seed, 90));
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> uniform;
    for (std::size_t i = 0; i < request.route.points.size(); ++i) {
        RoutePoint& point = request.route.points[i];
        point.mode = i % 2 ? "road" : "town";
        if (uniform(random) < 0.3)
            point.mostPurchase = Volume::fromLitres(8 + 20 * uniform(random));
        if (uniform(random) < 0.3)
            point.leastPurchase = Volume::fromLitres(1 + 6 * uniform(random));
        if (uniform(random) < 0.3)
            point.detour = Distance::fromKm(4 * uniform(random));
        point.stopTime = Minutes(5 + std::floor(10 * uniform(random)));
        point.timed = uniform(random) < 0.5;
        if (seed % 3 == 0 && uniform(random) < 0.4) {
            point.opens = Minutes(std::floor(7 * 60 + 120 * uniform(random)));
            point.closes = *point.opens + Minutes(120 + std::floor(300 * uniform(random)));
        }
    }
    const double variance = 1e-5 * 1e-2, shared = seed % 2 ? -0.4 : 0.5;
    request.rates.modes = {"road", "town"};
    request.rates.mean = {Consumption::fromLitresPer100Km(7), Consumption::fromLitresPer100Km(10)};
    request.rates.covariance = {2 * variance, shared * variance, shared * variance, 3 * variance};
    request.aim = std::array{Aim::cost, Aim::stops, Aim::time, Aim::weight}[seed % 4];
    request.tank.start.mean = Volume::fromLitres(20);
    request.tank.end = Volume::fromLitres(5 * uniform(random));
    request.departure = Minutes(8 * 60);
    request.speed = Speed::fromKmPerHour(80);
    request.confidence = Probability::of(0.8);
    request.tripConfidence = Probability::of(0.95);
    return request;
}

// Stops, full or not, and litres by chance; nothing where limits, hours or the
// confidence of an arrival are not kept. With its objective.
std::optional<std::pair<std::vector<Purchase>, double>> drawnPlan(const Problem& problem,
                                                                  std::mt19937& random)
{
    std::uniform_real_distribution<double> uniform;
    std::vector<Purchase> purchases;
    double supply = problem.start, objective = 0.0, stopped = 0.0;
    int since = kStart;
    for (int i = 0; i < problem.points; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (i > 0 && supply < problem.leastSupply(since, i))
            return std::nullopt;
        const Offer& offer = problem.offers[at];
        if (offer.open && uniform(random) < 0.5) {
            if (problem.timetable &&
                problem.timetable->waitAt(i, problem.timetable->clock(i, supply, stopped)) > 0)
                return std::nullopt;
            if (i > 0 && supply < problem.leastSupplyToStop(since, i))
                return std::nullopt;
            const double room = problem.fuelTo[at] + problem.capacity + offer.detourLitres / 2 - supply;
            const bool full = uniform(random) < 0.3;
            const double litres = full ? room : offer.least + uniform(random) * (room - offer.least);
            if (litres < offer.least || litres > std::min(offer.most, room))
                return std::nullopt;
            const bool limited = offer.most < kNoLimit; // a fill must reach the click, litres not
            if (full ? limited && litres > offer.most - problem.fillRoom(since, i)
                     : litres > room - problem.clickRoom(i))
                return std::nullopt;
            purchases.push_back({i, litres, full, 0});
            objective += offer.perStop + offer.perLitre * litres;
            supply += litres - offer.detourLitres;
            stopped += problem.timetable ? problem.timetable->stopMinutes[at] : 0.0;
            if (full)
                since = i;
        }
        if (i + 1 < problem.points)
            objective += problem.holdFrom(i) * (supply - problem.fuelTo[at]);
    }
    return std::pair(purchases, objective);
}

} // namespace

class PlanTripTest : public QObject {
    Q_OBJECT

private slots:
    // Stopped at any time, the best plan so far is answered: it keeps the confidence, the gap told
    // holds the finished plan too, and more time never makes it worse.
    void aStoppedPlanIsTheBestSoFar()
    {
        PlanRequest request = test::withRisk(test::longRoute(40, 3, 40));
        request.confidence = Probability::of(0.9);
        request.tripConfidence = Probability::of(0.97);
        const auto finished = plan(request);
        QVERIFY(finished->feasible && !finished->stopped);
        double before = kNoLimit;
        int asked = 0;
        for (int allowed = 0; allowed < 6; ++allowed) {
            int times = 0;
            const auto stopped = plan(request, [&](std::optional<double>) { return times++ < allowed; });
            QVERIFY(stopped->feasible && stopped->stopped && stopped->floorRisk <= 0.03);
            QVERIFY(stopped->cost - stopped->tripGap <= finished->cost + 1e-9);
            QVERIFY(stopped->cost >= finished->cost - 1e-9 && stopped->cost <= before);
            QVERIFY(!stopped->notes.empty());
            before = stopped->cost;
            asked += times;
        }
        QCOMPARE(asked, 1 + 2 + 3 + 4 + 5 + 6);
    }

    // No other sharing of the risk saves more than the gap that is told, nor, on these trips,
    // more than three quarters of a percent. (UNDERMARK_TRIPS=220 QTEST_FUNCTION_TIMEOUT=3600000
    // looks at so many, of which some are dearer.)
    void noSharingOfTheRiskIsMuchBetter()
    {
        std::vector<double> dearers, gaps; // than the best sharing found, than any can be
        const unsigned trips = qEnvironmentVariableIsSet("UNDERMARK_TRIPS") ? qEnvironmentVariable("UNDERMARK_TRIPS").toUInt() : 24;
        for (unsigned seed = 1; seed <= trips; ++seed) {
            const PlanRequest request = smallTrip(seed, seed % 2);
            const auto problem = makeProblem(request);
            const Solved found = solveForTrip(request, *problem);
            const auto other = SharedRisk(request, *problem).improved();
            QCOMPARE(found.plan.feasible || !other, true);
            if (!other || found.objective < 1e-3)
                continue;
            QVERIFY(found.plan.floorRisk <= 1 - request.tripConfidence->value()); // (not quite .05)
            QVERIFY2(*other >= found.objective - found.plan.tripGap - 1e-6,
                     qPrintable(QString("seed %1: %2 against %3")
                                    .arg(seed)
                                    .arg(*other)
                                    .arg(found.objective)));
            const double dearer = found.objective / *other - 1;
            QVERIFY2(dearer < 0.0075 || seed > 24, qPrintable(QString("seed %1: %2").arg(seed).arg(dearer)));
            dearers.push_back(dearer);
            gaps.push_back(found.plan.tripGap / found.objective);
        }
        QVERIFY2(dearers.size() >= trips / 2, qPrintable(QString::number(dearers.size())));
        for (auto [all, than] : {std::pair(&dearers, "the best sharing found"), std::pair(&gaps, "the bound from below")}) {
            std::ranges::sort(*all);
            const auto at = [&](double share) { return 100 * (*all)[std::size_t(share * double(all->size() - 1))]; };
            qInfo("%d trips: equal shares cost %.3f %% more than %s in the median, %.3f %% at nine of ten, %.3f %% at most",
                  int(all->size()), at(0.5), than, at(0.9), at(1));
        }
    }

    // Minimum purchases, limits, detours, two modes that were only seen together, opening
    // hours, every aim: a plan drawn by chance that is better does not keep the confidence.
    void noPlanDrawnByChanceIsBetter()
    {
        int drawnPlans = 0, better = 0, trips = 0;
        for (unsigned seed = 1; seed <= 40; ++seed) {
            const PlanRequest request = fullTrip(seed);
            const auto problem = makeProblem(request);
            QVERIFY(problem.has_value());
            const Solved found = solveForTrip(request, *problem);
            trips += found.plan.feasible;
            if (found.plan.feasible)
                QVERIFY(found.plan.floorRisk <= 0.05);
            std::mt19937 random(seed);
            for (int i = 0; i < 4000; ++i) {
                const auto drawn = drawnPlan(*problem, random);
                if (!drawn)
                    continue;
                ++drawnPlans;
                if (found.plan.feasible &&
                    drawn->second >= found.objective - found.plan.tripGap - 1e-6)
                    continue;
                ++better;
                QVERIFY2(riskOfTrip(*problem, arrivalsOf(*problem, drawn->first)).belowFloor > 0.05,
                         qPrintable(QString("seed %1: %2 against %3")
                                        .arg(seed).arg(drawn->second).arg(found.objective)));
            }
        }
        QVERIFY2(drawnPlans > 50'000 && better > 40 && trips > 20,
                 qPrintable(QString("%1 %2 %3").arg(drawnPlans).arg(better).arg(trips)));
        qInfo("%d plans by chance on %d trips; %d are better and too risky", drawnPlans, trips, better);
    }

    // One purchase, one arrival: the litres are those of the normal quantile.
    void oneArrivalIsTheNormalQuantile()
    {
        PlanRequest request = test::withRisk(test::longRoute(1, 1, 200));
        request.tank.start.mean = Volume::fromLitres(2);
        request.confidence = Probability::of(0.5);
        request.tripConfidence = Probability::of(0.98);
        const auto best = plan(request);
        QVERIFY(best && best->stops.size() == 1);
        const auto problem = makeProblem(request);
        const double z = boost::math::quantile(boost::math::normal(), 0.98);
        const double litres = problem->fuelTo[1] + z * std::sqrt(problem->variance(kStart, 1)) - 2;
        QVERIFY(std::abs(best->stops[0].buy.litres() - litres) < 1e-3);
    }

    // One rate, no leg noise, and the tank known: all arrivals fail together, so
    // the whole way is as risky as its riskiest arrival.
    void withOneCommonErrorThePlanIsOptimal()
    {
        PlanRequest request = smallTrip(4, false);
        request.tank.start.sd = request.tank.fullSd = Volume();
        for (RoutePoint& point : request.route.points)
            point.fuel = FuelSource::none;
        request.route.points[1].fuel = FuelSource::pump;
        request.tank.start.mean = Volume::fromLitres(30);
        const auto best = plan(request);
        QVERIFY(best && best->feasible);
        QVERIFY(best->tripGap < 1e-9);
        QVERIFY(best->notes.empty());
    }

    // On a longer way little is left to save, and the risk that is allowed is used up.
    void theGapIsSmallOnALongerWay()
    {
        for (const Aim aim : {Aim::cost, Aim::stops, Aim::time}) {
            PlanRequest request = test::withRisk(test::longRoute(40, 3, 40));
            request.tripConfidence = Probability::of(0.97);
            request.confidence = Probability::of(0.9);
            request.aim = aim;
            const auto problem = makeProblem(request);
            const Solved best = solveForTrip(request, *problem);
            QVERIFY(best.plan.feasible);
            QVERIFY(best.plan.floorRisk <= 0.03 && best.plan.floorRisk > 0.0299);
            QVERIFY2(best.plan.tripGap < 0.02 * best.objective,
                     qPrintable(QString("%1 of %2").arg(best.plan.tripGap).arg(best.objective)));
        }
    }

    // The lightest car stops at nearly every place, so each arrival's share is small.
    void theLightestCarKeepsTheRisk()
    {
        PlanRequest request = test::withRisk(test::longRoute(24, 3, 40));
        request.tripConfidence = Probability::of(0.97);
        request.confidence = Probability::of(0.9);
        request.aim = Aim::weight;
        const auto problem = makeProblem(request);
        const Solved best = solveForTrip(request, *problem);
        QVERIFY(best.plan.feasible);
        QVERIFY(best.plan.floorRisk <= 0.03 && best.plan.floorRisk > 0.0299);
        QVERIFY(best.plan.stops.size() > 10);
        // The least is 9573.26 litre-km (found by branch and bound over all sets of stops
        // with the risk shared as is cheapest, before this was given up for its cost).
        QVERIFY2(best.objective < 1.03 * 9573.26, qPrintable(QString::number(best.objective)));
        QVERIFY(best.objective - best.plan.tripGap <= 9573.27);
    }

    // What no plan can promise on one arrival, none can promise on the whole way.
    void whatCannotBePromisedIsAnInfeasibleAnswer()
    {
        PlanRequest request = test::withRisk(test::longRoute(1, 1, 200));
        request.route.points[0].fuel = FuelSource::none;
        request.tank.start.mean = request.route.points[1].at * request.rates.mean[0];
        request.confidence = Probability::of(0.5);
        request.tripConfidence = Probability::of(0.95);
        const auto none = plan(request);
        QVERIFY(none && !none->feasible);
        QVERIFY(none->shortfall->missing > Volume());
    }

    // The first plan of a long way, from every second pump: what it promises holds, and what it says another
    // could save is no less than what another does.
    void theFirstPlanOfALongWayIsSound()
    {
        std::mt19937 random(18);
        PlanRequest request;
        double km = 0;
        for (int i = 0; i <= 520; ++i, km += 8 + double(random() % 5)) {
            RoutePoint point;
            point.at = Distance::fromKm(km);
            point.fuel = i > 0 && i < 520 ? FuelSource::pump : FuelSource::none;
            point.pricePerLitre = 1.5 + double(random() % 50) / 100;
            request.route.points.push_back(point);
        }
        request.tank.capacity = Volume::fromLitres(50);
        request.tank.start = {Volume::fromLitres(20), Volume::fromLitres(.5)};
        request.tank.fullSd = Volume::fromLitres(.5);
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption::fromLitresPer100Km(.3)});
        request.tripConfidence = Probability::of(.99);
        for (const Aim aim : {Aim::cost, Aim::stops, Aim::time, Aim::weight}) {
            request.aim = aim;
            int asked = 0;
            const auto first = plan(request, [&](std::optional<double> gap) { ++asked; return !gap; });
            const auto whole = plan(request);
            QVERIFY(first && whole && first->feasible && whole->feasible);
            QCOMPARE(asked, 1);
            QVERIFY(first->stopped && !whole->stopped);
            QVERIFY(first->floorRisk <= .01);
            const auto worth = [aim](const Plan& plan) {
                return aim == Aim::cost ? plan.cost : aim == Aim::stops ? double(plan.stops.size())
                       : aim == Aim::time ? plan.stopTime.count() : plan.litreKm;
            };
            QVERIFY(worth(*first) >= worth(*whole) * (1 - 1e-9));
            QVERIFY(worth(*first) - worth(*whole) <= first->tripGap * (1 + 1e-9));
            qInfo("aim %d: the first plan %.4g, the plan %.4g", int(aim), worth(*first), worth(*whole));
        }
    }
};

UNDERMARK_TEST(PlanTripTest)
#include "plan_trip_test.moc"
