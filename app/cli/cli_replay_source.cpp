// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_replay.h"

#include "app/cli/cli_command.h"
#include "engine/calibration/calibrate.h"
#include "engine/tables/points_csv.h"
#include "engine/tracking/sender_reading.h"

#include <cmath>

namespace undermark {

namespace {

// A lobe whose signal no float can give makes the whole reading one.
LevelObservation observeSaddle(const SaddleCurves& saddle, Signal first, Signal second)
{
    const LevelObservation a = observe(saddle.first, first), b = observe(saddle.second, second);
    for (const LevelObservation& lobe : {a, b})
        if (lobe.kind == ReadingKind::tooLow || lobe.kind == ReadingKind::tooHigh)
            return lobe;
    const LevelReading both = readSaddle(saddle, first, second);
    const ReadingKind kind = both.bound == LevelBound::exact ? ReadingKind::exact
        : both.bound == LevelBound::atMost                   ? ReadingKind::atMost
                                                             : ReadingKind::atLeast;
    return {kind, both.added, a.flat + b.flat};
}

} // namespace

std::optional<LevelObservation> ReplaySource::read(const SampleRow& row) const
{
    if (!row.signal || (saddle && !row.signal2))
        return std::nullopt;
    LevelObservation seen = saddle ? observeSaddle(*saddle, *row.signal, *row.signal2)
                                   : observe(*curve, *row.signal);
    if (seriesSpread > Volume())
        seen.level.sd = Volume::fromLitres(
            std::hypot(seen.level.sd.litres(), seriesSpread.litres()));
    return seen;
}

TrackerSettings ReplaySource::settings() const
{
    TrackerSettings out = trackerSettings(saddle ? saddle->first : *curve);
    if (saddle) {
        const TrackerSettings other = trackerSettings(saddle->second);
        out.lowest += other.lowest;
        out.highest += other.highest;
    }
    return out;
}

namespace {

Result<ReplaySource> calibratedSource(const std::filesystem::path& file)
{
    const Result<PointsFile> points = readPoints(file);
    if (!points)
        return fail(points.error());
    for (const Sentence& warning : points->warnings)
        warn(warning);
    ReplaySource sender;
    if (std::ranges::all_of(points->points, [](const auto& p) { return p.signal2.has_value(); })) {
        Result<SaddleCurves> saddle = fitSaddle(points->points);
        if (!saddle) {
            saddle.error().where.file = file.string();
            return fail(saddle.error());
        }
        sender.saddle = std::move(*saddle);
        return sender;
    }
    Result<CalibrationFit> fit = fitCalibration(points->points, Sender{});
    if (!fit)
        return fail(fit.error());
    for (const Finding& finding : fit->findings)
        if (finding.severity != Severity::info)
            warn(finding.text);
    if (!fit->curve)
        return fail(ErrorCode::badInput, Sentence::just("this calibration gives no curve"),
                    {file.string()});
    sender.curve = std::move(*fit->curve);
    return sender;
}

} // namespace

Result<ReplaySource> levelSource(const ReplayOptions& options)
{
    if (const auto sound = checkShapeFlags(options.shape); !sound)
        return fail(sound.error());
    if (options.shape.given() != options.calibration.empty())
        return wrongUse("the level needs a calibration, or the tank's shape",
                        "either --calibration or --shape");
    const Result<Volume> spread = seriesSpreadFrom(options.lobe1, options.lobe2);
    if (!spread)
        return fail(spread.error());
    if (options.shape.given()) {
        Result<LevelCurve> curve = priorCurveFrom(options.shape);
        if (!curve)
            return fail(curve.error());
        ReplaySource source;
        source.curve = std::move(*curve);
        source.prior = true;
        source.seriesSpread = *spread;
        return source;
    }
    Result<ReplaySource> source = calibratedSource(options.calibration);
    if (source)
        source->seriesSpread = *spread;
    return source;
}

} // namespace undermark
