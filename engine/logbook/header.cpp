// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/header.h"

#include "engine/logbook/schema.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <string_view>

namespace undermark::logbook {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kHeaderSize = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr int kMostCopies = 9;
using Header = std::array<unsigned char, kHeaderSize>;

std::uint32_t bigEndian(const Header& header, std::size_t offset, std::size_t size)
{
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < size; ++i)
        value = value << 8 | header[offset + i];
    return value;
}

bool hasContent(const fs::path& file)
{
    std::error_code error;
    const auto size = fs::file_size(file, error);
    return !error && size > 0;
}

// What the header promises against what is there. A write-ahead log may hold
// pages that have not reached the file yet; then SQLite has to judge.
FileLook judge(const fs::path& file, const Header& header, std::uintmax_t size)
{
    if (!std::equal(kMagic.begin(), kMagic.end(), header.begin()))
        return {FileKind::foreign, Sentence::of("this is not a logbook: not an SQLite file")};
    if (bigEndian(header, 68, 4) != kApplicationId)
        return {FileKind::foreign,
                Sentence::of("this is not a logbook: an SQLite file of another program")};
    const std::uint32_t stated = bigEndian(header, 16, 2);
    const std::uintmax_t pageSize = stated == 1 ? 65536 : stated;   // 1 stands for 65536
    const bool countIsValid = bigEndian(header, 24, 4) == bigEndian(header, 92, 4);
    const std::uintmax_t pages = bigEndian(header, 28, 4);
    const bool pending = hasContent(file.string() + "-wal") || hasContent(file.string() + "-journal");
    if (!pending && countIsValid && size < pages * pageSize)
        return {FileKind::damaged,
                Sentence::of("the logbook is cut short: %1 of %2 bytes are there", counted(size),
                             counted(pages * pageSize))};
    return {FileKind::logbook, {}};
}

} // namespace

Result<FileLook> lookAt(const fs::path& file)
{
    std::error_code error;
    const auto status = fs::status(file, error);
    if (status.type() == fs::file_type::not_found)
        return FileLook{};
    if (error || !fs::is_regular_file(status))
        return fail(ErrorCode::fileAccess,
                    error ? Sentence::just(error.message()) : Sentence::of("this is not a file"),
                    {file.string()});
    std::ifstream in(file, std::ios::binary);
    const std::uintmax_t size = fs::file_size(file, error);
    if (!in || error)
        return fail(ErrorCode::fileAccess, Sentence::of("the logbook cannot be read"),
                    {file.string()});
    if (size == 0)
        return FileLook{FileKind::empty, {}};
    Header header{};
    if (!in.read(reinterpret_cast<char*>(header.data()), kHeaderSize))
        return FileLook{FileKind::foreign,
                        Sentence::of("this is not a logbook: too short for one")};
    return judge(file, header, size);
}

bool sameContent(const fs::path& a, const fs::path& b)
{
    std::error_code error;
    if (fs::file_size(a, error) != fs::file_size(b, error) || error)
        return false;
    std::ifstream first(a, std::ios::binary);
    std::ifstream second(b, std::ios::binary);
    using Bytes = std::istreambuf_iterator<char>;
    return first && second && std::equal(Bytes(first), Bytes(), Bytes(second), Bytes());
}

fs::path keepCopy(const fs::path& file)
{
    for (int n = 1; n <= kMostCopies; ++n) {
        const fs::path copy = file.string() + ".damaged-" + std::to_string(n);
        std::error_code error;
        if (fs::exists(copy, error)) {
            if (sameContent(file, copy))
                return copy;
            continue;
        }
        const bool copied = fs::copy_file(file, copy, error);
        return copied && !error ? copy : fs::path{};
    }
    return {};
}

} // namespace undermark::logbook
