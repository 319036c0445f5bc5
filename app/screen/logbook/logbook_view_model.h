// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Logbook page: the log as a list, one entry of it opened, corrections, and
// consumption over time.
//
// Guarantees (each has a test in tests/app/screen/logbook/logbook_view_model_test.cpp):
//  * nothing is ever lost: a correction and a taking out are rows on top;
//  * undo() is offered where the step was made: of an opened entry its last correction, and
//    what stands then is said; at the list an entry taken out, or an import, of this session;
//  * an entry is taken out whole, never back to what was once corrected;
//  * an odd fill says its likely cause and, where there is one, the correction
//    that would mend it; the user rules, nothing is changed unasked.
#pragma once

#include "app/screen/base/notice_text.h"
#include "app/screen/base/page_model.h"
#include "app/screen/base/plot_picture.h"
#include "app/screen/logbook/car_list.h"
#include "app/screen/logbook/entry_form.h"
#include "app/screen/logbook/history_model.h"
#include "app/screen/logbook/transfer_view_model.h"
#include "app/screen/pump/pump_view_model.h"

#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

class LogbookViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(undermark::HistoryModel* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(QList<QString> filters READ filters NOTIFY changed FINAL)
    Q_PROPERTY(int filter READ filter NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> listNotices READ listNotices NOTIFY changed FINAL)
    Q_PROPERTY(QString undoWord READ undoWord NOTIFY changed FINAL)
    Q_PROPERTY(bool opened READ opened NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> versions READ versions NOTIFY changed FINAL)
    Q_PROPERTY(bool correctable READ correctable NOTIFY changed FINAL)
    Q_PROPERTY(bool changeable READ changeable NOTIFY changed FINAL)
    Q_PROPERTY(QString ruleWord READ ruleWord NOTIFY changed FINAL)
    Q_PROPERTY(QString mendWord READ mendWord NOTIFY changed FINAL)
    Q_PROPERTY(bool correcting READ correcting NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> addable READ addable NOTIFY changed FINAL)
    Q_PROPERTY(bool adding READ adding NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PumpViewModel* editor READ editor CONSTANT FINAL)
    Q_PROPERTY(undermark::EntryForm* entry READ entry CONSTANT FINAL)
    Q_PROPERTY(undermark::TransferViewModel* transfer READ transfer CONSTANT FINAL)
    Q_PROPERTY(undermark::CarList* cars READ cars CONSTANT FINAL)
    Q_PROPERTY(undermark::PlotPicture consumption READ consumption NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> rates READ rates NOTIFY changed FINAL)

public:
    // Of the page, in their order; the first ones are filters().
    enum Tab { All, Fills, Proofs, Rates, Transfer, Settings };
    Q_ENUM(Tab)

    // `car` outlives the view model. Files to take in are looked for in `roots`.
    explicit LogbookViewModel(Car& car, Units units = {}, const FileRoots& roots = {},
                              QObject* parent = nullptr);

    HistoryModel* rows() { return &m_rows; }
    QStringList filters() const;
    int filter() const { return m_filter; }
    QString emptyText() const;
    QList<NoticeText> notices() const;
    QList<NoticeText> listNotices() const; // why the list has no rows, or not all
    QString undoWord() const; // what undo() would do here; empty: nothing
    bool opened() const { return m_opened.has_value(); }
    QString title() const;
    QList<Fact> facts() const;
    QList<Fact> versions() const { return m_versions; }
    bool correctable() const; // with the form of the Pump page
    bool changeable() const;  // can be taken out
    QString ruleWord() const; // what rule() would do; empty where there is nothing to rule on
    QString mendWord() const; // what mend() would do; empty where nothing is proposed
    bool correcting() const { return m_correcting; } // or a forgotten fill told
    QStringList addable() const; // what add() adds
    bool adding() const { return m_adding; } // a trip or a proof
    PumpViewModel* editor() { return &m_editor; }
    EntryForm* entry() { return &m_entry; }
    TransferViewModel* transfer() { return &m_transfer; }
    CarList* cars() { return &m_cars; }
    PlotPicture consumption() const;
    QList<Fact> rates() const;

    Q_INVOKABLE void refresh() override;
    void startOver() override;
    void setFormat(const UnitFormat& format) override;
    Q_INVOKABLE void selectFilter(int filter);
    Q_INVOKABLE void open(int row);
    Q_INVOKABLE void close();
    Q_INVOKABLE void correct();
    Q_INVOKABLE void add(int what); // of addable()
    // Rules on an odd fill: counts, or is left out; asked again, the ruling is lifted.
    Q_INVOKABLE void rule();
    // Takes the correction that is proposed for an odd fill.
    Q_INVOKABLE void mend();
    Q_INVOKABLE void takeOut();
    Q_INVOKABLE void undo();

signals:
    void changed();

private:
    struct ListStep { // what undo() of the list takes back
        std::function<Result<void>()> back;
        QString word;
    };
    EntryId openedId() const { return m_opened ? m_opened->id : EntryId(); }
    std::optional<LogValue> openedValue() const;
    EntryLesson openedLesson() const;
    void readOn(); // a row could not be had
    void readVersions();
    Result<void> withdraw(std::size_t versions); // of the opened entry, the last ones
    void revise(const LogValue& value);
    bool applied(const Result<void>& result);

    Car& m_car;
    UnitFormat m_format;
    HistoryModel m_rows;
    PumpViewModel m_editor;
    EntryForm m_entry;
    TransferViewModel m_transfer;
    CarList m_cars;
    int m_filter = 0;
    std::optional<LogRow> m_opened;
    bool m_correcting = false;
    bool m_adding = false;
    QList<Fact> m_versions;
    std::size_t m_standing = 0;  // versions of the opened entry that are not undone
    std::size_t m_corrected = 0; // so many of them go with the last correction; 0: there is none
    bool m_saysWhatStands = false;
    std::vector<ListStep> m_steps;
    std::optional<Notice> m_problem;
    mutable std::optional<PlotPicture> m_consumption; // drawn when first looked at
};

} // namespace undermark
