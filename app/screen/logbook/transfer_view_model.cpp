// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/screen/logbook/transfer_view_model.h"

#include <QFileInfo>

namespace undermark {

namespace {

const Volume kLitres[] = {Volume::fromLitres(1), Volume::fromUsGallons(1),
                          Volume::fromImperialGallons(1)};
const Distance kKm[] = {Distance::fromKm(1), Distance::fromMiles(1)};
constexpr DateOrder kDates[] = {DateOrder::yearFirst, DateOrder::dayFirst, DateOrder::monthFirst};
constexpr RateUnit kRates[] = {RateUnit::litresPer100Km, RateUnit::kmPerLitre, RateUnit::mpgUs,
                               RateUnit::mpgImperial};

QString nameOf(const std::filesystem::path& file)
{
    return QString::fromStdString(file.filename().string());
}

} // namespace

TransferViewModel::TransferViewModel(Car& car, const FileRoots& roots, QObject* parent)
    : QObject(parent), m_car(car),
      m_tables(roots, {QStringLiteral("*.csv")}, QString::fromStdString(car.folder().string())),
      m_logbooks(roots, {QStringLiteral("*.sqlite")}, QString::fromStdString(car.folder().string()))
{
    for (const FileList* files : {&m_tables, &m_logbooks})
        connect(files, &FileList::changed, this, &TransferViewModel::changed);
}

void TransferViewModel::setFormat(const UnitFormat& format)
{
    m_format = format;
    emit changed();
}

void TransferViewModel::go(Stage stage)
{
    m_stage = stage;
    emit changed();
}

void TransferViewModel::refuse(const Error& error)
{
    m_notices = {noticeOf(error)};
    emit changed();
}

void TransferViewModel::warn(const std::vector<Sentence>& warnings)
{
    for (const Sentence& warning : warnings)
        m_notices.push_back({Severity::warning, warning});
}

QList<FilePlace> TransferViewModel::writableSticks() const
{
    QList<FilePlace> sticks;
    for (const FilePlace& place : (m_merging ? m_logbooks : m_tables).places())
        if (place.stick && QFileInfo(place.folder).isWritable())
            sticks.append(place);
    return sticks;
}

QStringList TransferViewModel::sticks() const
{
    QStringList names;
    for (const FilePlace& stick : writableSticks())
        names.append(stick.name);
    return names;
}

void TransferViewModel::exportAll()
{
    exportInto(m_car.folder());
}

void TransferViewModel::exportTo(int stick)
{
    const QList<FilePlace> sticks = writableSticks();
    if (stick >= 0 && stick < sticks.size())
        exportInto(sticks[stick].folder.toStdString());
}

void TransferViewModel::exportInto(const std::filesystem::path& into)
{
    m_notices.clear();
    const auto folder = m_car.exportEverything(into);
    if (!folder)
        return refuse(folder.error());
    m_done = tr("Written: %1. In it are the tables for a spreadsheet, and logbook.sqlite for "
                "another device.")
                 .arg(QString::fromStdString(folder->string()));
    go(Stage::done);
}

void TransferViewModel::chooseFile(bool merging)
{
    m_merging = merging;
    m_notices.clear();
    files()->refresh();
    go(Stage::files);
}

void TransferViewModel::chooseTable()
{
    m_preview = ImportPreview<Fill>();
    chooseFile(false);
}

void TransferViewModel::chooseTrips()
{
    m_preview = ImportPreview<Trip>();
    chooseFile(false);
}

void TransferViewModel::chooseLogbook()
{
    chooseFile(true);
}

void TransferViewModel::pick(int row)
{
    const QString path = files()->pick(row);
    if (path.isEmpty())
        return;
    m_file = path.toStdString();
    m_notices.clear();
    go(m_merging ? Stage::merge : Stage::units);
}

void TransferViewModel::chooseUnit(int choice, int option)
{
    const QList<Choice> all = units();
    if (choice < 0 || choice >= all.size() || option < 0 || option >= all[choice].options.size())
        return;
    m_units[unitsStated()[choice]] = option;
    m_notices.clear();
    emit changed();
}

ImportOptions TransferViewModel::importOptions() const
{
    ImportOptions options;
    options.litre = kLitres[m_units[Litres]];
    options.km = kKm[m_units[Kilometres]];
    options.dates = kDates[m_units[Dates]];
    options.rate = kRates[m_units[Rates]];
    options.fahrenheit = m_units[Temperatures] == 1;
    return options;
}

void TransferViewModel::lookIn()
{
    m_notices.clear();
    std::visit([this]<class T>(ImportPreview<T>& shown) {
        auto preview = m_car.previewImport<T>(m_file, importOptions());
        if (!preview)
            return refuse(preview.error());
        shown = std::move(*preview);
        warn(shown.warnings);
        go(Stage::preview);
    }, m_preview);
}

// What another program wrote since it was shown must not come in twice.
template <class T>
Result<ImportDone> TransferViewModel::taken(const ImportPreview<T>& shown)
{
    const auto now = m_car.previewImport<T>(m_file, importOptions());
    if (!now)
        return fail(now.error());
    if (now->fresh != shown.fresh)
        return failInput(Sentence::of("table or logbook have changed since they were looked at: go "
                                      "back and look again"));
    return m_car.takeIn(shown);
}

void TransferViewModel::import()
{
    m_notices.clear();
    const auto done = std::visit([this](const auto& shown) { return taken(shown); }, m_preview);
    if (!done)
        return refuse(done.error());
    m_done = (ofTrips() ? tr("Added %1 trips. The logbook as it was: %2")
                        : tr("Added %1 fills. The logbook as it was: %2"))
                 .arg(done->added.size())
                 .arg(nameOf(done->backup));
    go(Stage::done);
    emit stored(done->added);
}

void TransferViewModel::merge()
{
    m_notices.clear();
    const auto done = m_car.merge(m_file);
    if (!done)
        return refuse(done.error());
    warn(done->warnings);
    m_done = tr("Took in %1 records, %2 were here already. The logbook as it was: %3")
                 .arg(done->report.added)
                 .arg(done->report.known)
                 .arg(nameOf(done->backup));
    go(Stage::done);
    emit stored({});
}

void TransferViewModel::confirm()
{
    switch (m_stage) {
    case Stage::units:
        return lookIn();
    case Stage::preview:
        if (freshRows() > 0)
            import();
        return;
    case Stage::merge:
        return merge();
    case Stage::start:
    case Stage::files:
    case Stage::done:
        return;
    }
}

void TransferViewModel::back()
{
    m_notices.clear();
    go(m_stage == Stage::preview                              ? Stage::units
       : m_stage == Stage::units || m_stage == Stage::merge   ? Stage::files
                                                              : Stage::start);
}

} // namespace undermark
