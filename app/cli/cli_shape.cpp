// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_shape.h"

#include "app/cli/cli_command.h"
#include "engine/calibration/lobes.h"

namespace undermark {

namespace {

Result<void> need(const std::optional<double>& value, const char* flag)
{
    if (value)
        return {};
    return wrongUse("the tank's shape is not complete", flag);
}

// A cylinder is told by its radius, the others by width and height.
Result<TankDimensions> dimensionsFrom(const ShapeFlags& flags)
{
    TankDimensions out;
    const auto metres = [](const std::optional<double>& m) { return Distance::fromMetres(m.value_or(0.0)); };
    if (const auto length = need(flags.lengthM, "--length-m"); !length)
        return fail(length.error());
    out.length = metres(flags.lengthM);
    out.tiltDegrees = flags.tiltDegrees.value_or(0.0);
    if (flags.form == "cylinder") {
        if (const auto radius = need(flags.radiusM, "--radius-m"); !radius)
            return fail(radius.error());
        out.form = TankForm::cylinder;
        out.width = out.height = 2.0 * metres(flags.radiusM);
        return out;
    }
    if (const auto width = need(flags.widthM, "--width-m"); !width)
        return fail(width.error());
    if (const auto height = need(flags.heightM, "--height-m"); !height)
        return fail(height.error());
    out.form = flags.form == "box" ? TankForm::roundedBox : TankForm::ellipse;
    out.width = metres(flags.widthM);
    out.height = metres(flags.heightM);
    out.corner = metres(flags.radiusM);
    return out;
}

} // namespace

void addShapeFlags(CLI::App& command, ShapeFlags& flags)
{
    addChoice(command, "--shape", flags.form, {"box", "cylinder", "ellipse"},
              "no pours yet: a prior from the tank's shape, lying on its side");
    addNumber(command, "--width-m", flags.widthM, kPositive, "its inside width, m");
    addNumber(command, "--height-m", flags.heightM, kPositive, "its inside height, m");
    addNumber(command, "--length-m", flags.lengthM, kPositive, "its inside length, m");
    addNumber(command, "--radius-m", flags.radiusM, kPositive,
              "radius of the cylinder, or of the box's long edges (0), m");
    addNumber(command, "--tilt-deg", flags.tiltDegrees, kAnyNumber,
              "tilt of its length, degrees (0)");
    addNumber(command, "--empty-signal", flags.emptySignal, kAnyNumber,
              "signal with the float on the floor");
    addNumber(command, "--full-signal", flags.fullSignal, kAnyNumber,
              "signal with the float under the roof");
}

Result<void> checkShapeFlags(const ShapeFlags& flags)
{
    const bool loose = flags.widthM || flags.heightM || flags.lengthM || flags.radiusM
        || flags.tiltDegrees || flags.emptySignal || flags.fullSignal;
    if (loose && !flags.given())
        return wrongUse("dimensions go with the tank's shape", "--shape box, cylinder or ellipse");
    return {};
}

Result<TankShape> shapeFrom(const ShapeFlags& flags)
{
    const Result<TankDimensions> dimensions = dimensionsFrom(flags);
    if (!dimensions)
        return fail(dimensions.error());
    return TankShape::make(*dimensions);
}

Result<StatedShape> statedShapeFrom(const ShapeFlags& flags)
{
    const Result<TankDimensions> dimensions = dimensionsFrom(flags);
    if (!dimensions)
        return fail(dimensions.error());
    if (const auto empty = need(flags.emptySignal, "--empty-signal"); !empty)
        return fail(empty.error());
    if (const auto full = need(flags.fullSignal, "--full-signal"); !full)
        return fail(full.error());
    return StatedShape{*dimensions, Signal::of(*flags.emptySignal), Signal::of(*flags.fullSignal)};
}

Result<LevelCurve> priorCurveFrom(const ShapeFlags& flags)
{
    const Result<TankShape> shape = shapeFrom(flags);
    const Result<StatedShape> stated = shape ? statedShapeFrom(flags) : fail(shape.error());
    if (!stated)
        return fail(stated.error());
    return priorCurve(*shape, stated->atFloor, stated->atRoof);
}

void addSeriesFlags(CLI::App& command, std::optional<double>& lobe1, std::optional<double>& lobe2)
{
    addNumber(command, "--lobe1-l", lobe1, kPositive,
              "saddle tank, senders wired in series: litres of one lobe");
    addNumber(command, "--lobe2-l", lobe2, kPositive, "and of the other");
}

Result<Volume> seriesSpreadFrom(std::optional<double> lobe1, std::optional<double> lobe2)
{
    if (lobe1.has_value() != lobe2.has_value())
        return wrongUse("a saddle tank has two lobes", "--lobe1-l and --lobe2-l");
    return lobe1 ? seriesSpread(Volume::fromLitres(*lobe1), Volume::fromLitres(*lobe2)) : Volume();
}

} // namespace undermark
