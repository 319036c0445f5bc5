// SPDX-License-Identifier: GPL-3.0-or-later
//
// Numbers and units as the screen shows them: the only place of the touch
// screen where a quantity becomes text, or typed text a quantity.
//
// Guarantees (each has a test in tests/app/screen/base/unit_format_test.cpp):
//  * a distance is rounded down and never below 0: the screen does not promise
//    a kilometre that was not computed;
//  * a spread is rounded up, so that no estimate looks better than it is;
//  * text that was shown is read back as the quantity it shows;
//  * typed text has the decimal mark of the locale and no other mark: what could
//    be read in two ways is not read at all.
#pragma once

#include "engine/base/quantity.h"

#include <QLocale>
#include <QString>
#include <optional>

namespace undermark {

struct Units {
    enum class Lengths { km, miles } distance = Lengths::km;
    enum class Volumes { litres, usGallons, imperialGallons } volume = Volumes::litres;
    enum class Rates {
        litresPer100Km,
        kmPerLitre,
        mpgUs,
        mpgImperial
    } rate = Rates::litresPer100Km;
    friend bool operator==(const Units&, const Units&) = default;

    static Units us() { return {Lengths::miles, Volumes::usGallons, Rates::mpgUs}; }
    static Units imperial()
    {
        return {Lengths::miles, Volumes::imperialGallons, Rates::mpgImperial};
    }
};

class UnitFormat {
public:
    // Numbers are written and read as `locale` does, without grouping marks.
    UnitFormat() : UnitFormat(Units()) {}
    // `currency` is the user's word for it, "€"; empty: none is set.
    explicit UnitFormat(Units units, const QLocale& locale = QLocale::c(),
                        const QString& currency = {});

    const Units& units() const { return m_units; }
    const QLocale& locale() const { return m_locale; }
    QString decimalMark() const; // "." or ","
    const QString& currency() const { return m_currency; }
    // The same with another currency; empty: as it is.
    UnitFormat in(const std::string& currency) const;

    QString distanceUnit() const; // "km"
    QString volumeUnit() const;   // "L"
    QString rateUnit() const;     // "L/100 km"
    QString priceUnit() const;    // "€ per L", without a currency "per L"

    Distance oneUnit() const;                           // 1 km, or 1 mile
    double inUnit(Distance d) const;                    // a bare number of distanceUnit()
    double inUnit(Volume v) const;
    double inUnit(Consumption c) const;
    QString number(double value, int decimals) const;   // "2.84", in the locale
    QString distance(Distance d) const;                 // "148"
    QString distanceWithUnit(Distance d) const;         // "148 km"
    QString exactDistance(Distance d) const;            // "41.5 km", rounded, not down
    QString money(double amount) const;                 // "42.86 €", without a currency "42.86"
    QString volume(Volume v) const;                     // "13.8"
    QString volume(const Estimate<Volume>& v) const;    // "13.8 ± 0.9 L"
    QString rate(const Estimate<Consumption>& c) const; // "8.1 ± 0.4 L/100 km"

    // For the number pad: plain digits with a decimal mark, as they would be typed.
    QString typed(Volume v) const;
    QString typed(Distance d) const;
    QString typed(double number, int decimals) const;   // without trailing zeros
    QString typedPrice(double perLitre) const;

    // Empty where the text is not a finite number of 0 or more.
    std::optional<Volume> volumeFrom(const QString& text) const;
    std::optional<Distance> distanceFrom(const QString& text) const;
    std::optional<double> pricePerLitreFrom(const QString& text) const;
    std::optional<double> numberFrom(const QString& text) const;

private:
    QString spread(double sd) const;
    double litresPerUnit() const;

    Units m_units;
    QLocale m_locale;
    QString m_currency;
};

} // namespace undermark
