// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen.h"

namespace undermark {

Screen::Screen(CarService& car, Units units)
    : now(car, units), pump(car, units), ahead(car, units, QDir::homePath()), tank(car, units),
      logbook(car, units)
{
    connect(&pump, &PumpViewModel::stored, this, [this] { readAnew(&pump); });
    connect(&tank, &TankViewModel::stored, this, [this] { readAnew(&tank); });
    connect(&logbook, &LogbookViewModel::stored, this, [this] { readAnew(&logbook); });
}

void Screen::readAnew(const QObject* writer)
{
    now.refresh();
    if (writer != &pump && !pump.saved())
        pump.startAgain();
    ahead.refresh();
    if (writer != &tank)
        tank.refresh();
    if (writer != &logbook)
        logbook.refresh();
}

QVariantMap Screen::properties()
{
    return {{QStringLiteral("now"), QVariant::fromValue(&now)},
            {QStringLiteral("pump"), QVariant::fromValue(&pump)},
            {QStringLiteral("ahead"), QVariant::fromValue(&ahead)},
            {QStringLiteral("tank"), QVariant::fromValue(&tank)},
            {QStringLiteral("logbook"), QVariant::fromValue(&logbook)}};
}

} // namespace undermark
