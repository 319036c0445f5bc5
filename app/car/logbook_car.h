// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car of the touch screen, over a logbook.
#pragma once

#include "app/car/car_service.h"
#include "engine/logbook/logbook.h"
#include "engine/outlook/outlook.h"

#include <functional>

namespace undermark {

using Clock = std::function<Instant()>;

// Reads the logbook anew where somebody else wrote to it since, so that screen
// and command line may be open at once.
class LogbookCar : public CarService {
public:
    // Without a vehicle every question is answered by notFound until setUp() or
    // showDemo(); without a logbook setUp() makes `file`.
    LogbookCar(std::optional<Logbook> logbook, std::filesystem::path file,
               std::optional<EntryId> vehicle, Clock clock);

    Result<NowState> now(const std::string& mode) override;
    Result<FillDraft> guessFill() override;
    Result<FillLesson> addFill(const FillDraft& fill) override;
    Result<void> undoFill(const std::string& entryId) override;
    // What is known, learnt again only after a change.
    Result<std::shared_ptr<const CarKnowledge>> knowledge() override;
    Result<void> revise(const std::string& entryId, const LogValue& value) override;
    Result<void> takeBack(const std::string& entryId) override;
    Result<std::vector<LogVersion>> history(const std::string& entryId,
                                            const LogValue& kind) override;
    Result<void> saveCalibration(Calibration calibration) override;
    Result<std::vector<Entry<Vehicle>>> cars() override;
    std::string shownCar() const override { return m_vehicle ? m_vehicle->uuid : std::string(); }
    Result<void> showCar(const std::string& id) override;
    Result<void> setUp(const Vehicle& vehicle) override;
    Result<void> showDemo() override;
    Result<void> withLogbook(const LogbookWork& work) override;
    Result<void> readLogbook(const LogbookQuestion& question) override;
    bool writtenElsewhere() override;
    std::filesystem::path folder() const override;
    Instant time() const override { return m_clock(); }

private:
    void show(const EntryId& vehicle); // and forgets what was known of another one
    // The mode asked for; the one last used where none is.
    std::string modeOrLast(const std::string& mode);

    std::optional<Logbook> m_logbook;
    std::filesystem::path m_file;
    std::optional<EntryId> m_vehicle;
    Clock m_clock;
    std::shared_ptr<const CarKnowledge> m_known;
    std::int64_t m_asked = 0;   // when writtenElsewhere() was asked last
    std::string m_lastMode;
};

} // namespace undermark
