<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>AheadPage</name>
    <message>
        <source>Stops</source>
        <translation>Arrêts</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Et si</translation>
    </message>
    <message>
        <source>From here</source>
        <translation>D’ici</translation>
    </message>
    <message>
        <source>Aim of the plan; press for the next one</source>
        <translation>But du plan ; toucher pour le suivant</translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation>%1 sûr</translation>
    </message>
    <message>
        <source>Confidence of each arrival; press for the next one</source>
        <translation>Sûreté de chaque arrivée ; toucher pour la suivante</translation>
    </message>
    <message>
        <source>Other route</source>
        <translation>Autre route</translation>
    </message>
    <message>
        <source>A route is a .csv or .gpx file: points in order, with distances, driving and where fuel can be had.</source>
        <translation>Une route est un fichier .csv ou .gpx : points dans l’ordre, avec distances, conduite et où trouver du carburant.</translation>
    </message>
</context>
<context>
    <name>CalibrationCautions</name>
    <message>
        <source>How is the tank read?</source>
        <translation>Comment lit-on le réservoir ?</translation>
    </message>
</context>
<context>
    <name>CalibrationLevel</name>
    <message>
        <source>Taken so far</source>
        <translation>Déjà pris</translation>
    </message>
</context>
<context>
    <name>CalibrationPages</name>
    <message>
        <source>Leave it here</source>
        <translation>En rester là</translation>
    </message>
    <message>
        <source>What was taken is kept</source>
        <translation>Ce qui est pris est gardé</translation>
    </message>
</context>
<context>
    <name>ConsumptionView</name>
    <message>
        <source>Two fills to the first click make the first point here.</source>
        <translation>Deux pleins au premier déclic font ici le premier point.</translation>
    </message>
    <message>
        <source>Points: what each tank burnt; hollow: kept out as odd. Line and band: what was expected before it, 90 % of tanks lie in the band.</source>
        <translation>Points : ce que chaque plein a brûlé ; creux : écarté. Ligne et bande : l’attendu d’avant, 90 % des pleins sont dans la bande.</translation>
    </message>
</context>
<context>
    <name>ConsumptionWords</name>
    <message>
        <source>Consumption, tanks: %1, the last one %2; expected before it: %3 to %4</source>
        <translation>Consommation, pleins : %1, le dernier %2 ; attendu avant : %3 à %4</translation>
    </message>
    <message>
        <source>Kept out as odd: %1.</source>
        <translation>Écartés : %1.</translation>
    </message>
</context>
<context>
    <name>FilePicker</name>
    <message>
        <source>%1 (folder)</source>
        <translation>%1 (dossier)</translation>
    </message>
</context>
<context>
    <name>FillEcho</name>
    <message>
        <source>was</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Takes this fill back out of the logbook</source>
        <translation>Retire ce plein du carnet</translation>
    </message>
    <message>
        <source>Next fill</source>
        <translation>Plein suivant</translation>
    </message>
</context>
<context>
    <name>FillForm</name>
    <message>
        <source>Caution: at a halt only, engine off.</source>
        <translation>Attention : à l’arrêt, moteur coupé.</translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>Log, newest first</source>
        <translation>Carnet, le plus récent d’abord</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Attention : %1</translation>
    </message>
</context>
<context>
    <name>HorizonWords</name>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>Fuel horizon: sure to the zero mark for %1, even %2; sure to dry for %3</source>
        <translation>Horizon de carburant : sûr jusqu’au repère zéro %1, moyen %2 ; sûr jusqu’à sec %3</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>repère zéro</translation>
    </message>
    <message>
        <source>sure to dry</source>
        <translation>sûr jusqu’à sec</translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to dry for %1</source>
        <translation>Horizon de cette étape : sûr jusqu’à sec %1</translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to its end</source>
        <translation>Horizon de cette étape : sûr jusqu’au bout</translation>
    </message>
</context>
<context>
    <name>IndexDividers</name>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>Changes the colours of the screen</source>
        <translation>Change les couleurs de l’écran</translation>
    </message>
</context>
<context>
    <name>LiveSignalCard</name>
    <message>
        <source>the source reads %1</source>
        <translation>la source indique %1</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Prendre</translation>
    </message>
</context>
<context>
    <name>LogEntry</name>
    <message>
        <source>As it was written down</source>
        <translation>Tel qu’il a été noté</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Takes the last thing written about this entry back</source>
        <translation>Retire ce qui a été noté en dernier sur cette entrée</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
