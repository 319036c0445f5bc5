// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/history_model.h"

namespace undermark {

HistoryModel::HistoryModel(CarService& car, QObject* parent)
    : QAbstractListModel(parent), m_car(car)
{
}

void HistoryModel::refresh(const UnitFormat& format, std::optional<LogKind> kind)
{
    beginResetModel();
    m_format = format;
    m_refs.clear();
    m_fills.reset();
    m_known.reset();
    m_lineRow = -1;
    if (const auto car = m_car.knowledge()) {
        m_known = **car;
        m_refs = logRefs(m_known->log, kind);
        m_fills.emplace(*m_known);
    }
    endResetModel();
}

int HistoryModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_refs.size());
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (m_lineRow != index.row()) {
        m_line = logLine(*m_known, *m_fills, m_refs[std::size_t(index.row())], m_format);
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
    case Spoken:
        return QStringList{m_line.kind, m_line.date, m_line.value, m_line.detail, m_line.flag}.join(
            QStringLiteral(", "));
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
