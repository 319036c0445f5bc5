// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car's sheet: its name, and what is stated of its tank and sender.
//
// Guarantees (each has a test in tests/app/screen/tank/car_sheet_test.cpp):
//  * what is not typed anew stays as it was, to the last digit, and what is typed is not lost
//    when the logbook changes elsewhere;
//  * what contradicts the calibration is said before it is saved;
//  * a refused sheet stores nothing.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/form_model.h"
#include "app/screen/base/screen_settings.h"

#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

class CarSheet : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the tank's view model")
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(QString pouredWord READ pouredWord NOTIFY changed FINAL)

public:
    // `car` outlives the sheet.
    explicit CarSheet(Car& car, QObject* parent = nullptr);

    QString name() const { return QString::fromStdString(m_sheet.name); }
    void setName(const QString& name);
    QList<Choice> choices() const;  // fuel, circuit and unit
    QString pouredWord() const;     // what takePoured() does; empty: nothing

    void setFormat(const UnitFormat& format);
    // Reads the car again, unless something is being changed.
    void refresh();
    Q_INVOKABLE void startOver(); // drops what was typed
    Q_INVOKABLE void choose(int choice, int option); // of choices()
    Q_INVOKABLE void save();
    // Stores what the calibration was poured to as the capacity.
    Q_INVOKABLE void takePoured();

signals:
    void stored();

private:
    enum FieldId { Capacity, ZeroMark, LeftBehind, Unusable, Lamp, Supply, PullUp, Mass };
    enum Chosen { OfFuel, OfCircuit, OfUnit };

    QList<NumberEntry> entries() const;
    std::optional<Volume> poured() const;
    void show();
    void touch();
    void check();
    Result<Vehicle> typed() const;
    template <class T, class From>
    Result<void> read(FieldId field, std::optional<T>& into, From from) const;
    Result<void> readEstimate(FieldId field, std::optional<Estimate<Volume>>& into, Volume usualSd) const;
    void store(const Result<Vehicle>& vehicle);

    Car& m_car;
    Vehicle m_sheet; // as it would be stored, but for what stands in the form
    bool m_touched = false;
};

} // namespace undermark
