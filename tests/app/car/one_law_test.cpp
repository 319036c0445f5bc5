// SPDX-License-Identifier: GPL-3.0-or-later
//
// Now and Ahead ask one law: on a road without pumps as long as the distance made with
// some probability, the plan's risk of running dry is what is left of that probability.
// Whatever the level is known from, in every mode, and through several of them.
#include "app/car/car.h"
#include "app/car/demo_logbook.h"
#include "app/car/plan_request.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

namespace {

Route roadOf(const std::vector<RouteLeg>& legs, const RateModel& rates)
{
    Route route;
    RoutePoint point;
    for (const RouteLeg& leg : legs) {
        point.mode = rates.modes[leg.mode];
        route.points.push_back(point);
        point.at += leg.length;
    }
    route.points.push_back(point);
    return route;
}

// Plan and range on the same road, for all probabilities that one asks for: the largest
// difference of the risks, relative to what it should be.
double disagreement(const TankAndRate& car, const RangeLaw& law, const std::vector<RouteLeg>& road)
{
    double worst = 0.0;
    for (const double made : {0.9999, 0.999, 0.99, 0.9, 0.75, 0.501}) {
        if (law.startsBelow(Probability::of(made))) // not even the start is that sure
            continue;
        // Cut where the distance ends; the last leg goes on.
        double left = law.madeWith(Probability::of(made)).km();
        std::vector<RouteLeg> legs;
        for (std::size_t i = 0; i < road.size() && left > 0; ++i) {
            const bool last = i + 1 == road.size();
            const double km = last ? left : std::min(left, road[i].length.km());
            legs.push_back({Distance::fromKm(km), road[i].mode});
            left -= km;
        }
        PlanRequest request = planRequest(roadOf(legs, car.rates), car);
        request.confidence = Probability::of(0.5);
        const auto answer = plan(request);
        if (!answer || !answer->feasible)
            return 1.0;
        worst = std::max(worst, std::abs(answer->dryRisk / (1 - made) - 1));
    }
    return worst;
}

} // namespace

class OneLawTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    std::optional<CarKnowledge> m_car;

