// SPDX-License-Identifier: GPL-3.0-or-later
//
// Dates as text. All are UTC.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"

#include <string>
#include <string_view>

namespace undermark {

enum class DateOrder { yearFirst, dayFirst, monthFirst };   // 2026-05-31, 31.5.2026, 5/31/2026

// "2024-05-31", or with a time of day "2024-05-31T17:05" or "...:30", with or
// without "Z" (as instantText() writes it). Errors: badInput without a place.
Result<Instant> parseInstant(std::string_view text);

// A date as other tables write it: the three numbers in the order that the user
// stated, with . / or - between, and behind a space or T perhaps a time of day as in
// parseInstant(). Errors: badInput without a place.
Result<Instant> parseDate(std::string_view text, DateOrder order);

} // namespace undermark
