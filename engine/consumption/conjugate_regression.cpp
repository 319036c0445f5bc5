// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/conjugate_regression.h"

#include <Eigen/Cholesky>
#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <limits>

namespace undermark {

namespace {

// Up to this many coefficients live on the stack.
constexpr int kLargest = 32;
using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor, kLargest, kLargest>;
using Vector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, kLargest, 1>;

Eigen::Map<Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>>
square(std::vector<double>& v, std::size_t n)
{
    return {v.data(), Eigen::Index(n), Eigen::Index(n)};
}

Eigen::Map<const Eigen::VectorXd> column(std::span<const double> v)
{
    return {v.data(), Eigen::Index(v.size())};
}

Eigen::Map<Eigen::VectorXd> column(std::vector<double>& v)
{
    return {v.data(), Eigen::Index(v.size())};
}

std::vector<double> inverse(std::vector<double> matrix, std::size_t n)
{
    const Matrix given = square(matrix, n);
    const Eigen::LLT<Matrix> cholesky(given);
    assert(cholesky.info() == Eigen::Success);
    const auto size = Eigen::Index(n);
    square(matrix, n) = cholesky.solve(Matrix::Identity(size, size));
    return matrix;
}

// Double is precise enough here; long double, Boost's default, takes twice as long.
using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
using StudentsT = boost::math::students_t_distribution<double, Policy>;

} // namespace

double StudentT::quantile(double probability) const
{
    return location + scale * boost::math::quantile(StudentsT(degreesOfFreedom), probability);
}

double StudentT::cdf(double value) const
{
    return boost::math::cdf(StudentsT(degreesOfFreedom), (value - location) / scale);
}

double StudentT::logDensity(double value) const
{
    const double z = (value - location) / scale;
    return std::lgamma((degreesOfFreedom + 1) / 2) - std::lgamma(degreesOfFreedom / 2)
        - 0.5 * std::log(degreesOfFreedom * M_PI) - std::log(scale)
        - (degreesOfFreedom + 1) / 2 * std::log1p(z * z / degreesOfFreedom);
}

double StudentT::sd() const
{
    return degreesOfFreedom > 2 ? scale * std::sqrt(degreesOfFreedom / (degreesOfFreedom - 2))
                                : std::numeric_limits<double>::infinity();
}

ConjugateRegression::ConjugateRegression(std::vector<double> mean, std::vector<double> covariance,
                                         double shape, double rate)
    : m_mean(std::move(mean)), m_shape(shape), m_rate(rate),
      m_priorShape(shape), m_priorRate(rate)
{
    const std::size_t n = m_mean.size();
    assert(n > 0 && n <= kLargest && covariance.size() == n * n && shape > 0 && rate > 0);
    m_precision = inverse(covariance, n);
    m_weighted.resize(n);
    column(m_weighted) = square(m_precision, n) * column(m_mean);
    m_priorPrecision = m_precision;
    m_priorWeighted = m_weighted;
    m_factor.resize(n * n);
    solve();
}

std::vector<double> ConjugateRegression::relativeCovariance() const
{
    return inverse(m_precision, size());
}

// Mean and Cholesky factor from the information form; V itself is not needed.
void ConjugateRegression::solve()
{
    const std::size_t n = size();
    const Matrix precision = square(m_precision, n);
    const Eigen::LLT<Matrix> cholesky(precision);
    assert(cholesky.info() == Eigen::Success);
    square(m_factor, n) = cholesky.matrixLLT();
    const Vector mean = cholesky.solve(Vector(column(m_weighted)));
    column(m_mean) = mean;
}

void ConjugateRegression::observe(std::span<const double> x, double y, double relativeVariance)
{
    assert(x.size() == size() && relativeVariance > 0);
    const StudentT before = predict(x, relativeVariance);
    const double spread = before.scale * before.scale * m_shape / m_rate;
    const double error = y - before.location;
    square(m_precision, size()).noalias() +=
        (column(x) / relativeVariance) * column(x).transpose();
    column(m_weighted) += column(x) * (y / relativeVariance);
    m_shape += 0.5;
    m_rate += 0.5 * error * error / spread;
    solve();
}

void ConjugateRegression::forget(double keep)
{
    assert(keep >= 0 && keep <= 1);
    for (std::size_t i = 0; i < m_precision.size(); ++i)
        m_precision[i] = keep * m_precision[i] + (1 - keep) * m_priorPrecision[i];
    for (std::size_t i = 0; i < m_weighted.size(); ++i)
        m_weighted[i] = keep * m_weighted[i] + (1 - keep) * m_priorWeighted[i];
    m_shape = keep * m_shape + (1 - keep) * m_priorShape;
    m_rate = keep * m_rate + (1 - keep) * m_priorRate;
    solve();
}

StudentT ConjugateRegression::predict(std::span<const double> x, double relativeVariance) const
{
    assert(x.size() == size() && relativeVariance >= 0);
    const auto n = Eigen::Index(size());
    const Eigen::Map<const Matrix> factor(m_factor.data(), n, n);
    // x'Vx = |L^-1 x|^2 with precision = L L'.
    Vector across = column(x);
    factor.triangularView<Eigen::Lower>().solveInPlace(across);
    const double spread = relativeVariance + across.squaredNorm();
    return {column(x).dot(column(std::span<const double>(m_mean))),
            std::sqrt(m_rate / m_shape * spread), 2 * m_shape};
}

} // namespace undermark
