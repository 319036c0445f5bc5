// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/logbook_car.h"

#include "app/car/fill_mend.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

std::vector<std::string> modeNames(const VehicleLog& log)
{
    std::vector<std::string> names;
    for (const Entry<Mode>& mode : log.modes)
        names.push_back(mode.value.name);
    return names;
}

// Warnings of the level, then of the entries that wait for a ruling.
std::vector<Notice> noticesOf(const CarKnowledge& car, const Outlook& now)
{
    std::vector<Notice> notices;
    for (const Sentence& warning : now.warnings)
        notices.push_back({Notice::Severity::warning, warning});
    for (const FillFlag& flag : car.consumption.flags)
        notices.push_back(
            {Notice::Severity::warning, Sentence::of("a fill is kept out: %1", flag.text)});
    for (const ProofFlag& flag : car.proofFlags)
        notices.push_back({Notice::Severity::warning, Sentence::of("a proof: %1", flag.text)});
    for (const Finding& finding : car.gauge.findings())
        if (finding.severity == Severity::error)
            notices.push_back({Notice::Severity::error, finding.text});
    return notices;
}

} // namespace

LogbookCar::LogbookCar(std::optional<Logbook> logbook, std::filesystem::path file,
                       std::optional<EntryId> vehicle, Clock clock)
    : m_logbook(std::move(logbook)), m_file(std::move(file)), m_vehicle(std::move(vehicle)),
      m_clock(std::move(clock))
{
    LogbookCar::writtenElsewhere(); // from here on
}

bool LogbookCar::writtenElsewhere()
{
    const auto version = m_logbook ? m_logbook->dataVersion() : Result<std::int64_t>(m_asked);
    if (!version) // held by another program: it is asked again
        return false;
    return std::exchange(m_asked, *version) != *version;
}

Result<std::shared_ptr<const CarKnowledge>> LogbookCar::knowledge()
{
    if (!m_logbook || !m_vehicle)
        return fail(ErrorCode::notFound, Sentence::of("the logbook has no vehicle yet"));
    const Result<FileState> state = m_logbook->state();
    if (!state)
        return fail(state.error());
    if (!m_known || m_known->log.state != *state) {
        Result<VehicleLog> log = m_logbook->load(*m_vehicle);
        if (!log)
            return fail(log.error());
        Result<CarKnowledge> car = learn(std::move(*log));
        if (!car)
            return fail(car.error());
        m_known = std::make_shared<const CarKnowledge>(std::move(*car));
    }
    return m_known;
}

std::string LogbookCar::modeOrLast(const std::string& mode)
{
    const VehicleLog& log = m_known->log;
    if (!mode.empty())
        m_lastMode = mode;
    else if (m_lastMode.empty())
        m_lastMode = !log.trips.empty() ? log.trips.back().value.mode
            : !log.modes.empty()        ? log.modes.front().value.name
                                        : std::string();
    return m_lastMode;
}

Result<NowState> LogbookCar::now(const std::string& mode)
{
    const auto car = knowledge();
    if (!car)
        return fail(car.error());
    Question question;
    question.mode = modeOrLast(mode);
    Result<Outlook> answer = outlook(**car, question);
    if (!answer)
        return fail(answer.error());
    return NowState{.vehicle = (*car)->vehicle().name,
                    .mode = question.mode,
                    .modes = modeNames((*car)->log),
                    .sinceFill = answer->sinceFill,
                    .aboveZero = answer->aboveZero,
                    .reserve = answer->reserve,
                    .rate = answer->rate,
                    .toZero = answer->toZero,
                    .toDry = answer->toDry,
                    .places = {},
                    .notices = noticesOf(**car, *answer),
                    .why = answer->why};
}

Result<FillDraft> LogbookCar::guessFill()
{
    const auto car = knowledge();
    if (!car)
        return fail(car.error());
    FillDraft draft;
    const VehicleLog& log = (*car)->log;
    if (!log.fills.empty())
        draft.pricePerLitre = log.fills.back().value.pricePerLitre;
    const Result<Outlook> now = outlook(**car, Question{});
    if (!now) {   // a first fill: nothing to guess from but the tank
        draft.litres = (*car)->vehicle().capacity;
        return draft;
    }
    draft.litres = std::max(Volume(), (*car)->reserve.usableCapacity().mean - now->usable.mean);
    const auto last = std::find_if(log.fills.rbegin(), log.fills.rend(), [](const auto& fill) {
        return fill.value.extent != FillExtent::partial;
    });
    if (last != log.fills.rend() && last->value.odometer && now->sinceFill)
        // whole km: that is what an odometer shows
        draft.odometer = Distance::fromKm(std::floor((*last->value.odometer + *now->sinceFill).km()));
    else
        draft.sinceLast = now->sinceFill;
    return draft;
}

Result<FillLesson> LogbookCar::addFill(const FillDraft& draft)
{
    const auto before = knowledge();
    if (!before)
        return fail(before.error());
    FillLesson lesson;
    lesson.rate.before = (*before)->consumption.model.forecast().rate;
    lesson.reserve.before = (*before)->reserve.reserve();

    Fill fill;
    fill.time = m_clock();
    fill.volume = draft.litres;
    fill.extent = draft.extent;
    fill.odometer = draft.odometer;
    fill.sinceLast = draft.sinceLast;
    fill.pricePerLitre = draft.pricePerLitre;
    const Result<EntryId> id = m_logbook->add(*m_vehicle, fill, fill.time);
    if (!id)
        return fail(id.error());
    lesson.entryId = id->uuid;
    m_known.reset();
    const auto after = knowledge();
    if (!after)   // it is stored all the same: say what keeps the answer back
        return lesson.flags.push_back({Notice::Severity::warning, sentenceOf(after.error())}),
               lesson;
    lesson.rate.after = (*after)->consumption.model.forecast().rate;
    lesson.reserve.after = (*after)->reserve.reserve();
    const auto& fills = (*after)->log.fills;
    for (const FillFlag& flag : (*after)->consumption.flags)
        if (fills[flag.fill].id == *id) {
            lesson.flags.push_back({Notice::Severity::warning, flag.text});
            lesson.proposed = mended(fill, flag);
        }
    return lesson;
}

Result<void> LogbookCar::undoFill(const std::string& entryId)
{
    return takeBack(entryId);
}

} // namespace undermark
