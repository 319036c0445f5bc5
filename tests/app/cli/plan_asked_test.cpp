// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is asked of `plan` beside the plan: what-ifs together, any one closure, what a stop and a
// stage are worth; and that a long plan may be cut short.
#include "tests/support/cli_runner.h"
#include "tests/support/pseudo_terminal.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <csignal>
#include <random>

using namespace undermark::test;
using Json = nlohmann::json;

namespace {

const QString kTank = " --capacity-l 50 --start-l 20 --start-sd-l 0.5 --rate 8 --rate-sd 0.3 --json";

} // namespace

class PlanAskedTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    // So many pumps, about 5 km apart.
    QString longRoute(int pumps)
    {
        std::mt19937 random(4);
        QByteArray text = "at_km,name,mode,fuel,price_per_l\n";
        double at = 0;
        for (int i = 0; i < pumps; ++i) {
            at += 3 + double(random() % 400) / 100;
            text += QString("%1,P%2,road,pump,%3\n").arg(at).arg(i).arg(1.5 + double(random() % 500) / 1000).toUtf8();
        }
        return m_run.file("long.csv", text + QByteArray::number(at + 9) + ",end,road,none,\n");
    }

    QString day()
    {
        return m_run.file("day.csv", "at_km,name,mode,fuel,price_per_l\n0,Start,road,none,\n"
                                     "120,Ash,road,pump,1.70\n180,Birch,road,pump,1.90\n"
                                     "330,Cedar,road,pump,1.80\n460,Elm,road,pump,1.75\n820,End,road,none,\n");
    }

