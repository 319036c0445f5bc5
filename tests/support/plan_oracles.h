// SPDX-License-Identifier: GPL-3.0-or-later
//
// Invented routes for the planner's tests and benchmarks, and the same optimum
// found another way: GLPK's mixed-integer solver.
#pragma once

#include "engine/planning/search/problem.h"

#include <algorithm>
#include <glpk.h>
#include <optional>
#include <random>

namespace undermark::test {

// `points` pumps, 5 km apart on average if not told otherwise, prices 1.4 to 2.2,
// a 50 L tank, 8 L/100 km.
inline PlanRequest longRoute(int points, unsigned seed, double meanKm = 5.0)
{
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> price(1.4, 2.2);
    std::uniform_real_distribution<double> section(0.2 * meanKm, 1.8 * meanKm);
    PlanRequest request;
    double km = 0.0;
    for (int i = 0; i <= points; ++i, km += section(random)) {
        RoutePoint point;
        point.at = Distance::fromKm(km);
        point.mode = "road";
        point.fuel = i < points ? FuelSource::pump : FuelSource::none;
        point.pricePerLitre = price(random);
        request.route.points.push_back(point);
    }
    request.tank.capacity = Volume::fromLitres(50);
    request.tank.start.mean = Volume::fromLitres(10);
    request.rates = RateModel::single({Consumption::fromLitresPer100Km(8), Consumption()});
    return request;
}

inline PlanRequest withRisk(PlanRequest request)
{
    request.stopCost = 4;
    request.tank.start.sd = Volume::fromLitres(1.0);
    request.tank.fullSd = Volume::fromLitres(0.3);
    request.rates = RateModel::single(
        {Consumption::fromLitresPer100Km(8), Consumption::fromLitresPer100Km(0.4)}, 0.02);
    return request;
}

// The least objective of a problem without spread and without cans, as a
// mixed-integer program: litres q, stop or not y, content on leaving.
inline std::optional<double> optimumByMixedInteger(const planning::Problem& problem)
{
    const int n = problem.points - 1; // the finish sells nothing
    glp_term_out(GLP_OFF);
    glp_prob* lp = glp_create_prob();
    glp_set_obj_dir(lp, GLP_MIN);
    glp_add_cols(lp, 2 * n); // q_i, y_i
    glp_add_rows(lp, 4 * n);
    const double whole = problem.capacity + problem.fuelTo.back();
    for (int i = 0; i < n; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const planning::Offer& offer = problem.offers[at];
        const double most = offer.open ? std::min(offer.most, problem.capacity) : 0.0;
        glp_set_col_bnds(lp, i + 1, most > 0 ? GLP_DB : GLP_FX, 0, most);
        // A litre bought at i is carried over every section from i on.
        double carried = 0.0;
        for (int k = i; k < n; ++k)
            carried += problem.holdFrom(k);
        glp_set_obj_coef(lp, i + 1, offer.perLitre + carried);
        glp_set_col_kind(lp, n + i + 1, GLP_BV);
        glp_set_obj_coef(lp, n + i + 1, offer.perStop);
        // Content on arrival at i + 1, and on leaving i.
        std::vector<int> columns{0};
        std::vector<double> ones{0};
        for (int k = 0; k <= i; ++k) {
            columns.push_back(k + 1);
            ones.push_back(1);
        }
        glp_set_mat_row(lp, 4 * i + 1, i + 1, columns.data(), ones.data());
        glp_set_row_bnds(lp, 4 * i + 1, GLP_LO,
                         problem.leastSupply(planning::kStart, i + 1) - problem.start, 0);
        glp_set_mat_row(lp, 4 * i + 2, i + 1, columns.data(), ones.data());
        glp_set_row_bnds(lp, 4 * i + 2, GLP_UP, 0,
                         problem.capacity + problem.fuelTo[at] - problem.start);
        // least y <= q <= most y
        const int pair[] = {0, i + 1, n + i + 1};
        const double atMost[] = {0, 1, -std::min(most, whole)};
        const double atLeast[] = {0, 1, -offer.least};
        glp_set_mat_row(lp, 4 * i + 3, 2, pair, atMost);
        glp_set_row_bnds(lp, 4 * i + 3, GLP_UP, 0, 0);
        glp_set_mat_row(lp, 4 * i + 4, 2, pair, atLeast);
        glp_set_row_bnds(lp, 4 * i + 4, GLP_LO, 0, 0);
    }
    glp_iocp settings;
    glp_init_iocp(&settings);
    settings.presolve = GLP_ON;
    settings.msg_lev = GLP_MSG_OFF;
    const bool solved = glp_intopt(lp, &settings) == 0 && glp_mip_status(lp) == GLP_OPT;
    double objective = glp_mip_obj_val(lp);
    // What the start level costs to carry.
    for (int k = 0; k < n; ++k)
        objective +=
            problem.holdFrom(k) * (problem.start - problem.fuelTo[static_cast<std::size_t>(k)]);
    glp_delete_prob(lp);
    return solved ? std::optional<double>(objective) : std::nullopt;
}

} // namespace undermark::test
