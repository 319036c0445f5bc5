// SPDX-License-Identifier: GPL-3.0-or-later
//
// The view models of all pages (app/screen/base/pages.h) over one car, kept in step: what one of them
// writes, the others read anew; so they do, within kWatch, with what another program
// writes to the logbook, and nothing that is being typed is lost by it.
#pragma once

#include "app/screen/ahead/plan_view_model.h"
#include "app/screen/base/driving_lock.h"
#include "app/screen/base/live_feed.h"
#include "app/screen/base/pages.h"
#include "app/screen/base/screen_settings.h"
#include "app/screen/base/setup_view_model.h"
#include "app/screen/base/trip_writer.h"
#include "app/screen/logbook/logbook_view_model.h"
#include "app/screen/now/now_view_model.h"
#include "app/screen/pump/pump_view_model.h"
#include "app/screen/tank/tank_view_model.h"

#include <QTimer>
#include <chrono>
#include <qqmlintegration.h>

namespace undermark {

inline constexpr std::chrono::seconds kWatch{2};

class Screen : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(ScreenModel) // QtQuick has a Screen of its own
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(QList<undermark::Page> pages READ pages NOTIFY pagesChanged FINAL)
    Q_PROPERTY(undermark::ScreenSettings* settings READ theSettings CONSTANT FINAL)
    Q_PROPERTY(undermark::DrivingLock* lock READ theLock CONSTANT FINAL)
    Q_PROPERTY(undermark::SetupViewModel* setup READ theSetup CONSTANT FINAL)

public:
    // `car` outlives the screen. Settings and half-typed answers are kept in the
    // INI file `settingsFile`; empty: nothing is kept.
    explicit Screen(Car& car, const QString& settingsFile = {},
                    const FileRoots& roots = {QDir::homePath(), filePlaces});

    ScreenSettings settings;
    LiveFeed feed; // the car's own sources
    DrivingLock lock;
    SetupViewModel setup;
    NowViewModel now;
    PumpViewModel pump;
    PlanViewModel ahead;
    TankViewModel tank;
    LogbookViewModel logbook;

    QList<Page> pages() { return pagesOf(*this); }
    ScreenSettings* theSettings() { return &settings; }
    DrivingLock* theLock() { return &lock; }
    SetupViewModel* theSetup() { return &setup; }

    // Listens to the sources kept with the car that is shown, whichever that is and whatever
    // they become; Now tells where they cannot be heard.
    void hearKeptSources();
    // Units and language anew, in every text.
    void setFormat();
    // The cars of the logbook, for the settings; and what the shown one's prices are in, which
    // goes before the currency of the settings.
    void listCars();

signals:
    void languageChanged();
    void pagesChanged(); // their titles

private:
    void follow(); // the feed, on all pages that ask for it
    // All but the page that wrote, which has done so already.
    void readAnew(const PageModel* writer);
    void showCar(int row);
    void startOver(); // with another car
    void followKept();

    Car& m_car;
    std::string m_currency; // that the car states, ISO 4217; empty: none
    TripWriter m_trips;
    std::optional<std::vector<LiveSource>> m_kept; // that are followed; nothing: others are
    std::vector<PageModel*> m_views; // of all pages
    QTimer m_watch;
};

} // namespace undermark