</context>
<context>
    <name>LogWords</name>
    <message>
        <source>trip %1</source>
        <translation>partiel %1</translation>
    </message>
    <message>
        <source>counts, as you ruled</source>
        <translation>compte, comme décidé</translation>
    </message>
    <message>
        <source>left out, as you ruled</source>
        <translation>écarté, comme décidé</translation>
    </message>
    <message>
        <source>levels: %1, zero at %2</source>
        <translation>niveaux : %1, zéro à %2</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>vidé</translation>
    </message>
    <message>
        <source>base poured</source>
        <translation>base versée</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation>calé</translation>
    </message>
    <message>
        <source>past zero</source>
        <translation>au-delà de zéro</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Plein</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Trajet</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Preuve</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <source>full</source>
        <translation>plein</translation>
    </message>
    <message>
        <source>partial</source>
        <translation>partiel</translation>
    </message>
    <message>
        <source>to the neck</source>
        <translation>au goulot</translation>
    </message>
    <message>
        <source>a fill forgotten?</source>
        <translation>un plein oublié ?</translation>
    </message>
    <message>
        <source>a can filled too?</source>
        <translation>un bidon aussi ?</translation>
    </message>
    <message>
        <source>more than fits</source>
        <translation>plus que la place</translation>
    </message>
    <message>
        <source>wrong odometer?</source>
        <translation>compteur faux ?</translation>
    </message>
    <message>
        <source>odometer lower than before</source>
        <translation>compteur plus bas qu’avant</translation>
    </message>
    <message>
        <source>gallons typed as litres?</source>
        <translation>gallons pour litres ?</translation>
    </message>
    <message>
        <source>miles typed as km?</source>
        <translation>milles pour km ?</translation>
    </message>
    <message>
        <source>twice the usual</source>
        <translation>le double</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>improbable</translation>
    </message>
    <message>
        <source>put in</source>
        <translation>mis</translation>
    </message>
    <message>
        <source>how</source>
        <translation>comment</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation>partiel</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>reading on arrival</source>
        <translation>lecture à l’arrivée</translation>
    </message>
    <message>
        <source>blend</source>
        <translation>mélange</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>distance</translation>
    </message>
    <message>
        <source>driving</source>
        <translation>conduite</translation>
    </message>
    <message>
        <source>idling</source>
        <translation>ralenti</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>cold starts</source>
        <translation>démarrages à froid</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>genre</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>carburant</translation>
    </message>
    <message>
        <source>left behind</source>
        <translation>resté</translation>
    </message>
    <message>
        <source>past the zero mark</source>
        <translation>au-delà du repère zéro</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non lu</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>Rates</source>
        <translation>Conso</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Échange</translation>
    </message>
    <message>
        <source>Read the logbook again</source>
        <translation>Relire le carnet</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Undermark</source>
        <translation>Undermark</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ici</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation>Devant</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Réservoir</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Carnet</translation>
    </message>
</context>
<context>
    <name>ModeNames</name>
    <message>
        <source>Town</source>
        <translation>Ville</translation>
    </message>
    <message>
        <source>Open road</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>Motorway</source>
        <translation>Autoroute</translation>
    </message>
    <message>
        <source>Special stage</source>
        <translation>Spéciale</translation>
    </message>
</context>
<context>
    <name>MovingCover</name>
    <message>
        <source>Caution: the car is moving. Nothing is to be typed while driving: that is for the passenger, or at a halt.</source>
        <translation>Attention : la voiture roule. Ne rien taper en conduisant : c’est au passager, ou à l’arrêt.</translation>
    </message>
    <message>
        <source>I am the passenger</source>
        <translation>Je suis le passager</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Press for the next notice</source>
        <translation>Toucher pour l’avis suivant</translation>
    </message>
    <message>
        <source>%1 of %2, next</source>
        <translation>%1 sur %2, suite</translation>
    </message>
</context>
<context>
    <name>NoticeWords</name>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Problème</translation>
    </message>
</context>
<context>
    <name>NowPage</name>
    <message>
        <source>sure to the zero mark</source>
        <translation>sûr jusqu’au repère zéro</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Redemander</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Erase</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>décimale</translation>
    </message>
</context>
<context>
    <name>PlanHere</name>
    <message>
        <source>Plan what is left of the route, with the fuel the car has now.</source>
        <translation>Planifier le reste de la route, avec le carburant de maintenant.</translation>
    </message>
    <message>
        <source>Plan from here</source>
        <translation>Planifier d’ici</translation>
    </message>
    <message>
        <source>Plan the whole route</source>
        <translation>Planifier toute la route</translation>
    </message>
    <message>
        <source>Write the fuel card</source>
        <translation>Écrire la fiche</translation>
    </message>
</context>
<context>
    <name>PlanRoute</name>
    <message>
        <source>Save the route</source>
        <translation>Garder la route</translation>
    </message>
    <message>
        <source>Touch a row to change it.</source>
        <translation>Toucher une ligne pour la changer.</translation>
    </message>
</context>
<context>
    <name>PlanStops</name>
    <message>
        <source>What would do, each by itself</source>
        <translation>Ce qui suffirait, chacun seul</translation>
    </message>
    <message>
        <source>sure: on arrival with 99 % probability. An estimate: keep a margin.</source>
        <translation>sûr : à l’arrivée avec 99 % de probabilité. Une estimation : garder une marge.</translation>
    </message>
</context>
<context>
    <name>RangeTable</name>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>even</source>
        <translation>moyen</translation>
    </message>
    <message>
        <source>hopeful</source>
        <translation>espéré</translation>
    </message>
