// SPDX-License-Identifier: GPL-3.0-or-later
//
// A person's eye and finger at the screen: finds what is written, and touches it where it is.
#pragma once

#include <QPoint>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

namespace undermark::test {

class Hand {
public:
    explicit Hand(QQuickWindow& window);

    // Touches the button of that name in the middle, as soon as it is there. False where none
    // comes within some seconds.
    bool touch(const QString& name);
    // The keys of the number pad, one by one.
    bool touchPad(const QString& digits);
    // Whether a text in sight contains `part`, at the latest some seconds from now.
    bool sees(const QString& part);

    int touches() const { return int(m_places.size()); }
    // Where, in order: so that the same can be done to another window of this size.
    const QList<QPoint>& places() const { return m_places; }
    // What is in sight, for messages.
    QStringList texts() const;

private:
    QQuickItem* button(const QString& name) const;

    QQuickWindow& m_window;
    QList<QPoint> m_places;
};

} // namespace undermark::test
