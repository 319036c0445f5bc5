// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of app/screen/logbook/log_lines.h: names, dates, and the facts of one entry.
#include "app/screen/base/mode_name.h"
#include "app/screen/logbook/log_lines.h"

#include <QCoreApplication>
#include <QDateTime>

namespace undermark {

namespace {

struct LogWords {
    Q_DECLARE_TR_FUNCTIONS(LogWords)
};

QDateTime local(Instant time)
{
    return QDateTime::fromSecsSinceEpoch(time.time_since_epoch().count());
}

QString proofName(ProofKind kind)
{
    switch (kind) {
    case ProofKind::drained:
        return LogWords::tr("drained");
    case ProofKind::base:
        return LogWords::tr("base poured");
    case ProofKind::stalled:
        return LogWords::tr("stalled");
    case ProofKind::pastZero:
        return LogWords::tr("past zero");
    }
    return {};
}

} // namespace

// Year first: the one way of writing a day that is read alike everywhere.
QString dateText(Instant time)
{
    return local(time).toString(QStringLiteral("yyyy-MM-dd"));
}

QString dateTimeText(Instant time)
{
    return local(time).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

QString kindName(LogKind kind)
{
    switch (kind) {
    case LogKind::fill:
        return LogWords::tr("Fill");
    case LogKind::trip:
        return LogWords::tr("Trip");
    case LogKind::proof:
        return LogWords::tr("Proof");
    case LogKind::calibration:
        return LogWords::tr("Calibration");
    case LogKind::level:
        return LogWords::tr("Level");
    }
    return {};
}

QString extentName(FillExtent extent)
{
    switch (extent) {
    case FillExtent::full:
        return LogWords::tr("full");
    case FillExtent::partial:
        return LogWords::tr("partial");
    case FillExtent::neck:
        return LogWords::tr("to the neck");
    }
    return {};
}

QString causeText(FlagCause cause)
{
    switch (cause) {
    case FlagCause::forgottenFill:
        return LogWords::tr("a fill forgotten?");
    case FlagCause::secondCan:
        return LogWords::tr("a can filled too?");
    case FlagCause::moreThanFits:
        return LogWords::tr("more than fits");
    case FlagCause::wrongOdometer:
        return LogWords::tr("wrong odometer?");
    case FlagCause::odometerBackward:
        return LogWords::tr("odometer lower than before");
    case FlagCause::gallonsAsLitres:
        return LogWords::tr("gallons typed as litres?");
    case FlagCause::milesAsKm:
        return LogWords::tr("miles typed as km?");
    case FlagCause::twiceTheUsual:
        return LogWords::tr("twice the usual");
    case FlagCause::unlikely:
        return LogWords::tr("unlikely");
    }
    return {};
}

QList<Fact> fillFacts(const Fill& fill, const UnitFormat& format)
{
    QList<Fact> facts{{LogWords::tr("put in"), format.volume({fill.volume, {}})},
                      {LogWords::tr("how"), extentName(fill.extent)}};
    if (fill.tank)
        facts.append({LogWords::tr("into the tank"), QString::fromStdString(*fill.tank)});
    if (fill.odometer)
        facts.append({LogWords::tr("odometer"), format.distanceWithUnit(*fill.odometer)});
    if (fill.sinceLast)
        facts.append({LogWords::tr("trip meter"), format.distanceWithUnit(*fill.sinceLast)});
    if (fill.pricePerLitre)
        facts.append({LogWords::tr("price"),
                      format.typedPrice(*fill.pricePerLitre) + u' ' +
                          format.in(fill.currency.value_or(std::string())).priceUnit()});
    if (fill.signalBefore)
        facts.append({LogWords::tr("reading on arrival"), format.typed(fill.signalBefore->value(), 4)});
    if (fill.blend)
        facts.append({LogWords::tr("blend"), QString::fromStdString(*fill.blend)});
    return facts;
}

QList<Fact> tripFacts(const Trip& trip, const UnitFormat& format)
{
    QList<Fact> facts{{LogWords::tr("distance"), format.distanceWithUnit(trip.distance)},
                      {LogWords::tr("driving"), modeName(trip.mode)}};
    if (trip.idle)
        facts.append({LogWords::tr("idling"), LogWords::tr("%1 min").arg(format.number(trip.idle->count(), 0))});
    if (trip.starts)
        facts.append({LogWords::tr("cold starts"), QString::number(*trip.starts)});
    return facts;
}

QList<Fact> proofFacts(const Proof& proof, const UnitFormat& format)
{
    QList<Fact> facts{{LogWords::tr("kind"), proofName(proof.kind)}};
    if (proof.volume)
        facts.append({LogWords::tr("fuel"), format.volume(*proof.volume)});
    if (proof.leftBehind)
        facts.append({LogWords::tr("left behind"), format.volume(*proof.leftBehind)});
    if (proof.distance)
        facts.append({LogWords::tr("past the zero mark"), format.distanceWithUnit(proof.distance->mean)});
    if (proof.mode)
        facts.append({LogWords::tr("driving"), modeName(*proof.mode)});
    return facts;
}

QList<Fact> levelFacts(const LevelRecord& level, const UnitFormat& format)
{
    QList<Fact> facts;
    if (level.signal)
        facts.append({LogWords::tr("reading"), format.typed(level.signal->value(), 4)});
    if (level.signal2)
        facts.append({LogWords::tr("second reading"), format.typed(level.signal2->value(), 4)});
    if (level.usable)
        facts.append({LogWords::tr("usable"), format.volume(*level.usable)});
    if (level.added)
        facts.append({LogWords::tr("since drained"), format.volume(*level.added)});
    if (level.tank)
        facts.append({LogWords::tr("in the tank"), QString::fromStdString(*level.tank)});
    if (level.odometer)
        facts.append({LogWords::tr("odometer"), format.distanceWithUnit(*level.odometer)});
    facts.append({LogWords::tr("kept"), level.origin == LevelOrigin::followed ? LogWords::tr("by the car itself")
                                                                              : LogWords::tr("by you")});
    if (level.note)
        facts.append({LogWords::tr("note"), QString::fromStdString(*level.note)});
    return facts;
}

QString levelSummary(const LevelRecord& level, const UnitFormat& format)
{
    if (level.usable)
        return LogWords::tr("%1 usable").arg(format.volume(*level.usable));
    if (!level.signal)
        return LogWords::tr("%1 since drained").arg(format.volume(level.added.value_or(Estimate<Volume>{})));
    const QString reading = LogWords::tr("reading %1").arg(format.typed(level.signal->value(), 4));
    return level.signal2 ? LogWords::tr("%1, %2").arg(reading, format.typed(level.signal2->value(), 4)) : reading;
}

QString fillSummary(const Fill& fill, const UnitFormat& format)
{
    return LogWords::tr("%1, %2").arg(format.volume({fill.volume, {}}), extentName(fill.extent));
}

QString tripSummary(const Trip& trip, const UnitFormat& format)
{
    return LogWords::tr("%1, %2").arg(format.distanceWithUnit(trip.distance), modeName(trip.mode));
}

QString proofSummary(const Proof& proof, const UnitFormat& format)
{
    if (proof.distance)
        return LogWords::tr("%1, %2").arg(proofName(proof.kind), format.distanceWithUnit(proof.distance->mean));
    const auto& litres = proof.volume ? proof.volume : proof.leftBehind;
    return litres ? LogWords::tr("%1, %2").arg(proofName(proof.kind), format.volume(*litres))
                  : proofName(proof.kind);
}

QString summary(const LogValue& value, const UnitFormat& format)
{
    if (const auto* trip = std::get_if<Trip>(&value))
        return tripSummary(*trip, format);
    if (const auto* proof = std::get_if<Proof>(&value))
        return proofSummary(*proof, format);
    if (const auto* level = std::get_if<LevelRecord>(&value))
        return levelSummary(*level, format);
    const Fill& fill = std::get<Fill>(value);
    const auto km = fill.odometer ? fill.odometer : fill.sinceLast;
    const QString litres = fillSummary(fill, format);
    return km ? litres + QStringLiteral(", ") + format.distanceWithUnit(*km) : litres;
}

} // namespace undermark
