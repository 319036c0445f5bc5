// SPDX-License-Identifier: GPL-3.0-or-later
//
// A person's eye and finger at the screen: finds what is written, and touches it where it is.
#pragma once

#include <QLine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>
#include <functional>

namespace undermark::test {

// A field, which shows its value where a button shows what it does.
bool isField(const QQuickItem* item);

// Of gestures as Hand::gestures gives them: slides do not count.
int touchesOf(const QList<QLine>& gestures);

class Hand {
public:
    explicit Hand(QQuickWindow& window);

    // Touches the button of that name in the middle, as soon as it is there, and slides the page
    // where it is out of sight. False where none comes within some seconds.
    bool touch(const QString& name);
    // The same of a line of the log, by the beginning of what is read aloud of it.
    bool touchLine(const QString& beginning);
    // The same of a field, by its name.
    bool touchField(const QString& name);
    // The keys of the number pad, one by one.
    bool touchPad(const QString& digits);
    // By keyboard: Tab until the focus is on the button of that name, then Return.
    bool press(const QString& name);
    // Tab until it is on something with that property: a line of the log, a line to type in.
    bool tabTo(const char* property);
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void type(const QString& text);
    // Whether a text in sight contains `part`, at the latest some seconds from now.
    bool sees(const QString& part);

    // The same wherever the page has to be slid to for it.
    bool finds(const QString& part);

    int touches() const { return touchesOf(m_gestures); }
    // Where, in order, so that the same can be done to another window of this size: a slide
    // from one point to another, a touch as a line of no length.
    const QList<QLine>& gestures() const { return m_gestures; }
    // What is in sight, for messages.
    QStringList texts() const;

private:
    QQuickItem* button(const QString& name) const;
    using Finder = std::function<QQuickItem*(const QList<QQuickItem*>&)>;
    bool touchFound(const Finder& find);
    void slideTo(const Finder& find);
    void touchAt(const QQuickItem* item);

    QQuickWindow& m_window;
    QList<QLine> m_gestures;
};

} // namespace undermark::test
