// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a terminal says more than the engine: the flag to type, litres in the words.
#include "tests/support/cli_runner.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTest>
#include <QXmlStreamReader>

using namespace undermark::test;

namespace {

QByteArray sourceFile(const QString& path)
{
    QFile file(QFileInfo(QString(UNDERMARK_README)).path() + '/' + path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// The sentences that the table of app/cli/terminal_words.cpp words anew.
QStringList sentencesReworded()
{
    static const QRegularExpression entry(R"re(Rewording\{("(?:[^"\\]|\\.)*"(?:\s*"(?:[^"\\]|\\.)*")*),)re");
    static const QRegularExpression seam(R"re("\s*")re");
    QStringList found;
    auto matches = entry.globalMatch(QString::fromUtf8(sourceFile("app/cli/terminal_words.cpp")));
    while (matches.hasNext())
        found += matches.next().captured(1).replace(seam, "").remove('"');
    return found;
}

// All that the engine and the programs say, as the translators get it.
QSet<QString> sentencesSaid()
{
    QSet<QString> said;
    QXmlStreamReader xml(sourceFile("app/screen/i18n/undermark_de.ts"));
    while (!xml.atEnd())
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == QLatin1String("source"))
            said += xml.readElementText();
    return said;
}

} // namespace

class TerminalWordsTest : public QObject {
    Q_OBJECT
private slots:
    void everySentenceWordedAnewIsStillSaid()
    {
        const QSet<QString> said = sentencesSaid();
        if (said.isEmpty())
            QSKIP("the sources are not here");
        const QStringList reworded = sentencesReworded();
        QVERIFY(reworded.size() > 10);
        for (const QString& sentence : reworded)
            QVERIFY2(said.contains(sentence), qPrintable(sentence));
    }

    void hintsNameTheFlagToType()
    {
        const CliRunner run;
        QCOMPARE(run("vehicle add --name Wren --capacity-l 50 --fuel petrol").exitCode, 0);
        QVERIFY(run("range").err.contains("give a reading (--signal) or the usable litres (--litres)"));
        QVERIFY(run("check").out.contains("readings cannot be used (calibrate --save)"));
        const QString points = run.file("points.csv", "total_l,signal\n0,3\n5,2.8\n50,0.5\n");
        QCOMPARE(run("calibrate --save " + points).exitCode, 0);
        QVERIFY(run("range --signal 1 --signal2 2").err.contains("expected --signal alone"));
    }

    void litresAreLitresOnATerminal()
    {
        const CliRunner run;
        QVERIFY(run.prepareCar());
        QVERIFY(run("range --litres 20").out.contains("litres as given"));
    }
};

UNDERMARK_TEST(TerminalWordsTest)
#include "terminal_words_test.moc"
