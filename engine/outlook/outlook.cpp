// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/outlook.h"

#include "engine/outlook/level.h"

namespace undermark {

namespace {

tl::unexpected<Error> unknownMode(const ModeRates& learnt, const std::string& mode)
{
    std::string known;
    for (const std::string& name : learnt.modes)
        known += (known.empty() ? "" : ", ") + name;
    return fail(ErrorCode::notFound, Sentence::of("there is no driving mode of this name"),
                {.column = "mode"}, Sentence::just(known), mode);
}

} // namespace

Result<Outlook> outlook(const CarKnowledge& car, const Question& question)
{
    Question asked = question;
    if (!asked.now.begin)
        asked.now.begin = car.now().begin;
    const ModeRates learnt = car.consumption.model.rates(asked.now);
    JointLaw law;
    law.rates = asked.rate ? statedRates(learnt, *asked.rate) : rateModel(learnt);
    const auto ahead = law.rates.indexOf(question.mode);
    if (!ahead)
        return unknownMode(learnt, question.mode);
    std::vector<Sentence> warnings;
    const Result<Level> level = findLevel(car, asked, learnt, law.rates, warnings);
    if (!level)
        return fail(level.error());
    if (auto words = whatWouldTeach(car))
        warnings.push_back(std::move(*words));
    law.usable = level->usable;
    law.aboveZero = level->aboveZero;
    for (const std::string& mode : law.rates.modes)
        law.surge.push_back(car.surgeMargin(mode));
    law.driven = roadSince(*level, law.rates);
    Result<RangeLaw> toZero = law.toZero(*ahead);
    if (!toZero)
        return fail(toZero.error());
    Result<RangeLaw> toDry = law.toDry(*ahead);
    if (!toDry)
        return fail(toDry.error());
    return Outlook{question.mode,
                   level->source,
                   level->bound,
                   level->boundAt,
                   law.now(level->usable),
                   law.now(level->aboveZero),
                   car.hiddenReserve(),
                   law.rates.rateOf(*ahead),
                   level->asOf,
                   level->sinceFill,
                   level->likelySinceFill,
                   level->unlogged,
                   std::move(*toZero),
                   std::move(*toDry),
                   std::move(law),
                   level->tanks,
                   std::move(warnings),
                   level->why};
}

Result<Distances> pastZero(const CarKnowledge& car, const std::string& mode,
                           const Circumstances& now)
{
    Question atZero;
    atZero.now = now;
    atZero.mode = mode;
    atZero.usable = car.hiddenReserve();
    const Result<Outlook> there = outlook(car, atZero);
    if (!there)
        return fail(there.error());
    return distances(there->toDry);
}

} // namespace undermark
