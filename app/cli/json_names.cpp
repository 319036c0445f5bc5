// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/json_names.h"

#include <string_view>
#include <utility>

namespace undermark {

namespace {

constexpr std::pair<std::string_view, std::string_view> kBesideOldNames[] = {
    {"litres", "volume_l"},
    {"litres_since_onset", "since_onset_l"},
    {"km", "distance_km"},
    {"km_since_onset", "since_onset_km"},
    {"lo50", "lo50_km"},
    {"hi50", "hi50_km"},
    {"lo80", "lo80_km"},
    {"hi80", "hi80_km"},
    {"lo90", "lo90_km"},
    {"hi90", "hi90_km"},
    {"mean_width", "mean_width_km"},
    {"interval_score", "interval_score_km"},
    {"low90", "low90_l_per_100km"},
    {"high90", "high90_l_per_100km"},
    {"usual_before", "usual_before_l_per_100km"},
    {"usual_after", "usual_after_l_per_100km"},
};

// Nothing where the name is well as it is. A bare "sd" beside litres is theirs.
std::string_view besideOf(std::string_view name, const Json& object)
{
    if (name == "sd")
        return object.contains("litres") ? "volume_sd_l" : std::string_view();
    for (const auto& [old, withUnit] : kBesideOldNames)
        if (name == old)
            return withUnit;
    return {};
}

} // namespace

Json withUnitsNamed(const Json& json)
{
    if (!json.is_structured())
        return json;
    Json named = json.is_array() ? Json::array() : Json::object();
    for (const auto& [key, value] : json.items()) {
        Json inner = withUnitsNamed(value);
        if (json.is_array()) {
            named.push_back(std::move(inner));
            continue;
        }
        const std::string_view beside = besideOf(key, json);
        if (!beside.empty() && (value.is_structured() || value.is_number() || value.is_null()))
            named[std::string(beside)] = inner;
        named[key] = std::move(inner);
    }
    return named;
}

} // namespace undermark
