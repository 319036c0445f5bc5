// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"
#include "app/screen/ahead/route_editor.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

namespace {

bool near(Distance a, double km)
{
    return std::fabs(a.km() - km) < 1e-9;
}

RowEdit withLeg(const RouteEditor& editor, std::size_t row, double km, Behind behind)
{
    RowEdit edit = editor.row(row);
    edit.leg = Distance::fromKm(km);
    edit.behind = behind;
    return edit;
}

} // namespace

class RouteEditorTest : public QObject {
    Q_OBJECT
private slots:
    void rowsBehindMoveAlongWithALongerLeg()
    {
        RouteEditor editor(demoRoute());
        QVERIFY(editor.change(3, withLeg(editor, 3, 51.5, Behind::moves))); // 10 km more
        QVERIFY(near(editor.route().points[2].at, 77.1));
        QVERIFY(near(editor.route().points[3].at, 128.6));
        QVERIFY(near(editor.route().points[9].at, 332.7));
        QVERIFY(near(*editor.leg(4), 32.6));
    }
    void orTheyStayAndTheNextLegMakesUpForIt()
    {
        RouteEditor editor(demoRoute());
        QVERIFY(editor.change(3, withLeg(editor, 3, 51.5, Behind::stays)));
        QVERIFY(near(editor.route().points[3].at, 128.6));
        QVERIFY(near(editor.route().points[4].at, 151.2));
        QVERIFY(near(*editor.leg(4), 22.6));
    }
    void whatWouldRunBackwardsIsRefusedAndChangesNothing()
    {
        RouteEditor editor(demoRoute());
        const auto refused = editor.change(3, withLeg(editor, 3, 100, Behind::stays));
        QCOMPARE(refused.error().code, ErrorCode::badInput);
        QVERIFY(!editor.change(3, withLeg(editor, 3, -1, Behind::moves)));
        QVERIFY(!editor.change(3, withLeg(editor, 3, NAN, Behind::moves)));
        RowEdit nothingSold = editor.row(3);
        nothingSold.point.mostPurchase = Volume();
        QVERIFY(!editor.change(3, nothingSold));
        QVERIFY(editor.route() == demoRoute());
        QVERIFY(!editor.canUndo());
    }
    void whatARowSaysIsItsOwn()
    {
        RouteEditor editor(demoRoute());
        Route expected = demoRoute();
        RoutePoint& point = expected.points[5];
        point.mode = kTown;
        point.fuel = FuelSource::zone;
        point.pricePerLitre = 1.999;
        point.leastPurchase = Volume::fromLitres(4);
        point.mostPurchase = Volume::fromLitres(20);
        point.stopTime = Minutes(7);
        point.detour = Distance::fromKm(1.5);
        point.opens = Minutes(6 * 60);
        point.closes = Minutes(22 * 60);
        point.idle = Minutes(3);
        point.rest = Minutes(30);
        point.due = Minutes(14 * 60);
        point.floor = Volume::fromLitres(5);
        point.timed = !point.timed;
        RowEdit edit{point, std::nullopt, Behind::moves};
        edit.point.at = Distance::fromKm(1); // is the road's
        edit.point.climb = {};
        QVERIFY(editor.change(5, edit));
        QVERIFY(editor.route() == expected);
    }
    void aRowIsRenamedAndNoTwoAreAlike()
    {
        RouteEditor editor(demoRoute());
        RowEdit edit = editor.row(4);
        edit.point.name = "Bridge over the leat";
        QVERIFY(editor.change(4, edit));
        Route expected = demoRoute();
        expected.points[4].name = "Bridge over the leat";
        QVERIFY(editor.route() == expected);
        for (const std::string& name : {std::string(), demoRoute().points[2].name}) {
            edit.point.name = name;
            QCOMPARE(editor.change(4, edit).error().code, ErrorCode::badInput);
            QVERIFY(editor.route() == expected);
        }
        editor.undo();
        QVERIFY(editor.route() == demoRoute());
        Route nameless = demoRoute(); // as a file may have it
        nameless.points[4].name.clear();
        RouteEditor other(nameless);
        QVERIFY(other.change(4, withLeg(other, 4, 30, Behind::moves)));
    }
    void aNewRowDividesTheWayAndMakesItNoLonger()
    {
        RouteEditor editor(demoRoute());
        QVERIFY(editor.addAfter(1, "New"));
        QCOMPARE(editor.route().points.size(), std::size_t(11));
        QVERIFY(near(editor.route().points[2].at, (58.4 + 77.1) / 2));
        QCOMPARE(editor.route().points[2].mode, std::string(kSpecialStage));
        QVERIFY(editor.route().points[2].timed);
        QCOMPARE(editor.route().points[2].fuel, FuelSource::none);
        QVERIFY(near(editor.route().points[3].at, 77.1));
        QVERIFY(editor.addAfter(10, "Finish")); // behind the finish
        QVERIFY(near(editor.route().points[11].at, 322.7));
        QVERIFY(editor.remove(2));
        QVERIFY(editor.remove(10));
        QVERIFY(editor.route() == demoRoute());
    }
    void aRouteKeepsItsStartAndItsFinish()
    {
        Route two;
        two.points.resize(2);
        RouteEditor editor(two);
        QCOMPARE(editor.remove(1).error().code, ErrorCode::badInput);
        QVERIFY(editor.route() == two);
    }
    void aRouteLongerThanAFileMayBeIsRefused()
    {
        Route longest;
        longest.points.resize(kMostRoutePointsInFile);
        RouteEditor editor(longest);
        QVERIFY(!editor.addAfter(0, "one more"));
        QCOMPARE(editor.route().points.size(), kMostRoutePointsInFile);
    }
    // A thousand edits of all kinds, taken back one by one.
    void undoGoesBackExactlyAndEveryRouteIsSound()
    {
        std::mt19937 random(20260901);
        RouteEditor editor(demoRoute());
        std::vector<Route> past;
        for (int i = 0; i < 1000; ++i) {
            const Route before = editor.route();
            const std::size_t row = random() % before.points.size();
            const unsigned kind = random() % 4;
            if (kind == 0)
                (void)editor.addAfter(row, "New");
            else if (kind == 1)
                (void)editor.remove(row);
            else
                (void)editor.change(row, withLeg(editor, row, random() % 60,
                                                 kind == 2 ? Behind::moves : Behind::stays));
            QVERIFY(checkRoute(editor.route()));
            if (editor.route() != before)
                past.push_back(before);
        }
        QVERIFY(past.size() > 500);
        for (; !past.empty(); past.pop_back()) {
            QVERIFY(editor.canUndo());
            editor.undo();
            QVERIFY(editor.route() == past.back());
        }
        QVERIFY(!editor.canUndo());
    }
};

UNDERMARK_TEST(RouteEditorTest)
#include "route_editor_test.moc"
