// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/typeface.h"
#include "tests/support/test_main.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QTest>

using namespace undermark;

namespace {

// Columns from the first to the last that has ink.
int inkWidth(const QString& text, QFont::Weight weight)
{
    QImage image(900, 80, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QFont font = QGuiApplication::font();
    font.setPixelSize(40);
    font.setWeight(weight);
    QPainter painter(&image);
    painter.setFont(font);
    painter.drawText(20, 60, text);
    painter.end();
    int first = -1;
    int last = -1;
    for (int x = 0; x < image.width(); ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (qGray(image.pixel(x, y)) < 128) {
                first = first < 0 ? x : first;
                last = x;
            }
        }
    }
    return last - first + 1;
}

} // namespace

class TypefaceTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase()
    {
        if (!QFontDatabase::hasFamily("B612"))
            QSKIP("B612 (Debian's fonts-b612) is not installed");
    }
    void theApplicationsFontIsB612() { QCOMPARE(useTypeface(), "B612"); }
    void drawnLettersAreProportional()
    {
        // Ten mono letters are as wide as ten others, up to a letter's width.
        for (const QFont::Weight weight : {QFont::Normal, QFont::Bold}) {
            const int narrow = inkWidth("iiiiiiiiii", weight);
            const int wide = inkWidth("MMMMMMMMMM", weight);
            QVERIFY2(wide > 2 * narrow, qPrintable(QString("%1 %2").arg(narrow).arg(wide)));
        }
    }
    void boldIsDrawnBold()
    {
        QVERIFY(inkWidth("nnnnnnnnnn", QFont::Bold) > inkWidth("nnnnnnnnnn", QFont::Normal));
    }
};

UNDERMARK_TEST(TypefaceTest)
#include "typeface_test.moc"
