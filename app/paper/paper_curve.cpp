// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/paper_curve.h"

#include "engine/base/normal_law.h"

#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr double kTickLetters = 7.0;
constexpr double kBandGrey = 0.8;
constexpr int kPaperPerPiece = 16;

class Plot {
public:
    Plot(PdfPage& page, const LevelCurve& curve, const CurvePlace& place, const SentenceWriter& write)
        : m_page(page), m_curve(curve), m_drawn(curve.drawn(kPaperPerPiece)), m_place(place), m_write(write),
          m_from(std::min(curve.lowest().signal.value(), curve.highest().signal.value())),
          m_to(std::max(curve.lowest().signal.value(), curve.highest().signal.value())),
          m_most(1.06 * curve.highest().added.litres())
    {
    }

    void draw(std::optional<Volume> zeroMark, const std::string& unit)
    {
        band();
        axes(unit);
        if (zeroMark) {
            const double right = m_place.left + m_place.width;
            m_page.line(m_place.left, y(*zeroMark), right, y(*zeroMark), 1.2, 0.4);
            const bool rising = m_curve.rising(); // written where the curve is not
            m_page.text(rising ? right : m_place.left + 2, y(*zeroMark) + 2, m_write(Sentence::of("zero mark")),
                        kTickLetters, PdfPage::Weight::normal,
                        rising ? PdfPage::Align::right : PdfPage::Align::left);
        }
        line();
        for (const CurveKnot& knot : m_curve.knots())
            m_page.fill(x(knot.signal.value()) - 1.6, y(knot.added) - 1.6, 3.2, 3.2, 0.0);
    }

private:
    double x(double signal) const { return m_place.left + m_place.width * (signal - m_from) / (m_to - m_from); }
    double y(Volume added) const
    {
        return m_place.bottom + m_place.height * std::clamp(added.litres() / m_most, 0.0, 1.0);
    }

    void band()
    {
        for (std::size_t i = 1; i < m_drawn.size(); ++i) {
            const double a = x(m_drawn[i - 1].signal.value()), b = x(m_drawn[i].signal.value());
            const Volume mean = (m_drawn[i - 1].added.mean + m_drawn[i].added.mean) / 2;
            const Volume half = kHalfOf90 * (m_drawn[i - 1].added.sd + m_drawn[i].added.sd) / 2;
            const double low = y(mean - half);
            m_page.fill(std::min(a, b), low, std::abs(b - a) + 0.2, std::max(y(mean + half) - low, 0.3), kBandGrey);
        }
    }
    void line()
    {
        for (std::size_t i = 1; i < m_drawn.size(); ++i)
            m_page.line(x(m_drawn[i - 1].signal.value()), y(m_drawn[i - 1].added.mean),
                        x(m_drawn[i].signal.value()), y(m_drawn[i].added.mean), 0.9);
    }
    void axes(const std::string& unit)
    {
        const double right = m_place.left + m_place.width;
        m_page.line(m_place.left, m_place.bottom, right, m_place.bottom, 0.6);
        m_page.line(m_place.left, m_place.bottom, m_place.left, m_place.bottom + m_place.height, 0.6);
        for (int i = 0; i <= 4; ++i) {
            const Volume litres = m_curve.highest().added * (i / 4.0);
            m_page.line(m_place.left, y(litres), right, y(litres), 0.2, 0.6);
            m_page.text(m_place.left - 3, y(litres) - 2.5, number(litres.litres(), 1), kTickLetters,
                        PdfPage::Weight::normal, PdfPage::Align::right);
            const double signal = m_from + (m_to - m_from) * i / 4;
            const std::string tick = shortest(signal);
            m_page.text(x(signal) - m_page.textWidth(tick, kTickLetters) / 2, m_place.bottom - 9, tick,
                        kTickLetters);
        }
        m_page.text(m_place.left, m_place.bottom + m_place.height + 3, "L", kTickLetters);
        m_page.text(right, m_place.bottom - 18, unit, kTickLetters, PdfPage::Weight::normal,
                    PdfPage::Align::right);
    }
    std::string number(double value, Digits digits) const
    {
        return m_write(Sentence::just(amount(value, digits)));
    }
    std::string shortest(double value) const
    {
        return number(value, std::abs(value) >= 100 ? 0 : std::abs(value) >= 10 ? 1 : 2);
    }

    PdfPage& m_page;
    const LevelCurve& m_curve;
    std::vector<DrawnLevel> m_drawn;
    CurvePlace m_place;
    const SentenceWriter& m_write;
    double m_from, m_to, m_most;
};

} // namespace

void drawCurve(PdfPage& page, const LevelCurve& curve, std::optional<Volume> zeroMark,
               const std::string& unit, const CurvePlace& place, const SentenceWriter& write)
{
    Plot(page, curve, place, write).draw(zeroMark, unit);
}

} // namespace undermark
