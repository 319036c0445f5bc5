// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/frame_values.h"
#include "engine/signals/j1939.h"
#include "engine/signals/text_fields.h"

#include <cmath>
#include <nlohmann/json.hpp>

namespace undermark {

namespace {

using MapJson = nlohmann::json;

tl::unexpected<Error> failMap(std::string detail, std::string expected, std::string found = {})
{
    return failInput(Sentence::just(std::move(detail)), Sentence::just(std::move(expected)),
                     std::move(found));
}

// A whole number in 0 to `most`, also as text in hexadecimal ("0x7F0").
std::optional<std::uint32_t> wholeOf(const MapJson& json, std::uint32_t most)
{
    std::optional<std::uint32_t> number;
    if (json.is_number_unsigned() && json.get<std::uint64_t>() <= most)
        number = json.get<std::uint32_t>();
    else if (json.is_string()) {
        const auto& text = json.get_ref<const std::string&>();
        number = text.starts_with("0x") ? wholeIn(std::string_view(text).substr(2), 16) : wholeIn(text, 10);
    }
    return number && *number <= most ? number : std::nullopt;
}

Result<FrameSignal> byDbc(const MapJson& entry, const Dbc* dbc)
{
    if (dbc == nullptr)
        return failMap("a signal of a DBC file, and no such file is given", "dbc=FILE in the source");
    if (!entry["dbc"].is_string())
        return failMap("no name of a signal", "\"dbc\": \"Message.Signal\"", entry["dbc"].dump());
    return dbc->signal(entry["dbc"].get_ref<const std::string&>());
}

Result<FrameSignal> byGroup(const MapJson& entry)
{
    const auto group = wholeOf(entry["pgn"], 0x3FFFF);
    const auto number = entry.contains("spn") ? wholeOf(entry["spn"], 0x7FFFF) : std::nullopt;
    const J1939Parameter* known = group && number ? j1939Parameter(*group, *number) : nullptr;
    if (known == nullptr)
        return failMap("this parameter is not known",
                       "one of the J1939 parameters that are, or \"id\" and \"bits\"", entry.dump());
    FrameSignal signal = known->signal;
    if (!entry.contains("sa"))
        return signal;
    const auto source = wholeOf(entry["sa"], 0xFF);
    if (!source)
        return failMap("no address of a sender", "\"sa\": 0 to 255", entry["sa"].dump());
    signal.match.source = static_cast<std::uint8_t>(*source);
    return signal;
}

Result<FrameSignal> byBits(const MapJson& entry)
{
    const auto id = wholeOf(entry["id"], kMostExtendedId);
    if (!id)
        return failMap("no id of a frame", "\"id\": \"0x7F0\", 29 bits at most", entry["id"].dump());
    const auto bits = entry.contains("bits") && entry["bits"].is_string()
        ? BitField::parse(entry["bits"].get_ref<const std::string&>()) : std::nullopt;
    if (!bits)
        return failMap("no bits of a frame", "\"bits\": \"START|LENGTH@ORDER and SIGN\", such as \"8|16@1+\"",
                       entry.dump());
    const bool extended = *id > kMostStandardId || (entry.contains("extended") && entry["extended"] == true);
    return FrameSignal{.match = {.id = *id, .extended = extended}, .bits = *bits};
}

Result<FrameSignal> frameSignalOf(const MapJson& entry, const Dbc* dbc)
{
    if (entry.is_object() && entry.contains("dbc"))
        return byDbc(entry, dbc);
    if (entry.is_object() && entry.contains("pgn"))
        return byGroup(entry);
    if (entry.is_object() && entry.contains("id"))
        return byBits(entry);
    return failMap("nothing that says where the value is", "\"dbc\", \"pgn\" and \"spn\", or \"id\" and \"bits\"",
                   entry.dump());
}

Result<void> rescale(FrameSignal& signal, const MapJson& entry)
{
    double factor = 1.0, offset = 0.0;
    for (const auto& [name, number] : {std::pair{"factor", &factor}, {"offset", &offset}}) {
        if (!entry.contains(name))
            continue;
        if (!entry[name].is_number() || !std::isfinite(entry[name].get<double>()))
            return failMap(std::string("no ") + name, "a number", entry[name].dump());
        *number = entry[name].get<double>();
    }
    signal.factor *= factor;
    signal.offset = signal.offset * factor + offset;
    return {};
}

Result<FrameRule> ruleOf(const std::string& name, const MapJson& entry, const Dbc* dbc)
{
    const auto channel = channelNamed(name);
    if (!channel)
        return failMap("no such quantity", "signal, signal2, speed_kmh, fuel_rate_l_h, distance_km, or tank1_signal to tank4_signal2", name);
    Result<FrameSignal> signal = frameSignalOf(entry, dbc);
    if (!signal)
        return fail(signal.error());
    if (const auto sound = rescale(*signal, entry); !sound)
        return fail(sound.error());
    return FrameRule{*channel, *signal};
}

} // namespace

Result<std::vector<FrameRule>> parseFrameMap(std::string_view text, const std::string& file, const Dbc* dbc)
{
    const MapJson json = MapJson::parse(text, nullptr, false);
    if (!json.is_object() || json.empty())
        return fail(ErrorCode::badInput, Sentence::just("this is no map of signals"), {file},
                    Sentence::just("a JSON object with the names of quantities"));
    std::vector<FrameRule> rules;
    for (const auto& [name, entry] : json.items()) {
        Result<FrameRule> rule = ruleOf(name, entry, dbc);
        if (!rule) {
            if (rule.error().where.file.empty())
                rule.error().where.file = file;
            rule.error().where.column = name;
            return fail(rule.error());
        }
        rules.push_back(*rule);
    }
    return rules;
}

} // namespace undermark
