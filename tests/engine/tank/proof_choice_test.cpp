// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/proof_choice.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

namespace {

Instant onDay(int day)
{
    return Instant{std::chrono::hours(24) * (20000 + day)};
}

Proof drivePastZero(int day, double km, const char* mode, ProofKind kind = ProofKind::pastZero)
{
    Proof proof;
    proof.time = onDay(day);
    proof.kind = kind;
    proof.distance = {Distance::fromKm(km), Distance::fromKm(1.0)};
    proof.mode = mode;
    return proof;
}

// Town burns 0.1 L/km, everything else half of it.
std::vector<ProofUse> uses(const std::vector<Proof>& proofs, std::vector<Instant> fills)
{
    return usesOfProofs(proofs, std::move(fills), [](const Proof& proof) {
        return proof.distance->mean.km() * Volume::fromLitres(proof.mode == "town" ? 0.1 : 0.05);
    });
}

} // namespace

class ProofChoiceTest : public QObject {
    Q_OBJECT
private slots:
    void oneDriveUnderFiveNamesCountsOnceAndAsTheOneThatBurntLeast()
    {
        const auto found = uses({drivePastZero(1, 55, "town"), drivePastZero(1, 55, "open-road"),
                                 drivePastZero(2, 55, "town"), drivePastZero(1, 55, "town"),
                                 drivePastZero(3, 20, "open-road")},
                                {onDay(0), onDay(9)});
        QVERIFY(found[1] == ProofUse::counts);
        for (const std::size_t i : {0U, 2U, 3U, 4U})
            QVERIFY(found[i] == ProofUse::sameDrive);
    }

    void aStallSaysWhereTheDriveThatWentBeforeItEnded()
    {
        const auto found = uses({drivePastZero(1, 60, "town"),
                                 drivePastZero(1, 50, "town", ProofKind::stalled)}, {onDay(0)});
        QVERIFY(found[0] == ProofUse::sameDrive && found[1] == ProofUse::counts);
    }

    void ofDrivesOfOtherTanksTheOneThatBurntMostCountsAndEveryStall()
    {
        const auto found = uses({drivePastZero(1, 55, "open-road"), drivePastZero(11, 40, "town"),
                                 drivePastZero(21, 30, "town"),
                                 drivePastZero(31, 70, "town", ProofKind::stalled)},
                                {onDay(10), onDay(20), onDay(30)});
        QVERIFY(found[0] == ProofUse::covered);
        QVERIFY(found[1] == ProofUse::counts);
        QVERIFY(found[2] == ProofUse::covered);
        QVERIFY(found[3] == ProofUse::counts);
    }

    void otherProofsAllCount()
    {
        Proof base;
        base.volume = {Volume::fromLitres(5), Volume::fromLitres(0.2)};
        for (const ProofUse use : uses({base, base}, {}))
            QVERIFY(use == ProofUse::counts);
    }
};

UNDERMARK_TEST(ProofChoiceTest)
#include "proof_choice_test.moc"
