// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration's review: curves, and what they rest on.
#include "app/screen/tank/calibration_guide.h"
#include "app/screen/tank/tank_picture.h"
#include "engine/calibration/lobes.h"

namespace undermark {

QList<Fact> CalibrationGuide::reviewFacts() const
{
    const CalibrationDraft& draft = m_session.draft();
    const auto gauge = m_session.gauge(sender());
    if (!gauge || !gauge->isKnown())
        return {};
    QList<Fact> facts{{tr("levels"), QString::number(draft.levels.size())}};
    if (gauge->hasTwoSignals())
        return facts + lobeFacts(*gauge, m_format);
    facts.append({tr("signal"), gauge->curve()->rising() ? tr("rises as litres rise")
                                                         : tr("falls as litres rise")});
    if (gauge->residualSd())
        facts.append({tr("a point misses the curve by"), m_format.volume({*gauge->residualSd(), {}})});
    if (draft.firstLobe && draft.secondLobe)
        facts.append({tr("lobes that empty unequally"),
                      tr("a level is up to ± %1 less sure, most so half full")
                          .arg(m_format.volume({seriesSpread(*draft.firstLobe, *draft.secondLobe), {}}))});
    return facts;
}

PlotPicture CalibrationGuide::plot() const
{
    const auto gauge = m_session.gauge(sender());
    if (!gauge)
        return {};
    std::optional<Volume> zero;
    if (m_session.draft().levels.size() > 1) {
        zero = m_format.volumeFrom(m_form.text(Zero));
        if (!zero)
            zero = m_session.draft().levels[1].poured;
    }
    return tankPicture(*gauge, sender(), zero, m_format);
}

PlotPicture CalibrationGuide::secondPlot() const
{
    const auto gauge = m_session.gauge(sender());
    return gauge ? otherLobePicture(*gauge, sender(), m_format) : PlotPicture();
}

} // namespace undermark
