// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/consumption/judge.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace undermark {

namespace {

constexpr double kRare = 2.3e-3;   // about four standard deviations of the heavy-tailed law
// While few stretches are known nothing is rare; a jump by this factor is asked about.
constexpr std::size_t kFewKnown = 4;
constexpr double kJump = 1.6;
constexpr double kRareOfFew = 0.1;   // so that a short stretch, where litres are few, is none
// Where a slip that leaves a fixed trace would make the stretch ordinary.
constexpr double kRareExplained = 1e-2;
constexpr double kNeckLitres = 6;
constexpr double kCapacityError = 0.05;
// A stretch below this probability stands out; two that make up for each other
// do so alone and do not together.
constexpr double kOddAlone = 0.01;
// Minus the log of how common a slip is against a forgotten fill; judgement.
constexpr double kUnitSlip = 1.5;

// A correction that would explain an odd stretch, and how well.
struct Explanation {
    FillFlag flag;
    double logWeight;    // log of (how common the slip is * density once it is mended)
};

class Judge {
public:
    Judge(const ConsumptionModel& model, const Interval& stretch,
          const std::optional<Volume>& capacity, const Interval* next)
        : m_model(model), m_stretch(stretch), m_capacity(capacity),
          m_probability(model.oddity(stretch).probability),
          m_expected_l(model.expectedLitres(stretch).litres())
    {
        if (next)
            lookAhead(model, *next);
    }

    double probability() const { return m_probability; }
    double factor() const { return std::max(litres() / m_expected_l, m_expected_l / litres()); }

    // Only when likeliest() has run.
    bool explained() const { return m_explained; }

    FillFlag likeliest()
    {
        byUnits();
        byFuel();
        byOdometer();
        FillFlag plain = make(FlagCause::unlikely);
        const double twice = litres() / m_expected_l;
        if (twice > 1.6) {
            plain.cause = FlagCause::twiceTheUsual;
            plain.text = Sentence::of("%1 times the usual consumption: was the fill before really "
                                      "full, and is the distance right?",
                                      amount(twice, 1));
        } else {
            plain.text =
                Sentence::of("%1 where about %2 were expected: please check fuel and distance",
                             amount(m_stretch.burnt.mean), amount(expected()));
        }
        // Unexplained slips are as rare as they are broad.
        add(std::move(plain), -std::log(20.0) - 2);
        const FillFlag best = std::ranges::max_element(m_found, {}, &Explanation::logWeight)->flag;
        m_explained = best.cause == FlagCause::gallonsAsLitres || best.cause == FlagCause::milesAsKm
            || best.cause == FlagCause::wrongOdometer;
        return best;
    }

private:
    double litres() const { return m_stretch.burnt.mean.litres(); }
    Volume expected() const { return Volume::fromLitres(m_expected_l); }

    FillFlag make(FlagCause cause) const
    {
        FillFlag flag;
        flag.fill = m_stretch.lastFill;
        flag.cause = cause;
        flag.probability = probability();
        return flag;
    }

    void add(FillFlag flag, double logWeight) { m_found.push_back({std::move(flag), logWeight}); }

    // Whether this stretch and the next, taken together, are ordinary.
    void lookAhead(const ConsumptionModel& model, const Interval& next)
    {
        Interval both = m_stretch;
        both.end = next.end;
        both.distance += next.distance;
        both.burnt.mean += next.burnt.mean;
        for (const auto& [mode, distance] : next.byMode)
            both.byMode[mode] += distance;
        both.climbed += next.climbed;
        both.climbedOver += next.climbedOver;
        m_nextMakesUp = model.oddity(next).probability < kOddAlone
            && model.oddity(both).probability > kOddAlone;
    }

    void byUnits()
    {
        constexpr std::array kGallons{kLitresPerUsGallon, kLitresPerImperialGallon};
        for (const double perGallon : kGallons) {
            FillFlag flag = make(FlagCause::gallonsAsLitres);
            flag.volume = Volume::fromLitres(litres() * perGallon);
            flag.text = Sentence::of("%1 fit if the number typed was gallons: %2",
                                     amount(m_stretch.burnt.mean), amount(*flag.volume));
            Interval mended = m_stretch;
            mended.burnt.mean = *flag.volume;
            if (fits(*flag.volume))
                add(std::move(flag), logDensity(mended) - kUnitSlip);
        }
        if (!m_stretch.byTripMeter)
            return;   // an odometer in miles would be far off, not by 1.6
        FillFlag flag = make(FlagCause::milesAsKm);
        flag.distance = m_stretch.distance * kKmPerMile;
        flag.text = Sentence::of("%1 fit if the number typed was miles: %2",
                                 amount(m_stretch.distance), amount(*flag.distance));
        Interval mended = m_stretch;
        mended.distance = *flag.distance;
        add(std::move(flag), logDensity(mended) - kUnitSlip);
    }

