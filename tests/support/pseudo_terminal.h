// SPDX-License-Identifier: GPL-3.0-or-later
//
// A serial line whose other end a test holds: what it writes the program reads, and back.
#pragma once

#include <cstdlib>
#include <fcntl.h>
#include <poll.h>
#include <string>
#include <string_view>
#include <unistd.h>

namespace undermark::test {

class PseudoTerminal {
public:
    PseudoTerminal() : m_handle(posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC))
    {
        if (m_handle >= 0 && grantpt(m_handle) == 0 && unlockpt(m_handle) == 0)
            m_name = ptsname(m_handle);
    }
    ~PseudoTerminal() { unplug(); }
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;

    const std::string& name() const { return m_name; } // empty: there are none here
    bool write(std::string_view bytes) const
    {
        return ::write(m_handle, bytes.data(), bytes.size()) == ssize_t(bytes.size());
    }
    // What came within `ms`, nothing if nothing did.
    std::string read(int ms) const
    {
        pollfd watched{m_handle, POLLIN, 0};
        char bytes[4096];
        if (::poll(&watched, 1, ms) <= 0 || (watched.revents & POLLIN) == 0)
            return {};
        const ssize_t count = ::read(m_handle, bytes, sizeof bytes);
        return count > 0 ? std::string(bytes, std::size_t(count)) : std::string();
    }
    void unplug()
    {
        if (m_handle >= 0)
            ::close(m_handle);
        m_handle = -1;
    }

private:
    int m_handle;
    std::string m_name;
};

} // namespace undermark::test
