// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entries of the log in words: one line for the list, all of it for one entry.
#pragma once

#include "app/car/car_answers.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/unit_format.h"
#include "engine/logbook/log_page.h"
#include "engine/outlook/car_knowledge.h"

#include <QList>
#include <QString>

namespace undermark {

// What the logbook teaches about one entry, found by its id: how the stretch that a
// fill ended was driven, and what looks odd. Cost: O(log entries).
struct EntryLesson {
    const Interval* stretch = nullptr;
    const FillFlag* fillFlag = nullptr;
    const ProofFlag* proofFlag = nullptr;
};

EntryLesson lessonOf(const CarKnowledge& car, const LogRow& row);

struct LogLine {
    QString date;   // "2026-08-29", local
    QString kind;   // "Fill"
    QString value;  // "38.4 L, full"
    QString detail; // "148653 km, 7.1 L/100 km"
    QString flag;   // "wrong odometer", or empty
};

LogLine logLine(const CarKnowledge& car, const LogRow& row, const UnitFormat& format);
// Where an entry cannot be read.
LogLine missingLine();

QString dateText(Instant time);      // local day
QString dateTimeText(Instant time);  // local day and minute
QString kindName(LogKind kind);
QString extentName(FillExtent extent);
QString causeText(FlagCause cause);

// Everything that was recorded in one entry.
QList<Fact> fillFacts(const Fill& fill, const UnitFormat& format);
QList<Fact> tripFacts(const Trip& trip, const UnitFormat& format);
QList<Fact> proofFacts(const Proof& proof, const UnitFormat& format);
QList<Fact> levelFacts(const LevelRecord& level, const UnitFormat& format);

// In one line, for the list.
QString fillSummary(const Fill& fill, const UnitFormat& format);
QString tripSummary(const Trip& trip, const UnitFormat& format);
QString proofSummary(const Proof& proof, const UnitFormat& format);
QString levelSummary(const LevelRecord& level, const UnitFormat& format);
// Of any entry; a fill with its kilometres, so that what was corrected of it is seen.
QString summary(const LogValue& value, const UnitFormat& format);

} // namespace undermark
