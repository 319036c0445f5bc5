// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/photo_store.h"

#include "engine/base/private_file.h"
#include "engine/base/sha256.h"

#include <fstream>

namespace undermark {

namespace fs = std::filesystem;

namespace {

Result<std::string> readPhoto(const fs::path& file)
{
    std::error_code failed;
    const bool regular = fs::is_regular_file(file, failed);
    const std::uintmax_t size = regular ? fs::file_size(file, failed) : 0;
    if (!regular || failed)
        return fail(ErrorCode::fileAccess, Sentence::of("this is not a file"), {file.string()});
    if (size > kLargestPhoto)
        return fail(ErrorCode::badInput, Sentence::of("the photo is too large"), {file.string()},
                    Sentence::of("%1 bytes at most", counted(kLargestPhoto)), std::to_string(size));
    std::ifstream in(file, std::ios::binary);
    std::string bytes(size, '\0');
    if (!in.read(bytes.data(), std::streamsize(size)))
        return fail(ErrorCode::fileAccess, Sentence::of("the photo cannot be read"), {file.string()});
    return bytes;
}

// What is there under its own hash is the same already.
Result<bool> putPhoto(const fs::path& file, const std::string& bytes)
{
    std::error_code failed;
    if (fs::exists(file, failed))
        return false;
    const fs::path folder = file.parent_path();
    if (fs::create_directory(folder, failed))
        fs::permissions(folder, fs::perms::owner_all, failed);
    if (failed)
        return fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {folder.string()});
    const fs::path fresh = file.string() + ".writing";
    fs::remove(fresh, failed);
    if (const auto written = writePrivateFile(fresh, bytes); !written)
        return fail(written.error());
    fs::rename(fresh, file, failed);
    if (failed)
        return fail(ErrorCode::fileAccess, Sentence::just(failed.message()), {file.string()});
    if (const auto lasting = syncFolderOf(file).and_then([&] { return syncFolderOf(folder); });
        !lasting)
        return fail(lasting.error());
    return true;
}

std::string photoName(const std::string& hash, PhotoFormat format)
{
    return hash + (format == PhotoFormat::jpeg ? ".jpg" : ".png");
}

} // namespace

// The folder of a backup beside the logbook is the logbook's.
fs::path photoFolder(const fs::path& logbook)
{
    std::string name = logbook.filename().string();
    name.resize(std::min(name.find(".backup-"), name.size()));
    return logbook.parent_path() / (name + ".photos");
}

fs::path photoFile(const fs::path& logbook, const Photo& photo)
{
    return photoFolder(logbook) / photoName(photo.sha256, photo.format);
}

Result<Photo> keepPhoto(const fs::path& logbook, const fs::path& picture)
{
    const auto bytes = readPhoto(picture);
    if (!bytes)
        return fail(bytes.error());
    const auto drawn = pictureIn(*bytes);
    if (!drawn)
        return fail(ErrorCode::badInput, Sentence::of("this is no picture"), {picture.string()},
                    Sentence::of("a whole JPEG or PNG"));
    Photo photo;
    photo.format = drawn->format;
    photo.sha256 = sha256(drawn->bytes);
    if (const auto put = putPhoto(photoFile(logbook, photo), drawn->bytes); !put)
        return fail(put.error());
    return photo;
}

Result<std::string> photoBytes(const fs::path& logbook, const Photo& photo)
{
    const fs::path file = photoFile(logbook, photo);
    std::error_code failed;
    if (!fs::exists(file, failed))
        return fail(ErrorCode::notFound, Sentence::of("the photo is not beside the logbook"),
                    {file.string()});
    auto bytes = readPhoto(file);
    if (bytes && sha256(*bytes) != photo.sha256)
        return fail(ErrorCode::damaged, Sentence::of("the photo is not what was kept"),
                    {file.string()});
    return bytes;
}

Result<PhotosTaken> takePhotos(const fs::path& fromLogbook, const fs::path& toLogbook)
{
    PhotosTaken all;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(photoFolder(fromLogbook), none)) {
        const fs::path mine = photoFolder(toLogbook) / entry.path().filename();
        std::error_code failed;
        if (fs::exists(mine, failed))
            continue;
        const auto bytes = readPhoto(entry.path());
        const auto picture = bytes ? pictureIn(*bytes) : std::nullopt;
        if (!picture || entry.path().filename() != photoName(sha256(*bytes), picture->format)) {
            ++all.refused;
            continue;
        }
        if (const auto put = putPhoto(mine, *bytes); !put)
            return fail(put.error());
        ++all.taken;
    }
    return all;
}

} // namespace undermark
