// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/roads/height_profile.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <map>
#include <optional>

namespace undermark {

namespace {

constexpr double kSampleKm = 0.09;
constexpr std::int16_t kUnknown = -32768;

// One tile, read a point at a time: its file stays on the disk.
class HeightTile {
public:
    static Result<std::optional<HeightTile>> open(const std::filesystem::path& file)
    {
        std::error_code problem;
        if (!std::filesystem::exists(file, problem))
            return std::nullopt; // the sea, or not at hand
        const auto bytes = std::filesystem::file_size(file, problem);
        const long side = bytes == 2ull * 1201 * 1201 ? 1201 : bytes == 2ull * 3601 * 3601 ? 3601 : 0;
        if (problem || side == 0)
            return fail(ErrorCode::badInput, Sentence::of("this is no tile of heights"), {file.string()},
                        Sentence::of("1201 or 3601 rows and columns of two bytes"), std::to_string(bytes) + " bytes");
        HeightTile tile;
        tile.m_side = side;
        tile.m_file.open(file, std::ios::binary);
        if (!tile.m_file)
            return fail(ErrorCode::fileAccess, Sentence::of("the file cannot be opened"), {file.string()});
        return tile;
    }

    // `north`, `east`: 0 to 1 within the tile.
    std::optional<double> at(double north, double east)
    {
        const double y = (1 - north) * double(m_side - 1);
        const double x = east * double(m_side - 1);
        const long row = std::min(long(y), m_side - 2);
        const long column = std::min(long(x), m_side - 2);
        const auto a = point(row, column), b = point(row, column + 1);
        const auto c = point(row + 1, column), d = point(row + 1, column + 1);
        if (!a || !b || !c || !d)
            return std::nullopt;
        const double down = y - double(row), right = x - double(column);
        return (1 - down) * ((1 - right) * *a + right * *b) + down * ((1 - right) * *c + right * *d);
    }

private:
    std::optional<double> point(long row, long column)
    {
        std::array<char, 2> bytes{};
        m_file.seekg(2 * (row * m_side + column));
        if (!m_file.read(bytes.data(), 2))
            return std::nullopt;
        const auto raw = std::int16_t(std::uint16_t(std::uint8_t(bytes[0])) << 8 | std::uint8_t(bytes[1]));
        return raw == kUnknown ? std::nullopt : std::optional<double>(raw);
    }

    long m_side = 0;
    std::ifstream m_file;
};

std::string tileName(int south, int west)
{
    char name[32];
    std::snprintf(name, sizeof name, "%c%02d%c%03d.hgt", south < 0 ? 'S' : 'N', std::abs(south),
                  west < 0 ? 'W' : 'E', std::abs(west));
    return name;
}

class HeightGrid {
public:
    explicit HeightGrid(const std::filesystem::path& folder) : m_folder(folder) {}

