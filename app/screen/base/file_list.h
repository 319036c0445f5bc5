// SPDX-License-Identifier: GPL-3.0-or-later
//
// Folders and files, as a list to touch: no dialog of the desktop is needed. Shown
// are folders and files of the endings asked for, nothing hidden; and the program's
// own folder, which may lie where hidden ones are.
#pragma once

#include <QAbstractListModel>
#include <QDir>
#include <qqmlintegration.h>

namespace undermark {

class FileList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(QString folder READ folder NOTIFY changed FINAL)

public:
    enum Role { Name = Qt::UserRole, IsFolder };

    // Starts in `folder`, and shows files like "*.csv". `own` is shown as the first entry
    // once it exists, and the way up from it leads back to `folder`.
    FileList(const QString& folder, QStringList patterns, const QString& own, QObject* parent = nullptr);

    QString folder() const { return m_folder.absolutePath(); }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    // Enters a folder and returns nothing, or returns the path of a file.
    QString pick(int row);
    // Reads the folder anew.
    Q_INVOKABLE void refresh();

signals:
    void changed();

private:
    bool isOwn(const QFileInfo& entry) const;

    QDir m_start;
    QDir m_folder;
    QStringList m_patterns;
    QFileInfo m_own;
    QFileInfoList m_entries; // the first one is the folder above, except at the root
};

} // namespace undermark
