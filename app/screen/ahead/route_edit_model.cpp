// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/ahead/route_edit_model.h"

#include "app/screen/base/mode_name.h"
#include "app/screen/base/typed_clock.h"
#include "engine/tables/route_csv.h"
#include "engine/tables/route_csv_writer.h"

#include <QRegularExpression>
#include <algorithm>

namespace undermark {

namespace {

constexpr FuelSource kFuels[] = {FuelSource::none, FuelSource::pump, FuelSource::zone,
                                 FuelSource::can, FuelSource::crew};

// FOLDER/NAME.csv, or NAME-2, NAME-3 … where that is taken.
std::filesystem::path freeFile(const std::filesystem::path& folder, QString name)
{
    static const QRegularExpression unfit(QStringLiteral("[/\\x00-\\x1f]"));
    static const QRegularExpression count(QStringLiteral("-[0-9]+$"));
    name = name.replace(unfit, QStringLiteral(" ")).remove(count);
    while (name.startsWith(u'.')) // a hidden file would not be listed
        name.remove(0, 1);
    const std::string stem = name.isEmpty() ? "route" : name.toStdString();
    std::filesystem::path file = folder / (stem + ".csv");
    for (int n = 2; std::filesystem::exists(file); ++n)
        file = folder / (stem + '-' + std::to_string(n) + ".csv");
    return file;
}

Error notUnderstood(const NumberEntry& entry, const QString& text, const Sentence& detail, const Sentence& expected)
{
    return {ErrorCode::badInput, detail, {.column = entry.name.toStdString()}, expected, text.toStdString()};
}

} // namespace

RouteEditModel::RouteEditModel(Planner planner, std::filesystem::path folder, QObject* parent)
    : FormModel(parent), m_planner(std::move(planner)), m_folder(std::move(folder))
{
    connect(&m_form, &NumberForm::edited, this, &RouteEditModel::changed);
}

void RouteEditModel::load(Route route, const QString& name, const std::vector<std::string>& modes)
{
    m_kept = route;
    m_editor = RouteEditor(std::move(route));
    m_routeName = m_keptName = name;
    m_knownPumps = knownPumpsOf(m_folder);
    m_modes = modes;
    m_modes.emplace_back(); // none stated: the usual mix
    m_row.reset();
    m_notices.clear();
    m_saved.clear();
    emit changed();
}

void RouteEditModel::begin(const std::vector<std::string>& modes)
{
    Route route;
    route.points.resize(2);
    route.points[0].name = tr("Start").toStdString();
    route.points[1].name = freshName(route).toStdString();
    load(std::move(route), tr("New route"), modes);
    m_part = Road;
    askLeg(1, Behind::moves);
}

void RouteEditModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_form.setDecimalMark(format.decimalMark());
    if (m_row)
        show(*m_row, m_behind);
}

void RouteEditModel::show(std::size_t row, Behind behind)
{
    m_row = std::min(row, route().points.size() - 1);
    m_behind = behind;
    m_typedName.reset();
    m_form.setEntries(entries());
    emit changed();
}

bool RouteEditModel::typed() const
{
    const QList<NumberEntry> shown = m_row ? entries() : QList<NumberEntry>();
    return typedName() != name() || std::ranges::any_of(shown, [this](const NumberEntry& entry) {
        return m_form.text(entry.id) != entry.text;
    });
}

Result<RowEdit> RouteEditModel::edit() const
{
    RowEdit edit = m_editor.row(*m_row);
    edit.behind = m_behind;
    if (m_typedName)
        edit.point.name = m_typedName->simplified().toStdString();
    std::optional<Error> failed;
    const QList<NumberEntry> shown = entries();
    // A field that was not touched keeps its exact value; an emptied one says nothing.
    const auto take = [&](FieldId id, auto& target, auto read) {
        const NumberEntry& entry = shown[id];
        const QString text = m_form.text(id);
        if (text == entry.text)
            return;
        target = read(text);
        if (!target && (!text.isEmpty() || id == Leg))
            failed = isClock(id) ? notUnderstood(entry, text, Sentence::of("this is no time of day"), Sentence::of("0830 or 8.30, say"))
                     : isDay(id) ? notUnderstood(entry, text, Sentence::of("this is no date"), Sentence::of("20260531, say"))
                                 : notUnderstood(entry, text, Sentence::of("this is no number"), {});
    };
    const auto distance = [this](const QString& text) { return m_format.distanceFrom(text); };
    const auto volume = [this](const QString& text) { return m_format.volumeFrom(text); };
    const auto minutes = [this](const QString& text) {
        const auto count = m_format.numberFrom(text);
        return count ? std::optional(Minutes(*count)) : std::nullopt;
    };
    RoutePoint& point = edit.point;
    take(Leg, edit.leg, distance);
    take(Price, point.pricePerLitre, [this](const QString& text) { return m_format.pricePerLitreFrom(text); });
    take(Most, point.mostPurchase, volume);
    take(Least, point.leastPurchase, volume);
    take(StopTime, point.stopTime, minutes);
    take(Detour, point.detour, distance);
    take(Opens, point.opens, clockFrom);
    take(Closes, point.closes, clockFrom);
    take(FirstDay, point.firstDay, dayFrom);
    take(LastDay, point.lastDay, dayFrom);
    take(Due, point.due, clockFrom);
    take(Rest, point.rest, minutes);
    take(Idle, point.idle, minutes);
    take(Floor, point.floor, volume);
    if (failed)
        return fail(*failed);
    return edit;
}