</context>
<context>
    <name>RouteLegEditor</name>
    <message>
        <source>Row before</source>
        <translation>Ligne d&apos;avant</translation>
    </message>
    <message>
        <source>Row after</source>
        <translation>Ligne d&apos;après</translation>
    </message>
    <message>
        <source>What another distance does to the rows behind; press to change it</source>
        <translation>Ce qu&apos;une autre distance fait aux lignes suivantes ; appuyer pour changer</translation>
    </message>
    <message>
        <source>Add a row after this one</source>
        <translation>Ajouter une ligne après</translation>
    </message>
    <message>
        <source>Remove this row</source>
        <translation>Retirer cette ligne</translation>
    </message>
    <message>
        <source>name of the row</source>
        <translation>nom de la ligne</translation>
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
    <name>SetupPage</name>
    <message>
        <source>Which car?</source>
        <translation>Quelle voiture ?</translation>
    </message>
    <message>
        <source>name of the car</source>
        <translation>nom de la voiture</translation>
    </message>
    <message>
        <source>Look at the demo car</source>
        <translation>Voir la voiture d’exemple</translation>
    </message>
    <message>
        <source>Set up this car</source>
        <translation>Créer cette voiture</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
</context>
<context>
    <name>TankCurve</name>
    <message>
        <source>This tank has no calibration yet. It takes a drained tank, a measuring can and an hour.</source>
        <translation>Ce réservoir n’est pas étalonné. Il faut un réservoir vidé, un bidon mesureur et une heure.</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Étalonner</translation>
    </message>
</context>
<context>
    <name>TankPage</name>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>Gauge table</source>
        <translation>Table</translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation>Réserve</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Étalonner</translation>
    </message>
</context>
<context>
    <name>TankReserve</name>
    <message>
        <source>hidden reserve, an estimate</source>
        <translation>réserve cachée, une estimation</translation>
    </message>
    <message>
        <source>Evidence, and what it made of it</source>
        <translation>Preuves, et ce qu’elles en ont fait</translation>
    </message>
    <message>
        <source>Next proof</source>
        <translation>Prochaine preuve</translation>
    </message>
</context>
<context>
    <name>TankTable</name>
    <message>
        <source>Fewer</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation>Écrire un fichier</translation>
    </message>
</context>
<context>
    <name>TankWords</name>
    <message>
        <source>%1 since drained</source>
        <translation>%1 depuis vidé</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>repère zéro</translation>
    </message>
    <message>
        <source>Level curve, points: %1, up to %2</source>
        <translation>Courbe de niveau, points : %1, jusqu’à %2</translation>
    </message>
    <message>
        <source>%1 in the lobe with the pump</source>
        <translation>%1 dans la poche de la pompe</translation>
    </message>
    <message>
        <source>%1 in the other lobe</source>
        <translation>%1 dans l’autre poche</translation>
    </message>
    <message>
        <source>Curve of the lobe with the pump, up to %1</source>
        <translation>Courbe de la poche de la pompe, jusqu’à %1</translation>
    </message>
    <message>
        <source>Curve of the other lobe, up to %1</source>
        <translation>Courbe de l’autre poche, jusqu’à %1</translation>
    </message>
    <message>
        <source>the lobe with the pump takes</source>
        <translation>la poche de la pompe contient</translation>
    </message>
    <message>
        <source>the other lobe takes</source>
        <translation>l’autre poche contient</translation>
    </message>
