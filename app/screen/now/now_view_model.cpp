// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_view_model.h"

#include "app/screen/base/mode_name.h"
#include "app/screen/base/sentence_text.h"

#include <algorithm>

namespace undermark {

namespace {

// What no number on the page may be read without.
std::vector<Notice> withDoubt(const NowState& state)
{
    std::vector<Notice> notices = state.notices;
    if (distances(state.outlook.toDry).sureIsNegative)
        notices.insert(
            notices.begin(),
            {Notice::Severity::error,
             Sentence::of("The tank may be dry already: no distance is sure. Fill before "
                          "driving on.")});
    else if (distances(state.outlook.toZero).sureIsNegative)
        notices.insert(notices.begin(),
                       {Notice::Severity::warning,
                        Sentence::of("The zero mark may be passed already: no distance to it is "
                                     "sure.")});
    return notices;
}

} // namespace

NowViewModel::NowViewModel(Car& car, Units units, QObject* parent)
    : PageModel(parent), m_car(car), m_format(units)
{
    ask({});
}

void NowViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    refresh();
}

void NowViewModel::refresh()
{
    ask(m_state ? m_state->outlook.mode : std::string());
}

void NowViewModel::startOver()
{
    ask({});
}

void NowViewModel::selectMode(int index)
{
    if (m_state && index >= 0 && std::size_t(index) < m_state->modes.size())
        ask(std::string(m_state->modes[std::size_t(index)]));
}

void NowViewModel::ask(const std::string& mode)
{
    Result<NowState> answer = m_car.now(mode);
    if (answer) {
        m_state.emplace(std::move(*answer));
        m_horizon = horizonPicture(m_state->outlook.toZero, m_state->outlook.toDry, m_format);
        m_notices = withDoubt(*m_state);
    } else {
        m_state.reset();
        m_horizon = {};
        m_notices = {noticeOf(answer.error())};
    }
    emit changed();
}

QString NowViewModel::title() const
{
    return m_state ? QString::fromStdString(m_state->vehicle) : tr("No answer");
}

QString NowViewModel::sinceFill() const
{
    if (!m_state || !m_state->outlook.sinceFill)
        return {};
    return tr("%1 since the last fill").arg(m_format.distanceWithUnit(*m_state->outlook.sinceFill));
}

QString NowViewModel::sureNumber() const
{
    return m_state ? m_format.distance(distances(m_state->outlook.toZero).p99) : QString();
}

RangeRow NowViewModel::row(const QString& name, const RangeLaw& law) const
{
    const Distances made = distances(law);
    return {name, m_format.distance(made.p99), m_format.distance(made.p50),
            m_format.distance(made.p10)};
}

RangeRow NowViewModel::toZero() const
{
    return m_state ? row(tr("zero"), m_state->outlook.toZero) : RangeRow{};
}

RangeRow NowViewModel::toDry() const
{
    return m_state ? row(tr("dry"), m_state->outlook.toDry) : RangeRow{};
}

QList<Fact> NowViewModel::facts() const
{
    if (!m_state)
        return {};
    const Estimate<Volume>& level = m_state->outlook.aboveZero;
    const bool under = level.mean < Volume{};
    return {{under ? tr("below zero") : tr("above zero"),
             m_format.volume(Estimate<Volume>{abs(level.mean), level.sd})},
            {tr("hidden reserve"), m_format.volume(m_state->outlook.reserve)},
            {tr("rate"), m_format.rate(m_state->outlook.rate)}};
}

QString NowViewModel::why() const
{
    return m_state ? tr("An estimate: keep a margin. %1").arg(sentenceText(m_state->outlook.why, m_format))
                   : tr("Once the logbook can answer, the distance stands here.");
}

QStringList NowViewModel::modes() const
{
    QStringList names;
    if (m_state) {
        for (const std::string& mode : m_state->modes)
            names.append(modeName(mode));
    }
    return names;
}

int NowViewModel::modeIndex() const
{
    if (!m_state)
        return -1;
    const auto found = std::ranges::find(m_state->modes, m_state->outlook.mode);
    return found == m_state->modes.end() ? -1 : int(found - m_state->modes.begin());
}

} // namespace undermark
