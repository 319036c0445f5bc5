// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/car_sheet.h"

#include "app/car/car_tanks.h"
#include "app/car/sheet_check.h"
#include "app/screen/base/setup_view_model.h"
#include "app/screen/tank/calibration_guide.h"
#include "engine/calibration/circuit.h"
#include "engine/tank/reserve_prior.h"

namespace undermark {

namespace {

constexpr double kMinutesAnHour = 60.0;

// What a vehicle states of its own tank and a further tank of itself, from the one to the other.
template <class From, class To>
void copyTank(const From& from, To& to)
{
    to.name = from.name;
    to.capacity = from.capacity;
    to.leftBehind = from.leftBehind;
    to.unusable = from.unusable;
    to.zeroMark = from.zeroMark;
    to.zeroSince = from.zeroSince;
    to.sender = from.sender;
}

} // namespace

CarSheet::CarSheet(Car& car, QObject* parent) : FormModel(parent), m_car(car)
{
    connect(&m_form, &NumberForm::edited, this, &CarSheet::touch);
}

QList<NumberEntry> CarSheet::entries() const
{
    const QString litres = m_format.volumeUnit();
    const Knowledge tank = known();
    const bool calibrated = tank && tank->gauge.isKnown(); // it says itself where zero is
    const Sender& sender = m_sheet.sender;
    const bool pulledUp = readsVoltsBehindPullUp(sender);
    return {{Capacity, tr("tank, to the first click"), litres, {}, false, true},
            {ZeroMark, tr("under the zero mark, if known"), litres, {}, false, !calibrated},
            {LeftBehind, tr("left behind when the pump spits"), litres, {}, false, true},
            {Unusable, tr("left when the engine starves"), litres, {}, false, true},
            {Lamp, tr("usable when the lamp lights"), litres, {}, false, ofCar()},
            {Mass, tr("mass as driven, for climbs"), tr("kg"), {}, false, ofCar()},
            {Transfer, tr("pumped over, in a minute"), litres, {}, false,
             m_further && m_further->feed == TankFeed::pumpedOver},
            {Supply, tr("supply of the sender"), tr("V"), {}, false,
             pulledUp || sender.circuit == CircuitKind::ratiometric},
            {PullUp, tr("pull-up of the sender"), tr("ohm"), {}, false, pulledUp}};
}

Knowledge CarSheet::known() const
{
    const auto car = m_adding ? fail(Error{}) : m_car.knowledge();
    return car ? knownOfTank(*car, m_tank) : Knowledge();
}

Choice CarSheet::fuelOrFeed() const
{
    if (m_further)
        return {tr("how it feeds"),
                {tr("level with the car's own"), tr("by a tap"), tr("pumped over into the car's own")},
                int(m_further->feed)};
    return {tr("fuel"), SetupViewModel::fuels(), int(m_sheet.fuel)};
}

QList<Choice> CarSheet::choices() const
{
    const QStringList units = meterUnits(m_sheet.sender);
    return {fuelOrFeed(),
            {tr("sender"),
             {tr("as it is"), tr("resistive"), tr("share of supply"), tr("per cent"), tr("counts")},
             int(m_sheet.sender.circuit)},
            {tr("the meter shows"), units,
             int(units.indexOf(QString::fromStdString(m_sheet.sender.unit)))}};
}

void CarSheet::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_form.setDecimalMark(format.decimalMark());
    if (m_touched)
        m_form.rename(entries());
    else
        refresh();
    emit changed();
}

void CarSheet::startOver()
{
    m_touched = m_adding = false;
    refresh();
}

void CarSheet::setTank(const std::string& tank)
{
    if (tank == m_tank)
        return;
    m_tank = tank;
    m_touched = m_adding = false;
}

void CarSheet::addTank()
{
    m_touched = false;
    m_adding = true;
    m_further = ExtraTank();
    m_sheet = Vehicle();
    m_sheet.name = tr("Second tank").toStdString();
    show();
}

Result<CarSheet::Stated> CarSheet::recorded() const
{
    if (m_tank.empty()) {
        const auto vehicle = m_car.vehicle();
        return vehicle ? Result<Stated>({vehicle->value, {}}) : fail(vehicle.error());
    }
    const auto at = tankAtHand(m_car, m_tank);
    if (!at)
        return fail(at.error());
    Stated stated{{}, at->further->value};
    copyTank(*stated.further, stated.sheet);
    return stated;
}

void CarSheet::refresh()
{
    if (m_touched || m_adding)
        return;
    const auto now = recorded();
    if (!now)
        return;
    m_sheet = now->sheet;
    m_further = now->further;
    show();
}

void CarSheet::show()
{
    m_form.setEntries(entries());
    const auto put = [this](FieldId field, const std::optional<Volume>& litres) {
        if (litres)
            m_form.setKnown(field, m_format.typed(*litres));
    };
    const auto mean = [](const std::optional<Estimate<Volume>>& estimate) {
        return estimate ? std::optional(estimate->mean) : std::nullopt;
    };
    if (!m_adding)
        put(Capacity, m_sheet.capacity);
    put(ZeroMark, m_sheet.zeroMark);
    put(LeftBehind, mean(m_sheet.leftBehind));
    put(Unusable, mean(m_sheet.unusable));
    put(Lamp, m_sheet.lamp);
    if (m_further && m_further->transfer)
        put(Transfer, Volume::fromLitres(m_further->transfer->litresPerHour() / kMinutesAnHour));
    if (m_sheet.massKg)
        m_form.setKnown(Mass, m_format.typed(*m_sheet.massKg, 0));
    if (m_sheet.sender.supplyVolts)
        m_form.setKnown(Supply, m_format.typed(*m_sheet.sender.supplyVolts, 2));
    if (m_sheet.sender.pullUpOhms)
        m_form.setKnown(PullUp, m_format.typed(*m_sheet.sender.pullUpOhms, 1));
    check();
}

