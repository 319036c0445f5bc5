// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/private_file.h"

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
        return fail(ErrorCode::fileAccess, Sentence::just(std::strerror(errno)), {file.string()});
    };
    const int descriptor = ::open(file.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return failure();
    Result<void> done;
    if (!writeAll(descriptor, bytes))
        done = failure();
    if (::close(descriptor) != 0 && done)
        done = failure();
    if (done)
        done = syncFolderOf(file);
    if (!done)
        ::unlink(file.c_str());
    return done;
}

Result<void> syncFolderOf(const std::filesystem::path& file)
{
    const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : ".";
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const bool synced = descriptor >= 0 && ::fsync(descriptor) == 0;
    const std::string why = std::strerror(errno);
    if (descriptor >= 0)
        ::close(descriptor);
    if (synced)
        return {};
    return fail(ErrorCode::fileAccess, Sentence::just(why), {folder.string()});
}

} // namespace undermark
