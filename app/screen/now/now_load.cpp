// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_load.h"

#include <array>

namespace undermark {

namespace {

constexpr std::array kSteps{Fraction::fromPercent(10), Fraction::fromPercent(20),
                            Fraction::fromPercent(30)};

} // namespace

NowLoad::NowLoad(const QString& file, QObject* parent)
    : FormModel(parent), m_store(file, QStringLiteral("load")), m_word(tr("towing"))
{
    connect(&m_form, &NumberForm::edited, this, &NowLoad::forgetNotices);
}

QString NowLoad::standing() const
{
    if (!m_load)
        return {};
    const QString word = QString::fromStdString(m_load->word);
    const QString percent = m_format.typed(m_load->more.percent(), 1);
    return word.isEmpty() ? tr("%1 % more").arg(percent) : tr("%1: %2 % more").arg(word, percent);
}

QStringList NowLoad::steps() const
{
    QStringList names;
    for (const Fraction step : kSteps)
        names.append(tr("%1 %").arg(m_format.number(step.percent(), 0)));
    return names;
}

int NowLoad::step() const
{
    for (std::size_t i = 0; i < kSteps.size(); ++i)
        if (m_load && m_load->more == kSteps[i])
            return int(i);
    return -1;
}

void NowLoad::setFormat(const UnitFormat& format)
{
    m_format = format;
    if (!m_load)
        m_word = tr("towing");
    showForm();
}

void NowLoad::showForm()
{
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries({{0, tr("more than the log says"), QStringLiteral("%"), {}, false, true}});
    forgetNotices();
}

void NowLoad::look(const CarKnowledge& car, Instant now)
{
    m_now = now;
    if (!m_store.turnTo(car.log.vehicle.id.uuid))
        return;
    restore();
    showForm();
}

std::vector<Notice> NowLoad::doubts(const VehicleLog& log) const
{
    if (!m_load || !isLearnt(*m_load, log))
        return {};
    return {{Severity::info,
             Sentence::of("A tank was filled since \"%1\" was told: the log knows some of it by "
                          "now, and %2 are counted on top.",
                          m_load->word, amount(m_load->more.percent(), 1, "%"))}};
}

void NowLoad::typeWord(const QString& word)
{
    m_word = word;
    if (m_load) {
        m_load->word = word.simplified().toStdString();
        keep();
    }
    emit changed();
}

void NowLoad::takeStep(int step)
{
    if (step >= 0 && std::size_t(step) < kSteps.size())
        tell(kSteps[std::size_t(step)]);
}

void NowLoad::take()
{
    const auto percent = m_format.numberFrom(m_form.text(0));
    const Fraction more = Fraction::fromPercent(percent.value_or(0));
    if (percent && more.ratio() > 0 && more <= kMostMore)
        return tell(more);
    m_notices = {{Severity::error, Sentence::of("How much more it burns is a percentage above 0, "
                                                "%1 at most.",
                                                amount(kMostMore.percent(), 0, "%"))}};
    emit changed();
}

void NowLoad::drop()
{
    tell(std::nullopt);
}

void NowLoad::tell(std::optional<Fraction> more)
{
    m_load.reset();
    if (more)
        m_load = Load{m_word.simplified().toStdString(), *more, m_now};
    keep();
    showForm();
    emit toldAnew();
    emit taken();
}

void NowLoad::keep()
{
    QStringList words;
    if (m_load)
        words = {QString::fromStdString(m_load->word), QString::number(m_load->more.ratio(), 'g', 17),
                 QString::number(m_load->since.time_since_epoch().count())};
    m_store.keep(words);
}

void NowLoad::restore()
{
    m_load.reset();
    const QStringList kept = m_store.words();
    if (kept.size() != 3)
        return;
    const Fraction more = Fraction::fromRatio(kept[1].toDouble());
    if (!(more.ratio() > 0 && more <= kMostMore))
        return;
    m_word = kept[0];
    m_load = Load{kept[0].toStdString(), more, Instant(Instant::duration(kept[2].toLongLong()))};
}

} // namespace undermark
