// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/map_pump.h"

namespace undermark {

Offer offers(const MapPump& pump, std::string_view fuel)
{
    bool denied = false;
    for (const auto& [key, sold] : pump.fuels) {
        const bool is = fuel == "petrol" ? key.starts_with("octane_") || key == "e5" || key == "e10"
                                         : key == (fuel == "ethanol" ? "e85" : fuel);
        if (is && sold)
            return Offer::yes;
        denied = denied || is;
    }
    return denied ? Offer::no : Offer::unknown;
}

} // namespace undermark
