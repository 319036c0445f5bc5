// SPDX-License-Identifier: GPL-3.0-or-later
//
// The manual pages tell of every command, every flag and every column that there is.
#include "engine/logbook/record_tables.h"
#include "engine/tables/route_csv.h"
#include "engine/tables/samples_csv.h"
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QRegularExpression>
#include <QStandardPaths>
#include <QTest>

using namespace undermark;
using namespace undermark::test;

class ManualTest : public QObject {
    Q_OBJECT
    CliRunner m_run;

    static QString page(const char* name)
    {
        QFile file(QString(UNDERMARK_ASSETS "/man/") + name);
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
    }

    // The commands below `command`, and theirs: "fill", "fill add".
    QStringList commandsBelow(const QString& command) const
    {
        QStringList found;
        const QString help = QString::fromUtf8(m_run(command + " --help").out);
        if (!help.contains("Subcommands:\n"))
            return found;
        const QString list = help.section("Subcommands:\n", 1).section("\n\n", 0, 0);
        for (const QString& line : list.split('\n', Qt::SkipEmptyParts)) {
            const QString below = (command + ' ' + line.trimmed().section(' ', 0, 0)).trimmed();
            found << below << commandsBelow(below);
        }
        return found;
    }

    QStringList flagsOf(const QString& command) const
    {
        QStringList flags;
        static const QRegularExpression flag("^ +--([a-z0-9-]+)", QRegularExpression::MultilineOption);
        auto each = flag.globalMatch(QString::fromUtf8(m_run(command + " --help").out));
        while (each.hasNext())
            flags << each.next().captured(1);
        return flags;
    }

    template <class T>
    static QStringList columnsOf()
    {
        QStringList columns;
        for (const auto& field : logbook::tableOf<T>().csvFields())
            columns << field.name;
        return columns;
    }

private slots:
    void everyCommandAndFlagIsInTheManual()
    {
        const QString manual = page("undermark-cli.1");
        const QStringList commands = commandsBelow("");
        QVERIFY(commands.size() > 25);
        for (const QString& command : commands) {
            // A group (fill) is told by what is in it.
            const bool group = commands.filter(QRegularExpression("^" + command + " ")).size() > 0;
            QVERIFY2(group || manual.contains(".It Cm " + command + '\n') || manual.contains(".It Cm " + command + ' '),
                     qPrintable(command));
            for (const QString& flag : flagsOf(command)) {
                const QRegularExpression told("Fl (-\\S+ .*Fl )*-" + flag + "\\b(?!-)");
                QVERIFY2(manual.contains(told), qPrintable(command + " --" + flag));
            }
        }
    }

    void everyColumnIsInTheManual()
    {
        const QString manual = page("undermark-formats.5");
        QStringList columns{"vehicle", "id", "poured_l", "load", "km"};
        columns << columnsOf<Vehicle>() << columnsOf<logbook::SurgeMargin>() << columnsOf<Mode>()
                << columnsOf<Calibration>() << columnsOf<logbook::PlacedPoint>() << columnsOf<Fill>()
                << columnsOf<Trip>() << columnsOf<Proof>() << columnsOf<LevelRecord>() << columnsOf<ExtraTank>()
                << columnsOf<VerificationRecord>() << columnsOf<logbook::PlacedLevel>();
        for (const CsvColumn& column : kSampleColumns)
            columns << QString::fromUtf8(column.name.data(), qsizetype(column.name.size()));
        for (const CsvColumn& column : kRouteColumns)
            columns << QString::fromUtf8(column.name.data(), qsizetype(column.name.size()));
        QVERIFY(columns.size() > 60);
        for (const QString& column : columns) {
            const QRegularExpression told("^\\.(It )?Va (.* )?" + column + "( |$)",
                                          QRegularExpression::MultilineOption);
            QVERIFY2(manual.contains(told), qPrintable(column));
        }
    }

    // `pattern` captures a version in a file of the repository.
    static QString versionIn(const char* name, const char* pattern)
    {
        QFile file(QString(UNDERMARK_ASSETS "/") + name);
        const QString text = file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
        return QRegularExpression(pattern).match(text).captured(1);
    }
    void oneVersionIsStatedEverywhere()
    {
        const QString version = QString::fromUtf8(m_run("--version").out).section(' ', 1, 1);
        QVERIFY(!version.isEmpty());
        QCOMPARE(versionIn("../CMakeLists.txt", "project\\(Undermark VERSION ([0-9.]+)"), version);
        QCOMPARE(versionIn("debian/changelog", "^undermark \\(([0-9.]+)\\)"), version);
        QCOMPARE(versionIn("org.undermark.undermark.metainfo.xml", "<release version=\"([0-9.]+)\""), version);
    }

    void thePagesAreWithoutFault()
    {
        if (QStandardPaths::findExecutable("mandoc").isEmpty())
            QSKIP("mandoc is not installed");
        for (const char* name : {"undermark.1", "undermark-cli.1", "undermark-formats.5"}) {
            QProcess lint;
            lint.start("mandoc", {"-T", "lint", "-W", "warning", QString(UNDERMARK_ASSETS "/man/") + name});
            QVERIFY(lint.waitForFinished());
            QCOMPARE(lint.readAllStandardOutput() + lint.readAllStandardError(), QByteArray());
        }
    }
};

UNDERMARK_TEST(ManualTest)
#include "manual_test.moc"