</context>
<context>
    <name>TransferView</name>
    <message>
        <source>Export the whole logbook</source>
        <translation>Exporter tout le carnet</translation>
    </message>
    <message>
        <source>Take in fills from a table</source>
        <translation>Reprendre des pleins d&apos;un tableau</translation>
    </message>
    <message>
        <source>Take in another device&apos;s logbook</source>
        <translation>Reprendre le carnet d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Take in trips from a table</source>
        <translation>Reprendre des trajets d&apos;un tableau</translation>
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
</context>
<context>
    <name>undermark::CalibrationGuide</name>
    <message>
        <source>taken out</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>versé</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>zero mark above drained</source>
        <translation>repère zéro au-dessus de vidé</translation>
    </message>
    <message>
        <source>Touch every caution once it holds here.</source>
        <translation>Toucher chaque précaution dès qu’elle est remplie ici.</translation>
    </message>
    <message>
        <source>How much was poured comes first.</source>
        <translation>D’abord : combien a été versé.</translation>
    </message>
    <message>
        <source>This is not a reading.</source>
        <translation>Ce n’est pas une lecture.</translation>
    </message>
    <message>
        <source>A level needs its litres and at least one reading.</source>
        <translation>Un niveau demande ses litres et au moins une lecture.</translation>
    </message>
    <message>
        <source>Where the zero mark is, is missing.</source>
        <translation>Il manque où est le repère zéro.</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>1 of 7: Prepare</source>
        <translation>1 sur 7 : Préparer</translation>
    </message>
    <message>
        <source>2 of 7: Drained</source>
        <translation>2 sur 7 : Vidé</translation>
    </message>
    <message>
        <source>3 of 7: Base pour</source>
        <translation>3 sur 7 : Base</translation>
    </message>
    <message>
        <source>4 of 7: Pour in steps</source>
        <translation>4 sur 7 : Verser par étapes</translation>
    </message>
    <message>
        <source>5 of 7: Full</source>
        <translation>5 sur 7 : Plein</translation>
    </message>
    <message>
        <source>6 of 7: Verify</source>
        <translation>6 sur 7 : Vérifier</translation>
    </message>
    <message>
        <source>7 of 7: Review</source>
        <translation>7 sur 7 : Revoir</translation>
    </message>
    <message>
        <source>Touch each line once it holds here and now.</source>
        <translation>Toucher chaque ligne dès qu’elle est vraie ici et maintenant.</translation>
    </message>
    <message>
        <source>Pump out until the pump spits, and stop there. Car level. Read the sender.</source>
        <translation>Pomper jusqu’à ce que la pompe crache, puis arrêter. Voiture à plat. Lire la jauge.</translation>
    </message>
    <message>
        <source>Pour a measured base: what will be under the zero mark. Wait, then read.</source>
        <translation>Verser une base mesurée : ce qui sera sous le repère zéro. Attendre, puis lire.</translation>
    </message>
    <message>
        <source>Pour a measured amount, wait, read. The more steps, the better the curve.</source>
        <translation>Verser une quantité mesurée, attendre, lire. Plus d’étapes, meilleure courbe.</translation>
    </message>
    <message>
        <source>Fill to the first click of the nozzle. Type what went in since the last step.</source>
        <translation>Remplir jusqu’au premier déclic. Taper ce qui est entré depuis la dernière étape.</translation>
    </message>
    <message>
        <source>Take a measured amount out again and read: driving goes down, too.</source>
        <translation>Retirer une quantité mesurée et lire : rouler aussi fait descendre.</translation>
    </message>
    <message>
        <source>Look at the curve and the findings, choose the zero mark, save.</source>
        <translation>Regarder la courbe et les constats, choisir le repère zéro, garder.</translation>
    </message>
    <message>
        <source>Engine cold and off, no ignition source, ventilated: petrol vapour ignites.</source>
        <translation>Moteur froid et coupé, aucune flamme, aéré : la vapeur d’essence s’enflamme.</translation>
    </message>
    <message>
        <source>Earthed. Approved containers, filled on the ground, never past their nominal volume.</source>
        <translation>Mis à la terre. Bidons homologués, remplis au sol, jamais au-delà de leur volume.</translation>
    </message>
    <message>
        <source>Extinguisher in reach, eyes and skin protected.</source>
        <translation>Extincteur à portée, yeux et peau protégés.</translation>
    </message>
    <message>
        <source>Pressure relieved before the fuel line is opened; pumping stops at the first spit (a diesel run dry can ruin its injection); the battery is watched.</source>
        <translation>Pression relâchée avant d’ouvrir la conduite ; on arrête au premier crachement (un diesel à sec peut ruiner son injection) ; la batterie est surveillée.</translation>
    </message>
    <message>
        <source>Local law comes first; a qualified person works on the fuel system.</source>
        <translation>La loi locale passe avant ; une personne qualifiée travaille sur le circuit.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>niveaux</translation>
    </message>
    <message>
        <source>signal</source>
        <translation>signal</translation>
    </message>
    <message>
        <source>rises as litres rise</source>
        <translation>monte avec les litres</translation>
    </message>
    <message>
        <source>falls as litres rise</source>
        <translation>baisse quand les litres montent</translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation>un point manque la courbe de</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lectures</translation>
    </message>
    <message>
        <source>none yet; five make it sure</source>
        <translation>aucune ; cinq la rendent sûre</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>stable</translation>
    </message>
    <message>
        <source>not settled: read %1 times more</source>
        <translation>pas stable : lire encore %1 fois</translation>
    </message>
    <message>
        <source>still moving: wait and read again</source>
        <translation>bouge encore : attendre et relire</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>state</source>
        <translation>état</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>vidé</translation>
    </message>
    <message>
        <source>The calibration is in the logbook.</source>
        <translation>L’étalonnage est dans le carnet.</translation>
    </message>
    <message>
        <source>Taken up where it was left: nothing is lost.</source>
        <translation>Repris là où c’était resté : rien n’est perdu.</translation>
    </message>
    <message>
        <source>All of it holds</source>
        <translation>Tout est rempli</translation>
    </message>
    <message>
        <source>Save this calibration</source>
        <translation>Garder l’étalonnage</translation>
    </message>
    <message>
        <source>Take this reading</source>
        <translation>Prendre la lecture</translation>
    </message>
    <message>
        <source>Next pour</source>
        <translation>Verser encore</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Suite</translation>
    </message>
    <message>
        <source>Now fill it up</source>
        <translation>Faire le plein</translation>
    </message>
    <message>
        <source>Without verifying</source>
        <translation>Sans vérifier</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un pas en arrière</translation>
    </message>
    <message>
        <source>Last reading away</source>
        <translation>Ôter la lecture</translation>
    </message>
    <message>
        <source>reading, lobe with the pump</source>
        <translation>lecture, poche de la pompe</translation>
    </message>
    <message>
        <source>reading, other lobe</source>
        <translation>lecture, autre poche</translation>
    </message>
    <message>
        <source>one lobe holds, if known</source>
        <translation>une poche contient, si connu</translation>
    </message>
    <message>
        <source>the other lobe holds</source>
        <translation>l’autre poche contient</translation>
    </message>
    <message>
        <source>A level takes the readings of both lobes.</source>
        <translation>Un niveau demande la lecture des deux poches.</translation>
    </message>
    <message>
        <source>These readings allow no curve</source>
        <translation>Ces lectures ne permettent pas de courbe</translation>
    </message>
    <message>
        <source>It has not settled: wait, or type the reading.</source>
        <translation>Pas encore stable : attendre, ou taper la lecture.</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>pas de lecture</translation>
    </message>
    <message>
        <source>waiting for the first reading</source>
        <translation>attend la première lecture</translation>
    </message>
    <message>
        <source>silent for %1 s: look at its cable</source>
        <translation>muette depuis %1 s : voir le câble</translation>
    </message>
    <message>
        <source>the source has ended</source>
        <translation>la source est finie</translation>
    </message>
    <message>
        <source>settling: %1 s more</source>
        <translation>se stabilise : encore %1 s</translation>
    </message>
    <message>
        <source>still moving</source>
        <translation>bouge encore</translation>
    </message>
    <message>
        <source> (%1 %2)</source>
        <translation> (%1 %2)</translation>
    </message>
    <message>
        <source>source, mean of %1</source>
        <translation>source, moyenne de %1</translation>
    </message>
    <message>
        <source>known to ±</source>
        <translation>connue à ±</translation>
    </message>
    <message>
        <source>drift a minute</source>
        <translation>dérive par minute</translation>
    </message>
    <message>
        <source>lines not read</source>
        <translation>lignes non lues</translation>
    </message>
    <message>
        <source>%1, the last: %2</source>
        <translation>%1, la dernière : %2</translation>
    </message>
    <message>
        <source>What each lobe holds tells how far their unequal emptying can mislead.</source>
        <translation>Ce que contient chaque poche dit combien leur vidage inégal peut tromper.</translation>
    </message>
    <message>
        <source>One sender</source>
        <translation>Une seule jauge</translation>
    </message>
    <message>
        <source>Saddle tank, senders in series</source>
        <translation>Réservoir à deux poches, jauges en série</translation>
    </message>
    <message>
        <source>Saddle tank, two signals</source>
        <translation>Réservoir à deux poches, deux signaux</translation>
    </message>
    <message>
        <source>%1, other lobe %2</source>
        <translation>%1, autre poche %2</translation>
    </message>
    <message>
        <source>none yet; one that has settled is enough</source>
        <translation>aucune encore ; une seule, stable, suffit</translation>
    </message>
    <message>
        <source>Neither signal has moved while %1 went in. Look at the wiring and the ground.</source>
        <translation>Aucun des signaux n’a bougé pendant que %1 entraient. Voir le câblage et la masse.</translation>
    </message>
    <message>
        <source>lobes that empty unequally</source>
        <translation>poches qui se vident inégalement</translation>
    </message>
    <message>
        <source>a level is up to ± %1 less sure, most so half full</source>
        <translation>un niveau est moins sûr de ± %1 au plus, surtout à moitié plein</translation>
    </message>
