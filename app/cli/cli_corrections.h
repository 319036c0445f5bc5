// SPDX-License-Identifier: GPL-3.0-or-later
//
// The options --at-15c and --blend-energy, off by default, of the commands that
// learn from fills; and what they changed.
#pragma once

#include "app/cli/cli_command.h"
#include "engine/consumption/fuel_corrections.h"

namespace undermark {

// `options` lives as long as the command.
void addCorrections(CLI::App& command, CorrectionOptions& options);

inline bool anyOf(const CorrectionOptions& options)
{
    return options.to15Celsius || options.blendEnergy;
}

// What was switched on, which fills changed by how much and why, and `effect`: the
// command's own figures without and with it. `nameOf` says which fill it was.
Json correctionsJson(const CorrectionOptions& options, const CorrectedFills& corrected,
                     const std::function<Json(std::size_t)>& nameOf, Json effect);

// The same in one or two lines; `effect` is a clause such as "usual mix 7.42 -> 7.36".
void printCorrections(const CorrectionOptions& options, const CorrectedFills& corrected,
                      const std::string& effect);

} // namespace undermark
