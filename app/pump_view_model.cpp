// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pump_view_model.h"

namespace undermark {

namespace {

constexpr int kLongestNumber = 8;
constexpr int kFieldCount = 3;

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
    startAgain();
}

void PumpViewModel::startAgain()
{
    m_lesson.reset();
    m_notices.clear();
    m_typed = {};
    m_active = 0;
    m_extent = FillExtent::full;
    if (const Result<FillDraft> guess = m_car.guessFill())
        takeGuess(*guess);
    else
        m_notices = {noticeText(guess.error())};
    emit changed();
}

void PumpViewModel::takeGuess(const FillDraft& guess)
{
    if (guess.litres > Volume{})
        m_typed[Litres] = {m_format.typed(guess.litres), true};
    if (guess.odometer)
        m_typed[Odometer] = {m_format.typed(*guess.odometer), true};
    if (guess.sinceLast)
        m_typed[TripMeter] = {m_format.typed(*guess.sinceLast), true};
    if (guess.pricePerLitre)
        m_typed[Price] = {m_format.typedPrice(*guess.pricePerLitre), true};
    m_byTripMeter = !guess.odometer && guess.sinceLast;
    m_extent = guess.extent;
}

PumpViewModel::Entry PumpViewModel::entryAt(int field) const
{
    if (field == 0)
        return Litres;
    if (field == 1)
        return m_byTripMeter ? TripMeter : Odometer;
    return Price;
}

QString PumpViewModel::entryName(Entry entry) const
{
    switch (entry) {
    case Litres:
        return tr("fuel put in");
    case Odometer:
        return tr("odometer");
    case TripMeter:
        return tr("trip meter");
    case Price:
        return tr("price");
    case EntryCount:
        break;
    }
    return {};
}

QString PumpViewModel::entryUnit(Entry entry) const
{
    switch (entry) {
    case Litres:
        return m_format.volumeUnit();
    case Odometer:
    case TripMeter:
        return m_format.distanceUnit();
    case Price:
        return tr("per %1").arg(m_format.volumeUnit());
    case EntryCount:
        break;
    }
    return {};
}

PumpField PumpViewModel::field(Entry entry) const
{
    const Typed& typed = m_typed[entry];
    PumpField field{entryName(entry),
                    typed.text,
                    entryUnit(entry),
                    typed.guessed ? tr("guess") : QString(),
                    {}};
    field.spoken = typed.text.isEmpty()
                       ? tr("%1: empty").arg(field.name)
                       : tr("%1: %2 %3 %4").arg(field.name, field.text, field.unit, field.hint);
    return field;
}

QList<PumpField> PumpViewModel::fields() const
{
    QList<PumpField> all;
    for (int i = 0; i < kFieldCount; ++i)
        all.append(field(entryAt(i)));
    return all;
}

QString PumpViewModel::padTitle() const
{
    const Entry entry = entryAt(m_active);
    return tr("%1, %2").arg(entryName(entry), entryUnit(entry));
}

QStringList PumpViewModel::extents() const
{
    return {tr("Full"), tr("Partial"), tr("To the neck")};
}

QString PumpViewModel::meterSwitch() const
{
    return m_byTripMeter ? tr("Use odometer") : tr("Use trip meter");
}

void PumpViewModel::select(int field)
{
    if (field < 0 || field >= kFieldCount)
        return;
    m_active = field;
    emit changed();
}

bool PumpViewModel::press(const QString& pressed)
{
    // Where the decimal key of a keyboard's pad gives a comma, the point is meant.
    const QString key = pressed == u"," ? u"."_qs : pressed;
    static const QString keys = QStringLiteral("0123456789.");
    if (saved() || key.size() != 1 || !keys.contains(key))
        return false;
    Typed& typed = active();
    const QString before = typed.guessed ? QString() : typed.text;
    if (before.size() >= kLongestNumber || (key == u"." && before.contains(u'.')))
        return true;
    typed = {before + key, false};
    m_notices.clear();
    emit changed();
    return true;
}

void PumpViewModel::erase()
{
    if (saved())
        return;
    Typed& typed = active();
    typed = {typed.guessed ? QString() : typed.text.chopped(typed.text.isEmpty() ? 0 : 1), false};
    emit changed();
}

void PumpViewModel::selectExtent(int extent)
{
    if (saved() || extent < 0 || extent >= extents().size())
        return;
    m_extent = FillExtent(extent);
    emit changed();
}

void PumpViewModel::switchMeter()
{
    if (saved())
        return;
    m_byTripMeter = !m_byTripMeter;
    m_active = 1;
    emit changed();
}

Result<FillDraft> PumpViewModel::draft() const
{
    const auto refused = [this](Entry entry) {
        Error error;
        error.code = ErrorCode::badInput;
        error.detail = tr("this is not an amount that can be stored").toStdString();
        error.column = entryName(entry).toStdString();
        error.expected = tr("a number of 0 or more").toStdString();
        error.found = m_typed[entry].text.toStdString();
        return fail(error);
    };
    FillDraft fill;
    fill.extent = m_extent;
    const auto litres = m_format.volumeFrom(m_typed[Litres].text);
    if (!litres || *litres == Volume{})
        return failInput(tr("How much went in is missing").toStdString());
    fill.litres = *litres;

    const Entry meter = entryAt(1);
    if (!m_typed[meter].text.isEmpty()) {
        auto& target = meter == TripMeter ? fill.sinceLast : fill.odometer;
        target = m_format.distanceFrom(m_typed[meter].text);
        if (!target)
            return refused(meter);
    }
    if (!m_typed[Price].text.isEmpty()) {
        fill.pricePerLitre = m_format.pricePerLitreFrom(m_typed[Price].text);
        if (!fill.pricePerLitre)
            return refused(Price);
    }
    return fill;
}

void PumpViewModel::save()
{
    if (saved())
        return;
    const Result<FillDraft> fill = draft();
    Result<FillLesson> lesson =
        fill ? m_car.addFill(*fill) : Result<FillLesson>(fail(fill.error()));
    if (!lesson) {
        m_notices = {noticeText(lesson.error())};
        emit changed();
        return;
    }
    m_savedFill = *fill;
    m_notices = noticeTexts(lesson->flags);
    m_lesson = std::move(*lesson);
    emit changed();
    emit stored();
}

void PumpViewModel::undo()
{
    if (!saved())
        return;
    const Result<void> undone = m_car.undoFill(m_lesson->entryId);
    if (undone) {
        m_lesson.reset();
        m_notices.clear();
    } else {
        m_notices = {noticeText(undone.error())};
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
