// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/ear.h"

#include "tests/journeys/hand.h"

#include <QAccessible>
#include <QHash>
#include <QMetaEnum>
#include <QQuickItem>
#include <QRegularExpression>
#include <algorithm>

namespace undermark::test {

namespace {

using Heard = QHash<const QObject*, QAccessibleInterface*>;

// Qt tells a reader of what is shown as long as one is there. None is here, so what is told
// is told at each look.
QAccessibleInterface* root(QQuickWindow& window)
{
    QAccessible::setActive(true);
    return QAccessible::queryAccessibleInterface(&window);
}

template <class Take> void visit(QAccessibleInterface* above, const Take& take)
{
    for (int i = 0; above && i < above->childCount(); ++i) {
        QAccessibleInterface* child = above->child(i);
        if (!child || child->state().invisible)
            continue;
        take(child);
        visit(child, take);
    }
}

Heard heardIn(QQuickWindow& window)
{
    Heard heard;
    visit(root(window), [&](QAccessibleInterface* each) { heard.insert(each->object(), each); });
    return heard;
}

void collect(QQuickItem* above, QList<QQuickItem*>& into)
{
    for (QQuickItem* child : above->childItems()) {
        if (!child->isVisible())
            continue;
        into.append(child);
        collect(child, into);
    }
}

QString plain(QString text)
{
    static const QRegularExpression kTags("<[^>]*>");
    return text.remove(kTags).simplified();
}

QString toldBy(QAccessibleInterface* heard)
{
    return QStringList{heard->text(QAccessible::Name), heard->text(QAccessible::Value),
                       heard->text(QAccessible::Description)}
        .join(" | ")
        .simplified();
}

// What tells of an item: itself, or of a field the part that is told as one.
QAccessibleInterface* tellerOf(const QQuickItem* item, const Heard& heard)
{
    if (isField(item))
        for (const QQuickItem* part : item->childItems())
            if (QAccessibleInterface* each = heard.value(part))
                return each;
    return heard.value(item);
}

// A mark by itself is told by its name.
bool isMark(const QString& text)
{
    return std::none_of(text.begin(), text.end(), [](QChar each) { return each.isLetterOrNumber(); });
}

bool isSaid(const QQuickItem* text, const Heard& heard)
{
    if (isMark(text->property("text").toString()))
        return true;
    for (const QQuickItem* item = text; item; item = item->parentItem())
        if (QAccessibleInterface* each = tellerOf(item, heard))
            return each->role() == QAccessible::Graphic // which tells what it shows its own way
                       ? !each->text(QAccessible::Name).isEmpty()
                       : toldBy(each).contains(plain(text->property("text").toString()));
    return false;
}

// What of a chosen item is wrong; empty: nothing.
QString choiceFault(const QQuickItem* item, QAccessibleInterface* heard)
{
    const QAccessible::State state = heard->state();
    const bool canBeChecked = heard->role() == QAccessible::RadioButton || heard->role() == QAccessible::CheckBox;
    if (canBeChecked && !state.checkable)
        return "cannot be checked";
    if (heard->role() == QAccessible::PageTab && item->property("chosen").toBool())
        return state.selected ? QString() : "is chosen, and a reader does not hear of it";
    if (const QVariant open = item->property("open"); open.isValid() && open.toBool() != bool(state.selected))
        return "is open, or not, and a reader hears the contrary";
    const QVariant chosen = item->property("chosen");
    if (!chosen.isValid())
        return {};
    if (chosen.toBool() != bool(state.checked))
        return "is chosen, or not, and a reader hears the contrary";
    return {};
}

QString fieldFault(const QQuickItem* item, QAccessibleInterface* heard)
{
    if (heard->role() != QAccessible::EditableText)
        return "is no field";
    if (item->property("chosen").toBool() != bool(heard->state().focused))
        return "takes the keys, or not, and a reader hears the contrary";
    return heard->text(QAccessible::Value) == item->property("value").toString() ? QString()
                                                                                 : "does not tell its value";
}

} // namespace

QStringList readAloud(QQuickWindow& window)
{
    static const QMetaEnum kRoles = QMetaEnum::fromType<QAccessible::Role>();
    QStringList all;
    visit(root(window), [&](QAccessibleInterface* each) {
        all.append(QString("%1: %2: %3").arg(kRoles.valueToKey(each->role()),
                                             each->text(QAccessible::Name), each->text(QAccessible::Value)));
    });
    return all;
}

QStringList unheard(QQuickWindow& window)
{
    const Heard heard = heardIn(window);
    QList<QQuickItem*> seen;
    collect(window.contentItem(), seen);
    QStringList faults;
    const auto fault = [&](const QQuickItem* item, const QString& what) {
        faults.append(QString("%1 '%2' %3").arg(item->metaObject()->className(),
                                                item->property("text").toString(), what));
    };
    for (const QQuickItem* item : seen) {
        QAccessibleInterface* each = tellerOf(item, heard);
        if (item->activeFocusOnTab() && item->isEnabled() && (!each || each->text(QAccessible::Name).isEmpty()))
            fault(item, "is reached by the keyboard and has no name");
        if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty() && !isSaid(item, heard))
            fault(item, "is to be seen and is not read");
        if (!each)
            continue;
        if (const QString wrong = isField(item) ? fieldFault(item, each) : choiceFault(item, each); !wrong.isEmpty())
            fault(item, wrong);
    }
    return faults;
}

} // namespace undermark::test
