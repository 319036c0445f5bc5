<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>AgeWords</name>
    <message>
        <source>at an unknown time</source>
        <translation>zu unbekannter Zeit</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>gerade eben</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>vor %1 h</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>vor %1 Tagen</translation>
    </message>
</context>
<context>
    <name>AheadPage</name>
    <message>
        <source>Stops</source>
        <translation>Stopps</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre</translation>
    </message>
    <message>
        <source>From here</source>
        <translation>Ab hier</translation>
    </message>
    <message>
        <source>A route is a .csv or .gpx file: points in order, with distances, driving and where fuel can be had.</source>
        <translation>Eine Strecke ist eine Datei .csv oder .gpx: Punkte der Reihe nach, mit Entfernungen, Fahrweise und wo es Kraftstoff gibt.</translation>
    </message>
    <message>
        <source>New route</source>
        <translation>Neue Route</translation>
    </message>
    <message>
        <source>name of the route</source>
        <translation>Name der Route</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Namen übernehmen</translation>
    </message>
</context>
<context>
    <name>BurnsMore</name>
    <message>
        <source>what makes it burn more</source>
        <translation>was es mehr verbrauchen lässt</translation>
    </message>
    <message>
        <source>Take the word</source>
        <translation>Wort übernehmen</translation>
    </message>
    <message>
        <source>Answer for this</source>
        <translation>Dafür antworten</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>More than the log says, since the last fill and ahead.</source>
        <translation>Mehr als das Buch sagt, seit dem letzten Tanken und weiterhin.</translation>
    </message>
    <message>
        <source>because of: %1</source>
        <translation>wegen: %1</translation>
    </message>
    <message>
        <source>It burns as usual again</source>
        <translation>Es verbraucht wieder wie sonst</translation>
    </message>
</context>
<context>
    <name>CalibrationCautions</name>
    <message>
        <source>How is the tank read?</source>
        <translation>Wie wird der Tank abgelesen?</translation>
    </message>
    <message>
        <source>What does the meter show?</source>
        <translation>Was zeigt das Messgerät?</translation>
    </message>
</context>
<context>
    <name>CalibrationPages</name>
    <message>
        <source>Leave it here</source>
        <translation>Hier lassen</translation>
    </message>
    <message>
        <source>What was taken is kept</source>
        <translation>Was aufgenommen ist, bleibt</translation>
    </message>
</context>
<context>
    <name>CarSheetForm</name>
    <message>
        <source>name of the car</source>
        <translation>Name des Wagens</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Namen nehmen</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>Leave it as it was</source>
        <translation>So lassen, wie es war</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>Name: %1</translation>
    </message>
    <message>
        <source>name of the tank</source>
        <translation>Name des Tanks</translation>
    </message>
    <message>
        <source>Add a tank</source>
        <translation>Einen Tank hinzufügen</translation>
    </message>
</context>
<context>
    <name>ConsumptionView</name>
    <message>
        <source>Two fills to the first click make the first point here.</source>
        <translation>Zwei Füllungen bis zum ersten Klick ergeben hier den ersten Punkt.</translation>
    </message>
    <message>
        <source>Points: what each tank burnt; hollow: kept out as odd. Line and band: what was expected before it, 90 % of tanks lie in the band.</source>
        <translation>Punkte: was jede Füllung verbrannte; hohl: als auffällig ausgelassen. Linie und Band: vorher erwartet, 90 % liegen im Band.</translation>
    </message>
</context>
<context>
    <name>ConsumptionWords</name>
    <message>
        <source>Consumption, tanks: %1, the last one %2; expected before it: %3 to %4</source>
        <translation>Verbrauch, Füllungen: %1, die letzte %2; vorher erwartet: %3 bis %4</translation>
    </message>
    <message>
        <source>Kept out as odd: %1.</source>
        <translation>Als auffällig ausgelassen: %1.</translation>
    </message>
</context>
<context>
    <name>CurvePair</name>
    <message>
        <source>Band: there the level is with 90 %. Bar at a point: how far a curve without it misses it.</source>
        <translation>Band: darin liegt der Stand mit 90 %. Strich am Punkt: so weit verfehlt ihn eine Kurve ohne ihn.</translation>
    </message>
</context>
<context>
    <name>EntryBoard</name>
    <message>
        <source>Add it to the log</source>
        <translation>Ins Logbuch schreiben</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>FilePicker</name>
    <message>
        <source>%1 (folder)</source>
        <translation>%1 (Ordner)</translation>
    </message>
</context>
<context>
    <name>FilePlaces</name>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Downloads</translation>
    </message>
</context>
<context>
    <name>FillEcho</name>
    <message>
        <source>was</source>
        <translation>war</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Next fill</source>
        <translation>Nächste Füllung</translation>
    </message>
    <message>
        <source>Takes this fill out of the logbook</source>
        <translation>Streicht diese Füllung aus dem Logbuch</translation>
    </message>
</context>
<context>
    <name>FillForm</name>
    <message>
        <source>Caution: at a halt only, engine off.</source>
        <translation>Vorsicht: nur im Stand, Motor aus.</translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>Log, newest first</source>
        <translation>Logbuch, Neuestes zuerst</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
</context>
<context>
    <name>HorizonWords</name>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>Fuel horizon: sure to the zero mark for %1, even %2; sure to dry for %3</source>
        <translation>Krafthorizont: sicher bis zur Nullmarke %1, hälftig %2; sicher bis trocken %3</translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to dry for %1</source>
        <translation>Krafthorizont dieses Abschnitts: sicher bis trocken %1</translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to its end</source>
        <translation>Krafthorizont dieses Abschnitts: sicher bis zum Ende</translation>
    </message>
    <message>
        <source>zero, sure</source>
        <translation>null, sicher</translation>
    </message>
    <message>
        <source>dry, sure</source>
        <translation>trocken, sicher</translation>
    </message>
</context>
<context>
    <name>IndexDividers</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>Changes the colours of the screen</source>
        <translation>Wechselt die Farben des Schirms</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <comment>The name of this language, in it</comment>
        <translation>Deutsch</translation>
    </message>
</context>
<context>
    <name>LetterPad</name>
    <message>
        <source>abcdefghijklmnopqrstuvwxyz</source>
        <extracomment>The small letters of the language, in their order.</extracomment>
        <translation>abcdefghijklmnopqrstuvwxyzäöüß</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Alles löschen</translation>
    </message>
</context>
<context>
    <name>LevelsTaken</name>
    <message>
        <source>Taken so far. Touch a level to correct it.</source>
        <translation>Bisher genommen. Zum Berichtigen berühren.</translation>
    </message>
</context>
<context>
    <name>LiveSignalCard</name>
    <message>
        <source>the source reads %1</source>
        <translation>die Quelle zeigt %1</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Nehmen</translation>
    </message>
</context>
<context>
    <name>LogEntry</name>
    <message>
        <source>As it was written down</source>
        <translation>Wie es aufgeschrieben wurde</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Takes this entry out of the logbook, with all corrections of it</source>
        <translation>Streicht diesen Eintrag mit allen Berichtigungen aus dem Logbuch</translation>
    </message>
</context>
<context>
    <name>LogWords</name>
    <message>
        <source>trip %1</source>
        <translation>Tageszähler %1</translation>
    </message>
    <message>
        <source>counts, as you ruled</source>
        <translation>zählt, wie entschieden</translation>
    </message>
    <message>
        <source>left out, as you ruled</source>
        <translation>ausgelassen, wie entschieden</translation>
    </message>
    <message>
        <source>levels: %1, zero at %2</source>
        <translation>Stände: %1, null bei %2</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>leergepumpt</translation>
    </message>
    <message>
        <source>base poured</source>
        <translation>Grundmenge</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation>stehengeblieben</translation>
    </message>
    <message>
        <source>past zero</source>
        <translation>unter null gefahren</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>to the neck</source>
        <translation>bis zum Hals</translation>
    </message>
    <message>
        <source>a fill forgotten?</source>
        <translation>Füllung vergessen?</translation>
    </message>
    <message>
        <source>a can filled too?</source>
        <translation>Kanister mitgefüllt?</translation>
    </message>
    <message>
        <source>more than fits</source>
        <translation>mehr als passt</translation>
    </message>
    <message>
        <source>wrong odometer?</source>
        <translation>falscher Kilometerstand?</translation>
    </message>
    <message>
        <source>odometer lower than before</source>
        <translation>Kilometerstand niedriger</translation>
    </message>
    <message>
        <source>gallons typed as litres?</source>
        <translation>Gallonen statt Liter?</translation>
    </message>
    <message>
        <source>miles typed as km?</source>
        <translation>Meilen statt km?</translation>
    </message>
    <message>
        <source>twice the usual</source>
        <translation>doppelt so viel</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <source>put in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>how</source>
        <translation>wie</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation>Tageszähler</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>reading on arrival</source>
        <translation>Messwert bei Ankunft</translation>
    </message>
    <message>
        <source>blend</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Entfernung</translation>
    </message>
    <message>
        <source>driving</source>
        <translation>Fahrweise</translation>
    </message>
    <message>
        <source>idling</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>cold starts</source>
        <translation>Kaltstarts</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>left behind</source>
        <translation>zurückgeblieben</translation>
    </message>
    <message>
        <source>past the zero mark</source>
        <translation>unter der Nullmarke</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>into the tank</source>
        <translation>in den Tank</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>by the car itself</source>
        <translation>vom Auto selbst</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>second reading</source>
        <translation>zweiter Messwert</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>nutzbar</translation>
    </message>
    <message>
        <source>since drained</source>
        <translation>seit leergepumpt</translation>
    </message>
    <message>
        <source>in the tank</source>
        <translation>im Tank</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gesichert</translation>
    </message>
    <message>
        <source>by you</source>
        <translation>von Ihnen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 usable</source>
        <translation>%1 nutzbar</translation>
    </message>
    <message>
        <source>%1 since drained</source>
        <translation>%1 seit leergepumpt</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Messwert %1</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>Rates</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Austausch</translation>
    </message>
    <message>
        <source>Read the logbook again</source>
        <translation>Logbuch noch einmal lesen</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Undermark</source>
        <translation>Undermark</translation>
    </message>
</context>
<context>
    <name>ManyCars</name>
    <message>
        <source>a part of its name; %1</source>
        <translation>ein Teil des Namens; %1</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Anzeigen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Nach Namen suchen</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>Name: %1</translation>
    </message>
    <message>
        <source>Another car</source>
        <translation>Anderer Wagen</translation>
    </message>
    <message>
        <source>is shown</source>
        <translation>wird gezeigt</translation>
    </message>
    <message>
        <source>show</source>
        <translation>zeigen</translation>
    </message>
</context>
<context>
    <name>ModeChoice</name>
    <message>
        <source>How is it driven from here?</source>
        <translation>Wie wird von hier an gefahren?</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>It burns as the log says, not more (towing, a roof box …)</source>
        <translation>Es verbraucht, was das Buch sagt, nicht mehr (Anhänger, Dachbox …)</translation>
    </message>
</context>
<context>
    <name>ModeNames</name>
    <message>
        <source>Town</source>
        <translation>Stadt</translation>
    </message>
    <message>
        <source>Open road</source>
        <translation>Landstraße</translation>
    </message>
    <message>
        <source>Motorway</source>
        <translation>Autobahn</translation>
    </message>
    <message>
        <source>Special stage</source>
        <translation>Sonderprüfung</translation>
    </message>
</context>
<context>
    <name>MovingCover</name>
    <message>
        <source>Caution: the car is moving. Nothing is to be typed while driving: that is for the passenger, or at a halt.</source>
        <translation>Vorsicht: der Wagen fährt. Beim Fahren wird nichts getippt: das macht der Beifahrer, oder man hält an.</translation>
    </message>
    <message>
        <source>I am the passenger</source>
        <translation>Ich bin Beifahrer</translation>
    </message>
</context>
<context>
    <name>NameEntry</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Press for the next notice</source>
        <translation>Drücken für den nächsten Hinweis</translation>
    </message>
    <message>
        <source>%1 of %2, next</source>
        <translation>%1 von %2, weiter</translation>
    </message>
</context>
<context>
    <name>NoticeWords</name>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Problem</translation>
    </message>
</context>
<context>
    <name>NowFigures</name>
    <message>
        <source>Ask again</source>
        <translation>Neu fragen</translation>
    </message>
    <message>
        <source>%1: change</source>
        <translation>%1: ändern</translation>
    </message>
    <message>
        <source>The kind of driving that the distances are for</source>
        <translation>Die Fahrweise, für die die Strecken gelten</translation>
    </message>
    <message>
        <source>Needle at zero now</source>
        <translation>Zeiger jetzt auf null</translation>
    </message>
    <message>
        <source>Tell a reading or the odometer</source>
        <translation>Messwert oder Kilometerstand sagen</translation>
    </message>
    <message>
        <source>Tell a reading</source>
        <translation>Anzeige nennen</translation>
    </message>
    <message>
        <source>Log a fill</source>
        <translation>Füllung eintragen</translation>
    </message>
    <message>
        <source>It was not so</source>
        <translation>So war es nicht</translation>
    </message>
    <message>
        <source>Go on with the calibration</source>
        <translation>Weiter kalibrieren</translation>
    </message>
    <message>
        <source>No fuel went in</source>
        <translation>Es wurde nicht getankt</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Erase</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Säule</translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation>Voraus</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
</context>
<context>
    <name>PlanActions</name>
    <message>
        <source>Write the fuel card</source>
        <translation>Tankkarte schreiben</translation>
    </message>
    <message>
        <source>Save the route</source>
        <translation>Route speichern</translation>
    </message>
    <message>
        <source>Other route</source>
        <translation>Andere Route</translation>
    </message>
</context>
<context>
    <name>PlanChoice</name>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
</context>
<context>
    <name>PlanDeparture</name>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
    <message>
        <source>Cans: approved ones, filled on the ground, poured with the engine off and cold, and only where the event and the place allow it.</source>
        <translation>Kanister: zugelassene, am Boden gefüllt, bei abgestelltem, kaltem Motor eingefüllt, und nur wo Veranstaltung und Ort es erlauben.</translation>
    </message>
</context>
<context>
    <name>PlanFromHere</name>
    <message>
        <source>Plan from here</source>
        <translation>Ab hier planen</translation>
    </message>
    <message>
        <source>Plan the whole route</source>
        <translation>Ganze Strecke planen</translation>
    </message>
    <message>
        <source>The car is at</source>
        <translation>Das Auto ist bei</translation>
    </message>
    <message>
        <source>Filled up here: plan</source>
        <translation>Hier vollgetankt: planen</translation>
    </message>
</context>
<context>
    <name>PlanPumps</name>
    <message>
        <source>Which map?</source>
        <translation>Welche Karte?</translation>
    </message>
    <message>
        <source>A map is an OpenStreetMap extract (.osm.pbf) of the region. It may be old: whether a pump still is there, and is open, is known to who asks there.</source>
        <translation>Eine Karte ist ein OpenStreetMap-Auszug (.osm.pbf) der Gegend. Sie kann alt sein: ob es eine Zapfsäule noch gibt und ob sie offen hat, weiß, wer dort fragt.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>genommen</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Lesen beenden</translation>
    </message>
    <message>
        <source>Another map</source>
        <translation>Andere Karte</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
</context>
<context>
    <name>PlanRoute</name>
    <message>
        <source>Touch a row to change it.</source>
        <translation>Zum Ändern eine Zeile antippen.</translation>
    </message>
    <message>
        <source>name of the route: %1</source>
        <translation>Name der Route: %1</translation>
    </message>
</context>
<context>
    <name>PlanStops</name>
    <message>
        <source>What would do, each by itself</source>
        <translation>Was genügen würde, jedes für sich</translation>
    </message>
    <message>
        <source>sure: on arrival with 99 % probability. An estimate: keep a margin.</source>
        <translation>sicher: bei Ankunft mit 99 % Wahrscheinlichkeit. Eine Schätzung: Spielraum lassen.</translation>
    </message>
</context>
<context>
    <name>RangeTable</name>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>even</source>
        <translation>hälftig</translation>
    </message>
    <message>
        <source>hopeful</source>
        <translation>erhofft</translation>
    </message>
    <message>
        <source>%1: sure %2, even %3, hopeful %4 %5</source>
        <translation>%1: sicher %2, hälftig %3, erhofft %4 %5</translation>
    </message>
</context>
<context>
    <name>ReadingFields</name>
    <message>
        <source>reading, lobe with the pump</source>
        <translation>Wert, Kammer mit Pumpe</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>reading, other lobe</source>
        <translation>Wert, andere Kammer</translation>
    </message>
</context>
<context>
    <name>RouteLegEditor</name>
    <message>
        <source>Row before</source>
        <translation>Zeile davor</translation>
    </message>
    <message>
        <source>Row after</source>
        <translation>Zeile danach</translation>
    </message>
    <message>
        <source>What another distance does to the rows behind; press to change it</source>
        <translation>Was ein anderer Weg mit den Zeilen dahinter macht; drücken ändert es</translation>
    </message>
    <message>
        <source>Add a row after this one</source>
        <translation>Zeile dahinter einfügen</translation>
    </message>
    <message>
        <source>Remove this row</source>
        <translation>Diese Zeile entfernen</translation>
    </message>
    <message>
        <source>name of the row</source>
        <translation>Name der Zeile</translation>
    </message>
    <message>
        <source>pumps of your routes</source>
        <translation>Tankstellen deiner Routen</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Buchstaben</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Namen übernehmen</translation>
    </message>
    <message>
        <source>Whether running dry there ends the event; press to change it</source>
        <translation>Ob Trockenfahren dort das Ende der Veranstaltung ist; drücken, um es zu ändern</translation>
    </message>
</context>
<context>
    <name>Screen</name>
    <message>
        <source>Seven Weirs Rally</source>
        <translation>Seven Weirs Rally</translation>
    </message>
</context>
<context>
    <name>SettingLine</name>
    <message>
        <source>change</source>
        <translation>ändern</translation>
    </message>
</context>
<context>
    <name>SettingsView</name>
    <message>
        <source>car: %1</source>
        <translation>Wagen: %1</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>anderen wählen</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>Which car?</source>
        <translation>Welcher Wagen?</translation>
    </message>
    <message>
        <source>name of the car</source>
        <translation>Name des Wagens</translation>
    </message>
    <message>
        <source>Look at the demo car</source>
        <translation>Beispielwagen ansehen</translation>
    </message>
    <message>
        <source>Set up this car</source>
        <translation>Wagen anlegen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Namen nehmen</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>Name: %1</translation>
    </message>
</context>
<context>
    <name>TankCurve</name>
    <message>
        <source>This tank has no calibration yet. It takes a drained tank, a measuring can and an hour.</source>
        <translation>Dieser Tank ist noch nicht kalibriert. Es braucht einen leergepumpten Tank, eine Messkanne und eine Stunde.</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Kalibrieren</translation>
    </message>
    <message>
        <source>Go on with the calibration that lies open</source>
        <translation>Mit der offenen Kalibrierung weitermachen</translation>
    </message>
    <message>
        <source>Write the hand-over sheet</source>
        <translation>Das Übergabeblatt schreiben</translation>
    </message>
</context>
<context>
    <name>TankPage</name>
    <message>
        <source>Curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Gauge table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Kalibrieren</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>Wagen</translation>
    </message>
</context>
<context>
    <name>TankReserve</name>
    <message>
        <source>hidden reserve, an estimate</source>
        <translation>verborgene Reserve, eine Schätzung</translation>
    </message>
    <message>
        <source>Evidence, and what it made of it</source>
        <translation>Belege, und was sie daraus machten</translation>
    </message>
    <message>
        <source>Next proof</source>
        <translation>Nächster Beleg</translation>
    </message>
    <message>
        <source>It is done: note it</source>
        <translation>Ist getan: eintragen</translation>
    </message>
    <message>
        <source>Note another proof</source>
        <translation>Anderen Beleg eintragen</translation>
    </message>
</context>
<context>
    <name>TankTable</name>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation>Datei schreiben</translation>
    </message>
</context>
<context>
    <name>TankWords</name>
    <message>
        <source>%1 since drained</source>
        <translation>%1 seit leergepumpt</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>Nullmarke</translation>
    </message>
    <message>
        <source>Level curve, points: %1, up to %2</source>
        <translation>Standkurve, Punkte: %1, bis %2</translation>
    </message>
    <message>
        <source>%1 in the lobe with the pump</source>
        <translation>%1 in der Kammer mit der Pumpe</translation>
    </message>
    <message>
        <source>%1 in the other lobe</source>
        <translation>%1 in der anderen Kammer</translation>
    </message>
    <message>
        <source>Curve of the lobe with the pump, up to %1</source>
        <translation>Kurve der Kammer mit der Pumpe, bis %1</translation>
    </message>
    <message>
        <source>Curve of the other lobe, up to %1</source>
        <translation>Kurve der anderen Kammer, bis %1</translation>
    </message>
    <message>
        <source>the lobe with the pump takes</source>
        <translation>die Kammer mit der Pumpe fasst</translation>
    </message>
    <message>
        <source>the other lobe takes</source>
        <translation>die andere Kammer fasst</translation>
    </message>
