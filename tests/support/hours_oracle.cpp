// SPDX-License-Identifier: GPL-3.0-or-later
//
// The independent evaluator of opening hours (libKOpeningHours): of each line of input prints,
// for every half hour of two fortnights of 2026, O (open), C (closed) or u; or ? alone where it
// does not understand the line. A program of its own, as that library stands on another Qt.
#include <KOpeningHours/Interval>
#include <KOpeningHours/OpeningHours>
#include <QByteArray>
#include <QDateTime>
#include <iostream>
#include <string>

int main()
{
    using KOpeningHours::Interval;
    std::string line;
    while (std::getline(std::cin, line)) {
        const KOpeningHours::OpeningHours hours(QByteArray(line.c_str()));
        std::string states;
        if (hours.error() != KOpeningHours::OpeningHours::NoError)
            states = "?";
        for (const QDate begin : {QDate(2026, 3, 30), QDate(2026, 12, 24)}) {
            Interval now;
            for (int i = 0; states != "?" && i < 14 * 48; ++i) {
                const QDateTime at = QDateTime(begin, QTime(0, 0), Qt::UTC).addSecs(1800 * i + 60);
                if (i == 0 || !now.contains(at)) // asking costs a millisecond
                    now = hours.interval(at);
                const Interval::State state = now.state();
                states += state == Interval::Open ? 'O' : state == Interval::Closed ? 'C' : 'u';
            }
        }
        std::cout << states << std::endl;
    }
}
