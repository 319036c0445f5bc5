// SPDX-License-Identifier: GPL-3.0-or-later
//
// The numbers of a fill on the pad, and the fill that they make. What stands beside a
// number turns it into another one: odometer or trip meter, price or total paid; and the
// three that are seldom told (cans, reading, date) stand behind "More".
#pragma once

#include "app/screen/base/number_form.h"
#include "app/screen/base/unit_format.h"
#include "engine/base/error.h"
#include "engine/base/records.h"

#include <QCoreApplication>
#include <QMap>
#include <QStringList>

namespace undermark {

class FillForm {
    Q_DECLARE_TR_FUNCTIONS(undermark::PumpViewModel)

public:
    enum FieldId { Litres, Odometer, TripMeter, Price, Total, Cans, Reading, DaysAgo };

    NumberForm& numbers() { return m_numbers; }

    // Empty fields in these units; `readingUnit` empty: the car has no sender to read.
    void start(const UnitFormat& format, const QString& readingUnit);
    // The gauge of another tank; what was typed stays.
    void turnTo(const QString& readingUnit);
    // `guessed`: else it is a fill of the log. `now` is the clock that days are counted back from.
    void show(const Fill& fill, bool guessed, Instant now);
    // The day comes first: it was not now, and has to be told.
    void askWhen();
    // What is still a guess becomes the new one.
    void renew(const Fill& guess);

    // By row of the fields: what a touch beside it would turn to; empty: nothing.
    QStringList switches() const;
    void turn(int row);

    // `fill` with what was typed; what was not asked for stays. Errors: badInput where
    // something is missing or no number, named by its field.
    Result<Fill> typed(Fill fill, Instant now) const;

private:
    QList<NumberEntry> entries() const;
    bool shows(FieldId field) const;
    bool isLeftAlone(FieldId field) const;
    void showFields();
    template <class Put> void eachNumber(const Fill& fill, const Put& put) const;
    Result<void> readMeter(Fill& fill) const;
    Result<void> readPrice(Fill& fill, Volume pumped) const;
    Result<void> readSeldom(Fill& fill, Instant now) const;

    NumberForm m_numbers;
    UnitFormat m_format;
    QString m_readingUnit;
    QMap<FieldId, QString> m_known; // texts of a fill of the log: left alone they change nothing
    bool m_byTripMeter = false;
    bool m_byTotal = false;
    bool m_more = false;
    bool m_asksWhen = false;
};

} // namespace undermark