</context>
<context>
    <name>TellNow</name>
    <message>
        <source>What stands there now? It counts until the log knows more.</source>
        <translation>Was steht dort jetzt? Es zählt, bis das Logbuch mehr weiß.</translation>
    </message>
    <message>
        <source>Drop what was told</source>
        <translation>Gesagtes verwerfen</translation>
    </message>
    <message>
        <source>Answer for this</source>
        <translation>Dafür antworten</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Keep this reading in the log</source>
        <translation>Messwert im Logbuch sichern</translation>
    </message>
</context>
<context>
    <name>TransferView</name>
    <message>
        <source>Export the whole logbook</source>
        <translation>Ganzes Logbuch ausgeben</translation>
    </message>
    <message>
        <source>Take in fills from a table</source>
        <translation>Füllungen aus einer Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Take in another device&apos;s logbook</source>
        <translation>Logbuch eines anderen Geräts übernehmen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Take in trips from a table</source>
        <translation>Fahrten aus einer Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Export to %1</source>
        <translation>Nach %1 ausgeben</translation>
    </message>
</context>
<context>
    <name>UnitNames</name>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>mi</source>
        <translation>mi</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>gal</source>
        <translation>gal</translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation>L/100 km</translation>
    </message>
    <message>
        <source>km/L</source>
        <translation>km/L</translation>
    </message>
    <message>
        <source>mpg</source>
        <translation>mpg</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 ± %2 %3</source>
        <translation>%1 ± %2 %3</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation>%1 je %2</translation>
    </message>
</context>
<context>
    <name>undermark::CalibrationGuide</name>
    <message>
        <source>taken out</source>
        <translation>entnommen</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>zero mark above drained</source>
        <translation>Nullmarke über leergepumpt</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>1 of 7: Prepare</source>
        <translation>1 von 7: Vorbereiten</translation>
    </message>
    <message>
        <source>2 of 7: Drained</source>
        <translation>2 von 7: Leergepumpt</translation>
    </message>
    <message>
        <source>3 of 7: Base pour</source>
        <translation>3 von 7: Grundmenge</translation>
    </message>
    <message>
        <source>4 of 7: Pour in steps</source>
        <translation>4 von 7: In Schritten füllen</translation>
    </message>
    <message>
        <source>5 of 7: Full</source>
        <translation>5 von 7: Voll</translation>
    </message>
    <message>
        <source>6 of 7: Verify</source>
        <translation>6 von 7: Prüfen</translation>
    </message>
    <message>
        <source>7 of 7: Review</source>
        <translation>7 von 7: Durchsehen</translation>
    </message>
    <message>
        <source>Touch each line once it holds here and now.</source>
        <translation>Jede Zeile antippen, sobald sie hier und jetzt gilt.</translation>
    </message>
    <message>
        <source>Pump out until the pump spits, and stop there. Car level. Read the sender.</source>
        <translation>Abpumpen, bis die Pumpe spuckt, dann aufhören. Wagen eben. Geber ablesen.</translation>
    </message>
    <message>
        <source>Pour a measured base: what will be under the zero mark. Wait, then read.</source>
        <translation>Gemessene Grundmenge einfüllen: was unter der Nullmarke liegt. Warten, dann ablesen.</translation>
    </message>
    <message>
        <source>Pour a measured amount, wait, read. The more steps, the better the curve.</source>
        <translation>Gemessene Menge einfüllen, warten, ablesen. Mehr Schritte, bessere Kurve.</translation>
    </message>
    <message>
        <source>Fill to the first click of the nozzle. Type what went in since the last step.</source>
        <translation>Bis zum ersten Klick volltanken. Eintippen, was seit dem letzten Schritt hineinging.</translation>
    </message>
    <message>
        <source>Take a measured amount out again and read: driving goes down, too.</source>
        <translation>Eine gemessene Menge wieder entnehmen und ablesen: Fahren geht auch abwärts.</translation>
    </message>
    <message>
        <source>Look at the curve and the findings, choose the zero mark, save.</source>
        <translation>Kurve und Befunde ansehen, Nullmarke wählen, sichern.</translation>
    </message>
    <message>
        <source>Engine cold and off, no ignition source, ventilated: petrol vapour ignites.</source>
        <translation>Motor kalt und aus, keine Zündquelle, belüftet: Benzindampf zündet.</translation>
    </message>
    <message>
        <source>Earthed. Approved containers, filled on the ground, never past their nominal volume.</source>
        <translation>Geerdet. Zugelassene Behälter, am Boden gefüllt, nie über ihr Nennvolumen.</translation>
    </message>
    <message>
        <source>Extinguisher in reach, eyes and skin protected.</source>
        <translation>Feuerlöscher in Reichweite, Augen und Haut geschützt.</translation>
    </message>
    <message>
        <source>Pressure relieved before the fuel line is opened; pumping stops at the first spit (a diesel run dry can ruin its injection); the battery is watched.</source>
        <translation>Druck abgelassen, bevor die Leitung geöffnet wird; beim ersten Spucken wird aufgehört (ein leergelaufener Diesel kann seine Einspritzung verderben); die Batterie wird beobachtet.</translation>
    </message>
    <message>
        <source>Local law comes first; a qualified person works on the fuel system.</source>
        <translation>Örtliches Recht geht vor; an der Kraftstoffanlage arbeitet eine Fachkraft.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>Stände</translation>
    </message>
    <message>
        <source>signal</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>rises as litres rise</source>
        <translation>steigt mit den Litern</translation>
    </message>
    <message>
        <source>falls as litres rise</source>
        <translation>fällt, wenn die Liter steigen</translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation>ein Punkt verfehlt die Kurve um</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>none yet; five make it sure</source>
        <translation>noch keine; fünf machen es sicher</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>beruhigt</translation>
    </message>
    <message>
        <source>not settled: read %1 times more</source>
        <translation>nicht beruhigt: noch %1-mal ablesen</translation>
    </message>
    <message>
        <source>still moving: wait and read again</source>
        <translation>noch in Bewegung: warten, neu ablesen</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>leergepumpt</translation>
    </message>
    <message>
        <source>All of it holds</source>
        <translation>Alles erfüllt</translation>
    </message>
    <message>
        <source>Save this calibration</source>
        <translation>Kalibrierung sichern</translation>
    </message>
    <message>
        <source>Take this reading</source>
        <translation>Wert übernehmen</translation>
    </message>
    <message>
        <source>Next pour</source>
        <translation>Nächste Menge</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Now fill it up</source>
        <translation>Jetzt volltanken</translation>
    </message>
    <message>
        <source>Without verifying</source>
        <translation>Ohne Prüfung</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Schritt zurück</translation>
    </message>
    <message>
        <source>Last reading away</source>
        <translation>Letzten Wert weg</translation>
    </message>
    <message>
        <source>reading, lobe with the pump</source>
        <translation>Wert, Kammer mit Pumpe</translation>
    </message>
    <message>
        <source>reading, other lobe</source>
        <translation>Wert, andere Kammer</translation>
    </message>
    <message>
        <source>one lobe holds, if known</source>
        <translation>eine Kammer fasst, falls bekannt</translation>
    </message>
    <message>
        <source>the other lobe holds</source>
        <translation>die andere Kammer fasst</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>waiting for the first reading</source>
        <translation>wartet auf den ersten Wert</translation>
    </message>
    <message>
        <source>silent for %1 s: look at its cable</source>
        <translation>seit %1 s stumm: nach dem Kabel sehen</translation>
    </message>
    <message>
        <source>the source has ended</source>
        <translation>die Quelle ist zu Ende</translation>
    </message>
    <message>
        <source>settling: %1 s more</source>
        <translation>beruhigt sich: noch %1 s</translation>
    </message>
    <message>
        <source>still moving</source>
        <translation>bewegt sich noch</translation>
    </message>
    <message>
        <source> (%1 %2)</source>
        <translation> (%1 %2)</translation>
    </message>
    <message>
        <source>source, mean of %1</source>
        <translation>Quelle, Mittel aus %1</translation>
    </message>
    <message>
        <source>known to ±</source>
        <translation>bekannt auf ±</translation>
    </message>
    <message>
        <source>drift a minute</source>
        <translation>Drift je Minute</translation>
    </message>
    <message>
        <source>lines not read</source>
        <translation>nicht gelesene Zeilen</translation>
    </message>
    <message>
        <source>What each lobe holds tells how far their unequal emptying can mislead.</source>
        <translation>Was jede Kammer fasst, sagt, wie weit ungleiches Leeren täuschen kann.</translation>
    </message>
    <message>
        <source>One sender</source>
        <translation>Ein Geber</translation>
    </message>
    <message>
        <source>Saddle tank, senders in series</source>
        <translation>Satteltank, Geber in Reihe</translation>
    </message>
    <message>
        <source>Saddle tank, two signals</source>
        <translation>Satteltank, zwei Signale</translation>
    </message>
    <message>
        <source>%1, other lobe %2</source>
        <translation>%1, andere Kammer %2</translation>
    </message>
    <message>
        <source>none yet; one that has settled is enough</source>
        <translation>noch keiner; ein ruhiger genügt</translation>
    </message>
    <message>
        <source>lobes that empty unequally</source>
        <translation>Kammern, die sich ungleich leeren</translation>
    </message>
    <message>
        <source>a level is up to ± %1 less sure, most so half full</source>
        <translation>ein Stand ist bis zu ± %1 unsicherer, am meisten halb voll</translation>
    </message>
    <message>
        <source>Correct a level</source>
        <translation>Einen Stand berichtigen</translation>
    </message>
    <message>
        <source>Type it as it was. A reading typed here takes the place of all at this level.</source>
        <translation>So eintippen, wie es war. Ein Messwert von hier ersetzt alle bei diesem Stand.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Berichtigung speichern</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Leave it as it was</source>
        <translation>So lassen, wie es war</translation>
    </message>
    <message>
        <source>%1, the first: %2</source>
        <translation>%1, die erste: %2</translation>
    </message>
    <message>
        <source>Take up the last one</source>
        <translation>Letzte wieder aufnehmen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>undermark::CarList</name>
    <message>
        <source>Which cars?</source>
        <translation>Welche Wagen?</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Calibrated over a year ago</source>
        <translation>Vor über einem Jahr kalibriert</translation>
    </message>
    <message>
        <source>%1 of %2 cars</source>
        <translation>%1 von %2 Wagen</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>kalibriert %1</translation>
    </message>
    <message>
        <source>handed over on %1</source>
        <translation>übergeben am %1</translation>
    </message>
</context>
<context>
    <name>undermark::CarSheet</name>
    <message>
        <source>tank, to the first click</source>
        <translation>Tank, bis zum ersten Klick</translation>
    </message>
    <message>
        <source>under the zero mark, if known</source>
        <translation>unter der Nullmarke, falls bekannt</translation>
    </message>
    <message>
        <source>left behind when the pump spits</source>
        <translation>bleibt, wenn die Pumpe spuckt</translation>
    </message>
    <message>
        <source>left when the engine starves</source>
        <translation>bleibt, wenn der Motor stirbt</translation>
    </message>
    <message>
        <source>usable when the lamp lights</source>
        <translation>nutzbar, wenn die Lampe leuchtet</translation>
    </message>
    <message>
        <source>supply of the sender</source>
        <translation>Speisung des Gebers</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>pull-up of the sender</source>
        <translation>Vorwiderstand des Gebers</translation>
    </message>
    <message>
        <source>ohm</source>
        <translation>Ohm</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>sender</source>
        <translation>Geber</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie er ist</translation>
    </message>
    <message>
        <source>resistive</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>share of supply</source>
        <translation>Anteil der Speisung</translation>
    </message>
    <message>
        <source>per cent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>the meter shows</source>
        <translation>das Messgerät zeigt</translation>
    </message>
    <message>
        <source>Make %1 the car&apos;s capacity</source>
        <translation>%1 als Inhalt des Wagens übernehmen</translation>
    </message>
    <message>
        <source>mass as driven, for climbs</source>
        <translation>Masse im Fahrbetrieb, für Steigungen</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>pumped over, in a minute</source>
        <translation>umgepumpt, in einer Minute</translation>
    </message>
    <message>
        <source>how it feeds</source>
        <translation>wie er speist</translation>
    </message>
    <message>
        <source>level with the car&apos;s own</source>
        <translation>auf gleicher Höhe mit dem des Wagens</translation>
    </message>
    <message>
        <source>by a tap</source>
        <translation>über einen Hahn</translation>
    </message>
    <message>
        <source>pumped over into the car&apos;s own</source>
        <translation>umgepumpt in den des Wagens</translation>
    </message>
    <message>
        <source>Second tank</source>
        <translation>Zweiter Tank</translation>
    </message>
    <message>
        <source>Make %1 the tank&apos;s capacity</source>
        <translation>%1 als Inhalt des Tanks übernehmen</translation>
    </message>
</context>
<context>
    <name>undermark::EntryForm</name>
    <message>
        <source>driven past the zero mark</source>
        <translation>unter der Nullmarke gefahren</translation>
    </message>
    <message>
        <source>driven</source>
        <translation>gefahren</translation>
    </message>
    <message>
        <source>pumped out, from the zero mark</source>
        <translation>abgepumpt, ab der Nullmarke</translation>
    </message>
    <message>
        <source>poured in, to the zero mark</source>
        <translation>eingefüllt, bis zur Nullmarke</translation>
    </message>
    <message>
        <source>measured left behind</source>
        <translation>zurückgeblieben, gemessen</translation>
    </message>
    <message>
        <source>reading before, if not zero</source>
        <translation>Messwert vorher, wenn nicht null</translation>
    </message>
    <message>
        <source>that was</source>
        <translation>das war</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>idling, if any</source>
        <translation>Leerlauf, falls welcher</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>cold starts, if known</source>
        <translation>Kaltstarts, falls bekannt</translation>
    </message>
    <message>
        <source>A proof of the hidden reserve</source>
        <translation>Ein Beleg für die verborgene Reserve</translation>
    </message>
    <message>
        <source>A trip</source>
        <translation>Eine Fahrt</translation>
    </message>
    <message>
        <source>Caution: note what happened. Never test the reserve on a public road.</source>
        <translation>Vorsicht: eintragen, was geschehen ist. Die Reserve nie auf öffentlicher Straße erproben.</translation>
    </message>
    <message>
        <source>Caution: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers on the ground, extinguisher in reach; by a qualified person.</source>
        <translation>Vorsicht: Benzindampf entzündet sich. Motor kalt und aus, keine Zündquelle, gelüftet, geerdet, zugelassene Behälter am Boden, Löscher in Reichweite; durch eine Fachkraft.</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Leergepumpt</translation>
    </message>
    <message>
        <source>Base poured anew</source>
        <translation>Grundmenge neu eingefüllt</translation>
    </message>
    <message>
        <source>Stalled past zero</source>
        <translation>Unter null stehengeblieben</translation>
    </message>
    <message>
        <source>Past zero, still running</source>
        <translation>Unter null, lief noch</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Übliche Mischung</translation>
    </message>
</context>
<context>
    <name>undermark::FileList</name>
    <message>
        <source>One folder up</source>
        <translation>Einen Ordner höher</translation>
    </message>
    <message>
        <source>Undermark&apos;s own folder</source>
        <translation>Undermarks eigener Ordner</translation>
    </message>
</context>
<context>
    <name>undermark::FuelCard</name>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
</context>
<context>
    <name>undermark::LogbookViewModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>driven since the fill before</source>
        <translation>gefahren seit der Füllung davor</translation>
    </message>
    <message>
        <source>burnt on it</source>
        <translation>dabei verbraucht</translation>
    </message>
    <message>
        <source>Lift the ruling</source>
        <translation>Entscheid aufheben</translation>
    </message>
    <message>
        <source>It is right: count it</source>
        <translation>Stimmt: zählen</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Undo the correction</source>
        <translation>Berichtigung zurücknehmen</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Füllungen</translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation>Belege</translation>
    </message>
    <message>
        <source>Nothing is written here yet. A fill at the pump is the first line.</source>
        <translation>Hier steht noch nichts. Die erste Zeile ist eine Füllung an der Säule.</translation>
    </message>
    <message>
        <source>usual mix</source>
        <translation>übliche Mischung</translation>
    </message>
    <message>
        <source>Undo the import</source>
        <translation>Übernahme zurücknehmen</translation>
    </message>
    <message>
        <source>%1, undone</source>
        <translation>%1, zurückgenommen</translation>
    </message>
    <message>
        <source>Undo taking out</source>
        <translation>Streichen zurücknehmen</translation>
    </message>
    <message>
        <source>As before, it is: %1</source>
        <translation>Wie zuvor gilt: %1</translation>
    </message>
    <message>
        <source>Undo the entry</source>
        <translation>Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>A forgotten fill</source>
        <translation>Vergessene Tankung</translation>
    </message>
    <message>
        <source>A trip</source>
        <translation>Eine Fahrt</translation>
    </message>
    <message>
        <source>A proof</source>
        <translation>Ein Beleg</translation>
    </message>
</context>
<context>
    <name>undermark::NowLive</name>
    <message>
        <source>source silent for %1 s</source>
        <translation>Quelle stumm seit %1 s</translation>
    </message>
    <message>
        <source>by consumption alone; sender %1 s ago</source>
        <translation>nur nach Verbrauch; Geber vor %1 s</translation>
    </message>
    <message>
        <source>sender %1 s ago</source>
        <translation>Geber vor %1 s</translation>
    </message>
    <message>
        <source>%1 %2 went in: log it</source>
        <translation>%1 %2 getankt: eintragen</translation>
    </message>
    <message>
        <source>%1, by the speed: take it</source>
        <translation>%1, nach der Geschwindigkeit: übernehmen</translation>
    </message>
    <message>
        <source>a sender without a calibration</source>
        <translation>ein Geber ohne Kalibrierung</translation>
    </message>
    <message>
        <source>listening to the sender</source>
        <translation>der Geber wird abgehört</translation>
    </message>
    <message>
        <source>the level has risen: does it stay? sender %1 s ago</source>
        <translation>der Stand ist gestiegen: bleibt er? Geber vor %1 s</translation>
    </message>
</context>
<context>
    <name>undermark::NowLoad</name>
    <message>
        <source>towing</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>%1 % more</source>
        <translation>%1 % mehr</translation>
    </message>
    <message>
        <source>%1: %2 % more</source>
        <translation>%1: %2 % mehr</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>more than the log says</source>
        <translation>mehr als das Buch sagt</translation>
    </message>
</context>
<context>
    <name>undermark::NowTell</name>
    <message>
        <source>odometer at the zero mark</source>
        <translation>Kilometerstand an der Nullmarke</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>odometer, %1</source>
        <translation>Kilometerstand, %1</translation>
    </message>
    <message>
        <source>reading, %1</source>
        <translation>Messwert, %1</translation>
    </message>
    <message>
        <source>needle at zero, %1</source>
        <translation>Zeiger auf null, %1</translation>
    </message>
    <message>
        <source>Note as a proof: %1 past zero and still running</source>
        <translation>Als Beleg eintragen: %1 unter null und lief noch</translation>
    </message>
