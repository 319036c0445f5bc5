// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/outlook/levels_of_tanks.h"

#include "engine/outlook/outlook.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace undermark {

namespace {

constexpr double kMostSds = 2.0; // by which the log may miss what was read
constexpr double kFloorsShare = 0.03;
constexpr double kShapesShare = 0.30;

Estimate<Volume> plus(Estimate<Volume> a, Estimate<Volume> b)
{
    return {a.mean + b.mean, Volume::fromLitres(std::hypot(a.sd.litres(), b.sd.litres()))};
}

// Of the tank beside one that is told and that it shares its level with.
Level besideOwn(const CarKnowledge& own, const Level& level, const CarKnowledge& tank)
{
    const Estimate<Volume> holds = tank.reserve.usableCapacity();
    const Volume ofOwn = own.reserve.usableCapacity().mean;
    const double share = std::clamp(level.usable.mean / ofOwn, 0.0, 1.0);
    const double unlike = kFloorsShare + kShapesShare * share * (1.0 - share);
    const Estimate<Volume> usable{
        share * holds.mean, Volume::fromLitres(std::hypot(unlike * holds.mean.litres(), share * holds.sd.litres(),
                                                          (level.usable.sd / ofOwn) * holds.mean.litres()))};
    const Estimate<Volume> reserve = tank.reserve.reserve();
    Level beside;
    beside.usable = usable;
    beside.aboveZero = plus({usable.mean - reserve.mean, usable.sd}, {Volume(), reserve.sd});
    return beside;
}

// The tanks that something is known of now, and those that nothing is.
class TankSum {
public:
    void add(const std::string& tank, const Level& level)
    {
        m_known.usable = plus(m_known.usable, level.usable);
        m_known.aboveZero = plus(m_known.aboveZero, level.aboveZero);
        m_known.tanks.push_back({tank, level.usable});
    }

    void addUnknown(const HiddenReserve& tank)
    {
        m_unknown = plus(m_unknown, tank.usableCapacity());
        m_hidden = plus(m_hidden, tank.reserve());
        ++m_unknownCount;
    }

    bool isAll() const { return m_unknownCount == 0; }
    bool isNone() const { return m_known.tanks.empty(); }

    Level known() const
    {
        Level level = m_known;
        level.source = LevelSource::signal;
        level.why = Sentence::of("the tanks read");
        return level;
    }

    // With so much in those that are not known.
    Level with(Estimate<Volume> rest) const
    {
        Level level = known();
        level.usable = plus(level.usable, rest);
        level.aboveZero = plus(level.aboveZero, plus({rest.mean - m_hidden.mean, rest.sd}, {Volume(), m_hidden.sd}));
        return level;
    }

    // The log (`now` litres are left by it), as far as what was read lets it be so.
    Level heldTo(Level log, Estimate<Volume> now) const
    {
        const auto away = [&](Volume from, Volume sd) {
            return (now.mean - from).litres() / std::hypot(now.sd.litres(), sd.litres());
        };
        const Estimate<Volume> all = plus(m_known.usable, m_unknown);
        if (away(m_known.usable.mean, m_known.usable.sd) < -kMostSds)
            return with({});
        if (away(all.mean, all.sd) > kMostSds)
            return with(m_unknown);
        log.tanks = m_known.tanks;
        return log;
    }

