// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration's review: curves, what they rest on, and saving.
#include "app/screen/tank/calibration_guide.h"
#include "app/screen/tank/tank_picture.h"

namespace undermark {

void CalibrationGuide::save()
{
    const auto zero = m_format.volumeFrom(m_form.text(Zero));
    if (!zero) {
        refuse(Sentence::of("Where the zero mark is, is missing."));
        return;
    }
    m_draft.zeroMark = zero;
    if (const auto why = whyNoCurve()) {
        m_problem = noticeOf(*why);
        emit changed();
        return;
    }
    Calibration calibration;
    calibration.points = pointsOf(m_draft.levels);
    calibration.zeroMark = *zero;
    calibration.time = m_car.time();
    if (const auto saved = m_car.record(calibration); !saved) {
        m_problem = noticeOf(saved.error());
        emit changed();
        return;
    }
    startAgain();
    m_saved = true;
    emit changed();
    emit stored();
}

std::vector<CalibrationPoint> CalibrationGuide::points() const
{
    std::vector<DraftLevel> levels = m_draft.levels;
    if (!m_draft.current.readings.empty())
        levels.push_back(m_draft.current);
    return pointsOf(levels);
}

std::optional<CalibrationFit> CalibrationGuide::fit() const
{
    const auto all = points();
    if (twoSignals() || all.size() < 2)
        return std::nullopt;
    auto fitted = fitCalibration(all, sender());
    return fitted ? std::optional(std::move(*fitted)) : std::nullopt;
}

Result<SaddleCurves> CalibrationGuide::saddle() const
{
    return fitSaddle(points());
}

std::optional<Error> CalibrationGuide::whyNoCurve() const
{
    if (twoSignals()) {
        const auto curves = saddle();
        return curves ? std::nullopt : std::optional(curves.error());
    }
    const auto fitted = fit();
    if (fitted && fitted->curve)
        return std::nullopt;
    return failInput(Sentence::of("These readings allow no curve")).value();
}

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
