// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log of a car as a list, and tables and other logbooks in and out.
#include "app/car/car.h"

namespace undermark {

Result<LogPage> Car::logPage(const LogPageWish& wish) const
{
    return m_logbook && m_vehicle ? m_logbook->logPage(*m_vehicle, wish) : fail(why());
}

Result<LogCount> Car::logCount(std::optional<LogKind> kind) const
{
    return m_logbook && m_vehicle ? m_logbook->logCount(*m_vehicle, kind) : fail(why());
}

Result<std::int64_t> Car::logRow(std::optional<LogKind> kind, const LogRow& entry) const
{
    return m_logbook && m_vehicle ? m_logbook->logRow(*m_vehicle, kind, entry.id, entry.place)
                                  : fail(why());
}

template <class T>
Result<ImportPreview<T>> Car::previewImport(const std::filesystem::path& table,
                                            const ImportOptions& options) const
{
    const auto shown = vehicle();
    return shown ? undermark::previewImport<T>(*m_logbook, *shown, table, options)
                 : fail(shown.error());
}

template <class T> Result<ImportDone> Car::takeIn(const ImportPreview<T>& preview)
{
    return m_logbook && m_vehicle ? undermark::takeIn(*m_logbook, *m_vehicle, preview, m_clock())
                                  : fail(why());
}

template Result<ImportPreview<Fill>> Car::previewImport(const std::filesystem::path&,
                                                        const ImportOptions&) const;
template Result<ImportPreview<Trip>> Car::previewImport(const std::filesystem::path&,
                                                        const ImportOptions&) const;
template Result<ImportPreview<LevelRecord>> Car::previewImport(const std::filesystem::path&,
                                                               const ImportOptions&) const;
template Result<ImportDone> Car::takeIn(const ImportPreview<Fill>&);
template Result<ImportDone> Car::takeIn(const ImportPreview<LevelRecord>&);
template Result<ImportDone> Car::takeIn(const ImportPreview<Trip>&);

Result<MergeDone> Car::merge(const std::filesystem::path& otherLogbook)
{
    return m_logbook ? takeInLogbook(*m_logbook, otherLogbook, m_clock()) : fail(why());
}

Result<std::filesystem::path> Car::exportEverything(const std::filesystem::path& into) const
{
    return m_logbook ? undermark::exportEverything(*m_logbook, into, m_clock()) : fail(why());
}

} // namespace undermark
