// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/log_lines.h"

#include "app/screen/base/mode_name.h"
#include "app/screen/base/sentence_text.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>
#include <optional>

namespace undermark {

namespace {

struct EntryWords { // translated in the context of log_words.cpp
    Q_DECLARE_TR_FUNCTIONS(LogWords)
};

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

LogLine fillLine(const Fill& fill, const EntryLesson& lesson, const UnitFormat& format)
{
    LogLine line;
    line.value = fillSummary(fill, format);
    QStringList parts;
    if (fill.tank)
        parts.append(EntryWords::tr("into %1").arg(QString::fromStdString(*fill.tank)));
    if (const Interval* stretch = lesson.stretch) {
        const Consumption rate = stretch->burnt.mean / stretch->distance;
        parts.append(format.rate({rate, {}}));
    }
    if (fill.odometer)
        parts.append(format.distanceWithUnit(*fill.odometer));
    else if (fill.sinceLast)
        parts.append(EntryWords::tr("trip %1").arg(format.distanceWithUnit(*fill.sinceLast)));
    if (fill.counted)
        parts.append(*fill.counted ? EntryWords::tr("counts, as you ruled")
                                   : EntryWords::tr("left out, as you ruled"));
    line.detail = joined(parts);
    if (lesson.fillFlag)
        line.flag = causeText(lesson.fillFlag->cause);
    return line;
}

QString calibrationSummary(const Calibration& calibration, const UnitFormat& format)
{
    return EntryWords::tr("levels: %1, zero at %2")
        .arg(int(calibration.points.size()))
        .arg(format.volume({calibration.zeroMark, {}}));
}

// The position of an entry among those of its kind, which are in order of time.
template <class T>
std::optional<std::size_t> positionOf(const std::vector<Entry<T>>& entries, const LogRow& row)
{
    const auto timeOf = [](const Entry<T>& entry) { return entry.value.time; };
    auto found = std::ranges::lower_bound(entries, row.place.time, {}, timeOf);
    while (found != entries.end() && timeOf(*found) == row.place.time && found->id != row.id)
        ++found;
    if (found == entries.end() || timeOf(*found) != row.place.time)
        return std::nullopt;
    return std::size_t(found - entries.begin());
}

// The one of a fill, of such as are in order of fills.
template <class T>
const T* ofFill(const std::vector<T>& all, std::size_t fill, std::size_t T::*fillOf)
{
    const auto found = std::ranges::lower_bound(all, fill, {}, fillOf);
    return found != all.end() && (*found).*fillOf == fill ? &*found : nullptr;
}

} // namespace

EntryLesson lessonOf(const CarKnowledge& car, const LogRow& row)
{
    EntryLesson lesson;
    if (row.place.kind == LogKind::fill) {
        if (const auto at = positionOf(car.log.fills, row)) {
            lesson.stretch = ofFill(car.consumption.intervals, *at, &Interval::lastFill);
            lesson.fillFlag = ofFill(car.consumption.flags, *at, &FillFlag::fill);
        }
    } else if (row.place.kind == LogKind::proof) {
        const auto at = positionOf(car.log.proofs, row);
        const auto flag = std::ranges::find(car.proofFlags, at, [](const ProofFlag& each) {
            return std::optional(each.proof);
        });
        if (flag != car.proofFlags.end())
            lesson.proofFlag = &*flag;
    }
    return lesson;
}

LogLine logLine(const CarKnowledge& car, const LogRow& row, const UnitFormat& format)
{
    LogLine line;
    const EntryLesson lesson = lessonOf(car, row);
    if (const auto* fill = std::get_if<Fill>(&row.value)) {
        line = fillLine(*fill, lesson, format);
    } else if (const auto* trip = std::get_if<Trip>(&row.value)) {
        line.value = format.distanceWithUnit(trip->distance);
        line.detail = modeName(trip->mode);
    } else if (const auto* proof = std::get_if<Proof>(&row.value)) {
        line.value = proofSummary(*proof, format);
        if (lesson.proofFlag)
            line.flag = sentenceText(lesson.proofFlag->text, format);
    } else if (const auto* level = std::get_if<LevelRecord>(&row.value)) {
        line.value = levelSummary(*level, format);
        QStringList parts;
        if (level->tank)
            parts.append(EntryWords::tr("in %1").arg(QString::fromStdString(*level->tank)));
        if (level->odometer)
            parts.append(format.distanceWithUnit(*level->odometer));
        if (level->origin == LevelOrigin::followed)
            parts.append(EntryWords::tr("by the car itself"));
        line.detail = joined(parts);
    } else {
        line.value = calibrationSummary(std::get<Calibration>(row.value), format);
    }
    line.date = dateText(row.place.time);
    line.kind = kindName(row.place.kind);
    return line;
}

LogLine missingLine()
{
    return {{}, QStringLiteral("…"), EntryWords::tr("not read"), {}, {}};
}

} // namespace undermark
