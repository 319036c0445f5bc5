// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whoever reads the JSON answers knows every number's unit by its name, and every date's zone.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QTest>

#include <regex>
#include <set>

using namespace undermark::test;
using nlohmann::json;

namespace {

const std::regex kUnit("_(l|km|s|h|percent|min|v|ohm|c|days|l_per_100km|l_per_h|km_per_year|l_per_year)$");

// Numbers without a unit: probabilities and their like, counts, ratios, what is in the sender's
// own unit or in the user's currency, the terms of an answer that a unit stands above.
const std::set<std::string> kWithoutUnit{
    // probabilities, shares, ratios
    "probability", "dry_risk", "below_floor_risk", "coverage", "coverage_by_horizon", "kept", "mape",
    "mape_without_days", "baseline_mape", "over_promised", "share", "trend", "trend_90", "scale",
    "nis_mean", "surprise_sd", "p", "trip_gap",
    // counts and places
    "added", "duplicates", "equal_times", "fills", "known", "lost", "not_known", "of_others", "pages", "row",
    "samples", "stand_ins", "starts", "stops", "stops_change", "taken", "tanks", "tanks_to_narrow",
    "stretches",
    // in the unit of the sender, of the table, of the user's money
    "signal", "signal2", "signal_sd", "floor_signal", "ceiling_signal", "value", "cost", "cost_change",
    "price_per_l"};

// Of the first versions; the same number stands beside under a name with its unit.
const std::map<std::string, std::string> kOldNames{
    {"litres", "volume_l"}, {"km", "distance_km"}, {"sd", "volume_sd_l"},
    {"litres_since_onset", "since_onset_l"}, {"km_since_onset", "since_onset_km"},
    {"lo50", "lo50_km"}, {"hi50", "hi50_km"}, {"lo80", "lo80_km"}, {"hi80", "hi80_km"},
    {"lo90", "lo90_km"}, {"hi90", "hi90_km"}, {"mean_width", "mean_width_km"},
    {"interval_score", "interval_score_km"}, {"low90", "low90_l_per_100km"},
    {"high90", "high90_l_per_100km"}, {"usual_before", "usual_before_l_per_100km"},
    {"usual_after", "usual_after_l_per_100km"}};

bool isDate(const std::string& text)
{
    return std::regex_search(text, std::regex("^\\d{4}-\\d\\d-\\d\\d"));
}

// What is wrong in an answer. `told` where a name further out tells the unit.
void look(const json& value, const std::string& name, bool told, QStringList& wrong)
{
    if (value.is_array()) {
        for (const json& item : value)
            look(item, name, told, wrong);
    } else if (value.is_object()) {
        for (const auto& [key, inner] : value.items()) {
            const auto old = kOldNames.find(key);
            const bool hasBeside = old != kOldNames.end() && value.contains(old->second);
            if (hasBeside && value[old->second] != inner && !inner.is_structured())
                wrong << QString::fromStdString(key + " differs from " + old->second);
            if (key == "rows") // texts for people
                continue;
            look(inner, key,
                 told || hasBeside || kWithoutUnit.contains(key) || std::regex_search(key, kUnit), wrong);
        }
    } else if (value.is_number() && !told) {
        wrong << QString::fromStdString(name);
    } else if (value.is_string() && isDate(value.get<std::string>())
               && !value.get<std::string>().ends_with('Z')) {
        wrong << QString::fromStdString(name + ": " + value.get<std::string>());
    }
}

} // namespace

class JsonNamesTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    QString backtestLog() const
    {
        QByteArray rows = "date,litres,km\n";
        for (int i = 0; i < 24; ++i)
            rows += QString("2025-%1-%2,%3,450\n").arg(1 + i / 2, 2, 10, QChar('0'))
                        .arg(5 + 14 * (i % 2), 2, 10, QChar('0')).arg(36 + i % 3).toUtf8();
        return m_run.file("log.csv", rows);
    }

    // A sender that jumps once: a refuel, and what is a fault.
    QString drive() const
    {
        QByteArray rows = "t_s,signal,speed_kmh,distance_km\n";
        for (int i = 0; i < 4000; ++i)
            rows += QString("%1,%2,60,%3\n").arg(i).arg(i < 2500 ? 1.0 + i * 2e-4 : 4.99).arg(i / 60.0).toUtf8();
        return m_run.file("drive.csv", rows);
    }

private slots:
    void initTestCase()
    {
        QVERIFY(m_run.prepareCar());
        for (const char* line :
             {"vehicle set --left-behind-l 1.5 --unusable-l 0.5 --lamp-l 7 --surge-margin-l special-stage=2",
              "fill add --litres 9.91 --odometer-km 104500 --full --date 2026-10-10 --price-per-l 1.8 "
              "--signal 2.5 --temperature-c 12 --blend e5 --displayed-l-per-100km 7",
              "trip add --km 60 --mode town --date 2026-10-12 --idle-min 5 --starts 2",
              "proof add drained --left-behind-l 1.3 --left-behind-sd-l 0.2",
              "proof add past-zero --km 30 --km-sd 2"})
            QCOMPARE(m_run(line).exitCode, 0);
    }

    void everyNumberCarriesItsUnitAndEveryDateItsZone_data()
    {
        QTest::addColumn<QString>("command");
        const QString route = m_run.file(
            "day.csv", "at_km,name,mode,fuel,price_per_l,timed\n0,A,open-road,none,,\n61,B,special-stage,none,,1\n"
                       "118,C,open-road,pump,1.79,\n246,D,motorway,pump,1.92,\n402,E,,none,,\n");
        const QString points = m_run.file("more.csv", "total_l,signal\n0,3.02\n5,2.84\n25,1.88\n50,0.55\n");
        const QString table = m_run.file("t.csv", "date,km,mode\n2026-10-13,12,town\n");
        for (const QString& line : QStringList{
                 "log", "range --date 2026-10-20", "range --signal 1.5", "range --litres 30 --rate 8 --zero-at-l 5",
                 "range --signal 1.5 --rate 8 --rate-sd 1", "range --at-15c --date 2026-10-12", "reserve", "rates",
                 "check", "vehicle list", "vehicle show", "plan " + route + " --signal 1.5 --close D --rate-up 10",
                 "plan " + route + " --start-l 3", "card " + route + " --signal 1.5 --out " + m_run.file("c.pdf", ""),
                 "backtest " + backtestLog(), "replay " + drive() + " --rate 8",
                 "calibrate " + points + " --at 1.5 --table 6", "import " + table + " --dry-run",
                 "backup", "mode add gravel --rate 12", "fill add --litres 5 --partial --odometer-km 104700 --date 2026-10-14"})
            QTest::newRow(qPrintable(line.section(' ', 0, 1).left(24) + QString::number(line.size()))) << line;
    }

    void everyNumberCarriesItsUnitAndEveryDateItsZone()
    {
        QFETCH(QString, command);
        const CliAnswer answer = m_run(command + " --json");
        QVERIFY2(answer.exitCode == 0, answer.err);
        QStringList wrong;
        look(answer.json(), {}, false, wrong);
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(", ")));
    }

    void theOldNamesStay()
    {
        const json fill = m_run("log --json").json()["fills"][0];
        QCOMPARE(fill["litres"].get<double>(), 36.0);
        QCOMPARE(fill["volume_l"].get<double>(), 36.0);
        const json trip = m_run("log --json").json()["trips"][0];
        QCOMPARE(trip["km"].get<double>(), trip["distance_km"].get<double>());
    }
};

UNDERMARK_TEST(JsonNamesTest)
#include "json_names_test.moc"
