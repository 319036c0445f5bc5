// SPDX-License-Identifier: GPL-3.0-or-later
//
// The logbook is exported to a stick that is mounted meanwhile, and a table that is copied to
// it is taken in. A real mount where this user may; else a folder given as one.
#include "tests/journeys/hand.h"
#include "tests/journeys/loop_watch.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTest>
#include <functional>
#include <sys/mount.h>

using namespace undermark;
using test::Hand;

namespace undermark::test {

// A stick, to be plugged in: a folder of its own, mounted where sticks are.
class Stick {
public:
    Stick() : m_mounts(QDir().mkpath(kPoint)) {}
    ~Stick()
    {
        if (m_mounted)
            umount(kPoint);
        QDir().rmdir(kPoint);
    }
    void plugIn()
    {
        m_mounted = m_mounts && mount(m_folder.path().toLocal8Bit().constData(), kPoint, nullptr, MS_BIND, nullptr) == 0;
        m_plugged = true;
    }
    QString folder() const { return m_folder.path(); }
    QList<FilePlace> places() const
    {
        QList<FilePlace> all = filePlaces();
        if (m_plugged && !m_mounted)
            all.append({"UNDERMARK", m_folder.path(), true});
        return all;
    }

private:
    static constexpr char kPoint[] = "/media/UNDERMARK";
    QTemporaryDir m_folder;
    bool m_mounts = false;
    bool m_mounted = false;
    bool m_plugged = false;
};

} // namespace undermark::test

class StickJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void theLogbookGoesToAStickAndATableComesFromIt()
    {
        const test::LoopWatch watch("stick");
        test::Stick stick;
        QTemporaryDir home;
        test::OpenWith with;
        with.roots = {home.path(), std::bind_front(&test::Stick::places, &stick)};
        test::OpenDemo demo(QSize(800, 480), "logbook", with);
        Hand hand(*demo.open->window);
        QVERIFY(hand.touch("Transfer"));
        QVERIFY(hand.sees("Export the whole logbook"));
        QVERIFY(!hand.texts().contains("Export to UNDERMARK"));

        stick.plugIn();
        QVERIFY2(hand.touch("Export to UNDERMARK"), qPrintable(hand.texts().join(" | "))); // by itself
        QVERIFY(hand.sees("Written: "));
        const QStringList exported = QDir(stick.folder()).entryList({"export-*"}, QDir::Dirs);
        QCOMPARE(exported.size(), 1);
        QVERIFY(QFile::exists(stick.folder() + '/' + exported[0] + "/logbook.sqlite"));

        QVERIFY(hand.touch("Back"));
        QVERIFY(hand.touch("Take in fills from a table"));
        QVERIFY(hand.touch("UNDERMARK (folder)"));
        QVERIFY2(hand.sees(exported[0]), qPrintable(hand.texts().join(" | ")));
        QFile table(stick.folder() + "/aaa.csv"); // copied while one looks at the list
        QVERIFY(table.open(QIODevice::WriteOnly));
        table.write("date,litres,odometer_km\n2026-09-02,41.5,154500\n");
        table.close();
        QVERIFY2(hand.touch("aaa.csv"), qPrintable(hand.texts().join(" | ")));
        QVERIFY(hand.touch("Show what would be added"));
        QVERIFY(hand.touch("Add 1 fills"));
        QVERIFY(hand.sees("Added 1 fills"));
        QCOMPARE(demo.fills().size(), std::size_t(14));
    }
};

UNDERMARK_TEST(StickJourneyTest)
#include "stick_journey_test.moc"
