// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/number_form.h"
#include "tests/support/test_main.h"

#include <QSignalSpy>
#include <QTest>

using namespace undermark;

namespace {

enum { Litres = 3, Km = 7, TripMeter = 9 };

void fill(NumberForm& form)
{
    form.setEntries({{Litres, "fuel", "L", "41.5", true, true},
                     {Km, "odometer", "km", "48210", true, true},
                     {TripMeter, "trip", "km", "312", false, false}});
}

void typeKeys(NumberForm& form, const QString& text)
{
    for (const QChar key : text)
        form.press(key);
}

} // namespace

class NumberFormTest : public QObject {
    Q_OBJECT
private slots:
    void theFirstKeyReplacesAGuess()
    {
        NumberForm form;
        fill(form);
        QCOMPARE(form.fields()[0].hint, "guess");
        typeKeys(form, "38.2");
        QCOMPARE(form.text(Litres), "38.2");
        QCOMPARE(form.fields()[0].hint, "");
        QCOMPARE(form.fields()[1].hint, "guess");
    }
    void erasingTakesAGuessWholeAndTypedDigitsOneByOne()
    {
        NumberForm form;
        fill(form);
        form.erase();
        QCOMPARE(form.text(Litres), "");
        form.erase();
        typeKeys(form, "12");
        form.erase();
        QCOMPARE(form.text(Litres), "1");
    }
    void whatIsKnownIsNoGuessAndIsReplacedWhole()
    {
        NumberForm form;
        fill(form);
        form.setKnown(Litres, "40");
        QCOMPARE(form.fields()[0].hint, "");
        QVERIFY(form.known(Litres));
        typeKeys(form, "3");
        QCOMPARE(form.text(Litres), "3");
        QVERIFY(!form.known(Litres));
        form.setKnown(Litres, "40");
        form.erase();
        QCOMPARE(form.text(Litres), "");
    }
    void onlyDigitsAndOneDecimalMarkAreTaken()
    {
        NumberForm form;
        fill(form);
        typeKeys(form, "4-x1..5e");
        QCOMPARE(form.text(Litres), "41.5");
        QVERIFY(!form.press("-"));
        form.select(1);
        typeKeys(form, "1234567890");
        QCOMPARE(form.text(Km), "12345678");
    }
    void theOtherDecimalMarkIsRefusedAndSaid()
    {
        NumberForm form;
        fill(form);
        typeKeys(form, "1,5");
        QCOMPARE(form.text(Litres), "15");
        typeKeys(form, ",");
        QVERIFY(form.refused().contains('.'));
        typeKeys(form, "7");
        QVERIFY(form.refused().isEmpty());
        form.setDecimalMark(",");
        fill(form);
        typeKeys(form, "1.");
        QVERIFY(form.refused().contains(','));
        typeKeys(form, ",5");
        QCOMPARE(form.text(Litres), "1,5");
    }
    void aHiddenFieldKeepsItsTextAndTakesNoKeys()
    {
        NumberForm form;
        fill(form);
        QCOMPARE(form.fields().size(), 2);
        form.activate(TripMeter);
        QVERIFY(!form.press("5"));
        QCOMPARE(form.text(TripMeter), "312");
        form.setShown(TripMeter, true);
        typeKeys(form, "5");
        QCOMPARE(form.text(TripMeter), "3125");
    }
    void arrowsMoveBetweenFields()
    {
        NumberForm form;
        fill(form);
        QCOMPARE(form.padTitle(), "fuel, L");
        QVERIFY(form.takeKey(Qt::Key_Down, {}));
        QCOMPARE(form.activeId(), int(Km));
        form.takeKey(Qt::Key_Down, {});
        QCOMPARE(form.activeId(), int(Km));
        form.takeKey(Qt::Key_Up, {});
        QCOMPARE(form.activeField(), 0);
        QVERIFY(!form.takeKey(Qt::Key_Tab, {}));
    }
    void whileLockedNothingIsTyped()
    {
        NumberForm form;
        fill(form);
        form.setLocked(true);
        QSignalSpy edited(&form, &NumberForm::edited);
        typeKeys(form, "4");
        form.erase();
        QCOMPARE(form.text(Litres), "41.5");
        QCOMPARE(edited.count(), 0);
    }
    void namesAndUnitsChangeAndTextsStay()
    {
        NumberForm form;
        fill(form);
        form.rename({{Litres, "Menge", "gal", {}, false, true}});
        QCOMPARE(form.padTitle(), "Menge, gal");
        QCOMPARE(form.text(Litres), "41.5");
    }
};

UNDERMARK_TEST(NumberFormTest)
#include "number_form_test.moc"
