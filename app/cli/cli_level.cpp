// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_level.h"

#include "app/cli/cli_command.h"
#include "app/cli/cli_logbook.h"
#include "engine/tables/points_csv.h"
#include "engine/tracking/sender_reading.h"

namespace undermark {

namespace {

Result<Gauge> calibratedGauge(const std::filesystem::path& file)
{
    const Result<PointsFile> points = readPoints(file);
    if (!points)
        return fail(points.error());
    for (const Sentence& warning : points->warnings)
        warn(warning);
    Result<Gauge> gauge = Gauge::calibrate(points->points, Sender{});
    if (!gauge) {
        gauge.error().where.file = file.string();
        return gauge;
    }
    for (const Finding& finding : gauge->findings())
        if (finding.severity != Severity::info)
            warn(finding.text);
    if (!gauge->isKnown())
        return fail(ErrorCode::badInput, Sentence::just("this calibration gives no curve"),
                    {file.string()});
    return gauge;
}

Result<Gauge> priorGauge(const ShapeFlags& shape)
{
    Result<LevelCurve> curve = priorCurveFrom(shape);
    if (!curve)
        return fail(curve.error());
    return Gauge::prior(std::move(*curve));
}

Result<Gauge> gaugeFrom(const LevelFlags& flags)
{
    const Result<Volume> spread = seriesSpreadFrom(flags.lobe1, flags.lobe2);
    if (!spread)
        return fail(spread.error());
    const Result<Gauge> gauge = flags.shape.given() ? priorGauge(flags.shape)
                                                      : calibratedGauge(flags.calibration);
    return gauge ? gauge->inSeries(*spread) : gauge;
}

} // namespace

void addLevelFlags(CLI::App& command, LevelFlags& flags)
{
    addPath(command, "--calibration", flags.calibration, "points CSV", "POINTS.csv");
    addShapeFlags(command, flags.shape);
    addSeriesFlags(command, flags.lobe1, flags.lobe2);
}

Result<FollowedLevel> levelFrom(const LevelFlags& flags, const CliContext& context)
{
    if (const auto sound = checkShapeFlags(flags.shape); !sound)
        return fail(sound.error());
    if (flags.shape.given() && !flags.calibration.empty())
        return wrongUse("the level has a calibration and the tank's shape",
                        "either --calibration or --shape");
    if (!flags.given()) {
        Result<Car> car = namedCar(context, OpenMode::readOnly);
        if (!car && car.error().code == ErrorCode::fileAccess) // there is no logbook
            return wrongUse("the level needs a calibration, or the tank's shape",
                            "--calibration, --shape, or a calibrated car in the logbook");
        const Result<Knowledge> known = car ? car->knowledge() : fail(car.error());
        Result<Observation> start = known ? observationOf(**known) : fail(known.error());
        if (!start)
            return fail(start.error());
        return FollowedLevel{std::move(*start), *known};
    }
    Result<Gauge> gauge = gaugeFrom(flags);
    if (!gauge)
        return fail(gauge.error());
    const TrackerSettings settings = trackerSettings(*gauge);
    return FollowedLevel{{std::move(*gauge), settings}, nullptr};
}

} // namespace undermark
