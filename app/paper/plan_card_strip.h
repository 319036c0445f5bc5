// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fuel horizon on paper: one lane a leg, all on one ruler of the whole way.
#pragma once

#include "app/paper/pdf_page.h"
#include "engine/planning/plan_horizon.h"

namespace undermark {

struct StripPlace {
    double left;
    double top;
    double width;
    double height; // of all lanes together; names and ruler come below
};

// Each lane is as dark as the engine is sure to run there if nobody stops again;
// the post is the zero mark, the hatching behind it the hidden reserve, pegs are
// where fuel can be had. Returns the y below which the page is free.
double drawStrips(PdfPage& page, const PlanRequest& request, const std::vector<LegHorizon>& legs,
                  const StripPlace& place);

} // namespace undermark
