// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/file_places.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QStandardPaths>
#include <QStorageInfo>
#include <algorithm>

namespace undermark {

namespace {

struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(FilePlaces)
};

bool isWhereSticksAre(const QString& folder)
{
    const QStringList roots{QStringLiteral("/media/"), QStringLiteral("/run/media/"), QStringLiteral("/mnt/")};
    return std::any_of(roots.begin(), roots.end(), [&](const QString& root) { return folder.startsWith(root); });
}

} // namespace

QList<FilePlace> filePlaces()
{
    QList<FilePlace> places;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes())
        if (volume.isReady() && isWhereSticksAre(volume.rootPath()))
            places.append({QFileInfo(volume.rootPath()).fileName(), volume.rootPath(), true});
    const auto add = [&](const QString& name, QStandardPaths::StandardLocation location) {
        const QString folder = QStandardPaths::writableLocation(location);
        if (QFileInfo(folder).isDir())
            places.append({name, folder});
    };
    add(PlaceWords::tr("Documents"), QStandardPaths::DocumentsLocation);
    add(PlaceWords::tr("Downloads"), QStandardPaths::DownloadLocation);
    return places;
}

} // namespace undermark
