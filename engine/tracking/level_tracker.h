// SPDX-License-Identifier: GPL-3.0-or-later
//
// Follows the fuel in the tank while driving, and says when the sender can no
// longer be trusted. Feed it every sample in order; it answers with what
// happened (usually nothing) and keeps one state.
//
//     LevelTracker tracker(settings);
//     for (const TrackerSample& sample : drive)
//         for (const TrackerEvent& event : tracker.add(sample))
//             tell(event);
//     tracker.finish();
//     tracker.state().level;
//
// It composes small types that each own their state: how much a block is worth
// (ReadingNoise), what a reading that leaves the count is (StandingRise, ReadingJump),
// the watches (Stillness, DriftWatch, SourceWatch, signal_watch.h), the fault while it
// lasts (SenderFault) and what is shown (ShownLevel). A new fault is a FaultCode, its
// words (tracker_words.cpp) and a watch asked in level_tracker_verdicts.cpp.
//
// Guarantees (tests/engine/tracking/level_tracker_test.cpp, level_tracker_faults_test.cpp;
// of the parts tracker_watches_test.cpp):
//  * the level never rises, but by a refuel, a transfer or a correction that is said;
//  * a step upwards while the car stands is asked about within two minutes (it has to stay
//    for up to three blocks), never smoothed away, but where it only comes back to what the
//    last minutes let expect; until then the state says that it is rising;
//  * on a fault the level goes on by consumption alone, its spread grows, and
//    the sender is taken back once it agrees again: at once where a wire healed or
//    a float came loose, after a shift only once the reading has stepped back;
//  * on a stop of the float the reading counts as one-sided, on a flat piece of
//    the curve as anywhere within it; neither teaches anything about consumption;
//  * of a car of several tanks (other_tanks_test.cpp): what is pumped over is a transfer, neither
//    refuel nor fault; a level that stands while another tank may feed is told as either, and
//    stays; with one tank all is as if there were no such thing;
//  * equal times are one instant, gaps and clock jumps are survived and said;
//  * memory is constant and no sample allocates.
// Cost: some tens of ns per sample, about a microsecond per block of 30 s.
//
// Simplifications: one correlation time of slosh for all cars; cornering shows
// only where speed changes; a slow error of the reading (tilt, hysteresis) is one
// first-order process of 150 s, its size (1.5 % of the range to begin with) and
// then the readings' noise scaled by how large the innovations turn out. How well
// all this holds for cars unlike the model: tests/accuracy/tracker_campaign.cpp.
#pragma once

#include "engine/tracking/drift_watch.h"
#include "engine/tracking/event_list.h"
#include "engine/tracking/other_tanks.h"
#include "engine/tracking/reading_jump.h"
#include "engine/tracking/recent_count.h"
#include "engine/tracking/sender_fault.h"
#include "engine/tracking/shown_level.h"
#include "engine/tracking/signal_watch.h"
#include "engine/tracking/source_watch.h"
#include "engine/tracking/standing_rise.h"
#include "engine/tracking/stillness.h"
#include "engine/tracking/stop_notice.h"

namespace undermark {

class LevelTracker {
public:
    explicit LevelTracker(const TrackerSettings& settings);

    // Takes one sample in; the events are valid until the next call.
    std::span<const TrackerEvent> add(const TrackerSample& sample);
    // Ends the last block. Further samples may follow.
    std::span<const TrackerEvent> finish();

    // So long a refuel found by level can be spoken of.
    static constexpr Seconds kFillWindow{600.0};

    // The driver says what the pump showed (of tanks that share their level, for all of them).
    // Replaces a refuel found by level within kFillWindow, with all that rose before it without
    // a longer pause between; adds to the level otherwise.
    void tellFill(Estimate<Volume> litres);
    // The driver says that no fuel went in: the refuel found within kFillWindow was a
    // transfer, where it may have been one; else it is taken back, and the sender is at fault.
    std::span<const TrackerEvent> denyFill();
    // The driver filled another tank.
    void tellOtherFill() { m_others.refill(m_settings.others); }
    // The driver filled up to the first click: the level is the curve's full.
    void tellFull(Estimate<Volume> full);

