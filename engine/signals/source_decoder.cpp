// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/source_decoder.h"

#include "engine/signals/nmea.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kShownOfGarbled = 60;
constexpr Seconds kFixGoodFor{2.0};
constexpr Seconds kUntimedPace{0.1};

std::string printable(std::string_view text)
{
    std::string shown(text.substr(0, kShownOfGarbled));
    for (char& c : shown) {
        if (c < ' ' || c > '~')
            c = '?';
    }
    return shown.empty() ? "a line without end" : shown;
}

} // namespace

FrameRules frameRulesOf(const SourceSpec& spec, std::optional<FuelKind> fuel)
{
    FrameRules out;
    out.fuel = fuel;
    const bool any = spec.language == FrameLanguage::any;
    if (any || spec.language == FrameLanguage::j1939)
        out.rules = j1939Rules();
    if (any)
        out.obd = ObdConversation::Part::listens;
    if (spec.language == FrameLanguage::obd) {
        const bool live = spec.kind == SourceKind::can || spec.kind == SourceKind::slcan;
        out.obd = live ? ObdConversation::Part::asks : ObdConversation::Part::listens;
    }
    return out;
}

std::vector<CanFilter> filtersOf(const FrameRules& rules)
{
    std::vector<CanFilter> filters;
    for (const FrameRule& rule : rules.rules)
        filters.push_back(rule.signal.match.filter());
    if (rules.obd)
        filters.insert(filters.end(), ObdConversation::kAnswers.begin(), ObdConversation::kAnswers.end());
    return filters;
}

SourceDecoder::SourceDecoder(SourceKind kind, const FrameRules& rules, Times times, std::uint32_t number,
                             std::size_t tank)
    : m_kind(kind), m_times(times), m_number(number), m_tank(tank), m_frames(rules.rules)
{
    if (rules.obd)
        m_obd = std::make_unique<ObdConversation>(*rules.obd, rules.fuel);
}

void SourceDecoder::takeBytes(std::string_view bytes, Seconds now, std::vector<TimedValue>& out)
{
    m_cutter.add(bytes, [&](std::string_view line) { takeLine(line, now, out); });
}

void SourceDecoder::finish(Seconds now, std::vector<TimedValue>& out)
{
    m_cutter.finish([&](std::string_view line) { takeLine(line, now, out); });
}

void SourceDecoder::takeLine(std::string_view line, Seconds now, std::vector<TimedValue>& out)
{
    const std::size_t before = out.size();
    const Heard heard = line.empty() ? Heard::garbled : understood(line, now, out);
    if (heard == Heard::garbled && m_counts.garbled == 0)
        m_counts.firstGarbled = printable(line);
    settle(heard, std::span(out).subspan(before));
}

void SourceDecoder::settle(Heard heard, std::span<TimedValue> values)
{
    ++m_counts.heard;
    m_counts.garbled += heard == Heard::garbled;
    m_counts.values += static_cast<long>(values.size());
    for (TimedValue& value : values) {
        value.sender ^= m_number * 0x85EBCA6Bu; // spread out
        value.channel = ofTank(value.channel, m_tank);
    }
}

Heard SourceDecoder::understood(std::string_view line, Seconds now, std::vector<TimedValue>& out)
{
    TimedFrame frame;
    Heard heard = Heard::garbled;
    switch (m_kind) {
    case SourceKind::candump: heard = parseCandump(line, frame); break;
    case SourceKind::asc: heard = m_asc.take(line, frame); break;
    case SourceKind::slcan:
    case SourceKind::can: heard = parseSlcan(line, frame); break;
    case SourceKind::nmea: return takeFix(line, now, out);
    case SourceKind::lines: {
        const std::size_t before = out.size();
        const Heard values = m_lines.take(line, now, out);
        if (out.size() == before)
            return values;
        const Seconds time = timeOf(m_lines.timed() ? out[before].time : paced(now), now);
        for (TimedValue& value : std::span(out).subspan(before))
            value.time = time;
        return values;
    }
    }
    return heard == Heard::value ? frameHeard(frame, timeOf(frame.time, now), out) : heard;
}

Heard SourceDecoder::frameHeard(const TimedFrame& frame, Seconds now, std::vector<TimedValue>& out)
{
    const Heard heard = m_frames.hear(frame, now, out);
    const Heard answer = m_obd ? m_obd->hear(frame, now, out) : Heard::nothing;
    return answer == Heard::nothing ? heard : answer;
}

Heard SourceDecoder::takeFix(std::string_view line, Seconds now, std::vector<TimedValue>& out)
{
    NmeaFix fix;
    const Heard heard = parseNmea(line, fix);
    if (heard != Heard::value)
        return heard;
    if (fix.utc)
        m_fixTime = fix.utc;
    if (!fix.speed)
        return Heard::nothing;
    out.push_back({timeOf(m_fixTime, now), Channel::speed, fix.speed->kmPerHour(), 0, kFixGoodFor});
    return Heard::value;
}

// A recording that tells no times is played at a pace.
Seconds SourceDecoder::paced(Seconds now)
{
    m_pace = std::max(now, m_pace + kUntimedPace);
    return m_pace;
}

Seconds SourceDecoder::timeOf(std::optional<Seconds> own, Seconds now)
{
    if (!own || m_times == Times::reader)
        return now;
    if (!m_shift)
        m_shift = now - *own;
    return *own + *m_shift;
}

std::optional<CanFrame> SourceDecoder::next(Seconds now)
{
    return m_obd ? m_obd->next(now) : std::nullopt;
}

} // namespace undermark
