// SPDX-License-Identifier: GPL-3.0-or-later
//
// A proof speaks of the zero mark that was in force at its time.
#include "engine/outlook/outlook.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

Instant onDayOf(int n) { return Instant(std::chrono::hours(24 * n)); }
Volume litresOf(double litres) { return Volume::fromLitres(litres); }

template <class T>
Entry<T> noted(T value)
{
    return {{}, {}, std::move(value)};
}

constexpr double kBefore = 5, kSince = 8; // litres since drained at the zero mark
constexpr double kMoved = kSince - kBefore;

Calibration zeroedAt(int day, double zero)
{
    Calibration calibration;
    calibration.time = onDayOf(day);
    calibration.zeroMark = litresOf(zero);
    for (int i = 0; i <= 10; ++i)
        calibration.points.push_back({litresOf(5.0 * i), Signal::of(0.5 + 0.3 * i), std::nullopt, Signal::of(0.01), 5});
    return calibration;
}

VehicleLog carWith(const std::vector<Calibration>& calibrations, const std::vector<Proof>& proofs, double surge = 0)
{
    VehicleLog log;
    log.vehicle.value.name = "Re-zeroed van";
    log.vehicle.value.capacity = litresOf(50);
    log.vehicle.value.surgeMargin[kMotorway] = litresOf(surge);
    for (const char* mode : {kTown, kMotorway})
        log.modes.push_back(noted(Mode{mode, std::nullopt}));
    for (const Calibration& each : calibrations)
        log.calibrations.push_back(noted(each));
    if (!calibrations.empty())
        log.calibration = log.calibrations.back();
    for (const Proof& each : proofs)
        log.proofs.push_back(noted(each));
    return log;
}

Proof proofOf(ProofKind kind, int day)
{
    Proof proof;
    proof.kind = kind;
    proof.time = onDayOf(day);
    return proof;
}

Proof drained(double litres)
{
    Proof proof = proofOf(ProofKind::drained, 20);
    proof.volume = {litresOf(litres), litresOf(0.2)};
    return proof;
}

Proof base(double litres)
{
    Proof proof = proofOf(ProofKind::base, 21);
    proof.volume = {litresOf(litres), litresOf(0.2)};
    return proof;
}

Proof driven(ProofKind kind, double km)
{
    Proof proof = proofOf(kind, 22);
    proof.distance = {Distance::fromKm(km), Distance::fromKm(0.5)};
    proof.mode = kMotorway;
    return proof;
}

// Judged by the mark that was moved on day 50, and as stated relative to that mark all along.
struct Compared {
    CarKnowledge moved, restated;

    bool isSame() const
    {
        const Estimate<Volume> one = moved.reserve.reserve(), other = restated.reserve.reserve();
        const bool counted = moved.proofFlags.empty() && moved.reserve.evidence().size() == restated.reserve.evidence().size();
        return counted && std::abs((one.mean - other.mean).litres()) < 1e-9
            && std::abs((one.sd - other.sd).litres()) < 1e-9;
    }
};

Compared compare(const std::vector<Proof>& then, const std::vector<Proof>& restated, double surge = 0)
{
    return {learn(carWith({zeroedAt(0, kBefore), zeroedAt(50, kSince)}, then)).value(),
            learn(carWith({zeroedAt(0, kSince)}, restated, surge)).value()};
}

} // namespace

class ZeroMarkTest : public QObject {
    Q_OBJECT

private slots:
    // Closed form: h litres from the mark of then to today's are h litres more that were drained or
    // poured, and h litres of the reserve that a drive past the mark of then did not begin with,
    // as a surge margin of h would keep them from it.
    void aMarkThatWasMovedLeavesTheReserveWhereItWas()
    {
        QVERIFY(compare({drained(5.4)}, {drained(5.4 + kMoved)}).isSame());
        QVERIFY(compare({base(4.7)}, {base(4.7 + kMoved)}).isSame());
        for (const ProofKind kind : {ProofKind::pastZero, ProofKind::stalled})
            QVERIFY(compare({driven(kind, 60)}, {driven(kind, 60)}, kMoved).isSame());
        QVERIFY(compare({drained(5.4), base(4.7), driven(ProofKind::pastZero, 60)},
                        {drained(5.4 + kMoved), base(4.7 + kMoved), driven(ProofKind::pastZero, 60)}, kMoved)
                    .isSame());
        // And it is no small thing: against today's mark the drive would say that there is less.
        const double right = compare({driven(ProofKind::stalled, 60)}, {}).moved.reserve.reserve().mean.litres();
        const double wrong = learn(carWith({zeroedAt(0, kSince)}, {driven(ProofKind::stalled, 60)})).value()
                                 .reserve.reserve().mean.litres();
        QVERIFY2(right - wrong > 0.25, qPrintable(QString("%1 %2").arg(right).arg(wrong)));
    }

