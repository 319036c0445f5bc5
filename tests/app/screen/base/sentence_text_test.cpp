// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the engine says, as the pages show it: in the language, units and decimal mark of
// the screen, and again in others once those are chosen.
#include "app/car/plan_rows.h"
#include "app/screen/base/screen.h"
#include "app/screen/base/sentence_text.h"
#include "app/screen/base/translations.h"
#include "tests/support/settled.h"
#include "tests/support/test_car.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

using namespace undermark;

namespace {

// A screen over the demo car that can be told its language and units.
struct ToldScreen {
    test::TestFolder folder;
    Car car = test::demoCar(folder.path);
    Screen screen{car};
    Translations translations;
    ~ToldScreen() { translations.use("en"); }
    void speak(const QString& language, bool gallonsAndMiles = false)
    {
        translations.use(language);
        screen.settings.override("language", language);
        screen.settings.override("distance", int(gallonsAndMiles));
        screen.settings.override("volume", int(gallonsAndMiles));
        screen.setFormat();
    }
};

// Up only, standing still on the lower stop: three findings.
Calibration coarse()
{
    Calibration calibration;
    calibration.time = test::testTime();
    calibration.zeroMark = Volume::fromLitres(8);
    const double litres[] = {0, 5, 8, 20, 35, 50}, volts[] = {0.5, 0.5, 0.5, 1.6, 3.0, 4.4};
    for (std::size_t i = 0; i < 6; ++i) {
        CalibrationPoint point;
        point.added = Volume::fromLitres(litres[i]);
        point.signal = Signal::of(volts[i]);
        calibration.points.push_back(point);
    }
    return calibration;
}

QString findingWith(ToldScreen& told, const QString& part)
{
    for (const NoticeText& finding : told.screen.tank.findings())
        if (finding.text.contains(part))
            return finding.text;
    return {};
}

} // namespace

