// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Tank page's hand-over sheet.
#include "app/paper/hand_over_sheet.h"
#include "app/screen/base/sentence_text.h"
#include "app/screen/logbook/log_lines.h"
#include "app/screen/tank/tank_view_model.h"

namespace undermark {

// Beside the logbook, in litres and km, in the words of the screen.
void TankViewModel::writeSheet()
{
    if (!calibrated())
        return;
    const std::filesystem::path file = m_car.folder() / fileOfTank("hand-over-sheet", "pdf", m_tanks.tank());
    const UnitFormat ofTheSheet({}, m_format.locale());
    const SheetPhotos photos = sheetPhotos(m_known->log, m_car.logbookFile());
    const auto written = writeHandOverSheet(
        {*m_known, m_car.time(), {}, photos.there}, file,
        [&](const Sentence& words) { return sentenceText(words, ofTheSheet).toStdString(); });
    m_sheetDone = written ? tr("Written to %1").arg(QString::fromStdString(file.string()))
                          : sentenceText(sentenceOf(written.error()), m_format);
    for (const Error& missing : photos.missing)
        m_sheetDone += QStringLiteral("\n") + sentenceText(sentenceOf(missing), m_format);
    emit changed();
}

QString TankViewModel::verifiedText() const
{
    const VerificationRecord* tried = m_known ? m_known->log.latestVerification() : nullptr;
    if (!tried)
        return tr("not yet");
    return (tried->passed ? tr("passed, %1") : tr("NOT PASSED, %1")).arg(dateText(tried->time));
}

} // namespace undermark