    // How ordinary a stretch would be, the fuel law of which moves with its litres.
    double logDensity(const Interval& stretch) const { return m_model.oddity(stretch).logDensity; }

    bool fits(Volume volume) const
    {
        return !m_capacity || fitsTank(volume, *m_capacity);
    }

    FillFlag secondCan() const
    {
        FillFlag flag = make(FlagCause::secondCan);
        flag.volume = expected();
        flag.text = Sentence::of("%1 is about %2 more than was burnt: was a can filled as well?",
                                 amount(m_stretch.burnt.mean),
                                 amount(m_stretch.burnt.mean - expected(), 0));
        return flag;
    }

    void byFuel()
    {
        const double more_l = litres() - m_expected_l;
        if (more_l < 0) {   // any amount between a few litres and a tank was possible
            FillFlag flag = make(FlagCause::forgottenFill);
            flag.missing = Volume::fromLitres(-more_l);
            flag.text = Sentence::of(
                "%1 on %2: a fill of about %3 seems to be missing before this one",
                amount(m_stretch.distance), amount(m_stretch.burnt.mean), amount(*flag.missing, 0));
            // What was pumped is then any part of a tank: a density of litres/tank
            // over the log ratio. One tank that would have done needs no other fill.
            const double tank_l = m_capacity ? m_capacity->litres() : 1.5 * m_expected_l;
            const double need = !m_capacity ? 0 : m_expected_l > tank_l ? 2 : -1;
            add(std::move(flag), std::log(std::min(litres() / tank_l, 1.0)) + need);
        } else if (!fits(m_stretch.burnt.mean) ||
                   (m_capacity && fits(expected()) && litres() > m_capacity->litres())) {
            add(secondCan(), -1);
        } else if (more_l >= 4 && more_l <= 25) {
            add(secondCan(), -2);
        }
    }

    void byOdometer()
    {
        if (!m_nextMakesUp)
            return;
        FillFlag flag = make(FlagCause::wrongOdometer);
        flag.distance = m_stretch.distance * (litres() / m_expected_l);
        flag.text =
            Sentence::of("%1 do not fit the fuel, but together with the next stretch they do: "
                         "about %2 would",
                         amount(m_stretch.distance), amount(*flag.distance));
        // The next stretch would look like that by chance once in 1/kOddAlone.
        add(std::move(flag), -std::log(kOddAlone) - kUnitSlip);
    }

    const ConsumptionModel& m_model;
    const Interval& m_stretch;
    const std::optional<Volume>& m_capacity;
    double m_probability;
    double m_expected_l;
    bool m_nextMakesUp = false;
    bool m_explained = false;
    std::vector<Explanation> m_found;
};

} // namespace

const char* causeName(FlagCause cause)
{
    switch (cause) {
    case FlagCause::forgottenFill: return "forgotten fill";
    case FlagCause::secondCan: return "second can";
    case FlagCause::moreThanFits: return "more than fits";
    case FlagCause::wrongOdometer: return "wrong odometer";
    case FlagCause::odometerBackward: return "odometer backward";
    case FlagCause::gallonsAsLitres: return "gallons as litres";
    case FlagCause::milesAsKm: return "miles as km";
    case FlagCause::twiceTheUsual: return "twice the usual";
    case FlagCause::unlikely: return "unlikely";
    }
    return "unlikely";
}

bool fitsTank(Volume pumped, Volume capacity)
{
    return pumped.litres() <= capacity.litres() * (1 + kCapacityError) + kNeckLitres;
}

std::optional<FillFlag> judge(const ConsumptionModel& model, const Interval& stretch,
                              const std::optional<Volume>& capacity, const Interval* next)
{
    Judge judgement(model, stretch, capacity, next);
    const bool jump = model.observed() > 0 && model.observed() < kFewKnown
        && judgement.factor() > kJump && judgement.probability() < kRareOfFew;
    if (judgement.probability() >= kRareExplained && !jump)
        return std::nullopt;
    FillFlag flag = judgement.likeliest();
    if (judgement.probability() >= kRare && !judgement.explained() && !jump)
        return std::nullopt;
    return flag;
}

} // namespace undermark