    // Anything from nothing to full, or to what would make `most` of all tanks.
    Level anything(std::optional<Volume> most) const
    {
        Volume top = m_unknown.mean;
        if (most)
            top = std::clamp(*most - m_known.usable.mean, Volume(), top);
        return with({0.5 * top, Volume::fromLitres(std::hypot(top.litres() / std::sqrt(12.0), m_unknown.sd.litres()))});
    }

private:
    Level m_known;
    Estimate<Volume> m_unknown{};
    Estimate<Volume> m_hidden{};
    int m_unknownCount = 0;
};

Question questionOf(const TankTold& told, const Question& question)
{
    Question ofTank;
    ofTank.signal = told.signal;
    ofTank.signal2 = told.signal2;
    ofTank.usable = told.usable;
    ofTank.followed = told.followed;
    ofTank.signalSd = told.signalSd ? told.signalSd : question.signalSd;
    ofTank.motion = question.motion;
    ofTank.now = question.now;
    return ofTank;
}

Question questionOfOwn(const Question& question)
{
    Question own = question;
    own.tanks.clear();
    if (const auto told = question.tanks.find(std::string()); told != question.tanks.end())
        own.usable = told->second.usable;
    return own;
}

Result<void> checkNames(const CarKnowledge& car, const Question& question)
{
    for (const auto& [name, told] : question.tanks)
        if (!name.empty() && !car.tank(name))
            return fail(ErrorCode::notFound, Sentence::of("the vehicle has no tank of this name"), {.column = "tank"},
                        {}, name);
    return {};
}

// What is told of each, or follows from the vehicle's own.
Result<TankSum> sumOf(const CarKnowledge& car, const Question& question, std::vector<Sentence>& warnings)
{
    TankSum sum;
    // Each tank's own reserve: a level of one tank knows nothing of the others.
    CarKnowledge alone = car;
    alone.further.clear();
    const auto own = toldLevel(alone, questionOfOwn(question), warnings);
    if (!own)
        return fail(own.error());
    if (*own)
        sum.add({}, **own);
    else
        sum.addUnknown(car.reserve);
    for (std::size_t i = 0; i < car.further.size(); ++i) {
        const CarKnowledge& tank = car.further[i];
        const std::string& name = car.log.tanks[i].value.name;
        const auto told = question.tanks.find(name);
        const auto level = told == question.tanks.end()
            ? Result<std::optional<Level>>(std::nullopt)
            : toldLevel(tank, questionOf(told->second, question), warnings);
        if (!level)
            return fail(level.error());
        if (*level)
            sum.add(name, **level);
        else if (tank.feed == TankFeed::shared && *own)
            sum.add(name, besideOwn(car, **own, tank));
        else if (tank.inUse)
            sum.addUnknown(tank.reserve);
    }
    return sum;
}

} // namespace

bool hasSeveralTanks(const CarKnowledge& car, const Question& question)
{
    return !question.tanks.empty()
        || std::ranges::any_of(car.further, [](const CarKnowledge& tank) { return tank.inUse.has_value(); });
}

std::optional<Sentence> whatWouldTeach(const CarKnowledge& car)
{
    std::string others;
    for (const Entry<ExtraTank>& tank : car.log.tanks)
        if (const CarKnowledge* known = car.tank(tank.value.name);
            known && known->inUse && known->feed != TankFeed::shared)
            others += (others.empty() ? "" : ", ") + tank.value.name;
    if (others.empty())
        return std::nullopt;
    int ofOwn = 0;
    for (std::size_t i = car.fills.size(); i-- > 0;) {
        if (car.fills[i].extent != FillExtent::partial)
            break;
        const Fill& logged = car.log.fills[i].value;
        ofOwn += !logged.tank && logged.extent != FillExtent::partial;
    }
    if (ofOwn < 2)
        return std::nullopt;
    return Sentence::of("%1 full fills taught nothing of consumption: what is burnt shows only between two halts at "
                        "which every tank is filled to the first click, %2 too",
                        counted(std::size_t(ofOwn)), others);
}

Result<Level> levelOfTanks(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                           const RateModel& rates, std::vector<Sentence>& warnings)
{
    if (const auto sound = checkNames(car, question); !sound)
        return fail(sound.error());
    const Result<TankSum> sum = sumOf(car, question, warnings);
    if (!sum)
        return fail(sum.error());
    if (sum->isNone())
        return levelByLog(car, question, learnt, rates, warnings);
    if (sum->isAll())
        return sum->known();
    std::vector<Sentence> ofTheLog;
    const Result<Level> log = levelByLog(car, question, learnt, rates, ofTheLog);
    if (!log)
        return sum->anything(std::nullopt);
    JointLaw law;
    law.rates = rates;
    law.driven = roadSince(*log, rates);
    const Estimate<Volume> left = law.now(log->usable);
    if (!question.odometer)
        return sum->anything(left.mean);
    warnings.insert(warnings.end(), ofTheLog.begin(), ofTheLog.end());
    return sum->heldTo(*log, left);
}

} // namespace undermark
