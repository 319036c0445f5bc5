// SPDX-License-Identifier: GPL-3.0-or-later
//
// The command line of the touch screen.
#pragma once

#include "app/open_car.h"
#include "app/unit_format.h"
#include "engine/error.h"

#include <QSize>
#include <QString>
#include <QStringList>

namespace undermark {

struct LaunchOptions {
    CarSource source;
    int page = 0; // index of screenPages()
    bool night = false;
    double textScale = 1.0; // 1 to 2
    QSize size{800, 480};
    QString grab; // picture to save, or empty
    bool selfTest = false;
    Units units;
    QString answer; // --help, --version: print this and leave
};

// The names of --page, in the order of the index dividers.
QStringList screenPages();

// `arguments` include the program's name. Errors: badInput naming the flag,
// what was expected and what was found.
Result<LaunchOptions> parseLaunchOptions(const QStringList& arguments);

} // namespace undermark
