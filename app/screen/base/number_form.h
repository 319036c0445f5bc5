// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fields beside a number pad: which one takes the keys, what was typed and what
// is only a guess. Every page that takes numbers has one.
//
// Guarantees (each has a test in tests/app/screen/base/number_form_test.cpp):
//  * the first key replaces a guess, or what is known; erasing takes either whole;
//  * only digits and the decimal mark of the locale are taken; the other mark is
//    refused and `refused` says which one is meant, nothing is guessed;
//  * a hidden field keeps its text and takes no keys.
#pragma once

#include "engine/base/error.h"

#include <QList>
#include <QObject>
#include <QString>
#include <qqmlintegration.h>
#include <type_traits>

namespace undermark {

// One field as it is shown.
struct NumberField {
    Q_GADGET
    QML_VALUE_TYPE(numberField)
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
    QString spoken; // its name, unit, and whether it is a guess, for those who cannot see it
    friend bool operator==(const NumberField&, const NumberField&) = default;
};

// What is known of a field. `id` is the owner's own number for it.
struct NumberEntry {
    int id = 0;
    QString name;
    QString unit;
    QString text;
    bool guessed = false;
    bool shown = true;
    bool known = false; // as it was recorded; stands until it is typed anew
};

class NumberForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(QList<undermark::NumberField> fields READ fields NOTIFY changed FINAL)
    Q_PROPERTY(int activeField READ activeField NOTIFY changed FINAL)
    Q_PROPERTY(QString padTitle READ padTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString decimalMark READ decimalMark NOTIFY changed FINAL)
    Q_PROPERTY(QString refused READ refused NOTIFY changed FINAL)

public:
    explicit NumberForm(QObject* parent = nullptr);

    // Replaces all fields; the first one shown takes the keys.
    void setEntries(QList<NumberEntry> entries);
    // Names and units anew (another language or unit), by id; texts stay.
    void rename(const QList<NumberEntry>& entries);
    void setDecimalMark(const QString& mark);
    void setShown(int id, bool shown);
    void setText(int id, const QString& text, bool guessed = false);
    void setKnown(int id, const QString& text); // as it was recorded
    void setLocked(bool locked); // takes no keys while locked
    QString text(int id) const;  // empty for an unknown id
    QString name(int id) const;
    bool guessed(int id) const;  // false for an unknown id
    bool known(int id) const;    // and not typed anew; false for an unknown id
    // What is typed there, by what `from` makes of the text; absent where it is empty.
    // Errors: badInput that names the field, where `from` makes nothing of it.
    template <class From> Result<std::invoke_result_t<From, QString>> read(int id, From from) const;
    int activeId() const;
    void activate(int id);

    QList<NumberField> fields() const;
    int activeField() const;
    QString padTitle() const; // "fuel put in, L"
    QString decimalMark() const { return m_mark; }
    QString refused() const { return m_refused; }

    // A row of fields() takes the keys from now on.
    Q_INVOKABLE void select(int field);
    // One digit or a decimal mark. Returns whether it was such a key.
    Q_INVOKABLE bool press(const QString& key);
    Q_INVOKABLE void erase();
    // A key of the keyboard: digits, backspace, up and down. Returns whether it
    // was one of them.
    Q_INVOKABLE bool takeKey(int key, const QString& text);

signals:
    void changed();
    void edited(); // by the user

private:
    tl::unexpected<Error> refusal(int id) const; // no number of 0 or more
    NumberEntry* find(int id);
    const NumberEntry* find(int id) const;
    NumberEntry* activeEntry();

    QList<NumberEntry> m_entries;
    QString m_mark = QStringLiteral(".");
    QString m_refused;
    int m_activeId = 0;
    bool m_locked = false;
};

template <class From>
Result<std::invoke_result_t<From, QString>> NumberForm::read(int id, From from) const
{
    if (text(id).isEmpty())
        return std::nullopt;
    auto value = from(text(id));
    if (!value)
        return refusal(id);
    return value;
}

} // namespace undermark
