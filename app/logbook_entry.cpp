// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Logbook page's opened entry.
#include "app/fill_mend.h"
#include "app/logbook_view_model.h"

namespace undermark {

namespace {

QString summary(const LogValue& value, const UnitFormat& format)
{
    if (const auto* fill = std::get_if<Fill>(&value))
        return fillSummary(*fill, format);
    if (const auto* trip = std::get_if<Trip>(&value))
        return tripSummary(*trip, format);
    return proofSummary(std::get<Proof>(value), format);
}

} // namespace

std::string LogbookViewModel::openedId() const
{
    if (!m_opened || !m_rows.known())
        return {};
    const VehicleLog& log = m_rows.known()->log;
    switch (m_opened->kind) {
    case LogKind::fill:
        return log.fills[m_opened->index].id.uuid;
    case LogKind::trip:
        return log.trips[m_opened->index].id.uuid;
    case LogKind::proof:
        return log.proofs[m_opened->index].id.uuid;
    case LogKind::calibration:
        return log.calibration->id.uuid;
    }
    return {};
}

std::optional<LogValue> LogbookViewModel::openedValue() const
{
    if (!m_opened || !m_rows.known())
        return std::nullopt;
    const VehicleLog& log = m_rows.known()->log;
    switch (m_opened->kind) {
    case LogKind::fill:
        return log.fills[m_opened->index].value;
    case LogKind::trip:
        return log.trips[m_opened->index].value;
    case LogKind::proof:
        return log.proofs[m_opened->index].value;
    case LogKind::calibration:
        break;
    }
    return std::nullopt;
}

const FillFlag* LogbookViewModel::openedFlag() const
{
    if (!m_opened || m_opened->kind != LogKind::fill || !m_rows.known())
        return nullptr;
    return m_rows.fills()->flag(*m_rows.known(), m_opened->index);
}

void LogbookViewModel::open(int row)
{
    if (row < 0 || row >= m_rows.rowCount())
        return;
    m_opened = m_rows.refs()[std::size_t(row)];
    m_correcting = false;
    m_problem.reset();
    readVersions();
    emit changed();
}

void LogbookViewModel::close()
{
    if (m_correcting)
        m_correcting = false;
    else
        m_opened.reset();
    m_problem.reset();
    emit changed();
}

void LogbookViewModel::readVersions()
{
    m_versions.clear();
    const auto value = openedValue();
    if (!value)
        return;
    const auto history = m_car.history(openedId(), *value);
    if (!history || history->size() < 2)
        return;
    for (const LogVersion& version : *history) {
        const QString what = summary(version.value, m_format);
        m_versions.append({dateTimeText(version.recorded),
                           version.withdrawn ? tr("%1, taken back").arg(what) : what});
    }
}

QString LogbookViewModel::title() const
{
    return m_opened ? tr("%1, %2").arg(kindName(m_opened->kind), dateTimeText(m_opened->time))
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
    QList<Fact> facts = fillFacts(std::get<Fill>(*value), m_format);
    if (const Interval* stretch = m_rows.fills()->stretch(*m_rows.known(), m_opened->index)) {
        facts.append({tr("driven since the fill before"), m_format.distanceWithUnit(stretch->distance)});
        facts.append({tr("burnt on it"), m_format.rate({stretch->burnt.mean / stretch->distance, {}})});
    }
    return facts;
}

bool LogbookViewModel::correctable() const
{
    return m_opened && m_opened->kind == LogKind::fill;
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
    m_editor.edit(openedId(), std::get<Fill>(*value));
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
    return openedFlag() ? tr("It is right: count it") : tr("Leave it out");
}

void LogbookViewModel::rule()
{
    if (ruleWord().isEmpty())
        return;
    Fill fill = std::get<Fill>(*openedValue());
    if (fill.counted)
        fill.counted.reset();
    else
        fill.counted = openedFlag() != nullptr;
    revise(fill, tr("Undo the ruling"));
}

QString LogbookViewModel::mendWord() const
{
    const FillFlag* flag = openedFlag();
    if (!flag)
        return {};
    const auto better = mended(std::get<Fill>(*openedValue()), *flag);
    if (!better)
        return {};
    if (flag->volume)
        return tr("Make it %1").arg(m_format.volume({better->volume, {}}));
    return tr("Make it %1").arg(m_format.distanceWithUnit(*better->odometer));
}

void LogbookViewModel::mend()
{
    if (!mendWord().isEmpty())
        revise(*mended(std::get<Fill>(*openedValue()), *openedFlag()), tr("Undo the correction"));
}

void LogbookViewModel::revise(const LogValue& value, const QString& word)
{
    const std::string id = openedId();
    if (!applied(m_car.revise(id, value)))
        return;
    addStep(id, word);
    emit stored();
}

void LogbookViewModel::takeBack()
{
    const auto value = openedValue();
    const std::string id = openedId();
    if (!value || !applied(m_car.takeBack(id)))
        return;
    m_steps.push_back({[this, id, value] { return m_car.revise(id, *value); }, tr("Undo taking back")});
    emit stored();
}

} // namespace undermark
