// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/samples_csv.h"

namespace undermark {

namespace {

// In the order of kSampleColumns.
enum SampleColumn { kSampleTime, kSampleSignal, kSampleSignal2, kSampleSpeed, kSampleFuelRate, kSampleDistance };

void put(SampleRow& row, SampleColumn column, double value)
{
    switch (column) {
    case kSampleTime: break;
    case kSampleSignal: row.signal = Signal::of(value); break;
    case kSampleSignal2: row.signal2 = Signal::of(value); break;
    case kSampleSpeed: row.speed = Speed::fromKmPerHour(value); break;
    case kSampleFuelRate: row.fuelRate = FlowRate::fromLitresPerHour(value); break;
    case kSampleDistance: row.distance = Distance::fromKm(value); break;
    }
}

} // namespace

Result<SamplesCsv> SamplesCsv::open(const std::filesystem::path& file)
{
    return CsvReader::open(file, kSampleColumns).map([](CsvReader reader) {
        return SamplesCsv(std::move(reader));
    });
}

Result<bool> SamplesCsv::next(SampleRow& row)
{
    const Result<bool> more = m_reader.nextRow();
    if (!more || !*more)
        return more;
    row = SampleRow{};
    const Result<double> time = m_reader.number(kSampleTime);
    if (!time)
        return fail(time.error());
    row.time = Seconds(*time);
    for (std::size_t i = kSampleSignal; i < kSampleColumns.size(); ++i) {
        if (m_reader.text(i).empty())
            continue;
        const Result<double> cell = m_reader.number(i, i >= kSampleSpeed ? kNotNegative : kAnyNumber);
        if (!cell)
            return fail(cell.error());
        put(row, static_cast<SampleColumn>(i), *cell);
    }
    return true;
}

} // namespace undermark
