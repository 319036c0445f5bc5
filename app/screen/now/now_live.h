// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Now page while the car speaks: the level that its sources show, how old that is, what
// happened to it, and what is to be asked about.
//
// Guarantees (each has a test in tests/app/screen/now/now_live_test.cpp):
//  * of a source silent for 3 s the age is greyed; after 10 s the log answers, which is said;
//  * a refuel is asked about as long as it can be spoken of, and what the pump showed, or
//    that none went in, teaches the level; so does the log, where the fill is taken back or
//    corrected;
//  * faults are notices until they are over;
//  * a mode is proposed by the speed, and taken by a touch only.
#pragma once

#include "app/car/drive_keeper.h"
#include "app/screen/base/live_feed.h"
#include "app/screen/base/unit_format.h"
#include "engine/tracking/speed_mode.h"

#include <qqmlintegration.h>

namespace undermark {

class NowLive : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the Now page's view model")
    Q_PROPERTY(bool quiet READ quiet NOTIFY aged FINAL)
    Q_PROPERTY(bool stands READ stands NOTIFY refuelSeen FINAL)
    Q_PROPERTY(QString refuelWord READ refuelWord NOTIFY changed FINAL)
    Q_PROPERTY(QString modeWord READ modeWord NOTIFY changed FINAL)

public:
    using QObject::QObject;

    // `feed` outlives it.
    void follow(LiveFeed& feed);
    // Looks at the car: another one, or another calibration, is followed anew.
    void look(const CarKnowledge& car);
    void setFormat(const UnitFormat& format) { m_format = format; }

    // Litres since drained, while the sources speak and the level is known.
    std::optional<Estimate<Volume>> level() const;
    // What is kept of it when a drive is over: also of sources that have fallen silent.
    std::vector<FollowedTank> followed() const;
    // The question with what is heard then of this tank and further ones.
    Question withLevels(Question question) const;
    QString age() const;  // "sender 1 s ago"; empty: no source, or nothing heard yet
    bool quiet() const;   // for 3 s or more
    bool stands() const { return m_stands; }
    std::vector<Notice> notices() const;

    // What went in unspoken of; nothing: nothing did.
    std::optional<Estimate<Volume>> refuel() const;
    QString refuelWord() const; // "12.3 L went in: log it"; empty: nothing did
    // It is in the log. Taken back or corrected there, the level follows.
    void tellFill(const Entry<Fill>& fill);
    Q_INVOKABLE void denyFill();

    // What the speed says, where that is another mode than the one at hand and was not
    // refused; empty: nothing is proposed.
    std::string proposedMode() const;
    QString modeWord() const;
    // The driver has said in which mode it is driven; empty: the usual mix.
    void setMode(const std::string& mode);
    const std::string& mode() const { return m_mode; }
    // Why what is driven is not written into the logbook.
    void setTripProblem(const std::optional<Error>& problem);
    // Why the sources kept with the car cannot be followed.
    void setSourceProblem(const std::optional<Error>& problem);

signals:
    void changed(); // what is said or asked
    void moved();   // the level, so much that the range is worth asking anew
    void aged();
    void refuelSeen();

private:
    struct Followed { // what the level is read by
        std::string car;
        std::optional<Calibration> calibration;
        Sender sender;
        std::vector<ExtraTank> others; // in use
        std::vector<Calibration> ofOthers; // the latest
        friend bool operator==(const Followed&, const Followed&) = default;
    };
    struct Told {
        EntryId fill;
        Volume litres;
    };
    void hear(const Sample& sample);
    void lookAtFeed();
    void take(const TrackerEvent& event);
    void lookAtTold(const std::vector<Entry<Fill>>& fills);
    void tell(const EntryId& fill, Volume litres);

    const LiveFeed* m_feed = nullptr;
    UnitFormat m_format;
    Followed m_followed;
    std::optional<LiveLevel> m_level;
    SpeedMode m_speedMode;
    std::string m_mode, m_refusedMode; // at hand; what the speed said when that was touched
    std::vector<std::string> m_modes;  // of the car
    std::optional<Told> m_told;        // the fill that the level was told last
    std::optional<Seconds> m_clockJumpAt;
    std::optional<Error> m_tripProblem, m_sourceProblem;
    bool m_stands = true;
    bool m_asks = false;           // there was a refuel to ask about at the last look
    bool m_spoke = false;          // there was a level at the last look
    std::size_t m_complaints = 0;  // of the sources, at the last look
    QString m_age;
};

} // namespace undermark
