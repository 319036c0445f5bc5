// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/car_sheet.h"

#include "app/car/sheet_check.h"
#include "app/screen/base/setup_view_model.h"
#include "app/screen/tank/calibration_guide.h"
#include "engine/calibration/circuit.h"
#include "engine/tank/reserve_prior.h"

namespace undermark {

CarSheet::CarSheet(Car& car, QObject* parent) : FormModel(parent), m_car(car)
{
    connect(&m_form, &NumberForm::edited, this, &CarSheet::touch);
}

QList<NumberEntry> CarSheet::entries() const
{
    const QString litres = m_format.volumeUnit();
    const auto known = m_car.knowledge();
    const bool calibrated = known && (*known)->gauge.isKnown(); // it says itself where zero is
    const Sender& sender = m_sheet.sender;
    const bool pulledUp = readsVoltsBehindPullUp(sender);
    return {{Capacity, tr("tank, to the first click"), litres, {}, false, true},
            {ZeroMark, tr("under the zero mark, if known"), litres, {}, false, !calibrated},
            {LeftBehind, tr("left behind when the pump spits"), litres, {}, false, true},
            {Unusable, tr("left when the engine starves"), litres, {}, false, true},
            {Lamp, tr("usable when the lamp lights"), litres, {}, false, true},
            {Mass, tr("mass as driven, for climbs"), tr("kg"), {}, false, true},
            {Supply, tr("supply of the sender"), tr("V"), {}, false,
             pulledUp || sender.circuit == CircuitKind::ratiometric},
            {PullUp, tr("pull-up of the sender"), tr("ohm"), {}, false, pulledUp}};
}

QList<Choice> CarSheet::choices() const
{
    const QStringList units = meterUnits(m_sheet.sender);
    return {{tr("fuel"), SetupViewModel::fuels(), int(m_sheet.fuel)},
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
    m_touched = false;
    refresh();
}

void CarSheet::refresh()
{
    const auto vehicle = m_car.vehicle();
    if (m_touched || !vehicle)
        return;
    m_sheet = vehicle->value;
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
    put(Capacity, m_sheet.capacity);
    put(ZeroMark, m_sheet.zeroMark);
    put(LeftBehind, mean(m_sheet.leftBehind));
    put(Unusable, mean(m_sheet.unusable));
    put(Lamp, m_sheet.lamp);
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
    const auto known = m_car.knowledge();
    const auto sheet = typed();
    if (known && sheet)
        m_notices = doubtsOf(*sheet, **known);
    emit changed();
}

void CarSheet::setName(const QString& name)
{
    if (name == this->name())
        return;
    m_sheet.name = name.toStdString();
    touch();
}

void CarSheet::choose(int choice, int option)
{
    const QList<Choice> all = choices();
    if (choice < 0 || choice >= all.size() || option < 0 || option >= all[choice].options.size())
        return;
    if (choice == OfFuel)
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

Result<Vehicle> CarSheet::typed() const
{
    const auto litres = [this](const QString& text) { return m_format.volumeFrom(text); };
    const auto number = [this](const QString& text) { return m_format.numberFrom(text); };
    Vehicle sheet = m_sheet;
    sheet.name = name().trimmed().toStdString();
    std::optional<Volume> capacity = sheet.capacity;
    for (const auto& done : {read(Capacity, capacity, litres), read(ZeroMark, sheet.zeroMark, litres),
                             readEstimate(LeftBehind, sheet.leftBehind, kUsualLeftBehind.sd),
                             readEstimate(Unusable, sheet.unusable, kUsualLeftBehind.sd),
                             read(Lamp, sheet.lamp, litres),
                             read(Mass, sheet.massKg, number),
                             read(Supply, sheet.sender.supplyVolts, number),
                             read(PullUp, sheet.sender.pullUpOhms, number)})
        if (!done)
            return fail(done.error());
    if (!capacity || *capacity == Volume{})
        return failInput(Sentence::of("How much the tank takes is missing"));
    sheet.capacity = *capacity;
    return sheet;
}

void CarSheet::save()
{
    store(typed());
}

void CarSheet::store(const Result<Vehicle>& sheet)
{
    const auto before = m_car.vehicle();
    const Result<void> done = !sheet    ? fail(sheet.error())
                              : !before ? fail(before.error())
                                        : m_car.revise(before->id, *sheet);
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
    const auto known = m_car.knowledge();
    return known ? pouredCapacity((*known)->vehicle(), **known) : std::nullopt;
}

QString CarSheet::pouredWord() const
{
    const auto litres = poured();
    return litres ? tr("Make %1 the car's capacity").arg(m_format.volume({*litres, {}})) : QString();
}

void CarSheet::takePoured()
{
    const auto litres = poured();
    auto vehicle = m_car.vehicle();
    if (!litres || !vehicle)
        return;
    vehicle->value.capacity = *litres;
    store(vehicle->value);
}

} // namespace undermark
