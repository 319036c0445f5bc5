// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/plan_card.h"

#include "app/car/plan_sentences.h"
#include "app/paper/plan_card_strip.h"

#include <algorithm>

namespace undermark {

namespace {

std::vector<Sentence> legend()
{
    return {Sentence::of("needs: litres to the next row.  sure: litres on arrival with 99 % "
                         "probability.  even: half the time there is more."),
            Sentence::of("take on: litres to ask for, \"full\" is to the first click.  no return "
                         "after: turn back by then, or there must be fuel ahead."),
            Sentence::of("Strip: a lane for each leg, dark as far as the engine is sure to run if "
                         "nobody stops again. Post: gauge at zero. Hatched: hidden reserve.")};
}

std::vector<Sentence> cautions()
{
    return {Sentence::of("An estimate, not a promise. Keep a margin; the event's rules and the "
                         "law come first."),
            Sentence::of("Refuel with the engine off, no flame or spark near; cans approved, "
                         "filled on the ground."),
            Sentence::of("Never try out the reserve on a public road. Nothing is typed while "
                         "driving.")};
}

constexpr double kMargin = 26.0;
constexpr double kRow = 14.0;     // at least
constexpr double kTallRow = 20.0; // at most
constexpr double kNoteLine = 8.5;
constexpr double kNoteLetters = 7.8;
constexpr double kFootLine = 9.5;
constexpr double kLetters = 9.5;
constexpr double kCharacter = 0.0066; // of a peg's name, as a share of the strip

struct CardColumn {
    double from; // share of the width
    double to;
    PdfPage::Align align;
};
constexpr auto kLeft = PdfPage::Align::left;
constexpr auto kRight = PdfPage::Align::right;
constexpr CardColumn kColumns[] = {
    {.0, .07, kRight},    {.07, .135, kRight},  {.15, .305, kLeft}, {.31, .425, kLeft},
    {.425, .485, kRight}, {.485, .54, kRight},  {.54, .595, kRight}, {.6, .695, kRight},
    {.7, .755, kRight},   {.77, 1.0, kLeft},
};
using Cells = std::string[std::size(kColumns)];

class Card {
public:
    Card(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
         const SentenceWriter& write)
        : m_request(request), m_plan(plan), m_kgPerLitre(wishes.kgPerLitre),
          m_supposed(wishes.supposed), m_write(write), m_page(wishes.paper),
          m_width(m_page.width() - 2 * kMargin), m_y(m_page.height() - kMargin - 12)
    {
    }

    Result<void> draw(const std::filesystem::path& file)
    {
        const double foot = kMargin + double(legend().size() + cautions().size()) * kFootLine;
        header();
        strip();
        std::vector<PlanRow> rows = planRows(m_request, m_plan, {}, m_write);
        const bool all = heightOf(rows) <= m_y - foot;
        if (!all)
            rows = planRows(m_request, m_plan, stopsAndEnds(m_plan), m_write);
        const double spare = m_y - foot - heightOf(rows);
        if (spare < 0)
            return failInput(
                Sentence::of("the plan has too many stops for one page"),
                Sentence::of("a shorter way"),
                std::to_string(m_plan.stops.size()) + " stops");
        m_row = std::min(kTallRow, kRow + spare / static_cast<double>(rows.size() + 1));
        table(rows);
        m_y = foot - kFootLine;
        footer(all);
        return m_page.save(file);
    }

private:
    std::string number(double value, const char* unit = "") const
    {
        return m_write(Sentence::just(amount(value, 1, unit)));
    }

    void header()
    {
        const auto& points = m_request.route.points;
        const std::string title = m_write(Sentence::of("Fuel card"));
        m_page.text(kMargin, m_y, title, 16, PdfPage::Weight::bold);
        m_page.text(kMargin + m_width, m_y,
                    number((points.back().at - points.front().at).km(), "km"), 13,
                    PdfPage::Weight::bold, kRight);
        Sentence line = stopsSentence(m_plan);
        if (m_kgPerLitre)
            line += Sentence::of("That is %1.",
                                 amount(m_plan.bought.litres() * *m_kgPerLitre, 1, "kg"));
        if (m_plan.finish.sd == Volume())
            line += Sentence::of("No spread was given: bare sums without any margin.");
        else
            line += riskSentence(m_plan);
        m_page.text(kMargin + 15 + m_page.textWidth(title, 16, PdfPage::Weight::bold), m_y,
                    m_write(line), 10);
        m_y -= 10;
        if (m_supposed.empty())
            return;
        m_page.text(kMargin, m_y - 2, m_write(Sentence::of("Supposed: %1.", m_supposed)), 9,
                    PdfPage::Weight::bold, kLeft, m_width);
        m_y -= 12;
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
            note += (note.empty() ? "" : "; ") +
                    number(row.stop->buy.litres() * *m_kgPerLitre, "kg");
        const double room = m_width * (std::end(kColumns)[-1].to - std::end(kColumns)[-1].from);
        return m_page.lines(note, kNoteLetters, room, "; ");
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
            const CardColumn& column = kColumns[i];
            const double edge = column.align == kRight ? column.to : column.from;
            m_page.text(kMargin + m_width * edge, m_y, texts[i], kLetters, weight, column.align,
                        m_width * (column.to - column.from));
        }
    }

    void table(const std::vector<PlanRow>& rows)
    {
        cells({"km", m_write(Sentence::of("leg")), m_write(Sentence::of("place")),
               m_write(Sentence::of("mode")), m_write(Sentence::of("needs")),
               m_write(Sentence::of("sure")), m_write(Sentence::of("even")),
               m_write(Sentence::of("take on")), m_write(Sentence::of("leave")),
               m_write(Sentence::of("note"))},
              PdfPage::Weight::bold);
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
        std::string take = row.stop ? number(row.stop->buy.litres()) : "";
        if (row.stop && row.stop->toFull)
            take = m_write(Sentence::of("%1 full", take));
        cells({number(row.at.km()), number(row.leg.km()), point.name, last ? "" : m_write(Sentence::just(ModeWord{point.mode})),
               last ? "" : number(row.needs.litres()), number(row.sure.litres()),
               number(row.even.litres()), take, number(row.leave.litres()), ""},
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
        for (const Sentence& line : legend()) {
            m_page.text(kMargin, m_y, m_write(line), 7.5, PdfPage::Weight::normal, kLeft, m_width);
            m_y -= kFootLine;
        }
        bool first = true;
        for (const Sentence& line : cautions()) {
            m_page.text(kMargin, m_y, m_write(line), 8, PdfPage::Weight::bold);
            if (first && !all)
                m_page.text(kMargin + m_width, m_y,
                            m_write(Sentence::of("Stops only; the other points did not fit.")), 8,
                            PdfPage::Weight::normal, kRight);
            first = false;
            m_y -= kFootLine;
        }
    }

    const PlanRequest& m_request;
    const Plan& m_plan;
    std::optional<double> m_kgPerLitre;
    const std::vector<Sentence>& m_supposed;
    const SentenceWriter& m_write;
    PdfPage m_page;
    double m_width;
    double m_y;
    double m_row = kRow;
};

} // namespace

Result<void> writePlanCard(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
                           const std::filesystem::path& file, const SentenceWriter& write)
{
    return Card(request, plan, wishes, write).draw(file);
}

} // namespace undermark
