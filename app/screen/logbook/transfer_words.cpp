// SPDX-License-Identifier: GPL-3.0-or-later
//
// What import and export say.
#include "app/screen/logbook/log_lines.h"
#include "app/screen/logbook/transfer_view_model.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kShown = 12; // rows of the preview

} // namespace

std::size_t TransferViewModel::freshRows() const
{
    return std::visit([](const auto& preview) { return preview.fresh.size(); }, m_preview);
}

QString TransferViewModel::title() const
{
    switch (m_stage) {
    case Stage::start:
        return tr("Import and export");
    case Stage::files:
        return m_merging ? tr("Which logbook?") : tr("Which table?");
    case Stage::units:
        return tr("What the numbers in the table are");
    case Stage::preview:
        return tr("What would be added");
    case Stage::merge:
        return tr("Take in another logbook");
    case Stage::done:
        return tr("Done");
    }
    return {};
}

QString TransferViewModel::text() const
{
    const QString file = QString::fromStdString(m_file.filename().string());
    switch (m_stage) {
    case Stage::start:
        return tr("Everything goes into a new folder, beside the logbook or on a stick; nothing is written over.");
    case Stage::files:
        return m_merging   ? tr("A logbook or bundle of another device ends in .sqlite.")
               : ofTrips() ? tr("A table is a .csv file with the columns date, km and mode, and "
                                "what may follow: idle_min, starts, climb_m.")
                           : tr("A table is a .csv file with the columns date and litres, and what "
                                "may follow: odometer_km, full, price_per_l.");
    case Stage::units:
        return tr("%1: nothing is guessed. Look at each line.").arg(file);
    case Stage::preview:
        return std::visit([this](const auto& preview) {
            QString text = (ofTrips() ? tr("Would add %1 trips") : tr("Would add %1 fills"))
                               .arg(preview.fresh.size());
            if (preview.duplicates > 0)
                text += tr("; %1 are in the log already").arg(preview.duplicates);
            if (preview.ofOthers > 0)
                text += tr("; %1 are of other vehicles").arg(preview.ofOthers);
            return text + u'.';
        }, m_preview);
    case Stage::merge:
        return tr("Everything in %1 that is not here yet is taken in; what is here stays. The "
                  "logbook as it was is kept beside it.")
            .arg(file);
    case Stage::done:
        return m_done;
    }
    return {};
}

QList<TransferViewModel::Unit> TransferViewModel::unitsStated() const
{
    if (ofTrips())
        return {Kilometres, Dates};
    return {Litres, Kilometres, Dates, Rates, Temperatures};
}

QList<Choice> TransferViewModel::units() const
{
    const QList<Choice> all{
        {tr("Litres in the table are"), {tr("litres"), tr("US gallons"), tr("imperial gallons")}, m_units[Litres]},
        {tr("Kilometres in the table are"), {tr("kilometres"), tr("miles")}, m_units[Kilometres]},
        {tr("Dates are written"), {tr("2026-05-31"), tr("31.5.2026"), tr("5/31/2026")}, m_units[Dates]},
        {tr("The car's own figure is"), {tr("L/100 km"), tr("km/L"), tr("US mpg"), tr("imperial mpg")}, m_units[Rates]},
        {tr("Temperatures are"), {tr("°C"), tr("°F")}, m_units[Temperatures]}};
    QList<Choice> stated;
    for (const Unit unit : unitsStated())
        stated.append(all[unit]);
    return stated;
}

QList<Fact> TransferViewModel::facts() const
{
    QList<Fact> facts;
    if (m_stage != Stage::preview)
        return facts;
    std::visit([&](const auto& preview) {
        for (std::size_t i = 0; i < std::min(preview.fresh.size(), kShown); ++i)
            facts.append({dateTimeText(preview.fresh[i].time), summary(preview.fresh[i], m_format)});
    }, m_preview);
    if (freshRows() > kShown)
        facts.append({tr("and more"), (ofTrips() ? tr("%1 trips") : tr("%1 fills")).arg(freshRows() - kShown)});
    return facts;
}

QString TransferViewModel::confirmWord() const
{
    switch (m_stage) {
    case Stage::units:
        return tr("Show what would be added");
    case Stage::preview:
        if (freshRows() == 0)
            return {};
        return (ofTrips() ? tr("Add %1 trips") : tr("Add %1 fills")).arg(freshRows());
    case Stage::merge:
        return tr("Take it in");
    case Stage::start:
    case Stage::files:
    case Stage::done:
        return {};
    }
    return {};
}

} // namespace undermark
