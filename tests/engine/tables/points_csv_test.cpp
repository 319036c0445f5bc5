// SPDX-License-Identifier: GPL-3.0-or-later
//
// The two ways to write down the litres of a calibration, and the one that is neither.
#include "engine/tables/points_csv.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace undermark;

class PointsCsvTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

    Result<PointsFile> read(const QByteArray& text)
    {
        QFile file(m_folder.filePath("points.csv"));
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            qFatal("no points file");
        file.close();
        return readPoints(file.fileName().toStdString());
    }
    static QList<double> litres(const PointsFile& file)
    {
        QList<double> all;
        for (const CalibrationPoint& point : file.points)
            all.append(point.added.litres());
        return all;
    }

private slots:
    void stepsAndSumsAreTheSameTank()
    {
        const auto steps = read("poured_l,signal\n0,3\n5,2.8\n20,1.9\n25,0.5\n");
        const auto sums = read("signal,total_l\n3,0\n2.8,5\n1.9,25\n0.5,50\n");
        QVERIFY(steps && sums);
        QCOMPARE(litres(*steps), (QList<double>{0, 5, 25, 50}));
        QCOMPARE(litres(*steps), litres(*sums));
        QVERIFY(steps->warnings.empty() && sums->warnings.empty());
    }
    void whatIsTakenOutIsNegative()
    {
        const auto down = read("poured_l,signal\n0,0.5\n-20,1.9\n-30,3\n");
        QVERIFY(down);
        QCOMPARE(litres(*down), (QList<double>{50, 30, 0}));
        QVERIFY(down->warnings.empty());
    }
    void litresThatCanBeReadInTwoWaysAreRefused()
    {
        const auto either = read("added_l,signal\n0,3\n5,2.8\n45,0.5\n");
        QVERIFY(!either);
        const std::string said = describe(either.error());
        QVERIFY2(said.find("poured_l") != std::string::npos && said.find("total_l") != std::string::npos
                     && said.find("points.csv:1") != std::string::npos,
                 said.c_str());
        QCOMPARE(either.error().code, ErrorCode::badInput);
    }
    void oneOfTheTwoHasToStandThere()
    {
        for (const char* header : {"signal,readings\n3,1\n2,1\n",
                                   "poured_l,total_l,signal\n0,0,3\n5,5,2\n"}) {
            const auto refused = read(header);
            QVERIFY(!refused);
            const std::string said = describe(refused.error());
            QVERIFY2(said.find("total_l") != std::string::npos, said.c_str());
        }
    }
    void aStepWithoutLitresIsNamed()
    {
        const auto refused = read("poured_l,signal\n0,3\n,2.8\n45,0.5\n");
        QVERIFY(!refused);
        const std::string said = describe(refused.error());
        QVERIFY2(said.find("points.csv:3") != std::string::npos
                     && said.find("poured_l") != std::string::npos,
                 said.c_str());
    }
};

UNDERMARK_TEST(PointsCsvTest)
#include "points_csv_test.moc"
