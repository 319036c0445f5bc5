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

private slots:
    void initTestCase()
    {
        QFile readme(UNDERMARK_README);
        QVERIFY(readme.open(QIODevice::ReadOnly));
        const QStringList parts = QString::fromUtf8(readme.readAll()).split("```\n");
        for (int i = 1; i < parts.size(); i += 2)
            m_blocks << parts[i];
        QCOMPARE(m_blocks.size(), 3);   // the demo, the points, the worked example
    }

    void theDemoPrintsWhatItShows()
    {
        QCOMPARE(printed({"demo"}), m_blocks[0].trimmed());
    }

    void theWorkedExamplePrintsWhatItShows()
    {
        QFile points(m_folder.filePath("points.csv"));
        QVERIFY(points.open(QIODevice::WriteOnly));
        points.write(m_blocks[1].toUtf8());
        points.close();
        const QStringList steps = m_blocks[2].split(QRegularExpression("^\\$ undermark-cli ", QRegularExpression::MultilineOption),
                                                    Qt::SkipEmptyParts);
        QCOMPARE(steps.size(), 6);
        for (const QString& step : steps) {
            const QString command = step.section('\n', 0, 0);
            QCOMPARE(printed(QProcess::splitCommand(command)), step.section('\n', 1).trimmed());
        }
    }
};

UNDERMARK_TEST(ReadmeTest)
#include "readme_test.moc"
