// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/conjugate_regression.h"
#include "tests/support/test_main.h"

#include <QFile>
#include <QProcess>
#include <QTest>
#include <array>
#include <cmath>

using namespace undermark;

class ConjugateRegressionTest : public QObject {
    Q_OBJECT

    // Six stretches: litres ~ N(rate * km, s2 * km).
    static ConjugateRegression afterSixStretches()
    {
        constexpr std::array kKm{12.0, 28.0, 11.2, 45.0, 18.5, 60.0};
        constexpr std::array kLitres{0.78, 1.62, 0.70, 2.34, 1.05, 3.05};
        ConjugateRegression model({0.06}, {0.05}, 2, 0.004);
        for (std::size_t i = 0; i < kKm.size(); ++i)
            model.observe(std::array{kKm[i]}, kLitres[i], kKm[i]);
        return model;
    }

    static bool near(double a, double b, double tolerance)
    {
        if (std::abs(a - b) <= tolerance)
            return true;
        qWarning("%.12g differs from %.12g", a, b);
        return false;
    }

    // The numbers that a Python program with numpy and scipy prints; none where
    // they are not installed.
    static std::vector<double> printedBy(const char* program)
    {
        QProcess python;
        python.start("/usr/bin/python3", {"-c", QString("import numpy as np\nfrom scipy import stats\n") + program});
        if (!python.waitForFinished(60000) || python.exitCode() != 0)
            return {};
        std::vector<double> numbers;
        for (const QByteArray& word : python.readAllStandardOutput().simplified().split(' '))
            numbers.push_back(word.toDouble());
        return numbers;
    }

private slots:
    // NIST StRD, Norris: certified B0, B1, their standard deviations, residual sd.
    // With next to no prior the posterior is the least-squares fit.
    void withoutAPriorItIsTheCertifiedLinearFit()
    {
        QFile data(QStringLiteral(UNDERMARK_SHARED_DATA "/nist/Norris.dat"));
        if (!data.open(QIODevice::ReadOnly))
            QSKIP("the NIST data is not beside this checkout");
        const QList<QByteArray> lines = data.readAll().split('\n');
        ConjugateRegression model({0, 0}, {1e12, 0, 0, 1e12}, 1e-9, 1e-9);
        int n = 0;
        for (qsizetype i = 60; i < lines.size(); ++i) {   // "Data: lines 61 to 96" says the file
            const QList<QByteArray> cells = lines[i].simplified().split(' ');
            if (cells.size() != 2)
                continue;
            model.observe(std::array{1.0, cells[1].toDouble()}, cells[0].toDouble(), 1);
            ++n;
        }
        QCOMPARE(n, 36);
        const double residual2 = 2 * model.rate() / (n - 2);
        QVERIFY(near(model.mean()[0], -0.262323073774029, 1e-9));
        QVERIFY(near(model.mean()[1], 1.00211681802045, 1e-12));
        QVERIFY(near(std::sqrt(residual2), 0.884796396144373, 1e-8));
        QVERIFY(near(std::sqrt(residual2 * model.relativeCovariance()[0]), 0.232818234301152, 1e-8));
        QVERIFY(near(std::sqrt(residual2 * model.relativeCovariance()[3]), 0.429796848199937e-3, 1e-11));
    }

