// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/open_car.h"
#include "app/screen/base/main_window.h"
#include "app/screen/base/screen.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>

namespace undermark::test {

// The screen as the program opens it, in English, in this process.
struct OpenScreen {
    Car car;
    Screen screen{car};
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;

    OpenScreen(const QString& logbook, QSize size, const QString& page)
        : car(openCar({.logbook = logbook.toStdString()}))
    {
        screen.settings.override("language", "en");
        screen.setFormat();
        window = openMainWindow(engine, screen, page, size);
    }
};

// Of small screens, as they are built into cars.
inline const QList<QSize> kScreenSizes{{800, 480}, {480, 800}, {1024, 600}, {1280, 720}};

} // namespace undermark::test