class SentenceTextTest : public QObject {
    Q_OBJECT
private slots:
    void figuresTakeTheScreensUnitsAndMark()
    {
        const UnitFormat german(Units{}, QLocale("de"));
        const UnitFormat american(Units::us(), QLocale("en"));
        const Sentence text =
            Sentence::just(std::vector{Sentence::just(amount(Volume::fromLitres(12.5), 1)),
                                       Sentence::just(amount(Distance::fromKm(160.9344), 1)),
                                       Sentence::just(amount(0.25, 2, "V"))});
        QCOMPARE(sentenceText(text, german), "12,5 L, 160,9 km, 0,25 V");
        QCOMPARE(sentenceText(text, american), "3.3 gal, 100.0 mi, 0.25 V");
    }
    void digitsThatNobodyAskedForAreNotShown()
    {
        const UnitFormat german(Units{}, QLocale("de"));
        const auto shown = [&](Part part) { return sentenceText(Sentence::just(part), german); };
        QCOMPARE(shown(amount(Distance::fromKm(50), 6)), "50 km");
        QCOMPARE(shown(amount(0.1234567, 6)), "0,123");
        QCOMPARE(shown(amount(0.0045678, Digits::significant(3))), "0,00457");
        QCOMPARE(shown(amount(1234.4, Digits::significant(3))), "1234");
        QCOMPARE(sentenceText(Sentence::just(amount(Volume::fromLitres(12), 0)),
                              UnitFormat(Units::us(), QLocale("en"))),
                 "3.2 gal"); // a gallon is too much to be rounded to
    }
    void findingsOfACalibration()
    {
        ToldScreen told;
        QVERIFY(told.car.record(coarse()).has_value());
        told.speak("de");
        QVERIFY2(findingWith(told, "Schwimmer liegt bis 8 L auf seinem unteren Anschlag: bei 0,5 V")
                     .contains("die letzten 8 L"),
                 qPrintable(told.screen.tank.findings()[0].text));
        told.speak("fr", true);
        QVERIFY2(findingWith(told, "sa butée basse jusqu’à 2,11 gal").contains("0,5 V"),
                 qPrintable(told.screen.tank.findings()[0].text));
        told.speak("en", true);
        QVERIFY(findingWith(told, "lower stop up to 2.11 gal").contains("0.5 V"));
    }
    void aFillThatIsKeptOut()
    {
        ToldScreen told;
        const auto fills = (*told.car.knowledge())->log.fills;
        Fill slip = fills[fills.size() - 2].value;
        slip.odometer = *slip.odometer + Distance::fromKm(200);
        QVERIFY(told.car.revise(fills[fills.size() - 2].id, slip).has_value());
        const auto said = [&] {
            told.screen.logbook.selectFilter(1);
            told.screen.logbook.open(1);
            const auto notices = told.screen.logbook.notices();
            return notices.isEmpty() ? QString() : notices[0].text;
        };
        told.speak("de");
        const QRegularExpression german(
            "^\\d+ km passen nicht zum Kraftstoff, zusammen .*: etwa \\d+ km würden passen$");
        QVERIFY2(german.match(said()).hasMatch(), qPrintable(said()));
        told.speak("fr", true);
        const QRegularExpression french("^\\d+ mi ne vont pas avec .*: environ \\d+ mi iraient$");
        QVERIFY2(french.match(said()).hasMatch(), qPrintable(said()));
        QVERIFY(!told.screen.now.notices().isEmpty());
        QVERIFY2(told.screen.now.notices()[0].text.startsWith("un plein n’est pas compté : "),
                 qPrintable(told.screen.now.notices()[0].text));
        told.speak("en");
        QVERIFY(said().contains(" km do not fit the fuel"));
    }
    void whatTheAnswerRestsOn()
    {
        ToldScreen told;
        told.speak("de", true);
        QVERIFY2(
            told.screen.now.why().contains(QRegularExpression("Logbuch: voll, danach \\d+,\\d mi")),
            qPrintable(told.screen.now.why()));
        told.speak("fr");
        QVERIFY2(
            told.screen.now.why().contains(QRegularExpression("carnet : plein, puis \\d+,\\d km")),
            qPrintable(told.screen.now.why()));
    }
    void evidenceAndTheNextProof()
    {
        ToldScreen told;
        told.speak("de", true);
        const QList<Fact> evidence = told.screen.tank.evidence();
        QVERIFY2(evidence[0].name.contains(QRegularExpression("\\d,\\d+ gal")),
                 qPrintable(evidence[0].name));
        QVERIFY2(evidence[1].name.endsWith("unter null gefahren, lief noch (Landstraße)"),
                 qPrintable(evidence[1].name));
        const auto proofs = (*told.car.knowledge())->log.proofs; // without them one would help
        for (const Entry<Proof>& proof : proofs)
            QVERIFY(told.car.takeBack(proof.id).has_value());
        told.speak("de", true);
        const QRegularExpression german("^Den Tank leerpumpen, eine gemessene Grundmenge .*\\. Es blieben ± \\d+,\\d gal\\.$");
        QVERIFY2(german.match(told.screen.tank.nextProof()).hasMatch(),
                 qPrintable(told.screen.tank.nextProof()));
        QVERIFY(told.screen.tank.nextProofCaution().contains("Benzindampf entzündet sich"));
        told.speak("fr");
        QVERIFY(told.screen.tank.nextProofCaution().contains("abîme les pompes"));
    }
    void notesOfAPlan()
    {
        ToldScreen told;
        Route route;
        for (const double km : {0.0, 40.0, 80.0}) {
            RoutePoint point;
            point.at = Distance::fromKm(km);
            point.name = "P";
            if (km == 40.0) {
                point.fuel = FuelSource::pump;
                point.opens = Minutes(480);
                point.closes = Minutes(1080);
            }
            route.points.push_back(point);
        }
        told.screen.ahead.setRoute(route, "Lake");
        const auto said = [&] { return test::settled(told.screen.ahead).notices()[0].text; };
        told.speak("de");
        QCOMPARE(said(),
                 "Öffnungszeiten bleiben außer Acht: dazu gehören Abfahrt und Geschwindigkeit");
        told.speak("fr");
        QVERIFY(said().startsWith("les heures d’ouverture"));
        told.speak("en");
        QVERIFY(said().startsWith("opening hours"));
    }
    void theErrorOfABadRouteFile()
    {
        ToldScreen told;
        const QString path = QString::fromStdString(told.folder.path.string());
        PlanViewModel ahead(told.car, {}, path);
        QFile file(path + "/bad.csv");
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("at_km,name,mode,fuel\n0,Home,,none\n80.5,Lake,,none\n40,Mill,,none\n");
        file.close();
        FileList& files = *ahead.files();
        files.refresh();
        for (int row = 0; row < files.rowCount(); ++row)
            if (files.data(files.index(row), FileList::Name) == "bad.csv")
                ahead.pickFile(row);
        const auto said = [&] {
            ahead.setFormat(told.screen.settings.format());
            return ahead.notices()[0].text;
        };
        told.speak("de");
        QVERIFY2(
            said().endsWith("bad.csv:4: Spalte „at_km“: die Entfernung läuft rückwärts (erwartet: "
                            "80,5 km oder mehr; gefunden: „40“)"),
            qPrintable(said()));
        told.speak("fr", true);
        QVERIFY2(said().contains("la distance va à reculons (attendu : 50,02 mi ou plus"),
                 qPrintable(said()));
        told.speak("en");
        QVERIFY(said().contains("expected 80.5 km or more, found '40'"));
    }

    // Rows of the screen: in its words, mark and units. (The card's are in litres and km.)
    void notesOfAPlanAreInTheScreensLanguage()
    {
        Translations translations;
        translations.use("de");
        PlanRequest request;
        for (const double km : {0.0, 60.0, 200.0}) {
            RoutePoint point;
            point.at = Distance::fromKm(km);
            point.fuel = km == 60 ? FuelSource::pump : FuelSource::none;
            request.route.points.push_back(point);
        }
        request.route.points[1].mostPurchase = Volume::fromLitres(17.5);
        request.route.points[1].stopTime = Minutes(8);
        request.tank.capacity = Volume::fromLitres(50);
        request.tank.start = {Volume::fromLitres(10), {}};
        request.rates = RateModel::single({Consumption::fromLitresPer100Km(10), {}});
        const auto answer = plan(request);
        QVERIFY(answer && answer->feasible);
        const UnitFormat american(Units::us(), QLocale("de"));
        const auto rows = planRows(request, *answer, {}, [&](const Sentence& words) {
            return sentenceText(words, american).toStdString();
        });
        QCOMPARE(QString::fromStdString(rows[1].note), "kein Zurück nach 80,8 mi; vorbei nur mit 3,7 gal; höchstens 4,6 gal; 8 min; wenn zu, ist nichts anderes sicher zu erreichen");
        QCOMPARE(QString::fromStdString(planRows(request, *answer)[1].note), "no return after 130.0 km; past only with 14.0 L; at most 17.5 L; 8 min; if closed nothing else is sure to be reached");
        translations.use("en");
    }
};

UNDERMARK_TEST(SentenceTextTest)
#include "sentence_text_test.moc"
