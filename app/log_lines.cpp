// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/log_lines.h"

#include "app/mode_name.h"
#include "app/sentence_text.h"

#include <QCoreApplication>
#include <QDateTime>
#include <algorithm>

namespace undermark {

namespace {

struct LogWords {
    Q_DECLARE_TR_FUNCTIONS(LogWords)
};

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

LogLine fillLine(const CarKnowledge& car, const FillIndex& fills, std::size_t index,
                 const UnitFormat& format)
{
    const Fill& fill = car.log.fills[index].value;
    LogLine line;
    line.value = fillSummary(fill, format);
    QStringList parts;
    if (const Interval* stretch = fills.stretch(car, index)) {
        const Consumption rate = stretch->burnt.mean / stretch->distance;
        parts.append(format.rate({rate, {}}));
    }
    if (fill.odometer)
        parts.append(format.distanceWithUnit(*fill.odometer));
    else if (fill.sinceLast)
        parts.append(LogWords::tr("trip %1").arg(format.distanceWithUnit(*fill.sinceLast)));
    if (fill.counted)
        parts.append(*fill.counted ? LogWords::tr("counts, as you ruled")
                                   : LogWords::tr("left out, as you ruled"));
    line.detail = joined(parts);
    if (const FillFlag* flag = fills.flag(car, index))
        line.flag = causeText(flag->cause);
    return line;
}

QString calibrationSummary(const Calibration& calibration, const UnitFormat& format)
{
    return LogWords::tr("levels: %1, zero at %2")
        .arg(int(calibration.points.size()))
        .arg(format.volume({calibration.zeroMark, {}}));
}

template <class T>
void append(std::vector<LogRef>& refs, LogKind kind, const std::vector<Entry<T>>& entries)
{
    for (std::size_t i = 0; i < entries.size(); ++i)
        refs.push_back({kind, i, entries[i].value.time});
}

} // namespace

FillIndex::FillIndex(const CarKnowledge& car)
    : m_stretch(car.log.fills.size(), -1), m_flag(car.log.fills.size(), -1)
{
    for (std::size_t i = 0; i < car.consumption.intervals.size(); ++i)
        m_stretch.at(car.consumption.intervals[i].lastFill) = int(i);
    for (std::size_t i = 0; i < car.consumption.flags.size(); ++i)
        m_flag.at(car.consumption.flags[i].fill) = int(i);
}

const Interval* FillIndex::stretch(const CarKnowledge& car, std::size_t fill) const
{
    const int at = m_stretch.at(fill);
    return at < 0 ? nullptr : &car.consumption.intervals[std::size_t(at)];
}

const FillFlag* FillIndex::flag(const CarKnowledge& car, std::size_t fill) const
{
    const int at = m_flag.at(fill);
    return at < 0 ? nullptr : &car.consumption.flags[std::size_t(at)];
}

std::vector<LogRef> logRefs(const VehicleLog& log, std::optional<LogKind> kind)
{
    std::vector<LogRef> refs;
    if (!kind || *kind == LogKind::fill)
        append(refs, LogKind::fill, log.fills);
    if (!kind || *kind == LogKind::trip)
        append(refs, LogKind::trip, log.trips);
    if (!kind || *kind == LogKind::proof)
        append(refs, LogKind::proof, log.proofs);
    if (log.calibration && (!kind || *kind == LogKind::calibration))
        refs.push_back({LogKind::calibration, 0, log.calibration->value.time});
    std::ranges::stable_sort(refs, [](const LogRef& a, const LogRef& b) { return a.time > b.time; });
    return refs;
}

LogLine logLine(const CarKnowledge& car, const FillIndex& fills, const LogRef& ref,
                const UnitFormat& format)
{
    LogLine line;
    switch (ref.kind) {
    case LogKind::fill:
        line = fillLine(car, fills, ref.index, format);
        break;
    case LogKind::trip: {
        const Trip& trip = car.log.trips[ref.index].value;
        line.value = format.distanceWithUnit(trip.distance);
        line.detail = modeName(trip.mode);
        break;
    }
    case LogKind::proof: {
        line.value = proofSummary(car.log.proofs[ref.index].value, format);
        for (const ProofFlag& flag : car.proofFlags)
            if (flag.proof == ref.index)
                line.flag = sentenceText(flag.text, format);
        break;
    }
    case LogKind::calibration:
        line.value = calibrationSummary(car.log.calibration->value, format);
        break;
    }
    line.date = dateText(ref.time);
    line.kind = kindName(ref.kind);
    return line;
}

} // namespace undermark
