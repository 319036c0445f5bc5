// SPDX-License-Identifier: GPL-3.0-or-later
//
// Import and export on the Logbook page: the whole logbook out; fills or trips of another
// table in, after a look at what would be added; another device's logbook in.
//
// Guarantees (each has a test in tests/app/screen/logbook/transfer_view_model_test.cpp):
//  * nothing is taken in before it was shown and confirmed, and then all of it or
//    nothing; what is in the log already is left out and counted;
//  * the units of a table are the user's to state: they are shown before its rows;
//  * the logbook as it was is kept beside it, and its name is said.
#pragma once

#include "app/car/car.h"
#include "app/car/logbook_transfer.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/file_list.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/screen_settings.h"

#include <QObject>
#include <QStringList>
#include <array>
#include <variant>
#include <qqmlintegration.h>

namespace undermark {

class TransferViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook's view model")
    Q_PROPERTY(bool starting READ starting NOTIFY changed FINAL)
    Q_PROPERTY(bool picking READ picking NOTIFY changed FINAL)
    Q_PROPERTY(bool stating READ stating NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(undermark::FileList* files READ files NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> units READ units NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> sticks READ sticks NOTIFY changed FINAL)
    Q_PROPERTY(QString confirmWord READ confirmWord NOTIFY changed FINAL)

public:
    enum class Stage {
        start,   // what to do
        files,   // which file
        units,   // of the table, before its rows
        preview, // what would be added
        merge,   // another logbook, before it is taken in
        done,
    };

    // `car` outlives the view model. Files are looked for in `roots` and beside the logbook.
    TransferViewModel(Car& car, const FileRoots& roots, QObject* parent = nullptr);
    void setFormat(const UnitFormat& format);

    Stage stage() const { return m_stage; }
    bool starting() const { return m_stage == Stage::start; }
    bool picking() const { return m_stage == Stage::files; }
    bool stating() const { return m_stage == Stage::units; }
    QString title() const;
    QString text() const; // below the title
    FileList* files() { return m_merging ? &m_logbooks : &m_tables; }
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }
    QList<Choice> units() const;
    QList<Fact> facts() const;   // the rows that would be added, the first of them
    QString confirmWord() const; // what confirm() would do; empty: nothing

    QStringList sticks() const;  // that are mounted and can be written to, by name

    Q_INVOKABLE void exportAll(); // beside the logbook
    Q_INVOKABLE void exportTo(int stick); // a row of sticks()
    Q_INVOKABLE void chooseTable(); // of fills
    Q_INVOKABLE void chooseTrips();
    Q_INVOKABLE void chooseLogbook();
    Q_INVOKABLE void pick(int row); // of files()
    Q_INVOKABLE void chooseUnit(int choice, int option);
    Q_INVOKABLE void confirm();
    Q_INVOKABLE void back();

signals:
    void changed();
    // The logbook has changed; the entries that were added, where they can be taken back.
    void stored(const std::vector<undermark::EntryId>& added);

private:
    enum Unit { Litres, Kilometres, Dates, Rates, Temperatures };

    bool ofTrips() const { return std::holds_alternative<ImportPreview<Trip>>(m_preview); }
    std::size_t freshRows() const;
    QList<Unit> unitsStated() const; // those that the table's columns need
    void chooseFile(bool merging);
    ImportOptions importOptions() const;
    void go(Stage stage);
    void refuse(const Error& error); // says what went wrong
    QList<FilePlace> writableSticks() const;
    void exportInto(const std::filesystem::path& into);
    template <class T> Result<ImportDone> taken(const ImportPreview<T>& shown);
    void warn(const std::vector<Sentence>& warnings);
    void lookIn();
    void import();
    void merge();

    Car& m_car;
    UnitFormat m_format;
    FileList m_tables;
    FileList m_logbooks;
    Stage m_stage = Stage::start;
    bool m_merging = false;
    std::filesystem::path m_file;
    std::array<int, 5> m_units{}; // by Unit
    std::variant<ImportPreview<Fill>, ImportPreview<Trip>> m_preview; // its kind is the table's
    std::vector<Notice> m_notices;
    QString m_done;
};

} // namespace undermark
