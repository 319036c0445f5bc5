// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_range.h"
#include "app/cli/cli_tracker_words.h"
#include "app/cli/cli_watch.h"

#include <algorithm>
#include <iostream>

namespace undermark {

namespace {

// Ages that a driver must know of: the signal's is told, once it is old.
constexpr Seconds kOldSignal{3.0};

Json agesJson(const LiveSources& sources, Seconds now, std::size_t furtherTanks)
{
    Json ages = Json::object();
    for (const Channel channel : channelsOf(furtherTanks)) {
        const auto age = sources.joiner().age(channel, now);
        ages[std::string(nameOf(channel))] = age ? Json(age->count()) : Json();
    }
    return ages;
}

// Recordings tell the time themselves.
Seconds timeOf(const WatchMoment& now)
{
    return now.sources.recorded() ? now.sample.time : now.sources.now();
}

} // namespace

void printWatchJson(const WatchMoment& now)
{
    Json json{{"t_s", timeOf(now).count()}};
    for (const Channel channel : channelsOf(now.tanks.size())) {
        const auto value = now.sample.get(channel);
        json[std::string(nameOf(channel))] = value ? Json(*value) : Json();
    }
    const bool known = now.state.mode != TrackerMode::waiting;
    const Estimate<Volume>& level = now.state.level;
    json["level_l"] = known ? estimateJson(level.mean.litres(), level.sd.litres()) : Json();
    for (const auto& [tank, litres] : now.tankLevels)
        json["tank_levels_l"][tank] = estimateJson(litres.mean.litres(), litres.sd.litres());
    json["usable_l"] = now.range ? estimateJson(now.range->usable.mean.litres(), now.range->usable.sd.litres()) : Json();
    json["to_zero_km"] = now.range ? distancesJson(now.range->toZero) : Json();
    json["to_dry_km"] = now.range ? distancesJson(now.range->toDry) : Json();
    json["since_fill_km"] = now.sinceFill.km();
    for (const char* list : kEventLists)
        json[list] = Json::array();
    for (const TrackerEvent& event : now.events)
        json[listOf(event.kind)].push_back(eventJson(event, now.tanks));
    json["mode"] = modeWord(now.state.mode);
    json["age_s"] = agesJson(now.sources, timeOf(now), now.tanks.size());
    long frames = 0, refused = 0, lost = 0;
    for (const LiveSources::Told& told : now.sources.told()) {
        frames += told.counts.heard;
        refused += told.counts.garbled;
        lost += told.lost;
    }
    json["frames"] = frames;
    json["refused"] = refused;
    json["lost"] = lost;
    std::cout << json.dump() << '\n';
}

void printWatchText(const WatchMoment& now)
{
    for (const TrackerEvent& event : now.events)
        std::cout << eventLine(event, now.tanks) << '\n';
    std::string line = format("%8.0f s  ", timeOf(now).count());
    if (now.state.mode == TrackerMode::waiting)
        line += "waiting for a level";
    else if (now.range)
        line += format("%.1f ± %.1f L usable, sure %s km to zero, %s km to dry", now.range->usable.mean.litres(),
                       now.range->usable.sd.litres(), kmDown(now.range->toZero.p99).c_str(),
                       kmDown(now.range->toDry.p99).c_str());
    else
        line += format("%.1f ± %.1f L since drained", now.state.level.mean.litres(), now.state.level.sd.litres());
    for (const auto& [tank, litres] : now.tankLevels)
        line += format(", %s %.1f L since drained", tank.c_str(), litres.mean.litres());
    if (now.sample.speed)
        line += format(", %.0f km/h", now.sample.speed->kmPerHour());
    if (now.state.mode == TrackerMode::consumptionOnly)
        line += ", by consumption alone";
    const auto age = now.sources.joiner().age(Channel::signal, timeOf(now));
    if (!age)
        line += ", no sender yet";
    else if (*age > kOldSignal)
        line += format(", sender %.0f s ago", age->count());
    std::cout << line << '\n';
}

void WatchNotices::tell(const LiveSources& sources)
{
    for (const Sentence& complaint : sources.complaints()) {
        const std::string text = english(complaint);
        if (std::ranges::find(m_said, text) != m_said.end())
            continue;
        m_said.push_back(text);
        warn(text);
    }
}

} // namespace undermark
