// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/pump/pump_view_model.h"

#include "app/car/car_tanks.h"

namespace undermark {

namespace {

constexpr std::chrono::milliseconds kDoubleTap{700};
constexpr Volume kAlmostFull = Volume::fromLitres(2.0);

template <class Q, class Write>
LessonRow lessonRow(const QString& name, const Change<Q>& change, const Write& write)
{
    const auto text = [&write](const std::optional<Estimate<Q>>& estimate) {
        return estimate ? write(*estimate) : PumpViewModel::tr("not known yet");
    };
    return {name, text(change.before), text(change.after)};
}

} // namespace

PumpViewModel::PumpViewModel(Car& car, Units units, QObject* parent)
    : PageModel(parent), m_car(car), m_format(units)
{
    connect(form(), &NumberForm::edited, this, [this] {
        m_touched = true;
        m_asked.invalidate();
        m_notices.clear();
        emit changed();
    });
    startAgain();
}

void PumpViewModel::askAs(std::function<Question()> question)
{
    m_question = std::move(question);
}

void PumpViewModel::proposeSeen(const std::optional<Estimate<Volume>>& litres)
{
    m_seen = litres;
    refresh();
}

Result<Fill> PumpViewModel::likelyFill()
{
    Result<Fill> fill = m_car.likelyFill(m_question(), m_tanks.tank());
    if (fill && m_seen && m_tanks.tank().empty()) // the own tank's sender saw it
        fill->volume = m_seen->mean;
    return fill;
}

// Full where what is left to full after it, which the level knows by now, is within its doubt.
FillExtent PumpViewModel::likelyExtent()
{
    const Result<Fill> after = m_seen ? m_car.likelyFill(m_question()) : fail(Error{});
    const bool partial = after && after->volume > kAlmostFull + 2.0 * m_seen->sd;
    return partial ? FillExtent::partial : FillExtent::full;
}

void PumpViewModel::lookAtTanks()
{
    if (const auto car = m_car.knowledge())
        m_tanks.look((*car)->log);
}

// A fill that is being typed stays as it is; what is still a guess becomes one of that tank.
void PumpViewModel::selectTank(int option)
{
    if (saved() || !m_tanks.choose(option))
        return;
    if (!m_edited && !m_touched)
        return startAgain();
    m_notices.clear();
    m_form.turnTo(readingUnit());
    refresh();
    emit changed();
}

void PumpViewModel::startAgain()
{
    lookAtTanks();
    m_lesson.reset();
    m_notices.clear();
    m_edited.reset();
    m_touched = false;
    m_asked.invalidate();
    m_extent = likelyExtent();
    m_form.start(m_format, readingUnit());
    if (const Result<Fill> guess = likelyFill())
        m_form.show(*guess, true, m_car.time());
    else
        m_notices = {noticeOf(guess.error())};
    if (m_seen)
        m_notices.push_back({Severity::info,
                             Sentence::of("The sender saw %1 go in, give or take %2: what does the pump show? If none "
                                          "went in, say so on Now.",
                                          amount(m_seen->mean), amount(m_seen->sd))});
    emit changed();
}

void PumpViewModel::refresh()
{
    if (saved() || m_edited)
        return;
    if (!m_touched)
        return startAgain();
    lookAtTanks();
    if (const Result<Fill> guess = likelyFill()) {
        m_form.renew(*guess);
        emit changed();
    }
}

void PumpViewModel::edit(const Entry<Fill>& fill)
{
    startAgain();
    m_notices.clear();
    m_tanks.mean(fill.value.tank.value_or(std::string()));
    m_form.start(m_format.in(fill.value.currency.value_or(std::string())), readingUnit());
    m_edited = fill;
    m_extent = fill.value.extent;
    m_form.show(fill.value, false, m_car.time());
    emit changed();
}

void PumpViewModel::startForgotten()
{
    startAgain();
    m_notices.clear();
    m_touched = true;
    m_form.start(m_format, readingUnit());
    m_form.askWhen();
    emit changed();
}

void PumpViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    if (!saved())
        startAgain();
    emit changed();
}

QString PumpViewModel::readingUnit() const
{
    const auto car = m_car.knowledge();
    if (!car)
        return {};
    const Knowledge tank = knownOfTank(*car, m_tanks.tank());
    return tank->gauge.isKnown() && !tank->gauge.hasTwoSignals() ? QString::fromStdString(tank->vehicle().sender.unit)
                                                                 : QString();
}

QStringList PumpViewModel::extents() const
{
    return {tr("Full"), tr("Partial"), tr("To the neck")};
}

void PumpViewModel::selectExtent(int extent)
{
    if (saved() || extent < 0 || extent >= extents().size())
        return;
    m_extent = FillExtent(extent);
    m_touched = true;
    emit changed();
}

