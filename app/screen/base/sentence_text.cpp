// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/sentence_text.h"

#include "app/screen/base/mode_name.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace undermark {

namespace {

constexpr const char* kContext = "undermark::Sentence"; // where lupdate puts Sentence::of
constexpr int kMostDecimals = 3;                        // what nobody asked for is not shown

struct OnScreen {
    const UnitFormat& format;

    QString number(double value, Digits digits) const
    {
        if (digits.areDecimals && digits.count <= kMostDecimals)
            return format.number(value, digits.count);
        int decimals = kMostDecimals;
        if (!digits.areDecimals && value != 0.0)
            decimals = std::max(digits.count - 1 - int(std::floor(std::log10(std::abs(value)))), 0);
        return format.typed(value, decimals);
    }
    QString withUnit(const QString& number, const QString& unit) const
    {
        return unit.isEmpty() ? number : number + u' ' + unit;
    }
    QString operator()(const Figure<Volume>& figure) const
    {
        Digits digits = figure.digits;
        if (digits.areDecimals && format.units().volume != Units::Volumes::litres)
            digits.count = std::max(digits.count, 1);
        return withUnit(number(format.inUnit(figure.value), digits), format.volumeUnit());
    }
    QString operator()(const Figure<Distance>& figure) const
    {
        return withUnit(number(format.inUnit(figure.value), figure.digits), format.distanceUnit());
    }
    QString operator()(const Figure<double>& figure) const
    {
        return withUnit(number(figure.value, figure.digits), QString::fromStdString(figure.unit));
    }
    QString operator()(const std::string& name) const { return QString::fromStdString(name); }
    QString operator()(const ModeWord& mode) const { return modeName(mode.name); }
    QString operator()(const std::vector<Sentence>& list) const
    {
        QStringList texts;
        for (const Sentence& one : list)
            texts.append(sentenceText(one, format));
        return texts.join(QStringLiteral(", "));
    }
};

} // namespace

QString sentenceText(const Sentence& sentence, const UnitFormat& format)
{
    // A pattern is a literal, so it ends in a zero.
    const QString pattern = QCoreApplication::translate(kContext, sentence.pattern.data());
    const std::string said =
        filledIn(pattern.toStdString(), sentence.parts.size(), [&](std::size_t i) {
            return std::visit(OnScreen{format}, sentence.parts[i]).toStdString();
        });
    QString text = QString::fromStdString(said);
    for (const Sentence& next : sentence.next)
        text += u' ' + sentenceText(next, format);
    return text;
}

} // namespace undermark
