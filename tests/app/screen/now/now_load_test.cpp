// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/plan_request.h"
#include "app/screen/base/screen.h"
#include "app/screen/now/now_view_model.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;
using namespace std::chrono_literals;

namespace {

void type(NowLoad& load, const QString& text)
{
    for (int i = 0; i < 6; ++i)
        load.form()->erase();
    for (const QChar key : text)
        load.form()->press(key);
}

QString factOf(const NowViewModel& now, const QString& name)
{
    for (const Fact& fact : now.facts())
        if (fact.name == name)
            return fact.value;
    return {};
}

Route roadWithoutPumps(Distance length)
{
    Route route;
    route.points.resize(2);
    route.points[0].name = "Home";
    route.points[1].name = "There";
    route.points[1].at = length;
    return route;
}

} // namespace

class NowLoadTest : public QObject {
    Q_OBJECT
private slots:
    void toldItIsAFactAndShortensEveryDistance()
    {
        test::DemoCar car;
        NowViewModel now(car);
        QCOMPARE(now.modeIndex(), 0); // the usual mix
        const int before = now.sureNumber().toInt();
        const int pastZero = now.rows()[1].sure.toInt();
        QSignalSpy taken(now.load(), &NowLoad::taken);
        now.load()->takeStep(1);
        QCOMPARE(taken.size(), 1);
        QCOMPARE(now.load()->step(), 1);
        QCOMPARE(factOf(now, "burns more"), "towing: 20 % more");
        QVERIFY(now.sureNumber().toInt() < before);
        QVERIFY(now.rows()[1].sure.toInt() < pastZero);
        now.load()->typeWord("two dinghies");
        QCOMPARE(factOf(now, "burns more"), "two dinghies: 20 % more");
        now.load()->drop();
        QCOMPARE(now.sureNumber().toInt(), before);
        QVERIFY(factOf(now, "burns more").isEmpty());
    }
    // One law: what Now says, the question of `range --burns-more`, and the plan of Ahead.
    void nowRangeAndThePlanAnswerForTheSame()
    {
        test::DemoCar car;
        Screen screen(car);
        for (const bool odometer : {false, true}) {
            if (odometer) {
                for (const QChar key : QString::number(int(test::lastFill(car).odometer->km()) + 350))
                    screen.now.tell()->form()->press(key);
                screen.now.tell()->take();
                QVERIFY(screen.now.tell()->notices().isEmpty());
            }
            screen.now.load()->takeStep(2);
            Question asked; // as the command line makes it
            asked.now.burnsMore = Estimate<Fraction>{Fraction::fromPercent(30), Fraction::fromPercent(10)};
            if (odometer)
                asked.odometer = Distance::fromKm(int(test::lastFill(car).odometer->km()) + 350);
            const Outlook there = *outlook(**car.knowledge(), asked);
            QCOMPARE(screen.now.sureNumber(), QString::number(int(distances(there.toZero).p99.km())));
            QCOMPARE(screen.now.rows()[2].sure, QString::number(int(distances(there.toDry).p99.km())));
            screen.ahead.setRoute(roadWithoutPumps(distances(there.toDry).p99), "Away");
            const auto& planned = test::settled(screen.ahead).planned();
            QVERIFY(planned.has_value());
            screen.ahead.wishes()->selectConfidence(0); // 95 %: so far there is a plan
            const double risk = test::settled(screen.ahead).planned()->plan.dryRisk;
            QVERIFY2(std::abs(risk / 0.01 - 1) < 0.02, qPrintable(QString::number(risk)));
            QVERIFY2(screen.ahead.basis().contains("towing: 30 % more"), qPrintable(screen.ahead.basis()));
            screen.now.load()->drop(); // it is planned anew at once
            QVERIFY(test::settled(screen.ahead).planned()->plan.dryRisk < risk);
            screen.ahead.wishes()->selectConfidence(1);
        }
    }
    void itOutlivesTheProgramUntilItIsTakenBack()
    {
        QTemporaryDir folder;
        const QString file = folder.filePath("screen.ini");
        test::DemoCar car;
        {
            NowViewModel now(car, {}, file);
            now.load()->typeWord("roof box");
            type(*now.load(), "12.5");
            now.load()->take();
        }
        NowViewModel again(car, {}, file);
        QCOMPARE(factOf(again, "burns more"), "roof box: 12.5 % more");
        QVERIFY(again.notices().isEmpty());
        car.pass(24h);
        Fill fill = test::lastFill(car);
        fill.time = car.time();
        fill.odometer = *fill.odometer + Distance::fromKm(500);
        QVERIFY(car.recordFill(fill));
        again.refresh(); // the tank is learnt from, and may be counted twice
        QCOMPARE(factOf(again, "burns more"), "roof box: 12.5 % more");
        bool said = false;
        for (const NoticeText& notice : again.notices())
            said = said || notice.text.contains("roof box");
        QVERIFY(said);
        again.load()->drop();
        QVERIFY(factOf(NowViewModel(car, {}, file), "burns more").isEmpty());
    }
    void whatCannotBeIsRefusedAndWhatWasToldStillCounts()
    {
        test::DemoCar car;
        NowViewModel now(car);
        now.load()->takeStep(0);
        for (const char* text : {"", "0", "401"}) {
            type(*now.load(), text);
            now.load()->take();
            QVERIFY(now.load()->notices()[0].problem());
            QCOMPARE(now.load()->standing(), "towing: 10 % more");
        }
    }
};

UNDERMARK_TEST(NowLoadTest)
#include "now_load_test.moc"
