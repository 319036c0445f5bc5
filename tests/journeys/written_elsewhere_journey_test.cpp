// SPDX-License-Identifier: GPL-3.0-or-later
//
// The command line writes while a page is open: every page takes it up and goes on answering.
#include "app/car/demo_logbook.h"
#include "app/screen/base/pages.h"
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QProcess>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class WrittenElsewhereJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void everyOpenPageTakesUpWhatTheCommandLineWrites_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::addColumn<QString>("page");
        for (const QSize size : test::kScreenSizes)
            for (const PageKind& page : pageKinds())
                QTest::addRow("%dx%d %s", size.width(), size.height(), page.key)
                    << size << QString(page.key);
    }
    void everyOpenPageTakesUpWhatTheCommandLineWrites()
    {
        QFETCH(QSize, size);
        QFETCH(QString, page);
        QTemporaryDir folder;
        const QString file = folder.filePath("demo.sqlite");
        QVERIFY(makeDemoLogbook(file.toStdString(), Existing::refuse));
        const test::LoopWatch watch(page.toStdString());
        test::OpenScreen open(file, size, page);
        const auto fills = [&] { return (*open.car.knowledge())->log.fills.size(); };
        const std::size_t before = fills();
        QSignalSpy anew(&open.screen.now, &NowViewModel::changed); // it may notice at once
        QProcess other;
        other.start(UNDERMARK_CLI, {"--logbook", file, "fill", "add", "--litres", "20", "--partial",
                                     "--trip-meter-km", "280"});
        QVERIFY(QTest::qWaitFor([&] { return other.state() == QProcess::NotRunning; }, 60000));
        QVERIFY2(other.exitCode() == 0, other.readAllStandardError().constData());
        QVERIFY(!anew.isEmpty() || anew.wait(20000)); // by itself
        QCOMPARE(fills(), before + 1);
        test::Hand hand(*open.window);
        QVERIFY(hand.touch("Night"));
        QVERIFY(hand.sees("Day"));
    }
};

UNDERMARK_TEST(WrittenElsewhereJourneyTest)
#include "written_elsewhere_journey_test.moc"
