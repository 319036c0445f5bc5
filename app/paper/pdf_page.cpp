// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/pdf_page.h"

#include "app/paper/pdf_letters.h"

#include <algorithm>
#include <hpdf.h>
#include <string_view>
#include <utility>

namespace undermark {

namespace {

// Letters that the built-in fonts lack: Chinese, Japanese and Korean (fonts-droid-fallback).
constexpr const char* kOtherLetters = "/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf";

float real(double value)
{
    return static_cast<float>(value);
}

// Of a number, which stays with its unit.
bool endsInDigit(std::string_view word)
{
    return !word.empty() && word.back() >= '0' && word.back() <= '9';
}

} // namespace

struct PdfPage::Document {
    HPDF_Doc doc = nullptr;
    HPDF_Page page = nullptr;
    HPDF_Font normal = nullptr;
    HPDF_Font bold = nullptr;
    HPDF_Font other = nullptr; // once it is needed, where it is installed
    bool otherTried = false;
    HPDF_STATUS problem = 0;
    Document() : doc(HPDF_New(&Document::note, this)) {}
    ~Document() { HPDF_Free(doc); }
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;
    // libharu calls this for every error; the first one is remembered.
    static void note(HPDF_STATUS error, HPDF_STATUS, void* self)
    {
        auto& problem = static_cast<Document*>(self)->problem;
        problem = problem ? problem : error;
    }

    // Sets the font of a run, and gives what is written in it.
    std::string begin(const LetterRun& run, double size, Weight weight)
    {
        const bool asked = run.western || otherFont() == nullptr;
        HPDF_Page_SetFontAndSize(page, !asked ? other : weight == Weight::bold ? bold : normal, real(size));
        if (run.western || !asked)
            return run.bytes;
        std::string unknown; // a sign for each letter
        for (const char c : run.bytes)
            if ((static_cast<unsigned char>(c) & 0xc0) != 0x80)
                unknown += '?';
        return unknown;
    }

