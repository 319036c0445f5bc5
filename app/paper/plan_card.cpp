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
constexpr double kRow = 12.5;     // at least
constexpr double kTallRow = 20.0; // at most
constexpr double kNoteLine = 7.5;
constexpr double kNoteLetters = 7.2;
constexpr double kFootLine = 8.5;
constexpr double kFootLetters = 7.5;
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
    {.425, .485, kRight}, {.485, .54, kRight},  {.54, .595, kRight}, {.6, .675, kRight},
    {.68, .735, kRight}, {.745, .9, kLeft},
};
// To be written in by hand: what was taken on, and what the gauge shows on leaving.
struct WriteIn {
    double from;
    double to;
};
constexpr WriteIn kTaken{.905, .95};
constexpr WriteIn kGauge{.955, 1.0};
constexpr std::size_t kMostPages = 12;
constexpr Minutes kNight{4 * 60}; // a longer rest ends a day
constexpr double kPageHeader = 18.0; // of the pages behind the first
using Cells = std::string[std::size(kColumns)];

class Card {
public:
    Card(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
         const SentenceWriter& write)
        : m_request(request), m_plan(plan), m_kgPerLitre(wishes.kgPerLitre),
          m_wishes(wishes), m_write(write), m_page(wishes.paper),
          m_width(m_page.width() - 2 * kMargin), m_y(m_page.height() - kMargin - 12)
    {
    }

    Result<int> draw(const std::filesystem::path& file)
    {
        const double foot = kMargin + double(legend().size() + cautions().size()) * kFootLine;
        header();
        strip();
        std::vector<PlanRow> rows = planRows(m_request, m_plan, {}, m_write);
        std::vector<std::size_t> pages = pagesOf(rows, foot);
        const bool all = pages.size() <= kMostPages;
        if (!all) {
            rows = planRows(m_request, m_plan, stopsAndEnds(m_plan), m_write);
            pages = pagesOf(rows, foot);
        }
        if (pages.size() > kMostPages)
            return failInput(
                Sentence::of("the plan has too many stops for a card"),
                Sentence::of("a shorter way"),
                std::to_string(m_plan.stops.size()) + " stops");
        auto row = rows.begin();
        for (std::size_t page = 0; page < pages.size(); ++page) {
            if (page > 0)
                turn(page + 1, pages.size());
            const std::vector<PlanRow> some(row, row + std::ptrdiff_t(pages[page]));
            row += std::ptrdiff_t(pages[page]);
            const double spare = m_y - foot - heightOf(some);
            m_row = std::min(kTallRow, kRow + spare / static_cast<double>(some.size() + 1));
            table(some);
            m_y = foot - kFootLine;
            footer(all);
        }
        if (const auto saved = m_page.save(file); !saved)
            return fail(saved.error());
        return static_cast<int>(pages.size());
    }

private:
    std::string number(double value, const char* unit = "") const
    {
        return m_write(Sentence::just(amount(value, 1, unit)));
    }

    // How many rows each page takes, the first below the strip.
    std::vector<std::size_t> pagesOf(const std::vector<PlanRow>& rows, double foot)
    {
        std::vector<std::size_t> pages{0};
        double left = m_y - foot - kRow;
        for (const PlanRow& row : rows) {
            const double height = heightOf(row);
            if (pages.back() > 0 && height > left) {
                pages.push_back(0);
                left = m_page.height() - kMargin - 12 - kPageHeader - foot - kRow;
            }
            left -= height;
            ++pages.back();
            if (m_request.route.points[row.point].rest.value_or(Minutes{}) >= kNight)
                left = 0.0; // the next day has its own
        }
        return pages;
    }

    // Another page, which says of what it is.
    void turn(std::size_t page, std::size_t pages)
    {
        m_page.next();
        m_y = m_page.height() - kMargin - 12;
        m_page.text(kMargin, m_y, m_write(Sentence::of("Fuel card, page %1 of %2", counted(page), counted(pages))),
                    11, PdfPage::Weight::bold);
        m_page.text(kMargin + m_width, m_y, m_wishes.event, 10, PdfPage::Weight::normal, kRight, m_width / 2);
        m_y -= kPageHeader;
    }

