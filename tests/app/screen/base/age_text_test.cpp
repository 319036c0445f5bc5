// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/age_text.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;
using namespace std::chrono;

class AgeTextTest : public QObject {
    Q_OBJECT
private slots:
    void anAgeIsToldInTheUnitThatFits_data()
    {
        QTest::addColumn<int>("age"); // s
        QTest::addColumn<QString>("text");
        QTest::newRow("now") << 0 << "just now";
        QTest::newRow("under two minutes") << 119 << "just now";
        QTest::newRow("minutes") << 120 << "2 min ago";
        QTest::newRow("up to two hours") << 7199 << "119 min ago";
        QTest::newRow("hours") << 7200 << "2 h ago";
        QTest::newRow("up to two days") << 48 * 3600 - 1 << "47 h ago";
        QTest::newRow("days") << 67 * 86400 + 5000 << "67 days ago";
        QTest::newRow("a clock that was set back") << -1 << "at an unknown time";
    }
    void anAgeIsToldInTheUnitThatFits()
    {
        QFETCH(int, age);
        QFETCH(QString, text);
        QCOMPARE(ageText(seconds(age)), text);
    }
};

UNDERMARK_TEST(AgeTextTest)
#include "age_text_test.moc"
