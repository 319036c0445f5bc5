// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a screen reader is given of a window, and what it cannot tell a person: through
// Qt's own accessible interfaces, as a reader of the desktop gets them.
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace undermark::test {

// What is read aloud, in order: "role: name: value".
QStringList readAloud(QQuickWindow& window);

// One sentence for each thing that is wrong:
//  * what the keyboard reaches, and a reader has no name for;
//  * what is chosen, and not told to be (or the other way round);
//  * a field that is none to the reader, or without its value;
//  * a text to be seen that neither is read nor part of what holds it.
QStringList unheard(QQuickWindow& window);

} // namespace undermark::test
