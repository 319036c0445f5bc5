// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/rate_table.h"

#include <algorithm>

namespace undermark {

std::size_t RateTable::indexOf(const std::string& mode) const
{
    const auto found = std::find(names.begin(), names.end(), mode);
    return static_cast<std::size_t>((found == names.end() ? names.end() - 1 : found) - names.begin());
}

RateTable rateTable(const ModeRates& rates)
{
    const std::size_t n = rates.modes.size();
    std::vector<double> withUsual(n, 0.0);   // covariance of each mode with the usual mix
    double usualRate = 0, usualVariance = rates.usualMixVariance;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j)
            withUsual[i] += rates.covariance[i * n + j] * rates.usualMix[j].ratio();
        usualRate += rates.usualMix[i].ratio() * rates.mean[i].litresPerKm();
    }
    for (std::size_t i = 0; i < n; ++i)
        usualVariance += rates.usualMix[i].ratio() * withUsual[i];
    RateTable table;
    table.names = rates.modes;
    table.names.push_back("");
    table.basis.rates = rates.mean;
    table.basis.rates.push_back(Consumption::fromLitresPerKm(usualRate));
    for (std::size_t i = 0; i < n; ++i) {
        const auto row = rates.covariance.begin() + static_cast<std::ptrdiff_t>(i * n);
        table.basis.rateCovariance.insert(table.basis.rateCovariance.end(), row,
                                          row + static_cast<std::ptrdiff_t>(n));
        table.basis.rateCovariance.push_back(withUsual[i]);
    }
    table.basis.rateCovariance.insert(table.basis.rateCovariance.end(), withUsual.begin(),
                                      withUsual.end());
    table.basis.rateCovariance.push_back(usualVariance);
    if (rates.degreesOfFreedom > 2)
        table.basis.degreesOfFreedom = rates.degreesOfFreedom;
    table.basis.routeVarianceL2PerKm = rates.tauSquaredPerKm;
    return table;
}

} // namespace undermark
