// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/logbook_transfer.h"

#include "engine/logbook/backup.h"
#include "engine/logbook/photo_store.h"
#include "engine/tables/export_csv.h"

namespace undermark {

template <class T>
Result<ImportPreview<T>> previewImport(const Logbook& logbook, const Entry<Vehicle>& vehicle,
                                       const std::filesystem::path& file, ImportOptions options)
{
    options.vehicle = vehicle.value.name;
    const auto table = readTable<T>(file, options);
    if (!table)
        return fail(table.error());
    const auto entries = logbook.entries<T>(vehicle.id);
    if (!entries)
        return fail(entries.error());
    ImportPreview<T> preview;
    for (const std::size_t i : newRows(*table, *entries))
        preview.fresh.push_back(table->rows[i]);
    preview.duplicates = table->rows.size() - preview.fresh.size();
    preview.ofOthers = table->ofOthers;
    for (const std::string& column : table->unknownColumns)
        preview.warnings.push_back(
            Sentence::of("%1: column '%2' is not imported", file.string(), column));
    return preview;
}

template <class T>
Result<ImportDone> takeIn(Logbook& logbook, const EntryId& vehicle, const ImportPreview<T>& preview,
                          Instant now)
{
    if (preview.fresh.empty())
        return ImportDone{};
    const auto copy = backUp(logbook, now);
    if (!copy)
        return fail(copy.error());
    auto added = logbook.addAll<T>(vehicle, preview.fresh, now);
    if (!added)
        return fail(added.error());
    return ImportDone{std::move(*added), *copy};
}

template Result<ImportPreview<Fill>> previewImport(const Logbook&, const Entry<Vehicle>&,
                                                   const std::filesystem::path&, ImportOptions);
template Result<ImportPreview<Trip>> previewImport(const Logbook&, const Entry<Vehicle>&,
                                                   const std::filesystem::path&, ImportOptions);
template Result<ImportPreview<LevelRecord>> previewImport(const Logbook&, const Entry<Vehicle>&,
                                                          const std::filesystem::path&, ImportOptions);
template Result<ImportDone> takeIn(Logbook&, const EntryId&, const ImportPreview<Fill>&, Instant);
template Result<ImportDone> takeIn(Logbook&, const EntryId&, const ImportPreview<LevelRecord>&, Instant);
template Result<ImportDone> takeIn(Logbook&, const EntryId&, const ImportPreview<Trip>&, Instant);

Result<MergeDone> takeInLogbook(Logbook& logbook, const std::filesystem::path& other, Instant now)
{
    const auto copy = backUp(logbook, now);
    if (!copy)
        return fail(copy.error());
    auto report = logbook.merge(other);
    if (!report)
        return fail(report.error());
    MergeDone done{std::move(*report), *copy, {}};
    for (const std::string& name : done.report.sameName)
        done.warnings.push_back(
            Sentence::of("two vehicles are called %1 now: they were made apart", name));
    const auto photos = takePhotos(other, logbook.file());
    if (!photos)
        return fail(photos.error());
    if (photos->refused > 0)
        done.warnings.push_back(Sentence::of(
            "photos that are not what their names say were left out: %1", counted(photos->refused)));
    return done;
}

Result<void> exportBundle(const Logbook& logbook, const std::filesystem::path& file)
{
    if (const auto copied = logbook.copyTo(file); !copied)
        return copied;
    const auto photos = takePhotos(logbook.file(), file);
    return photos ? Result<void>() : fail(photos.error());
}

Result<void> exportTables(const Logbook& logbook, const std::filesystem::path& folder)
{
    const auto vehicles = readForExport(logbook);
    return vehicles ? exportCsv(*vehicles, folder) : fail(vehicles.error());
}

Result<std::filesystem::path> exportEverything(const Logbook& logbook, const std::filesystem::path& into,
                                               Instant now)
{
    const std::filesystem::path folder = freeDatedName(into / "export", now);
    if (const auto tables = exportTables(logbook, folder); !tables)
        return fail(tables.error());
    if (const auto bundle = exportBundle(logbook, folder / "logbook.sqlite"); !bundle) {
        std::error_code ignored;
        std::filesystem::remove_all(folder, ignored);
        return fail(bundle.error());
    }
    return folder;
}

} // namespace undermark
