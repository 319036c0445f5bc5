// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/fuel_card.h"

#include "app/screen/base/sentence_text.h"

namespace undermark {

FuelCard::FuelCard(const PlanAnswer& plan, std::function<std::filesystem::path()> folder,
                   std::function<CardWishes()> wishes, QObject* parent)
    : QObject(parent), m_plan(plan), m_folder(std::move(folder)), m_wishes(std::move(wishes))
{
}

void FuelCard::setFormat(const UnitFormat& format)
{
    m_format = format;
    startAnew();
}

void FuelCard::startAnew()
{
    m_done.clear();
    emit changed();
}

void FuelCard::write()
{
    if (!m_plan.feasible())
        return;
    const std::filesystem::path file = m_folder() / "fuel-card.pdf";
    const UnitFormat ofTheCard({}, m_format.locale()); // its columns are litres and km
    const auto written = writePlanCard(
        m_plan.planned()->request, m_plan.planned()->plan, m_wishes(), file,
        [&](const Sentence& words) { return sentenceText(words, ofTheCard).toStdString(); });
    m_done = written ? tr("Written to %1").arg(QString::fromStdString(file.string()))
                     : sentenceText(sentenceOf(written.error()), m_format);
    emit changed();
}

} // namespace undermark
