// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/calibration_guide.h"

#include "app/screen/tank/calibration_draft_file.h"
#include "engine/tank/reserve_prior.h"

namespace undermark {

CalibrationGuide::CalibrationGuide(Car& car, Units units, QObject* parent)
    : QObject(parent), m_car(car), m_format(units)
{
    connect(&m_form, &NumberForm::edited, this, [this] {
        m_problem.reset();
        m_doubted = {};
        m_resumed = false;
        if (reviewing())
            keepReview();
        emit changed();
    });
    connect(&m_live, &LiveSignal::changed, this, &CalibrationGuide::liveChanged);
    takeUp();
}

std::filesystem::path CalibrationGuide::file() const
{
    return draftFile(m_car.folder(), m_car.shownCar());
}

void CalibrationGuide::takeUp()
{
    m_problem.reset();
    m_corrected.reset();
    m_saved = false;
    const auto found = findDraft(file());
    if (!found)
        m_problem = noticeOf(found.error());
    m_session = CalibrationSession(found && *found ? **found : CalibrationDraft());
    m_resumed = started();
    listen();
    m_live.forget();
    showStage();
}

void CalibrationGuide::turnTo(const std::string& tank, const QString& word)
{
    m_tankWord = preparing() || word.isEmpty() || tank == this->tank() ? word : QString::fromStdString(this->tank());
    if (preparing() && tank != this->tank()) {
        m_session.chooseTank(tankName(tank));
        m_saved = false;
    }
    listen();
    showStage();
}

void CalibrationGuide::setFormat(const UnitFormat& format)
{
    m_format = format;
    showStage();
}

QList<NumberEntry> CalibrationGuide::entries() const
{
    const bool two = m_session.hasTwoSignals(), reads = m_corrected || m_session.takesReadings();
    const QString unit = QString::fromStdString(sender().unit);
    const bool lobes = reviewing() && m_session.draft().wiring == TankWiring::inSeries;
    return {{Litres, takesOut() ? tr("taken out") : tr("poured in"), m_format.volumeUnit(),
             {}, false, movesLitres()},
            {Reading, two ? tr("reading, lobe with the pump") : tr("reading"), unit, {}, false, reads},
            {SecondReading, tr("reading, other lobe"), unit, {}, false, reads && two},
            {Zero, tr("zero mark above drained"), m_format.volumeUnit(), {}, false, reviewing()},
            {FirstLobe, tr("one lobe holds, if known"), m_format.volumeUnit(), {}, false, lobes},
            {SecondLobe, tr("the other lobe holds"), m_format.volumeUnit(), {}, false, lobes}};
}

void CalibrationGuide::showStage()
{
    const CalibrationDraft& draft = m_session.draft();
    m_doubted = {};
    m_form.setDecimalMark(m_format.decimalMark());
    m_form.setEntries(entries());
    if (m_corrected)
        return showCorrected();
    if (draft.current.poured != Volume{}) {
        m_form.setText(Litres, m_format.typed(abs(draft.current.poured)));
        m_form.activate(Reading);
    }
    if (reviewing() && m_session.zeroMark())
        m_form.setText(Zero, m_format.typed(*m_session.zeroMark()), !draft.zeroMark);
    if (const auto kept = keptCalibration(); reviewing() && kept && kept->lobes)
        m_session.knowLobes(*kept->lobes);
    if (reviewing() && draft.firstLobe)
        m_form.setText(FirstLobe, m_format.typed(*draft.firstLobe));
    if (reviewing() && draft.secondLobe)
        m_form.setText(SecondLobe, m_format.typed(*draft.secondLobe));
    emit changed();
}

void CalibrationGuide::keep()
{
    m_resumed = false;
    if (const auto kept = keepDraft(m_session.draft(), file()); !kept)
        m_problem = noticeOf(kept.error());
}

// What is typed at the review, as far as it is a number yet.
void CalibrationGuide::keepReview()
{
    m_session.review(m_format.volumeFrom(m_form.text(Zero)), m_format.volumeFrom(m_form.text(FirstLobe)),
                     m_format.volumeFrom(m_form.text(SecondLobe)));
    keep();
}

// Says what is missing, or keeps and shows the step that was taken.
bool CalibrationGuide::accept(const Result<void>& done)
{
    if (!done) {
        m_problem = noticeOf(done.error());
        emit changed();
        return false;
    }
    keep();
    return true;
}

void CalibrationGuide::acknowledge(int caution)
{
    if (!preparing() || caution < 0 || caution >= int(CalibrationSession::kCautions))
        return;
    m_session.acknowledge(std::size_t(caution));
    m_problem.reset();
    keep();
    emit changed();
}

void CalibrationGuide::chooseWiring(int wiring)
{
    if (!preparing() || wiring < 0 || wiring >= wirings().size())
        return;
    m_session.choose(TankWiring(wiring));
    listen();
    keep();
    showStage();
}

void CalibrationGuide::chooseUnit(int unit)
{
    if (!preparing() || unit < 0 || unit >= units().size())
        return;
    m_session.choose(units()[unit].toStdString());
    keep();
    showStage();
}

std::optional<Volume> CalibrationGuide::typedLitres() const
{
    return m_format.volumeFrom(m_form.text(Litres));
}

void CalibrationGuide::go()
{
    if (m_doubted)
        return changeDoubted();
    m_problem.reset();
    m_saved = false;
    if (m_corrected)
        return takeCorrection();
    if (reviewing())
        return save();
    if (!m_session.takesReadings() || !isTyped())
        return goFurther(&CalibrationSession::next);
    if (const auto reading = typedReading())
        take(*reading);
}

void CalibrationGuide::other()
{
    if (m_doubted)
        return keepDoubted();
    m_problem.reset();
    if (preparing())
        return takeUpKept();
    if (m_session.canSkip() && !m_corrected)
        goFurther(&CalibrationSession::skip);
}

void CalibrationGuide::back()
{
    m_problem.reset();
    if (m_corrected)
        return leaveCorrection();
    m_session.back();
    keep();
    showStage();
}

// To the next level; litres that were changed after their readings are asked about, too.
void CalibrationGuide::goFurther(Result<void> (CalibrationSession::*way)(std::optional<Volume>))
{
    const auto moved = typedLitres();
    const auto goOn = [this, way, moved] {
        if (accept((m_session.*way)(moved)))
            showNextLevel();
    };
    if (moved == abs(m_session.draft().current.poured))
        goOn();
    else
        askFirst(std::nullopt, goOn);
}

void CalibrationGuide::showNextLevel()
{
    m_live.forget();
    showStage();
}

bool CalibrationGuide::isTyped() const
{
    return !m_form.text(Reading).isEmpty() || !m_form.text(SecondReading).isEmpty();
}

Result<DraftReading> CalibrationGuide::typedReading()
{
    const auto signalOf = [](std::optional<double> number) {
        return number ? std::optional(Signal::of(*number)) : std::nullopt;
    };
    const auto first = signalOf(m_format.numberFrom(m_form.text(Reading)));
    const auto second = signalOf(m_format.numberFrom(m_form.text(SecondReading)));
    auto reading = m_session.typed(first, second, m_car.time().time_since_epoch());
    if (!reading) {
        m_form.activate(first ? SecondReading : Reading);
        accept(fail(reading.error()));
    }
    return reading;
}

void CalibrationGuide::take(const DraftReading& reading)
{
    askFirst(reading, [this, reading, moved = typedLitres()] {
        if (!accept(m_session.take(reading, moved)))
            return m_form.activate(Litres);
        m_form.setText(Reading, {});
        m_form.setText(SecondReading, {});
        m_form.activate(Reading);
        if (reading.settled)
            m_live.forget(); // the same is not taken twice
        emit changed();
    });
}

void CalibrationGuide::startAgain()
{
    dropDraft(file());
    takeUp();
}

void CalibrationGuide::save()
{
    auto calibration = m_session.calibration(sender(), m_format.volumeFrom(m_form.text(Zero)));
    if (calibration)
        calibration->time = m_car.time();
    if (!calibration) {
        accept(fail(calibration.error()));
        return;
    }
    const auto tank = tankAtHand(m_car, this->tank());
    if (!tank) {
        accept(fail(tank.error()));
        return;
    }
    const auto kept = keptCalibration();
    if (!kept || !m_session.isAsIn(*kept)) {
        const auto saved = m_car.record(*calibration);
        if (!accept(saved ? keepSender(m_car, *tank, sender()) : fail(saved.error())))
            return;
    }
    // Kept beside the calibration, which is stored whatever comes of this.
    if (const auto tried = m_session.verification(sender(), kJugSd, m_car.time()); tried && *tried)
        (void)m_car.record(**tried);
    startAgain();
    m_session.chooseTank(tank->name());
    m_saved = true;
    emit changed();
    emit stored();
}

std::optional<Calibration> CalibrationGuide::keptCalibration() const
{
    const auto car = known();
    if (!car || !(*car)->log.calibration || (*car)->log.calibration->value.points.empty())
        return std::nullopt;
    return (*car)->log.calibration->value;
}

void CalibrationGuide::takeUpKept()
{
    const auto kept = keptCalibration();
    if (!kept || !accept(m_session.takeUp(*kept)))
        return;
    m_problem = Notice{Severity::info,
                       Sentence::of("The calibration of the logbook: touch a level to correct it; to try it fill up "
                                    "to the first click, take some out and read.")};
    listen();
    showNextLevel();
}

Result<Knowledge> CalibrationGuide::known() const
{
    const auto car = m_car.knowledge();
    return car ? Result<Knowledge>(knownOfTank(*car, tank())) : fail(car.error());
}

Sender CalibrationGuide::knownSender() const
{
    const auto car = known();
    return car ? (*car)->vehicle().sender : Sender{};
}

Sender CalibrationGuide::sender() const
{
    const Sender known = knownSender();
    return readIn(known, m_session.draft().unit.value_or(known.unit));
}

} // namespace undermark