</context>
<context>
    <name>undermark::NowViewModel</name>
    <message>
        <source>below zero</source>
        <translation>unter null</translation>
    </message>
    <message>
        <source>above zero</source>
        <translation>über null</translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation>verborgene Reserve</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>An estimate: keep a margin. %1</source>
        <translation>Eine Schätzung: Spielraum lassen. %1</translation>
    </message>
    <message>
        <source>Once the logbook can answer, the distance stands here.</source>
        <translation>Sobald das Logbuch antworten kann, steht hier die Strecke.</translation>
    </message>
    <message>
        <source>log, %1</source>
        <translation>Logbuch, %1</translation>
    </message>
    <message>
        <source>sure to the zero mark</source>
        <translation>sicher bis zur Nullmarke</translation>
    </message>
    <message>
        <source>sure past the zero mark, still</source>
        <translation>sicher unter der Nullmarke, noch</translation>
    </message>
    <message>
        <source>sure past the zero mark</source>
        <translation>sicher unter der Nullmarke</translation>
    </message>
    <message>
        <source>past zero</source>
        <translation>unter null</translation>
    </message>
    <message>
        <source>to zero</source>
        <translation>bis null</translation>
    </message>
    <message>
        <source>to dry</source>
        <translation>bis trocken</translation>
    </message>
    <message>
        <source>since fill</source>
        <translation>seit dem Tanken</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Üblicher Mix</translation>
    </message>
    <message>
        <source>Fill the tank, then the distance stands here</source>
        <translation>Erst volltanken, dann steht hier die Strecke</translation>
    </message>
    <message>
        <source>The logbook cannot be read</source>
        <translation>Das Logbuch ist nicht lesbar</translation>
    </message>
    <message>
        <source>hidden reserve, assumed</source>
        <translation>versteckte Reserve, angenommen</translation>
    </message>
    <message>
        <source>Fill up to the first click and log it, or tell what the gauge reads now.</source>
        <translation>Bis zum ersten Klick volltanken und eintragen, oder nennen, was die Anzeige jetzt zeigt.</translation>
    </message>
    <message>
        <source>Fill up to the first click and log it. The more fills, the surer the distance.</source>
        <translation>Bis zum ersten Klick volltanken und eintragen. Je mehr Füllungen, desto sicherer die Strecke.</translation>
    </message>
    <message>
        <source>burns more</source>
        <translation>braucht mehr</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>level kept, %1</source>
        <translation>Stand gesichert, %1</translation>
    </message>
</context>
<context>
    <name>undermark::NumberForm</name>
    <message>
        <source>guess</source>
        <translation>geraten</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The decimal mark here is %1</source>
        <translation>Das Komma ist hier: %1</translation>
    </message>
</context>
<context>
    <name>undermark::PlanAnswer</name>
    <message>
        <source>Cost %1.</source>
        <translation>Kosten %1.</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>Säule</translation>
    </message>
    <message>
        <source>refuel zone</source>
        <translation>Tankzone</translation>
    </message>
    <message>
        <source>own can</source>
        <translation>eigener Kanister</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>leg %1</source>
        <translation>Teilstück %1</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Üblicher Mix</translation>
    </message>
    <message>
        <source>to the next stop %1</source>
        <translation>bis zum nächsten Halt %1</translation>
    </message>
    <message>
        <source>on: %1, needs %2</source>
        <translation>weiter: %1, braucht %2</translation>
    </message>
    <message>
        <source>leaves with %1</source>
        <translation>fährt mit %1 weiter</translation>
    </message>
    <message>
        <source>sure %1, even %2</source>
        <translation>sicher %1, hälftig %2</translation>
    </message>
    <message>
        <source>fill up, %1</source>
        <translation>volltanken, %1</translation>
    </message>
    <message>
        <source>take on %1</source>
        <translation>%1 tanken</translation>
    </message>
    <message>
        <source>Cost %1, of which stopping counts as %2.</source>
        <translation>Kosten %1, davon zählt das Anhalten %2.</translation>
    </message>
    <message>
        <source>Against the plan before: %1</source>
        <translation>Gegen den Plan davor: %1</translation>
    </message>
    <message>
        <source>crew with cans</source>
        <translation>Begleiter mit Kanistern</translation>
    </message>
</context>
<context>
    <name>undermark::PlanDay</name>
    <message>
        <source>leaves at</source>
        <translation>Abfahrt um</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>goes on average</source>
        <translation>fährt im Mittel</translation>
    </message>
    <message>
        <source>%1/h</source>
        <translation>%1/h</translation>
    </message>
    <message>
        <source>own cans, full</source>
        <translation>eigene Kanister, voll</translation>
    </message>
    <message>
        <source>cans of the crew, full</source>
        <translation>Kanister der Begleiter, voll</translation>
    </message>
    <message>
        <source>in each can</source>
        <translation>in jedem Kanister</translation>
    </message>
    <message>
        <source>the load adds</source>
        <translation>die Ladung kostet</translation>
    </message>
    <message>
        <source>%1 per 100 %2</source>
        <translation>%1 auf 100 %2</translation>
    </message>
    <message>
        <source>leaves %1, %2 %3/h</source>
        <translation>Abfahrt %1, %2 %3/h</translation>
    </message>
    <message>
        <source>own cans: %1</source>
        <translation>eigene Kanister: %1</translation>
    </message>
    <message>
        <source>cans of the crew: %1</source>
        <translation>Kanister der Begleiter: %1</translation>
    </message>
    <message>
        <source>with a load</source>
        <translation>mit Ladung</translation>
    </message>
    <message>
        <source>no time of departure, no cans, no load</source>
        <translation>keine Abfahrtszeit, keine Kanister, keine Ladung</translation>
    </message>
</context>
<context>
    <name>undermark::PlanHere</name>
    <message>
        <source>the car is at</source>
        <translation>der Wagen ist bei</translation>
    </message>
    <message>
        <source>taken on there</source>
        <translation>dort getankt</translation>
    </message>
    <message>
        <source>usable in the tank now</source>
        <translation>nutzbar im Tank jetzt</translation>
    </message>
    <message>
        <source>Fuel as Now says</source>
        <translation>Kraftstoff, wie „Jetzt“ sagt</translation>
    </message>
    <message>
        <source>Fuel as planned</source>
        <translation>Kraftstoff wie geplant</translation>
    </message>
    <message>
        <source>Starts with a tank that was filled up here.</source>
        <translation>Start mit einem Tank, der hier vollgetankt wurde.</translation>
    </message>
    <message>
        <source>Starts with the fuel that was typed here.</source>
        <translation>Start mit dem Kraftstoff, der hier eingegeben wurde.</translation>
    </message>
    <message>
        <source>Starts with what the plan expects here, and what was taken on.</source>
        <translation>Start mit dem, was der Plan hier erwartet, und dem Getankten.</translation>
    </message>
    <message>
        <source>Starts with what the plan expects here.</source>
        <translation>Start mit dem, was der Plan hier erwartet.</translation>
    </message>
    <message>
        <source>Starts with the fuel that Now says, and what was taken on.</source>
        <translation>Start mit dem Kraftstoff, den „Jetzt“ nennt, und dem Getankten.</translation>
    </message>
    <message>
        <source>Starts with the reading that was typed here.</source>
        <translation>Beginnt mit dem Messwert, der hier eingegeben wurde.</translation>
    </message>
</context>
<context>
    <name>undermark::PlanMap</name>
    <message>
        <source>pumps from a map: none chosen</source>
        <translation>Zapfsäulen aus einer Karte: keine gewählt</translation>
    </message>
    <message>
        <source>pumps from a map: %1 of %2</source>
        <translation>Zapfsäulen aus einer Karte: %1 von %2</translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation>%1, %2 ausgelassen</translation>
    </message>
    <message>
        <source>%1 % of the map is read</source>
        <translation>%1 % der Karte sind gelesen</translation>
    </message>
    <message>
        <source>%1 there and back</source>
        <translation>%1 hin und zurück</translation>
    </message>
    <message>
        <source>no road to it is known: estimated</source>
        <translation>keine Straße dorthin bekannt: geschätzt</translation>
    </message>
    <message>
        <source>hours not known</source>
        <translation>Öffnungszeit nicht bekannt</translation>
    </message>
    <message>
        <source>your own note</source>
        <translation>eigener Eintrag</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 nach %2</translation>
    </message>
</context>
<context>
    <name>undermark::PlanViewModel</name>
    <message>
        <source>Which route?</source>
        <translation>Welche Strecke?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Starts with the fuel that Now says: %1.</source>
        <translation>Beginnt mit dem Kraftstoff, den „Jetzt“ nennt: %1.</translation>
    </message>
</context>
<context>
    <name>undermark::PlanWhatIfs</name>
    <message>
        <source>%1 is closed</source>
        <translation>%1 hat zu</translation>
    </message>
    <message>
        <source>It burns 10 % more</source>
        <translation>10 % mehr Verbrauch</translation>
    </message>
    <message>
        <source>Fills end %1 earlier</source>
        <translation>Füllungen enden %1 früher</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>keine Antwort</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>take on %1</source>
        <translation>%1 tanken</translation>
    </message>
    <message>
        <source>Any one stop is closed</source>
        <translation>Irgendein Halt ist zu</translation>
    </message>
</context>
<context>
    <name>undermark::PlanWishes</name>
    <message>
        <source>Least cost</source>
        <translation>Geringste Kosten</translation>
    </message>
    <message>
        <source>Fewest stops</source>
        <translation>Wenigste Stopps</translation>
    </message>
    <message>
        <source>Least time</source>
        <translation>Kürzeste Zeit</translation>
    </message>
    <message>
        <source>Lightest</source>
        <translation>Am leichtesten</translation>
    </message>
    <message>
        <source>95 %</source>
        <translation>95 %</translation>
    </message>
    <message>
        <source>99 %</source>
        <translation>99 %</translation>
    </message>
    <message>
        <source>99.9 %</source>
        <translation>99,9 %</translation>
    </message>
    <message>
        <source>aim of the plan</source>
        <translation>Ziel des Plans</translation>
    </message>
    <message>
        <source>sure on each arrival</source>
        <translation>sicher bei jeder Ankunft</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>dry on a timed section</source>
        <translation>trocken auf einer Wertungsstrecke</translation>
    </message>
    <message>
        <source>as elsewhere</source>
        <translation>wie sonst</translation>
    </message>
    <message>
        <source>ten times rarer</source>
        <translation>zehnmal seltener</translation>
    </message>
    <message>
        <source>a stop counts as</source>
        <translation>ein Halt zählt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>the price of 1 litre</source>
        <translation>den Preis von 1 Liter</translation>
    </message>
    <message>
        <source>the price of 5 litres</source>
        <translation>den Preis von 5 Litern</translation>
    </message>
</context>
<context>
    <name>undermark::PumpViewModel</name>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>fuel put in</source>
        <translation>eingefüllt</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation>Tageszähler</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Voll</translation>
    </message>
    <message>
        <source>Partial</source>
        <translation>Teilweise</translation>
    </message>
    <message>
        <source>To the neck</source>
        <translation>Bis zum Hals</translation>
    </message>
    <message>
        <source>Use odometer</source>
        <translation>Gesamt-zähler</translation>
    </message>
    <message>
        <source>Use trip meter</source>
        <translation>Tages-zähler</translation>
    </message>
    <message>
        <source>Save this fill</source>
        <translation>Füllung sichern</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Berichtigung sichern</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation>verborgene Reserve</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Auf %1 setzen</translation>
    </message>
    <message>
        <source>paid in all</source>
        <translation>bezahlt</translation>
    </message>
    <message>
        <source>of it into cans</source>
        <translation>davon in Kanister</translation>
    </message>
    <message>
        <source>gauge before</source>
        <translation>Anzeige vorher</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>getankt</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>Tage her</translation>
    </message>
    <message>
        <source>Back to the litres</source>
        <translation>Zurück zu den Litern</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Use price per %1</source>
        <translation>Preis je %1</translation>
    </message>
    <message>
        <source>Use paid in all</source>
        <translation>Bezahlt angeben</translation>
    </message>
    <message>
        <source>Yes, save the guesses</source>
        <translation>Ja, so sichern</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 saved, into %2</source>
        <translation>%1 gesichert, in %2</translation>
    </message>
    <message>
        <source>%1 saved</source>
        <translation>%1 gesichert</translation>
    </message>
</context>
<context>
    <name>undermark::RouteEditModel</name>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>row %1 of %2, at %3 %4</source>
        <translation>Zeile %1 von %2, bei %3 %4</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>rows behind move along</source>
        <translation>Zeilen dahinter rücken mit</translation>
    </message>
    <message>
        <source>rows behind stay</source>
        <translation>Zeilen dahinter bleiben</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Üblicher Mix</translation>
    </message>
    <message>
        <source>No fuel</source>
        <translation>Kein Kraftstoff</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Zapfsäule</translation>
    </message>
    <message>
        <source>Refuel zone</source>
        <translation>Tankzone</translation>
    </message>
    <message>
        <source>Own can</source>
        <translation>Eigener Kanister</translation>
    </message>
    <message>
        <source>Take the numbers</source>
        <translation>Zahlen übernehmen</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
    <message>
        <source>Drop the numbers</source>
        <translation>Zahlen verwerfen</translation>
    </message>
    <message>
        <source>Undo the change</source>
        <translation>Änderung zurück</translation>
    </message>
    <message>
        <source>New row %1</source>
        <translation>Neue Zeile %1</translation>
    </message>
    <message>
        <source>leg to here</source>
        <translation>Weg bis hier</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Namen übernehmen</translation>
    </message>
    <message>
        <source>Drop the name</source>
        <translation>Namen verwerfen</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>New route</source>
        <translation>Neue Route</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>a stop takes</source>
        <translation>ein Halt dauert</translation>
    </message>
    <message>
        <source>detour, both ways</source>
        <translation>Umweg, hin und zurück</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>öffnet</translation>
    </message>
    <message>
        <source>closes</source>
        <translation>schließt</translation>
    </message>
    <message>
        <source>due here</source>
        <translation>Soll hier</translation>
    </message>
    <message>
        <source>rest, engine off</source>
        <translation>Pause, Motor aus</translation>
    </message>
    <message>
        <source>idling</source>
        <translation>Leerlauf</translation>
    </message>
    <message>
        <source>arrive with at least</source>
        <translation>ankommen mit mindestens</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>timed from here: yes</source>
        <translation>ab hier auf Zeit: ja</translation>
    </message>
    <message>
        <source>timed from here: no</source>
        <translation>ab hier auf Zeit: nein</translation>
    </message>
    <message>
        <source>Crew&apos;s cans</source>
        <translation>Kanister der Crew</translation>
    </message>
    <message>
        <source>yyyymmdd</source>
        <translation>jjjjmmtt</translation>
    </message>
    <message>
        <source>from the day</source>
        <translation>ab dem Tag</translation>
    </message>
    <message>
        <source>until the day</source>
        <translation>bis zum Tag</translation>
    </message>
