// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/samples_csv.h"

#include <array>

namespace undermark {

namespace {

enum Column { kTime, kSignal, kSignal2, kSpeed, kFuelRate, kDistance };

constexpr std::array<CsvColumn, 6> kColumns{{
    {"t_s", true}, {"signal", true}, {"signal2"}, {"speed_kmh"}, {"fuel_rate_l_h"}, {"distance_km"},
}};

} // namespace

Result<SamplesCsv> SamplesCsv::open(const std::filesystem::path& file)
{
    return CsvReader::open(file, kColumns).map([](CsvReader reader) {
        return SamplesCsv(std::move(reader));
    });
}

bool SamplesCsv::hasSecondSignal() const { return m_reader.has(kSignal2); }

Result<std::optional<SampleRow>> SamplesCsv::next()
{
    const Result<bool> more = m_reader.nextRow();
    if (!more)
        return fail(more.error());
    if (!*more)
        return std::optional<SampleRow>();
    SampleRow row;
    const Result<double> time = m_reader.number(kTime);
    if (!time)
        return fail(time.error());
    row.time = Seconds(*time);
    std::array<std::optional<double>, kColumns.size()> cells;
    for (std::size_t i = kSignal; i < kColumns.size(); ++i) {
        if (m_reader.text(i).empty())
            continue;
        const auto cell = m_reader.number(i, i >= kSpeed ? kNotNegative : kAnyNumber);
        if (!cell)
            return fail(cell.error());
        cells[i] = *cell;
    }
    if (cells[kSignal])
        row.signal = Signal::of(*cells[kSignal]);
    if (cells[kSignal2])
        row.signal2 = Signal::of(*cells[kSignal2]);
    if (cells[kSpeed])
        row.speed = Speed::fromKmPerHour(*cells[kSpeed]);
    if (cells[kFuelRate])
        row.fuelRate = FlowRate::fromLitresPerHour(*cells[kFuelRate]);
    if (cells[kDistance])
        row.distance = Distance::fromKm(*cells[kDistance]);
    return std::optional(row);
}

} // namespace undermark
