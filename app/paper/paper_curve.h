// SPDX-License-Identifier: GPL-3.0-or-later
//
// A level curve on paper: litres upwards, the signal to the right.
#pragma once

#include "app/paper/pdf_page.h"
#include "engine/base/sentence.h"
#include "engine/calibration/level_curve.h"

#include <optional>
#include <string>

namespace undermark {

struct CurvePlace {
    double left;
    double bottom;
    double width;
    double height;
};

// Points are the curve's knots; in the grey band the level is with 90 %. `zeroMark` in
// litres since drained, if it is to be drawn.
void drawCurve(PdfPage& page, const LevelCurve& curve, std::optional<Volume> zeroMark,
               const std::string& unit, const CurvePlace& place, const SentenceWriter& write);

} // namespace undermark