</context>
<context>
    <name>undermark::FileList</name>
    <message>
        <source>One folder up</source>
        <translation>Un dossier plus haut</translation>
    </message>
    <message>
        <source>Undermark&apos;s own folder</source>
        <translation>Le dossier d&apos;Undermark</translation>
    </message>
</context>
<context>
    <name>undermark::LogbookViewModel</name>
    <message>
        <source>%1, taken back</source>
        <translation>%1, retiré</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>driven since the fill before</source>
        <translation>roulé depuis le plein d’avant</translation>
    </message>
    <message>
        <source>burnt on it</source>
        <translation>brûlé sur ce trajet</translation>
    </message>
    <message>
        <source>Lift the ruling</source>
        <translation>Lever la décision</translation>
    </message>
    <message>
        <source>It is right: count it</source>
        <translation>C’est juste : compter</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>Undo the ruling</source>
        <translation>Annuler la décision</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Mettre %1</translation>
    </message>
    <message>
        <source>Undo the correction</source>
        <translation>Annuler la correction</translation>
    </message>
    <message>
        <source>Undo taking back</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Fills</source>
        <translation>Pleins</translation>
    </message>
    <message>
        <source>Proofs</source>
        <translation>Preuves</translation>
    </message>
    <message>
        <source>Nothing is written here yet. A fill at the pump is the first line.</source>
        <translation>Rien n’est noté. Un plein à la pompe fait la première ligne.</translation>
    </message>
    <message>
        <source>usual mix</source>
        <translation>mélange habituel</translation>
    </message>
    <message>
        <source>Undo the import</source>
        <translation>Annuler la reprise</translation>
    </message>
</context>
<context>
    <name>undermark::NowViewModel</name>
    <message>
        <source>The tank may be dry already: no distance is sure. Fill before driving on.</source>
        <translation>Le réservoir est peut-être à sec : aucune distance n’est sûre. Remplir avant de repartir.</translation>
    </message>
    <message>
        <source>The zero mark may be passed already: no distance to it is sure.</source>
        <translation>Le repère zéro est peut-être passé : aucune distance jusque-là n’est sûre.</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Pas de réponse</translation>
    </message>
    <message>
        <source>%1 since the last fill</source>
        <translation>%1 depuis le dernier plein</translation>
    </message>
    <message>
        <source>zero</source>
        <translation>zéro</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>below zero</source>
        <translation>sous zéro</translation>
    </message>
    <message>
        <source>above zero</source>
        <translation>au-dessus de zéro</translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation>réserve cachée</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>consommation</translation>
    </message>
    <message>
        <source>An estimate: keep a margin. %1</source>
        <translation>Une estimation : garder une marge. %1</translation>
    </message>
    <message>
        <source>Once the logbook can answer, the distance stands here.</source>
        <translation>Dès que le carnet peut répondre, la distance est ici.</translation>
    </message>
