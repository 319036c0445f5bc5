// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/label_lanes.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

// How far a mark reaches to either side: a peg's diamond, a post's line.
qreal reach(const PlacedLabel& label, qreal gap)
{
    return label.mark.peg ? 0.9 * gap : 0.25 * gap;
}

// What a label at `left` and its mark take up of their lane: half a gap around.
struct Span {
    qreal from;
    qreal to;
};

Span spanOf(const PlacedLabel& label, qreal left, qreal gap)
{
    return {std::min(left - gap / 2, label.markX - reach(label, gap)),
            std::max(left + label.width + gap / 2, label.markX + reach(label, gap))};
}

// Whether the line of a mark above, at x, runs through a label at `left` or its
// diamond. Through a post it may run: two posts can stand on one spot.
bool crosses(qreal x, const PlacedLabel& below, qreal left, qreal gap)
{
    const bool label = x > left - gap / 2 && x < left + below.width + gap / 2;
    return label || (below.mark.peg && std::abs(x - below.markX) < reach(below, gap));
}

// Whether a label at `left` in `lane` keeps clear of one placed. A mark rises as
// a line through all lanes below its label's.
bool clearOf(const PlacedLabel& placed, qreal left, const PlacedLabel& label, int lane, qreal gap)
{
    if (placed.lane == lane) {
        const Span a = spanOf(placed, placed.left, gap);
        const Span b = spanOf(label, left, gap);
        return a.to <= b.from || b.to <= a.from;
    }
    if (placed.lane > lane)
        return !crosses(placed.markX, label, left, gap);
    return !crosses(label.markX, placed, placed.left, gap);
}

enum class Prefer { right, left };

void place(PlacedLabel& label, const QList<PlacedLabel>& done, qreal stripWidth, qreal gap,
           int lanes, Prefer prefer)
{
    qreal sides[] = {label.markX + gap, label.markX - gap - label.width};
    if (prefer == Prefer::left)
        std::swap(sides[0], sides[1]);
    for (label.lane = 0; label.lane < lanes; ++label.lane) {
        for (const qreal left : sides) {
            const bool inside = left >= 0 && left + label.width <= stripWidth;
            const bool clear = std::ranges::all_of(done, [&](const PlacedLabel& placed) {
                return placed.lane < 0 || clearOf(placed, left, label, label.lane, gap);
            });
            if (inside && clear) {
                label.left = left;
                return;
            }
        }
    }
    label.lane = -1;
}

} // namespace

QList<PlacedLabel> placeLabels(const QList<HorizonMark>& marks, const QList<qreal>& widths,
                               qreal stripWidth, qreal gap, int lanes)
{
    Q_ASSERT(marks.size() == widths.size());
    QList<PlacedLabel> posts;
    QList<PlacedLabel> pegs;
    for (qsizetype i = 0; i < marks.size(); ++i)
        (marks[i].peg ? pegs : posts)
            .append({marks[i], marks[i].at * stripWidth, 0, widths[i], -1});
    const auto placeAll = [&](QList<PlacedLabel> done, const QList<PlacedLabel>& labels,
                              Prefer prefer) {
        for (PlacedLabel label : labels) {
            place(label, done, stripWidth, gap, lanes, prefer);
            done.append(label);
        }
        return done;
    };
    // From the right, names stand to the right of the lines of those placed
    // later; where the right edge forbids that, the other way round.
    const auto byX = [](const auto& a, const auto& b) { return a.markX < b.markX; };
    std::stable_sort(posts.rbegin(), posts.rend(), byX);
    QList<PlacedLabel> done = placeAll({}, posts, Prefer::right);
    if (std::ranges::any_of(done, [](const auto& label) { return label.lane < 0; })) {
        std::reverse(posts.begin(), posts.end());
        done = placeAll({}, posts, Prefer::left);
    }
    return placeAll(std::move(done), pegs, Prefer::right);
}

QList<PlacedLabel> LabelLanes::placed() const
{
    QFont font = QGuiApplication::font();
    font.setPixelSize(m_pixelSize);
    const QFontMetricsF metrics(font);
    QList<qreal> widths;
    for (const HorizonMark& mark : m_marks)
        widths.append(std::ceil(metrics.horizontalAdvance(mark.label)));
    return placeLabels(m_marks, widths, m_stripWidth, m_gap, m_lanes);
}

int LabelLanes::lanesUsed() const
{
    int used = 0;
    for (const PlacedLabel& label : placed())
        used = std::max(used, label.lane + 1);
    return used;
}

} // namespace undermark
