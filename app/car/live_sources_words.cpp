// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is said about sources that do not speak as they should.
#include "app/car/live_sources.h"

namespace undermark {

std::vector<Sentence> LiveSources::complaints() const
{
    std::vector<Sentence> all;
    for (const Told& each : told()) {
        if (each.counts.garbled > 0)
            all.push_back(Sentence::of("%1: not understood: '%2'", each.source, each.counts.firstGarbled));
        if (each.lost > 0)
            all.push_back(Sentence::of("%1: the device was lost; it is tried again", each.source));
        else if (!each.there)
            all.push_back(Sentence::of("%1: the device is not there yet; it is tried again", each.source));
    }
    for (const Channel channel : kChannels) {
        if (m_joiner.leftOut(channel) > 0)
            all.push_back(Sentence::of("%1 comes from several senders: the first is heard, the others are left out",
                                       std::string(nameOf(channel))));
    }
    if (m_joiner.impossible() > 0)
        all.push_back(Sentence::of("values that cannot be are left out"));
    return all;
}

} // namespace undermark
