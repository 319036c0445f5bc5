// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen_settings.h"

#include "app/screen/base/reading_size.h"
#include "app/screen/base/translations.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr const char* kKeys[] = {"distance", "volume", "rate", "text", "language",
                                  "currency"}; // by Setting
constexpr const char* kCurrencies[] = {"", "€", "£", "$", "CHF", "kr"};

template <class List, class Value> int indexOf(const List& list, const Value& value)
{
    const auto found = std::ranges::find(list, value);
    return found == std::end(list) ? 0 : int(found - std::begin(list));
}

// Of no language of the screen: the first one's, English.
int languageIndex(const QString& key)
{
    const auto found = std::ranges::find(languages(), key, &Language::key);
    return found == languages().end() ? 0 : int(found - languages().begin());
}

// A stored number that no choice has counts as the first one.
int within(const QVariant& value, int count)
{
    const int index = value.toInt();
    return index >= 0 && index < count ? index : 0;
}

} // namespace

ScreenSettings::ScreenSettings(const QString& file, QObject* parent) : QObject(parent)
{
    if (!file.isEmpty())
        m_store = std::make_unique<QSettings>(file, QSettings::IniFormat);
}

QVariant ScreenSettings::value(const char* key) const
{
    const QString name = QString::fromLatin1(key);
    if (m_now.contains(name))
        return m_now[name];
    return m_store ? m_store->value(name) : QVariant();
}

void ScreenSettings::keep(const QString& key, const QVariant& value)
{
    m_now.remove(key);
    if (m_store) {
        m_store->setValue(key, value);
        m_store->sync();
    } else {
        m_now[key] = value;
    }
    emit changed();
}

void ScreenSettings::override(const QString& key, const QVariant& value)
{
    m_now[key] = value;
    emit changed();
}

Units ScreenSettings::units() const
{
    Units units;
    units.distance = Units::Lengths(within(value("distance"), 2));
    units.volume = Units::Volumes(within(value("volume"), 3));
    units.rate = Units::Rates(within(value("rate"), 4));
    return units;
}

QString ScreenSettings::currency() const
{
    return QString::fromUtf8(kCurrencies[within(value("currency"), int(std::size(kCurrencies)))]);
}

QString ScreenSettings::language() const
{
    const QString chosen = value("language").toString();
    const QString wanted = chosen.isEmpty() ? QLocale::system().name().left(2) : chosen;
    return languages()[languageIndex(wanted)].key;
}

void ScreenSettings::setNight(bool night)
{
    keep(QStringLiteral("night"), night);
}

qreal ScreenSettings::textScale() const
{
    const QVariant chosen = value("text");
    return chosen.isValid() ? std::clamp(chosen.toInt(), 100, 200) / 100.0 : m_readablePercent / 100.0;
}

void ScreenSettings::seenOn(qreal capitals, qreal diagonal)
{
    m_readablePercent = readableTextPercent(capitals, diagonal);
    emit changed();
}

QList<Choice> ScreenSettings::choices() const
{
    const Units now = units();
    QStringList sizes;
    for (const int percent : textPercents())
        sizes.append(tr("%1 %").arg(percent));
    QStringList names, currencies{tr("none")};
    for (const Language& each : languages())
        names.append(each.name);
    for (std::size_t i = 1; i < std::size(kCurrencies); ++i)
        currencies.append(QString::fromUtf8(kCurrencies[i]));
    return {{tr("distance"), {tr("km"), tr("miles")}, int(now.distance)},
            {tr("fuel"), {tr("litres"), tr("US gallons"), tr("imperial gallons")}, int(now.volume)},
            {tr("rate"), {tr("L/100 km"), tr("km/L"), tr("mpg US"), tr("mpg imperial")}, int(now.rate)},
            {tr("letters"), sizes, indexOf(textPercents(), qRound(textScale() * 100))},
            {tr("language"), names, languageIndex(language())},
            {tr("currency"), currencies, within(value("currency"), int(std::size(kCurrencies)))}};
}

void ScreenSettings::setCars(const QStringList& names, int shown)
{
    m_cars = {tr("car"), names + QStringList(tr("Another car")), shown};
    emit changed();
}

void ScreenSettings::keepCar(const QString& id)
{
    keep(QStringLiteral("car"), id);
}

void ScreenSettings::chooseCar(int option)
{
    const int another = int(m_cars.options.size()) - 1;
    if (option == another)
        emit anotherCarWanted();
    else if (option >= 0 && option < another)
        emit carChosen(option);
}

void ScreenSettings::choose(int setting, int option)
{
    const QList<Choice> all = choices();
    if (setting < 0 || setting >= all.size() || option < 0 || option >= all[setting].options.size())
        return;
    const QString key = QString::fromLatin1(kKeys[setting]);
    if (setting == TextSize)
        return keep(key, textPercents()[option]);
    keep(key, setting == InLanguage ? QVariant(languages()[option].key) : QVariant(option));
    emit formatChanged();
}

} // namespace undermark
