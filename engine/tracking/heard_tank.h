// SPDX-License-Identifier: GPL-3.0-or-later
//
// One tank beside the vehicle's own while its sender is heard: its level, and whether fuel comes over
// from it. No count of what is burnt knows which tank gives, so the level is what is read, without
// its slosh; it says nothing of faults of that sender.
//
// Simplifications: a sender that sticks while its tank is pumped over looks like a pump that
// stopped; what drips or is drained out of it, like fuel that came over.
#pragma once

#include "engine/base/tank_records.h"
#include "engine/signals/sample.h"
#include "engine/tracking/event_list.h"
#include "engine/tracking/level_block.h"
#include "engine/tracking/transfer_watch.h"

#include <string>

namespace undermark {

// What is known of it when a drive begins.
struct FurtherTank {
    std::string name;
    TankFeed feed = TankFeed::chosen;
    Gauge gauge;             // not known: its sender says nothing
    Estimate<Volume> offset; // usable litres in it less those since drained (HiddenReserve::offset)
};

class HeardTank {
public:
    // `place`: 1 for the first further tank; `own`: litres between the ends of the own tank's curve.
    HeardTank(const FurtherTank& tank, std::size_t place, Volume own);

    // Every sample, in order.
    void take(const Sample& sample);
    // The end of a block, of the own tank's too; `own`: what that one read, if anything. What
    // happened is added to `events`.
    void closeBlock(Seconds time, std::optional<Volume> own, EventList& events);

    // Litres since drained; nothing where it has not been heard for two minutes.
    std::optional<Estimate<Volume>> level() const { return m_level; }
    bool isPumpedOver() const { return m_feed == TankFeed::pumpedOver; }

private:
    Estimate<Volume> levelOf(const BlockSummary& block) const;
    void watch(Seconds time, Volume own, const BlockSummary& block, EventList& events);
    void say(TrackerEventKind kind, Volume litres, EventList& events);

    Gauge m_gauge;
    TankFeed m_feed;
    std::size_t m_place;
    Estimate<Volume> m_offset;
    std::optional<LevelBlock> m_block; // none: not calibrated
    std::optional<TransferWatch> m_watch; // none: by a tap, whose turn shows by itself
    Smoothed m_smoothed;
    Seconds m_heardAt{};                  // end of the last block that said a level
    std::optional<Estimate<Volume>> m_level;
};

} // namespace undermark
