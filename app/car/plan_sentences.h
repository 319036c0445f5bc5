// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a plan says as a whole, in sentences that terminal, screen and card have in common.
#pragma once

#include "engine/planning/cures.h"
#include "engine/planning/plan.h"

#include <string>

namespace undermark {

// The point's name, or "km 12.3" where it has none.
std::string placeName(const RoutePoint& point);

// A probability in per cent for reading: "0", "<0.001", "1.2"; what is not 0 is never shown as 0.
Part riskPart(double risk);
std::string riskPercent(double risk);

// "Least cost."
Sentence aimSentence(Aim aim);
// "99 % sure on each arrival, 99.9 % at the end of a timed section."
Sentence confidenceSentence(const PlanRequest& request);
// "Starts with 30.0 L, give or take 1.2 L."
Sentence startSentence(const Tank& tank);
// What stopping costs: "Each stop counts as 1.80." Empty where it costs nothing.
Sentence stopCostSentence(const PlanRequest& request);

// "2 stops, 41.0 L to buy."
Sentence stopsSentence(const Plan& plan);
// "Risk of running dry on the way: 0.2 %."
Sentence riskSentence(const Plan& plan);
// How far an infeasible way goes, and what is missing.
Sentence shortfallSentence(const Route& route, const Shortfall& shortfall);

// "start with 8.4 L more", and what to mind with it.
Sentence cureSentence(const Cure& cure);
Sentence cureCaution(const Cure& cure);

} // namespace undermark
