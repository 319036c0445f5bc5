// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/pages.h"

#include "app/screen/base/screen.h"

#include <QCoreApplication>

namespace undermark {

namespace {

constexpr PageKind kPages[] = {
    {.key = "now",
     .title = QT_TRANSLATE_NOOP("Pages", "Now"),
     .file = "NowPage",
     .view = [](Screen& screen) -> PageModel& { return screen.now; },
     .whileMoving = true},
    {.key = "pump",
     .title = QT_TRANSLATE_NOOP("Pages", "Pump"),
     .file = "PumpPage",
     .view = [](Screen& screen) -> PageModel& { return screen.pump; }},
    {.key = "ahead",
     .title = QT_TRANSLATE_NOOP("Pages", "Ahead"),
     .file = "AheadPage",
     .view = [](Screen& screen) -> PageModel& { return screen.ahead; }},
    {.key = "tank",
     .title = QT_TRANSLATE_NOOP("Pages", "Tank"),
     .file = "TankPage",
     .view = [](Screen& screen) -> PageModel& { return screen.tank; }},
    {.key = "logbook",
     .title = QT_TRANSLATE_NOOP("Pages", "Logbook"),
     .file = "LogbookPage",
     .view = [](Screen& screen) -> PageModel& { return screen.logbook; },
     .settings = true},
};

} // namespace

std::span<const PageKind> pageKinds()
{
    return kPages;
}

QList<Page> pagesOf(Screen& screen)
{
    QList<Page> pages;
    for (const PageKind& kind : kPages) {
        QVariantMap given{{QStringLiteral("view"), QVariant::fromValue<QObject*>(&kind.view(screen))}};
        if (kind.settings)
            given.insert(QStringLiteral("settings"), QVariant::fromValue<QObject*>(&screen.settings));
        pages.append({QString::fromLatin1(kind.key),
                      QCoreApplication::translate("Pages", kind.title),
                      QString::fromLatin1(kind.file), given, kind.whileMoving});
    }
    return pages;
}

} // namespace undermark
