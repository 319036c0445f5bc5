// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string_view>

namespace undermark {

// The modes of a new vehicle have names to be read; the user's own stay as
// they were typed.
QString modeName(std::string_view mode);

} // namespace undermark
