// SPDX-License-Identifier: GPL-3.0-or-later
//
// Plans over several modes, with the rates that the demo car's log teaches and
// their covariance, driven many times by chance: the promised confidence of each
// arrival and of the whole way is kept.
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "engine/outlook/car_knowledge.h"
#include "engine/planning/plan.h"
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
PlanRequest mixedRoute(const RateModel& rates, unsigned seed)
{
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    PlanRequest request;
    request.rates = rates;
    double km = 0.0;
    for (int i = 0; i <= 40; ++i, km += between(8, 30)) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.mode = rates.modes[random() % rates.modes.size()];
        if (i < 40 && between(0, 1) < 0.67) {
            point.fuel = FuelSource::pump;
            point.pricePerLitre = between(1.4, 2.2);
        }
        request.route.points.push_back(point);
    }
    request.stopCost = 3;
    request.tank.capacity = Volume::fromLitres(50);
    request.tank.start = {Volume::fromLitres(40), Volume::fromLitres(0.8)};
    request.tank.floor = Volume::fromLitres(2);
    request.tank.fullSd = Volume::fromLitres(0.4);
    return request;
}

struct Driven {
    double worstArrival = 0.0; // share of drives below the floor there
    double trip = 0.0;         // share of drives below the floor anywhere
};

// The truth is drawn anew for each drive: one rate for each mode, jointly normal.
Driven drive(const PlanRequest& request, const Plan& plan, int times)
{
    const auto n = static_cast<Eigen::Index>(request.rates.modes.size());
    const Eigen::MatrixXd covariance =
        Eigen::Map<const Eigen::MatrixXd>(request.rates.covariance.data(), n, n);
    const Eigen::LDLT<Eigen::MatrixXd> ldlt(covariance);
    const Eigen::MatrixXd root = ldlt.transpositionsP().transpose() *
                                 Eigen::MatrixXd(ldlt.matrixL()) *
                                 ldlt.vectorD().cwiseMax(0.0).cwiseSqrt().asDiagonal();
    std::mt19937_64 random(11);
    std::normal_distribution<double> normal;
    const auto& points = request.route.points;
    std::vector<std::size_t> mode;
    for (const RoutePoint& point : points)
        mode.push_back(static_cast<std::size_t>(std::ranges::find(request.rates.modes, point.mode) -
                                                request.rates.modes.begin()));
    std::vector<int> failed(points.size(), 0);
    int trips = 0;
    for (int i = 0; i < times; ++i) {
        const Eigen::VectorXd error =
            root * Eigen::VectorXd::NullaryExpr(n, [&] { return normal(random); });
        double level =
            request.tank.start.mean.litres() + request.tank.start.sd.litres() * normal(random);
        bool failedOnce = false;
        auto stop = plan.stops.begin();
        for (std::size_t at = 0; at < points.size(); ++at) {
            if (at > 0) {
                const double km = (points[at].at - points[at - 1].at).km();
                const std::size_t m = mode[at - 1];
                const double rate =
                    request.rates.mean[m].litresPerKm() + error[static_cast<Eigen::Index>(m)];
                level -= rate * km + request.rates.legNoiseSd * std::sqrt(km) * normal(random);
                failed[at] += level < request.tank.floor.litres();
                failedOnce = failedOnce || level < request.tank.floor.litres();
            }
            if (stop != plan.stops.end() && stop->point == at) {
                level = stop->known ? request.tank.capacity.litres() +
                                          request.tank.fullSd.litres() * normal(random)
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
    RateModel m_rates;

private slots:
    void initTestCase()
    {
        const std::filesystem::path file = m_folder.filePath("demo.undermark").toStdString();
        const auto made = makeDemoLogbook(file, Existing::refuse);
        QVERIFY2(made, made ? "" : describe(made.error()).c_str());
        const auto car = Car::open(file, OpenMode::readOnly)->learnWith({});
        QVERIFY(car);
        const ModeRates rates = car->consumption.model.rates();
        m_rates.modes = rates.modes;
        m_rates.mean = rates.mean;
        m_rates.covariance = rates.covariance;
        m_rates.legNoiseSd = std::sqrt(rates.tauSquaredPerKm);
        QVERIFY(m_rates.modes.size() > 2);
        double correlated = 0.0;
        for (std::size_t i = 1; i < m_rates.modes.size(); ++i)
            correlated += std::fabs(m_rates.covariance[i]);
        QVERIFY(correlated > 0);
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
            PlanRequest request = mixedRoute(m_rates, seed);
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
            PlanRequest request = mixedRoute(m_rates, seed);
            request.confidence = Probability::of(0.9);
            request.tripConfidence = Probability::of(0.95);
            const auto best = plan(request);
            QVERIFY(best && best->feasible);
            QVERIFY(best->floorRisk <= 0.05);
            QCOMPARE(best->tripGap, 0.0);
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
        problem.covariance = {1e-4, 0, 0, 1e-4};
        // Phi(-2) = 0.022750131948 (tables of the normal distribution)
        const std::vector<planning::Arrival> arrivals{{planning::kStart, 1, 2}, {1, 2, 2}};
        QVERIFY(std::fabs(riskOfTrip(problem, arrivals).dry - 0.04498269539) < 1e-6);
        problem.covariance = {1e-4, -5e-5, -5e-5, 1e-4};
        // D. B. Owen 1956: P(X > h, Y > h) = Phi(-h) - 2 T(h, sqrt((1 - r) / (1 + r)))
        const double both = 0.022750131948 - 2 * boost::math::owens_t(2.0, std::sqrt(3.0));
        const double opposed = 2 * 0.022750131948 - both;
        QVERIFY(std::fabs(riskOfTrip(problem, arrivals).dry - opposed) < 1e-5);
        problem.covariance = {1e-4, 1e-4, 1e-4, 1e-4}; // one and the same error
        QVERIFY(std::fabs(riskOfTrip(problem, arrivals).dry - 0.022750131948) < 1e-8);
    }
};

UNDERMARK_TEST(PlanModesTest)
#include "plan_modes_test.moc"
