// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/displayed_scale.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

class DisplayedScaleTest : public QObject {
    Q_OBJECT

    static std::vector<Fill> log(std::size_t count, double factor, bool displayed)
    {
        std::mt19937_64 random(3);
        std::normal_distribution<double> scatter(0, 0.02);
        std::vector<Fill> fills(count + 1);
        for (std::size_t i = 0; i <= count; ++i) {
            fills[i].time = Instant(std::chrono::hours(24 * i));
            fills[i].odometer = Distance::fromKm(1000 + 500.0 * double(i));
            fills[i].volume = Volume::fromLitres(40 * std::exp(scatter(random)));
            if (displayed)
                fills[i].displayed = Consumption::fromLitresPer100Km(8 / factor);
        }
        return fills;
    }

private slots:
    void learnsTheFactorBetweenPumpAndDisplay()
    {
        const auto fills = log(20, 1.15, true);
        const auto scale = learnDisplayedScale(fills, intervalsFrom(fills, {}));
        QVERIFY(scale.has_value());
        QCOMPARE(scale->readings, std::size_t(20));
        QVERIFY(std::abs(scale->factor - 1.15) < 3 * scale->relativeSd * 1.15);
        QVERIFY(scale->relativeSd < 0.01);
        QVERIFY(scale->nextRelativeSd > scale->relativeSd);
    }

    void withoutDisplayedFiguresThereIsNoFactor()
    {
        const auto fills = log(20, 1.15, false);
        QVERIFY(!learnDisplayedScale(fills, intervalsFrom(fills, {})));
    }

    void aFigureThatSpansAPartialFillIsLeftOut()
    {
        auto fills = log(2, 1.15, true);
        fills[1].extent = FillExtent::partial;
        QVERIFY(!learnDisplayedScale(fills, intervalsFrom(fills, {})));
    }
};

UNDERMARK_TEST(DisplayedScaleTest)
#include "displayed_scale_test.moc"
