// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/gpx_fields.h"

#include "engine/tables/csv_reader.h"
#include "engine/tables/route_csv.h"

#include <algorithm>
#include <charconv>
#include <span>

namespace undermark {

namespace {

struct GpxNumber {
    std::string_view name;
    void (*set)(RoutePoint&, double);
    std::optional<double> (*get)(const RoutePoint&);
};

template <auto Member, auto Make, auto Value> constexpr GpxNumber gpxNumber(const char* name)
{
    return {name, [](RoutePoint& point, double value) { point.*Member = Make(value); },
            [](const RoutePoint& point) -> std::optional<double> {
                return point.*Member ? std::optional(Value(*(point.*Member))) : std::nullopt;
            }};
}

constexpr auto kSame = [](double value) { return value; };
constexpr auto kLitresRange = [](Volume volume) { return volume.litres(); };
constexpr auto kToLitres = [](double value) { return Volume::fromLitres(value); };
constexpr auto kMinutes = [](Minutes minutes) { return minutes.count(); };
constexpr auto kToMinutes = [](double value) { return Minutes(value); };
constexpr auto kKmRange = [](Distance distance) { return distance.km(); };
constexpr auto kToKm = [](double value) { return Distance::fromKm(value); };

template <auto Way> constexpr GpxNumber gpxHeight(const char* name)
{
    return {name, [](RoutePoint& point, double metres) { point.climb.*Way = Distance::fromMetres(metres); },
            [](const RoutePoint& point) -> std::optional<double> {
                const Distance height = point.climb.*Way;
                return height == Distance() ? std::nullopt : std::optional(height.metres());
            }};
}

constexpr GpxNumber kHeights[] = {gpxHeight<&SectionClimb::there>("climb_m"), gpxHeight<&SectionClimb::back>("climb_back_m")};
constexpr GpxNumber kNumbers[] = {
    gpxNumber<&RoutePoint::pricePerLitre, kSame, kSame>("price_per_l"),
    gpxNumber<&RoutePoint::leastPurchase, kToLitres, kLitresRange>("min_litres"),
    gpxNumber<&RoutePoint::mostPurchase, kToLitres, kLitresRange>("max_litres"),
    gpxNumber<&RoutePoint::stopTime, kToMinutes, kMinutes>("stop_min"),
    gpxNumber<&RoutePoint::detour, kToKm, kKmRange>("detour_km"),
    gpxNumber<&RoutePoint::idle, kToMinutes, kMinutes>("idle_min"),
    gpxNumber<&RoutePoint::floor, kToLitres, kLitresRange>("floor_l"),
    gpxNumber<&RoutePoint::rest, kToMinutes, kMinutes>("rest_min"),
};

Result<void> refused(std::string_view name, Sentence detail, Sentence expected,
                     std::string_view found)
{
    return fail(ErrorCode::badInput, std::move(detail), {.column = std::string(name)},
                std::move(expected), std::string(found));
}

Result<void> setNumber(std::span<const GpxNumber> numbers, const NumberRange& range, RoutePoint& point,
                       std::string_view name, std::string_view text)
{
    const auto field = std::ranges::find(numbers, name, &GpxNumber::name);
    if (field == numbers.end())
        return {};
    const Result<double> value = parseNumber(text, range);
    if (!value) {
        Error error = value.error();
        error.where.column = std::string(name);
        return fail(error);
    }
    field->set(point, *value);
    return {};
}

Result<void> setFuel(RoutePoint& point, std::string_view text)
{
    const Result<FuelSource> source = fuelSourceOf(text);
    if (!source)
        return refused("fuel", source.error().detail, source.error().expected, text);
    point.fuel = *source;
    return {};
}

template <class T>
Result<void> setText(std::optional<T>& target, Result<T> (*parse)(std::string_view), std::string_view name,
                     std::string_view text)
{
    const Result<T> value = parse(text);
    if (!value)
        return refused(name, value.error().detail, value.error().expected, text);
    target = *value;
    return {};
}

} // namespace

Result<void> setGpxField(RoutePoint& point, std::string_view name, std::string_view text)
{
    if (name == "fuel")
        return setFuel(point, text);
    if (name == "opens" || name == "closes")
        return setText(name == "opens" ? point.opens : point.closes, parseClock, name, text);
    if (name == "due")
        return setText(point.due, parseClock, name, text);
    if (name == "from_date" || name == "until_date")
        return setText(name == "from_date" ? point.firstDay : point.lastDay, parseDay, name, text);
    if (name == "mode")
        point.mode = std::string(text);
    if (name == "timed") {
        if (text != "0" && text != "1")
            return refused(name, Sentence::of("a section is timed or it is not"),
                           Sentence::of("1 or 0"), text);
        point.timed = text == "1";
    }
    const auto done = setNumber(kNumbers, kNotNegative, point, name, text);
    return done ? setNumber(kHeights, kClimbRange, point, name, text) : done;
}

std::vector<std::pair<std::string, std::string>> gpxFields(const RoutePoint& point)
{
    std::vector<std::pair<std::string, std::string>> fields;
    if (point.fuel != FuelSource::none)
        fields.emplace_back("fuel", fuelWord(point.fuel));
    if (!point.mode.empty())
        fields.emplace_back("mode", point.mode);
    const auto add = [&](std::span<const GpxNumber> numbers) {
        for (const GpxNumber& field : numbers)
            if (const auto value = field.get(point))
                fields.emplace_back(field.name, unrounded(*value));
    };
    add(kNumbers);
    add(kHeights);
    if (point.opens)
        fields.emplace_back("opens", clockText(*point.opens));
    if (point.closes)
        fields.emplace_back("closes", clockText(*point.closes));
    if (point.due)
        fields.emplace_back("due", clockText(*point.due));
    if (point.firstDay)
        fields.emplace_back("from_date", dayText(*point.firstDay));
    if (point.lastDay)
        fields.emplace_back("until_date", dayText(*point.lastDay));
    if (point.timed)
        fields.emplace_back("timed", "1");
    return fields;
}

std::string unrounded(double value)
{
    char text[400]; // 5e-324 has 1074 decimals, but nothing here is that small
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed);
    return end.ec == std::errc() ? std::string(text, end.ptr) : std::to_string(value);
}

} // namespace undermark
