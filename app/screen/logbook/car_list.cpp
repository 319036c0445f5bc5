// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/car_list.h"

#include "app/car/car.h"
#include "app/screen/base/age_text.h"
#include "app/screen/base/sentence_text.h"
#include "app/screen/logbook/log_lines.h"

namespace undermark {

namespace {

constexpr int kOldMonths = 12;

} // namespace

void CarList::setWatched(bool watched)
{
    if (m_watched == watched)
        return;
    m_watched = watched;
    refresh();
}

void CarList::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void CarList::refresh()
{
    m_files.clear();
    if (const auto logs = m_watched ? m_car.logs() : Result<std::vector<VehicleLog>>())
        for (const VehicleLog& log : *logs)
            m_files.push_back(carFileOf(log, m_car.time()));
    emit changed();
}

QList<Choice> CarList::choices() const
{
    return {{tr("Which cars?"), {tr("All"), tr("Due"), tr("Calibrated over a year ago")}, which()}};
}

void CarList::choose(int option)
{
    m_wish.due = option == Due;
    m_wish.months = option == Old ? std::optional(kOldMonths) : std::nullopt;
    emit changed();
}

void CarList::setName(const QString& part)
{
    m_wish.name = part.toStdString();
    emit changed();
}

QString CarList::count() const
{
    return tr("%1 of %2 cars").arg(lines().size()).arg(m_files.size());
}

QString CarList::dueText(const CarFile& file) const
{
    QStringList all;
    for (const Sentence& each : file.due)
        all.append(sentenceText(each, m_format));
    return all.join(QLatin1Char('\n'));
}

QString CarList::detail(const CarFile& file) const
{
    QStringList all;
    if (file.calibrated)
        all.append(tr("calibrated %1").arg(ageText(m_car.time() - *file.calibrated)));
    if (file.handedOver)
        all.append(tr("handed over on %1").arg(dateText(*file.handedOver)));
    if (!file.due.empty())
        all.append(dueText(file));
    return all.join(QLatin1Char('\n'));
}

QList<CarLine> CarList::lines() const
{
    QList<CarLine> lines;
    for (int row = 0; const CarFile& file : m_files) {
        if (isWanted(file, m_wish, m_car.time()))
            lines.append({QString::fromStdString(file.vehicle.value.name), detail(file), row,
                          file.vehicle.id.uuid == m_car.shownCar()});
        ++row;
    }
    return lines;
}

QList<Fact> CarList::due() const
{
    QList<Fact> facts;
    if (many())
        return facts;
    for (const CarFile& file : m_files)
        if (!file.due.empty())
            facts.append({QString::fromStdString(file.vehicle.value.name), dueText(file)});
    return facts;
}

} // namespace undermark
