// SPDX-License-Identifier: GPL-3.0-or-later
//
// The command line of the touch screen.
#pragma once

#include "app/car/live_sources.h"
#include "app/car/open_car.h"
#include "app/screen/base/screen_settings.h"
#include "engine/base/error.h"

#include <QSize>
#include <QString>
#include <QStringList>
#include <QVariantMap>

namespace undermark {

struct LaunchOptions {
    CarSource source;
    QString page; // key of a PageKind
    QSize size{800, 480};
    QString grab; // picture to save, or empty
    bool selfTest = false;
    QString speeds;        // file or pipe of km/h, or empty
    SourceOptions live;    // the car's own sources; none: those kept with the car
    QVariantMap settings;  // said on the command line, for this run only
    QString answer;        // --help, --version: print this and leave

    // Where settings are kept; nowhere for pictures, tests and the demo.
    QString settingsFile() const;
    void applyTo(ScreenSettings& screen) const;
};

// `arguments` include the program's name. Errors: badInput naming the flag,
// what was expected and what was found.
Result<LaunchOptions> parseLaunchOptions(const QStringList& arguments);

} // namespace undermark
