// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_replay.h"

#include "app/cli/cli_command.h"
#include "app/cli/cli_logbook.h"
#include "engine/tables/points_csv.h"

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

Result<Gauge> gaugeFrom(const ReplayOptions& options)
{
    const Result<Volume> spread = seriesSpreadFrom(options.lobe1, options.lobe2);
    if (!spread)
        return fail(spread.error());
    const Result<Gauge> gauge = options.shape.given() ? priorGauge(options.shape)
                                                      : calibratedGauge(options.calibration);
    return gauge ? gauge->inSeries(*spread) : gauge;
}

} // namespace

Result<Observation> observationFrom(const ReplayOptions& options, const CliContext& context)
{
    if (const auto sound = checkShapeFlags(options.shape); !sound)
        return fail(sound.error());
    if (options.shape.given() && !options.calibration.empty())
        return wrongUse("the level has a calibration and the tank's shape",
                        "either --calibration or --shape");
    if (!options.shape.given() && options.calibration.empty()) {
        Result<Car> car = namedCar(context, OpenMode::readOnly);
        if (!car && car.error().code == ErrorCode::fileAccess) // there is no logbook
            return wrongUse("the level needs a calibration, or the tank's shape",
                            "--calibration, --shape, or a calibrated car in the logbook");
        return car ? car->observe() : Result<Observation>(fail(car.error()));
    }
    Result<Gauge> gauge = gaugeFrom(options);
    if (!gauge)
        return fail(gauge.error());
    const TrackerSettings settings = trackerSettings(*gauge);
    return Observation{std::move(*gauge), settings};
}

} // namespace undermark
