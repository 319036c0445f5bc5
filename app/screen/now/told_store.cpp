// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/now/told_store.h"

#include <utility>

namespace undermark {

ToldStore::ToldStore(const QString& file, const QString& group) : m_group(group)
{
    if (!file.isEmpty())
        m_store = std::make_unique<QSettings>(file, QSettings::IniFormat);
}

bool ToldStore::turnTo(const std::string& car)
{
    const QString shown = QString::fromStdString(car);
    return std::exchange(m_car, shown) != shown;
}

QStringList ToldStore::words() const
{
    return m_store ? m_store->value(key()).toStringList() : QStringList();
}

void ToldStore::keep(const QStringList& words)
{
    if (!m_store || m_car.isEmpty())
        return;
    if (words.isEmpty())
        m_store->remove(key());
    else
        m_store->setValue(key(), words);
    m_store->sync();
}

} // namespace undermark
