// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/range/horizon.h"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace undermark {

namespace {

// As many decimals as the step has.
std::string label(double value, double step)
{
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed,
                                   decimals);
    return {text, end.ptr};
}

// Length of UTF-8 text in characters: every byte but the continuations.
int characters(const std::string& text)
{
    return static_cast<int>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

double running(const RangeLaw& law, Distance d)
{
    return 1.0 - law.dryBefore(d).value();
}

// Labels from left to right, each into the first row that is free there.
void placeLabels(std::vector<HorizonPeg>& pegs, const HorizonRequest& request)
{
    std::vector<double> rowEnd(static_cast<std::size_t>(request.labelRows), -1.0);
    for (HorizonPeg& peg : pegs) {
        const double width = std::min(1.0, characters(peg.name) * request.characterWidth);
        peg.labelFrom = std::clamp(peg.at - width / 2.0, 0.0, 1.0 - width);
        peg.labelTo = peg.labelFrom + width;
        const auto free = std::find_if(rowEnd.begin(), rowEnd.end(), [&](double end) {
            return end + request.characterWidth <= peg.labelFrom || end < 0.0;
        });
        if (free == rowEnd.end())
            continue;
        peg.row = static_cast<int>(free - rowEnd.begin());
        *free = peg.labelTo;
    }
}

} // namespace

double tickStep(double span, int most)
{
    assert(span > 0.0 && most > 0);
    const double least = span / most;
    const double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= least * (1.0 - 1e-12))
            return factor * power;
    }
    return 10.0 * power;
}

Horizon horizon(const RangeLaw& toZero, const RangeLaw& toDry, const HorizonRequest& request)
{
    assert(request.bands >= 64 && request.mostTicks >= 2 && request.unit > Distance());
    const Distances zero = distances(toZero);
    const Distances dry = distances(toDry);

    Horizon strip;
    const double seen = std::max(dry.p10 / request.unit, 1.0);
    const double whole = tickStep(seen, request.mostTicks);
    strip.length = request.length.value_or(std::ceil(seen / whole + 1e-9) * whole * request.unit);
    assert(strip.length > Distance());

    const auto within = [&](Distance d) -> std::optional<double> {
        const double at = d / strip.length;
        return at <= 1.0 ? std::optional(at) : std::nullopt;
    };
    for (int i = 0; i < request.bands; ++i) {
        const double from = static_cast<double>(i) / request.bands;
        const double to = static_cast<double>(i + 1) / request.bands;
        const Distance middle = strip.length * (0.5 * (from + to));
        strip.bands.push_back({from, to, running(toDry, middle), running(toZero, middle)});
    }
    strip.sureToZero = within(zero.p99);
    strip.zeroPost = within(zero.p50);
    strip.sureToDry = within(dry.p99);
    strip.evenToDry = within(dry.p50);
    if (strip.zeroPost) {
        const double end = within(dry.p10).value_or(1.0);
        strip.tail = HorizonTail{*strip.zeroPost, std::max(*strip.zeroPost, end)};
    }

    const double units = strip.length / request.unit;
    const double step = tickStep(units, request.mostTicks);
    for (int i = 0; i * step <= units * (1.0 + 1e-12); ++i)
        strip.ticks.push_back({std::min(1.0, i * step / units), label(i * step, step)});

    for (const HorizonPlace& place : request.places) {
        if (const auto at = within(place.ahead))
            strip.pegs.push_back({place.name, *at, running(toDry, place.ahead), {}, 0.0, 0.0});
        else
            ++strip.placesBeyond;
    }
    std::stable_sort(strip.pegs.begin(), strip.pegs.end(),
                     [](const HorizonPeg& a, const HorizonPeg& b) { return a.at < b.at; });
    placeLabels(strip.pegs, request);
    return strip;
}

} // namespace undermark
