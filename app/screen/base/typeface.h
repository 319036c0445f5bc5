// SPDX-License-Identifier: GPL-3.0-or-later
//
// The letters of the screen: B612 from the system's font folders. Debian's
// package registers its mono letters under the family name B612 too, and Qt
// then draws those for a plain "B612". So this process hides the mono files
// from itself, and measures what comes out.
#pragma once

#include <QString>

namespace undermark {

// Hides the mono files. Call before the QGuiApplication is made: Qt reads the
// list of fonts once. Where it fails, useTypeface() notices.
void hideMonoLetters();

// Makes B612 the application's font and returns its family. Where B612 is not
// installed, or comes out mono, the system's own font stays and is returned.
QString useTypeface();

} // namespace undermark
