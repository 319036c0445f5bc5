// SPDX-License-Identifier: GPL-3.0-or-later
//
// From a level that was kept the answer counts on as it does from a full fill.
#include "engine/outlook/kept_level.h"
#include "engine/outlook/way_since.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

Instant dayOf(int n) { return Instant(std::chrono::hours(24 * n)); }

template <class T>
Entry<T> held(T value)
{
    return {{}, {}, std::move(value)};
}

Volume l(double litres) { return Volume::fromLitres(litres); }

constexpr int kFullDay = 60;
constexpr double kFullKm = 12'250;

// An invented car, filled up every ten days and 450 km, on day 60 last.
VehicleLog filledCar()
{
    VehicleLog log;
    log.vehicle.value.name = "Marsh hatchback";
    log.vehicle.value.capacity = l(55);
    log.vehicle.value.sender.supplyVolts = 5.0;
    for (const char* mode : {kTown, kOpenRoad, kMotorway, kSpecialStage})
        log.modes.push_back(held(Mode{mode, std::nullopt}));
    Calibration calibration;
    calibration.time = dayOf(0);
    calibration.zeroMark = l(8);
    for (int i = 0; i <= 11; ++i) // the float rests on its lower stop below 5 L, at 0.5 V
        calibration.points.push_back({l(5.0 * i), Signal::of(i < 1 ? 0.5 : 0.5 + 0.3 * (i - 1)), std::nullopt,
                                      Signal::of(0.01), 5});
    log.calibrations.push_back(held(calibration));
    log.calibration = log.calibrations.back();
    for (int i = 0; i < 6; ++i) {
        Fill fill;
        fill.time = dayOf(10 + 10 * i);
        fill.volume = l(36 + 0.2 * (i % 3));
        fill.odometer = Distance::fromKm(10'000 + 450.0 * i);
        log.fills.push_back(held(fill));
    }
    return log;
}

LevelRecord readAt(int day, double volts)
{
    LevelRecord level;
    level.time = dayOf(day);
    level.signal = Signal::of(volts);
    return level;
}

LevelRecord litresAt(int day, double litres, double sd)
{
    LevelRecord level;
    level.time = dayOf(day);
    level.usable = {l(litres), l(sd)};
    return level;
}

Question onDay(int day)
{
    Question question;
    question.now.begin = dayOf(day);
    return question;
}

// A rate that is stated makes the law one of a single normal world.
constexpr double kRate = 0.08, kRateSd = 0.004; // L/km
Question statedOn(int day)
{
    Question question = onDay(day);
    question.rate = {Consumption::fromLitresPerKm(kRate), Consumption::fromLitresPerKm(kRateSd)};
    return question;
}

Trip tripOn(int day, double km)
{
    Trip trip;
    trip.time = dayOf(day);
    trip.distance = Distance::fromKm(km);
    trip.mode = kMotorway;
    return trip;
}

Fill partialOn(int day, double litres, std::optional<double> km = {})
{
    Fill fill;
    fill.time = dayOf(day);
    fill.volume = l(litres);
    fill.extent = FillExtent::partial;
    if (km)
        fill.odometer = Distance::fromKm(*km);
    return fill;
}

Outlook answer(VehicleLog log, const Question& question)
{
    const auto car = learn(std::move(log));
    const auto now = outlook(*car, question);
    if (!now)
        qFatal("%s", describe(now.error()).c_str());
    return *now;
}

bool sameDistances(const RangeLaw& a, const RangeLaw& b)
{
    const Distances one = distances(a), other = distances(b);
    return one.p99 == other.p99 && one.p90 == other.p90 && one.p50 == other.p50 && one.p10 == other.p10;
}

// To the last digit.
bool sameAnswer(const Outlook& a, const Outlook& b)
{
    return a.usable == b.usable && a.aboveZero == b.aboveZero && a.reserve == b.reserve && a.rate == b.rate
        && a.bound == b.bound && a.boundAt == b.boundAt && sameDistances(a.toZero, b.toZero)
        && sameDistances(a.toDry, b.toDry);
}

VehicleLog with(VehicleLog log, const LevelRecord& level)
{
    log.levels.push_back(held(level));
    return log;
}

bool isNear(double a, double b, double within = 1e-9) { return std::abs(a - b) <= within; }

} // namespace

