# SPDX-License-Identifier: GPL-3.0-or-later
# Tests of the touch screen: view models, the program, QML controls.
find_package(Qt6 6.4 REQUIRED COMPONENTS QuickTest)

# The screen over the demo car: for the eye, and for the self-test.
add_executable(undermark-preview support/preview_main.cpp)
target_link_libraries(undermark-preview PRIVATE undermark_test_car undermark_app
                      undermark_appplugin undermark_ui undermark_uiplugin)
compiled_quickly(undermark-preview)
add_test(NAME screen_self_test COMMAND undermark-preview --self-test)
set_tests_properties(screen_self_test PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen")

# All pages on one picture, to be looked at.
add_executable(contact_sheet EXCLUDE_FROM_ALL support/contact_sheet.cpp)
target_link_libraries(contact_sheet PRIVATE undermark_test_car undermark_app
                      undermark_appplugin undermark_ui undermark_uiplugin)
compiled_quickly(contact_sheet)

if(UNDERMARK_BENCH)
  add_executable(screen_frames bench/screen_frames.cpp)
  target_link_libraries(screen_frames PRIVATE undermark_test_car undermark_app
                        undermark_appplugin undermark_ui undermark_uiplugin)
endif()

undermark_tests(app app/screen undermark_app undermark_test_car Qt6::Gui)
get_property(update_translations GLOBAL PROPERTY undermark_update_translations)
list(JOIN update_translations "|" update_translations)
target_compile_definitions(app_tests PRIVATE UNDERMARK_SCREEN_TESTS
  UNDERMARK_UPDATE_TRANSLATIONS="${update_translations}"
  UNDERMARK_SOURCE="${PROJECT_SOURCE_DIR}"
  UNDERMARK_SCREEN_PROGRAM="$<TARGET_FILE:undermark>"
  UNDERMARK_PREVIEW_PROGRAM="$<TARGET_FILE:undermark-preview>")
add_dependencies(app_tests undermark undermark-preview)

# Whole ways of a user, in the process and in the real program.
undermark_tests(journey journeys undermark_app undermark_appplugin undermark_ui undermark_uiplugin)
# It waits for minutes of a drive: begun first, others run meanwhile.
set_tests_properties(live_journey_test PROPERTIES COST 2)
target_sources(journey_tests PRIVATE journeys/ear.cpp journeys/ear.h journeys/hand.cpp journeys/hand.h journeys/loop_watch.cpp
               journeys/loop_watch.h journeys/open_screen.h journeys/real_program.cpp
               journeys/real_program.h)
undermark_units(journey_tests)
target_compile_definitions(journey_tests PRIVATE UNDERMARK_SCREEN_TESTS
  UNDERMARK_SCREEN_PROGRAM="$<TARGET_FILE:undermark>")
add_dependencies(journey_tests undermark undermark-cli)

add_executable(qml_tests qml/qml_tests.cpp)
target_link_libraries(qml_tests PRIVATE undermark_test_car undermark_app undermark_appplugin
                      undermark_ui undermark_uiplugin Qt6::QuickTest)
compiled_quickly(qml_tests)
target_compile_definitions(qml_tests PRIVATE
  QUICK_TEST_SOURCE_DIR="${CMAKE_CURRENT_SOURCE_DIR}/qml")
file(GLOB qml_tests CONFIGURE_DEPENDS RELATIVE ${CMAKE_CURRENT_SOURCE_DIR}/qml qml/tst_*.qml)
foreach(file ${qml_tests})
  get_filename_component(stem ${file} NAME_WE)
  add_test(NAME ${stem} COMMAND qml_tests -input ${CMAKE_CURRENT_SOURCE_DIR}/qml/${file})
  set_tests_properties(${stem} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen")
endforeach()
set_tests_properties(tst_pages PROPERTIES COST 1) # the longest of those that do not wait


# Every warning of qmllint fails. It needs the type descriptions that Debian
# keeps in packages of their own.
set(qml_types ${QT6_INSTALL_PREFIX}/${QT6_INSTALL_QML}/QtQml)
if(EXISTS ${qml_types}/plugins.qmltypes AND EXISTS ${qml_types}/Models/plugins.qmltypes)
  add_test(NAME qmllint
           COMMAND ${CMAKE_COMMAND} --build ${PROJECT_BINARY_DIR} --target all_qmllint)
else()
  message(STATUS "No qmllint test: install qml6-module-qtqml and qml6-module-qtqml-models")
endif()
