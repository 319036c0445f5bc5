// SPDX-License-Identifier: GPL-3.0-or-later
//
// The standard normal law N(0, 1): the one place that has it.
#pragma once

namespace undermark {

// exp(-z^2/2) / sqrt(2 pi).
double normalDensity(double z);

// P(Z <= z) and P(Z > z), each by the complementary error function, so that neither
// tail loses digits until it underflows (|z| about 38).
double normalCdf(double z);
double normalTail(double z);

// z with P(Z <= z) = p, for 0 < p < 1; by the inverse complementary error function.
double normalQuantile(double p);

// normalDensity(z) / normalTail(z), the mean of Z given Z > z; as accurate far above,
// where both vanish: from 25 on by the asymptotic series of Mills' ratio
// (Abramowitz and Stegun 26.2.12), good to 1e-9 there.
double normalHazard(double z);

// Probability 0.99: the distance or litres that "sure" names.
inline constexpr double kSureQuantile = 2.3263478740408408;

// Probability 0.95: half the width, in standard deviations, of a band that holds 90 %.
inline constexpr double kHalfOf90 = 1.6448536269514722;

} // namespace undermark