class KeptLevelTest : public QObject {
    Q_OBJECT

private slots:
    // Also on the float's stops, where the log is asked besides.
    void onItsDayTheAnswerIsThatOfWhatWasTold()
    {
        for (const double volts : {2.0, 1.1, 0.62, 0.5, 0.45, 3.5, 3.6}) {
            Question told = onDay(61);
            told.signal = Signal::of(volts);
            const Outlook kept = answer(with(filledCar(), readAt(61, volts)), onDay(61));
            QVERIFY2(sameAnswer(kept, answer(filledCar(), told)), qPrintable(QString::number(volts)));
        }
        LevelRecord noisy = readAt(61, 1.4);
        noisy.signalSd = Signal::of(0.05);
        Question told = onDay(61);
        told.signal = Signal::of(1.4);
        told.signalSd = Signal::of(0.05);
        QVERIFY(sameAnswer(answer(with(filledCar(), noisy), onDay(61)), answer(filledCar(), told)));
        told = onDay(61);
        told.usable = {l(21.5), l(0.7)};
        QVERIFY(sameAnswer(answer(with(filledCar(), litresAt(61, 21.5, 0.7)), onDay(61)), answer(filledCar(), told)));
        LevelRecord followed;
        followed.time = dayOf(61);
        followed.added = {l(33.3), l(0.4)};
        told = onDay(61);
        told.followed = followed.added;
        const Outlook kept = answer(with(filledCar(), followed), onDay(61));
        QVERIFY(sameAnswer(kept, answer(filledCar(), told)));
        QVERIFY(kept.asOf == dayOf(61));
        QVERIFY(english(kept.why).find("followed until 1970-03-03") != std::string::npos);
    }

    // Closed form: what is left of V0 +- s0 after x km at c +- sc, P litres poured in and an idle
    // hour at i +- si is V0 + P - c x - i, of variance s0^2 + (x sc)^2 + tau^2 x + si^2.
    void laterWhatCameSinceIsInTheLevelAndInItsError()
    {
        VehicleLog log = with(filledCar(), litresAt(61, 30, 0.5));
        Trip trip = tripOn(62, 120);
        trip.idle = std::chrono::duration<double, std::ratio<60>>(60);
        log.trips.push_back(held(trip));
        log.trips.push_back(held(tripOn(64, 80)));
        log.fills.push_back(held(partialOn(63, 7)));
        const auto car = learn(log);
        const ModeRates rates = car->consumption.model.rates({.begin = dayOf(64), .days = {}, .burnsMore = {}});
        const Outlook now = answer(log, statedOn(64));
        const double idle = rates.idle.mean.litresPerHour(), idleSd = rates.idle.sd.litresPerHour();
        QVERIFY(isNear(now.usable.mean.litres(), 30 + 7 - kRate * 200 - idle));
        QVERIFY(isNear(now.usable.sd.litres(),
                       std::sqrt(0.25 + std::pow(200 * kRateSd, 2) + rates.tauSquaredPerKm * 200 + idleSd * idleSd)));
        QCOMPARE(english(now.why), std::string("from the litres of 1970-03-03: the fuel as given, then 200.0 km and 7.0 L more"));
    }

    void whatIsOfTheSameInstantOrBeforeIsInTheLevelAlready()
    {
        VehicleLog log = with(filledCar(), litresAt(61, 30, 0.5));
        const Outlook alone = answer(log, statedOn(61));
        log.trips = {held(tripOn(60, 50)), held(tripOn(61, 40))};
        log.fills.push_back(held(partialOn(61, 9)));
        const Outlook now = answer(log, statedOn(61));
        QCOMPARE(now.usable.mean.litres(), alone.usable.mean.litres());
        QCOMPARE(now.usable.sd.litres(), alone.usable.sd.litres());
    }

