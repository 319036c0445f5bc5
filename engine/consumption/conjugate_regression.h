// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bayesian linear regression with unknown noise, in closed form: the
// normal-inverse-gamma family.
//
//     y = x'b + noise,  noise ~ N(0, s2 w),  b | s2 ~ N(m, s2 V),  s2 ~ IG(a, b)
//
// w is the known relative variance of one observation. Formulas: K. P. Murphy,
// "Conjugate Bayesian analysis of the Gaussian distribution" (2007), with the
// observation divided by sqrt(w). Plain doubles: the caller's units are those
// of y and x (here litres, km, hours, starts, or logarithms).
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace undermark {

// Student's t with location, scale (> 0) and degrees of freedom (> 0). The
// standard deviation is scale * sqrt(df / (df - 2)) and exists for df > 2.
struct StudentT {
    double location = 0;
    double scale = 1;
    double degreesOfFreedom = 1;

    double quantile(double probability) const;   // 0 < probability < 1
    double cdf(double value) const;
    double logDensity(double value) const;
    double sd() const;                           // infinite for df <= 2
};

class ConjugateRegression {
public:
    // `mean` has n entries, `covariance` (V, positive definite, row by row)
    // n * n; shape a > 0 and rate b > 0 of the inverse gamma.
    ConjugateRegression(std::vector<double> mean, std::vector<double> covariance, double shape,
                        double rate);

    // Conditions on one observation; x has n entries, relativeVariance > 0.
    // O(n^3), independent of what was observed before.
    void observe(std::span<const double> x, double y, double relativeVariance);

    // Fades what was observed towards the prior: information (not the mean) is
    // multiplied by `keep` in [0, 1] and the rest is filled up with the prior's,
    // so that a regressor that is never seen again returns to its prior instead
    // of becoming infinitely uncertain. O(n^3).
    void forget(double keep);

    // Predictive law of a new observation with regressors x and relative
    // variance w >= 0; w = 0 is the law of the regression line itself. O(n^2).
    StudentT predict(std::span<const double> x, double relativeVariance) const;

    std::size_t size() const { return m_mean.size(); }
    const std::vector<double>& mean() const { return m_mean; }
    // V, row by row: the covariance of the coefficients is V * noiseVariance(). O(n^3).
    std::vector<double> relativeCovariance() const;
    double shape() const { return m_shape; }
    double rate() const { return m_rate; }
    // Mean of s2, b / (a - 1); needs a > 1.
    double noiseVariance() const { return m_rate / (m_shape - 1); }

private:
    void solve();

    std::vector<double> m_mean;        // m
    std::vector<double> m_precision;   // inverse of V
    std::vector<double> m_factor;      // its Cholesky factor, lower triangle
    std::vector<double> m_weighted;    // inverse of V times m
    std::vector<double> m_priorPrecision;
    std::vector<double> m_priorWeighted;
    double m_shape;
    double m_rate;
    double m_priorShape;
    double m_priorRate;
};

} // namespace undermark
