// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every page as a screen reader gets it: each tab, and what is opened there.
#include "app/car/demo_logbook.h"
#include "app/screen/base/pages.h"
#include "tests/journeys/ear.h"
#include "tests/journeys/open_screen.h"
#include "tests/support/test_main.h"

#include <QMetaEnum>
#include <QQmlComponent>
#include <QRegularExpression>
#include <QTest>

using namespace undermark;

namespace {

// The tabs of a page, as its view model counts them; one without any has one.
int tabsOf(const PageModel& view)
{
    const QMetaObject& type = *view.metaObject();
    const int at = type.indexOfEnumerator("Tab");
    return at < 0 ? 1 : type.enumerator(at).keyCount();
}

// A number that cannot be right, so that the page asks about it.
void typeFarTooMuch(Screen& screen)
{
    screen.pump.form()->select(0);
    for (const char* key : {"3", "5", "0"})
        screen.pump.form()->press(key);
}

struct Opened {
    const char* name;
    const char* page;
    void (*open)(Screen& screen);
    int tab = -1;
};

const Opened kOpened[] = {
    {"fill saved", "pump",
     [](Screen& screen) {
         typeFarTooMuch(screen);
         screen.pump.save();
     }},
    {"entry", "logbook", [](Screen& screen) { screen.logbook.open(2); }},
    {"correction", "logbook",
     [](Screen& screen) {
         screen.logbook.selectFilter(LogbookViewModel::Fills);
         screen.logbook.open(2);
         screen.logbook.correct();
     }},
    {"files", "logbook", [](Screen& screen) { screen.logbook.transfer()->chooseTable(); },
     LogbookViewModel::Transfer},
    {"row of the route", "ahead", [](Screen& screen) { screen.ahead.editRow(3); }},
    {"fuel of a row", "ahead",
     [](Screen& screen) {
         screen.ahead.editRow(3);
         screen.ahead.editor()->selectPart(RouteEditModel::Fuel);
     }},
    {"control at a row", "ahead",
     [](Screen& screen) {
         screen.ahead.editRow(3);
         screen.ahead.editor()->selectPart(RouteEditModel::Control);
     }},
    {"name of a row", "ahead",
     [](Screen& screen) {
         screen.ahead.editRow(3);
         screen.ahead.editor()->selectPart(RouteEditModel::Row);
     }},
    {"routes", "ahead", [](Screen& screen) { screen.ahead.otherRoute(); }},
    {"level", "tank",
     [](Screen& screen) {
         CalibrationGuide& guide = *screen.tank.guide();
         for (int i = 0; i < guide.cautions().size(); ++i)
             guide.acknowledge(i);
         guide.go();
     },
     TankViewModel::Calibrate},
    {"level corrected", "tank",
     [](Screen& screen) {
         CalibrationGuide& guide = *screen.tank.guide();
         for (int i = 0; i < guide.cautions().size(); ++i)
             guide.acknowledge(i);
         guide.go();
         guide.form()->press("3");
         guide.go();
         guide.go();
         guide.correct(0);
     },
     TankViewModel::Calibrate},
    {"proof", "tank", [](Screen& screen) { screen.tank.tellNextProof(); }, TankViewModel::Reserve},
    {"trip", "logbook", [](Screen& screen) { screen.logbook.add(1); }},
    {"forgotten fill", "logbook", [](Screen& screen) { screen.logbook.add(0); }},
    {"moving", "pump", [](Screen& screen) { screen.lock.setSpeed(Speed::fromKmPerHour(60)); }},
    {"another car", "now", [](Screen& screen) { screen.setup.addAnother(); }},
};

} // namespace

class ReadAloudJourneyTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }
    void init() { QTest::failOnWarning(QRegularExpression(".*")); }

    void everyPageIsReadAloud_data()
    {
        QTest::addColumn<int>("page");
        for (int i = 0; i < int(pageKinds().size()); ++i)
            QTest::addRow("%s", pageKinds()[std::size_t(i)].key) << i;
    }
    void everyPageIsReadAloud()
    {
        QFETCH(int, page);
        const PageKind& kind = pageKinds()[std::size_t(page)];
        Demo demo(kind.key);
        for (int tab = 0; tab < tabsOf(kind.view(demo.open->screen)); ++tab) {
            demo.turnTo(tab);
            listen(demo, qPrintable(QString("tab %1").arg(tab)));
        }
    }
    void whatIsOpenedIsReadAloud_data()
    {
        QTest::addColumn<int>("opened");
        for (int i = 0; i < int(std::size(kOpened)); ++i)
            QTest::addRow("%s", kOpened[i].name) << i;
    }
    void whatIsOpenedIsReadAloud()
    {
        QFETCH(int, opened);
        Demo demo(kOpened[opened].page);
        kOpened[opened].open(demo.open->screen);
        demo.turnTo(kOpened[opened].tab);
        listen(demo, kOpened[opened].name);
    }
    void whatIsChosenByTouchIsHeard()
    {
        Demo demo("pump");
        const QStringList heard = test::readAloud(*demo.open->window);
        const QString guess = demo.open->screen.pump.form()->fields()[0].text;
        QVERIFY2(!guess.isEmpty() && heard.contains("EditableText: fuel put in, L, guess: " + guess),
                 qPrintable(heard.join('\n')));
        QVERIFY(heard.contains("StaticText: Caution: at a halt only, engine off.: "));
        demo.open->screen.pump.selectExtent(1); // of a press that the model took
        listen(demo, "partial");
    }
    // The ear itself: it hears what is missing.
    void whatCannotBeHeardIsFound()
    {
        QQmlEngine engine;
        engine.addImportPath("qrc:/qt/qml");
        QQmlComponent component(&engine);
        component.setData("import QtQuick\nimport Undermark.Ui\nWindow { visible: true; width: 99; height: 99\n"
                          "Item { activeFocusOnTab: true }\n"
                          "Item { width: 9; height: 9; property bool chosen: true; Accessible.role: Accessible.Button;"
                          " Accessible.name: 'a' }\n"
                          "FieldButton { width: 9; height: 9; name: ''; value: '7'; unit: ''; hint: '';"
                          " spoken: '' }\n"
                          "Text { text: 'unsaid'; Accessible.ignored: true }\n"
                          "Words { text: 'said' } }",
                          {});
        const std::unique_ptr<QObject> made(component.create());
        auto* window = qobject_cast<QQuickWindow*>(made.get());
        QVERIFY2(window, qPrintable(component.errorString()));
        const QStringList faults = test::unheard(*window);
        QVERIFY2(faults.size() == 4, qPrintable((faults + test::readAloud(*window)).join('\n')));
        QVERIFY(faults[0].endsWith("has no name"));
        QVERIFY(faults[1].endsWith("a reader hears the contrary"));
        QVERIFY(faults[2].endsWith("has no name"));
        QVERIFY(faults[3].contains("'unsaid' is to be seen"));
    }

private:
    // The demo car with its rally, opened at a page.
    struct Demo : test::OpenDemo {
        explicit Demo(const char* page) : OpenDemo(QSize(800, 480), page)
        {
            open->screen.ahead.setRoute(demoRoute(), "Seven Weirs Rally");
            settle();
        }
        void settle()
        {
            QVERIFY(QTest::qWaitFor([this] { return !open->screen.ahead.planning(); }, 60000));
            QTest::qWait(50); // until layouts are at rest
        }
        void turnTo(int tab)
        {
            if (auto* page = open->window->property("pageItem").value<QQuickItem*>(); page && tab >= 0)
                page->setProperty("tab", tab);
            settle();
        }
    };
    static void listen(Demo& demo, const char* where)
    {
        const QStringList heard = test::readAloud(*demo.open->window);
        QVERIFY2(heard.size() > 8, qPrintable(heard.join('\n')));
        const QStringList faults = test::unheard(*demo.open->window);
        QVERIFY2(faults.isEmpty(), qPrintable(QString("%1:\n%2").arg(where, faults.join('\n'))));
    }
};

UNDERMARK_TEST(ReadAloudJourneyTest)
#include "read_aloud_journey_test.moc"
