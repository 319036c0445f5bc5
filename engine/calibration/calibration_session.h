// SPDX-License-Identifier: GPL-3.0-or-later
//
// Taking a calibration, step by step: prepare, drained, base, pours, full, verify,
// review. What may be done when, what a level needs, when a reading has settled, and
// what is wrong so far. Whoever shows it keeps the words, and draft() on disk after
// every change.
//
// Guarantees (tests/engine/calibration/calibration_session_test.cpp):
//  * nothing is poured before every caution has been acknowledged;
//  * a level needs its litres and a reading, of both lobes where there are two signals;
//  * what was taken comes back step by step, in the order in which it was taken, and any
//    level can be corrected where it stands;
//  * a slip is asked about before it is believed, and refused never;
//  * what allows no curve is not handed out as a calibration;
//  * a calibration that is kept can be taken up again, tried and corrected.
#pragma once

#include "engine/calibration/calibration_draft.h"
#include "engine/calibration/gauge.h"
#include "engine/calibration/settled_reading.h"

#include <array>

namespace undermark {

class CalibrationSession {
public:
    static constexpr std::size_t kCautions = 5;
    static constexpr int kWantedReadings = 5;    // typed ones, at one level
    // A live source shorter than this tells nothing of settling: slosh has a memory
    // of some seconds.
    static constexpr std::chrono::duration<double> kShortest{10};

    // One series for each signal, oldest first; empty without a live source.
    using Live = std::array<std::span<const TimedSignal>, 2>;
    enum class Settling { settled, tooFew, moving };

    explicit CalibrationSession(CalibrationDraft draft = {});

    const CalibrationDraft& draft() const { return m_draft; }
    CalibrationStage stage() const { return m_draft.stage; }
    bool isPreparing() const { return stage() == CalibrationStage::prepare; }
    bool isReviewing() const { return stage() == CalibrationStage::review; }
    bool hasTwoSignals() const { return m_draft.wiring == TankWiring::twoSignals; }
    bool takesReadings() const { return !isPreparing() && !isReviewing(); }
    bool takesLitres() const { return takesReadings() && stage() != CalibrationStage::drained; }
    bool takesOut() const { return stage() == CalibrationStage::verify; }
    bool canSkip() const { return stage() == CalibrationStage::pours || takesOut(); }

    // While preparing only. Acknowledged twice is taken back.
    void acknowledge(std::size_t caution);
    void choose(TankWiring wiring);
    void choose(const std::string& unit);
    void chooseTank(const std::optional<std::string>& tank);
    // What is known of its lobes already; what was told at the review stands.
    void knowLobes(const LobeVolumes& lobes);
    // `moved`: litres poured in, or taken out, above 0; absent where none were told.
    // badInput with what is missing; nothing has changed then.
    Result<void> take(const DraftReading& reading, std::optional<Volume> moved);
    // What was typed, as a reading to take. badInput: of what signal it is missing.
    Result<DraftReading> typed(std::optional<Signal> first, std::optional<Signal> second,
                               std::chrono::duration<double> time) const;
    // A level taken before, as it should have been: its litres (of the first one there are
    // none), above 0, and its readings, which become this one where it is given. badInput: no
    // such level, or its litres are missing.
    Result<void> correct(std::size_t level, const std::optional<DraftReading>& reading,
                         std::optional<Volume> moved);
    // What to ask about before such a level is believed (calibration_doubt.h): one taken
    // before, or, where `level` is how many there are, the one being taken.
    std::optional<Sentence> doubt(std::size_t level, const std::optional<DraftReading>& reading,
                                  std::optional<Volume> moved, Volume capacity) const;
    Result<void> next(std::optional<Volume> moved);   // the next pour, or the next step
    // While preparing: a calibration that is kept, as it stood when the tank was full. From there fuel
    // is taken out to try it, any level is corrected, and back() leads on to its pours. badInput:
    // a caution was not acknowledged, or the calibration has no points.
    Result<void> takeUp(const Calibration& kept);
    // Whether what was poured and read, and what it means, is as there: then only the levels at
    // which fuel was taken out are new.
    bool isAsIn(const Calibration& kept) const;
    Result<void> skip(std::optional<Volume> moved);   // pours: now fill it up; verify: without
    // Takes the last reading back, else opens the level before again.
    void back();
    void review(std::optional<Volume> zeroMark, std::optional<Volume> firstLobe,
                std::optional<Volume> secondLobe);

    // The base poured after draining, until another zero mark was told.
    std::optional<Volume> zeroMark() const;
    std::vector<CalibrationPoint> points() const;   // with the level being taken
    // What the points allow so far; badInput where they are too few.
    Result<Gauge> gauge(const Sender& sender) const;
    // To be stored. badInput: no zero mark, or no curve.
    Result<Calibration> calibration(const Sender& sender, std::optional<Volume> zeroMark) const;
    // The levels at which fuel was taken out again, against the curve of the others, measured
    // to `measuredSd` each; nothing where there was none. Errors: as gauge() and verify().
    Result<std::optional<VerificationRecord>> verification(const Sender& sender, Volume measuredSd,
                                                           Instant time) const;
    // What is wrong so far, no movement above all; what only the whole sweep can tell
    // waits for the review.
    std::vector<Finding> findings(const Sender& sender) const;

    // How well a reading must be known: 0.3 L by the levels so far, before there are
    // two half a percent of what the circuit or the signal itself spans.
    Signal tolerance(std::size_t signal, const Sender& sender, const Live& live) const;
    // What the live source has settled at, as one reading that stands for as many as
    // are independent.
    std::optional<DraftReading> settled(const Live& live, const Sender& sender) const;
    // How far the readings of the level being taken have come; it has one or more.
    Settling settling(const Sender& sender, const Live& live) const;
    // Mean and spread of those readings, of the first signal.
    SettledReading current(const Sender& sender, const Live& live) const;

private:
    bool isTaken(std::size_t level) const { return level < m_draft.levels.size(); }
    std::optional<DraftLevel> changed(std::size_t level, const std::optional<DraftReading>& reading,
                                      std::optional<Volume> moved) const;
    Result<void> checkCautions() const;
    Result<void> finish(CalibrationStage next, std::optional<Volume> moved);
    void moveTo(CalibrationStage next);
    std::vector<TimedSignal> series(std::size_t signal) const;
    std::optional<Error> whyNoCurve(const Sender& sender) const;

    CalibrationDraft m_draft;
};

} // namespace undermark
