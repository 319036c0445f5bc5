// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/outlook.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

Instant day(int n) { return Instant(std::chrono::hours(24 * n)); }

Fill fullFill(int n, double km, double volume)
{
    Fill fill;
    fill.time = day(n);
    fill.volume = Volume::fromLitres(volume);
    fill.odometer = Distance::fromKm(km);
    return fill;
}

template <class T>
Entry<T> entry(T value)
{
    return {{}, {}, std::move(value)};
}

// An invented car of 8 L/100 km, with the zero mark at 8 L; the float rests on
// its lower stop below 5 L, at 0.5 V.
VehicleLog invented()
{
    VehicleLog log;
    log.vehicle.value.name = "Harbour estate";
    log.vehicle.value.capacity = Volume::fromLitres(55);
    log.vehicle.value.sender.supplyVolts = 5.0;
    for (const char* mode : {kTown, kOpenRoad, kMotorway, kSpecialStage})
        log.modes.push_back(entry(Mode{mode, std::nullopt}));
    Calibration calibration;
    calibration.time = day(0);
    calibration.zeroMark = Volume::fromLitres(8);
    for (int i = 0; i <= 11; ++i)
        calibration.points.push_back({Volume::fromLitres(5.0 * i),
                                      Signal::of(i < 1 ? 0.5 : 0.5 + 0.3 * (i - 1)), std::nullopt,
                                      Signal::of(0.01), 5});
    log.calibration = entry(calibration);
    for (int i = 0; i < 6; ++i)
        log.fills.push_back(entry(fullFill(10 + 10 * i, 10'000 + 450.0 * i, 36 + 0.2 * (i % 3))));
    return log;
}

constexpr double kLastFillKm = 10'000 + 450.0 * 5;

CarKnowledge inventedCar() { return learn(invented()).value(); }

Question atOdometer(double km)
{
    Question question;
    question.odometer = Distance::fromKm(km);
    return question;
}

Question atSignal(double volts)
{
    Question question;
    question.signal = Signal::of(volts);
    return question;
}

bool isOrdered(const Distances& d)
{
    return Distance() <= d.p99 && d.p99 <= d.p90 && d.p90 <= d.p50 && d.p50 <= d.p10;
}

} // namespace

// One honest answer from whatever is known of the level.
class OutlookTest : public QObject {
    Q_OBJECT

private slots:
    void moreRoadSinceTheFillMeansLessAhead()
    {
        const CarKnowledge car = inventedCar();
        std::optional<Outlook> before;
        for (const double driven : {0.0, 100.0, 250.0, 400.0}) {
            const auto now = outlook(car, atOdometer(kLastFillKm + driven));
            QVERIFY2(now.has_value(), now ? "" : describe(now.error()).c_str());
            QVERIFY(now->source == LevelSource::log);
            QCOMPARE(now->sinceFill->km(), driven);
            if (before) {
                QVERIFY(distances(now->toDry).p99 < distances(before->toDry).p99);
                QVERIFY(distances(now->toDry).p50 < distances(before->toDry).p50);
                QVERIFY(distances(now->toZero).p50 < distances(before->toZero).p50);
                QVERIFY(now->usable.mean < before->usable.mean);
            }
            before = *now;
        }
    }

    void theSurerDistanceIsTheShorterOne()
    {
        const CarKnowledge car = inventedCar();
        for (const char* mode : {"", kTown, kMotorway, kSpecialStage})
            for (Question question : {atOdometer(kLastFillKm + 200), atSignal(2.0), atSignal(0.6),
                                      atSignal(0.4), Question{}}) {
                question.mode = mode;
                const auto now = outlook(car, question);
                QVERIFY2(now.has_value(), now ? "" : describe(now.error()).c_str());
                QVERIFY(isOrdered(distances(now->toZero)));
                QVERIFY(isOrdered(distances(now->toDry)));
                QVERIFY(distances(now->toZero).p50 <= distances(now->toDry).p50);
            }
    }

    // The median of the range law is fuel / rate (Phi is .5 at 0), so the medians to
    // zero and to dry lie the reserve's distance apart.
    void betweenZeroAndDryLiesTheReserve()
    {
        const CarKnowledge car = inventedCar();
        for (const Question& question : {atOdometer(kLastFillKm + 150), atSignal(2.0)}) {
            const Outlook now = *outlook(car, question);
            const Distance between = distances(now.toDry).p50 - distances(now.toZero).p50;
            const Distance expected = now.reserve.mean / now.rate.mean;
            QVERIFY2(std::abs(between / expected - 1) < 0.01,
                     qPrintable(QString("%1 km, expected %2").arg(between.km()).arg(expected.km())));
            QVERIFY(abs(now.usable.mean - now.aboveZero.mean - now.reserve.mean)
                    < Volume::fromLitres(1e-9));
        }
    }

    void onTheLowerStopTheAnswerIsAtMost()
    {
        const CarKnowledge car = inventedCar();
        const Outlook now = *outlook(car, atSignal(0.5));
        QVERIFY(now.bound == LevelBound::atMost);
        QVERIFY(now.boundAt.has_value());
        QVERIFY(now.usable.mean <= *now.boundAt);
        QCOMPARE(now.warnings.size(), std::size_t(1));
        QVERIFY(QString::fromStdString(english(now.warnings[0])).contains("at most"));
        QVERIFY(outlook(car, atSignal(2.0))->bound == LevelBound::exact);
        QVERIFY(!outlook(car, atSignal(2.0))->boundAt);
    }

    // No circuit of 5 V gives 7 V.
    void anImpossibleReadingWarnsAndTheLogAnswers()
    {
        const CarKnowledge car = inventedCar();
        const Outlook broken = *outlook(car, atSignal(7.0));
        const Outlook log = *outlook(car, Question{});
        QVERIFY(broken.source == LevelSource::log);
        QCOMPARE(broken.warnings.size(), std::size_t(1));
        QVERIFY(log.warnings.empty());
        QVERIFY(distances(broken.toDry) == distances(log.toDry));
        QVERIFY(distances(broken.toZero) == distances(log.toZero));
    }

    // Without a supply voltage only the sweep (0.5 to 3.5 V) tells.
    void aReadingAWholeSweepBeyondTheStopsIsNoStop()
    {
        VehicleLog log = invented();
        log.vehicle.value.sender = Sender{};
        const CarKnowledge car = *learn(log);
        QVERIFY(outlook(car, atSignal(3.6))->bound == LevelBound::atLeast);
        QVERIFY(english(outlook(car, atSignal(3.6))->warnings[0]).find("at least") != std::string::npos);
        for (const double signal : {7.0, -3.0}) {
            const Outlook broken = *outlook(car, atSignal(signal));
            QVERIFY(broken.source == LevelSource::log && broken.bound == LevelBound::exact);
            QVERIFY(QString::fromStdString(english(broken.warnings[0])).contains("cannot give this reading"));
        }
    }

    void anUnknownModeIsNotFound()
    {
        Question question = atOdometer(kLastFillKm);
        question.mode = "submarine";
        const auto now = outlook(inventedCar(), question);
        QVERIFY(!now);
        QCOMPARE(now.error().code, ErrorCode::notFound);
        QCOMPARE(now.error().found, Part(std::string("submarine")));
    }

    void withoutAFullFillAndAReadingNothingIsKnown()
    {
        VehicleLog log = invented();
        for (auto& fill : log.fills)
            fill.value.extent = FillExtent::partial;
        const CarKnowledge car = learn(log).value();
        QCOMPARE(outlook(car, Question{}).error().code, ErrorCode::badInput);
        QCOMPARE(outlook(car, atOdometer(kLastFillKm)).error().code, ErrorCode::badInput);
        QVERIFY(outlook(car, atSignal(2.0)).has_value());
        log.fills.clear();
        QCOMPARE(outlook(learn(log).value(), Question{}).error().code, ErrorCode::badInput);
    }

    void anOdometerBelowTheLastFillIsBadInput()
    {
        const CarKnowledge car = inventedCar();
        const auto now = outlook(car, atOdometer(kLastFillKm - 1));
        QVERIFY(!now);
        QCOMPARE(now.error().code, ErrorCode::badInput);
        QVERIFY(outlook(car, atOdometer(kLastFillKm)).has_value());
    }

    void aReadingWithoutCalibrationIsBadInput()
    {
        VehicleLog log = invented();
        log.calibration.reset();
        const auto now = outlook(learn(log).value(), atSignal(2.0));
        QVERIFY(!now);
        QCOMPARE(now.error().code, ErrorCode::badInput);
    }

    // Clicks scatter about one level, of which the calibration's own full was one.
    void theCalibrationsOwnFullIsAClickToo()
    {
        const CarKnowledge car = inventedCar();
        const auto variance = [](Estimate<Volume> v) { return std::pow(v.sd.litres(), 2); };
        const double click = std::pow(car.consumption.model.rates().clickSd.litres(), 2);
        const double curve = variance(car.gauge.known(car.gauge.full()));
        QVERIFY(std::abs(variance(car.reserve.usableCapacity())
                         - (curve + click + variance(car.reserve.offset()))) < 1e-9);
        const double full = variance(outlook(car, {}).value().law.usable);
        QVERIFY(std::abs(full - (curve + 2 * click + variance(car.reserve.offset()))) < 1e-9);
    }

    void aFullFillFromZeroNeverShrinksTheReservesSpread()
    {
        VehicleLog log = invented();
        const double before = learn(log)->reserve.reserve().sd.litres();
        const CarKnowledge car = learn(log).value();
        const Signal zero = car.gauge.curve()->signalAt(log.calibration->value.zeroMark);
        for (int i = 0; i < 5; ++i) {
            Fill fill = fullFill(100 + 10 * i, kLastFillKm + 550.0 * (i + 1), 47 + 0.3 * i);
            fill.signalBefore = zero;
            log.fills.push_back(entry(fill));
            QVERIFY(learn(log)->reserve.reserve().sd.litres() >= before - 1e-9);
        }
    }
};

UNDERMARK_TEST(OutlookTest)
#include "outlook_test.moc"
