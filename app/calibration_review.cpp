// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration's review: curves and what they rest on.
#include "app/calibration_guide.h"
#include "app/tank_picture.h"

namespace undermark {

QList<Fact> CalibrationGuide::reviewFacts() const
{
    QList<Fact> facts{{tr("levels"), QString::number(m_draft.levels.size())}};
    if (twoSignals()) {
        const auto curves = saddle();
        return curves ? facts + lobeFacts(*curves, m_format) : QList<Fact>();
    }
    const auto fitted = fit();
    if (!fitted || !fitted->curve)
        return {};
    facts.append({tr("signal"), *fitted->direction == SignalDirection::rising
                                    ? tr("rises as litres rise")
                                    : tr("falls as litres rise")});
    if (fitted->residualSd)
        facts.append({tr("a point misses the curve by"), m_format.volume({*fitted->residualSd, {}})});
    if (m_draft.firstLobe && m_draft.secondLobe)
        facts.append({tr("lobes that empty unequally"),
                      tr("a level is up to ± %1 less sure, most so half full")
                          .arg(m_format.volume({seriesSpread(*m_draft.firstLobe, *m_draft.secondLobe), {}}))});
    return facts;
}

PlotPicture CalibrationGuide::plot() const
{
    if (twoSignals()) {
        const auto curves = saddle();
        return curves ? lobePicture(curves->first, sender(), Lobe::withPump, m_format) : PlotPicture();
    }
    const auto fitted = fit();
    if (!fitted)
        return {};
    std::optional<Volume> zero;
    if (m_draft.levels.size() > 1)
        zero = m_format.volumeFrom(m_form.text(Zero)).value_or(m_draft.levels[1].poured);
    return tankPicture(points(), *fitted, sender(), zero, m_format);
}

PlotPicture CalibrationGuide::secondPlot() const
{
    if (!twoSignals())
        return {};
    const auto curves = saddle();
    return curves ? lobePicture(curves->second, sender(), Lobe::other, m_format) : PlotPicture();
}

} // namespace undermark