    // The batch formulas in matrices, by numpy.
    void numpyComesToTheSamePosterior()
    {
        const auto oracle = printedBy(
            "x=np.array([[120,300,1],[400,60,2],[50,500,0],[300,200,3],[10,410,1]],float)\n"
            "y=np.array([31.5,44.1,37.2,40.3,28.9]);w=np.array([1.5,2.0,1.2,3.0,1.0])\n"
            "m=np.array([.09,.06,.1]);V=np.array([[4e-4,2e-4,0],[2e-4,3e-4,0],[0,0,4e-3]]);a,b=2.5,1.5\n"
            "P=np.linalg.inv(V);Pn=P+(x.T/w)@x;mn=np.linalg.solve(Pn,P@m+(x.T/w)@y)\n"
            "an=a+len(y)/2;bn=b+.5*((y*y/w).sum()+m@P@m-mn@Pn@mn)\n"
            "z=np.array([200,250,2.]);s=np.sqrt(bn/an*(1.7+z@np.linalg.solve(Pn,z)))\n"
            "t=stats.t(2*an,z@mn,s)\n"
            "print(*['%.17g'%v for v in [*mn,bn,t.ppf(.05),t.ppf(.99),t.cdf(33),t.logpdf(35)]])");
        if (oracle.empty())
            QSKIP("python3 with numpy and scipy is not installed");
        ConjugateRegression model({0.09, 0.06, 0.1}, {4e-4, 2e-4, 0, 2e-4, 3e-4, 0, 0, 0, 4e-3}, 2.5, 1.5);
        const std::array<std::array<double, 3>, 5> x{
            {{120, 300, 1}, {400, 60, 2}, {50, 500, 0}, {300, 200, 3}, {10, 410, 1}}};
        constexpr std::array kY{31.5, 44.1, 37.2, 40.3, 28.9};
        constexpr std::array kW{1.5, 2.0, 1.2, 3.0, 1.0};
        for (std::size_t i = 0; i < x.size(); ++i)
            model.observe(x[i], kY[i], kW[i]);
        const StudentT law = model.predict(std::array{200.0, 250.0, 2.0}, 1.7);
        const std::array ours{model.mean()[0], model.mean()[1], model.mean()[2], model.rate(),
                              law.quantile(0.05), law.quantile(0.99), law.cdf(33), law.logDensity(35)};
        QCOMPARE(oracle.size(), ours.size());
        for (std::size_t i = 0; i < ours.size(); ++i)
            QVERIFY(near(ours[i], oracle[i], 1e-9 * std::max(1.0, std::abs(oracle[i]))));
    }

    // Over the degrees of freedom and probabilities in use. scipy's ppf is good to
    // 2e-9 only where the degrees of freedom are no whole number (checked by
    // integrating the density), so its distribution is inverted instead.
    void scipyHasTheSameQuantilesAndDistribution()
    {
        const auto oracle = printedBy(
            "from scipy.optimize import brentq\n"
            "d=[2.5,5,7,12.3,80,400];p=[.001,.05,.25,.5,.9,.995]\n"
            "print(*['%.17g'%brentq(lambda v:stats.t.cdf(v,n)-q,-99,99,xtol=1e-13) for n in d for q in p],"
            "*['%.17g'%stats.t.cdf(q*8-4,n) for n in d for q in p])");
        if (oracle.empty())
            QSKIP("python3 with numpy and scipy is not installed");
        std::vector<double> ours;
        constexpr std::array kDf{2.5, 5.0, 7.0, 12.3, 80.0, 400.0};
        constexpr std::array kP{0.001, 0.05, 0.25, 0.5, 0.9, 0.995};
        for (const double df : kDf)
            for (const double p : kP)
                ours.push_back(StudentT{0, 1, df}.quantile(p));
        for (const double df : kDf)
            for (const double p : kP)
                ours.push_back(StudentT{0, 1, df}.cdf(p * 8 - 4));
        QCOMPARE(oracle.size(), ours.size());
        for (std::size_t i = 0; i < ours.size(); ++i)
            QVERIFY(near(ours[i], oracle[i], 1e-9 * std::max(1.0, std::abs(oracle[i]))));
    }

    // Computed apart from the project from the formulas of Murphy (2007), "Conjugate
    // Bayesian analysis of the Gaussian distribution".
    void givesThePosteriorOfThePublishedFormulas()
    {
        const ConjugateRegression model = afterSixStretches();
        QVERIFY(near(model.mean()[0], 0.055161787365, 1e-12));
        QVERIFY(near(model.relativeCovariance()[0], 0.005136106831, 1e-12));
        QVERIFY(near(model.shape(), 5, 0));
        QVERIFY(near(model.rate(), 0.006028618194, 1e-12));
    }

