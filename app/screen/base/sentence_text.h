// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where the engine's sentences become text: in the screen's language and units.
#pragma once

#include "app/screen/base/unit_format.h"
#include "engine/base/sentence.h"

namespace undermark {

// As rounded as the engine would have it; a volume in gallons has at least one decimal,
// since a gallon is some four litres.
QString sentenceText(const Sentence& sentence, const UnitFormat& format);

} // namespace undermark
