<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>AheadPage</name>
    <message>
        <source>Stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim of the plan; press for the next one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confidence of each arrival; press for the next one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other route</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalibrationGuide</name>
    <message>
        <source>taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poured in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero mark above drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch every caution once it holds here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much was poured comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level needs its litres and at least one reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the zero mark is, is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 of 7: Prepare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 of 7: Drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 of 7: Base pour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 of 7: Pour in steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 of 7: Full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 of 7: Verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>7 of 7: Review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touch each line once it holds here and now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump out until the pump spits, and stop there. Car level. Read the sender.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour a measured base: what will be under the zero mark. Wait, then read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour a measured amount, wait, read. The more steps, the better the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill to the first click of the nozzle. Type what went in since the last step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a measured amount out again and read: driving goes down, too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the curve and the findings, choose the zero mark, save.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine cold and off, no ignition source, ventilated: petrol vapour ignites.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earthed. Approved containers, filled on the ground, never past their nominal volume.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extinguisher in reach, eyes and skin protected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure relieved before the fuel line is opened; pumping stops at the first spit (a diesel run dry can ruin its injection); the battery is watched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local law comes first; a qualified person works on the fuel system.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rises as litres rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls as litres rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet; five make it sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not settled: read %1 times more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still moving: wait and read again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calibration is in the logbook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken up where it was left: nothing is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save this calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next pour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now fill it up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without verifying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last reading away</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalibrationLevel</name>
    <message>
        <source>Taken so far</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalibrationPages</name>
    <message>
        <source>Leave it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was taken is kept</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ConsumptionView</name>
    <message>
        <source>Two fills to the first click make the first point here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points: what each tank burnt; hollow: kept out as odd. Line and band: what was expected before it, 90 % of tanks lie in the band.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ConsumptionWords</name>
    <message>
        <source>Consumption, tanks: %1, the last one %2; expected before it: %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept out as odd: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillEcho</name>
    <message>
        <source>was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes this fill back out of the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next fill</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillForm</name>
    <message>
        <source>Caution: at a halt only, engine off.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>Log, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HorizonWords</name>
    <message>
        <source>here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel horizon: sure to the zero mark for %1, even %2; sure to dry for %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sure to dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to dry for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to its end</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>IndexDividers</name>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes the colours of the screen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogEntry</name>
    <message>
        <source>As it was written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the last thing written about this entry back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogWords</name>
    <message>
        <source>trip %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counts, as you ruled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out, as you ruled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>levels: %1, zero at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base poured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stalled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proof</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>partial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fill forgotten?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a can filled too?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong odometer?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>odometer lower than before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gallons typed as litres?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miles typed as km?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twice the usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>odometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading on arrival</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>driving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>idling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left behind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the zero mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>Rates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogbookViewModel</name>
    <message>
        <source>%1, taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>driven since the fill before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burnt on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the ruling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is right: count it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo the ruling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo taking back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written here yet. A fill at the pump is the first line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual mix</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Undermark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ModeNames</name>
    <message>
        <source>Town</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open road</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motorway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Special stage</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MovingCover</name>
    <message>
        <source>Caution: the car is moving. Nothing is to be typed while driving: that is for the passenger, or at a halt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I am the passenger</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Press for the next notice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2, next</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoticeWords</name>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Problem</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NowPage</name>
    <message>
        <source>sure to the zero mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NowViewModel</name>
    <message>
        <source>The tank may be dry already: no distance is sure. Fill before driving on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The zero mark may be passed already: no distance to it is sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 since the last fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An estimate: keep a margin. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once the logbook can answer, the distance stands here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NumberForm</name>
    <message>
        <source>guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The decimal mark here is %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Erase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanHere</name>
    <message>
        <source>Plan what is left of the route, with the fuel the car has now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan the whole route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the fuel card</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanStops</name>
    <message>
        <source>What would do, each by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sure: on arrival with 99 % probability. An estimate: keep a margin.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanViewModel</name>
    <message>
        <source>the car is at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the car is on the route comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewest stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lightest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>99.9 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which route?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan: the fuel lasts to %1, %2 are missing to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops: %1, %2 to buy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Risk of running dry: %1 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refuel zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own can</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sure, %2 even</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ %1, full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>risk %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn back by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start with more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry in own cans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burn less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It burns 10 % more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills end %1 earlier</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PumpViewModel</name>
    <message>
        <source>not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>odometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>per %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Partial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use odometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use trip meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not an amount that can be stored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number of 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much went in is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save this fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RangeTable</name>
    <message>
        <source>sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hopeful</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RouteFileList</name>
    <message>
        <source>%1 (folder)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A route is a .csv or .gpx file: points in order, with distances, driving and where fuel can be had.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RouteFiles</name>
    <message>
        <source>One folder up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Screen</name>
    <message>
        <source>Seven Weirs Rally</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScreenSettings</name>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imperial gallons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>km/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mpg US</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mpg imperial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>125 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>150 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>200 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>language</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Which car?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the car</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the demo car</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up this car</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SetupViewModel</name>
    <message>
        <source>My car</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tank, to the first click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under the zero mark, if known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Petrol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diesel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LPG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ethanol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the tank takes is missing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankCurve</name>
    <message>
        <source>This tank has no calibration yet. It takes a drained tank, a measuring can and an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankPage</name>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankReserve</name>
    <message>
        <source>hidden reserve, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence, and what it made of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next proof</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankTable</name>
    <message>
        <source>Fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankViewModel</name>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 above drained, at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>while driving, lower than read by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gauge table needs a calibration first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gauge that draws straight lines between these points is wrong by at most %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decimals: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the zero mark: %1 sure, %2 even, %3 hopeful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the calibration and what is usually left behind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no proof yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More proof of these kinds would not help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 It would leave ± %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never test the reserve on a public road.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TankWords</name>
    <message>
        <source>%1 since drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level curve, points: %1, up to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UnitNames</name>
    <message>
        <source>km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>km/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mpg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ± %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