    const TrackState& state() const { return m_state; }
    bool onFault() const { return m_fault.active(); }
    // Litres the source counts per km, scaled by what the level taught; nothing
    // where the source does not count km.
    std::optional<Estimate<Consumption>> rate() const;

private:
    // A block, driven since the one before, in the order in which it is taken.
    void closeBlock();
    void count(UseStep step);
    void predict(const BlockDrive& past);
    void takeSilence(const BlockDrive& past);
    void takeOutside(const BlockSummary& block);
    void takeBlock(const BlockSummary& block, const BlockDrive& past);
    void watchContact(const BlockSummary& block);
    bool takeRise(const BlockSummary& block, const BlockDrive& past);
    void recover(const BlockSummary& block, double noiseL2);
    bool takeJump(const BlockSummary& block, double noiseL2, const BlockDrive& past);
    void takeFault(ReadingJump::Verdict verdict, const BlockSummary& block, double noiseL2,
                   const BlockDrive& past);
    void takeShift(const BlockSummary& block, double noiseL2);
    bool takeFed(const BlockSummary& block, double noiseL2, Moment onset, const OtherFuel::Rise& rise);
    void goOnFrom(const BlockSummary& block, double noiseL2, const Moment& onset);
    void watchSource(const BlockSummary& block, double noiseL2, const BlockDrive& past);
    bool takeStanding(const BlockSummary& block, double noiseL2);
    void rest(const BlockSummary& block, double noiseL2, Moment onset);
    void watchRest(const BlockSummary& block, const BlockDrive& past);
    void endRest();
    void takeReading(const BlockSummary& block, double noiseL2);
    void takeDrift(const BlockSummary& block, double noiseL2, const DriftWatch::Drift& drift);
    void takeStop(const BlockSummary& block, double noiseL2);
    void watchStillness(const BlockSummary& block, double noiseL2, bool moved);
    void show();

    void startFrom(const BlockSummary& block, double noiseL2);
    // `kind`: refuel or transfer.
    void accept(TrackerEventKind kind, double litres, double sdL, const Moment& before);
    TrackerEventKind kindOf(const OtherFuel::Rise& rise) const;
    void levelTold(double litres);
    bool refuelledLately() const;

    // The reading is not used from here on. `rollBack`: it has misled the level
    // since the onset, so the level is counted anew from there, if that is lower.
    void raise(FaultCode code, Moment onset, bool rollBack, double offsetL);
    void note(FaultCode code, double onsetS);   // a fault that leaves it in use
    void countOn();                             // without the sender from here on
    FuelFilter roadAhead(FuelFilter filter) const;
    void say(TrackerEventKind kind, double onsetS, Estimate<Volume> litres = {},
             Distance distance = {}, FaultCode fault = FaultCode::stuck);

    TrackerSettings m_settings;
    double m_rangeL;
    FuelUse m_use;
    LevelBlock m_block;
    Moment m_now;
    BlockDrive m_past;
    TrackState m_state;
    EventList m_events;
    bool m_running = false;           // a first sample came
    bool m_started = false;           // a level is known
    bool m_scaleKnown = false;
    bool m_afterGap = false;          // no reading taken since nobody watched
    double m_lastStandS = -1e9;       // end of the last halt
    double m_curveSdL = 0.0;          // the curve's own, of the last block

    ReadingNoise m_noise;
    SilenceWatch m_silence;
    RangeWatch m_range;
    ContactWatch m_contact;
    StandingRise m_rise;
    ReadingJump m_jump;
    RecentCount m_recent;
    SenderFault m_fault;
    Stillness m_still;
    DriftWatch m_drift;
    SourceWatch m_source;
    StopNotice m_stop;
    OtherFuel m_others;
    RestingLevel m_resting;
    ShownLevel m_shown;
    struct {
        double atS = -1e9, litres = 0.0;
        Moment before;
        TrackerEventKind kind = TrackerEventKind::refuel; // or a transfer
    } m_refuel;                       // found by level last, with what rose before and is open
};

} // namespace undermark
