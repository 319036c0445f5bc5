// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli mode add: a kind of driving of the user's own.
#include "app/cli/cli_logbook.h"

#include <iostream>

namespace undermark {

namespace {

struct ModeOptions {
    std::string name;
    std::optional<double> rate, rateSd;
};

Result<void> runMode(const ModeOptions& o, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    if (!car)
        return fail(car.error());
    Mode mode{o.name, std::nullopt};
    if (o.rate)
        mode.stated = Estimate<Consumption>{
            Consumption::fromLitresPer100Km(*o.rate),
            Consumption::fromLitresPer100Km(o.rateSd.value_or(0.2 * *o.rate))};
    const auto id = car->record(mode);
    if (!id)
        return fail(id.error());
    if (context.json)
        print({{"id", id->uuid}, {"name", mode.name}});
    else
        std::cout << "Added driving mode " << mode.name << ".\n";
    return {};
}

void addModeOptions(CLI::App& command, ModeOptions& options)
{
    required(addText(command, "name,--name", options.name, "its name"));
    addNumber(command, "--rate", options.rate, kPositive,
              "what it burns, as far as you know, L/100 km");
    addNumber(command, "--rate-sd", options.rateSd, kPositive, "how sure you are, L/100 km");
}

} // namespace

void addModeCommand(CLI::App& app, CliContext& context)
{
    CLI::App& mode = addGroup(app, "mode", "driving modes: add");
    addCommand<ModeOptions>(mode, context, "add",
                            "a driving mode of your own", addModeOptions, runMode);
}

} // namespace undermark
