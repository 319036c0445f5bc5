// SPDX-License-Identifier: GPL-3.0-or-later
//
// The columns of a sender, which a vehicle and a further tank both have. Only for the files
// that state the tables.
#pragma once

#include "engine/logbook/column_units.h"

namespace undermark::logbook {

template <class T>
class SenderColumns {
    using C = ColumnOf<T>;
    static constexpr auto kCircuit = [](auto& of) -> auto& { return of.sender.circuit; };
    static constexpr auto kUnit = [](auto& of) -> auto& { return of.sender.unit; };
    static constexpr auto kSupply = [](auto& of) -> auto& { return of.sender.supplyVolts; };
    static constexpr auto kPullUp = [](auto& of) -> auto& { return of.sender.pullUpOhms; };
    static constexpr auto kResolution = [](auto& of) -> auto& { return of.sender.resolution; };

public:
    static Column<T> circuit() { return C::template word<kCircuit>("circuit"); }
    static Column<T> unit()
    {
        return C::template text<kUnit>("signal_unit", "signal unit", TextRule::anyText);
    }
    static Column<T> supply()
    {
        return C::template number<kSupply, AsItIs>("supply_v", kOverZero, "supply");
    }
    static Column<T> pullUp()
    {
        return C::template number<kPullUp, AsItIs>("pull_up_ohm", kOverZero, "pull-up");
    }
    static Column<T> resolution()
    {
        return C::template number<kResolution, InSenderUnit>("resolution", kOverZero, "resolution");
    }
};

} // namespace undermark::logbook
