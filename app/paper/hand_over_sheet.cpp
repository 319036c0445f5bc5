// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/hand_over_sheet.h"

#include "app/paper/paper_curve.h"
#include "engine/base/instant_text.h"
#include "engine/base/record_words.h"
#include "engine/calibration/gauge_table.h"
#include "engine/logbook/photo_store.h"
#include "engine/logbook/picture.h"
#include "engine/outlook/outlook.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace undermark {

namespace {

std::vector<Sentence> sheetCautions()
{
    return {Sentence::of("Estimates, not promises: keep a margin. Never try out the reserve on a public road."),
            Sentence::of("Draining and pouring: petrol vapour ignites. Engine cold and off, no ignition "
                         "source, ventilated, earthed, approved containers on the ground, extinguisher in "
                         "reach; by a qualified person, as local rules ask."),
            Sentence::of("Calibrate again after work on tank, sender, wiring or display.")};
}

class Sheet {
    static constexpr double kMargin = 36.0;
    static constexpr double kLetters = 8.5;
    static constexpr double kLine = 11.0;
    static constexpr double kGap = 24.0;              // between the two columns
    static constexpr std::size_t kMostSteps = 18;     // rows of a table
    static constexpr std::size_t kMostProofs = 6;
    static constexpr std::size_t kMostPhotos = 6;     // on the second page
    static constexpr double kPhotoRows = 3;
    static constexpr int kCautionLines = 9;           // with their title
    static constexpr auto kLeft = PdfPage::Align::left;
    static constexpr auto kRight = PdfPage::Align::right;
    static constexpr auto kBold = PdfPage::Weight::bold;

public:
    Sheet(const HandOver& what, const SentenceWriter& write)
        : m_what(what), m_car(what.car), m_write(write), m_page(Paper::a4),
          m_wide(m_page.width() - 2 * kMargin), m_column((m_wide - kGap) / 2), m_y(m_page.height() - kMargin - 12)
    {
    }

    Result<void> draw(const std::filesystem::path& file)
    {
        if (!m_car.gauge.isKnown() || !m_car.log.calibration)
            return failInput(Sentence::of("this car has no calibration to hand over"));
        const auto past = pastZero(m_car, {});
        if (!past)
            return fail(past.error());
        header();
        const double top = m_y;
        facts();
        curve();
        gaugeTableRows();
        const double left = std::exchange(m_y, top);
        m_x += m_column + kGap;
        steps();
        reserve(*past);
        verification();
        m_x = kMargin;
        m_y = std::min(left, m_y) - kLine;
        title(Sentence::of("Findings"));
        const double foot = kMargin + kCautionLines * kLine;
        for (const Sentence& finding : findings()) {
            if (m_y < foot) {
                paragraph(m_write(Sentence::of("The logbook has more of them.")), m_wide);
                break;
            }
            paragraph(m_write(finding), m_wide);
        }
        title(Sentence::of("Cautions"));
        for (const Sentence& caution : sheetCautions())
            paragraph(m_write(caution), m_wide);
        photos();
        return m_page.save(file);
    }

private:
    std::string number(double value, Digits digits, const char* unit = "") const
    {
        return m_write(Sentence::just(amount(value, digits, unit)));
    }
    std::string litres(Volume value) const { return number(value.litres(), 1, "L"); }
    std::string litres(const Estimate<Volume>& value) const
    {
        return number(value.mean.litres(), 1) + " \xC2\xB1 " + number(value.sd.litres(), 1, "L");
    }
    std::string signal(Signal value) const { return number(value.value(), 3); }
    static std::string day(Instant time) { return instantText(time).substr(0, 10); }

    void header()
    {
        m_page.text(kMargin, m_y, m_write(Sentence::of("Hand-over sheet")), 18, kBold);
        m_page.text(m_page.width() - kMargin, m_y, m_car.vehicle().name, 14, kBold, kRight);
        m_y -= 2 * kLine;
    }
    void title(const Sentence& words)
    {
        m_y -= 4;
        m_page.text(m_x, m_y, m_write(words), 10, kBold);
        m_page.line(m_x, m_y - 3, m_x + m_column, m_y - 3, 0.5);
        m_y -= kLine + 3;
    }
    void fact(const Sentence& name, const std::string& value)
    {
        m_page.text(m_x, m_y, m_write(name), kLetters, PdfPage::Weight::normal, kLeft, 0.45 * m_column);
        m_page.text(m_x + 0.47 * m_column, m_y, value, kLetters, PdfPage::Weight::normal, kLeft,
                    0.53 * m_column);
        m_y -= kLine;
    }
    // One row: texts end at these shares of the column.
    void row(std::initializer_list<std::pair<double, std::string>> cells,
             PdfPage::Weight weight = PdfPage::Weight::normal)
    {
        for (const auto& [share, text] : cells)
            m_page.text(m_x + share * m_column, m_y, text, kLetters, weight, kRight);
        m_y -= kLine;
    }
    void paragraph(const std::string& text, double width)
    {
        for (const std::string& line : m_page.lines(text, kLetters, width)) {
            m_page.text(m_x, m_y, line, kLetters, PdfPage::Weight::normal, kLeft, width);
            m_y -= kLine;
        }
    }

