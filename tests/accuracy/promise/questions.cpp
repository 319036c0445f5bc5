// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/accuracy/promise/questions.h"

#include <ctime>

namespace undermark::test {

namespace {

// What one car is asked at one time, and what came true of it.
class Questions {
public:
    Questions(Owner& owner, const Run& run, Cost& cost) : m_owner(owner), m_run(run), m_cost(cost) {}

    std::vector<Answer> answers()
    {
        Knowledge car = learnt();
        if (m_owner.fills() > 0) {
            ask(*car, Asked::fullToZero, Asked::fullToDry, {}, 0.0);
        } else {
            Question stated;
            const Volume capacity = car->vehicle().capacity;
            stated.usable = Estimate<Volume>{capacity, capacity * 0.03};
            ask(*car, Asked::fullToZero, Asked::fullToDry, stated, 0.0);
        }
        addPast(*car);
        m_owner.setTime(m_run.partTime);
        car = m_owner.car().knowledge().value();   // nothing new, but another day
        if (m_owner.fills() > 0) {
            Question odometer;
            odometer.odometer = Distance::fromKm(m_owner.odometerKm() + m_run.partKm);
            ask(*car, Asked::odometerToZero, Asked::odometerToDry, odometer, m_run.partKm);
            // On the day of the fill itself the log answers as it stands.
            if (const auto later = outlook(*car, {}); later && later->unlogged && later->unlogged->road)
                ask(*car, Asked::dateToZero, Asked::dateToDry, {}, m_run.partKm);
        }
        Question reading;
        reading.signal = Signal::of(m_run.readAtRest);
        ask(*car, Asked::restToZero, Asked::restToDry, reading, m_run.partKm);
        reading.signal = Signal::of(m_run.readMoving);
        reading.motion = Motion::moving;
        ask(*car, Asked::movingToZero, std::nullopt, reading, m_run.partKm);
        return std::move(m_answers);
    }

private:
    static double since(std::clock_t start) { return double(std::clock() - start) / CLOCKS_PER_SEC; }

    Knowledge learnt()
    {
        const auto start = std::clock();
        Knowledge car = m_owner.car().knowledge().value();
        m_cost.learntSeconds += since(start);
        ++m_cost.learnt;
        return car;
    }
    void ask(const CarKnowledge& car, Asked zero, std::optional<Asked> dry, const Question& question, double drivenKm)
    {
        const auto start = std::clock();
        const Result<Outlook> outlook = undermark::outlook(car, question);
        const auto promised = [&](const RangeLaw& law) { return std::optional(distances(law)); };
        m_answers.push_back({zero, outlook ? promised(outlook->toZero) : std::nullopt, m_run.toZeroKm - drivenKm});
        if (dry)
            m_answers.push_back({*dry, outlook ? promised(outlook->toDry) : std::nullopt, m_run.toDryKm - drivenKm});
        m_cost.askedSeconds += since(start);
        ++m_cost.asked;
    }
    void addPast(const CarKnowledge& car)
    {
        const Result<Distances> past = pastZero(car, {});
        m_answers.push_back({Asked::past, past ? std::optional(*past) : std::nullopt,
                             std::max(0.0, m_run.toDryKm - m_run.toZeroKm)});
    }

    Owner& m_owner;
    Run m_run;
    Cost& m_cost;
    std::vector<Answer> m_answers;
};

} // namespace

std::vector<Answer> askAll(Owner& owner, const Run& run, Cost& cost)
{
    return Questions(owner, run, cost).answers();
}

} // namespace undermark::test
