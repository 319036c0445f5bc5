// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/plan_card_strip.h"

#include <algorithm>

namespace undermark {

namespace {

constexpr double kMostLane = 13.0;
constexpr double kDarkest = 0.25;   // grey of what is sure: lines stay visible on it
constexpr double kFaintest = 0.004; // probability below which nothing is drawn
constexpr double kHatch = 3.5;      // between the hatching's lines
constexpr double kSmall = 7.0;      // letters of pegs and ruler

class Strips {
public:
    Strips(PdfPage& page, const PlanRequest& request, const std::vector<LegHorizon>& legs,
           const StripPlace& place)
        : m_page(page), m_points(request.route.points), m_legs(legs), m_place(place)
    {
        m_lane = std::min(kMostLane, place.height / static_cast<double>(legs.size()));
    }

    double draw()
    {
        double top = m_place.top;
        for (const LegHorizon& leg : m_legs) {
            lane(leg, top);
            top -= m_lane;
        }
        return below(top);
    }

private:
    double share(std::size_t point) const
    {
        return (m_points[point].at - m_points.front().at) /
               (m_points.back().at - m_points.front().at);
    }

    void lane(const LegHorizon& leg, double top)
    {
        const double from = m_place.left + m_place.width * share(leg.from);
        const double width = m_place.left + m_place.width - from;
        const double height = m_lane - 2;
        const double bottom = top - m_lane + 1;
        for (const HorizonBand& band : leg.strip.bands) {
            if (band.running >= kFaintest)
                m_page.fill(from + band.from * width, bottom, (band.to - band.from) * width + 0.2,
                            height, 1 - (1 - kDarkest) * band.running);
        }
        if (leg.strip.tail)
            hatch(leg.strip, from, width, bottom);
        if (leg.strip.zeroPost)
            m_page.line(from + *leg.strip.zeroPost * width, bottom - 1,
                        from + *leg.strip.zeroPost * width, bottom + height + 1, 1.8);
        m_page.line(from, bottom - 1, from, bottom + height + 1, 0.6);
        const double to = m_place.left + m_place.width * share(leg.to);
        m_page.line(to, bottom - 1, to, bottom + height + 1, 0.6);
    }

    // The hidden reserve: white on what is likely, black on what is not.
    void hatch(const Horizon& strip, double from, double width, double bottom)
    {
        const double height = m_lane - 2;
        const double length = strip.tail->to - strip.tail->from;
        for (int i = 1; i * kHatch < length * width; ++i) {
            const double at = strip.tail->from + i * kHatch / width;
            const auto band =
                static_cast<std::size_t>(at * static_cast<double>(strip.bands.size()));
            const bool dark = strip.bands[std::min(band, strip.bands.size() - 1)].running > 0.5;
            const double x = from + at * width;
            m_page.line(x, bottom, std::min(x + height / 2, from + strip.tail->to * width),
                        bottom + height, 0.7, dark ? 1.0 : 0.0);
        }
    }

    // Pegs with their names, and the ruler, both of the first strip: it begins at
    // the start.
    double below(double bottom)
    {
        const Horizon& whole = m_legs.front().strip;
        m_page.line(m_place.left, bottom, m_place.left + m_place.width, bottom, 0.6);
        int rows = 0;
        for (const HorizonPeg& peg : whole.pegs) {
            const double x = m_place.left + peg.at * m_place.width;
            m_page.line(x, bottom, x, m_place.top, 0.4, 0.65);
            if (!peg.row)
                continue;
            rows = std::max(rows, *peg.row + 1);
            m_page.text(m_place.left + peg.labelFrom * m_place.width,
                        bottom - 17 - *peg.row * (kSmall + 1), peg.name, kSmall);
        }
        for (const HorizonTick& tick : whole.ticks) {
            const double x = m_place.left + tick.at * m_place.width;
            m_page.line(x, bottom, x, bottom - 3, 0.6);
            m_page.text(tick.at > 0.95 ? x : x + 1.5, bottom - 9, tick.label, kSmall,
                        PdfPage::Weight::normal,
                        tick.at > 0.95 ? PdfPage::Align::right : PdfPage::Align::left);
        }
        return bottom - 12 - rows * (kSmall + 1);
    }

    PdfPage& m_page;
    const std::vector<RoutePoint>& m_points;
    const std::vector<LegHorizon>& m_legs;
    StripPlace m_place;
    double m_lane = 0.0;
};

} // namespace

double drawStrips(PdfPage& page, const PlanRequest& request, const std::vector<LegHorizon>& legs,
                  const StripPlace& place)
{
    return legs.empty() ? place.top : Strips(page, request, legs, place).draw();
}

} // namespace undermark
