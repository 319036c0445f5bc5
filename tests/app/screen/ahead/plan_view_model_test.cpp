// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"
#include "app/car/plan_request.h"
#include "app/screen/ahead/plan_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QTest>

using namespace undermark;

namespace {

struct PlannedAhead {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    PlanViewModel plan{car, {}, QString::fromStdString(folder.path.string())};
};

} // namespace

class PlanViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theDemoDayIsPlannedAsTheCommandLineDoes()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
        QVERIFY(ahead.plan.feasible());
        QCOMPARE(ahead.plan.rows().size(), 10);
        // The README's "A day of the Seven Weirs Rally", asked as the command line asks.
        const auto known = ahead.car.knowledge();
        const auto tank = tankFromCar(**known);
        const auto same = plan(planRequest(demoRoute(), *tank));
        QCOMPARE(ahead.plan.stops().size(), 1);
        QCOMPARE(ahead.plan.stops()[0].name, "Harrow Mill pump");
        const auto number = [](double value, int decimals) { return QString::number(value, 'f', decimals); };
        QVERIFY(ahead.plan.stops()[0].buy.contains(number(same->stops[0].buy.litres(), 1)));
        QVERIFY2(ahead.plan.summary().contains(number(same->cost, 2)), qPrintable(ahead.plan.summary()));
        QCOMPARE(ahead.plan.legs().size(), 2);
        QVERIFY(!ahead.plan.horizon().notRunning.isEmpty());
        QVERIFY(ahead.plan.horizon() != HorizonPicture{});
    }
    void moreConfidenceAsksForMoreFuel()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
        const QString usual = ahead.plan.stops()[0].buy;
        ahead.plan.selectConfidence(0);
        QVERIFY(ahead.plan.stops()[0].buy != usual);
        ahead.plan.selectConfidence(1);
        QCOMPARE(ahead.plan.stops()[0].buy, usual);
    }
    void aWhatIfIsAnsweredAndChangesNothing()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
        ahead.plan.askWhatIf(0);
        QVERIFY(ahead.plan.whatIfTitle().contains("Harrow Mill"));
        QVERIFY(ahead.plan.whatIfAnswer().size() >= 2);
        QVERIFY(ahead.plan.whatIfAnswer()[0].value != ahead.plan.whatIfAnswer()[1].value);
        QCOMPARE(ahead.plan.stops()[0].name, "Harrow Mill pump");
    }
    void whatIsLeftIsPlannedFromHere()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
        ahead.plan.planFromHere();
        QVERIFY(ahead.plan.notices()[0].problem()); // where the car is, is missing
        for (const char* key : {"1", "0", "0"})
            ahead.plan.here()->press(key);
        ahead.plan.planFromHere();
        QCOMPARE(ahead.plan.rows().size(), 8); // here, and the seven points behind km 100
        ahead.plan.planWholeRoute();
        QCOMPARE(ahead.plan.rows().size(), 10);
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
        QVERIFY(ahead.plan.feasible());
        QCOMPARE(ahead.plan.title(), "sunday, 80 km");
        QVERIFY(ahead.plan.stops().isEmpty());
    }
    void aBrokenFileChangesNothingAndIsSaid()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
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
        QCOMPARE(ahead.plan.rows().size(), 10);
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
        ahead.plan.setRoute(route, "Too far");
        QVERIFY(!ahead.plan.feasible());
        QVERIFY(ahead.plan.notices()[0].text.contains("Far"));
        QVERIFY(!ahead.plan.cures().isEmpty());
    }
    void theCardIsWrittenBesideTheLogbook()
    {
        PlannedAhead ahead;
        ahead.plan.setRoute(demoRoute(), "Rally");
        ahead.plan.writeCard();
        QFile card(QString::fromStdString((ahead.folder.path / "fuel-card.pdf").string()));
        QVERIFY(card.open(QIODevice::ReadOnly));
        QVERIFY(card.read(5) == "%PDF-");
        QVERIFY(ahead.plan.cardDone().contains("fuel-card.pdf"));
    }
};

UNDERMARK_TEST(PlanViewModelTest)
#include "plan_view_model_test.moc"