</context>
<context>
    <name>undermark::ScreenSettings</name>
    <message>
        <source>distance</source>
        <translation>Entfernung</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>Meilen</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>US-Gallonen</translation>
    </message>
    <message>
        <source>imperial gallons</source>
        <translation>brit. Gallonen</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation>L/100 km</translation>
    </message>
    <message>
        <source>km/L</source>
        <translation>km/L</translation>
    </message>
    <message>
        <source>mpg US</source>
        <translation>mpg US</translation>
    </message>
    <message>
        <source>mpg imperial</source>
        <translation>mpg brit.</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Another car</source>
        <translation>Anderer Wagen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>undermark::Sentence</name>
    <message>
        <source>the unfinished calibration cannot be kept here</source>
        <translation>die begonnene Kalibrierung kann hier nicht aufgehoben werden</translation>
    </message>
    <message>
        <source>this file cannot be read</source>
        <translation>diese Datei kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>this is not an unfinished calibration</source>
        <translation>das ist keine begonnene Kalibrierung</translation>
    </message>
    <message>
        <source>Touch every caution once it holds here.</source>
        <translation>Jede Vorsicht antippen, sobald sie hier erfüllt ist.</translation>
    </message>
    <message>
        <source>A level takes the readings of both lobes.</source>
        <translation>Zu einem Stand gehören die Werte beider Kammern.</translation>
    </message>
    <message>
        <source>This is not a reading.</source>
        <translation>Das ist kein Messwert.</translation>
    </message>
    <message>
        <source>How much was poured comes first.</source>
        <translation>Zuerst: wie viel eingefüllt wurde.</translation>
    </message>
    <message>
        <source>A level needs its litres and at least one reading.</source>
        <translation>Ein Stand braucht seine Liter und mindestens einen Messwert.</translation>
    </message>
    <message>
        <source>It has not settled: wait, or type the reading.</source>
        <translation>Noch nicht zur Ruhe gekommen: warten oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>Where the zero mark is, is missing.</source>
        <translation>Es fehlt, wo die Nullmarke liegt.</translation>
    </message>
    <message>
        <source>These readings allow no curve</source>
        <translation>Diese Werte erlauben keine Kurve</translation>
    </message>
    <message>
        <source>Neither signal has moved while %1 went in. Look at the wiring and the ground.</source>
        <translation>Keines der Signale hat sich bewegt, während %1 hineinliefen. Nach Verkabelung und Masse sehen.</translation>
    </message>
    <message>
        <source>The calibration is in the logbook.</source>
        <translation>Die Kalibrierung steht im Logbuch.</translation>
    </message>
    <message>
        <source>Taken up where it was left: nothing is lost.</source>
        <translation>Weiter, wo es unterbrochen wurde: nichts ist verloren.</translation>
    </message>
    <message>
        <source>a fill is kept out: %1</source>
        <translation>eine Füllung zählt nicht mit: %1</translation>
    </message>
    <message>
        <source>a proof: %1</source>
        <translation>ein Beleg: %1</translation>
    </message>
    <message>
        <source>the logbook has no vehicle yet</source>
        <translation>im Logbuch steht noch kein Wagen</translation>
    </message>
    <message>
        <source>the logbook has no such vehicle</source>
        <translation>diesen Wagen gibt es im Logbuch nicht</translation>
    </message>
    <message>
        <source>%1: column &apos;%2&apos; is not imported</source>
        <translation>%1: Spalte „%2“ wird nicht übernommen</translation>
    </message>
    <message>
        <source>two vehicles are called %1 now: they were made apart</source>
        <translation>zwei Wagen heißen jetzt %1: sie wurden getrennt angelegt</translation>
    </message>
    <message>
        <source>The tank may be dry already: no distance is sure. Fill before driving on.</source>
        <translation>Der Tank kann schon trocken sein: keine Strecke ist sicher. Vor der Weiterfahrt tanken.</translation>
    </message>
    <message>
        <source>The zero mark may be passed already: no distance to it is sure.</source>
        <translation>Die Nullmarke kann schon unterschritten sein: keine Strecke dorthin ist sicher.</translation>
    </message>
    <message>
        <source>the card cannot be written</source>
        <translation>die Karte kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>The changed route is not saved. Touch again to leave it.</source>
        <translation>Die geänderte Strecke ist nicht gesichert. Noch einmal antippen, um sie zu verlassen.</translation>
    </message>
    <message>
        <source>Where the car is on the route comes first.</source>
        <translation>Zuerst: wo der Wagen auf der Strecke ist.</translation>
    </message>
    <message>
        <source>this is not an amount that can be stored</source>
        <translation>das ist keine Menge, die sich sichern lässt</translation>
    </message>
    <message>
        <source>a number of 0 or more</source>
        <translation>eine Zahl ab 0</translation>
    </message>
    <message>
        <source>How much went in is missing</source>
        <translation>Es fehlt, wie viel hineinging</translation>
    </message>
    <message>
        <source>this is no number</source>
        <translation>das ist keine Zahl</translation>
    </message>
    <message>
        <source>the leg is no distance</source>
        <translation>der Weg bis hier ist keine Entfernung</translation>
    </message>
    <message>
        <source>0 km or more</source>
        <translation>0 km oder mehr</translation>
    </message>
    <message>
        <source>the row would lie behind the next one, which stays where it is</source>
        <translation>die Zeile läge hinter der nächsten, die bleibt, wo sie ist</translation>
    </message>
    <message>
        <source>the route is too long</source>
        <translation>die Strecke ist zu lang</translation>
    </message>
    <message>
        <source>%1 rows at most</source>
        <translation>höchstens %1 Zeilen</translation>
    </message>
    <message>
        <source>How much the tank takes is missing</source>
        <translation>Es fehlt, wie viel der Tank fasst</translation>
    </message>
    <message>
        <source>table or logbook have changed since they were looked at: go back and look again</source>
        <translation>Tabelle oder Logbuch haben sich seit dem Ansehen geändert: zurückgehen und neu ansehen</translation>
    </message>
    <message>
        <source>calibration points need litres of 0 or more and one reading or more</source>
        <translation>Kalibrierpunkte brauchen eine Menge von 0 oder mehr und mindestens einen Messwert</translation>
    </message>
    <message>
        <source>the sd of a calibration reading must be 0 or more</source>
        <translation>die Streuung eines Kalibrierwerts muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a calibration needs readings at two or more amounts of litres</source>
        <translation>eine Kalibrierung braucht Messwerte bei mindestens zwei Mengen</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weiteren</translation>
    </message>
    <message>
        <source>The float rests on its lower stop up to %1: at %2 the gauge cannot see the last %3. Lower the float arm, or count this fuel by consumption only.</source>
        <translation>Der Schwimmer liegt bis %1 auf seinem unteren Anschlag: bei %2 sieht die Anzeige die letzten %3 nicht. Schwimmerarm tiefer setzen oder diese Menge nur nach Verbrauch zählen.</translation>
    </message>
    <message>
        <source>The float reaches its upper stop at %1: the gauge cannot see the %2 above. It will stand still for that long after a fill; raise the arm&apos;s stop if that matters.</source>
        <translation>Der Schwimmer erreicht bei %1 seinen oberen Anschlag: die Anzeige sieht die %2 darüber nicht. Nach dem Volltanken steht sie so lange still; wenn das stört, den Anschlag höher setzen.</translation>
    </message>
    <message>
        <source>The signal stood at %1 from %2 to %3, in the middle of its travel. The float may jam or touch something there: move it by hand and look for what it meets.</source>
        <translation>Das Signal stand bei %1 von %2 bis %3, mitten auf seinem Weg. Der Schwimmer klemmt oder stößt dort vielleicht an: von Hand bewegen und nachsehen, woran.</translation>
    </message>
    <message>
        <source>Repeated readings differ, at %1, by as much as %2. Let the fuel come to rest before reading; if they still differ, look for a loose contact or a sticking float.</source>
        <translation>Wiederholte Messwerte weichen ab, bei %1, um bis zu %2. Kraftstoff vor dem Ablesen zur Ruhe kommen lassen; weichen sie dann noch ab, nach einem Wackelkontakt oder klemmenden Schwimmer suchen.</translation>
    </message>
    <message>
        <source>The signal moves by %1 of about %2 that it could. The float arm may be too short, bent or wrongly placed to reach both ends: check that it does.</source>
        <translation>Das Signal bewegt sich um %1 von etwa %2, die möglich wären. Der Schwimmerarm ist vielleicht zu kurz, verbogen oder falsch eingebaut und erreicht nicht beide Enden: prüfen, ob er es tut.</translation>
    </message>
    <message>
        <source>One step of the reading (%1) is %2. Read and note one more decimal, or use a finer meter.</source>
        <translation>Ein Schritt der Ablesung (%1) sind %2. Eine Stelle mehr ablesen und notieren oder ein feineres Messgerät nehmen.</translation>
    </message>
    <message>
        <source>On the way down the signal stands for %1 less than on the way up.</source>
        <translation>Abwärts steht das Signal für %1 weniger als aufwärts.</translation>
    </message>
    <message>
        <source>On the way down the signal stands for %1 more than on the way up.</source>
        <translation>Abwärts steht das Signal für %1 mehr als aufwärts.</translation>
    </message>
    <message>
        <source>Driving goes down: the curve is the falling one.</source>
        <translation>Fahren geht abwärts: die Kurve ist die fallende.</translation>
    </message>
    <message>
        <source>The falling readings cover too little for a curve of their own; the difference is carried as a bias. Drain down in steps over the whole range to settle it.</source>
        <translation>Die fallenden Messwerte decken zu wenig für eine eigene Kurve; der Unterschied wird als Abweichung mitgeführt. Über den ganzen Bereich in Schritten ablassen, um ihn zu klären.</translation>
    </message>
    <message>
        <source>Check the float&apos;s pivot for stiffness.</source>
        <translation>Das Gelenk des Schwimmers auf Schwergängigkeit prüfen.</translation>
    </message>
    <message>
        <source>The readings only go up, and driving goes down: the level may be lower than read by an assumed %1. Note some readings while draining to measure it.</source>
        <translation>Die Messwerte gehen nur aufwärts, Fahren geht abwärts: der Stand kann um angenommene %1 niedriger sein als abgelesen. Beim Ablassen einige Messwerte notieren, um es zu messen.</translation>
    </message>
    <message>
        <source>With electrical load on the reading moves by %1, which is %2. The sender&apos;s ground shares a wire with the load: give it its own, and clean the ground point.</source>
        <translation>Mit eingeschalteten Verbrauchern ändert sich der Messwert um %1, das sind %2. Die Masse des Gebers teilt sich eine Leitung mit der Last: eine eigene legen und den Massepunkt reinigen.</translation>
    </message>
    <message>
        <source>An open circuit reads like this: look for a connector or wire that is off.</source>
        <translation>So liest sich ein offener Stromkreis: nach einem abgezogenen Stecker oder gerissenen Kabel suchen.</translation>
    </message>
    <message>
        <source>A short reads like this: look for the signal wire touching ground.</source>
        <translation>So liest sich ein Kurzschluss: nachsehen, ob die Signalleitung Masse berührt.</translation>
    </message>
    <message>
        <source>This circuit cannot give it: check the unit, the supply and the wiring.</source>
        <translation>Das kann dieser Stromkreis nicht liefern: Einheit, Versorgung und Verkabelung prüfen.</translation>
    </message>
    <message>
        <source>The reading %1 at %2 is outside what the sender gives.</source>
        <translation>Der Messwert %1 bei %2 liegt außerhalb dessen, was der Geber liefert.</translation>
    </message>
    <message>
        <source>The curve leaves it out.</source>
        <translation>Die Kurve lässt ihn aus.</translation>
    </message>
    <message>
        <source>The signal stayed near %1 while %2 went in or out. Check the wiring, the ground and the plug at the sender, then move the float by hand: no curve can be made from these readings.</source>
        <translation>Das Signal blieb bei %1, während %2 hinein- oder herausging. Verkabelung, Masse und Stecker am Geber prüfen, dann den Schwimmer von Hand bewegen: aus diesen Messwerten wird keine Kurve.</translation>
    </message>
    <message>
        <source>With %1 levels the curve between them is little more than a guess of the tank&apos;s shape. Add readings at levels in between when you can.</source>
        <translation>Mit %1 Ständen ist die Kurve dazwischen kaum mehr als eine Vermutung über die Form des Tanks. Bei Gelegenheit Messwerte dazwischen ergänzen.</translation>
    </message>
    <message>
        <source>There is a second signal. This curve uses the first one only; two lobes read separately need their own fit.</source>
        <translation>Es gibt ein zweites Signal. Diese Kurve nutzt nur das erste; zwei getrennt gelesene Kammern brauchen ihre eigene Kurve.</translation>
    </message>
    <message>
        <source>a gauge table has 2 to 100 points</source>
        <translation>eine Anzeigetabelle hat 2 bis 100 Punkte</translation>
    </message>
    <message>
        <source>a gauge shows 0 to 6 decimals</source>
        <translation>eine Anzeige zeigt 0 bis 6 Nachkommastellen</translation>
    </message>
    <message>
        <source>the zero mark must lie under full and within the calibrated litres</source>
        <translation>die Nullmarke muss unter voll und im kalibrierten Bereich liegen</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>a level curve needs two or more finite knots</source>
        <translation>eine Füllstandskurve braucht mindestens zwei endliche Stützpunkte</translation>
    </message>
    <message>
        <source>the knots of a level curve must rise in litres and keep one direction</source>
        <translation>die Stützpunkte einer Füllstandskurve müssen steigende Mengen haben und eine Richtung halten</translation>
    </message>
    <message>
        <source>a saddle tank needs at least three points</source>
        <translation>ein Satteltank braucht mindestens drei Punkte</translation>
    </message>
    <message>
        <source>a saddle tank needs both signals at every point</source>
        <translation>ein Satteltank braucht an jedem Punkt beide Signale</translation>
    </message>
    <message>
        <source>a signal of the saddle tank does not move over the whole calibration</source>
        <translation>ein Signal des Satteltanks bewegt sich über die ganze Kalibrierung nicht</translation>
    </message>
    <message>
        <source>litres must rise and each signal keep its direction in a saddle tank</source>
        <translation>im Satteltank muss die Menge steigen und jedes Signal seine Richtung halten</translation>
    </message>
    <message>
        <source>a dimension of the tank is impossible</source>
        <translation>ein Maß des Tanks ist unmöglich</translation>
    </message>
    <message>
        <source>above 0 and up to 10 m</source>
        <translation>über 0 und bis 10 m</translation>
    </message>
    <message>
        <source>the box&apos;s corner radius is impossible</source>
        <translation>der Eckenradius des Kastens ist unmöglich</translation>
    </message>
    <message>
        <source>0 to half its smaller side</source>
        <translation>0 bis zur Hälfte der kürzeren Seite</translation>
    </message>
    <message>
        <source>a cylinder is as wide as it is high</source>
        <translation>ein Zylinder ist so breit wie hoch</translation>
    </message>
    <message>
        <source>the tilt is impossible</source>
        <translation>die Neigung ist unmöglich</translation>
    </message>
    <message>
        <source>-45 to 45 degrees</source>
        <translation>-45 bis 45 Grad</translation>
    </message>
    <message>
        <source>the sender&apos;s signals for empty and full are equal</source>
        <translation>die Signale des Gebers für leer und voll sind gleich</translation>
    </message>
    <message>
        <source>volume at 15 C: times %1</source>
        <translation>Volumen bei 15 °C: mal %1</translation>
    </message>
    <message>
        <source>energy of the blend burnt: times %1</source>
        <translation>Energie des verbrannten Gemischs: mal %1</translation>
    </message>
    <message>
        <source>%1 times the usual consumption: was the fill before really full, and is the distance right?</source>
        <translation>das %1-fache des üblichen Verbrauchs: war die Füllung davor wirklich voll, und stimmt die Strecke?</translation>
    </message>
    <message>
        <source>%1 fit if the number typed was gallons: %2</source>
        <translation>%1 passen, falls die getippte Zahl Gallonen waren: %2</translation>
    </message>
    <message>
        <source>%1 fit if the number typed was miles: %2</source>
        <translation>%1 passen, falls die getippte Zahl Meilen waren: %2</translation>
    </message>
    <message>
        <source>%1 is about %2 more than was burnt: was a can filled as well?</source>
        <translation>%1 sind etwa %2 mehr, als verbrannt wurde: ging auch etwas in einen Kanister?</translation>
    </message>
    <message>
        <source>%1 on %2: a fill of about %3 seems to be missing before this one</source>
        <translation>%1 mit %2: davor scheint eine Füllung von etwa %3 zu fehlen</translation>
    </message>
    <message>
        <source>%1 do not fit the fuel, but together with the next stretch they do: about %2 would</source>
        <translation>%1 passen nicht zum Kraftstoff, zusammen mit dem nächsten Abschnitt aber schon: etwa %2 würden passen</translation>
    </message>
    <message>
        <source>the dash was swapped and no trip meter tells the way to this fill</source>
        <translation>das Kombiinstrument wurde getauscht, und kein Tageszähler nennt den Weg bis zu dieser Füllung</translation>
    </message>
    <message>
        <source>no odometer and no trip meter tell the way to this fill</source>
        <translation>weder Kilometerstand noch Tageszähler nennen den Weg bis zu dieser Füllung</translation>
    </message>
    <message>
        <source>%1 by odometer, %2 by trip meter: %3 are not accounted for; was a fill forgotten?</source>
        <translation>%1 nach Kilometerstand, %2 nach Tageszähler: %3 sind nicht erklärt; wurde eine Füllung vergessen?</translation>
    </message>
    <message>
        <source>%1 by odometer, %2 by trip meter: %3 too many; was the trip meter not reset?</source>
        <translation>%1 nach Kilometerstand, %2 nach Tageszähler: %3 zu viel; wurde der Tageszähler nicht zurückgestellt?</translation>
    </message>
    <message>
        <source>trips of %1 are logged on a way of %2: they were scaled down by %3</source>
        <translation>Fahrten über %1 sind auf einem Weg von %2 eingetragen: sie wurden um %3 gekürzt</translation>
    </message>
    <message>
        <source>odometer %1 after %2: was the dash swapped?</source>
        <translation>Kilometerstand %1 nach %2: wurde das Kombiinstrument getauscht?</translation>
    </message>
    <message>
        <source>%1 were pumped but the tank takes %2: was a can filled as well?</source>
        <translation>%1 wurden getankt, der Tank fasst aber %2: ging auch etwas in einen Kanister?</translation>
    </message>
    <message>
        <source>%1 are measured from the doubtful odometer before</source>
        <translation>%1 sind vom zweifelhaften Kilometerstand davor gemessen</translation>
    </message>
    <message>
        <source>this file exists: a demo never writes over a logbook</source>
        <translation>diese Datei gibt es schon: ein Beispiel überschreibt nie ein Logbuch</translation>
    </message>
    <message>
        <source>%1 (expected %2, found &apos;%3&apos;)</source>
        <translation>%1 (erwartet: %2; gefunden: „%3“)</translation>
    </message>
    <message>
        <source>%1 (expected %2)</source>
        <translation>%1 (erwartet: %2)</translation>
    </message>
    <message>
        <source>%1 (found &apos;%2&apos;)</source>
        <translation>%1 (gefunden: „%2“)</translation>
    </message>
    <message>
        <source>column &apos;%1&apos;: %2</source>
        <translation>Spalte „%1“: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the number is missing</source>
        <translation>die Zahl fehlt</translation>
    </message>
    <message>
        <source>a comma cannot be part of a number, decimals take a point</source>
        <translation>ein Komma gehört in keine Zahl, Dezimalstellen stehen hinter einem Punkt</translation>
    </message>
    <message>
        <source>only the number belongs here, without a unit</source>
        <translation>hierher gehört nur die Zahl, ohne Einheit</translation>
    </message>
    <message>
        <source>this is not a number</source>
        <translation>das ist keine Zahl</translation>
    </message>
    <message>
        <source>the number is outside what is possible</source>
        <translation>die Zahl liegt außerhalb des Möglichen</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>die Zeile ist zu lang</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>das ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>the file is too large</source>
        <translation>die Datei ist zu groß</translation>
    </message>
    <message>
        <source>%1 bytes at most</source>
        <translation>höchstens %1 Byte</translation>
    </message>
    <message>
        <source>cannot open the file</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the file is empty, its first line must name the columns</source>
        <translation>die Datei ist leer, ihre erste Zeile muss die Spalten nennen</translation>
    </message>
    <message>
        <source>the header names column &apos;%1&apos; twice</source>
        <translation>die Kopfzeile nennt Spalte „%1“ zweimal</translation>
    </message>
    <message>
        <source>a quoted text is not closed</source>
        <translation>ein Text in Anführungszeichen ist nicht geschlossen</translation>
    </message>
    <message>
        <source>the header lacks this column</source>
        <translation>der Kopfzeile fehlt diese Spalte</translation>
    </message>
    <message>
        <source>a header with &apos;%1&apos;</source>
        <translation>eine Kopfzeile mit „%1“</translation>
    </message>
    <message>
        <source>the row has more cells than the header, decimals take a point</source>
        <translation>die Zeile hat mehr Felder als die Kopfzeile, Dezimalstellen stehen hinter einem Punkt</translation>
    </message>
    <message>
        <source>the row has fewer cells than the header</source>
        <translation>die Zeile hat weniger Felder als die Kopfzeile</translation>
    </message>
    <message>
        <source>%1 cells</source>
        <translation>%1 Felder</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>eine Zahl über 0</translation>
    </message>
    <message>
        <source>another program goes on writing to the logbook</source>
        <translation>ein anderes Programm schreibt weiter ins Logbuch</translation>
    </message>
    <message>
        <source>the folder is there already</source>
        <translation>den Ordner gibt es schon</translation>
    </message>
    <message>
        <source>1 or 0</source>
        <translation>1 oder 0</translation>
    </message>
    <message>
        <source>this is not a date</source>
        <translation>das ist kein Datum</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>there is no such day or time</source>
        <translation>diesen Tag oder diese Uhrzeit gibt es nicht</translation>
    </message>
    <message>
        <source>the header must name one of km and odometer_km</source>
        <translation>die Kopfzeile muss entweder km oder odometer_km nennen</translation>
    </message>
    <message>
        <source>km or odometer_km</source>
        <translation>km oder odometer_km</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>keins</translation>
    </message>
    <message>
        <source>degrees Celsius from -60 to 80</source>
        <translation>Grad Celsius von -60 bis 80</translation>
    </message>
    <message>
        <source>this kind of fuel point is not known</source>
        <translation>diese Art Tankpunkt ist unbekannt</translation>
    </message>
    <message>
        <source>a section is timed or it is not</source>
        <translation>ein Abschnitt ist gezeitet oder nicht</translation>
    </message>
    <message>
        <source>degrees Fahrenheit from -76 to 176</source>
        <translation>Grad Fahrenheit von -76 bis 176</translation>
    </message>
    <message>
        <source>0 to 1000 starts</source>
        <translation>0 bis 1000 Starts</translation>
    </message>
    <message>
        <source>this is not a column that can be imported</source>
        <translation>diese Spalte lässt sich nicht übernehmen</translation>
    </message>
    <message>
        <source>the file is too long</source>
        <translation>die Datei ist zu lang</translation>
    </message>
    <message>
        <source>the file holds no row</source>
        <translation>die Datei enthält keine Zeile</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>mindestens eine</translation>
    </message>
    <message>
        <source>this is neither yes nor no</source>
        <translation>das ist weder ja noch nein</translation>
    </message>
    <message>
        <source>a trip needs its driving mode</source>
        <translation>eine Fahrt braucht ihre Fahrweise</translation>
    </message>
    <message>
        <source>a mode of the vehicle</source>
        <translation>eine Fahrweise des Wagens</translation>
    </message>
    <message>
        <source>a trip without kilometres needs idle minutes</source>
        <translation>eine Fahrt ohne Kilometer braucht Minuten im Leerlauf</translation>
    </message>
    <message>
        <source>km above 0</source>
        <translation>km über 0</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>a whole number of 1 or more</source>
        <translation>eine ganze Zahl ab 1</translation>
    </message>
    <message>
        <source>0 or 1</source>
        <translation>0 oder 1</translation>
    </message>
    <message>
        <source>this must be a whole number</source>
        <translation>das muss eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>a calibration needs the drained tank and at least one step above it</source>
        <translation>eine Kalibrierung braucht den leergepumpten Tank und mindestens einen Schritt darüber</translation>
    </message>
    <message>
        <source>two or more rows</source>
        <translation>mindestens zwei Zeilen</translation>
    </message>
    <message>
        <source>every row has the same litres</source>
        <translation>in jeder Zeile steht dieselbe Menge</translation>
    </message>
    <message>
        <source>litres that differ</source>
        <translation>Mengen, die sich unterscheiden</translation>
    </message>
    <message>
        <source>litres are counted from the row with the fewest, which is taken as the drained tank</source>
        <translation>die Menge zählt ab der Zeile mit der kleinsten, die als leergepumpt gilt</translation>
    </message>
    <message>
        <source>%1: column &apos;%2&apos; is not known and not used</source>
        <translation>%1: Spalte „%2“ ist unbekannt und wird nicht benutzt</translation>
    </message>
    <message>
        <source>km of 0 or more</source>
        <translation>0 km oder mehr</translation>
    </message>
    <message>
        <source>the header lacks the distance</source>
        <translation>der Kopfzeile fehlt die Entfernung</translation>
    </message>
    <message>
        <source>&apos;at_km&apos; or &apos;leg_km&apos;</source>
        <translation>„at_km“ oder „leg_km“</translation>
    </message>
    <message>
        <source>two columns of distance contradict each other</source>
        <translation>zwei Spalten mit Entfernungen widersprechen sich</translation>
    </message>
    <message>
        <source>&apos;at_km&apos; or &apos;leg_km&apos;, not both</source>
        <translation>„at_km“ oder „leg_km“, nicht beide</translation>
    </message>
    <message>
        <source>unknown column &apos;%1&apos; is not used</source>
        <translation>die unbekannte Spalte „%1“ wird nicht benutzt</translation>
    </message>
    <message>
        <source>the route has no finish</source>
        <translation>die Strecke hat kein Ziel</translation>
    </message>
    <message>
        <source>two rows or more</source>
        <translation>mindestens zwei Zeilen</translation>
    </message>
    <message>
        <source>the distance runs backwards</source>
        <translation>die Entfernung läuft rückwärts</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>the minimum purchase is above the limit</source>
        <translation>die Mindestmenge liegt über der Höchstmenge</translation>
    </message>
    <message>
        <source>max_litres or less</source>
        <translation>max_litres oder weniger</translation>
    </message>
    <message>
        <source>this is not a time of day</source>
        <translation>das ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>HH:MM, 00:00 to 24:00</source>
        <translation>HH:MM, 00:00 bis 24:00</translation>
    </message>
    <message>
        <source>the file has no route and no track</source>
        <translation>die Datei hat weder Route noch Track</translation>
    </message>
    <message>
        <source>a rte or trk element</source>
        <translation>ein Element rte oder trk</translation>
    </message>
    <message>
        <source>two points or more</source>
        <translation>mindestens zwei Punkte</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>die Datei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>256 MiB at most</source>
        <translation>höchstens 256 MiB</translation>
    </message>
    <message>
        <source>this is not sound XML: %1 at byte %2</source>
        <translation>das ist kein gültiges XML: %1 bei Byte %2</translation>
    </message>
    <message>
        <source>a document type has no place in a GPX file</source>
        <translation>ein Dokumenttyp gehört nicht in eine GPX-Datei</translation>
    </message>
    <message>
        <source>this is not GPX 1.1</source>
        <translation>das ist kein GPX 1.1</translation>
    </message>
    <message>
        <source>a gpx element of version 1.1</source>
        <translation>ein Element gpx der Version 1.1</translation>
    </message>
    <message>
        <source>degrees from -90 to 90</source>
        <translation>Grad von -90 bis 90</translation>
    </message>
    <message>
        <source>degrees from -180 to 180</source>
        <translation>Grad von -180 bis 180</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>%1 points at most</source>
        <translation>höchstens %1 Punkte</translation>
    </message>
    <message>
        <source>some points state at_km and some do not</source>
        <translation>manche Punkte nennen at_km, manche nicht</translation>
    </message>
    <message>
        <source>at_km in all rtepts or in none</source>
        <translation>at_km in allen rtept oder in keinem</translation>
    </message>
    <message>
        <source>the track has a gap of %1 after %2: it is not bridged and adds no distance</source>
        <translation>der Track hat nach %2 eine Lücke von %1: sie wird nicht überbrückt und zählt nicht als Weg</translation>
    </message>
    <message>
        <source>waypoint &apos;%1&apos; is too far from the line and is left out</source>
        <translation>Wegpunkt „%1“ liegt zu weit von der Linie und bleibt weg</translation>
    </message>
    <message>
        <source>and %1 more waypoints are too far from the line</source>
        <translation>und %1 weitere Wegpunkte liegen zu weit von der Linie</translation>
    </message>
    <message>
        <source>the places of this route are not known, and GPX needs them</source>
        <translation>die Orte dieser Strecke sind nicht bekannt, und GPX braucht sie</translation>
    </message>
    <message>
        <source>a route that was read from GPX</source>
        <translation>eine Strecke, die aus GPX gelesen wurde</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>die Datei kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>another program has the logbook open: close it first</source>
        <translation>ein anderes Programm hat das Logbuch offen: zuerst schließen</translation>
    </message>
    <message>
        <source>this holds views or tables that no Undermark has written</source>
        <translation>hier sind Sichten oder Tabellen, die kein Undermark geschrieben hat</translation>
    </message>
    <message>
        <source>nothing of this logbook can be read</source>
        <translation>von diesem Logbuch lässt sich nichts lesen</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>der Ordner lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>this is not a logbook</source>
        <translation>das ist kein Logbuch</translation>
    </message>
    <message>
        <source>a newer Undermark wrote this logbook (schema %1, this program knows %2); this one can read it, but not write</source>
        <translation>ein neueres Undermark hat dieses Logbuch geschrieben (Schema %1, dieses Programm kennt %2); dieses kann es lesen, aber nicht schreiben</translation>
    </message>
    <message>
        <source>a newer Undermark wrote this logbook (schema %1, this program knows %2); please update this one</source>
        <translation>ein neueres Undermark hat dieses Logbuch geschrieben (Schema %1, dieses Programm kennt %2); bitte dieses aktualisieren</translation>
    </message>
    <message>
        <source>%1, with a copy in %2</source>
        <translation>%1, mit einer Kopie in %2</translation>
    </message>
    <message>
        <source>%1; it was left as it is</source>
        <translation>%1; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>there is no logbook</source>
        <translation>es gibt kein Logbuch</translation>
    </message>
    <message>
        <source>this is not a logbook: the file is empty</source>
        <translation>das ist kein Logbuch: die Datei ist leer</translation>
    </message>
    <message>
        <source>%1; undermark-cli can take out what is readable, or bring a backup back</source>
        <translation>%1; undermark-cli kann Lesbares herausholen oder eine Sicherung zurückbringen</translation>
    </message>
    <message>
        <source>another program is writing to the logbook</source>
        <translation>ein anderes Programm schreibt gerade ins Logbuch</translation>
    </message>
    <message>
        <source>the logbook is damaged: %1</source>
        <translation>das Logbuch ist beschädigt: %1</translation>
    </message>
    <message>
        <source>the logbook can be read, but not written</source>
        <translation>das Logbuch kann gelesen, aber nicht geschrieben werden</translation>
    </message>
    <message>
        <source>this holds views or triggers that no Undermark has written; it was left as it is</source>
        <translation>hier sind Sichten oder Auslöser, die kein Undermark geschrieben hat; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>the logbook is damaged: %1; it was left as it is</source>
        <translation>das Logbuch ist beschädigt: %1; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>this is not a logbook: not an SQLite file</source>
        <translation>das ist kein Logbuch: keine SQLite-Datei</translation>
    </message>
    <message>
        <source>this is not a logbook: an SQLite file of another program</source>
        <translation>das ist kein Logbuch: eine SQLite-Datei eines anderen Programms</translation>
    </message>
    <message>
        <source>the logbook is cut short: %1 of %2 bytes are there</source>
        <translation>das Logbuch ist abgeschnitten: %1 von %2 Byte sind da</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>the logbook cannot be read</source>
        <translation>das Logbuch kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>this is not a logbook: too short for one</source>
        <translation>das ist kein Logbuch: zu kurz dafür</translation>
    </message>
    <message>
        <source>there is no such entry</source>
        <translation>diesen Eintrag gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such vehicle</source>
        <translation>diesen Wagen gibt es nicht</translation>
    </message>
    <message>
        <source>there is a vehicle of that name already</source>
        <translation>einen Wagen dieses Namens gibt es schon</translation>
    </message>
    <message>
        <source>there is a mode of that name already</source>
        <translation>eine Fahrweise dieses Namens gibt es schon</translation>
    </message>
    <message>
        <source>the vehicle has no such mode</source>
        <translation>der Wagen hat diese Fahrweise nicht</translation>
    </message>
    <message>
        <source>a mode keeps its name</source>
        <translation>eine Fahrweise behält ihren Namen</translation>
    </message>
    <message>
        <source>trips or proofs name this mode</source>
        <translation>Fahrten oder Belege nennen diese Fahrweise</translation>
    </message>
    <message>
        <source>nothing of this entry is left to undo</source>
        <translation>an diesem Eintrag ist nichts mehr zurückzunehmen</translation>
    </message>
    <message>
        <source>the logbook is damaged</source>
        <translation>das Logbuch ist beschädigt</translation>
    </message>
    <message>
        <source>the bundle is too large</source>
        <translation>das Bündel ist zu groß</translation>
    </message>
    <message>
        <source>this holds rows that no Undermark has written</source>
        <translation>hier sind Einträge, die kein Undermark geschrieben hat</translation>
    </message>
    <message>
        <source>there are too many copies of older schemas beside the logbook</source>
        <translation>neben dem Logbuch liegen zu viele Kopien älterer Schemas</translation>
    </message>
    <message>
        <source>rows of the logbook refer to rows that are not there; it was left as it is</source>
        <translation>Einträge des Logbuchs verweisen auf solche, die es nicht gibt; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>the logbook states schema %1, which no Undermark has written; it was left as it is</source>
        <translation>das Logbuch nennt Schema %1, das kein Undermark geschrieben hat; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>the file is there already</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>impossible value</source>
        <translation>unmöglicher Wert</translation>
    </message>
    <message>
        <source>a number of 0 or more, up to 1e9</source>
        <translation>eine Zahl ab 0, höchstens 1e9</translation>
    </message>
    <message>
        <source>a number above 0, up to 1e9</source>
        <translation>eine Zahl über 0, höchstens 1e9</translation>
    </message>
    <message>
        <source>a number from -1e9 to 1e9</source>
        <translation>eine Zahl von -1e9 bis 1e9</translation>
    </message>
    <message>
        <source>a time in the years 1900 to 9999</source>
        <translation>ein Zeitpunkt in den Jahren 1900 bis 9999</translation>
    </message>
    <message>
        <source>text of 1 to 200 bytes of UTF-8 without control characters</source>
        <translation>Text von 1 bis 200 Byte UTF-8 ohne Steuerzeichen</translation>
    </message>
    <message>
        <source>1 or more</source>
        <translation>1 oder mehr</translation>
    </message>
    <message>
        <source>at most 10000</source>
        <translation>höchstens 10000</translation>
    </message>
    <message>
        <source>degrees Celsius above absolute zero</source>
        <translation>Grad Celsius über dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>some distance, or some idling</source>
        <translation>etwas Weg oder etwas Leerlauf</translation>
    </message>
    <message>
        <source>0 to 1000000</source>
        <translation>0 bis 1000000</translation>
    </message>
    <message>
        <source>km past the zero mark</source>
        <translation>der Weg unter der Nullmarke</translation>
    </message>
    <message>
        <source>the litres poured in</source>
        <translation>die eingefüllte Menge</translation>
    </message>
    <message>
        <source>the litres pumped out, or those found left behind</source>
        <translation>die abgepumpte Menge oder die zurückgebliebene</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>nicht benutzt: %1</translation>
    </message>
    <message>
        <source>contradicts what was known: check the entry</source>
        <translation>widerspricht dem Bekannten: Eintrag prüfen</translation>
    </message>
    <message>
        <source>the level is not known: the log holds no full fill yet</source>
        <translation>der Stand ist nicht bekannt: im Logbuch steht noch keine volle Füllung</translation>
    </message>
    <message>
        <source>the last full fill has no odometer to count from</source>
        <translation>die letzte volle Füllung hat keinen Kilometerstand, von dem zu zählen wäre</translation>
    </message>
    <message>
        <source>the odometer is lower than at the last full fill</source>
        <translation>der Kilometerstand ist niedriger als bei der letzten vollen Füllung</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>log: full, then %1 and %2 more</source>
        <translation>Logbuch: voll, danach %1 und %2 dazu</translation>
    </message>
    <message>
        <source>log: full, then %1</source>
        <translation>Logbuch: voll, danach %1</translation>
    </message>
    <message>
        <source>the fuel as given</source>
        <translation>Kraftstoff wie angegeben</translation>
    </message>
    <message>
        <source>sender at %1 and %2 %3</source>
        <translation>Geber bei %1 und %2 %3</translation>
    </message>
    <message>
        <source>sender at %1 %2</source>
        <translation>Geber bei %1 %2</translation>
    </message>
    <message>
        <source>%1, on the float&apos;s lower stop</source>
        <translation>%1, auf dem unteren Anschlag des Schwimmers</translation>
    </message>
    <message>
        <source>%1, on the float&apos;s upper stop</source>
        <translation>%1, auf dem oberen Anschlag des Schwimmers</translation>
    </message>
    <message>
        <source>the sender reads open: check its wire and connector</source>
        <translation>der Geber liest sich wie unterbrochen: Kabel und Stecker prüfen</translation>
    </message>
    <message>
        <source>the sender reads shorted: check its wire for contact with ground</source>
        <translation>der Geber liest sich wie kurzgeschlossen: Kabel auf Berührung mit Masse prüfen</translation>
    </message>
    <message>
        <source>the sender cannot give this reading: check its unit, wire and connector</source>
        <translation>diesen Messwert kann der Geber nicht liefern: Einheit, Kabel und Stecker prüfen</translation>
    </message>
    <message>
        <source>at most %1 usable</source>
        <translation>höchstens %1 nutzbar</translation>
    </message>
    <message>
        <source>at least %1 usable</source>
        <translation>mindestens %1 nutzbar</translation>
    </message>
    <message>
        <source>a reading says nothing before the sender is calibrated</source>
        <translation>ein Messwert sagt nichts, bevor der Geber kalibriert ist</translation>
    </message>
    <message>
        <source>this saddle tank has two senders: one reading is not enough</source>
        <translation>dieser Satteltank hat zwei Geber: ein Messwert genügt nicht</translation>
    </message>
    <message>
        <source>both readings</source>
        <translation>beide Messwerte</translation>
    </message>
    <message>
        <source>this tank was calibrated with one signal</source>
        <translation>dieser Tank wurde mit einem Signal kalibriert</translation>
    </message>
    <message>
        <source>one reading</source>
        <translation>ein Messwert</translation>
    </message>
    <message>
        <source>%1; the distance is from the log alone</source>
        <translation>%1; die Reichweite kommt allein aus dem Logbuch</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1; the distance is from the log</source>
        <translation>der Schwimmer liegt auf seinem Anschlag: %1; die Reichweite kommt aus dem Logbuch</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1; the log disagrees, the distance follows the reading</source>
        <translation>der Schwimmer liegt auf seinem Anschlag: %1; das Logbuch widerspricht, die Reichweite folgt dem Messwert</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1</source>
        <translation>der Schwimmer liegt auf seinem Anschlag: %1</translation>
    </message>
    <message>
        <source>there is no driving mode of this name</source>
        <translation>eine Fahrweise dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>compare one reading with a measured pour, look at the sender&apos;s wiring, ground and float, and calibrate again if it stays; until then trust the log more than the reading</source>
        <translation>einen Messwert mit einer gemessenen Menge vergleichen, Verkabelung, Masse und Schwimmer des Gebers ansehen und neu kalibrieren, wenn es bleibt; bis dahin dem Logbuch mehr trauen als dem Messwert</translation>
    </message>
    <message>
        <source>over %1 full fills the sender reads %2 higher with each year: %3</source>
        <translation>über %1 volle Füllungen liest der Geber mit jedem Jahr %2 höher: %3</translation>
    </message>
    <message>
        <source>over %1 full fills the sender reads %2 lower with each year: %3</source>
        <translation>über %1 volle Füllungen liest der Geber mit jedem Jahr %2 niedriger: %3</translation>
    </message>
    <message>
        <source>no calibration is stored: readings cannot be used</source>
        <translation>es ist keine Kalibrierung gespeichert: Messwerte sind nicht nutzbar</translation>
    </message>
    <message>
        <source>%1 of %2 full fills since the calibration note the reading before pumping: note it and the sender is watched</source>
        <translation>%1 von %2 vollen Füllungen seit der Kalibrierung nennen den Messwert vor dem Tanken: wird er notiert, ist der Geber überwacht</translation>
    </message>
    <message>
        <source>the calibration is %1 years old: compare one reading with a measured pour</source>
        <translation>die Kalibrierung ist %1 Jahre alt: einen Messwert mit einer gemessenen Menge vergleichen</translation>
    </message>
    <message>
        <source>opening hours are not looked at: they need a departure and a speed</source>
        <translation>Öffnungszeiten bleiben außer Acht: dazu gehören Abfahrt und Geschwindigkeit</translation>
    </message>
    <message>
        <source>detours are counted without minutes: they need a speed</source>
        <translation>Umwege zählen ohne Minuten: dazu gehört eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>the event demands a limit for every refuel zone</source>
        <translation>die Veranstaltung verlangt für jede Tankzone eine Höchstmenge</translation>
    </message>
    <message>
        <source>max_litres</source>
        <translation>max_litres</translation>
    </message>
    <message>
        <source>the way needs more fuel than can be counted</source>
        <translation>der Weg braucht mehr Kraftstoff, als sich zählen lässt</translation>
    </message>
    <message>
        <source>a price is missing while other points have one</source>
        <translation>ein Preis fehlt, während andere Punkte einen haben</translation>
    </message>
    <message>
        <source>a price per litre</source>
        <translation>einen Preis je Liter</translation>
    </message>
    <message>
        <source>the tank&apos;s capacity must be above 0</source>
        <translation>das Fassungsvermögen des Tanks muss über 0 liegen</translation>
    </message>
    <message>
        <source>litres above 0</source>
        <translation>Liter über 0</translation>
    </message>
    <message>
        <source>the level at the start does not fit the tank</source>
        <translation>der Stand am Start passt nicht in den Tank</translation>
    </message>
    <message>
        <source>0 to %1</source>
        <translation>0 bis %1</translation>
    </message>
    <message>
        <source>the floor and the level at the finish must fit the tank</source>
        <translation>Mindestmenge und Stand am Ziel müssen in den Tank passen</translation>
    </message>
    <message>
        <source>a standard deviation of the level must be 0 or more</source>
        <translation>die Streuung des Standes muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>litres of 0 or more</source>
        <translation>Liter ab 0</translation>
    </message>
    <message>
        <source>every mode needs one rate and its covariances</source>
        <translation>jede Fahrweise braucht einen Verbrauch und seine Kovarianzen</translation>
    </message>
    <message>
        <source>a rate must be above 0</source>
        <translation>ein Verbrauch muss über 0 liegen</translation>
    </message>
    <message>
        <source>L/100 km above 0</source>
        <translation>L/100 km über 0</translation>
    </message>
    <message>
        <source>the variance of a rate must be 0 or more</source>
        <translation>die Varianz eines Verbrauchs muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>leg noise and idling rate must be 0 or more</source>
        <translation>Streuung der Abschnitte und Leerlaufverbrauch müssen 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a confidence must be from 0.5 to below 1</source>
        <translation>eine Sicherheit muss ab 0,5 und unter 1 liegen</translation>
    </message>
    <message>
        <source>0.5 to 0.999999</source>
        <translation>0,5 bis 0,999999</translation>
    </message>
    <message>
        <source>a stop costs 0 or more</source>
        <translation>ein Stopp kostet 0 oder mehr</translation>
    </message>
    <message>
        <source>cans need a number and the litres of each</source>
        <translation>Kanister brauchen eine Anzahl und den Inhalt je Kanister</translation>
    </message>
    <message>
        <source>the pump&apos;s flow and the speed must be above 0</source>
        <translation>Durchfluss der Säule und Geschwindigkeit müssen über 0 liegen</translation>
    </message>
    <message>
        <source>the departure must be a time of day</source>
        <translation>die Abfahrt muss eine Uhrzeit sein</translation>
    </message>
    <message>
        <source>00:00 to 24:00</source>
        <translation>00:00 bis 24:00</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>point %1 &apos;%2&apos;</source>
        <translation>Punkt %1 „%2“</translation>
    </message>
    <message>
        <source>%1: the distance is not a number</source>
        <translation>%1: die Entfernung ist keine Zahl</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>%1: an amount is negative</source>
        <translation>%1: eine Menge ist negativ</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 oder mehr</translation>
    </message>
    <message>
        <source>%1: nothing may be bought</source>
        <translation>%1: nichts darf gekauft werden</translation>
    </message>
    <message>
        <source>a limit above 0</source>
        <translation>eine Höchstmenge über 0</translation>
    </message>
    <message>
        <source>%1: the minimum purchase is above the limit</source>
        <translation>%1: die Mindestmenge liegt über der Höchstmenge</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>the route has no point of this name</source>
        <translation>die Strecke hat keinen Punkt dieses Namens</translation>
    </message>
    <message>
        <source>at least two points</source>
        <translation>mindestens zwei Punkte</translation>
    </message>
    <message>
        <source>%1: the distance runs backwards</source>
        <translation>%1: die Entfernung läuft rückwärts</translation>
    </message>
    <message>
        <source>this place is not on the way to the finish</source>
        <translation>diese Stelle liegt nicht auf dem Weg zum Ziel</translation>
    </message>
    <message>
        <source>from %1 to below %2</source>
        <translation>ab %1, unter %2</translation>
    </message>
    <message>
        <source>nothing follows this point, so nothing can be driven again</source>
        <translation>nach diesem Punkt folgt nichts, also lässt sich nichts noch einmal fahren</translation>
    </message>
    <message>
        <source>both lengths of the check section must be above 0</source>
        <translation>beide Längen der Messstrecke müssen über 0 liegen</translation>
    </message>
    <message>
        <source>there is no consumption for this mode of driving, at &apos;%1&apos;</source>
        <translation>für diese Fahrweise gibt es keinen Verbrauch, bei „%1“</translation>
    </message>
    <message>
        <source>the point at %1</source>
        <translation>der Punkt bei %1</translation>
    </message>
    <message>
        <source>autonomy: distance between two chances to refuel</source>
        <translation>Autonomie: Weg zwischen zwei Tankgelegenheiten</translation>
    </message>
    <message>
        <source>%1 to %2 is %3, %4 are allowed</source>
        <translation>%1 bis %2 sind %3, erlaubt sind %4</translation>
    </message>
    <message>
        <source>autonomy: a full tank</source>
        <translation>Autonomie: ein voller Tank</translation>
    </message>
    <message>
        <source>%1 need %2, a full tank has %3 above the floor</source>
        <translation>%1 brauchen %2, ein voller Tank hat %3 über der Mindestmenge</translation>
    </message>
    <message>
        <source>no plan was found for the confidence of the whole way with equal confidence on every arrival; one with unequal confidence is not ruled out</source>
        <translation>für die Sicherheit des ganzen Weges fand sich kein Plan mit gleicher Sicherheit bei jeder Ankunft; einer mit ungleicher ist nicht ausgeschlossen</translation>
    </message>
    <message>
        <source>opening hours stand in the way: with all places open there would be a plan</source>
        <translation>Öffnungszeiten stehen im Weg: wären alle Stellen offen, gäbe es einen Plan</translation>
    </message>
    <message>
        <source>too many ways to be late: places closed on arrival are avoided, but another order of stops might suit the hours better</source>
        <translation>zu viele Möglichkeiten, zu spät zu kommen: bei Ankunft geschlossene Stellen werden gemieden, eine andere Folge von Stopps könnte den Zeiten aber besser passen</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>from %1 driven twice</source>
        <translation>ab %1 zweimal gefahren</translation>
    </message>
    <message>
        <source>rate up by %1</source>
        <translation>Verbrauch um %1 höher</translation>
    </message>
    <message>
        <source>no tank is left</source>
        <translation>es bleibt kein Tank übrig</translation>
    </message>
    <message>
        <source>less than the capacity</source>
        <translation>weniger als das Fassungsvermögen</translation>
    </message>
    <message>
        <source>every fill %1 short</source>
        <translation>jede Füllung um %1 kürzer</translation>
    </message>
    <message>
        <source>the road since the level was known must have a rate and km of 0 or more</source>
        <translation>die Strecke, seit der Füllstand bekannt war, braucht einen Verbrauch und km ab 0</translation>
    </message>
    <message>
        <source>what surge makes unusable must be 0 or more, by mode</source>
        <translation>was Schwappen unbrauchbar macht, muss je Fahrweise 0 oder mehr sein</translation>
    </message>
    <message>
        <source>surge must be told of every mode or of none</source>
        <translation>Schwappen muss für jede Fahrweise angegeben sein oder für keine</translation>
    </message>
    <message>
        <source>the weights of what the rates may be must sum to 1</source>
        <translation>die Gewichte der möglichen Verbräuche müssen zusammen 1 ergeben</translation>
    </message>
    <message>
        <source>the fuel above the limit must be finite, its spread 0 or more</source>
        <translation>der Kraftstoff über der Grenze muss endlich sein, seine Streuung 0 oder mehr</translation>
    </message>
    <message>
        <source>a leg must have a known mode and a length of 0 or more</source>
        <translation>ein Abschnitt braucht eine bekannte Fahrweise und eine Länge ab 0</translation>
    </message>
    <message>
        <source>the spread of the consumption must be 0 or more</source>
        <translation>die Streuung des Verbrauchs muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>filled up with %1 from the zero mark</source>
        <translation>mit %1 vollgetankt, ab der Nullmarke</translation>
    </message>
    <message>
        <source>filled up with %1 from %2 above zero</source>
        <translation>mit %1 vollgetankt, ab %2 über null</translation>
    </message>
    <message>
        <source>%1 drained from the zero mark</source>
        <translation>%1 abgepumpt, ab der Nullmarke</translation>
    </message>
    <message>
        <source>%1 drained from %2 above zero</source>
        <translation>%1 abgepumpt, ab %2 über null</translation>
    </message>
    <message>
        <source>stalled %1 past zero</source>
        <translation>%1 unter null stehengeblieben</translation>
    </message>
    <message>
        <source>%1 past zero, still running</source>
        <translation>%1 unter null gefahren, lief noch</translation>
    </message>
    <message>
        <source>stalled %1 past zero (%2)</source>
        <translation>%1 unter null stehengeblieben (%2)</translation>
    </message>
    <message>
        <source>%1 past zero, still running (%2)</source>
        <translation>%1 unter null gefahren, lief noch (%2)</translation>
    </message>
    <message>
        <source>a base proof needs the litres poured after draining</source>
        <translation>ein Beleg mit Grundmenge braucht die nach dem Leerpumpen eingefüllte Menge</translation>
    </message>
    <message>
        <source>base of %1 poured after draining</source>
        <translation>Grundmenge von %1 nach dem Leerpumpen eingefüllt</translation>
    </message>
    <message>
        <source>a drained proof needs the litres pumped out or found behind</source>
        <translation>ein Beleg vom Leerpumpen braucht die abgepumpte oder die zurückgebliebene Menge</translation>
    </message>
    <message>
        <source>a drained proof from a reading needs a calibration for that reading</source>
        <translation>ein Beleg vom Leerpumpen ab einem Messwert braucht eine Kalibrierung für diesen Messwert</translation>
    </message>
    <message>
        <source>%1 found left behind</source>
        <translation>%1 blieben zurück</translation>
    </message>
    <message>
        <source>a proof past zero needs the distance past the zero mark</source>
        <translation>ein Beleg unter null braucht den Weg unter der Nullmarke</translation>
    </message>
    <message>
        <source>a proof past zero needs the consumption of its driving mode</source>
        <translation>ein Beleg unter null braucht den Verbrauch seiner Fahrweise</translation>
    </message>
    <message>
        <source>the distance past zero must be 0 or more</source>
        <translation>der Weg unter null muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>the consumption of a proof must be above 0</source>
        <translation>der Verbrauch eines Belegs muss über 0 liegen</translation>
    </message>
    <message>
        <source>Do not drive until it stops: running low harms pumps, and in diesels the injection.</source>
        <translation>Nicht fahren, bis er stehenbleibt: zu wenig Kraftstoff schadet Pumpen und beim Diesel der Einspritzung.</translation>
    </message>
    <message>
        <source>Have a qualified person drain it: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers, extinguisher in reach; stop pumping at the first spit.</source>
        <translation>Von einer sachkundigen Person leerpumpen lassen: Benzindampf entzündet sich. Motor kalt und aus, keine Zündquelle, belüftet, geerdet, zugelassene Behälter, Löscher in Reichweite; beim ersten Spucken mit Pumpen aufhören.</translation>
    </message>
    <message>
        <source>Drain the tank, pour a measured base and read the zero mark anew</source>
        <translation>Den Tank leerpumpen, eine gemessene Grundmenge einfüllen und die Nullmarke neu ablesen</translation>
    </message>
    <message>
        <source>Drain the tank and measure what the pump left behind, with the tank open</source>
        <translation>Den Tank leerpumpen und bei offenem Tank messen, was die Pumpe zurückließ</translation>
    </message>
    <message>
        <source>The reading stands still while fuel is burnt: the float is stuck or its arm is bent. Check the float and arm for free travel; count on consumption until then.</source>
        <translation>Der Messwert steht still, während Kraftstoff verbrannt wird: der Schwimmer klemmt, oder sein Arm ist verbogen. Schwimmer und Arm auf freien Gang prüfen; bis dahin nach dem Verbrauch rechnen.</translation>
    </message>
    <message>
        <source>The reading stays on the upper stop although the tank must be below it: the float is stuck at full. Check the float&apos;s travel; count on consumption until then.</source>
        <translation>Der Messwert bleibt auf dem oberen Anschlag, obwohl der Tank darunter sein muss: der Schwimmer klemmt bei voll. Den Gang des Schwimmers prüfen; bis dahin nach dem Verbrauch rechnen.</translation>
    </message>
    <message>
        <source>The signal went to its high end: a broken wire, an open connector or a worn contact. Check the plug at the sender, the signal wire and the ground.</source>
        <translation>Das Signal ging an sein hohes Ende: ein Kabelbruch, ein offener Stecker oder ein verschlissener Kontakt. Stecker am Geber, Signalleitung und Masse prüfen.</translation>
    </message>
    <message>
        <source>The signal went to its low end: a chafed wire to ground or a lost supply. Check the signal wire for chafing and the supply of the sender.</source>
        <translation>Das Signal ging an sein niedriges Ende: ein durchgescheuertes Kabel an Masse oder fehlende Versorgung. Signalleitung auf Scheuerstellen und die Versorgung des Gebers prüfen.</translation>
    </message>
    <message>
        <source>The reading shifted in one step without a stop for fuel: a bad ground, a slipped float arm, or fuel was lost. Look for a leak first, then check ground and arm.</source>
        <translation>Der Messwert sprang ohne Tankstopp: schlechte Masse, ein verrutschter Schwimmerarm, oder Kraftstoff ging verloren. Zuerst nach einem Leck suchen, dann Masse und Arm prüfen.</translation>
    </message>
    <message>
        <source>Reading and consumption part more and more: a fouled float, a drifting supply, or a leak. Look for a leak first, then compare the level after the next full fill.</source>
        <translation>Messwert und Verbrauch laufen immer weiter auseinander: ein streifender Schwimmer, eine wandernde Versorgung oder ein Leck. Zuerst nach einem Leck suchen, dann den Stand nach der nächsten vollen Füllung vergleichen.</translation>
    </message>
    <message>
        <source>No reading arrives: the source is silent. Check the connection to the sender or the bus.</source>
        <translation>Es kommt kein Messwert: die Quelle schweigt. Die Verbindung zum Geber oder zum Bus prüfen.</translation>
    </message>
    <message>
        <source>The reading falls out and comes back: a loose connector or a worn track. Move the wires at the sender while watching the reading.</source>
        <translation>Der Messwert fällt aus und kommt wieder: ein loser Stecker oder eine verschlissene Bahn. Die Kabel am Geber bewegen und dabei den Messwert beobachten.</translation>
    </message>
    <message>
        <source>One half of the saddle tank does not empty while the other does: the transfer is not working. Count only on the half with the pump and check the transfer line.</source>
        <translation>Eine Hälfte des Satteltanks leert sich nicht, die andere schon: die Förderung zwischen ihnen arbeitet nicht. Nur mit der Hälfte mit der Pumpe rechnen und die Überleitung prüfen.</translation>
    </message>
    <message>
        <source>The fuel-flow or distance source counts far off the level: a wrong unit, tyre size or injector constant. Check the source&apos;s settings against a full fill.</source>
        <translation>Die Quelle für Durchfluss oder Weg zählt weit neben dem Stand: eine falsche Einheit, Reifengröße oder Düsenkonstante. Die Einstellung der Quelle an einer vollen Füllung prüfen.</translation>
    </message>
    <message>
        <source>a shorter way</source>
        <translation>einen kürzeren Weg</translation>
    </message>
    <message>
        <source>The signal turned back while the level went on one way, at and above %1. The float may be fouling the tank or a baffle, or a row was noted wrongly: repeat these readings.</source>
        <translation>Das Signal kehrte um, während der Stand weiter in eine Richtung ging, bei und über %1. Der Schwimmer streift vielleicht den Tank oder ein Schwallblech, oder eine Zeile wurde falsch notiert: diese Messwerte wiederholen.</translation>
    </message>
    <message>
        <source>%1 where about %2 were expected: please check fuel and distance</source>
        <translation>%1, wo etwa %2 zu erwarten waren: bitte Menge und Strecke prüfen</translation>
    </message>
    <message>
        <source>over %1 full fills reading and fuel pumped come to %2 more than the full tank of the calibration: %3</source>
        <translation>über %1 volle Füllungen ergeben Messwert und getankte Menge %2 mehr als der volle Tank der Kalibrierung: %3</translation>
    </message>
    <message>
        <source>over %1 full fills reading and fuel pumped come to %2 less than the full tank of the calibration: %3</source>
        <translation>über %1 volle Füllungen ergeben Messwert und getankte Menge %2 weniger als der volle Tank der Kalibrierung: %3</translation>
    </message>
    <message>
        <source>rows of the logbook are missing</source>
        <translation>Zeilen des Logbuchs fehlen</translation>
    </message>
    <message>
        <source>a row needs a name</source>
        <translation>eine Zeile braucht einen Namen</translation>
    </message>
    <message>
        <source>another row has this name</source>
        <translation>eine andere Zeile heißt schon so</translation>
    </message>
    <message>
        <source>a name of its own</source>
        <translation>ein eigener Name</translation>
    </message>
    <message>
        <source>the logbook is not there any more</source>
        <translation>das Logbuch ist nicht mehr da</translation>
    </message>
    <message>
        <source>needs: litres to the next row.  sure: litres on arrival with 99 % probability.  even: half the time there is more.</source>
        <translation>nötig: Liter bis zur nächsten Zeile.  sicher: Liter bei Ankunft mit 99 %.  hälftig: in der Hälfte der Fälle ist es mehr.</translation>
    </message>
    <message>
        <source>take on: litres to ask for, &quot;full&quot; is to the first click.  no return after: turn back by then, or there must be fuel ahead.</source>
        <translation>tanken: Liter, die zu verlangen sind, „voll“ bis zum ersten Klick.  kein Zurück nach: bis dahin umkehren, sonst muss voraus Sprit sein.</translation>
    </message>
    <message>
        <source>Strip: a lane for each leg, dark as far as the engine is sure to run if nobody stops again. Post: gauge at zero. Hatched: hidden reserve.</source>
        <translation>Streifen: eine Bahn je Abschnitt, dunkel so weit der Motor ohne weiteren Stopp sicher läuft. Pfosten: Anzeige auf null. Schraffiert: Reserve.</translation>
    </message>
    <message>
        <source>An estimate, not a promise. Keep a margin; the event&apos;s rules and the law come first.</source>
        <translation>Eine Schätzung, kein Versprechen. Abstand halten; die Regeln der Veranstaltung und das Gesetz gehen vor.</translation>
    </message>
    <message>
        <source>Refuel with the engine off, no flame or spark near; cans approved, filled on the ground.</source>
        <translation>Tanken bei abgestelltem Motor, ohne Flamme oder Funken; Kanister zugelassen, am Boden gefüllt.</translation>
    </message>
    <message>
        <source>Never try out the reserve on a public road. Nothing is typed while driving.</source>
        <translation>Die Reserve nie auf öffentlicher Straße ausprobieren. Während der Fahrt wird nichts eingetippt.</translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation>Spritkarte</translation>
    </message>
    <message>
        <source>1 stop, %1 to buy.</source>
        <translation>1 Stopp, %1 zu tanken.</translation>
    </message>
    <message>
        <source>%1 stops, %2 to buy.</source>
        <translation>%1 Stopps, %2 zu tanken.</translation>
    </message>
    <message>
        <source>No spread was given: bare sums without any margin.</source>
        <translation>Ohne Streuung: bloße Summen ohne jeden Abstand.</translation>
    </message>
    <message>
        <source>Risk of running dry on the way: %1 %.</source>
        <translation>Risiko, unterwegs trockenzulaufen: %1 %.</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>mode</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>needs</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>even</source>
        <translation>hälftig</translation>
    </message>
    <message>
        <source>take on</source>
        <translation>tanken</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>ab mit</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 full</source>
        <translation>%1 voll</translation>
    </message>
    <message>
        <source>Stops only; the other points did not fit.</source>
        <translation>Nur Stopps; die anderen Punkte passten nicht.</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>pour 1 can</source>
        <translation>1 Kanister einfüllen</translation>
    </message>
    <message>
        <source>pour %1 cans</source>
        <translation>%1 Kanister einfüllen</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>%1 off the way</source>
        <translation>%1 abseits</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>no return after %1</source>
        <translation>kein Zurück nach %1</translation>
    </message>
    <message>
        <source>pump passed</source>
        <translation>Säule ausgelassen</translation>
    </message>
    <message>
        <source>zone passed</source>
        <translation>Zone ausgelassen</translation>
    </message>
    <message>
        <source>dry %1 %</source>
        <translation>trocken %1 %</translation>
    </message>
    <message>
        <source>idles %1 min</source>
        <translation>steht %1 min im Leerlauf</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>auf Zeit</translation>
    </message>
    <message>
        <source>%1 wanted here</source>
        <translation>%1 hier gewünscht</translation>
    </message>
    <message>
        <source>The odometer or a reading is missing.</source>
        <translation>Der Kilometerstand oder ein Messwert fehlt.</translation>
    </message>
    <message>
        <source>The odometer stood at %1 at the zero mark already.</source>
        <translation>Der Kilometerstand war an der Nullmarke schon %1.</translation>
    </message>
    <message>
        <source>by the last full fills the sender reads %1 too high: the level is counted lower by that</source>
        <translation>nach den letzten Volltankungen zeigt der Geber %1 zu viel: der Stand wird um so viel niedriger gerechnet</translation>
    </message>
    <message>
        <source>by the last full fills the sender reads %1 too low: the level is counted higher by that</source>
        <translation>nach den letzten Volltankungen zeigt der Geber %1 zu wenig: der Stand wird um so viel höher gerechnet</translation>
    </message>
    <message>
        <source>contradicts what was known: it does not count before another proof says the same, or what it contradicts is corrected</source>
        <translation>widerspricht dem Bekannten: zählt erst, wenn ein zweiter Nachweis dasselbe sagt oder berichtigt ist, wogegen er spricht</translation>
    </message>
    <message>
        <source>the same drive past zero as another entry: it counts once</source>
        <translation>dieselbe Fahrt unter null wie ein anderer Eintrag: sie zählt einmal</translation>
    </message>
    <message>
        <source>All of it went into cans: nothing is left for the tank</source>
        <translation>Alles ging in Kanister: für den Tank bleibt nichts</translation>
    </message>
    <message>
        <source>These are guesses. Does the pump show the same litres?</source>
        <translation>Das sind Vermutungen. Zeigt die Zapfsäule dieselben Liter?</translation>
    </message>
    <message>
        <source>poured_l, the litres put in at each step, or total_l, the litres since the tank was drained</source>
        <translation>poured_l, die Liter jedes Schritts, oder total_l, die Liter seit dem Leeren</translation>
    </message>
    <message>
        <source>added_l can be read in two ways, which makes a tank wrong by half</source>
        <translation>added_l lässt sich auf zwei Arten lesen, was einen Tank um die Hälfte falsch macht</translation>
    </message>
    <message>
        <source>the litres stand there twice</source>
        <translation>die Liter stehen doppelt da</translation>
    </message>
    <message>
        <source>one of poured_l and total_l</source>
        <translation>eines von poured_l und total_l</translation>
    </message>
    <message>
        <source>a column of litres is missing</source>
        <translation>eine Spalte mit Litern fehlt</translation>
    </message>
    <message>
        <source>the level cannot be followed before the sender is calibrated</source>
        <translation>dem Stand lässt sich erst folgen, wenn der Geber kalibriert ist</translation>
    </message>
    <message>
        <source>Some of the pumps have no price: planned without looking at the cost.</source>
        <translation>Einige Tankstellen haben keinen Preis: geplant ohne Blick auf die Kosten.</translation>
    </message>
    <message>
        <source>A tank was filled since &quot;%1&quot; was told: the log knows some of it by now, and %2 are counted on top.</source>
        <translation>Seit „%1“ gesagt wurde, ist getankt worden: das Buch weiß inzwischen etwas davon, und %2 kommen noch dazu.</translation>
    </message>
    <message>
        <source>How much more it burns is a percentage above 0, %1 at most.</source>
        <translation>Wie viel mehr es verbraucht, ist ein Prozentsatz über 0, höchstens %1.</translation>
    </message>
    <message>
        <source>&lt;%1</source>
        <translation>&lt;%1</translation>
    </message>
    <message>
        <source>No stop is needed.</source>
        <translation>Kein Halt nötig.</translation>
    </message>
    <message>
        <source>No plan: at this confidence the fuel lasts to %1, behind %2; it is %3 short of %4.</source>
        <translation>Kein Plan: mit dieser Sicherheit reicht der Kraftstoff bis %1, hinter %2; bis %4 fehlen %3.</translation>
    </message>
    <message>
        <source>start with %1 more</source>
        <translation>mit %1 mehr losfahren</translation>
    </message>
    <message>
        <source>carry %1 in own cans</source>
        <translation>%1 in eigenen Kanistern mitnehmen</translation>
    </message>
    <message>
        <source>drive so that it burns %1 less</source>
        <translation>so fahren, dass es %1 weniger verbraucht</translation>
    </message>
    <message>
        <source>a pump at %1 at the latest</source>
        <translation>eine Tankstelle spätestens bei %1</translation>
    </message>
    <message>
        <source>Engine off, no flame or spark near; to the first click at most.</source>
        <translation>Motor aus, keine Flamme, kein Funke in der Nähe; höchstens bis zum ersten Abschalten.</translation>
    </message>
    <message>
        <source>Approved cans only, filled on the ground and never past their nominal volume; poured in with the engine off and no ignition source near. Local law and event rules come first.</source>
        <translation>Nur zugelassene Kanister, auf dem Boden und nie über ihr Nennvolumen gefüllt; umfüllen bei abgestelltem Motor, ohne Zündquelle in der Nähe. Gesetz und Regeln der Veranstaltung gehen vor.</translation>
    </message>
    <message>
        <source>Not to be relied on: what it burns is known only afterwards.</source>
        <translation>Darauf ist kein Verlass: was es verbraucht, weiß man erst danach.</translation>
    </message>
    <message>
        <source>Make sure beforehand that it is open and sells this fuel.</source>
        <translation>Vorher sicherstellen, dass sie offen ist und diesen Kraftstoff führt.</translation>
    </message>
    <message>
        <source>That is %1.</source>
        <translation>Das sind %1.</translation>
    </message>
    <message>
        <source>little, but the way without it is dearer</source>
        <translation>wenig, aber ohne ihn wird der Weg teurer</translation>
    </message>
    <message>
        <source>needed: without it the fuel does not last</source>
        <translation>nötig: ohne ihn reicht der Kraftstoff nicht</translation>
    </message>
    <message>
        <source>%1, then about %2 that nobody wrote down</source>
        <translation>%1, dann etwa %2, die niemand notiert hat</translation>
    </message>
    <message>
        <source>%1 days without a record, and nothing says how far this car goes in a day. What was driven since is not in these distances: tell the odometer, a reading or the litres</source>
        <translation>Seit %1 Tagen kein Eintrag, und nichts sagt, wie weit dieses Auto am Tag fährt. Was seither gefahren wurde, ist in diesen Strecken nicht enthalten: Kilometerstand, Messwert oder Liter angeben</translation>
    </message>
    <message>
        <source>A day without a record. By what this car usually goes in a day the tank may be empty: tell the odometer, a reading or the litres</source>
        <translation>Seit einem Tag kein Eintrag. Nach dem, was dieses Auto sonst am Tag fährt, kann der Tank leer sein: Kilometerstand, Messwert oder Liter angeben</translation>
    </message>
    <message>
        <source>%1 days without a record. By what this car usually goes in a day the tank may be empty: tell the odometer, a reading or the litres</source>
        <translation>Seit %1 Tagen kein Eintrag. Nach dem, was dieses Auto sonst am Tag fährt, kann der Tank leer sein: Kilometerstand, Messwert oder Liter angeben</translation>
    </message>
    <message>
        <source>%1 days without a record. By what this car usually goes in a day %2 more are counted as driven: tell the odometer, a reading or the litres</source>
        <translation>Seit %1 Tagen kein Eintrag. Nach dem, was dieses Auto sonst am Tag fährt, gelten %2 mehr als gefahren: Kilometerstand, Messwert oder Liter angeben</translation>
    </message>
    <message>
        <source>How far it went is missing</source>
        <translation>Wie weit es ging, fehlt</translation>
    </message>
    <message>
        <source>A calibration lies open: it does not count before it is saved.</source>
        <translation>Eine Kalibrierung ist offen: Sie zählt erst, wenn sie gespeichert ist.</translation>
    </message>
    <message>
        <source>%1 to the first click is less than the %2 that were poured in while it was calibrated.</source>
        <translation>%1 bis zum ersten Klick ist weniger als die %2, die beim Kalibrieren hineingingen.</translation>
    </message>
    <message>
        <source>By what was poured into the drained tank it takes %1 to the first click; the car&apos;s sheet says %2.</source>
        <translation>Nach dem, was in den leergepumpten Tank ging, fasst er %1 bis zum ersten Klick; das Blatt des Wagens sagt %2.</translation>
    </message>
    <message>
        <source>The calibration read %1, which this circuit cannot give.</source>
        <translation>Die Kalibrierung las %1, was diese Schaltung nicht liefern kann.</translation>
    </message>
    <message>
        <source>The lamp would light in a full tank.</source>
        <translation>Die Lampe würde bei vollem Tank leuchten.</translation>
    </message>
    <message>
        <source>The zero mark would lie above a full tank.</source>
        <translation>Die Nullmarke läge über dem vollen Tank.</translation>
    </message>
    <message>
        <source>More would be left behind than the tank takes.</source>
        <translation>Es bliebe mehr zurück, als der Tank fasst.</translation>
    </message>
    <message>
        <source>The reading moves against the fuel. Is it right?</source>
        <translation>Der Messwert läuft dem Kraftstoff entgegen. Stimmt er?</translation>
    </message>
    <message>
        <source>By the readings so far this step is about %1, not %2. Is it right?</source>
        <translation>Nach den bisherigen Messwerten sind das etwa %1, nicht %2. Stimmt es?</translation>
    </message>
    <message>
        <source>That makes %1 in a tank that takes %2 to the first click. Is it right?</source>
        <translation>Das macht %1 in einem Tank, der %2 bis zum ersten Klick fasst. Stimmt es?</translation>
    </message>
    <message>
        <source>That is %1 more than was poured in. Is it right?</source>
        <translation>Das sind %1 mehr, als eingefüllt wurden. Stimmt es?</translation>
    </message>
    <message>
        <source>The day of the fill is missing</source>
        <translation>Der Tag der Tankfüllung fehlt</translation>
    </message>
    <message>
        <source>there is no calibration to verify</source>
        <translation>es gibt keine Kalibrierung, die zu prüfen wäre</translation>
    </message>
    <message>
        <source>there is no level to verify at</source>
        <translation>es gibt keinen Stand, an dem zu prüfen wäre</translation>
    </message>
    <message>
        <source>this tank is read by two signals</source>
        <translation>dieser Tank wird mit zwei Signalen abgelesen</translation>
    </message>
    <message>
        <source>this tank has one signal</source>
        <translation>dieser Tank hat ein Signal</translation>
    </message>
    <message>
        <source>there is no row of a level</source>
        <translation>es gibt keine Zeile mit einem Stand</translation>
    </message>
    <message>
        <source>one or more rows</source>
        <translation>eine Zeile oder mehr</translation>
    </message>
    <message>
        <source>Estimates, not promises: keep a margin. Never try out the reserve on a public road.</source>
        <translation>Schätzungen, keine Zusagen: Abstand halten. Die Reserve nie auf öffentlicher Straße ausprobieren.</translation>
    </message>
    <message>
        <source>Draining and pouring: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers on the ground, extinguisher in reach; by a qualified person, as local rules ask.</source>
        <translation>Ablassen und Eingießen: Benzindampf entzündet sich. Motor kalt und aus, keine Zündquelle, belüftet, geerdet, zugelassene Behälter auf dem Boden, Feuerlöscher in Reichweite; durch Fachkundige, wie örtliche Regeln es verlangen.</translation>
    </message>
    <message>
        <source>Calibrate again after work on tank, sender, wiring or display.</source>
        <translation>Nach Arbeiten an Tank, Geber, Verkabelung oder Anzeige neu kalibrieren.</translation>
    </message>
    <message>
        <source>this car has no calibration to hand over</source>
        <translation>dieser Wagen hat keine Kalibrierung zu übergeben</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>The logbook has more of them.</source>
        <translation>Das Logbuch hat mehr davon.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Hand-over sheet</source>
        <translation>Übergabeblatt</translation>
    </message>
    <message>
        <source>Car and sender</source>
        <translation>Wagen und Geber</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>capacity to the first click</source>
        <translation>Inhalt bis zum ersten Klick</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>Schaltung</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>Pull-up</translation>
    </message>
    <message>
        <source>odometer, last noted</source>
        <translation>Kilometerstand, zuletzt notiert</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation>kalibriert</translation>
    </message>
    <message>
        <source>zero mark, since drained</source>
        <translation>Nullmarke, seit leergepumpt</translation>
    </message>
    <message>
        <source>full, since drained</source>
        <translation>voll, seit leergepumpt</translation>
    </message>
    <message>
        <source>Level since drained; grey: with 90 %</source>
        <translation>Stand seit leergepumpt; grau: mit 90 %</translation>
    </message>
    <message>
        <source>Gauge table</source>
        <translation>Anzeigetabelle</translation>
    </message>
    <message>
        <source>Steps as poured</source>
        <translation>Schritte, wie eingegossen</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>The logbook has %1 more.</source>
        <translation>Das Logbuch hat %1 weitere.</translation>
    </message>
    <message>
        <source>Hidden reserve</source>
        <translation>Verborgene Reserve</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>sure (99 %) past zero</source>
        <translation>sicher (99 %) unter null</translation>
    </message>
    <message>
        <source>even (50 %)</source>
        <translation>hälftig (50 %)</translation>
    </message>
    <message>
        <source>No proof yet: from the calibration alone.</source>
        <translation>Noch kein Nachweis: allein aus der Kalibrierung.</translation>
    </message>
    <message>
        <source>Verification</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Litres taken out: ______   reading: ______   by the gauge: ______</source>
        <translation>Liter entnommen: ______   Ablesung: ______   laut Anzeige: ______</translation>
    </message>
    <message>
        <source>Checked by: ____________   on: ____________</source>
        <translation>Geprüft von: ____________   am: ____________</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>by the curve</source>
        <translation>laut Kurve</translation>
    </message>
    <message>
        <source>Passed at %1.</source>
        <translation>Bestanden bei %1.</translation>
    </message>
    <message>
        <source>NOT PASSED at %1: the rows in bold do not agree.</source>
        <translation>NICHT BESTANDEN bei %1: die fetten Zeilen stimmen nicht überein.</translation>
    </message>
    <message>
        <source>None found.</source>
        <translation>Keine gefunden.</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>Nullmarke</translation>
    </message>
    <message>
        <source>wait %1 min for the opening</source>
        <translation>%1 min auf die Öffnung warten</translation>
    </message>
    <message>
        <source>to the click, expect %1 to %2</source>
        <translation>bis zum Klick, etwa %1 bis %2</translation>
    </message>
    <message>
        <source>not to be passed</source>
        <translation>nicht vorbeifahren</translation>
    </message>
    <message>
        <source>past only with %1 (gauge %2)</source>
        <translation>vorbei nur mit %1 (Anzeige %2)</translation>
    </message>
    <message>
        <source>past only with %1</source>
        <translation>vorbei nur mit %1</translation>
    </message>
    <message>
        <source>one way from %1</source>
        <translation>ab %1 nur in einer Richtung</translation>
    </message>
    <message>
        <source>Supposed: %1.</source>
        <translation>Angenommen: %1.</translation>
    </message>
    <message>
        <source>nobody waits longer than a day for an opening</source>
        <translation>niemand wartet länger als einen Tag auf eine Öffnung</translation>
    </message>
    <message>
        <source>0 to 1440 minutes</source>
        <translation>0 bis 1440 Minuten</translation>
    </message>
    <message>
        <source>there is no fuel at this point, so it cannot be closed</source>
        <translation>an diesem Punkt gibt es keinen Kraftstoff, also kann er nicht geschlossen sein</translation>
    </message>
    <message>
        <source>another plan could save %1 of cost at most</source>
        <translation>ein anderer Plan könnte höchstens %1 an Kosten sparen</translation>
    </message>
    <message>
        <source>another plan could save %1 stops at most</source>
        <translation>ein anderer Plan könnte höchstens %1 Stopps sparen</translation>
    </message>
    <message>
        <source>another plan could save %1 minutes at most</source>
        <translation>ein anderer Plan könnte höchstens %1 Minuten sparen</translation>
    </message>
    <message>
        <source>another plan could save %1 litre-km at most</source>
        <translation>ein anderer Plan könnte höchstens %1 Liter-km sparen</translation>
    </message>
    <message>
        <source>a name is not text that can be shown</source>
        <translation>ein Name ist kein Text, der gezeigt werden kann</translation>
    </message>
    <message>
        <source>UTF-8 without control characters</source>
        <translation>UTF-8 ohne Steuerzeichen</translation>
    </message>
    <message>
        <source>no route or track of this name or number</source>
        <translation>keine Route und kein Track mit diesem Namen oder dieser Nummer</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>the file has several ways, and only one is driven</source>
        <translation>die Datei hat mehrere Wege, und nur einer wird gefahren</translation>
    </message>
    <message>
        <source>one %1 element, or the name of one</source>
        <translation>ein %1-Element, oder der Name von einem</translation>
    </message>
    <message>
        <source>the level as it was followed on the way</source>
        <translation>der Stand, wie er unterwegs verfolgt wurde</translation>
    </message>
    <message>
        <source>a number from 0 to 1</source>
        <translation>eine Zahl von 0 bis 1</translation>
    </message>
    <message>
        <source>there is a tank of that name already</source>
        <translation>es gibt schon einen Tank dieses Namens</translation>
    </message>
    <message>
        <source>a tank keeps its name</source>
        <translation>ein Tank behält seinen Namen</translation>
    </message>
    <message>
        <source>the vehicle has no such tank</source>
        <translation>das Fahrzeug hat keinen solchen Tank</translation>
    </message>
    <message>
        <source>this trip of the car&apos;s journal is kept already</source>
        <translation>diese Fahrt aus dem Fahrtenbuch des Wagens ist schon festgehalten</translation>
    </message>
    <message>
        <source>other entries name this tank</source>
        <translation>andere Einträge nennen diesen Tank</translation>
    </message>
    <message>
        <source>three capital letters, such as EUR</source>
        <translation>drei Großbuchstaben, etwa EUR</translation>
    </message>
    <message>
        <source>64 hexadecimal digits in lower case</source>
        <translation>64 hexadezimale Ziffern in Kleinbuchstaben</translation>
    </message>
    <message>
        <source>text of 1 to 1048576 bytes</source>
        <translation>Text von 1 bis 1048576 Byte</translation>
    </message>
    <message>
        <source>There is no plan to go by: the fuel has to be typed.</source>
        <translation>Es gibt keinen Plan, nach dem es geht: der Kraftstoff ist einzugeben.</translation>
    </message>
    <message>
        <source>%1 sure on each arrival.</source>
        <translation>%1 sicher bei jeder Ankunft.</translation>
    </message>
    <message>
        <source>%1 sure on each arrival, %2 at the end of a timed section.</source>
        <translation>%1 sicher bei jeder Ankunft, %2 am Ende einer Wertungsstrecke.</translation>
    </message>
    <message>
        <source>%1 sure of the whole way.</source>
        <translation>%1 sicher auf dem ganzen Weg.</translation>
    </message>
    <message>
        <source>Starts with %1.</source>
        <translation>Start mit %1.</translation>
    </message>
    <message>
        <source>Starts with %1, give or take %2.</source>
        <translation>Start mit %1, mehr oder weniger um %2.</translation>
    </message>
    <message>
        <source>Each stop counts as %1 in the cost.</source>
        <translation>Jeder Halt zählt %1 in den Kosten.</translation>
    </message>
    <message>
        <source>no stop is planned at %1: were it closed, the fuel would not last to another</source>
        <translation>bei %1 ist kein Halt geplant: wäre dort zu, reichte der Kraftstoff zu keiner anderen Stelle</translation>
    </message>
    <message>
        <source>%1: no stop any more.</source>
        <translation>%1: kein Halt mehr.</translation>
    </message>
    <message>
        <source>At the finish %1 instead of %2.</source>
        <translation>Im Ziel %1 statt %2.</translation>
    </message>
    <message>
        <source>%1: take on %2, which was not planned.</source>
        <translation>%1: %2 tanken, das war nicht geplant.</translation>
    </message>
    <message>
        <source>%1: take on %2 instead of %3.</source>
        <translation>%1: %2 tanken statt %3.</translation>
    </message>
    <message>
        <source>Risk of running dry %1 instead of %2.</source>
        <translation>Risiko, trocken zu fahren: %1 statt %2.</translation>
    </message>
    <message>
        <source>There is no plan any more.</source>
        <translation>Es gibt keinen Plan mehr.</translation>
    </message>
    <message>
        <source>There is a plan again.</source>
        <translation>Es gibt wieder einen Plan.</translation>
    </message>
    <message>
        <source>with the same confidence on timed sections as elsewhere there would be a plan</source>
        <translation>mit derselben Sicherheit auf Wertungsstrecken wie sonst gäbe es einen Plan</translation>
    </message>
    <message>
        <source>planning was stopped: this is the best plan so far</source>
        <translation>die Planung wurde abgebrochen: das ist der beste Plan bisher</translation>
    </message>
    <message>
        <source>rests %1 min</source>
        <translation>Pause %1 min</translation>
    </message>
    <message>
        <source>due %1, late by %2 min</source>
        <translation>Soll %1, %2 min zu spät</translation>
    </message>
    <message>
        <source>due %1, %2 min to spare</source>
        <translation>Soll %1, %2 min Reserve</translation>
    </message>
    <message>
        <source>if closed nothing else is sure to be reached</source>
        <translation>wenn zu, ist nichts anderes sicher zu erreichen</translation>
    </message>
    <message>
        <source>if closed on to %1</source>
        <translation>wenn zu, weiter bis %1</translation>
    </message>
    <message>
        <source>Least cost.</source>
        <translation>Geringste Kosten.</translation>
    </message>
    <message>
        <source>Fewest stops.</source>
        <translation>Wenigste Halte.</translation>
    </message>
    <message>
        <source>Least time.</source>
        <translation>Kürzeste Zeit.</translation>
    </message>
    <message>
        <source>Lightest car.</source>
        <translation>Leichtestes Auto.</translation>
    </message>
    <message>
        <source>the plan has too many stops for a card</source>
        <translation>der Plan hat zu viele Halte für eine Karte</translation>
    </message>
    <message>
        <source>Fuel card, page %1 of %2</source>
        <translation>Spritkarte, Seite %1 von %2</translation>
    </message>
    <message>
        <source>day ____________</source>
        <translation>Tag ____________</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Zähler %1</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>getankt</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>late at %1 by %2 min</source>
        <translation>zu spät bei %1 um %2 min</translation>
    </message>
    <message>
        <source>due times are not looked at: they need a departure and a speed</source>
        <translation>Sollzeiten werden nicht beachtet: sie brauchen Abfahrt und Geschwindigkeit</translation>
    </message>
    <message>
        <source>the speed of a mode needs the speed of the others</source>
        <translation>die Geschwindigkeit einer Fahrweise braucht die der anderen</translation>
    </message>
    <message>
        <source>calibrate it: there is no calibration yet</source>
        <translation>kalibrieren: es gibt noch keine Kalibrierung</translation>
    </message>
    <message>
        <source>calibrate it again: the calibration is older than two years</source>
        <translation>neu kalibrieren: die Kalibrierung ist älter als zwei Jahre</translation>
    </message>
    <message>
        <source>verify the calibration: take some litres out and read again</source>
        <translation>die Kalibrierung prüfen: einige Liter entnehmen und neu ablesen</translation>
    </message>
    <message>
        <source>look for the cause: the last verification was not passed</source>
        <translation>die Ursache suchen: die letzte Prüfung wurde nicht bestanden</translation>
    </message>
    <message>
        <source>hand it over: this was not done since the calibration</source>
        <translation>übergeben: das ist seit der Kalibrierung nicht geschehen</translation>
    </message>
    <message>
        <source>photos that are not what their names say were left out: %1</source>
        <translation>Fotos, die nicht sind, was ihr Name sagt, wurden ausgelassen: %1</translation>
    </message>
    <message>
        <source>This picture cannot be drawn.</source>
        <translation>Dieses Bild kann nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>the photo is too large</source>
        <translation>das Foto ist zu groß</translation>
    </message>
    <message>
        <source>the photo cannot be read</source>
        <translation>das Foto kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>this is no picture</source>
        <translation>das ist kein Bild</translation>
    </message>
    <message>
        <source>a whole JPEG or PNG</source>
        <translation>ein ganzes JPEG oder PNG</translation>
    </message>
    <message>
        <source>the photo is not beside the logbook</source>
        <translation>das Foto liegt nicht neben dem Logbuch</translation>
    </message>
    <message>
        <source>the photo is not what was kept</source>
        <translation>das Foto ist nicht das, was aufgehoben wurde</translation>
    </message>
    <message>
        <source>this is no tile of heights</source>
        <translation>das ist keine Kachel mit Höhen</translation>
    </message>
    <message>
        <source>1201 or 3601 rows and columns of two bytes</source>
        <translation>1201 oder 3601 Zeilen und Spalten zu zwei Bytes</translation>
    </message>
    <message>
        <source>this is no folder</source>
        <translation>das ist kein Ordner</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>this is no sound extract: %1</source>
        <translation>das ist kein heiler Kartenauszug: %1</translation>
    </message>
    <message>
        <source>an OpenStreetMap extract (.osm.pbf)</source>
        <translation>ein Auszug aus OpenStreetMap (.osm.pbf)</translation>
    </message>
    <message>
        <source>no pump along the track is called this</source>
        <translation>keine Tankstelle an der Strecke heißt so</translation>
    </message>
    <message>
        <source>a name or id that is listed</source>
        <translation>ein Name oder eine Kennung aus der Liste</translation>
    </message>
    <message>
        <source>too many roads within reach: detours are estimated from the straight line</source>
        <translation>zu viele Straßen in Reichweite: Umwege sind aus der Luftlinie geschätzt</translation>
    </message>
    <message>
        <source>%1 of the track are outside the map: pumps there are not known</source>
        <translation>%1 der Strecke liegen außerhalb der Karte: Tankstellen dort sind nicht bekannt</translation>
    </message>
    <message>
        <source>the map has no pump within %1 of the track</source>
        <translation>die Karte hat keine Tankstelle näher als %1 an der Strecke</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is closed when you pass and is left out</source>
        <translation>„%1“ hat zu, wenn man vorbeikommt, und ist weggelassen</translation>
    </message>
    <message>
        <source>of %1 of %2 pumps the map tells no opening hours: ask before you count on one</source>
        <translation>von %1 von %2 Tankstellen nennt die Karte keine Öffnungszeiten: fragen, bevor man damit rechnet</translation>
    </message>
    <message>
        <source>another program keeps this car&apos;s drive</source>
        <translation>ein anderes Programm führt die Fahrt dieses Autos</translation>
    </message>
    <message>
        <source>The source&apos;s clock jumped: the level goes on from what it shows now.</source>
        <translation>Die Uhr der Quelle ist gesprungen: der Stand geht von dem aus weiter, was sie jetzt zeigt.</translation>
    </message>
    <message>
        <source>The sender saw %1 go in, give or take %2: what does the pump show? If none went in, say so on Now.</source>
        <translation>Der Geber sah %1 hineinlaufen, auf %2 genau: Was zeigt die Zapfsäule? Wurde nicht getankt, sagen Sie es auf Jetzt.</translation>
    </message>
    <message>
        <source>%1: not understood: &apos;%2&apos;</source>
        <translation>%1: nicht verstanden: „%2“</translation>
    </message>
    <message>
        <source>%1: the device was lost; it is tried again</source>
        <translation>%1: das Gerät ging verloren; es wird wieder versucht</translation>
    </message>
    <message>
        <source>%1 comes from several senders: the first is heard, the others are left out</source>
        <translation>%1 kommt von mehreren Sendern: der erste wird gehört, die anderen bleiben weg</translation>
    </message>
    <message>
        <source>values that cannot be are left out</source>
        <translation>Werte, die nicht sein können, bleiben weg</translation>
    </message>
    <message>
        <source>What is driven is not written into the logbook: %1</source>
        <translation>Was gefahren wird, steht nicht im Logbuch: %1</translation>
    </message>
    <message>
        <source>the map says of none of them that it sells %1: ask before you count on one</source>
        <translation>von keiner sagt die Karte, dass sie %1 verkauft: fragen, bevor man damit rechnet</translation>
    </message>
    <message>
        <source>The sources kept with the car are not heard: %1</source>
        <translation>Die beim Auto geführten Quellen werden nicht gehört: %1</translation>
    </message>
    <message>
        <source>%1: the device is not there yet; it is tried again</source>
        <translation>%1: das Gerät ist noch nicht da; es wird wieder versucht</translation>
    </message>
    <message>
        <source>The calibration of the logbook: touch a level to correct it; to try it fill up to the first click, take some out and read.</source>
        <translation>Die Kalibrierung des Logbuchs: einen Stand antippen, um ihn zu berichtigen; zum Prüfen bis zum ersten Klick volltanken, etwas entnehmen und ablesen.</translation>
    </message>
    <message>
        <source>handed over before</source>
        <translation>zuvor übergeben</translation>
    </message>
    <message>
        <source>further tank</source>
        <translation>weiterer Tank</translation>
    </message>
    <message>
        <source>There is no calibration to take up.</source>
        <translation>Es gibt keine Kalibrierung zum Aufnehmen.</translation>
    </message>
    <message>
        <source>the tanks read</source>
        <translation>die Tanks abgelesen</translation>
    </message>
    <message>
        <source>the vehicle has no tank of this name</source>
        <translation>das Fahrzeug hat keinen Tank dieses Namens</translation>
    </message>
    <message>
        <source>the climb takes %1, give or take %2</source>
        <translation>der Anstieg braucht %1, auf %2 genau</translation>
    </message>
    <message>
        <source>downhill saves %1, give or take %2</source>
        <translation>bergab spart %1, auf %2 genau</translation>
    </message>
    <message>
        <source>%1: the climb is not a number</source>
        <translation>%1: der Anstieg ist keine Zahl</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>what a climb takes must be 0 or more</source>
        <translation>was ein Anstieg braucht, muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a car&apos;s mass must be above 0</source>
        <translation>die Masse eines Autos muss über 0 liegen</translation>
    </message>
    <message>
        <source>kg above 0</source>
        <translation>kg über 0</translation>
    </message>
    <message>
        <source>an engine&apos;s efficiency must be between 0 and 1</source>
        <translation>der Wirkungsgrad eines Motors muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>pour 1 can of the crew</source>
        <translation>1 Kanister der Begleiter eingießen</translation>
    </message>
    <message>
        <source>pour %1 cans of the crew</source>
        <translation>%1 Kanister der Begleiter eingießen</translation>
    </message>
    <message>
        <source>crew passed</source>
        <translation>an den Begleitern vorbei</translation>
    </message>
    <message>
        <source>dates are not looked at: they need the day and time of the departure, and a speed</source>
        <translation>Tage werden nicht beachtet: dazu braucht es Tag und Uhrzeit der Abfahrt und eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>%1: the last day is before the first</source>
        <translation>%1: der letzte Tag liegt vor dem ersten</translation>
    </message>
    <message>
        <source>none, pump, zone, can or crew</source>
        <translation>none, pump, zone, can oder crew</translation>
    </message>
    <message>
        <source>metres of height, -100000 to 100000</source>
        <translation>Höhenmeter, -100000 bis 100000</translation>
    </message>
    <message>
        <source>the last day is before the first</source>
        <translation>der letzte Tag liegt vor dem ersten</translation>
    </message>
    <message>
        <source>%1 full fills taught nothing of consumption: what is burnt shows only between two halts at which every tank is filled to the first click, %2 too</source>
        <translation>Aus %1 Volltankungen war nichts über den Verbrauch zu lernen: er zeigt sich nur zwischen zwei Halten, bei denen jeder Tank bis zum ersten Klick gefüllt wird, auch %2</translation>
    </message>
    <message>
        <source>The reading stands still while fuel is burnt: another tank feeds, or the float is stuck. Look at the tap or the transfer pump; if this tank feeds, count on consumption.</source>
        <translation>Die Anzeige steht still, während Kraftstoff verbrannt wird: Ein anderer Tank speist, oder der Schwimmer klemmt. Nach dem Hahn oder der Umfüllpumpe sehen; speist dieser Tank, dann nach dem Verbrauch rechnen.</translation>
    </message>
    <message>
        <source>The fuel is told in one way: as litres or as a reading.</source>
        <translation>Der Kraftstoff wird auf eine Art genannt: in Litern oder als Messwert.</translation>
    </message>
    <message>
        <source>The reading of the lobe with the pump is missing.</source>
        <translation>Der Wert der Kammer mit der Pumpe fehlt.</translation>
    </message>
    <message>
        <source>this is no time of day</source>
        <translation>das ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>0830 or 8.30, say</source>
        <translation>etwa 0830 oder 8.30</translation>
    </message>
    <message>
        <source>The time of departure and the speed go together.</source>
        <translation>Abfahrtszeit und Geschwindigkeit gehören zusammen.</translation>
    </message>
    <message>
        <source>How much is in each can is missing.</source>
        <translation>Es fehlt, wie viel in jedem Kanister ist.</translation>
    </message>
    <message>
        <source>this is no date</source>
        <translation>das ist kein Datum</translation>
    </message>
    <message>
        <source>20260531, say</source>
        <translation>etwa 20260531</translation>
    </message>
    <message>
        <source>The reading is missing.</source>
        <translation>Der Messwert fehlt.</translation>
    </message>
    <message>
        <source>a reading, or litres</source>
        <translation>ein Messwert oder Liter</translation>
    </message>
    <message>
        <source>the first reading, too</source>
        <translation>auch der erste Messwert</translation>
    </message>
    <message>
        <source>the litres of %1</source>
        <translation>den Litern vom %1</translation>
    </message>
    <message>
        <source>the reading of %1</source>
        <translation>dem Messwert vom %1</translation>
    </message>
    <message>
        <source>the level as it was followed until %1</source>
        <translation>dem bis %1 verfolgten Stand</translation>
    </message>
    <message>
        <source>the odometer is lower than at the level that was kept</source>
        <translation>der Kilometerstand ist niedriger als beim gesicherten Stand</translation>
    </message>
    <message>
        <source>from %1: %2</source>
        <translation>nach %1: %2</translation>
    </message>
    <message>
        <source>%1, then %2 and %3 more</source>
        <translation>%1, danach %2 und %3 dazu</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, danach %2</translation>
    </message>
    <message>
        <source>neither the kept level nor the last full fill has an odometer to count from</source>
        <translation>weder der gesicherte Stand noch die letzte volle Füllung hat einen Kilometerstand, von dem zu zählen wäre</translation>
    </message>
    <message>
        <source>the odometer is lower than it was before the kept level</source>
        <translation>der Kilometerstand ist niedriger als vor dem gesicherten Stand</translation>
    </message>
    <message>
        <source>not used: another zero mark was in force then, and nothing says how far it was from today&apos;s</source>
        <translation>nicht benutzt: damals galt eine andere Nullmarke, und nichts sagt, wie weit sie von der heutigen lag</translation>
    </message>
    <message>
        <source>a level needs a reading or litres</source>
        <translation>ein Stand braucht einen Messwert oder Liter</translation>
    </message>
    <message>
        <source>a second reading or a noise goes with a reading</source>
        <translation>ein zweiter Messwert oder ein Rauschen gehört zu einem Messwert</translation>
    </message>
    <message>
        <source>%1, at a zero mark %2 higher than today&apos;s</source>
        <translation>%1, bei einer Nullmarke %2 über der heutigen</translation>
    </message>
    <message>
        <source>%1, at a zero mark %2 lower than today&apos;s</source>
        <translation>%1, bei einer Nullmarke %2 unter der heutigen</translation>
    </message>
    <message>
        <source>no more than %1 further tanks can be heard</source>
        <translation>mehr als %1 weitere Tanks können nicht gehört werden</translation>
    </message>
    <message>
        <source>one of the first, in the order in which they were added</source>
        <translation>einer der ersten, in der Reihenfolge, in der sie hinzugefügt wurden</translation>
    </message>
    <message>
        <source>No more fuel comes over from the other tank, in which there is some left: its pump is switched off or has failed.</source>
        <translation>Aus dem anderen Tank kommt kein Kraftstoff mehr herüber, obwohl noch welcher darin ist: seine Pumpe ist abgeschaltet oder ausgefallen.</translation>
    </message>
    <message>
        <source>No more fuel comes over from %1: about %2 came, about %3 are left in it. Is its pump switched off, or has it failed?</source>
        <translation>Aus %1 kommt kein Kraftstoff mehr herüber: etwa %2 sind gekommen, etwa %3 sind noch darin. Ist die Pumpe abgeschaltet oder ausgefallen?</translation>
    </message>
    <message>
        <source>%1 does not empty while the tank beside it does: about %2 in it do not come over. Count only on the vehicle&apos;s own tank and check what joins them.</source>
        <translation>%1 leert sich nicht, der Tank daneben schon: etwa %2 darin kommen nicht herüber. Nur mit dem eigenen Tank des Fahrzeugs rechnen und die Verbindung prüfen.</translation>
    </message>
    <message>
        <source>the fill of %1 seems to have been in the tank already when the level was kept: it is not counted twice</source>
        <translation>die Füllung von %1 war wohl schon im Tank, als der Stand gesichert wurde: sie zählt nicht doppelt</translation>
    </message>
