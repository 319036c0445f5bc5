// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/sentence.h"

#include "engine/base/format.h"

namespace undermark {

namespace {

std::string number(double value, Digits digits)
{
    return format(digits.areDecimals ? "%.*f" : "%.*g", digits.count, value);
}

struct InEnglish {
    std::string operator()(const Figure<Volume>& figure) const
    {
        return number(figure.value.litres(), figure.digits) + " L";
    }
    std::string operator()(const Figure<Distance>& figure) const
    {
        return number(figure.value.km(), figure.digits) + " km";
    }
    std::string operator()(const Figure<double>& figure) const
    {
        return number(figure.value, figure.digits) + (figure.unit.empty() ? "" : " " + figure.unit);
    }
    std::string operator()(const std::string& name) const { return name; }
    std::string operator()(const ModeWord& mode) const { return mode.name; }
    std::string operator()(const std::vector<Sentence>& list) const
    {
        std::string text;
        for (const Sentence& one : list)
            text += (text.empty() ? "" : ", ") + english(one);
        return text;
    }
};

} // namespace

Sentence Sentence::just(Part part)
{
    const auto* text = std::get_if<std::string>(&part);
    if (text && text->empty())
        return {};
    return Sentence{"%1", {std::move(part)}, {}};
}

std::string english(const Sentence& sentence)
{
    std::string text = filledIn(sentence.pattern, sentence.parts.size(), [&](std::size_t i) {
        return std::visit(InEnglish{}, sentence.parts[i]);
    });
    for (const Sentence& next : sentence.next)
        text += " " + english(next);
    return text;
}

std::string filledIn(std::string_view pattern, std::size_t parts,
                     const std::function<std::string(std::size_t)>& write)
{
    std::string text;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool marked = pattern[i] == '%' && i + 1 < pattern.size();
        const std::size_t part = marked ? std::size_t(pattern[i + 1] - '1') : parts;
        if (part < parts) {
            text += write(part);
            ++i;
        } else {
            text += pattern[i];
        }
    }
    return text;
}

} // namespace undermark
