// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/hand.h"

#include <QTest>
#include <algorithm>

namespace undermark::test {

namespace {

constexpr int kEdge = 4;            // px, of what is in sight: no finger is finer
constexpr int kSlides = 12;         // at most, to what is out of sight
constexpr int kSteps = 12;          // of the finger in a slide
constexpr int kLongestWay = 150;    // presses of Tab, round any page
constexpr int kComesWithin = 10000; // ms; the watch over the event loop is far less patient

// Every item below `item` whose middle is within `sight`.
void collect(QQuickItem* item, const QRectF& sight, QList<QQuickItem*>& into)
{
    for (QQuickItem* child : item->childItems()) {
        if (!child->isVisible())
            continue;
        QRectF within = sight;
        if (child->clip())
            within &= child->mapRectToScene(child->boundingRect());
        if (within.adjusted(kEdge, kEdge, -kEdge, -kEdge).contains(child->mapRectToScene(child->boundingRect()).center()))
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

// In sight or a slide away.
QList<QQuickItem*> anywhere(QQuickItem* item)
{
    QList<QQuickItem*> items;
    for (QQuickItem* child : item->childItems())
        if (child->isVisible())
            items += QList<QQuickItem*>{child} + anywhere(child);
    return items;
}

QQuickItem* buttonAmong(const QList<QQuickItem*>& items, const QString& name)
{
    const auto found = std::find_if(items.begin(), items.end(), [&](const QQuickItem* item) {
        return item->inherits("QQuickAbstractButton") && item->isEnabled() && !isField(item) &&
               item->property("text").toString() == name;
    });
    return found == items.end() ? nullptr : *found;
}

QQuickItem* fieldAmong(const QList<QQuickItem*>& items, const QString& name)
{
    const auto found = std::find_if(items.begin(), items.end(), [&](const QQuickItem* item) {
        return isField(item) && item->property("name").toString() == name;
    });
    return found == items.end() ? nullptr : *found;
}

QQuickItem* lineAmong(const QList<QQuickItem*>& items, const QString& beginning)
{
    const auto found = std::find_if(items.begin(), items.end(), [&](const QQuickItem* item) {
        return item->inherits("QQuickAbstractButton") && !isField(item) &&
               item->property("spoken").toString().startsWith(beginning);
    });
    return found == items.end() ? nullptr : *found;
}

bool anyContains(const QStringList& texts, const QString& part)
{
    return std::any_of(texts.begin(), texts.end(), [&](const QString& text) { return text.contains(part); });
}

QStringList textsOf(const QList<QQuickItem*>& items)
{
    QStringList texts;
    for (const QQuickItem* item : items)
        if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty())
            texts.append(item->property("text").toString());
    return texts;
}

QPointingDevice* finger()
{
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

} // namespace

bool isField(const QQuickItem* item)
{
    return QString(item->metaObject()->className()).startsWith("FieldButton");
}

int touchesOf(const QList<QLine>& gestures)
{
    return int(std::ranges::count_if(gestures, &QLine::isNull));
}

Hand::Hand(QQuickWindow& window) : m_window(window) {}

QQuickItem* Hand::button(const QString& name) const
{
    return buttonAmong(inSight(m_window), name);
}

// As a finger slides a page: slowly, so that it does not fly on.
void Hand::slideTo(const Finder& find)
{
    for (int i = 0; i < kSlides && !find(inSight(m_window)); ++i) {
        QQuickItem* item = find(anywhere(m_window.contentItem()));
        QQuickItem* view = item;
        while (view && !(view->inherits("QQuickFlickable") && view->property("interactive").toBool()))
            view = view->parentItem();
        if (!view)
            return;
        const double half = view->height() / 2;
        const double wanted = view->mapFromItem(item, item->boundingRect().center()).y() - half;
        const QPoint from = view->mapToScene(QPointF(view->width() - 2, half * (wanted > 0 ? 1.7 : 0.3))).toPoint();
        const double way = std::clamp(wanted, -1.2 * half, 1.2 * half);
        m_gestures.append(QLine(from, from - QPoint(0, int(way))));
        QTest::touchEvent(&m_window, finger()).press(0, from, &m_window);
        for (int step = 1; step <= kSteps; ++step) {
            QTest::qWait(10);
            QTest::touchEvent(&m_window, finger()).move(0, from - QPoint(0, int(way * step / kSteps)), &m_window);
        }
        QTest::qWait(150);
        QTest::touchEvent(&m_window, finger()).release(0, from - QPoint(0, int(way)), &m_window);
        QTest::qWait(50);
        (void)QTest::qWaitFor([&] { return !view->property("moving").toBool(); }, kComesWithin);
    }
}

bool Hand::touch(const QString& name)
{
    return touchFound([&](const QList<QQuickItem*>& items) { return buttonAmong(items, name); });
}

bool Hand::touchField(const QString& name)
{
    return touchFound([&](const QList<QQuickItem*>& items) { return fieldAmong(items, name); });
}

bool Hand::touchFound(const Finder& find)
{
    if (!QTest::qWaitFor([&] { return find(anywhere(m_window.contentItem())) != nullptr; }, kComesWithin))
        return false;
    QTest::qWait(30); // until layouts are at rest
    slideTo(find);
    const QQuickItem* item = find(inSight(m_window));
    if (!item)
        return false;
    touchAt(item);
    return true;
}

void Hand::touchAt(const QQuickItem* item)
{
    const QPoint place = item->mapRectToScene(item->boundingRect()).center().toPoint();
    m_gestures.append(QLine(place, place));
    QTest::touchEvent(&m_window, finger()).press(0, place, &m_window);
    QTest::touchEvent(&m_window, finger()).release(0, place, &m_window);
}

bool Hand::touchLine(const QString& beginning)
{
    return touchFound([&](const QList<QQuickItem*>& items) { return lineAmong(items, beginning); });
}

void Hand::key(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(&m_window, key, modifiers);
}

void Hand::type(const QString& text)
{
    for (const QChar each : text)
        QTest::keyClick(&m_window, each.toLatin1());
}

bool Hand::press(const QString& name)
{
    const auto there = [&] { return buttonAmong(anywhere(m_window.contentItem()), name); };
    if (!QTest::qWaitFor([&] { return there() != nullptr; }, kComesWithin))
        return false;
    QTest::qWait(30); // as above
    for (int i = 0; i < kLongestWay; ++i) {
        if (const QQuickItem* item = m_window.activeFocusItem(); item && item == there()) {
            if (item != button(name)) // a page slides to what the keys are on
                return false;
            key(Qt::Key_Return);
            return true;
        }
        key(Qt::Key_Tab);
    }
    return false;
}

bool Hand::tabTo(const char* property)
{
    for (int i = 0; i < kLongestWay; ++i) {
        if (const QQuickItem* item = m_window.activeFocusItem(); item && item->property(property).isValid())
            return true;
        key(Qt::Key_Tab);
    }
    return false;
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
    return QTest::qWaitFor([&] { return anyContains(texts(), part); }, kComesWithin);
}

bool Hand::finds(const QString& part)
{
    return QTest::qWaitFor([&] { return anyContains(textsOf(anywhere(m_window.contentItem())), part); },
                           kComesWithin);
}

QStringList Hand::texts() const
{
    return textsOf(inSight(m_window));
}

} // namespace undermark::test
