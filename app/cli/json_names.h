// SPDX-License-Identifier: GPL-3.0-or-later
//
// The names of numbers in JSON answers end in their unit: _l, _km, _min, _l_per_100km. Names of
// the first versions that do not stay, since programs rely on them; beside each stands the
// same number under a name with its unit.
#pragma once

#include "app/cli/cli_command.h"

namespace undermark {

// The answer with "volume_l" beside "litres", and so on through all that it holds. O(size).
Json withUnitsNamed(const Json& json);

} // namespace undermark
