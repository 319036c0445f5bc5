// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/file_list.h"

#include <algorithm>
#include <utility>

namespace undermark {

FileList::FileList(const FileRoots& roots, QStringList patterns, const QString& own, QObject* parent)
    : QAbstractListModel(parent), m_roots(roots), m_folder(roots.start),
      m_patterns(std::move(patterns)), m_own(own)
{
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, &FileList::refresh);
    connect(&m_look, &QTimer::timeout, this, &FileList::refresh);
    refresh();
}

void FileList::setWatched(bool watched)
{
    if (watched == m_look.isActive())
        return;
    if (!m_watcher.directories().isEmpty())
        m_watcher.removePaths(m_watcher.directories());
    if (watched) {
        m_look.start(kLookAgain);
        m_watcher.addPath(folder());
        refresh();
    } else {
        m_look.stop();
    }
    emit changed();
}

QList<FilePlace> FileList::placesNow() const
{
    QList<FilePlace> places;
    if (!m_own.isEmpty() && QFileInfo(m_own).isDir())
        places.append({tr("Undermark's own folder"), m_own});
    return m_roots.places ? places + m_roots.places() : places;
}

bool FileList::isPlace(const QString& folder) const
{
    return std::any_of(m_places.begin(), m_places.end(), [&](const FilePlace& place) {
        return QDir(place.folder).absolutePath() == folder;
    });
}

QList<FileList::Row> FileList::rowsNow() const
{
    QList<Row> rows;
    const bool starting = folder() == QDir(m_roots.start).absolutePath();
    const bool leadsBack = !starting && isPlace(folder());
    if (leadsBack || !m_folder.isRoot())
        rows.append({tr("One folder up"), QFileInfo(leadsBack ? QDir(m_roots.start).absolutePath()
                                                              : QDir::cleanPath(m_folder.absoluteFilePath(QStringLiteral(".."))))});
    if (starting)
        for (const FilePlace& place : m_places)
            rows.append({place.name, QFileInfo(place.folder)});
    for (const QFileInfo& each : m_folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::IgnoreCase))
        if (!isPlace(each.absoluteFilePath()) || !starting)
            rows.append({each.fileName(), each});
    for (const QFileInfo& each : m_folder.entryInfoList(m_patterns, QDir::Files, QDir::Name | QDir::IgnoreCase))
        rows.append({each.fileName(), each});
    return rows;
}

void FileList::refresh()
{
    if (!m_folder.exists()) // what it stood in was taken away
        m_folder = QDir(m_roots.start);
    m_folder.refresh();
    const QList<FilePlace> places = placesNow();
    const bool moved = places != std::exchange(m_places, places);
    const QList<Row> rows = rowsNow();
    if (rows == m_rows && !moved)
        return;
    beginResetModel();
    m_rows = rows;
    endResetModel();
    emit changed();
}

int FileList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant FileList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[index.row()];
    if (role == Name)
        return row.name;
    if (role == IsFolder)
        return row.file.isDir();
    return {};
}

QHash<int, QByteArray> FileList::roleNames() const
{
    return {{Name, "name"}, {IsFolder, "isFolder"}};
}

QString FileList::pick(int row)
{
    if (row < 0 || row >= m_rows.size())
        return {};
    const QFileInfo file = m_rows[row].file;
    if (!file.isDir())
        return file.absoluteFilePath();
    m_folder = QDir(QDir::cleanPath(file.absoluteFilePath()));
    if (watched()) {
        m_watcher.removePaths(m_watcher.directories());
        m_watcher.addPath(folder());
    }
    refresh();
    return {};
}

} // namespace undermark
