// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/live_sources.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <poll.h>
#include <sstream>

namespace undermark {

namespace {

constexpr std::array<Seconds, 4> kTryAfter{Seconds(1), Seconds(2), Seconds(5), Seconds(10)};
constexpr int kPartsAtOnce = 16; // of a device that says more than is read at once: 128 KiB a look
constexpr std::uintmax_t kLargestText = 16u << 20; // a DBC file, a map

Result<std::string> wholeText(const std::filesystem::path& file)
{
    std::error_code problem;
    const auto size = std::filesystem::file_size(file, problem);
    std::ifstream in(file, std::ios::binary);
    if (problem || !in)
        return fail(ErrorCode::fileAccess, Sentence::just("cannot open the file"), {file.string()});
    if (size > kLargestText)
        return fail(ErrorCode::badInput, Sentence::just("the file is too large"), {file.string()},
                    Sentence::just("16 MiB at most"));
    std::ostringstream text;
    text << in.rdbuf();
    return std::move(text).str();
}

Result<FrameRules> rulesOf(const SourceSpec& spec, const SourceOptions& options)
{
    FrameRules rules = frameRulesOf(spec, options.fuel);
    if (!spec.carriesFrames() || (options.map.empty() && spec.language != FrameLanguage::dbc))
        return rules;
    if (options.map.empty())
        return failInput(Sentence::just("a DBC file names signals, but not which of them is the level"),
                         Sentence::just("--map MAP.json"), spec.dbcFile);
    std::optional<Dbc> dbc;
    if (spec.language == FrameLanguage::dbc) {
        const Result<std::string> text = wholeText(spec.dbcFile);
        Result<Dbc> read = text ? Dbc::parse(*text, spec.dbcFile) : fail(text.error());
        if (!read)
            return fail(read.error());
        dbc = std::move(*read);
    }
    const Result<std::string> map = wholeText(options.map);
    Result<std::vector<FrameRule>> mapped =
        map ? parseFrameMap(*map, options.map.string(), dbc ? &*dbc : nullptr) : fail(map.error());
    if (!mapped)
        return fail(mapped.error());
    rules.rules = std::move(*mapped);
    return rules;
}

} // namespace

Result<LiveSources> LiveSources::open(const SourceOptions& options)
{
    LiveSources all;
    for (const std::string& name : options.sources) {
        const Result<SourceSpec> spec = parseSourceSpec(name);
        const Result<FrameRules> rules = spec ? rulesOf(*spec, options) : fail(spec.error());
        if (!rules)
            return fail(rules.error());
        Result<SourceDevice> device = SourceDevice::open(*spec);
        const bool away = !device && options.mayBeAway && device.error().code == ErrorCode::fileAccess;
        if (!device && !away)
            return fail(device.error());
        // A recording of frames carries its times also when it is piped in.
        const bool own = (device && device->recorded()) || spec->kind == SourceKind::candump || spec->kind == SourceKind::asc;
        SourceDecoder decoder(spec->kind, *rules,
                              own ? SourceDecoder::Times::own : SourceDecoder::Times::reader,
                              static_cast<std::uint32_t>(all.m_sources.size()));
        all.m_sources.push_back({*spec, name, std::nullopt, std::move(decoder)});
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
    Result<SourceDevice> device = SourceDevice::open(source.spec);
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
