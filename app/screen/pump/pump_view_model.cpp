// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/pump/pump_view_model.h"

namespace undermark {

namespace {

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
    connect(&m_form, &NumberForm::edited, this, [this] {
        m_touched = true;
        m_notices.clear();
        emit changed();
    });
    startAgain();
}

void PumpViewModel::startAgain()
{
    m_lesson.reset();
    m_notices.clear();
    m_edited.reset();
    m_touched = false;
    m_byTripMeter = false;
    m_extent = FillExtent::full;
    m_form.setLocked(false);
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    if (const Result<Fill> guess = m_car.likelyFill())
        fillIn(*guess, true);
    else
        m_notices = {noticeOf(guess.error())};
    emit changed();
}

void PumpViewModel::refresh()
{
    if (saved() || m_edited)
        return;
    if (!m_touched)
        return startAgain();
    const Result<Fill> guess = m_car.likelyFill();
    if (!guess)
        return;
    const auto renew = [this](Field entry, bool known, const QString& text) {
        if (known && m_form.guessed(entry))
            m_form.setText(entry, text, true);
    };
    renew(Litres, guess->volume > Volume{}, m_format.typed(guess->volume));
    renew(Odometer, guess->odometer.has_value(), m_format.typed(guess->odometer.value_or(Distance{})));
    renew(TripMeter, guess->sinceLast.has_value(), m_format.typed(guess->sinceLast.value_or(Distance{})));
    renew(Price, guess->pricePerLitre.has_value(), m_format.typedPrice(guess->pricePerLitre.value_or(0)));
    emit changed();
}

void PumpViewModel::edit(const Entry<Fill>& fill)
{
    startAgain();
    m_notices.clear();
    m_form.setEntries(entries());
    m_edited = fill;
    fillIn(fill.value, false);
    emit changed();
}

void PumpViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    if (!saved())
        startAgain();
    emit changed();
}

QList<NumberEntry> PumpViewModel::entries() const
{
    const QString km = m_format.distanceUnit();
    return {{Litres, tr("fuel put in"), m_format.volumeUnit(), {}, false, true},
            {Odometer, tr("odometer"), km, {}, false, !m_byTripMeter},
            {TripMeter, tr("trip meter"), km, {}, false, m_byTripMeter},
            {Price, tr("price"), tr("per %1").arg(m_format.volumeUnit()), {}, false, true}};
}

void PumpViewModel::fillIn(const Fill& numbers, bool guessed)
{
    if (numbers.volume > Volume{})
        m_form.setText(Litres, m_format.typed(numbers.volume), guessed);
    if (numbers.odometer)
        m_form.setText(Odometer, m_format.typed(*numbers.odometer), guessed);
    if (numbers.sinceLast)
        m_form.setText(TripMeter, m_format.typed(*numbers.sinceLast), guessed);
    if (numbers.pricePerLitre)
        m_form.setText(Price, m_format.typedPrice(*numbers.pricePerLitre), guessed);
    m_byTripMeter = !numbers.odometer && numbers.sinceLast;
    m_extent = numbers.extent;
    showMeter();
}

void PumpViewModel::showMeter()
{
    m_form.setShown(Odometer, !m_byTripMeter);
    m_form.setShown(TripMeter, m_byTripMeter);
}

QStringList PumpViewModel::extents() const
{
    return {tr("Full"), tr("Partial"), tr("To the neck")};
}

QString PumpViewModel::meterSwitch() const
{
    return m_byTripMeter ? tr("Use odometer") : tr("Use trip meter");
}

void PumpViewModel::selectExtent(int extent)
{
    if (saved() || extent < 0 || extent >= extents().size())
        return;
    m_extent = FillExtent(extent);
    m_touched = true;
    emit changed();
}

void PumpViewModel::switchMeter()
{
    if (saved())
        return;
    m_byTripMeter = !m_byTripMeter;
    m_touched = true;
    showMeter();
    m_form.activate(m_byTripMeter ? TripMeter : Odometer);
    emit changed();
}

// What the form does not show stays as it was.
Result<Fill> PumpViewModel::typed() const
{
    const auto refused = [this](Field entry) {
        return fail(ErrorCode::badInput, Sentence::of("this is not an amount that can be stored"),
                    {.column = m_form.name(entry).toStdString()},
                    Sentence::of("a number of 0 or more"), m_form.text(entry).toStdString());
    };
    Fill fill = m_edited ? m_edited->value : Fill{};
    if (!m_edited)
        fill.time = m_car.time();
    fill.extent = m_extent;
    const auto litres = m_format.volumeFrom(m_form.text(Litres));
    if (!litres || *litres == Volume{})
        return failInput(Sentence::of("How much went in is missing"));
    fill.volume = *litres;

    fill.odometer.reset();
    fill.sinceLast.reset();
    const Field meter = m_byTripMeter ? TripMeter : Odometer;
    if (!m_form.text(meter).isEmpty()) {
        auto& target = meter == TripMeter ? fill.sinceLast : fill.odometer;
        target = m_format.distanceFrom(m_form.text(meter));
        if (!target)
            return refused(meter);
    }
    fill.pricePerLitre.reset();
    if (!m_form.text(Price).isEmpty()) {
        fill.pricePerLitre = m_format.pricePerLitreFrom(m_form.text(Price));
        if (!fill.pricePerLitre)
            return refused(Price);
    }
    return fill;
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
    return !m_edited ? tr("Save this fill") : tr("Save the correction");
}

void PumpViewModel::save()
{
    if (saved())
        return;
    const Result<Fill> fill = typed();
    Result<FillLesson> lesson = fill ? store(*fill) : Result<FillLesson>(fail(fill.error()));
    if (!lesson) {
        m_notices = {noticeOf(lesson.error())};
        emit changed();
        return;
    }
    m_savedFill = *fill;
    m_notices = lesson->flags;
    m_lesson = std::move(*lesson);
    m_mended = false;
    m_form.setLocked(true);
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
        m_lesson->reserve.after = (*car)->reserve.reserve();
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
        m_form.setLocked(false);
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
    return tr("%1 %2 saved").arg(m_format.typed(m_savedFill.volume), m_format.volumeUnit());
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
