// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/reading_size.h"
#include "app/screen/base/screen_settings.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr double kCapital = 13.0; // px of B612 at 18 px, the letters of an 800 x 480 screen at 100 %

double capitals(double dotsPerInch)
{
    return kCapital * 25.4 / dotsPerInch;
}
// Of 800 x 480 dots.
double diagonal(double dotsPerInch)
{
    return std::hypot(800, 480) * 25.4 / dotsPerInch;
}

} // namespace

class ReadingSizeTest : public QObject {
    Q_OBJECT
private slots:
    // By hand: 2 * 650 mm * tan 8' = 1300 * 0.0023271 (mm).
    void sixteenMinutesAtArmsLengthAreThreeMillimetres() { QVERIFY(std::abs(readingHeight() - 3.0252) < 1e-4); }
    void theSmallestSizeThatCanBeReadIsTheDefault_data()
    {
        QTest::addColumn<double>("dotsPerInch");
        QTest::addColumn<int>("percent");
        QTest::addRow("7 inches of 800 x 480") << 133.0 << 125; // 13 px: 2.48 mm
        QTest::addRow("10 inches") << 93.0 << 100;
        QTest::addRow("5 inches") << 187.0 << 175; // 1.77 mm
        QTest::addRow("4 inches") << 233.0 << 200; // 1.42 mm; 2.83 mm is the most there is
    }
    void theSmallestSizeThatCanBeReadIsTheDefault()
    {
        QFETCH(double, dotsPerInch);
        QFETCH(int, percent);
        QCOMPARE(readableTextPercent(capitals(dotsPerInch), diagonal(dotsPerInch)), percent);
        ScreenSettings settings({});
        settings.seenOn(capitals(dotsPerInch), diagonal(dotsPerInch));
        QCOMPARE(qRound(settings.textScale() * 100), percent);
        const Choice letters = settings.choices()[ScreenSettings::TextSize];
        QCOMPARE(letters.options[letters.current], QString::number(percent) + " %");
        if (percent < 200)
            QVERIFY(capitals(dotsPerInch) * percent / 100 >= readingHeight());
    }
    void whatTheUserChoseStays()
    {
        ScreenSettings settings({});
        settings.choose(ScreenSettings::TextSize, 1);
        settings.seenOn(capitals(187), diagonal(187));
        QCOMPARE(qRound(settings.textScale() * 100), 125);
    }
    void aDeskAndAnUnknownScreenKeepTheirSize()
    {
        QCOMPARE(readableTextPercent(capitals(157), 356), 100); // 14 inches
        QCOMPARE(readableTextPercent(0, 0), 100);
        QCOMPARE(readableTextPercent(std::nan(""), 127), 100);
    }
};

UNDERMARK_TEST(ReadingSizeTest)
#include "reading_size_test.moc"
