// SPDX-License-Identifier: GPL-3.0-or-later
//
// A number within a CAN frame: which frame, which bits, how they count. What DBC files and
// J1939's tables describe, and a --map by hand, is this one type.
#pragma once

#include "engine/signals/can_frame.h"

#include <limits>

namespace undermark {

// Bits of a frame as DBC files write them, "8|16@1+": first bit, number of bits, byte order
// (1: least significant byte first, counted up from the lowest bit; 0: most significant
// first, counted down from the highest bit), sign.
struct BitField {
    std::uint16_t start = 0;   // 8 * byte + bit, bit 0 the lowest of its byte
    std::uint8_t length = 1;   // 1 to 64
    bool lowByteFirst = true;
    bool isSigned = false;

    // As above; nothing where it is not so or has no bits of 8 to 64 bytes.
    static std::optional<BitField> parse(std::string_view text);
    // Raw bits; nothing where the frame is too short to hold them all.
    std::optional<std::uint64_t> in(std::span<const std::uint8_t> data) const;
    friend bool operator==(const BitField&, const BitField&) = default;
};

enum class RawKind : std::uint8_t { integer, float32, float64 }; // IEEE 754

// Whose frames: by their whole id, or by a J1939 parameter group of any sender or of one.
struct FrameMatch {
    std::uint32_t id = 0;              // or the group's number
    bool extended = false;
    bool isGroup = false;
    std::optional<std::uint8_t> source = {}; // of a group: the sender's address

    bool matches(const CanFrame& frame) const { return filter().passes(frame); }
    CanFilter filter() const; // that passes these frames and no other
};

// The parameter group of a 29-bit id (SAE J1939-21): 18 bits from bit 8 on; below PDU format
// 240 the low byte is an address and no part of it.
std::uint32_t groupOf(std::uint32_t id);

struct FrameSignal {
    FrameMatch match;
    BitField bits;
    RawKind kind = RawKind::integer;
    double factor = 1.0, offset = 0.0;
    // Raw numbers above say "not available" or "error".
    std::uint64_t mostRaw = std::numeric_limits<std::uint64_t>::max();
    // Multiplexed: only where these bits have this value.
    struct Selector {
        BitField bits;
        std::uint64_t value = 0;
    };
    std::optional<Selector> selector = {};

    // raw * factor + offset, of a frame that matches; nothing where it holds no value.
    std::optional<double> valueIn(const CanFrame& frame) const;
};

} // namespace undermark
