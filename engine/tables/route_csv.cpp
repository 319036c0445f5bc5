// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/route_csv.h"

#include "engine/base/format.h"
#include "engine/base/plain_text.h"
#include "engine/tables/csv_reader.h"
#include "engine/tables/csv_writer.h"
#include "engine/tables/date_text.h"

#include <cmath>

namespace undermark {

namespace {

// In the order of kRouteColumns.
enum RouteColumn : std::size_t {
    atKm,
    legKm,
    name,
    mode,
    fuel,
    price,
    least,
    most,
    stopMin,
    detour,
    opens,
    closes,
    timed,
    idle,
    floorL,
    restMin,
    dueAt,
    climbThere,
    climbBack,
    fromDate,
    untilDate,
};

const NumberRange kRouteKmRange{0.0, 1e7, Sentence::of("km of 0 or more")};

class RouteReader {
public:
    explicit RouteReader(CsvReader reader) : m_reader(std::move(reader)) {}

    Result<RouteFile> read()
    {
        if (!m_reader.has(atKm) && !m_reader.has(legKm))
            return fail(m_reader.errorAt(atKm, Sentence::of("the header lacks the distance"),
                                         Sentence::of("'at_km' or 'leg_km'")));
        if (m_reader.has(atKm) && m_reader.has(legKm))
            return fail(m_reader.errorAt(
                legKm, Sentence::of("two columns of distance contradict each other"),
                Sentence::of("'at_km' or 'leg_km', not both")));
        RouteFile file;
        for (const std::string& unknown : m_reader.unknownColumns())
            file.warnings.push_back(Sentence::of("unknown column '%1' is not used", unknown));
        for (;;) {
            const Result<bool> more = m_reader.nextRow();
            if (!more)
                return fail(more.error());
            if (!*more)
                break;
            if (auto added = addRow(file.route.points); !added)
                return fail(added.error());
        }
        if (file.route.points.size() < 2)
            return fail(m_reader.errorAt(m_reader.has(atKm) ? atKm : legKm,
                                         Sentence::of("the route has no finish"),
                                         Sentence::of("two rows or more")));
        return file;
    }

private:
    Result<void> addRow(std::vector<RoutePoint>& points)
    {
        if (points.size() == kMostRoutePointsInFile)
            return fail(
                m_reader.errorAt(fuel, Sentence::of("the route is too long"),
                                 Sentence::of("%1 rows at most", counted(kMostRoutePointsInFile))));
        RoutePoint point;
        const RoutePoint* before = points.empty() ? nullptr : &points.back();
        if (auto placed = place(point, before); !placed)
            return placed;
        if (auto fuelled = readFuel(point); !fuelled)
            return fuelled;
        point.name = std::string(plainText(m_reader.text(name)));
        point.mode = std::string(plainText(m_reader.text(mode)));
        if (point.mode.empty() && before)
            point.mode = before->mode;
        else if (point.mode == kUsualMixWord)
            point.mode.clear();
        for (const RouteColumn column : {name, mode}) {
            if (!isPlainUtf8(m_reader.text(column)))
                return fail(m_reader.errorAt(column,
                                             Sentence::of("a name is not text that can be shown"),
                                             Sentence::of("UTF-8 without control characters")));
        }
        if (auto amounts = readAmounts(point); !amounts)
            return amounts;
        points.push_back(std::move(point));
        return {};
    }

    Result<void> place(RoutePoint& point, const RoutePoint* before)
    {
        const RouteColumn column = m_reader.has(atKm) ? atKm : legKm;
        const Result<double> km = m_reader.number(column, kRouteKmRange);
        if (!km)
            return fail(km.error());
        point.at = Distance::fromKm(*km);
        if (column == legKm && before)
            point.at += before->at;
        if (before && point.at < before->at)
            return fail(m_reader.errorAt(column, Sentence::of("the distance runs backwards"),
                                         Sentence::of("%1 or more", amount(before->at, 6))));
        return {};
    }

    Result<void> readFuel(RoutePoint& point)
    {
        const std::string_view word = m_reader.text(fuel);
        const Result<FuelSource> source = fuelSourceOf(word);
        if (!source)
            return fail(m_reader.errorAt(fuel, source.error().detail, source.error().expected));
        point.fuel = *source;
        return {};
    }

    template <class Q, class Make>
    Result<void> readAmount(RouteColumn column, std::optional<Q>& target, const NumberRange& range,
                            Make make)
    {
        const auto value = m_reader.optionalNumber(column, range);
        if (!value)
            return fail(value.error());
        if (*value)
            target = make(**value);
        return {};
    }

