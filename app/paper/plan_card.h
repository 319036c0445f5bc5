// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel card: a plan on one page of paper, for the door pocket, with the fuel
// horizon of every leg in the screen's own geometry (engine/planning/plan_horizon.h).
#pragma once

#include "app/car/plan_rows.h"
#include "app/paper/pdf_page.h"
#include "engine/planning/plan.h"

#include <filesystem>
#include <optional>

namespace undermark {

struct CardWishes {
    Paper paper = Paper::a5;
    std::optional<double> kgPerLitre = {}; // fuel density
    std::vector<Sentence> supposed = {};   // what-ifs that the plan was made for
};

// Writes the PDF. The plan must be feasible. Rows are every point, or, where
// these do not fit, the stops and the ends, which the card then says. Litres to
// take on are also given in kg where the fuel's density is known. Its words are those of
// `write`, its units litres and km. Errors: badInput
// if even the stops do not fit the page; fileAccess if the file cannot be written.
Result<void> writePlanCard(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
                           const std::filesystem::path& file,
                           const SentenceWriter& write = english);

} // namespace undermark
