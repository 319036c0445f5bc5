// SPDX-License-Identifier: GPL-3.0-or-later
//
// What people read of a plan: the text and the card; and plans with the car that
// the logbook knows.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTest>
#include <cmath>

using namespace undermark::test;

class PlanTextTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    QString day() const
    {
        return m_run.file("day.csv", "at_km,name,mode,fuel,price_per_l,stop_min,idle_min,timed\n"
                                     "0,Ash,road,none,,,,\n100,Birch,stage,pump,1.5,7,3,1\n"
                                     "250,Cedar,road,zone,2.0,,,\n450,Finish,,none,,,,\n");
    }

    // The page's box in whole points: width and height.
    static QString sizeOf(const QByteArray& pdf)
    {
        const QRegularExpression box("/MediaBox \\[\\s*0 0 (\\d+)\\S* (\\d+)");
        const auto found = box.match(QString::fromLatin1(pdf));
        return found.captured(1) + " " + found.captured(2);
    }

private slots:
    void theTextHasOneRowPerPointWithItsNote()
    {
        const auto answer = m_run("plan " + day() +
                                  " --capacity-l 50 --start-l 20 --rate 10 --rate-sd 0.5 "
                                  "--kg-per-l 0.745 --end-l 2");
        QVERIFY2(answer.exitCode == 0, answer.err.constData());
        for (const char* words :
             {"take on", "note", "7 min", "kg", "idles 3 min", "timed", "zone passed",
              "2.0 L wanted here", "no return after", "an estimate, not a promise"})
            QVERIFY2(answer.out.contains(words), (words + answer.out).constData());
        for (const char* name : {"Ash", "Birch", "Cedar", "Finish"}) {
            const QRegularExpression row("^ +\\d+\\.\\d +\\d+\\.\\d  " + QString(name) + " ",
                                         QRegularExpression::MultilineOption);
            QCOMPARE(QString::fromUtf8(answer.out).count(row), 1);
        }
    }

    void riskMarginAndTurningBackOfEveryLegAreSaid()
    {
        const auto answer =
            m_run("plan " + day() + " --capacity-l 50 --start-l 20 --rate 10 --rate-sd 0.5");
        for (const char* words : {"dry risk", "margin L", "margin km", "turn back by",
                                  "Ash to Birch", "Birch to Finish"})
            QVERIFY2(answer.out.contains(words), (words + answer.out).constData());
    }

    void anInfeasibleWaySaysWhatWouldDoAndWhatToMind()
    {
        const QString route = m_run.file("far.csv", "at_km,name,mode,fuel\n0,Ash,road,none\n"
                                                    "300,Finish,,none\n");
        const auto answer = m_run("plan " + route + " --capacity-l 50 --start-l 20 --rate 10");
        QCOMPARE(answer.exitCode, 0);
        for (const char* words :
             {"No plan: at this confidence the fuel lasts to 200.0 km, behind Ash; it is 10.0 L short of Finish.",
              "would do: start with 10.0 L more", "would do: carry 10.0 L in own cans", "Approved cans only",
              "would do: drive so that it burns 33.4 % less", "Not to be relied on",
              "would do: a pump at 200 km at the latest", "Make sure beforehand"})
            QVERIFY2(answer.out.contains(words), (words + answer.out).constData());
        const auto json = m_run("plan " + route + " --capacity-l 50 --start-l 20 --rate 10 --json").json();
        QCOMPARE(json.at("cures").size(), std::size_t(4));
        for (const auto& cure : json.at("cures"))
            QVERIFY(!cure.at("caution").get<std::string>().empty());
        QCOMPARE(json.at("cures")[3].at("latest_km").get<double>(), 200.0);
    }

    void aStopForHardlyAnythingIsLeftOutOrSaysWhy()
    {
        const QString tank = " --capacity-l 50 --start-l 20 --rate 10";
        const QString needed = m_run.file("needed.csv", "at_km,name,mode,fuel,price_per_l\n0,Ash,road,none,\n"
                                                        "100,Birch,road,pump,1.5\n202,Finish,,none,\n");
        const auto exact = m_run("plan " + needed + tank);
        QVERIFY2(exact.out.contains("1 stop, 0.2 L"), exact.out.constData()); // bare sums, as asked
        const auto answer = m_run("plan " + needed + tank + " --least-stop-l 2");
        QVERIFY2(answer.out.contains("1 stop, 2.0 L"), answer.out.constData());
        QVERIFY2(answer.out.contains("needed: without it the fuel does not last"), answer.out.constData());
        const QString cheap = m_run.file("cheap.csv", "at_km,name,mode,fuel,price_per_l\n0,Ash,road,pump,1\n"
                                                      "400,Birch,road,pump,2\n600,Finish,,none,\n");
        const auto left = m_run("plan " + cheap + " --capacity-l 50 --start-l 49.8 --rate 10 --least-stop-l 2");
        QVERIFY2(left.out.contains("1 stop, 10.2 L"), left.out.constData());
    }

    void whatIfsShowWhereOneWouldStop()
    {
        const auto answer = m_run("plan " + day() +
                                  " --capacity-l 50 --start-l 20 --rate 10 "
                                  "--rate-up 10 --fill-less 3");
        QVERIFY2(answer.out.contains("Birch 25.0"), answer.out.constData());
        QVERIFY2(answer.out.contains("Birch 29.5"), answer.out.constData());
    }

    void theCardOfAShortWayIsOnePageOfPdf_data()
    {
        QTest::addColumn<QString>("paper");
        QTest::addColumn<QString>("size"); // ISO 216 in whole points of 1/72 inch
        QTest::newRow("A5, lying") << "a5"
                                   << "595 419";
        QTest::newRow("A4") << "a4"
                            << "595 841";
    }

    void theCardOfAShortWayIsOnePageOfPdf()
    {
        QFETCH(QString, paper);
        QFETCH(QString, size);
        const QString out = m_run.file("card.pdf", "");
        const auto answer = m_run("card " + day() +
                                  " --capacity-l 50 --start-l 20 --rate 10 --rate-sd 0.5 "
                                  "--zero-at-l 5 --out " +
                                  out + " --paper " + paper);
        QVERIFY2(answer.exitCode == 0, answer.err.constData());
        QFile file(out);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray pdf = file.readAll();
        QVERIFY(pdf.startsWith("%PDF-"));
        QVERIFY(pdf.contains("/Count 1"));
        QCOMPARE(sizeOf(pdf), size);
        for (const char* words : {"An estimate, not a promise", "hidden reserve", "take on", "note",
                                  "Birch", "Refuel with the engine off", "no return after"})
            QVERIFY2(pdf.contains(words), words);
    }

    // A long way goes on over the page: every row is there, those passed too.
    void everyRowIsOnTheCard()
    {
        QByteArray rows = "leg_km,name,mode,fuel\n";
        for (int i = 0; i < 60; ++i)
            rows += "30,Place" + QByteArray::number(i) + "x,m," + (i % 3 ? "none" : "pump") + "\n";
        const QString out = m_run.file("long.pdf", "");
        const auto answer = m_run("card --json --event Marathon --start-sd-l 0.5 --capacity-l 12 --start-l 10 --rate 10 "
                                  "--out " + out + " " + m_run.file("long.csv", rows + "30,F,,none\n"));
        QVERIFY2(answer.exitCode == 0, answer.err.constData());
        const int pages = answer.json().at("pages").get<int>();
        QVERIFY(pages > 1 && pages < 9);
        QFile file(out);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray pdf = file.readAll();
        QVERIFY(pdf.contains("/Count " + QByteArray::number(pages)));
        for (int i = 0; i < 60; ++i)
            QVERIFY2(pdf.contains("Place" + QByteArray::number(i) + "x"), QByteArray::number(i));
        for (const char* words : {"Marathon", "Fewest stops.", " sure on each arrival.", "Starts with 10.0 L",
                                  "day ____", "taken", "gauge", "page 2 of"})
            QVERIFY2(pdf.contains(words), words);
    }

    // Other letters are set in a font of theirs, and can be read back.
    void namesInOtherLettersAreReadable()
    {
        if (!QFile::exists("/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf"))
            QSKIP("fonts-droid-fallback is not installed");
        const QString route = m_run.file("east.csv", "at_km,name,mode,fuel\n0,Start,road,none\n"
                                                     "100,東京 Pump,road,pump\n300,終わり,,none\n");
        const QString out = m_run.file("east.pdf", "");
        QCOMPARE(m_run("card " + route + " --capacity-l 30 --start-l 15 --rate 10 --out " + out).exitCode, 0);
        QProcess reader; // of poppler
        reader.start("pdftotext", {"-layout", out, "-"});
        QVERIFY(reader.waitForFinished());
        const QString text = QString::fromUtf8(reader.readAllStandardOutput());
        QVERIFY2(text.contains("東京 Pump") && text.contains("終わり"), qPrintable(text));
        QVERIFY(QFileInfo(out).size() < 1'000'000); // the letters used, not the whole font of 4 MB
    }

    void moreStopsThanTwelvePagesHoldAreRefused()
    {
        QByteArray rows = "leg_km,name,mode,fuel\n";
        for (int i = 0; i < 600; ++i)
            rows += "100,P" + QByteArray::number(i) + ",m,pump\n";
        const QString out = m_run.file("none.pdf", "");
        QFile::remove(out);
        const auto answer = m_run("card " + m_run.file("many.csv", rows + "100,F,,none\n") +
                                  " --capacity-l 12 --start-l 10 --rate 10 --out " + out);
        QCOMPARE(answer.exitCode, 2);
        QVERIFY2(answer.err.contains("too many stops"), answer.err.constData());
        QVERIFY(!QFile::exists(out));
    }

    void theWayOnIsPlannedWithTheLogsCarAndAnotherLevel()
    {
        QCOMPARE(m_run("demo").exitCode, 0);
        const QString route = m_run.file("on.csv", "at_km,name,mode,fuel\n0,A,open-road,none\n"
                                                   "200,B,special-stage,pump\n240,F,,none\n");
        const auto answer = m_run("plan " + route + " --from-km 80 --start-l 14.5 --json");
        QVERIFY2(answer.exitCode == 0, answer.err.constData());
        const auto json = answer.json();
        QVERIFY(json.at("feasible").get<bool>());
        const auto& here = json.at("points")[0];
        QCOMPARE(here.at("name").get<std::string>(), std::string("here"));
        QCOMPARE(here.at("at_km").get<double>(), 80.0);
        QCOMPARE(here.at("arrive_l").at("mean").get<double>(), 14.5);
    }

    // Road without a mode burns what the log's usual mix does, between the rates of
    // its modes.
    void aTrackIsPlannedWithTheUsualMixOfTheLog()
    {
        const auto used = [&](const QByteArray& mode) {
            const QString route =
                m_run.file("mix.csv", "at_km,mode,fuel\n0," + mode + ",none\n100,,none\n");
            return m_run("plan " + route + " --date 2026-09-01 --json")
                .json()
                .at("points")[1]
                .at("used_l")
                .get<double>();
        };
        QVERIFY(used("") > used("open-road") + 0.1);
        QVERIFY(used("") < used("town") - 0.1);
        const QString track =
            m_run.file("track.gpx",
                       "<gpx version='1.1' xmlns='http://www.topografix.com/GPX/1/1'><trk><trkseg>"
                       "<trkpt lat='47' lon='11'/><trkpt lat='48' lon='11'/></trkseg></trk></gpx>");
        const auto answer = m_run("plan " + track + " --date 2026-09-01 --json");
        QVERIFY2(answer.exitCode == 0, answer.err.constData());
    }
};

UNDERMARK_TEST(PlanTextTest)
#include "plan_text_test.moc"
