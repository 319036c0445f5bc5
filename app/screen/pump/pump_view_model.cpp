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

PumpViewModel::PumpViewModel(CarService& car, Units units, QObject* parent)
    : QObject(parent), m_car(car), m_format(units)
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
    m_editedId.clear();
    m_touched = false;
    m_byTripMeter = false;
    m_extent = FillExtent::full;
    m_form.setLocked(false);
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    if (const Result<FillDraft> guess = m_car.guessFill())
        fillIn(*guess, true);
    else
        m_notices = {noticeOf(guess.error())};
    emit changed();
}

void PumpViewModel::refresh()
{
    if (saved() || !m_editedId.empty())
        return;
    if (!m_touched)
        return startAgain();
    const Result<FillDraft> guess = m_car.guessFill();
    if (!guess)
        return;
    const auto renew = [this](Entry entry, bool known, const QString& text) {
        if (known && m_form.guessed(entry))
            m_form.setText(entry, text, true);
    };
    renew(Litres, guess->litres > Volume{}, m_format.typed(guess->litres));
    renew(Odometer, guess->odometer.has_value(), m_format.typed(guess->odometer.value_or(Distance{})));
    renew(TripMeter, guess->sinceLast.has_value(), m_format.typed(guess->sinceLast.value_or(Distance{})));
    renew(Price, guess->pricePerLitre.has_value(), m_format.typedPrice(guess->pricePerLitre.value_or(0)));
    emit changed();
}

void PumpViewModel::edit(const std::string& entryId, const Fill& fill)
{
    startAgain();
    m_notices.clear();
    m_form.setEntries(entries());
    m_editedId = entryId;
    m_edited = fill;
    fillIn({fill.volume, fill.odometer, fill.sinceLast, fill.extent, fill.pricePerLitre}, false);
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

void PumpViewModel::fillIn(const FillDraft& numbers, bool guessed)
{
    if (numbers.litres > Volume{})
        m_form.setText(Litres, m_format.typed(numbers.litres), guessed);
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

Result<FillDraft> PumpViewModel::draft() const
{
    const auto refused = [this](Entry entry) {
        return fail(ErrorCode::badInput, Sentence::of("this is not an amount that can be stored"),
                    {.column = m_form.name(entry).toStdString()},
                    Sentence::of("a number of 0 or more"), m_form.text(entry).toStdString());
    };
    FillDraft fill;
    fill.extent = m_extent;
    const auto litres = m_format.volumeFrom(m_form.text(Litres));
    if (!litres || *litres == Volume{})
        return failInput(Sentence::of("How much went in is missing"));
    fill.litres = *litres;

    const Entry meter = m_byTripMeter ? TripMeter : Odometer;
    if (!m_form.text(meter).isEmpty()) {
        auto& target = meter == TripMeter ? fill.sinceLast : fill.odometer;
        target = m_format.distanceFrom(m_form.text(meter));
        if (!target)
            return refused(meter);
    }
    if (!m_form.text(Price).isEmpty()) {
        fill.pricePerLitre = m_format.pricePerLitreFrom(m_form.text(Price));
        if (!fill.pricePerLitre)
            return refused(Price);
    }
    return fill;
}

Result<FillLesson> PumpViewModel::store(const FillDraft& numbers)
{
    if (m_editedId.empty())
        return m_car.addFill(numbers);
    Fill fill = m_edited;   // what the form does not show stays as it was
    fill.volume = numbers.litres;
    fill.odometer = numbers.odometer;
    fill.sinceLast = numbers.sinceLast;
    fill.extent = numbers.extent;
    fill.pricePerLitre = numbers.pricePerLitre;
    if (const auto revised = m_car.revise(m_editedId, fill); !revised)
        return fail(revised.error());
    FillLesson lesson;
    lesson.entryId = m_editedId;
    return lesson;
}

QString PumpViewModel::saveWord() const
{
    return m_editedId.empty() ? tr("Save this fill") : tr("Save the correction");
}

void PumpViewModel::save()
{
    if (saved())
        return;
    const Result<FillDraft> fill = draft();
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
    const Fill& better = *m_lesson->proposed;
    if (better.volume != m_savedFill.litres)
        return tr("Make it %1").arg(m_format.volume({better.volume, {}}));
    return better.odometer ? tr("Make it %1").arg(m_format.distanceWithUnit(*better.odometer))
                           : QString();
}

void PumpViewModel::mend()
{
    if (mendWord().isEmpty())
        return;
    if (const auto revised = m_car.revise(m_lesson->entryId, *m_lesson->proposed); !revised) {
        m_notices = {noticeOf(revised.error())};
        emit changed();
        return;
    }
    m_mended = true;
    m_savedFill.litres = m_lesson->proposed->volume;
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
        m_mended = !m_car.undoFill(m_lesson->entryId);
    const Result<void> undone = m_car.undoFill(m_lesson->entryId);
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
    return tr("%1 %2 saved").arg(m_format.typed(m_savedFill.litres), m_format.volumeUnit());
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
