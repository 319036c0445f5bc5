// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/samples_csv.h"

#include <array>

namespace undermark {

namespace {

enum Column { kTime, kSignal, kSignal2, kSpeed, kFuelRate, kDistance };

constexpr std::array<CsvColumn, 6> kColumns{{
    {"t_s", true}, {"signal", true}, {"signal2"}, {"speed_kmh"}, {"fuel_rate_l_h"}, {"distance_km"},
}};

void put(SampleRow& row, Column column, double value)
{
    switch (column) {
    case kTime: break;
    case kSignal: row.signal = Signal::of(value); break;
    case kSignal2: row.signal2 = Signal::of(value); break;
    case kSpeed: row.speed = Speed::fromKmPerHour(value); break;
    case kFuelRate: row.fuelRate = FlowRate::fromLitresPerHour(value); break;
    case kDistance: row.distance = Distance::fromKm(value); break;
    }
}

} // namespace

Result<SamplesCsv> SamplesCsv::open(const std::filesystem::path& file)
{
    return CsvReader::open(file, kColumns).map([](CsvReader reader) {
        return SamplesCsv(std::move(reader));
    });
}

bool SamplesCsv::hasSecondSignal() const { return m_reader.has(kSignal2); }

Result<bool> SamplesCsv::next(SampleRow& row)
{
    const Result<bool> more = m_reader.nextRow();
    if (!more || !*more)
        return more;
    row = SampleRow{};
    const Result<double> time = m_reader.number(kTime);
    if (!time)
        return fail(time.error());
    row.time = Seconds(*time);
    for (std::size_t i = kSignal; i < kColumns.size(); ++i) {
        if (m_reader.text(i).empty())
            continue;
        const Result<double> cell = m_reader.number(i, i >= kSpeed ? kNotNegative : kAnyNumber);
        if (!cell)
            return fail(cell.error());
        put(row, static_cast<Column>(i), *cell);
    }
    return true;
}

} // namespace undermark
