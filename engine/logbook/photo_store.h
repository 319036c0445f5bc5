// SPDX-License-Identifier: GPL-3.0-or-later
//
// The photos' bytes, in a folder beside the logbook: LOGBOOK.photos, 0700, each file named by
// the SHA-256 of what is in it. They are never changed and never removed, so that a backup
// beside the logbook (LOGBOOK.backup-…) shows the same ones. A bundle or a logbook elsewhere
// has a folder of its own.
//
// Guarantees (tests/engine/logbook/photo_store_test.cpp):
//  * what is no JPEG or PNG by its bytes, or is larger than kLargestPhoto, is refused;
//  * nothing of a name or path that somebody chose gets into the folder;
//  * a file that is not what its name says is not taken over from another logbook;
//  * the bytes are on the disk before an entry may name them.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/picture.h"

#include <filesystem>

namespace undermark {

inline constexpr std::uintmax_t kLargestPhoto = 20u << 20;   // 20 MiB

std::filesystem::path photoFolder(const std::filesystem::path& logbook);
// Where a photo of the logbook lies, if it does.
std::filesystem::path photoFile(const std::filesystem::path& logbook, const Photo& photo);

// The bytes of `picture` are kept beside the logbook; hash and format of the record to make.
// Errors: badInput (no picture, too large), fileAccess.
Result<Photo> keepPhoto(const std::filesystem::path& logbook, const std::filesystem::path& picture);

// The photo's bytes. Errors: notFound where they are not beside the logbook; damaged where
// they are not what was kept.
Result<std::string> photoBytes(const std::filesystem::path& logbook, const Photo& photo);

struct PhotosTaken {
    int taken = 0;
    int refused = 0;   // not what their names say
};

// Takes over what is beside one logbook and not beside the other. Errors: fileAccess.
// Cost: reading the photos that are new.
Result<PhotosTaken> takePhotos(const std::filesystem::path& fromLogbook,
                               const std::filesystem::path& toLogbook);

} // namespace undermark