    // What the card is of, and what it rests on.
    void basis()
    {
        std::string of;
        for (const std::string* part : {&m_wishes.event, &m_wishes.day, &m_wishes.car})
            if (!part->empty())
                of += (of.empty() ? "" : " · ") + *part;
        if (m_wishes.day.empty())
            of += (of.empty() ? "" : " · ") + m_write(Sentence::of("day ____________"));
        m_page.text(kMargin, m_y - 2, of, 9, PdfPage::Weight::bold, kLeft, m_width);
        m_y -= 11;
        Sentence rests = aimSentence(m_request.aim);
        rests += confidenceSentence(m_request);
        rests += startSentence(m_request.tank);
        if (const Sentence price = stopCostSentence(m_request); !price.empty())
            rests += price;
        for (const std::string& line : m_page.lines(m_write(rests), kFootLetters, m_width)) {
            m_page.text(kMargin, m_y - 1, line, kFootLetters, PdfPage::Weight::normal, kLeft, m_width);
            m_y -= kFootLine;
        }
        m_y -= 3;
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
        basis();
        if (m_wishes.supposed.empty())
            return;
        m_page.text(kMargin, m_y - 2, m_write(Sentence::of("Supposed: %1.", m_wishes.supposed)), 9,
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
        if (m_wishes.meter) {
            const Distance shown = *m_wishes.meter + row.at - m_request.route.points.front().at;
            note = m_write(Sentence::of("meter %1", amount(shown, 1))) + (note.empty() ? "" : "; ") + note;
        }
        if (row.stop && m_kgPerLitre)
            note += (note.empty() ? "" : "; ") +
                    number(row.stop->buy.litres() * *m_kgPerLitre, "kg");
        const double room = m_width * (std::end(kColumns)[-1].to - std::end(kColumns)[-1].from);
        std::vector<std::string> lines;
        for (const std::string& part : m_page.lines(note, kNoteLetters, room, "; "))
            for (std::string& line : m_page.lines(part, kNoteLetters, room))
                lines.push_back(std::move(line));
        return lines;
    }

    // At its least.
    double heightOf(const PlanRow& row)
    {
        return kRow + kNoteLine * static_cast<double>(noteLines(row).size() - 1);
    }

    // Of the rows and the titles.
    double heightOf(const std::vector<PlanRow>& rows)
    {
        double height = kRow;
        for (const PlanRow& row : rows)
            height += heightOf(row);
        return height;
    }

    void writeIn(const WriteIn& place)
    {
        m_page.box(kMargin + m_width * place.from, m_y - 2.5, m_width * (place.to - place.from), kRow - 2, 0.5);
    }

    // "open-road", and of a leg of several modes all of them.
    std::string modesOf(const PlanRow& row)
    {
        std::string words;
        for (const std::string& mode : row.modes)
            words += (words.empty() ? "" : " + ") + m_write(Sentence::just(ModeWord{mode}));
        return words;
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
        m_page.text(kMargin + m_width * kTaken.from, m_y, m_write(Sentence::of("taken")), kNoteLetters);
        m_page.text(kMargin + m_width * kGauge.from, m_y, m_write(Sentence::of("gauge")), kNoteLetters);
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
        cells({number(row.at.km()), number(row.leg.km()), point.name, last ? "" : modesOf(row),
               last ? "" : number(row.needs.litres()), number(row.sure.litres()),
               number(row.even.litres()), take, number(row.leave.litres()), ""},
              row.stop ? PdfPage::Weight::bold : PdfPage::Weight::normal);
        if (point.fuel != FuelSource::none)
            writeIn(kTaken);
        writeIn(kGauge);
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
            m_page.text(kMargin, m_y, m_write(line), kFootLetters, PdfPage::Weight::normal, kLeft, m_width);
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
    const CardWishes& m_wishes;
    const SentenceWriter& m_write;
    PdfPage m_page;
    double m_width;
    double m_y;
    double m_row = kRow;
};

} // namespace

Result<int> writePlanCard(const PlanRequest& request, const Plan& plan, const CardWishes& wishes,
                           const std::filesystem::path& file, const SentenceWriter& write)
{
    return Card(request, plan, wishes, write).draw(file);
}

} // namespace undermark
