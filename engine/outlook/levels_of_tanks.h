// SPDX-License-Identifier: GPL-3.0-or-later
//
// The level of all tanks together, from what is told of some and the log. Usable litres and litres
// above the zero marks are sums over the tanks; the spreads of readings, curves and offsets are
// each tank's own, so their variances add; the rates are shared by whatever follows.
//
//  * Nothing told: the log, since all tanks were full (several_tanks.h).
//  * All told: the sum.
//  * A tank that shares its level with the vehicle's own stands where that one does: the same share
//    of what it holds, give or take 3 % of that and 30 % of f (1 - f), f the share (two tanks of
//    unlike shape, their floors not quite level; judgement, no source).
//  * Another that is not told: with the odometer told as well the log answers, held within what was
//    read and what was read and this tank full, which it may leave by 2 sd. Without the odometer
//    the way since the last fill is not known, so the log only bounds it: anything from nothing to
//    what it leaves for this tank is equally likely; without a log from nothing to full.
//
// Simplifications: litres are counted wherever they are, so a tap has to be turned and a transfer
// pump to be given its time before the tank that feeds is dry; one jug's error is not shared.
// Only for the files of engine/outlook.
#pragma once

#include "engine/outlook/level.h"

namespace undermark {

// Whether more than the vehicle's own tank is in use or told of.
bool hasSeveralTanks(const CarKnowledge& car, const Question& question);

// Errors: as findLevel(); notFound for a tank that the car has not.
Result<Level> levelOfTanks(const CarKnowledge& car, const Question& question, const ModeRates& learnt,
                           const RateModel& rates, std::vector<Sentence>& warnings);

} // namespace undermark
