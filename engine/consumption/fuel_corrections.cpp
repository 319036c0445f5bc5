// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/fuel_corrections.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cctype>
#include <cmath>

namespace undermark {

namespace {

struct DensityClass {
    double below_kgPerM3;
    double k0, k1, k2;
};

// ASTM D1250, 1980, refined products: petrol, transition, jet, fuel oil.
constexpr std::array<DensityClass, 4> kClasses{{{770, 346.4228, 0.4388, 0},
                                                {788, 2680.3206, 0, -0.00336312},
                                                {839, 594.5418, 0, 0},
                                                {1075, 186.9696, 0.4862, 0}}};
constexpr double kLeastDensity = 653;
// Energy per litre against e0, at ethanol shares in percent.
constexpr double kEnergyE10 = 0.966;
constexpr double kEnergyE85 = 0.734 * kEnergyE10;

std::optional<double> densityOf(FuelKind fuel)
{
    if (fuel == FuelKind::petrol)
        return kPetrolDensity15;
    if (fuel == FuelKind::diesel)
        return kDieselDensity15;
    return std::nullopt;
}

double straightLine(double x, double x0, double y0, double x1, double y1)
{
    return y0 + (x - x0) / (x1 - x0) * (y1 - y0);
}

} // namespace

std::optional<double> volumeCorrection(double density15_kgPerM3, Temperature temperature)
{
    const double rho = density15_kgPerM3;
    const auto found = std::ranges::find_if(kClasses, [&](const DensityClass& c) {
        return rho < c.below_kgPerM3 || (rho == c.below_kgPerM3 && &c == &kClasses.back());
    });
    if (!(rho >= kLeastDensity) || found == kClasses.end())
        return std::nullopt;
    const double alpha = found->k0 / (rho * rho) + found->k1 / rho + found->k2;
    const double expansion = alpha * (temperature.celsius() - 15);
    return std::exp(-expansion * (1 + 0.8 * expansion));
}

std::optional<double> energyOfBlend(const std::string& blend)
{
    std::string name = blend;
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
    if (name == "diesel")
        return 1.0;
    double share = 0;
    if (name.size() < 2 || name[0] != 'e')
        return std::nullopt;
    const auto [end, problem] = std::from_chars(name.data() + 1, name.data() + name.size(), share);
    if (problem != std::errc() || end != name.data() + name.size() || !(share >= 0 && share <= 85))
        return std::nullopt;
    return share <= 10 ? straightLine(share, 0, 1, 10, kEnergyE10)
                       : straightLine(share, 10, kEnergyE10, 85, kEnergyE85);
}

CorrectedFills correctFills(std::span<const Fill> fills, const CorrectionOptions& options)
{
    CorrectedFills result{{fills.begin(), fills.end()}, {}, 0};
    const auto density = densityOf(options.fuel);
    for (std::size_t i = 0; i < fills.size(); ++i) {
        double factor = 1;
        std::vector<Sentence> why;
        if (options.to15Celsius) {
            const auto& temperature = fills[i].temperature;
            const auto share = density && temperature ? volumeCorrection(*density, *temperature)
                                                      : std::nullopt;
            result.unknown += !share;
            factor *= share.value_or(1);
            if (share)
                why.push_back(Sentence::of("volume at 15 C: times %1", amount(*share, 5)));
        }
        if (options.blendEnergy && i > 0) {
            const auto& blend = fills[i - 1].blend;
            const auto energy = blend ? energyOfBlend(*blend) : std::nullopt;
            result.unknown += !energy;
            factor *= energy.value_or(1);
            if (energy && *energy != 1)
                why.push_back(
                    Sentence::of("energy of the blend burnt: times %1", amount(*energy, 3)));
        }
        if (factor == 1)
            continue;
        result.fills[i].volume = fills[i].volume * factor;
        result.changes.push_back({i, fills[i].volume, result.fills[i].volume, std::move(why)});
    }
    return result;
}

} // namespace undermark