private slots:
    void initTestCase()
    {
        const std::filesystem::path file = m_folder.filePath("demo.undermark").toStdString();
        const auto made = makeDemoLogbook(file, Existing::refuse);
        QVERIFY2(made, made ? "" : describe(made.error()).c_str());
        auto car = Car::open(file, OpenMode::readOnly, test::testTime)->learnWith({});
        QVERIFY(car);
        m_car = std::move(*car);
    }

    void planAndRangeSayTheSameRisk_data()
    {
        QTest::addColumn<Question>("question");
        const auto row = [](const char* name, auto&& set) {
            Question question;
            set(question);
            QTest::newRow(name) << question;
        };
        row("log", [](Question&) {});
        row("log, nine days later", [](Question& q) { q.now.begin = test::testTime() + std::chrono::days(9); });
        const Distance full = m_car->log.fills.back().value.odometer.value();
        row("just filled", [&](Question& q) { q.odometer = full; });
        row("odometer, half way", [&](Question& q) { q.odometer = full + Distance::fromKm(250); });
        row("odometer, near zero", [&](Question& q) { q.odometer = full + Distance::fromKm(430); });
        row("reading", [](Question& q) { q.signal = Signal::of(1.2); });
        row("litres", [](Question& q) { q.usable = {Volume::fromLitres(30), Volume()}; });
        row("litres of the tracker",
            [](Question& q) { q.usable = {Volume::fromLitres(22), Volume::fromLitres(0.9)}; });
        row("at the zero mark", [&](Question& q) { q.usable = m_car->reserve.reserve(); });
    }

    void planAndRangeSayTheSameRisk()
    {
        QFETCH(Question, question);
        const auto both = tankFromCar(*m_car, question);
        QVERIFY2(both, both ? "" : describe(both.error()).c_str());
        for (std::size_t mode = 0; mode < both->rates.modes.size(); ++mode) {
            question.mode = both->rates.modes[mode];
            const auto now = outlook(*m_car, question);
            QVERIFY(now);
            QVERIFY2(disagreement(*both, now->toDry, {{Distance(), mode}}) < 0.01,
                     question.mode.c_str());
        }
        // Through all modes, twice: the law of range told of the same road. What surge
        // keeps back is left out: with it one may run dry in the middle, and the range
        // tells of the likeliest place, the plan of all of them.
        std::vector<RouteLeg> road;
        for (std::size_t i = 0; i < 2 * both->rates.modes.size(); ++i)
            road.push_back({Distance::fromKm(7 + 4.0 * double(i)), i % both->rates.modes.size()});
        const JointLaw law = outlook(*m_car, question)->law;
        const auto range = RangeLaw::make({law.usable, law.rates, law.driven, road});
        QVERIFY(range);
        TankAndRate withoutSurge = *both;
        withoutSurge.tank.surge.clear();
        QVERIFY(disagreement(withoutSurge, *range, road) < 0.01);
    }

    // The road behind and the road ahead share the rates' error, so half way is not known
    // better ahead than the estimate of the level makes it seem.
    void theLevelGoesWithTheRates()
    {
        Question question;
        question.odometer = m_car->log.fills.back().value.odometer.value() + Distance::fromKm(250);
        const auto both = tankFromCar(*m_car, question);
        const auto now = outlook(*m_car, question);
        QVERIFY(both && now && !both->tank.driven.empty());
        TankAndRate apart = *both; // as if the estimate were a reading
        apart.tank.start = now->usable;
        apart.tank.driven.clear();
        const Distance sure = now->toDry.madeWith(Probability::of(0.99));
        PlanRequest request;
        request.route = roadOf({{sure, both->rates.modes.size() - 1}}, both->rates);
        request.confidence = Probability::of(0.5);
        request.tank = apart.tank;
        request.rates = apart.rates;
        QVERIFY(plan(request)->dryRisk < 0.007);
        request.tank = both->tank;
        QVERIFY(std::abs(plan(request)->dryRisk - 0.01) < 1e-4);
    }

    void planStartsWithWhatIsInTwoTanks_data()
    {
        QTest::addColumn<int>("feed");
        QTest::newRow("level with each other") << int(TankFeed::shared);
        QTest::newRow("a tap") << int(TankFeed::chosen);
        QTest::newRow("pumped over") << int(TankFeed::pumpedOver);
    }

    // Now and Ahead over one real car, by all that can be told of its tanks.
    void planStartsWithWhatIsInTwoTanks()
    {
        QFETCH(int, feed);
        test::DemoCar car;
        test::addAuxTank(car, true);
        const Entry<ExtraTank> aux = car.log()->tanks.front();
        ExtraTank fed = aux.value;
        fed.feed = TankFeed(feed);
        QVERIFY(car.revise(aux.id, fed));
        Question log, odometer, own, both;
        odometer.odometer = Distance::fromKm(154'100);
        own.signal = Signal::of(1.2);
        both.signal = Signal::of(1.2);
        both.tanks["aux"].usable = {Volume::fromLitres(11), Volume::fromLitres(0.5)};
        Route route;
        route.points.resize(2);
        route.points[1].at = Distance::fromKm(30);
        for (const Question& question : {log, odometer, own, both}) {
            const auto now = nowState(**car.knowledge(), question);
            const auto plan = car.planRequest(route, question);
            QVERIFY(now && plan);
            const double apart = (plan->tank.start.mean - now->outlook.usable.mean).litres();
            QVERIFY2(std::abs(apart) < 1e-9, qPrintable(QString::number(apart)));
            QVERIFY(plan->tank.capacity > Volume::fromLitres(70)); // of both
        }
    }
};

UNDERMARK_TEST(OneLawTest)
#include "one_law_test.moc"
