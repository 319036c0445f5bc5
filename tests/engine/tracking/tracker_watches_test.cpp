// SPDX-License-Identifier: GPL-3.0-or-later
//
// The small types that the level tracker is made of, each by itself: a 50 L range.
#include "engine/tracking/block_reading.h"
#include "engine/tracking/reading_jump.h"
#include "engine/tracking/recent_count.h"
#include "engine/tracking/sender_fault.h"
#include "engine/tracking/shown_level.h"
#include "engine/tracking/signal_watch.h"
#include "engine/tracking/source_watch.h"
#include "engine/tracking/standing_rise.h"
#include "engine/tracking/stillness.h"
#include "engine/tracking/stop_notice.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

namespace {

constexpr double kNoiseL2 = 0.04;

BlockSummary blockAt(double levelL, BlockKind kind = BlockKind::exact)
{
    return {.kind = kind, .startS = 0.0, .seconds = 29.0, .levelL = levelL, .sdL = 0.5,
            .curveSdL = 0.3, .instants = 30};
}

BlockDrive halfMinute(bool moved)
{
    return {.seconds = 30.0, .samples = 30, .moved = moved};
}

Estimate<Volume> litres(double mean, double sd)
{
    return {Volume::fromLitres(mean), Volume::fromLitres(sd)};
}

Moment at(double levelL, double usedL = 0.0)
{
    return {FuelFilter(litres(levelL, 0.5), {Fraction::fromRatio(1.0), Fraction::fromRatio(0.1)}),
            0.0, usedL, 0.0};
}

TrackerSettings fifty()
{
    TrackerSettings settings;
    settings.highest = Volume::fromLitres(50.0);
    return settings;
}

// Blocks at `levelL` against a count of 30 L until the jump is more than waited for.
ReadingJump::Verdict jumpTo(double levelL, ReadingJump::Chance chance, int& blocks, bool moved = true)
{
    ReadingJump jump(fifty());
    for (blocks = 1; blocks < 20; ++blocks) {
        const Moment now = at(30.0);
        const BlockSummary block = blockAt(levelL);
        const auto verdict = jump.add(block, compare(now.filter, block, kNoiseL2), kNoiseL2,
                                      halfMinute(moved), now, chance);
        if (verdict != ReadingJump::Verdict::waiting)
            return verdict;
    }
    return ReadingJump::Verdict::waiting;
}

} // namespace

class TrackerWatchesTest : public QObject {
    Q_OBJECT
private slots:
    void aRiseAtAHaltIsHeldBackWhileItFlowsAndThenMeasured()
    {
        StandingRise rise(50.0);
        using Rise = StandingRise::Rise;
        for (const double level : {20.0, 20.1, 20.0})
            QCOMPARE(int(rise.add(blockAt(level), halfMinute(false)).verdict), int(Rise::none));
        QCOMPARE(int(rise.add(blockAt(24.0), halfMinute(false)).verdict), int(Rise::flowing));
        QCOMPARE(int(rise.add(blockAt(28.0), halfMinute(false)).verdict), int(Rise::flowing));
        const StandingRise::Seen seen = rise.add(blockAt(28.1), halfMinute(false));
        QCOMPARE(int(seen.verdict), int(Rise::risen));
        QVERIFY(std::abs(seen.litres - 8.1) < 1e-9);   // from the last steady block
        // The same rise while the car moves, or found already, is none.
        QCOMPARE(int(rise.add(blockAt(28.1), halfMinute(false)).verdict), int(Rise::none));
        for (const double level : {20.0, 20.0, 20.0, 28.0, 28.0, 28.0})
            QCOMPARE(int(rise.add(blockAt(level), halfMinute(true)).verdict), int(Rise::none));
    }

    void aGaugeThatSettlesIsNoRise()
    {
        // From the drive or from being switched on: each step a part of what is left.
        for (const double keeps : {0.2, 0.5, 0.8, 0.95}) {
            StandingRise rise(50.0);
            double missing = 12.0;
            for (int i = 0; i < 40; ++i, missing *= keeps)
                QCOMPARE(int(rise.add(blockAt(30.0 - missing), halfMinute(false)).verdict),
                         int(StandingRise::Rise::none));
        }
    }

    void aRiseThatOnlyComesBackIsTold()
    {
        RecentCount count;
        Moment now = at(30.0);
        count.add(now);
        for (int i = 1; i <= 20; ++i) {   // ten minutes of a filter that followed a dip
            now = at(26.0, 0.01 * i);
            now.timeS = 30.0 * i;
            count.add(now);
        }
        QVERIFY(std::abs(count.levelL(now) - 29.8) < 1e-9);   // 30 L less what was burnt
        QVERIFY(count.comesBack(26.0, 29.8, now));
        QVERIFY(!count.comesBack(29.8, 33.8, now));
        // Believed after twenty minutes, or once the level was set on purpose.
        Moment later = now;
        for (int i = 21; i <= 62; ++i) {
            later.timeS = 30.0 * i;
            count.add(later);
        }
        QVERIFY(!count.comesBack(26.0, 29.8, later));
        count.restart(now);
        QVERIFY(!count.comesBack(26.0, 29.8, now));
    }

