// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/outlook.h"

#include "engine/outlook/level.h"

#include <algorithm>
#include <cmath>

namespace undermark {

Result<Outlook> outlook(const CarKnowledge& car, const Question& question)
{
    const ModeRates rates = car.consumption.model.rates(question.now);
    RateTable table = rateTable(rates);
    if (std::find(table.names.begin(), table.names.end(), question.mode) == table.names.end()) {
        std::string known;
        for (const std::string& name : rates.modes)
            known += (known.empty() ? "" : ", ") + name;
        return fail(Error{ErrorCode::notFound,
                          Sentence::of("there is no driving mode of this name"),
                          {},
                          0,
                          "mode",
                          Sentence::just(known),
                          question.mode});
    }
    std::vector<Sentence> warnings;
    const Result<Level> level = findLevel(car, question, rates, table, warnings);
    if (!level)
        return fail(level.error());

    const std::size_t ahead = table.indexOf(question.mode);
    for (const auto& [mode, distance] : level->driven)
        table.basis.legs.push_back({distance, table.indexOf(mode)});
    table.basis.legs.push_back({Distance(), ahead});
    RangeBasis toDry = table.basis;
    table.basis.fuel = level->aboveZero;
    toDry.fuel = {level->usable.mean - car.surgeMargin(question.mode), level->usable.sd};
    const Result<RangeLaw> zeroLaw = RangeLaw::make(table.basis);
    const Result<RangeLaw> dryLaw = RangeLaw::make(toDry);
    if (!zeroLaw)
        return fail(zeroLaw.error());
    if (!dryLaw)
        return fail(dryLaw.error());

    // Litres now: what was there, less what the road took.
    Volume burnt;
    double variance = 0;
    const std::size_t n = table.names.size();
    for (const auto& [a, kmA] : level->driven) {
        burnt += table.basis.rates[table.indexOf(a)] * kmA;
        for (const auto& [b, kmB] : level->driven)
            variance += table.basis.rateCovariance[table.indexOf(a) * n + table.indexOf(b)]
                * kmA.km() * kmB.km();
    }
    const Distance driven = total(level->driven);
    variance += rates.tauSquaredPerKm * driven.km();
    const auto now = [&](Estimate<Volume> start) {
        return Estimate<Volume>{start.mean - burnt,
                                Volume::fromLitres(std::hypot(start.sd.litres(), std::sqrt(variance)))};
    };
    const double rateVariance = table.basis.rateCovariance[ahead * n + ahead];
    const Estimate<Consumption> rate{table.basis.rates[ahead],
                                     Consumption::fromLitresPerKm(std::sqrt(rateVariance))};
    return Outlook{question.mode,         level->source,      level->bound,
                   level->boundAt,        now(level->usable), now(level->aboveZero),
                   car.reserve.reserve(), rate,               level->sinceFill,
                   zeroLaw->after(driven), dryLaw->after(driven), std::move(warnings),
                   level->why};
}

} // namespace undermark
