// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration of the Tank page: a CalibrationSession in words, with its
// form, its live source and its draft on disk.
//
// Guarantees (each has a test in tests/app/screen/tank/calibration_guide_test.cpp):
//  * every reading and every step is on disk before it is shown as taken, and
//    another start takes the procedure up at that very place;
//  * what is wrong is said while pouring, not at the end: no movement above all;
//  * of a live source only a settled reading is taken, and only at a touch;
//  * a slip is asked about before it is believed: the way on changes it, the other keeps it;
//  * any level can be opened again, and corrected or left as it was;
//  * a calibration of the logbook is taken up again, to try it or to correct any of its levels;
//    what was only tried leaves it as it is;
//  * it is of one tank, chosen before anything is taken, and so is what it saves;
//  * nothing reaches the logbook before save().
#pragma once

#include "app/car/car_tanks.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/number_form.h"
#include "app/screen/base/plot_picture.h"
#include "app/screen/tank/live_signal.h"
#include "engine/calibration/calibration_session.h"

#include <QObject>
#include <QStringList>
#include <functional>
#include <qqmlintegration.h>

namespace undermark {

struct Caution {
    Q_GADGET
    QML_VALUE_TYPE(caution)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(bool acknowledged MEMBER acknowledged FINAL)
public:
    QString text;
    bool acknowledged = false;
    friend bool operator==(const Caution&, const Caution&) = default;
};

// What a meter may show: kMeterUnits, and the car's own.
QStringList meterUnits(const Sender& own);

class CalibrationGuide : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the tank's view model")
    Q_PROPERTY(int stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Caution> cautions READ cautions NOTIFY changed FINAL)
    Q_PROPERTY(bool preparing READ preparing NOTIFY changed FINAL)
    Q_PROPERTY(bool reviewing READ reviewing NOTIFY changed FINAL)
    Q_PROPERTY(bool started READ started NOTIFY changed FINAL)
    Q_PROPERTY(undermark::NumberForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QList<undermark::Fact> facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> done READ done NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlotPicture plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlotPicture secondPlot READ secondPlot NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> wirings READ wirings NOTIFY changed FINAL)
    Q_PROPERTY(int wiring READ wiring NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> units READ units NOTIFY changed FINAL)
    Q_PROPERTY(int unit READ unit NOTIFY changed FINAL)
    Q_PROPERTY(QString liveReading READ liveReading NOTIFY liveChanged FINAL)
    Q_PROPERTY(QString liveState READ liveState NOTIFY liveChanged FINAL)
    Q_PROPERTY(QList<undermark::Fact> liveFacts READ liveFacts NOTIFY liveChanged FINAL)
    Q_PROPERTY(bool liveSettled READ liveSettled NOTIFY liveChanged FINAL)
    Q_PROPERTY(QString goWord READ goWord NOTIFY changed FINAL)
    Q_PROPERTY(QString otherWord READ otherWord NOTIFY changed FINAL)
    Q_PROPERTY(QString backWord READ backWord NOTIFY changed FINAL)

public:
    // `car` outlives the guide. Takes up the draft beside the logbook, if any.
    explicit CalibrationGuide(Car& car, Units units = {}, QObject* parent = nullptr);

