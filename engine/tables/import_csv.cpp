// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/import_csv.h"

#include "engine/tables/csv_reader.h"
#include "engine/tables/csv_writer.h"
#include "engine/tables/fills_csv.h"
#include "engine/tables/import_date.h"

#include <cmath>
#include <map>
#include <set>

namespace undermark {

namespace {

const NumberRange kCelsius{-60, 80, Sentence::of("degrees Celsius from -60 to 80")};
const NumberRange kFahrenheit{-76, 176, Sentence::of("degrees Fahrenheit from -76 to 176")};
const NumberRange kStarts{0, 1000, Sentence::of("0 to 1000 starts")};

// Our columns, found in the file under the names that the user gave them.
class Table {
public:
    static Result<Table> open(const std::filesystem::path& file, const ImportOptions& options,
                              std::vector<CsvColumn> columns)
    {
        columns.insert(columns.end(), {{"vehicle"}, {"id"}});
        for (const auto& [ours, theirs] : options.columns) {
            bool known = false;
            std::string names;
            for (CsvColumn& column : columns) {
                names += (names.empty() ? "" : ", ") + std::string(column.name);
                if (column.name == ours) {
                    column = {theirs, true};   // `theirs` lives as long as the options
                    known = true;
                }
            }
            if (!known)
                return failInput(Sentence::of("this is not a column that can be imported"),
                                 Sentence::just(names), ours);
        }
        auto reader = CsvReader::open(file, columns);
        if (!reader)
            return fail(reader.error());
        return Table(std::move(*reader), std::move(columns), options.vehicle);
    }

    CsvReader& reader() { return m_reader; }

