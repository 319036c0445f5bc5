// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/signals/line_cutter.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <string>
#include <vector>

using namespace undermark;

class LineCutterTest : public QObject {
    Q_OBJECT

    static std::vector<std::string> linesOf(const std::vector<std::string>& pieces)
    {
        std::vector<std::string> lines;
        LineCutter cutter;
        const auto take = [&](std::string_view line) { lines.emplace_back(line); };
        for (const std::string& piece : pieces)
            cutter.add(piece, take);
        cutter.finish(take);
        return lines;
    }

private slots:
    void aLineEndsAtEitherEndOrBothAndBlankOnesAreLeftOut()
    {
        QCOMPARE(linesOf({"a\nb\r\nc\rd\n\n\r\r\ne"}), (std::vector<std::string>{"a", "b", "c", "d", "e"}));
    }

    void aLineTooLongIsOneEmptyOne()
    {
        const std::string longest(LineCutter::kLongest, 'x');
        QCOMPARE(linesOf({longest + "\na\n"}), (std::vector<std::string>{longest, "a"}));
        QCOMPARE(linesOf({longest + longest + "x", longest, "\na\n"}), (std::vector<std::string>{"", "a"}));
    }

    void theSameLinesComeOutWhereverTheBytesWereSplit()
    {
        const std::string all = "one\r\ntwo\n\rthree" + std::string(300, 'y') + "\nfour";
        const auto whole = linesOf({all});
        for (std::size_t i = 0; i <= all.size(); ++i)
            QCOMPARE(linesOf({all.substr(0, i), all.substr(i)}), whole);
        std::vector<std::string> bytes;
        for (const char c : all)
            bytes.emplace_back(1, c);
        QCOMPARE(linesOf(bytes), whole);
    }
};

UNDERMARK_TEST(LineCutterTest)
#include "line_cutter_test.moc"
