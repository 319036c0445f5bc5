// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/consumption/screening.h"

namespace undermark {

// The fill as the screening proposes it; nothing where it proposes nothing that
// this fill could say (a fill to be added before it, for example).
std::optional<Fill> mended(const Fill& fill, const FillFlag& flag);

} // namespace undermark
