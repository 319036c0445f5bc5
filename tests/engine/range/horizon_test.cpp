// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/student_worlds.h"
#include "engine/range/horizon.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

RangeLaw lawFor(double litres, double sd)
{
    RangeBasis basis{{Volume::fromLitres(litres), Volume::fromLitres(sd)},
                     RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()},
                                       std::sqrt(0.001))};
    basis.rates.worlds = studentWorlds(6, 0.6 / 8);
    return *RangeLaw::make(std::move(basis));
}

Distance stripKm(double value) { return Distance::fromKm(value); }

} // namespace

class HorizonTest : public QObject {
    Q_OBJECT
    const RangeLaw m_toZero = lawFor(20, 0.9);
    const RangeLaw m_toDry = lawFor(26, 1.5);

private slots:
    void bandsMeetFromZeroToOne()
    {
        const Horizon strip = horizon(m_toZero, m_toDry, {});
        QVERIFY(strip.bands.size() >= 64);
        QCOMPARE(strip.bands.front().from, 0.0);
        QCOMPARE(strip.bands.back().to, 1.0);
        for (std::size_t i = 1; i < strip.bands.size(); ++i)
            QCOMPARE(strip.bands[i].from, strip.bands[i - 1].to);
    }

    void opacityIsTheProbabilityOfStillRunning()
    {
        const Horizon strip = horizon(m_toZero, m_toDry, {});
        double before = 1.0;
        for (const HorizonBand& band : strip.bands) {
            const Distance middle = strip.length * (0.5 * (band.from + band.to));
            QCOMPARE(band.running, 1.0 - m_toDry.dryBefore(middle).value());
            QCOMPARE(band.aboveZero, 1.0 - m_toZero.dryBefore(middle).value());
            QVERIFY(band.running <= before);
            QVERIFY(band.aboveZero <= band.running);
            before = band.running;
        }
        QVERIFY(strip.bands.front().running > 0.99);
    }

    void marksStandAtTheirDistances()
    {
        const Horizon strip = horizon(m_toZero, m_toDry, {});
        const Distances zero = distances(m_toZero);
        const Distances dry = distances(m_toDry);
        QCOMPARE(*strip.sureToZero, zero.p99 / strip.length);
        QCOMPARE(*strip.zeroPost, zero.p50 / strip.length);
        QCOMPARE(*strip.sureToDry, dry.p99 / strip.length);
        QCOMPARE(*strip.evenToDry, dry.p50 / strip.length);
        QCOMPARE(strip.tail->from, *strip.zeroPost);
        QCOMPARE(strip.tail->to, dry.p10 / strip.length);
        QVERIFY(strip.tail->to <= 1.0);
    }

    void marksBeyondTheStripAreAbsent()
    {
        HorizonRequest request;
        request.length = stripKm(240);
        const Horizon strip = horizon(m_toZero, m_toDry, request);
        QVERIFY(strip.sureToZero && !strip.evenToDry);
        QVERIFY(!strip.zeroPost && !strip.tail);
        request.length = stripKm(300);
        const Horizon longer = horizon(m_toZero, m_toDry, request);
        QCOMPARE(longer.tail->to, 1.0);   // cut off at the end
    }

    void whereZeroIsPassedThePostStandsHere()
    {
        const Horizon strip = horizon(lawFor(-1, 0.5), lawFor(5, 1), {});
        QCOMPARE(*strip.zeroPost, 0.0);
        QCOMPARE(strip.tail->from, 0.0);
    }

    void ticksAreWholeStepsInTheUnitAskedFor()
    {
        HorizonRequest request;
        request.length = stripKm(400);
        request.mostTicks = 8;
        const Horizon strip = horizon(m_toZero, m_toDry, request);
        QCOMPARE(strip.ticks.size(), std::size_t(9));
        QCOMPARE(strip.ticks[3].label, std::string("150"));
        QCOMPARE(strip.ticks[3].at, 0.375);
        request.unit = Distance::fromMiles(1);
        const Horizon miles = horizon(m_toZero, m_toDry, request);
        QCOMPARE(miles.ticks[2].label, std::string("100"));
        QCOMPARE(miles.ticks[2].at, 100 * 1.609344 / 400);
        request.unit = Distance::fromKm(1);
        request.length = stripKm(2);
        QCOMPARE(horizon(m_toZero, m_toDry, request).ticks[1].label, std::string("0.5"));
    }

    void stepsAreOneTwoOrFiveTimesAPowerOfTen()
    {
        QCOMPARE(tickStep(400, 8), 50.0);
        QCOMPARE(tickStep(401, 8), 100.0);
        QCOMPARE(tickStep(160, 8), 20.0);
        QCOMPARE(tickStep(80, 8), 10.0);
        QCOMPARE(tickStep(0.7, 8), 0.1);
        QCOMPARE(tickStep(1000, 2), 500.0);
    }

    void labelsOfOneRowNeverTouch()
    {
        HorizonRequest request;
        request.length = stripKm(400);
        for (int i = 0; i < 30; ++i)
            request.places.push_back({"Fuel point " + std::to_string(i), stripKm((i * 137) % 400)});
        const Horizon strip = horizon(m_toZero, m_toDry, request);
        QCOMPARE(strip.pegs.size(), std::size_t(30));
        int labelled = 0;
        for (const HorizonPeg& a : strip.pegs) {
            QVERIFY(a.labelFrom >= 0.0 && a.labelTo <= 1.0);
            if (!a.row)
                continue;
            ++labelled;
            QVERIFY(*a.row >= 0 && *a.row < request.labelRows);
            for (const HorizonPeg& b : strip.pegs) {
                if (&a != &b && a.row == b.row)
                    QVERIFY(a.labelTo < b.labelFrom || b.labelTo < a.labelFrom);
            }
        }
        QVERIFY(labelled >= 9);
    }

    void lonePegsKeepTheFirstRowAndTheirProbability()
    {
        HorizonRequest request;
        request.length = stripKm(400);
        request.places = {{"Far", stripKm(900)}, {"Depot", stripKm(300)}, {"Pump", stripKm(100)}};
        const Horizon strip = horizon(m_toZero, m_toDry, request);
        QCOMPARE(strip.placesBeyond, 1);
        QCOMPARE(strip.pegs.size(), std::size_t(2));
        QCOMPARE(strip.pegs[0].name, std::string("Pump"));
        QCOMPARE(strip.pegs[0].at, 0.25);
        QCOMPARE(strip.pegs[0].row, std::optional(0));
        QCOMPARE(strip.pegs[1].row, std::optional(0));
        QCOMPARE(strip.pegs[1].running, 1.0 - m_toDry.dryBefore(stripKm(300)).value());
    }

    void labelsAreMeasuredInCharactersNotBytes()
    {
        HorizonRequest request;
        request.length = stripKm(400);
        request.places = {{"\xC3\x96\xC3\x96\xC3\x96", stripKm(200)}};
        const HorizonPeg peg = horizon(m_toZero, m_toDry, request).pegs.front();
        QVERIFY(std::abs(peg.labelTo - peg.labelFrom - 3 * request.characterWidth) < 1e-12);
    }
};

UNDERMARK_TEST(HorizonTest)
#include "horizon_test.moc"
