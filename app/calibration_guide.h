// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration of the Tank page: prepare, drained, base, pours, full,
// verify, review.
//
// Guarantees (each has a test in tests/app/calibration_guide_test.cpp):
//  * nothing is poured before every caution has been acknowledged;
//  * every reading and every step is on disk before it is shown as taken, and
//    another start takes the procedure up at that very place;
//  * what is wrong is said while pouring, not at the end: no movement above all;
//  * nothing reaches the logbook before save().
#pragma once

#include "app/calibration_draft.h"
#include "app/car_service.h"
#include "app/fact.h"
#include "app/notice_text.h"
#include "app/number_form.h"
#include "app/plot_picture.h"
#include "engine/calibration/calibrate.h"

#include <QObject>
#include <QStringList>
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
    Q_PROPERTY(QList<undermark::Fact> done READ done NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlotPicture plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(QString goWord READ goWord NOTIFY changed FINAL)
    Q_PROPERTY(QString otherWord READ otherWord NOTIFY changed FINAL)
    Q_PROPERTY(QString backWord READ backWord NOTIFY changed FINAL)

public:
    // `car` outlives the guide. Takes up the draft beside the logbook, if any.
    explicit CalibrationGuide(CarService& car, Units units = {}, QObject* parent = nullptr);

    int stage() const { return int(m_draft.stage); }
    QString title() const;
    QString text() const;
    QList<Caution> cautions() const;
    bool preparing() const { return m_draft.stage == CalibrationStage::prepare; }
    bool reviewing() const { return m_draft.stage == CalibrationStage::review; }
    bool started() const; // something has been taken that could be lost
    NumberForm* form() { return &m_form; }
    QList<Fact> facts() const; // the readings at this level, or the review
    QList<Fact> done() const;  // levels taken so far, the last one first
    QList<NoticeText> notices() const;
    PlotPicture plot() const;
    QString goWord() const;    // what go() does now
    QString otherWord() const; // what other() does now; empty where there is no other way
    QString backWord() const;

    void setFormat(const UnitFormat& format);
    // The car is another one: looks for its draft.
    void takeUp();
    Q_INVOKABLE void acknowledge(int caution);
    // Takes the reading that is typed, else goes on to the next level.
    Q_INVOKABLE void go();
    // Pours: the tank is full now. Verify: skip it.
    Q_INVOKABLE void other();
    // Takes the last reading back, else opens the level before again.
    Q_INVOKABLE void back();
    Q_INVOKABLE void startAgain();

signals:
    void changed();
    void stored(); // the logbook has a new calibration

private:
    enum Entry { Litres, Reading, Zero };

    bool takesLitres() const;
    QList<NumberEntry> entries() const;
    void showStage();
    void keep();
    bool refuse(const QString& why);
    void takeReading();
    void goOn(CalibrationStage next);
    void save();
    std::optional<Volume> typedLitres() const;
    std::vector<CalibrationPoint> points() const; // with the level being taken
    std::optional<CalibrationFit> fit() const;
    Signal tolerance() const;
    QString reading(Signal signal) const;
    Sender sender() const;

    CarService& m_car;
    UnitFormat m_format;
    CalibrationDraft m_draft;
    NumberForm m_form;
    std::optional<NoticeText> m_problem;
    bool m_resumed = false;
    bool m_saved = false;
};

} // namespace undermark
