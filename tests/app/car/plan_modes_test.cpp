// SPDX-License-Identifier: GPL-3.0-or-later
//
// Plans over several modes, from the demo car's log on: the level was last known some road
// ago, and the rates that its log teaches burnt what is missing since. Driven many
// times by chance, past and future with one rate: the promised confidence of each arrival
// and of the whole way is kept.
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "app/car/plan_request.h"
#include "engine/outlook/car_knowledge.h"
#include "engine/planning/risk/trip_risk.h"
#include "engine/planning/search/problem.h"
#include "tests/support/test_main.h"

#include <Eigen/Cholesky>
#include <QTemporaryDir>
#include <QTest>
#include <boost/math/special_functions/owens_t.hpp>
#include <random>

using namespace undermark;

namespace {

// Sections of 8 to 30 km in changing modes; a pump at two of three points.
PlanRequest mixedRoute(const TankAndRate& car, unsigned seed)
{
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    PlanRequest request;
    request.rates = car.rates;
    request.tank = car.tank;
    double km = 0.0;
    for (int i = 0; i <= 40; ++i, km += between(8, 30)) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.mode = car.rates.modes[random() % car.rates.modes.size()];
        if (i < 40 && between(0, 1) < 0.67) {
            point.fuel = FuelSource::pump;
            point.pricePerLitre = between(1.4, 2.2);
        }
        request.route.points.push_back(point);
    }
    request.stopCost = 3;
    request.tank.floor = Volume::fromLitres(2);
    return request;
}

struct Driven {
    double worstArrival = 0.0; // share of drives below the floor there
    double trip = 0.0;         // share of drives below the floor anywhere
};

// The truth is drawn anew for each drive: a world, its factor, and the modes' own errors.
class Truth {
public:
    explicit Truth(const RateModel& rates) : m_rates(rates)
    {
        const auto n = static_cast<Eigen::Index>(rates.modes.size());
        const Eigen::LDLT<Eigen::MatrixXd> ldlt(
            Eigen::Map<const Eigen::MatrixXd>(rates.covariance.data(), n, n));
        m_root = ldlt.transpositionsP().transpose() * Eigen::MatrixXd(ldlt.matrixL()) *
                 ldlt.vectorD().cwiseMax(0.0).cwiseSqrt().asDiagonal();
        for (const RateWorld& world : rates.worlds)
            m_weights.push_back(world.weight);
    }

    std::vector<double> rates(std::mt19937_64& random) // L/km
    {
        std::discrete_distribution<std::size_t> drawn(m_weights.begin(), m_weights.end());
        const RateWorld& world = m_rates.worlds[drawn(random)];
        const double factor = world.factorMean + world.factorSd * m_normal(random);
        const Eigen::VectorXd own = m_root * Eigen::VectorXd::NullaryExpr(
                                                 m_root.rows(), [&] { return m_normal(random); });
        std::vector<double> all;
        for (std::size_t m = 0; m < m_rates.mean.size(); ++m)
            all.push_back(m_rates.mean[m].litresPerKm() * factor +
                          world.factorMean * own[static_cast<Eigen::Index>(m)]);
        return all;
    }

private:
    const RateModel& m_rates;
    Eigen::MatrixXd m_root;
    std::vector<double> m_weights;
    std::normal_distribution<double> m_normal;
};

Driven drive(const PlanRequest& request, const Plan& plan, int times)
{
    const Tank& tank = request.tank;
    const RateModel& rates = request.rates;
    Truth truth(rates);
    std::mt19937_64 random(11);
    std::normal_distribution<double> normal;
    const auto& points = request.route.points;
    std::vector<int> failed(points.size(), 0);
    int trips = 0;
    double level = 0.0;
    std::vector<double> rate;
    const auto driveOn = [&](const RouteLeg& leg) {
        const double km = leg.length.km();
        level -= rate[leg.mode] * km + rates.legNoiseSd * std::sqrt(km) * normal(random);
    };
    for (int i = 0; i < times; ++i) {
        rate = truth.rates(random);
        level = (tank.start.mean + rates.burntOver(tank.driven)).litres() +
                tank.start.sd.litres() * normal(random);
        for (const RouteLeg& leg : tank.driven)
            driveOn(leg);
        bool failedOnce = false;
        auto stop = plan.stops.begin();
        for (std::size_t at = 0; at < points.size(); ++at) {
            if (at > 0) {
                const std::size_t mode = *rates.indexOf(points[at - 1].mode);
                driveOn({points[at].at - points[at - 1].at, mode});
                const bool fails = level < std::max(tank.floor, tank.surge[mode]).litres();
                failed[at] += fails;
                failedOnce = failedOnce || fails;
            }
            if (stop != plan.stops.end() && stop->point == at) {
                level = stop->known
                            ? tank.capacity.litres() + tank.fullSd.litres() * normal(random)
                            : level + stop->buy.litres();
                ++stop;
            }
        }
        trips += failedOnce;
    }
    return {double(*std::ranges::max_element(failed)) / times, double(trips) / times};
}

} // namespace

class PlanModesTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    TankAndRate m_car;