</context>
<context>
    <name>undermark::NumberForm</name>
    <message>
        <source>guess</source>
        <translation>deviné</translation>
    </message>
    <message>
        <source>%1: empty</source>
        <translation>%1 : vide</translation>
    </message>
    <message>
        <source>%1: %2 %3 %4</source>
        <translation>%1: %2 %3 %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The decimal mark here is %1</source>
        <translation>La décimale est ici : %1</translation>
    </message>
</context>
<context>
    <name>undermark::PlanViewModel</name>
    <message>
        <source>the car is at</source>
        <translation>la voiture est à</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>pas de réponse</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>then</source>
        <translation>alors</translation>
    </message>
    <message>
        <source>take on %1</source>
        <translation>prendre %1</translation>
    </message>
    <message>
        <source>Where the car is on the route comes first.</source>
        <translation>D’abord : où est la voiture sur la route.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
    <message>
        <source>Least cost</source>
        <translation>Moindre coût</translation>
    </message>
    <message>
        <source>Fewest stops</source>
        <translation>Moins d’arrêts</translation>
    </message>
    <message>
        <source>Least time</source>
        <translation>Moins de temps</translation>
    </message>
    <message>
        <source>Lightest</source>
        <translation>Plus léger</translation>
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
        <translation>99.9 %</translation>
    </message>
    <message>
        <source>Which route?</source>
        <translation>Quelle route ?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No plan: the fuel lasts to %1, %2 are missing to %3.</source>
        <translation>Pas de plan : le carburant va jusqu’à %1, il manque %2 jusqu’à %3.</translation>
    </message>
    <message>
        <source>Stops: %1, %2 to buy.</source>
        <translation>Arrêts : %1, %2 à prendre.</translation>
    </message>
    <message>
        <source>Cost %1.</source>
        <translation>Coût %1.</translation>
    </message>
    <message>
        <source>Risk of running dry: %1 %.</source>
        <translation>Risque de panne sèche : %1 %.</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>pompe</translation>
    </message>
    <message>
        <source>refuel zone</source>
        <translation>zone de ravitaillement</translation>
    </message>
    <message>
        <source>own can</source>
        <translation>propre bidon</translation>
    </message>
    <message>
        <source>%1 sure, %2 even</source>
        <translation>%1 sûr, %2 moyen</translation>
    </message>
    <message>
        <source>+ %1, full</source>
        <translation>+ %1, plein</translation>
    </message>
    <message>
        <source>+ %1</source>
        <translation>+ %1</translation>
    </message>
    <message>
        <source>risk %1 %</source>
        <translation>risque %1 %</translation>
    </message>
    <message>
        <source>turn back by %1</source>
        <translation>demi-tour avant %1</translation>
    </message>
    <message>
        <source>start with more</source>
        <translation>partir avec plus</translation>
    </message>
    <message>
        <source>carry in own cans</source>
        <translation>emporter en bidons</translation>
    </message>
    <message>
        <source>burn less</source>
        <translation>brûler moins</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>%1 is closed</source>
        <translation>%1 est fermé</translation>
    </message>
    <message>
        <source>It burns 10 % more</source>
        <translation>10 % de plus brûlé</translation>
    </message>
    <message>
        <source>Fills end %1 earlier</source>
        <translation>Pleins finis %1 plus tôt</translation>
    </message>
    <message>
        <source>The changed route is not saved. Touch again to leave it.</source>
        <translation>La route changée n&apos;est pas gardée. Toucher encore pour la quitter.</translation>
    </message>
</context>
<context>
    <name>undermark::PumpViewModel</name>
    <message>
        <source>not known yet</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>fuel put in</source>
        <translation>carburant mis</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>trip meter</source>
        <translation>partiel</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Plein</translation>
    </message>
    <message>
        <source>Partial</source>
        <translation>Partiel</translation>
    </message>
    <message>
        <source>To the neck</source>
        <translation>Au goulot</translation>
    </message>
    <message>
        <source>Use odometer</source>
        <translation>Compteur total</translation>
    </message>
    <message>
        <source>Use trip meter</source>
        <translation>Compteur partiel</translation>
    </message>
    <message>
        <source>this is not an amount that can be stored</source>
        <translation>ce n’est pas une quantité à garder</translation>
    </message>
    <message>
        <source>a number of 0 or more</source>
        <translation>un nombre de 0 ou plus</translation>
    </message>
    <message>
        <source>How much went in is missing</source>
        <translation>Il manque combien est entré</translation>
    </message>
    <message>
        <source>Save this fill</source>
        <translation>Garder ce plein</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Garder la correction</translation>
    </message>
    <message>
        <source>%1 %2 saved</source>
        <translation>%1 %2 gardés</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>consommation</translation>
    </message>
    <message>
        <source>hidden reserve</source>
        <translation>réserve cachée</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Mettre %1</translation>
    </message>
