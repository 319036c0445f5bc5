// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/logbook_view_model.h"

#include "app/consumption_picture.h"
#include "app/mode_name.h"
#include "engine/consumption/rate_report.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr std::size_t kStretchesDrawn = 60;
constexpr std::optional<LogKind> kFilters[] = {std::nullopt, LogKind::fill, LogKind::proof};

} // namespace

LogbookViewModel::LogbookViewModel(CarService& car, Units units, const QString& folder,
                                   QObject* parent)
    : QObject(parent), m_car(car), m_format(units), m_rows(car), m_editor(car, units),
      m_transfer(car, folder)
{
    connect(&m_editor, &PumpViewModel::stored, this, [this] {
        addStep(openedId(), tr("Undo the correction"));
        m_correcting = false;
        emit stored();
    });
    connect(&m_transfer, &TransferViewModel::stored, this, [this](const std::vector<EntryId>& added) {
        const auto back = [this, added](Logbook& logbook) {
            return logbook.undoAll(added, m_car.time());
        };
        if (!added.empty())
            m_steps.push_back({[this, back] { return m_car.withLogbook(back); }, tr("Undo the import")});
        emit stored();
    });
    connect(this, &LogbookViewModel::stored, this, &LogbookViewModel::refresh);
    refresh();
}

void LogbookViewModel::refresh()
{
    const std::string id = opened() ? openedId() : std::string();
    m_rows.refresh(m_format, kFilters[m_filter]);
    m_consumption.reset();
    m_opened.reset();
    for (const LogRef& ref : m_rows.refs()) { // the entry that was open is looked up anew
        m_opened = ref;
        if (!id.empty() && openedId() == id)
            break;
        m_opened.reset();
    }
    readVersions();
    emit changed();
}

void LogbookViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    m_editor.setFormat(format);
    m_transfer.setFormat(format);
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

QString LogbookViewModel::emptyText() const
{
    return m_rows.rowCount() > 0 ? QString()
                                 : tr("Nothing is written here yet. A fill at the pump is the "
                                      "first line.");
}

QList<NoticeText> LogbookViewModel::notices() const
{
    QList<NoticeText> notices;
    if (m_problem)
        notices.append(noticeText(*m_problem, m_format));
    if (const FillFlag* flag = openedFlag()) {
        notices.append(noticeText({Notice::Severity::warning, flag->text}, m_format));
    } else if (opened() && m_opened->kind == LogKind::proof) {
        for (const ProofFlag& proof : m_rows.known()->proofFlags)
            if (proof.proof == m_opened->index)
                notices.append(noticeText({Notice::Severity::warning, proof.text}, m_format));
    }
    return notices;
}

QString LogbookViewModel::undoWord() const
{
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
    QList<Fact> facts{{tr("usual mix"), m_format.rate(model.forecast().rate)}};
    for (const Mode& mode : model.setup().modes)
        facts.append({modeName(mode.name),
                      m_format.rate(model.forecast(Mix{{mode.name, Distance::fromKm(1)}}).rate)});
    return facts;
}

void LogbookViewModel::undo()
{
    if (m_steps.empty())
        return;
    if (!applied(m_steps.back().back()))
        return;
    m_steps.pop_back();
    emit stored();
}

void LogbookViewModel::addStep(const std::string& entryId, const QString& word)
{
    m_steps.push_back({[this, entryId] { return m_car.takeBack(entryId); }, word});
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
