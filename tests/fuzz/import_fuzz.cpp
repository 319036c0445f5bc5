// SPDX-License-Identifier: GPL-3.0-or-later
//
// Any bytes as a table to import. The first byte says which kind, units and order of
// dates. What is accepted is what the logbook accepts or refuses by field, is written
// by the exporter as one row each, and is found again as known.
#include "engine/logbook/validate.h"
#include "engine/tables/csv_writer.h"
#include "engine/tables/import_csv.h"
#include "tests/fuzz/fuzz_input.h"

using namespace undermark;

namespace {

template <class T>
void look(const Result<Imported<T>>& file)
{
    if (!file)
        return;
    fuzz::require(file->rows.size() == file->lines.size() && file->rows.size() == file->ids.size());
    std::vector<Entry<T>> known;
    for (const T& row : file->rows) {
        (void)logbook::validate(row);
        known.push_back({EntryId{}, Instant{}, row});
    }
    fuzz::require(newRows(*file, {}).size() <= file->rows.size());
    fuzz::require(newRows(*file, known).empty());   // importing twice adds nothing
}

// A text cell comes back from the writer as it was.
void lookAtText(std::string_view typed)
{
    CsvWriter csv("a");
    csv.text(typed);
    std::string_view cell = csv.contents();
    cell.remove_prefix(2);   // the header
    if (cell.starts_with('"'))
        return;              // quoting is the reader's, fuzzed by itself
    fuzz::require(plainText(cell) == typed);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return 0;
    const std::uint8_t how = data[0];
    const fuzz::InputFile input(data + 1, size - 1);
    lookAtText({reinterpret_cast<const char*>(data + 1), std::min<std::size_t>(size - 1, 40)});
    ImportOptions options;
    options.dates = DateOrder(how % 3);
    options.rate = RateUnit(how / 3 % 4);
    options.fahrenheit = how & 64;
    options.litre = how & 32 ? Volume::fromUsGallons(1) : Volume::fromLitres(1);
    options.vehicle = how & 16 ? "Wren" : "";
    if ((how & 192) == 192)
        look(readTable<LevelRecord>(input.path(), options));
    else if (how & 128)
        look(readTable<Trip>(input.path(), options));
    else
        look(readTable<Fill>(input.path(), options));
    return 0;
}
