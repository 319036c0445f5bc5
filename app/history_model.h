// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log as a list, newest first. A row is put into words only when it is
// shown, so that years of fills cost no more than a screenful.
#pragma once

#include "app/car_service.h"
#include "app/log_lines.h"

#include <QAbstractListModel>
#include <qqmlintegration.h>

namespace undermark {

class HistoryModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook's view model")

public:
    enum Role { Date = Qt::UserRole, Kind, Value, Detail, Flag, Spoken };

    // `car` outlives the model. Empty until refresh().
    explicit HistoryModel(CarService& car, QObject* parent = nullptr);

    // Asks the car again. `kind` absent: every entry.
    void refresh(const UnitFormat& format, std::optional<LogKind> kind);
    const std::vector<LogRef>& refs() const { return m_refs; }
    // What the rows are of: as of refresh(), whatever was written since. Nothing
    // where the car could not answer.
    const CarKnowledge* known() const { return m_known ? &*m_known : nullptr; }
    const FillIndex* fills() const { return m_fills ? &*m_fills : nullptr; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

private:
    CarService& m_car;
    UnitFormat m_format;
    std::vector<LogRef> m_refs;
    std::optional<CarKnowledge> m_known;
    std::optional<FillIndex> m_fills;
    mutable int m_lineRow = -1; // the row that was asked for last
    mutable LogLine m_line;
};

} // namespace undermark
