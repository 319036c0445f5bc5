// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli vehicle source test: some seconds of what comes, and what was not understood.
#include "app/cli/cli_sources.h"

#include <iostream>

namespace undermark {

namespace {

struct SourceTestOptions {
    SourceOptions sources;
    std::optional<double> seconds;
};

void printFound(const LiveSources& sources, const Sample& newest, double seconds, bool json)
{
    Json all{{"seconds", seconds}, {"sources", Json::array()}};
    for (const LiveSources::Told& told : sources.told()) {
        if (json)
            all["sources"].push_back(sourceJson(told));
        else
            std::cout << sourceLine(told) << format(" (%.1f a second)\n", double(told.counts.values) / seconds);
    }
    for (const Channel channel : kChannels) {
        const auto value = newest.get(channel);
        const std::string name(nameOf(channel));
        const long others = sources.joiner().leftOut(channel);
        all[name] = value ? Json(*value) : Json();
        all["left_out"][name] = others;
        if (!json)
            std::cout << format("%-14s %s%s\n", name.c_str(), value ? format("%.10g", *value).c_str() : "nothing",
                                others > 0 ? format("; %ld values of other senders left out", others).c_str() : "");
    }
    if (json)
        print(all);
}

Result<void> runSourceTest(const SourceTestOptions& options, const CliContext& context)
{
    Result<LiveSources> sources = openSources(options.sources, context);
    if (!sources)
        return fail(sources.error());
    constexpr double kUsualSeconds = 5.0;
    const Seconds until(options.seconds.value_or(kUsualSeconds));
    const auto begin = std::chrono::steady_clock::now();
    Sample newest;
    Seconds now{};
    catchStop();
    while (now < until && !sources->ended() && !stopAsked()) {
        now = std::chrono::steady_clock::now() - begin;
        sources->take(std::min(now, until));
        while (const auto sample = sources->next()) {
            for (const Channel channel : kChannels) {
                if (const auto value = sample->get(channel))
                    newest.set(channel, *value);
            }
        }
        sources->wait(std::chrono::milliseconds(50));
    }
    printFound(*sources, newest, std::max(now, Seconds(0.1)).count(), context.json);
    return {};
}

void addSourceTestOptions(CLI::App& command, SourceTestOptions& options)
{
    addSourceFlags(command, options.sources);
    addNumber(command, "--for", options.seconds, kPositive, "seconds to listen (5)");
}

} // namespace

void addSourceCommands(CLI::App& vehicle, CliContext& context)
{
    CLI::App& source = addGroup(vehicle, "source", "where its values come from: test");
    addCommand<SourceTestOptions>(source, context, "test", "what comes from a source, and what is not understood",
                                  addSourceTestOptions, runSourceTest);
}

} // namespace undermark
