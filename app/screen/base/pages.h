// SPDX-License-Identifier: GPL-3.0-or-later
//
// The pages of the screen, named for the moment of use. This list is the one place that
// says which there are: the index dividers, --page, the self-test, the contact sheet and
// the tests read it. Another page is one entry here, its file in qml/pages, and its view
// model in Screen.
#pragma once

#include "app/screen/base/page_model.h"

#include <QVariantMap>
#include <qqmlintegration.h>
#include <span>

namespace undermark {

class Screen;

struct PageKind {
    const char* key;             // of --page, and of Main.qml's `page`
    const char* title;           // on its divider; to be translated in the context "Pages"
    const char* file;            // in qml/pages, without ending; requires `view`
    PageModel& (*view)(Screen&); // its view model
    bool whileMoving = false;    // may be read, and nothing is typed there, at any speed
    bool settings = false;       // its file requires `settings`, too
};

// In the order of the index dividers. Never empty.
std::span<const PageKind> pageKinds();

// A page of one screen, ready for QML.
struct Page {
    Q_GADGET
    QML_VALUE_TYPE(page)
    Q_PROPERTY(QString key MEMBER key FINAL)
    Q_PROPERTY(QString title MEMBER title FINAL)
    Q_PROPERTY(QString file MEMBER file FINAL)
    Q_PROPERTY(QVariantMap given MEMBER given FINAL)
    Q_PROPERTY(bool whileMoving MEMBER whileMoving FINAL)
public:
    QString key;
    QString title;
    QString file;
    QVariantMap given; // properties of the file
    bool whileMoving = false;
    friend bool operator==(const Page&, const Page&) = default;
};

// All of them, in the language of now.
QList<Page> pagesOf(Screen& screen);

} // namespace undermark
