// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of the records' enumerations, wherever one is written or read: in the
// logbook, in tables, on the command line. What is in a logbook can never be renamed.
#pragma once

#include "engine/base/records.h"

#include <array>
#include <optional>
#include <string_view>

namespace undermark {

// In the order of the enumerators.
template <class E> inline constexpr std::array<const char*, 0> kWords{};
template <> inline constexpr std::array kWords<FuelKind>{"petrol", "diesel", "lpg", "ethanol"};
template <> inline constexpr std::array kWords<CircuitKind>{"direct", "resistive", "ratiometric",
                                                            "percent", "counts"};
template <> inline constexpr std::array kWords<FillExtent>{"full", "partial", "neck"};
template <> inline constexpr std::array kWords<ProofKind>{"drained", "base", "stalled", "past-zero"};
template <> inline constexpr std::array kWords<LevelOrigin>{"typed", "followed"};
template <> inline constexpr std::array kWords<TankFeed>{"shared", "chosen", "pumped-over"};
template <> inline constexpr std::array kWords<TankForm>{"box", "cylinder", "ellipse"};
template <> inline constexpr std::array kWords<PhotoStep>{"drained", "base", "reading", "full",
                                                          "verification", "other"};
template <> inline constexpr std::array kWords<PhotoFormat>{"jpeg", "png"};

template <class E>
    requires(!kWords<E>.empty())
constexpr const char* wordOf(E value)
{
    return kWords<E>.at(static_cast<std::size_t>(value));
}

// Nothing for a word that is none of them.
template <class E>
constexpr std::optional<E> fromWord(std::string_view word)
{
    for (std::size_t i = 0; i < kWords<E>.size(); ++i)
        if (word == kWords<E>[i])
            return static_cast<E>(i);
    return std::nullopt;
}

} // namespace undermark
