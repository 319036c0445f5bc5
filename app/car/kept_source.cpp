// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/kept_source.h"

#include <fstream>
#include <sstream>

namespace undermark {

namespace {

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

} // namespace

Result<LiveSource> readSource(const std::string& spec, const std::filesystem::path& map)
{
    const Result<SourceSpec> parsed = parseSourceSpec(spec);
    if (!parsed)
        return fail(parsed.error());
    LiveSource source{spec, {}, {}, {}};
    if (!parsed->carriesFrames())
        return source;
    if (parsed->language == FrameLanguage::dbc) {
        Result<std::string> text = wholeText(parsed->dbcFile);
        if (!text)
            return fail(text.error());
        source.dbc = std::move(*text);
    }
    if (!map.empty()) {
        Result<std::string> text = wholeText(map);
        if (!text)
            return fail(text.error());
        source.reading = std::move(*text);
    }
    return source;
}

Result<FrameRules> rulesOf(const LiveSource& source, std::optional<FuelKind> fuel, const std::string& mapFile)
{
    const Result<SourceSpec> spec = parseSourceSpec(source.spec);
    if (!spec)
        return fail(spec.error());
    FrameRules rules = frameRulesOf(*spec, fuel);
    if (!spec->carriesFrames() || (!source.reading && !source.dbc))
        return rules;
    if (!source.reading)
        return failInput(Sentence::just("a DBC file names signals, but not which of them is the level"),
                         Sentence::just("--map MAP.json"), spec->dbcFile);
    std::optional<Dbc> dbc;
    if (source.dbc) {
        Result<Dbc> read = Dbc::parse(*source.dbc, spec->dbcFile);
        if (!read)
            return fail(read.error());
        dbc = std::move(*read);
    }
    Result<std::vector<FrameRule>> mapped = parseFrameMap(*source.reading, mapFile, dbc ? &*dbc : nullptr);
    if (!mapped)
        return fail(mapped.error());
    rules.rules = std::move(*mapped);
    return rules;
}

Result<LiveSource> fromAnyFolder(LiveSource source)
{
    const Result<SourceSpec> spec = parseSourceSpec(source.spec);
    if (!spec)
        return fail(spec.error());
    if (spec->place == "-")
        return failInput(Sentence::just("what is piped in cannot be kept"), Sentence::just("a file, pipe or device"),
                         source.spec);
    if (spec->kind == SourceKind::can)
        return source;
    // Behind the kind's colon, or all of it where no kind is named.
    const std::size_t behind = source.spec.find(':') + 1;
    const std::size_t at = source.spec.compare(behind, spec->place.size(), spec->place) == 0 ? behind : 0;
    source.spec.replace(at, spec->place.size(), std::filesystem::absolute(spec->place).lexically_normal().string());
    return source;
}

Result<LiveSource> sourceToKeep(const std::string& spec, const std::filesystem::path& map, FuelKind fuel)
{
    Result<LiveSource> source = readSource(spec, map);
    if (source)
        source = fromAnyFolder(std::move(*source));
    if (!source)
        return source;
    if (const auto rules = rulesOf(*source, fuel, map.string()); !rules)
        return fail(rules.error());
    return source;
}

} // namespace undermark
