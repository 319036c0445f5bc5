// SPDX-License-Identifier: GPL-3.0-or-later
//
// The user's word on what burns more, shared by `range` and `plan`.
#pragma once

#include "app/cli/cli_options.h"
#include "engine/base/quantity.h"

#include <optional>

namespace undermark {

struct BurnsMore {
    std::optional<double> percent, sdPercent;
};

// --burns-more, --burns-more-sd.
void addBurnsMore(CLI::App& command, BurnsMore& flags);
// badInput: a spread alone.
Result<void> checkBurnsMore(const BurnsMore& flags);
// As Circumstances::burnsMore.
std::optional<Estimate<Fraction>> byWord(const BurnsMore& flags);

} // namespace undermark