    // Reads all rows with `read`, which throws nothing and returns a Result<T>.
    template <class T>
    Result<Imported<T>> rows(auto read)
    {
        Imported<T> all;
        all.unknownColumns = m_reader.unknownColumns();
        for (;;) {
            const auto more = m_reader.nextRow();
            if (!more)
                return fail(more.error());
            if (!*more)
                break;
            if (isOfAnother()) {
                ++all.ofOthers;
                continue;
            }
            Result<T> row = read(m_reader);
            if (!row)
                return fail(row.error());
            if (all.rows.size() == kMostImportedRows)
                return fail(
                    m_reader.errorAt(0, Sentence::of("the file is too long"),
                                     Sentence::of("%1 rows at most", counted(kMostImportedRows))));
            all.rows.push_back(std::move(*row));
            all.lines.push_back(m_reader.line());
            all.ids.emplace_back(m_reader.text(m_columns.size() - 1));
        }
        if (all.rows.empty() && all.ofOthers == 0)
            return fail(m_reader.errorAt(0, Sentence::of("the file holds no row"),
                                         Sentence::of("at least one")));
        return all;
    }

private:
    Table(CsvReader reader, std::vector<CsvColumn> columns, std::string vehicle)
        : m_columns(std::move(columns)), m_reader(std::move(reader)), m_vehicle(std::move(vehicle))
    {
    }
    bool isOfAnother() const
    {
        const std::string_view vehicle = m_reader.text(m_columns.size() - 2);
        return !vehicle.empty() && !m_vehicle.empty() && plainText(vehicle) != m_vehicle;
    }
    std::vector<CsvColumn> m_columns;
    CsvReader m_reader;
    std::string m_vehicle;
};

// A number times its unit, or nothing; the first error stays in `failed`.
template <class Q>
std::optional<Q> times(const CsvReader& reader, std::size_t column, const NumberRange& range, Q unit,
                       std::optional<Error>& failed)
{
    const auto number = reader.optionalNumber(column, range);
    if (!number && !failed)
        failed = number.error();
    return number && *number ? std::optional(unit * **number) : std::nullopt;
}

// 1, 0 or nothing.
std::optional<bool> yesNo(const CsvReader& reader, std::size_t column, std::optional<Error>& failed)
{
    const std::string_view text = reader.text(column);
    if (text.empty())
        return std::nullopt;
    if (text != "1" && text != "0" && !failed)
        failed = reader.errorAt(column, Sentence::of("this is neither yes nor no"),
                                Sentence::of("1 or 0"));
    return text == "1";
}

Instant dateAt(const CsvReader& reader, std::size_t column, DateOrder order,
               std::optional<Error>& failed)
{
    const auto time = parseDate(reader.text(column), order);
    if (!time && !failed)
        failed = reader.errorAt(column, time.error().detail, time.error().expected);
    return time.value_or(Instant{});
}

enum FillColumn { kImportDate, kImportLitres, kImportOdometer, kImportTripMeter, kImportFull, kImportNeck, kImportReset, kImportPrice, kImportTotal, kImportSignal,
                  kImportBlend, kImportTemperature, kImportDisplayed, kImportCounted };

Consumption rateOf(double number, RateUnit unit)
{
    switch (unit) {
    case RateUnit::kmPerLitre: return Consumption::fromKmPerLitre(number);
    case RateUnit::mpgUs: return Consumption::fromMpgUs(number);
    case RateUnit::mpgImperial: return Consumption::fromMpgImperial(number);
    case RateUnit::litresPer100Km: break;
    }
    return Consumption::fromLitresPer100Km(number);
}

// What the fill cost, by the litre; a whole price needs no unit but the currency.
std::optional<double> priceOf(const CsvReader& reader, const ImportOptions& options, Volume volume,
                              std::optional<Error>& failed)
{
    const auto byUnit = times(reader, kImportPrice, kNotNegative, 1.0 / options.litre.litres(), failed);
    const auto total = times(reader, kImportTotal, kNotNegative, 1.0, failed);
    return byUnit || !total || !(volume > Volume()) ? byUnit : std::optional(*total / volume.litres());
}

std::optional<Temperature> temperatureOf(const CsvReader& reader, const ImportOptions& options,
                                         std::optional<Error>& failed)
{
    if (!options.fahrenheit)
        return times(reader, kImportTemperature, kCelsius, Temperature::fromCelsius(1), failed);
    const auto degrees = times(reader, kImportTemperature, kFahrenheit, 1.0, failed);
    return degrees ? std::optional(Temperature::fromCelsius((*degrees - 32.0) / 1.8)) : std::nullopt;
}

Result<Fill> readImportedFill(const CsvReader& reader, const ImportOptions& options)
{
    std::optional<Error> failed;
    Fill fill;
    fill.time = dateAt(reader, kImportDate, options.dates, failed);
    if (const auto litres = reader.number(kImportLitres, kPositive))
        fill.volume = options.litre * *litres;
    else if (!failed)
        failed = litres.error();
    fill.odometer = times(reader, kImportOdometer, kNotNegative, options.km, failed);
    fill.sinceLast = times(reader, kImportTripMeter, kNotNegative, options.km, failed);
    const bool full = yesNo(reader, kImportFull, failed).value_or(true);
    const bool neck = yesNo(reader, kImportNeck, failed).value_or(false);
    fill.extent = neck ? FillExtent::neck : full ? FillExtent::full : FillExtent::partial;
    fill.odometerReset = yesNo(reader, kImportReset, failed).value_or(false);
    fill.pricePerLitre = priceOf(reader, options, fill.volume, failed);
    fill.signalBefore = times(reader, kImportSignal, kAnyNumber, Signal::of(1), failed);
    if (const auto blend = reader.text(kImportBlend); !blend.empty())
        fill.blend = std::string(plainText(blend));
    fill.temperature = temperatureOf(reader, options, failed);
    if (const auto rate = times(reader, kImportDisplayed, kPositive, 1.0, failed))
        fill.displayed = rateOf(*rate, options.rate);
    fill.counted = yesNo(reader, kImportCounted, failed);
    return failed ? Result<Fill>(fail(*failed)) : fill;
}

enum TripColumn { kImportTripDate, kImportKm, kImportMode, kImportIdle, kImportCount };

Result<Trip> readTrip(const CsvReader& reader, const ImportOptions& options)
{
    std::optional<Error> failed;
    Trip trip;
    trip.time = dateAt(reader, kImportTripDate, options.dates, failed);
    if (const auto km = reader.number(kImportKm, kNotNegative))
        trip.distance = options.km * *km;
    else if (!failed)
        failed = km.error();
    trip.mode = std::string(plainText(reader.text(kImportMode)));
    if (trip.mode.empty() && !failed)
        failed = reader.errorAt(kImportMode, Sentence::of("a trip needs its driving mode"),
                                Sentence::of("a mode of the vehicle"));
    if (const auto idle = times(reader, kImportIdle, kNotNegative, 1.0, failed))
        trip.idle = std::chrono::duration<double, std::ratio<60>>(*idle);
    if (const auto starts = times(reader, kImportCount, kStarts, 1.0, failed))
        trip.starts = static_cast<int>(*starts);
    if (!(trip.distance > Distance()) && !trip.idle && !failed)
        failed = reader.errorAt(kImportKm, Sentence::of("a trip without kilometres needs idle minutes"),
                                Sentence::of("km above 0"));
    return failed ? Result<Trip>(fail(*failed)) : trip;
}

// Numbers that came through a table are equal to its digits, not to the last bit.
long long rounded(double value) { return std::llround(value * 1e6); }

auto keyOf(const Fill& fill)
{
    const Distance km = fill.odometer.value_or(fill.sinceLast.value_or(Distance()));
    return std::tuple(fill.time, rounded(fill.volume.litres()), rounded(km.km()));
}

auto keyOf(const Trip& trip) { return std::tuple(trip.time, rounded(trip.distance.km()), trip.mode); }

template <class T>
std::vector<std::size_t> newOnes(const Imported<T>& file, const std::vector<Entry<T>>& known,
                                 bool onceInFile)
{
    std::set<std::string> ids;
    std::map<decltype(keyOf(T{})), int> unclaimed;
    for (const Entry<T>& entry : known) {
        ids.insert(entry.id.uuid);
        ++unclaimed[keyOf(entry.value)];
    }
    std::set<decltype(keyOf(T{}))> seen;
    std::vector<std::size_t> fresh;
    for (std::size_t i = 0; i < file.rows.size(); ++i) {
        const auto key = keyOf(file.rows[i]);
        const bool again = !seen.insert(key).second && onceInFile;
        const auto like = unclaimed.find(key);
        const bool isKnown = like != unclaimed.end() && like->second > 0;
        if (isKnown)
            --like->second;
        if (!again && !isKnown && !ids.contains(file.ids[i]))
            fresh.push_back(i);
    }
    return fresh;
}

} // namespace

Result<Imported<Fill>> readFillsToImport(const std::filesystem::path& file, const ImportOptions& options)
{
    auto table = Table::open(file, options,
                             {{"date", true}, {"litres", true}, {"odometer_km"}, {"trip_meter_km"}, {"full"},
                              {"to_the_neck"}, {"odometer_reset"}, {"price_per_l"}, {"price_total"},
                              {"signal"}, {"blend"}, {"temperature_c"}, {"displayed_l_per_100km"},
                              {"counted"}});
    if (!table)
        return fail(table.error());
    return table->rows<Fill>([&](const CsvReader& reader) { return readImportedFill(reader, options); });
}

Result<Imported<Trip>> readTripsToImport(const std::filesystem::path& file, const ImportOptions& options)
{
    auto table = Table::open(file, options,
                             {{"date", true}, {"km", true}, {"mode", true}, {"idle_min"}, {"starts"}});
    if (!table)
        return fail(table.error());
    return table->rows<Trip>([&](const CsvReader& reader) { return readTrip(reader, options); });
}

std::vector<std::size_t> newRows(const Imported<Fill>& file, const std::vector<Entry<Fill>>& known)
{
    return newOnes(file, known, true);
}

std::vector<std::size_t> newRows(const Imported<Trip>& file, const std::vector<Entry<Trip>>& known)
{
    return newOnes(file, known, false);
}

} // namespace undermark
