// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/calibration_draft.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <fcntl.h>
#include <unistd.h>

namespace undermark {

namespace {

constexpr int kFormat = 1;
constexpr int kStages = int(CalibrationStage::review) + 1;

std::filesystem::path draftFile(const std::filesystem::path& folder)
{
    return folder / "calibration-draft.json";
}

QJsonObject toJson(const DraftLevel& level)
{
    QJsonArray readings;
    for (const TimedSignal& reading : level.readings)
        readings.append(QJsonArray{reading.time.count(), reading.signal.value()});
    return {{"poured_l", level.poured.litres()}, {"readings", readings}};
}

DraftLevel levelFrom(const QJsonObject& json)
{
    DraftLevel level{Volume::fromLitres(json["poured_l"].toDouble()), {}};
    for (const auto& reading : json["readings"].toArray())
        level.readings.push_back({std::chrono::duration<double>(reading.toArray()[0].toDouble()),
                                  Signal::of(reading.toArray()[1].toDouble())});
    return level;
}

Error problem(ErrorCode code, const std::filesystem::path& file, const char* detail)
{
    return {code, detail, file.string(), 0, {}, {}, {}};
}

// A rename is durable once its folder is.
void syncFolder(const std::filesystem::path& folder)
{
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY);
    if (handle < 0)
        return;
    ::fsync(handle);
    ::close(handle);
}

} // namespace

std::vector<CalibrationPoint> pointsOf(const std::vector<DraftLevel>& levels)
{
    std::vector<CalibrationPoint> points;
    Volume added;
    for (const DraftLevel& level : levels) {
        added += level.poured;
        const SettledReading reading = settle(level.readings, Signal());
        if (reading.readings == 0)
            continue;
        points.push_back({added, reading.mean, std::nullopt, reading.sd, reading.readings});
    }
    return points;
}

Result<void> keepDraft(const CalibrationDraft& draft, const std::filesystem::path& folder)
{
    QJsonArray acknowledged, levels;
    for (const bool one : draft.acknowledged)
        acknowledged.append(one);
    for (const DraftLevel& level : draft.levels)
        levels.append(toJson(level));
    QJsonObject json{{"format", kFormat},
                     {"stage", int(draft.stage)},
                     {"acknowledged", acknowledged},
                     {"levels", levels},
                     {"current", toJson(draft.current)}};
    if (draft.zeroMark)
        json["zero_mark_l"] = draft.zeroMark->litres();

    std::error_code ignored;
    std::filesystem::create_directories(folder, ignored);
    QSaveFile file(QString::fromStdString(draftFile(folder).string())); // syncs before it renames
    if (!file.open(QIODevice::WriteOnly) || file.write(QJsonDocument(json).toJson()) < 0 ||
        !file.commit())
        return fail(problem(ErrorCode::fileAccess, draftFile(folder),
                            "the unfinished calibration cannot be kept here"));
    syncFolder(folder);
    return {};
}

Result<std::optional<CalibrationDraft>> findDraft(const std::filesystem::path& folder)
{
    QFile file(QString::fromStdString(draftFile(folder).string()));
    if (!file.exists())
        return std::optional<CalibrationDraft>();
    if (!file.open(QIODevice::ReadOnly))
        return fail(problem(ErrorCode::fileAccess, draftFile(folder), "this file cannot be read"));
    const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
    const int stage = json["stage"].toInt(-1);
    if (json["format"].toInt() != kFormat || stage < 0 || stage >= kStages)
        return fail(problem(ErrorCode::damaged, draftFile(folder),
                            "this is not an unfinished calibration"));
    CalibrationDraft draft;
    draft.stage = CalibrationStage(stage);
    for (const auto& one : json["acknowledged"].toArray())
        draft.acknowledged.push_back(one.toBool());
    for (const auto& level : json["levels"].toArray())
        draft.levels.push_back(levelFrom(level.toObject()));
    draft.current = levelFrom(json["current"].toObject());
    if (json.contains("zero_mark_l"))
        draft.zeroMark = Volume::fromLitres(json["zero_mark_l"].toDouble());
    return std::optional(draft);
}

void dropDraft(const std::filesystem::path& folder)
{
    std::error_code ignored;
    std::filesystem::remove(draftFile(folder), ignored);
    syncFolder(folder);
}

} // namespace undermark
