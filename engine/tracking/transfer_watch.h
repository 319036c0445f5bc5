// SPDX-License-Identifier: GPL-3.0-or-later
//
// Does fuel still come over from where it should: from a saddle tank's lobe without the pump, from a
// further tank that stands level with the vehicle's own, from one that is pumped over into it? A
// level there that stands, above what is as good as empty, while the tank that the engine drinks
// from falls, means that nothing is transferred, and that fuel cannot be reached. (The other way
// round is how a jet pump works.) In a tank that is pumped over it means so only once some came
// over; a pump that was switched off looks the same.
//
// A pump that is switched by hand or by the level pauses: where the fault was said and more came
// over after all, pauses as long and a quarter longer are none from then on, up to three times the
// usual fall.
//
// Litres and shares are judgement, no source; how they do: heard_tanks_test and, for a saddle,
// tests/accuracy/source_and_saddle_campaign.cpp.
#pragma once

#include "engine/calibration/gauge.h"
#include "engine/tracking/smoothed.h"
#include "engine/tracking/tracker_types.h"

namespace undermark {

// How much is more than slosh and hills.
struct TransferLimits {
    Volume fall;             // of the tank that is drunk from: the other one should have moved by then
    Volume moved;            // a fall of the other by less is none; < fall
    Volume empty;            // with less in it the other is as good as empty
    Volume much;             // so much down came over, so much up is a fill
    bool comesFirst = false; // it should move only once so much came over
    Seconds smoothing{60.0}; // of both levels

    static TransferLimits ofSaddle(Volume total);
    // By the ranges of the curves.
    static TransferLimits ofLevel(Volume own, Volume other);
    static TransferLimits ofPumped(Volume own, Volume other);
};

class TransferWatch {
public:
    enum class Found {
        nothing,
        stopped, // the fault
        goesOn,  // it is over
    };
    explicit TransferWatch(const TransferLimits& limits)
        : m_limits(limits), m_drunk(limits.smoothing), m_other(limits.smoothing)
    {
    }

    // Levels of both at one time.
    Found add(Seconds time, Volume drunk, const LevelObservation& other);
    // By a gauge of two lobes and what it reads; nothing with one signal.
    Found add(Seconds time, const Gauge& gauge, const SenderReading& reading);

    // The fall of what is drunk from, since the other one last moved.
    Volume fallen() const { return Volume::fromLitres(m_drunkFrom - m_drunk.litres()); }
    // Out of the other since it was filled, or the start.
    Volume cameOver() const { return Volume::fromLitres(m_top - m_other.litres()); }
    // When the other one last fell: the end of a flow, or the start.
    Seconds movedAt() const { return m_movedAt; }
    // What of that was not told yet, once some more came over and then for ten minutes nothing.
    std::optional<Volume> flowEnded();

private:
    Found judgeFlowing(bool anew);
    Found judgeStopped(bool filled);
    void refilled();
    void lookFromHere();

    TransferLimits m_limits;
    Smoothed m_drunk, m_other;
    double m_drunkFrom = 0.0;       // the highest since the other last moved
    double m_otherFrom = 0.0;       // when it last moved
    double m_fell = 0.0;            // at most since then, what is drunk from
    double m_top = 0.0, m_low = 0.0; // of the other, since it was filled
    double m_stood = 0.0;           // level of the other when the fault was said
    double m_pause = 0.0;           // what is drunk from fell so much in a stop that ended by itself
    double m_told = 0.0;            // of what came over
    Seconds m_time{}, m_movedAt{};
    bool m_running = false, m_said = false, m_empty = false;
};

} // namespace undermark
