// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is driven becomes trips of the logbook by itself, while the car's sources speak, and the
// level at the end of a drive is kept.
//
// Guarantees (each has a test in tests/app/screen/base/trip_writer_test.cpp):
//  * a drive is recorded once it is over, when fuel goes in, when another car is shown, and
//    when the program ends; killed, at its next start;
//  * recordings are not written: they were driven at another time;
//  * why no trips are written is told, and nothing else fails for it.
#pragma once

#include "app/car/drive_keeper.h"
#include "app/screen/base/live_feed.h"

#include <QObject>

namespace undermark {

class TripWriter : public QObject {
    Q_OBJECT

public:
    using Levels = std::function<std::vector<FollowedTank>()>;
    // Both outlive it. `mode` says how it is driven, `levels` what the tanks hold: as
    // DriveKeeper::take and tell.
    TripWriter(Car& car, LiveFeed& feed, std::function<std::string()> mode, Levels levels = {});
    ~TripWriter() override;

    // The drive is recorded as far as it went; what follows is another one.
    void end();
    // The same, and fuel went in.
    void fuelWentIn();
    // Another car is shown.
    void startOver();
    // Nothing: trips are written, or none was driven yet.
    const std::optional<Error>& problem() const { return m_problem; }

signals:
    void recorded(); // the log has a trip more
    void failed();   // problem() says why

private:
    bool ready(); // the journal is there, or was opened now
    void take(const Sample& sample);
    void look();
    void tellLevels();
    void heed(const Result<bool>& tripWritten);

    Car& m_car;
    LiveFeed& m_feed;
    std::function<std::string()> m_mode;
    Levels m_levels;
    std::optional<DriveKeeper> m_keeper;
    std::optional<Error> m_problem;
};

} // namespace undermark