private slots:
    void initTestCase() { QVERIFY(m_run.prepareCar()); }

    // By itself each, and all at once: as the changed files would be planned.
    void whatIfsStandByThemselvesAndTogether()
    {
        const Json all = m_run("plan " + day() + kTank + " --close Ash --rate-up 10").json();
        QCOMPARE(all.at("what_if").size(), std::size_t(2));
        const Json& together = all.at("what_if_together");
        QCOMPARE(together.at("what").get<std::string>(), std::string("Ash closed, rate up by 10 %"));
        QString closed = day();
        QFile file(closed);
        QVERIFY(file.open(QIODevice::ReadWrite));
        const QByteArray changed = file.readAll().replace("pump,1.70", "none,");
        file.close();
        const QString other = m_run.file("closed.csv", changed);
        const Json same = m_run("plan " + other + " --capacity-l 50 --start-l 20 --start-sd-l 0.5 "
                                                  "--rate 8.8 --rate-sd 0.33 --json").json();
        QVERIFY(std::fabs(together.at("plan").at("cost").get<double>() - same.at("cost").get<double>()) < 1e-6);
        QVERIFY(same.at("cost").get<double>() > all.at("what_if")[1].at("plan").at("cost").get<double>());
        QVERIFY(!m_run("plan " + day() + kTank + " --close Ash").json().contains("what_if_together"));
    }

    void whicheverStopIsClosedThereIsAWayOn()
    {
        const Json usual = m_run("plan " + day() + kTank).json();
        const Json safe = m_run("plan " + day() + kTank + " --any-one-closed").json();
        QVERIFY(safe.at("feasible").get<bool>());
        QVERIFY(safe.at("cost").get<double>() >= usual.at("cost").get<double>() - 1e-9);
        QCOMPARE(safe.at("if_closed").size(), safe.at("stops").size());
        for (const Json& closed : safe.at("if_closed"))
            QVERIFY(closed.at("plan").at("feasible").get<bool>());
        // The last pump before 360 km without one: nothing but it will do.
        const QString one = m_run.file("one.csv", "at_km,name,mode,fuel\n0,Start,road,none\n"
                                                  "200,Only,road,pump\n700,End,road,none\n");
        QVERIFY(!m_run("plan " + one + kTank + " --any-one-closed").json().at("feasible").get<bool>());
        QVERIFY(m_run("plan " + one + kTank).json().at("feasible").get<bool>());
    }

    // The logbook's car does not stop for cents, and says what a stop counts as.
    void aStopIsNotMadeForCents()
    {
        const QString route = m_run.file(
            "cents.csv", "at_km,name,mode,fuel,price_per_l,stop_min\n0,Start,,none,,\n"
                         "200,Dear,,pump,1.80,10\n430,Cheap,,pump,1.77,10\n700,End,,none,,\n");
        const CliAnswer usual = m_run("plan --json --date 2026-11-20 --start-l 45 " + route);
        const Json asIs = usual.json();
        const Json free = m_run("plan --json --date 2026-11-20 --start-l 45 --stop-cost 0 " + route).json();
        const Json dear = m_run("plan --json --date 2026-11-20 --start-l 45 --stop-cost 1.8 " + route).json();
        QCOMPARE(asIs.at("stops").size(), std::size_t(1));
        QVERIFY(asIs.at("stops") == dear.at("stops")); // the median: the upper of two
        QVERIFY(free.at("cost").get<double>() < asIs.at("cost").get<double>());
        const CliAnswer words = m_run("plan --date 2026-11-20 --start-l 45 " + route);
        QVERIFY2(words.out.contains("Each stop counts as 1.80 in the cost."), words.out);
    }

    // A stage ends with more than what is sure at the finish, unless one says otherwise.
    void aStageIsDearerThanTheFinish()
    {
        const QString route = m_run.file(
            "stage.csv", "at_km,name,mode,fuel,price_per_l,timed\n0,Start,,none,,\n"
                         "100,Pump,,pump,1.80,\n400,Stage,,none,,1\n430,Stage end,,none,,\n440,End,,none,,\n");
        const auto dryAtStage = [&](const QString& flags) {
            return m_run("plan --json --start-l 20 " + flags + route).json().at("points")[3].at("dry_risk").get<double>();
        };
        QVERIFY(dryAtStage("") <= 0.001 + 1e-9);
        QVERIFY(dryAtStage("--confidence 0.95 ") <= 0.005 + 1e-9);
        QVERIFY(dryAtStage("--stage-confidence 0.99 ") > 0.004);
        const CliAnswer words = m_run("plan --start-l 20 " + route);
        QVERIFY2(words.out.contains("99 % sure on each arrival, 99.9 % at the end of a timed section."), words.out);
    }

    // floor_l is asked for on arrival at its row, by its confidence.
    void aRowHasItsOwnFloor()
    {
        const QString route = m_run.file(
            "floor.csv", "at_km,name,fuel,price_per_l,floor_l\n0,Start,none,,\n100,Pump,pump,1.80,\n"
                         "400,Ford,none,,12\n420,End,none,,\n");
        const Json row = m_run("plan " + route + kTank).json().at("points")[2];
        const double mean = row.at("arrive_l").at("mean"), sd = row.at("arrive_l").at("sd");
        QVERIFY(std::fabs(mean - (12 + 2.326348 * sd)) < 1e-4); // the normal 99 % point
        QVERIFY(m_run("plan " + m_run.file("bad.csv", "at_km,fuel,floor_l\n0,none,\n9,none,-1\n") + kTank).exitCode == 2);
    }

    // Two days: a speed of its own on the stage, a night, a control with its time.
    void aWayOverNightHasItsClock()
    {
        const QString route = m_run.file(
            "days.csv", "at_km,name,mode,fuel,rest_min,due\n0,Start,road,none,,\n120,Stage,stage,none,,17:50\n"
                        "180,Camp,road,none,600,\n270,End,,none,,06:30\n");
        const QString times = kTank + " --depart 16:00 --speed-kmh 60 --mode-speed stage=90";
        const Json plan = m_run("plan " + route + QString(times).replace("--start-l 20", "--start-l 40")).json();
        QVERIFY(std::fabs(plan.at("points")[3].at("clock_min").get<double>() - (30 * 60 + 10)) < 1e-6);
        QVERIFY(std::fabs(plan.at("points")[1].at("late_min").get<double>() - 10) < 1e-6);
        QVERIFY(std::fabs(plan.at("points")[3].at("late_min").get<double>() + 20) < 1e-6);
        QCOMPARE(plan.at("notes")[0].get<std::string>(), std::string("late at Stage by 10 min"));
        const CliAnswer words = m_run("plan " + route + QString(times).remove("--json").replace("--start-l 20", "--start-l 40"));
        QVERIFY2(words.out.contains("rests 600 min") && words.out.contains("due 06:30, 20 min to spare"), words.out);
        QCOMPARE(m_run("plan " + route + times + " --mode-speed stage").exitCode, 2);
    }

    // What is carried beside is stated per 100 km, and burns on every km.
    void aLoadBurnsWhatIsStated()
    {
        const QString route = m_run.file("load.csv", "at_km,fuel\n0,none\n150,none\n");
        const auto finish = [&](const char* load) {
            return m_run("plan " + route + kTank + load).json().at("finish_l").at("mean").get<double>();
        };
        QVERIFY(std::fabs(finish("") - finish(" --load-l-per-100km 0.4") - .6) < 1e-9);
        QCOMPARE(m_run("plan " + route + kTank + " --load-l-per-100km -1").exitCode, 2);
    }

    // The second car gets what the first leaves of the crew's cans.
    void twoCarsShareTheCrewsCans()
    {
        CliRunner run;
        for (const char* name : {"Wren", "Ouzel"}) {
            QCOMPARE(run(QString("vehicle add --name %1 --capacity-l 50 --fuel petrol --left-behind-l 1 --unusable-l .5").arg(name)).exitCode, 0);
            for (int tank = 0; tank < 4; ++tank)
                QCOMPARE(run(QString("--vehicle %1 fill add --litres 40 --full --odometer-km %2 --date 2026-11-%3")
                                 .arg(name).arg(1000 + 500 * tank).arg(11 + 3 * tank)).exitCode, 0);
        }
        const QString route = run.file("crew.csv", "at_km,name,fuel\n0,Start,none\n250,Ford,crew\n650,Camp,none\n");
        const QString flags = " --date 2026-11-20 --confidence .9 --crew-cans 6 --can-l 5 --second-car Ouzel";
        const CliAnswer both = run("--vehicle Wren plan " + route + flags + " --json");
        QVERIFY2(both.exitCode == 0, both.err);
        const Json json = both.json(), second = json.at("second_car");
        QCOMPARE(second.at("name").get<std::string>(), std::string("Ouzel"));
        QVERIFY(json.at("feasible").get<bool>());
        const int first = json.at("stops").at(0).at("cans");
        QVERIFY2(first > 0 && first <= 6, both.out);
        // Alone with what is left the second car gets the same answer.
        const Json alone = run(QString("--vehicle Ouzel plan %1 --date 2026-11-20 --confidence .9 --crew-cans %2 --can-l 5 --json")
                                   .arg(route).arg(6 - first)).json();
        Json without = second;
        without.erase("name");
        QVERIFY2(without == alone, qPrintable(QString::fromStdString(without.dump() + "\n" + alone.dump())));
        const CliAnswer text = run("--vehicle Wren plan " + route + flags);
        QVERIFY2(text.out.contains(QString("Second car, Ouzel, with %1 can").arg(6 - first).toUtf8()) && text.out.contains("of the crew"), text.out);
        QCOMPARE(run("plan " + route + kTank + " --second-car Ouzel").exitCode, 2);
        QVERIFY(run("--vehicle Wren plan " + route + " --crew-cans 2").exitCode == 2);
        QVERIFY(run("--vehicle Wren plan " + route + " --second-car Nobody --date 2026-11-20").exitCode != 0);
    }

    // Interrupted, a long plan answers with what it has, and says so.
    void anInterruptTakesTheBestPlanSoFar()
    {
        const PseudoTerminal terminal;
        if (terminal.name().empty())
            QSKIP("no pseudo terminals here");
        QProcess process;
        process.setStandardErrorFile(QString::fromStdString(terminal.name()));
        process.start(UNDERMARK_CLI,
                      QStringList{"plan", longRoute(2500)} +
                          (kTank + " --confidence 0.9 --trip-confidence 0.97").split(' ', Qt::SkipEmptyParts));
        QVERIFY(process.waitForStarted());
        std::string seen;
        QTRY_VERIFY_WITH_TIMEOUT((seen += terminal.read(50)).find("planning") != std::string::npos, 60000);
        kill(pid_t(process.processId()), SIGINT);
        QVERIFY(process.waitForFinished(60000));
        QCOMPARE(process.exitStatus(), QProcess::NormalExit);
        QCOMPARE(process.exitCode(), 0);
        const Json plan = Json::parse(process.readAllStandardOutput().toStdString());
        QVERIFY(plan.at("feasible").get<bool>() && plan.at("trip_gap").get<double>() > 0);
        QVERIFY2(plan.dump().find("planning was stopped") != std::string::npos, plan.at("notes").dump().c_str());
        QVERIFY(plan.at("below_floor_risk").get<double>() <= 0.03);
    }
};

UNDERMARK_TEST(PlanAskedTest)
#include "plan_asked_test.moc"
