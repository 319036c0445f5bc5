// SPDX-License-Identifier: GPL-3.0-or-later
//
// Units and ranges of the logbook's columns, and a table made of columns. Only for the files
// that state the tables (record_tables.cpp, tank_tables.cpp).
#pragma once

#include "engine/logbook/column_of.h"

#include <limits>

namespace undermark::logbook {

inline constexpr double kBillion = 1e9;
inline constexpr double kAboveZero = std::numeric_limits<double>::denorm_min();

inline const ColumnRange kFromZero{0, kBillion, "$ BETWEEN 0 AND 1e9",
                            Sentence::of("a number of 0 or more, up to 1e9")};
inline const ColumnRange kOverZero{kAboveZero, kBillion, "$ > 0 AND $ <= 1e9",
                            Sentence::of("a number above 0, up to 1e9")};
inline const ColumnRange kAny{-kBillion, kBillion, "$ BETWEEN -1e9 AND 1e9",
                       Sentence::of("a number from -1e9 to 1e9")};
inline const ColumnRange kPossibleCelsius{-273.15, kBillion, "$ BETWEEN -273.15 AND 1e9",
                                   Sentence::of("degrees Celsius above absolute zero")};
inline const ColumnRange kShare{0, 1, "$ BETWEEN 0 AND 1", Sentence::of("a number from 0 to 1")};
inline const ColumnRange kLatitude{-90, 90, "$ BETWEEN -90 AND 90", Sentence::of("degrees from -90 to 90")};
inline const ColumnRange kLongitude{-180, 180, "$ BETWEEN -180 AND 180",
                                    Sentence::of("degrees from -180 to 180")};
inline const ColumnRange kStartCount{0, 1'000'000, "$ BETWEEN 0 AND 1000000", Sentence::of("0 to 1000000")};
inline const ColumnRange kTypedStartCount{0, 1000, nullptr, Sentence::of("0 to 1000 starts")};
inline const ColumnRange kPlace{0, kBillion, "$ >= 0", Sentence::of("a number of 0 or more, up to 1e9")};
inline const ColumnRange kReadingCount{1, kBillion, "$ >= 1", Sentence::of("1 or more")};
inline const ColumnRange kTypedReadingCount{1, kBillion, nullptr, Sentence::of("a whole number of 1 or more")};

using Minutes = std::chrono::duration<double, std::ratio<60>>;

inline constexpr auto kSameNumber = [](double number) { return number; };
using InLitres = ColumnUnit<&Volume::fromLitres, &Volume::litres, Measure::volume>;
using InKm = ColumnUnit<&Distance::fromKm, &Distance::km, Measure::distance>;
using InMetres = ColumnUnit<&Distance::fromMetres, &Distance::metres, Measure::number>;
using InLitresPerMinute =
    ColumnUnit<[](double number) { return FlowRate::fromLitresPerHour(60.0 * number); },
               [](FlowRate rate) { return rate.litresPerHour() / 60.0; }, Measure::number>;
using InLitresPerKm =
    ColumnUnit<&Consumption::fromLitresPerKm, &Consumption::litresPerKm, Measure::number>;
using InLitresPer100Km =
    ColumnUnit<&Consumption::fromLitresPer100Km, &Consumption::litresPer100Km, Measure::rate>;
using InSenderUnit = ColumnUnit<&Signal::of, &Signal::value, Measure::number>;
using InCelsius = ColumnUnit<&Temperature::fromCelsius, &Temperature::celsius, Measure::temperature>;
using InMinutes = ColumnUnit<[](double number) { return Minutes(number); }, &Minutes::count,
                             Measure::number>;
using AsShare = ColumnUnit<&Probability::of, &Probability::value, Measure::number>;
using PerLitre = ColumnUnit<kSameNumber, kSameNumber, Measure::pricePerVolume>;
using AsItIs = ColumnUnit<kSameNumber, kSameNumber, Measure::number>;

inline std::string bothOrNeither(const std::string& mean, const std::string& sd)
{
    return "(" + mean + " IS NULL) = (" + sd + " IS NULL)";
}

template <class T>
Table<T> table(const char* kind, const char* name, std::vector<Column<T>> columns,
               std::vector<std::string> checks = {}, const char* partOf = nullptr)
{
    Table<T> made{{kind, name, partOf, std::move(checks), {}}, std::move(columns)};
    made.columns.assign(made.fields.begin(), made.fields.end());
    return made;
}

} // namespace undermark::logbook
