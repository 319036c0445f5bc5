// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/car/live_level.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

void LiveLevel::take(const Sample& sample)
{
    if (m_before) {
        m_since.push_back(sample);
        const Seconds since = sample.time - m_since.front().time;
        if (since >= LevelTracker::kFillWindow || since < Seconds{}) { // (or its clock went back)
            m_before.reset();
            m_since = {};
        }
    }
    follow(sample);
}

void LiveLevel::follow(const Sample& sample) { keep(m_now.tracker.add(sample)); }

void LiveLevel::finish() { keep(m_now.tracker.finish()); }

void LiveLevel::keep(std::span<const TrackerEvent> events)
{
    for (const TrackerEvent& event : events) {
        const auto isSame = [&event](const TrackerEvent& fault) {
            return fault.fault == event.fault && fault.tank == event.tank;
        };
        if (event.kind == TrackerEventKind::refuel) {
            m_now.atFill = state().driven;
            noticed(event);
        } else if (event.kind == TrackerEventKind::faultCleared) {
            std::erase_if(m_now.faults, isSame);
        } else if (event.kind == TrackerEventKind::fault
                   && std::ranges::none_of(m_now.faults, isSame)) {
            m_now.faults.push_back(event);
        }
        m_events.push_back(event);
    }
}

// What rises while the question is open is of the same fill.
void LiveLevel::noticed(const TrackerEvent& event)
{
    Estimate<Volume> litres = event.litres;
    if (const auto before = refuel())
        litres = {litres.mean + before->mean,
                  Volume::fromLitres(std::hypot(litres.sd.litres(), before->sd.litres()))};
    m_now.refuel = {event.time, litres};
}

std::map<std::string, Estimate<Volume>> LiveLevel::tankLevels() const
{
    std::map<std::string, Estimate<Volume>> levels;
    const std::span<const HeardTank> tanks = m_now.tracker.further();
    for (std::size_t i = 0; i < tanks.size(); ++i)
        if (const auto level = tanks[i].level())
            levels[m_tanks[i]] = *level;
    return levels;
}

Question LiveLevel::ask(Question question) const
{
    question.followed = state().level;
    for (const auto& [tank, level] : tankLevels())
        question.tanks[tank].followed = level;
    return question;
}

std::optional<Estimate<Volume>> LiveLevel::refuel() const
{
    if (!m_now.refuel || state().time - m_now.refuel->time >= LevelTracker::kFillWindow)
        return std::nullopt;
    return m_now.refuel->litres;
}

void LiveLevel::tellFill(Estimate<Volume> litres)
{
    const bool late = m_now.refuel && !refuel();
    if (!known() || late) {
        m_now.refuel.reset();
        return;
    }
    m_before = m_now;
    m_since.clear();
    m_now.refuel.reset();
    m_now.tracker.level().tellFill(litres);
    m_now.atFill = state().driven;
    m_asked.reset();
}

void LiveLevel::takeBackFill()
{
    if (!m_before)
        return;
    m_now = *std::exchange(m_before, std::nullopt);
    const std::size_t said = m_events.size();
    for (const Sample& sample : std::exchange(m_since, {}))
        follow(sample);
    m_events.resize(said); // what happened since was said when it did
    m_asked.reset();
}

void LiveLevel::denyFill()
{
    m_now.refuel.reset();
    keep(m_now.tracker.level().denyFill());
    m_asked.reset();
}

bool LiveLevel::worthAsking()
{
    const TrackState& now = state();
    const bool stands = m_asked && m_asked->mode == now.mode && std::abs((now.time - m_asked->time).count()) < 30.0
        && abs(now.level.mean - m_asked->level.mean) < Volume::fromLitres(0.2)
        && now.driven - m_asked->driven < Distance::fromKm(1.0);
    if (stands)
        return false;
    m_asked = now;
    return true;
}

} // namespace undermark