    // Only the letters that are used come into the file.
    HPDF_Font otherFont()
    {
        if (!otherTried && std::filesystem::exists(kOtherLetters)) {
            HPDF_UseUTFEncodings(doc);
            if (const char* name = HPDF_LoadTTFontFromFile(doc, kOtherLetters, HPDF_TRUE))
                other = HPDF_GetFont(doc, name, "UTF-8");
        }
        otherTried = true;
        return other;
    }
};

PdfPage::PdfPage(Paper paper) : m_document(std::make_unique<Document>()), m_paper(paper)
{
    m_document->normal = HPDF_GetFont(m_document->doc, "Helvetica", "WinAnsiEncoding");
    m_document->bold = HPDF_GetFont(m_document->doc, "Helvetica-Bold", "WinAnsiEncoding");
    next();
}

void PdfPage::next()
{
    m_document->page = HPDF_AddPage(m_document->doc);
    HPDF_Page_SetSize(m_document->page, m_paper == Paper::a5 ? HPDF_PAGE_SIZE_A5 : HPDF_PAGE_SIZE_A4,
                      m_paper == Paper::a5 ? HPDF_PAGE_LANDSCAPE : HPDF_PAGE_PORTRAIT);
}

PdfPage::~PdfPage() = default;

double PdfPage::width() const
{
    return HPDF_Page_GetWidth(m_document->page);
}

double PdfPage::height() const
{
    return HPDF_Page_GetHeight(m_document->page);
}

double PdfPage::textWidth(const std::string& words, double size, Weight weight)
{
    double width = 0.0;
    for (const LetterRun& run : letterRuns(words))
        width += HPDF_Page_TextWidth(m_document->page, m_document->begin(run, size, weight).c_str());
    return width;
}

std::vector<std::string> PdfPage::lines(const std::string& words, double size, double room,
                                        std::string_view separator)
{
    std::vector<std::string> lines{""};
    for (std::size_t from = 0; from < words.size();) {
        std::size_t end = words.find(separator, from);
        while (separator == " " && end != std::string::npos && endsInDigit(std::string_view(words).substr(from, end - from)))
            end = words.find(separator, end + 1);
        end = std::min(end, words.size());
        const std::string part = words.substr(from, end - from);
        const std::string longer =
            lines.back().empty() ? part : lines.back() + std::string(separator) + part;
        if (lines.back().empty() || textWidth(longer, size) <= room)
            lines.back() = longer;
        else
            lines.push_back(part);
        from = end + separator.size();
    }
    return lines;
}

void PdfPage::text(double x, double y, const std::string& words, double size, Weight weight,
                   Align align, double room)
{
    std::string shown = words;
    double width = textWidth(shown, size, weight);
    for (std::string cut = words; room > 0 && width > room && !cut.empty();) {
        cut = withoutLastLetter(std::move(cut));
        shown = cut + "…";
        width = textWidth(shown, size, weight);
    }
    const HPDF_Page page = m_document->page;
    double from = align == Align::right ? x - width : x;
    for (const LetterRun& run : letterRuns(shown)) {
        const std::string bytes = m_document->begin(run, size, weight);
        HPDF_Page_BeginText(page);
        HPDF_Page_TextOut(page, real(from), real(y), bytes.c_str());
        HPDF_Page_EndText(page);
        from += HPDF_Page_TextWidth(page, bytes.c_str());
    }
}

void PdfPage::box(double x, double y, double width, double height, double grey)
{
    HPDF_Page_SetGrayStroke(m_document->page, real(grey));
    HPDF_Page_SetLineWidth(m_document->page, 0.5F);
    HPDF_Page_Rectangle(m_document->page, real(x), real(y), real(width), real(height));
    HPDF_Page_Stroke(m_document->page);
    HPDF_Page_SetGrayStroke(m_document->page, 0);
}

void PdfPage::fill(double x, double y, double width, double height, double grey)
{
    HPDF_Page_SetGrayFill(m_document->page, real(grey));
    HPDF_Page_Rectangle(m_document->page, real(x), real(y), real(width), real(height));
    HPDF_Page_Fill(m_document->page);
    HPDF_Page_SetGrayFill(m_document->page, 0);
}

void PdfPage::line(double x1, double y1, double x2, double y2, double width, double grey)
{
    HPDF_Page_SetGrayStroke(m_document->page, real(grey));
    HPDF_Page_SetLineWidth(m_document->page, real(width));
    HPDF_Page_MoveTo(m_document->page, real(x1), real(y1));
    HPDF_Page_LineTo(m_document->page, real(x2), real(y2));
    HPDF_Page_Stroke(m_document->page);
    HPDF_Page_SetGrayStroke(m_document->page, 0);
}

namespace {

// A picture's unit square, x along its rows, y up, on the one in which it is shown.
struct Turned {
    int a, b, c, d, e, f; // x' = a x + c y + e, y' = b x + d y + f
};

// By where Exif says that row 0 and column 0 are to be seen.
Turned turned(int orientation)
{
    switch (orientation) {
    case 2: return {-1, 0, 0, 1, 1, 0};   // top, right
    case 3: return {-1, 0, 0, -1, 1, 1};  // bottom, right
    case 4: return {1, 0, 0, -1, 0, 1};   // bottom, left
    case 5: return {0, -1, -1, 0, 1, 1};  // left, top
    case 6: return {0, -1, 1, 0, 0, 1};   // right, top
    case 7: return {0, 1, 1, 0, 0, 0};    // right, bottom
    case 8: return {0, 1, -1, 0, 1, 0};   // left, bottom
    default: return {1, 0, 0, 1, 0, 0};   // top, left
    }
}

} // namespace

bool PdfPage::picture(double x, double y, double width, double height, const std::string& bytes,
                      bool isJpeg, int orientation)
{
    const HPDF_STATUS before = m_document->problem;
    const auto* data = reinterpret_cast<const HPDF_BYTE*>(bytes.data());
    const auto size = static_cast<HPDF_UINT>(bytes.size());
    const HPDF_Image image = isJpeg ? HPDF_LoadJpegImageFromMem(m_document->doc, data, size)
                                    : HPDF_LoadPngImageFromMem(m_document->doc, data, size);
    if (!image || m_document->problem != before) {
        HPDF_ResetError(m_document->doc);
        m_document->problem = before;
        return false;
    }
    double wide = HPDF_Image_GetWidth(image), high = HPDF_Image_GetHeight(image);
    if (orientation >= 5) // a quarter turned
        std::swap(wide, high);
    const double scale = std::min(width / wide, height / high);
    const double w = scale * wide, h = scale * high;
    const Turned turn = turned(orientation);
    HPDF_Page_GSave(m_document->page);
    HPDF_Page_Concat(m_document->page, real(turn.a * w), real(turn.b * h), real(turn.c * w), real(turn.d * h),
                     real(x + (width - w) / 2 + turn.e * w), real(y + (height - h) / 2 + turn.f * h));
    HPDF_Page_ExecuteXObject(m_document->page, image);
    HPDF_Page_GRestore(m_document->page);
    return true;
}

Result<void> PdfPage::save(const std::filesystem::path& file)
{
    if (m_document->problem == 0)
        HPDF_SaveToFile(m_document->doc, file.c_str());
    if (m_document->problem == 0)
        return {};
    return fail(ErrorCode::fileAccess, Sentence::of("the card cannot be written"), {file.string()});
}

} // namespace undermark
