// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tank/hidden_reserve.h"
#include "engine/tank/next_proof.h"
#include "tests/support/test_main.h"

#include <Eigen/Dense>
#include <QTest>
#include <random>

using namespace undermark;

namespace {

Estimate<Volume> litres(double mean, double sd)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(sd)};
}

Estimate<Consumption> per100(double mean, double sd)
{
    return {Consumption::fromLitresPer100Km(mean), Consumption::fromLitresPer100Km(sd)};
}

// Capacity known only through the calibration: offset 2 L, pours of q0 and span.
ReservePrior calibrated(double offsetSd = 2.0, double zeroSd = 0.0)
{
    ReservePrior prior;
    prior.leftBehind = litres(1.5, offsetSd);
    prior.unusable = litres(1.5, 0.0);
    const double fullSd = std::hypot(zeroSd, 0.9);
    prior.calibration = CalibrationSummary{litres(6.0, zeroSd), litres(54.0, fullSd), {}};
    prior.meterScaleSd = Fraction::fromRatio(0.005);
    return prior;
}

// Reserve r, nothing else in doubt: for closed forms.
ReservePrior onlyReserve(double mean, double sd)
{
    ReservePrior prior;
    prior.leftBehind = litres(1.5, 0);
    prior.unusable = litres(1.5, 0);
    prior.statedReserve = litres(mean, sd);
    prior.statedCapacity = litres(60, 1);
    return prior;
}

FullFill fillFromZero(double shown) { return {{}, litres(shown, 0.5), litres(0, 0.8)}; }

Proof driven(ProofKind kind, double km, double kmSd = 0.0)
{
    Proof proof;
    proof.kind = kind;
    proof.distance = {Distance::fromKm(km), Distance::fromKm(kmSd)};
    return proof;
}

ProofContext at(Estimate<Consumption> rate, double crossingSd = 0.5)
{
    ProofContext context;
    context.rate = rate;
    context.crossingSd = Volume::fromLitres(crossingSd);
    return context;
}

double leastEigenvalue(const HiddenReserve& state)
{
    using Matrix = Eigen::Matrix<double, 5, 5>;
    const Matrix p = Eigen::Map<const Matrix>(state.covariance().data());
    return Eigen::SelfAdjointEigenSolver<Matrix>(p).eigenvalues()[0];
}

} // namespace

class HiddenReserveTest : public QObject {
    Q_OBJECT

    static void near(double actual, double expected, double tolerance)
    {
        QVERIFY2(std::abs(actual - expected) <= tolerance,
                 qPrintable(QString("%1 instead of %2")
                                .arg(actual, 0, 'g', 14)
                                .arg(expected, 0, 'g', 14)));
    }

    static void near(Estimate<Volume> actual, double mean, double sd, double tolerance)
    {
        near(actual.mean.litres(), mean, tolerance);
        near(actual.sd.litres(), sd, tolerance);
    }

private slots:
    // One Gaussian state, the usable capacity known independently: prior N(6, 2^2), capacity
    // 55, fills from a zero reading with error variance .8^2 + .5^2; calculated apart from
    // the project.
    void fillsMeasureTheReserveWhereTheCapacityIsKnownFromElsewhere()
    {
        ReservePrior prior;
        prior.unusable = litres(0, 0);
        prior.leftBehind = litres(1.5, 0.7);
        prior.statedReserve = litres(6, 2);
        prior.statedCapacity = litres(55, 0);
        HiddenReserve state = HiddenReserve::fromPrior(prior);
        state = state.with(fillFromZero(47.2));
        near(state.reserve(), 7.472392638, 0.853238747, 5e-10);
        state = state.with(fillFromZero(48.9));
        near(state.reserve(), 6.854893138, 0.632811144, 5e-10);
        state = state.with(fillFromZero(47.8));
        near(state.reserve(), 6.961986036, 0.525531243, 5e-10);
        near(state.usableCapacity(), 55, 0, 1e-9);
    }

    // The same fills must leave the reserve's sd at 2.00.
    void fillsDoNotTouchTheReserveWhereTheCapacityCameFromTheCalibration()
    {
        for (const double zeroSd : {0.0, 0.3}) {
            HiddenReserve state = HiddenReserve::fromPrior(calibrated(2.0, zeroSd));
            const double sd = std::hypot(2.0, zeroSd);
            near(state.reserve(), 6, sd, 1e-12);
            for (const double shown : {47.2, 48.9, 47.8})
                state = state.with(fillFromZero(shown));
            near(state.reserve(), 6, sd, 1e-12);
            QVERIFY(state.zeroToFull().sd < Volume::fromLitres(0.9));
            // Nor after a drive past zero has tied the offset to q0.
            state = state.with(driven(ProofKind::pastZero, 80), at(per100(8, 1)))->reserve;
            const Estimate<Volume> proven = state.reserve();
            near(state.with(fillFromZero(49)).reserve(), proven.mean.litres(), proven.sd.litres(),
                 1e-12);
        }
    }