    Result<void> readHeight(RouteColumn column, Distance& target)
    {
        std::optional<Distance> height;
        const Result<void> done = readAmount(column, height, kClimbRange, Distance::fromMetres);
        target = height.value_or(Distance());
        return done;
    }

    template <class T>
    Result<void> readText(RouteColumn column, std::optional<T>& target, Result<T> (*parse)(std::string_view))
    {
        if (m_reader.text(column).empty())
            return {};
        const Result<T> value = parse(m_reader.text(column));
        if (!value)
            return fail(m_reader.errorAt(column, value.error().detail, value.error().expected));
        target = *value;
        return {};
    }

    Result<void> readAmounts(RoutePoint& point)
    {
        const auto asIs = [](double value) { return value; };
        const auto minutes = [](double value) { return Minutes(value); };
        Result<void> done = readAmount(price, point.pricePerLitre, kNotNegative, asIs);
        const auto then = [&done](auto&& next) {
            if (done)
                done = next();
        };
        then([&] {
            return readAmount(least, point.leastPurchase, kNotNegative, Volume::fromLitres);
        });
        then([&] { return readAmount(most, point.mostPurchase, kPositive, Volume::fromLitres); });
        then([&] { return readAmount(stopMin, point.stopTime, kNotNegative, minutes); });
        then([&] { return readAmount(detour, point.detour, kRouteKmRange, Distance::fromKm); });
        then([&] { return readAmount(idle, point.idle, kNotNegative, minutes); });
        then([&] { return readAmount(floorL, point.floor, kNotNegative, Volume::fromLitres); });
        then([&] { return readAmount(restMin, point.rest, kNotNegative, minutes); });
        then([&] { return readHeight(climbThere, point.climb.there); });
        then([&] { return readHeight(climbBack, point.climb.back); });
        then([&] { return readText(dueAt, point.due, parseClock); });
        then([&] { return readText(opens, point.opens, parseClock); });
        then([&] { return readText(closes, point.closes, parseClock); });
        then([&] { return readText(fromDate, point.firstDay, parseDay); });
        then([&] { return readText(untilDate, point.lastDay, parseDay); });
        if (done && point.firstDay && point.lastDay && *point.lastDay < *point.firstDay)
            return fail(m_reader.errorAt(untilDate, Sentence::of("the last day is before the first"),
                                         Sentence::just(dayText(*point.firstDay))));
        then([&] { return readTimed(point); });
        if (done && point.leastPurchase && point.mostPurchase &&
            *point.leastPurchase > *point.mostPurchase)
            return fail(m_reader.errorAt(least,
                                         Sentence::of("the minimum purchase is above the limit"),
                                         Sentence::of("max_litres or less")));
        return done;
    }

    Result<void> readTimed(RoutePoint& point)
    {
        const std::string_view text = m_reader.text(timed);
        if (!text.empty() && text != "0" && text != "1")
            return fail(m_reader.errorAt(timed, Sentence::of("a section is timed or it is not"),
                                         Sentence::of("1 or 0")));
        point.timed = text == "1";
        return {};
    }

    CsvReader m_reader;
};

} // namespace

std::string clockText(Minutes clock)
{
    const int minutes = static_cast<int>(std::lround(clock.count()));
    return format("%02d:%02d", minutes / 60, minutes % 60);
}

Result<Minutes> parseClock(std::string_view text)
{
    const auto wrong = [&] {
        return failInput(Sentence::of("this is not a time of day"),
                         Sentence::of("HH:MM, 00:00 to 24:00"), std::string(text));
    };
    const auto isDigit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
    if (text.size() != 5 || text[2] != ':' || !isDigit(0) || !isDigit(1) || !isDigit(3) ||
        !isDigit(4))
        return wrong();
    const int hours = (text[0] - '0') * 10 + (text[1] - '0');
    const int minutes = (text[3] - '0') * 10 + (text[4] - '0');
    if (minutes > 59 || hours * 60 + minutes > 24 * 60)
        return wrong();
    return Minutes(hours * 60 + minutes);
}

Result<std::chrono::sys_days> parseDay(std::string_view text)
{
    const Result<Instant> instant = parseInstant(text);
    if (!instant || text.size() != std::string_view("2026-05-31").size())
        return failInput(Sentence::of("this is not a date"), Sentence::of("YYYY-MM-DD"), std::string(text));
    return std::chrono::floor<std::chrono::days>(*instant);
}

std::string dayText(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    return format("%04d-%02u-%02u", int(date.year()), unsigned(date.month()), unsigned(date.day()));
}

Result<RouteFile> readRouteCsv(const std::filesystem::path& file)
{
    Result<CsvReader> reader = CsvReader::open(file, kRouteColumns);
    if (!reader)
        return fail(reader.error());
    return RouteReader(std::move(*reader)).read();
}

} // namespace undermark
