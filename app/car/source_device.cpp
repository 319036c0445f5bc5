// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/source_device.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <linux/can.h>
#include <linux/can/raw.h>
#include <net/if.h>
#include <poll.h>
#include <sys/ioctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <termios.h>
#include <unistd.h>
#include <utility>
#include <vector>

namespace undermark {

struct SourceDevice::LineSettings {
    termios settings{};
};

namespace {

struct LineSpeed {
    int baud;
    speed_t code;
};
constexpr std::array<LineSpeed, 14> kLineSpeeds{{{1200, B1200}, {2400, B2400}, {4800, B4800}, {9600, B9600},
                                                 {19200, B19200}, {38400, B38400}, {57600, B57600},
                                                 {115200, B115200}, {230400, B230400}, {460800, B460800},
                                                 {921600, B921600}, {1000000, B1000000}, {2000000, B2000000},
                                                 {4000000, B4000000}}};
constexpr int kAdapterBaud = 115200; // an adapter on USB takes any

tl::unexpected<Error> failDevice(const std::string& place)
{
    return fail(ErrorCode::fileAccess, Sentence::just("the source cannot be opened: " + std::string(strerror(errno))),
                {place});
}

bool writeAll(int handle, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::write(handle, bytes.data(), bytes.size());
        if (count <= 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

} // namespace

SourceDevice::SourceDevice(SourceDevice&& other) noexcept { *this = std::move(other); }

SourceDevice& SourceDevice::operator=(SourceDevice&& other) noexcept
{
    if (this == &other)
        return *this;
    close();
    m_handle = std::exchange(other.m_handle, -1);
    m_recorded = other.m_recorded;
    m_bus = other.m_bus;
    m_slcan = other.m_slcan;
    m_own = other.m_own;
    m_state = other.m_state;
    m_before = std::move(other.m_before);
    return *this;
}

SourceDevice::~SourceDevice() { close(); }

void SourceDevice::close()
{
    if (m_handle < 0)
        return;
    if (m_slcan && m_state == State::open)
        writeAll(m_handle, kSlcanClosing);
    if (m_before)
        tcsetattr(m_handle, TCSANOW, &m_before->settings);
    if (m_own)
        ::close(m_handle);
    m_handle = -1;
}

Result<SourceDevice> SourceDevice::open(const SourceSpec& spec, std::span<const CanFilter> filters)
{
    SourceDevice device;
    device.m_bus = spec.kind == SourceKind::can;
    const auto opened = device.m_bus ? device.openBus(spec.place, filters) : device.openPlace(spec);
    if (!opened)
        return fail(opened.error());
    return device;
}

Result<void> SourceDevice::openPlace(const SourceSpec& spec)
{
    struct stat what {};
    if (spec.place == "-") {
        m_handle = STDIN_FILENO;
        m_own = false;
    } else {
        if (::stat(spec.place.c_str(), &what) != 0)
            return failDevice(spec.place);
        if (S_ISDIR(what.st_mode)) {
            errno = EISDIR;
            return failDevice(spec.place);
        }
        const int flags = O_NONBLOCK | O_NOCTTY | O_CLOEXEC;
        // A pipe to read and write, so that it does not end when its writer does.
        const bool both = S_ISFIFO(what.st_mode) || spec.kind == SourceKind::slcan;
        m_handle = ::open(spec.place.c_str(), (both ? O_RDWR : O_RDONLY) | flags);
    }
    if (m_handle < 0 || ::fstat(m_handle, &what) != 0)
        return failDevice(spec.place);
    m_recorded = S_ISREG(what.st_mode);
    if (isatty(m_handle) != 0 && m_own)
        return makeRaw(spec);
    return {};
}

Result<void> SourceDevice::makeRaw(const SourceSpec& spec)
{
    m_slcan = spec.kind == SourceKind::slcan;
    const int baud = m_slcan ? kAdapterBaud : spec.speed.value_or(0);
    const auto speed = std::ranges::find(kLineSpeeds, baud, &LineSpeed::baud);
    if (baud != 0 && speed == kLineSpeeds.end())
        return failInput(Sentence::just("no speed of a serial line"),
                         Sentence::just("1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200 … 4000000 baud"),
                         std::to_string(baud));
    auto before = std::make_unique<LineSettings>();
    if (tcgetattr(m_handle, &before->settings) != 0)
        return failDevice(spec.place);
    termios raw = before->settings;
    cfmakeraw(&raw);
    raw.c_cflag |= CLOCAL | CREAD;
    if (baud != 0)
        cfsetspeed(&raw, speed->code);
    if (tcsetattr(m_handle, TCSANOW, &raw) != 0)
        return failDevice(spec.place);
    m_before = std::move(before);
    constexpr int kUsualKbit = 500;
    if (m_slcan && !writeAll(m_handle, *slcanOpening(spec.speed.value_or(kUsualKbit))))
        return failDevice(spec.place);
    return {};
}

Result<void> SourceDevice::openBus(const std::string& name, std::span<const CanFilter> filters)
{
    m_handle = ::socket(PF_CAN, SOCK_RAW | SOCK_NONBLOCK | SOCK_CLOEXEC, CAN_RAW);
    if (m_handle < 0)
        return failDevice("can:" + name);
    // Before it is bound, so that nothing else gets in between.
    std::vector<can_filter> passed;
    for (const CanFilter& filter : filters)
        passed.push_back({filter.id | (filter.extended ? CAN_EFF_FLAG : 0u), filter.mask | CAN_EFF_FLAG | CAN_RTR_FLAG});
    if (!passed.empty() && passed.size() <= CAN_RAW_FILTER_MAX // (more: all are heard)
        && setsockopt(m_handle, SOL_CAN_RAW, CAN_RAW_FILTER, passed.data(),
                      static_cast<socklen_t>(passed.size() * sizeof(can_filter))) != 0)
        return failDevice("can:" + name);
    // By this socket: if_nametoindex() would open another one.
    ifreq request{};
    name.copy(request.ifr_name, IFNAMSIZ - 1);
    if (ioctl(m_handle, SIOCGIFINDEX, &request) != 0)
        return failDevice("can:" + name);
    sockaddr_can address{};
    address.can_family = AF_CAN;
    address.can_ifindex = request.ifr_ifindex;
    if (::bind(m_handle, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0)
        return failDevice("can:" + name);
    return {};
}

std::size_t SourceDevice::readFrames(std::span<char> out)
{
    constexpr std::size_t kLongestLine = 32; // T, 8 digits, length, 16 digits, CR
    std::size_t filled = 0;
    can_frame raw{};
    while (out.size() - filled >= kLongestLine) {
        const ssize_t count = ::read(m_handle, &raw, sizeof raw);
        if (count < 0 && (errno == ENETDOWN || errno == ENODEV))
            m_state = State::lost;
        if (count != sizeof raw)
            break;
        if ((raw.can_id & (CAN_ERR_FLAG | CAN_RTR_FLAG)) != 0 || raw.len > 8)
            continue;
        CanFrame frame{.extended = (raw.can_id & CAN_EFF_FLAG) != 0, .length = raw.len};
        frame.id = raw.can_id & (frame.extended ? CAN_EFF_MASK : CAN_SFF_MASK);
        std::copy_n(raw.data, frame.length, frame.data.begin());
        const std::string line = slcanLine(frame);
        std::ranges::copy(line, out.begin() + static_cast<std::ptrdiff_t>(filled));
        filled += line.size();
    }
    return filled;
}

Result<std::size_t> SourceDevice::read(std::span<char> out)
{
    if (m_state != State::open)
        return std::size_t{0};
    if (m_bus)
        return readFrames(out);
    // What is piped in is not ours to be made non-blocking: others may hold it, too.
    pollfd piped{m_handle, POLLIN, 0};
    if (!m_own && ::poll(&piped, 1, 0) == 0)
        return std::size_t{0};
    const ssize_t count = ::read(m_handle, out.data(), out.size());
    if (count > 0)
        return static_cast<std::size_t>(count);
    if (count < 0 && (errno == EAGAIN || errno == EINTR))
        return std::size_t{0};
    // A serial line that says nothing more, or EIO, was unplugged.
    m_state = m_before ? State::lost : State::ended;
    return std::size_t{0};
}

bool SourceDevice::send(const CanFrame& frame)
{
    if (m_slcan)
        return m_state == State::open && writeAll(m_handle, slcanLine(frame));
    if (!m_bus)
        return false;
    can_frame raw{};
    raw.can_id = frame.id | (frame.extended ? CAN_EFF_FLAG : 0u);
    raw.len = frame.length;
    std::copy_n(frame.data.begin(), frame.length, raw.data);
    return ::write(m_handle, &raw, sizeof raw) == sizeof raw;
}

} // namespace undermark
