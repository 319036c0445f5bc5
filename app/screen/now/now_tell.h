// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is told to the Now page by touch: the odometer, a reading of the sender, or that the
// needle stands at zero now.
//
// Guarantees (each has a test in tests/app/screen/now/now_tell_test.cpp):
//  * what was told outlives the program, and is dropped once the log knows more;
//  * what cannot be is refused with its reason, and what was told before still counts;
//  * a touch takes it back;
//  * a touch keeps a reading in the log, and the answer stays what it is;
//  * a needle told at zero is offered as a proof of the reserve once fuel went in.
#pragma once

#include "app/car/told.h"
#include "app/screen/base/form_model.h"
#include "app/screen/base/reading_fields.h"
#include "app/screen/now/told_store.h"

#include <qqmlintegration.h>

namespace undermark {

class NowTell : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the Now page's view model")
    Q_PROPERTY(QString standing READ standing NOTIFY changed FINAL)
    Q_PROPERTY(QString proofWord READ proofWord NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    // Kept in the INI file `file`; empty: for this run only.
    explicit NowTell(const QString& file, QObject* parent = nullptr);

    QString standing() const { return standing(m_now); }
    QString standing(Instant now) const; // what was told, and when; empty: nothing

    const std::optional<Told>& told() const { return m_told; }
    void setFormat(const UnitFormat& format);
    // Looks at the car and the time: what the log has overtaken is dropped.
    void look(const CarKnowledge& car, Instant now);
    // What was told last cannot be: what was told before counts again.
    void refuse(const Error& why);

    Q_INVOKABLE void needleAtZero();
    Q_INVOKABLE void take(); // what is typed
    Q_INVOKABLE void drop(); // what was told
    bool canKeep() const { return !m_fields.unit.isEmpty(); } // a reading would say something
    // The reading that is typed, or was told, becomes a level of the log.
    Q_INVOKABLE void keepInLog();
    // It could not be.
    void refuseToKeep(const Error& why);
    QString proofWord() const; // what noteProof() would note; empty: nothing
    Q_INVOKABLE void noteProof();
    Q_INVOKABLE void dropProof();

signals:
    void toldAnew();
    void taken(); // what was told is answered for
    void proofNoted(const undermark::Proof& proof);
    void levelKept(const undermark::LevelRecord& level);

private:
    Told readingTyped(const TypedReading& reading) const;
    enum FieldId { Odometer, Reading, SecondReading };

    void tell(std::optional<Told> told);
    void showForm();
    void keep();

    ToldStore m_store;
    ReadingFields m_fields;
    Instant m_now{};
    std::optional<Told> m_told;
    std::optional<Told> m_before;
    std::optional<Proof> m_proof; // by what was told before the log knew more; kept like it
};

} // namespace undermark
