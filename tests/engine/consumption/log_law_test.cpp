// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/log_law.h"
#include "tests/support/test_main.h"

#include <QTest>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

using namespace undermark;

class LogLawTest : public QObject {
    Q_OBJECT

private slots:
    // Oracle: Boost's Student t with eight degrees of freedom, of variance 8/6.
    void theHeavyTailIsStudentsTWithEightDegreesOfFreedom()
    {
        const boost::math::students_t oracle(8);
        const double unit = std::sqrt(8.0 / 6);
        const HeavyTail law{0.3, 0.2};
        for (const double t : {-40.0, -4.4, -1.0, 0.0, 0.7, 2.896, 12.0}) {
            const double x = 0.3 + 0.2 * t / unit;
            QVERIFY(std::abs(law.cdf(x) - boost::math::cdf(oracle, t)) < 1e-12);
            QVERIFY(std::abs(law.logDensity(x) - std::log(boost::math::pdf(oracle, t) * unit / 0.2)) < 1e-9);
            const double odd = 2 * boost::math::cdf(boost::math::complement(oracle, std::abs(t)));
            QVERIFY(std::abs(law.oddity(x) / odd - 1) < 0.02);
        }
        for (const double p : {0.001, 0.01, 0.25, 0.5, 0.9, 0.99, 0.9999})
            QVERIFY(std::abs(law.quantile(p) - (0.3 + 0.2 / unit * boost::math::quantile(oracle, p))) < 1e-9);
    }

    void aMixturesQuantileIsWhereItsCdfIs()
    {
        const std::vector<LogLawPart> parts{{0.6, {0, 0.1}}, {0.3, {0.4, 0.05}}, {0.1, {-0.2, 0.3}}};
        for (const double p : {0.01, 0.3, 0.75, 0.99})
            QVERIFY(std::abs(mixtureCdf(parts, mixtureQuantile(parts, p, 1.2), 1.2) - p) < 1e-5);
        QCOMPARE(mixtureQuantile({{1, {0.1, 0.2}}}, 0.9, 1), (HeavyTail{0.1, 0.2}.quantile(0.9)));
    }
};

UNDERMARK_TEST(LogLawTest)
#include "log_law_test.moc"