</context>
<context>
    <name>undermark::SetupViewModel</name>
    <message>
        <source>My car</source>
        <translation>Mein Wagen</translation>
    </message>
    <message>
        <source>tank, to the first click</source>
        <translation>Tank bis zum ersten Klick</translation>
    </message>
    <message>
        <source>under the zero mark, if known</source>
        <translation>unter der Nullmarke, falls bekannt</translation>
    </message>
    <message>
        <source>Petrol</source>
        <translation>Benzin</translation>
    </message>
    <message>
        <source>Diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>LPG</source>
        <translation>Autogas</translation>
    </message>
    <message>
        <source>Ethanol</source>
        <translation>Ethanol</translation>
    </message>
</context>
<context>
    <name>undermark::TankChoice</name>
    <message>
        <source>The car&apos;s own</source>
        <translation>Der des Wagens</translation>
    </message>
    <message>
        <source>Which tank?</source>
        <translation>Welcher Tank?</translation>
    </message>
</context>
<context>
    <name>undermark::TankViewModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation>kalibriert</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>Nullmarke</translation>
    </message>
    <message>
        <source>%1 above drained, at %2</source>
        <translation>%1 über leergepumpt, bei %2</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation>ein Punkt verfehlt die Kurve um</translation>
    </message>
    <message>
        <source>while driving, lower than read by</source>
        <translation>beim Fahren niedriger als gelesen um</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>A gauge table needs a calibration first.</source>
        <translation>Eine Tabelle braucht zuerst eine Kalibrierung.</translation>
    </message>
    <message>
        <source>A gauge that draws straight lines between these points is wrong by at most %1.</source>
        <translation>Eine Anzeige, die diese Punkte gerade verbindet, irrt um höchstens %1.</translation>
    </message>
    <message>
        <source>in %</source>
        <translation>in %</translation>
    </message>
    <message>
        <source>in L</source>
        <translation>in L</translation>
    </message>
    <message>
        <source>points: %1</source>
        <translation>Punkte: %1</translation>
    </message>
    <message>
        <source>decimals: %1</source>
        <translation>Stellen: %1</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Kopiert.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>Cannot be written: %1</source>
        <translation>Lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>past the zero mark: %1 sure, %2 even, %3 hopeful</source>
        <translation>unter der Nullmarke: %1 sicher, %2 hälftig, %3 erhofft</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, danach %2</translation>
    </message>
    <message>
        <source>the calibration and what is usually left behind</source>
        <translation>die Kalibrierung und was gewöhnlich zurückbleibt</translation>
    </message>
    <message>
        <source>no proof yet</source>
        <translation>noch kein Beleg</translation>
    </message>
    <message>
        <source>More proof of these kinds would not help.</source>
        <translation>Mehr Belege dieser Art würden nicht helfen.</translation>
    </message>
    <message>
        <source>%1. It would leave ± %2.</source>
        <translation>%1. Es blieben ± %2.</translation>
    </message>
    <message>
        <source>Never test the reserve on a public road.</source>
        <translation>Die Reserve nie auf öffentlicher Straße erproben.</translation>
    </message>
    <message>
        <source>Caution: %1 %2</source>
        <translation>Vorsicht: %1 %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>%1 above drained</source>
        <translation>%1 über leergepumpt</translation>
    </message>
    <message>
        <source>Two signals have no gauge table: a gauge takes one, as of senders in series.</source>
        <translation>Für zwei Signale gibt es keine Anzeigetabelle: eine Anzeige nimmt eines, wie von Gebern in Reihe.</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>passed, %1</source>
        <translation>bestanden, %1</translation>
    </message>
    <message>
        <source>NOT PASSED, %1</source>
        <translation>NICHT BESTANDEN, %1</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>geprüft</translation>
    </message>
