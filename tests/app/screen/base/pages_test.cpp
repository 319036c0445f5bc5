// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSet>
#include <QSignalSpy>
#include <QTest>

using namespace undermark;

class PagesTest : public QObject {
    Q_OBJECT
private slots:
    // What a page leaves out of its entry, --self-test and the contact sheet would meet as well.
    void everyPageHasItsOwnKeyFileAndView()
    {
        test::DemoCar car;
        Screen screen(car);
        QSet<QString> keys, files;
        QSet<QObject*> views;
        for (const Page& page : screen.pages()) {
            keys.insert(page.key);
            files.insert(page.file);
            views.insert(page.given["view"].value<QObject*>());
            QVERIFY2(!page.title.isEmpty(), qPrintable(page.key));
        }
        QCOMPARE(keys.size(), int(pageKinds().size()));
        QCOMPARE(files.size(), keys.size());
        QCOMPARE(views.size(), keys.size());
        QVERIFY(!views.contains(nullptr));
    }
    void whatOnePageStoresAllOthersReadAnewAndItselfOnlyOnce()
    {
        test::DemoCar car;
        Screen screen(car);
        QSignalSpy now(&screen.now, &NowViewModel::changed);
        QSignalSpy tank(&screen.tank, &TankViewModel::changed);
        emit screen.tank.stored();
        QCOMPARE(now.size(), 1);
        QCOMPARE(tank.size(), 0);
    }
    void anotherLanguageTellsThatTheTitlesAreOthers()
    {
        test::DemoCar car;
        Screen screen(car);
        QSignalSpy titles(&screen, &Screen::pagesChanged);
        screen.settings.choose(ScreenSettings::InLanguage, 1);
        QCOMPARE(titles.size(), 1);
    }
};

UNDERMARK_TEST(PagesTest)
#include "pages_test.moc"