    void fillsDoNotTouchTheReserveWhateverCovarianceTheCalibrationStates()
    {
        ReservePrior prior = calibrated(2.0, 0.5);
        prior.calibration->covarianceL2 = 0.0;
        const HiddenReserve before = HiddenReserve::fromPrior(prior);
        near(before.zeroToFull().sd.litres(), std::sqrt(0.81 + 0.25 + 0.25), 1e-12);
        near(before.with(fillFromZero(47)).reserve(), 6, std::hypot(2.0, 0.5), 1e-12);
    }

    // Meter, click and reading have a part that a thousand fills do not average.
    void theSharedErrorOfFillsDoesNotFallWithTheirNumber()
    {
        HiddenReserve state = HiddenReserve::fromPrior(calibrated());
        for (int i = 0; i < 1000; ++i)
            state = state.with(fillFromZero(48));
        const double sharedL = 48 * 0.005;
        const double floorL = 0.9 * sharedL / std::hypot(0.9, sharedL);   // limit n -> infinity
        near(state.zeroToFull().sd.litres(), floorL, 2e-3);
        QVERIFY(state.zeroToFull().sd.litres() >= floorL);
    }

    // To zero it is the curve's sd .9 alone, whatever the offset's (1.2).
    void toTheZeroMarkTheOffsetCancels()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(calibrated(1.2));
        const Estimate<Volume> level = litres(26, 0.9);
        near(state.toZero(level), 20, 0.9, 1e-12);
        near(state.toDry(level), 26, 1.5, 1e-12);   // sqrt(.9^2 + 1.2^2)
        near(state.toDry(level, Volume::fromLitres(2)), 24, 1.5, 1e-12);
        near(state.usableAt(litres(20, 0.9)), 26, 1.5, 1e-12);
    }

    void aBasePouredAnewShiftsZeroAndEveryLevelWithIt()
    {
        const HiddenReserve before = HiddenReserve::fromPrior(calibrated(1.2, 0.4));
        Proof base;
        base.volume = litres(6.5, 0.3);
        const HiddenReserve after = before.with(base, {})->reserve;
        near(after.reserve().mean.litres(), 6 + 0.5 * 0.16 / 0.25, 1e-12);
        near(after.toZero(litres(26, 0.9)), 20, 0.9, 1e-12);
        near(after.zeroToFull().mean.litres(), 48, 1e-12);
    }

    void theOrderOfLinearEvidenceDoesNotMatter()
    {
        ReservePrior prior = calibrated(0.7, 0.4);
        prior.unusable = litres(1.2, 0.7);
        Proof base, drained;
        base.volume = litres(6.4, 0.3);
        drained.kind = ProofKind::drained;
        drained.volume = litres(5.8, 0.4);
        drained.leftBehind = litres(1.9, 0.2);
        const FullFill fromHalf{{}, litres(22.5, 1), litres(24, 0.6)};
        const HiddenReserve start = HiddenReserve::fromPrior(prior);
        const HiddenReserve one = start.with(base, {})->reserve.with(fillFromZero(47))
                                      .with(fromHalf).with(drained, {})->reserve;
        const HiddenReserve other = start.with(drained, {})->reserve.with(fromHalf)
                                        .with(fillFromZero(47)).with(base, {})->reserve;
        for (std::size_t i = 0; i < HiddenReserve::kSize; ++i)
            near(one.mean()[i], other.mean()[i], 1e-11);
        for (std::size_t i = 0; i < one.covariance().size(); ++i)
            near(one.covariance()[i], other.covariance()[i], 1e-11);
    }

    // N(3, 1.5^2) given r > 2.5, the limit of the soft likelihood: closed form of the truncated
    // normal, calculated apart from the project.
    void aDrivePastZeroOfKnownRateCutsTheReserveBelow()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(onlyReserve(3, 1.5));
        const auto outcome = state.with(driven(ProofKind::pastZero, 50), at(per100(5, 0), 0));
        QVERIFY(outcome.has_value());
        near(outcome->reserve.reserve(), 3.897735417, 0.997598823, 5e-10);
    }

    // Outside: brute-force sums over reserve and rate, with the soft likelihood.
    void aDrivePastZeroMatchesTheMomentsOfReserveAndRate()
    {
        const double r0 = 5, rSd = 1.5, c0 = 0.08, cSd = 0.01, km = 60, margin = 0.5;
        const double s = std::sqrt(0.25 + 0.001 * km + (c0 * c0 + cSd * cSd) * 9);
        double w = 0, wr = 0, wrr = 0, wc = 0, wcc = 0;
        for (double x = -8; x <= 8; x += 0.02) {
            for (double y = -8; y <= 8; y += 0.02) {
                const double r = r0 + rSd * x, c = c0 + cSd * y;
                const double z = (r - margin - c * km) / s;
                const double p = std::exp(-0.5 * (x * x + y * y)) * std::erfc(-z / std::sqrt(2.0));
                w += p, wr += p * r, wrr += p * r * r, wc += p * c, wcc += p * c * c;
            }
        }
        ProofContext context = at(per100(100 * c0, 100 * cSd));
        context.routeVarianceL2PerKm = 0.001;
        context.surgeMargin = Volume::fromLitres(margin);
        const auto outcome = HiddenReserve::fromPrior(onlyReserve(r0, rSd))
                                 .with(driven(ProofKind::pastZero, km, 3), context);
        QVERIFY(outcome.has_value() && outcome->rate);
        near(outcome->reserve.reserve(), wr / w, std::sqrt(wrr / w - wr / w * wr / w), 1e-8);
        near(outcome->rate->mean.litresPerKm(), wc / w, 1e-9);
        near(outcome->rate->sd.litresPerKm(), std::sqrt(wcc / w - wc / w * wc / w), 1e-8);
    }

    // Closed form: r - c d = 0 with noise; gain on r and on c.
    void aStallMeasuresTheReserveThroughTheRate()
    {
        const auto outcome = HiddenReserve::fromPrior(onlyReserve(5, 1.5))
                                 .with(driven(ProofKind::stalled, 40), at(per100(8, 1)));
        QVERIFY(outcome.has_value() && outcome->rate);
        const double total = 2.25 + 40 * 40 * 1e-4 + 0.25;
        near(outcome->reserve.reserve(), 5 - 1.8 * 2.25 / total,
             std::sqrt(2.25 - 2.25 * 2.25 / total), 1e-12);
        near(outcome->rate->mean.litresPerKm(), 0.08 + 1.8 * 40 * 1e-4 / total, 1e-12);
    }

    void aSurgeMarginMeansThatTheStallLeftFuelBehind()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(onlyReserve(5, 1.5));
        ProofContext stage = at(per100(8, 1));
        const auto level = state.with(driven(ProofKind::stalled, 40), stage);
        stage.surgeMargin = Volume::fromLitres(1);
        const auto surging = state.with(driven(ProofKind::stalled, 40), stage);
        QVERIFY(surging->reserve.reserve().mean > level->reserve.reserve().mean);
    }

    void drivesMoveTheOffsetInTheRightDirection()
    {
        ReservePrior prior = calibrated(0.7);
        prior.unusable = litres(1.5, 0.7);
        const HiddenReserve state = HiddenReserve::fromPrior(prior);   // reserve 6 L
        const auto rate = per100(8, 0.8);
        const auto early = state.with(driven(ProofKind::stalled, 30), at(rate));
        QVERIFY(early->reserve.offset().mean < state.offset().mean);
        QVERIFY(early->rate->mean > rate.mean);
        const auto late = state.with(driven(ProofKind::stalled, 110), at(rate));
        QVERIFY(late->reserve.offset().mean > state.offset().mean);
        const auto far = state.with(driven(ProofKind::pastZero, 85), at(rate));
        QVERIFY(far->reserve.offset().mean > state.offset().mean);
        QVERIFY(far->reserve.reserve().sd < state.reserve().sd);
        QVERIFY(far->rate->mean < rate.mean);
        const auto near10 = state.with(driven(ProofKind::pastZero, 10), at(rate));
        near(near10->reserve.reserve().mean.litres(), state.reserve().mean.litres(), 1e-3);
    }

    void theCovarianceStaysPositiveSemidefinite()
    {
        std::mt19937 random(7);
        std::uniform_real_distribution<double> u(0, 1);
        ReservePrior prior = calibrated(0.7, 0.2);
        prior.unusable = litres(1.5, 0.7);
        HiddenReserve state = HiddenReserve::fromPrior(prior);
        for (int i = 0; i < 400; ++i) {
            const double km = 20 + 90 * u(random);
            if (i % 4 == 0)
                state = state.with(fillFromZero(46 + 4 * u(random)));
            else if (i % 4 == 1)
                state = state.with(FullFill{{}, litres(46 + 4 * u(random), i % 8 == 1 ? 1 : 0), {}});
            else if (i % 4 == 2)
                state = state.with(driven(ProofKind::pastZero, km), at(per100(8, 1)))->reserve;
            else
                state = state.with(driven(ProofKind::stalled, km), at(per100(8, 1), 0))->reserve;
            QVERIFY(leastEigenvalue(state) > -1e-12);
            QVERIFY(std::isfinite(state.reserve().mean.litres()));
        }
    }

    void evidenceThatContradictsEverythingIsFiniteAndSaysSo()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(onlyReserve(5, 1));
        const auto outcome = state.with(driven(ProofKind::pastZero, 2000), at(per100(8, 0.5)));
        const auto after = outcome->reserve.reserve();
        QVERIFY(isFinite(after.mean) && after.mean > Volume::fromLitres(5));
        QVERIFY(after.sd > Volume() && after.sd < Volume::fromLitres(1));
        QVERIFY(outcome->reserve.evidence().back().surprise < -3);
    }

    // Two exact and different answers: the first stands, nothing explodes.
    void exactEvidenceGivenTwiceIsLearntOnce()
    {
        Proof first, second;
        first.volume = litres(6.5, 0);
        second.volume = litres(7.5, 0);
        const HiddenReserve start = HiddenReserve::fromPrior(calibrated(0.7, 0.3));
        const HiddenReserve once = start.with(first, {})->reserve;
        const HiddenReserve twice = once.with(second, {})->reserve;
        near(twice.reserve(), once.reserve().mean.litres(), once.reserve().sd.litres(), 1e-12);
        near(twice.reserve().mean.litres(), 6.5, 1e-12);
    }

    void evidenceIsListedWithWhatEachItemChanged()
    {
        Proof far = driven(ProofKind::pastZero, 80);
        far.mode = kTown;
        far.time = Instant(std::chrono::seconds(1000));
        const HiddenReserve state = HiddenReserve::fromPrior(calibrated());
        const HiddenReserve after =
            state.with(fillFromZero(48)).with(far, at(per100(8, 1)))->reserve;
        QVERIFY(state.evidence().empty());
        QCOMPARE(after.evidence().size(), std::size_t(2));
        const EvidenceItem& fill = after.evidence()[0];
        const EvidenceItem& drive = after.evidence()[1];
        QCOMPARE(fill.kind, EvidenceKind::fill);
        QCOMPARE(english(fill.text), std::string("filled up with 48.0 L from the zero mark"));
        QCOMPARE(fill.before, state.reserve());
        QCOMPARE(drive.before, fill.after);
        QCOMPARE(drive.after, after.reserve());
        QCOMPARE(english(drive.text), std::string("80 km past zero, still running (town)"));
        QCOMPARE(drive.time, std::optional(far.time));
    }

    void aDrainFromAReadingTakesOffTheLitresAboveZero()
    {
        Proof proof;
        proof.kind = ProofKind::drained;
        proof.volume = litres(16, 0.3);
        proof.signal = Signal::of(1.2);
        const HiddenReserve state = HiddenReserve::fromPrior(calibrated(1, 1));
        QCOMPARE(state.with(proof, {}).error().code, ErrorCode::badInput);
        ProofContext context;
        context.aboveZero = litres(9.5, 0.4);
        const auto outcome = state.with(proof, context);
        near(outcome->reserve.reserve().mean.litres(), 6 + 0.5 / 1.25, 1e-12);
    }

    void aProofThatLacksItsFiguresIsRefused()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(calibrated());
        for (const ProofKind kind : {ProofKind::drained, ProofKind::base, ProofKind::stalled,
                                     ProofKind::pastZero}) {
            Proof proof;
            proof.kind = kind;
            const auto outcome = state.with(proof, at(per100(8, 1)));
            QVERIFY(!outcome);
            QCOMPARE(outcome.error().code, ErrorCode::badInput);
        }
        QVERIFY(!state.with(driven(ProofKind::stalled, 30), {}));
        QVERIFY(!state.with(driven(ProofKind::stalled, -1), at(per100(8, 1))));
        QVERIFY(!state.with(driven(ProofKind::stalled, 30, NAN), at(per100(8, 1))));
        QVERIFY(!state.with(driven(ProofKind::stalled, 30), at(per100(0, 1))));
    }

    // Common practice, no source: one to two litres stay; zero at about a tenth.
    void withoutAnythingStatedTheDefaultsAreWide()
    {
        Vehicle car;
        car.capacity = Volume::fromLitres(50);
        const HiddenReserve state = HiddenReserve::fromPrior(priorFor(car, {}));
        near(state.reserve(), 5, 2.5, 1e-12);
        near(state.offset(), 0, 0.8, 1e-12); // starves about where the pump spits
        near(state.usableCapacity().mean.litres(), 48.5, 1e-12);
        near(state.zeroToFull().mean.litres(), 43.5, 1e-12);
        car.zeroMark = Volume::fromLitres(8);
        near(HiddenReserve::fromPrior(priorFor(car, {})).reserve(), 8, 0.8, 1e-12);
    }

    // A kart of 6 L has not a litre and a half under its pump, a lorry of 400 has more: the
    // floor of an eightfold tank of the same shape is fourfold.
    void whatStaysBehindGrowsWithTheTanksFloor()
    {
        const auto leftBehind = [](double capacity) {
            Vehicle car;
            car.capacity = Volume::fromLitres(capacity);
            const HiddenReserve state = HiddenReserve::fromPrior(priorFor(car, {}));
            near(state.offset().sd.litres(), 0.8 / 1.5 * state.leftBehind().mean.litres(), 1e-12);
            return state.leftBehind();
        };
        near(leftBehind(400), 4 * 1.5, 4 * 0.7, 1e-12);
        near(leftBehind(6.25), 1.5 / 4, 0.7 / 4, 1e-12);
        Vehicle stated;
        stated.capacity = Volume::fromLitres(400);
        stated.leftBehind = litres(2, 0.3);
        near(HiddenReserve::fromPrior(priorFor(stated, {})).leftBehind(), 2, 0.3, 1e-12);
    }

    void withACalibrationTheStatedCapacityIsNotUsed()
    {
        Vehicle car;
        car.capacity = Volume::fromLitres(99);
        car.leftBehind = litres(2, 0.3);
        car.unusable = litres(0.5, 0.4);
        const auto prior = priorFor(car, CalibrationSummary{litres(6, 0.3), litres(54, 0.9), {}});
        const HiddenReserve state = HiddenReserve::fromPrior(prior);
        near(state.reserve(), 7.5, std::sqrt(0.09 + 0.09 + 0.16), 1e-12);
        near(state.usableCapacity(), 55.5, std::sqrt(0.81 + 0.25), 1e-12);
    }

    void theDistancePastZeroIsTheRangeOfTheReserve()
    {
        const HiddenReserve state = HiddenReserve::fromPrior(onlyReserve(6, 1));
        const RangeLaw law = *RangeLaw::make(litres(30, 1), per100(8, 0.5));
        const RangeLaw expected = *RangeLaw::make(litres(5, 1), per100(8, 0.5));
        const Distances past = distances(law.withFuel(state.usableAt({}, Volume::fromLitres(1))));
        near(past.p99.km(), distances(expected).p99.km(), 1e-7);
        near(past.p50.km(), 5 / 0.08, 1e-7);
    }

    void theNextProofIsTheSafestThatHelps()
    {
        Vehicle car;
        car.capacity = Volume::fromLitres(60);
        car.unusable = litres(1.5, 0.7); // stated apart: what is left behind tells of the reserve
        const auto summary = CalibrationSummary{litres(6, 0.1), litres(54, 0.7), {}};
        const HiddenReserve state = HiddenReserve::fromPrior(priorFor(car, summary));
        const auto next = suggestNextProof(state);
        QVERIFY(next.has_value());
        QCOMPARE(next->kind, NextProofKind::measureLeftBehind);
        // The sd promised is the sd the proof then leaves, whatever it finds.
        Proof proof;
        proof.kind = ProofKind::drained;
        proof.leftBehind = litres(2.3, 0.2);
        const HiddenReserve after = state.with(proof, {})->reserve;
        near(after.reserve().sd.litres(), next->sdAfter.litres(), 1e-12);
        QVERIFY(english(next->caution).find("Do not drive until it stops") != std::string::npos);
        QVERIFY(english(next->caution).find("qualified") != std::string::npos);
    }

    void whereNothingMoreCanBeLearntNoProofIsSuggested()
    {
        ReservePrior prior = calibrated(0.05, 0.05);
        prior.unusable = litres(1.5, 0.7);
        QVERIFY(!suggestNextProof(HiddenReserve::fromPrior(prior)));
        QVERIFY(!suggestNextProof(HiddenReserve::fromPrior(onlyReserve(6, 0))));
    }
};

UNDERMARK_TEST(HiddenReserveTest)
#include "hidden_reserve_test.moc"
