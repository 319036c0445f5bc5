// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/student_worlds.h"

#include <cassert>
#include <cmath>

namespace undermark {

std::vector<RateWorld> studentWorlds(double degreesOfFreedom, double sd, double step)
{
    assert(degreesOfFreedom > 2 && sd >= 0 && step > 0);
    const double half = degreesOfFreedom / 2.0;
    const double places = step / std::sqrt(half);
    const double negligible = -10.0 / step; // of the density, as a logarithm
    std::vector<RateWorld> worlds;
    double total = 0.0;
    const auto add = [&](double y) {
        const double exponent = half * (y - std::exp(y) + 1.0);
        if (exponent < negligible)
            return false;
        const double stretch = (degreesOfFreedom - 2.0) / degreesOfFreedom * std::exp(-y);
        worlds.push_back({std::exp(exponent), 1.0, sd * std::sqrt(stretch)});
        total += worlds.back().weight;
        return true;
    };
    for (int i = 0; add(i * places); ++i) { }
    for (int i = -1; add(i * places); --i) { }
    for (RateWorld& world : worlds)
        world.weight /= total;
    return worlds;
}

} // namespace undermark
