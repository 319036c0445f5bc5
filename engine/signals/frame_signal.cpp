// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/frame_signal.h"

#include "engine/signals/text_fields.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace undermark {

namespace {

constexpr std::uint32_t kMostStart = 8 * 64 - 1;

double numberOf(std::uint64_t raw, const BitField& bits, RawKind kind)
{
    if (kind == RawKind::float64)
        return std::bit_cast<double>(raw);
    if (kind == RawKind::float32)
        return std::bit_cast<float>(static_cast<std::uint32_t>(raw));
    if (!bits.isSigned)
        return static_cast<double>(raw);
    const int unused = 64 - bits.length; // the sign bit is brought to the top and back
    return static_cast<double>(static_cast<std::int64_t>(raw << unused) >> unused);
}

} // namespace

std::optional<BitField> BitField::parse(std::string_view text)
{
    const auto start = wholeIn(nextField(text, '|'), 10);
    const auto length = wholeIn(nextField(text, '@'), 10);
    const bool sound = start && length && *start <= kMostStart && *length >= 1 && *length <= 64
        && text.size() == 2 && (text[0] == '0' || text[0] == '1') && (text[1] == '+' || text[1] == '-');
    if (!sound)
        return std::nullopt;
    return BitField{static_cast<std::uint16_t>(*start), static_cast<std::uint8_t>(*length),
                    text[0] == '1', text[1] == '-'};
}

std::optional<std::uint64_t> BitField::in(std::span<const std::uint8_t> data) const
{
    std::uint64_t raw = 0;
    std::size_t bit = start;
    for (unsigned i = 0; i < length; ++i) {
        if (bit / 8 >= data.size())
            return std::nullopt;
        const std::uint64_t one = (data[bit / 8] >> (bit % 8)) & 1u;
        if (lowByteFirst) {
            raw |= one << i;
            ++bit;
        } else {
            raw = raw << 1 | one;
            bit = bit % 8 == 0 ? bit + 15 : bit - 1; // on to the next byte's highest bit
        }
    }
    return raw;
}

std::uint32_t groupOf(std::uint32_t id)
{
    const std::uint32_t group = id >> 8 & 0x3FFFFu;
    return (group >> 8 & 0xFFu) < 240 ? group & 0x3FF00u : group;
}

CanFilter FrameMatch::filter() const
{
    if (!isGroup)
        return {id, kMostExtendedId, extended};
    // The low byte of a group below 240 is whom it is sent to (SAE J1939-21, as groupOf).
    const std::uint32_t group = (id >> 8 & 0xFFu) < 240 ? 0x3FF0000u : 0x3FFFF00u;
    return {id << 8 | source.value_or(0), group | (source ? 0xFFu : 0u), true};
}

std::optional<double> FrameSignal::valueIn(const CanFrame& frame) const
{
    if (selector && selector->bits.in(frame.bytes()) != selector->value)
        return std::nullopt;
    const auto raw = bits.in(frame.bytes());
    if (!raw || *raw > mostRaw)
        return std::nullopt;
    const double value = numberOf(*raw, bits, kind) * factor + offset;
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

} // namespace undermark
