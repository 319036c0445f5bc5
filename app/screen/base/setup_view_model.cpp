// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/setup_view_model.h"

namespace undermark {

SetupViewModel::SetupViewModel(Car& car, const UnitFormat& format, const QString& draft,
                               QObject* parent)
    : FormModel(parent), m_car(car), m_name(tr("My car"))
{
    m_format = format;
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    if (!draft.isEmpty()) {
        m_draft = std::make_unique<QSettings>(draft, QSettings::IniFormat);
        m_name = m_draft->value(QStringLiteral("setup/name"), m_name).toString();
        m_fuel = m_draft->value(QStringLiteral("setup/fuel"), 0).toInt() % 4;
        m_form.setText(Capacity, m_draft->value(QStringLiteral("setup/capacity")).toString());
        m_form.setText(Reserve, m_draft->value(QStringLiteral("setup/reserve")).toString());
    }
    connect(&m_form, &NumberForm::edited, this, &SetupViewModel::keep);
    refresh();
}

QList<NumberEntry> SetupViewModel::entries() const
{
    return {{Capacity, tr("tank, to the first click"), m_format.volumeUnit(), {}, false, true},
            {Reserve, tr("under the zero mark, if known"), m_format.volumeUnit(), {}, false, true}};
}

QStringList SetupViewModel::fuels()
{
    return {tr("Petrol"), tr("Diesel"), tr("LPG"), tr("Ethanol")};
}

void SetupViewModel::refresh()
{
    const auto known = m_car.knowledge();
    m_needed = !known && known.error().code == ErrorCode::notFound;
    emit changed();
}

void SetupViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_form.setDecimalMark(format.decimalMark());
    m_form.rename(entries());
    emit changed();
}

void SetupViewModel::setName(const QString& name)
{
    if (name == m_name)
        return;
    m_name = name;
    keep();
}

void SetupViewModel::selectFuel(int fuel)
{
    if (fuel < 0 || fuel >= fuels().size())
        return;
    m_fuel = fuel;
    keep();
}

void SetupViewModel::keep()
{
    m_notices.clear();
    if (m_draft) {
        m_draft->setValue(QStringLiteral("setup/name"), m_name);
        m_draft->setValue(QStringLiteral("setup/fuel"), m_fuel);
        m_draft->setValue(QStringLiteral("setup/capacity"), m_form.text(Capacity));
        m_draft->setValue(QStringLiteral("setup/reserve"), m_form.text(Reserve));
        m_draft->sync();
    }
    emit changed();
}

void SetupViewModel::refuse(const Error& error)
{
    m_notices = {noticeOf(error)};
    emit changed();
}

void SetupViewModel::save()
{
    const auto capacity = m_format.volumeFrom(m_form.text(Capacity));
    if (!capacity || *capacity == Volume{})
        return refuse(failInput(Sentence::of("How much the tank takes is missing")).value());
    Vehicle vehicle;
    vehicle.name = m_name.trimmed().toStdString();
    vehicle.fuel = FuelKind(m_fuel);
    vehicle.capacity = *capacity;
    if (!m_form.text(Reserve).isEmpty())
        vehicle.zeroMark = m_format.volumeFrom(m_form.text(Reserve));
    if (const auto made = m_car.setUp(vehicle); !made)
        return refuse(made.error());
    if (m_draft) {
        m_draft->remove(QStringLiteral("setup"));
        m_draft->sync();
    }
    m_another = false;
    m_name = tr("My car"); // nothing of it for the next one
    m_fuel = 0;
    m_form.setText(Capacity, {});
    m_form.setText(Reserve, {});
    refresh();
    emit stored();
}

void SetupViewModel::addAnother()
{
    m_another = true;
    emit changed();
}

void SetupViewModel::leave()
{
    m_another = false;
    emit changed();
}

void SetupViewModel::lookAtDemo()
{
    if (const auto shown = m_car.showDemo(); !shown)
        return refuse(shown.error());
    refresh();
    emit stored();
}

} // namespace undermark
