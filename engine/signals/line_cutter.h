// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cuts bytes into lines, however the bytes were split on their way.
//
//     cutter.add(bytes, [](std::string_view line) { … });
//
// Guarantees (each has a test in tests/engine/signals/line_cutter_test.cpp):
//  * a line ends at LF, CR or both; blank lines are left out;
//  * a line longer than kLongest is passed on as an empty one, once, at its end: it takes
//    no memory, and is none that could be understood;
//  * the same lines come out wherever the bytes were split; nothing allocates.
#pragma once

#include <array>
#include <string_view>

namespace undermark {

class LineCutter {
public:
    static constexpr std::size_t kLongest = 256; // bytes

    // Calls take(line) for every line that ends in `bytes`; valid during the call.
    void add(std::string_view bytes, auto&& take)
    {
        for (const char c : bytes) {
            if (c == '\n' || c == '\r')
                finish(take);
            else if (m_length++ < kLongest)
                m_line[m_length - 1] = c;
        }
    }
    // A last line without its end.
    void finish(auto&& take)
    {
        const std::size_t length = m_length;
        m_length = 0;
        if (length > 0)
            take(length > kLongest ? std::string_view() : std::string_view(m_line.data(), length));
    }

private:
    std::array<char, kLongest> m_line{};
    std::size_t m_length = 0; // of the line so far, also of what was not kept
};

} // namespace undermark
