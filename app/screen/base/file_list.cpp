// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/file_list.h"

namespace undermark {

FileList::FileList(const QString& folder, QStringList patterns, const QString& own, QObject* parent)
    : QAbstractListModel(parent), m_start(folder), m_folder(folder),
      m_patterns(std::move(patterns)), m_own(own)
{
    refresh();
}

void FileList::refresh()
{
    beginResetModel();
    m_folder.refresh();
    m_entries.clear();
    if (isOwn(QFileInfo(m_folder.absolutePath())))
        m_entries.append(QFileInfo(m_start.absolutePath()));
    else if (!m_folder.isRoot())
        m_entries.append(QFileInfo(m_folder.absoluteFilePath(QStringLiteral(".."))));
    m_own.refresh();
    if (m_own.isDir() && !isOwn(QFileInfo(m_folder.absolutePath())))
        m_entries.append(m_own);
    m_entries += m_folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::IgnoreCase);
    m_entries += m_folder.entryInfoList(m_patterns, QDir::Files, QDir::Name | QDir::IgnoreCase);
    endResetModel();
    emit changed();
}

bool FileList::isOwn(const QFileInfo& entry) const
{
    return !m_own.filePath().isEmpty() && entry.absoluteFilePath() == m_own.absoluteFilePath();
}

int FileList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_entries.size());
}

QVariant FileList::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const QFileInfo& entry = m_entries[index.row()];
    if (role == Name && index.row() == 0 && entry.isDir() && !m_folder.isRoot())
        return tr("One folder up");
    if (role == Name)
        return isOwn(entry) ? tr("Undermark's own folder") : entry.fileName();
    if (role == IsFolder)
        return entry.isDir();
    return {};
}

QHash<int, QByteArray> FileList::roleNames() const
{
    return {{Name, "name"}, {IsFolder, "isFolder"}};
}

QString FileList::pick(int row)
{
    if (row < 0 || row >= m_entries.size())
        return {};
    const QFileInfo entry = m_entries[row];
    if (!entry.isDir())
        return entry.absoluteFilePath();
    m_folder = QDir(QDir::cleanPath(entry.absoluteFilePath()));
    refresh();
    return {};
}

} // namespace undermark
