// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/test_main.h"

#ifdef UNDERMARK_SCREEN_TESTS
#include "app/screen/base/typeface.h"
#include <QGuiApplication>
#endif
#include <QCoreApplication>
#include <QFileInfo>
#include <QMap>
#include <QStringList>
#include <QTest>

namespace undermark::test {

static QMap<QString, Factory>& registry()
{
    static QMap<QString, Factory> tests;
    return tests;
}

bool registerTest(const char* file, Factory factory)
{
    registry().insert(QFileInfo(QString::fromLocal8Bit(file)).baseName(), std::move(factory));
    return true;
}

} // namespace undermark::test

int main(int argc, char** argv)
{
#ifdef UNDERMARK_SCREEN_TESTS
    undermark::hideMonoLetters();
    QGuiApplication application(argc, argv);
    undermark::useTypeface();
#else
    QCoreApplication application(argc, argv);
#endif
    QStringList arguments = application.arguments();
    const auto& tests = undermark::test::registry();
    const bool one = arguments.size() > 1 && tests.contains(arguments[1]);
    const QStringList names = one ? QStringList{arguments.takeAt(1)} : tests.keys();
    int failed = 0;
    for (const QString& name : names)
        failed += QTest::qExec(tests[name]().get(), arguments);
    return failed == 0 ? 0 : 1;
}
