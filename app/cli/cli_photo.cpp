// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli photo add|list|show: photos of the calibration's steps, kept beside the logbook.
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_tank.h"
#include "engine/base/record_words.h"
#include "engine/logbook/photo_store.h"

#include <iostream>

namespace undermark {

namespace {

struct PhotoOptions {
    std::string file, step, note, date, tank;
    std::optional<double> added;
};

Json photoJson(const CliContext& context, const Entry<Photo>& photo)
{
    return {{"id", photo.id.uuid},
            {"date", dateJson(photo.value.time)},
            {"step", wordOf(photo.value.step)},
            {"total_l", photo.value.added ? Json(photo.value.added->litres()) : Json()},
            {"note", photo.value.note ? Json(*photo.value.note) : Json()},
            {"tank", photo.value.tank ? Json(*photo.value.tank) : Json()},
            {"sha256", photo.value.sha256},
            {"format", wordOf(photo.value.format)},
            {"file", photoFile(context.logbook, photo.value).string()}};
}

std::string photoLine(const Entry<Photo>& photo)
{
    const Photo& value = photo.value;
    return format("%s  %s  %-12s %s", shortId(photo.id).c_str(), dateText(value.time).c_str(),
                  wordOf(value.step), value.added ? (fixed(value.added->litres()) + " L  ").c_str() : "")
           + value.note.value_or("");
}

Result<void> runPhotoAdd(const PhotoOptions& options, const CliContext& context)
{
    auto car = namedCar(context, OpenMode::readWrite);
    const auto time = car ? instantOr(options.date, car->time()) : fail(car.error());
    if (!time)
        return fail(time.error());
    auto photo = keepPhoto(context.logbook, options.file);
    if (!photo)
        return fail(photo.error());
    photo->time = *time;
    photo->step = options.step.empty() ? PhotoStep::other : *fromWord<PhotoStep>(options.step);
    if (options.added)
        photo->added = Volume::fromLitres(*options.added);
    if (!options.note.empty())
        photo->note = options.note;
    photo->tank = tankName(options.tank);
    const auto id = car->record(*photo);
    if (!id)
        return fail(id.error());
    if (context.json)
        print(photoJson(context, {*id, *time, *photo}));
    else
        std::cout << "Kept " << photoLine({*id, *time, *photo}) << '\n';
    return {};
}

Result<void> runPhotoList(const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    printKept(context, "photos", log->photos, [&](const Entry<Photo>& photo) { return photoJson(context, photo); }, photoLine,
              "No photo yet: photo add FILE --step drained.");
    return {};
}

// The photo whose id begins so, once its bytes are known to be what was kept.
Result<void> runPhotoShow(const std::string& id, const CliContext& context)
{
    const auto log = readLog(context);
    if (!log)
        return fail(log.error());
    for (const Entry<Photo>& photo : log->photos) {
        if (id.empty() || !photo.id.uuid.starts_with(id))
            continue;
        if (const auto bytes = photoBytes(context.logbook, photo.value); !bytes)
            return fail(bytes.error());
        if (context.json)
            print(photoJson(context, photo));
        else
            std::cout << photoLine(photo) << '\n'
                      << photoFile(context.logbook, photo.value).string() << '\n';
        return {};
    }
    return fail(ErrorCode::notFound, Sentence::just("there is no such photo"), {}, Sentence::just("an id of photo list"), id);
}

void addPhotoOptions(CLI::App& command, PhotoOptions& options)
{
    required(addText(command, "file", options.file, "a JPEG or PNG of up to 20 MiB", "PICTURE"));
    addWordOf<PhotoStep>(command, "--step", options.step,
                         "drained, base, reading, full, verification or other");
    addNumber(command, "--total-l", options.added, kNotNegative, "litres since drained when it was taken");
    addText(command, "--note", options.note, "what it shows");
    addTankOption(command, options.tank, "the tank that it is of");
    addText(command, "--date", options.date, "when it was taken, UTC; default now");
}

} // namespace

void addPhotoCommand(CLI::App& app, CliContext& context)
{
    CLI::App& photo = addGroup(app, "photo", "photos of the calibration's steps: add, list, show");
    addCommand<PhotoOptions>(photo, context, "add", "keep a picture beside the logbook, without what the camera noted in it",
                             addPhotoOptions, runPhotoAdd);
    CLI::App& list = addSubcommand(photo, "list", "the vehicle's photos");
    addJson(list, context);
    onRun(list, context, [&context] { return runPhotoList(context); });
    addCommand<std::string>(photo, context, "show", "one photo, and where it lies",
                            [](CLI::App& show, std::string& id) {
                                required(addText(show, "id", id, "its id, or how that begins", "ID"));
                            },
                            runPhotoShow);
}

} // namespace undermark
