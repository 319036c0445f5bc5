// SPDX-License-Identifier: GPL-3.0-or-later
//
// undermark-cli import FILE.csv: fills, trips or levels from another table. All of it or
// nothing; what is there already is left out; --dry-run shows what would be added.
#include "app/cli/cli_kept_level.h"
#include "app/cli/cli_logbook.h"
#include "app/cli/cli_record.h"

#include <iostream>

namespace undermark {

namespace {

constexpr std::size_t kShown = 12;   // rows of the preview

const std::map<std::string, Volume> kLitres{{"l", Volume::fromLitres(1)},
                                            {"us-gal", Volume::fromUsGallons(1)},
                                            {"imp-gal", Volume::fromImperialGallons(1)}};
const std::map<std::string, Distance> kKm{{"km", Distance::fromKm(1)}, {"mi", Distance::fromMiles(1)}};

const std::map<std::string, DateOrder> kDates{{"ymd", DateOrder::yearFirst},
                                              {"dmy", DateOrder::dayFirst},
                                              {"mdy", DateOrder::monthFirst}};
const std::map<std::string, RateUnit> kRates{{"l-per-100km", RateUnit::litresPer100Km},
                                             {"km-per-l", RateUnit::kmPerLitre},
                                             {"mpg-us", RateUnit::mpgUs},
                                             {"mpg-imp", RateUnit::mpgImperial}};

struct ImportFlags {
    std::string file, kind, litresIn = "l", kmIn = "km", dates = "ymd", rateIn = "l-per-100km",
        temperatureIn = "c";
    std::vector<std::string> columns;
    bool dryRun = false;
};

Result<ImportOptions> importOptions(const ImportFlags& o)
{
    ImportOptions options;
    options.litre = kLitres.at(o.litresIn);
    options.km = kKm.at(o.kmIn);
    options.dates = kDates.at(o.dates);
    options.rate = kRates.at(o.rateIn);
    options.fahrenheit = o.temperatureIn == "f";
    for (const std::string& pair : o.columns) {
        const auto halves = halvesOf(pair);
        if (!halves || halves->first.empty() || halves->second.empty())
            return wrongUse("--column takes OURS=THEIRS", "litres=Quantity", pair);
        options.columns[halves->first] = halves->second;
    }
    return options;
}

std::string lineOf(const Fill& fill)
{
    const Distance km = fill.odometer.value_or(fill.sinceLast.value_or(Distance()));
    return format("%s %8.2f L %-7s %10.1f km", dateText(fill.time).c_str(), fill.volume.litres(),
                  wordOf(fill.extent), km.km());
}

std::string lineOf(const Trip& trip)
{
    return format("%s %10.1f km %s", dateText(trip.time).c_str(), trip.distance.km(), trip.mode.c_str());
}

std::string lineOf(const LevelRecord& level) { return levelLine(level); }

template <class T>
void tell(const ImportPreview<T>& preview, const std::filesystem::path& kept, const ImportFlags& o,
          const CliContext& context)
{
    const std::vector<T>& fresh = preview.fresh;
    if (context.json) {
        Json rows = Json::array(), records = Json::array();
        for (const T& row : fresh) {
            rows.push_back(lineOf(row));
            records.push_back(recordJson(row));
        }
        print({{"added", fresh.size()}, {"duplicates", preview.duplicates}, {"of_others", preview.ofOthers},
               {"dry_run", o.dryRun}, {"backup", kept.empty() ? Json() : Json(kept.string())}, {"rows", rows},
               {"records", records}});
        return;
    }
    std::cout << (o.dryRun ? "Would add " : "Added ")
              << numberOf(fresh.size(), std::is_same_v<T, Fill>   ? "fill"
                                        : std::is_same_v<T, Trip> ? "trip"
                                                                  : "level");
    if (preview.duplicates > 0)
        std::cout << "; " << preview.duplicates << (preview.duplicates == 1 ? " is" : " are")
                  << " in the log already";
    if (preview.ofOthers > 0)
        std::cout << "; " << preview.ofOthers << (preview.ofOthers == 1 ? " is" : " are")
                  << " of other vehicles";
    std::cout << ".\n";
    for (std::size_t i = 0; i < std::min(fresh.size(), kShown); ++i)
        std::cout << "  " << lineOf(fresh[i]) << '\n';
    if (fresh.size() > kShown)
        std::cout << "  … and " << fresh.size() - kShown << " more\n";
    if (!kept.empty())
        std::cout << "The logbook as it was: " << kept.filename().string() << '\n';
}

template <class T>
Result<void> import(Car& car, const ImportOptions& options, const ImportFlags& o,
                    const CliContext& context)
{
    const auto preview = car.previewImport<T>(o.file, options);
    if (!preview)
        return fail(preview.error());
    for (const Sentence& warning : preview->warnings)
        warn(warning);
    ImportDone done;
    if (!o.dryRun) {
        auto taken = car.takeIn(*preview);
        if (!taken)
            return fail(taken.error());
        done = std::move(*taken);
    }
    tell(*preview, done.backup, o, context);
    return {};
}

// As it was told, else by the header. A table that is neither is read as fills, which says
// what it lacks.
Result<TableKind> kindOf(const ImportFlags& o, const ImportOptions& options)
{
    if (!o.kind.empty())
        return o.kind == "fills" ? TableKind::fills : o.kind == "trips" ? TableKind::trips : TableKind::levels;
    const auto kind = tableKind(o.file, options);
    if (kind && *kind == TableKind::points)
        return wrongUse("this is a table of calibration points", "calibrate " + o.file + " --save");
    if (kind && *kind == TableKind::proofs)
        return wrongUse("this is a table of proofs, which only merge takes in",
                        "merge with the other device's bundle, or proof add");
    return kind;
}

Result<void> runImport(const ImportFlags& o, const CliContext& context)
{
    const auto options = importOptions(o);
    if (!options)
        return fail(options.error());
    const auto kind = kindOf(o, *options);
    if (!kind)
        return fail(kind.error());
    auto car = namedCar(context, o.dryRun ? OpenMode::readOnly : OpenMode::readWrite);
    if (!car)
        return fail(car.error());
    if (*kind == TableKind::levels)
        return import<LevelRecord>(*car, *options, o, context);
    return *kind == TableKind::trips ? import<Trip>(*car, *options, o, context)
                                     : import<Fill>(*car, *options, o, context);
}

void addImportOptions(CLI::App& command, ImportFlags& options)
{
    required(addText(command, "file", options.file, "CSV: date,litres,…, date,km,mode,… or date,signal,…",
                     "FILE.csv"));
    addChoice(command, "--kind", options.kind, {"fills", "trips", "levels"},
              "what its rows are; default what its header says");
    addTexts(command, "--column", options.columns,
             "OURS=THEIRS: what the file calls a column; may be repeated", "NAME=NAME");
    addChoice(command, "--litres-in", options.litresIn, {"l", "us-gal", "imp-gal"},
              "what its litres are: l, us-gal, imp-gal");
    addChoice(command, "--km-in", options.kmIn, {"km", "mi"}, "what its kilometres are: km, mi");
    addChoice(command, "--dates", options.dates, {"ymd", "dmy", "mdy"},
              "order of day, month and year: ymd, dmy, mdy");
    addChoice(command, "--rate-in", options.rateIn,
              {"l-per-100km", "km-per-l", "mpg-us", "mpg-imp"},
              "what the car's own figure is: l-per-100km, km-per-l, mpg-us, mpg-imp");
    addChoice(command, "--temperature-in", options.temperatureIn, {"c", "f"}, "c or f");
    addFlag(command, "--dry-run", options.dryRun, "only show what would be added");
}

} // namespace

void addImportCommand(CLI::App& app, CliContext& context)
{
    addCommand<ImportFlags>(app, context, "import",
                            "fills, trips or levels from another table", addImportOptions, runImport);
}

} // namespace undermark
