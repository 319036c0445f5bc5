// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/car/open_car.h"

namespace undermark {

// The whole program `undermark`: reads the command line, opens the car with
// `open`, shows the window. Returns the exit code: 0; 1 where the page could
// not be drawn or saved or the self-test met a warning; 2 for a command line
// that cannot be used.
int runScreen(int argc, char** argv, const CarOpener& open);

} // namespace undermark
