// SPDX-License-Identifier: GPL-3.0-or-later
//
// The guided calibration's second thoughts: what is asked about before it is believed, and a
// level taken before that is opened again.
#include "app/screen/tank/calibration_guide.h"

#include <utility>

namespace undermark {

// At once where nothing is to be asked; else once the user keeps it.
void CalibrationGuide::askFirst(const std::optional<DraftReading>& reading,
                                std::function<void()> goOn)
{
    const auto car = known();
    auto asked = car ? m_session.doubt(levelAtHand(), reading, typedLitres(), (*car)->vehicle().capacity)
                     : std::nullopt;
    if (!asked)
        return goOn();
    m_problem = Notice{Severity::warning, std::move(*asked)};
    m_doubted = std::move(goOn);
    emit changed();
}

void CalibrationGuide::changeDoubted()
{
    m_problem.reset();
    m_doubted = {};
    m_form.activate(movesLitres() ? Litres : Reading);
    emit changed();
}

void CalibrationGuide::keepDoubted()
{
    m_problem.reset();
    std::exchange(m_doubted, {})();
}

bool CalibrationGuide::movesLitres() const
{
    return m_corrected ? *m_corrected > 0 : m_session.takesLitres();
}

bool CalibrationGuide::takesOut() const
{
    return m_corrected ? m_session.draft().levels[*m_corrected].poured < Volume()
                       : m_session.takesOut();
}

void CalibrationGuide::correct(int row)
{
    const int count = int(m_session.draft().levels.size());
    if (row < 0 || row >= count)
        return;
    m_problem.reset();
    m_corrected = std::size_t(count - 1 - row);
    showStage();
}

// As it was taken; what is not typed anew stays.
void CalibrationGuide::showCorrected()
{
    const CalibrationPoint point = pointsOf({m_session.draft().levels[*m_corrected]}).front();
    m_form.setKnown(Litres, m_format.typed(abs(point.added)));
    m_form.setKnown(Reading, m_format.typed(point.signal.value(), 4));
    if (point.signal2)
        m_form.setKnown(SecondReading, m_format.typed(point.signal2->value(), 4));
    emit changed();
}

void CalibrationGuide::takeCorrection()
{
    std::optional<DraftReading> reading;
    if (!m_form.known(Reading) || (m_session.hasTwoSignals() && !m_form.known(SecondReading))) {
        const auto typed = typedReading();
        if (!typed)
            return;
        reading = *typed;
    }
    askFirst(reading, [this, reading, moved = typedLitres()] {
        if (accept(m_session.correct(*m_corrected, reading, moved)))
            leaveCorrection();
    });
}

void CalibrationGuide::leaveCorrection()
{
    m_corrected.reset();
    showStage();
}

} // namespace undermark
