// SPDX-License-Identifier: GPL-3.0-or-later
//
// Signals of a DBC file, a description of the frames of one bus. Read are messages (BO_),
// signals (SG_) with simple multiplexing and IEEE floats (SIG_VALTYPE_); everything else is
// skipped, also where its texts run over lines.
//
// Guarantees (each has a test in tests/engine/signals/dbc_test.cpp, and an independent reader
// agrees on generated files in dbc_oracle_test.cpp):
//  * a message or signal that cannot be read is an error with its line, never left out;
//  * ids with bit 31 set are extended ones; a J1939 id whose sender is the null address (254)
//    stands for the group of any sender;
//  * what is multiplexed on more than one level is refused when it is asked for.
#pragma once

#include "engine/base/error.h"
#include "engine/signals/frame_signal.h"

#include <vector>

namespace undermark {

class Dbc {
public:
    struct Entry {
        std::string name; // Message.Signal
        std::string unit;
        FrameSignal signal;
        bool nested = false;
    };

    // `file` is only named in errors. badInput for what cannot be read.
    static Result<Dbc> parse(std::string_view text, const std::string& file);

    // "Message.Signal". badInput where there is none, or it is nested.
    Result<FrameSignal> signal(std::string_view name) const;
    std::span<const Entry> entries() const { return m_entries; }

private:
    friend class DbcParser;
    std::string m_file;
    std::vector<Entry> m_entries;
};

} // namespace undermark