private slots:
    void initTestCase()
    {
        const std::filesystem::path file = m_folder.filePath("demo.undermark").toStdString();
        const auto made = makeDemoLogbook(file, Existing::refuse);
        QVERIFY2(made, made ? "" : describe(made.error()).c_str());
        const auto car = Car::open(file, OpenMode::readOnly, demoDay)->learnWith({});
        QVERIFY(car);
        const auto both = tankFromCar(*car);
        QVERIFY(both);
        m_car = *both;
        QVERIFY(m_car.rates.modes.size() > 3 && m_car.rates.worlds.size() > 1);
        double driven = 0.0, surge = 0.0, correlated = 0.0;
        for (const RouteLeg& leg : m_car.tank.driven)
            driven += leg.length.km();
        for (const Volume litres : m_car.tank.surge)
            surge += litres.litres();
        for (std::size_t i = 1; i < m_car.rates.modes.size(); ++i)
            correlated += std::fabs(m_car.rates.covariance[i]);
        QVERIFY(driven > 100 && surge > 0 && correlated > 0);
    }

    void everyArrivalKeepsItsConfidence_data()
    {
        QTest::addColumn<double>("confidence");
        QTest::newRow("99 %") << 0.99;
        QTest::newRow("90 %") << 0.90;
    }

    void everyArrivalKeepsItsConfidence()
    {
        QFETCH(double, confidence);
        bool full = false;
        bool partial = false;
        double worst = 0.0;
        for (unsigned seed = 1; seed <= 4; ++seed) {
            PlanRequest request = mixedRoute(m_car, seed);
            request.confidence = Probability::of(confidence);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            for (const PlannedStop& stop : best->stops)
                (stop.known ? full : partial) = true;
            const int times = 20000;
            const double noise = 4 * std::sqrt(confidence * (1 - confidence) / times);
            const Driven driven = drive(request, *best, times);
            QVERIFY2(driven.worstArrival <= 1 - confidence + noise,
                     qPrintable(QString::number(driven.worstArrival)));
            const double tripNoise = 4 * std::sqrt(best->floorRisk / times);
            QVERIFY2(driven.trip <= best->floorRisk + tripNoise,
                     qPrintable(QString("%1 of %2").arg(driven.trip).arg(best->floorRisk)));
            worst = std::max(worst, driven.worstArrival + noise);
        }
        QVERIFY(full);
        QVERIFY(partial);
        QVERIFY(worst >= 1 - confidence); // the promise is used up somewhere
    }

    void theWholeWayKeepsItsConfidence()
    {
        for (unsigned seed = 1; seed <= 4; ++seed) {
            PlanRequest request = mixedRoute(m_car, seed);
            request.confidence = Probability::of(0.9);
            request.tripConfidence = Probability::of(0.95);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            QVERIFY(best->floorRisk <= 0.05);
            // A bound on what another plan could save: the wider the rates, the looser it is.
            QVERIFY2(best->tripGap < 0.03 * best->cost, qPrintable(QString::number(best->tripGap / best->cost)));
            const int times = 200000;
            const Driven driven = drive(request, *best, times);
            QVERIFY2(driven.trip <= best->floorRisk + 4 * std::sqrt(0.05 / times),
                     qPrintable(QString("%1 of %2").arg(driven.trip).arg(best->floorRisk)));
            QVERIFY2(driven.trip >= best->floorRisk - 4 * std::sqrt(0.05 / times),
                     qPrintable(QString("%1 of %2").arg(driven.trip).arg(best->floorRisk)));
            qInfo("seed %u: risk stated %.4f, driven %.4f, gap %.3f of cost %.2f", seed,
                  best->floorRisk, driven.trip, best->tripGap, best->cost);
        }
    }

    // Two runs in two modes with independent rates share nothing: 1 - (1 - p)^2; with
    // opposed rates they seldom fail together, as the bivariate normal says.
    void runsInTwoModesAreAsTheirRatesAre()
    {
        planning::Problem problem;
        problem.points = 3;
        problem.modes = 2;
        problem.uncertain = true;
        problem.at = {0, 100, 200};
        problem.fuelTo = {0, 8, 16};
        problem.kmTo = {0, 0, 100, 0, 100, 100};
        problem.rates = {0.08, 0.08};
        problem.kmPast = {0, 0};
        problem.offers.resize(3);
        problem.covariance = {1e-4, 0, 0, 1e-4};
        // Phi(-2) = 0.022750131948 (tables of the normal distribution)
        const std::vector<planning::Arrival> arrivals{{{planning::kStart}, 1, 2}, {{1}, 2, 2}};
        const auto isNear = [&](double expected) { // to what unionRisk promises
            return std::fabs(riskOfTrip(problem, arrivals).dry - expected) < 2e-3 * expected;
        };
        QVERIFY(isNear(0.04498269539));
        problem.covariance = {1e-4, -5e-5, -5e-5, 1e-4};
        // D. B. Owen 1956: P(X > h, Y > h) = Phi(-h) - 2 T(h, sqrt((1 - r) / (1 + r)))
        const double both = 0.022750131948 - 2 * boost::math::owens_t(2.0, std::sqrt(3.0));
        const double opposed = 2 * 0.022750131948 - both;
        QVERIFY(isNear(opposed));
        problem.covariance = {1e-4, 1e-4, 1e-4, 1e-4}; // one and the same error
        QVERIFY(std::fabs(riskOfTrip(problem, arrivals).dry - 0.022750131948) < 1e-8);
    }
};

UNDERMARK_TEST(PlanModesTest)
#include "plan_modes_test.moc"
