// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/hand.h"

#include <QTest>

namespace undermark::test {

namespace {

constexpr int kComesWithin = 10000; // ms; the watch over the event loop is far less patient

// Every item in sight below `item`.
void collect(QQuickItem* item, const QRectF& sight, QList<QQuickItem*>& into)
{
    for (QQuickItem* child : item->childItems()) {
        if (!child->isVisible())
            continue;
        QRectF within = sight;
        if (child->clip())
            within &= child->mapRectToScene(child->boundingRect());
        if (within.contains(child->mapRectToScene(child->boundingRect()).center()))
            into.append(child);
        collect(child, within, into);
    }
}

QList<QQuickItem*> inSight(const QQuickWindow& window)
{
    QList<QQuickItem*> items;
    collect(window.contentItem(), QRectF({}, QSizeF(window.size())), items);
    return items;
}

QPointingDevice* finger()
{
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

} // namespace

Hand::Hand(QQuickWindow& window) : m_window(window) {}

QQuickItem* Hand::button(const QString& name) const
{
    for (QQuickItem* item : inSight(m_window))
        if (item->inherits("QQuickAbstractButton") && item->isEnabled() &&
            item->property("text").toString() == name)
            return item;
    return nullptr;
}

bool Hand::touch(const QString& name)
{
    if (!QTest::qWaitFor([&] { return button(name) != nullptr; }, kComesWithin))
        return false;
    QTest::qWait(30); // until layouts are at rest
    const QQuickItem* item = button(name);
    if (!item)
        return false;
    const QPoint place = item->mapRectToScene(item->boundingRect()).center().toPoint();
    m_places.append(place);
    QTest::touchEvent(&m_window, finger()).press(0, place, &m_window);
    QTest::touchEvent(&m_window, finger()).release(0, place, &m_window);
    return true;
}

bool Hand::touchPad(const QString& digits)
{
    for (const QChar digit : digits)
        if (!touch(digit))
            return false;
    return true;
}

bool Hand::sees(const QString& part)
{
    return QTest::qWaitFor(
        [&] {
            const QStringList all = texts();
            return std::any_of(all.begin(), all.end(), [&](const QString& text) { return text.contains(part); });
        },
        kComesWithin);
}

QStringList Hand::texts() const
{
    QStringList texts;
    for (const QQuickItem* item : inSight(m_window))
        if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty())
            texts.append(item->property("text").toString());
    return texts;
}

} // namespace undermark::test
