// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log as a list, newest first. Rows come from the logbook page by page and are put
// into words when they are shown, so that years of fills cost no more than a screenful.
#pragma once

#include "app/screen/logbook/log_lines.h"
#include "app/screen/logbook/log_window.h"

#include <QAbstractListModel>
#include <qqmlintegration.h>

namespace undermark {

class HistoryModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook's view model")
    // Rows that a view wants to stay with. It sets them when `leaving` is said; when
    // `returned` is said they are where the same entries are now; none for another list.
    Q_PROPERTY(QList<int> kept MEMBER m_kept FINAL)

public:
    enum Role { Date = Qt::UserRole, Kind, Value, Detail, Flag, Spoken };

    // `car` outlives the model. Empty until refresh().
    explicit HistoryModel(Car& car, QObject* parent = nullptr);

    // Asks the car again. `kind` absent: every entry.
    void refresh(const UnitFormat& format, std::optional<LogKind> kind);
    // What the rows are of: as of refresh(), whatever was written since. Nothing
    // where the car could not answer.
    const CarKnowledge* known() const { return m_window.known().get(); }
    // Nothing where it cannot be read any more; good until the next call.
    const LogRow* row(int number) const;
    // What keeps rows from being read.
    const std::optional<Error>& problem() const { return m_window.problem(); }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void leaving();
    void returned();
    // A row was asked for that cannot be had: refresh() is due, or problem() is to be
    // told. Said once per refresh; to be connected queued, since a view is asking.
    void stuck() const;

private:
    std::vector<std::optional<LogRow>> keptRows();
    void findAgain(const std::vector<std::optional<LogRow>>& entries);

    UnitFormat m_format;
    mutable LogWindow m_window;
    QList<int> m_kept;
    mutable int m_lineRow = -1; // the row that was asked for last
    mutable LogLine m_line;
};

} // namespace undermark
