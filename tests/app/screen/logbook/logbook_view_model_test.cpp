// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/logbook_view_model.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

QString cell(LogbookViewModel& log, int row, int role)
{
    return log.rows()->data(log.rows()->index(row), role).toString();
}

const std::vector<Entry<Fill>>& fills(Car& car)
{
    return (*car.knowledge())->log.fills;
}

// The demo car, whose fill before the last has its odometer 200 km too high.
Car carWithASlip(const std::filesystem::path& folder)
{
    Car car = test::demoCar(folder);
    const Entry<Fill> entry = fills(car)[fills(car).size() - 2];
    Fill slip = entry.value;
    slip.odometer = *slip.odometer + Distance::fromKm(200);
    if (!car.revise(entry.id, slip))
        qFatal("the slip was not stored");
    return car;
}

} // namespace

class LogbookViewModelTest : public QObject {
    Q_OBJECT
private slots:
    void theNewestEntryIsTheFirstLine()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        QCOMPARE(log.rows()->rowCount(), 13); // README: 13 fills
        QCOMPARE(cell(log, 0, HistoryModel::Kind), "Fill");
        QCOMPARE(cell(log, 0, HistoryModel::Date), "2026-08-29");
        QCOMPARE(cell(log, 0, HistoryModel::Value), "38.4 L, full");
        // 38.43 L over 118.2 + 289.6 + 84.3 km
        QCOMPARE(cell(log, 0, HistoryModel::Detail), "7.8 L/100 km · 153907 km");
        log.selectFilter(2);
        QCOMPARE(log.rows()->rowCount(), 2); // the demo's proofs
        log.selectFilter(0);
        QCOMPARE(log.rows()->rowCount(), 13 + 31 + 2 + 1); // README: 31 trips; one calibration
    }
    void anOddFillSaysItsCause()
    {
        const test::TestFolder folder;
        auto car = carWithASlip(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        QVERIFY(!cell(log, 1, HistoryModel::Flag).isEmpty());
        QCOMPARE(cell(log, 3, HistoryModel::Flag), "");
        log.open(1);
        QVERIFY(!log.notices().isEmpty());
        QVERIFY(log.notices()[0].caution());
    }
    void theProposedCorrectionMendsItAndCanBeUndone()
    {
        const test::TestFolder folder;
        auto car = carWithASlip(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(1);
        QVERIFY2(!log.mendWord().isEmpty(), "no correction is proposed");
        QSignalSpy stored(&log, &LogbookViewModel::stored);
        log.mend();
        QCOMPARE(stored.count(), 1);
        QCOMPARE(cell(log, 1, HistoryModel::Flag), "");
        QVERIFY(log.opened());
        QVERIFY(log.notices().isEmpty());
        QCOMPARE(log.versions().size(), 3);
        QCOMPARE(log.undoWord(), "Undo the correction");
        log.undo();
        const Fill slip = fills(car)[fills(car).size() - 2].value;
        QVERIFY(!cell(log, 1, HistoryModel::Flag).isEmpty()); // and what stands is said, the slip
        const QString said = log.notices().front().text; // before what looks odd of it
        QVERIFY2(said.startsWith("As before, it is: "), qPrintable(said));
        QVERIFY(said.contains(QString::number(qRound(slip.odometer->km()))));
        log.close();
        QCOMPARE(log.undoWord(), ""); // it is offered where it was made only
    }
    void aRulingCountsAndIsLifted()
    {
        const test::TestFolder folder;
        auto car = carWithASlip(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(1);
        log.rule();
        QCOMPARE(fills(car)[fills(car).size() - 2].value.counted, std::optional(true));
        QVERIFY(cell(log, 1, HistoryModel::Detail).contains("as you ruled"));
        log.rule();
        QVERIFY(!fills(car)[fills(car).size() - 2].value.counted);
    }
    // Before: the correction only was gone, and the slip was back unsaid.
    void aCorrectedEntryIsTakenOutWholeAndComesBackCorrected()
    {
        const test::TestFolder folder;
        auto car = carWithASlip(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(1);
        log.mend();
        const Fill mended = fills(car)[fills(car).size() - 2].value;
        log.takeOut();
        QCOMPARE(log.rows()->rowCount(), 12);
        QCOMPARE(log.undoWord(), "Undo taking out");
        log.open(1);
        QCOMPARE(log.undoWord(), ""); // of another entry, which was not corrected
        log.close();
        log.undo();
        QCOMPARE(fills(car)[fills(car).size() - 2].value, mended);
    }
    void aRulingIsLiftedAndNoCorrection()
    {
        const test::TestFolder folder;
        auto car = carWithASlip(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(1);
        const Fill slip = fills(car)[fills(car).size() - 2].value;
        log.rule();
        log.rule(); // lifted: two rows more, and the correction is still the slip's
        QCOMPARE(log.undoWord(), "Undo the correction");
        log.undo();
        const Fill undone = fills(car)[fills(car).size() - 2].value;
        QVERIFY(std::abs((slip.odometer->km() - undone.odometer->km()) - 200) < 1e-6);
        QCOMPARE(log.undoWord(), "");
        log.rule();
        QCOMPARE(log.undoWord(), "");
    }
    void anEntryTakenOutIsGoneAndComesBack()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(0);
        const Fill before = fills(car).back().value;
        log.takeOut();
        QCOMPARE(log.rows()->rowCount(), 12);
        QVERIFY(!log.opened());
        log.undo();
        QCOMPARE(log.rows()->rowCount(), 13);
        QCOMPARE(fills(car).back().value, before);
    }
    void aCorrectionSupersedesAndKeepsWhatTheFormDoesNotShow()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        LogbookViewModel log(car);
        log.selectFilter(1);
        log.open(0);
        const Fill before = fills(car).back().value;
        log.correct();
        QVERIFY(log.correcting());
        QCOMPARE(log.editor()->form()->fields()[0].text, "38.4");
        for (int i = 0; i < 4; ++i)
            log.editor()->form()->erase();
        for (const char* key : {"3", "9"})
            log.editor()->form()->press(key);
        log.editor()->save();
        QVERIFY(!log.correcting());
        QCOMPARE(cell(log, 0, HistoryModel::Value), "39.0 L, full");
        QCOMPARE(fills(car).back().value.time, before.time);
        QCOMPARE(log.versions().size(), 2);
        log.undo();
        QCOMPARE(fills(car).back().value, before);
    }
    void consumptionIsDrawnWithItsBand()
    {
        const test::TestFolder folder;
        auto car = test::demoCar(folder.path);
        LogbookViewModel log(car);
        const PlotPicture picture = log.consumption();
        QCOMPARE(picture.marks.size(), 12); // stretches between 13 fills
        QCOMPARE(picture.line.size(), 12);
        QCOMPARE(picture.band.size(), 25);
        QCOMPARE(picture.yTitle, "L/100 km");
        for (const PlotMark& mark : picture.marks)
            QVERIFY(mark.x >= 0 && mark.x <= 1 && mark.y >= 0 && mark.y <= 1);
    }
    void aCarThatCannotAnswerHasAnEmptyLogAndSaysWhy()
    {
        const test::TestFolder folder;
        Car car = test::carInState("unknown", folder.path);
        LogbookViewModel log(car);
        QCOMPARE(log.rows()->rowCount(), 0);
        QCOMPARE(log.listNotices().size(), 1);
        QVERIFY(log.emptyText().isEmpty()); // nobody knows whether it is empty
        QVERIFY(log.consumption().isEmpty());
    }
};

UNDERMARK_TEST(LogbookViewModelTest)
#include "logbook_view_model_test.moc"
