// SPDX-License-Identifier: GPL-3.0-or-later
//
// Another program writes to the logbook while the screen is open: here a second
// connection to the same file.
#include "app/screen/base/screen.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

constexpr int kFewSeconds = 6000; // ms

struct Two {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    Screen screen{car};
    Logbook other = *Logbook::open(folder.path / "demo.sqlite", OpenMode::readWrite);

    void fill(double litres, double odometerKm)
    {
        Fill fill;
        fill.time = car.time();
        fill.volume = Volume::fromLitres(litres);
        fill.odometer = Distance::fromKm(odometerKm);
        QVERIFY(other.add(other.vehicles()->front().id, fill, fill.time));
    }
};

} // namespace

class SecondWriterTest : public QObject {
    Q_OBJECT
private slots:
    void aFillWrittenElsewhereIsShownOnEveryPageByItself()
    {
        Two two;
        const int rows = two.screen.logbook.rows()->rowCount();
        const QString since = two.screen.now.facts().isEmpty() ? QString() : two.screen.now.facts()[0].value;
        const QString plan = two.screen.pump.form()->text(0);
        two.fill(20, two.car.knowledge().value()->log.fills.back().value.odometer->km() + 400);
        QTRY_COMPARE_WITH_TIMEOUT(two.screen.logbook.rows()->rowCount(), rows + 1, kFewSeconds);
        QVERIFY(two.screen.now.facts()[0].value != since);
        QVERIFY(two.screen.pump.form()->text(0) != plan); // another guess
    }
    void whatIsBeingTypedStays()
    {
        Two two;
        PumpViewModel& pump = two.screen.pump;
        pump.form()->press("4");
        pump.form()->press("2");
        pump.selectExtent(1);
        const QString odometer = pump.form()->text(1);
        RoutePoint point;
        Route route{{point, point}};
        route.points[1].at = Distance::fromKm(50);
        two.screen.ahead.setRoute(route, "Sunday");
        two.screen.ahead.editRow(1);
        two.screen.ahead.editor()->form()->press("7");
        const QString leg = two.screen.ahead.editor()->form()->text(0);
        two.screen.logbook.open(0);
        const QString opened = two.screen.logbook.title();
        const int rows = two.screen.logbook.rows()->rowCount();
        two.fill(20, odometer.toDouble() + 100);
        QTRY_COMPARE_WITH_TIMEOUT(two.screen.logbook.rows()->rowCount(), rows + 1, kFewSeconds);
        QCOMPARE(pump.form()->text(0), "42");
        QCOMPARE(pump.extent(), 1);
        QVERIFY(pump.form()->text(1) != odometer); // was a guess and still is one
        QVERIFY(pump.form()->guessed(1));
        QCOMPARE(two.screen.ahead.editor()->form()->text(0), leg);
        QVERIFY(two.screen.ahead.editor()->opened());
        QCOMPARE(two.screen.logbook.title(), opened);
    }
    void whatTheScreenItselfWroteIsNotReadAgain()
    {
        Two two;
        two.screen.pump.form()->press("2");
        two.screen.pump.form()->press("1");
        two.screen.pump.save();
        QVERIFY(two.screen.pump.saved());
        QVERIFY(!two.car.writtenElsewhere());
        two.fill(20, 300000);
        QVERIFY(two.car.writtenElsewhere());
        QVERIFY(!two.car.writtenElsewhere());
    }
};

UNDERMARK_TEST(SecondWriterTest)
#include "second_writer_test.moc"
