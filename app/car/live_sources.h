// SPDX-License-Identifier: GPL-3.0-or-later
//
// All sources of a car, joined: devices read without waiting, decoded, joined to samples.
//
//     sources.take(now);                       // whenever something may have come
//     while (auto sample = sources.next())
//         tracker.add(*sample);
//     sources.wait(until);                     // or an event loop over handles()
//
// `now` is seconds of a clock that never goes back, from 0 when it was opened; a recording is
// played by it, so it may go faster than the wall's.
//
// Guarantees (each has a test in tests/app/car/live_sources_test.cpp):
//  * several sources are joined by time; what one says does not wait for the other;
//  * what a further tank's source says of a level is that tank's, all else is the car's;
//  * a device that was lost is opened again after 1, 2, 5, then every 10 s;
//  * what is not understood, who was left out, and what was lost is said once.
#pragma once

#include "app/car/source_device.h"
#include "engine/base/records.h"
#include "engine/signals/joiner.h"
#include "engine/signals/source_decoder.h"

#include <filesystem>

namespace undermark {

struct SourceOptions {
    std::vector<std::string> sources;        // source_spec.h; none: those kept with the car
    std::filesystem::path map;               // of their frames to channels; empty: by the source's word
    std::optional<FuelKind> fuel = {};       // of the car
    bool heardWhole = false;                 // a bus also says what nobody understands
    bool mayBeAway = false;                  // a device that is not there yet is waited for
    std::vector<LiveSource> kept = {};       // with the car
    std::vector<std::string> tanks = {};     // its further ones, in order of recording
    std::vector<std::pair<std::string, std::string>> ofTanks = {}; // sources beside those above: tank, source
};

class LiveSources {
public:
    // badInput for a source or map that is not understood, fileAccess for one that cannot be
    // opened.
    static Result<LiveSources> open(const SourceOptions& options);

    void take(Seconds now);
    std::optional<Sample> next();
    // Until something may have come, `longest` of the wall clock at most.
    void wait(std::chrono::milliseconds longest) const;

    // Every source was a recording and has been played.
    bool ended() const;
    // Whether all are recordings: time is then theirs.
    bool recorded() const;

    struct Told {
        std::string source;   // as the user named it
        const SourceCounts& counts;
        int lost = 0;         // times that the device was lost
        bool there = true;    // now
    };
    std::vector<Told> told() const;
    // What is wrong with them, each thing once (live_sources_words.cpp).
    std::vector<Sentence> complaints() const;
    const Joiner& joiner() const { return m_joiner; }
    Seconds now() const { return m_now; }

private:
    struct Source {
        SourceSpec spec;
        std::string name;
        std::optional<SourceDevice> device;
        SourceDecoder decoder;
        std::vector<CanFilter> filters;
        std::vector<TimedValue> values = {}; // not yet joined, from `next` on
        std::size_t next = 0;
        int lost = 0, tries = 0;
        Seconds tryAt{};
        bool ended = false;
    };
    void read(Source& source);
    void readDevice(Source& source);
    void tryAgain(Source& source);
    Source* earliest();

    std::vector<Source> m_sources;
    Joiner m_joiner;
    Seconds m_now{};
};

} // namespace undermark
