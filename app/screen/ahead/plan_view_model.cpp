// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/plan_view_model.h"

#include "engine/base/record_words.h"
#include "engine/planning/plannable.h"
#include "engine/tables/route_file.h"

#include <QFileInfo>
#include <utility>

namespace undermark {

PlanViewModel::PlanViewModel(Car& car, const UnitFormat& format, const FileRoots& roots,
                             QObject* parent)
    : PageModel(parent), m_car(car), m_format(format),
      m_files(roots, {QStringLiteral("*.csv"), QStringLiteral("*.gpx")},
              QString::fromStdString((car.folder() / "routes").string())),
      m_editor([this](const Route& whole) { return takeChanged(whole); }, car.folder() / "routes"),
      m_map(roots, [this] { return askOfMap(); }), m_here([this] { return m_editor.route(); }, m_answer), m_whatIfs(m_answer),
      m_card(m_answer, [this] { return m_car.folder(); }, [this] { return cardWishes(); })
{
    connect(&m_editor, &RouteEditModel::stored, this, &PlanViewModel::changed);
    connect(&m_editor, &RouteEditModel::renamed, this, &PlanViewModel::changed);
    connect(&m_wishes, &PlanWishes::chosen, this, &PlanViewModel::refresh);
    connect(&m_day, &PlanDay::told, this, &PlanViewModel::refresh);
    connect(&m_map, &PlanMap::routed, this, &PlanViewModel::planOnMap);
    connect(&m_here, &PlanHere::moved, this, &PlanViewModel::planLeft);
    connect(&m_background, &Background::idle, this, &PlanViewModel::settled);
}

QString PlanViewModel::title() const
{
    if (!loaded())
        return tr("Which route?");
    const Distance length = m_route.points.back().at - m_route.points.front().at;
    return tr("%1, %2").arg(m_editor.routeName(), m_format.distanceWithUnit(length));
}

QList<NoticeText> PlanViewModel::notices() const
{
    return m_notices.empty() ? m_answer.notices() : noticeTexts(m_notices, m_format);
}

void PlanViewModel::refresh()
{
    if (loaded())
        plan(m_route);
}

void PlanViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_editor.setFormat(format);
    m_map.setFormat(format);
    m_here.setFormat(format);
    m_wishes.retranslate();
    m_day.setFormat(format);
    m_answer.setFormat(format);
    m_whatIfs.setFormat(format);
    m_card.setFormat(format);
    emit changed();
}

void PlanViewModel::askAs(std::function<Question()> question, std::function<QString()> basis)
{
    m_question = std::move(question);
    m_basis = std::move(basis);
}

QString PlanViewModel::basis() const
{
    if (const QString told = m_here.basis(); !told.isEmpty())
        return told;
    const QString words = m_basis ? m_basis() : QString();
    return words.isEmpty() ? words : tr("Starts with the fuel that Now says: %1.").arg(words);
}

CardWishes PlanViewModel::cardWishes()
{
    CardWishes wishes;
    wishes.event = m_editor.routeName().toStdString();
    if (const auto vehicle = m_car.vehicle())
        wishes.car = vehicle->value.name;
    return wishes;
}

std::vector<std::string> PlanViewModel::modes()
{
    std::vector<std::string> modes;
    if (const auto known = m_car.knowledge())
        for (const Entry<Mode>& mode : (*known)->log.modes)
            modes.push_back(mode.value.name);
    return modes;
}

void PlanViewModel::setRoute(Route route, const QString& name)
{
    RouteFile file;
    file.route = std::move(route);
    setRoute(std::move(file), name);
}

void PlanViewModel::setRoute(RouteFile file, const QString& name)
{
    m_map.startAnew(std::move(file));
    const Route route = m_map.route();
    m_editor.load(route, name, modes());
    start(route);
}

void PlanViewModel::newRoute()
{
    m_map.startAnew({});
    m_editor.begin(modes());
    start(m_editor.route());
}

void PlanViewModel::start(const Route& route)
{
    m_here.startAnew();
    m_wishes.suit(route);
    m_leaving = false;
    m_answer.showRoute(route);
    m_whatIfs.startAnew();
    m_card.startAnew();
    plan(route);
}

void PlanViewModel::pickFile(int row)
{
    const QString path = m_files.pick(row);
    if (path.isEmpty())
        return;
    auto file = readRouteFile(path.toStdString());
    if (file)
        return setRoute(std::move(*file), QFileInfo(path).completeBaseName());
    m_notices = {noticeOf(file.error())};
    emit changed();
}

void PlanViewModel::otherRoute()
{
    if (m_editor.unsaved() && !std::exchange(m_leaving, true)) {
        m_notices = {{Severity::warning,
                      Sentence::of("The changed route is not saved. Touch again to leave it.")}};
        emit changed();
        return;
    }
    m_background.forget();
    m_route = {};
    m_answer.showRoute({});
    m_whatIfs.startAnew();
    m_notices.clear();
    m_files.refresh();
    emit changed();
}

Result<PlanRequest> PlanViewModel::request(const Route& route)
{
    Result<PlanRequest> request = m_car.planRequest(route, m_here.asked(m_question()));
    if (!request)
        return request;
    m_wishes.addTo(*request);
    m_day.addTo(*request, m_car.time());
    m_here.addTo(*request);
    if (request->aim == Aim::cost && !pricesAreKnown(route))
        request->aim = Aim::stops;
    return request;
}

void PlanViewModel::plan(Route route)
{
    m_route = route;
    if (const auto known = m_car.knowledge())
        m_here.look(**known);
    Result<PlanRequest> asked = request(route);
    if (asked) {
        m_background.ask([this, request = std::move(*asked)]() -> Background::Delivery {
            auto answer = planned(request);
            return [this, route = request.route, answer = std::move(answer)] { show(route, answer); };
        });
        emit changed();
    } else {
        m_background.forget();
        show(std::move(route), fail(asked.error()));
    }
}

void PlanViewModel::show(Route route, Result<Planned> planned)
{
    m_notices.clear();
    m_answer.show(std::move(route), std::move(planned));
    m_whatIfs.followPlan();
    m_card.startAnew();
    emit changed();
}

void PlanViewModel::planLeft()
{
    if (auto route = m_here.left(m_editor.route()))
        plan(std::move(*route));
}

// Of the fuel that the car takes, with what the driver knows better than the map.
PumpsQuestion PlanViewModel::askOfMap() const
{
    PumpsQuestion question;
    if (const auto log = m_car.log()) {
        question.fuel = wordOf(log->vehicle.value.fuel);
        question.own = valuesOf(log->pumps);
    }
    return question;
}

// Where the car is, and what was told of its fuel, stays.
void PlanViewModel::planOnMap()
{
    m_editor.load(m_map.route(), m_editor.routeName(), modes());
    if (auto route = m_here.left(m_editor.route()))
        plan(std::move(*route));
}

// What could be planned before is not to be lost by an edit.
Result<void> PlanViewModel::takeChanged(const Route& whole)
{
    auto route = m_here.left(whole);
    if (!route)
        return fail(route.error());
    const auto asked = request(*route);
    const Result<void> sound = asked ? checkPlannable(*asked) : fail(asked.error());
    if (!sound && m_answer.planned())
        return sound;
    m_leaving = false;
    plan(std::move(*route));
    return {};
}

// Rows are counted from the finish: what is left of the route starts with a row of
// its own, which stands for the one behind the car.
void PlanViewModel::editRow(int row)
{
    m_editor.open(int(m_editor.route().points.size()) - int(m_answer.route().points.size()) + row);
}

} // namespace undermark
