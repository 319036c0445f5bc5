// SPDX-License-Identifier: GPL-3.0-or-later
//
// Numbers and units as the screen shows them: the only place of the touch
// screen where a quantity becomes text, or typed text a quantity.
//
// Guarantees (each has a test in tests/app/unit_format_test.cpp):
//  * a distance is rounded down and never below 0: the screen does not promise
//    a kilometre that was not computed;
//  * a spread is rounded up, so that no estimate looks better than it is;
//  * text that was shown is read back as the quantity it shows.
#pragma once

#include "engine/quantity.h"

#include <QString>
#include <optional>

namespace undermark {

struct Units {
    enum class Distances { km, miles } distance = Distances::km;
    enum class Volumes { litres, usGallons, imperialGallons } volume = Volumes::litres;
    enum class Rates {
        litresPer100Km,
        kmPerLitre,
        mpgUs,
        mpgImperial
    } rate = Rates::litresPer100Km;
    friend bool operator==(const Units&, const Units&) = default;

    static Units us() { return {Distances::miles, Volumes::usGallons, Rates::mpgUs}; }
    static Units imperial()
    {
        return {Distances::miles, Volumes::imperialGallons, Rates::mpgImperial};
    }
};

class UnitFormat {
public:
    explicit UnitFormat(Units units = {}) : m_units(units) {}

    QString distanceUnit() const; // "km"
    QString volumeUnit() const;   // "L"
    QString rateUnit() const;     // "L/100 km"

    Distance oneUnit() const;                           // 1 km, or 1 mile
    double inUnit(Distance d) const;                    // a bare number of distanceUnit()
    QString distance(Distance d) const;                 // "148"
    QString distanceWithUnit(Distance d) const;         // "148 km"
    QString volume(Volume v) const;                     // "13.8"
    QString volume(const Estimate<Volume>& v) const;    // "13.8 ± 0.9 L"
    QString rate(const Estimate<Consumption>& c) const; // "8.1 ± 0.4 L/100 km"

    // For the number pad: plain digits with a point, as they would be typed.
    QString typed(Volume v) const;
    QString typed(Distance d) const;
    QString typedPrice(double perLitre) const;

    // Empty where the text is not a finite number of 0 or more.
    std::optional<Volume> volumeFrom(const QString& text) const;
    std::optional<Distance> distanceFrom(const QString& text) const;
    std::optional<double> pricePerLitreFrom(const QString& text) const;

private:
    double inUnit(Volume v) const;
    double inUnit(Consumption c) const;
    double litresPerUnit() const;

    Units m_units;
};

} // namespace undermark
