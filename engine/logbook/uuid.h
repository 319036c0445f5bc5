// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace undermark::logbook {

// A random UUID (RFC 4122, version 4) of the system's random source, as 36
// lower-case characters.
std::string newUuid();

} // namespace undermark::logbook
