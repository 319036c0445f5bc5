// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/tank_view_model.h"

#include "app/screen/base/sentence_text.h"
#include "app/screen/logbook/log_lines.h"
#include "app/screen/tank/tank_picture.h"
#include "engine/outlook/outlook.h"
#include "engine/tables/gauge_table_csv.h"
#include "engine/tank/next_proof.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QSaveFile>
#include <algorithm>

namespace undermark {

namespace {

constexpr int kFewestRows = 2;
constexpr int kMostRows = 30;

} // namespace

TankViewModel::TankViewModel(Car& car, Units units, QObject* parent)
    : PageModel(parent), m_car(car), m_format(units), m_guide(car, units)
{
    m_request.points = 8;
    connect(&m_guide, &CalibrationGuide::stored, this, &TankViewModel::refresh);
    connect(&m_guide, &CalibrationGuide::stored, this, &TankViewModel::stored);
    TankViewModel::refresh();
}

void TankViewModel::refresh()
{
    m_known.reset();
    m_plot.reset();
    if (const auto car = m_car.knowledge())
        m_known = **car;
    changeTable();
}

void TankViewModel::startOver()
{
    m_guide.takeUp();
    refresh();
}

PlotPicture TankViewModel::plot() const
{
    if (!m_plot) {
        m_plot.emplace();
        if (m_known && m_known->log.calibration)
            m_plot = tankPicture(m_known->gauge, m_known->vehicle().sender,
                                 m_known->log.calibration->value.zeroMark, m_format);
    }
    return *m_plot;
}

PlotPicture TankViewModel::secondPlot() const
{
    return m_known ? otherLobePicture(m_known->gauge, m_known->vehicle().sender, m_format)
                   : PlotPicture();
}

void TankViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_guide.setFormat(format);
    refresh();
}

QList<Fact> TankViewModel::curveFacts() const
{
    if (!calibrated())
        return {};
    const Calibration& calibration = m_known->log.calibration->value;
    const Gauge& gauge = m_known->gauge;
    if (gauge.hasTwoSignals())
        return QList<Fact>{{tr("calibrated"), dateText(calibration.time)},
                           {tr("zero mark"), tr("%1 above drained")
                                                 .arg(m_format.volume({calibration.zeroMark, {}}))}} +
               lobeFacts(gauge, m_format);
    const LevelCurve& curve = *gauge.curve();
    const QString unit = QString::fromStdString(m_known->vehicle().sender.unit);
    const auto reading = [&](Signal signal) {
        return tr("%1 %2").arg(m_format.typed(signal.value(), 4), unit);
    };
    QList<Fact> facts{
        {tr("calibrated"), dateText(calibration.time)},
        {tr("zero mark"), tr("%1 above drained, at %2")
                              .arg(m_format.volume({calibration.zeroMark, {}}),
                                   reading(curve.signalAt(calibration.zeroMark)))},
        {tr("full"), tr("%1 above drained, at %2")
                         .arg(m_format.volume({curve.highest().added, {}}),
                              reading(curve.highest().signal))}};
    if (gauge.residualSd())
        facts.append({tr("a point misses the curve by"),
                      m_format.volume({*gauge.residualSd(), {}})});
    if (gauge.readsHigh().mean > Volume{})
        facts.append({tr("while driving, lower than read by"),
                      m_format.volume(gauge.readsHigh())});
    return facts;
}

QList<NoticeText> TankViewModel::findings() const
{
    std::vector<Notice> notices;
    if (m_known)
        for (const Finding& finding : m_known->gauge.findings())
            notices.push_back(noticeOf(finding));
    return noticeTexts(notices, m_format);
}

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
    const QString path = QString::fromStdString((m_car.folder() / "gauge-table.csv").string());
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(tableText().toUtf8()) >= 0 &&
                         file.commit();
    m_tableDone = written ? tr("Written to %1").arg(path) : tr("Cannot be written: %1").arg(path);
    emit changed();
}

QString TankViewModel::reserve() const
{
    return m_known ? m_format.volume(m_known->reserve.reserve()) : QString();
}

QString TankViewModel::pastZero() const
{
    if (!m_known)
        return {};
    const auto past = undermark::pastZero(*m_known, {});
    if (!past)
        return {};
    return tr("past the zero mark: %1 sure, %2 even, %3 hopeful")
        .arg(m_format.distanceWithUnit(past->p99), m_format.distanceWithUnit(past->p50),
             m_format.distanceWithUnit(past->p10));
}

QList<Fact> TankViewModel::evidence() const
{
    if (!m_known)
        return {};
    QList<Fact> items;
    for (const EvidenceItem& item : m_known->reserve.evidence()) {
        const QString day = item.time ? dateText(*item.time) + QStringLiteral(": ") : QString();
        items.append(
            {day + sentenceText(item.text, m_format),
             tr("%1, then %2").arg(m_format.volume(item.before), m_format.volume(item.after))});
    }
    if (items.isEmpty())
        items.append({tr("the calibration and what is usually left behind"), tr("no proof yet")});
    return items;
}

QString TankViewModel::nextProof() const
{
    if (!m_known)
        return {};
    const auto next = suggestNextProof(m_known->reserve);
    if (!next)
        return tr("More proof of these kinds would not help.");
    return tr("%1. It would leave ± %2.")
        .arg(sentenceText(next->text, m_format), m_format.volume({next->sdAfter, {}}));
}

QString TankViewModel::nextProofCaution() const
{
    if (!m_known)
        return {};
    const auto next = suggestNextProof(m_known->reserve);
    const QString never = tr("Never test the reserve on a public road.");
    return next ? tr("Caution: %1 %2").arg(sentenceText(next->caution, m_format), never)
                : tr("Caution: %1").arg(never);
}

} // namespace undermark
