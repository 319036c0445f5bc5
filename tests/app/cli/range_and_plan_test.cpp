// SPDX-License-Identifier: GPL-3.0-or-later
//
// Through the command line, as any reader can try: `range` says how far is made with some
// probability, `plan` of a road of that length without pumps says the risk that is left.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark::test;

namespace {

QByteArray road(double km, const QString& mode)
{
    return QString("at_km,name,mode,fuel\n0,start,%1,none\n%2,finish,,none\n").arg(mode).arg(km, 0, 'f', 9).toUtf8();
}

} // namespace

class RangeAndPlanTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

private slots:
    void initTestCase()
    {
        QVERIFY(m_run.prepareCar());
        // Nine tanks of 500 km; then a trip into the tenth, told by its kind.
        for (const char* trip : {"--km 60 --mode town", "--km 110 --mode motorway"}) {
            const CliAnswer added = m_run(QString("trip add --date 2026-09-12 ") + trip);
            QVERIFY2(added.exitCode == 0, added.err);
        }
    }

    void theRiskOfThePlanIsWhatTheRangeLeaves_data()
    {
        QTest::addColumn<QString>("range");
        QTest::addColumn<QString>("plan");
        QTest::newRow("log") << "--date 2026-09-12" << "--date 2026-09-12";
        QTest::newRow("log, five days later") << "--date 2026-09-17" << "--date 2026-09-17";
        QTest::newRow("odometer") << "--odometer-km 104260" << "--odometer-km 104260";
        QTest::newRow("reading") << "--signal 1.5" << "--signal 1.5";
        QTest::newRow("litres") << "--litres 32" << "--start-l 32";
        QTest::newRow("towing") << "--date 2026-09-12 --burns-more 30" << "--date 2026-09-12 --burns-more 30";
        QTest::newRow("towing, reading")
            << "--signal 1.5 --burns-more 20 --burns-more-sd 3" << "--signal 1.5 --burns-more 20 --burns-more-sd 3";
        QTest::newRow("litres of the tracker")
            << "--litres 32 --litres-sd 1.1" << "--start-l 32 --start-sd-l 1.1";
    }

    void theRiskOfThePlanIsWhatTheRangeLeaves()
    {
        QFETCH(QString, range);
        QFETCH(QString, plan);
        for (const QString mode : {"", "town", "open-road", "motorway"}) {
            const QString driven = mode.isEmpty() ? QString() : " --mode " + mode;
            const CliAnswer far = m_run("range --json " + range + driven);
            QVERIFY2(far.exitCode == 0, far.err);
            const auto toDry = far.json().at("to_dry_km");
            for (const auto& [name, risk] : {std::pair("p99", 0.01), {"p90", 0.1}, {"p50", 0.5}}) {
                const double km = toDry.at(name).get<double>() - (risk == 0.5 ? 1e-3 : 0);
                const QString file = m_run.file("road.csv", road(km, mode));
                const CliAnswer answer =
                    m_run("plan " + file + " --json --confidence 0.5 " + plan);
                QVERIFY2(answer.exitCode == 0 && answer.json().at("feasible") == true, answer.err);
                const double told = answer.json().at("dry_risk").get<double>();
                QVERIFY2(std::abs(told / risk - 1) < 0.02,
                         qPrintable(QString("%1 %2 km: %3 told").arg(mode).arg(km).arg(told)));
            }
        }
    }

    // 18 L told and nothing else: known no better than after a full fill, not exactly.
    void litresThatAreToldAreNotExact()
    {
        const QString file = m_run.file("road.csv", road(100, "open-road"));
        const auto start = [&](const QString& flags) {
            const CliAnswer answer = m_run("plan " + file + " --json --start-l 18" + flags);
            return answer.json().at("points")[0].at("arrive_l").at("sd").get<double>();
        };
        QVERIFY2(start("") > 0.2, qPrintable(QString::number(start(""))));
        QCOMPARE(start(" --start-sd-l 1.5"), 1.5);
        QCOMPARE(start(" --start-sd-l 0"), 0.0);
    }

    // The logbook's rates are per km that the car's meter shows, and so is the route.
    void theOdometerCheckDoesNotTouchWhatTheLogLearnt()
    {
        const QString file = m_run.file("road.csv", road(100, "open-road"));
        const auto used = [&](const QString& flags) {
            const CliAnswer answer = m_run("plan " + file + " --json --start-l 18 --date 2026-09-12" + flags);
            return answer.json().at("points")[1].at("used_l").get<double>();
        };
        QCOMPARE(used(" --odometer-check 9 10"), used(""));
    }

    void theLevelIsToldInOneWay()
    {
        const QString file = m_run.file("road.csv", road(100, "town"));
        for (const char* flags : {"--signal 1.5 --start-l 30", "--signal 1.5 --odometer-km 104300",
                                  "--signal2 1.5", "--signal 1.5 --capacity-l 50 --start-l 3 --rate 8",
                                  "--burns-more-sd 5", "--burns-more 500",
                                  "--burns-more 20 --capacity-l 50 --start-l 3 --rate 8"}) {
            const CliAnswer answer = m_run("plan " + file + " " + flags);
            QCOMPARE(answer.exitCode, 2);
            QCOMPARE(answer.errorLines(), 1);
        }
    }
};

UNDERMARK_TEST(RangeAndPlanTest)
#include "range_and_plan_test.moc"
