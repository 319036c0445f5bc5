// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli fill rule: what the user says about a fill that was flagged. A
// ruling supersedes the entry; the history keeps what was there.
#include "app/cli/cli_logbook.h"
#include "engine/consumption/correction.h"

#include <algorithm>
#include <iostream>

namespace undermark {

namespace {

enum class Ruling { accept, correct, leaveOut, reconsider };

Ruling rulingOf(const std::string& word)
{
    return word == "accept" ? Ruling::accept
        : word == "correct" ? Ruling::correct
        : word == "leave-out" ? Ruling::leaveOut
                              : Ruling::reconsider;
}

struct RuleOptions {
    std::string id;
    Ruling verdict = Ruling::accept;
    std::optional<double> litres, odometer, tripMeter;   // with `correct`
};

Result<std::size_t> findFill(const CarKnowledge& car, const std::string& beginning)
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < car.log.fills.size(); ++i)
        if (car.log.fills[i].id.uuid.starts_with(beginning))
            found.push_back(i);
    if (found.size() == 1)
        return found.front();
    if (found.empty())
        return fail(ErrorCode::notFound, Sentence::just("there is no fill of this id"),
                    {.column = "ID"}, Sentence::just("an id, or its beginning, as check prints it"),
                    beginning);
    return wrongUse("several fills begin with this id", "more characters of it", beginning);
}

Result<Fill> asTyped(Fill fill, const RuleOptions& o)
{
    if (o.odometer && !fill.odometer)
        return wrongUse("this fill was logged without an odometer", "--trip-meter-km");
    if (o.litres)
        fill.volume = Volume::fromLitres(*o.litres);
    if (o.odometer)
        fill.odometer = Distance::fromKm(*o.odometer);
    if (o.tripMeter)
        fill.sinceLast = Distance::fromKm(*o.tripMeter);
    fill.counted = std::nullopt;   // screened anew, with the figures the user stands for
    return fill;
}

Result<Fill> asProposed(const CarKnowledge& car, std::size_t index)
{
    for (const FillFlag& flag : car.consumption.flags) {
        if (flag.fill != index)
            continue;
        if (const auto fill = corrected(car.log.fills[index].value, flag))
            return *fill;
        if (flag.missing)
            return wrongUse("a fill is missing before this one, and its litres are not known",
                            "fill add --partial with its own date, or the ruling leave-out");
    }
    return wrongUse("nothing is proposed for this fill",
                    "--litres, --odometer-km or --trip-meter-km with what is right");
}

const char* outcomeOf(Ruling verdict)
{
    switch (verdict) {
    case Ruling::accept:
        return "It is right, and counts.";
    case Ruling::correct:
        return "Corrected.";
    case Ruling::leaveOut:
        return "Left out.";
    case Ruling::reconsider:
        return "The ruling is lifted.";
    }
    return "";
}

Result<Fill> ruled(const CarKnowledge& car, std::size_t index, const RuleOptions& o)
{
    Fill fill = car.log.fills[index].value;
    const bool typed = o.litres || o.odometer || o.tripMeter;
    if (o.verdict == Ruling::correct)
        return typed ? asTyped(fill, o) : asProposed(car, index);
    if (typed)
        return wrongUse("figures go with the ruling correct");
    fill.counted = o.verdict == Ruling::reconsider ? std::nullopt
                                                    : std::optional(o.verdict == Ruling::accept);
    return fill;
}

Result<void> runRule(const RuleOptions& o, const CliContext& context)
{
    auto opened = namedCar(context, OpenMode::readWrite);
    if (!opened)
        return fail(opened.error());
    const auto known = opened->knowledge();
    if (!known)
        return fail(known.error());
    const CarKnowledge& before = **known;
    const auto index = findFill(before, o.id);
    if (!index)
        return fail(index.error());
    const auto fill = ruled(before, *index, o);
    if (!fill)
        return fail(fill.error());
    const EntryId id = before.log.fills[*index].id;
    if (const auto done = opened->revise(id, *fill); !done)
        return done;
    const auto after = opened->knowledge();
    if (!after)
        return fail(after.error());
    const CarKnowledge& car = **after;
    for (const FlagLine& flag : flagsOfFill(car, *index))
        warn(flag.cause + ": " + flag.text);
    if (context.json) {
        print(fillJson(car, *index));
        return {};
    }
    const auto usual = [](const CarKnowledge& c) {
        return c.consumption.model.forecast().rate.mean.litresPer100Km();
    };
    std::cout << format("%s The usual mix: %.2f -> %.2f L/100 km (estimate). The entry as it was "
                        "stays in the history.\n", outcomeOf(o.verdict), usual(before), usual(car));
    return {};
}

void addFillRuleOptions(CLI::App& command, RuleOptions& options)
{
    required(addText(command, "id", options.id, "its id, or the beginning of it", "ID"));
    required(addOneOf(
        command, "verdict", {"accept", "correct", "leave-out", "reconsider"},
        [&options](const std::string& word) { options.verdict = rulingOf(word); },
        "accept: it is right as it is and counts; correct: take what is proposed, or the figures "
        "given; leave-out: keep it, learn nothing from it; reconsider: no ruling, let the "
        "screening decide",
        "VERDICT"));
    addNumber(command, "--litres", options.litres, kPositive, "with correct: litres pumped");
    addNumber(command, "--odometer-km", options.odometer, kNotNegative, "with correct: odometer");
    addNumber(command, "--trip-meter-km", options.tripMeter, kPositive,
              "with correct: km since the last fill");
}

} // namespace

void addFillRule(CLI::App& fill, CliContext& context)
{
    addCommand<RuleOptions>(fill, context, "rule",
                            "say what becomes of a flagged fill", addFillRuleOptions, runRule);
}

} // namespace undermark