    // Poured on the way, told at home: the level that the car kept when it got there holds it.
    void aFillToldAfterTheDriveIsNotCountedTwice()
    {
        VehicleLog log = filledCar();
        log.trips.push_back(held(tripOn(62, 400)));
        const double expected = answer(log, statedOn(62)).usable.mean.litres();
        Fill fill = partialOn(62, 15);
        fill.time += std::chrono::hours(2);
        log.fills.push_back(held(fill));
        const auto kept = [&](double litres) {
            VehicleLog followed = log;
            followed.levels = {held(litresAt(62, litres, 0.5))};
            Question thatEvening = statedOn(62);
            *thatEvening.now.begin += std::chrono::hours(3);
            return answer(followed, thatEvening);
        };
        const Outlook late = kept(expected + 15), inTime = kept(expected);
        QVERIFY(isNear(late.usable.mean.litres(), inTime.usable.mean.litres()));
        QVERIFY(isNear(late.aboveZero.mean.litres(), inTime.aboveZero.mean.litres()));
        QVERIFY(isNear(inTime.usable.mean.litres(), expected + 15));
        QVERIFY(inTime.warnings.empty());
        QCOMPARE(late.warnings.size(), std::size_t(1));
        QVERIFY(english(late.warnings.front()).find("15.0 L seems to have been in the tank already") != std::string::npos);
        log.trips.push_back(held(tripOn(62, 10))); // driven in between: it was poured then
        log.trips.back().value.time += std::chrono::hours(1);
        QVERIFY(kept(expected + 15).usable.mean.litres() > expected + 25);
    }

    void theNewestCountsAndAFullFillAfterItMore()
    {
        VehicleLog log = with(with(filledCar(), litresAt(61, 30, 0.5)), litresAt(62, 12, 0.3));
        QVERIFY(answer(log, onDay(62)).asOf == dayOf(62));
        Fill full = partialOn(63, 41, kFullKm + 300);
        full.extent = FillExtent::full;
        log.fills.push_back(held(full));
        const Outlook now = answer(log, onDay(63));
        QVERIFY(!now.asOf && now.source == LevelSource::log);
        log.levels = {held(litresAt(63, 12, 0.3))}; // of the same instant as the fill
        QVERIFY(!answer(log, onDay(63)).asOf);
    }

    void aQuestionThatTellsALevelAsksNothingThatWasKept()
    {
        const VehicleLog log = with(filledCar(), litresAt(61, 30, 0.5));
        for (const auto& tell : {+[](Question& q) { q.usable = {l(9), l(1)}; }, +[](Question& q) { q.signal = Signal::of(1.0); }}) {
            Question question = onDay(61);
            tell(question);
            QVERIFY(sameAnswer(answer(log, question), answer(filledCar(), question)));
            QVERIFY(!answer(log, question).asOf);
        }
    }

    void betweenTwoOdometersTheWayIsCounted()
    {
        LevelRecord level = litresAt(61, 30, 0.5);
        level.odometer = Distance::fromKm(kFullKm + 90);
        const VehicleLog log = with(filledCar(), level);
        Question question = statedOn(62);
        question.odometer = Distance::fromKm(kFullKm + 190);
        const Outlook now = answer(log, question);
        QVERIFY(isNear(now.usable.mean.litres(), 30 - kRate * 100));
        QVERIFY(isNear(now.sinceFill->km(), 190));
        question.odometer = Distance::fromKm(kFullKm + 80);
        const auto lower = outlook(*learn(log), question);
        QVERIFY(!lower && lower.error().code == ErrorCode::badInput);
    }

    // A slip of the fingers is not counted from: the level is, as if no odometer had been told.
    void anOdometerLowerThanAtTheLastFullFillIsPassedOver()
    {
        LevelRecord slipped = litresAt(61, 30, 0.5);
        slipped.odometer = Distance::fromKm(kFullKm - 900);
        const Outlook now = answer(with(filledCar(), slipped), onDay(61)), untold = answer(with(filledCar(), litresAt(61, 30, 0.5)), onDay(61));
        QVERIFY(now.asOf == dayOf(61) && now.usable == untold.usable);
        QVERIFY(*now.sinceFill >= Distance());
    }

    // Full on day 60, a level on day 61, 400 km further on day 64: three of four days came after it.
    // The share of a gamma process' way that falls into a part of its days is Beta distributed; of
    // Beta(2 f, 2 (1 - f)) mean and variance are f and f (1 - f) / 3 (any table of distributions).
    void withoutAnOdometerAtTheLevelTheWayIsSharedOutByDays()
    {
        VehicleLog log = with(filledCar(), litresAt(61, 40, 0.5));
        log.fills.push_back(held(partialOn(64, 10, kFullKm + 400)));
        const Outlook now = answer(log, statedOn(64));
        const double tau2 = std::pow(now.law.rates.legNoiseSd, 2);
        QVERIFY(isNear(now.usable.mean.litres(), 40 + 10 - kRate * 300));
        QVERIFY(isNear(now.usable.sd.litres(), std::sqrt(0.25 + std::pow(kRate * 100, 2) + std::pow(300 * kRateSd, 2)
                                                         + tau2 * 300)));
        QVERIFY(isNear(now.sinceFill->km(), 400));
        const Estimate<Distance> half = shareOfWay(Distance::fromKm(12), 0.5); // the uniform law on 0 to 12
        QVERIFY(isNear(half.mean.km(), 6) && isNear(half.sd.km(), 12 / std::sqrt(12.0)));
    }

