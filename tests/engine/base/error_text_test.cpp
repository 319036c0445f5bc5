// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/error.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class ErrorTextTest : public QObject {
    Q_OBJECT

    static std::string found(const std::string& text)
    {
        Error error;
        error.detail = Sentence::just("wrong");
        error.found = text;
        return describe(error);
    }

private slots:
    void whatWasFoundIsQuoted() { QCOMPARE(found("12 km"), std::string("wrong (found '12 km')")); }

    void whatIsTooLongIsCut()
    {
        const std::string cut = "wrong (found '" + std::string(60, 'x') + "...')";
        QCOMPARE(found(std::string(10'000'000, 'x')), cut);
    }

    void aLetterOfTwoBytesIsNotCutInTheMiddle()
    {
        std::string text(59, 'x');
        const std::string cut = "wrong (found '" + text + "...')";
        text += "\u00e4\u00e4";
        QCOMPARE(found(text), cut);
    }

    void whatCannotBePrintedIsAQuestionMark()
    {
        QCOMPARE(found("a\nb\x1b[31m\xff\xc3"), std::string("wrong (found 'a?b?[31m?" "?')"));
        QCOMPARE(found("ä€"), std::string("wrong (found 'ä€')"));
    }
};

UNDERMARK_TEST(ErrorTextTest)
#include "error_text_test.moc"
