// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can be true of a record. Impossible values are badInput, with the field
// in Error::column; merely unlikely ones pass. Texts are UTF-8 of at most 200
// bytes without control characters, but for a DBC file; numbers are finite and at most 1e9.
#pragma once

#include "engine/base/error.h"
#include "engine/base/records.h"

namespace undermark::logbook {

Result<void> validate(const Vehicle& vehicle);
Result<void> validate(const Mode& mode);
Result<void> validate(const Calibration& calibration);
Result<void> validate(const Fill& fill);
Result<void> validate(const Trip& trip);
Result<void> validate(const Proof& proof);
Result<void> validate(const ExtraTank& tank);
Result<void> validate(const VerificationRecord& verification);
Result<void> validate(const LiveSource& source);
Result<void> validate(const OwnPump& pump);
Result<void> validate(const Photo& photo);
Result<void> validate(const HandOverRecord& handOver);
Result<void> validate(const LevelRecord& level);
Result<void> validateTime(Instant time);

} // namespace undermark::logbook
