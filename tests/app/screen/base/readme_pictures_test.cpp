// SPDX-License-Identifier: GPL-3.0-or-later
//
// The pictures of README.md are what the program draws; the demo has a time of its own.
#include "tests/support/test_main.h"

#include <QImage>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

class ReadmePicturesTest : public QObject {
    Q_OBJECT

    // Of all pixels, how many are of another colour; a shade at a letter's edge is the same.
    static double different(const QImage& one, const QImage& other)
    {
        constexpr int kShade = 32;
        qsizetype count = 0;
        for (int y = 0; y < one.height(); ++y)
            for (int x = 0; x < one.width(); ++x) {
                const QRgb a = one.pixel(x, y), b = other.pixel(x, y);
                count += std::abs(qRed(a) - qRed(b)) > kShade || std::abs(qGreen(a) - qGreen(b)) > kShade
                    || std::abs(qBlue(a) - qBlue(b)) > kShade;
            }
        return double(count) / one.width() / one.height();
    }

private slots:
    void aPageIsAsItsPictureShowsIt_data()
    {
        QTest::addColumn<QString>("page");
        for (const char* page : {"now", "pump", "ahead", "tank"})
            QTest::newRow(page) << page;
    }
    void aPageIsAsItsPictureShowsIt()
    {
        QFETCH(QString, page);
        const QTemporaryDir folder;
        const QString drawn = folder.filePath("drawn.png");
        QProcess program;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_DATA_HOME", folder.path());
        program.setProcessEnvironment(environment);
        program.start(UNDERMARK_SCREEN_PROGRAM, {"--demo", "--page", page, "--grab", drawn});
        QVERIFY(program.waitForFinished(60000));
        QCOMPARE(program.exitCode(), 0);
        const QImage now(drawn), shown(UNDERMARK_ASSETS "/" + page + ".png");
        QCOMPARE(now.size(), shown.size());
        const double share = different(now, shown);
        QVERIFY2(share < 0.002, qPrintable(QString("%1 % of it differ: undermark --demo --page %2 --grab "
                                                   "assets/%2.png draws it anew").arg(100 * share).arg(page)));
    }
};

UNDERMARK_TEST(ReadmePicturesTest)
#include "readme_pictures_test.moc"
