// SPDX-License-Identifier: GPL-3.0-or-later
//
// Runs undermark-cli as a user would, on a logbook in a temporary folder.
#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <nlohmann/json.hpp>

namespace undermark::test {

struct CliAnswer {
    int exitCode = -1;
    QByteArray out;
    QByteArray err;
    nlohmann::json json() const { return nlohmann::json::parse(out.toStdString()); }
    int errorLines() const { return err.count('\n'); }
};

class CliRunner {
public:
    // The words of one command line, cut at spaces.
    CliAnswer operator()(const QString& line) const
    {
        const QStringList words = line.split(' ', Qt::SkipEmptyParts);
        QProcess process;
        process.start(QStringLiteral(UNDERMARK_CLI),
                      QStringList{"--logbook", logbook()} + words);
        process.waitForFinished();
        return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
    }

    QString logbook() const { return m_folder.filePath("logbook.sqlite"); }

    QString file(const char* name, const QByteArray& text) const
    {
        QFile out(m_folder.filePath(name));
        if (out.open(QIODevice::WriteOnly))
            out.write(text);
        return out.fileName();
    }

    // A car with a sender behind a pull-up, calibrated, and nine ordinary tanks.
    bool prepareCar() const
    {
        const CliRunner& run = *this;
        bool fine = run("vehicle add --name Wren --capacity-l 50 --fuel petrol --circuit resistive "
                        "--supply-v 5 --pull-up-ohm 220 --signal-unit V").exitCode == 0;
        const QString points = file("points.csv", "total_l,signal\n0,3.020\n5,2.840\n15,2.370\n"
                                                  "25,1.880\n35,1.350\n45,0.800\n50,0.550\n");
        fine = fine && run("calibrate " + points + " --save --zero-at-l 5").exitCode == 0;
        for (int i = 0; i < 9; ++i)
            fine = fine && run(QString("fill add --litres %1 --odometer-km %2 --full --date 2026-0%3-10")
                               .arg(36 + i % 3).arg(100000 + 500 * i).arg(i + 1)).exitCode == 0;
        return fine;
    }

private:
    QTemporaryDir m_folder;
};

} // namespace undermark::test
