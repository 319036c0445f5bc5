// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/logbook_place.h"

#include <cstdlib>

namespace undermark {

static std::filesystem::path dataFolder()
{
    const char* data = std::getenv("XDG_DATA_HOME");
    const char* home = std::getenv("HOME");
    const std::filesystem::path folder = data && *data == '/' ? std::filesystem::path(data)
        : std::filesystem::path(home ? home : ".") / ".local" / "share";
    return folder / "undermark";
}

std::filesystem::path defaultLogbook() { return dataFolder() / "logbook.sqlite"; }

std::filesystem::path demoLogbook() { return dataFolder() / "demo.sqlite"; }

} // namespace undermark
