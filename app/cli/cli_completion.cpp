// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_completion.h"

#include "app/car/car.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace undermark {

namespace {

// What the words before the last one come to.
struct TypedSoFar {
    const CLI::App* command = nullptr;
    const CLI::Option* open = nullptr;   // waits for its value
    int values = 0;                      // how many more of them
    std::size_t operands = 0;            // of `command`, known by their place
    std::filesystem::path logbook;
    std::string vehicle;
};

const CLI::Option* flagOf(const CLI::App& command, const std::string& flag)
{
    for (const CLI::App* app = &command; app; app = app->get_parent())
        if (const CLI::Option* option = app->get_option_no_throw(flag))
            return option;
    return nullptr;
}

const CLI::App* commandBelow(const CLI::App& command, const std::string& name)
{
    for (const CLI::App* below : command.get_subcommands([](const CLI::App*) { return true; }))
        if (below->get_name() == name)
            return below;
    return nullptr;
}

void takeValue(TypedSoFar& typed, const CLI::Option& option, const std::string& value)
{
    if (option.check_lname("logbook"))
        typed.logbook = value;
    else if (option.check_lname("vehicle"))
        typed.vehicle = value;
}

void takeFlag(TypedSoFar& typed, const std::string& word)
{
    const std::size_t equals = word.find('=');
    const CLI::Option* option = flagOf(*typed.command, word.substr(0, equals));
    if (option && equals != std::string::npos) {
        takeValue(typed, *option, word.substr(equals + 1));
    } else if (option && option->get_items_expected_min() > 0) {
        typed.open = option;
        typed.values = option->get_items_expected_min();
    }
}

void take(TypedSoFar& typed, const std::string& word)
{
    if (typed.open && word == "=")   // bash makes three words of --flag=value
        return;
    if (typed.open) {
        takeValue(typed, *typed.open, word);
        if (--typed.values == 0)
            typed.open = nullptr;
    } else if (word.starts_with('-')) {
        takeFlag(typed, word);
    } else if (const CLI::App* below = commandBelow(*typed.command, word)) {
        typed.command = below;
    } else {
        ++typed.operands;
    }
}

// "{a,b}" at the end of what --help calls a value.
std::vector<std::string> choicesIn(const std::string& typeName)
{
    const std::size_t from = typeName.find('{');
    if (from == std::string::npos)
        return {};
    const std::string inside = typeName.substr(from + 1, typeName.rfind('}') - from - 1);
    return CLI::detail::split(inside, ',');
}

bool namesAFile(const std::string& typeName)
{
    static constexpr const char* kOthers[] = {"BUNDLE", "FOLDER", "ROUTE"};
    return typeName.find("FILE") != std::string::npos || typeName.find(".csv") != std::string::npos
        || std::ranges::find(kOthers, typeName) != std::end(kOthers);
}

std::vector<std::string> vehicleNames(const TypedSoFar& typed)
{
    std::vector<std::string> names;
    const auto car = Car::open(typed.logbook, OpenMode::readOnly);
    const auto vehicles = car ? car->cars() : fail(car.error());
    if (vehicles)
        for (const auto& vehicle : *vehicles)
            names.push_back(vehicle.value.name);
    return names;
}

// Of the vehicle that was named, or the first one.
std::vector<std::string> modeNames(const TypedSoFar& typed)
{
    auto car = Car::open(typed.logbook, OpenMode::readOnly);
    const auto vehicles = car ? car->cars() : fail(car.error());
    if (!vehicles)
        return {};
    for (const auto& vehicle : *vehicles)
        if (vehicle.value.name == typed.vehicle && !car->showCar(vehicle.id.uuid))
            return {};
    std::vector<std::string> names;
    if (const auto log = car->log())
        for (const auto& mode : log->modes)
            names.push_back(mode.value.name);
    return names;
}

std::vector<std::string> valuesOf(const CLI::Option& option, const TypedSoFar& typed)
{
    if (option.check_lname("vehicle") || option.check_name("vehicle"))
        return vehicleNames(typed);
    if (option.check_lname("mode"))
        return modeNames(typed);
    const std::string typeName = option.get_type_name();
    if (namesAFile(typeName))
        return {kFileWanted};
    return choicesIn(typeName);
}

// Commands, or what stands at the next place.
std::vector<std::string> wordsFor(const TypedSoFar& typed)
{
    std::size_t place = 0;
    for (const CLI::Option* option : typed.command->get_options())
        if (option->get_positional() && place++ == typed.operands)
            return valuesOf(*option, typed);
    return commandsBelow(*typed.command);
}

} // namespace

std::vector<std::string> commandsBelow(const CLI::App& command)
{
    std::vector<std::string> names;
    for (const CLI::App* below : command.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(below->get_name());
    return names;
}

std::vector<std::string> flagsOf(const CLI::App& command)
{
    std::vector<std::string> flags;
    for (const CLI::App* app = &command; app; app = app->get_parent())
        for (const CLI::Option* option : app->get_options())
            for (const std::string& name : option->get_lnames())
                if (const std::string flag = "--" + name; std::ranges::find(flags, flag) == flags.end())
                    flags.push_back(flag);
    return flags;
}

std::vector<std::string> completions(const CLI::App& app, std::span<const std::string> words,
                                     const std::filesystem::path& logbook)
{
    TypedSoFar typed{.command = &app, .logbook = logbook, .vehicle = {}};
    const std::string last = words.empty() ? std::string() : words.back();
    for (std::size_t i = 0; i + 1 < words.size(); ++i)
        take(typed, words[i]);
    std::string begun = last;
    std::vector<std::string> offered;
    if (typed.open) {
        begun = last == "=" ? std::string() : last;
        offered = valuesOf(*typed.open, typed);
    } else {
        offered = last.starts_with('-') ? flagsOf(*typed.command) : wordsFor(typed);
    }
    if (offered != std::vector<std::string>{kFileWanted})
        std::erase_if(offered, [&](const std::string& word) { return !word.starts_with(begun); });
    return offered;
}

} // namespace undermark
