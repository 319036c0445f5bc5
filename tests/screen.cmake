# SPDX-License-Identifier: GPL-3.0-or-later
# Tests of the touch screen: view models, the program, QML controls.
find_package(Qt6 6.4 REQUIRED COMPONENTS QuickTest)

add_library(undermark_fake_car STATIC support/fake_car.cpp support/fake_car.h)
target_link_libraries(undermark_fake_car PUBLIC undermark_engine)

# The screen over the invented car: for the eye, and for the self-test.
add_executable(undermark-preview support/preview_main.cpp)
target_link_libraries(undermark-preview PRIVATE undermark_fake_car undermark_app
                      undermark_appplugin undermark_ui undermark_uiplugin)
