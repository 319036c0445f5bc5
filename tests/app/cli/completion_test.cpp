// SPDX-License-Identifier: GPL-3.0-or-later
//
// What Tab offers: from the program's own commands and options, and from the logbook.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QTest>

using namespace undermark::test;

class CompletionTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    // Offered for these words, the last of which is begun.
    QStringList offered(const QStringList& words) const
    {
        QProcess process;
        process.start(UNDERMARK_CLI, QStringList{"complete", "--", "--logbook", m_run.logbook()} + words);
        process.waitForFinished();
        [&] {
            QCOMPARE(process.exitCode(), 0);
            QCOMPARE(process.readAllStandardError(), QByteArray());
        }();
        return QString::fromUtf8(process.readAllStandardOutput()).split('\n', Qt::SkipEmptyParts);
    }

    // COMPREPLY, a line each, for a command line whose last word is begun; then what compopt was told.
    QByteArray bashOffers(const QByteArray& line) const
    {
        QProcess bash;
        bash.start("bash", {"-c",
                            "compopt() { told=\"$*\"; }; . \"$1\"; cli=$2; eval \"COMP_WORDS=($3)\";"
                            "for i in \"${!COMP_WORDS[@]}\"; do COMP_WORDS[i]=${COMP_WORDS[i]//^/ }; done;"
                            "COMP_CWORD=$((${#COMP_WORDS[@]} - 1));"
                            "_undermark_cli \"$cli\"; printf '%s\\n' \"${COMPREPLY[@]}\" \"$told\"",
                            "test", UNDERMARK_ASSETS "/undermark-cli.bash", UNDERMARK_CLI, line});
        bash.waitForFinished();
        return bash.readAllStandardOutput() + bash.readAllStandardError();
    }

private slots:
    void initTestCase()
    {
        QVERIFY(m_run.prepareCar());
        QProcess add;
        add.start(UNDERMARK_CLI, {"--logbook", m_run.logbook(), "vehicle", "add", "--name", "Sand martin",
                                  "--capacity-l", "60", "--fuel", "diesel"});
        QVERIFY(add.waitForFinished());
        QCOMPARE(add.exitCode(), 0);
        QCOMPARE(m_run("mode add sand --rate 14 --rate-sd 3 --vehicle Wren").exitCode, 0);
    }

    void everyCommandOfTheHelpIsOffered()
    {
        const QStringList commands = offered({""});
        const QString help = QString::fromUtf8(m_run("--help").out).section("Subcommands:\n", 1);
        QStringList told;
        for (const QString& line : help.split('\n', Qt::SkipEmptyParts))
            told << line.trimmed().section(' ', 0, 0);
        QVERIFY(told.size() > 15);
        QCOMPARE(commands, told);
        QVERIFY(!commands.contains("complete"));
    }

    void whatIsBegunNarrowsTheOffer()
    {
        QCOMPARE(offered({"ran"}), QStringList{"range"});
        QCOMPARE(offered({"fill", ""}), (QStringList{"rule", "add"}));
        QCOMPARE(offered({"proof", "add", "st"}), QStringList{"stalled"});
        QCOMPARE(offered({"teapot", "x"}), QStringList());
    }

    void theFlagsAreTheCommandsAndThoseOfTheProgram()
    {
        QCOMPARE(offered({"fill", "add", "--odo"}), (QStringList{"--odometer-km", "--odometer-reset"}));
        const QStringList flags = offered({"reserve", "--"});
        for (const char* flag : {"--mode", "--json", "--help", "--logbook", "--vehicle"})
            QVERIFY2(flags.contains(flag), flag);
        QCOMPARE(flags.count("--help"), 1);
    }

    void choicesAreOfferedAsTheOptionStatesThem()
    {
        QCOMPARE(offered({"plan", "r.csv", "--aim", ""}), (QStringList{"cost", "stops", "time", "weight"}));
        QCOMPARE(offered({"plan", "r.csv", "--aim", "=", "s"}), QStringList{"stops"});
        QCOMPARE(offered({"fill", "rule", "12345678", "le"}), QStringList{"leave-out"});
    }

    void theLogbookGivesVehiclesAndModes()
    {
        QCOMPARE(offered({"range", "--vehicle", ""}), (QStringList{"Wren", "Sand martin"}));
        QCOMPARE(offered({"vehicle", "rename", "S"}), QStringList{"Sand martin"});
        QCOMPARE(offered({"trip", "add", "--mode", "sp"}), QStringList{"special-stage"});
        QCOMPARE(offered({"--vehicle", "Wren", "trip", "add", "--mode", "sa"}), QStringList{"sand"});
        QCOMPARE(offered({"--vehicle", "Sand martin", "trip", "add", "--mode", "sa"}), QStringList());
    }

    void aFileIsLeftToTheShellAndANumberToTheUser()
    {
        QCOMPARE(offered({"plan", "ro"}), QStringList{"/"});
        QCOMPARE(offered({"replay", "s.csv", "--calibration", ""}), QStringList{"/"});
        QCOMPARE(offered({"range", "--litres", ""}), QStringList());
    }

    void withoutALogbookItIsSilentAndMakesNone()
    {
        const QTemporaryDir empty;
        const QString none = empty.filePath("none/logbook.sqlite");
        QCOMPARE(offered({"--logbook", none, "trip", "add", "--mode", ""}), QStringList());
        const QString notOurs = m_run.file("notours.sqlite", "not a logbook at all");
        QCOMPARE(offered({"--logbook", notOurs, "range", "--vehicle", ""}), QStringList());
        QVERIFY(QDir(empty.path()).isEmpty());
    }

    void bashAsksTheProgram()
    {
        const QByteArray logbook = "undermark-cli --logbook " + m_run.logbook().toUtf8();
        QCOMPARE(bashOffers("undermark-cli ran"), QByteArray("range\n\n"));
        QCOMPARE(bashOffers(logbook + " range --vehicle S"), QByteArray("Sand\\ martin\n\n"));
        QCOMPARE(bashOffers(logbook + " range --vehicle \\\"Sand^m"), QByteArray("Sand martin\n\n"));
        QCOMPARE(bashOffers(logbook + " range --vehicle 'Sand\\^m'"), QByteArray("Sand\\ martin\n\n"));
        QCOMPARE(bashOffers("undermark-cli import x"), QByteArray("-o default\n"));
        QCOMPARE(bashOffers("undermark-cli range --litres ''"), QByteArray("\n"));
    }
};

UNDERMARK_TEST(CompletionTest)
#include "completion_test.moc"
