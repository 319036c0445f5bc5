// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words that undermark-cli does not know, words that are missing, and where it points to then.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QTest>

using namespace undermark::test;

class CommandLineTest : public QObject {
    Q_OBJECT

private slots:
    void withoutAnyWordItPrintsItsHelp()
    {
        QProcess bare;
        bare.start(UNDERMARK_CLI, QStringList());
        QVERIFY(bare.waitForFinished());
        const CliAnswer help = CliRunner()("--help");
        QCOMPARE(bare.exitCode(), 0);
        QCOMPARE(bare.readAllStandardError(), QByteArray());
        QCOMPARE(bare.readAllStandardOutput(), help.out);
        QVERIFY(help.out.contains("calibrate"));
    }

    void aCommandThatReadsATableNamesItsColumns()
    {
        const CliRunner run;
        for (const char* column : {"at_km", "leg_km", "fuel", "price_per_l", "idle_min"})
            QVERIFY2(run("plan --help").out.contains(column), column);
        for (const char* column : {"t_s", "signal2", "fuel_rate_l_h", "distance_km"})
            QVERIFY2(run("replay --help").out.contains(column), column);
    }

    // "{accept->0}": an enumeration's place in the source says nothing to anybody.
    void noHelpShowsTheCodesBehindItsWords()
    {
        const CliRunner run;
        for (const char* command : {"fill rule", "plan", "card", "import", "calibrate", "vehicle add", "proof add"}) {
            const QByteArray help = run(QString(command) + " --help").out;
            QVERIFY2(!help.contains("->") && !help.contains("{0,"), help.constData());
        }
    }

    void aModeHasOneName()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        for (const char* line : {"mode add gravel sand", "mode add gravel --name sand"})
            QCOMPARE(run(line).exitCode, 2);
        QVERIFY(!run("vehicle show").out.contains("gravel"));
        QCOMPARE(run("mode add gravel").exitCode, 0);
    }

    void itsVersionNamesTheCommitAndTheSchema()
    {
        const QString version = CliRunner()("--version").out;
        const QRegularExpression said(R"(^undermark-cli \d+\.\d+\.\d+ \(commit ([0-9a-f]{10}(-dirty)?|unknown), logbook schema 3\)\n$)");
        QVERIFY2(said.match(version).hasMatch(), qPrintable(version));
        QProcess git;
        git.start("git", {"-C", UNDERMARK_ASSETS, "rev-parse", "--short=10", "HEAD"});
        if (!git.waitForFinished() || git.exitCode() != 0)
            QSKIP("there is no git, or no history");
        QVERIFY2(version.contains("commit " + git.readAllStandardOutput().trimmed()), qPrintable(version));
    }

    void anErrorOfUseIsOneLineThatPointsToTheHelpOfThatCommand_data()
    {
        QTest::addColumn<QString>("words");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* name, const char* words, const char* said) {
            QTest::newRow(name) << QString(words) << QString(said);
        };
        row("letters swapped", "plna route.csv",
            "no command 'plna': did you mean 'plan'? (see undermark-cli --help)");
        row("a letter too few", "rnge", "no command 'rnge': did you mean 'range'? (see undermark-cli --help)");
        row("the beginning", "cal", "no command 'cal': did you mean 'calibrate'? (see undermark-cli --help)");
        row("nothing near", "teapot", "no command 'teapot' (see undermark-cli --help)");
        row("below a command", "fill rul", "no command 'rul': did you mean 'rule'? (see undermark-cli fill --help)");
        row("two below", "proof add drain",
            "no command 'drain': did you mean 'drained'? (see undermark-cli proof add --help)");
        row("which of them", "fill", "a command is missing, one of rule, add (see undermark-cli fill --help)");
        row("option", "range --litre 3",
            "no option '--litre': did you mean '--litres'? (see undermark-cli range --help)");
        row("option of the program", "log --logbok=x",
            "no option '--logbok': did you mean '--logbook'? (see undermark-cli log --help)");
        row("a slip before what is missing by it", "trip add --km 3 --mod town",
            "no option '--mod': did you mean '--mode'? (see undermark-cli trip add --help)");
        row("operand missing", "plan", "route is required (see undermark-cli plan --help)");
        row("one too many", "import a.csv b.csv",
            "'b.csv' was not expected (see undermark-cli import --help)");
        row("no number", "range --litres x",
            "--litres: this is not a number (expected a number of 0 or more, found 'x') "
            "(see undermark-cli range --help)");
        row("not whole", "backup --keep 1.5",
            "--keep: a whole number is expected, found '1.5' (see undermark-cli backup --help)");
        row("none of the words", "fill rule 12345678 acept",
            "verdict: acept not in {accept,correct,leave-out,reconsider} "
            "(see undermark-cli fill rule --help)");
    }

    void anErrorOfUseIsOneLineThatPointsToTheHelpOfThatCommand()
    {
        QFETCH(QString, words);
        QFETCH(QString, said);
        const CliRunner run;
        const CliAnswer answer = run(words);
        QCOMPARE(answer.exitCode, 2);
        QCOMPARE(QString::fromUtf8(answer.err), "undermark-cli: " + said + "\n");
        QVERIFY(answer.out.isEmpty());
        QVERIFY(!QFile::exists(run.logbook()));
    }

    void anOptionThatMayBeRepeatedTakesOneValueEachTime()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        const QString table = run.file("fills.csv", "Day,litres,odometer_km,full\n2026-10-10,30,105000,1\n");
        const CliAnswer added = run("import --column date=Day " + table);
        QVERIFY2(added.exitCode == 0, added.err.constData());
    }
};

UNDERMARK_TEST(CommandLineTest)
#include "command_line_test.moc"