void PumpViewModel::turn(int field)
{
    if (saved())
        return;
    m_form.turn(field);
    emit changed();
}

Result<FillLesson> PumpViewModel::store(const Fill& fill)
{
    if (!m_edited)
        return m_car.recordFill(fill);
    if (const auto revised = m_car.revise(m_edited->id, fill); !revised)
        return fail(revised.error());
    FillLesson lesson;
    lesson.entry = m_edited->id;
    return lesson;
}

QString PumpViewModel::saveWord() const
{
    if (m_asked.isValid())
        return tr("Yes, save the guesses");
    return !m_edited ? tr("Save this fill") : tr("Save the correction");
}

// Of nothing but guesses; once, and not for the second tap of two.
bool PumpViewModel::asksFirst()
{
    if (m_asked.isValid())
        return m_asked.elapsed() < kDoubleTap.count();
    if (m_touched || m_edited || !form()->guessed(FillForm::Litres))
        return false;
    m_asked.start();
    m_notices = {{Severity::warning,
                  Sentence::of("These are guesses. Does the pump show the same litres?")}};
    emit changed();
    return true;
}

void PumpViewModel::save()
{
    if (saved())
        return;
    if (asksFirst())
        return;
    Fill known = m_edited ? m_edited->value : Fill{};
    if (!m_edited)
        known.time = m_car.time();
    known.extent = m_extent;
    known.tank = tankName(m_tanks.tank());
    const Result<Fill> fill = m_form.typed(std::move(known), m_car.time());
    Result<FillLesson> lesson = fill ? store(*fill) : Result<FillLesson>(fail(fill.error()));
    if (!lesson) {
        m_notices = {noticeOf(lesson.error())};
        emit changed();
        return;
    }
    m_savedFill = *fill;
    m_notices = lesson->flags;
    m_lesson = std::move(*lesson);
    if (!fill->tank)
        m_seen.reset();
    m_mended = false;
    form()->setLocked(true);
    if (!m_edited && m_car.time() - fill->time < std::chrono::hours(1))
        emit filled({m_lesson->entry, {}, *fill});
    emit changed();
    emit stored();
}

QString PumpViewModel::mendWord() const
{
    if (!saved() || !m_lesson->proposed)
        return {};
    return mendWord(m_savedFill, *m_lesson->proposed, m_format);
}

QString PumpViewModel::mendWord(const Fill& fill, const Fill& better, const UnitFormat& format)
{
    if (better.volume != fill.volume)
        return tr("Make it %1").arg(format.volume({better.volume, {}}));
    const auto& distance = better.odometer != fill.odometer ? better.odometer : better.sinceLast;
    return distance ? tr("Make it %1").arg(format.distanceWithUnit(*distance)) : QString();
}

void PumpViewModel::mend()
{
    if (mendWord().isEmpty())
        return;
    if (const auto revised = m_car.revise(m_lesson->entry, *m_lesson->proposed); !revised) {
        m_notices = {noticeOf(revised.error())};
        emit changed();
        return;
    }
    m_mended = true;
    m_savedFill = *m_lesson->proposed;
    m_lesson->proposed.reset();
    m_notices.clear();
    if (const auto car = m_car.knowledge()) {
        m_lesson->rate.after = (*car)->consumption.model.forecast().rate;
        m_lesson->reserve.after = (*car)->hiddenReserve();
    }
    emit changed();
    emit stored();
}

void PumpViewModel::undo()
{
    if (!saved())
        return;
    if (m_mended) // the correction first, then the fill itself
        m_mended = !m_car.takeBack(m_lesson->entry);
    const Result<void> undone = m_car.takeBack(m_lesson->entry);
    if (undone) {
        m_lesson.reset();
        m_notices.clear();
        form()->setLocked(false);
    } else {
        m_notices = {noticeOf(undone.error())};
    }
    emit changed();
    if (undone)
        emit stored();
}

QString PumpViewModel::savedTitle() const
{
    if (!saved())
        return {};
    const QString litres = tr("%1 %2").arg(m_format.typed(m_savedFill.volume), m_format.volumeUnit());
    return m_savedFill.tank ? tr("%1 saved, into %2").arg(litres, m_tanks.word()) : tr("%1 saved").arg(litres);
}

QList<LessonRow> PumpViewModel::lesson() const
{
    if (!saved())
        return {};
    return {lessonRow(tr("rate"), m_lesson->rate,
                      [this](const Estimate<Consumption>& c) { return m_format.rate(c); }),
            lessonRow(tr("hidden reserve"), m_lesson->reserve,
                      [this](const Estimate<Volume>& v) { return m_format.volume(v); })};
}

} // namespace undermark
