// SPDX-License-Identifier: GPL-3.0-or-later
//
// The backtest command as a user runs it: files in, JSON and exit codes out.
#include "tests/support/simulated_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <nlohmann/json.hpp>

#include <cmath>

using namespace undermark;
using nlohmann::json;

class BacktestCommandTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    struct Answer {
        int exitCode;
        QByteArray out;
        QByteArray err;
    };

    Answer run(const QStringList& arguments)
    {
        QProcess process;
        process.start(QStringLiteral(UNDERMARK_CLI), QStringList{"backtest"} + arguments);
        process.waitForFinished();
        return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
    }

    QString write(const QByteArray& text)
    {
        QFile file(m_folder.filePath("fills.csv"));
        if (file.open(QIODevice::WriteOnly))
            file.write(text);
        return file.fileName();
    }

    // A simulated log of `count` tanks as `date,litres,km` or with an odometer.
    static QByteArray csv(std::size_t count, bool odometer = false)
    {
        std::mt19937_64 random(11);
        test::CarTruth car;
        const auto fills = test::simulate(car, count, random).fills;
        QByteArray text = odometer ? "date,litres,odometer_km\n" : "date,litres,km\n";
        for (std::size_t i = odometer ? 0 : 1; i < fills.size(); ++i) {
            const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(fills[i].time)};
            const double km = (odometer ? fills[i].odometer : fills[i].sinceLast)->km();
            text += QString::asprintf("%d-%02u-%02u,%.3f,%.3f\n", int(day.year()),
                                      unsigned(day.month()), unsigned(day.day()),
                                      fills[i].volume.litres(), km).toUtf8();
        }
        return text;
    }

