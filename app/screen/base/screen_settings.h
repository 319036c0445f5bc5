// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the user has chosen about the screen: units, currency, language, size of the
// letters, day or night, and which car is shown. Kept in the XDG configuration folder, not in the
// logbook: it belongs to the screen, not to the car.
#pragma once

#include "app/screen/base/unit_format.h"

#include <QObject>
#include <QSettings>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// One thing to choose: its name, the choices, and which one is on.
struct Choice {
    Q_GADGET
    QML_VALUE_TYPE(choice)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QList<QString> options MEMBER options FINAL)
    Q_PROPERTY(int current MEMBER current FINAL)
public:
    QString name;
    QStringList options;
    int current = 0;
    friend bool operator==(const Choice&, const Choice&) = default;
};

class ScreenSettings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(QList<undermark::Choice> choices READ choices NOTIFY changed FINAL)
    Q_PROPERTY(undermark::Choice cars READ cars NOTIFY changed FINAL)
    Q_PROPERTY(bool night READ night WRITE setNight NOTIFY changed FINAL)
    Q_PROPERTY(qreal textScale READ textScale NOTIFY changed FINAL)

public:
    // In the order of choices().
    enum Setting { DistanceUnit, VolumeUnit, RateUnit, TextSize, InLanguage, Currency };
    Q_ENUM(Setting)

    // `file` is an INI file, made when something is chosen; empty: nothing is kept.
    explicit ScreenSettings(const QString& file, QObject* parent = nullptr);

    QList<Choice> choices() const;
    // The cars of the logbook by name; the last option is another one.
    const Choice& cars() const { return m_cars; }
    void setCars(const QStringList& names, int shown);
    QString car() const { return value("car").toString(); } // id of the one last shown
    void keepCar(const QString& id);
    Units units() const;
    QString currency() const; // "€"; empty: none is chosen
    // "de": the language chosen; else the system's.
    QString language() const;
    // Numbers are written as the language writes them.
    QLocale locale() const { return QLocale(language()); }
    UnitFormat format() const { return UnitFormat(units(), locale(), currency()); }
    bool night() const { return value("night").toBool(); }
    void setNight(bool night);
    qreal textScale() const; // as chosen; else as the screen needs it
    // The screen it is seen on: height of capitals at 100 %, and its diagonal (mm; 0: unknown).
    Q_INVOKABLE void seenOn(qreal capitals, qreal diagonal);

    // For this run only: from the command line.
    void override(const QString& key, const QVariant& value);

    // `setting` is a Setting, `option` one of its choice.
    Q_INVOKABLE void choose(int setting, int option);
    Q_INVOKABLE void chooseCar(int option);

signals:
    void changed();
    void carChosen(int car); // a row of setCars()
    void anotherCarWanted();
    void formatChanged();   // units or language: texts are to be made anew

private:
    QVariant value(const char* key) const;
    void keep(const QString& key, const QVariant& value);

    std::unique_ptr<QSettings> m_store;
    int m_readablePercent = 100;
    Choice m_cars;
    QVariantMap m_now; // overrides, and everything where nothing is kept
};

} // namespace undermark
