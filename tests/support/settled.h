// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/screen/ahead/plan_view_model.h"

#include <QSignalSpy>

namespace undermark::test {

// The answer of the Ahead page to what was asked last: it is planned away from the screen.
inline PlanAnswer& settled(PlanViewModel& ahead)
{
    QSignalSpy answered(&ahead, &PlanViewModel::settled);
    if (ahead.planning())
        answered.wait(60000); // ms: on a busy machine, too
    return *ahead.answer();
}

} // namespace undermark::test
