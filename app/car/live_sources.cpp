// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/live_sources.h"

#include "app/car/car_tanks.h"
#include "app/car/kept_source.h"

#include <algorithm>
#include <array>
#include <poll.h>

namespace undermark {

namespace {

constexpr std::array<Seconds, 4> kTryAfter{Seconds(1), Seconds(2), Seconds(5), Seconds(10)};
constexpr int kPartsAtOnce = 16; // of a device that says more than is read at once: 128 KiB a look

// Those named; where none is, those kept.
Result<std::vector<LiveSource>> asked(const SourceOptions& options)
{
    if (options.sources.empty() && options.ofTanks.empty())
        return options.kept;
    std::vector<LiveSource> named;
    for (const std::string& name : options.sources) {
        Result<LiveSource> source = readSource(name, options.map);
        if (!source)
            return fail(source.error());
        named.push_back(std::move(*source));
    }
    for (const auto& [tank, name] : options.ofTanks) {
        Result<LiveSource> source = readSource(name, options.map);
        if (!source)
            return fail(source.error());
        source->tank = tank;
        named.push_back(std::move(*source));
    }
    return named;
}

} // namespace

Result<LiveSources> LiveSources::open(const SourceOptions& options)
{
    const Result<std::vector<LiveSource>> sources = asked(options);
    if (!sources)
        return fail(sources.error());
    LiveSources all;
    for (const LiveSource& source : *sources) {
        const Result<SourceSpec> spec = parseSourceSpec(source.spec);
        const Result<std::size_t> tank = placeOfTank(options.tanks, source.tank);
        if (!tank)
            return fail(tank.error());
        const Result<FrameRules> rules = spec ? rulesOf(source, options.fuel, options.map.string()) : fail(spec.error());
        if (!rules)
            return fail(rules.error());
        const auto filters = options.heardWhole ? std::vector<CanFilter>() : filtersOf(*rules);
        Result<SourceDevice> device = SourceDevice::open(*spec, filters);
        const bool away = !device && options.mayBeAway && device.error().code == ErrorCode::fileAccess;
        if (!device && !away)
            return fail(device.error());
        // A recording of frames carries its times also when it is piped in.
        const bool own = (device && device->recorded()) || spec->kind == SourceKind::candump || spec->kind == SourceKind::asc;
        SourceDecoder decoder(spec->kind, *rules,
                              own ? SourceDecoder::Times::own : SourceDecoder::Times::reader,
                              static_cast<std::uint32_t>(all.m_sources.size()), *tank);
        all.m_sources.push_back({*spec, source.spec, std::nullopt, std::move(decoder), filters});
        if (device)
            all.m_sources.back().device = std::move(*device);
    }
    return all;
}

void LiveSources::take(Seconds now)
{
    m_now = std::max(m_now, now);
    for (Source& source : m_sources)
        read(source);
}

void LiveSources::read(Source& source)
{
    if (source.next == source.values.size()) {
        source.values.clear();
        source.next = 0;
    }
    if (source.ended)
        return;
    if (!source.device)
        tryAgain(source);
    // A recording is read on only when all of it has been played.
    if (source.device && !(source.device->recorded() && !source.values.empty()))
        readDevice(source);
}

void LiveSources::readDevice(Source& source)
{
    SourceDevice& device = *source.device;
    std::array<char, 8192> bytes{};
    for (int part = 0; part < kPartsAtOnce; ++part) {
        const auto count = device.read(bytes);
        if (!count || *count == 0)
            break;
        source.decoder.takeBytes(std::string_view(bytes.data(), *count), m_now, source.values);
        if (device.recorded() && !source.values.empty())
            break;
    }
    while (const auto frame = source.decoder.next(m_now))
        device.send(*frame);
    if (device.state() == SourceDevice::State::ended) {
        source.decoder.finish(m_now, source.values);
        source.ended = true;
    } else if (device.state() == SourceDevice::State::lost) {
        source.device.reset();
        ++source.lost;
        source.tries = 0;
        source.tryAt = m_now + kTryAfter[0];
    }
}

void LiveSources::tryAgain(Source& source)
{
    if (m_now < source.tryAt)
        return;
    Result<SourceDevice> device = SourceDevice::open(source.spec, source.filters);
    if (device) {
        source.device = std::move(*device);
        return;
    }
    source.tries = std::min(source.tries + 1, static_cast<int>(kTryAfter.size()) - 1);
    source.tryAt = m_now + kTryAfter[static_cast<std::size_t>(source.tries)];
}

LiveSources::Source* LiveSources::earliest()
{
    Source* first = nullptr;
    for (Source& source : m_sources) {
        const bool readOn = !source.ended && source.device && source.device->recorded();
        if (readOn && source.next == source.values.size())
            return nullptr; // there is more of this recording, maybe before what others say next
        const bool ready = source.next < source.values.size() && source.values[source.next].time <= m_now;
        if (ready && (first == nullptr || source.values[source.next].time < first->values[first->next].time))
            first = &source;
    }
    return first;
}

std::optional<Sample> LiveSources::next()
{
    while (Source* source = earliest()) {
        const TimedValue& value = source->values[source->next];
        if (auto sample = m_joiner.next(value.time))
            return sample;
        m_joiner.put(value);
        ++source->next;
    }
    // Recordings alone: time is what they say, not how fast they are read.
    if (!recorded())
        return m_joiner.next(m_now);
    return ended() ? m_joiner.next(m_joiner.newest() + Joiner::kStep) : std::nullopt; // the last value, too
}

void LiveSources::wait(std::chrono::milliseconds longest) const
{
    std::vector<pollfd> watched;
    for (const Source& source : m_sources) {
        if (!source.ended && source.device && source.device->recorded() && source.next == source.values.size())
            return; // there is more to read at once
        if (!source.ended && source.device && !source.device->recorded())
            watched.push_back({source.device->handle(), POLLIN, 0});
    }
    ::poll(watched.data(), watched.size(), static_cast<int>(longest.count()));
}

bool LiveSources::ended() const
{
    return std::ranges::all_of(m_sources, [](const Source& source) {
        return source.ended && source.next == source.values.size();
    });
}

bool LiveSources::recorded() const
{
    return std::ranges::all_of(m_sources, [](const Source& source) {
        return source.ended || (source.device && source.device->recorded());
    });
}

std::vector<LiveSources::Told> LiveSources::told() const
{
    std::vector<Told> all;
    for (const Source& source : m_sources)
        all.push_back({source.name, source.decoder.counts(), source.lost, source.device.has_value()});
    return all;
}

} // namespace undermark
