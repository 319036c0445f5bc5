// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/picture.h"

#include <algorithm>
#include <array>

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

std::optional<std::string> jpegIn(Bytes bytes)
{
    std::string kept(bytes.take(2));
    bool sized = false, drawn = false;
    while (bytes.has(2) && bytes.byte() == kMark) {
        const unsigned marker = bytes.byte(1);
        if (marker == kEnd)   // what follows is not of this picture
            return sized && drawn ? std::optional(kept += bytes.take(2)) : std::nullopt;
        if (!bytes.has(4))
            break;
        const std::size_t length = 2 + bytes.number(2, 2);
        if (length < 4 || !bytes.has(length))
            break;
        if (isFrame(marker) && length >= 9)
            sized = bytes.number(5, 2) > 0 && bytes.number(7, 2) > 0;
        const std::string_view segment = bytes.take(length);
        if (!isCamerasNote(marker))
            kept += segment;
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
