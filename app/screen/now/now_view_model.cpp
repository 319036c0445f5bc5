// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_view_model.h"

#include "app/screen/base/age_text.h"
#include "app/screen/base/mode_name.h"
#include "app/screen/base/sentence_text.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::chrono::seconds kAgesEvery{30};
constexpr std::chrono::minutes kOthersEvery{5}; // the other pages plan anew by a level that moves

// What no number on the page may be read without.
std::vector<Notice> withDoubt(const NowState& state)
{
    std::vector<Notice> notices = state.notices;
    if (state.outlook.unlogged && state.outlook.unlogged->mayBeAll)
        return notices; // one of them says so, and asks for what would tell more
    if (distances(state.outlook.toDry).sureIsNegative)
        notices.insert(
            notices.begin(),
            {Severity::error,
             Sentence::of("The tank may be dry already: no distance is sure. Fill before "
                          "driving on.")});
    else if (distances(state.outlook.toZero).sureIsNegative)
        notices.insert(notices.begin(),
                       {Severity::warning,
                        Sentence::of("The zero mark may be passed already: no distance to it is "
                                     "sure.")});
    return notices;
}

} // namespace

NowViewModel::NowViewModel(Car& car, Units units, const QString& settingsFile, QObject* parent)
    : PageModel(parent), m_car(car), m_format(units), m_tell(settingsFile),
      m_load(settingsFile)
{
    connect(&m_tell, &NowTell::toldAnew, this, &NowViewModel::askAnew);
    connect(&m_load, &NowLoad::toldAnew, this, &NowViewModel::askAnew);
    connect(&m_load, &NowLoad::changed, this, &NowViewModel::changed); // the word alone
    connect(&m_tell, &NowTell::proofNoted, this, &NowViewModel::noteProof);
    connect(&m_tell, &NowTell::levelKept, this, &NowViewModel::keepLevel);
    connect(&m_live, &NowLive::moved, this, &NowViewModel::followLevel);
    connect(&m_live, &NowLive::aged, this, &NowViewModel::tellAge);
    connect(&m_live, &NowLive::changed, this, &NowViewModel::changed);
    connect(&m_clock, &QTimer::timeout, this, &NowViewModel::tellAge);
    m_clock.start(kAgesEvery);
    ask();
}

void NowViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_tell.setFormat(format);
    m_load.setFormat(format);
    m_live.setFormat(format);
    NowViewModel::refresh();
}

void NowViewModel::noteProof(const Proof& proof)
{
    if (const auto noted = m_car.record(proof); !noted) {
        m_notices = {noticeOf(noted.error())};
        return emit changed();
    }
    m_tell.dropProof();
    ask();
    emit stored();
}

void NowViewModel::keepLevel(const LevelRecord& level)
{
    if (const Result<EntryId> kept = m_car.record(level); !kept)
        return m_tell.refuseToKeep(kept.error());
    // Of several tanks the others may have to be kept as well: until then it is told, too.
    const Result<NowState> now = m_car.now();
    if (now && now->outlook.asOf == level.time)
        m_tell.drop();
    else
        ask();
    emit stored();
}

void NowViewModel::refresh()
{
    ask();
}

void NowViewModel::startOver()
{
    m_mode.clear();
    ask();
}

void NowViewModel::selectMode(int index)
{
    if (!m_state || index < 0 || std::size_t(index) > m_state->modes.size())
        return;
    m_mode = index == 0 ? std::string() : m_state->modes[std::size_t(index) - 1];
    m_live.setMode(m_mode);
    ask();
}

void NowViewModel::takeProposedMode()
{
    const std::string mode = m_live.proposedMode();
    if (m_state && !mode.empty())
        selectMode(int(std::ranges::find(m_state->modes, mode) - m_state->modes.begin()) + 1);
}

// Often: the other pages only now and then, and where the level comes or goes.
void NowViewModel::followLevel()
{
    const bool live = m_live.level().has_value();
    ask();
    if (live == m_othersAsked.isValid()
        && (!live || !m_othersAsked.hasExpired(std::chrono::milliseconds(kOthersEvery).count())))
        return;
    m_othersAsked.invalidate();
    if (live)
        m_othersAsked.start();
    emit asksOtherwise();
}

Question NowViewModel::question()
{
    const Result<Knowledge> known = m_car.knowledge();
    if (!known)
        return {};
    const auto told = m_live.level() ? std::nullopt : m_tell.told();
    return m_live.withLevels(questionOf(told, m_load.load(), **known, m_mode));
}

QString NowViewModel::basis() const
{
    QStringList parts{m_age, m_load.standing()};
    parts.removeAll(QString());
    return parts.join(QStringLiteral("; "));
}

Result<NowState> NowViewModel::answer()
{
    const Result<Knowledge> known = m_car.knowledge();
    if (!known)
        return fail(known.error());
    m_tell.look(**known, m_car.time());
    m_load.look(**known, m_car.time());
    m_live.look(**known);
    auto state = nowState(**known, question());
    if (state || !m_tell.told())
        return state;
    m_tell.refuse(state.error());
    return nowState(**known, question());
}

void NowViewModel::askAnew()
{
    ask();
    emit asksOtherwise();
}