    void predictsByStudentsT()
    {
        const StudentT hundred = afterSixStretches().predict(std::array{100.0}, 100);
        QVERIFY(near(hundred.location, 5.516178737, 1e-9));
        QVERIFY(near(hundred.scale, 0.427199740, 1e-9));
        QCOMPARE(hundred.degreesOfFreedom, 10.0);
        QVERIFY(near(hundred.quantile(0.05), 4.741895816, 1e-8));
        QVERIFY(near(hundred.quantile(0.95), 6.290461657, 1e-8));
        const StudentT three = afterSixStretches().predict(std::array{300.0}, 300);
        QVERIFY(near(three.location, 16.548536210, 1e-9));
        QVERIFY(near(three.scale, 0.958677411, 1e-9));
    }

    // Source: tables of Student's t.
    void quantilesAreThoseOfTheTables()
    {
        QVERIFY(near(StudentT{0, 1, 3}.quantile(0.95), 2.353363, 1e-6));
        QVERIFY(near(StudentT{0, 1, 3}.quantile(0.975), 3.182446, 1e-6));
        QVERIFY(near(StudentT{0, 1, 5}.quantile(0.95), 2.015048, 1e-6));
        QVERIFY(near(StudentT{0, 1, 5}.quantile(0.975), 2.570582, 1e-6));
        QVERIFY(near(StudentT{0, 1, 10}.quantile(0.95), 1.812461, 1e-6));
        QVERIFY(near(StudentT{0, 1, 10}.quantile(0.975), 2.228139, 1e-6));
    }

    void densityIsTheSlopeOfTheDistribution()
    {
        const StudentT law{3, 0.7, 6};
        for (double x : {1.0, 2.9, 3.0, 4.4}) {
            const double slope = (law.cdf(x + 1e-5) - law.cdf(x - 1e-5)) / 2e-5;
            QVERIFY(near(std::exp(law.logDensity(x)), slope, 1e-8));
        }
        QVERIFY(near(law.sd(), 0.7 * std::sqrt(6.0 / 4.0), 1e-15));
        QVERIFY(std::isinf(StudentT{0, 1, 2}.sd()));
    }

    // Every split of the evidence leads to the same posterior.
    void theOrderOfTheEvidenceDoesNotMatter()
    {
        const std::vector<double> identity{1, 0.2, 0.2, 2};
        ConjugateRegression forth({0.1, 0.2}, identity, 3, 2);
        ConjugateRegression back({0.1, 0.2}, identity, 3, 2);
        const std::array<std::array<double, 2>, 3> x{{{1, 0}, {0.5, 2}, {3, 1}}};
        const std::array y{0.4, 1.9, 1.2};
        const std::array w{1.0, 0.5, 2.0};
        for (std::size_t i = 0; i < 3; ++i) {
            forth.observe(x[i], y[i], w[i]);
            back.observe(x[2 - i], y[2 - i], w[2 - i]);
        }
        QVERIFY(near(forth.mean()[0], back.mean()[0], 1e-12));
        QVERIFY(near(forth.mean()[1], back.mean()[1], 1e-12));
        QVERIFY(near(forth.rate(), back.rate(), 1e-12));
        QVERIFY(near(forth.relativeCovariance()[1], back.relativeCovariance()[1], 1e-12));
    }

    void forgettingEverythingRestoresThePrior()
    {
        ConjugateRegression model = afterSixStretches();
        for (int i = 0; i < 100; ++i)
            model.forget(0.5);
        QVERIFY(near(model.mean()[0], 0.06, 1e-12));
        QVERIFY(near(model.relativeCovariance()[0], 0.05, 1e-12));
        QVERIFY(near(model.shape(), 2, 1e-12));
        QVERIFY(near(model.rate(), 0.004, 1e-12));
        ConjugateRegression atOnce = afterSixStretches();
        atOnce.forget(0);
        QVERIFY(near(atOnce.mean()[0], 0.06, 1e-12));
        QVERIFY(near(atOnce.rate(), 0.004, 1e-12));
    }

    void forgettingNothingChangesNothing()
    {
        ConjugateRegression model = afterSixStretches();
        model.forget(1);
        QVERIFY(near(model.mean()[0], 0.055161787365, 1e-12));
        QVERIFY(near(model.rate(), 0.006028618194, 1e-12));
    }
};

UNDERMARK_TEST(ConjugateRegressionTest)
#include "conjugate_regression_test.moc"
