// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/fills_csv.h"

#include <array>
#include <charconv>

namespace undermark {

namespace {

enum FillsColumn { kFillDate, kFillLitres, kFillKm, kFillOdometer, kFillFull, kFillPrice, kFillBlend, kFillTemperature, kFillColumns };
constexpr std::array<CsvColumn, kFillColumns> kWanted{{{"date", true},
                                                   {"litres", true},
                                                   {"km", false},
                                                   {"odometer_km", false},
                                                   {"full", false},
                                                   {"price_per_l", false},
                                                   {"blend", false},
                                                   {"temperature_c", false}}};
constexpr std::string_view kDayPattern = "dddd-dd-dd";
constexpr std::string_view kMinutePattern = "dddd-dd-ddTdd:dd";
constexpr std::string_view kSecondPattern = "dddd-dd-ddTdd:dd:dd";

bool fits(std::string_view text, std::string_view pattern)
{
    if (text.size() != pattern.size())
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool digit = text[i] >= '0' && text[i] <= '9';
        const bool blankForT = pattern[i] == 'T' && text[i] == ' ';
        if (pattern[i] == 'd' ? !digit : (text[i] != pattern[i] && !blankForT))
            return false;
    }
    return true;
}

int digits(std::string_view text, std::size_t at, std::size_t count)
{
    int value = 0;
    std::from_chars(text.data() + at, text.data() + at + count, value);
    return value;
}

Result<Fill> readFill(const CsvReader& reader)
{
    Fill fill;
    const Result<Instant> time = parseInstant(reader.text(kFillDate));
    if (!time)
        return fail(reader.errorAt(kFillDate, time.error().detail, time.error().expected));
    fill.time = *time;
    const auto litres = reader.number(kFillLitres, kPositive);
    if (!litres)
        return fail(litres.error());
    fill.volume = Volume::fromLitres(*litres);
    if (reader.has(kFillKm)) {
        const auto km = reader.number(kFillKm, kPositive);
        if (!km)
            return fail(km.error());
        fill.sinceLast = Distance::fromKm(*km);
    } else {
        const auto km = reader.number(kFillOdometer, kNotNegative);
        if (!km)
            return fail(km.error());
        fill.odometer = Distance::fromKm(*km);
    }
    const std::string_view full = reader.text(kFillFull);
    if (!full.empty() && full != "0" && full != "1")
        return fail(reader.errorAt(kFillFull, Sentence::of("this is neither full nor partial"),
                                   Sentence::of("1 or 0")));
    fill.extent = full == "0" ? FillExtent::partial : FillExtent::full;
    const auto price = reader.optionalNumber(kFillPrice, kNotNegative);
    if (!price)
        return fail(price.error());
    fill.pricePerLitre = *price;
    if (const std::string_view blend = reader.text(kFillBlend); !blend.empty())
        fill.blend = std::string(blend);
    const auto celsius = reader.optionalNumber(kFillTemperature, kFuelTemperature);
    if (!celsius)
        return fail(celsius.error());
    if (*celsius)
        fill.temperature = Temperature::fromCelsius(**celsius);
    return fill;
}

} // namespace

Result<Instant> parseInstant(std::string_view text)
{
    const std::string_view given = text;
    if (text.ends_with('Z') && text.size() > kDayPattern.size())
        text.remove_suffix(1);
    const bool seconds = fits(text, kSecondPattern);
    const bool minutes = seconds || fits(text, kMinutePattern);
    if (!minutes && !fits(text, kDayPattern))
        return failInput(Sentence::of("this is not a date"), Sentence::of("YYYY-MM-DD"),
                         std::string(given));
    const std::chrono::year_month_day day{std::chrono::year(digits(text, 0, 4)),
                                          std::chrono::month(unsigned(digits(text, 5, 2))),
                                          std::chrono::day(unsigned(digits(text, 8, 2)))};
    const int hour = minutes ? digits(text, 11, 2) : 0;
    const int minute = minutes ? digits(text, 14, 2) : 0;
    const int second = seconds ? digits(text, 17, 2) : 0;
    if (!day.ok() || hour > 23 || minute > 59 || second > 59)
        return failInput(Sentence::of("there is no such day or time"), Sentence::of("YYYY-MM-DD"),
                         std::string(given));
    return std::chrono::sys_days(day) + std::chrono::hours(hour) + std::chrono::minutes(minute)
        + std::chrono::seconds(second);
}

Result<FillsFile> readFillsCsv(const std::filesystem::path& file)
{
    Result<CsvReader> reader = CsvReader::open(file, kWanted);
    if (!reader)
        return fail(reader.error());
    if (reader->has(kFillKm) == reader->has(kFillOdometer)) {
        return fail(
            ErrorCode::badInput, Sentence::of("the header must name one of km and odometer_km"),
            {file.string(), reader->line(), "km"}, Sentence::of("km or odometer_km"),
            Sentence::part(reader->has(kFillKm) ? Sentence::of("both") : Sentence::of("neither")));
    }
    FillsFile fills;
    fills.unknownColumns = reader->unknownColumns();
    for (;;) {
        const Result<bool> more = reader->nextRow();
        if (!more)
            return fail(more.error());
        if (!*more)
            break;
        Result<Fill> fill = readFill(*reader);
        if (!fill)
            return fail(fill.error());
        fills.rows.push_back({std::move(*fill), long(fills.rows.size()) + 1, reader->line()});
    }
    if (fills.rows.empty()) {
        Error error = reader->errorAt(kFillDate, Sentence::of("the file holds no fill"),
                                      Sentence::of("at least one row"));
        return fail(std::move(error));
    }
    return fills;
}

} // namespace undermark