    // 45 km a day, as between the fills: five days of silence after the level.
    void silenceAfterItIsRoadThatNobodyWroteDown()
    {
        const VehicleLog log = with(filledCar(), litresAt(61, 50, 0.5));
        const Outlook now = answer(log, statedOn(66));
        QVERIFY(now.unlogged && now.unlogged->silence == std::chrono::days(5));
        QVERIFY(std::abs(now.unlogged->road->mean.km() - 225) < 2);
        QVERIFY(isNear(now.usable.mean.litres(), 50 - kRate * now.unlogged->road->mean.km()));
        QVERIFY(now.usable.sd > answer(log, statedOn(61)).usable.sd);
        // And what a fill at the pump is guessed from holds the day before the level, too.
        QVERIFY(std::abs(now.likelySinceFill->km() - 270) < 3);
    }

    void aReadingGoesWithItsOwnCalibrationAlone()
    {
        VehicleLog log = with(filledCar(), readAt(61, 1.7));
        Calibration newer = log.calibration->value;
        newer.time = dayOf(62);
        log.calibrations.push_back(held(newer));
        log.calibration = log.calibrations.back();
        QVERIFY(!answer(log, onDay(62)).asOf);
        log.levels.push_back(held(litresAt(61, 25, 0.5))); // litres are what they are
        QVERIFY(answer(log, onDay(62)).asOf);
    }

    void oneThatTheWiringCannotGiveIsPassedOver()
    {
        const VehicleLog log = with(with(filledCar(), readAt(61, 1.7)), readAt(62, 12.0)); // of a 5 V supply
        const Outlook now = answer(log, onDay(62));
        QVERIFY(now.asOf == dayOf(61));
        LevelRecord two = readAt(62, 1.0);
        two.signal2 = Signal::of(1.0);
        QVERIFY(answer(with(log, two), onDay(62)).asOf == dayOf(61));
    }

    // It needs no full fill: what is known is known.
    void aCarThatWasNeverFilledUpAnswersFromIt()
    {
        VehicleLog log = filledCar();
        log.fills.clear();
        QVERIFY(!outlook(*learn(log), onDay(61)));
        const Outlook now = answer(with(log, readAt(61, 1.7)), onDay(61));
        QVERIFY(now.asOf == dayOf(61) && !now.sinceFill);
    }

    void ofSeveralTanksAllMustBeKeptAtOneHalt()
    {
        VehicleLog log = filledCar();
        ExtraTank aux;
        aux.name = "aux";
        aux.capacity = l(30);
        log.tanks.push_back(held(aux));
        Fill filled = log.fills.back().value;
        filled.time += std::chrono::minutes(5);
        filled.volume = l(29);
        filled.odometer.reset();
        filled.tank = "aux";
        log.fills.push_back(held(filled));
        LevelRecord own = litresAt(61, 30, 0.5), other = litresAt(61, 11, 0.4);
        other.time += std::chrono::minutes(4);
        other.tank = "aux";
        QVERIFY(!answer(with(log, own), onDay(61)).asOf);
        const Outlook kept = answer(with(with(log, own), other), onDay(61));
        Question told = onDay(61);
        told.tanks[""].usable = own.usable;
        told.tanks["aux"].usable = other.usable;
        QVERIFY(sameAnswer(kept, answer(log, told)));
        QVERIFY(kept.asOf == other.time);
        QVERIFY(isNear(kept.usable.mean.litres(), 41));
        other.time += std::chrono::hours(30); // another day
        QVERIFY(!answer(with(with(log, own), other), onDay(62)).asOf);
    }
};

UNDERMARK_TEST(KeptLevelTest)
#include "kept_level_test.moc"
