// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen.h"
#include "app/translations.h"
#include "tests/support/fake_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTest>

using namespace undermark;

class TranslationsTest : public QObject {
    Q_OBJECT
private slots:
    void cleanup() { Translations().use("en"); }

    void theScreenSpeaksGermanAndFrench()
    {
        test::FakeCar car;
        Screen screen(car);
        Translations translations;
        const auto speak = [&](const QString& language) {
            translations.use(language);
            screen.settings.override("language", language);
            screen.setFormat();
        };
        speak("de");
        QCOMPARE(screen.now.facts()[0].name, "über null");
        QCOMPARE(screen.now.facts()[0].value, "13,8 ± 0,6 L"); // the decimal comma, too
        QCOMPARE(screen.now.modes()[2], "Autobahn");
        QCOMPARE(screen.pump.form()->fields()[0].text, "41,5");
        QCOMPARE(screen.pump.form()->decimalMark(), ",");
        speak("fr");
        QCOMPARE(screen.now.facts()[1].name, "réserve cachée");
        QCOMPARE(screen.pump.saveWord(), "Garder ce plein");
        speak("en");
        QCOMPARE(screen.now.facts()[0].name, "above zero");
    }
    void noStringIsLeftUntranslated_data()
    {
        QTest::addColumn<QString>("language");
        QTest::newRow("de") << "de";
        QTest::newRow("fr") << "fr";
    }
    void noStringIsLeftUntranslated()
    {
        QFETCH(QString, language);
        QFile file(QString(UNDERMARK_SOURCE "/app/i18n/undermark_%1.ts").arg(language));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        QVERIFY(text.count("<message>") > 300);
        QCOMPARE(text.count("unfinished"), 0);
    }
};

UNDERMARK_TEST(TranslationsTest)
#include "translations_test.moc"
