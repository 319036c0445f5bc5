// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/files/private_file.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>

namespace undermark {

static bool writeAll(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(descriptor) == 0;
}

Result<void> writePrivateFile(const std::filesystem::path& file, std::string_view bytes)
{
    const auto failure = [&] {
        return fail(Error{ErrorCode::fileAccess, std::strerror(errno), file.string(), 0, {}, {}, {}});
    };
    const int descriptor = ::open(file.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return failure();
    Result<void> done;
    if (!writeAll(descriptor, bytes))
        done = failure();
    if (::close(descriptor) != 0 && done)
        done = failure();
    if (!done)
        ::unlink(file.c_str());
    return done;
}

} // namespace undermark
