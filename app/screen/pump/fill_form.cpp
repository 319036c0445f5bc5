// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/pump/fill_form.h"

namespace undermark {

void FillForm::start(const UnitFormat& format, const QString& readingUnit)
{
    m_format = format;
    m_readingUnit = readingUnit;
    m_known.clear();
    m_byTripMeter = m_byTotal = m_more = m_asksWhen = false;
    m_numbers.setLocked(false);
    m_numbers.setDecimalMark(m_format.decimalMark());
    m_numbers.setEntries(entries());
}

void FillForm::turnTo(const QString& readingUnit)
{
    m_readingUnit = readingUnit;
    m_numbers.rename(entries());
    showFields();
}

QList<NumberEntry> FillForm::entries() const
{
    const QString km = m_format.distanceUnit(), litres = m_format.volumeUnit();
    const auto entry = [this](FieldId field, const QString& name, const QString& unit) {
        return NumberEntry{field, name, unit, {}, false, shows(field)};
    };
    return {entry(Litres, tr("fuel put in"), litres),
            entry(Odometer, tr("odometer"), km),
            entry(TripMeter, tr("trip meter"), km),
            entry(Price, tr("price"), m_format.priceUnit()),
            entry(Total, tr("paid in all"), m_format.currency()),
            entry(Cans, tr("of it into cans"), litres),
            entry(Reading, tr("gauge before"), m_readingUnit),
            entry(DaysAgo, tr("filled"), tr("days ago"))};
}

bool FillForm::shows(FieldId field) const
{
    switch (field) {
    case Litres:
        return !m_more;
    case Odometer:
        return !m_more && !m_byTripMeter;
    case TripMeter:
        return !m_more && m_byTripMeter;
    case Price:
        return !m_more && !m_byTotal;
    case Total:
        return !m_more && m_byTotal;
    case Reading:
        return m_more && !m_readingUnit.isEmpty();
    case Cans:
    case DaysAgo:
        return m_more;
    }
    return false;
}

void FillForm::showFields()
{
    for (const NumberEntry& entry : entries())
        m_numbers.setShown(entry.id, entry.shown);
}

// `put` is given each number that a guess and a fill of the log have alike, whether it is
// known, and its text.
template <class Put> void FillForm::eachNumber(const Fill& fill, const Put& put) const
{
    put(Litres, fill.volume > Volume{}, m_format.typed(fill.volume));
    put(Odometer, fill.odometer.has_value(), m_format.typed(fill.odometer.value_or(Distance{})));
    put(TripMeter, fill.sinceLast.has_value(), m_format.typed(fill.sinceLast.value_or(Distance{})));
    put(Price, fill.pricePerLitre.has_value(), m_format.typedPrice(fill.pricePerLitre.value_or(0)));
}

void FillForm::show(const Fill& fill, bool guessed, Instant now)
{
    const auto put = [&](FieldId field, bool known, const QString& text) {
        if (!known)
            return;
        m_numbers.setText(field, text, guessed);
        if (!guessed)
            m_known.insert(field, text);
    };
    eachNumber(fill, put);
    put(Reading, fill.signalBefore.has_value() && !guessed,
        m_format.typed(fill.signalBefore.value_or(Signal{}).value(), 4));
    const auto age = std::chrono::duration_cast<std::chrono::days>(now - fill.time);
    put(DaysAgo, true, QString::number(guessed ? 0 : std::max<qint64>(age.count(), 0)));
    m_byTripMeter = !fill.odometer && fill.sinceLast;
    showFields();
}

void FillForm::askWhen()
{
    m_more = m_asksWhen = true;
    showFields();
    m_numbers.activate(DaysAgo);
}

bool FillForm::isLeftAlone(FieldId field) const
{
    return m_known.contains(field) && m_known[field] == m_numbers.text(field);
}

void FillForm::renew(const Fill& guess)
{
    eachNumber(guess, [this](FieldId field, bool known, const QString& text) {
        if (known && m_numbers.guessed(field))
            m_numbers.setText(field, text, true);
    });
}

QStringList FillForm::switches() const
{
    if (m_more)
        return {tr("Back to the litres"), {}, {}};
    return {tr("More"), m_byTripMeter ? tr("Use odometer") : tr("Use trip meter"),
            m_byTotal ? tr("Use price per %1").arg(m_format.volumeUnit()) : tr("Use paid in all")};
}

void FillForm::turn(int row)
{
    if (switches().value(row).isEmpty())
        return;
    bool& turned = row == 0 ? m_more : row == 1 ? m_byTripMeter : m_byTotal;
    turned = !turned;
    showFields();
    m_numbers.select(m_more ? 0 : row);
}

Result<Fill> FillForm::typed(Fill fill, Instant now) const
{
    const auto litres = [this](const QString& text) { return m_format.volumeFrom(text); };
    const auto pumped = m_numbers.read(Litres, litres);
    const auto cans = m_numbers.read(Cans, litres);
    if (!pumped || !*pumped || **pumped == Volume{})
        return failInput(Sentence::of("How much went in is missing"));
    if (!cans)
        return fail(cans.error());
    if (!isLeftAlone(Litres) || *cans)
        fill.volume = **pumped - cans->value_or(Volume{});
    if (fill.volume <= Volume{})
        return failInput(Sentence::of("All of it went into cans: nothing is left for the tank"));
    for (const auto& done : {readMeter(fill), readPrice(fill, **pumped), readSeldom(fill, now)}) {
        if (!done)
            return fail(done.error());
    }
    return fill;
}

// Of the meter that is not shown a guess does not count.
Result<void> FillForm::readMeter(Fill& fill) const
{
    for (const FieldId meter : {Odometer, TripMeter}) {
        auto& km = meter == TripMeter ? fill.sinceLast : fill.odometer;
        if (isLeftAlone(meter))
            continue;
        km.reset();
        if ((meter == TripMeter) != m_byTripMeter && m_numbers.guessed(meter))
            continue;
        const auto typed =
            m_numbers.read(meter, [this](const QString& text) { return m_format.distanceFrom(text); });
        if (!typed)
            return fail(typed.error());
        km = *typed;
    }
    return {};
}

Result<void> FillForm::readPrice(Fill& fill, Volume pumped) const
{
    if (!m_byTotal && isLeftAlone(Price))
        return {};
    const auto paid = m_byTotal
        ? m_numbers.read(Total, [this](const QString& text) { return m_format.numberFrom(text); })
        : m_numbers.read(Price, [this](const QString& text) { return m_format.pricePerLitreFrom(text); });
    if (!paid)
        return fail(paid.error());
    fill.pricePerLitre = *paid;
    if (fill.pricePerLitre && m_byTotal)
        *fill.pricePerLitre /= pumped.litres();
    return {};
}

Result<void> FillForm::readSeldom(Fill& fill, Instant now) const
{
    const auto number = [this](const QString& text) { return m_format.numberFrom(text); };
    if (!m_readingUnit.isEmpty() && !isLeftAlone(Reading)) {
        const auto reading = m_numbers.read(Reading, number);
        if (!reading)
            return fail(reading.error());
        fill.signalBefore.reset();
        if (*reading)
            fill.signalBefore = Signal::of(**reading);
    }
    if (isLeftAlone(DaysAgo))
        return {};
    const auto days = m_numbers.read(DaysAgo, number);
    if (!days)
        return fail(days.error());
    if (m_asksWhen && !*days)
        return failInput(Sentence::of("The day of the fill is missing"));
    if (*days)
        fill.time = now - std::chrono::days(std::lround(**days));
    return {};
}

} // namespace undermark
