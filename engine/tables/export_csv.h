// SPDX-License-Identifier: GPL-3.0-or-later
//
// The logbook as tables for a spreadsheet: what is in force, one file a table.
//
//   vehicles.csv     vehicle,fuel,capacity_l,left_behind_l,left_behind_sd_l,unusable_l,
//                    unusable_sd_l,zero_at_l,lamp_l,circuit,signal_unit,supply_v,
//                    pull_up_ohm,resolution,currency,mass_kg
//   surge_margins.csv vehicle,mode,surge_margin_l
//   modes.csv        vehicle,mode,stated_l_per_100km,stated_sd_l_per_100km
//   calibrations.csv vehicle,date,zero_at_l,tank,first_lobe_l,second_lobe_l,shape,shape_width_m,
//                    shape_height_m,shape_length_m,shape_corner_m,shape_tilt_deg,
//                    shape_floor_signal,shape_roof_signal,note,total_l,signal,signal2,
//                    signal_sd,readings; of a shape without points there is no row
//   fills.csv        vehicle,id,date,litres,full,to_the_neck,odometer_km,trip_meter_km,
//                    odometer_reset,price_per_l,signal,blend,temperature_c,
//                    displayed_l_per_100km,counted,currency,tank
//   trips.csv        vehicle,id,date,km,mode,idle_min,starts,journal_id,climb_m
//   proofs.csv       vehicle,id,date,kind,litres,litres_sd,left_behind_l,left_behind_sd_l,
//                    signal,km,km_sd,mode,tank
//   tanks.csv        vehicle,id,tank,capacity_l,feed,transfer_l_per_min,left_behind_l,
//                    left_behind_sd_l,unusable_l,unusable_sd_l,zero_at_l,circuit,
//                    signal_unit,supply_v,pull_up_ohm,resolution
//   verifications.csv vehicle,date,measured_sd_l,confidence,passed,tank,note,total_l,signal,
//                    signal2,signal_sd,readings,predicted_l,predicted_sd_l,agrees
//
// Dates are UTC, YYYY-MM-DDTHH:MM:SS; full, to_the_neck, odometer_reset and counted
// are 1, 0 or empty (not known). import_csv.h reads fills.csv and trips.csv back.
#pragma once

#include "engine/base/error.h"
#include "engine/logbook/logbook.h"

#include <filesystem>
#include <span>

namespace undermark {

// Everything in force in the logbook, as of one instant: read again where another
// program wrote meanwhile. Errors: as Logbook::load; busy where it goes on writing.
Result<std::vector<VehicleLog>> readForExport(const Logbook& logbook);

// Makes the folder and the nine files in it, each 0600; all of them or nothing.
// fileAccess where the folder exists already or cannot be made.
Result<void> exportCsv(std::span<const VehicleLog> vehicles, const std::filesystem::path& folder);

} // namespace undermark
