// SPDX-License-Identifier: GPL-3.0-or-later
//
// A fault of the sender while it lasts: its reading is not used, and taken back once
// it lives and agrees with the count. A wire that heals or a float that comes loose
// shows the level at once; a reading that had shifted must first step back by as much,
// since that a count grows vague enough to agree with it proves nothing.
#pragma once

#include "engine/tracking/level_block.h"
#include "engine/tracking/moment.h"
#include "engine/tracking/tracker_types.h"

#include <array>

namespace undermark {

class SenderFault {
public:
    // Ends of the curve, litres.
    SenderFault(double lowestL, double highestL) : m_lowestL(lowestL), m_highestL(highestL) {}

    // `offsetL`: shift of the reading, 0 where it did not shift; `readingL`: where it
    // was when the fault was found.
    void raise(FaultCode code, const Moment& onset, double offsetL, double readingL);
    void clear() { m_fault = Fault{}; }

    bool active() const { return m_fault.active; }
    FaultCode code() const { return m_fault.code; }
    const Moment& onset() const { return m_fault.onset; }

    // A block outside of what the sender can give.
    void outside();
    // A block within, compared with the count; true where the sender is to be taken back.
    bool agrees(const BlockSummary& block, const Innovation& seen, const Moment& now);

private:
    struct Fault {
        bool active = false;
        FaultCode code = FaultCode::stuck;
        Moment onset;
        double offsetL = 0.0, readingL = 0.0;
        bool moved = false;           // the float came loose, the shift went back
        bool returned = false;        // readings are within the range again
        bool crept = false;           // and came in over its end
        int agreeing = 0;             // blocks in a row
        struct TrailPoint { double levelL = 0.0, usedL = 0.0; };
        std::array<TrailPoint, 5> trail;    // the last blocks
        std::size_t seen = 0;
    };

    void noteReturn(const BlockSummary& block);
    bool steppedBack(const BlockSummary& block, const Moment& now);

    double m_lowestL, m_highestL;
    Fault m_fault;
};

} // namespace undermark
