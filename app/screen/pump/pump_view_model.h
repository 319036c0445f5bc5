// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Pump page: a fill typed on the number pad, and what it taught. The Logbook
// page corrects a fill with the same form.
//
// Guarantees (each has a test in tests/app/screen/pump/pump_view_model_test.cpp):
//  * guesses are filled in and marked (typing: app/screen/base/number_form.h);
//  * what cannot be a number is refused here and named, nothing is stored;
//  * after save() the lesson is there at once; undo() takes the fill back and
//    returns to the numbers as they were typed;
//  * refresh() renews what is still a guess; nothing typed or chosen is lost;
//  * a fill of nothing but guesses is asked about once, and a double tap is no answer;
//  * an odd fill is stored, said, and mended only if the user takes the proposal;
//  * of a car of several tanks the fill is of the one that is chosen, and so are the guesses.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/page_model.h"
#include "app/screen/base/tank_choice.h"
#include "app/screen/pump/fill_form.h"

#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// What a fill did to one estimate.
struct LessonRow {
    Q_GADGET
    QML_VALUE_TYPE(lessonRow)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString before MEMBER before FINAL)
    Q_PROPERTY(QString after MEMBER after FINAL)
public:
    QString name;
    QString before;
    QString after;
    friend bool operator==(const LessonRow&, const LessonRow&) = default;
};

class PumpViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(undermark::NumberForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QList<QString> extents READ extents NOTIFY changed FINAL)
    Q_PROPERTY(int extent READ extent NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> switches READ switches NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> tanks READ tanks NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(bool saved READ saved NOTIFY changed FINAL)
    Q_PROPERTY(QString savedTitle READ savedTitle NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::LessonRow> lesson READ lesson NOTIFY changed FINAL)
    Q_PROPERTY(QString mendWord READ mendWord NOTIFY changed FINAL)
    Q_PROPERTY(QString saveWord READ saveWord NOTIFY changed FINAL)

public:
    // `car` outlives the view model. Asks the car for its guesses once.
    explicit PumpViewModel(Car& car, Units units = {}, QObject* parent = nullptr);

    // Litres that were seen going in, to be typed as the pump shows them; nothing: none were,
    // or they cannot be spoken of any more.
    void proposeSeen(const std::optional<Estimate<Volume>>& litres);
    // What the guesses are asked with: as the Now page asks.
    void askAs(std::function<Question()> question);

    NumberForm* form() { return &m_form.numbers(); }
    QStringList extents() const;
    int extent() const { return int(m_extent); }
    QStringList switches() const { return m_form.switches(); } // beside each field; see FillForm
    QList<Choice> tanks() const { return m_tanks.choices(); }  // which one; with one tank none
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }
    bool saved() const { return m_lesson.has_value(); }
    QString savedTitle() const;
    QList<LessonRow> lesson() const;
    QString saveWord() const;
    QString mendWord() const; // what mend() would do; empty where nothing is proposed
    // What becomes of a fill that is mended, for the Logbook page, too.
    static QString mendWord(const Fill& fill, const Fill& better, const UnitFormat& format);

    // Corrects a fill of the log instead of adding one: save() replaces it.
    void edit(const Entry<Fill>& fill);
    // A fill of some days ago, of which nothing can be guessed.
    void startForgotten();
    EntryId savedEntry() const { return m_lesson ? m_lesson->entry : EntryId(); }
    // Units anew: until the fill is saved the form starts again.
    void setFormat(const UnitFormat& format) override;

    Q_INVOKABLE void selectExtent(int extent);
    Q_INVOKABLE void selectTank(int option); // of tanks()
    Q_INVOKABLE void turn(int field); // what switches() says of it
    Q_INVOKABLE void save();
    // Takes the correction that is proposed for the fill just saved.
    Q_INVOKABLE void mend();
    Q_INVOKABLE void undo();
    void refresh() override;
    void startOver() override { startAgain(); }
    // A new fill, with new guesses.
    Q_INVOKABLE void startAgain();

signals:
    void changed();
    void filled(const undermark::Entry<undermark::Fill>& fill); // just now, not some days ago

private:
    void lookAtTanks();
    QString readingUnit() const;
    Result<Fill> likelyFill();
    FillExtent likelyExtent();
    bool asksFirst();
    Result<FillLesson> store(const Fill& fill);

    Car& m_car;
    UnitFormat m_format;
    FillForm m_form;
    TankChoice m_tanks;
    bool m_touched = false; // something was typed or chosen
    std::function<Question()> m_question = [] { return Question{}; };
    QElapsedTimer m_asked;  // whether the guesses are right; not valid: not yet
    FillExtent m_extent = FillExtent::full;
    std::optional<Estimate<Volume>> m_seen; // going in, and not saved yet
    std::vector<Notice> m_notices;
    std::optional<FillLesson> m_lesson;
    Fill m_savedFill;
    bool m_mended = false;
    std::optional<Entry<Fill>> m_edited; // absent: a new fill
};

} // namespace undermark
