// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a source is read from: a recording, a pipe, a serial line, a CAN bus of this machine.
// Nothing waits for it; who reads it polls handle().
//
// Guarantees (each has a test in tests/app/car/live_sources_test.cpp):
//  * a pipe may be opened and closed by any number of writers, it does not end;
//  * a serial line is set raw, at its speed, and put back as it was when it is left;
//  * no socket is opened but one of CAN frames, for can: only.
#pragma once

#include "engine/signals/can_frame.h"
#include "engine/signals/source_spec.h"

#include <memory>
#include <span>

namespace undermark {

class SourceDevice {
public:
    // Of a bus the kernel passes on what a filter passes; none: everything. fileAccess where it
    // cannot be opened, badInput for a speed that no line has.
    static Result<SourceDevice> open(const SourceSpec& spec, std::span<const CanFilter> filters = {});
    SourceDevice(SourceDevice&&) noexcept;
    SourceDevice& operator=(SourceDevice&&) noexcept;
    ~SourceDevice();

    // A regular file: whole, with times of its own.
    bool recorded() const { return m_recorded; }
    int handle() const { return m_handle; }

    enum class State : std::uint8_t { open, ended, lost };
    // Up to out.size() bytes that are there, none where there are none yet. Of a bus each
    // frame is a line as slcan writes it.
    Result<std::size_t> read(std::span<char> out);
    State state() const { return m_state; }
    // False where it could not be sent; a bus that is busy loses it.
    bool send(const CanFrame& frame);

private:
    SourceDevice() = default;
    std::size_t readFrames(std::span<char> out);
    Result<void> openPlace(const SourceSpec& spec);
    Result<void> openBus(const std::string& name, std::span<const CanFilter> filters);
    Result<void> makeRaw(const SourceSpec& spec);
    void close();

    struct LineSettings;
    int m_handle = -1;
    bool m_recorded = false;
    bool m_bus = false, m_slcan = false, m_own = true;
    State m_state = State::open;
    std::unique_ptr<LineSettings> m_before; // of a serial line
};

} // namespace undermark
