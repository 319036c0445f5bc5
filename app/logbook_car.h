// SPDX-License-Identifier: GPL-3.0-or-later
//
// The car of the touch screen, over a logbook.
#pragma once

#include "app/car_service.h"
#include "engine/logbook/logbook.h"
#include "engine/outlook/outlook.h"

#include <functional>

namespace undermark {

using Clock = std::function<Instant()>;

// Reads the logbook anew where somebody else wrote to it since, so that screen
// and command line may be open at once.
class LogbookCar : public CarService {
public:
    LogbookCar(Logbook logbook, EntryId vehicle, Clock clock);

    Result<NowState> now(const std::string& mode) override;
    Result<FillDraft> guessFill() override;
    Result<FillLesson> addFill(const FillDraft& fill) override;
    Result<void> undoFill(const std::string& entryId) override;

private:
    // What is known, learnt again only after a change.
    Result<const CarKnowledge*> knowledge();
    // The mode asked for; the one last used where none is.
    std::string modeOrLast(const std::string& mode);

    Logbook m_logbook;
    EntryId m_vehicle;
    Clock m_clock;
    std::optional<CarKnowledge> m_known;
    std::int64_t m_version = 0;
    std::string m_lastMode;
};

} // namespace undermark
