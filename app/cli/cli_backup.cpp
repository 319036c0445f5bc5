// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli backup, restore and merge: copies of the logbook, the way back, and
// two devices' logbooks made one.
#include "app/car/logbook_transfer.h"
#include "app/cli/cli_logbook.h"
#include "engine/logbook/backup.h"
#include "engine/logbook/photo_store.h"

#include <iostream>

namespace undermark {

namespace {

Result<void> runBackup(const std::optional<int>& keep, const CliContext& context)
{
    const auto logbook = Logbook::open(context.logbook, OpenMode::readOnly);
    if (!logbook)
        return fail(logbook.error());
    const auto copy = backUp(*logbook, now(), keep.value_or(kKeptBackups));
    if (!copy)
        return fail(copy.error());
    const std::size_t kept = backupsOf(context.logbook).size();
    if (context.json)
        print({{"backup", copy->string()}, {"kept", kept}});
    else
        std::cout << "Backed up to " << copy->string() << " (" << kept << " kept).\n";
    return {};
}

Result<void> runRestore(const std::string& file, const CliContext& context)
{
    const auto kept = restore(file, context.logbook, now());
    if (!kept)
        return fail(kept.error());
    if (const auto photos = takePhotos(file, context.logbook); !photos)
        return fail(photos.error());
    if (context.json)
        print({{"restored", file}, {"kept", kept->empty() ? Json() : Json(kept->string())}});
    else
        std::cout << "Restored from " << file << ".\n"
                  << (kept->empty() ? "" : "What was there is kept in " + kept->string() + ".\n");
    return {};
}

Result<void> runMerge(const std::string& file, const CliContext& context)
{
    auto logbook = Logbook::open(context.logbook, OpenMode::createIfMissing);
    if (!logbook)
        return fail(logbook.error());
    const auto done = takeInLogbook(*logbook, file, now());
    if (!done)
        return fail(done.error());
    const MergeReport& report = done->report;
    for (const Sentence& warning : done->warnings)
        warn(warning);
    if (context.json)
        print({{"added", report.added}, {"known", report.known}, {"same_name", report.sameName},
               {"backup", done->backup.string()}});
    else
        std::cout << "Took in " << report.added << " records, " << report.known
                  << " were here already. The logbook as it was: " << done->backup.filename().string()
                  << '\n';
    return {};
}

} // namespace

void addBackupCommand(CLI::App& app, CliContext& context)
{
    addCommand<std::optional<int>>(
        app, context, "backup", "a dated copy beside the logbook",
        [](CLI::App& command, std::optional<int>& keep) {
            addCount(command, "--keep", keep, {1, 1000, "1 to 1000 backups"}, "how many to keep (10)");
        },
        runBackup);
}

// Its operand is a file, called `value` and explained by `what` in --help.
static auto operand(const char* what, const char* value)
{
    return [what, value](CLI::App& command, std::string& file) {
        required(addText(command, "file", file, what, value));
    };
}

void addRestoreCommand(CLI::App& app, CliContext& context)
{
    addCommand<std::string>(app, context, "restore",
                            "a backup or bundle in the logbook's place; what was there is kept",
                            operand("backup or bundle", "FILE"), runRestore);
}

void addMergeCommand(CLI::App& app, CliContext& context)
{
    addCommand<std::string>(app, context, "merge", "take in another device's logbook or bundle",
                            operand("logbook or bundle", "BUNDLE"), runMerge);
}

} // namespace undermark
