// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/now_tell.h"

#include "app/screen/base/age_text.h"

namespace undermark {

namespace {

// What was told, as the settings keep it: what, when, then numbers, each empty where absent.
QStringList toldWords(const Told& told)
{
    const auto word = [](const auto& quantity, auto number) {
        return quantity ? QString::number(number(*quantity), 'g', 17) : QString();
    };
    const auto km = [](Distance d) { return d.km(); };
    const auto value = [](Signal s) { return s.value(); };
    return {QString::number(int(told.what)),
            QString::number(told.time.time_since_epoch().count()),
            word(told.odometer, km),
            word(told.signal, value),
            word(told.signal2, value),
            word(told.since, km)};
}

std::optional<Told> toldFrom(const QStringList& words)
{
    const int what = words.value(0).toInt();
    if (words.size() != 6 || what < 0 || what > int(Told::What::needleAtZero))
        return std::nullopt;
    const auto number = [&](int index) {
        bool isNumber = false;
        const double value = words[index].toDouble(&isNumber);
        return isNumber ? std::optional(value) : std::nullopt;
    };
    Told told;
    told.what = Told::What(what);
    told.time = Instant(Instant::duration(words[1].toLongLong()));
    if (const auto km = number(2))
        told.odometer = Distance::fromKm(*km);
    if (const auto signal = number(3))
        told.signal = Signal::of(*signal);
    if (const auto signal = number(4))
        told.signal2 = Signal::of(*signal);
    if (const auto km = number(5))
        told.since = Distance::fromKm(*km);
    return told;
}

} // namespace

NowTell::NowTell(const QString& file, QObject* parent)
    : FormModel(parent), m_store(file, QStringLiteral("told"))
{
    connect(&m_form, &NumberForm::edited, this, &NowTell::forgetNotices);
}

void NowTell::setFormat(const UnitFormat& format)
{
    m_format = format;
    showForm();
}

void NowTell::showForm()
{
    const bool atZero = m_told && m_told->what == Told::What::needleAtZero && !m_told->odometer;
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(QList<NumberEntry>{{Odometer, atZero ? tr("odometer at the zero mark") : tr("odometer"),
                                          m_format.distanceUnit(), {}, false, true}}
                      + m_fields.entries(Reading, SecondReading));
    emit changed();
}

void NowTell::look(const CarKnowledge& car, Instant now)
{
    m_now = now;
    const bool another = m_store.turnTo(car.log.vehicle.id.uuid);
    const ReadingFields fields = ReadingFields::of(car);
    if (another || fields != m_fields) {
        m_fields = fields;
        if (another) {
            m_before.reset();
            m_proof.reset();
            m_told = toldFrom(m_store.words());
        }
        showForm();
    }
    if (m_told && !stillCounts(*m_told, car.log)) {
        m_proof = proofOf(*m_told, car.log);
        m_told.reset();
        if (!m_proof)
            keep(); // (else it is found there again until it is answered)
        showForm();
    }
    emit changed();
}

QString NowTell::standing(Instant now) const
{
    if (!m_told)
        return {};
    const QString age = ageText(now - m_told->time);
    switch (m_told->what) {
    case Told::What::odometer:
        return tr("odometer, %1").arg(age);
    case Told::What::reading:
        return tr("reading, %1").arg(age);
    case Told::What::needleAtZero:
        return tr("needle at zero, %1").arg(age);
    }
    return {};
}

void NowTell::tell(std::optional<Told> told)
{
    m_notices.clear();
    m_before = std::exchange(m_told, told);
    m_proof.reset();
    keep();
    showForm();
    emit toldAnew();
    if (m_notices.empty())
        emit taken();
}

void NowTell::refuse(const Error& why)
{
    m_told = m_before;
    keep();
    m_notices = {noticeOf(why)};
    emit changed();
}

void NowTell::needleAtZero()
{
    Told told;
    told.what = Told::What::needleAtZero;
    told.time = m_now;
    tell(told);
}

void NowTell::take()
{
    const auto odometer = m_format.distanceFrom(m_form.text(Odometer));
    const TypedReading reading = typedReading(m_form, m_format, Reading, SecondReading);
    if (reading.any())
        return tell(readingTyped(reading));
    Told told;
    told.time = m_now;
    told.odometer = odometer;
    if (!odometer) {
        m_notices = {{Severity::error,
                      Sentence::of("The odometer or a reading is missing.")}};
        return emit changed();
    }
    if (m_told && m_told->what == Told::What::needleAtZero) {
        Told atZero = *m_told;
        if (!atZero.odometer)
            atZero.odometer = odometer; // as it stood there
        else if (*odometer >= *atZero.odometer)
            atZero.since = *odometer - *atZero.odometer;
        else {
            m_notices = {{Severity::error,
                          Sentence::of("The odometer stood at %1 at the zero mark already.",
                                       amount(*atZero.odometer, 0))}};
            return emit changed();
        }
        return tell(atZero);
    }
    tell(told);
}

void NowTell::drop()
{
    tell(std::nullopt);
}

Told NowTell::readingTyped(const TypedReading& reading) const
{
    Told told;
    told.what = Told::What::reading;
    told.time = m_now;
    told.odometer = m_format.distanceFrom(m_form.text(Odometer));
    told.signal = reading.first;
    told.signal2 = reading.second;
    return told;
}

// What is typed is told first: what cannot be is refused, and not kept either.
void NowTell::keepInLog()
{
    m_notices.clear();
    if (const TypedReading reading = typedReading(m_form, m_format, Reading, SecondReading); reading.any())
        tell(readingTyped(reading));
    if (m_notices.empty() && m_told && m_told->what == Told::What::reading)
        return emit levelKept(levelOf(*m_told));
    if (m_notices.empty())
        m_notices = {{Severity::error, Sentence::of("The reading is missing.")}};
    emit changed();
}

void NowTell::refuseToKeep(const Error& why)
{
    m_notices = {noticeOf(why)};
    emit changed();
}

QString NowTell::proofWord() const
{
    return m_proof ? tr("Note as a proof: %1 past zero and still running")
                         .arg(m_format.distanceWithUnit(m_proof->distance->mean))
                   : QString();
}

void NowTell::noteProof()
{
    if (m_proof)
        emit proofNoted(*m_proof);
}

void NowTell::dropProof()
{
    m_proof.reset();
    keep();
    emit changed();
}

void NowTell::keep()
{
    m_store.keep(m_told ? toldWords(*m_told) : QStringList());
}

} // namespace undermark