    void facts()
    {
        const Vehicle& vehicle = m_car.vehicle();
        const Sender& sender = vehicle.sender;
        const Calibration& calibration = m_car.log.calibration->value;
        title(Sentence::of("Car and sender"));
        fact(Sentence::of("handed over"), day(m_what.day));
        fact(Sentence::of("fuel"), wordOf(vehicle.fuel));
        fact(Sentence::of("capacity to the first click"), litres(vehicle.capacity));
        fact(Sentence::of("circuit"), std::string(wordOf(sender.circuit)) + ", " + sender.unit);
        if (sender.supplyVolts)
            fact(Sentence::of("supply"), number(*sender.supplyVolts, 1, "V"));
        if (sender.pullUpOhms)
            fact(Sentence::of("pull-up"), number(*sender.pullUpOhms, 0, "ohm"));
        if (!m_car.log.handOvers.empty())
            fact(Sentence::of("handed over before"), day(m_car.log.handOvers.back().value.time));
        for (const Entry<ExtraTank>& tank : m_car.log.tanks)
            fact(Sentence::of("further tank"), tank.value.name + ", " + litres(tank.value.capacity) + ", " + wordOf(tank.value.feed));
        for (auto fill = m_car.log.fills.rbegin(); fill != m_car.log.fills.rend(); ++fill)
            if (fill->value.odometer) {
                fact(Sentence::of("odometer, last noted"),
                     number(fill->value.odometer->km(), 0, "km") + ", " + day(fill->value.time));
                break;
            }
        fact(Sentence::of("calibrated"), day(calibration.time));
        fact(Sentence::of("zero mark, since drained"), litres(calibration.zeroMark));
        fact(Sentence::of("full, since drained"), litres(m_car.gauge.full()));
        if (calibration.note)
            paragraph(*calibration.note, m_column);
    }

    void curve()
    {
        title(Sentence::of("Level since drained; grey: with 90 %"));
        const double height = 130;
        const auto lobes = m_car.gauge.lobes();
        const double width = (m_column - 26.0 * double(lobes.size())) / double(lobes.size());
        double left = m_x + 24;
        for (const LevelCurve& lobe : lobes) {
            drawCurve(m_page, lobe, lobes.size() == 1 ? std::optional(m_car.log.calibration->value.zeroMark) : std::nullopt,
                      m_car.vehicle().sender.unit, {left, m_y - height, width, height}, m_write);
            left += width + 26;
        }
        m_y -= height + 2.5 * kLine;
    }

    void gaugeTableRows()
    {
        if (!m_car.gauge.curve())
            return;
        GaugeTableRequest request;
        request.points = 10;
        request.zeroMark = m_car.log.calibration->value.zeroMark;
        request.signalStep = m_car.vehicle().sender.resolution;
        const auto table = gaugeTable(*m_car.gauge.curve(), request);
        if (!table)
            return;
        title(Sentence::of("Gauge table"));
        row({{0.4, m_car.vehicle().sender.unit}, {0.7, "%"}}, kBold);
        for (const GaugeTableRow& each : table->rows)
            row({{0.4, signal(each.signal)}, {0.7, number(each.value, 0)}});
    }

    void steps()
    {
        title(Sentence::of("Steps as poured"));
        const auto points = m_car.gauge.points();
        row({{0.25, "L"}, {0.5, m_car.vehicle().sender.unit}, {0.75, m_car.gauge.hasTwoSignals() ? m_car.vehicle().sender.unit : ""},
             {1.0, m_write(Sentence::of("readings"))}}, kBold);
        for (std::size_t i = 0; i < points.size() && i < kMostSteps; ++i)
            row({{0.25, number(points[i].added.litres(), 1)}, {0.5, signal(points[i].signal)},
                 {0.75, points[i].signal2 ? signal(*points[i].signal2) : ""},
                 {1.0, number(points[i].readings, 0)}});
        if (points.size() > kMostSteps)
            paragraph(m_write(Sentence::of("The logbook has %1 more.", counted(points.size() - kMostSteps))), m_column);
    }

