// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_live.h"

#include "app/screen/base/mode_name.h"

#include <algorithm>
#include <utility>

namespace undermark {

namespace {

constexpr Seconds kQuietAfter{3.0};
constexpr Seconds kSilentAfter{10.0};
constexpr Seconds kJumpShownFor{60.0};
constexpr double kPumpSd = 0.005; // of the litres (common practice, no source)

} // namespace

void NowLive::follow(LiveFeed& feed)
{
    m_feed = &feed;
    connect(&feed, &LiveFeed::sampled, this, &NowLive::hear);
    connect(&feed, &LiveFeed::looked, this, &NowLive::lookAtFeed);
}

void NowLive::look(const CarKnowledge& car)
{
    m_modes.clear();
    for (const Entry<Mode>& mode : car.log.modes)
        m_modes.push_back(mode.value.name);
    Followed followed{car.log.vehicle.id.uuid, {}, car.vehicle().sender, {}, {}};
    for (const Entry<ExtraTank>& tank : car.log.tanks) {
        if (const auto* calibration = car.log.latestCalibration(tank.value.name))
            followed.ofOthers.push_back(calibration->value);
        if (const CarKnowledge* known = car.tank(tank.value.name); known && known->inUse)
            followed.others.push_back(tank.value);
    }
    if (car.log.calibration)
        followed.calibration = car.log.calibration->value;
    if (followed == m_followed)
        return lookAtTold(car.log.fills);
    m_followed = std::move(followed);
    m_level.reset();
    m_told.reset();
    if (auto start = observationOf(car))
        m_level.emplace(std::move(*start));
}

// Whoever takes the fill back, or corrects it, on whichever page or in another program.
void NowLive::lookAtTold(const std::vector<Entry<Fill>>& fills)
{
    if (!m_told || !m_level)
        return;
    const auto stands = std::ranges::find(fills, m_told->fill, &Entry<Fill>::id);
    if (stands != fills.end() && stands->value.volume == m_told->litres)
        return;
    m_level->takeBackFill();
    const auto told = std::exchange(m_told, std::nullopt);
    if (stands != fills.end())
        tell(told->fill, stands->value.volume);
    emit changed();
}

void NowLive::hear(const Sample& sample)
{
    if (sample.speed) {
        const std::string before = proposedMode();
        m_stands = sample.speed->kmPerHour() < 1.0;
        m_speedMode.add(sample.time, *sample.speed);
        if (proposedMode() != before)
            emit changed();
    }
    if (!m_level)
        return;
    m_level->take(sample);
    for (const TrackerEvent& event : m_level->takeEvents())
        take(event);
    if (m_level->known() && m_level->worthAsking())
        emit moved();
}

void NowLive::take(const TrackerEvent& event)
{
    switch (event.kind) {
    case TrackerEventKind::refuel:
        emit refuelSeen();
        break;
    case TrackerEventKind::fault:
    case TrackerEventKind::faultCleared:
        break;
    case TrackerEventKind::clockJump:
        m_clockJumpAt = m_feed->now();
        break;
    case TrackerEventKind::gap:
    case TrackerEventKind::correction:
    case TrackerEventKind::transfer:
    case TrackerEventKind::onUpperStop:
    case TrackerEventKind::onLowerStop:
        return;
    }
    emit changed();
}

// Ten times a second: what only the passing of time changes.
void NowLive::lookAtFeed()
{
    const bool asks = refuel().has_value();
    if (std::exchange(m_asks, asks) != asks)
        emit changed();
    if (m_clockJumpAt && (!m_feed->there() || m_feed->now() - *m_clockJumpAt > kJumpShownFor)) {
        m_clockJumpAt.reset();
        emit changed();
    }
    const std::size_t complaints = m_feed->there() ? m_feed->sources().complaints().size() : 0;
    if (std::exchange(m_complaints, complaints) != complaints)
        emit changed();
    const bool speaks = level().has_value();
    if (std::exchange(m_spoke, speaks) != speaks)
        emit moved();
    const QString told = age();
    if (std::exchange(m_age, told) != told)
        emit aged();
}

std::optional<Estimate<Volume>> NowLive::level() const
{
    if (!m_level || !m_level->known() || !m_feed || !m_feed->there() || m_feed->quietFor() > kSilentAfter)
        return std::nullopt;
    return m_level->state().level;
}

std::vector<FollowedTank> NowLive::followed() const
{
    return m_level ? levelsToKeep(*m_level) : std::vector<FollowedTank>();
}

Question NowLive::withLevels(Question question) const
{
    return level() ? m_level->ask(std::move(question)) : question;
}

bool NowLive::quiet() const
{
    const auto age = m_feed ? m_feed->age(Channel::signal) : std::nullopt;
    return age && *age > kQuietAfter;
}

QString NowLive::age() const
{
    const auto sender = m_feed ? m_feed->age(Channel::signal) : std::nullopt;
    if (!sender)
        return {};
    const QString seconds = QString::number(int(sender->count()));
    if (m_feed->quietFor() > kSilentAfter)
        return tr("source silent for %1 s").arg(seconds);
    if (!m_level)
        return tr("a sender without a calibration");
    if (!m_level->known()) // the first half minute is averaged
        return tr("listening to the sender");
    if (m_level->state().rising)
        return tr("the level has risen: does it stay? sender %1 s ago").arg(seconds);
    const bool alone = m_level->state().mode == TrackerMode::consumptionOnly;
    return alone ? tr("by consumption alone; sender %1 s ago").arg(seconds) : tr("sender %1 s ago").arg(seconds);
}

std::vector<Notice> NowLive::notices() const
{
    std::vector<Notice> all;
    if (m_sourceProblem)
        all.push_back({Severity::warning, Sentence::of("The sources kept with the car are not heard: %1",
                                                       sentenceOf(*m_sourceProblem))});
    if (!m_feed || !m_feed->there())
        return all;
    if (m_level)
        for (const TrackerEvent& fault : m_level->faults()) {
            const bool byHand = fault.fault == FaultCode::otherTankFeeds || fault.fault == FaultCode::transferStopped;
            all.push_back({byHand ? Severity::warning : Severity::error, faultText(fault, m_level->tanks())});
        }
    if (m_clockJumpAt)
        all.push_back({Severity::info, Sentence::of("The source's clock jumped: the level goes on from what it shows now.")});
    if (m_tripProblem)
        all.push_back({Severity::warning, Sentence::of("What is driven is not written into the logbook: %1",
                                                       sentenceOf(*m_tripProblem))});
    for (Sentence& complaint : m_feed->sources().complaints())
        all.push_back({Severity::info, std::move(complaint)});
    return all;
}

std::optional<Estimate<Volume>> NowLive::refuel() const
{
    return m_level ? m_level->refuel() : std::nullopt;
}

QString NowLive::refuelWord() const
{
    const auto litres = refuel();
    return litres ? tr("%1 %2 went in: log it").arg(m_format.volume(litres->mean), m_format.volumeUnit())
                  : QString();
}

void NowLive::tellFill(const Entry<Fill>& fill)
{
    if (!m_level)
        return;
    const auto& others = m_followed.others;
    const auto tank = std::ranges::find(others, fill.value.tank.value_or(std::string()), &ExtraTank::name);
    if (fill.value.tank && (tank == others.end() || tank->feed != TankFeed::shared))
        m_level->tellOtherFill();
    else
        tell(fill.id, fill.value.volume);
    emit changed();
    emit moved();
}

void NowLive::tell(const EntryId& fill, Volume litres)
{
    m_level->tellFill({litres, litres * kPumpSd});
    m_told = Told{fill, litres};
}

void NowLive::denyFill()
{
    if (!refuel())
        return;
    m_level->denyFill();
    for (const TrackerEvent& event : m_level->takeEvents())
        take(event);
    emit changed();
    emit moved();
}

std::string NowLive::proposedMode() const
{
    const auto mode = m_speedMode.mode();
    if (!mode || m_mode == *mode || m_refusedMode == *mode || std::ranges::find(m_modes, *mode) == m_modes.end())
        return {};
    return *mode;
}

QString NowLive::modeWord() const
{
    const std::string mode = proposedMode();
    return mode.empty() ? QString() : tr("%1, by the speed: take it").arg(modeName(mode));
}

void NowLive::setTripProblem(const std::optional<Error>& problem)
{
    m_tripProblem = problem;
    emit changed();
}

void NowLive::setSourceProblem(const std::optional<Error>& problem)
{
    m_sourceProblem = problem;
    emit changed();
}

void NowLive::setMode(const std::string& mode)
{
    const std::string before = proposedMode();
    m_mode = mode;
    m_refusedMode = m_speedMode.mode().value_or("");
    if (proposedMode() != before)
        emit changed();
}

} // namespace undermark
