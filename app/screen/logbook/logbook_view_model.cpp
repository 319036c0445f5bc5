// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/logbook_view_model.h"

#include "app/screen/base/mode_name.h"
#include "app/screen/logbook/consumption_picture.h"
#include "engine/consumption/rate_report.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kStretchesDrawn = 60;
constexpr std::optional<LogKind> kFilters[] = {std::nullopt, LogKind::fill, LogKind::proof}; // by Tab

template <class T>
std::optional<LogRow> among(const std::vector<Entry<T>>& entries, const LogRow& row)
{
    const auto found = std::ranges::find(entries, row.id, &Entry<T>::id);
    if (found == entries.end())
        return std::nullopt;
    return LogRow{row.id, {found->value.time, row.place.kind, row.place.order}, found->value};
}

// The entry as the log has it, if it still has it.
std::optional<LogRow> asItIsNow(const VehicleLog& log, const LogRow& row)
{
    switch (row.place.kind) {
    case LogKind::fill:
        return among(log.fills, row);
    case LogKind::trip:
        return among(log.trips, row);
    case LogKind::proof:
        return among(log.proofs, row);
    case LogKind::level:
        return among(log.levels, row);
    case LogKind::calibration:
        return log.calibration ? among(std::vector{*log.calibration}, row) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace

LogbookViewModel::LogbookViewModel(Car& car, Units units, const FileRoots& roots,
                                   QObject* parent)
    : PageModel(parent), m_car(car), m_format(units), m_rows(car), m_editor(car, units), m_entry(car),
      m_transfer(car, roots), m_cars(car)
{
    const auto added = [this](const EntryId& entry) {
        m_steps.push_back({[this, entry] { return m_car.takeBack(entry); }, tr("Undo the entry")});
        m_adding = false;
    };
    connect(&m_editor, &PumpViewModel::stored, this, [this, added] {
        if (!m_opened)
            added(m_editor.savedEntry());
        m_correcting = false;
        m_saysWhatStands = false;
        emit stored();
    });
    connect(&m_entry, &EntryForm::stored, this, [this, added](const EntryId& entry) {
        added(entry);
        emit stored();
    });
    connect(&m_transfer, &TransferViewModel::stored, this, [this](const std::vector<EntryId>& entries) {
        if (!entries.empty())
            m_steps.push_back({[this, entries] { return m_car.takeBackAll(entries); }, tr("Undo the import")});
        emit stored();
    });
    connect(this, &LogbookViewModel::stored, this, &LogbookViewModel::refresh);
    connect(&m_rows, &HistoryModel::stuck, this, &LogbookViewModel::readOn, Qt::QueuedConnection);
    LogbookViewModel::refresh();
}

void LogbookViewModel::refresh()
{
    m_rows.refresh(m_format, kFilters[m_filter]);
    m_consumption.reset();
    if (m_opened && m_rows.known())
        m_opened = asItIsNow(m_rows.known()->log, *m_opened);
    readVersions();
    m_cars.refresh();
    emit changed();
}

void LogbookViewModel::startOver()
{
    close();
    refresh();
}

void LogbookViewModel::readOn()
{
    if (m_rows.problem())
        emit changed();
    else
        refresh();
}

void LogbookViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_editor.setFormat(format);
    m_entry.setFormat(format);
    m_transfer.setFormat(format);
    m_cars.setFormat(format);
    m_correcting = false;
    refresh();
}

QStringList LogbookViewModel::filters() const
{
    return {tr("All"), tr("Fills"), tr("Proofs")};
}

void LogbookViewModel::selectFilter(int filter)
{
    if (filter < 0 || filter >= filters().size())
        return;
    m_filter = filter;
    close();
    refresh();
}

QStringList LogbookViewModel::addable() const
{
    return {tr("A forgotten fill"), tr("A trip"), tr("A proof")};
}

void LogbookViewModel::add(int what)
{
    close();
    m_correcting = what == 0;
    m_adding = what == 1 || what == 2;
    if (what == 0)
        m_editor.startForgotten();
    else if (what == 1)
        m_entry.startTrip();
    else if (what == 2)
        m_entry.startProof(ProofKind::pastZero);
    emit changed();
}

QString LogbookViewModel::emptyText() const
{
    if (m_rows.rowCount() > 0 || m_rows.problem())
        return {};
    return tr("Nothing is written here yet. A fill at the pump is the first line.");
}

QList<NoticeText> LogbookViewModel::notices() const
{
    QList<NoticeText> notices;
    if (m_problem)
        notices.append(noticeText(*m_problem, m_format));
    if (const auto value = openedValue(); value && m_saysWhatStands)
        notices.append(noticeText(
            {Severity::info, Sentence::just(tr("As before, it is: %1").arg(summary(*value, m_format)).toStdString())},
            m_format));
    const EntryLesson lesson = openedLesson();
    if (lesson.fillFlag)
        notices.append(noticeText({Severity::warning, lesson.fillFlag->text}, m_format));
    if (lesson.proofFlag)
        notices.append(noticeText({Severity::warning, lesson.proofFlag->text}, m_format));
    return notices;
}

QList<NoticeText> LogbookViewModel::listNotices() const
{
    if (!m_rows.problem())
        return {};
    return {noticeText(noticeOf(*m_rows.problem()), m_format)};
}

QString LogbookViewModel::undoWord() const
{
    if (m_opened)
        return m_corrected > 0 ? tr("Undo the correction") : QString();
    return m_steps.empty() ? QString() : m_steps.back().word;
}

PlotPicture LogbookViewModel::consumption() const
{
    if (!m_consumption)
        m_consumption =
            m_rows.known()
                ? consumptionPicture(foreseenStretches(*m_rows.known(), kStretchesDrawn), m_format)
                : PlotPicture{};
    return *m_consumption;
}

QList<Fact> LogbookViewModel::rates() const
{
    if (!m_rows.known())
        return {};
    const ConsumptionModel& model = m_rows.known()->consumption.model;
    const Circumstances now = m_rows.known()->now();
    QList<Fact> facts{{tr("usual mix"), m_format.rate(model.forecast({}, now).rate)}};
    for (const Mode& mode : model.setup().modes)
        facts.append({modeName(mode.name),
                      m_format.rate(model.forecast(Mix{{mode.name, Distance::fromKm(1)}}, now).rate)});
    return facts;
}

void LogbookViewModel::undo()
{
    if (undoWord().isEmpty())
        return;
    const bool ofEntry = opened();
    if (!applied(ofEntry ? withdraw(m_corrected) : m_steps.back().back()))
        return;
    if (ofEntry)
        m_saysWhatStands = true;
    else
        m_steps.pop_back();
    emit stored();
}

bool LogbookViewModel::applied(const Result<void>& result)
{
    m_problem.reset();
    if (!result)
        m_problem = noticeOf(result.error());
    emit changed();
    return result.has_value();
}

} // namespace undermark
