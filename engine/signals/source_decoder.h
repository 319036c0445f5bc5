// SPDX-License-Identifier: GPL-3.0-or-later
//
// One source, from its bytes to values: cut to lines, read as frames, understood by rules.
// Without devices and clocks: who reads (app/car/live_sources.h) passes in bytes and times,
// and sends what next() gives.
//
// Guarantees (each has a test in tests/engine/signals/source_decoder_test.cpp):
//  * the same values come out wherever the bytes were split;
//  * what is not understood is counted, the first of it kept to be shown; it changes nothing;
//  * a recording's own times are kept, shifted so that its first is when it was read first;
//    live, a value is of the moment its last byte came; a recording of lines without times is
//    ten lines a second.
#pragma once

#include "engine/signals/frame_values.h"
#include "engine/signals/line_cutter.h"
#include "engine/signals/line_values.h"
#include "engine/signals/obd_conversation.h"
#include "engine/signals/source_spec.h"

#include <memory>

namespace undermark {

struct SourceCounts {
    long heard = 0;          // frames, or lines where there are none
    long values = 0;
    long garbled = 0;
    std::string firstGarbled; // as it came, 60 bytes at most; what cannot be printed as '?'
};

// How frames are understood.
struct FrameRules {
    std::vector<FrameRule> rules;
    std::optional<ObdConversation::Part> obd; // nothing: answers of OBD are not heard
    std::optional<FuelKind> fuel = {};
};
// Of a source without a map: by its word.
FrameRules frameRulesOf(const SourceSpec& spec, std::optional<FuelKind> fuel);
// All frames that these understand, and no other, for a bus that sends thousands a second.
std::vector<CanFilter> filtersOf(const FrameRules& rules);

class SourceDecoder {
public:
    // Whose times values carry: a recording's own, or those of who reads a live device.
    enum class Times : std::uint8_t { own, reader };
    // `number` tells the senders of several sources apart; readings are of `tank`, as in ofTank().
    SourceDecoder(SourceKind kind, const FrameRules& rules, Times times, std::uint32_t number = 0,
                  std::size_t tank = 0);

    // Values are added to `out`. `now` never goes back.
    void takeBytes(std::string_view bytes, Seconds now, std::vector<TimedValue>& out);
    void finish(Seconds now, std::vector<TimedValue>& out); // a last line without its end

    // A frame to send at `now`, if any; ask again until there is none.
    std::optional<CanFrame> next(Seconds now);

    const SourceCounts& counts() const { return m_counts; }

private:
    void takeLine(std::string_view line, Seconds now, std::vector<TimedValue>& out);
    Heard understood(std::string_view line, Seconds now, std::vector<TimedValue>& out);
    Heard takeFix(std::string_view line, Seconds now, std::vector<TimedValue>& out);
    Heard frameHeard(const TimedFrame& frame, Seconds now, std::vector<TimedValue>& out);
    Seconds paced(Seconds now);
    Seconds timeOf(std::optional<Seconds> own, Seconds now);
    void settle(Heard heard, std::span<TimedValue> values);

    SourceKind m_kind;
    Times m_times;
    std::uint32_t m_number;
    std::size_t m_tank;
    LineCutter m_cutter;
    AscReader m_asc;
    LineValues m_lines;
    FrameValues m_frames;
    std::unique_ptr<ObdConversation> m_obd;
    std::optional<Seconds> m_shift;   // from the source's own times to those passed in
    Seconds m_pace{-1.0};             // lines without times: of the one before
    std::optional<Seconds> m_fixTime; // NMEA: of the newest sentence that has one
    SourceCounts m_counts;
};

} // namespace undermark
