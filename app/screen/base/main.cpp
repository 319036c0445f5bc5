// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/application.h"

#include <sys/stat.h>

int main(int argc, char** argv)
{
    ::umask(0077);   // as in cli_main.cpp
    return undermark::runScreen(argc, argv, undermark::openCar);
}
