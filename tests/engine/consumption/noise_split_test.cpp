// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/noise_split.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace undermark;

class NoiseSplitTest : public QObject {
    Q_OBJECT

    // Stretches of 5 and of 40 L, stated click 0.5 L at both ends and 8 % of the
    // litres from driving; the truth differs. Mean over ten cars of the factor of
    // the click's sd.
    static double learnt(double click_l, double driving, double shortShare)
    {
        constexpr unsigned kCars = 10;
        double sum = 0;
        for (unsigned seed = 1; seed <= kCars; ++seed) {
            NoiseSplit split;
            std::mt19937_64 random(seed);
            std::normal_distribution<double> normal;
            std::bernoulli_distribution isShort(shortShare);
            for (int i = 0; i < 300; ++i) {
                const double litres = isShort(random) ? 5 : 40;
                const double error =
                    std::sqrt(2.0) * click_l / litres * normal(random) + driving * normal(random);
                split.observe(error, 2 * 0.5 * 0.5 / (litres * litres), 0.08 * 0.08);
            }
            sum += std::sqrt(split.clickFactor()) / kCars;
        }
        return sum;
    }

private slots:
    void beginsWithTheStatedClickWithinItsSpread()
    {
        // Mean square of the candidates: 0.1*.25 + .2*.49 + .3 + .2*1.96 + .15*4 + .05*7.84.
        QVERIFY(std::abs(NoiseSplit().clickFactor() - 1.807) < 1e-9);
    }

    void aRoughClickShowsInShortStretches()
    {
        QVERIFY(std::abs(learnt(1.0, 0.08, 0.3) - 2) < 0.3);
        QVERIFY(std::abs(learnt(0.5, 0.08, 0.3) - 1) < 0.2);
        QVERIFY(learnt(0.25, 0.08, 0.3) < 0.8);
    }

    // Twice as much noise of both kinds is a scale, not another split.
    void aNoisierCarIsNotARougherClick()
    {
        QVERIFY(std::abs(learnt(1.0, 0.16, 0.3) - 1) < 0.2);
    }

    void alikeTanksTellLittle()
    {
        const double factor = learnt(1.0, 0.08, 0);
        QVERIFY2(factor > 1 && factor < 1.7, qPrintable(QString::number(factor)));
    }
};

UNDERMARK_TEST(NoiseSplitTest)
#include "noise_split_test.moc"
