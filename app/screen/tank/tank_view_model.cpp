// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/tank_view_model.h"

#include "app/car/sheet_check.h"
#include "app/screen/base/sentence_text.h"
#include "app/screen/logbook/log_lines.h"
#include "app/screen/tank/tank_picture.h"
#include "engine/outlook/outlook.h"
#include "engine/tank/next_proof.h"

#include <algorithm>
#include <iterator>

namespace undermark {

TankViewModel::TankViewModel(Car& car, Units units, QObject* parent)
    : PageModel(parent), m_car(car), m_format(units), m_guide(car, units), m_sheet(car), m_proof(car)
{
    m_request.points = 8;
    const auto tell = [this] {
        m_proving = false;
        refresh();
        emit stored();
    };
    connect(&m_guide, &CalibrationGuide::stored, this, tell);
    connect(&m_sheet, &CarSheet::stored, this, [this, tell] {
        m_tanks.mean(m_sheet.tank()); // it may be a new one
        tell();
    });
    connect(&m_proof, &EntryForm::stored, this, tell);
    m_tanks.mean(m_guide.tank());
    TankViewModel::refresh();
}

void TankViewModel::refresh()
{
    m_known.reset();
    m_unknown.reset();
    m_plot.reset();
    m_sheetDone.clear();
    const auto all = m_car.knowledge();
    if (all)
        m_tanks.look((*all)->log);
    auto car = all ? carOfTank(**all, m_tanks.tank()) : fail(all.error());
    if (car)
        m_known = std::move(*car);
    else
        m_unknown = car.error();
    m_guide.turnTo(m_tanks.tank(), m_tanks.word());
    m_proof.setTank(m_tanks.tank());
    m_sheet.setTank(m_tanks.tank());
    m_sheet.refresh();
    changeTable();
}

void TankViewModel::startOver()
{
    m_guide.takeUp();
    m_tanks.mean(m_guide.tank());
    m_sheet.startOver();
    m_proving = false;
    refresh();
}

void TankViewModel::selectTank(int option)
{
    if (m_tanks.choose(option))
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
    m_sheet.setFormat(format);
    m_proof.setFormat(format);
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
                           {tr("verified"), verifiedText()},
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
        {tr("verified"), verifiedText()},
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
    if (m_unknown)
        notices.push_back(noticeOf(*m_unknown));
    if (m_known)
        for (const Finding& finding : m_known->gauge.findings())
            notices.push_back(noticeOf(finding));
    if (calibrated())
        std::ranges::copy(doubtsOf(m_known->vehicle(), *m_known), std::back_inserter(notices));
    return noticeTexts(notices, m_format);
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

void TankViewModel::tell(ProofKind kind)
{
    m_proof.startProof(kind);
    m_proving = true;
    emit changed();
}

void TankViewModel::tellNextProof()
{
    const auto next = m_known ? suggestNextProof(m_known->reserve) : std::nullopt;
    tell(next && next->kind == NextProofKind::measureLeftBehind ? ProofKind::drained : ProofKind::base);
}

void TankViewModel::tellProof()
{
    tell(ProofKind::pastZero);
}

void TankViewModel::leaveProof()
{
    m_proving = false;
    emit changed();
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
