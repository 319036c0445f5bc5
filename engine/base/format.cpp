// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/format.h"

#include <algorithm>
#include <cstdarg>
#include <cstdio>

namespace undermark {

std::string format(const char* pattern, ...)
{
    char text[1024];
    va_list arguments;
    va_start(arguments, pattern);
    const int length = std::vsnprintf(text, sizeof text, pattern, arguments);
    va_end(arguments);
    return {text, static_cast<std::size_t>(std::clamp(length, 0, int(sizeof text) - 1))};
}

} // namespace undermark
