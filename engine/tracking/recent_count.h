// SPDX-License-Identifier: GPL-3.0-or-later
//
// The level that the last ten to twenty minutes let expect: the highest count from any
// of their moments. A reading that dips and comes back (a hill, a bend, a sender that
// settles late, a supply that sagged) draws the level down with it for a while; this
// remembers where it was, so that the way back is not taken for fuel.
#pragma once

#include "engine/tracking/moment.h"

#include <array>

namespace undermark {

class RecentCount {
public:
    // After every block.
    void add(const Moment& now);
    // The level was set on purpose (a refuel, the driver's word, a fault): nothing
    // before counts.
    void restart(const Moment& now);
    // Litres in the tank now, had nothing but consumption happened.
    double levelL(const Moment& now) const;
    // A rise of the reading from `lowL` to `highL`: true where the upper end lies nearer
    // to the count than the lower.
    bool comesBack(double lowL, double highL, const Moment& now) const;

private:
    struct Count {
        double levelL = 0.0, usedL = 0.0;
        double at(const Moment& now) const
        {
            return levelL - now.filter.scale() * (now.usedL - usedL);
        }
    };

    bool m_set = false;
    double m_sinceS = 0.0;                 // of the newer
    std::array<Count, 2> m_highest;        // of this ten minutes, of the ten before
};

} // namespace undermark