</context>
<context>
    <name>undermark::TransferViewModel</name>
    <message>
        <source>Written: %1. In it are the tables for a spreadsheet, and logbook.sqlite for another device.</source>
        <translation>Geschrieben: %1. Darin sind die Tabellen für ein Rechenblatt und logbook.sqlite für ein anderes Gerät.</translation>
    </message>
    <message>
        <source>Added %1 fills. The logbook as it was: %2</source>
        <translation>Hinzugefügt: %1 Füllungen. Das bisherige Logbuch: %2</translation>
    </message>
    <message>
        <source>Took in %1 records, %2 were here already. The logbook as it was: %3</source>
        <translation>Übernommen: %1 Einträge, schon hier: %2. Das bisherige Logbuch: %3</translation>
    </message>
    <message>
        <source>Import and export</source>
        <translation>Übernehmen und ausgeben</translation>
    </message>
    <message>
        <source>Which logbook?</source>
        <translation>Welches Logbuch?</translation>
    </message>
    <message>
        <source>Which table?</source>
        <translation>Welche Tabelle?</translation>
    </message>
    <message>
        <source>What the numbers in the table are</source>
        <translation>Was die Zahlen der Tabelle sind</translation>
    </message>
    <message>
        <source>What would be added</source>
        <translation>Was hinzukäme</translation>
    </message>
    <message>
        <source>Take in another logbook</source>
        <translation>Anderes Logbuch übernehmen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>A logbook or bundle of another device ends in .sqlite.</source>
        <translation>Ein Logbuch oder Bündel eines anderen Geräts endet auf .sqlite.</translation>
    </message>
    <message>
        <source>A table is a .csv file with the columns date and litres, and what may follow: odometer_km, full, price_per_l.</source>
        <translation>Eine Tabelle ist eine .csv-Datei mit den Spalten date und litres, und was folgen darf: odometer_km, full, price_per_l.</translation>
    </message>
    <message>
        <source>%1: nothing is guessed. Look at each line.</source>
        <translation>%1: nichts wird geraten. Jede Zeile ansehen.</translation>
    </message>
    <message>
        <source>Would add %1 fills</source>
        <translation>Neue Füllungen: %1</translation>
    </message>
    <message>
        <source>; %1 are in the log already</source>
        <translation>; schon im Logbuch: %1</translation>
    </message>
    <message>
        <source>; %1 are of other vehicles</source>
        <translation>; von anderen Fahrzeugen: %1</translation>
    </message>
    <message>
        <source>Everything in %1 that is not here yet is taken in; what is here stays. The logbook as it was is kept beside it.</source>
        <translation>Alles in %1, was hier noch fehlt, wird übernommen; was hier ist, bleibt. Das bisherige Logbuch wird daneben aufgehoben.</translation>
    </message>
    <message>
        <source>Litres in the table are</source>
        <translation>Liter der Tabelle sind</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>US-Gallonen</translation>
    </message>
    <message>
        <source>imperial gallons</source>
        <translation>britische Gallonen</translation>
    </message>
    <message>
        <source>Kilometres in the table are</source>
        <translation>Kilometer der Tabelle sind</translation>
    </message>
    <message>
        <source>kilometres</source>
        <translation>Kilometer</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>Meilen</translation>
    </message>
    <message>
        <source>Dates are written</source>
        <translation>Daten stehen als</translation>
    </message>
    <message>
        <source>2026-05-31</source>
        <translation>2026-05-31</translation>
    </message>
    <message>
        <source>31.5.2026</source>
        <translation>31.5.2026</translation>
    </message>
    <message>
        <source>5/31/2026</source>
        <translation>5/31/2026</translation>
    </message>
    <message>
        <source>The car&apos;s own figure is</source>
        <translation>Die Angabe des Autos ist</translation>
    </message>
    <message>
        <source>L/100 km</source>
        <translation>L/100 km</translation>
    </message>
    <message>
        <source>km/L</source>
        <translation>km/L</translation>
    </message>
    <message>
        <source>US mpg</source>
        <translation>US-mpg</translation>
    </message>
    <message>
        <source>imperial mpg</source>
        <translation>britische mpg</translation>
    </message>
    <message>
        <source>Temperatures are</source>
        <translation>Temperaturen sind</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>and more</source>
        <translation>und mehr</translation>
    </message>
    <message>
        <source>%1 fills</source>
        <translation>%1 Füllungen</translation>
    </message>
    <message>
        <source>Show what would be added</source>
        <translation>Zeigen, was hinzukäme</translation>
    </message>
    <message>
        <source>Add %1 fills</source>
        <translation>%1 Füllungen hinzufügen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Added %1 trips. The logbook as it was: %2</source>
        <translation>Hinzugefügt: %1 Fahrten. Das bisherige Logbuch: %2</translation>
    </message>
    <message>
        <source>Would add %1 trips</source>
        <translation>Neue Fahrten: %1</translation>
    </message>
    <message>
        <source>%1 trips</source>
        <translation>%1 Fahrten</translation>
    </message>
    <message>
        <source>Add %1 trips</source>
        <translation>%1 Fahrten hinzufügen</translation>
    </message>
    <message>
        <source>Everything goes into a new folder, beside the logbook or on a stick; nothing is written over.</source>
        <translation>Alles kommt in einen neuen Ordner, neben dem Logbuch oder auf einem Stick; nichts wird überschrieben.</translation>
    </message>
    <message>
        <source>A table is a .csv file with the columns date, km and mode, and what may follow: idle_min, starts, climb_m.</source>
        <translation>Eine Tabelle ist eine .csv-Datei mit den Spalten date, km und mode, und was folgen kann: idle_min, starts, climb_m.</translation>
    </message>
</context>
</TS>
