// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/obd_conversation.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr std::array<std::uint8_t, 5> kBitmaps{0x00, 0x20, 0x40, 0x80, 0xA0};
constexpr Seconds kBetweenQuestions{0.2};
constexpr Seconds kAnswerWithin{0.5};
constexpr Seconds kWaitLonger{5.0}; // after "wait" (P2*, from memory)
constexpr Seconds kLongestRetry{8.0};
constexpr double kPollsGood = 2.5;
constexpr Seconds kLongestInterval{30.0};
constexpr double kPetrolType = 1.0, kDieselType = 4.0;
constexpr std::uint8_t kRefusal = 0x7F, kAnswer = 0x41, kMode = 0x01, kWait = 0x78;
constexpr std::uint32_t kAllUnits = 0x7DF, kAllUnitsOf29 = 0x18DB33F1;

std::size_t bytesOf(std::uint8_t pid)
{
    if (pid % 0x20 == 0)
        return 4;
    switch (static_cast<ObdPid>(pid)) {
    case ObdPid::speed:
    case ObdPid::level:
    case ObdPid::fuelType: return 1;
    case ObdPid::airFlow:
    case ObdPid::fuelRate: return 2;
    case ObdPid::odometer: return 4;
    }
    return 0; // not known: nothing behind it can be read
}

// Where a unit listens, by the id that it answers with.
std::uint32_t askedAt(std::uint32_t id, bool extended)
{
    return extended ? 0x18DA00F1u | (id & 0xFFu) << 8 : id - 8;
}

} // namespace

ObdConversation::ObdConversation(Part part, std::optional<FuelKind> fuel)
    : m_part(part), m_fuel(fuel),
      m_polls{{{ObdPid::speed, Seconds(0.5), {}, Seconds(-1), Channel::speed},
               {ObdPid::fuelRate, Seconds(0.5), {}, Seconds(-1), Channel::fuelRate},
               {ObdPid::airFlow, Seconds(0.5), {}, Seconds(-1), Channel::fuelRate},
               {ObdPid::level, Seconds(1.0), {}, Seconds(-1), Channel::signal},
               {ObdPid::odometer, kLongestInterval, {}, Seconds(-1), Channel::distance},
               {ObdPid::fuelType, Seconds(2.0), {}, Seconds(-1), Channel::signal}}}
{
}

ObdConversation::Unit* ObdConversation::unitOf(const CanFrame& frame)
{
    if (std::ranges::none_of(kAnswers, [&](const CanFilter& answers) { return answers.passes(frame); }))
        return nullptr;
    const auto known = std::span(m_units).first(m_unitCount);
    const auto found = std::ranges::find_if(known, [&](const Unit& unit) {
        return unit.id == frame.id && unit.extended == frame.extended;
    });
    if (found != known.end())
        return &*found;
    if (m_unitCount == m_units.size())
        return nullptr;
    Unit& unit = m_units[m_unitCount++];
    unit.id = frame.id;
    unit.extended = frame.extended;
    return &unit;
}

Heard ObdConversation::hear(const TimedFrame& timed, Seconds now, std::vector<TimedValue>& out)
{
    Unit* unit = unitOf(timed.frame);
    if (unit == nullptr)
        return Heard::nothing;
    switch (unit->receiver.take(timed.frame.bytes(), now)) {
    case IsoTpReceiver::Step::garbled: return Heard::garbled;
    case IsoTpReceiver::Step::complete:
        return takeMessage(unit->receiver.message(), timed.bus ^ unit->id, now, out);
    case IsoTpReceiver::Step::begun:
        if (m_part == Part::asks)
            m_reply = flowControl(askedAt(unit->id, unit->extended), unit->extended);
        return Heard::nothing;
    case IsoTpReceiver::Step::going:
    case IsoTpReceiver::Step::nothing: break;
    }
    return Heard::nothing;
}

Heard ObdConversation::takeMessage(std::span<const std::uint8_t> message, std::uint32_t sender,
                                   Seconds now, std::vector<TimedValue>& out)
{
    if (message.size() >= 3 && message[0] == kRefusal && message[1] == kMode && m_asked) {
        if (message[2] == kWait) {
            m_waitUntil = now + kWaitLonger;
            return Heard::nothing;
        }
        m_notAgain.set(*m_asked);
        answeredNow(*m_asked);
        return Heard::nothing;
    }
    if (message.empty() || message[0] != kAnswer)
        return Heard::nothing;
    // One answer may hold several parameters.
    const std::size_t before = out.size();
    for (message = message.subspan(1); !message.empty();) {
        const std::uint8_t pid = message[0];
        const std::size_t bytes = bytesOf(pid);
        if (bytes == 0)
            break;
        if (message.size() < 1 + bytes)
            return Heard::garbled;
        const auto data = message.subspan(1, bytes);
        if (pid % 0x20 == 0)
            takeBitmap(pid, data);
        else if (const auto value = obdValue(static_cast<ObdPid>(pid), data))
            takeAnswer(static_cast<ObdPid>(pid), *value, sender, now, out);
        answeredNow(pid);
        message = message.subspan(1 + bytes);
    }
    return out.size() > before ? Heard::value : Heard::nothing;
}

