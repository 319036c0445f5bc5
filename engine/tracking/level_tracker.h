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
// Guarantees (tests/engine/tracking/level_tracker_test.cpp, level_tracker_faults_test.cpp):
//  * the level never rises, but by a refuel or a correction that is said;
//  * a step upwards while the car stands is asked about, never smoothed away;
//  * on a fault the level goes on by consumption alone, its spread grows, and
//    the sender is taken back once it agrees again: at once where a wire healed or
//    a float came loose, after a shift only once the reading has stepped back;
//  * on a stop of the float the reading counts as one-sided, on a flat piece of
//    the curve as anywhere within it; neither teaches anything about consumption;
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

#include "engine/tracking/cusum.h"
#include "engine/tracking/fuel_filter.h"
#include "engine/tracking/fuel_use.h"
#include "engine/tracking/level_block.h"
#include "engine/tracking/tracker_types.h"

#include <span>

namespace undermark {

class LevelTracker {
public:
    explicit LevelTracker(const TrackerSettings& settings);

    // Takes one sample in; the events are valid until the next call.
    std::span<const TrackerEvent> add(const TrackerSample& sample);
    // Ends the last block. Further samples may follow.
    std::span<const TrackerEvent> finish();

    // The driver says what the pump showed. Replaces a refuel found by level
    // within the last ten minutes; adds to the level otherwise.
    void tellFill(Estimate<Volume> litres);
    // The driver says that no fuel went in: the refuel found within the last ten
    // minutes is taken back, and the sender is at fault.
    std::span<const TrackerEvent> denyFill();
    // The driver filled up to the first click: the level is the curve's full.
    void tellFull(Estimate<Volume> full);

    const TrackState& state() const { return m_state; }
    bool onFault() const { return m_fault.active; }
    // Litres the source counts per km, scaled by what the level taught; nothing
    // where the source does not count km.
    std::optional<Estimate<Consumption>> rate() const;

private:
    // Enough to start again from an earlier moment.
    struct Checkpoint {
        FuelFilter filter;
        double timeS = 0.0, usedL = 0.0, km = 0.0;
    };
    struct Interval {                 // since the last block ended
        double startS = 0.0, seconds = 0.0, usedL = 0.0, unknownL2 = 0.0, acceleration = 0.0;
        long samples = 0;
        bool moved = false, motionKnown = true;
    };
    struct Stand {                    // this halt, in litres as read
        int blocks = 0, risen = 0;
        double firstL = 0.0, lastL = 0.0, onsetS = 0.0;
    };
    struct Jump {                     // readings held back in a row, same sign
        int sign = 0, blocks = 0, steady = 0;
        double lastL = 0.0, sumL = 0.0;
        bool mayBeFuel = false, afterGap = false;
        Checkpoint before;
    };
    struct Fault {
        bool active = false;          // reading not used
        FaultCode code = FaultCode::stuck;
        Checkpoint onset;
        double offsetL = 0.0, levelL = 0.0;   // shift of the reading; where it stuck
        bool moved = false;           // the float came loose, the shift went back
        bool returned = false;        // readings are within the range again
        bool crept = false;           // and came in over its end
        int agreeing = 0;             // blocks in a row
        struct Seen { double levelL = 0.0, usedL = 0.0; };
        std::array<Seen, 5> trail;    // the last blocks
        std::size_t seen = 0;
    };

    struct Still {                    // a reading that does not move
        bool set = false;
        double levelL = 0.0;
        double allowedL = 0.0;        // litres it need not move for
        double flatL = 0.0;           // largest flat piece met meanwhile
        double sloshL2 = 0.0, sumL2 = 0.0;   // of one reading: before, since
        int moving = 0;               // blocks in the sum
        int off = 0;                  // blocks in a row beside the level
        Checkpoint since;
    };

    void closeBlock();
    void predict(const Interval& past);
    void takeBlock(const BlockSummary& block, const Interval& past);
    void takeMissing(const Interval& past);
    void takeOutOfRange(const BlockSummary& block);
    void startFrom(const BlockSummary& block, double noiseL2);
    bool takeStanding(const BlockSummary& block, const Interval& past);
    bool takeJump(const BlockSummary& block, Innovation seen, double noiseL2, const Interval& past);
    void settleJump(const BlockSummary& block, double noiseL2, bool moved);
    bool atEnd(const BlockSummary& block, bool upper) const;
    void takeReading(const BlockSummary& block, double noiseL2);
    void learnNoise(double nis);
    void takeStop(const BlockSummary& block, double noiseL2);
    void watchStillness(const BlockSummary& block, bool moving);
    bool standsStill(const BlockSummary& block, bool moving);
    void restartStill(const BlockSummary& block);
    void watchSums(Innovation seen);
    void watchContact(const BlockSummary& block);
    void watchScale();
    void recover(const BlockSummary& block, double noiseL2);
    bool steppedBack(const BlockSummary& block);
    void noteReturn(const BlockSummary& block);
    void accept(double litres, double sdL, double onsetS, const FuelFilter& before);
    void raise(FaultCode code, const Checkpoint& onset, bool rollBack, double offsetL);
    void note(FaultCode code, double onsetS);
    FuelFilter countedFrom(const Checkpoint& onset) const;
    void countOn();
    Estimate<Fraction> roadAhead(double scaleNow) const;
    void clearFault();
    void show();
    void say(const TrackerEvent& event);
    double noiseOf(const BlockSummary& block, const Interval& past);
    Innovation compare(const BlockSummary& block, double noiseL2) const;
    Checkpoint here() const { return {m_filter, m_timeS, m_usedL, m_km}; }
    double biasSdL() const;           // of the slow error
    double burntSince(const Checkpoint& past) const;

    TrackerSettings m_settings;
    double m_rangeL;
    FuelUse m_use;
    LevelBlock m_block;
    FuelFilter m_filter;
    Cusum m_cusum;
    TrackState m_state;
    std::array<TrackerEvent, 8> m_events;
    std::size_t m_eventCount = 0;

    Interval m_past;
    double m_timeS = 0.0, m_usedL = 0.0, m_km = 0.0;   // totals; litres unscaled
    double m_pendingGapS = 0.0;
    bool m_running = false;           // a first sample came
    bool m_started = false;           // a level is known
    bool m_scaleKnown = false;
    double m_sloshL2[2] = {0.0, 0.0}; // of one reading: standing, moving; 0 unknown
    double m_curveSdL = 0.0;
    double m_nisSum = 0.0, m_nisRecent = 1.0, m_noiseShare = 1.0;
    double m_thinned = 0.0;
    int m_thinnedBlocks = 0;
    Stand m_stand;
    Jump m_jump;
    Fault m_fault;
    bool m_afterGap = false;
    double m_lastStandS = -1e9;       // end of the last halt
    Still m_still;
    Checkpoint m_calm, m_calmDown, m_beforeRefuel;
    int m_outOfRange = 0, m_contactBlocks = 0, m_blocksSinceContact = 0;
    double m_outOfRangeOnsetS = 0.0, m_missingS = 0.0, m_missingOnsetS = 0.0;
    bool m_dropoutSaid = false, m_contactSaid = false, m_scaleSaid = false;
    TrackerMode m_stopSaid = TrackerMode::waiting;
    int m_offStop = 0;                // blocks since the float left its stop
    double m_lastRefuelS = -1e9, m_lastRefuelL = 0.0;
    int m_above = 0;                  // blocks in which the estimate lay above what is shown
};

} // namespace undermark