    void aJumpIsFuelAWireAShiftOrNothingByWhatMayHaveHappened()
    {
        using Verdict = ReadingJump::Verdict;
        int blocks = 0;
        QCOMPARE(int(jumpTo(30.5, {}, blocks)), int(Verdict::none));
        QCOMPARE(int(jumpTo(40.0, {.ofFuel = true}, blocks)), int(Verdict::fuel));
        QCOMPARE(blocks, 3);
        QCOMPARE(int(jumpTo(40.0, {}, blocks)), int(Verdict::shifted));
        QCOMPARE(blocks, 5);
        QCOMPARE(int(jumpTo(20.0, {.afterGap = true, .ofFuel = true}, blocks)), int(Verdict::taken));
        QCOMPARE(int(jumpTo(50.0, {}, blocks)), int(Verdict::open));
        QCOMPARE(blocks, 2);
        QCOMPARE(int(jumpTo(0.0, {}, blocks)), int(Verdict::shortCircuit));
        // With the car standing the key may be off: no hurry.
        QCOMPARE(int(jumpTo(0.0, {}, blocks, false)), int(Verdict::shortCircuit));
        QCOMPARE(blocks, 6);
    }

    void aReadingThatComesBackWasNoJump()
    {
        ReadingJump jump(fifty());
        const Moment now = at(30.0);
        const auto add = [&](double level) {
            const BlockSummary block = blockAt(level);
            return jump.add(block, compare(now.filter, block, kNoiseL2), kNoiseL2, halfMinute(true),
                            now, {});
        };
        for (int i = 0; i < 10; ++i) {
            for (int far = 0; far < 4; ++far)
                QCOMPARE(int(add(38.0)), int(ReadingJump::Verdict::waiting));
            QCOMPARE(int(add(30.0)), int(ReadingJump::Verdict::none));
        }
    }

    void aReadingThatStandsIsStuckOnceMoreIsBurntThanItNeedNotMoveFor()
    {
        const auto burntUntilStuck = [](const BlockSummary& block) {
            Stillness still(0.0, 50.0);
            ReadingNoise noise(50.0, Seconds(4.0));
            double used = 0.0;
            while (used < 40.0
                   && !still.add(block, true, at(block.levelL - used, used), noise, false))
                used += 0.05;
            return used;
        };
        const double plain = burntUntilStuck(blockAt(30.0));
        QVERIFY2(plain > 1.6 && plain < 3.0, qPrintable(QString::number(plain)));
        // A flat piece of the curve is on top of it.
        BlockSummary flat = blockAt(30.0);
        flat.flatL = 4.0;
        const double onFlat = burntUntilStuck(flat);
        QVERIFY2(onFlat > plain + 2.0 && onFlat < plain + 6.0, qPrintable(QString::number(onFlat)));
        // On the lower stop nothing need move, ever.
        QVERIFY(burntUntilStuck(blockAt(2.0, BlockKind::atMost)) >= 40.0);
    }

    void aReadingThatFollowsIsNeverStuck()
    {
        Stillness still(0.0, 50.0);
        ReadingNoise noise(50.0, Seconds(4.0));
        for (double used = 0.0; used < 40.0; used += 0.05) {
            const Moment now = at(45.0 - used, used);
            QVERIFY(!still.add(blockAt(45.0 - used), true, now, noise, false));
        }
    }

    void aWireIsTakenBackWhereItAgreesAShiftOnlyOnceItHasSteppedBack()
    {
        const auto blocksUntilBack = [](FaultCode code, double offsetL, double shownOffL) {
            SenderFault fault(0.0, 50.0);
            fault.raise(code, at(30.0), offsetL, 30.0 + offsetL);
            for (int i = 1; i <= 50; ++i) {
                const Moment now = at(30.0 - 0.05 * i, 0.05 * i);
                const BlockSummary block = blockAt(now.filter.levelL() + (i > 10 ? shownOffL : offsetL));
                if (fault.agrees(block, compare(now.filter, block, kNoiseL2), now))
                    return i;
            }
            return 0;
        };
        QCOMPARE(blocksUntilBack(FaultCode::open, 0.0, 0.0), 4);
        QCOMPARE(blocksUntilBack(FaultCode::offsetJump, 9.0, 9.0), 0);
        const int back = blocksUntilBack(FaultCode::offsetJump, 9.0, 0.0);
        QVERIFY2(back > 10 && back <= 14, qPrintable(QString::number(back)));
        // A stuck float that agrees without having moved is stuck still.
        SenderFault stuck(0.0, 50.0);
        stuck.raise(FaultCode::stuck, at(30.0), 0.0, 30.0);
        for (int i = 0; i < 50; ++i) {
            const Moment now = at(30.0);
            const BlockSummary block = blockAt(30.0);
            QVERIFY(!stuck.agrees(block, compare(now.filter, block, kNoiseL2), now));
        }
    }

