// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Pump page: a fill typed on the number pad, and what it taught.
//
// Guarantees (each has a test in tests/app/pump_view_model_test.cpp):
//  * guesses are filled in and marked; the first key replaces a guess;
//  * what cannot be a number is refused here and named, nothing is stored;
//  * after save() the lesson is there at once; undo() takes the fill back and
//    returns to the numbers as they were typed.
#pragma once

#include "app/car_service.h"
#include "app/notice_text.h"
#include "app/unit_format.h"

#include <QObject>
#include <QStringList>
#include <array>
#include <qqmlintegration.h>

namespace undermark {

// One field beside the pad.
struct PumpField {
    Q_GADGET
    QML_VALUE_TYPE(pumpField)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(QString unit MEMBER unit FINAL)
    Q_PROPERTY(QString hint MEMBER hint FINAL)
    Q_PROPERTY(QString spoken MEMBER spoken FINAL)
public:
    QString name;
    QString text;
    QString unit;
    QString hint;   // "guess" while nobody has confirmed or changed it, else empty
    QString spoken; // all of it, for those who cannot see it
    friend bool operator==(const PumpField&, const PumpField&) = default;
};

// What a fill did to one estimate.
struct LessonRow {
    Q_GADGET
    QML_VALUE_TYPE(lessonRow)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString before MEMBER before FINAL)
    Q_PROPERTY(QString after MEMBER after FINAL)
public:
    QString name;
    QString before;
    QString after;
    friend bool operator==(const LessonRow&, const LessonRow&) = default;
};

class PumpViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(QList<undermark::PumpField> fields READ fields NOTIFY changed FINAL)
    Q_PROPERTY(int activeField READ activeField NOTIFY changed FINAL)
    Q_PROPERTY(QString padTitle READ padTitle NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> extents READ extents CONSTANT FINAL)
    Q_PROPERTY(int extent READ extent NOTIFY changed FINAL)
    Q_PROPERTY(QString meterSwitch READ meterSwitch NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(bool saved READ saved NOTIFY changed FINAL)
    Q_PROPERTY(QString savedTitle READ savedTitle NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::LessonRow> lesson READ lesson NOTIFY changed FINAL)

public:
    // `car` outlives the view model. Asks the car for its guesses once.
    explicit PumpViewModel(CarService& car, Units units = {}, QObject* parent = nullptr);

    QList<PumpField> fields() const;
    int activeField() const { return m_active; }
    QString padTitle() const;
    QStringList extents() const;
    int extent() const { return int(m_extent); }
    QString meterSwitch() const;
    QList<NoticeText> notices() const { return m_notices; }
    bool saved() const { return m_lesson.has_value(); }
    QString savedTitle() const;
    QList<LessonRow> lesson() const;

    // A row of fields() takes the keys from now on.
    Q_INVOKABLE void select(int field);
    // One digit or the point (or the comma of a keyboard's pad, for the point);
    // anything else is ignored. Returns whether it was such a key.
    Q_INVOKABLE bool press(const QString& key);
    Q_INVOKABLE void erase();
    Q_INVOKABLE void selectExtent(int extent);
    // Odometer or trip meter.
    Q_INVOKABLE void switchMeter();
    Q_INVOKABLE void save();
    Q_INVOKABLE void undo();
    // A new fill, with new guesses.
    Q_INVOKABLE void startAgain();

signals:
    void changed();
    // The logbook has changed: a fill was stored or taken back.
    void stored();

private:
    enum Entry { Litres, Odometer, TripMeter, Price, EntryCount };
    struct Typed {
        QString text;
        bool guessed = false;
    };

    Entry entryAt(int field) const;
    Typed& active() { return m_typed[entryAt(m_active)]; }
    PumpField field(Entry entry) const;
    QString entryName(Entry entry) const;
    QString entryUnit(Entry entry) const;
    void takeGuess(const FillDraft& guess);
    Result<FillDraft> draft() const;

    CarService& m_car;
    UnitFormat m_format;
    std::array<Typed, EntryCount> m_typed;
    int m_active = 0;
    bool m_byTripMeter = false;
    FillExtent m_extent = FillExtent::full;
    QList<NoticeText> m_notices;
    std::optional<FillLesson> m_lesson;
    FillDraft m_savedFill;
};

} // namespace undermark
