// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cars of the logbook for those who keep many, as a workshop does: what is due of each,
// when it was calibrated and handed over; found by a part of the name, or by what is due.
//
// Guarantees (each has a test in tests/app/screen/logbook/car_list_test.cpp):
//  * it shows those that `vehicle list` lists for the same wish (isWanted);
//  * of up to kFewCars only what is due is told;
//  * a line names the row under which the settings show that car.
#pragma once

#include "app/car/car_file.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/screen_settings.h"

#include <QObject>
#include <qqmlintegration.h>

namespace undermark {

class Car;

inline constexpr std::size_t kFewCars = 6; // that have room as buttons

struct CarLine {
    Q_GADGET
    QML_VALUE_TYPE(carLine)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)
    Q_PROPERTY(int row MEMBER row FINAL)
    Q_PROPERTY(bool shown MEMBER shown FINAL)
public:
    QString name;
    QString detail;     // calibrated and handed over when, and what is due
    int row = 0;        // of ScreenSettings::chooseCar
    bool shown = false; // all pages are about it
    friend bool operator==(const CarLine&, const CarLine&) = default;
};

class CarList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook's view model")
    Q_PROPERTY(bool watched READ watched WRITE setWatched NOTIFY changed FINAL)
    Q_PROPERTY(bool many READ many NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString count READ count NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::CarLine> lines READ lines NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> due READ due NOTIFY changed FINAL)

public:
    // `car` outlives the list.
    explicit CarList(const Car& car, QObject* parent = nullptr) : QObject(parent), m_car(car) {}

    // Whether it is looked at: every car's log is read only then, and again by refresh().
    bool watched() const { return m_watched; }
    void setWatched(bool watched);
    bool many() const { return m_files.size() > kFewCars; }
    QList<Choice> choices() const; // one row: all, due, old
    QString name() const { return QString::fromStdString(m_wish.name); } // a part of it
    void setName(const QString& part);
    QString count() const; // "3 of 30 cars"
    QList<CarLine> lines() const;
    QList<Fact> due() const; // of few, by name

    void setFormat(const UnitFormat& format);
    void refresh();
    Q_INVOKABLE void choose(int option); // of choices()

signals:
    void changed();

private:
    enum Which { All, Due, Old };
    Which which() const { return m_wish.due ? Due : m_wish.months ? Old : All; }
    QString dueText(const CarFile& file) const; // a line each
    QString detail(const CarFile& file) const;

    const Car& m_car;
    UnitFormat m_format;
    CarWish m_wish;
    std::vector<CarFile> m_files; // of all cars, in their order
    bool m_watched = false;
};

} // namespace undermark
