// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/car_knowledge.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

Instant dayOfProof(int day)
{
    return Instant{std::chrono::hours(24) * (20000 + day)};
}

// A car with nothing but its tank: a tenth of 55 L hidden, give or take half of that.
VehicleLog bareTank()
{
    VehicleLog log;
    log.vehicle.value.name = "Bare tank";
    log.vehicle.value.capacity = Volume::fromLitres(55);
    log.vehicle.value.zeroMark = Volume::fromLitres(6);
    for (const char* mode : kStandardModes)
        log.modes.push_back({{}, {}, Mode{mode, std::nullopt}});
    return log;
}

Proof pastZeroProof(int day, double km, const char* mode)
{
    Proof proof;
    proof.time = dayOfProof(day);
    proof.kind = ProofKind::pastZero;
    proof.distance = {Distance::fromKm(km), Distance::fromKm(1)};
    proof.mode = mode;
    return proof;
}

Proof drainedProof(int day, double litresOut)
{
    Proof proof;
    proof.time = dayOfProof(day);
    proof.kind = ProofKind::drained;
    proof.volume = {Volume::fromLitres(litresOut), Volume::fromLitres(0.2)};
    return proof;
}

CarKnowledge afterProofs(const std::vector<Proof>& proofs)
{
    VehicleLog log = bareTank();
    for (const Proof& proof : proofs)
        log.proofs.push_back({{}, {}, proof});
    return learn(std::move(log)).value();
}

} // namespace

class WeighProofsTest : public QObject {
    Q_OBJECT
private slots:
    void oneDriveNotedUnderManyModesMovesTheReserveOnce()
    {
        const CarKnowledge once = afterProofs({pastZeroProof(1, 60, kMotorway)});
        std::vector<Proof> many;
        for (const char* mode : kStandardModes)
            many.push_back(pastZeroProof(1, 60, mode));
        const CarKnowledge car = afterProofs(many);
        QCOMPARE(car.proofFlags.size(), many.size() - 1);
        QVERIFY(car.reserve.reserve().mean <= once.reserve.reserve().mean);
        QCOMPARE(car.reserve.evidence().size(), once.reserve.evidence().size());
    }

    void aProofAgainstAllThatWasKnownWaits()
    {
        const CarKnowledge before = afterProofs({drainedProof(1, 6.0)});
        const CarKnowledge car = afterProofs({drainedProof(1, 6.0), drainedProof(2, 16.0)});
        QCOMPARE(car.proofFlags.size(), std::size_t(1));
        QCOMPARE(car.proofFlags[0].proof, std::size_t(1));
        QCOMPARE(car.reserve.reserve().mean.litres(), before.reserve.reserve().mean.litres());
        QCOMPARE(car.reserve.reserve().sd.litres(), before.reserve.reserve().sd.litres());
    }

    void untilAnotherSaysTheSame()
    {
        const CarKnowledge before = afterProofs({drainedProof(1, 6.0)});
        const CarKnowledge car = afterProofs({drainedProof(1, 6.0), drainedProof(2, 16.0), drainedProof(3, 16.1)});
        QVERIFY(car.reserve.reserve().mean > before.reserve.reserve().mean);
        // The same entry twice is no confirmation.
        const CarKnowledge twice = afterProofs({drainedProof(1, 6.0), drainedProof(2, 16.0), drainedProof(2, 16.0)});
        QCOMPARE(twice.reserve.reserve().mean.litres(), before.reserve.reserve().mean.litres());
        QCOMPARE(twice.proofFlags.size(), std::size_t(2));
    }
};

UNDERMARK_TEST(WeighProofsTest)
#include "weigh_proofs_test.moc"
