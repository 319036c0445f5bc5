// SPDX-License-Identifier: GPL-3.0-or-later
//
// The bytes of one fuzzing run as a file, because that is what the readers read.
// In memory where there is such a folder, so that a run costs no disk.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

namespace undermark::fuzz {

class InputFile {
public:
    InputFile(const std::uint8_t* data, std::size_t size)
    {
        static const std::filesystem::path folder =
            std::filesystem::exists("/dev/shm") ? "/dev/shm" : std::filesystem::temp_directory_path();
        m_path = folder / ("undermark-fuzz-" + std::to_string(getpid()));
        std::ofstream(m_path, std::ios::binary)
            .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    }
    ~InputFile()
    {
        std::error_code ignored;
        std::filesystem::remove(m_path, ignored);
    }
    InputFile(const InputFile&) = delete;
    InputFile& operator=(const InputFile&) = delete;

    const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

// What must hold whatever the input.
inline void require(bool condition)
{
    if (!condition)
        std::abort();
}

} // namespace undermark::fuzz