    void theEvidenceSaysWhichMarkItWas()
    {
        const CarKnowledge car = compare({base(4.7)}, {}).moved;
        QVERIFY(english(car.reserve.evidence().back().text).find("at a zero mark 3.0 L lower than today's") != std::string::npos);
    }

    // A reading is what it is, and is read off the curve of its time.
    void whatWasDrainedFromAReadingIsReadByTheCalibrationOfThen()
    {
        Proof proof = drained(20.2);
        proof.signal = Signal::of(0.5 + 0.3 * 4); // 20 L since drained
        QVERIFY(compare({proof}, {proof}).isSame());
        Calibration other = zeroedAt(50, kSince); // another sender since
        for (CalibrationPoint& point : other.points)
            point.signal = Signal::of(point.signal.value() * 2);
        const CarKnowledge car = learn(carWith({zeroedAt(0, kBefore), other}, {proof})).value();
        QVERIFY(car.proofFlags.empty()); // by today's curve it would have been 6 L
        QVERIFY(std::abs(car.reserve.evidence().back().surprise) < 1.0);
    }

    void aMarkHoldsSinceItIsSaidTo()
    {
        Calibration late = zeroedAt(50, kSince);
        late.zeroSince = onDayOf(10); // zeroed long before it was calibrated anew
        const CarKnowledge moved = learn(carWith({zeroedAt(0, kBefore), late}, {base(8.1)})).value();
        const CarKnowledge restated = learn(carWith({zeroedAt(0, kSince)}, {base(8.1)})).value();
        QVERIFY((Compared{moved, restated}.isSame()));
    }

    // Nothing says how far the mark of then was from today's: before the first calibration's mark, before
    // a stated one, and where one of the two counts from another level.
    void aProofOfAMarkThatIsNotKnownIsNotUsedAndSaysSo()
    {
        const auto isRefused = [](const VehicleLog& log) {
            VehicleLog without = log;
            without.proofs.clear();
            const CarKnowledge car = learn(log).value(), bare = learn(without).value();
            return car.proofFlags.size() == 1
                && english(car.proofFlags[0].text).find("another zero mark was in force") != std::string::npos
                && car.reserve.reserve() == bare.reserve.reserve();
        };
        Calibration first = zeroedAt(0, kBefore);
        first.zeroSince = onDayOf(30);
        QVERIFY(isRefused(carWith({first}, {base(5.1)})));
        VehicleLog stated = carWith({}, {driven(ProofKind::pastZero, 60)});
        stated.vehicle.value.zeroMark = litresOf(6);
        QVERIFY(!isRefused(stated)); // as far back as the log
        stated.vehicle.value.zeroSince = onDayOf(30);
        QVERIFY(isRefused(stated));
        Calibration shaped;
        shaped.time = onDayOf(0);
        shaped.zeroMark = litresOf(6);
        shaped.shape = StatedShape{{TankForm::roundedBox, Distance::fromMetres(0.5), Distance::fromMetres(0.2),
                                    Distance::fromMetres(0.5), Distance(), 0},
                                   Signal::of(0.5), Signal::of(3.5)};
        QVERIFY(isRefused(carWith({shaped, zeroedAt(50, kSince)}, {base(5.1)})));
        Proof left = proofOf(ProofKind::drained, 20); // told by no gauge
        left.leftBehind = {litresOf(1.2), litresOf(0.1)};
        QVERIFY(!isRefused(carWith({first}, {left})));
    }

    void theFirstCalibrationHoldsAsFarBackAsTheLog()
    {
        const CarKnowledge before = learn(carWith({zeroedAt(40, kBefore)}, {base(5.1)})).value();
        const CarKnowledge after = learn(carWith({zeroedAt(0, kBefore)}, {base(5.1)})).value();
        QVERIFY((Compared{before, after}.isSame()));
    }
};

UNDERMARK_TEST(ZeroMarkTest)
#include "zero_mark_test.moc"
