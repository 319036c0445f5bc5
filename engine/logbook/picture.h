// SPDX-License-Identifier: GPL-3.0-or-later
//
// What of a file is a picture, and nothing else of it: JPEG (ITU-T T.81, annex B) and PNG
// (ISO/IEC 15948) are told by their bytes, whatever the file is called. Cameras write where
// and by whom a picture was taken beside it; none of that is kept but how the picture is to be
// turned: that one field of Exif (CIPA DC-008, 4.6.5, tag 274), written anew.
#pragma once

#include "engine/base/records.h"

#include <optional>
#include <string>
#include <string_view>

namespace undermark {

struct Picture {
    PhotoFormat format = PhotoFormat::jpeg;
    std::string bytes;     // what draws it, without the camera's notes
};

// Nothing where it is neither, has no size or is cut short. The colours are not decoded.
// Cost: one pass.
std::optional<Picture> pictureIn(std::string_view bytes);

// How a JPEG is to be turned before it is looked at, as Exif counts: 1 as it is (also where it does
// not say), 3 upside down, 6 a quarter clockwise, 8 a quarter back; 2, 4, 5 and 7 mirrored.
int orientationOf(std::string_view jpeg);

} // namespace undermark