private slots:
    void jsonCarriesWhatTheContractSays()
    {
        const Answer answer = run({write(csv(40)), "--json"});
        QCOMPARE(answer.exitCode, 0);
        const json j = json::parse(answer.out.toStdString());
        QCOMPARE(j.at("tanks").get<int>(), 40);
        for (const char* key : {"last", "mean5", "mean10", "ewma"})
            QVERIFY(j.at("baseline_mape").at(key).is_number());
        for (const char* key : {"coverage", "mean_width", "interval_score"})
            for (const char* band : {"p50", "p80", "p90"})
                QVERIFY(j.at(key).at(band).is_number());
        QVERIFY(j.at("coverage_by_horizon").is_object());
        QVERIFY(j.at("flagged").is_array());
        const json& forecasts = j.at("forecasts");
        QCOMPARE(forecasts.size(), std::size_t(30));
        QCOMPARE(forecasts[0].at("row").get<int>(), 11);
        double error = 0, covered = 0;
        for (const json& f : forecasts) {
            error += std::abs(f.at("km").get<double>() / f.at("actual_km").get<double>() - 1) / 30;
            covered += (f.at("lo80") <= f.at("actual_km") && f.at("actual_km") <= f.at("hi80")) / 30.0;
            QVERIFY(f.at("lo90") < f.at("lo80") && f.at("lo80") < f.at("lo50"));
            QVERIFY(f.at("hi50") < f.at("hi80") && f.at("hi80") < f.at("hi90"));
            QVERIFY(f.at("flagged").is_boolean());
        }
        QVERIFY(std::abs(j.at("mape").get<double>() - error) < 1e-9);
        QVERIFY(std::abs(j.at("coverage").at("p80").get<double>() - covered) < 1e-9);
    }

    void theFirstRowOfAnOdometerLogOnlyBegins()
    {
        const json j = json::parse(run({write(csv(40, true)), "--json"}).out.toStdString());
        QCOMPARE(j.at("tanks").get<int>(), 40);
        QCOMPARE(j.at("forecasts")[0].at("row").get<int>(), 12);
        QCOMPARE(j.at("forecasts").size(), std::size_t(30));
    }

    void aForgottenFillIsForecastThenFlagged()
    {
        QList<QByteArray> lines = csv(40).trimmed().split('\n');
        QList<QByteArray> cells = lines[25].split(',');
        cells[2] = QByteArray::number(cells[2].toDouble() * 2.1);
        lines[25] = cells.join(',');
        const json j = json::parse(run({write(lines.join('\n') + '\n'), "--json"}).out.toStdString());
        QCOMPARE(j.at("flagged").size(), std::size_t(1));
        QCOMPARE(j.at("flagged")[0].at("row").get<int>(), 25);
        QCOMPARE(j.at("flagged")[0].at("cause").get<std::string>(), std::string("forgotten fill"));
        QVERIFY(j.at("forecasts")[14].at("flagged").get<bool>());
        QCOMPARE(j.at("forecasts").size(), std::size_t(30));
    }

    void aShortLogHasNoFiguresInsteadOfZeros()
    {
        const Answer answer = run({write(csv(6)), "--json"});
        QCOMPARE(answer.exitCode, 0);
        const json j = json::parse(answer.out.toStdString());
        QVERIFY(j.at("mape").is_null());
        QVERIFY(j.at("forecasts").empty());
        QCOMPARE(run({write(csv(6))}).exitCode, 0);
    }

    // Each tank pumped in two goes: the second, full one ends it, and its row is
    // the one that is named.
    void partialFillsAreSummedIntoTheTankThatTheNextFullOneEnds()
    {
        const json whole = json::parse(run({write(csv(40, true)), "--json"}).out.toStdString());
        QList<QByteArray> lines = csv(40, true).trimmed().split('\n');
        QByteArray text = "date,litres,odometer_km,full\n";
        double before_km = 0;
        for (qsizetype i = 1; i < lines.size(); ++i) {
            const QList<QByteArray> cells = lines[i].split(',');
            const double litres = cells[1].toDouble(), km = cells[2].toDouble();
            if (i > 1)
                text += QString::asprintf("%s,%.3f,%.3f,0\n", lines[i - 1].left(10).constData(),
                                          litres - 10, (before_km + km) / 2).toUtf8();
            text += cells[0] + QString::asprintf(",%.3f,%.3f,1\n", i > 1 ? 10 : litres, km).toUtf8();
            before_km = km;
        }
        const json parts = json::parse(run({write(text), "--json"}).out.toStdString());
        QCOMPARE(parts.at("tanks").get<int>(), 40);
        QCOMPARE(parts.at("forecasts").size(), whole.at("forecasts").size());
        QCOMPARE(parts.at("forecasts")[0].at("row").get<int>(), 23);   // 12th full fill
        for (std::size_t i = 0; i < parts.at("forecasts").size(); ++i)
            for (const char* key : {"km", "lo90", "hi90", "actual_km"})
                QVERIFY(std::abs(parts.at("forecasts")[i].at(key).get<double>()
                                 - whole.at("forecasts")[i].at(key).get<double>()) < 1e-6);
    }

    void aHorizonThatTheLogCannotTellIsNullWithTheReason()
    {
        const json j = json::parse(run({write(csv(40)), "--json"}).out.toStdString());
        const json& horizons = j.at("coverage_by_horizon");
        QVERIFY(horizons.at("tenth_of_a_tank").is_null());
        QVERIFY(QString::fromStdString(j.at("horizon_notes").at("tenth_of_a_tank").get<std::string>())
                    .startsWith("unknown: 0 in this log"));
        QCOMPARE(horizons.at("one_tank").at("stretches").get<int>(), 30);
        QCOMPARE(horizons.at("three_tanks").at("stretches").get<int>(), 28);
        QCOMPARE(horizons.at("one_tank").at("p80").get<double>(), j.at("coverage").at("p80").get<double>());
    }

    // The factors are those of rates_test.cpp, for petrol at 30 C and of e10.
    void correctionsOfTheFileAreShownAndLeaveTheForecastsOfLitresTyped()
    {
        QList<QByteArray> lines = csv(40).trimmed().split('\n');
        lines[0] += ",blend,temperature_c";
        for (int i = 1; i < lines.size(); ++i)
            lines[i] += i % 2 ? ",e10,30" : ",,";
        const QString file = write(lines.join('\n') + '\n');
        QVERIFY(!json::parse(run({file, "--json"}).out.toStdString()).contains("corrections"));
        const json j = json::parse(run({file, "--json", "--at-15c", "--blend-energy"}).out.toStdString());
        const json& c = j.at("corrections");
        QVERIFY(c.at("effect").at("mape").at("without") != c.at("effect").at("mape").at("with"));
        QCOMPARE(c.at("changed").size(), std::size_t(40));   // by temperature and blend in turn
        QCOMPARE(c.at("changed")[0].at("fill").get<int>(), 1);
        const double share = c.at("changed")[0].at("after_l").get<double>()
            / c.at("changed")[0].at("before_l").get<double>();
        QVERIFY(std::abs(share - 0.98171) < 5e-6);
        const double energy = c.at("changed")[1].at("after_l").get<double>()
            / c.at("changed")[1].at("before_l").get<double>();
        QVERIFY(std::abs(energy - 0.966) < 1e-12);
        QCOMPARE(run({file, "--at-15c", "--fuel", "coal"}).exitCode, 2);
    }

    void thePlotShowsEveryForecast()
    {
        const QString plot = m_folder.filePath("plot.svg");
        QCOMPARE(run({write(csv(40)), "--plot", plot}).exitCode, 0);
        QFile file(plot);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray svg = file.readAll();
        QVERIFY(svg.startsWith("<svg"));
        QVERIFY(svg.trimmed().endsWith("</svg>"));
        QCOMPARE(svg.count("<circle"), 30);
        QVERIFY(!svg.contains("nan"));
    }

    void badInputIsOneLineAndExitCodeTwo()
    {
        for (const char* text : {"date,litres,km\n2024-01-01,30 L,400\n", "date,litres,km\n2024-01-01,-3,400\n",
                                 "date,litres\n2024-01-01,30\n", "date,litres,km\n01.01.2024,30,400\n"}) {
            const Answer answer = run({write(text), "--json"});
            QCOMPARE(answer.exitCode, 2);
            QVERIFY(answer.out.isEmpty());
            QCOMPARE(answer.err.trimmed().count('\n'), 0);
            QVERIFY2(answer.err.contains("fills.csv"), answer.err.constData());
        }
        QCOMPARE(run({m_folder.filePath("none.csv")}).exitCode, 1);
    }

    void anOdometerThatGoesBackIsAWarning()
    {
        QByteArray text = csv(20, true);
        text += "2020-01-01,30,5\n";
        const Answer answer = run({write(text), "--json"});
        QCOMPARE(answer.exitCode, 0);
        QVERIFY(answer.err.contains("odometer"));
    }
};

UNDERMARK_TEST(BacktestCommandTest)
#include "backtest_test.moc"