</context>
<context>
    <name>undermark::RouteEditModel</name>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>this is no number</source>
        <translation>ce n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
    <message>
        <source>row %1 of %2, at %3 %4</source>
        <translation>ligne %1 sur %2, à %3 %4</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Chemin</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Carburant</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>rows behind move along</source>
        <translation>les lignes suivantes suivent</translation>
    </message>
    <message>
        <source>rows behind stay</source>
        <translation>les lignes suivantes restent</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Mélange habituel</translation>
    </message>
    <message>
        <source>No fuel</source>
        <translation>Pas de carburant</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Refuel zone</source>
        <translation>Zone de ravitaillement</translation>
    </message>
    <message>
        <source>Own can</source>
        <translation>Bidon à bord</translation>
    </message>
    <message>
        <source>Take the numbers</source>
        <translation>Prendre les nombres</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
    <message>
        <source>Drop the numbers</source>
        <translation>Oublier les nombres</translation>
    </message>
    <message>
        <source>Undo the change</source>
        <translation>Annuler le changement</translation>
    </message>
    <message>
        <source>New row %1</source>
        <translation>Nouvelle ligne %1</translation>
    </message>
    <message>
        <source>leg to here</source>
        <translation>étape jusqu&apos;ici</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Prendre le nom</translation>
    </message>
    <message>
        <source>Drop the name</source>
        <translation>Oublier le nom</translation>
    </message>
</context>
<context>
    <name>undermark::ScreenSettings</name>
    <message>
        <source>distance</source>
        <translation>distance</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>milles</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>carburant</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litres</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>gallons US</translation>
    </message>
    <message>
        <source>imperial gallons</source>
        <translation>gallons imp.</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>consommation</translation>
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
        <translation>mpg imp.</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>lettres</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100 %</translation>
    </message>
    <message>
        <source>125 %</source>
        <translation>125 %</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation>150 %</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation>200 %</translation>
    </message>
    <message>
        <source>language</source>
        <translation>langue</translation>
    </message>
    <message>
        <source>car</source>
        <translation>voiture</translation>
    </message>
    <message>
        <source>Another car</source>
        <translation>Autre voiture</translation>
    </message>
</context>
<context>
    <name>undermark::SetupViewModel</name>
    <message>
        <source>My car</source>
        <translation>Ma voiture</translation>
    </message>
    <message>
        <source>tank, to the first click</source>
        <translation>réservoir, au premier déclic</translation>
    </message>
    <message>
        <source>under the zero mark, if known</source>
        <translation>sous le repère zéro, si connu</translation>
    </message>
    <message>
        <source>Petrol</source>
        <translation>Essence</translation>
    </message>
    <message>
        <source>Diesel</source>
        <translation>Diesel</translation>
    </message>
    <message>
        <source>LPG</source>
        <translation>GPL</translation>
    </message>
    <message>
        <source>Ethanol</source>
        <translation>Éthanol</translation>
    </message>
    <message>
        <source>How much the tank takes is missing</source>
        <translation>Il manque ce que prend le réservoir</translation>
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
        <translation>étalonné</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>repère zéro</translation>
    </message>
    <message>
        <source>%1 above drained, at %2</source>
        <translation>%1 au-dessus de vidé, à %2</translation>
    </message>
    <message>
        <source>full</source>
        <translation>plein</translation>
    </message>
    <message>
        <source>a point misses the curve by</source>
        <translation>un point manque la courbe de</translation>
    </message>
    <message>
        <source>while driving, lower than read by</source>
        <translation>en roulant, plus bas que lu de</translation>
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
        <translation>Une table demande d’abord un étalonnage.</translation>
    </message>
    <message>
        <source>A gauge that draws straight lines between these points is wrong by at most %1.</source>
        <translation>Une jauge qui relie ces points tout droit se trompe d’au plus %1.</translation>
    </message>
    <message>
        <source>in %</source>
        <translation>en %</translation>
    </message>
    <message>
        <source>in L</source>
        <translation>en L</translation>
    </message>
    <message>
        <source>points: %1</source>
        <translation>points : %1</translation>
    </message>
    <message>
        <source>decimals: %1</source>
        <translation>décimales : %1</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Copié.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
    <message>
        <source>Cannot be written: %1</source>
        <translation>Ne peut être écrit : %1</translation>
    </message>
    <message>
        <source>past the zero mark: %1 sure, %2 even, %3 hopeful</source>
        <translation>au-delà du repère zéro : %1 sûr, %2 moyen, %3 espéré</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, puis %2</translation>
    </message>
    <message>
        <source>the calibration and what is usually left behind</source>
        <translation>l’étalonnage et ce qui reste d’habitude</translation>
    </message>
    <message>
        <source>no proof yet</source>
        <translation>pas encore de preuve</translation>
    </message>
    <message>
        <source>More proof of these kinds would not help.</source>
        <translation>D’autres preuves de ce genre n’aideraient pas.</translation>
    </message>
    <message>
        <source>%1 It would leave ± %2.</source>
        <translation>%1 Il resterait ± %2.</translation>
    </message>
    <message>
        <source>Never test the reserve on a public road.</source>
        <translation>Ne jamais éprouver la réserve sur la voie publique.</translation>
    </message>
    <message>
        <source>Caution: %1 %2</source>
        <translation>Attention : %1 %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Attention : %1</translation>
    </message>
    <message>
        <source>%1 above drained</source>
        <translation>%1 au-dessus de vidé</translation>
    </message>
    <message>
        <source>Two signals have no gauge table: a gauge takes one, as of senders in series.</source>
        <translation>Deux signaux n’ont pas de table d’indicateur : un indicateur en prend un, comme de jauges en série.</translation>
    </message>
