// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where files are looked for: a folder to start in, and places a touch away from it.
#pragma once

#include <QList>
#include <QString>
#include <functional>

namespace undermark {

// A folder under a name of its own.
struct FilePlace {
    QString name;
    QString folder;
    bool stick = false; // can be taken away: a stick or card that is mounted
    friend bool operator==(const FilePlace&, const FilePlace&) = default;
};

// Of this machine, now: what is mounted where sticks and cards are (/media, /run/media, /mnt),
// then documents and downloads. Cost: one look at the table of mounts.
QList<FilePlace> filePlaces();

struct FileRoots {
    QString start;
    std::function<QList<FilePlace>()> places; // asked again and again; absent: there are none

    FileRoots(const QString& folder = {}, std::function<QList<FilePlace>()> of = {}) : start(folder), places(std::move(of)) {}
};

} // namespace undermark
