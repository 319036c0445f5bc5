// SPDX-License-Identifier: GPL-3.0-or-later
//
// Several QtTest classes in one executable: each file registers its class, and
// `engine_tests FILE_STEM [QtTest options]` runs the one of that file; without
// arguments all are run.
//
//     class QuantityTest : public QObject { Q_OBJECT private slots: ... };
//     UNDERMARK_TEST(QuantityTest)
//     #include "quantity_test.moc"
#pragma once

#include <QObject>
#include <functional>
#include <memory>

namespace undermark::test {

using Factory = std::function<std::unique_ptr<QObject>()>;
bool registerTest(const char* file, Factory factory);

} // namespace undermark::test

#define UNDERMARK_TEST(Class)                                                                      \
    static const bool registered##Class = undermark::test::registerTest(                           \
        __FILE__, [] { return std::unique_ptr<QObject>(new Class); });
