// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli_range.h"
namespace undermark {
void addDemoCommand(CLI::App&, CliContext&) {}
}
