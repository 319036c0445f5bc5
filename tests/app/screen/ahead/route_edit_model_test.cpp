// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"
#include "app/screen/ahead/plan_view_model.h"
#include "engine/tables/route_file.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTest>

using namespace undermark;

namespace {

struct Ahead {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    PlanViewModel plan{car, {}, QString::fromStdString(folder.path.string())};
    RouteEditModel& row = *plan.editor();
    Ahead()
    {
        plan.setRoute(demoRoute(), "Rally");
        answer();
    }
    PlanAnswer& answer() { return test::settled(plan); }

    void type(int field, const QString& text)
    {
        row.form()->select(field);
        for (int i = 0; i < 12; ++i)
            row.form()->erase();
        for (const QChar key : text)
            row.form()->press(key);
    }
    QStringList files() const
    {
        QStringList names;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path / "routes"))
            names.append(QString::fromStdString(entry.path().filename().string()));
        names.sort();
        return names;
    }
};

} // namespace

class RouteEditModelTest : public QObject {
    Q_OBJECT
private slots:
    void aChangedLegIsPlannedAtOnceAndUndone()
    {
        Ahead ahead;
        const QString summary = ahead.answer().summary();
        ahead.plan.editRow(3);
        QCOMPARE(ahead.row.name(), "Harrow Mill pump");
        QCOMPARE(ahead.row.place(), "row 4 of 10, at 118.6 km");
        QCOMPARE(ahead.row.form()->text(0), "41.5");
        ahead.type(0, "61.5");
        QCOMPARE(ahead.row.doneWord(), "Take the numbers");
        ahead.row.done();
        QVERIFY(ahead.row.opened());
        QCOMPARE(ahead.row.doneWord(), "Back to the plan");
        QCOMPARE(ahead.plan.title(), "Rally, 342 km");
        QVERIFY(ahead.answer().summary() != summary);
        ahead.row.done();
        QVERIFY(!ahead.row.opened());
        ahead.row.undo();
        QCOMPARE(ahead.answer().summary(), summary);
        QVERIFY(ahead.row.undoWord().isEmpty());
        QVERIFY(!ahead.row.unsaved());
    }
    void aClosedPumpIsTakenAwayWithOneTouch()
    {
        Ahead ahead;
        ahead.plan.editRow(3);
        ahead.row.selectPart(RouteEditModel::Fuel);
        QCOMPARE(ahead.row.fuel(), 1);
        ahead.row.selectFuel(0);
        for (const RouteRow& stop : ahead.answer().stops())
            QVERIFY(stop.name != "Harrow Mill pump");
        ahead.row.selectFuel(4);
        QCOMPARE(ahead.row.fuels()[ahead.row.fuel()], "Crew's cans");
        QCOMPARE(ahead.row.route().points[3].fuel, FuelSource::crew);
        ahead.row.selectFuel(0);
        ahead.row.selectPart(RouteEditModel::Road);
        ahead.row.selectMode(0);
        QCOMPARE(ahead.row.route().points[3].mode, std::string(kTown));
        ahead.row.selectMode(4); // the usual mix
        QCOMPARE(ahead.row.modes()[4], "Usual mix");
        QVERIFY(ahead.row.route().points[3].mode.empty());
        QVERIFY2(ahead.answer().rows()[3].way.contains("Usual mix"), qPrintable(ahead.answer().rows()[3].way));
    }
    void aPumpIsAddedWithItsPriceAndItsLimit()
    {
        Ahead ahead;
        ahead.plan.editRow(1);
        ahead.row.addRow();
        QCOMPARE(ahead.row.name(), "New row 1");
        QVERIFY(ahead.row.form()->fields()[0].hint.size() > 0); // half-way is a guess
        ahead.row.form()->press("5");                           // 5 km behind the stage's start
        ahead.row.selectPart(RouteEditModel::Fuel);                                // takes it
        QCOMPARE(ahead.row.place(), "row 3 of 11, at 63.4 km");
        QCOMPARE(ahead.plan.title(), "Rally, 322 km"); // the rows behind stayed
        ahead.type(0, "1.5");
        ahead.type(1, "12.5");
        ahead.row.selectFuel(1);
        const RoutePoint& point = ahead.row.route().points[2];
        QCOMPARE(point.fuel, FuelSource::pump);
        QCOMPARE(*point.pricePerLitre, 1.5);
        QCOMPARE(point.mostPurchase->litres(), 12.5);
        QCOMPARE(ahead.answer().stops()[1].name, "New row 1"); // the cheapest fuel there is
        ahead.type(1, "");
        ahead.row.done();
        QVERIFY(!ahead.row.route().points[2].mostPurchase);
        ahead.row.selectPart(RouteEditModel::Row);
        ahead.row.removeRow();
        QCOMPARE(ahead.row.route().points.size(), std::size_t(10));
        QVERIFY(ahead.row.route() == demoRoute());
    }
    // All that a route file may say of a row.
    void hoursHaltsAndFloorsAreTheRowsOwn()
    {
        Ahead ahead;
        ahead.plan.editRow(3);
        ahead.row.selectPart(RouteEditModel::Fuel);
        const QStringList ofFuel{"1.9", "30", "4", "7", "1.5", "630", "22.15", "20261205", "20261206"};
        for (int i = 0; i < ofFuel.size(); ++i)
            ahead.type(i, ofFuel[i]);
        ahead.row.selectPart(RouteEditModel::Control); // takes them
        const QStringList ofControl{"1430", "45", "3", "6"};
        for (int i = 0; i < ofControl.size(); ++i)
            ahead.type(i, ofControl[i]);
        ahead.row.done();
        QVERIFY2(ahead.row.notices().isEmpty(), ahead.row.notices().isEmpty() ? "" : qPrintable(ahead.row.notices()[0].text));
        ahead.row.selectPart(RouteEditModel::Road);
        QCOMPARE(ahead.row.timedWord(), "timed from here: no");
        ahead.row.switchTimed();
        QCOMPARE(ahead.row.timedWord(), "timed from here: yes");
        Route expected = demoRoute();
        RoutePoint& point = expected.points[3];
        point.pricePerLitre = 1.9;
        point.mostPurchase = Volume::fromLitres(30);
        point.leastPurchase = Volume::fromLitres(4);
        point.stopTime = Minutes(7);
        point.detour = Distance::fromKm(1.5);
        point.opens = Minutes(6 * 60 + 30);
        point.closes = Minutes(22 * 60 + 15);
        point.firstDay = std::chrono::sys_days(std::chrono::year(2026) / 12 / 5);
        point.lastDay = std::chrono::sys_days(std::chrono::year(2026) / 12 / 6);
        point.due = Minutes(14 * 60 + 30);
        point.rest = Minutes(45);
        point.idle = Minutes(3);
        point.floor = Volume::fromLitres(6);
        point.timed = true;
        QVERIFY(ahead.row.route() == expected);
        ahead.row.selectPart(RouteEditModel::Fuel);
        QCOMPARE(ahead.row.form()->fields()[5].text, "06:30");
        for (const char* wrong : {"8.3", "2460", "7", "12345"}) {
            ahead.type(5, wrong);
            ahead.row.done();
            QVERIFY2(!ahead.row.notices().isEmpty() && ahead.row.notices()[0].text.contains("opens"), wrong);
            QVERIFY(ahead.row.route() == expected);
            ahead.row.undo();
        }
        for (const char* wrong : {"2026", "20261301", "20260230"}) {
            ahead.type(7, wrong);
            ahead.row.done();
            QVERIFY2(!ahead.row.notices().isEmpty() && ahead.row.notices()[0].text.contains("no date"), wrong);
            QVERIFY(ahead.row.route() == expected);
            ahead.row.undo();
        }
        for (const int hours : {5, 6}) // open at all hours
            ahead.type(hours, "");
        ahead.row.done();
        QVERIFY(!ahead.row.route().points[3].opens && !ahead.row.route().points[3].closes);
        ahead.row.save();
        const auto file = readRouteFile(ahead.folder.path / "routes" / "Rally.csv");
        QVERIFY(file && file->route == ahead.row.route());
    }
    void whatCannotBePlannedIsRefusedInOneSentence()
    {
        Ahead ahead;
        const QString summary = ahead.answer().summary();
        ahead.plan.editRow(5);
        ahead.row.selectPart(RouteEditModel::Fuel);
        ahead.row.selectFuel(1);
        ahead.answer();
        ahead.row.undo();
        QVERIFY(ahead.row.route() == demoRoute());
        QCOMPARE(ahead.answer().summary(), summary);
        ahead.type(1, "0"); // at most nothing
        ahead.row.done();
        QCOMPARE(ahead.row.notices().size(), 1);
        QCOMPARE(ahead.row.form()->text(2), "0"); // what was typed is still there
        ahead.row.selectPart(RouteEditModel::Road); // is not left with what is refused
        QCOMPARE(ahead.row.part(), 1);
        ahead.row.undo();
        QVERIFY(ahead.row.form()->text(2).isEmpty());
        QVERIFY(ahead.row.notices().isEmpty());
        ahead.row.selectPart(RouteEditModel::Road);
        ahead.type(0, "");
        ahead.row.step(1);
        QCOMPARE(ahead.row.name(), "Weir end");
        QVERIFY(ahead.row.notices()[0].text.contains("leg to here"));
        QVERIFY(ahead.row.route() == demoRoute());
    }
    void aPumpWithoutAPriceIsTakenAndTheCostIsNotLookedAt()
    {
        Ahead ahead;
        ahead.plan.editRow(5);
        ahead.row.selectPart(RouteEditModel::Fuel);
        ahead.row.selectFuel(1); // the others state one
        QVERIFY(ahead.row.notices().isEmpty());
        QVERIFY(ahead.answer().feasible());
        QCOMPARE(ahead.answer().planned()->request.aim, Aim::stops);
        QVERIFY(ahead.answer().notices()[0].text.contains("no price"));
        ahead.type(0, "1.9");
        ahead.row.done();
        QVERIFY(ahead.answer().notices().isEmpty());
        QCOMPARE(ahead.answer().planned()->request.aim, Aim::cost);
    }
    void aRouteIsMadeFromNothingWithThePumpsOfOthers()
    {
        Ahead ahead;
        ahead.plan.editRow(3);
        ahead.type(0, "51.5");
        ahead.row.done();
        ahead.row.save(); // its pumps are known from now on
        ahead.plan.otherRoute();
        ahead.plan.newRoute();
        QVERIFY(ahead.plan.loaded() && ahead.row.opened());
        QCOMPARE(ahead.plan.title(), "New route, 0 km");
        QVERIFY(!ahead.row.form()->fields()[0].hint.isEmpty()); // how far is a guess
        for (const char* key : {"9", "0"})
            ahead.row.form()->press(key);
        ahead.row.selectPart(RouteEditModel::Fuel);
        QCOMPARE(ahead.row.knownPumps(), (QStringList{"Harrow Mill pump", "Zone at Linfold"}));
        ahead.row.takeKnownPump(0);
        QCOMPARE(ahead.row.name(), "Harrow Mill pump");
        QCOMPARE(ahead.row.fuel(), 1);
        QCOMPARE(ahead.row.form()->text(1), "1.809");
        ahead.row.addRow();
        QCOMPARE(ahead.row.place(), "row 3 of 3, at 90.0 km");
        for (const char* key : {"4", "0", "0"})
            ahead.row.form()->press(key);
        ahead.row.done();
        QCOMPARE(ahead.plan.title(), "New route, 490 km");
        QVERIFY(ahead.answer().feasible());
        QCOMPARE(ahead.answer().stops()[1].name, "Harrow Mill pump");
        ahead.row.takeKnownPump(0); // which another row has taken
        QVERIFY(ahead.row.notices()[0].problem());
        ahead.row.nameRoute("To the coast");
        QCOMPARE(ahead.plan.title(), "To the coast, 490 km");
        QVERIFY(ahead.row.unsaved());
        ahead.row.save();
        QVERIFY(!ahead.row.unsaved());
        QVERIFY(ahead.files().contains("To the coast.csv"));
        const auto file = readRouteFile(ahead.folder.path / "routes" / "To the coast.csv");
        QVERIFY(file && file->route == ahead.row.route()); // as `plan` reads it
    }
    void onlyTheFieldThatWasTypedChanges()
    {
        Ahead ahead;
        Route route = demoRoute();
        route.points[3].at = Distance::fromKm(118.6423); // shown as 41.5
        ahead.plan.setRoute(route, "Rally");
        ahead.answer();
        ahead.plan.editRow(3);
        ahead.row.selectPart(RouteEditModel::Fuel);
        ahead.type(1, "30");
        ahead.row.done();
        QCOMPARE(ahead.row.route().points[3].at.km(), 118.6423);
        QCOMPARE(*ahead.row.route().points[3].pricePerLitre, 1.809);
    }
    void aNewRowIsGivenAName()
    {
        Ahead ahead;
        ahead.plan.editRow(1);
        ahead.row.addRow();
        ahead.row.selectPart(RouteEditModel::Row);
        ahead.row.typeName("  Ford at\tHollow Lane ");
        QCOMPARE(ahead.row.name(), "New row 1"); // not yet
        QCOMPARE(ahead.row.doneWord(), "Take the name");
        ahead.row.done();
        QCOMPARE(ahead.row.name(), "Ford at Hollow Lane");
        QCOMPARE(ahead.row.typedName(), ahead.row.name());
        QCOMPARE(ahead.answer().rows()[2].name, "Ford at Hollow Lane");
        ahead.row.undo();
        QCOMPARE(ahead.row.name(), "New row 1");
        ahead.row.typeName("Ford");
        ahead.row.step(1); // taken with what is touched next
        QCOMPARE(ahead.row.route().points[2].name, std::string("Ford"));
        QCOMPARE(ahead.row.typedName(), "Callow end");
    }
    void aNameThatIsEmptyOrTakenIsRefusedInOneSentence()
    {
        Ahead ahead;
        ahead.plan.editRow(3);
        ahead.row.selectPart(RouteEditModel::Row);
        for (const char* name : {"", "   ", "Callow end"}) {
            ahead.row.typeName(name);
            ahead.row.done();
            QCOMPARE(ahead.row.notices().size(), 1);
            QVERIFY(ahead.row.notices()[0].problem());
            QCOMPARE(ahead.row.typedName(), name); // to be mended
            QVERIFY(ahead.row.route() == demoRoute());
        }
        QCOMPARE(ahead.row.undoWord(), "Drop the name");
        ahead.row.undo();
        QCOMPARE(ahead.row.typedName(), "Harrow Mill pump");
        QVERIFY(ahead.row.notices().isEmpty());
    }
    void theRestOfARouteIsChangedInTheWholeOfIt()
    {
        Ahead ahead;
        for (const char* key : {"1", "0", "0"})
            ahead.plan.here()->form()->press(key);
        ahead.plan.here()->plan();
        ahead.answer();
        ahead.plan.editRow(0); // here: the row behind the car
        QCOMPARE(ahead.row.name(), "Callow end");
        ahead.plan.editRow(1);
        QCOMPARE(ahead.row.name(), "Harrow Mill pump");
        ahead.type(0, "61.5");
        ahead.row.done();
        QCOMPARE(ahead.answer().rows().size(), 8); // still from here
        QCOMPARE(ahead.answer().rows()[1].at, "138.6");
        ahead.plan.here()->planWhole();
        ahead.answer();
        QCOMPARE(ahead.answer().rows().size(), 10);
        QCOMPARE(ahead.answer().rows()[3].at, "138.6");
    }
    void aRouteThatCannotBePlannedIsMendedHere()
    {
        Ahead ahead;
        Route route = demoRoute();
        route.points[4].mode = "river";
        ahead.plan.setRoute(route, "Rally");
        QVERIFY(ahead.answer().notices()[0].problem());
        QCOMPARE(ahead.answer().rows().size(), 10);
        ahead.plan.editRow(4);
        QCOMPARE(ahead.row.mode(), -1);
        ahead.row.selectMode(1);
        QVERIFY(ahead.answer().feasible());
    }
    void whatIsSavedIsAFileOfItsOwnEachTime()
    {
        Ahead ahead;
        ahead.plan.editRow(3);
        ahead.type(0, "51.5");
        ahead.row.done();
        QVERIFY(ahead.row.unsaved());
        ahead.row.save();
        QVERIFY2(ahead.row.saved().contains("routes/Rally.csv"), qPrintable(ahead.row.saved()));
        QVERIFY(!ahead.row.unsaved());
        const auto file = readRouteFile(ahead.folder.path / "routes" / "Rally.csv");
        QVERIFY(file->route == ahead.row.route());
        ahead.type(0, "52.5");
        ahead.row.done();
        ahead.row.save();
        QCOMPARE(ahead.files(), (QStringList{"Rally-2.csv", "Rally.csv"}));
        QCOMPARE(ahead.plan.title(), "Rally-2, 333 km");
        QVERIFY(readRouteFile(ahead.folder.path / "routes" / "Rally.csv")->route == file->route);
        ahead.row.load(ahead.row.route(), "../up/=x-3", {});
        ahead.row.save();
        QVERIFY(ahead.files().contains(" up =x.csv"));
    }
    void aSavedRouteIsFoundInTheListAgain()
    {
        Ahead ahead;
        FileList elsewhere(QString("/"), {"*.csv"}, QString::fromStdString((ahead.folder.path / "routes").string()));
        const auto named = [&](const QString& name) {
            for (int row = 0; row < elsewhere.rowCount(); ++row)
                if (elsewhere.data(elsewhere.index(row), FileList::Name) == name)
                    return row;
            return -1;
        };
        QCOMPARE(named("Undermark's own folder"), -1);
        ahead.row.save();
        elsewhere.refresh();
        QVERIFY(named("Undermark's own folder") >= 0);
        QVERIFY(elsewhere.pick(named("Undermark's own folder")).isEmpty());
        QVERIFY(elsewhere.pick(named("Rally.csv")).endsWith("routes/Rally.csv"));
        QVERIFY(elsewhere.pick(named("One folder up")).isEmpty());
        QCOMPARE(elsewhere.folder(), "/");
    }
    void anUnsavedRouteIsLeftOnlyWhenAskedTwice()
    {
        Ahead ahead;
        ahead.plan.editRow(9);
        ahead.row.removeRow();
        ahead.row.done();
        ahead.plan.otherRoute();
        QVERIFY(ahead.plan.loaded());
        QVERIFY(ahead.plan.notices()[0].caution());
        ahead.plan.otherRoute();
        QVERIFY(!ahead.plan.loaded());
    }
};

UNDERMARK_TEST(RouteEditModelTest)
#include "route_edit_model_test.moc"
