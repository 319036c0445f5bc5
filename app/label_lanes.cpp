// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/label_lanes.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

// Whether a label at [left, left + width] in `lane` keeps clear of one placed.
// A placed label's mark rises as a line through all lanes below its own.
bool clearOf(const PlacedLabel& placed, qreal left, const PlacedLabel& label, int lane, qreal gap)
{
    const qreal right = left + label.width;
    const auto hitBy = [gap](qreal x, qreal from, qreal to) {
        return x > from - gap / 2 && x < to + gap / 2;
    };
    if (placed.lane == lane)
        return right + gap <= placed.left || left >= placed.left + placed.width + gap;
    if (placed.lane > lane)
        return !hitBy(placed.markX, left, right);
    return !hitBy(label.markX, placed.left, placed.left + placed.width);
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
        (marks[i].peg ? pegs : posts).append({marks[i], marks[i].at * stripWidth, 0, widths[i], -1});
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
