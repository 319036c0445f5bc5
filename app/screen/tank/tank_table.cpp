// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Tank page's gauge table.
#include "app/screen/tank/tank_view_model.h"
#include "engine/tables/gauge_table_csv.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QSaveFile>
#include <algorithm>

namespace undermark {

namespace {

constexpr int kFewestRows = 2;
constexpr int kMostRows = 30;

} // namespace

void TankViewModel::changeTable()
{
    m_tableMade = false;
    m_tableDone.clear();
    emit changed();
}

const GaugeTable* TankViewModel::gauge() const
{
    if (!m_tableMade) {
        m_tableMade = true;
        m_table.reset();
        if (hasTable()) {
            GaugeTableRequest request = m_request;
            request.zeroMark = m_known->log.calibration->value.zeroMark;
            request.signalStep = m_known->vehicle().sender.resolution;
            if (auto table = gaugeTable(*m_known->gauge.curve(), request))
                m_table = std::move(*table);
        }
    }
    return m_table ? &*m_table : nullptr;
}

QList<Fact> TankViewModel::table() const
{
    QList<Fact> rows;
    if (!gauge())
        return rows;
    const QString unit = QString::fromStdString(m_known->vehicle().sender.unit);
    int decimals = 0; // alike in all rows, as many as the longest needs
    for (const GaugeTableRow& row : gauge()->rows)
        decimals = std::max(decimals, int(m_format.typed(row.signal.value(), 4)
                                              .section(m_format.decimalMark(), 1)
                                              .size()));
    for (const GaugeTableRow& row : gauge()->rows)
        rows.append({tr("%1 %2").arg(m_format.number(row.signal.value(), decimals), unit),
                     tr("%1 %2").arg(m_format.number(row.value, m_request.decimals),
                                     m_request.unit == GaugeUnit::percent ? tr("%") : tr("L"))});
    return rows;
}

QString TankViewModel::tableNote() const
{
    if (m_known && m_known->gauge.hasTwoSignals())
        return tr("Two signals have no gauge table: a gauge takes one, as of senders in series.");
    if (!gauge())
        return tr("A gauge table needs a calibration first.");
    return tr("A gauge that draws straight lines between these points is wrong by at most %1.")
        .arg(m_format.volume({gauge()->worstError, {}}));
}

QString TankViewModel::tableUnit() const
{
    return m_request.unit == GaugeUnit::percent ? tr("in %") : tr("in L");
}

QString TankViewModel::tableSize() const
{
    return tr("points: %1").arg(m_request.points);
}

QString TankViewModel::tableDecimals() const
{
    return tr("decimals: %1").arg(m_request.decimals);
}

void TankViewModel::changeTableSize(int by)
{
    m_request.points = std::clamp(m_request.points + by, kFewestRows, kMostRows);
    changeTable();
}

void TankViewModel::changeTableDecimals()
{
    m_request.decimals = (m_request.decimals + 1) % 3;
    changeTable();
}

void TankViewModel::switchTableUnit()
{
    const bool litres = m_request.unit == GaugeUnit::litres;
    m_request.unit = litres ? GaugeUnit::percent : GaugeUnit::litres;
    m_request.decimals = litres ? 0 : 1;
    changeTable();
}

QString TankViewModel::tableText() const
{
    return QString::fromStdString(gaugeTableCsv(*gauge(), m_request.unit, m_request.decimals));
}

void TankViewModel::copyTable()
{
    if (!gauge())
        return;
    QGuiApplication::clipboard()->setText(tableText());
    m_tableDone = tr("Copied.");
    emit changed();
}

void TankViewModel::exportTable()
{
    if (!gauge())
        return;
    const auto name = fileOfTank("gauge-table", "csv", m_tanks.tank());
    const QString path = QString::fromStdString((m_car.folder() / name).string());
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(tableText().toUtf8()) >= 0 &&
                         file.commit();
    m_tableDone = written ? tr("Written to %1").arg(path) : tr("Cannot be written: %1").arg(path);
    emit changed();
}

} // namespace undermark
