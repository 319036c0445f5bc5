// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/open_car.h"
#include "app/screen/base/main_window.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/translations.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

namespace undermark::test {

// What else a screen may be opened with.
struct OpenWith {
    QString language = "en";
    int textPercent = 100;
    bool demo = false; // makes the logbook, and is shown at its own time
    FileRoots roots; // of the lists of files
};

// The screen as the program opens it, in this process.
struct OpenScreen {
    Translations translations;
    Car car;
    Screen screen;
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;

    OpenScreen(const QString& logbook, QSize size, const QString& page, const OpenWith& with = {})
        : car(openCar({logbook.toStdString(), with.demo})), screen(car, {}, with.roots)
    {
        translations.use(with.language);
        screen.settings.override("language", with.language);
        screen.settings.override("text", with.textPercent);
        screen.setFormat();
        window = openMainWindow(engine, screen, page, size);
    }
};

// The same over the demo car.
struct OpenDemo {
    QTemporaryDir folder;
    std::unique_ptr<OpenScreen> open;

    OpenDemo(QSize size, const QString& page, OpenWith with = {})
    {
        with.demo = true;
        open = std::make_unique<OpenScreen>(folder.filePath("demo.sqlite"), size, page, with);
    }
    const std::vector<Entry<Fill>>& fills() { return (*open->car.knowledge())->log.fills; }
};

// Of small screens, as they are built into cars.
inline const QList<QSize> kScreenSizes{{800, 480}, {480, 800}, {1024, 600}, {1280, 720}};

// A row of test data for each of them, in the column "size".
inline void addScreenSizes()
{
    QTest::addColumn<QSize>("size");
    for (const QSize size : kScreenSizes)
        QTest::addRow("%dx%d", size.width(), size.height()) << size;
}

} // namespace undermark::test
