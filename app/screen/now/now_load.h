// SPDX-License-Identifier: GPL-3.0-or-later
//
// What makes the car burn more than its log says, told to the Now page in the user's word:
// "towing, 30 %".
//
// Guarantees (each has a test in tests/app/screen/now/now_load_test.cpp):
//  * what was told outlives the program, and counts until a touch takes it back;
//  * Now, `range --burns-more` and `plan --burns-more` answer alike;
//  * a percentage that cannot be is refused with its reason, and what was told still counts.
#pragma once

#include "app/car/told.h"
#include "app/screen/base/form_model.h"
#include "app/screen/now/told_store.h"

#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

class NowLoad : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the Now page's view model")
    Q_PROPERTY(QString standing READ standing NOTIFY changed FINAL)
    Q_PROPERTY(QString word READ word NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> steps READ steps NOTIFY changed FINAL)
    Q_PROPERTY(int step READ step NOTIFY changed FINAL)

public:
    // Kept in the INI file `file`; empty: for this run only.
    explicit NowLoad(const QString& file, QObject* parent = nullptr);

    const std::optional<Load>& load() const { return m_load; }
    QString standing() const; // "towing: 30 % more"; empty: nothing is told
    QString word() const { return m_word; } // as typed, or told
    QStringList steps() const;              // "10 %", …
    int step() const;                       // of them; -1: none
    void setFormat(const UnitFormat& format);
    // Looks at the car and the time.
    void look(const CarKnowledge& car, Instant now);
    // Of what is told; a tank of it in the log counts it already.
    std::vector<Notice> doubts(const VehicleLog& log) const;

    Q_INVOKABLE void typeWord(const QString& word);
    Q_INVOKABLE void takeStep(int step);
    Q_INVOKABLE void take(); // the percentage that is typed
    Q_INVOKABLE void drop(); // what was told

signals:
    void toldAnew();
    void taken();

private:
    void tell(std::optional<Fraction> more);
    void showForm();
    void keep();
    void restore();

    ToldStore m_store;
    QString m_word;
    Instant m_now{};
    std::optional<Load> m_load;
};

} // namespace undermark
