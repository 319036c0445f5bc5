// SPDX-License-Identifier: GPL-3.0-or-later
//
// A source with all that is needed to understand it: what a call names becomes what is kept
// with a car, and both are heard alike (live_sources.h).
#pragma once

#include "engine/base/records.h"
#include "engine/signals/source_decoder.h"

#include <filesystem>

namespace undermark {

// The source named, its DBC file and the map (empty: none) read. The device is not opened.
// badInput for what is not understood, fileAccess for a file that cannot be read.
Result<LiveSource> readSource(const std::string& spec, const std::filesystem::path& map);

// How its frames are understood. `mapFile`: the map's name in errors. badInput.
Result<FrameRules> rulesOf(const LiveSource& source, std::optional<FuelKind> fuel, const std::string& mapFile);

// The same with a file or device named from the root, so that it is heard from any folder.
// badInput for what is piped in, which cannot be kept.
Result<LiveSource> fromAnyFolder(LiveSource source);

// The source named as it is kept with a car of this fuel: from any folder, and understood.
// Errors: those of the above.
Result<LiveSource> sourceToKeep(const std::string& spec, const std::filesystem::path& map, FuelKind fuel);

} // namespace undermark
