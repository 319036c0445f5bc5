// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tables/samples_csv.h"

namespace undermark {

Result<SamplesCsv> SamplesCsv::open(const std::filesystem::path& file)
{
    return CsvReader::open(file, kSampleColumns).map([](CsvReader reader) {
        return SamplesCsv(std::move(reader));
    });
}

Result<bool> SamplesCsv::next(Sample& row)
{
    const Result<bool> more = m_reader.nextRow();
    if (!more || !*more)
        return more;
    row = Sample{};
    const Result<double> time = m_reader.number(0);
    if (!time)
        return fail(time.error());
    row.time = Seconds(*time);
    for (const Channel channel : kChannels) {
        const auto cell = m_reader.optionalNumber(1 + indexOf(channel), isSignal(channel) ? kAnyNumber : kNotNegative);
        if (!cell)
            return fail(cell.error());
        if (*cell)
            row.set(channel, **cell);
    }
    return true;
}

} // namespace undermark
