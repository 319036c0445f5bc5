// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/main_window.h"

#include "app/screen/base/screen.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>

namespace undermark {

QQuickWindow* openMainWindow(QQmlApplicationEngine& engine, Screen& screen, const QString& page,
                             QSize size)
{
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("model"), QVariant::fromValue(&screen)},
                                 {QStringLiteral("page"), page},
                                 {QStringLiteral("width"), size.width()},
                                 {QStringLiteral("height"), size.height()}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Undermark/Ui/Main.qml")));
    return qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
}

} // namespace undermark
