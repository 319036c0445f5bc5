// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/picture.h"

#include <algorithm>
#include <array>
#include <utility>

namespace undermark {

namespace {

// What is read of the file, and never beyond its end.
class Bytes {
public:
    explicit Bytes(std::string_view all) : m_all(all) {}
    bool has(std::size_t count) const { return m_all.size() - m_at >= count; }
    std::size_t at() const { return m_at; }
    unsigned byte(std::size_t ahead = 0) const
    {
        return static_cast<unsigned char>(m_all[m_at + ahead]);
    }
    std::size_t number(std::size_t ahead, std::size_t bytes) const
    {
        std::size_t value = 0;
        for (std::size_t i = 0; i < bytes; ++i)
            value = value << 8 | byte(ahead + i);
        return value;
    }
    std::string_view look(std::size_t count) const { return m_all.substr(m_at, count); }
    std::string_view take(std::size_t count)
    {
        const std::string_view taken = look(count);
        m_at += count;
        return taken;
    }

private:
    std::string_view m_all;
    std::size_t m_at = 0;
};

constexpr unsigned kMark = 0xff, kStartOfScan = 0xda, kEnd = 0xd9;

// Applications' own segments but JFIF, colour profile and Adobe's transform, and comments.
bool isCamerasNote(unsigned marker)
{
    return marker == 0xfe
           || (marker > 0xe0 && marker <= 0xef && marker != 0xe2 && marker != 0xee);
}

// A frame's header: baseline, progressive and so on, but no table.
bool isFrame(unsigned marker)
{
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
}

// Markers without a length, which stand only within a scan or about the whole: in the place of a
// segment they, and the escaped 0 of coded colours, are no picture (ITU-T T.81 B.1.1.3 to B.1.1.5).
bool standsAlone(unsigned marker)
{
    return marker <= 0x01 || (marker >= 0xd0 && marker <= 0xd8);
}

// The coded colours up to the next marker that is not within them.
std::string_view takeScan(Bytes& bytes)
{
    std::size_t length = 0;
    while (bytes.has(length + 2)) {
        const unsigned next = bytes.byte(length + 1);
        if (bytes.byte(length) == kMark && next != 0 && next != kMark && (next < 0xd0 || next > 0xd7))
            break;
        ++length;
    }
    return bytes.take(length);
}

constexpr std::string_view kExif{"Exif\0\0", 6};
constexpr std::size_t kOrientationTag = 0x0112;

// Of an APP1 segment, its marker and length included: 1 to 8; 0 where it says nothing sound.
int orientationIn(std::string_view segment)
{
    if (segment.substr(0, 10).substr(4) != kExif)
        return 0;
    const std::string_view tiff = segment.substr(10);
    const bool little = tiff.starts_with("II");
    if (!little && !tiff.starts_with("MM"))
        return 0;
    const auto number = [&](std::size_t at, std::size_t bytes) -> std::optional<std::size_t> {
        if (at > tiff.size() || tiff.size() - at < bytes)
            return std::nullopt;
        std::size_t value = 0;
        for (std::size_t i = 0; i < bytes; ++i)
            value = value << 8 | static_cast<unsigned char>(tiff[at + (little ? bytes - 1 - i : i)]);
        return value;
    };
    const auto directory = number(4, 4);
    const auto fields = directory ? number(*directory, 2) : std::nullopt;
    for (std::size_t i = 0; fields && i < *fields; ++i) {
        const std::size_t at = *directory + 2 + 12 * i;
        const auto tag = number(at, 2), value = number(at + 8, 2);
        if (!tag || !value)
            break;
        if (*tag == kOrientationTag)
            return *value >= 1 && *value <= 8 ? int(*value) : 0;
    }
    return 0;
}

// A whole APP1 segment that says nothing else.
std::string orientationSegment(int orientation)
{
    std::string segment("\xff\xe1\0\x22" "Exif\0\0" "MM\0*\0\0\0\x08" "\0\x01" "\x01\x12\0\x03\0\0\0\x01\0", 29);
    segment += char(orientation);
    return segment + std::string(6, '\0'); // the rest of the value, and no further directory
}

std::optional<std::string> jpegIn(Bytes bytes)
{
    std::string kept(bytes.take(2));
    bool sized = false, drawn = false, told = false;
    while (bytes.has(2) && bytes.byte() == kMark) {
        const unsigned marker = bytes.byte(1);
        if (marker == kEnd)   // what follows is not of this picture
            return sized && drawn ? std::optional(kept += bytes.take(2)) : std::nullopt;
        if (marker == kMark) {   // a byte that fills up to the marker (B.1.1.2)
            bytes.take(1);
            continue;
        }
        if (standsAlone(marker) || !bytes.has(4))
            break;
        const std::size_t length = 2 + bytes.number(2, 2);
        if (length < 4 || !bytes.has(length))
            break;
        if (isFrame(marker) && length >= 9)
            sized = bytes.number(5, 2) > 0 && bytes.number(7, 2) > 0;
        const std::string_view segment = bytes.take(length);
        if (!isCamerasNote(marker))
            kept += segment;
        else if (const int turned = marker == 0xe1 && !std::exchange(told, true) ? orientationIn(segment) : 0; turned > 1)
            kept += orientationSegment(turned);
        if (marker == kStartOfScan) {
            drawn = true;
            kept += takeScan(bytes);
        }
    }
    return std::nullopt;
}

constexpr std::string_view kPngStart{"\x89PNG\r\n\x1a\n", 8};
constexpr std::size_t kPngChunk = 12;   // length, name and checksum about the content
constexpr std::array<std::string_view, 11> kDrawing{"IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA",
                                                    "cHRM", "sRGB", "iCCP", "pHYs", "sBIT"};

std::optional<std::string> pngIn(Bytes bytes)
{
    std::string kept(bytes.take(kPngStart.size()));
    bool sized = false, drawn = false;
    while (bytes.has(kPngChunk)) {
        const std::size_t length = bytes.number(0, 4);
        if (!bytes.has(kPngChunk) || length > (1u << 31) || !bytes.has(kPngChunk + length))
            break;
        const std::string name(bytes.look(8).substr(4));
        if (name == "IHDR" && length == 13)
            sized = bytes.number(8, 4) > 0 && bytes.number(12, 4) > 0;
        drawn = drawn || (name == "IDAT" && length > 0);
        const std::string_view chunk = bytes.take(kPngChunk + length);
        if (std::ranges::find(kDrawing, name) != kDrawing.end())
            kept += chunk;
        if (name == "IEND")
            return sized && drawn ? std::optional(kept) : std::nullopt;
        if (!sized)   // the size comes first
            break;
    }
    return std::nullopt;
}

} // namespace

int orientationOf(std::string_view jpeg)
{
    for (std::size_t at = 2; at + 4 <= jpeg.size();) {
        const auto byte = [&](std::size_t ahead) { return static_cast<unsigned char>(jpeg[at + ahead]); };
        if (byte(0) != kMark || byte(1) == kStartOfScan)
            break;
        const std::size_t length = 2 + (std::size_t(byte(2)) << 8 | byte(3));
        if (length < 4)
            break;
        const int turned = byte(1) == 0xe1 ? orientationIn(jpeg.substr(at, length)) : 0;
        if (turned > 0)
            return turned;
        at += length;
    }
    return 1;
}

std::optional<Picture> pictureIn(std::string_view bytes)
{
    std::optional<std::string> kept;
    PhotoFormat format = PhotoFormat::jpeg;
    if (bytes.starts_with("\xff\xd8\xff")) {
        kept = jpegIn(Bytes(bytes));
    } else if (bytes.starts_with(kPngStart)) {
        kept = pngIn(Bytes(bytes));
        format = PhotoFormat::png;
    }
    return kept ? std::optional(Picture{format, std::move(*kept)}) : std::nullopt;
}

} // namespace undermark
