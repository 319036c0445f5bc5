// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/sentence.h"

namespace undermark {

// Something the driver must read before the number.
struct Notice {
    enum class Severity { info, warning, error };
    Severity severity = Severity::info;
    Sentence text;
};

} // namespace undermark
