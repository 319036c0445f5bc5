// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/validate.h"

#include <boost/locale/utf.hpp>

#include <algorithm>
#include <initializer_list>
#include <sstream>

namespace undermark::logbook {

namespace {

constexpr double kLargest = 1e9;   // as in the schema's CHECKs
constexpr std::size_t kLongestText = 200;
constexpr std::size_t kMostPoints = 10'000;

// One rule about one field: whether it holds, and the words if it does not.
struct Rule {
    bool holds;
    const char* field;
    Sentence expected;
    std::string found;
};

std::string words(double value)
{
    std::ostringstream text;
    text << value;
    return text.str();
}

Result<void> firstBroken(std::initializer_list<Rule> rules)
{
    const auto broken = std::ranges::find(rules, false, &Rule::holds);
    if (broken == rules.end())
        return {};
    return fail(ErrorCode::badInput, Sentence::of("impossible value"), {.column = broken->field},
                broken->expected, broken->found);
}

Rule within(const char* field, double value, double lowest, Sentence expected)
{
    return {value >= lowest && value <= kLargest, field, std::move(expected), words(value)};
}

Rule notNegative(const char* field, std::optional<double> value)
{
    return within(field, value.value_or(0), 0, Sentence::of("a number of 0 or more, up to 1e9"));
}

Rule positive(const char* field, std::optional<double> value)
{
    const double number = value.value_or(1);
    return {number > 0 && number <= kLargest, field, Sentence::of("a number above 0, up to 1e9"),
            words(number)};
}

Rule anyNumber(const char* field, std::optional<double> value)
{
    return within(field, value.value_or(0), -kLargest, Sentence::of("a number from -1e9 to 1e9"));
}

Rule possibleTime(const char* field, Instant time)
{
    const auto seconds = time.time_since_epoch().count();
    return {seconds >= -2208988800 && seconds <= 253402300799, field,
            Sentence::of("a time in the years 1900 to 9999"), std::to_string(seconds)};
}

bool isPlainUtf8(const std::string& text)
{
    using Utf8 = boost::locale::utf::utf_traits<char>;
    for (auto at = text.begin(); at != text.end();) {
        const auto codePoint = Utf8::decode(at, text.end());
        const bool isControl = codePoint < 0x20 || (codePoint >= 0x7F && codePoint < 0xA0);
        if (!boost::locale::utf::is_valid_codepoint(codePoint) || isControl)
            return false;
    }
    return true;
}

// `found` leaves out what could not be shown on one line.
Rule plainText(const char* field, const std::string& text, bool mayBeEmpty = false)
{
    const bool readable = isPlainUtf8(text) && text.size() <= kLongestText;
    return {readable && (mayBeEmpty || !text.empty()), field,
            Sentence::of("text of 1 to 200 bytes of UTF-8 without control characters"),
            readable ? text : std::to_string(text.size()) + " bytes"};
}

template <class Q, class Unit>
std::optional<double> mean(const std::optional<Estimate<Q>>& estimate, Unit unit)
{
    return estimate ? std::optional((estimate->mean.*unit)()) : std::nullopt;
}

template <class Q, class Unit>
std::optional<double> sd(const std::optional<Estimate<Q>>& estimate, Unit unit)
{
    return estimate ? std::optional((estimate->sd.*unit)()) : std::nullopt;
}

template <class Q, class Unit>
std::optional<double> in(const std::optional<Q>& quantity, Unit unit)
{
    return quantity ? std::optional(((*quantity).*unit)()) : std::nullopt;
}

} // namespace

Result<void> validate(const Vehicle& v)
{
    for (const auto& [mode, margin] : v.surgeMargin) {
        const auto checked = firstBroken({plainText("surge margin", mode),
                                          notNegative("surge margin", margin.litres())});
        if (!checked)
            return checked;
    }
    return firstBroken({
        plainText("name", v.name),
        positive("capacity", v.capacity.litres()),
        notNegative("left behind", mean(v.leftBehind, &Volume::litres)),
        notNegative("left behind sd", sd(v.leftBehind, &Volume::litres)),
        notNegative("unusable", mean(v.unusable, &Volume::litres)),
        notNegative("unusable sd", sd(v.unusable, &Volume::litres)),
        notNegative("zero mark", in(v.zeroMark, &Volume::litres)),
        notNegative("lamp", in(v.lamp, &Volume::litres)),
        plainText("signal unit", v.sender.unit, true),
        positive("supply", v.sender.supplyVolts),
        positive("pull-up", v.sender.pullUpOhms),
        positive("resolution", in(v.sender.resolution, &Signal::value)),
    });
}

Result<void> validate(const Mode& mode)
{
    return firstBroken({plainText("mode", mode.name),
                        positive("rate", mean(mode.stated, &Consumption::litresPerKm)),
                        notNegative("rate sd", sd(mode.stated, &Consumption::litresPerKm))});
}

Result<void> validate(const Calibration& calibration)
{
    const std::size_t size = calibration.points.size();
    for (const CalibrationPoint& point : calibration.points) {
        const auto checked = firstBroken({
            notNegative("added", point.added.litres()),
            anyNumber("signal", point.signal.value()),
            anyNumber("signal2", in(point.signal2, &Signal::value)),
            notNegative("signal sd", in(point.signalSd, &Signal::value)),
            {point.readings >= 1, "readings", Sentence::of("1 or more"),
             std::to_string(point.readings)},
        });
        if (!checked)
            return checked;
    }
    return firstBroken(
        {possibleTime("time", calibration.time),
         {size <= kMostPoints, "points", Sentence::of("at most 10000"), std::to_string(size)},
         notNegative("zero mark", calibration.zeroMark.litres())});
}

Result<void> validate(const Fill& fill)
{
    return firstBroken({
        possibleTime("date", fill.time),
        positive("litres", fill.volume.litres()),
        notNegative("odometer", in(fill.odometer, &Distance::km)),
        notNegative("trip meter", in(fill.sinceLast, &Distance::km)),
        notNegative("price", fill.pricePerLitre),
        anyNumber("signal", in(fill.signalBefore, &Signal::value)),
        plainText("blend", fill.blend.value_or("none")),
        within("temperature", in(fill.temperature, &Temperature::celsius).value_or(0), -273.15,
               Sentence::of("degrees Celsius above absolute zero")),
        positive("displayed rate", in(fill.displayed, &Consumption::litresPerKm)),
    });
}

Result<void> validate(const Trip& trip)
{
    const double idle = trip.idle ? trip.idle->count() : 0;
    const int starts = trip.starts.value_or(0);
    return firstBroken({
        possibleTime("date", trip.time),
        notNegative("km", trip.distance.km()),
        notNegative("idle minutes", idle),
        {trip.distance.km() > 0 || idle > 0, "km", Sentence::of("some distance, or some idling"),
         "0"},
        plainText("mode", trip.mode),
        {starts >= 0 && starts <= 1'000'000, "starts", Sentence::of("0 to 1000000"),
         std::to_string(starts)},
    });
}

Result<void> validate(const Proof& proof)
{
    const bool byDistance = proof.kind == ProofKind::stalled || proof.kind == ProofKind::pastZero;
    const bool isBase = proof.kind == ProofKind::base;
    return firstBroken({
        possibleTime("date", proof.time),
        notNegative("litres", mean(proof.volume, &Volume::litres)),
        notNegative("litres sd", sd(proof.volume, &Volume::litres)),
        notNegative("left behind", mean(proof.leftBehind, &Volume::litres)),
        notNegative("left behind sd", sd(proof.leftBehind, &Volume::litres)),
        anyNumber("signal", in(proof.signal, &Signal::value)),
        notNegative("km", mean(proof.distance, &Distance::km)),
        notNegative("km sd", sd(proof.distance, &Distance::km)),
        plainText("mode", proof.mode.value_or("none")),
        {!byDistance || proof.distance, "km", Sentence::of("km past the zero mark"), "none"},
        {!isBase || proof.volume, "litres", Sentence::of("the litres poured in"), "none"},
        {byDistance || isBase || proof.volume || proof.leftBehind, "litres",
         Sentence::of("the litres pumped out, or those found left behind"), "none"},
    });
}

Result<void> validateTime(Instant time)
{
    return firstBroken({possibleTime("time of recording", time)});
}

} // namespace undermark::logbook
