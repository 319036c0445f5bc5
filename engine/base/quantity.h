// SPDX-License-Identifier: GPL-3.0-or-later
//
// One small strong number per physical quantity. The unit is spelled exactly
// twice: going in (`Volume::fromLitres(5)`) and coming out (`v.litres()`).
//
// Guarantees (each has a test in tests/engine/base/quantity_test.cpp):
//  * a default-constructed quantity is exactly zero;
//  * adding or comparing different quantities does not compile;
//  * volume = consumption x distance, and both quotients, are exact in the
//    floating-point operation they stand for (one rounding each);
//  * gallons and miles use the exact definitions of NIST SP 811 / Handbook 44.
// Nothing here allocates, throws or checks ranges: ranges are checked where
// data enters (engine/tables, engine/logbook).
#pragma once

#include <chrono>
#include <cmath>
#include <compare>

namespace undermark {

inline constexpr double kLitresPerUsGallon = 3.785411784;       // exact, NIST HB 44
inline constexpr double kLitresPerImperialGallon = 4.54609;     // exact, NIST HB 44
inline constexpr double kKmPerMile = 1.609344;                  // exact, NIST HB 44

// Arithmetic shared by all quantities; `Q` is the derived class.
template <class Q>
class Quantity {
public:
    friend constexpr Q operator+(Q a, Q b) { return make(a.m_value + b.m_value); }
    friend constexpr Q operator-(Q a, Q b) { return make(a.m_value - b.m_value); }
    friend constexpr Q operator-(Q a) { return make(-a.m_value); }
    friend constexpr Q operator*(Q a, double k) { return make(a.m_value * k); }
    friend constexpr Q operator*(double k, Q a) { return make(k * a.m_value); }
    friend constexpr Q operator/(Q a, double k) { return make(a.m_value / k); }
    friend constexpr double operator/(Q a, Q b) { return a.m_value / b.m_value; }
    friend constexpr Q& operator+=(Q& a, Q b) { return a = a + b; }
    friend constexpr Q& operator-=(Q& a, Q b) { return a = a - b; }
    friend constexpr bool operator==(Q a, Q b) { return a.m_value == b.m_value; }
    friend constexpr auto operator<=>(Q a, Q b) { return a.m_value <=> b.m_value; }
    friend constexpr Q abs(Q a) { return a.m_value < 0 ? -a : a; }
    friend bool isFinite(Q a) { return std::isfinite(a.m_value); }

protected:
    static constexpr Q make(double value)
    {
        Q q;
        q.m_value = value;
        return q;
    }
    double m_value = 0.0;
};

// Litres of fuel, or of tank.
class Volume : public Quantity<Volume> {
public:
    static constexpr Volume fromLitres(double v) { return make(v); }
    static constexpr Volume fromUsGallons(double v) { return make(v * kLitresPerUsGallon); }
    static constexpr Volume fromImperialGallons(double v)
    {
        return make(v * kLitresPerImperialGallon);
    }
    constexpr double litres() const { return m_value; }
    constexpr double usGallons() const { return m_value / kLitresPerUsGallon; }
    constexpr double imperialGallons() const { return m_value / kLitresPerImperialGallon; }
};

// Road distance.
class Distance : public Quantity<Distance> {
public:
    static constexpr Distance fromKm(double v) { return make(v); }
    static constexpr Distance fromMetres(double v) { return make(v / 1000.0); }
    static constexpr Distance fromMiles(double v) { return make(v * kKmPerMile); }
    constexpr double km() const { return m_value; }
    constexpr double metres() const { return m_value * 1000.0; }
    constexpr double miles() const { return m_value / kKmPerMile; }
};

// Fuel per distance ("rate"). Kept in L/km; the reciprocal units (km/L, mpg)
// exist only at the edges, because only litres per distance may be averaged.
class Consumption : public Quantity<Consumption> {
public:
    static constexpr Consumption fromLitresPerKm(double v) { return make(v); }
    static constexpr Consumption fromLitresPer100Km(double v) { return make(v / 100.0); }
    static constexpr Consumption fromKmPerLitre(double v) { return make(1.0 / v); }
    static constexpr Consumption fromMpgUs(double v)
    {
        return make(kLitresPerUsGallon / (v * kKmPerMile));
    }
    static constexpr Consumption fromMpgImperial(double v)
    {
        return make(kLitresPerImperialGallon / (v * kKmPerMile));
    }
    constexpr double litresPerKm() const { return m_value; }
    constexpr double litresPer100Km() const { return m_value * 100.0; }
    constexpr double kmPerLitre() const { return 1.0 / m_value; }
    constexpr double mpgUs() const { return kLitresPerUsGallon / (m_value * kKmPerMile); }
    constexpr double mpgImperial() const
    {
        return kLitresPerImperialGallon / (m_value * kKmPerMile);
    }
};

constexpr Volume operator*(Consumption c, Distance d)
{
    return Volume::fromLitres(c.litresPerKm() * d.km());
}
constexpr Volume operator*(Distance d, Consumption c) { return c * d; }
constexpr Consumption operator/(Volume v, Distance d)
{
    return Consumption::fromLitresPerKm(v.litres() / d.km());
}
constexpr Distance operator/(Volume v, Consumption c)
{
    return Distance::fromKm(v.litres() / c.litresPerKm());
}

// Fuel per time: an engine idling, a pump's delivery.
class FlowRate : public Quantity<FlowRate> {
public:
    static constexpr FlowRate fromLitresPerHour(double v) { return make(v); }
    constexpr double litresPerHour() const { return m_value; }
};

class Speed : public Quantity<Speed> {
public:
    static constexpr Speed fromKmPerHour(double v) { return make(v); }
    constexpr double kmPerHour() const { return m_value; }
};

// A part of a whole, usually 0 to 1 but not bounded (a +10 % allowance is 0.10).
class Fraction : public Quantity<Fraction> {
public:
    static constexpr Fraction fromRatio(double v) { return make(v); }
    static constexpr Fraction fromPercent(double v) { return make(v / 100.0); }
    constexpr double ratio() const { return m_value; }
    constexpr double percent() const { return m_value * 100.0; }
};

// Probability, 0 to 1.
class Probability : public Quantity<Probability> {
public:
    static constexpr Probability of(double v) { return make(v); }
    constexpr double value() const { return m_value; }
};

// A sender's reading in its own unit (V, ohm, %, counts): the unit is a
// property of the vehicle's sender, not of the number.
class Signal : public Quantity<Signal> {
public:
    static constexpr Signal of(double v) { return make(v); }
    constexpr double value() const { return m_value; }
};

class Temperature : public Quantity<Temperature> {
public:
    static constexpr Temperature fromCelsius(double v) { return make(v); }
    constexpr double celsius() const { return m_value; }
};

using Seconds = std::chrono::duration<double>;

// An estimate carries its spread. `sd` is one standard deviation, >= 0.
template <class Q>
struct Estimate {
    Q mean;
    Q sd;
    friend bool operator==(const Estimate&, const Estimate&) = default;
};

} // namespace undermark
