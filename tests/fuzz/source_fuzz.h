// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bytes of one kind of source, fed whole and cut in two anywhere: the same values, all of
// them possible, and whatever was not understood counted by line.
#pragma once

#include "engine/signals/joiner.h"
#include "engine/signals/source_decoder.h"
#include "tests/fuzz/fuzz_input.h"

#include <cmath>

namespace undermark::fuzz {

inline void checkJoined(const std::vector<TimedValue>& values)
{
    Joiner joiner;
    long samples = 0;
    for (const TimedValue& value : values) {
        require(isPossible(value.channel, value.value));
        while (const auto sample = joiner.next(value.time)) {
            require(std::isfinite(sample->time.count()));
            require(!sample->distance || sample->distance->km() >= 0.0);
            ++samples;
        }
        joiner.put(value);
    }
    // Each value keeps samples coming for as long as it is good, 75 s at most.
    require(samples <= static_cast<long>(values.size() + 1) * 760);
}

inline void checkSource(const char* source, const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return;
    const SourceSpec spec = parseSourceSpec(source).value();
    const FrameRules rules = frameRulesOf(spec, FuelKind::petrol);
    const std::string_view all(reinterpret_cast<const char*>(data) + 1, size - 1);
    const std::size_t cut = std::min<std::size_t>(data[0], all.size());
    SourceDecoder whole(spec.kind, rules, SourceDecoder::Times::own);
    SourceDecoder parts(spec.kind, rules, SourceDecoder::Times::own);
    std::vector<TimedValue> values, sameValues;
    whole.takeBytes(all, Seconds(1), values);
    whole.finish(Seconds(1), values);
    parts.takeBytes(all.substr(0, cut), Seconds(1), sameValues);
    parts.takeBytes(all.substr(cut), Seconds(1), sameValues);
    parts.finish(Seconds(1), sameValues);
    require(values == sameValues);
    require(whole.counts().garbled == parts.counts().garbled);
    require(whole.counts().garbled <= whole.counts().heard);
    require(whole.counts().values == static_cast<long>(values.size()));
    checkJoined(values);
}

} // namespace undermark::fuzz
