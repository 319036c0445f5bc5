// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fault_calls.h"

#include <cerrno>
#include <cstdarg>
#include <dlfcn.h>
#include <fcntl.h>
#include <string>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace {

std::string s_folder;   // empty: not armed
long s_failing = 0, s_calls = 0;

template <class Function>
Function* libc(const char* name)
{
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

bool within(std::string_view path)
{
    return !s_folder.empty() && path.substr(0, s_folder.size()) == s_folder;
}

bool within(int descriptor)
{
    if (s_folder.empty())
        return false;
    char path[512];
    const std::string link = "/proc/self/fd/" + std::to_string(descriptor);
    const ssize_t length = ::readlink(link.c_str(), path, sizeof path);
    return length > 0 && within(std::string_view(path, static_cast<std::size_t>(length)));
}

bool fails(bool ours)
{
    if (!ours || ++s_calls != s_failing)
        return false;
    errno = EIO;
    return true;
}

} // namespace

extern "C" {

int rename(const char* from, const char* to)
{
    static const auto real = libc<int(const char*, const char*)>("rename");
    return fails(within(from)) ? -1 : real(from, to);
}

int mkdir(const char* path, mode_t mode)
{
    static const auto real = libc<int(const char*, mode_t)>("mkdir");
    return fails(within(path)) ? -1 : real(path, mode);
}

ssize_t write(int descriptor, const void* bytes, size_t count)
{
    static const auto real = libc<ssize_t(int, const void*, size_t)>("write");
    return fails(within(descriptor)) ? -1 : real(descriptor, bytes, count);
}

int fsync(int descriptor)
{
    static const auto real = libc<int(int)>("fsync");
    return fails(within(descriptor)) ? -1 : real(descriptor);
}

int open(const char* path, int flags, ...)
{
    static const auto real = libc<int(const char*, int, ...)>("open");
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = flags & O_CREAT ? va_arg(arguments, mode_t) : 0;
    va_end(arguments);
    return fails(flags & O_CREAT && within(path)) ? -1 : real(path, flags, mode);
}

} // extern "C"

namespace undermark::test {

void armCalls(const std::filesystem::path& folder, long n)
{
    s_calls = 0;
    s_failing = n;
    s_folder = folder.string();
}

long disarmCalls()
{
    s_folder.clear();
    return s_calls;
}

} // namespace undermark::test
