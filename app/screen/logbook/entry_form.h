// SPDX-License-Identifier: GPL-3.0-or-later
//
// A trip, or a proof of the hidden reserve, told by touch. What is asked for depends on its
// kind. (Fills have the Pump page's form.)
//
// Guarantees (each has a test in tests/app/screen/logbook/entry_form_test.cpp):
//  * of each kind it stores what the command line stores for the same numbers;
//  * what is missing, or no number, is named, and nothing is stored;
//  * a proof is of the tank that the page is about, or of the one that is chosen here.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/form_model.h"
#include "app/screen/base/tank_choice.h"

#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

class EntryForm : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a page's view model")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> kinds READ kinds NOTIFY changed FINAL)
    Q_PROPERTY(int kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> modes READ modes NOTIFY changed FINAL)
    Q_PROPERTY(int mode READ mode NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> tanks READ tanks NOTIFY changed FINAL)

public:
    // `car` outlives the form.
    explicit EntryForm(Car& car, QObject* parent = nullptr);

    QString title() const;
    QString caution() const;   // of a proof; a trip has none
    QStringList kinds() const; // of proof, by ProofKind; of a trip none
    int kind() const { return m_proof ? int(*m_proof) : -1; }
    QStringList modes() const; // in which it was driven; empty: nothing was
    int mode() const { return m_mode; }
    QList<Choice> tanks() const; // of a proof, where there are several and the page names none

    void setFormat(const UnitFormat& format);
    // The tank that the page is about; empty: the vehicle's own.
    void setTank(const std::string& tank);
    void startTrip();
    void startProof(ProofKind kind);
    Q_INVOKABLE void chooseKind(int kind);
    Q_INVOKABLE void chooseMode(int mode);
    Q_INVOKABLE void chooseTank(int option); // of tanks()
    Q_INVOKABLE void save();

signals:
    void stored(const undermark::EntryId& entry);

private:
    enum FieldId { Km, Litres, LeftBehind, Reading, IdleMinutes, ColdStarts, DaysAgo };

    QList<NumberEntry> entries() const;
    void start(std::optional<ProofKind> proof);
    void lookForTanks();
    bool isDriven() const;
    std::vector<std::string> modeNames() const; // empty: the usual mix
    std::string chosenMode() const;
    template <class From>
    std::invoke_result_t<From, QString> read(FieldId field, From from, Result<void>& all) const;
    std::optional<Volume> litres(FieldId field, Result<void>& all) const;
    std::optional<Distance> driven(Result<void>& all) const;
    std::optional<double> number(FieldId field, Result<void>& all) const;
    Instant time(Result<void>& all) const;
    Result<Trip> trip() const;
    Result<Proof> proof() const;

    Car& m_car;
    TankChoice m_tanks;
    bool m_tankNamed = false; // by the page
    std::optional<ProofKind> m_proof; // absent: a trip
    int m_mode = 0;
};

} // namespace undermark
