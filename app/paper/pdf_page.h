// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pages of PDF in black and grey, but for pictures, one at a time, over libharu, which needs
// no display and loads in well under a millisecond. Lengths are points of 1/72 inch, y up.
#pragma once

#include "engine/base/error.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace undermark {

enum class Paper {
    a5, // lying: as wide as an A4 page that stands
    a4, // standing
};

class PdfPage {
public:
    explicit PdfPage(Paper paper);
    ~PdfPage();
    PdfPage(const PdfPage&) = delete;
    PdfPage& operator=(const PdfPage&) = delete;

    void next(); // another page, of the same size
    double width() const;
    double height() const;

    enum class Weight { normal, bold };
    enum class Align { left, right };
    // Words are set in a built-in font (Latin-1 and some quotes and dashes), other letters in the
    // font of Chinese, Japanese and Korean if that is installed, else as '?'. Text that is wider
    // than `room` (if above 0) is cut and ends in an ellipsis.
    void text(double x, double y, const std::string& words, double size,
              Weight weight = Weight::normal, Align align = Align::left, double room = 0.0);

    // As many lines as it takes in so much room, broken at `separator`, which goes on within a
    // line; a part that is wider by itself has a line of its own. A number is not parted by a space
    // from what it counts. At least one line.
    std::vector<std::string> lines(const std::string& words, double size, double room,
                                   std::string_view separator = " ");

    double textWidth(const std::string& words, double size, Weight weight = Weight::normal);

    // Grey from 0 (black) to 1 (white).
    void fill(double x, double y, double width, double height, double grey);
    void box(double x, double y, double width, double height, double grey = 0.0); // its edge
    void line(double x1, double y1, double x2, double y2, double width, double grey = 0.0);

    // A JPEG or PNG as large as fits there, in the middle. False, and nothing is drawn, where
    // it cannot be decoded. `orientation`: how it is to be turned, as Exif counts, 1 to 8.
    bool picture(double x, double y, double width, double height, const std::string& bytes,
                 bool isJpeg, int orientation = 1);

    // fileAccess where it cannot be written.
    Result<void> save(const std::filesystem::path& file);

private:
    struct Document;
    std::unique_ptr<Document> m_document;
    Paper m_paper;
};

} // namespace undermark
