// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/cli_backtest_plot.h"

#include "app/cli/cli_command.h"

#include <algorithm>
#include <cmath>
#include <fstream>

namespace undermark {

namespace {

constexpr double kWidth = 1200;
constexpr double kHeight = 480;
constexpr double kLeft = 64;
constexpr double kRight = 16;
constexpr double kTop = 48;
constexpr double kBottom = 40;

class Plot {
public:
    Plot(const Backtest& test, std::span<const Instant> when) : m_tanks(test.forecasts), m_when(when)
    {
        m_begin = seconds(m_tanks.front());
        m_end = std::max(seconds(m_tanks.back()), m_begin + 86400);
        for (const TankForecast& tank : m_tanks)
            m_top_km = std::max({m_top_km, tank.actual.km(), tank.forecast.bands[2].high.km()});
        m_top_km = std::ceil(m_top_km / 100) * 100;
    }

    std::string svg() const
    {
        std::string out = format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" "
            "font-family=\"B612, sans-serif\" font-size=\"13\">\n"
            "<title>Distance of each tank: forecast, bands and outcome</title>\n"
            "<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>\n", kWidth, kHeight);
        out += axes();
        // One bar per tank: bands of neighbouring tanks differ with their litres.
        for (const TankForecast& tank : m_tanks)
            out += bar(tank, 2, "#d9d9d9", 5) + bar(tank, 0, "#9a9a9a", 5);
        for (const TankForecast& tank : m_tanks)
            out += format("<path d=\"M%.1f %.1fh8\" stroke=\"#1f4e79\" stroke-width=\"2\"/>\n",
                          x(tank) - 4, y(tank.forecast.point));
        for (const TankForecast& tank : m_tanks)
            out += format("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%d\" %s/>\n", x(tank), y(tank.actual),
                          tank.flagged ? 6 : 2,
                          tank.flagged ? "fill=\"none\" stroke=\"#a61c00\" stroke-width=\"2\""
                                       : "fill=\"#000000\"");
        return out + legend() + "</svg>\n";
    }

private:
    double seconds(const TankForecast& tank) const
    {
        return double(m_when[tank.tank].time_since_epoch().count());
    }
    double x(double s) const
    {
        return kLeft + (s - m_begin) / (m_end - m_begin) * (kWidth - kLeft - kRight);
    }
    double x(const TankForecast& tank) const { return x(seconds(tank)); }
    double y(Distance d) const
    {
        return kHeight - kBottom - d.km() / m_top_km * (kHeight - kTop - kBottom);
    }

    std::string bar(const TankForecast& tank, std::size_t band, const char* colour, double width) const
    {
        const Band& b = tank.forecast.bands[band];
        return format("<path d=\"M%.1f %.1fV%.1f\" stroke=\"%s\" stroke-width=\"%.0f\"/>\n", x(tank),
                      y(b.low), y(b.high), colour, width);
    }

    std::string axes() const
    {
        std::string out;
        const int step_km = m_top_km > 600 ? 200 : 100;
        for (int km = 0; km <= m_top_km; km += step_km) {
            const double at = y(Distance::fromKm(km));
            out += format("<path d=\"M%.0f %.1fH%.0f\" stroke=\"#eeeeee\"/>"
                          "<text x=\"%.0f\" y=\"%.1f\" text-anchor=\"end\">%d km</text>\n",
                          kLeft, at, kWidth - kRight, kLeft - 6, at + 4, km);
        }
        for (const Instant end : {m_when[m_tanks.front().tank], m_when[m_tanks.back().tank]}) {
            const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(end)};
            const double at = x(double(end.time_since_epoch().count()));
            out += format("<text x=\"%.1f\" y=\"%.0f\" text-anchor=\"%s\">%d-%02u-%02u</text>\n", at,
                          kHeight - 14, at < kWidth / 2 ? "start" : "end", int(day.year()),
                          unsigned(day.month()), unsigned(day.day()));
        }
        return out;
    }

    std::string legend() const
    {
        return format("<text x=\"%.0f\" y=\"24\">Distance of each tank. Dash: forecast from the tanks "
                      "before. Bars: 50 %% (dark) and 90 %% bands. Dot: outcome. Ring: flagged.</text>\n",
                      kLeft);
    }

    std::span<const TankForecast> m_tanks;
    std::span<const Instant> m_when;
    double m_begin = 0;
    double m_end = 1;
    double m_top_km = 100;
};

} // namespace

Result<void> writeBacktestPlot(const std::filesystem::path& file, const Backtest& test,
                               std::span<const Instant> when)
{
    if (test.forecasts.empty())
        return wrongUse("there is nothing to draw: forecasts begin with the eleventh tank");
    std::ofstream out(file);
    out << Plot(test, when).svg();
    out.close();
    if (!out)
        return fail(ErrorCode::fileAccess, Sentence::just("cannot write the plot"),
                    {file.string()});
    return {};
}

} // namespace undermark
