// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/demo_logbook.h"
#include "app/car/plan_request.h"
#include "app/screen/ahead/plan_view_model.h"
#include "app/screen/base/mode_name.h"
#include "engine/planning/any_closure.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

struct PlannedAhead {
    test::DemoCar car;
    PlanViewModel plan{car, {}, QString::fromStdString(car.ownFolder.path.string())};
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
        QCOMPARE(ahead.answer.stops().size(), 3); // the start and the finish, too
        QCOMPARE(ahead.answer.stops()[1].name, "Harrow Mill pump");
        const auto number = [](double value, int decimals) { return QString::number(value, 'f', decimals); };
        QVERIFY(ahead.answer.stops()[1].buy.contains(number(same->stops[0].buy.litres(), 1)));
        QVERIFY2(ahead.answer.summary().contains(number(same->cost, 2)), qPrintable(ahead.answer.summary()));
        QCOMPARE(ahead.answer.legs().size(), 2);
        QVERIFY(!ahead.answer.horizon().notRunning.isEmpty());
        QVERIFY(ahead.answer.horizon() != HorizonPicture{});
    }
    // Word for word what the terminal prints of planRows(), in the order of its columns.
    void theRowsAreThoseOfTheTerminal()
    {
        PlannedAhead ahead;
        Route route = demoRoute();
        route.points[3].stopTime = Minutes(7);
        route.points[6].mostPurchase = Volume::fromLitres(20);
        ahead.setRoute(route, "Rally");
        const Planned& all = *ahead.answer.planned();
        const std::vector<PlanRow> rows = planRows(all.request, all.plan);
        const QList<RouteRow> shown = ahead.answer.rows();
        QCOMPARE(shown.size(), int(rows.size()));
        const auto litres = [](Volume volume) { return QString::asprintf("%.1f L", volume.litres()); };
        for (int i = 0; i < shown.size(); ++i) {
            const PlanRow& row = rows[std::size_t(i)];
            const RoutePoint& point = route.points[row.point];
            const bool last = i + 1 == shown.size();
            const QString said = shown[i].spoken;
            QVERIFY2(said.contains(QString::asprintf("%.1f km", row.at.km())), qPrintable(said));
            QVERIFY2(i == 0 || said.contains(QString::asprintf("leg %.1f km", row.leg.km())), qPrintable(said));
            QVERIFY2(said.contains(QString::fromStdString(point.name)), qPrintable(said));
            QVERIFY2(last || said.contains(modeName(point.mode)), qPrintable(said));
            QVERIFY2(last || said.contains("needs " + litres(row.needs)), qPrintable(said));
            QVERIFY2(said.contains("sure " + litres(row.sure) + ", even " + litres(row.even)), qPrintable(said));
            QVERIFY2(said.contains(QString::fromStdString(row.note)), qPrintable(said));
            QCOMPARE(!shown[i].buy.isEmpty(), row.stop != nullptr);
            if (row.stop)
                QVERIFY2(said.contains(litres(row.stop->buy)) && said.contains("leaves with " + litres(row.leave)),
                         qPrintable(said));
        }
        QVERIFY(shown[3].detail.contains("7 min") && shown[6].detail.contains("zone passed"));
    }
    // As Now says it: the litres at the start are guessed.
    void aLogThatHasBeenSilentIsSaid()
    {
        PlannedAhead ahead;
        ahead.car.pass(std::chrono::days(60));
        ahead.setRoute(demoRoute(), "Rally");
        const auto now = nowState(*ahead.car.knowledge().value(), {});
        QVERIFY(!now->outlook.warnings.empty());
        const NoticeText said = noticeTexts({{Severity::warning, now->outlook.warnings[0]}}, {})[0];
        QVERIFY(ahead.answer.notices().contains(said));
    }
    void aSmallRiskIsNeverShownAsNone()
    {
        PlannedAhead ahead;
        Route route = demoRoute();
        route.points.resize(2); // 58 km with half a tank
        ahead.setRoute(route, "Near");
        const double risk = ahead.answer.planned()->plan.dryRisk;
        QVERIFY2(risk > 0 && risk < 1e-5, qPrintable(QString::number(risk)));
        QVERIFY2(ahead.answer.summary().endsWith("Risk of running dry on the way: <0.001 %."),
                 qPrintable(ahead.answer.summary()));
        QVERIFY(!ahead.answer.summary().contains("0.0 %"));
    }
    void everyNumberHasItsUnitAndCurrency()
    {
        PlannedAhead ahead;
        ahead.plan.setFormat(UnitFormat({}, QLocale::c(), "€"));
        ahead.setRoute(demoRoute(), "Rally");
        QVERIFY2(ahead.answer.summary().contains(QRegularExpression("Cost [0-9.]+ €, of which stopping counts as [0-9.]+ €\\.")),
                 qPrintable(ahead.answer.summary()));
        const QRegularExpression bare("[0-9](?! ?(L|km|%|€|min|stop|stops|[0-9.:]))");
        for (const RouteRow& row : ahead.answer.rows()) {
            const QString numbers = QString(row.spoken).remove(row.name);
            QVERIFY2(!numbers.contains(bare), qPrintable(numbers));
        }
    }
    void moreConfidenceAsksForMoreFuel()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        const QString usual = ahead.answer.stops()[1].buy;
        ahead.plan.wishes()->selectConfidence(0);
        QCOMPARE(ahead.answer.stops()[1].buy, usual); // until the new plan is there
        ahead.settle();
        QVERIFY(ahead.answer.stops()[1].buy != usual);
        ahead.plan.wishes()->selectConfidence(1);
        ahead.settle();
        QCOMPARE(ahead.answer.stops()[1].buy, usual);
    }
    void aWhatIfIsAnsweredAndChangesNothing()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanWhatIfs& whatIfs = *ahead.plan.whatIfs();
        whatIfs.ask(0);
        QVERIFY(whatIfs.questions()[whatIfs.asked().first()].contains("Harrow Mill"));
        QVERIFY(QSignalSpy(&whatIfs, &PlanWhatIfs::answered).wait());
        QVERIFY(whatIfs.answer().size() >= 2);
        QVERIFY(whatIfs.answer()[0].value != whatIfs.answer()[1].value);
        QCOMPARE(ahead.answer.stops()[1].name, "Harrow Mill pump");
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
        QCOMPARE(whatIfs.questions()[whatIfs.asked().first()], asked);
        QCOMPARE(whatIfs.answer()[0].value,
                 planOutcome(ahead.answer.planned()->request, ahead.answer.planned()->plan, {}));
        ahead.setRoute(demoRoute(), "Rally"); // another route: nothing was asked of it
        QVERIFY(whatIfs.asked().isEmpty());
    }
    void whatIsLeftIsPlannedFromHere()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanHere& here = *ahead.plan.here();
        here.plan();
        QVERIFY(here.notices()[0].problem());
        QCOMPARE(here.notices()[0].text, "Where the car is on the route comes first.");
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
    // Passed here, took so much: planned again, with what that changed.
    void whatIsDrivenIsPlannedAgain()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanHere& here = *ahead.plan.here();
        QVERIFY(ahead.answer.changes().isEmpty());
        const Planned whole = *ahead.answer.planned();
        const PlannedStop& stop = whole.plan.stops.front();
        const int place = int(here.places().indexOf("Harrow Mill pump"));
        QVERIFY(place >= 0 && whole.request.route.points[stop.point].name == "Harrow Mill pump");
        here.selectFuel(PlanHere::OfPlan);
        here.selectPlace(place);
        QCOMPARE(here.place(), place);
        here.plan(); // nothing taken on yet: the same stop, the same litres
        ahead.settle();
        QVERIFY2(!ahead.answer.changes().contains("Harrow Mill"), qPrintable(ahead.answer.changes()));
        const Planned there = *ahead.answer.planned();
        QVERIFY(std::fabs((there.plan.stops.front().buy - stop.buy).litres()) < 1e-6);
        QCOMPARE(ahead.plan.basis(), "Starts with what the plan expects here.");
        // 60 km on, of 18 L less than the plan: something else has to be done, and is said.
        here.form()->setText(0, "150");
        here.form()->setText(2, "12");
        here.plan();
        ahead.settle();
        QVERIFY2(ahead.answer.changes().startsWith("Against the plan before: "), qPrintable(ahead.answer.changes()));
        QCOMPARE(ahead.answer.planned()->request.tank.start.mean, Volume::fromLitres(12));
        here.form()->setText(0, "160");
        here.fillUp();
        ahead.settle();
        const Tank& full = ahead.answer.planned()->request.tank;
        QCOMPARE(full.start.mean, full.capacity);
        QCOMPARE(ahead.plan.basis(), "Starts with a tank that was filled up here.");
        here.planWhole();
        ahead.settle();
        QVERIFY(ahead.answer.changes().isEmpty());
        QVERIFY(ahead.answer.planned()->plan.stops.front().buy == stop.buy);
    }
    void whatIfsAreAskedTogether()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanWhatIfs& whatIfs = *ahead.plan.whatIfs();
        const int burnsMore = int(whatIfs.questions().size()) - 2;
        whatIfs.ask(0);
        whatIfs.ask(burnsMore);
        QTRY_VERIFY(!whatIfs.busy());
        const PlanRequest& request = ahead.answer.planned()->request;
        const auto both = whatIfRateUp(whatIfClosed(request, "Harrow Mill pump")->request, Fraction::fromPercent(10));
        QCOMPARE(whatIfs.answer()[1].value, planOutcome(both->request, both->plan, {}));
        QCOMPARE(whatIfs.asked(), (QList<int>{0, burnsMore}));
        whatIfs.ask(0); // no more
        QTRY_VERIFY(!whatIfs.busy());
        const auto more = whatIfRateUp(request, Fraction::fromPercent(10));
        QCOMPARE(whatIfs.answer()[1].value, planOutcome(more->request, more->plan, {}));
        whatIfs.ask(burnsMore);
        QVERIFY(whatIfs.answer().isEmpty());
        whatIfs.ask(int(whatIfs.questions().indexOf("Any one stop is closed")));
        QTRY_VERIFY(!whatIfs.busy());
        const auto any = planForAnyClosure(request);
        QCOMPARE(whatIfs.answer()[1].value, planOutcome(request, any->plan, {}));
    }
    void aRouteFileIsPickedFromTheList()
    {
        PlannedAhead ahead;
        QFile file(QString::fromStdString((ahead.car.ownFolder.path / "sunday.csv").string()));
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
        QCOMPARE(ahead.answer.stops().size(), 2); // start and finish
        QVERIFY2(ahead.answer.summary().startsWith("No stop is needed."), qPrintable(ahead.answer.summary()));
    }
    void aBrokenFileChangesNothingAndIsSaid()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        QFile file(QString::fromStdString((ahead.car.ownFolder.path / "a.csv").string()));
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
        const QList<Fact> cures = ahead.answer.cures();
        QCOMPARE(cures.size(), int(ahead.answer.planned()->cures.size()));
        QVERIFY(!cures.isEmpty());
        for (const Fact& cure : cures)
            QVERIFY2(!cure.name.isEmpty() && !cure.value.isEmpty(), qPrintable(cure.name)); // what to mind
    }
    // The level of plan --signal: the car is asked, and nothing that Now knows better is mixed in.
    void aReadingTypedHereIsAskedAsTheTerminalAsksIt()
    {
        PlannedAhead ahead;
        ahead.setRoute(demoRoute(), "Rally");
        PlanHere& here = *ahead.plan.here();
        QCOMPARE(here.form()->fields().size(), 4);
        QCOMPARE(here.form()->fields()[3].unit, "V");
        here.form()->setText(0, "150");
        here.form()->setText(3, "1.9");
        here.form()->setText(2, "12");
        here.plan();
        QVERIFY(here.notices()[0].text.contains("in one way"));
        here.form()->setText(2, "");
        here.plan();
        QVERIFY(here.notices().isEmpty());
        ahead.settle();
        Question question;
        question.signal = Signal::of(1.9);
        const auto car = ahead.car.knowledge();
        const auto terminal = tankFromCar(**car, question);
        QVERIFY(terminal);
        const Estimate<Volume> start = ahead.answer.planned()->request.tank.start;
        QCOMPARE(start.mean, terminal->tank.start.mean);
        QCOMPARE(start.sd, terminal->tank.start.sd);
        QVERIFY(start.mean != tankFromCar(**car)->tank.start.mean);
        QCOMPARE(ahead.plan.basis(), "Starts with the reading that was typed here.");
        here.form()->setText(0, "160");
        here.plan(); // nothing more told of the fuel: as Now says again
        ahead.settle();
        QCOMPARE(ahead.answer.planned()->request.tank.start.mean, tankFromCar(**car)->tank.start.mean);
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
        QFile card(QString::fromStdString((ahead.car.ownFolder.path / "fuel-card.pdf").string()));
        QVERIFY(card.open(QIODevice::ReadOnly));
        QVERIFY(card.read(5) == "%PDF-");
        QVERIFY(ahead.plan.card()->done().contains("fuel-card.pdf"));
    }
};

UNDERMARK_TEST(PlanViewModelTest)
#include "plan_view_model_test.moc"
