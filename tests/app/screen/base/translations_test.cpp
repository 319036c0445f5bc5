// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen.h"
#include "app/screen/base/translations.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

namespace {

QString catalogue(const QString& language)
{
    return QString(UNDERMARK_SOURCE "/app/screen/i18n/undermark_%1.ts").arg(language);
}

QByteArray read(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// The placeholders of a text, each once.
QSet<QString> places(const QString& text)
{
    static const QRegularExpression place("%[1-9]");
    QSet<QString> all;
    for (auto found = place.globalMatch(text); found.hasNext();)
        all.insert(found.next().captured());
    return all;
}

} // namespace

class TranslationsTest : public QObject {
    Q_OBJECT
private slots:
    void cleanup() { Translations().use("en"); }

    void theScreenSpeaksGermanAndFrench()
    {
        test::DemoCar car;
        Screen screen(car);
        Translations translations;
        const auto speak = [&](const QString& language) {
            translations.use(language);
            screen.settings.override("language", language);
            screen.setFormat();
        };
        speak("de");
        QCOMPARE(screen.now.facts()[0].name, "über null");
        QCOMPARE(screen.now.facts()[0].value, "24,6 ± 1,4 L"); // the decimal comma, too
        QCOMPARE(screen.now.modes()[3], "Autobahn");
        QVERIFY(screen.pump.form()->fields()[0].text.contains(","));
        QCOMPARE(screen.pump.form()->decimalMark(), ",");
        speak("fr");
        QCOMPARE(screen.now.facts()[1].name, "réserve cachée");
        QCOMPARE(screen.pump.saveWord(), "Garder ce plein");
        speak("en");
        QCOMPARE(screen.now.facts()[0].name, "above zero");
    }
    void everyCatalogueIsALanguageToChoose()
    {
        const QDir folder(UNDERMARK_SOURCE "/app/screen/i18n", "undermark_*.ts", QDir::Name);
        QStringList files;
        for (const Language& language : languages().mid(1))
            files.append(QFileInfo(catalogue(language.key)).fileName());
        QCOMPARE(files, folder.entryList());
        QVERIFY(files.size() >= 2);
        const QStringList names = ScreenSettings({}).choices()[ScreenSettings::InLanguage].options;
        QCOMPARE(names.mid(0, 2), QStringList({"English", "Deutsch"}));
        QCOMPARE(names.size(), files.size() + 1);
    }
    void noStringIsLeftUntranslated_data()
    {
        QTest::addColumn<QString>("language");
        for (const Language& language : languages().mid(1)) // all but English
            QTest::newRow(qPrintable(language.key)) << language.key;
    }
    void noStringIsLeftUntranslated()
    {
        QFETCH(QString, language);
        const QByteArray text = read(catalogue(language));
        QVERIFY(text.count("<message>") > 300);
        QCOMPARE(text.count("type=\"unfinished\""), 0);
    }
    // Whatever the sources of engine, app and qml say by now.
    void everyStringIsInTheCatalogue_data() { noStringIsLeftUntranslated_data(); }
    void everyStringIsInTheCatalogue()
    {
        QFETCH(QString, language);
        QTemporaryDir folder;
        const QString copy = folder.filePath(QFileInfo(catalogue(language)).fileName());
        QVERIFY(QFile::copy(catalogue(language), copy));
        QStringList command = QString(UNDERMARK_UPDATE_TRANSLATIONS).split('|') + QStringList{copy};
        QCOMPARE(QProcess::execute(command.takeFirst(), command), 0);
        QCOMPARE(read(copy), read(catalogue(language))); // else: ninja update_translations
    }
    void everyPlaceOfAStringIsInItsTranslation_data() { noStringIsLeftUntranslated_data(); }
    void everyPlaceOfAStringIsInItsTranslation()
    {
        QFETCH(QString, language);
        static const QRegularExpression message(
            "<source>([^<]*)</source>\\s*<translation>([^<]*)</translation>");
        auto found = message.globalMatch(QString::fromUtf8(read(catalogue(language))));
        int compared = 0;
        for (; found.hasNext(); ++compared) {
            const auto pair = found.next();
            QVERIFY2(places(pair.captured(1)) == places(pair.captured(2)),
                     qPrintable(pair.captured(2)));
        }
        QVERIFY(compared > 800);
    }
};

UNDERMARK_TEST(TranslationsTest)
#include "translations_test.moc"
