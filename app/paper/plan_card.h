// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel card: a plan on paper, for the door pocket, with the fuel horizon of every leg in
// the screen's own geometry (engine/planning/plan_horizon.h), every row, and room to write in
// what was taken on and what the gauge showed.
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
    std::string event = {};                // its name; the next two as well; empty: a line to write on
    std::string day = {};
    std::string car = {};
    std::optional<Distance> meter = {}; // the odometer at the start of the route: rows say theirs
};

// Writes the PDF; how many pages. The plan must be feasible. Rows are every point, on as many
// pages as they take, twelve at most; of longer ways the stops and the ends, which the card then
// says. Litres to take on are also given in kg where the fuel's density is known. Its words are those of
// `write`, its units litres and km. Errors: badInput
// if even the stops do not fit; fileAccess if the file cannot be written.
Result<int> writePlanCard(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
                           const std::filesystem::path& file,
                           const SentenceWriter& write = english);

} // namespace undermark
