// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/rate_filter.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class RateFilterTest : public QObject {
    Q_OBJECT

    static RateFilter filter()
    {
        static const RatePrior prior = ratePrior(std::vector<Mode>{{kTown, {}}});
        return {prior, {}};
    }

    static FilterStretch stretch(double litres, double km)
    {
        FilterStretch s;
        s.quantity = {km, 0, 0};
        s.litres = litres;
        s.days = 7;
        return s;
    }

    static RateFilter after(RateFilter filter, std::initializer_list<FilterStretch> stretches)
    {
        for (const FilterStretch& s : stretches)
            filter.learn(s, filter.surprise(s));
        return filter;
    }

    static RateFilter steady()
    {
        RateFilter f = filter();
        for (int i = 0; i < 20; ++i)
            f = after(f, {stretch(40 + i % 3 - 1, 500)});
        return f;
    }

    static double expected(const RateFilter& f) { return f.expectedLitres(stretch(40, 500)); }

private slots:
    void aStretchNoLargerThanTheClickTeachesNextToNothing()
    {
        const RateFilter f = steady();
        const double before = expected(f);
        for (const double litres : {0.05, 0.3, 1.0})
            QVERIFY(std::abs(expected(after(f, {stretch(litres, 4)})) / before - 1) < 0.01);
        QVERIFY(std::abs(f.usual_l() / after(f, {stretch(0.05, 4)}).usual_l() - 1) < 0.01);
    }

    // 41 L on 1.6 km is a slip of forty litres; 0.6 L there is the click.
    void shortStretchesAreJudgedInLitres()
    {
        const RateFilter f = steady();
        const auto slip = f.surprise(stretch(41, 1.6));
        QVERIFY(slip.isShort && slip.score() > 8);
        QVERIFY(std::abs(f.surprise(stretch(0.6, 1.6)).score()) < 1);
        QVERIFY(!f.surprise(stretch(20, 250)).isShort);
    }

    void whatOneStretchTeachesIsBounded()
    {
        const RateFilter f = steady();
        const double before = expected(f);
        const double some = expected(after(f, {stretch(42, 500)})) / before; // near two sd
        const double odd = expected(after(f, {stretch(46, 500)})) / before;
        const double much = expected(after(f, {stretch(120, 500)})) / before;
        qInfo("42, 46 and 120 L for 40: %.4f, %.4f, %.4f", some, odd, much);
        QVERIFY(some > 1.005 && odd > some);
        QVERIFY(much < 1.06);
    }

    void twoThatStandOutToOneSideAreFollowed()
    {
        const RateFilter f = steady();
        const FilterStretch odd = stretch(52, 500);
        QVERIFY(expected(after(f, {odd, odd, odd})) / expected(f) > 1.2);
        QVERIFY(expected(after(f, {odd, stretch(40, 500), stretch(40, 500)})) / expected(f) < 1.05);
    }

    // A tank closed late is paid back by the next: the click is shared.
    void aLateClickIsNotTakenForARise()
    {
        const RateFilter f = steady();
        const double twice = expected(after(f, {stretch(42, 500), stretch(38, 500)}));
        QVERIFY(std::abs(twice / expected(f) - 1) < 0.01);
    }

    // However alike or unlike the tanks were, for ever: all stays finite and positive.
    void tenThousandAlikeTanksLeaveItSound()
    {
        RateFilter f = filter();
        for (int i = 0; i < 10000; ++i)
            f = after(f, {stretch(40, 500)});
        const HeavyTail law = f.law(stretch(40, 500));
        QVERIFY(std::isfinite(law.mean) && law.sd > 0.005 && law.sd < 0.05);
        QVERIFY(f.scale() >= 0.01);
    }
};

UNDERMARK_TEST(RateFilterTest)
#include "rate_filter_test.moc"
