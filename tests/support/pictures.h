// SPDX-License-Identifier: GPL-3.0-or-later
//
// A picture of 16 by 12 points as JPEG and as PNG, made by other people's programs, and the
// same with what a camera notes in it.
#pragma once

#include <QByteArray>

#include <string>

namespace undermark::test {

inline constexpr const char* kJpeg =
    "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywt"
    "QFdBRkxOUlNSMj5aYVpQYEpRUk//2wBDAQ4ODhMREyYVFSZPNS01T09PT09PT09PT09PT09PT09PT09PT09PT09PT09P"
    "T09PT09PT09PT09PT09PT09PT0//wAARCAAMABADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAABQb/xAAaEAAC"
    "AgMAAAAAAAAAAAAAAAAABAMiBSEx/8QAFQEBAQAAAAAAAAAAAAAAAAAAAQP/xAAZEQACAwEAAAAAAAAAAAAAAAAAAgME"
    "BSH/2gAMAwEAAhEDEQA/AJ1XFcqLq4rlRpVaLVRdVaLVQnvMTytF+H//2Q==";
inline constexpr const char* kPng =
    "iVBORw0KGgoAAAANSUhEUgAAABAAAAAMCAIAAADkharWAAABVUlEQVR42g3LIQHFIBRAUSJMEACJXADEIrwICAIgkTcA"
    "gggvwgQBkEgCIBaBCP8ff4wxXAZnuA2PQQzRkA0YmkENr2EYluEzHIMxlsviLLflsYglWrIFS7Oo5bUMy7J8lmP/wXN5"
    "nOf2PB7xRE/24Gke9bye4Vmez3P8PwSugAvcgScggRjIAQItoIE3MAIr8AVO+AfhEpxwC48gQhSygNAEFV5hCEv4hCP/"
    "kLgSLnEnnoQkYiInSLSEJt7ESKzElzjpHwpXwRXuwlOQQizkAoVW0MJbGIVV+Aqn/EPlqrjKXXkqUomVXKHSKlp5K6Oy"
    "Kl/l1H9QLsUpt/IookQlKyhNUeVVhrKUTzn6D52r4zp35+lIJ3Zyh07raOftjM7qfJ3T/2FyTdzknjwTmcRJnjBpE528"
    "kzFZk29y5j9sro3b3JtnI5u4yRs2baObdzM2a/NtzuYHM20MkLF8hv4AAAAASUVORK5CYII=";

// The note as a segment of its own behind the start: APP1, where Exif is.
inline std::string jpegPicture(const std::string& note = {})
{
    std::string bytes = QByteArray::fromBase64(kJpeg).toStdString();
    if (!note.empty())
        bytes.insert(2, std::string("\xff\xe1\x00", 3) + char(note.size() + 2) + note);
    return bytes;
}

// As a chunk behind the first one; its checksum is not looked at.
inline std::string pngPicture(const std::string& note = {})
{
    constexpr std::size_t kBehindHeader = 8 + 12 + 13;
    std::string bytes = QByteArray::fromBase64(kPng).toStdString();
    if (!note.empty())
        bytes.insert(kBehindHeader, std::string("\0\0\0", 3) + char(note.size()) + "tEXt" + note + "sum!");
    return bytes;
}

} // namespace undermark::test
