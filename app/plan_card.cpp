// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plan_card.h"

#include "app/plan_card_strip.h"
#include "app/plan_rows.h"
#include "engine/format.h"

#include <algorithm>

namespace undermark {

namespace {

const char* const kLegend[] = {
    "needs: litres to the next row.  sure: litres on arrival with 99 % probability.  even: half "
    "the "
    "time there is more.",
    "take on: litres to ask for, \"full\" is to the first click.  no return after: turn back by "
    "then, "
    "or there must be fuel ahead.",
    "Strip: a lane for each leg, dark as far as the engine is sure to run if nobody stops again. "
    "Post: gauge at zero. Hatched: hidden reserve.",
};
const char* const kCautions[] = {
    "An estimate, not a promise. Keep a margin; the event's rules and the law come first.",
    "Refuel with the engine off, no flame or spark near; cans approved, filled on the ground.",
    "Never try out the reserve on a public road. Nothing is typed while driving.",
};

constexpr double kMargin = 26.0;
constexpr double kRow = 14.0;     // at least
constexpr double kTallRow = 20.0; // at most
constexpr double kNoteLine = 8.5;
constexpr double kNoteLetters = 7.8;
constexpr double kFootLine = 9.5;
constexpr double kLetters = 9.5;
constexpr double kCharacter = 0.0066; // of a peg's name, as a share of the strip

struct Column {
    const char* title;
    double from; // share of the width
    double to;
    PdfPage::Align align;
};
constexpr auto kLeft = PdfPage::Align::left;
constexpr auto kRight = PdfPage::Align::right;
constexpr Column kColumns[] = {
    {"km", .0, .07, kRight},     {"leg", .07, .135, kRight},    {"place", .15, .305, kLeft},
    {"mode", .31, .425, kLeft},  {"needs", .425, .485, kRight}, {"sure", .485, .54, kRight},
    {"even", .54, .595, kRight}, {"take on", .6, .695, kRight}, {"leave", .7, .755, kRight},
    {"note", .77, 1.0, kLeft},
};
using Cells = std::string[std::size(kColumns)];

std::string tenths(double value)
{
    return format("%.1f", value);
}

class Card {
public:
    Card(const PlanRequest& request, const Plan& plan, Paper paper,
         std::optional<double> kgPerLitre)
        : m_request(request), m_plan(plan), m_kgPerLitre(kgPerLitre), m_page(paper),
          m_width(m_page.width() - 2 * kMargin), m_y(m_page.height() - kMargin - 12)
    {
    }

    Result<void> draw(const std::filesystem::path& file)
    {
        const double foot = kMargin + (std::size(kLegend) + std::size(kCautions)) * kFootLine;
        header();
        strip();
        std::vector<PlanRow> rows = planRows(m_request, m_plan);
        const bool all = heightOf(rows) <= m_y - foot;
        if (!all)
            rows = planRows(m_request, m_plan, stopsAndEnds(m_plan));
        const double spare = m_y - foot - heightOf(rows);
        if (spare < 0)
            return failInput(
                Sentence::of("the plan has too many stops for one page"),
                Sentence::of("a shorter way").onTerminal("--paper a4, or a shorter way"),
                std::to_string(m_plan.stops.size()) + " stops");
        m_row = std::min(kTallRow, kRow + spare / static_cast<double>(rows.size() + 1));
        table(rows);
        m_y = foot - kFootLine;
        footer(all);
        return m_page.save(file);
    }

private:
    void header()
    {
        const auto& points = m_request.route.points;
        m_page.text(kMargin, m_y, "Fuel card", 16, PdfPage::Weight::bold);
        m_page.text(kMargin + m_width, m_y,
                    format("%.1f km", (points.back().at - points.front().at).km()), 13,
                    PdfPage::Weight::bold, kRight);
        std::string bought = format("%.1f L", m_plan.bought.litres());
        if (m_kgPerLitre)
            bought += format(" (%.1f kg)", m_plan.bought.litres() * *m_kgPerLitre);
        const std::string risk = m_plan.finish.sd == Volume()
                                     ? "No spread was given: bare sums without any margin."
                                     : format("Risk of running dry on the way: %s %%.",
                                             riskPercent(m_plan.dryRisk).c_str());
        m_page.text(kMargin + 90, m_y,
                    format("%zu stop%s, %s to buy. %s", m_plan.stops.size(),
                          m_plan.stops.size() == 1 ? "" : "s", bought.c_str(), risk.c_str()),
                    10);
        m_y -= 10;
    }

