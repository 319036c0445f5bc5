// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Now page: how far the car goes, in words and numbers ready to show.
// Always valid: where the car cannot answer, `known` is false, and the page says what to do
// first (`waiting`), or, where the logbook cannot be read, why.
//
// Guarantees (each has a test in tests/app/screen/now/now_view_model_test.cpp):
//  * what the answer rests on, and how old that is, is always said; after a week without a
//    record it is a caution;
//  * while the car's sources speak the level is theirs, and counts down by itself; what was
//    told by touch and the log answer again once they are silent;
//  * what the owner asks, how far past zero is sure, stands beside the other two, and is
//    the large number once the needle was told to stand at zero.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/horizon_picture.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/page_model.h"
#include "app/screen/now/now_live.h"
#include "app/screen/now/now_load.h"
#include "app/screen/now/now_tell.h"

#include <QElapsedTimer>
#include <QStringList>
#include <QTimer>

namespace undermark {

// One line of the table: a place and its three distances.
struct RangeRow {
    Q_GADGET
    QML_VALUE_TYPE(rangeRow)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString sure MEMBER sure FINAL)
    Q_PROPERTY(QString even MEMBER even FINAL)
    Q_PROPERTY(QString hopeful MEMBER hopeful FINAL)
    Q_PROPERTY(bool ofReserve MEMBER ofReserve FINAL)
public:
    QString name;
    QString sure;
    QString even;
    QString hopeful;
    bool ofReserve = false; // below the zero mark only
    friend bool operator==(const RangeRow&, const RangeRow&) = default;
};

class NowViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool known READ known NOTIFY changed FINAL)
    Q_PROPERTY(bool waiting READ waiting NOTIFY changed FINAL)
    Q_PROPERTY(bool readable READ readable NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString age READ age NOTIFY aged FINAL)
    Q_PROPERTY(QString sureCaption READ sureCaption NOTIFY changed FINAL)
    Q_PROPERTY(QString sureNumber READ sureNumber NOTIFY changed FINAL)
    Q_PROPERTY(QString distanceUnit READ distanceUnit NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::RangeRow> rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(undermark::HorizonPicture horizon READ horizon NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QString why READ why NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> modes READ modes NOTIFY changed FINAL)
    Q_PROPERTY(QString mode READ mode NOTIFY changed FINAL)
    Q_PROPERTY(int modeIndex READ modeIndex NOTIFY changed FINAL)
    Q_PROPERTY(bool calibrating READ calibrating NOTIFY changed FINAL)
    Q_PROPERTY(undermark::NowTell* tell READ tell CONSTANT FINAL)
    Q_PROPERTY(undermark::NowLoad* load READ load CONSTANT FINAL)
    Q_PROPERTY(undermark::NowLive* live READ live CONSTANT FINAL)

public:
    // What of the page is on view.
    enum Tab { Figures, Modes, Tell, Loaded };
    Q_ENUM(Tab)

    // `car` outlives the view model. Asks the car once. What is told is kept in the INI file
    // `settingsFile`; empty: for this run only.
    explicit NowViewModel(Car& car, Units units = {}, const QString& settingsFile = {},
                          QObject* parent = nullptr);

    bool known() const { return m_state.has_value(); }
    bool waiting() const { return m_waiting; }   // for a first fill or another level
    bool readable() const { return m_readable; } // the gauge is calibrated: it can be told
    QString title() const; // the vehicle
    QString age() const { return m_age; } // "log, 67 days ago"
    QString sureCaption() const; // what the large number is
    QString sureNumber() const;
    QString distanceUnit() const { return m_format.distanceUnit(); }
    QList<RangeRow> rows() const; // to zero, past zero, to dry
    HorizonPicture horizon() const { return m_horizon; }
    QList<Fact> facts() const;
    QString why() const;
    QList<NoticeText> notices() const;
    QStringList modes() const; // the usual mix first
    QString mode() const;      // one of them
    int modeIndex() const;
    // A calibration was begun and is not in the logbook yet.
    bool calibrating() const { return m_calibrating; }
    void setCalibrating(bool calibrating);
    NowTell* tell() { return &m_tell; }
    NowLoad* load() { return &m_load; }
    NowLive* live() { return &m_live; }
    // What the page asks, for whoever answers for the same car: with what was told.
    Question question();
    QString basis() const; // "odometer, 5 min ago; towing: 30 % more"
    void setFormat(const UnitFormat& format) override;

    Q_INVOKABLE void refresh() override;
    void startOver() override; // in the usual mix
    // Asks in another driving mode; indices outside modes() are ignored.
    Q_INVOKABLE void selectMode(int index);
    // In the mode that the speed proposes, where it does.
    Q_INVOKABLE void takeProposedMode();

signals:
    void changed();
    void aged();
    void asksOtherwise(); // something else was told

private:
    void ask();
    void askAnew();
    void followLevel();
    void noteProof(const Proof& proof);
    void keepLevel(const LevelRecord& level);
    Result<NowState> answer();
    void tellAge();
    bool atZero() const; // as it was told
    Distances pastZero() const; // what is left of it
    RangeRow row(const QString& name, const Distances& made, bool ofReserve = false) const;

    Car& m_car;
    UnitFormat m_format;
    NowTell m_tell;
    NowLoad m_load;
    NowLive m_live;
    QElapsedTimer m_othersAsked; // when the other pages were last told of the level
    std::string m_mode; // empty: the usual mix
    std::optional<NowState> m_state;
    bool m_waiting = false;
    bool m_readable = false;
    bool m_calibrating = false;
    HorizonPicture m_horizon;
    std::vector<Notice> m_notices;
    QString m_age;
    QTimer m_clock; // ages grow by themselves
};

} // namespace undermark
