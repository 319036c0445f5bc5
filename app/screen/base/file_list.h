// SPDX-License-Identifier: GPL-3.0-or-later
//
// Folders and files, as a list to touch: no dialog of the desktop is needed. Shown
// are folders and files of the endings asked for, nothing hidden. From the folder it starts
// in places are a touch away: the program's own folder, which may lie where hidden ones are,
// and those of FileRoots; the way up from a place leads back. While it is watched it shows
// what is copied in, and what is mounted, within kLookAgain.
#pragma once

#include "app/screen/base/file_places.h"

#include <QAbstractListModel>
#include <QDir>
#include <QFileSystemWatcher>
#include <QTimer>
#include <chrono>
#include <qqmlintegration.h>

namespace undermark {

inline constexpr std::chrono::seconds kLookAgain{2};

class FileList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(QString folder READ folder NOTIFY changed FINAL)
    Q_PROPERTY(bool watched READ watched WRITE setWatched NOTIFY changed FINAL)

public:
    enum Role { Name = Qt::UserRole, IsFolder };

    // Shows files like "*.csv". `own` is a place once it exists.
    FileList(const FileRoots& roots, QStringList patterns, const QString& own, QObject* parent = nullptr);

    QString folder() const { return m_folder.absolutePath(); }
    bool watched() const { return m_look.isActive(); }
    void setWatched(bool watched);
    const QList<FilePlace>& places() const { return m_places; } // as of refresh()
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    // Enters a folder and returns nothing, or returns the path of a file.
    QString pick(int row);
    // Reads folder and places anew.
    Q_INVOKABLE void refresh();

signals:
    void changed();

private:
    struct Row {
        QString name;
        QFileInfo file;
        friend bool operator==(const Row&, const Row&) = default;
    };
    QList<FilePlace> placesNow() const;
    QList<Row> rowsNow() const;
    bool isPlace(const QString& folder) const;

    FileRoots m_roots;
    QDir m_folder;
    QStringList m_patterns;
    QString m_own;
    QList<FilePlace> m_places;
    QList<Row> m_rows;
    QFileSystemWatcher m_watcher;
    QTimer m_look; // for what is mounted, which no watcher tells of
};

} // namespace undermark
