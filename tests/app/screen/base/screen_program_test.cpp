// SPDX-License-Identifier: GPL-3.0-or-later
//
// The real programs, run as a user runs them, without a display.
#include "app/screen/base/pages.h"
#include "app/screen/base/screen_options.h"
#include "tests/support/test_main.h"

#include <QImage>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

namespace {

struct Run {
    int code = -1;
    QString out;
    QString err;
};

Run run(const QString& program, const QStringList& arguments, const QString& state = "calm")
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("QT_QPA_PLATFORM", "offscreen");
    environment.insert("UNDERMARK_PREVIEW", state);
    process.setProcessEnvironment(environment);
    process.start(program, arguments);
    if (!process.waitForFinished(60000))
        return {};
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

const QString kProgram = UNDERMARK_SCREEN_PROGRAM;
const QString kPreview = UNDERMARK_PREVIEW_PROGRAM;

} // namespace

class ScreenProgramTest : public QObject {
    Q_OBJECT
private slots:
    void everyPageIsLoadedWithoutAWarning_data()
    {
        QTest::addColumn<QString>("state");
        for (const char* state : {"calm", "warned", "low", "unknown"})
            QTest::newRow(state) << state;
    }
    void everyPageIsLoadedWithoutAWarning()
    {
        QFETCH(QString, state);
        const Run selfTest = run(kPreview, {"--self-test"}, state);
        QVERIFY2(selfTest.code == 0, qPrintable(selfTest.err));
    }
    void theProgramItselfPassesItsSelfTest()
    {
        QTemporaryDir folder;
        const Run selfTest =
            run(kProgram, {"--self-test", "--logbook", folder.filePath("new.undermark")});
        QVERIFY2(selfTest.code == 0, qPrintable(selfTest.err));
    }
    void aSourceThatCannotBeReadIsRefused()
    {
        QTemporaryDir folder;
        const Run refused = run(kPreview, {"--source", folder.filePath("nothing")});
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("source"), qPrintable(refused.err));
    }
    void aGrabIsAPictureOfTheAskedSize()
    {
        QTemporaryDir folder;
        for (const PageKind& kind : pageKinds()) {
            const QString page = kind.key;
            const QString file = folder.filePath(page + ".png");
            const Run grab = run(kPreview, {"--grab", file, "--page", page, "--size", "480x800"});
            QVERIFY2(grab.code == 0, qPrintable(grab.err));
            QCOMPARE(QImage(file).size(), QSize(480, 800));
        }
        QVERIFY(QImage(folder.filePath("now.png")) != QImage(folder.filePath("pump.png")));
    }
    void nightIsDark()
    {
        QTemporaryDir folder;
        const QString day = folder.filePath("day.png");
        const QString night = folder.filePath("night.png");
        QCOMPARE(run(kPreview, {"--grab", day}).code, 0);
        QCOMPARE(run(kPreview, {"--grab", night, "--night"}).code, 0);
        QCOMPARE(QImage(day).pixelColor(4, 300).name(), "#f4efe4");   // look: paper by day
        QCOMPARE(QImage(night).pixelColor(4, 300).name(), "#0f1211"); // look: paper by night
    }
    void aPictureThatCannotBeSavedIsAnError()
    {
        const Run grab = run(kPreview, {"--grab", "/nowhere/at/all.png"});
        QCOMPARE(grab.code, 1);
        QVERIFY(grab.err.contains("/nowhere/at/all.png"));
    }
    void aWrongCommandLineEndsWithOneLineAndCode2_data()
    {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("named");
        QTest::newRow("page") << QStringList{"--page", "engine"} << "--page";
        QTest::newRow("language") << QStringList{"--language", "la"} << "--language";
        QTest::newRow("size") << QStringList{"--size", "800"} << "--size";
        QTest::newRow("too small") << QStringList{"--size", "320x240"} << "--size";
        QTest::newRow("units") << QStringList{"--units", "furlongs"} << "--units";
        QTest::newRow("unknown flag") << QStringList{"--fast"} << "fast";
        QTest::newRow("no flag") << QStringList{"trip.csv"} << "trip.csv";
        QTest::newRow("two logbooks") << QStringList{"--logbook", "a", kProgram} << "second";
    }
    void aWrongCommandLineEndsWithOneLineAndCode2()
    {
        QFETCH(QStringList, arguments);
        QFETCH(QString, named);
        const Run refused = run(kProgram, arguments);
        QCOMPARE(refused.code, 2);
        const QString line = refused.err.split('\n').filter("undermark: ").value(0);
        QVERIFY2(line.contains(named), qPrintable(refused.err));
    }
    void aBundleThatAFileManagerNamesIsTheLogbook()
    {
        QTemporaryDir folder;
        QFile bundle(folder.filePath("wren.undermark"));
        QVERIFY(bundle.open(QIODevice::WriteOnly));
        const auto options = parseLaunchOptions({"undermark", bundle.fileName()});
        QVERIFY(options.has_value());
        QCOMPARE(options->source.logbook->string(), bundle.fileName().toStdString());
    }
    void helpAndVersionAreAnswered()
    {
        const Run help = run(kProgram, {"--help"});
        QCOMPARE(help.code, 0);
        QVERIFY(help.out.contains("--self-test"));
        const Run version = run(kProgram, {"--version"});
        QCOMPARE(version.code, 0);
        QVERIFY(version.out.startsWith("undermark "));
    }
};

UNDERMARK_TEST(ScreenProgramTest)
#include "screen_program_test.moc"
