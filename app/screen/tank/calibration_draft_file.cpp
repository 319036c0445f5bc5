// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/tank/calibration_draft_file.h"

#include "engine/base/private_file.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <algorithm>

namespace undermark {

namespace {

constexpr int kFormat = 2;
constexpr int kStages = int(CalibrationStage::review) + 1;
constexpr int kWirings = int(TankWiring::twoSignals) + 1;

QJsonValue toJson(const std::optional<Signal>& signal)
{
    return signal ? QJsonValue(signal->value()) : QJsonValue();
}

std::optional<Signal> signalFrom(const QJsonValue& json)
{
    return json.isDouble() ? std::optional(Signal::of(json.toDouble())) : std::nullopt;
}

QJsonObject toJson(const DraftLevel& level)
{
    QJsonArray readings;
    for (const DraftReading& reading : level.readings)
        readings.append(QJsonArray{reading.time.count(), reading.signal.value(),
                                   toJson(reading.second), toJson(reading.sd), reading.readings,
                                   reading.settled});
    return {{"poured_l", level.poured.litres()}, {"readings", readings}};
}

DraftLevel levelFrom(const QJsonObject& json)
{
    DraftLevel level{Volume::fromLitres(json["poured_l"].toDouble()), {}};
    for (const auto& each : json["readings"].toArray()) {
        const QJsonArray reading = each.toArray();
        level.readings.push_back({std::chrono::duration<double>(reading[0].toDouble()),
                                  Signal::of(reading[1].toDouble()), signalFrom(reading[2]),
                                  signalFrom(reading[3]), std::max(1, reading[4].toInt(1)),
                                  reading[5].toBool()});
    }
    return level;
}

} // namespace

std::filesystem::path draftFile(const std::filesystem::path& folder, const std::string& id)
{
    return folder / ("calibration-draft-" + id + ".json");
}

Result<void> keepDraft(const CalibrationDraft& draft, const std::filesystem::path& path)
{
    QJsonArray acknowledged, levels;
    for (const bool one : draft.acknowledged)
        acknowledged.append(one);
    for (const DraftLevel& level : draft.levels)
        levels.append(toJson(level));
    QJsonObject json{{"format", kFormat},
                     {"stage", int(draft.stage)},
                     {"wiring", int(draft.wiring)},
                     {"acknowledged", acknowledged},
                     {"levels", levels},
                     {"current", toJson(draft.current)}};
    const auto put = [&json](const char* key, const std::optional<Volume>& litres) {
        if (litres)
            json[key] = litres->litres();
    };
    put("zero_mark_l", draft.zeroMark);
    put("lobe1_l", draft.firstLobe);
    put("lobe2_l", draft.secondLobe);
    if (draft.tank)
        json["tank"] = QString::fromStdString(*draft.tank);
    if (draft.unit)
        json["unit"] = QString::fromStdString(*draft.unit);

    std::error_code ignored;
    std::filesystem::create_directories(path.parent_path(), ignored);
    QSaveFile file(QString::fromStdString(path.string())); // syncs before it renames
    if (!file.open(QIODevice::WriteOnly) || file.write(QJsonDocument(json).toJson()) < 0 ||
        !file.commit())
        return fail(ErrorCode::fileAccess,
                    Sentence::of("the unfinished calibration cannot be kept here"),
                    {path.string()});
    (void)syncFolderOf(path);   // a rename is durable once its folder is
    return {};
}

Result<std::optional<CalibrationDraft>> findDraft(const std::filesystem::path& path)
{
    QFile file(QString::fromStdString(path.string()));
    if (!file.exists())
        return std::optional<CalibrationDraft>();
    if (!file.open(QIODevice::ReadOnly))
        return fail(ErrorCode::fileAccess, Sentence::of("this file cannot be read"),
                    {path.string()});
    const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
    const int stage = json["stage"].toInt(-1), wiring = json["wiring"].toInt(-1);
    if (json["format"].toInt() != kFormat || stage < 0 || stage >= kStages || wiring < 0 ||
        wiring >= kWirings)
        return fail(ErrorCode::damaged, Sentence::of("this is not an unfinished calibration"),
                    {path.string()});
    CalibrationDraft draft;
    draft.stage = CalibrationStage(stage);
    draft.wiring = TankWiring(wiring);
    for (const auto& one : json["acknowledged"].toArray())
        draft.acknowledged.push_back(one.toBool());
    for (const auto& level : json["levels"].toArray())
        draft.levels.push_back(levelFrom(level.toObject()));
    draft.current = levelFrom(json["current"].toObject());
    const auto litres = [&json](const char* key) {
        return json[key].isDouble() ? std::optional(Volume::fromLitres(json[key].toDouble()))
                                    : std::nullopt;
    };
    draft.zeroMark = litres("zero_mark_l");
    draft.firstLobe = litres("lobe1_l");
    draft.secondLobe = litres("lobe2_l");
    if (json["tank"].isString())
        draft.tank = json["tank"].toString().toStdString();
    if (json["unit"].isString())
        draft.unit = json["unit"].toString().toStdString();
    return std::optional(draft);
}

void dropDraft(const std::filesystem::path& path)
{
    std::error_code ignored;
    std::filesystem::remove(path, ignored);
    (void)syncFolderOf(path);
}

} // namespace undermark
