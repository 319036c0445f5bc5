// SPDX-License-Identifier: GPL-3.0-or-later
//
// A sentence with figures in it that nobody has written out yet: english() writes it in
// English, litres and km; the terminal a few of them in words of its own
// (app/cli/terminal_words.h), the screen in its own language and units
// (app/screen/base/sentence_text.h).
//
//     Sentence::of("%1 is about %2 more than was burnt: was a can filled as well?",
//                  amount(pumped), amount(more, 0))
//
// `of` is what lupdate looks for: its pattern goes into app/screen/i18n, context
// "undermark::Sentence". Hence whole sentences, one per case: no words from a variable,
// which other languages would have to bend. Units belong to the figures, not to the pattern.
#pragma once

#include "engine/base/quantity.h"

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace undermark {

struct Sentence;

// How a number is rounded: so many decimals, or so many significant digits.
struct Digits {
    constexpr Digits(int decimals) : count(decimals) {}
    static constexpr Digits significant(int number)
    {
        Digits digits(number);
        digits.areDecimals = false;
        return digits;
    }
    int count;
    bool areDecimals = true;
    friend bool operator==(const Digits&, const Digits&) = default;
};

template <class Q> struct Figure {
    Q value;
    Digits digits;
    std::string unit = {}; // of a plain number: V, ohm, % or nothing
    friend bool operator==(const Figure&, const Figure&) = default;
};

// A driving mode, which the screen may know by another name.
struct ModeWord {
    std::string name;
    friend bool operator==(const ModeWord&, const ModeWord&) = default;
};

// What stands for %1 to %9: a name as it is, a figure, a mode, or sentences (a list,
// "2 L, 5 L").
using Part = std::variant<std::string, Figure<Volume>, Figure<Distance>, Figure<double>, ModeWord,
                          std::vector<Sentence>>;

// A literal that names each of its `parts` parts, and no other: checked when compiled.
template <std::size_t parts> struct Pattern {
    consteval Pattern(const char* literal) : text(literal)
    {
        std::size_t seen = 0;
        for (std::size_t i = 0; i + 1 < text.size(); ++i) {
            if (text[i] == '%' && text[i + 1] > '0' && text[i + 1] <= '9')
                seen |= std::size_t(1) << (text[i + 1] - '1');
        }
        if (seen != (std::size_t(1) << parts) - 1)
            throw "a part without its place, or a place without its part";
    }
    std::string_view text;
};

struct Sentence {
    std::string_view pattern = {}; // English; empty: no sentence
    std::vector<Part> parts = {};
    std::vector<Sentence> next = {}; // said after it, a space between

    template <class... Parts> static Sentence of(Pattern<sizeof...(Parts)> pattern, Parts... parts)
    {
        return Sentence{pattern.text, {part(std::move(parts))...}, {}};
    }
    // A part by itself, nothing to translate: a figure of a list, a name, what the system
    // says. Of an empty text it is no sentence.
    static Sentence just(Part part);
    Sentence& operator+=(Sentence more)
    {
        next.push_back(std::move(more));
        return *this;
    }
    bool empty() const { return pattern.empty(); }
    friend bool operator==(const Sentence&, const Sentence&) = default;

    static Part part(Part some) { return some; }
    static Part part(Sentence some) { return std::vector<Sentence>{std::move(some)}; }
};

// Parts of the usual kinds.
inline Part amount(Volume value, Digits digits = 1)
{
    return Figure<Volume>{value, digits};
}
inline Part amount(Distance value, Digits digits = 0)
{
    return Figure<Distance>{value, digits};
}
inline Part amount(double value, Digits digits, std::string unit = {})
{
    return Figure<double>{value, digits, std::move(unit)};
}
inline Part counted(std::size_t n)
{
    return amount(double(n), 0);
}

// As printf would have written it: with a decimal point, litres and km.
std::string english(const Sentence& sentence);
// How sentences are written: english() for the terminal.
using SentenceWriter = std::function<std::string(const Sentence&)>;

// `pattern` with %1 to %9 replaced. Shared with the screen, so that both read it alike.
std::string filledIn(std::string_view pattern, std::size_t parts,
                     const std::function<std::string(std::size_t)>& write);

} // namespace undermark
