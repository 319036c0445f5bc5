// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/base/screen_options.h"

#include "app/screen/base/pages.h"
#include "app/screen/base/translations.h"
#include "app/version.h"

#include <QCommandLineParser>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>

namespace undermark {

namespace {

const QSize kSmallest(480, 480);
const QSize kLargest(7680, 7680);

tl::unexpected<Error> refuseOption(const QString& flag, const QString& expected, const QString& found)
{
    return fail(ErrorCode::badInput, Sentence::just("this value cannot be used"),
                {.column = flag.toStdString()}, Sentence::just(expected.toStdString()),
                found.toStdString());
}

QStringList pageKeys()
{
    QStringList keys;
    for (const PageKind& kind : pageKinds())
        keys.append(QString::fromLatin1(kind.key));
    return keys;
}

QStringList languageKeys()
{
    QStringList keys;
    for (const Language& language : languages())
        keys.append(language.key);
    return keys;
}

// "en, de or fr"
QString oneOf(QStringList words)
{
    const QString last = words.takeLast();
    return words.isEmpty() ? last : words.join(u", "_qs) + u" or "_qs + last;
}

Result<QSize> parseSize(const QString& text)
{
    static const QRegularExpression pattern(u"^(\\d{3,4})x(\\d{3,4})$"_qs);
    const QRegularExpressionMatch match = pattern.match(text);
    const QSize size(match.captured(1).toInt(), match.captured(2).toInt());
    if (!match.hasMatch() || size.expandedTo(kSmallest) != size || size.boundedTo(kLargest) != size)
        return refuseOption(u"--size"_qs, u"WIDTHxHEIGHT, each 480 to 7680"_qs, text);
    return size;
}

// metric, us or imperial, as the settings keep them.
Result<QVariantMap> parseUnits(const QString& text)
{
    const auto of = [](const Units& units) {
        return QVariantMap{{u"distance"_qs, int(units.distance)},
                           {u"volume"_qs, int(units.volume)},
                           {u"rate"_qs, int(units.rate)}};
    };
    if (text == u"metric")
        return of({});
    if (text == u"us")
        return of(Units::us());
    if (text == u"imperial")
        return of(Units::imperial());
    return refuseOption(u"--units"_qs, u"metric, us or imperial"_qs, text);
}

// What is said about looks on the command line, for this run.
Result<QVariantMap> parseLooks(const QCommandLineParser& parser)
{
    QVariantMap settings;
    if (parser.isSet(u"night"_qs))
        settings[u"night"_qs] = true;
    if (parser.isSet(u"text"_qs)) {
        bool isNumber = false;
        const int percent = parser.value(u"text"_qs).toInt(&isNumber);
        if (!isNumber || percent < 100 || percent > 200)
            return refuseOption(u"--text"_qs, u"100 to 200"_qs, parser.value(u"text"_qs));
        settings[u"text"_qs] = percent;
    }
    if (parser.isSet(u"units"_qs)) {
        const auto units = parseUnits(parser.value(u"units"_qs));
        if (!units)
            return units;
        settings.insert(*units);
    }
    if (parser.isSet(u"language"_qs)) {
        const QString language = parser.value(u"language"_qs);
        if (!languageKeys().contains(language))
            return refuseOption(u"--language"_qs, oneOf(languageKeys()), language);
        settings[u"language"_qs] = language;
    }
    return settings;
}

} // namespace

Result<LaunchOptions> parseLaunchOptions(const QStringList& arguments)
{
    const QCommandLineOption logbook(u"logbook"_qs, u"Use this logbook."_qs, u"FILE"_qs);
    const QCommandLineOption demo(u"demo"_qs, u"Show the demo car, in a logbook of its own."_qs);
    const QCommandLineOption page(u"page"_qs, u"Open at this page: %1."_qs.arg(oneOf(pageKeys())),
                                  u"PAGE"_qs, pageKeys().first());
    const QCommandLineOption night(u"night"_qs, u"Night colours."_qs);
    const QCommandLineOption size(u"size"_qs, u"Size of the window."_qs, u"WxH"_qs, u"800x480"_qs);
    const QCommandLineOption text(u"text"_qs, u"Size of the letters, 100 to 200."_qs,
                                  u"PERCENT"_qs);
    const QCommandLineOption language(u"language"_qs, oneOf(languageKeys()) + u'.', u"LANGUAGE"_qs);
    const QCommandLineOption speeds(
        u"speeds"_qs, u"Lock entry while moving: a pipe or device with one km/h a line."_qs,
        u"FILE"_qs);
    const QCommandLineOption signal(
        u"source"_qs, u"Where the car's values come from: can:IFACE, slcan:DEV[@KBIT], candump:FILE, "
                      u"asc:FILE (each with ,obd ,j1939 or ,dbc=FILE behind it), nmea:FILE|DEV[@BAUD], "
                      u"lines:FILE|DEV[@BAUD], or a file, pipe or device of one number a line, or two "
                      u"separated by a comma; may be repeated."_qs,
        u"SOURCE"_qs);
    const QCommandLineOption map(u"map"_qs, u"Which signal of a DBC file or frame is what."_qs, u"MAP.json"_qs);
    const QCommandLineOption units(u"units"_qs, u"metric, us or imperial."_qs, u"UNITS"_qs);
    const QCommandLineOption grab(u"grab"_qs, u"Draw the page, save it and leave."_qs,
                                  u"FILE.png"_qs);
    const QCommandLineOption selfTest(u"self-test"_qs,
                                      u"Load every page; fail if anything is warned."_qs);
    QCommandLineParser parser;
    parser.setApplicationDescription(u"How far the fuel goes: to the zero mark, and past it."_qs);
    const QCommandLineOption help = parser.addHelpOption();
    const QCommandLineOption version = parser.addVersionOption();
    parser.addPositionalArgument(u"logbook"_qs, u"The same as --logbook."_qs, u"[logbook]"_qs);
    parser.addOptions({logbook, demo, page, night, size, text, units, language, speeds, signal, map, grab, selfTest});
    if (!parser.parse(arguments))
        return failInput(Sentence::just(parser.errorText().toStdString()));
    const QStringList files = parser.positionalArguments();   // as a file manager names a bundle
    if (files.size() > (parser.isSet(logbook) ? 0 : 1))
        return failInput(Sentence::just("a second logbook"), Sentence::just("one; see --help"),
                         files.last().toStdString());
    if (!files.isEmpty() && !QFileInfo::exists(files.first()))
        return failInput(Sentence::just("an argument that is neither a flag nor a file"),
                         Sentence::just("a logbook that is there; --logbook makes a new one"),
                         files.first().toStdString());

    LaunchOptions options;
    if (parser.isSet(help))
        options.answer = parser.helpText();
    else if (parser.isSet(version))
        options.answer = QString::fromStdString(versionText("undermark")) + u'\n';
    if (parser.isSet(logbook))
        options.source.logbook = parser.value(logbook).toStdString();
    else if (!files.isEmpty())
        options.source.logbook = files.first().toStdString();
    options.source.demo = parser.isSet(demo);
    options.page = parser.value(page);
    if (!pageKeys().contains(options.page))
        return refuseOption(u"--page"_qs, oneOf(pageKeys()), options.page);
    const Result<QSize> wantedSize = parseSize(parser.value(size));
    if (!wantedSize)
        return fail(wantedSize.error());
    options.size = *wantedSize;
    const Result<QVariantMap> looks = parseLooks(parser);
    if (!looks)
        return fail(looks.error());
    options.settings = *looks;
    options.speeds = parser.value(speeds);
    for (const QString& source : parser.values(signal))
        options.live.sources.push_back(source.toStdString());
    options.live.map = parser.value(map).toStdString();
    options.grab = parser.value(grab);
    options.selfTest = parser.isSet(selfTest);
    return options;
}

QString LaunchOptions::settingsFile() const
{
    if (selfTest || !grab.isEmpty() || source.demo)
        return {};
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
           u"/undermark/screen.ini"_qs;
}

void LaunchOptions::applyTo(ScreenSettings& screen) const
{
    for (auto setting = settings.begin(); setting != settings.end(); ++setting)
        screen.override(setting.key(), setting.value());
    // A picture is the same wherever it is made.
    if (!grab.isEmpty() && !settings.contains(u"language"_qs))
        screen.override(u"language"_qs, u"en"_qs);
    if (!grab.isEmpty() && !settings.contains(u"text"_qs))
        screen.override(u"text"_qs, 100);
}

} // namespace undermark
