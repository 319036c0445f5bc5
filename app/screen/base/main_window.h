// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>

class QQmlApplicationEngine;
class QQuickWindow;

namespace undermark {

class Screen;

// The window over `screen`, opened at the page with that key; owned by `engine`, null where it
// could not be made. `screen` outlives the engine.
QQuickWindow* openMainWindow(QQmlApplicationEngine& engine, Screen& screen, const QString& page,
                             QSize size);

} // namespace undermark
