// SPDX-License-Identifier: GPL-3.0-or-later
//
// Plain lines of numbers: one number a line is the signal, two with a comma are the signals
// of two senders. With a header line first, as a samples CSV has it
// ("t_s,signal,speed_kmh"), each column is what it is called; columns of other names are left
// out, an empty cell is unknown.
#pragma once

#include "engine/signals/sample.h"

#include <optional>
#include <string_view>
#include <vector>

namespace undermark {

class LineValues {
public:
    // Values are added to `out`, at the line's own time or else at `now`.
    Heard take(std::string_view line, Seconds now, std::vector<TimedValue>& out);

    // Lines carry their time.
    bool timed() const { return m_time.has_value(); }

private:
    bool takeHeader(std::string_view line);
    Heard takeCells(std::string_view line, Seconds now, std::vector<TimedValue>& out) const;

    std::vector<std::optional<Channel>> m_columns; // empty: no header
    std::optional<std::size_t> m_time;             // its column
};

} // namespace undermark
