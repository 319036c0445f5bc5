// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/error.h"
#include "engine/base/quantity.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

template <class A, class B>
concept Addable = requires(A a, B b) { a + b; };
template <class A, class B>
concept Comparable = requires(A a, B b) { a < b; };

class QuantityTest : public QObject {
    Q_OBJECT
private slots:
    void aDefaultQuantityIsExactlyZero()
    {
        QCOMPARE(Volume().litres(), 0.0);
        QCOMPARE(Distance().km(), 0.0);
        QCOMPARE(Consumption().litresPer100Km(), 0.0);
    }

    void differentQuantitiesNeitherAddNorCompare()
    {
        static_assert(Addable<Volume, Volume> && !Addable<Volume, Distance>);
        static_assert(Comparable<Signal, Signal> && !Comparable<Signal, Volume>);
        static_assert(!Addable<Volume, double>);
    }

    void volumeIsConsumptionTimesDistance()
    {
        const auto rate = Consumption::fromLitresPer100Km(7.5);
        const auto road = Distance::fromKm(242);
        // 220 km + 10 % at 7.5 L/100 km needs 18.15 L
        QCOMPARE((rate * road).litres(), 18.15);
        QCOMPARE((rate * road / road).litresPer100Km(), 7.5);
        QCOMPARE((rate * road / rate).km(), 242.0);
    }

    // NIST SP 811 appendix B.5 prints 235.215 and the example 24 mpg -> 9.8
    // L/100 km; the longer values follow from the exact definitions.
    void milesPerGallonFollowTheExactDefinitions()
    {
        QCOMPARE(Consumption::fromMpgUs(1).litresPer100Km(), 235.214583333333333);
        QVERIFY(qAbs(Consumption::fromMpgImperial(1).litresPer100Km() - 282.4809363) < 5e-8);
        QVERIFY(qAbs(Consumption::fromMpgUs(24).litresPer100Km() - 9.8) < 0.05);
        const double us[][2] = {{10, 23.521458}, {20, 11.760729}, {25, 9.408583}, {40, 5.880365}};
        for (const auto& [mpg, litres] : us)
            QVERIFY(qAbs(Consumption::fromMpgUs(mpg).litresPer100Km() - litres) < 5e-7);
        const double imperial[][2] = {{10, 28.248094}, {20, 14.124047}, {25, 11.299237}, {40, 7.062023}};
        for (const auto& [mpg, litres] : imperial)
            QVERIFY(qAbs(Consumption::fromMpgImperial(mpg).litresPer100Km() - litres) < 5e-7);
    }

    // NIST Handbook 44, appendix C: exact by definition.
    void gallonsAndMilesAreExact()
    {
        QCOMPARE(Volume::fromUsGallons(1).litres(), 3.785411784);
        QCOMPARE(Volume::fromImperialGallons(1).litres(), 4.54609);
        QCOMPARE(Distance::fromMiles(1).km(), 1.609344);
    }

    // 40 CFR 600: combined fuel economy is the harmonic mean weighted 55 % city,
    // 45 % highway; 27.7 and 36.9 mpg give 31.2005 and not 31.84.
    void averagingLitresPerKmIsTheHarmonicMeanOfMpg()
    {
        const auto combined = 0.55 * Consumption::fromMpgUs(27.7) + 0.45 * Consumption::fromMpgUs(36.9);
        QVERIFY(qAbs(combined.mpgUs() - 31.2005) < 5e-5);
    }

    void anErrorIsOneLineWithPlaceExpectedAndFound()
    {
        const Error error{ErrorCode::badInput, Sentence::just("this is not a number"), "in.csv", 3,
                          "litres", Sentence::just("a number"), "abc"};
        QCOMPARE(describe(error), std::string("in.csv:3: column 'litres': this is not a number "
                                              "(expected a number, found 'abc')"));
        QCOMPARE(describe(Error{ErrorCode::busy, Sentence::just("try again")}),
                 std::string("try again"));
    }
};

UNDERMARK_TEST(QuantityTest)
#include "quantity_test.moc"
