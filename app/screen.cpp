// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen.h"

namespace undermark {

Screen::Screen(CarService& car, const QString& settingsFile)
    : settings(settingsFile), setup(car, settings.format(), settingsFile), now(car), pump(car),
      ahead(car, {}, QDir::homePath()), tank(car), logbook(car, {}, QDir::homePath()), m_car(car)
{
    connect(&setup, &SetupViewModel::stored, this, [this] {
        tank.guide()->takeUp();
        readAnew(&setup);
    });
    connect(&pump, &PumpViewModel::stored, this, [this] { readAnew(&pump); });
    connect(&tank, &TankViewModel::stored, this, [this] { readAnew(&tank); });
    connect(&logbook, &LogbookViewModel::stored, this, [this] { readAnew(&logbook); });
    connect(&settings, &ScreenSettings::formatChanged, this, [this] {
        emit languageChanged();
        setFormat();
    });
    connect(&m_watch, &QTimer::timeout, this, [this] {
        if (m_car.writtenElsewhere())
            readAnew(nullptr);
    });
    m_watch.start(kWatch);
    setFormat();
}

void Screen::setFormat()
{
    const UnitFormat format = settings.format();
    setup.setFormat(format);
    now.setFormat(format);
    pump.setFormat(format);
    ahead.setFormat(format);
    tank.setFormat(format);
    logbook.setFormat(format);
    emit settings.changed(); // its own words, too
}

void Screen::readAnew(const QObject* writer)
{
    now.refresh();
    if (writer == &setup && !pump.saved()) // another car: its numbers are others
        pump.startAgain();
    else if (writer != &pump)
        pump.refresh();
    ahead.refresh();
    if (writer != &tank)
        tank.refresh();
    if (writer != &logbook)
        logbook.refresh();
}

QVariantMap Screen::properties()
{
    return {{QStringLiteral("settings"), QVariant::fromValue(&settings)},
            {QStringLiteral("lock"), QVariant::fromValue(&lock)},
            {QStringLiteral("setup"), QVariant::fromValue(&setup)},
            {QStringLiteral("now"), QVariant::fromValue(&now)},
            {QStringLiteral("pump"), QVariant::fromValue(&pump)},
            {QStringLiteral("ahead"), QVariant::fromValue(&ahead)},
            {QStringLiteral("tank"), QVariant::fromValue(&tank)},
            {QStringLiteral("logbook"), QVariant::fromValue(&logbook)}};
}

} // namespace undermark
