// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/unit_format.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

struct UnitNames {
    Q_DECLARE_TR_FUNCTIONS(UnitNames)
};

constexpr double kRoundingSlack = 1e-9; // 148.0 stored as 147.9999999999 is 148

} // namespace

UnitFormat::UnitFormat(Units units, const QLocale& locale, const QString& currency)
    : m_units(units), m_locale(locale), m_currency(currency)
{
    m_locale.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
}

QString UnitFormat::decimalMark() const
{
    return m_locale.decimalPoint();
}

QString UnitFormat::number(double value, int decimals) const
{
    return m_locale.toString(value, 'f', decimals);
}

QString UnitFormat::spread(double sd) const
{
    return number(std::ceil(sd * 10.0 - kRoundingSlack) / 10.0, 1);
}

QString UnitFormat::typed(double value, int decimals) const
{
    QString text = number(value, decimals);
    const QString mark = decimalMark();
    while (text.contains(mark) && (text.endsWith(u'0') || text.endsWith(mark)))
        text.chop(1);
    return text;
}

std::optional<double> UnitFormat::numberFrom(const QString& text) const
{
    bool ok = false;
    const double value = m_locale.toDouble(text, &ok);
    if (!ok || !std::isfinite(value) || value < 0.0)
        return std::nullopt;
    return value;
}

QString UnitFormat::distanceUnit() const
{
    return m_units.distance == Units::Lengths::km ? UnitNames::tr("km") : UnitNames::tr("mi");
}

QString UnitFormat::volumeUnit() const
{
    return m_units.volume == Units::Volumes::litres ? UnitNames::tr("L") : UnitNames::tr("gal");
}

UnitFormat UnitFormat::in(const std::string& currency) const
{
    return currency.empty() ? *this : UnitFormat(m_units, m_locale, QString::fromStdString(currency));
}

QString UnitFormat::priceUnit() const
{
    return m_currency.isEmpty() ? UnitNames::tr("per %1").arg(volumeUnit())
                                : UnitNames::tr("%1 per %2").arg(m_currency, volumeUnit());
}

QString UnitFormat::rateUnit() const
{
    switch (m_units.rate) {
    case Units::Rates::litresPer100Km:
        return UnitNames::tr("L/100 km");
    case Units::Rates::kmPerLitre:
        return UnitNames::tr("km/L");
    case Units::Rates::mpgUs:
    case Units::Rates::mpgImperial:
        return UnitNames::tr("mpg");
    }
    return {};
}

Distance UnitFormat::oneUnit() const
{
    return m_units.distance == Units::Lengths::km ? Distance::fromKm(1) : Distance::fromMiles(1);
}

double UnitFormat::inUnit(Distance d) const
{
    return d / oneUnit();
}

double UnitFormat::litresPerUnit() const
{
    switch (m_units.volume) {
    case Units::Volumes::litres:
        return 1.0;
    case Units::Volumes::usGallons:
        return kLitresPerUsGallon;
    case Units::Volumes::imperialGallons:
        return kLitresPerImperialGallon;
    }
    return 1.0;
}

double UnitFormat::inUnit(Volume v) const
{
    return v.litres() / litresPerUnit();
}

double UnitFormat::inUnit(Consumption c) const
{
    switch (m_units.rate) {
    case Units::Rates::litresPer100Km:
        return c.litresPer100Km();
    case Units::Rates::kmPerLitre:
        return c.kmPerLitre();
    case Units::Rates::mpgUs:
        return c.mpgUs();
    case Units::Rates::mpgImperial:
        return c.mpgImperial();
    }
    return 0.0;
}

QString UnitFormat::distance(Distance d) const
{
    return number(std::max(0.0, std::floor(inUnit(d) + kRoundingSlack)), 0);
}

QString UnitFormat::distanceWithUnit(Distance d) const
{
    return UnitNames::tr("%1 %2").arg(distance(d), distanceUnit());
}

QString UnitFormat::exactDistance(Distance d) const
{
    return UnitNames::tr("%1 %2").arg(number(inUnit(d), 1), distanceUnit());
}

QString UnitFormat::money(double amount) const
{
    const QString text = number(amount, 2);
    return m_currency.isEmpty() ? text : UnitNames::tr("%1 %2").arg(text, m_currency);
}

QString UnitFormat::volume(Volume v) const
{
    return number(inUnit(v), 1);
}

QString UnitFormat::volume(const Estimate<Volume>& v) const
{
    if (v.sd == Volume{})
        return UnitNames::tr("%1 %2").arg(volume(v.mean), volumeUnit());
    return UnitNames::tr("%1 ± %2 %3").arg(volume(v.mean), spread(inUnit(v.sd)), volumeUnit());
}

QString UnitFormat::rate(const Estimate<Consumption>& c) const
{
    const double value = inUnit(c.mean);
    const QString text = number(value, 1);
    // In every unit offered the number is proportional to the rate or to its
    // reciprocal, so the relative spread is the same to first order.
    const double sd = value * (c.sd / c.mean);
    if (!(sd > 0.0))
        return UnitNames::tr("%1 %2").arg(text, rateUnit());
    return UnitNames::tr("%1 ± %2 %3").arg(text, spread(sd), rateUnit());
}

QString UnitFormat::typed(Volume v) const
{
    return typed(inUnit(v), 1);
}

QString UnitFormat::typed(Distance d) const
{
    return typed(inUnit(d), 1);
}

QString UnitFormat::typedPrice(double perLitre) const
{
    return typed(perLitre * litresPerUnit(), 3);
}

std::optional<Volume> UnitFormat::volumeFrom(const QString& text) const
{
    const auto number = numberFrom(text);
    if (!number)
        return std::nullopt;
    return Volume::fromLitres(*number * litresPerUnit());
}

std::optional<Distance> UnitFormat::distanceFrom(const QString& text) const
{
    const auto number = numberFrom(text);
    if (!number)
        return std::nullopt;
    return oneUnit() * *number;
}

std::optional<double> UnitFormat::pricePerLitreFrom(const QString& text) const
{
    const auto number = numberFrom(text);
    if (!number)
        return std::nullopt;
    return *number / litresPerUnit();
}

} // namespace undermark
