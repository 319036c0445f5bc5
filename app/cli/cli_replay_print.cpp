// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_replay.h"

#include "app/cli/cli_command.h"
#include "app/cli/cli_tracker_words.h"

#include <iostream>

namespace undermark {

void printReplayJson(const Replay& replay)
{
    Json json;
    const TrackState& last = replay.last;
    const bool known = replay.firstL.has_value();
    json["samples"] = replay.samples;
    json["equal_times"] = replay.equalTimes;
    json["first_l"] = known ? Json(*replay.firstL) : Json();
    json["last_l"] = known ? Json(last.level.mean.litres()) : Json();
    json["sd_l"] = known ? Json(last.level.sd.litres()) : Json();
    for (const char* list : kEventLists)
        json[list] = Json::array();
    for (const TrackerEvent& event : replay.events)
        json[listOf(event.kind)].push_back(eventJson(event, replay.tanks));
    json["nis_mean"] = last.nisCount > 0 ? Json(last.nisMean) : Json();
    json["mode"] = modeWord(last.mode);
    json["prior"] = replay.prior;
    json["scale"] = {{"mean", last.scale.mean.ratio()}, {"sd", last.scale.sd.ratio()}};
    json["used_l"] = last.used.litres();
    json["driven_km"] = last.driven.km();
    print(json);
}

void printReplayText(const Replay& replay)
{
    std::cout << format("%ld samples, %.1f km\n", replay.samples, replay.last.driven.km());
    if (replay.firstL)
        std::cout << format("%.1f L at first, %.1f L at last (estimated, sd %.1f L), litres since "
                            "drained\n",
                            *replay.firstL, replay.last.level.mean.litres(),
                            replay.last.level.sd.litres());
    else
        std::cout << "no level was read\n";
    if (replay.equalTimes > 0)
        std::cout << format("%ld rows share their time with the row before: averaged\n",
                            replay.equalTimes);
    if (replay.prior)
        std::cout << kPriorText << '\n';
    for (const TrackerEvent& event : replay.events)
        std::cout << eventLine(event, replay.tanks) << '\n';
}

} // namespace undermark
