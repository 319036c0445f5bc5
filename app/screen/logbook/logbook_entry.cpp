// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Logbook page's opened entry.
#include "app/screen/logbook/logbook_view_model.h"
#include "engine/consumption/correction.h"

namespace undermark {

namespace {

// Alike but for what the user ruled.
bool saySame(const LogValue& one, LogValue other)
{
    if (auto* fill = std::get_if<Fill>(&other); fill && std::holds_alternative<Fill>(one))
        fill->counted = std::get<Fill>(one).counted;
    return one == other;
}

// How many of these versions, from the last one, go with the last correction.
std::size_t lastCorrection(const std::vector<LogValue>& standing)
{
    for (std::size_t back = 1; back < standing.size(); ++back)
        if (!saySame(standing[standing.size() - 1 - back], standing.back()))
            return back;
    return 0;
}

} // namespace

std::optional<LogValue> LogbookViewModel::openedValue() const
{
    if (!m_opened)
        return std::nullopt;
    if (const auto* fill = std::get_if<Fill>(&m_opened->value))
        return *fill;
    if (const auto* trip = std::get_if<Trip>(&m_opened->value))
        return *trip;
    if (const auto* proof = std::get_if<Proof>(&m_opened->value))
        return *proof;
    if (const auto* level = std::get_if<LevelRecord>(&m_opened->value))
        return *level;
    return std::nullopt; // a calibration
}

EntryLesson LogbookViewModel::openedLesson() const
{
    return m_opened && m_rows.known() ? lessonOf(*m_rows.known(), *m_opened) : EntryLesson{};
}

void LogbookViewModel::open(int row)
{
    const LogRow* entry = m_rows.row(row);
    if (!entry)
        return;
    m_opened = *entry;
    m_correcting = false;
    m_saysWhatStands = false;
    m_problem.reset();
    readVersions();
    emit changed();
}

void LogbookViewModel::close()
{
    if (m_correcting || m_adding)
        m_correcting = m_adding = false;
    else
        m_opened.reset();
    m_saysWhatStands = false;
    m_problem.reset();
    emit changed();
}

void LogbookViewModel::readVersions()
{
    m_versions.clear();
    m_standing = m_corrected = 0;
    const auto value = openedValue();
    if (!value)
        return;
    const auto history = m_car.history(openedId(), *value);
    if (!history)
        return;
    std::vector<LogValue> standing;
    for (const LogVersion& version : *history) {
        const QString what = summary(version.value, m_format);
        if (history->size() > 1)
            m_versions.append({dateTimeText(version.recorded), version.withdrawn ? tr("%1, undone").arg(what) : what});
        if (!version.withdrawn)
            standing.push_back(version.value);
    }
    m_standing = standing.size();
    m_corrected = lastCorrection(standing);
}

Result<void> LogbookViewModel::withdraw(std::size_t versions)
{
    return m_car.takeBackAll(std::vector(versions, openedId()));
}

QString LogbookViewModel::title() const
{
    return m_opened ? tr("%1, %2").arg(kindName(m_opened->place.kind), dateTimeText(m_opened->place.time))
                    : QString();
}

QList<Fact> LogbookViewModel::facts() const
{
    const auto value = openedValue();
    if (!value)
        return {};
    if (const auto* trip = std::get_if<Trip>(&*value))
        return tripFacts(*trip, m_format);
    if (const auto* proof = std::get_if<Proof>(&*value))
        return proofFacts(*proof, m_format);
    if (const auto* level = std::get_if<LevelRecord>(&*value))
        return levelFacts(*level, m_format);
    QList<Fact> facts = fillFacts(std::get<Fill>(*value), m_format);
    if (const Interval* stretch = openedLesson().stretch) {
        facts.append({tr("driven since the fill before"), m_format.distanceWithUnit(stretch->distance)});
        facts.append({tr("burnt on it"), m_format.rate({stretch->burnt.mean / stretch->distance, {}})});
    }
    return facts;
}

bool LogbookViewModel::correctable() const
{
    return m_opened && m_opened->place.kind == LogKind::fill;
}

bool LogbookViewModel::changeable() const
{
    return openedValue().has_value();
}

void LogbookViewModel::correct()
{
    const auto value = openedValue();
    if (!value || !correctable())
        return;
    m_editor.edit({openedId(), {}, std::get<Fill>(*value)});
    m_correcting = true;
    emit changed();
}

QString LogbookViewModel::ruleWord() const
{
    const auto value = openedValue();
    const auto* fill = value ? std::get_if<Fill>(&*value) : nullptr;
    if (!fill)
        return {};
    if (fill->counted)
        return tr("Lift the ruling");
    return openedLesson().fillFlag ? tr("It is right: count it") : tr("Leave it out");
}

void LogbookViewModel::rule()
{
    if (ruleWord().isEmpty())
        return;
    Fill fill = std::get<Fill>(*openedValue());
    if (fill.counted)
        fill.counted.reset();
    else
        fill.counted = openedLesson().fillFlag != nullptr;
    revise(fill);
}

QString LogbookViewModel::mendWord() const
{
    const FillFlag* flag = openedLesson().fillFlag;
    if (!flag)
        return {};
    const Fill fill = std::get<Fill>(*openedValue());
    const auto better = corrected(fill, *flag);
    return better ? PumpViewModel::mendWord(fill, *better, m_format) : QString();
}

void LogbookViewModel::mend()
{
    if (!mendWord().isEmpty())
        revise(*corrected(std::get<Fill>(*openedValue()), *openedLesson().fillFlag));
}

void LogbookViewModel::revise(const LogValue& value)
{
    m_saysWhatStands = false;
    if (applied(m_car.revise(openedId(), value)))
        emit stored();
}

void LogbookViewModel::takeOut()
{
    const auto value = openedValue();
    const EntryId id = openedId();
    if (!value || !applied(withdraw(m_standing)))
        return;
    m_steps.push_back({[this, id, value] { return m_car.revise(id, *value); }, tr("Undo taking out")});
    emit stored();
}

} // namespace undermark
