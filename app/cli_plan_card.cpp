// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli_plan_card.h"

#include "app/cli_command.h"

#include <algorithm>
#include <cstring>
#include <hpdf.h>
#include <memory>

namespace undermark {

namespace {

constexpr double kSure = 2.3263478740408408; // the normal 99 % quantile

const char* const kLegend[] = {
    "sure: litres on arrival with 99 % probability.  even: half the time there is more, half less.",
    "take on: litres to ask for; \"full\" is to the first click.",
    "Strip: dark is the sure level, light the even one; posts are stops.",
};
const char* const kCautions[] = {
    "An estimate, not a promise. Keep a margin; the event's rules and the law come first.",
    "Refuel with the engine off, no flame or spark near; cans approved, filled on the ground.",
    "Never try out the reserve on a public road. Nothing is typed while driving.",
};

// UTF-8 to Latin-1, which the built-in fonts can set.
std::string latin1(const std::string& text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t length = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        if (length == 1)
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

// As many letters as a column has room for.
std::string shortened(const std::string& text, std::size_t letters)
{
    std::size_t end = 0;
    for (std::size_t count = 0; end < text.size(); ++end) {
        const bool begins = (static_cast<unsigned char>(text[end]) & 0xc0) != 0x80;
        if (begins && count++ == letters)
            break;
    }
    return text.substr(0, end);
}

struct Document {
    HPDF_Doc doc = nullptr;
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

struct Column {
    const char* title;
    double right; // fraction of the width; the text ends here (name: begins)
};
constexpr Column kColumns[] = {{"km", .10},   {"leg", .19},     {"place", .21},
                               {"mode", .39}, {"needs", .59},   {"sure", .67},
                               {"even", .75}, {"take on", .88}, {"leave", 1.0}};
constexpr bool startsThere(std::size_t column)
{
    return column == 2 || column == 3;
}

class Card {
public:
    Card(const PlanRequest& request, const Plan& plan, Paper paper)
        : m_request(request), m_plan(plan)
    {
        m_page = HPDF_AddPage(m_document.doc);
        HPDF_Page_SetSize(m_page, paper == Paper::a5 ? HPDF_PAGE_SIZE_A5 : HPDF_PAGE_SIZE_A4,
                          HPDF_PAGE_PORTRAIT);
        m_text = HPDF_GetFont(m_document.doc, "Helvetica", "WinAnsiEncoding");
        m_bold = HPDF_GetFont(m_document.doc, "Helvetica-Bold", "WinAnsiEncoding");
        m_left = 28;
        m_width = HPDF_Page_GetWidth(m_page) - 2 * m_left;
        m_y = HPDF_Page_GetHeight(m_page) - 36;
        m_scale = paper == Paper::a5 ? 1.0 : 1.35;
    }

    Result<void> draw(const std::filesystem::path& file)
    {
        const double foot = 28 + (std::size(kLegend) + std::size(kCautions) + 1) * 10 * m_scale;
        const double rowHeight = 15 * m_scale;
        header();
        strip(60 * m_scale);
        const auto room = static_cast<std::size_t>(std::max((m_y - foot) / rowHeight - 1, 0.0));
        const std::vector<std::size_t> rows = rowsThatFit(room);
        if (rows.empty())
            return failInput("the plan has too many stops for one page",
                             "--paper a4, or a shorter way",
                             std::to_string(m_plan.stops.size()) + " stops");
        table(rows, rowHeight);
        m_y = foot - 10 * m_scale;
        footer();
        if (m_document.problem == 0)
            HPDF_SaveToFile(m_document.doc, file.c_str());
        if (m_document.problem == 0)
            return {};
        Error error;
        error.code = ErrorCode::fileAccess;
        error.file = file.string();
        error.detail = "the card cannot be written";
        return fail(error);
    }

private:
    void put(double x, double y, const std::string& words, HPDF_Font font, double size,
             bool endsThere = false)
    {
        const std::string text = latin1(words);
        HPDF_Page_SetFontAndSize(m_page, font, static_cast<float>(size * m_scale));
        const double shift = endsThere ? HPDF_Page_TextWidth(m_page, text.c_str()) : 0.0;
        HPDF_Page_BeginText(m_page);
        HPDF_Page_TextOut(m_page, static_cast<float>(x - shift), static_cast<float>(y),
                          text.c_str());
        HPDF_Page_EndText(m_page);
    }

    void header()
    {
        const auto& points = m_request.route.points;
        put(m_left, m_y, "Fuel card", m_bold, 16);
        put(m_left + m_width, m_y, format("%.1f km", (points.back().at - points.front().at).km()),
            m_bold, 13, true);
        m_y -= 16 * m_scale;
        put(m_left, m_y,
            format("%zu stops, %.1f L to buy. Risk of running dry on the way: %.2g %%.",
                   m_plan.stops.size(), m_plan.bought.litres(), m_plan.dryRisk * 100),
            m_text, 9.5);
        m_y -= 12 * m_scale;
    }

    // One area under a line of levels.
    void area(const std::vector<StripPoint>& points, double height, Volume StripPoint::*level,
              float grey)
    {
        const auto x = [&](Distance at) { return static_cast<float>(m_left + m_width * part(at)); };
        HPDF_Page_SetGrayFill(m_page, grey);
        HPDF_Page_MoveTo(m_page, x(points.front().at), static_cast<float>(m_y));
        for (const StripPoint& point : points) {
            const double share = std::clamp(point.*level / m_request.tank.capacity, 0.0, 1.0);
            HPDF_Page_LineTo(m_page, x(point.at), static_cast<float>(m_y + height * share));
        }
        HPDF_Page_LineTo(m_page, x(points.back().at), static_cast<float>(m_y));
        HPDF_Page_ClosePath(m_page);
        HPDF_Page_Fill(m_page);
        HPDF_Page_SetGrayFill(m_page, 0);
    }

    double part(Distance at) const
    {
        const auto& points = m_request.route.points;
        const Distance length = points.back().at - points.front().at;
        return length > Distance() ? (at - points.front().at) / length : 0.0;
    }

    void strip(double height)
    {
        m_y -= height + 8 * m_scale;
        const std::vector<StripPoint> points = stripOf(m_request, m_plan);
        area(points, height, &StripPoint::even, 0.78f);
        area(points, height, &StripPoint::sure, 0.25f);
        HPDF_Page_SetLineWidth(m_page, 0.7f);
        HPDF_Page_Rectangle(m_page, static_cast<float>(m_left), static_cast<float>(m_y),
                            static_cast<float>(m_width), static_cast<float>(height));
        HPDF_Page_Stroke(m_page);
        for (const PlannedStop& stop : m_plan.stops) {
            const auto x =
                static_cast<float>(m_left + m_width * part(m_request.route.points[stop.point].at));
            HPDF_Page_SetLineWidth(m_page, 1.6f);
            HPDF_Page_MoveTo(m_page, x, static_cast<float>(m_y - 4));
            HPDF_Page_LineTo(m_page, x, static_cast<float>(m_y + height));
            HPDF_Page_Stroke(m_page);
        }
        m_y -= 20 * m_scale;
    }

    std::vector<std::size_t> rowsThatFit(std::size_t room) const
    {
        std::vector<std::size_t> rows;
        for (std::size_t i = 0; i < m_plan.passages.size(); ++i)
            rows.push_back(i);
        if (rows.size() <= room)
            return rows;
        rows = {0};
        for (const PlannedStop& stop : m_plan.stops) {
            if (stop.point != rows.back())
                rows.push_back(stop.point);
        }
        if (rows.back() + 1 != m_plan.passages.size())
            rows.push_back(m_plan.passages.size() - 1);
        return rows.size() <= room ? rows : std::vector<std::size_t>();
    }

    void cells(const std::string (&texts)[std::size(kColumns)], HPDF_Font font)
    {
        for (std::size_t i = 0; i < std::size(kColumns); ++i)
            put(m_left + m_width * kColumns[i].right, m_y, texts[i], font, 9.5, !startsThere(i));
    }

    void table(const std::vector<std::size_t>& rows, double rowHeight)
    {
        std::string titles[std::size(kColumns)];
        for (std::size_t i = 0; i < std::size(kColumns); ++i)
            titles[i] = kColumns[i].title;
        cells(titles, m_bold);
        for (std::size_t k = 0; k < rows.size(); ++k) {
            m_y -= rowHeight;
            HPDF_Page_SetLineWidth(m_page, 0.3f);
            HPDF_Page_MoveTo(m_page, static_cast<float>(m_left),
                             static_cast<float>(m_y + rowHeight - 4));
            HPDF_Page_LineTo(m_page, static_cast<float>(m_left + m_width),
                             static_cast<float>(m_y + rowHeight - 4));
            HPDF_Page_Stroke(m_page);
            row(rows[k], k > 0 ? rows[k - 1] : rows[k],
                k + 1 < rows.size() ? rows[k + 1] : rows[k]);
        }
    }

    void row(std::size_t i, std::size_t before, std::size_t next)
    {
        const auto& points = m_request.route.points;
        const Passage& passage = m_plan.passages[i];
        double needs = 0.0;
        for (std::size_t k = i + 1; k <= next; ++k)
            needs += m_plan.passages[k].used.litres();
        const auto stop = std::ranges::find(m_plan.stops, i, &PlannedStop::point);
        const bool stops = stop != m_plan.stops.end();
        const double even = std::max(passage.arrive.mean.litres(), 0.0);
        const double sure = std::max(even - kSure * passage.arrive.sd.litres(), 0.0);
        cells({fixed(points[i].at.km()), fixed((points[i].at - points[before].at).km()),
               shortened(points[i].name, 15),
               i + 1 < points.size() ? shortened(points[i].mode, 13) : "",
               next > i ? fixed(needs) : "", fixed(sure), fixed(even),
               stops ? fixed(stop->buy.litres()) + (stop->toFull ? " full" : "") : "",
               fixed(std::max(passage.leave.litres(), 0.0))},
              stops ? m_bold : m_text);
    }

    void footer()
    {
        for (const char* line : kLegend) {
            put(m_left, m_y, line, m_text, 8.5);
            m_y -= 10 * m_scale;
        }
        for (const char* line : kCautions) {
            put(m_left, m_y, line, m_bold, 8.5);
            m_y -= 10 * m_scale;
        }
    }

    const PlanRequest& m_request;
    const Plan& m_plan;
    Document m_document;
    HPDF_Page m_page = nullptr;
    HPDF_Font m_text = nullptr;
    HPDF_Font m_bold = nullptr;
    double m_left = 0.0, m_width = 0.0, m_y = 0.0, m_scale = 1.0; // points of 1/72 inch
};

} // namespace

std::vector<StripPoint> stripOf(const PlanRequest& request, const Plan& plan)
{
    std::vector<StripPoint> strip;
    for (const Passage& passage : plan.passages) {
        const Distance at = request.route.points[passage.point].at;
        strip.push_back({at, passage.arrive.mean, passage.arrive.mean - passage.arrive.sd * kSure});
        if (passage.leave > passage.arrive.mean) {
            const auto stop = std::ranges::find(plan.stops, passage.point, &PlannedStop::point);
            const bool known = stop != plan.stops.end() && stop->toFull;
            const Volume sd = known ? request.tank.fullSd : passage.arrive.sd;
            strip.push_back({at, passage.leave, passage.leave - sd * kSure});
        }
    }
    return strip;
}

Result<void> writePlanCard(const PlanRequest& request, const Plan& plan, Paper paper,
                           const std::filesystem::path& file)
{
    return Card(request, plan, paper).draw(file);
}

} // namespace undermark
