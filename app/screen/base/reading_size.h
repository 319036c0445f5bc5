// SPDX-License-Identifier: GPL-3.0-or-later
//
// How large letters have to be to be read by a driver, by the angle that they subtend.
//
// ISO 15008 as usually cited (from memory): characters 12' high at least, 16' acceptable, 20'
// recommended. Height of a capital or a figure at distance d and angle a: 2 d tan(a / 2).
#pragma once

#include <QList>

namespace undermark {

inline constexpr double kReadingDistance = 650; // mm, from the eyes to a screen on the dash
inline constexpr double kReadingAngle = 16;     // minutes of arc

// mm; 3.025.
double readingHeight();

// The sizes of letters that can be chosen, in per cent; the smallest first.
const QList<int>& textPercents();

// The smallest of them at which letters whose capitals are `capitals` mm high at 100 % are
// high enough; the largest where none is. 100 on a screen that is not a small one built into
// a car (diagonal in mm, more than 280), and where nothing is known of it: 0 or less.
int readableTextPercent(double capitals, double diagonal);

} // namespace undermark
