// SPDX-License-Identifier: GPL-3.0-or-later
//
// Entries of the log in words: one line for the list, all of it for one entry.
#pragma once

#include "app/fact.h"
#include "app/unit_format.h"
#include "engine/outlook/car_knowledge.h"

#include <QList>
#include <QString>
#include <optional>

namespace undermark {

enum class LogKind { fill, trip, proof, calibration };

// An entry by its place in CarKnowledge::log.
struct LogRef {
    LogKind kind = LogKind::fill;
    std::size_t index = 0;
    Instant time{};
    friend bool operator==(const LogRef&, const LogRef&) = default;
};

// What fills taught and what looks odd about them, by position of the fill, so
// that a line costs no search.
class FillIndex {
public:
    explicit FillIndex(const CarKnowledge& car);
    const Interval* stretch(const CarKnowledge& car, std::size_t fill) const;
    const FillFlag* flag(const CarKnowledge& car, std::size_t fill) const;

private:
    std::vector<int> m_stretch; // -1: none ended here
    std::vector<int> m_flag;
};

// Newest first. `kind` absent: all of them.
std::vector<LogRef> logRefs(const VehicleLog& log, std::optional<LogKind> kind);

struct LogLine {
    QString date;   // "2026-08-29", local
    QString kind;   // "Fill"
    QString value;  // "38.4 L, full"
    QString detail; // "148653 km, 7.1 L/100 km"
    QString flag;   // "wrong odometer", or empty
};

LogLine logLine(const CarKnowledge& car, const FillIndex& fills, const LogRef& ref,
                const UnitFormat& format);

QString dateText(Instant time);      // local day
QString dateTimeText(Instant time);  // local day and minute
QString kindName(LogKind kind);
QString extentName(FillExtent extent);
QString causeText(FlagCause cause);

// Everything that was recorded in one entry.
QList<Fact> fillFacts(const Fill& fill, const UnitFormat& format);
QList<Fact> tripFacts(const Trip& trip, const UnitFormat& format);
QList<Fact> proofFacts(const Proof& proof, const UnitFormat& format);

// In one line, for the list of versions.
QString fillSummary(const Fill& fill, const UnitFormat& format);
QString tripSummary(const Trip& trip, const UnitFormat& format);
QString proofSummary(const Proof& proof, const UnitFormat& format);

} // namespace undermark
