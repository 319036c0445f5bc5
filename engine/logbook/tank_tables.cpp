// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tables of tanks: further ones, calibrations, and calibrations that were tried.
#include "engine/logbook/record_tables.h"
#include "engine/logbook/sender_columns.h"

namespace undermark::logbook {

namespace {

constexpr auto kPredicted = [](auto& level) -> auto& { return level.predicted.mean; };
constexpr auto kPredictedSd = [](auto& level) -> auto& { return level.predicted.sd; };

const char* const kWholeShape =
    "(shape IS NULL) + (shape_width_m IS NULL) + (shape_height_m IS NULL) + "
    "(shape_length_m IS NULL) + (shape_corner_m IS NULL) + (shape_tilt_deg IS NULL) + "
    "(shape_floor_signal IS NULL) + (shape_roof_signal IS NULL) IN (0, 8)";

// What was poured or measured, and read.
template <class P>
std::vector<Column<P>> pointColumns()
{
    using C = ColumnOf<P>;
    return {C::template count<&P::position>("position", kPlace, "position").inTables({}),
            C::template number<&P::added, InLitres>("added_l", kFromZero, "added").as("total_l"),
            C::template number<&P::signal, InSenderUnit>("signal", kAny, "signal"),
            C::template number<&P::signal2, InSenderUnit>("signal2", kAny, "signal2"),
            C::template number<&P::signalSd, InSenderUnit>("signal_sd", kFromZero, "signal sd"),
            C::template count<&P::readings>("readings", kReadingCount, "readings")
                .typed(kTypedReadingCount)
                .withDefault()};
}

} // namespace

template <>
const Table<Calibration>& tableOf<Calibration>()
{
    using C = ColumnOf<Calibration>;
    using S = StatedShape;
    constexpr auto kShape = &Calibration::shape;
    static const Table<Calibration> calibrations = table<Calibration>(
        "calibration", "calibrations",
        {C::time<&Calibration::time>("time", kPossibleTime, "time").as("date"),
         C::number<&Calibration::zeroMark, InLitres>("zero_mark_l", kFromZero, "zero mark")
             .as("zero_at_l"),
         C::text<&Calibration::tank>("tank", "tank"),
         C::within<&Calibration::lobes, &LobeVolumes::first, InLitres>("first_lobe_l", kOverZero,
                                                                      "first lobe"),
         C::within<&Calibration::lobes, &LobeVolumes::second, InLitres>("second_lobe_l", kOverZero,
                                                                       "second lobe"),
         C::wordWithin<kShape, &S::form>("shape"),
         C::within<kShape, &S::width, InMetres>("shape_width_m", kOverZero, "width"),
         C::within<kShape, &S::height, InMetres>("shape_height_m", kOverZero, "height"),
         C::within<kShape, &S::length, InMetres>("shape_length_m", kOverZero, "length"),
         C::within<kShape, &S::corner, InMetres>("shape_corner_m", kFromZero, "corner"),
         C::within<kShape, &S::tiltDegrees, AsItIs>("shape_tilt_deg", kAny, "tilt"),
         C::within<kShape, &S::atFloor, InSenderUnit>("shape_floor_signal", kAny, "signal at the floor"),
         C::within<kShape, &S::atRoof, InSenderUnit>("shape_roof_signal", kAny, "signal at the roof"),
         C::text<&Calibration::note>("note", "note"),
         C::time<&Calibration::zeroSince>("zero_since", kPossibleTime, "zero since")},
        {bothOrNeither("first_lobe_l", "second_lobe_l"), kWholeShape});
    return calibrations;
}

template <>
const Table<PlacedPoint>& tableOf<PlacedPoint>()
{
    static const Table<PlacedPoint> points = table<PlacedPoint>(
        "calibration", "calibration_points", pointColumns<PlacedPoint>(), {}, "calibrations");
    return points;
}

template <>
const Table<VerificationRecord>& tableOf<VerificationRecord>()
{
    using V = VerificationRecord;
    using C = ColumnOf<V>;
    static const Table<V> verifications = table<V>(
        "verification", "verifications",
        {C::time<&V::time>("time", kPossibleTime, "time").as("date"),
         C::number<&V::measuredSd, InLitres>("measured_sd_l", kFromZero, "measured sd"),
         C::number<&V::confidence, AsShare>("confidence", kShare, "confidence"),
         C::flag<&V::passed>("passed"),
         C::text<&V::tank>("tank", "tank"),
         C::text<&V::note>("note", "note")});
    return verifications;
}

template <>
const Table<PlacedLevel>& tableOf<PlacedLevel>()
{
    using C = ColumnOf<PlacedLevel>;
    const auto columns = [] {
        auto all = pointColumns<PlacedLevel>();
        all.push_back(C::number<kPredicted, InLitres>("predicted_l", kAny, "predicted"));
        all.push_back(C::number<kPredictedSd, InLitres>("predicted_sd_l", kFromZero, "predicted sd"));
        all.push_back(C::flag<&PlacedLevel::agrees>("agrees"));
        return all;
    };
    static const Table<PlacedLevel> levels = table<PlacedLevel>(
        "verification", "verification_levels", columns(), {}, "verifications");
    return levels;
}

template <>
const Table<ExtraTank>& tableOf<ExtraTank>()
{
    using T = ExtraTank;
    using C = ColumnOf<T>;
    static const Table<T> tanks = table<T>(
        "tank", "tanks",
        {C::text<&T::name>("name", "name").as("tank"),
         C::number<&T::capacity, InLitres>("capacity_l", kOverZero, "capacity"),
         C::word<&T::feed>("feed"),
         C::number<&T::transfer, InLitresPerMinute>("transfer_l_per_min", kOverZero, "transfer"),
         C::mean<&T::leftBehind, InLitres>("left_behind_l", kFromZero, "left behind"),
         C::sd<&T::leftBehind, InLitres>("left_behind_sd_l", kFromZero, "left behind sd"),
         C::mean<&T::unusable, InLitres>("unusable_l", kFromZero, "unusable"),
         C::sd<&T::unusable, InLitres>("unusable_sd_l", kFromZero, "unusable sd"),
         C::number<&T::zeroMark, InLitres>("zero_mark_l", kFromZero, "zero mark").as("zero_at_l"),
         SenderColumns<T>::circuit(),
         SenderColumns<T>::unit(),
         SenderColumns<T>::supply(),
         SenderColumns<T>::pullUp(),
         SenderColumns<T>::resolution(),
         C::time<&T::zeroSince>("zero_since", kPossibleTime, "zero since")},
        {bothOrNeither("left_behind_l", "left_behind_sd_l"),
         bothOrNeither("unusable_l", "unusable_sd_l")});
    return tanks;
}

} // namespace undermark::logbook
