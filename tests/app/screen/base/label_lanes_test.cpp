// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/label_lanes.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <random>

using namespace undermark;

namespace {

constexpr qreal kStrip = 632;
constexpr qreal kGap = 10;
constexpr int kLanes = 2;

bool covers(const PlacedLabel& label, qreal x)
{
    return x > label.left && x < label.left + label.width;
}

// Nothing that is drawn of one mark covers the label of another.
bool collide(const PlacedLabel& a, const PlacedLabel& b)
{
    if (a.lane < 0 || b.lane < 0)
        return false;
    if (a.lane == b.lane)
        return (a.left < b.left + b.width && b.left < a.left + a.width) || covers(a, b.markX + 3) ||
               covers(a, b.markX - 3) || covers(b, a.markX + 3) || covers(b, a.markX - 3);
    return a.lane > b.lane ? covers(b, a.markX) : covers(a, b.markX);
}

} // namespace

class LabelLanesTest : public QObject {
    Q_OBJECT
private slots:
    void aLoneLabelStandsRightOfItsMark()
    {
        const auto placed = placeLabels({{0.5, "zero mark", false}}, {80}, kStrip, kGap, kLanes);
        QCOMPARE(placed.size(), 1);
        QCOMPARE(placed[0].lane, 0);
        QCOMPARE(placed[0].left, 0.5 * kStrip + kGap);
    }
    void atTheRightEdgeALabelStandsLeftOfItsMark()
    {
        const auto placed = placeLabels({{0.99, "sure to dry", false}}, {80}, kStrip, kGap, kLanes);
        QCOMPARE(placed[0].lane, 0);
        QCOMPARE(placed[0].left, 0.99 * kStrip - kGap - 80);
    }
    void bothPostsAreNamedWhereverTheyStand()
    {
        for (int zero = 0; zero <= 100; ++zero) {
            for (int dry = zero; dry <= 100; ++dry) {
                const auto placed = placeLabels(
                    {{zero / 100.0, "zero mark", false}, {dry / 100.0, "sure to dry", false}},
                    {80, 86}, kStrip, kGap, kLanes);
                for (const PlacedLabel& label : placed)
                    QVERIFY2(label.lane >= 0, qPrintable(QString("%1 %2").arg(zero).arg(dry)));
                QVERIFY(!collide(placed[0], placed[1]));
            }
        }
    }
    void noLabelIsCoveredByAnotherOrByALine()
    {
        std::mt19937 random(7);
        std::uniform_real_distribution<double> share(0.0, 1.0);
        int named = 0;
        for (int round = 0; round < 500; ++round) {
            QList<HorizonMark> marks{{share(random), "zero mark", false},
                                     {share(random), "sure to dry", false}};
            QList<qreal> widths{80, 86};
            for (int i = 0; i < 6; ++i) {
                marks.append({share(random), "peg", true});
                widths.append(30 + 90 * share(random));
            }
            const auto placed = placeLabels(marks, widths, kStrip, kGap, kLanes);
            QCOMPARE(placed.size(), marks.size());
            for (qsizetype i = 0; i < placed.size(); ++i) {
                named += placed[i].lane >= 0;
                if (placed[i].lane >= 0) {
                    QVERIFY(placed[i].left >= 0);
                    QVERIFY(placed[i].left + placed[i].width <= kStrip);
                }
                for (qsizetype j = i + 1; j < placed.size(); ++j)
                    QVERIFY(!collide(placed[i], placed[j]));
            }
        }
        QVERIFY(named > 500 * 3); // and it is not done by naming nothing
    }
};

UNDERMARK_TEST(LabelLanesTest)
#include "label_lanes_test.moc"