    void silenceWiresAndContactsAreSaidOnce()
    {
        SilenceWatch silence;
        QVERIFY(!silence.heard());
        QVERIFY(!silence.silent(halfMinute(true)));
        QVERIFY(silence.silent(halfMinute(true)));
        QVERIFY(!silence.silent(halfMinute(true)));
        QVERIFY(silence.heard());
        QVERIFY(!silence.heard());

        RangeWatch range;
        QVERIFY(!range.outside(blockAt(0.0, BlockKind::tooLow)));
        range.inside();
        QVERIFY(!range.outside(blockAt(0.0, BlockKind::tooLow)));
        QVERIFY(range.outside(blockAt(0.0, BlockKind::tooLow)));

        ContactWatch contact;
        BlockSummary loose = blockAt(30.0);
        loose.outlierShare = 0.2;
        for (int i = 0; i < 3; ++i)
            QCOMPARE(int(contact.add(loose)), int(ContactWatch::Contact::none));
        QCOMPARE(int(contact.add(loose)), int(ContactWatch::Contact::loose));
        for (int i = 0; i < 20; ++i)
            QCOMPARE(int(contact.add(blockAt(30.0))), int(ContactWatch::Contact::none));
        QCOMPARE(int(contact.add(blockAt(30.0))), int(ContactWatch::Contact::healed));
        QCOMPARE(int(contact.add(blockAt(30.0))), int(ContactWatch::Contact::none));
    }

    void whatIsShownRisesOnlyByACorrectionThatIsSaid()
    {
        ShownLevel shown(50.0, litres(30.0, 0.5));
        QVERIFY(!shown.follow(at(29.0).filter, 0.3));
        QCOMPARE(shown.level().mean.litres(), 29.0);
        for (int i = 0; i < 9; ++i)
            QVERIFY(!shown.follow(at(33.0).filter, 0.3));
        QCOMPARE(shown.level().mean.litres(), 29.0);
        const auto step = shown.follow(at(33.0).filter, 0.3);
        QVERIFY(step.has_value());
        QCOMPARE(step->mean.litres(), 4.0);
        QCOMPARE(shown.level().mean.litres(), 33.0);
        // Spread of the level and the curve's own, in quadrature.
        QVERIFY(std::abs(shown.level().sd.litres() - std::hypot(0.5, 0.3)) < 1e-12);
    }

    void aBoundMovesTheLevelToItAndNeverPast()
    {
        FuelFilter filter = at(40.0).filter;
        for (int i = 0; i < 200; ++i)
            takeBound(filter, blockAt(45.0, BlockKind::atLeast), kNoiseL2);
        QVERIFY(filter.levelL() > 44.5 && filter.levelL() <= 45.0);
        QCOMPARE(filter.scale(), 1.0);
        takeBound(filter, blockAt(20.0, BlockKind::atLeast), kNoiseL2);   // holds anyway
        QVERIFY(filter.levelL() > 44.5);
    }

    void aSourceIsImplausibleBeyondItsSpreadOnce()
    {
        SourceWatch source(50.0);
        Moment now = at(30.0, 5.0);
        now.filter.setScale({Fraction::fromRatio(2.55), Fraction::fromRatio(0.1)});
        QVERIFY(!source.add(now));
        now.filter.setScale({Fraction::fromRatio(2.7), Fraction::fromRatio(0.1)});
        now.usedL = 3.0;
        QVERIFY(!source.add(now));   // too little counted
        now.usedL = 5.0;
        QVERIFY(source.add(now));
        QVERIFY(!source.add(now));
    }

    void aStopIsSaidOnceAndAgainOnlyAfterTwentyMinutesOffIt()
    {
        StopNotice stop;
        QVERIFY(stop.rests(TrackerMode::upperStop));
        for (int i = 0; i < 40; ++i)
            stop.off();
        QVERIFY(!stop.rests(TrackerMode::upperStop));
        for (int i = 0; i < 41; ++i)
            stop.off();
        QVERIFY(stop.rests(TrackerMode::upperStop));
        QVERIFY(stop.rests(TrackerMode::lowerStop));
    }
};

UNDERMARK_TEST(TrackerWatchesTest)
#include "tracker_watches_test.moc"