    int stage() const { return int(m_session.stage()); }
    QString title() const;
    QString text() const;
    QList<Caution> cautions() const;
    bool preparing() const { return m_session.isPreparing(); }
    bool reviewing() const { return m_session.isReviewing() && !m_corrected; }
    // The tank that it is of, once something was taken; empty: the vehicle's own.
    std::string tank() const { return m_session.draft().tank.value_or(std::string()); }
    // Of which it is to be; one that lies open stays of its own. `word`: as titles name it,
    // empty where there is but one.
    void turnTo(const std::string& tank, const QString& word);
    bool started() const { return !preparing(); } // something has been taken that could be lost
    NumberForm* form() { return &m_form; }
    QList<Fact> facts() const; // the readings at this level, or the review
    QStringList done() const;  // levels taken so far, the last one first
    QList<NoticeText> notices() const;
    PlotPicture plot() const;       // two signals: the first lobe's curve
    PlotPicture secondPlot() const; // and the other's, at the review; else empty
    QStringList wirings() const;    // how the tank is read, to be chosen while preparing
    int wiring() const { return int(m_session.draft().wiring); }
    QStringList units() const { return meterUnits(knownSender()); } // chosen while preparing
    int unit() const;
    // The source, if there is one: what it says now (empty without a source), what
    // is to be done about it, how far it has settled, and whether it may be taken.
    LiveSignal& live() { return m_live; }
    QString liveReading() const;
    QString liveState() const;
    QList<Fact> liveFacts() const;
    bool liveSettled() const { return settledNow().has_value(); }
    QString goWord() const;    // what go() does now
    QString otherWord() const; // what other() does now; empty where there is no other way
    QString backWord() const;

    void setFormat(const UnitFormat& format);
    // The car is another one: looks for its draft.
    void takeUp();
    Q_INVOKABLE void acknowledge(int caution);
    Q_INVOKABLE void chooseWiring(int wiring);
    Q_INVOKABLE void chooseUnit(int unit);
    // Takes the settled reading of the source.
    Q_INVOKABLE void takeLive();
    // What goWord() says: takes the reading that is typed, else goes on to the next level.
    Q_INVOKABLE void go();
    // What otherWord() says. Prepare: take up the calibration that is kept. Pours: the tank is
    // full now. Verify: skip it.
    Q_INVOKABLE void other();
    // Takes the last reading back, else opens the level before again.
    Q_INVOKABLE void back();
    // Opens a level of done() to be corrected where it stands.
    Q_INVOKABLE void correct(int row);
    Q_INVOKABLE void startAgain();

signals:
    void changed();
    void liveChanged();
    void stored(); // the logbook has a new calibration

private:
    enum FieldId { Litres, Reading, SecondReading, Zero, FirstLobe, SecondLobe };

    QString step() const;
    QList<NumberEntry> entries() const;
    void listen(); // to the sender of the tank at hand
    void showStage();
    void showNextLevel();
    void keep();
    void keepReview();
    void goFurther(Result<void> (CalibrationSession::*way)(std::optional<Volume>));
    void askFirst(const std::optional<DraftReading>& reading, std::function<void()> goOn);
    void changeDoubted();
    void keepDoubted();
    void takeCorrection();
    void leaveCorrection();
    void showCorrected();
    std::size_t levelAtHand() const { return m_corrected.value_or(m_session.draft().levels.size()); }
    bool movesLitres() const;
    bool takesOut() const;
    bool accept(const Result<void>& done);
    bool isTyped() const;
    Result<DraftReading> typedReading();
    void take(const DraftReading& reading);
    void save();
    void takeUpKept();
    std::optional<Calibration> keptCalibration() const; // of which there are points
    std::optional<Volume> typedLitres() const;
    QList<Fact> reviewFacts() const;
    QList<Fact> readingFacts() const;
    CalibrationSession::Live liveSeries() const { return {m_live.first(), m_live.second()}; }
    std::optional<DraftReading> settledNow() const { return m_session.settled(liveSeries(), sender()); }
    QString inLitres(Signal spread, Signal at) const;
    QString reading(Signal signal) const;
    QString reading(Signal signal, std::optional<Signal> second) const;
    Sender sender() const; // as the readings are taken
    Sender knownSender() const;
    Result<Knowledge> known() const; // of that tank
    std::filesystem::path file() const;

    Car& m_car;
    UnitFormat m_format;
    CalibrationSession m_session;
    NumberForm m_form;
    LiveSignal m_live;
    std::optional<Notice> m_problem;
    std::optional<std::size_t> m_corrected; // the level opened again
    std::function<void()> m_doubted;        // what is done once it is kept; else empty
    bool m_resumed = false;
    bool m_saved = false;
    QString m_tankWord; // where there are several
};

} // namespace undermark