bool RouteEditModel::apply(const std::function<Result<void>(RouteEditor&)>& edit)
{
    const Route before = route();
    Result<void> done = edit(m_editor);
    if (done && route() != before) {
        m_saved.clear();
        done = m_planner(route());
        if (!done)
            m_editor.undo();
    }
    m_notices.clear();
    if (!done)
        m_notices = {noticeOf(done.error())};
    emit changed();
    return done.has_value();
}

bool RouteEditModel::change(const std::function<void(RowEdit&)>& alter)
{
    if (!m_row)
        return false;
    const bool done = apply([&](RouteEditor& editor) -> Result<void> {
        Result<RowEdit> wanted = edit();
        if (!wanted)
            return fail(wanted.error());
        if (alter)
            alter(*wanted);
        return editor.change(*m_row, *wanted);
    });
    if (done)
        show(*m_row, m_behind);
    return done;
}

void RouteEditModel::open(int row)
{
    if (row < 0 || std::size_t(row) >= route().points.size())
        return;
    m_part = Road;
    m_notices.clear();
    show(std::size_t(row));
}

void RouteEditModel::step(int rows)
{
    if (!m_row || (rows < 0 && first()) || (rows > 0 && last()))
        return;
    if (!typed() || change())
        show(*m_row + std::size_t(rows));
}

void RouteEditModel::selectPart(int part)
{
    if (!m_row || part < 0 || part >= parts().size() || (typed() && !change()))
        return;
    m_part = Tab(part);
    show(*m_row, m_behind);
}

void RouteEditModel::typeName(const QString& name)
{
    if (!m_row)
        return;
    m_typedName = name;
    forgetNotices();
}

void RouteEditModel::takeName()
{
    if (typed())
        change();
}

void RouteEditModel::nameRoute(const QString& name)
{
    m_routeName = name;
    m_saved.clear();
    emit changed();
    emit renamed();
}

void RouteEditModel::takeKnownPump(int pump)
{
    if (pump < 0 || std::size_t(pump) >= m_knownPumps.size())
        return;
    const RoutePoint& known = m_knownPumps[std::size_t(pump)];
    change([&known](RowEdit& row) {
        row.point.name = known.name;
        row.point.fuel = known.fuel;
        row.point.pricePerLitre = known.pricePerLitre;
    });
}

void RouteEditModel::switchBehind()
{
    m_behind = m_behind == Behind::moves ? Behind::stays : Behind::moves;
    emit changed();
}

void RouteEditModel::switchTimed()
{
    change([](RowEdit& row) { row.point.timed = !row.point.timed; });
}

void RouteEditModel::selectMode(int mode)
{
    if (mode >= 0 && std::size_t(mode) < m_modes.size())
        change([&](RowEdit& row) { row.point.mode = m_modes[std::size_t(mode)]; });
}

void RouteEditModel::selectFuel(int fuel)
{
    if (fuel >= 0 && fuel < int(std::size(kFuels)))
        change([&](RowEdit& row) { row.point.fuel = kFuels[fuel]; });
}

void RouteEditModel::done()
{
    if (typed())
        change();
    else
        close();
}

void RouteEditModel::close()
{
    m_row.reset();
    m_typedName.reset();
    forgetNotices();
}

void RouteEditModel::addRow()
{
    if (typed() && !change())
        return;
    const std::string name = freshName(route()).toStdString();
    if (m_row && apply([&](RouteEditor& editor) { return editor.addAfter(*m_row, name); })) {
        m_part = Road;
        askLeg(*m_row + 1, last() ? Behind::moves : Behind::stays);
    }
}

void RouteEditModel::askLeg(std::size_t row, Behind behind)
{
    show(row, behind);
    m_form.setText(Leg, m_form.text(Leg), true);
}

void RouteEditModel::removeRow()
{
    if (m_row && apply([&](RouteEditor& editor) { return editor.remove(*m_row); })) {
        m_part = Road;
        show(*m_row);
    }
}

void RouteEditModel::undo()
{
    m_notices.clear();
    if (m_row && typed())
        return show(*m_row, m_behind);
    m_editor.undo();
    m_saved.clear();
    if (const auto planned = m_planner(route()); !planned)
        m_notices = {noticeOf(planned.error())};
    if (m_row)
        show(*m_row);
    emit changed();
}

void RouteEditModel::save()
{
    std::error_code failed;
    std::filesystem::create_directories(m_folder, failed); // said by what follows
    const std::filesystem::path file = freeFile(m_folder, m_routeName);
    const auto written = writeRouteCsv(route(), file);
    m_notices.clear();
    if (written) {
        m_kept = route();
        m_knownPumps = knownPumpsOf(m_folder);
        m_routeName = m_keptName = QString::fromStdString(file.stem().string());
        m_saved = tr("Written to %1").arg(QString::fromStdString(file.string()));
        emit stored();
    } else {
        m_notices = {noticeOf(written.error())};
    }
    emit changed();
}

} // namespace undermark