    // The engine's horizon, with as many rows of names as there is room for.
    void strip()
    {
        HorizonNames names;
        names.characterWidth = kCharacter;
        names.labelRows = 2;
        m_y = drawStrips(m_page, m_request, planHorizons(m_request, m_plan, 160, names),
                         {kMargin, m_y, m_width, 62});
        m_y -= 10;
    }

    // A note that is too long for its column goes on below it.
    std::vector<std::string> noteLines(const PlanRow& row)
    {
        std::string note = row.note;
        if (row.stop && m_kgPerLitre)
            note += format("%s%.1f kg", note.empty() ? "" : "; ",
                          row.stop->buy.litres() * *m_kgPerLitre);
        const double room = m_width * (std::end(kColumns)[-1].to - std::end(kColumns)[-1].from);
        std::vector<std::string> lines{""};
        for (std::size_t from = 0; from < note.size();) {
            const std::size_t end = std::min(note.find("; ", from), note.size());
            const std::string part = note.substr(from, end - from);
            const std::string longer = lines.back().empty() ? part : lines.back() + "; " + part;
            if (lines.back().empty() || m_page.textWidth(longer, kNoteLetters) <= room)
                lines.back() = longer;
            else
                lines.push_back(part);
            from = end + 2;
        }
        return lines;
    }

    // Of the rows at their least and the titles.
    double heightOf(const std::vector<PlanRow>& rows)
    {
        double height = kRow;
        for (const PlanRow& row : rows)
            height += kRow + kNoteLine * static_cast<double>(noteLines(row).size() - 1);
        return height;
    }

    void cells(const Cells& texts, PdfPage::Weight weight)
    {
        for (std::size_t i = 0; i < std::size(kColumns); ++i) {
            const Column& column = kColumns[i];
            const double edge = column.align == kRight ? column.to : column.from;
            m_page.text(kMargin + m_width * edge, m_y, texts[i], kLetters, weight, column.align,
                        m_width * (column.to - column.from));
        }
    }

    void table(const std::vector<PlanRow>& rows)
    {
        Cells titles;
        for (std::size_t i = 0; i < std::size(kColumns); ++i)
            titles[i] = kColumns[i].title;
        cells(titles, PdfPage::Weight::bold);
        for (const PlanRow& row : rows) {
            m_page.line(kMargin, m_y - 3.5, kMargin + m_width, m_y - 3.5, 0.3);
            m_y -= m_row;
            print(row);
        }
    }

    void print(const PlanRow& row)
    {
        const RoutePoint& point = m_request.route.points[row.point];
        const bool last = row.point + 1 == m_request.route.points.size();
        std::string take = row.stop ? tenths(row.stop->buy.litres()) : "";
        if (row.stop && row.stop->toFull)
            take += " full";
        cells({tenths(row.at.km()), tenths(row.leg.km()), point.name, last ? "" : point.mode,
               last ? "" : tenths(row.needs.litres()), tenths(row.sure.litres()),
               tenths(row.even.litres()), take, tenths(row.leave.litres()), ""},
              row.stop ? PdfPage::Weight::bold : PdfPage::Weight::normal);
        bool first = true;
        for (const std::string& line : noteLines(row)) {
            m_y -= first ? 0 : kNoteLine;
            m_page.text(kMargin + m_width * std::end(kColumns)[-1].from, m_y, line, kNoteLetters,
                        PdfPage::Weight::normal, kLeft,
                        m_width * (std::end(kColumns)[-1].to - std::end(kColumns)[-1].from));
            first = false;
        }
    }

    void footer(bool all)
    {
        for (const char* line : kLegend) {
            m_page.text(kMargin, m_y, line, 7.5);
            m_y -= kFootLine;
        }
        bool first = true;
        for (const char* line : kCautions) {
            m_page.text(kMargin, m_y, line, 8, PdfPage::Weight::bold);
            if (first && !all)
                m_page.text(kMargin + m_width, m_y, "Stops only; the other points did not fit.", 8,
                            PdfPage::Weight::normal, kRight);
            first = false;
            m_y -= kFootLine;
        }
    }

    const PlanRequest& m_request;
    const Plan& m_plan;
    std::optional<double> m_kgPerLitre;
    PdfPage m_page;
    double m_width;
    double m_y;
    double m_row = kRow;
};

} // namespace

Result<void> writePlanCard(const PlanRequest& request, const Plan& plan, Paper paper,
                           const std::filesystem::path& file, std::optional<double> kgPerLitre)
{
    return Card(request, plan, paper, kgPerLitre).draw(file);
}

} // namespace undermark
