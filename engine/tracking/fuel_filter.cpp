// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/fuel_filter.h"

#include <cmath>

namespace undermark {

namespace {

double square(double x) { return x * x; }

} // namespace

FuelFilter::FuelFilter(Estimate<Volume> level, Estimate<Fraction> scale)
    : m_v(level.mean.litres()), m_k(scale.mean.ratio()), m_vv(square(level.sd.litres())),
      m_kk(square(scale.sd.ratio()))
{
}

void FuelFilter::predict(double usedL, const Noise& noise)
{
    m_v -= m_k * usedL;
    m_b *= noise.biasKeep;
    m_vv += usedL * (usedL * m_kk - 2.0 * m_vk) + noise.levelL2;
    m_vk -= usedL * m_kk;
    m_vb = noise.biasKeep * (m_vb - usedL * m_kb);
    m_kb *= noise.biasKeep;
    m_bb = square(noise.biasKeep) * m_bb + noise.bias2;
    m_kk += noise.scale2;
}

Innovation FuelFilter::innovation(double levelL, double noiseL2) const
{
    return {levelL - expectedReadingL(), readingVarianceL2() + noiseL2};
}

Innovation FuelFilter::correct(double levelL, double noiseL2)
{
    const Innovation seen = innovation(levelL, noiseL2);
    const double gainL = seen.residualL / seen.varianceL2;
    const double shrink = 1.0 / seen.varianceL2;
    const double hv = m_vv + m_vb;   // covariances with V + b
    const double hk = m_vk + m_kb;
    const double hb = m_vb + m_bb;
    m_v += hv * gainL;
    m_k += hk * gainL;
    m_b += hb * gainL;
    m_vv -= hv * hv * shrink;
    m_vk -= hv * hk * shrink;
    m_vb -= hv * hb * shrink;
    m_kk -= hk * hk * shrink;
    m_kb -= hk * hb * shrink;
    m_bb -= hb * hb * shrink;
    return seen;
}

void FuelFilter::pull(double boundL, double noiseL2)
{
    const Innovation seen = innovation(boundL, noiseL2);
    m_v += (m_vv + m_vb) * seen.residualL / seen.varianceL2;
}

void FuelFilter::restartLevel(double levelL, double noiseL2, double bias2)
{
    m_v = levelL;
    m_b = 0.0;
    m_vv = noiseL2 + bias2;
    m_vb = -bias2;
    m_bb = bias2;
    m_vk = m_kb = 0.0;
}

void FuelFilter::setLevel(Estimate<Volume> level)
{
    m_v = level.mean.litres();
    m_vv = square(level.sd.litres());
    m_vk = m_vb = 0.0;
}

void FuelFilter::setScale(Estimate<Fraction> scale)
{
    m_k = scale.mean.ratio();
    m_kk = square(scale.sd.ratio());
    m_vk = m_kb = 0.0;
}

void FuelFilter::add(double litres, double variance2)
{
    m_v += litres;
    m_vv += variance2;
}

} // namespace undermark
