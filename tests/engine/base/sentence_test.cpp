// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/base/error.h"
#include "engine/base/format.h"
#include "engine/base/sentence.h"
#include "tests/support/test_main.h"

#include <QTest>

using namespace undermark;

class SentenceTest : public QObject {
    Q_OBJECT
private slots:
    void englishIsWhatPrintfWrites()
    {
        const Volume litres = Volume::fromLitres(12.345);
        const Distance km = Distance::fromKm(48210.6);
        QCOMPARE(english(Sentence::of("%1 on %2", amount(km), amount(litres))),
                 format("%.0f km on %.1f L", km.km(), litres.litres()));
        QCOMPARE(english(Sentence::of("%1, %2, %3", amount(litres, Digits::significant(3)),
                                      amount(0.004567, Digits::significant(2), "V"), counted(7))),
                 format("%.3g L, %.2g V, %d", litres.litres(), 0.004567, 7));
    }
    void partsStandWhereThePatternHasThem()
    {
        QCOMPARE(
            english(Sentence::of("%2 before %1, 99 % of %1", std::string("a"), std::string("b"))),
            std::string("b before a, 99 % of a"));
    }
    void aNameIsNoPattern()
    {
        QCOMPARE(english(Sentence::of("from %1 to %2", std::string("%2"), std::string("%1"))),
                 std::string("from %2 to %1"));
    }
    void sentencesAreListedNestedAndFollowEachOther()
    {
        const std::vector list{Sentence::just(amount(Volume::fromLitres(2), 0)),
                               Sentence::just(amount(Volume::fromLitres(5), 0))};
        Sentence text = Sentence::of("at %1.", Sentence::of("%1 and %2 more", list, counted(3)));
        text += Sentence::of("Look there.");
        QCOMPARE(english(text), std::string("at 2 L, 5 L and 3 more. Look there."));
    }
    void ofNothingThereIsNoSentence()
    {
        QVERIFY(Sentence().empty());
        QVERIFY(Sentence::just(std::string()).empty());
        QCOMPARE(english(Sentence()), std::string());
    }
    void anErrorIsOneSentence()
    {
        Error error = failInput(Sentence::of("the distance runs backwards"),
                                Sentence::of("%1 or more", amount(Distance::fromKm(50), 6)),
                                amount(Distance::fromKm(40), 6))
                          .value();
        error.where.file = "a.csv";
        error.where.line = 3;
        error.where.column = "at_km";
        QCOMPARE(describe(error),
                 std::string("a.csv:3: column 'at_km': the distance runs backwards (expected "
                             "50.000000 km or more, found '40.000000 km')"));
    }
};

UNDERMARK_TEST(SentenceTest)
#include "sentence_test.moc"