void NowViewModel::ask()
{
    Result<NowState> state = answer();
    const Result<Knowledge> known = m_car.knowledge();
    m_waiting = !state && known;
    m_readable = known && (*known)->gauge.isKnown();
    if (state) {
        m_state.emplace(std::move(*state));
        m_horizon = horizonPicture(m_state->outlook.toZero, m_state->outlook.toDry, m_format);
        m_notices = withDoubt(*m_state);
        for (Notice& doubt : m_load.doubts((*known)->log))
            m_notices.push_back(std::move(doubt));
    } else {
        m_state.reset();
        m_horizon = {};
        m_notices.clear();
        if (!m_waiting)
            m_notices = {noticeOf(state.error())};
    }
    tellAge();
    emit changed();
}

void NowViewModel::tellAge()
{
    const QString before = m_age;
    m_age.clear();
    if (m_state && m_live.level())
        m_age = m_live.age();
    else if (m_state && m_tell.told())
        m_age = m_tell.standing(m_car.time());
    else if (m_state && m_state->outlook.asOf)
        m_age = tr("level kept, %1").arg(ageText(m_car.time() - *m_state->outlook.asOf));
    else if (m_state && m_state->recorded)
        m_age = tr("log, %1").arg(ageText(m_car.time() - *m_state->recorded));
    if (m_state && !m_live.level() && !m_live.age().isEmpty())
        m_age = tr("%1: %2").arg(m_live.age(), m_age);
    if (m_age != before)
        emit aged();
}

bool NowViewModel::atZero() const
{
    return !m_live.level() && m_tell.told() && m_tell.told()->what == Told::What::needleAtZero;
}

QString NowViewModel::title() const
{
    if (m_waiting)
        return tr("Fill the tank, then the distance stands here");
    return m_state ? QString::fromStdString(m_state->vehicle) : tr("The logbook cannot be read");
}

Distances NowViewModel::pastZero() const
{
    Distances left = m_state->pastZero;
    if (atZero() && m_tell.told()->since)
        for (Distance Distances::*each : {&Distances::p99, &Distances::p90, &Distances::p50, &Distances::p10})
            left.*each = std::max(Distance(), left.*each - *m_tell.told()->since);
    return left;
}

QString NowViewModel::sureCaption() const
{
    if (!atZero())
        return tr("sure to the zero mark");
    return m_tell.told()->since ? tr("sure past the zero mark, still")
                                : tr("sure past the zero mark");
}

QString NowViewModel::sureNumber() const
{
    if (!m_state)
        return {};
    return m_format.distance(atZero() ? pastZero().p99 : distances(m_state->outlook.toZero).p99);
}

RangeRow NowViewModel::row(const QString& name, const Distances& made, bool ofReserve) const
{
    return {name, m_format.distance(made.p99), m_format.distance(made.p50),
            m_format.distance(made.p10), ofReserve};
}

QList<RangeRow> NowViewModel::rows() const
{
    if (!m_state)
        return {};
    if (atZero()) // both ways there are the reserve's
        return {row(tr("past zero"), pastZero(), true)};
    return {row(tr("to zero"), distances(m_state->outlook.toZero)),
            row(tr("past zero"), pastZero(), true),
            row(tr("to dry"), distances(m_state->outlook.toDry))};
}

QList<Fact> NowViewModel::facts() const
{
    if (!m_state)
        return {};
    const Outlook& outlook = m_state->outlook;
    const bool under = outlook.aboveZero.mean < Volume{};
    QList<Fact> facts{{under ? tr("below zero") : tr("above zero"),
                       m_format.volume(Estimate<Volume>{abs(outlook.aboveZero.mean), outlook.aboveZero.sd})},
                      {m_state->reserveAssumed ? tr("hidden reserve, assumed") : tr("hidden reserve"),
                       m_format.volume(outlook.reserve)},
                      {tr("rate"), m_format.rate(outlook.rate)}};
    if (m_load.load())
        facts.append({tr("burns more"), m_load.standing()});
    else if (outlook.sinceFill) // (the reason says it, too: four facts are a row)
        facts.append({tr("since fill"), m_format.distanceWithUnit(*outlook.sinceFill)});
    return facts;
}

QString NowViewModel::why() const
{
    if (m_state)
        return tr("An estimate: keep a margin. %1").arg(sentenceText(m_state->outlook.why, m_format));
    if (!m_waiting)
        return tr("Once the logbook can answer, the distance stands here.");
    return m_readable
               ? tr("Fill up to the first click and log it, or tell what the gauge reads now.")
               : tr("Fill up to the first click and log it. The more fills, the surer the distance.");
}

QList<NoticeText> NowViewModel::notices() const
{
    std::vector<Notice> notices = m_notices;
    for (Notice& said : m_live.notices())
        notices.push_back(std::move(said));
    if (m_calibrating)
        notices.push_back({Severity::info,
                           Sentence::of("A calibration lies open: it does not count before it is saved.")});
    return noticeTexts(notices, m_format);
}

void NowViewModel::setCalibrating(bool calibrating)
{
    if (std::exchange(m_calibrating, calibrating) != calibrating)
        emit changed();
}

QStringList NowViewModel::modes() const
{
    QStringList names{tr("Usual mix")};
    if (m_state) {
        for (const std::string& mode : m_state->modes)
            names.append(modeName(mode));
    }
    return names;
}

QString NowViewModel::mode() const
{
    return modes().value(modeIndex());
}

int NowViewModel::modeIndex() const
{
    if (!m_state)
        return -1;
    if (m_mode.empty())
        return 0;
    const auto found = std::ranges::find(m_state->modes, m_mode);
    return found == m_state->modes.end() ? 0 : int(found - m_state->modes.begin()) + 1;
}

} // namespace undermark
