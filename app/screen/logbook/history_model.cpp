// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/history_model.h"

#include <algorithm>

namespace undermark {

HistoryModel::HistoryModel(Car& car, QObject* parent)
    : QAbstractListModel(parent), m_window(car)
{
}

void HistoryModel::refresh(const UnitFormat& format, std::optional<LogKind> kind)
{
    const bool another = kind != m_window.kind(); // begins at its top
    emit leaving();
    const auto entries = keptRows();
    beginResetModel();
    m_format = format;
    m_lineRow = -1;
    m_window.open(kind);
    endResetModel();
    if (another)
        m_kept.clear();
    else
        findAgain(entries);
    emit returned();
}

std::vector<std::optional<LogRow>> HistoryModel::keptRows()
{
    std::vector<std::optional<LogRow>> entries;
    for (const int number : m_kept) {
        const LogRow* entry = m_window.row(number);
        entries.push_back(entry ? std::optional(*entry) : std::nullopt);
    }
    return entries;
}

void HistoryModel::findAgain(const std::vector<std::optional<LogRow>>& entries)
{
    for (std::size_t i = 0; i < entries.size(); ++i) {
        int& number = m_kept[qsizetype(i)];
        if (entries[i])
            number = m_window.find(*entries[i]).value_or(number);
        number = std::min(number, rowCount() - 1);
    }
}

const LogRow* HistoryModel::row(int number) const
{
    const bool wasStuck = m_window.outdated() || m_window.problem();
    const LogRow* row = m_window.row(number);
    if (!row && !wasStuck)
        emit stuck();
    return row;
}

int HistoryModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_window.count();
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (m_lineRow != index.row()) {
        const LogRow* entry = row(index.row());
        m_line = entry ? logLine(*known(), *entry, m_format) : missingLine();
        m_lineRow = index.row();
    }
    switch (role) {
    case Date:
        return m_line.date;
    case Kind:
        return m_line.kind;
    case Value:
        return m_line.value;
    case Detail:
        return m_line.detail;
    case Flag:
        return m_line.flag;
    case Spoken: {
        QStringList parts{m_line.kind, m_line.date, m_line.value, m_line.detail, m_line.flag};
        return parts.join(QStringLiteral(", "));
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> HistoryModel::roleNames() const
{
    return {{Date, "date"},     {Kind, "kind"}, {Value, "value"},
            {Detail, "detail"}, {Flag, "flag"}, {Spoken, "spoken"}};
}

} // namespace undermark
