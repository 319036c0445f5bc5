// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/usual_mix.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <array>
#include <cmath>

using namespace undermark;

class UsualMixTest : public QObject {
    Q_OBJECT

private slots:
    void sharesAreKilometresOverTheirSum()
    {
        UsualMix mix({10, 30});
        mix.observe(0, Distance::fromKm(60));
        QCOMPARE(mix.shares(), (std::vector<double>{0.7, 0.3}));
    }

    void whatWasObservedFadesAndThePriorStays()
    {
        UsualMix mix({300, 100});
        mix.fade(0.5);
        QCOMPARE(mix.shares(), (std::vector<double>{0.75, 0.25}));
        mix.observe(1, Distance::fromKm(600));
        QCOMPARE(mix.shares(), (std::vector<double>{0.3, 0.7}));
        for (int i = 0; i < 100; ++i)
            mix.fade(0.5);
        QVERIFY(std::abs(mix.shares()[0] - 0.75) < 1e-12);
    }

    // Closed form: half and half of 8 and 12 has variance 4; a Dirichlet of
    // concentration 10 has an eleventh of it.
    void theVarianceIsThatOfADirichletMix()
    {
        QVERIFY(std::abs(UsualMix({50, 50}).variance(std::array{8.0, 12.0}) - 4.0 / 11) < 1e-12);
        QCOMPARE(UsualMix({50, 50}).variance(std::array{9.0, 9.0}), 0.0);
    }
};

UNDERMARK_TEST(UsualMixTest)
#include "usual_mix_test.moc"
