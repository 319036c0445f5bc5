// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/number_form.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr int kLongestNumber = 8;

} // namespace

NumberForm::NumberForm(QObject* parent) : QObject(parent) {}

void NumberForm::setEntries(QList<NumberEntry> entries)
{
    m_entries = std::move(entries);
    m_refused.clear();
    const auto first = std::ranges::find_if(m_entries, &NumberEntry::shown);
    m_activeId = first == m_entries.end() ? 0 : first->id;
    emit changed();
}

void NumberForm::rename(const QList<NumberEntry>& entries)
{
    for (const NumberEntry& fresh : entries) {
        if (NumberEntry* entry = find(fresh.id)) {
            entry->name = fresh.name;
            entry->unit = fresh.unit;
        }
    }
    emit changed();
}

void NumberForm::setDecimalMark(const QString& mark)
{
    m_mark = mark;
    emit changed();
}

void NumberForm::setShown(int id, bool shown)
{
    if (NumberEntry* entry = find(id))
        entry->shown = shown;
    emit changed();
}

void NumberForm::setText(int id, const QString& text, bool guessed)
{
    if (NumberEntry* entry = find(id)) {
        entry->text = text;
        entry->guessed = guessed;
        entry->known = false;
    }
    emit changed();
}

void NumberForm::setKnown(int id, const QString& text)
{
    setText(id, text);
    if (NumberEntry* entry = find(id))
        entry->known = true;
}

void NumberForm::setLocked(bool locked)
{
    m_locked = locked;
}

QString NumberForm::text(int id) const
{
    const NumberEntry* entry = find(id);
    return entry ? entry->text : QString();
}

QString NumberForm::name(int id) const
{
    const NumberEntry* entry = find(id);
    return entry ? entry->name : QString();
}

bool NumberForm::guessed(int id) const
{
    const NumberEntry* entry = find(id);
    return entry && entry->guessed;
}

bool NumberForm::known(int id) const
{
    const NumberEntry* entry = find(id);
    return entry && entry->known;
}

tl::unexpected<Error> NumberForm::refusal(int id) const
{
    return fail(ErrorCode::badInput, Sentence::of("this is not an amount that can be stored"),
                {.column = name(id).toStdString()}, Sentence::of("a number of 0 or more"),
                text(id).toStdString());
}

int NumberForm::activeId() const
{
    return m_activeId;
}

void NumberForm::activate(int id)
{
    m_activeId = id;
    m_refused.clear();
    emit changed();
}

NumberEntry* NumberForm::find(int id)
{
    const auto found = std::ranges::find(m_entries, id, &NumberEntry::id);
    return found == m_entries.end() ? nullptr : &*found;
}

const NumberEntry* NumberForm::find(int id) const
{
    const auto found = std::ranges::find(m_entries, id, &NumberEntry::id);
    return found == m_entries.end() ? nullptr : &*found;
}

NumberEntry* NumberForm::activeEntry()
{
    NumberEntry* entry = find(m_activeId);
    return entry && entry->shown && !m_locked ? entry : nullptr;
}

QList<NumberField> NumberForm::fields() const
{
    QList<NumberField> all;
    for (const NumberEntry& entry : m_entries) {
        if (!entry.shown)
            continue;
        NumberField field{entry.name, entry.text, entry.unit,
                          entry.guessed ? tr("guess") : QString(), {}};
        QStringList spoken{field.name, field.unit, field.hint};
        spoken.removeAll(QString());
        field.spoken = spoken.join(QStringLiteral(", "));
        all.append(field);
    }
    return all;
}

int NumberForm::activeField() const
{
    int row = 0;
    for (const NumberEntry& entry : m_entries) {
        if (entry.shown && entry.id == m_activeId)
            return row;
        row += entry.shown ? 1 : 0;
    }
    return -1;
}

QString NumberForm::padTitle() const
{
    const auto found = std::ranges::find(m_entries, m_activeId, &NumberEntry::id);
    if (found == m_entries.end())
        return {};
    return found->unit.isEmpty() ? found->name : tr("%1, %2").arg(found->name, found->unit);
}

void NumberForm::select(int field)
{
    int row = 0;
    for (const NumberEntry& entry : m_entries) {
        if (!entry.shown)
            continue;
        if (row++ == field)
            return activate(entry.id);
    }
}

bool NumberForm::press(const QString& key)
{
    static const QString kKeys = QStringLiteral("0123456789.,");
    NumberEntry* entry = activeEntry();
    if (!entry || key.size() != 1 || !kKeys.contains(key))
        return false;
    m_refused.clear();
    const bool mark = key == u"." || key == u",";
    const QString before = entry->guessed || entry->known ? QString() : entry->text;
    if (mark && key != m_mark) {
        m_refused = tr("The decimal mark here is %1").arg(m_mark);
    } else if (before.size() < kLongestNumber && !(mark && before.contains(m_mark))) {
        entry->text = before + key;
        entry->guessed = entry->known = false;
        emit edited();
    }
    emit changed();
    return true;
}

void NumberForm::erase()
{
    NumberEntry* entry = activeEntry();
    if (!entry)
        return;
    m_refused.clear();
    const bool whole = entry->guessed || entry->known;
    entry->text = whole ? QString() : entry->text.chopped(entry->text.isEmpty() ? 0 : 1);
    entry->guessed = entry->known = false;
    emit edited();
    emit changed();
}

bool NumberForm::takeKey(int key, const QString& text)
{
    switch (key) {
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
        erase();
        return true;
    case Qt::Key_Up:
        select(activeField() - 1);
        return true;
    case Qt::Key_Down:
        select(activeField() + 1);
        return true;
    default:
        return press(text);
    }
}

} // namespace undermark
