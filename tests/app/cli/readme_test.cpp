// SPDX-License-Identifier: GPL-3.0-or-later
//
// What README.md says the programs print is what they print.
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

class ReadmeTest : public QObject {
    Q_OBJECT
    QStringList m_blocks;   // between lines of ```, in order
    QTemporaryDir m_folder;

    // With a logbook of its own in the default place. Warnings are printed too.
    QString printed(const QStringList& arguments) const
    {
        QProcess process;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_DATA_HOME", m_folder.path());
        process.setProcessEnvironment(environment);
        process.setWorkingDirectory(m_folder.path());
        process.setProcessChannelMode(QProcess::MergedChannels);
        process.start(UNDERMARK_CLI, arguments);
        process.waitForFinished();
        return QString::fromUtf8(process.readAll()).trimmed();
    }

    void write(const char* name, const QString& text) const
    {
        QFile file(m_folder.filePath(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
    }

    // Runs every "$ undermark-cli …" of it; how many they are.
    int printsWhatItShows(const QString& block) const
    {
        static const QRegularExpression start("^\\$ undermark-cli ", QRegularExpression::MultilineOption);
        const QStringList steps = block.split(start, Qt::SkipEmptyParts);
        for (const QString& step : steps) {
            const QString answer = printed(QProcess::splitCommand(step.section('\n', 0, 0)));
            [&] { QCOMPARE(answer, step.section('\n', 1).trimmed()); }();
        }
        return int(steps.size());
    }

private slots:
    void initTestCase()
    {
        QFile readme(UNDERMARK_README);
        QVERIFY(readme.open(QIODevice::ReadOnly));
        const QStringList parts = QString::fromUtf8(readme.readAll()).split("```\n");
        for (int i = 1; i < parts.size(); i += 2)
            m_blocks << parts[i];
        QCOMPARE(m_blocks.size(), 7);   // the demo; points, fitter, pump, owner, route, navigator
    }

    void theDemoPrintsWhatItShows()
    {
        QCOMPARE(printed({"demo"}), m_blocks[0].trimmed());
    }

    // The four users share one logbook, so they come in the order of the page.
    void theTourPrintsWhatItShows()
    {
        write("points.csv", m_blocks[1]);
        write("day.csv", m_blocks[5]);
        int steps = 0;
        for (const int block : {2, 3, 4, 6})
            steps += printsWhatItShows(m_blocks[block]);
        QCOMPARE(steps, 7);
    }
};

UNDERMARK_TEST(ReadmeTest)
#include "readme_test.moc"