// Bit 7 of the first byte is the parameter after `base`, and so on.
void ObdConversation::takeBitmap(std::uint8_t base, std::span<const std::uint8_t> bits)
{
    m_answered = true;
    for (std::size_t i = 0; i < 8 * bits.size(); ++i) {
        if ((bits[i / 8] >> (7 - i % 8) & 1) != 0 && base + i + 1 < m_known.size())
            m_known.set(base + i + 1);
    }
}

void ObdConversation::takeAnswer(ObdPid pid, double value, std::uint32_t sender, Seconds now,
                                 std::vector<TimedValue>& out)
{
    const auto poll = std::ranges::find(m_polls, pid, &Poll::pid);
    Seconds interval = poll->interval;
    if (poll->heard >= Seconds(0) && now > poll->heard)
        interval = std::clamp(now - poll->heard, poll->interval, kLongestInterval);
    poll->heard = now;
    if (pid == ObdPid::fuelType) {
        if (value == kPetrolType)
            m_fuel = FuelKind::petrol;
        else if (value == kDieselType)
            m_fuel = FuelKind::diesel;
        m_notAgain.set(static_cast<std::size_t>(pid));
        return;
    }
    if (pid == ObdPid::fuelRate)
        m_rateHeard = true;
    if (pid == ObdPid::airFlow) {
        if (m_fuel != FuelKind::petrol || m_rateHeard)
            return;
        value = petrolLitresPerHour(value);
    }
    out.push_back({now, poll->channel, value, sender ^ static_cast<std::uint32_t>(pid) << 20,
                   kPollsGood * interval});
}

void ObdConversation::answeredNow(std::uint8_t pid)
{
    if (m_asked != pid)
        return;
    m_asked.reset();
    m_pause = Seconds(2);
    if (m_bitmap < kBitmaps.size() && pid == kBitmaps[m_bitmap])
        ++m_bitmap;
}

// No answer came. Of the first question: nobody is there, or not under these ids.
void ObdConversation::giveUpWaiting(Seconds now)
{
    const bool first = m_bitmap == 0;
    if (!first && m_bitmap < kBitmaps.size())
        ++m_bitmap;
    m_asked.reset();
    const Seconds last = std::ranges::max_element(m_polls, {}, &Poll::heard)->heard;
    const bool silent = m_bitmap == kBitmaps.size() && now - last > kLongestRetry;
    if (!first && !silent)
        return;
    if (first)
        m_extended = !m_extended;
    m_bitmap = 0;
    m_notBefore = now + m_pause;
    m_pause = std::min(2.0 * m_pause, kLongestRetry);
}

bool ObdConversation::wanted(ObdPid pid) const
{
    const auto number = static_cast<std::size_t>(pid);
    if (!m_known.test(number) || m_notAgain.test(number))
        return false;
    if (pid == ObdPid::fuelType)
        return !m_fuel;
    if (pid == ObdPid::airFlow)
        return m_fuel == FuelKind::petrol && !(knows(ObdPid::fuelRate)
            && !m_notAgain.test(static_cast<std::size_t>(ObdPid::fuelRate)));
    return true;
}

// What is overdue by the greatest part of its interval.
std::optional<std::uint8_t> ObdConversation::dueQuestion(Seconds now)
{
    if (m_bitmap < kBitmaps.size())
        return kBitmaps[m_bitmap];
    Poll* most = nullptr;
    const auto overdue = [now](const Poll& poll) { return (now - poll.due) / poll.interval; };
    for (Poll& poll : m_polls) {
        if (wanted(poll.pid) && poll.due <= now && (most == nullptr || overdue(poll) > overdue(*most)))
            most = &poll;
    }
    if (most == nullptr)
        return std::nullopt;
    most->due = std::max(most->due + most->interval, now); // late once is not late for ever
    return static_cast<std::uint8_t>(most->pid);
}

CanFrame ObdConversation::question(std::uint8_t pid, Seconds now)
{
    m_asked = pid;
    m_waitUntil = now + kAnswerWithin;
    m_notBefore = now + kBetweenQuestions;
    return {.id = m_extended ? kAllUnitsOf29 : kAllUnits, .extended = m_extended, .length = 8,
            .data = {2, kMode, pid}};
}

std::optional<CanFrame> ObdConversation::next(Seconds now)
{
    if (m_part == Part::listens)
        return std::nullopt;
    if (m_reply)
        return std::exchange(m_reply, std::nullopt);
    if (m_asked && now >= m_waitUntil)
        giveUpWaiting(now);
    if (m_asked || now < m_notBefore)
        return std::nullopt;
    const auto pid = dueQuestion(now);
    return pid ? std::optional(question(*pid, now)) : std::nullopt;
}

} // namespace undermark
