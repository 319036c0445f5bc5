// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car's sheet: its name, and what is stated of its tank and sender; or the same of a further
// tank, and how that feeds.
//
// Guarantees (each has a test in tests/app/screen/tank/car_sheet_test.cpp):
//  * what is not typed anew stays as it was, to the last digit, and what is typed is not lost
//    when the logbook changes elsewhere;
//  * what contradicts the calibration is said before it is saved;
//  * a refused sheet stores nothing;
//  * of a further tank it stores what `vehicle tank add` and `set` do; the tank keeps its name.
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
    Q_PROPERTY(bool renamable READ renamable NOTIFY changed FINAL)
    Q_PROPERTY(bool ofCar READ ofCar NOTIFY changed FINAL)
    Q_PROPERTY(bool adding READ adding NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(QString pouredWord READ pouredWord NOTIFY changed FINAL)

public:
    // `car` outlives the sheet.
    explicit CarSheet(Car& car, QObject* parent = nullptr);

    QString name() const { return QString::fromStdString(m_sheet.name); }
    void setName(const QString& name);
    bool renamable() const { return ofCar() || m_adding; }
    bool ofCar() const { return !m_further; }
    bool adding() const { return m_adding; } // a further tank
    QList<Choice> choices() const;  // fuel (of a further tank its feed), circuit and unit
    QString pouredWord() const;     // what takePoured() does; empty: nothing

    void setFormat(const UnitFormat& format);
    // Which tank the sheet is of, empty: the vehicle's own, with the car's facts. What was
    // typed of another one is dropped.
    void setTank(const std::string& tank);
    const std::string& tank() const { return m_tank; }
    // Begins the sheet of one more tank.
    Q_INVOKABLE void addTank();
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
    enum FieldId { Capacity, ZeroMark, LeftBehind, Unusable, Lamp, Supply, PullUp, Mass, Transfer };
    enum Chosen { OfFuelOrFeed, OfCircuit, OfUnit };

    struct Stated {
        Vehicle sheet; // its tank and sender, whichever tank they are of
        std::optional<ExtraTank> further; // how that feeds
    };
    QList<NumberEntry> entries() const;
    Knowledge known() const; // of that tank; none: nothing is
    Choice fuelOrFeed() const;
    std::optional<Volume> poured() const;
    void show();
    void touch();
    void check();
    Result<Stated> typed() const;
    Result<void> keep(const Stated& stated);
    template <class T, class From>
    Result<void> read(FieldId field, std::optional<T>& into, From from) const;
    Result<void> readEstimate(FieldId field, std::optional<Estimate<Volume>>& into, Volume usualSd) const;
    void store(const Result<Stated>& stated);
    Result<Stated> recorded() const; // as it stands

    Car& m_car;
    Vehicle m_sheet; // as it would be stored, but for what stands in the form
    std::optional<ExtraTank> m_further; // none: of the vehicle's own
    std::string m_tank;
    bool m_touched = false;
    bool m_adding = false;
};

} // namespace undermark
