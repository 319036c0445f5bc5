// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/tables/import_csv.h"

namespace undermark {

// A date as other tables write it: the three numbers in the order that the user
// stated, with . / or - between, and behind a space or T perhaps a time of day as in
// parseInstant(). Errors: badInput without a place.
Result<Instant> parseDate(std::string_view text, DateOrder order);

} // namespace undermark
