// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the invented worlds of the accuracy programs are made with: chance, and a hollow of
// any shape.
#pragma once

#include <algorithm>
#include <array>
#include <random>

namespace undermark::test {

using Random = std::mt19937_64;

inline double between(Random& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}
inline bool chance(Random& random, double share) { return between(random, 0.0, 1.0) < share; }
inline double normal(Random& random, double sd)
{
    return sd > 0.0 ? std::normal_distribution<double>(0.0, sd)(random) : 0.0;
}

// Share of a hollow's litres at a height, both 0 to 1.
class Hollow {
public:
    // `area`: of the surface at a height, > 0, in any unit.
    template <class Area> explicit Hollow(Area&& area)
    {
        for (std::size_t i = 0; i + 1 < m_share.size(); ++i)
            m_share[i + 1] = m_share[i] + area((double(i) + 0.5) / kCells);
        for (double& share : m_share)
            share /= m_share.back();
    }

    double share(double height) const
    {
        const double at = std::clamp(height, 0.0, 1.0) * kCells;
        const auto i = std::min(std::size_t(at), std::size_t(kCells - 1));
        return m_share[i] + (m_share[i + 1] - m_share[i]) * (at - double(i));
    }
    double height(double share) const
    {
        const auto above = std::upper_bound(m_share.begin() + 1, m_share.end() - 1, share);
        const auto i = std::size_t(above - m_share.begin());
        return (double(i - 1) + (share - m_share[i - 1]) / (m_share[i] - m_share[i - 1])) / kCells;
    }

private:
    static constexpr int kCells = 400;
    std::array<double, kCells + 1> m_share{};
};

} // namespace undermark::test
