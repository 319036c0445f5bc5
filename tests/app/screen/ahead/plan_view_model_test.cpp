// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"
#include "app/car/plan_request.h"
#include "app/screen/ahead/plan_view_model.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

struct PlannedAhead {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    PlanViewModel plan{car, {}, QString::fromStdString(folder.path.string())};
    PlanAnswer& answer = *plan.answer();

    void settle() { test::settled(plan); }
    void setRoute(const Route& route, const QString& name)
    {
        plan.setRoute(route, name);
        settle();
    }
};

} // namespace

class PlanViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theDemoDayIsPlannedAsTheCommandLineDoes()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        QVERIFY(ahead.answer.feasible());
        QCOMPARE(ahead.answer.rows().size(), 10);
        // The README's "A day of the Seven Weirs Rally", asked as the command line asks.
        const auto known = ahead.car.knowledge();
        const auto tank = tankFromCar(**known);
        const auto same = plan(planRequest(demoRoute(), *tank));
        QCOMPARE(ahead.answer.stops().size(), 1);
        QCOMPARE(ahead.answer.stops()[0].name, "Harrow Mill pump");
        const auto number = [](double value, int decimals) { return QString::number(value, 'f', decimals); };
        QVERIFY(ahead.answer.stops()[0].buy.contains(number(same->stops[0].buy.litres(), 1)));
        QVERIFY2(ahead.answer.summary().contains(number(same->cost, 2)), qPrintable(ahead.answer.summary()));
        QCOMPARE(ahead.answer.legs().size(), 2);
        QVERIFY(!ahead.answer.horizon().notRunning.isEmpty());
        QVERIFY(ahead.answer.horizon() != HorizonPicture{});
    }
    void moreConfidenceAsksForMoreFuel()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        const QString usual = ahead.answer.stops()[0].buy;
        ahead.plan.wishes()->selectConfidence(0);
        QCOMPARE(ahead.answer.stops()[0].buy, usual); // until the new plan is there
        ahead.settle();
        QVERIFY(ahead.answer.stops()[0].buy != usual);
        ahead.plan.wishes()->selectConfidence(1);
        ahead.settle();
        QCOMPARE(ahead.answer.stops()[0].buy, usual);
    }
    void aWhatIfIsAnsweredAndChangesNothing()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanWhatIfs& whatIfs = *ahead.plan.whatIfs();
        whatIfs.ask(0);
        QVERIFY(whatIfs.questions()[whatIfs.asked()].contains("Harrow Mill"));
        QVERIFY(QSignalSpy(&whatIfs, &PlanWhatIfs::answered).wait());
        QVERIFY(whatIfs.answer().size() >= 2);
        QVERIFY(whatIfs.answer()[0].value != whatIfs.answer()[1].value);
        QCOMPARE(ahead.answer.stops()[0].name, "Harrow Mill pump");
    }
    void aWhatIfTouchedWhilePlanningIsAskedOfTheNewPlan()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanWhatIfs& whatIfs = *ahead.plan.whatIfs();
        ahead.plan.wishes()->selectConfidence(0);
        QVERIFY(ahead.plan.planning());
        const int burnsMore = int(whatIfs.questions().size()) - 2;
        whatIfs.ask(burnsMore);
        const QString asked = whatIfs.questions()[burnsMore];
        ahead.settle();
        QTRY_VERIFY(!whatIfs.busy());
        QCOMPARE(whatIfs.questions()[whatIfs.asked()], asked);
        QCOMPARE(whatIfs.answer()[0].value,
                 planOutcome(ahead.answer.route(), ahead.answer.planned()->plan, {}));
        ahead.setRoute(demoRoute(), "Rally"); // another route: nothing was asked of it
        QCOMPARE(whatIfs.asked(), -1);
    }
    void whatIsLeftIsPlannedFromHere()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanHere& here = *ahead.plan.here();
        here.plan();
        QVERIFY(here.notices()[0].problem()); // where the car is, is missing
        for (const char* key : {"1", "0", "0"})
            here.form()->press(key);
        here.plan();
        QVERIFY(here.notices().isEmpty());
        ahead.settle();
        QCOMPARE(ahead.answer.rows().size(), 8); // here, and the seven points behind km 100
        here.planWhole();
        ahead.settle();
        QCOMPARE(ahead.answer.rows().size(), 10);
    }
    void aRouteFileIsPickedFromTheList()
    {
        PlannedAhead ahead;
        QFile file(QString::fromStdString((ahead.folder.path / "sunday.csv").string()));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("at_km,name,mode,fuel\n0,Home,open-road,none\n80,Lake,open-road,none\n");
        file.close();
        ahead.plan.otherRoute();
        FileList& files = *ahead.plan.files();
        int row = 0;
        while (row < files.rowCount() &&
               files.data(files.index(row), FileList::Name) != "sunday.csv")
            ++row;
        QVERIFY(row < files.rowCount());
        ahead.plan.pickFile(row);
        QVERIFY(!ahead.answer.feasible()); // not planned yet
        ahead.settle();
        QVERIFY(ahead.answer.feasible());
        QCOMPARE(ahead.plan.title(), "sunday, 80 km");
        QVERIFY(ahead.answer.stops().isEmpty());
    }
    void aBrokenFileChangesNothingAndIsSaid()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        QFile file(QString::fromStdString((ahead.folder.path / "a.csv").string()));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("at_km,name,mode,fuel\n0,Home,open-road,none\nfar,Lake,open-road,none\n");
        file.close();
        ahead.plan.files()->refresh();
        FileList& files = *ahead.plan.files();
        for (int row = 0; row < files.rowCount(); ++row)
            if (files.data(files.index(row), FileList::Name) == "a.csv")
                ahead.plan.pickFile(row);
        QVERIFY(ahead.plan.notices()[0].problem());
        QVERIFY(ahead.plan.notices()[0].text.contains("a.csv"));
        QCOMPARE(ahead.answer.rows().size(), 10);
    }
    void anInfeasibleWaySaysWhatIsMissingAndWhatWouldDo()
    {
        PlannedAhead ahead;
        Route route;
        for (const double km : {0.0, 900.0}) {
            RoutePoint point;
            point.at = Distance::fromKm(km);
            point.name = km > 0 ? "Far" : "Home";
            point.mode = kOpenRoad;
            route.points.push_back(point);
        }
        ahead.setRoute(route, "Too far");
        QVERIFY(!ahead.answer.feasible());
        QVERIFY(ahead.plan.notices()[0].text.contains("Far"));
        QVERIFY(!ahead.answer.cures().isEmpty());
    }
    void whatIsChosenBeforeTheAnswerIsThereIsPlannedInstead()
    {
        PlannedAhead ahead;
        QSignalSpy answers(&ahead.answer, &PlanAnswer::changed);
        ahead.plan.setRoute(demoRoute(), "Rally");
        QCOMPARE(answers.size(), 1); // the route, without its plan
        ahead.plan.wishes()->selectConfidence(0);
        ahead.plan.wishes()->selectConfidence(2);
        QVERIFY(ahead.plan.planning());
        QVERIFY(ahead.answer.stops().isEmpty());
        ahead.settle();
        QCOMPARE(answers.size(), 2); // of three that were asked, the newest
        QCOMPARE(ahead.answer.planned()->request.confidence, Probability::of(0.999));
        ahead.plan.setRoute(demoRoute(), "Rally");
        ahead.plan.otherRoute(); // not waited for
        QVERIFY(!ahead.plan.planning());
        QVERIFY(ahead.answer.rows().isEmpty());
    }
    void theCardIsWrittenBesideTheLogbook()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        ahead.plan.card()->write();
        QFile card(QString::fromStdString((ahead.folder.path / "fuel-card.pdf").string()));
        QVERIFY(card.open(QIODevice::ReadOnly));
        QVERIFY(card.read(5) == "%PDF-");
        QVERIFY(ahead.plan.card()->done().contains("fuel-card.pdf"));
    }
};

UNDERMARK_TEST(PlanViewModelTest)
#include "plan_view_model_test.moc"
