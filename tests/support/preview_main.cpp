// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-preview: the touch screen over the demo car in a folder of its own, to look at
// pages without a logbook. UNDERMARK_PREVIEW chooses its state (carInState): calm (default),
// low, warned, far, unknown.
#include "app/screen/base/application.h"
#include "tests/support/test_car.h"

#include <cstdlib>

int main(int argc, char** argv)
{
    using namespace undermark;
    const test::TestFolder folder;
    const char* wanted = std::getenv("UNDERMARK_PREVIEW");
    return runScreen(argc, argv, [&](const CarSource&) {
        return test::carInState(wanted ? wanted : "calm", folder.path);
    });
}
