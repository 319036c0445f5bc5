// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/car.h"

#include "app/car/plan_request.h"

#include <utility>

namespace undermark {

Instant systemTime()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

Car::Car(std::filesystem::path file, Clock clock) : m_file(std::move(file)), m_clock(std::move(clock))
{
}

Result<Car> Car::open(const std::filesystem::path& file, OpenMode mode, Clock clock)
{
    auto logbook = Logbook::open(file, mode);
    if (!logbook)
        return fail(logbook.error());
    Car car(file, std::move(clock));
    if (const auto taken = car.take(std::move(*logbook)); !taken)
        return fail(taken.error());
    return car;
}

Car Car::none(std::filesystem::path file, std::optional<Error> why, Clock clock)
{
    Car car(std::move(file), std::move(clock));
    car.m_closed = std::move(why);
    return car;
}

Error Car::why() const
{
    return m_closed.value_or(Error{ErrorCode::notFound, Sentence::of("the logbook has no vehicle yet")});
}

Result<VehicleLog> Car::log() const
{
    return m_logbook && m_vehicle ? m_logbook->load(*m_vehicle) : fail(why());
}

Result<Knowledge> Car::knowledge()
{
    if (!m_logbook || !m_vehicle)
        return fail(why());
    const Result<FileState> state = m_logbook->state();
    if (!state)
        return fail(state.error());
    const auto day = [](Instant time) { return std::chrono::floor<std::chrono::days>(time); };
    if (!m_known || m_known->log.state != *state || day(*m_known->today) != day(time())) {
        Result<CarKnowledge> learnt = learnWith({});
        if (!learnt)
            return fail(learnt.error());
        m_known = std::make_shared<const CarKnowledge>(std::move(*learnt));
    }
    return m_known;
}

Result<CarKnowledge> Car::learnWith(const CorrectionOptions& corrections) const
{
    Result<VehicleLog> all = log();
    Result<CarKnowledge> learnt = all ? learn(std::move(*all), corrections) : fail(all.error());
    if (learnt)
        learnt->today = time();
    return learnt;
}

Result<NowState> Car::now(const std::string& mode)
{
    const auto known = knowledge();
    if (!known)
        return fail(known.error());
    Question question;
    question.mode = mode;
    return nowState(**known, question);
}

Result<Fill> Car::likelyFill(const Question& question, const std::string& tank)
{
    const auto known = knowledge();
    return known ? undermark::likelyFill(**known, m_clock(), question, tank) : Result<Fill>(fail(known.error()));
}

Result<PlanRequest> Car::planRequest(Route route, const Question& question)
{
    const auto known = knowledge();
    if (!known)
        return fail(known.error());
    const auto tank = tankFromCar(**known, question);
    if (!tank)
        return fail(tank.error());
    return undermark::planRequest(std::move(route), *tank);
}

bool Car::writtenElsewhere()
{
    const auto version = m_logbook ? m_logbook->dataVersion() : Result<std::int64_t>(m_asked);
    if (!version) // held by another program: it is asked again
        return false;
    return std::exchange(m_asked, *version) != *version;
}

Result<std::optional<std::int64_t>> Car::newerSchema() const
{
    return m_logbook ? m_logbook->newerSchema() : fail(why());
}

} // namespace undermark