    Result<std::optional<double>> at(const GeoPosition& place)
    {
        const double longitude = std::remainder(place.longitude, 360.0);
        const int south = std::min(int(std::floor(place.latitude)), 89);
        const int west = std::min(int(std::floor(longitude)), 179);
        const auto key = std::pair(south, west);
        auto tile = m_tiles.find(key);
        if (tile == m_tiles.end()) {
            auto opened = HeightTile::open(m_folder / tileName(south, west));
            if (!opened)
                return fail(opened.error());
            tile = m_tiles.emplace(key, std::move(*opened)).first;
        }
        return tile->second ? tile->second->at(place.latitude - south, longitude - west) : std::nullopt;
    }

private:
    std::filesystem::path m_folder;
    std::map<std::pair<int, int>, std::optional<HeightTile>> m_tiles;
};

// Appends, or remembers that there is a gap.
class ProfileWriter {
public:
    void add(Distance at, std::optional<double> metres)
    {
        if (metres)
            m_profile.push_back({at, *metres, m_gap && !m_profile.empty()});
        m_gap = !metres;
    }
    void gap() { m_gap = true; }
    HeightProfile taken() { return std::move(m_profile); }

private:
    HeightProfile m_profile;
    bool m_gap = false;
};

} // namespace

HeightProfile profileOf(const GeoLine& line)
{
    ProfileWriter writer;
    for (const GeoLine::Place& place : line.places()) {
        if (place.afterGap)
            writer.gap();
        if (place.position.height) // one without is passed over: its neighbours tell
            writer.add(place.at, place.position.height);
    }
    return writer.taken();
}

Result<HeightProfile> profileFromGrid(const GeoLine& line, const std::filesystem::path& folder)
{
    std::error_code problem;
    if (!std::filesystem::is_directory(folder, problem))
        return fail(ErrorCode::fileAccess, Sentence::of("this is no folder"), {folder.string()});
    HeightGrid grid(folder);
    ProfileWriter writer;
    const auto& places = line.places();
    for (std::size_t i = 0; i < places.size(); ++i) {
        const GeoLine::Place& to = places[i];
        const bool joined = i > 0 && !to.afterGap;
        const GeoLine::Place& from = joined ? places[i - 1] : to;
        if (!joined)
            writer.gap();
        const int steps = std::max(1, int(std::ceil((to.at - from.at).km() / kSampleKm)));
        const double turn = std::remainder(to.position.longitude - from.position.longitude, 360.0);
        for (int step = 1; step <= steps; ++step) {
            const double part = double(step) / steps;
            const auto height =
                grid.at({from.position.latitude + part * (to.position.latitude - from.position.latitude),
                         from.position.longitude + part * turn});
            if (!height)
                return fail(height.error());
            writer.add(from.at + (to.at - from.at) * part, *height);
        }
    }
    return writer.taken();
}

namespace {

// The indices at which the profile turns for good: the first, the last, and highs and lows that
// are `ripple` from the next.
std::vector<std::size_t> turningPoints(const HeightProfile& profile, std::size_t first, std::size_t last,
                                       double ripple)
{
    std::vector<std::size_t> turns{first};
    std::size_t high = first, low = first;
    int way = 0; // 1 up, -1 down, 0 not known yet
    for (std::size_t i = first + 1; i <= last; ++i) {
        const double here = profile[i].metres;
        if (here >= profile[high].metres)
            high = i;
        if (here <= profile[low].metres)
            low = i;
        if (way >= 0 && profile[high].metres - here >= ripple) {
            turns.push_back(high);
            way = -1;
            low = high = i;
        } else if (way <= 0 && here - profile[low].metres >= ripple) {
            turns.push_back(low);
            way = 1;
            high = low = i;
        }
    }
    if (way != 0)
        turns.push_back(way > 0 ? high : low);
    turns.push_back(last);
    return turns;
}

} // namespace

HeightProfile withoutRipples(const HeightProfile& profile, double ripple)
{
    HeightProfile smooth = profile;
    std::size_t first = 0;
    while (first < smooth.size()) {
        std::size_t last = first;
        while (last + 1 < smooth.size() && !smooth[last + 1].afterGap)
            ++last;
        const auto turns = turningPoints(profile, first, last, ripple);
        for (std::size_t t = 0; t + 1 < turns.size(); ++t) {
            const double from = profile[turns[t]].metres, to = profile[turns[t + 1]].metres;
            const bool level = std::fabs(to - from) < ripple; // a ripple at an end
            for (std::size_t i = turns[t] + 1; i <= turns[t + 1]; ++i) {
                const double before = smooth[i - 1].metres, here = profile[i].metres;
                if (level)
                    smooth[i].metres = before;
                else if (to >= from)
                    smooth[i].metres = std::clamp(here, before, std::max(before, to));
                else
                    smooth[i].metres = std::clamp(here, std::min(before, to), before);
            }
        }
        first = last + 1;
    }
    return smooth;
}

Result<HeightProfile> heightsAlong(const GeoLine& line, const std::filesystem::path& folder)
{
    const Result<HeightProfile> told = folder.empty() ? profileOf(line) : profileFromGrid(line, folder);
    return told ? Result<HeightProfile>(withoutRipples(*told)) : fail(told.error());
}

} // namespace undermark