</context>
<context>
    <name>undermark::TransferViewModel</name>
    <message>
        <source>Written: %1. In it are the tables for a spreadsheet, and logbook.sqlite for another device.</source>
        <translation>Écrit : %1. Il contient les tableaux pour un tableur, et logbook.sqlite pour un autre appareil.</translation>
    </message>
    <message>
        <source>table or logbook have changed since they were looked at: go back and look again</source>
        <translation>tableau ou carnet ont changé depuis qu&apos;ils ont été regardés : revenir et regarder encore</translation>
    </message>
    <message>
        <source>Added %1 fills. The logbook as it was: %2</source>
        <translation>Ajouté : %1 pleins. Le carnet d&apos;avant : %2</translation>
    </message>
    <message>
        <source>Took in %1 records, %2 were here already. The logbook as it was: %3</source>
        <translation>Repris : %1 entrées, déjà ici : %2. Le carnet d&apos;avant : %3</translation>
    </message>
    <message>
        <source>Import and export</source>
        <translation>Reprendre et exporter</translation>
    </message>
    <message>
        <source>Which logbook?</source>
        <translation>Quel carnet ?</translation>
    </message>
    <message>
        <source>Which table?</source>
        <translation>Quel tableau ?</translation>
    </message>
    <message>
        <source>What the numbers in the table are</source>
        <translation>Ce que sont les nombres du tableau</translation>
    </message>
    <message>
        <source>What would be added</source>
        <translation>Ce qui serait ajouté</translation>
    </message>
    <message>
        <source>Take in another logbook</source>
        <translation>Reprendre un autre carnet</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Everything goes into a new folder beside the logbook; nothing is written over.</source>
        <translation>Tout va dans un nouveau dossier à côté du carnet ; rien n&apos;est écrasé.</translation>
    </message>
    <message>
        <source>A logbook or bundle of another device ends in .sqlite.</source>
        <translation>Un carnet d&apos;un autre appareil finit par .sqlite.</translation>
    </message>
    <message>
        <source>A table is a .csv file with the columns date and litres, and what may follow: odometer_km, full, price_per_l.</source>
        <translation>Un tableau est un fichier .csv avec les colonnes date et litres, et ce qui peut suivre : odometer_km, full, price_per_l.</translation>
    </message>
    <message>
        <source>%1: nothing is guessed. Look at each line.</source>
        <translation>%1 : rien n&apos;est deviné. Regarder chaque ligne.</translation>
    </message>
    <message>
        <source>Would add %1 fills</source>
        <translation>Pleins nouveaux : %1</translation>
    </message>
    <message>
        <source>; %1 are in the log already</source>
        <translation>; déjà dans le carnet : %1</translation>
    </message>
    <message>
        <source>; %1 are of other vehicles</source>
        <translation>; d&apos;autres véhicules : %1</translation>
    </message>
    <message>
        <source>Everything in %1 that is not here yet is taken in; what is here stays. The logbook as it was is kept beside it.</source>
        <translation>Tout ce qui dans %1 n&apos;est pas encore ici est repris ; ce qui est ici reste. Le carnet d&apos;avant est gardé à côté.</translation>
    </message>
    <message>
        <source>Litres in the table are</source>
        <translation>Les litres du tableau sont</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litres</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>gallons US</translation>
    </message>
    <message>
        <source>imperial gallons</source>
        <translation>gallons impériaux</translation>
    </message>
    <message>
        <source>Kilometres in the table are</source>
        <translation>Les kilomètres du tableau sont</translation>
    </message>
    <message>
        <source>kilometres</source>
        <translation>kilomètres</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>miles</translation>
    </message>
    <message>
        <source>Dates are written</source>
        <translation>Les dates s&apos;écrivent</translation>
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
        <translation>Le chiffre de la voiture est</translation>
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
        <translation>mpg US</translation>
    </message>
    <message>
        <source>imperial mpg</source>
        <translation>mpg impérial</translation>
    </message>
    <message>
        <source>Temperatures are</source>
        <translation>Les températures sont</translation>
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
        <translation>et plus</translation>
    </message>
    <message>
        <source>%1 fills</source>
        <translation>%1 pleins</translation>
    </message>
    <message>
        <source>Show what would be added</source>
        <translation>Montrer ce qui serait ajouté</translation>
    </message>
    <message>
        <source>Add %1 fills</source>
        <translation>Ajouter %1 pleins</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Added %1 trips. The logbook as it was: %2</source>
        <translation>Ajouté : %1 trajets. Le carnet d&apos;avant : %2</translation>
    </message>
    <message>
        <source>A table is a .csv file with the columns date, km and mode, and what may follow: idle_min, starts.</source>
        <translation>Un tableau est un fichier .csv avec les colonnes date, km et mode, et ce qui peut suivre : idle_min, starts.</translation>
    </message>
    <message>
        <source>Would add %1 trips</source>
        <translation>Trajets nouveaux : %1</translation>
    </message>
    <message>
        <source>%1 trips</source>
        <translation>%1 trajets</translation>
    </message>
    <message>
        <source>Add %1 trips</source>
        <translation>Ajouter %1 trajets</translation>
    </message>
</context>
</TS>
