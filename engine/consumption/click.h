// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/quantity.h"

namespace undermark {

// How well a pump's first click repeats, as a standard deviation, before anything is
// learnt of it: some tenths of a litre up to one (common practice, no source). What a log
// has taught is ModeRates::clickSd.
inline constexpr Volume kUsualClickSd = Volume::fromLitres(0.5);

} // namespace undermark
