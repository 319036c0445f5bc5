// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/pdf_page.h"

#include <algorithm>
#include <hpdf.h>
#include <string_view>

namespace undermark {

namespace {

constexpr char kEllipsis = '\x85'; // in WinAnsi

// What WinAnsi has beyond Latin-1, of what our sentences use.
struct Beyond {
    std::string_view utf8;
    char winAnsi;
};
constexpr Beyond kBeyond[] = {{"…", '\x85'}, {"‘", '\x91'}, {"’", '\x92'}, {"“", '\x93'},
                              {"”", '\x94'}, {"„", '\x84'}, {"–", '\x96'}, {"—", '\x97'},
                              {"€", '\x80'}, {"œ", '\x9c'}, {"Œ", '\x8c'}};

// UTF-8 to WinAnsi, which the built-in fonts can set.
std::string winAnsi(const std::string& text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t length = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        const auto* beyond = std::ranges::find(kBeyond, std::string_view(text).substr(i, length),
                                               &Beyond::utf8);
        if (beyond != std::end(kBeyond))
            out += beyond->winAnsi;
        else if (length == 1)
            out += first < 0x20 ? ' ' : text[i];
        else if (length == 2 && first <= 0xc3 && i + 1 < text.size())
            out += static_cast<char>(((first & 0x03) << 6) |
                                     (static_cast<unsigned char>(text[i + 1]) & 0x3f));
        else
            out += '?';
        i += length;
    }
    return out;
}

float real(double value)
{
    return static_cast<float>(value);
}

} // namespace

struct PdfPage::Document {
    HPDF_Doc doc = nullptr;
    HPDF_Page page = nullptr;
    HPDF_Font normal = nullptr;
    HPDF_Font bold = nullptr;
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
};

PdfPage::PdfPage(Paper paper) : m_document(std::make_unique<Document>())
{
    m_document->page = HPDF_AddPage(m_document->doc);
    HPDF_Page_SetSize(m_document->page, paper == Paper::a5 ? HPDF_PAGE_SIZE_A5 : HPDF_PAGE_SIZE_A4,
                      paper == Paper::a5 ? HPDF_PAGE_LANDSCAPE : HPDF_PAGE_PORTRAIT);
    m_document->normal = HPDF_GetFont(m_document->doc, "Helvetica", "WinAnsiEncoding");
    m_document->bold = HPDF_GetFont(m_document->doc, "Helvetica-Bold", "WinAnsiEncoding");
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
    HPDF_Page_SetFontAndSize(m_document->page,
                             weight == Weight::bold ? m_document->bold : m_document->normal,
                             real(size));
    return HPDF_Page_TextWidth(m_document->page, winAnsi(words).c_str());
}

std::vector<std::string> PdfPage::lines(const std::string& words, double size, double room,
                                        std::string_view separator)
{
    std::vector<std::string> lines{""};
    for (std::size_t from = 0; from < words.size();) {
        const std::size_t end = std::min(words.find(separator, from), words.size());
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
    const HPDF_Page page = m_document->page;
    const bool tooWide = textWidth(words, size, weight) > room && room > 0;
    std::string shown = winAnsi(words);
    if (tooWide) {
        shown += kEllipsis;
        while (shown.size() > 1 && HPDF_Page_TextWidth(page, shown.c_str()) > room)
            shown.erase(shown.size() - 2, 1);
    }
    const double shift = align == Align::right ? HPDF_Page_TextWidth(page, shown.c_str()) : 0.0;
    HPDF_Page_BeginText(page);
    HPDF_Page_TextOut(page, real(x - shift), real(y), shown.c_str());
    HPDF_Page_EndText(page);
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

Result<void> PdfPage::save(const std::filesystem::path& file)
{
    if (m_document->problem == 0)
        HPDF_SaveToFile(m_document->doc, file.c_str());
    if (m_document->problem == 0)
        return {};
    return fail(ErrorCode::fileAccess, Sentence::of("the card cannot be written"), {file.string()});
}

} // namespace undermark
