// SPDX-License-Identifier: GPL-3.0-or-later
//
// An invented car for the tests of the screen; its distances come from the
// engine's range law, so that they fit each other. What is asked about the whole
// log is answered by the demo car, in a folder of its own that goes with it.
#pragma once

#include "app/car/car_service.h"

#include <memory>

namespace undermark::test {

// An empty folder that is removed with everything in it.
struct TestFolder {
    TestFolder();
    ~TestFolder();
    TestFolder(const TestFolder&) = delete;
    TestFolder& operator=(const TestFolder&) = delete;
    std::filesystem::path path;
};

class FakeCar : public CarService {
public:
    FakeCar();

    Result<NowState> now(const std::string& mode) override;
    Result<FillDraft> guessFill() override;
    Result<FillLesson> addFill(const FillDraft& fill) override;
    Result<void> undoFill(const std::string& entryId) override;
    Result<std::shared_ptr<const CarKnowledge>> knowledge() override;
    Result<void> revise(const std::string& entryId, const LogValue& value) override;
    Result<void> takeBack(const std::string& entryId) override;
    Result<std::vector<LogVersion>> history(const std::string& entryId,
                                            const LogValue& kind) override;
    Result<void> saveCalibration(Calibration calibration) override;
    Result<std::vector<Entry<Vehicle>>> cars() override;
    std::string shownCar() const override { return "kestrel"; }
    Result<void> showCar(const std::string& id) override;
    Result<void> setUp(const Vehicle& vehicle) override;
    Result<void> showDemo() override;
    Result<void> withLogbook(const LogbookWork& work) override;
    Result<void> readLogbook(const LogbookQuestion& question) override;
    bool writtenElsewhere() override { return false; }
    std::filesystem::path folder() const override { return m_folder->path; }
    Instant time() const override; // a second later each time it is asked

    // What the next calls answer; tests change it as they need.
    NowState state;
    FillDraft guess;
    FillLesson lesson;
    std::optional<Error> error; // answered instead, by every call

    // What was asked.
    std::vector<FillDraft> stored;
    std::vector<std::string> undone;

private:
    CarService& demo(); // made when first asked

    mutable int m_asked = 0;
    std::unique_ptr<TestFolder> m_folder;
    std::unique_ptr<CarService> m_demo;
};

// A car over a new demo logbook in `folder`, at the demo's own time.
std::unique_ptr<CarService> demoCar(const std::filesystem::path& folder);
// The same logbook once more, at its first car, as another start opens it.
std::unique_ptr<CarService> reopenedCar(const std::filesystem::path& folder);
// A car whose logbook in `folder` does not exist yet.
std::unique_ptr<CarService> emptyCar(const std::filesystem::path& folder);

// The state of the invented car with so many litres above the zero mark.
NowState inventedState(double aboveZeroLitres);

} // namespace undermark::test