    void reserve(const Distances& past)
    {
        title(Sentence::of("Hidden reserve"));
        fact(Sentence::of("estimate"), litres(m_car.reserve.reserve()));
        fact(Sentence::of("sure (99 %) past zero"), number(std::floor(past.p99.km()), 0, "km"));
        fact(Sentence::of("even (50 %)"), number(std::floor(past.p50.km()), 0, "km"));
        const auto& proofs = m_car.reserve.evidence();
        for (std::size_t i = proofs.size() - std::min(proofs.size(), kMostProofs); i < proofs.size(); ++i)
            paragraph((proofs[i].time ? day(*proofs[i].time) + ": " : std::string()) + m_write(proofs[i].text),
                      m_column);
        if (proofs.size() > kMostProofs)
            paragraph(m_write(Sentence::of("The logbook has %1 more.", counted(proofs.size() - kMostProofs))), m_column);
        if (proofs.empty())
            paragraph(m_write(Sentence::of("No proof yet: from the calibration alone.")), m_column);
    }

    void verification()
    {
        title(Sentence::of("Verification"));
        const VerificationRecord* tried = verified();
        if (!tried) {
            paragraph(m_write(Sentence::of("Litres taken out: ______   reading: ______   by the gauge: ______")), m_column);
            paragraph(m_write(Sentence::of("Checked by: ____________   on: ____________")), m_column);
            return;
        }
        row({{0.25, m_car.vehicle().sender.unit}, {0.5, m_write(Sentence::of("measured"))},
             {1.0, m_write(Sentence::of("by the curve"))}}, kBold);
        for (std::size_t i = 0; i < tried->levels.size() && i < kMostProofs; ++i) {
            const TriedLevel& level = tried->levels[i];
            row({{0.25, signal(level.signal)}, {0.5, litres(level.added)}, {1.0, litres(level.predicted)}},
                level.agrees ? PdfPage::Weight::normal : kBold);
        }
        const Part sure = amount(tried->confidence.value() * 100, 0, "%");
        paragraph(day(tried->time) + ": "
                      + m_write(tried->passed
                                    ? Sentence::of("Passed at %1.", sure)
                                    : Sentence::of("NOT PASSED at %1: the rows in bold do not agree.", sure)),
                  m_column);
        if (tried->note)
            paragraph(*tried->note, m_column);
    }

    const VerificationRecord* verified() const
    {
        return m_what.verification ? &*m_what.verification : m_car.log.latestVerification();
    }

    // Two in a row, each with what it shows.
    void photos()
    {
        if (m_what.photos.empty())
            return;
        m_page.next();
        m_y = m_page.height() - kMargin - 12;
        header();
        const double top = m_y, high = (top - kMargin) / kPhotoRows;
        for (std::size_t i = 0; i < m_what.photos.size() && i < kMostPhotos; ++i) {
            m_x = kMargin + double(i % 2) * (m_column + kGap);
            const std::size_t row = i / 2;
            m_y = top - double(row) * high;
            const Photo& photo = m_what.photos[i].photo;
            std::string words = day(photo.time) + ", " + wordOf(photo.step);
            if (photo.added)
                words += ", " + litres(*photo.added);
            if (photo.note)
                words += ": " + *photo.note;
            m_page.text(m_x, m_y, words, kLetters, PdfPage::Weight::normal, kLeft, m_column);
            const std::string& bytes = m_what.photos[i].bytes;
            const bool isJpeg = photo.format == PhotoFormat::jpeg;
            if (!m_page.picture(m_x, m_y - high + 2 * kLine, m_column, high - 2.5 * kLine, bytes, isJpeg,
                                isJpeg ? orientationOf(bytes) : 1))
                m_page.text(m_x, m_y - kLine, m_write(Sentence::of("This picture cannot be drawn.")), kLetters);
        }
        m_x = kMargin;
        m_y = kMargin;
        if (m_what.photos.size() > kMostPhotos)
            paragraph(m_write(Sentence::of("The logbook has %1 more.", counted(m_what.photos.size() - kMostPhotos))),
                      m_wide);
    }

    std::vector<Sentence> findings() const
    {
        std::vector<Sentence> lines;
        for (const Finding& finding : m_car.gauge.findings())
            lines.push_back(finding.text);
        if (lines.empty())
            lines.push_back(Sentence::of("None found."));
        return lines;
    }

    const HandOver& m_what;
    const CarKnowledge& m_car;
    const SentenceWriter& m_write;
    PdfPage m_page;
    double m_wide;
    double m_column;
    double m_y;
    double m_x = kMargin;
};

} // namespace

SheetPhotos sheetPhotos(const VehicleLog& log, const std::filesystem::path& logbook)
{
    SheetPhotos photos;
    for (const Entry<Photo>& photo : log.photos) {
        auto bytes = photoBytes(logbook, photo.value);
        if (bytes)
            photos.there.push_back({photo.value, std::move(*bytes)});
        else
            photos.missing.push_back(bytes.error());
    }
    return photos;
}

Result<void> writeHandOverSheet(const HandOver& what, const std::filesystem::path& file,
                                const SentenceWriter& write)
{
    return Sheet(what, write).draw(file);
}

} // namespace undermark
