// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/tracker_types.h"

namespace undermark {

const char* faultWord(FaultCode code)
{
    switch (code) {
    case FaultCode::stuck: return "stuck";
    case FaultCode::stuckAtStop: return "stuck_at_stop";
    case FaultCode::open: return "open";
    case FaultCode::shortCircuit: return "short";
    case FaultCode::offsetJump: return "offset_jump";
    case FaultCode::drift: return "drift";
    case FaultCode::dropout: return "dropout";
    case FaultCode::intermittent: return "intermittent";
    case FaultCode::transfer: return "transfer";
    case FaultCode::transferStopped: return "transfer_stopped";
    case FaultCode::sourceScale: return "source_scale";
    case FaultCode::otherTankFeeds: return "other_tank_feeds";
    }
    return "unknown";
}

Sentence faultText(FaultCode code)
{
    switch (code) {
    case FaultCode::stuck:
        return Sentence::of(
            "The reading stands still while fuel is burnt: the float is stuck or its arm is "
            "bent. Check the float and arm for free travel; count on consumption until then.");
    case FaultCode::stuckAtStop:
        return Sentence::of(
            "The reading stays on the upper stop although the tank must be below it: the float "
            "is stuck at full. Check the float's travel; count on consumption until then.");
    case FaultCode::open:
        return Sentence::of(
            "The signal went to its high end: a broken wire, an open connector or a worn "
            "contact. Check the plug at the sender, the signal wire and the ground.");
    case FaultCode::shortCircuit:
        return Sentence::of(
            "The signal went to its low end: a chafed wire to ground or a lost supply. Check "
            "the signal wire for chafing and the supply of the sender.");
    case FaultCode::offsetJump:
        return Sentence::of(
            "The reading shifted in one step without a stop for fuel: a bad ground, a slipped "
            "float arm, or fuel was lost. Look for a leak first, then check ground and arm.");
    case FaultCode::drift:
        return Sentence::of(
            "Reading and consumption part more and more: a fouled float, a drifting supply, or "
            "a leak. Look for a leak first, then compare the level after the next full fill.");
    case FaultCode::dropout:
        return Sentence::of(
            "No reading arrives: the source is silent. Check the connection to the sender or "
            "the bus.");
    case FaultCode::intermittent:
        return Sentence::of(
            "The reading falls out and comes back: a loose connector or a worn track. Move the "
            "wires at the sender while watching the reading.");
    case FaultCode::transfer:
        return Sentence::of(
            "One half of the saddle tank does not empty while the other does: the transfer is "
            "not working. Count only on the half with the pump and check the transfer line.");
    case FaultCode::transferStopped:
        return Sentence::of(
            "No more fuel comes over from the other tank, in which there is some left: its pump is "
            "switched off or has failed.");
    case FaultCode::sourceScale:
        return Sentence::of(
            "The fuel-flow or distance source counts far off the level: a wrong unit, tyre "
            "size or injector constant. Check the source's settings against a full fill.");
    case FaultCode::otherTankFeeds:
        return Sentence::of(
            "The reading stands still while fuel is burnt: another tank feeds, or the float is "
            "stuck. Look at the tap or the transfer pump; if this tank feeds, count on consumption.");
    }
    return {};
}

std::string tankOf(const TrackerEvent& event, std::span<const std::string> tanks)
{
    return event.tank > 0 && event.tank <= tanks.size() ? tanks[event.tank - 1] : std::string();
}

Sentence faultText(const TrackerEvent& event, std::span<const std::string> tanks)
{
    const std::string tank = tankOf(event, tanks);
    if (tank.empty())
        return faultText(event.fault);
    switch (event.fault) {
    case FaultCode::transferStopped:
        return Sentence::of(
            "No more fuel comes over from %1: about %2 came, about %3 are left in it. Is its pump "
            "switched off, or has it failed?",
            tank, amount(event.cameOver), amount(event.left));
    case FaultCode::transfer:
        return Sentence::of(
            "%1 does not empty while the tank beside it does: about %2 in it do not come over. Count "
            "only on the vehicle's own tank and check what joins them.",
            tank, amount(event.left));
    default: return faultText(event.fault);
    }
}

} // namespace undermark