void CarSheet::touch()
{
    m_touched = true;
    check();
}

// Says what contradicts the calibration, as it stands.
void CarSheet::check()
{
    m_notices.clear();
    const Knowledge tank = known();
    const auto stated = typed();
    if (tank && stated)
        m_notices = doubtsOf(stated->sheet, *tank);
    emit changed();
}

void CarSheet::setName(const QString& name)
{
    if (name == this->name() || !renamable())
        return;
    m_sheet.name = name.toStdString();
    touch();
}

void CarSheet::choose(int choice, int option)
{
    const QList<Choice> all = choices();
    if (choice < 0 || choice >= all.size() || option < 0 || option >= all[choice].options.size())
        return;
    if (choice == OfFuelOrFeed && m_further)
        m_further->feed = TankFeed(option);
    else if (choice == OfFuelOrFeed)
        m_sheet.fuel = FuelKind(option);
    else if (choice == OfCircuit)
        m_sheet.sender.circuit = CircuitKind(option);
    else
        m_sheet.sender = readIn(m_sheet.sender, all[choice].options[option].toStdString());
    for (const NumberEntry& entry : entries())
        m_form.setShown(entry.id, entry.shown);
    touch();
}

// What is empty is not known.
template <class T, class From>
Result<void> CarSheet::read(FieldId field, std::optional<T>& into, From from) const
{
    if (m_form.known(field))
        return {};
    const auto value = m_form.read(field, from);
    if (!value)
        return fail(value.error());
    into = *value;
    return {};
}

// One that was estimated before keeps its spread.
Result<void> CarSheet::readEstimate(FieldId field, std::optional<Estimate<Volume>>& into,
                                    Volume usualSd) const
{
    std::optional<Volume> mean = into ? std::optional(into->mean) : std::nullopt;
    const auto done = read(field, mean, [this](const QString& text) { return m_format.volumeFrom(text); });
    if (!done || !mean)
        into.reset();
    else
        into = Estimate<Volume>{*mean, into ? into->sd : usualSd};
    return done;
}

Result<CarSheet::Stated> CarSheet::typed() const
{
    const auto litres = [this](const QString& text) { return m_format.volumeFrom(text); };
    const auto number = [this](const QString& text) { return m_format.numberFrom(text); };
    Vehicle sheet = m_sheet;
    sheet.name = name().trimmed().toStdString();
    std::optional<Volume> capacity = sheet.capacity, perMinute;
    for (const auto& done : {read(Capacity, capacity, litres), read(ZeroMark, sheet.zeroMark, litres),
                             readEstimate(LeftBehind, sheet.leftBehind, kUsualLeftBehind.sd),
                             readEstimate(Unusable, sheet.unusable, kUsualLeftBehind.sd),
                             read(Lamp, sheet.lamp, litres), read(Transfer, perMinute, litres),
                             read(Mass, sheet.massKg, number),
                             read(Supply, sheet.sender.supplyVolts, number),
                             read(PullUp, sheet.sender.pullUpOhms, number)})
        if (!done)
            return fail(done.error());
    if (!capacity || *capacity == Volume{})
        return failInput(Sentence::of("How much the tank takes is missing"));
    sheet.capacity = *capacity;
    std::optional<ExtraTank> further = m_further;
    if (further && !m_form.known(Transfer)) {
        further->transfer.reset();
        if (perMinute)
            further->transfer = FlowRate::fromLitresPerHour(perMinute->litres() * kMinutesAnHour);
    }
    return Stated{std::move(sheet), std::move(further)};
}

Result<void> CarSheet::keep(const Stated& stated)
{
    if (!stated.further) {
        const auto before = m_car.vehicle();
        return before ? m_car.revise(before->id, stated.sheet) : fail(before.error());
    }
    ExtraTank tank = *stated.further;
    copyTank(stated.sheet, tank);
    if (m_adding) {
        const auto added = m_car.record(tank);
        if (!added)
            return fail(added.error());
        m_tank = tank.name;
        return {};
    }
    const auto before = tankAtHand(m_car, m_tank);
    return before ? m_car.revise(before->further->id, tank) : fail(before.error());
}

void CarSheet::save()
{
    store(typed());
}

void CarSheet::store(const Result<Stated>& stated)
{
    const Result<void> done = stated ? keep(*stated) : fail(stated.error());
    if (done) {
        startOver();
        return emit stored();
    }
    m_notices = {noticeOf(done.error())};
    emit changed();
}

// By the calibration, against what is stored.
std::optional<Volume> CarSheet::poured() const
{
    const Knowledge tank = known();
    return tank ? pouredCapacity(tank->vehicle(), *tank) : std::nullopt;
}

QString CarSheet::pouredWord() const
{
    const auto litres = poured();
    if (!litres)
        return {};
    return (ofCar() ? tr("Make %1 the car's capacity") : tr("Make %1 the tank's capacity"))
        .arg(m_format.volume({*litres, {}}));
}

void CarSheet::takePoured()
{
    const auto litres = poured();
    auto now = recorded();
    if (!litres || !now)
        return;
    now->sheet.capacity = *litres;
    store(now);
}

} // namespace undermark
