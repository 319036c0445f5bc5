// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/base/sentence.h"
#include "engine/base/severity.h"

namespace undermark {

// Something the driver must read before the number.
struct Notice {
    Severity severity = Severity::info;
    Sentence text;
};

} // namespace undermark
