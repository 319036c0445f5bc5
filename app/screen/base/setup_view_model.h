// SPDX-License-Identifier: GPL-3.0-or-later
//
// The first run: a car is set up in a minute, or the demo car looked at; or
// another car later. What was typed outlives a program that is closed half-way.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/form_model.h"

#include <QSettings>
#include <QStringList>
#include <memory>
#include <qqmlintegration.h>

namespace undermark {

class SetupViewModel : public undermark::FormModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool needed READ needed NOTIFY changed FINAL)
    Q_PROPERTY(bool another READ another NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> fuels READ fuels NOTIFY changed FINAL)
    Q_PROPERTY(int fuel READ fuel NOTIFY changed FINAL)

public:
    // `car` outlives the view model; half-typed answers are kept in the INI file
    // `draft` (empty: not kept).
    SetupViewModel(Car& car, const UnitFormat& format, const QString& draft,
                   QObject* parent = nullptr);

    bool needed() const { return m_needed || m_another; } // a car is to be set up
    bool another() const { return !m_needed && m_another; } // one more, which may be left
    QString name() const { return m_name; }
    void setName(const QString& name);
    static QStringList fuels(); // by FuelKind
    int fuel() const { return m_fuel; }

    void setFormat(const UnitFormat& format);
    Q_INVOKABLE void refresh();
    Q_INVOKABLE void selectFuel(int fuel);
    Q_INVOKABLE void save();
    Q_INVOKABLE void lookAtDemo();
    Q_INVOKABLE void addAnother();
    Q_INVOKABLE void leave(); // what was typed is kept

signals:
    void stored(); // there is a car

private:
    enum FieldId { Capacity, Reserve };
    QList<NumberEntry> entries() const;
    void keep();
    void refuse(const Error& error);

    Car& m_car;
    std::unique_ptr<QSettings> m_draft;
    QString m_name;
    int m_fuel = 0;
    bool m_needed = false;
    bool m_another = false;
};

} // namespace undermark
