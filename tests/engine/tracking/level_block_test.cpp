// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/tracking/level_block.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <cmath>

using namespace undermark;

class LevelBlockTest : public QObject {
    Q_OBJECT
    static LevelObservation at(double litres, ReadingKind kind = ReadingKind::exact)
    {
        return {kind, {Volume::fromLitres(litres), Volume::fromLitres(0.3)}, {}};
    }
    static LevelBlock block() { return {Volume::fromLitres(0.0), Volume::fromLitres(50.0)}; }

private slots:
    void readingsOfEqualTimeAreOneInstant()
    {
        LevelBlock gathered = block();
        gathered.add(0.0, at(20.0));
        for (int i = 0; i < 9; ++i)
            gathered.add(1.0, at(i < 6 ? 22.0 : 25.0));   // mean 23
        const BlockSummary sum = gathered.take();
        QCOMPARE(sum.instants, 2);
        QVERIFY(std::abs(sum.levelL - 21.5) < 1e-12);
        QVERIFY(std::abs(sum.sdL - 1.5) < 1e-12);
        QCOMPARE(sum.curveSdL, 0.3);
        QCOMPARE(sum.seconds, 1.0);
    }

    void aContactThatDropsOutDoesNotMoveTheMean()
    {
        LevelBlock gathered = block();
        for (int i = 0; i < 30; ++i)
            gathered.add(i, i % 4 == 0 ? at(0.0) : at(30.0 + (i % 3)));
        const BlockSummary sum = gathered.take();
        QCOMPARE(sum.kind, BlockKind::exact);
        QVERIFY(std::abs(sum.levelL - 31.0) < 0.2);
        QVERIFY(std::abs(sum.outlierShare - 8.0 / 30.0) < 1e-12);
    }

    void aDropoutWithinASecondIsLeftOutOfThatSecond()
    {
        LevelBlock gathered = block();
        gathered.add(0.0, at(0.0));
        gathered.add(0.0, at(25.88));
        gathered.add(1.0, at(25.88));
        QVERIFY(std::abs(gathered.take().levelL - 25.88) < 1e-12);
    }

    void theMajorityTellsTheKind()
    {
        LevelBlock gathered = block();
        for (int i = 0; i < 10; ++i)
            gathered.add(i, at(45.0, i < 6 ? ReadingKind::atLeast : ReadingKind::exact));
        const BlockSummary stop = gathered.take();
        QCOMPARE(stop.kind, BlockKind::atLeast);
        QCOMPARE(stop.levelL, 45.0);
        for (int i = 0; i < 10; ++i)
            gathered.add(i, at(0.0, i < 6 ? ReadingKind::tooHigh : ReadingKind::exact));
        QCOMPARE(gathered.take().kind, BlockKind::tooHigh);
        QCOMPARE(gathered.take().kind, BlockKind::empty);
    }
};

UNDERMARK_TEST(LevelBlockTest)
#include "level_block_test.moc"
