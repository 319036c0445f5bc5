// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/entry_form.h"

#include "app/car/car_tanks.h"
#include "app/screen/base/mode_name.h"
#include "engine/tank/reserve_prior.h"

#include <cmath>

namespace undermark {

EntryForm::EntryForm(Car& car, QObject* parent) : FormModel(parent), m_car(car)
{
    connect(&m_form, &NumberForm::edited, this, &EntryForm::forgetNotices);
}

bool EntryForm::isDriven() const
{
    return !m_proof || m_proof == ProofKind::pastZero || m_proof == ProofKind::stalled;
}

QList<NumberEntry> EntryForm::entries() const
{
    const QString litres = m_format.volumeUnit();
    const bool drained = m_proof == ProofKind::drained;
    const auto known = m_car.knowledge();
    const auto tank = known ? carOfTank(**known, m_tanks.tank()) : fail(known.error());
    const bool read = drained && tank && tank->gauge.curve();
    const QString unit = read ? QString::fromStdString(tank->vehicle().sender.unit) : QString();
    return {{Km, m_proof ? tr("driven past the zero mark") : tr("driven"), m_format.distanceUnit(), {},
             false, isDriven()},
            {Litres, drained ? tr("pumped out, from the zero mark") : tr("poured in, to the zero mark"),
             litres, {}, false, !isDriven()},
            {LeftBehind, tr("measured left behind"), litres, {}, false, drained},
            {Reading, tr("reading before, if not zero"), unit, {}, false, read},
            {DaysAgo, tr("that was"), tr("days ago"), QStringLiteral("0"), false, true, true},
            {IdleMinutes, tr("idling, if any"), tr("min"), {}, false, !m_proof},
            {ColdStarts, tr("cold starts, if known"), {}, {}, false, !m_proof}};
}

void EntryForm::start(std::optional<ProofKind> proof)
{
    m_proof = proof;
    m_mode = 0;
    m_notices.clear();
    lookForTanks();
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    emit changed();
}

void EntryForm::lookForTanks()
{
    if (const auto known = m_car.knowledge())
        m_tanks.look((*known)->log);
}

void EntryForm::setTank(const std::string& tank)
{
    lookForTanks();
    m_tanks.mean(tank);
    m_tankNamed = true;
}

QList<Choice> EntryForm::tanks() const
{
    return m_proof && !m_tankNamed ? m_tanks.choices() : QList<Choice>();
}

// What was typed was of the other one.
void EntryForm::chooseTank(int option)
{
    if (m_tanks.choose(option))
        start(m_proof);
}

void EntryForm::startTrip()
{
    start(std::nullopt);
}

void EntryForm::startProof(ProofKind kind)
{
    start(kind);
}

void EntryForm::setFormat(const UnitFormat& format)
{
    m_format = format;
    start(m_proof);
}

QString EntryForm::title() const
{
    return m_proof ? tr("A proof of the hidden reserve") : tr("A trip");
}

QString EntryForm::caution() const
{
    if (!m_proof)
        return {};
    if (isDriven())
        return tr("Caution: note what happened. Never test the reserve on a public road.");
    return tr("Caution: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, "
              "earthed, approved containers on the ground, extinguisher in reach; by a qualified person.");
}

QStringList EntryForm::kinds() const
{
    if (!m_proof)
        return {};
    return {tr("Drained"), tr("Base poured anew"), tr("Stalled past zero"), tr("Past zero, still running")};
}

void EntryForm::chooseKind(int kind)
{
    if (m_proof && kind >= 0 && kind < kinds().size())
        start(ProofKind(kind));
}

// Of a proof the usual mix comes first; a trip has been of one kind.
std::vector<std::string> EntryForm::modeNames() const
{
    std::vector<std::string> names;
    const auto known = m_car.knowledge();
    if (!isDriven() || !known)
        return names;
    if (m_proof)
        names.emplace_back();
    for (const Entry<Mode>& mode : (*known)->log.modes)
        names.push_back(mode.value.name);
    return names;
}

QStringList EntryForm::modes() const
{
    QStringList words;
    for (const std::string& name : modeNames())
        words.append(name.empty() ? tr("Usual mix") : modeName(name));
    return words;
}

void EntryForm::chooseMode(int mode)
{
    if (mode < 0 || mode >= modes().size())
        return;
    m_mode = mode;
    emit changed();
}

// Absent where it is empty, or not asked for; `all` says what is the first no number.
template <class From>
std::invoke_result_t<From, QString> EntryForm::read(FieldId field, From from, Result<void>& all) const
{
    const auto value = m_form.read(field, from);
    if (!value && all)
        all = fail(value.error());
    return value.value_or(std::nullopt);
}

std::optional<Volume> EntryForm::litres(FieldId field, Result<void>& all) const
{
    return read(field, [this](const QString& text) { return m_format.volumeFrom(text); }, all);
}

std::optional<Distance> EntryForm::driven(Result<void>& all) const
{
    return read(Km, [this](const QString& text) { return m_format.distanceFrom(text); }, all);
}

std::optional<double> EntryForm::number(FieldId field, Result<void>& all) const
{
    return read(field, [this](const QString& text) { return m_format.numberFrom(text); }, all);
}

Instant EntryForm::time(Result<void>& all) const
{
    return m_car.time() - std::chrono::days(std::lround(number(DaysAgo, all).value_or(0.0)));
}

std::string EntryForm::chosenMode() const
{
    const auto names = modeNames();
    return std::size_t(m_mode) < names.size() ? names[std::size_t(m_mode)] : std::string();
}

Result<Trip> EntryForm::trip() const
{
    Result<void> all;
    const auto km = driven(all);
    const auto idle = number(IdleMinutes, all), starts = number(ColdStarts, all);
    Trip trip;
    trip.time = time(all);
    if (!all)
        return fail(all.error());
    if (!km && !idle)
        return failInput(Sentence::of("How far it went is missing"));
    trip.distance = km.value_or(Distance());
    trip.mode = chosenMode();
    if (idle)
        trip.idle = std::chrono::duration<double, std::ratio<60>>(*idle);
    if (starts)
        trip.starts = int(std::lround(*starts));
    return trip;
}

Result<Proof> EntryForm::proof() const
{
    Result<void> all;
    const auto km = driven(all);
    const auto volume = litres(Litres, all), left = litres(LeftBehind, all);
    const auto reading = number(Reading, all);
    Proof proof;
    proof.time = time(all);
    if (!all)
        return fail(all.error());
    proof.kind = *m_proof;
    proof.tank = tankName(m_tanks.tank());
    if (km)
        proof.distance = Estimate<Distance>{*km, kTripMeterSd};
    if (volume)
        proof.volume = Estimate<Volume>{*volume, kJugSd};
    if (left)
        proof.leftBehind = Estimate<Volume>{*left, kJugSd};
    if (reading)
        proof.signal = Signal::of(*reading);
    if (const std::string mode = chosenMode(); !mode.empty())
        proof.mode = mode;
    return proof;
}

void EntryForm::save()
{
    const auto record = [this](const auto& value) {
        return value ? m_car.record(*value) : fail(value.error());
    };
    const Result<EntryId> entry = m_proof ? record(proof()) : record(trip());
    if (entry)
        return emit stored(*entry);
    m_notices = {noticeOf(entry.error())};
    emit changed();
}

} // namespace undermark
