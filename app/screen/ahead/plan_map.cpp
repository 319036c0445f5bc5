// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_map.h"

#include "engine/roads/climb.h"

#include <QFileInfo>
#include <algorithm>

namespace undermark {

PlanMap::PlanMap(const FileRoots& roots, std::function<PumpsQuestion()> ask, QObject* parent)
    : QObject(parent), m_files(roots, {QStringLiteral("*.pbf")}, {}), m_ask(std::move(ask))
{
    constexpr std::chrono::milliseconds kLook{250};
    m_look.setInterval(kLook);
    connect(&m_look, &QTimer::timeout, this, &PlanMap::changed);
    connect(&m_background, &Background::idle, this, [this] {
        m_look.stop();
        emit changed();
    });
}

PlanMap::~PlanMap()
{
    forget(); // what still reads ends soon
}

QString PlanMap::line() const
{
    if (!m_found)
        return tr("pumps from a map: none chosen");
    const auto out = std::ranges::count(m_taken, false);
    const QString words = tr("pumps from a map: %1 of %2").arg(QString::number(m_taken.size()), m_name);
    return out > 0 ? tr("%1, %2 left out").arg(words).arg(out) : words;
}

QString PlanMap::progress() const
{
    return m_reading ? tr("%1 % of the map is read").arg(m_reading->percent.load()) : QString();
}

QList<MapPumpRow> PlanMap::pumps() const
{
    QList<MapPumpRow> rows;
    for (std::size_t i = 0; m_found && i < m_found->pumps.size(); ++i) {
        const PumpAlong& pump = m_found->pumps[i];
        QStringList detail{tr("%1 there and back").arg(m_format.exactDistance(pump.detour))};
        if (!pump.byRoad)
            detail.append(tr("no road to it is known: estimated"));
        detail.append(pump.pump.hours.empty() ? tr("hours not known") : QString::fromStdString(pump.pump.hours));
        if (pump.own)
            detail.append(tr("your own note"));
        rows.append({tr("%1 after %2").arg(QString::fromStdString(pump.pump.name), m_format.exactDistance(pump.at)),
                     detail.join(QStringLiteral(" · ")), m_taken[i]});
    }
    return rows;
}

QList<NoticeText> PlanMap::notices() const { return noticeTexts(m_notices, m_format); }

void PlanMap::forget()
{
    if (m_reading)
        m_reading->stopped = true;
    m_reading.reset();
    m_background.forget();
    m_look.stop();
}

void PlanMap::startAnew(RouteFile track)
{
    forget();
    m_track = std::move(track);
    m_heights = *heightsAlong(m_track.line); // its own, which cannot fail
    m_found.reset();
    m_taken.clear();
    m_notices.clear();
    emit changed();
}

Route PlanMap::route() const
{
    std::vector<PumpAlong> taken;
    for (std::size_t i = 0; i < m_taken.size(); ++i)
        if (m_taken[i])
            taken.push_back(m_found->pumps[i]);
    Route route = withPumps(m_track, taken, std::nullopt).file.route;
    addClimbs(route, m_heights);
    return route;
}

void PlanMap::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void PlanMap::pick(int row)
{
    const QString path = m_files.pick(row);
    if (path.isEmpty() || !possible())
        return;
    forget();
    PumpsQuestion question = m_ask();
    m_reading = std::make_shared<Reading>();
    question.progress = [reading = m_reading](double share) {
        reading->percent = int(100 * share);
        return !reading->stopped;
    };
    m_notices.clear();
    m_background.ask([this, question, line = m_track.line, path]() -> Background::Delivery {
        auto found = findPumpsAlong(line, path.toStdString(), question);
        const QString name = QFileInfo(path).fileName().section(QLatin1Char('.'), 0, 0);
        return [this, name, found = std::move(found)] { take(name, found); };
    });
    m_look.start();
    emit changed();
}

void PlanMap::take(const QString& name, Result<PumpsAlong> found)
{
    m_reading.reset();
    if (!found) {
        m_notices = {noticeOf(found.error())};
        emit changed();
        return;
    }
    m_name = name;
    m_taken.assign(found->pumps.size(), true);
    for (const Sentence& note : found->notes)
        m_notices.push_back({Severity::info, note});
    m_found = std::move(*found);
    emit changed();
    emit routed();
}

void PlanMap::stop()
{
    forget();
    emit changed();
}

void PlanMap::anotherMap()
{
    const bool had = m_found && !m_found->pumps.empty();
    m_found.reset();
    m_taken.clear();
    m_notices.clear();
    m_files.refresh();
    emit changed();
    if (had)
        emit routed();
}

void PlanMap::toggle(int pump)
{
    if (pump < 0 || std::size_t(pump) >= m_taken.size())
        return;
    m_taken[std::size_t(pump)].flip();
    emit changed();
    emit routed();
}

} // namespace undermark
