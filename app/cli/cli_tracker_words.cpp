// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_tracker_words.h"

#include "app/cli/terminal_words.h"

namespace undermark {

const char* modeWord(TrackerMode mode)
{
    switch (mode) {
    case TrackerMode::waiting: return "waiting";
    case TrackerMode::level: return "level";
    case TrackerMode::upperStop: return "upper_stop";
    case TrackerMode::lowerStop: return "lower_stop";
    case TrackerMode::consumptionOnly: return "consumption_only";
    }
    return "";
}

namespace {

Json bareJson(const TrackerEvent& event, std::span<const std::string> tanks)
{
    const double at = event.time.count();
    const double onset = event.onset.count();
    switch (event.kind) {
    case TrackerEventKind::refuel:
    case TrackerEventKind::transfer:
        return {{"at_s", onset}, {"litres", event.litres.mean.litres()},
                {"sd_l", event.litres.sd.litres()}, {"decided_s", at}};
    case TrackerEventKind::fault:
        return {{"code", faultWord(event.fault)},
                {"at_s", at},
                {"text", said(faultText(event, tanks))},
                {"onset_s", onset},
                {"litres_since_onset", event.litres.mean.litres()},
                {"km_since_onset", event.distance.km()}};
    case TrackerEventKind::faultCleared:
        return {{"code", faultWord(event.fault)}, {"at_s", at}};
    case TrackerEventKind::gap:
    case TrackerEventKind::clockJump: return {{"at_s", at}, {"before_s", onset}};
    case TrackerEventKind::correction: return {{"at_s", at}, {"litres", event.litres.mean.litres()}};
    case TrackerEventKind::onUpperStop:
        return {{"stop", "upper"}, {"at_s", at}, {"litres", event.litres.mean.litres()}};
    case TrackerEventKind::onLowerStop:
        return {{"stop", "lower"}, {"at_s", at}, {"litres", event.litres.mean.litres()}};
    }
    return {};
}

} // namespace

Json eventJson(const TrackerEvent& event, std::span<const std::string> tanks)
{
    Json json = bareJson(event, tanks);
    if (const std::string tank = tankOf(event, tanks); !tank.empty())
        json["tank"] = tank;
    if (event.kind == TrackerEventKind::fault && event.tank > 0) {
        json["left_l"] = event.left.litres();
        json["came_over_l"] = event.cameOver.litres();
    }
    return json;
}

const char* listOf(TrackerEventKind kind)
{
    constexpr std::array<const char*, 9> kLists{"refuels", "faults", "faults_cleared", "gaps", "clock_jumps",
                                                "corrections", "stops", "stops", "transfers"};
    return kLists[static_cast<std::size_t>(kind)];
}

std::string eventLine(const TrackerEvent& event, std::span<const std::string> tanks)
{
    const std::string tank = tankOf(event, tanks);
    const std::string at = format("%8.0f s  ", event.onset.count());
    const double litres = event.litres.mean.litres();
    switch (event.kind) {
    case TrackerEventKind::refuel:
        return at + format("refuel of about %.1f L (give or take %.1f): log what the pump showed",
                           litres, event.litres.sd.litres());
    case TrackerEventKind::transfer:
        return at + format("about %.1f L came over from %s", litres, tank.empty() ? "another tank" : tank.c_str());
    case TrackerEventKind::fault:
        return at +
               format("fault %s, found %.0f s later after %.1f L: ", faultWord(event.fault),
                      (event.time - event.onset).count(), litres) +
               said(faultText(event, tanks));
    case TrackerEventKind::faultCleared:
        return at + format("fault %s%s is over since %.0f s", faultWord(event.fault),
                           tank.empty() ? "" : (" of " + tank).c_str(), event.time.count());
    case TrackerEventKind::gap:
        return at + format("no samples until %.0f s", event.time.count());
    case TrackerEventKind::clockJump:
        return at + format("the clock went back to %.0f s", event.time.count());
    case TrackerEventKind::correction: return at + format("level corrected by %+.1f L", litres);
    case TrackerEventKind::onUpperStop:
        return at + format("float on its upper stop: at least %.1f L", litres);
    case TrackerEventKind::onLowerStop:
        return at + format("float on its lower stop: at most %.1f L", litres);
    }
    return at;
}

} // namespace undermark
