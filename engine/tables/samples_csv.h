// SPDX-License-Identifier: GPL-3.0-or-later
//
// Recorded drives: t_s,signal[,signal2][,speed_kmh][,fuel_rate_l_h][,distance_km], and of further
// tanks tank1_signal[,tank1_signal2], tank2_signal, … (engine/signals/sample.h).
// Read row by row: memory is constant in the length of the file.
#pragma once

#include "engine/signals/sample.h"
#include "engine/tables/csv_reader.h"

#include <array>

namespace undermark {

inline constexpr std::array<CsvColumn, 1 + kChannels.size()> kSampleColumns{{
    {"t_s", true},
    {nameOf(Channel::signal), true},
    {nameOf(Channel::signal2)},
    {nameOf(Channel::speed)},
    {nameOf(Channel::fuelRate)},
    {nameOf(Channel::distance)},
    {nameOf(Channel::tank1Signal)},
    {nameOf(Channel::tank1Signal2)},
    {nameOf(Channel::tank2Signal)},
    {nameOf(Channel::tank2Signal2)},
    {nameOf(Channel::tank3Signal)},
    {nameOf(Channel::tank3Signal2)},
    {nameOf(Channel::tank4Signal)},
    {nameOf(Channel::tank4Signal2)},
}};

class SamplesCsv {
public:
    // Errors as CsvReader::open.
    static Result<SamplesCsv> open(const std::filesystem::path& file);

    // Fills in the next row; false at the end, `row` is then untouched. badInput
    // for text, a negative speed, fuel rate or distance, and a missing time.
    Result<bool> next(Sample& row);

    const std::vector<std::string>& unknownColumns() const { return m_reader.unknownColumns(); }

private:
    explicit SamplesCsv(CsvReader reader) : m_reader(std::move(reader)) {}
    CsvReader m_reader;
};

} // namespace undermark
