<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>AgeWords</name>
    <message>
        <source>at an unknown time</source>
        <translation>à un moment inconnu</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>à l’instant</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>il y a %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>il y a %1 h</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>il y a %1 jours</translation>
    </message>
</context>
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
        <source>A route is a .csv or .gpx file: points in order, with distances, driving and where fuel can be had.</source>
        <translation>Une route est un fichier .csv ou .gpx : points dans l’ordre, avec distances, conduite et où trouver du carburant.</translation>
    </message>
    <message>
        <source>New route</source>
        <translation>Nouvel itinéraire</translation>
    </message>
    <message>
        <source>name of the route</source>
        <translation>nom de l’itinéraire</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Prendre le nom</translation>
    </message>
</context>
<context>
    <name>BurnsMore</name>
    <message>
        <source>what makes it burn more</source>
        <translation>ce qui fait consommer plus</translation>
    </message>
    <message>
        <source>Take the word</source>
        <translation>Prendre le mot</translation>
    </message>
    <message>
        <source>Answer for this</source>
        <translation>Répondre pour cela</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>More than the log says, since the last fill and ahead.</source>
        <translation>De plus que le carnet, depuis le dernier plein et pour la suite.</translation>
    </message>
    <message>
        <source>because of: %1</source>
        <translation>à cause de : %1</translation>
    </message>
    <message>
        <source>It burns as usual again</source>
        <translation>Il consomme de nouveau comme d’habitude</translation>
    </message>
</context>
<context>
    <name>CalibrationCautions</name>
    <message>
        <source>How is the tank read?</source>
        <translation>Comment lit-on le réservoir ?</translation>
    </message>
    <message>
        <source>What does the meter show?</source>
        <translation>Que montre l&apos;appareil ?</translation>
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
    <name>CarSheetForm</name>
    <message>
        <source>name of the car</source>
        <translation>nom de la voiture</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Prendre le nom</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Enregistrer la fiche</translation>
    </message>
    <message>
        <source>Leave it as it was</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>nom : %1</translation>
    </message>
    <message>
        <source>name of the tank</source>
        <translation>nom du réservoir</translation>
    </message>
    <message>
        <source>Add a tank</source>
        <translation>Ajouter un réservoir</translation>
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
    <name>CurvePair</name>
    <message>
        <source>Band: there the level is with 90 %. Bar at a point: how far a curve without it misses it.</source>
        <translation>Bande : le niveau s&apos;y trouve à 90 %. Trait au point : de combien une courbe sans lui le manque.</translation>
    </message>
</context>
<context>
    <name>EntryBoard</name>
    <message>
        <source>Add it to the log</source>
        <translation>Ajouter au journal</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
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
    <name>FilePlaces</name>
    <message>
        <source>Documents</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Téléchargements</translation>
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
        <source>Next fill</source>
        <translation>Plein suivant</translation>
    </message>
    <message>
        <source>Takes this fill out of the logbook</source>
        <translation>Retire ce plein du carnet</translation>
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
        <source>Fuel horizon of this leg: sure to dry for %1</source>
        <translation>Horizon de cette étape : sûr jusqu’à sec %1</translation>
    </message>
    <message>
        <source>Fuel horizon of this leg: sure to its end</source>
        <translation>Horizon de cette étape : sûr jusqu’au bout</translation>
    </message>
    <message>
        <source>zero, sure</source>
        <translation>zéro, sûr</translation>
    </message>
    <message>
        <source>dry, sure</source>
        <translation>à sec, sûr</translation>
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
    <name>Language</name>
    <message>
        <source>English</source>
        <comment>The name of this language, in it</comment>
        <translation>Français</translation>
    </message>
</context>
<context>
    <name>LetterPad</name>
    <message>
        <source>abcdefghijklmnopqrstuvwxyz</source>
        <extracomment>The small letters of the language, in their order.</extracomment>
        <translation>abcdefghijklmnopqrstuvwxyzàâçéèêëîïôùû</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vider</translation>
    </message>
</context>
<context>
    <name>LevelsTaken</name>
    <message>
        <source>Taken so far. Touch a level to correct it.</source>
        <translation>Relevé jusqu&apos;ici. Toucher un niveau pour le corriger.</translation>
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
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Takes this entry out of the logbook, with all corrections of it</source>
        <translation>Retire cette entrée du carnet, avec toutes ses corrections</translation>
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
    <message>
        <source>into %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>into the tank</source>
        <translation>dans le réservoir</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>by the car itself</source>
        <translation>par la voiture elle-même</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>second reading</source>
        <translation>deuxième lecture</translation>
    </message>
    <message>
        <source>usable</source>
        <translation>utilisable</translation>
    </message>
    <message>
        <source>since drained</source>
        <translation>depuis la vidange</translation>
    </message>
    <message>
        <source>in the tank</source>
        <translation>dans le réservoir</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gardé</translation>
    </message>
    <message>
        <source>by you</source>
        <translation>par vous</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>%1 usable</source>
        <translation>%1 utilisables</translation>
    </message>
    <message>
        <source>%1 since drained</source>
        <translation>%1 depuis la vidange</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>lecture %1</translation>
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
</context>
<context>
    <name>ManyCars</name>
    <message>
        <source>a part of its name; %1</source>
        <translation>une partie de son nom ; %1</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Les montrer</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Chercher par nom</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>nom : %1</translation>
    </message>
    <message>
        <source>Another car</source>
        <translation>Autre voiture</translation>
    </message>
    <message>
        <source>is shown</source>
        <translation>est montrée</translation>
    </message>
    <message>
        <source>show</source>
        <translation>montrer</translation>
    </message>
</context>
<context>
    <name>ModeChoice</name>
    <message>
        <source>How is it driven from here?</source>
        <translation>Comment roule-t-on à partir d’ici ?</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>It burns as the log says, not more (towing, a roof box …)</source>
        <translation>Il consomme ce que dit le carnet, pas plus (remorque, coffre de toit…)</translation>
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
    <name>NameEntry</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
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
    <name>NowFigures</name>
    <message>
        <source>Ask again</source>
        <translation>Redemander</translation>
    </message>
    <message>
        <source>%1: change</source>
        <translation>%1 : changer</translation>
    </message>
    <message>
        <source>The kind of driving that the distances are for</source>
        <translation>Le genre de conduite pour lequel valent les distances</translation>
    </message>
    <message>
        <source>Needle at zero now</source>
        <translation>Aiguille à zéro</translation>
    </message>
    <message>
        <source>Tell a reading or the odometer</source>
        <translation>Dire une lecture ou le compteur</translation>
    </message>
    <message>
        <source>Tell a reading</source>
        <translation>Dire une lecture</translation>
    </message>
    <message>
        <source>Log a fill</source>
        <translation>Noter un plein</translation>
    </message>
    <message>
        <source>It was not so</source>
        <translation>Ce n&apos;était pas ainsi</translation>
    </message>
    <message>
        <source>Go on with the calibration</source>
        <translation>Continuer l&apos;étalonnage</translation>
    </message>
    <message>
        <source>No fuel went in</source>
        <translation>Rien n’a été ajouté</translation>
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
    <name>Pages</name>
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
    <name>PlanActions</name>
    <message>
        <source>Write the fuel card</source>
        <translation>Écrire la fiche carburant</translation>
    </message>
    <message>
        <source>Save the route</source>
        <translation>Enregistrer l’itinéraire</translation>
    </message>
    <message>
        <source>Other route</source>
        <translation>Autre itinéraire</translation>
    </message>
</context>
<context>
    <name>PlanChoice</name>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
</context>
<context>
    <name>PlanDeparture</name>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
    <message>
        <source>Cans: approved ones, filled on the ground, poured with the engine off and cold, and only where the event and the place allow it.</source>
        <translation>Jerricans : homologués, remplis au sol, versés moteur arrêté et froid, et seulement là où l’épreuve et le lieu le permettent.</translation>
    </message>
</context>
<context>
    <name>PlanFromHere</name>
    <message>
        <source>Plan from here</source>
        <translation>Planifier d’ici</translation>
    </message>
    <message>
        <source>Plan the whole route</source>
        <translation>Planifier toute la route</translation>
    </message>
    <message>
        <source>The car is at</source>
        <translation>La voiture est à</translation>
    </message>
    <message>
        <source>Filled up here: plan</source>
        <translation>Plein fait ici : planifier</translation>
    </message>
</context>
<context>
    <name>PlanPumps</name>
    <message>
        <source>Which map?</source>
        <translation>Quelle carte ?</translation>
    </message>
    <message>
        <source>A map is an OpenStreetMap extract (.osm.pbf) of the region. It may be old: whether a pump still is there, and is open, is known to who asks there.</source>
        <translation>Une carte est un extrait OpenStreetMap (.osm.pbf) de la région. Elle peut être ancienne : si une pompe existe encore et si elle est ouverte, on le sait en demandant sur place.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Arrêter la lecture</translation>
    </message>
    <message>
        <source>Another map</source>
        <translation>Autre carte</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
</context>
<context>
    <name>PlanRoute</name>
    <message>
        <source>Touch a row to change it.</source>
        <translation>Toucher une ligne pour la changer.</translation>
    </message>
    <message>
        <source>name of the route: %1</source>
        <translation>nom de l’itinéraire : %1</translation>
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
    <message>
        <source>%1: sure %2, even %3, hopeful %4 %5</source>
        <translation>%1 : sûr %2, moyen %3, espéré %4 %5</translation>
    </message>
</context>
<context>
    <name>ReadingFields</name>
    <message>
        <source>reading, lobe with the pump</source>
        <translation>lecture, poche de la pompe</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>reading, other lobe</source>
        <translation>lecture, autre poche</translation>
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
    <message>
        <source>pumps of your routes</source>
        <translation>pompes de vos itinéraires</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Lettres</translation>
    </message>
    <message>
        <source>Take the name</source>
        <translation>Prendre le nom</translation>
    </message>
    <message>
        <source>Whether running dry there ends the event; press to change it</source>
        <translation>Si une panne sèche y met fin à l’épreuve ; appuyer pour changer</translation>
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
        <translation>changer</translation>
    </message>
</context>
<context>
    <name>SettingsView</name>
    <message>
        <source>car: %1</source>
        <translation>voiture : %1</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>en choisir une autre</translation>
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
    <message>
        <source>Take the name</source>
        <translation>Prendre le nom</translation>
    </message>
    <message>
        <source>name: %1</source>
        <translation>nom : %1</translation>
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
    <message>
        <source>Go on with the calibration that lies open</source>
        <translation>Continuer l&apos;étalonnage en cours</translation>
    </message>
    <message>
        <source>Write the hand-over sheet</source>
        <translation>Écrire la fiche de remise</translation>
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
    <message>
        <source>Car</source>
        <translation>Voiture</translation>
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
    <message>
        <source>It is done: note it</source>
        <translation>C&apos;est fait : le noter</translation>
    </message>
    <message>
        <source>Note another proof</source>
        <translation>Noter une autre preuve</translation>
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
        <translation>%1 depuis la vidange</translation>
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
    <name>TellNow</name>
    <message>
        <source>What stands there now? It counts until the log knows more.</source>
        <translation>Qu’est-ce qui est affiché maintenant ? Cela compte jusqu’à ce que le carnet en sache plus.</translation>
    </message>
    <message>
        <source>Drop what was told</source>
        <translation>Oublier ce qui a été dit</translation>
    </message>
    <message>
        <source>Answer for this</source>
        <translation>Répondre pour cela</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Keep this reading in the log</source>
        <translation>Garder la lecture au carnet</translation>
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
    <message>
        <source>Export to %1</source>
        <translation>Exporter vers %1</translation>
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
        <translation>par %1</translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation>%1 par %2</translation>
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
        <source>lobes that empty unequally</source>
        <translation>poches qui se vident inégalement</translation>
    </message>
    <message>
        <source>a level is up to ± %1 less sure, most so half full</source>
        <translation>un niveau est moins sûr de ± %1 au plus, surtout à moitié plein</translation>
    </message>
    <message>
        <source>Correct a level</source>
        <translation>Corriger un niveau</translation>
    </message>
    <message>
        <source>Type it as it was. A reading typed here takes the place of all at this level.</source>
        <translation>Saisir ce qu&apos;il en était. Une lecture saisie ici remplace toutes celles de ce niveau.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Enregistrer la correction</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Leave it as it was</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>%1, the first: %2</source>
        <translation>%1, la première : %2</translation>
    </message>
    <message>
        <source>Take up the last one</source>
        <translation>Reprendre le dernier</translation>
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
        <translation>Quelles voitures ?</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>Calibrated over a year ago</source>
        <translation>Étalonnées il y a plus d’un an</translation>
    </message>
    <message>
        <source>%1 of %2 cars</source>
        <translation>%1 voitures sur %2</translation>
    </message>
    <message>
        <source>calibrated %1</source>
        <translation>étalonnée %1</translation>
    </message>
    <message>
        <source>handed over on %1</source>
        <translation>remise le %1</translation>
    </message>
</context>
<context>
    <name>undermark::CarSheet</name>
    <message>
        <source>tank, to the first click</source>
        <translation>réservoir, au premier déclic</translation>
    </message>
    <message>
        <source>under the zero mark, if known</source>
        <translation>sous la marque zéro, si connu</translation>
    </message>
    <message>
        <source>left behind when the pump spits</source>
        <translation>reste quand la pompe crache</translation>
    </message>
    <message>
        <source>left when the engine starves</source>
        <translation>reste quand le moteur s&apos;arrête</translation>
    </message>
    <message>
        <source>usable when the lamp lights</source>
        <translation>utilisable quand le témoin s&apos;allume</translation>
    </message>
    <message>
        <source>supply of the sender</source>
        <translation>alimentation de la jauge</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>pull-up of the sender</source>
        <translation>résistance de tirage</translation>
    </message>
    <message>
        <source>ohm</source>
        <translation>ohm</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>carburant</translation>
    </message>
    <message>
        <source>sender</source>
        <translation>capteur</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>tel quel</translation>
    </message>
    <message>
        <source>resistive</source>
        <translation>résistif</translation>
    </message>
    <message>
        <source>share of supply</source>
        <translation>part de l&apos;alimentation</translation>
    </message>
    <message>
        <source>per cent</source>
        <translation>pour cent</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>points</translation>
    </message>
    <message>
        <source>the meter shows</source>
        <translation>l&apos;appareil montre</translation>
    </message>
    <message>
        <source>Make %1 the car&apos;s capacity</source>
        <translation>Prendre %1 comme contenance</translation>
    </message>
    <message>
        <source>mass as driven, for climbs</source>
        <translation>masse en ordre de marche, pour les montées</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>pumped over, in a minute</source>
        <translation>transféré, par minute</translation>
    </message>
    <message>
        <source>how it feeds</source>
        <translation>comment il alimente</translation>
    </message>
    <message>
        <source>level with the car&apos;s own</source>
        <translation>de niveau avec celui de la voiture</translation>
    </message>
    <message>
        <source>by a tap</source>
        <translation>par un robinet</translation>
    </message>
    <message>
        <source>pumped over into the car&apos;s own</source>
        <translation>transféré dans celui de la voiture</translation>
    </message>
    <message>
        <source>Second tank</source>
        <translation>Second réservoir</translation>
    </message>
    <message>
        <source>Make %1 the tank&apos;s capacity</source>
        <translation>Prendre %1 comme contenance du réservoir</translation>
    </message>
</context>
<context>
    <name>undermark::EntryForm</name>
    <message>
        <source>driven past the zero mark</source>
        <translation>parcouru sous la marque zéro</translation>
    </message>
    <message>
        <source>driven</source>
        <translation>parcouru</translation>
    </message>
    <message>
        <source>pumped out, from the zero mark</source>
        <translation>pompé, depuis la marque zéro</translation>
    </message>
    <message>
        <source>poured in, to the zero mark</source>
        <translation>versé, jusqu&apos;à la marque zéro</translation>
    </message>
    <message>
        <source>measured left behind</source>
        <translation>reste mesuré</translation>
    </message>
    <message>
        <source>reading before, if not zero</source>
        <translation>lecture avant, si pas zéro</translation>
    </message>
    <message>
        <source>that was</source>
        <translation>c&apos;était il y a</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>idling, if any</source>
        <translation>ralenti, s&apos;il y en a eu</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>cold starts, if known</source>
        <translation>démarrages à froid, si connu</translation>
    </message>
    <message>
        <source>A proof of the hidden reserve</source>
        <translation>Une preuve de la réserve cachée</translation>
    </message>
    <message>
        <source>A trip</source>
        <translation>Un trajet</translation>
    </message>
    <message>
        <source>Caution: note what happened. Never test the reserve on a public road.</source>
        <translation>Attention : noter ce qui est arrivé. Ne jamais éprouver la réserve sur la voie publique.</translation>
    </message>
    <message>
        <source>Caution: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers on the ground, extinguisher in reach; by a qualified person.</source>
        <translation>Attention : la vapeur d&apos;essence s&apos;enflamme. Moteur froid et arrêté, aucune source d&apos;inflammation, aéré, mis à la terre, récipients homologués au sol, extincteur à portée ; par une personne qualifiée.</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Vidangé</translation>
    </message>
    <message>
        <source>Base poured anew</source>
        <translation>Base versée à nouveau</translation>
    </message>
    <message>
        <source>Stalled past zero</source>
        <translation>Calé sous zéro</translation>
    </message>
    <message>
        <source>Past zero, still running</source>
        <translation>Sous zéro, roulait encore</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Mélange habituel</translation>
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
    <name>undermark::FuelCard</name>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
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
        <source>Undo the correction</source>
        <translation>Annuler la correction</translation>
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
    <message>
        <source>%1, undone</source>
        <translation>%1, annulé</translation>
    </message>
    <message>
        <source>Undo taking out</source>
        <translation>Annuler le retrait</translation>
    </message>
    <message>
        <source>As before, it is: %1</source>
        <translation>Comme avant, c&apos;est : %1</translation>
    </message>
    <message>
        <source>Undo the entry</source>
        <translation>Annuler l&apos;entrée</translation>
    </message>
    <message>
        <source>A forgotten fill</source>
        <translation>Un plein oublié</translation>
    </message>
    <message>
        <source>A trip</source>
        <translation>Un trajet</translation>
    </message>
    <message>
        <source>A proof</source>
        <translation>Une preuve</translation>
    </message>
</context>
<context>
    <name>undermark::NowLive</name>
    <message>
        <source>source silent for %1 s</source>
        <translation>source muette depuis %1 s</translation>
    </message>
    <message>
        <source>by consumption alone; sender %1 s ago</source>
        <translation>par la consommation seule ; jauge il y a %1 s</translation>
    </message>
    <message>
        <source>sender %1 s ago</source>
        <translation>jauge il y a %1 s</translation>
    </message>
    <message>
        <source>%1 %2 went in: log it</source>
        <translation>%1 %2 ajoutés : noter</translation>
    </message>
    <message>
        <source>%1, by the speed: take it</source>
        <translation>%1, d’après la vitesse : prendre</translation>
    </message>
    <message>
        <source>a sender without a calibration</source>
        <translation>une jauge sans étalonnage</translation>
    </message>
    <message>
        <source>listening to the sender</source>
        <translation>la jauge est écoutée</translation>
    </message>
    <message>
        <source>the level has risen: does it stay? sender %1 s ago</source>
        <translation>le niveau a monté : reste-t-il ? capteur il y a %1 s</translation>
    </message>
</context>
<context>
    <name>undermark::NowLoad</name>
    <message>
        <source>towing</source>
        <translation>remorque</translation>
    </message>
    <message>
        <source>%1 % more</source>
        <translation>%1 % de plus</translation>
    </message>
    <message>
        <source>%1: %2 % more</source>
        <translation>%1 : %2 % de plus</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>more than the log says</source>
        <translation>de plus que le carnet</translation>
    </message>
</context>
<context>
    <name>undermark::NowTell</name>
    <message>
        <source>odometer at the zero mark</source>
        <translation>compteur au repère zéro</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>compteur</translation>
    </message>
    <message>
        <source>odometer, %1</source>
        <translation>compteur, %1</translation>
    </message>
    <message>
        <source>reading, %1</source>
        <translation>lecture, %1</translation>
    </message>
    <message>
        <source>needle at zero, %1</source>
        <translation>aiguille à zéro, %1</translation>
    </message>
    <message>
        <source>Note as a proof: %1 past zero and still running</source>
        <translation>Noter comme preuve : %1 sous zéro et roulait encore</translation>
    </message>
</context>
<context>
    <name>undermark::NowViewModel</name>
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
    <message>
        <source>log, %1</source>
        <translation>carnet, %1</translation>
    </message>
    <message>
        <source>sure to the zero mark</source>
        <translation>sûr jusqu’au repère zéro</translation>
    </message>
    <message>
        <source>sure past the zero mark, still</source>
        <translation>sûr sous le repère zéro, encore</translation>
    </message>
    <message>
        <source>sure past the zero mark</source>
        <translation>sûr sous le repère zéro</translation>
    </message>
    <message>
        <source>past zero</source>
        <translation>sous zéro</translation>
    </message>
    <message>
        <source>to zero</source>
        <translation>à zéro</translation>
    </message>
    <message>
        <source>to dry</source>
        <translation>à sec</translation>
    </message>
    <message>
        <source>since fill</source>
        <translation>depuis le plein</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Mélange habituel</translation>
    </message>
    <message>
        <source>Fill the tank, then the distance stands here</source>
        <translation>Faire le plein, puis la distance s’affiche ici</translation>
    </message>
    <message>
        <source>The logbook cannot be read</source>
        <translation>Le carnet est illisible</translation>
    </message>
    <message>
        <source>hidden reserve, assumed</source>
        <translation>réserve cachée, supposée</translation>
    </message>
    <message>
        <source>Fill up to the first click and log it, or tell what the gauge reads now.</source>
        <translation>Faire le plein jusqu’au premier déclic et le noter, ou dire ce que la jauge affiche.</translation>
    </message>
    <message>
        <source>Fill up to the first click and log it. The more fills, the surer the distance.</source>
        <translation>Faire le plein jusqu’au premier déclic et le noter. Plus il y a de pleins, plus la distance est sûre.</translation>
    </message>
    <message>
        <source>burns more</source>
        <translation>consomme plus</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>level kept, %1</source>
        <translation>niveau gardé, %1</translation>
    </message>
</context>
<context>
    <name>undermark::NumberForm</name>
    <message>
        <source>guess</source>
        <translation>deviné</translation>
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
    <name>undermark::PlanAnswer</name>
    <message>
        <source>Cost %1.</source>
        <translation>Coût %1.</translation>
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
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>leg %1</source>
        <translation>étape %1</translation>
    </message>
    <message>
        <source>Usual mix</source>
        <translation>Mélange habituel</translation>
    </message>
    <message>
        <source>to the next stop %1</source>
        <translation>jusqu’au prochain arrêt %1</translation>
    </message>
    <message>
        <source>on: %1, needs %2</source>
        <translation>ensuite : %1, il faut %2</translation>
    </message>
    <message>
        <source>leaves with %1</source>
        <translation>repart avec %1</translation>
    </message>
    <message>
        <source>sure %1, even %2</source>
        <translation>sûr %1, moyen %2</translation>
    </message>
    <message>
        <source>fill up, %1</source>
        <translation>faire le plein, %1</translation>
    </message>
    <message>
        <source>take on %1</source>
        <translation>prendre %1</translation>
    </message>
    <message>
        <source>Cost %1, of which stopping counts as %2.</source>
        <translation>Coût %1, dont %2 comptés pour les arrêts.</translation>
    </message>
    <message>
        <source>Against the plan before: %1</source>
        <translation>Par rapport au plan d’avant : %1</translation>
    </message>
    <message>
        <source>crew with cans</source>
        <translation>équipe avec jerricans</translation>
    </message>
</context>
<context>
    <name>undermark::PlanDay</name>
    <message>
        <source>leaves at</source>
        <translation>départ à</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>goes on average</source>
        <translation>roule en moyenne à</translation>
    </message>
    <message>
        <source>%1/h</source>
        <translation>%1/h</translation>
    </message>
    <message>
        <source>own cans, full</source>
        <translation>jerricans à bord, pleins</translation>
    </message>
    <message>
        <source>cans of the crew, full</source>
        <translation>jerricans de l’équipe, pleins</translation>
    </message>
    <message>
        <source>in each can</source>
        <translation>dans chaque jerrican</translation>
    </message>
    <message>
        <source>the load adds</source>
        <translation>le chargement ajoute</translation>
    </message>
    <message>
        <source>%1 per 100 %2</source>
        <translation>%1 aux 100 %2</translation>
    </message>
    <message>
        <source>leaves %1, %2 %3/h</source>
        <translation>départ %1, %2 %3/h</translation>
    </message>
    <message>
        <source>own cans: %1</source>
        <translation>jerricans à bord : %1</translation>
    </message>
    <message>
        <source>cans of the crew: %1</source>
        <translation>jerricans de l’équipe : %1</translation>
    </message>
    <message>
        <source>with a load</source>
        <translation>avec un chargement</translation>
    </message>
    <message>
        <source>no time of departure, no cans, no load</source>
        <translation>pas d’heure de départ, pas de jerricans, pas de chargement</translation>
    </message>
</context>
<context>
    <name>undermark::PlanHere</name>
    <message>
        <source>the car is at</source>
        <translation>la voiture est à</translation>
    </message>
    <message>
        <source>taken on there</source>
        <translation>pris là</translation>
    </message>
    <message>
        <source>usable in the tank now</source>
        <translation>utilisable dans le réservoir maintenant</translation>
    </message>
    <message>
        <source>Fuel as Now says</source>
        <translation>Carburant selon « Maintenant »</translation>
    </message>
    <message>
        <source>Fuel as planned</source>
        <translation>Carburant comme prévu</translation>
    </message>
    <message>
        <source>Starts with a tank that was filled up here.</source>
        <translation>Départ avec un réservoir rempli ici.</translation>
    </message>
    <message>
        <source>Starts with the fuel that was typed here.</source>
        <translation>Départ avec le carburant saisi ici.</translation>
    </message>
    <message>
        <source>Starts with what the plan expects here, and what was taken on.</source>
        <translation>Départ avec ce que le plan attend ici, et ce qui a été pris.</translation>
    </message>
    <message>
        <source>Starts with what the plan expects here.</source>
        <translation>Départ avec ce que le plan attend ici.</translation>
    </message>
    <message>
        <source>Starts with the fuel that Now says, and what was taken on.</source>
        <translation>Départ avec le carburant selon « Maintenant », et ce qui a été pris.</translation>
    </message>
    <message>
        <source>Starts with the reading that was typed here.</source>
        <translation>Part de la lecture saisie ici.</translation>
    </message>
</context>
<context>
    <name>undermark::PlanMap</name>
    <message>
        <source>pumps from a map: none chosen</source>
        <translation>pompes d’une carte : aucune choisie</translation>
    </message>
    <message>
        <source>pumps from a map: %1 of %2</source>
        <translation>pompes d’une carte : %1 de %2</translation>
    </message>
    <message>
        <source>%1, %2 left out</source>
        <translation>%1, %2 écartées</translation>
    </message>
    <message>
        <source>%1 % of the map is read</source>
        <translation>%1 % de la carte sont lus</translation>
    </message>
    <message>
        <source>%1 there and back</source>
        <translation>%1 aller et retour</translation>
    </message>
    <message>
        <source>no road to it is known: estimated</source>
        <translation>aucune route connue : estimé</translation>
    </message>
    <message>
        <source>hours not known</source>
        <translation>horaires inconnus</translation>
    </message>
    <message>
        <source>your own note</source>
        <translation>votre note</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 après %2</translation>
    </message>
</context>
<context>
    <name>undermark::PlanViewModel</name>
    <message>
        <source>Which route?</source>
        <translation>Quelle route ?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Starts with the fuel that Now says: %1.</source>
        <translation>Part du carburant qu’indique « Maintenant » : %1.</translation>
    </message>
</context>
<context>
    <name>undermark::PlanWhatIfs</name>
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
        <source>Any one stop is closed</source>
        <translation>Un arrêt quelconque est fermé</translation>
    </message>
</context>
<context>
    <name>undermark::PlanWishes</name>
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
        <translation>99,9 %</translation>
    </message>
    <message>
        <source>aim of the plan</source>
        <translation>but du plan</translation>
    </message>
    <message>
        <source>sure on each arrival</source>
        <translation>sûr à chaque arrivée</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>dry on a timed section</source>
        <translation>panne sèche sur un secteur chronométré</translation>
    </message>
    <message>
        <source>as elsewhere</source>
        <translation>comme ailleurs</translation>
    </message>
    <message>
        <source>ten times rarer</source>
        <translation>dix fois plus rare</translation>
    </message>
    <message>
        <source>a stop counts as</source>
        <translation>un arrêt compte</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>the price of 1 litre</source>
        <translation>le prix de 1 litre</translation>
    </message>
    <message>
        <source>the price of 5 litres</source>
        <translation>le prix de 5 litres</translation>
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
        <source>Save this fill</source>
        <translation>Garder ce plein</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Garder la correction</translation>
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
    <message>
        <source>paid in all</source>
        <translation>payé en tout</translation>
    </message>
    <message>
        <source>of it into cans</source>
        <translation>dont en bidons</translation>
    </message>
    <message>
        <source>gauge before</source>
        <translation>jauge avant</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>plein fait</translation>
    </message>
    <message>
        <source>days ago</source>
        <translation>jours avant</translation>
    </message>
    <message>
        <source>Back to the litres</source>
        <translation>Retour aux litres</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Use price per %1</source>
        <translation>Prix par %1</translation>
    </message>
    <message>
        <source>Use paid in all</source>
        <translation>Payé en tout</translation>
    </message>
    <message>
        <source>Yes, save the guesses</source>
        <translation>Oui, garder ainsi</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 saved, into %2</source>
        <translation>%1 gardés, dans %2</translation>
    </message>
    <message>
        <source>%1 saved</source>
        <translation>%1 gardés</translation>
    </message>
</context>
<context>
    <name>undermark::RouteEditModel</name>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>au plus</translation>
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
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>New route</source>
        <translation>Nouvel itinéraire</translation>
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
        <translation>au moins</translation>
    </message>
    <message>
        <source>a stop takes</source>
        <translation>un arrêt prend</translation>
    </message>
    <message>
        <source>detour, both ways</source>
        <translation>détour, aller et retour</translation>
    </message>
    <message>
        <source>opens</source>
        <translation>ouvre</translation>
    </message>
    <message>
        <source>closes</source>
        <translation>ferme</translation>
    </message>
    <message>
        <source>due here</source>
        <translation>prévu ici</translation>
    </message>
    <message>
        <source>rest, engine off</source>
        <translation>repos, moteur arrêté</translation>
    </message>
    <message>
        <source>idling</source>
        <translation>ralenti</translation>
    </message>
    <message>
        <source>arrive with at least</source>
        <translation>arriver avec au moins</translation>
    </message>
    <message>
        <source>Control</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>timed from here: yes</source>
        <translation>chronométré dès ici : oui</translation>
    </message>
    <message>
        <source>timed from here: no</source>
        <translation>chronométré dès ici : non</translation>
    </message>
    <message>
        <source>Crew&apos;s cans</source>
        <translation>Bidons de l’équipe</translation>
    </message>
    <message>
        <source>yyyymmdd</source>
        <translation>aaaammjj</translation>
    </message>
    <message>
        <source>from the day</source>
        <translation>à partir du</translation>
    </message>
    <message>
        <source>until the day</source>
        <translation>jusqu’au</translation>
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
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>monnaie</translation>
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
        <translation>l’étalonnage commencé ne peut pas être gardé ici</translation>
    </message>
    <message>
        <source>this file cannot be read</source>
        <translation>ce fichier ne peut pas être lu</translation>
    </message>
    <message>
        <source>this is not an unfinished calibration</source>
        <translation>ce n’est pas un étalonnage commencé</translation>
    </message>
    <message>
        <source>Touch every caution once it holds here.</source>
        <translation>Toucher chaque précaution dès qu’elle est remplie ici.</translation>
    </message>
    <message>
        <source>A level takes the readings of both lobes.</source>
        <translation>Un niveau demande la lecture des deux poches.</translation>
    </message>
    <message>
        <source>This is not a reading.</source>
        <translation>Ce n’est pas une lecture.</translation>
    </message>
    <message>
        <source>How much was poured comes first.</source>
        <translation>D’abord : combien a été versé.</translation>
    </message>
    <message>
        <source>A level needs its litres and at least one reading.</source>
        <translation>Un niveau demande ses litres et au moins une lecture.</translation>
    </message>
    <message>
        <source>It has not settled: wait, or type the reading.</source>
        <translation>Pas encore stable : attendre, ou taper la lecture.</translation>
    </message>
    <message>
        <source>Where the zero mark is, is missing.</source>
        <translation>Il manque où est le repère zéro.</translation>
    </message>
    <message>
        <source>These readings allow no curve</source>
        <translation>Ces lectures ne permettent pas de courbe</translation>
    </message>
    <message>
        <source>Neither signal has moved while %1 went in. Look at the wiring and the ground.</source>
        <translation>Aucun des signaux n’a bougé pendant que %1 entraient. Voir le câblage et la masse.</translation>
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
        <source>a fill is kept out: %1</source>
        <translation>un plein n’est pas compté : %1</translation>
    </message>
    <message>
        <source>a proof: %1</source>
        <translation>une preuve : %1</translation>
    </message>
    <message>
        <source>the logbook has no vehicle yet</source>
        <translation>le carnet n’a pas encore de voiture</translation>
    </message>
    <message>
        <source>the logbook has no such vehicle</source>
        <translation>le carnet n’a pas cette voiture</translation>
    </message>
    <message>
        <source>%1: column &apos;%2&apos; is not imported</source>
        <translation>%1 : la colonne « %2 » n’est pas reprise</translation>
    </message>
    <message>
        <source>two vehicles are called %1 now: they were made apart</source>
        <translation>deux voitures s’appellent maintenant %1 : elles ont été créées séparément</translation>
    </message>
    <message>
        <source>The tank may be dry already: no distance is sure. Fill before driving on.</source>
        <translation>Le réservoir est peut-être à sec : aucune distance n’est sûre. Remplir avant de repartir.</translation>
    </message>
    <message>
        <source>The zero mark may be passed already: no distance to it is sure.</source>
        <translation>Le repère zéro est peut-être passé : aucune distance jusque-là n’est sûre.</translation>
    </message>
    <message>
        <source>the card cannot be written</source>
        <translation>la fiche ne peut pas être écrite</translation>
    </message>
    <message>
        <source>The changed route is not saved. Touch again to leave it.</source>
        <translation>La route changée n&apos;est pas gardée. Toucher encore pour la quitter.</translation>
    </message>
    <message>
        <source>Where the car is on the route comes first.</source>
        <translation>D’abord : où est la voiture sur la route.</translation>
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
        <source>this is no number</source>
        <translation>ce n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>the leg is no distance</source>
        <translation>l’étape n’est pas une distance</translation>
    </message>
    <message>
        <source>0 km or more</source>
        <translation>0 km ou plus</translation>
    </message>
    <message>
        <source>the row would lie behind the next one, which stays where it is</source>
        <translation>la ligne serait derrière la suivante, qui reste où elle est</translation>
    </message>
    <message>
        <source>the route is too long</source>
        <translation>la route est trop longue</translation>
    </message>
    <message>
        <source>%1 rows at most</source>
        <translation>%1 lignes au plus</translation>
    </message>
    <message>
        <source>How much the tank takes is missing</source>
        <translation>Il manque ce que prend le réservoir</translation>
    </message>
    <message>
        <source>table or logbook have changed since they were looked at: go back and look again</source>
        <translation>tableau ou carnet ont changé depuis qu&apos;ils ont été regardés : revenir et regarder encore</translation>
    </message>
    <message>
        <source>calibration points need litres of 0 or more and one reading or more</source>
        <translation>les points d’étalonnage demandent une quantité de 0 ou plus et au moins une lecture</translation>
    </message>
    <message>
        <source>the sd of a calibration reading must be 0 or more</source>
        <translation>l’écart type d’une lecture d’étalonnage doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>a calibration needs readings at two or more amounts of litres</source>
        <translation>un étalonnage demande des lectures à au moins deux quantités</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
    <message>
        <source>The float rests on its lower stop up to %1: at %2 the gauge cannot see the last %3. Lower the float arm, or count this fuel by consumption only.</source>
        <translation>Le flotteur repose sur sa butée basse jusqu’à %1 : à %2 la jauge ne voit pas les derniers %3. Abaisser le bras du flotteur, ou ne compter ce carburant que par la consommation.</translation>
    </message>
    <message>
        <source>The float reaches its upper stop at %1: the gauge cannot see the %2 above. It will stand still for that long after a fill; raise the arm&apos;s stop if that matters.</source>
        <translation>Le flotteur atteint sa butée haute à %1 : la jauge ne voit pas les %2 au-dessus. Elle restera immobile d’autant après un plein ; relever la butée du bras si cela gêne.</translation>
    </message>
    <message>
        <source>The signal stood at %1 from %2 to %3, in the middle of its travel. The float may jam or touch something there: move it by hand and look for what it meets.</source>
        <translation>Le signal est resté à %1 de %2 à %3, au milieu de sa course. Le flotteur coince ou touche peut-être quelque chose là : le bouger à la main et chercher ce qu’il rencontre.</translation>
    </message>
    <message>
        <source>Repeated readings differ, at %1, by as much as %2. Let the fuel come to rest before reading; if they still differ, look for a loose contact or a sticking float.</source>
        <translation>Des lectures répétées diffèrent, à %1, de %2 au plus. Laisser le carburant se calmer avant de lire ; si elles diffèrent encore, chercher un faux contact ou un flotteur qui colle.</translation>
    </message>
    <message>
        <source>The signal moves by %1 of about %2 that it could. The float arm may be too short, bent or wrongly placed to reach both ends: check that it does.</source>
        <translation>Le signal bouge de %1 sur environ %2 possibles. Le bras du flotteur est peut-être trop court, tordu ou mal placé pour atteindre les deux bouts : vérifier qu’il le fait.</translation>
    </message>
    <message>
        <source>One step of the reading (%1) is %2. Read and note one more decimal, or use a finer meter.</source>
        <translation>Un pas de la lecture (%1) vaut %2. Lire et noter une décimale de plus, ou prendre un appareil plus fin.</translation>
    </message>
    <message>
        <source>On the way down the signal stands for %1 less than on the way up.</source>
        <translation>En descendant, le signal correspond à %1 de moins qu’en montant.</translation>
    </message>
    <message>
        <source>On the way down the signal stands for %1 more than on the way up.</source>
        <translation>En descendant, le signal correspond à %1 de plus qu’en montant.</translation>
    </message>
    <message>
        <source>Driving goes down: the curve is the falling one.</source>
        <translation>Rouler fait descendre : la courbe est celle de la descente.</translation>
    </message>
    <message>
        <source>The falling readings cover too little for a curve of their own; the difference is carried as a bias. Drain down in steps over the whole range to settle it.</source>
        <translation>Les lectures en descente couvrent trop peu pour une courbe à elles ; la différence est gardée comme un biais. Vidanger par étapes sur toute la plage pour la régler.</translation>
    </message>
    <message>
        <source>Check the float&apos;s pivot for stiffness.</source>
        <translation>Vérifier que le pivot du flotteur n’est pas dur.</translation>
    </message>
    <message>
        <source>The readings only go up, and driving goes down: the level may be lower than read by an assumed %1. Note some readings while draining to measure it.</source>
        <translation>Les lectures ne font que monter, et rouler fait descendre : le niveau peut être plus bas que lu, de %1 à ce qu’on suppose. Noter quelques lectures en vidangeant pour le mesurer.</translation>
    </message>
    <message>
        <source>With electrical load on the reading moves by %1, which is %2. The sender&apos;s ground shares a wire with the load: give it its own, and clean the ground point.</source>
        <translation>Avec les consommateurs électriques allumés, la lecture bouge de %1, soit %2. La masse de la jauge partage un fil avec la charge : lui en donner un à elle, et nettoyer le point de masse.</translation>
    </message>
    <message>
        <source>An open circuit reads like this: look for a connector or wire that is off.</source>
        <translation>Un circuit ouvert se lit ainsi : chercher un connecteur ou un fil débranché.</translation>
    </message>
    <message>
        <source>A short reads like this: look for the signal wire touching ground.</source>
        <translation>Un court-circuit se lit ainsi : chercher si le fil du signal touche la masse.</translation>
    </message>
    <message>
        <source>This circuit cannot give it: check the unit, the supply and the wiring.</source>
        <translation>Ce circuit ne peut pas donner cela : vérifier l’unité, l’alimentation et le câblage.</translation>
    </message>
    <message>
        <source>The reading %1 at %2 is outside what the sender gives.</source>
        <translation>La lecture %1 à %2 est hors de ce que donne la jauge.</translation>
    </message>
    <message>
        <source>The curve leaves it out.</source>
        <translation>La courbe ne la prend pas.</translation>
    </message>
    <message>
        <source>The signal stayed near %1 while %2 went in or out. Check the wiring, the ground and the plug at the sender, then move the float by hand: no curve can be made from these readings.</source>
        <translation>Le signal est resté près de %1 pendant que %2 entraient ou sortaient. Vérifier le câblage, la masse et la prise de la jauge, puis bouger le flotteur à la main : ces lectures ne donnent aucune courbe.</translation>
    </message>
    <message>
        <source>With %1 levels the curve between them is little more than a guess of the tank&apos;s shape. Add readings at levels in between when you can.</source>
        <translation>Avec %1 niveaux, la courbe entre eux n’est guère qu’une supposition sur la forme du réservoir. Ajouter des lectures entre les deux quand c’est possible.</translation>
    </message>
    <message>
        <source>There is a second signal. This curve uses the first one only; two lobes read separately need their own fit.</source>
        <translation>Il y a un second signal. Cette courbe n’utilise que le premier ; deux poches lues séparément demandent leur propre courbe.</translation>
    </message>
    <message>
        <source>a gauge table has 2 to 100 points</source>
        <translation>une table d’indicateur a de 2 à 100 points</translation>
    </message>
    <message>
        <source>a gauge shows 0 to 6 decimals</source>
        <translation>un indicateur montre de 0 à 6 décimales</translation>
    </message>
    <message>
        <source>the zero mark must lie under full and within the calibrated litres</source>
        <translation>le repère zéro doit être sous le plein et dans la plage étalonnée</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>a level curve needs two or more finite knots</source>
        <translation>une courbe de niveau demande au moins deux nœuds finis</translation>
    </message>
    <message>
        <source>the knots of a level curve must rise in litres and keep one direction</source>
        <translation>les nœuds d’une courbe de niveau doivent croître en quantité et garder un sens</translation>
    </message>
    <message>
        <source>a saddle tank needs at least three points</source>
        <translation>un réservoir à deux poches demande au moins trois points</translation>
    </message>
    <message>
        <source>a saddle tank needs both signals at every point</source>
        <translation>un réservoir à deux poches demande les deux signaux à chaque point</translation>
    </message>
    <message>
        <source>a signal of the saddle tank does not move over the whole calibration</source>
        <translation>un signal du réservoir à deux poches ne bouge pas de tout l’étalonnage</translation>
    </message>
    <message>
        <source>litres must rise and each signal keep its direction in a saddle tank</source>
        <translation>dans un réservoir à deux poches la quantité doit croître et chaque signal garder son sens</translation>
    </message>
    <message>
        <source>a dimension of the tank is impossible</source>
        <translation>une dimension du réservoir est impossible</translation>
    </message>
    <message>
        <source>above 0 and up to 10 m</source>
        <translation>plus de 0 et jusqu’à 10 m</translation>
    </message>
    <message>
        <source>the box&apos;s corner radius is impossible</source>
        <translation>le rayon d’angle de la caisse est impossible</translation>
    </message>
    <message>
        <source>0 to half its smaller side</source>
        <translation>0 à la moitié du petit côté</translation>
    </message>
    <message>
        <source>a cylinder is as wide as it is high</source>
        <translation>un cylindre est aussi large que haut</translation>
    </message>
    <message>
        <source>the tilt is impossible</source>
        <translation>l’inclinaison est impossible</translation>
    </message>
    <message>
        <source>-45 to 45 degrees</source>
        <translation>-45 à 45 degrés</translation>
    </message>
    <message>
        <source>the sender&apos;s signals for empty and full are equal</source>
        <translation>les signaux de la jauge pour vide et plein sont égaux</translation>
    </message>
    <message>
        <source>volume at 15 C: times %1</source>
        <translation>volume à 15 °C : fois %1</translation>
    </message>
    <message>
        <source>energy of the blend burnt: times %1</source>
        <translation>énergie du mélange brûlé : fois %1</translation>
    </message>
    <message>
        <source>%1 times the usual consumption: was the fill before really full, and is the distance right?</source>
        <translation>%1 fois la consommation habituelle : le plein d’avant était-il vraiment plein, et la distance est-elle juste ?</translation>
    </message>
    <message>
        <source>%1 fit if the number typed was gallons: %2</source>
        <translation>%1 conviennent si le nombre tapé était en gallons : %2</translation>
    </message>
    <message>
        <source>%1 fit if the number typed was miles: %2</source>
        <translation>%1 conviennent si le nombre tapé était en miles : %2</translation>
    </message>
    <message>
        <source>%1 is about %2 more than was burnt: was a can filled as well?</source>
        <translation>%1, c’est environ %2 de plus que brûlé : un bidon a-t-il été rempli aussi ?</translation>
    </message>
    <message>
        <source>%1 on %2: a fill of about %3 seems to be missing before this one</source>
        <translation>%1 avec %2 : un plein d’environ %3 semble manquer avant celui-ci</translation>
    </message>
    <message>
        <source>%1 do not fit the fuel, but together with the next stretch they do: about %2 would</source>
        <translation>%1 ne vont pas avec le carburant, mais avec le tronçon suivant si : environ %2 iraient</translation>
    </message>
    <message>
        <source>the dash was swapped and no trip meter tells the way to this fill</source>
        <translation>le combiné a été changé et aucun partiel ne dit le chemin jusqu’à ce plein</translation>
    </message>
    <message>
        <source>no odometer and no trip meter tell the way to this fill</source>
        <translation>ni compteur ni partiel ne disent le chemin jusqu’à ce plein</translation>
    </message>
    <message>
        <source>%1 by odometer, %2 by trip meter: %3 are not accounted for; was a fill forgotten?</source>
        <translation>%1 au compteur, %2 au partiel : %3 ne sont pas expliqués ; un plein oublié ?</translation>
    </message>
    <message>
        <source>%1 by odometer, %2 by trip meter: %3 too many; was the trip meter not reset?</source>
        <translation>%1 au compteur, %2 au partiel : %3 de trop ; le partiel n’a-t-il pas été remis à zéro ?</translation>
    </message>
    <message>
        <source>trips of %1 are logged on a way of %2: they were scaled down by %3</source>
        <translation>des trajets de %1 sont notés sur un chemin de %2 : ils ont été réduits de %3</translation>
    </message>
    <message>
        <source>odometer %1 after %2: was the dash swapped?</source>
        <translation>compteur %1 après %2 : le combiné a-t-il été changé ?</translation>
    </message>
    <message>
        <source>%1 were pumped but the tank takes %2: was a can filled as well?</source>
        <translation>%1 ont été pompés mais le réservoir prend %2 : un bidon a-t-il été rempli aussi ?</translation>
    </message>
    <message>
        <source>%1 are measured from the doubtful odometer before</source>
        <translation>%1 sont mesurés depuis le compteur douteux d’avant</translation>
    </message>
    <message>
        <source>this file exists: a demo never writes over a logbook</source>
        <translation>ce fichier existe : un exemple n’écrase jamais un carnet</translation>
    </message>
    <message>
        <source>%1 (expected %2, found &apos;%3&apos;)</source>
        <translation>%1 (attendu : %2 ; trouvé : « %3 »)</translation>
    </message>
    <message>
        <source>%1 (expected %2)</source>
        <translation>%1 (attendu : %2)</translation>
    </message>
    <message>
        <source>%1 (found &apos;%2&apos;)</source>
        <translation>%1 (trouvé : « %2 »)</translation>
    </message>
    <message>
        <source>column &apos;%1&apos;: %2</source>
        <translation>colonne « %1 » : %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>the number is missing</source>
        <translation>le nombre manque</translation>
    </message>
    <message>
        <source>a comma cannot be part of a number, decimals take a point</source>
        <translation>une virgule n’a pas sa place dans un nombre, les décimales prennent un point</translation>
    </message>
    <message>
        <source>only the number belongs here, without a unit</source>
        <translation>seul le nombre va ici, sans unité</translation>
    </message>
    <message>
        <source>this is not a number</source>
        <translation>ce n’est pas un nombre</translation>
    </message>
    <message>
        <source>the number is outside what is possible</source>
        <translation>le nombre est hors du possible</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>la ligne est trop longue</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>c’est un dossier, pas un fichier</translation>
    </message>
    <message>
        <source>the file is too large</source>
        <translation>le fichier est trop gros</translation>
    </message>
    <message>
        <source>%1 bytes at most</source>
        <translation>%1 octets au plus</translation>
    </message>
    <message>
        <source>cannot open the file</source>
        <translation>le fichier ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>the file is empty, its first line must name the columns</source>
        <translation>le fichier est vide, sa première ligne doit nommer les colonnes</translation>
    </message>
    <message>
        <source>the header names column &apos;%1&apos; twice</source>
        <translation>l’en-tête nomme deux fois la colonne « %1 »</translation>
    </message>
    <message>
        <source>a quoted text is not closed</source>
        <translation>un texte entre guillemets n’est pas fermé</translation>
    </message>
    <message>
        <source>the header lacks this column</source>
        <translation>il manque cette colonne à l’en-tête</translation>
    </message>
    <message>
        <source>a header with &apos;%1&apos;</source>
        <translation>un en-tête avec « %1 »</translation>
    </message>
    <message>
        <source>the row has more cells than the header, decimals take a point</source>
        <translation>la ligne a plus de cellules que l’en-tête, les décimales prennent un point</translation>
    </message>
    <message>
        <source>the row has fewer cells than the header</source>
        <translation>la ligne a moins de cellules que l’en-tête</translation>
    </message>
    <message>
        <source>%1 cells</source>
        <translation>%1 cellules</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un nombre au-dessus de 0</translation>
    </message>
    <message>
        <source>another program goes on writing to the logbook</source>
        <translation>un autre programme continue d’écrire dans le carnet</translation>
    </message>
    <message>
        <source>the folder is there already</source>
        <translation>le dossier existe déjà</translation>
    </message>
    <message>
        <source>1 or 0</source>
        <translation>1 ou 0</translation>
    </message>
    <message>
        <source>this is not a date</source>
        <translation>ce n’est pas une date</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>AAAA-MM-JJ</translation>
    </message>
    <message>
        <source>there is no such day or time</source>
        <translation>ce jour ou cette heure n’existe pas</translation>
    </message>
    <message>
        <source>the header must name one of km and odometer_km</source>
        <translation>l’en-tête doit nommer soit km soit odometer_km</translation>
    </message>
    <message>
        <source>km or odometer_km</source>
        <translation>km ou odometer_km</translation>
    </message>
    <message>
        <source>both</source>
        <translation>les deux</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>degrees Celsius from -60 to 80</source>
        <translation>degrés Celsius de -60 à 80</translation>
    </message>
    <message>
        <source>this kind of fuel point is not known</source>
        <translation>ce genre de point de carburant n’est pas connu</translation>
    </message>
    <message>
        <source>a section is timed or it is not</source>
        <translation>un tronçon est chronométré ou non</translation>
    </message>
    <message>
        <source>degrees Fahrenheit from -76 to 176</source>
        <translation>degrés Fahrenheit de -76 à 176</translation>
    </message>
    <message>
        <source>0 to 1000 starts</source>
        <translation>0 à 1000 démarrages</translation>
    </message>
    <message>
        <source>this is not a column that can be imported</source>
        <translation>cette colonne ne peut pas être reprise</translation>
    </message>
    <message>
        <source>the file is too long</source>
        <translation>le fichier est trop long</translation>
    </message>
    <message>
        <source>the file holds no row</source>
        <translation>le fichier ne contient aucune ligne</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>au moins une</translation>
    </message>
    <message>
        <source>this is neither yes nor no</source>
        <translation>ce n’est ni oui ni non</translation>
    </message>
    <message>
        <source>a trip needs its driving mode</source>
        <translation>un trajet demande son mode de conduite</translation>
    </message>
    <message>
        <source>a mode of the vehicle</source>
        <translation>un mode de la voiture</translation>
    </message>
    <message>
        <source>a trip without kilometres needs idle minutes</source>
        <translation>un trajet sans kilomètres demande des minutes au ralenti</translation>
    </message>
    <message>
        <source>km above 0</source>
        <translation>km au-dessus de 0</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>jour, mois, année</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mois, jour, année</translation>
    </message>
    <message>
        <source>a whole number of 1 or more</source>
        <translation>un nombre entier à partir de 1</translation>
    </message>
    <message>
        <source>0 or 1</source>
        <translation>0 ou 1</translation>
    </message>
    <message>
        <source>this must be a whole number</source>
        <translation>ce doit être un nombre entier</translation>
    </message>
    <message>
        <source>a calibration needs the drained tank and at least one step above it</source>
        <translation>un étalonnage demande le réservoir vidé et au moins une étape au-dessus</translation>
    </message>
    <message>
        <source>two or more rows</source>
        <translation>au moins deux lignes</translation>
    </message>
    <message>
        <source>every row has the same litres</source>
        <translation>chaque ligne a la même quantité</translation>
    </message>
    <message>
        <source>litres that differ</source>
        <translation>des quantités différentes</translation>
    </message>
    <message>
        <source>litres are counted from the row with the fewest, which is taken as the drained tank</source>
        <translation>la quantité est comptée depuis la ligne qui en a le moins, prise pour le réservoir vidé</translation>
    </message>
    <message>
        <source>%1: column &apos;%2&apos; is not known and not used</source>
        <translation>%1 : la colonne « %2 » n’est pas connue et pas utilisée</translation>
    </message>
    <message>
        <source>km of 0 or more</source>
        <translation>0 km ou plus</translation>
    </message>
    <message>
        <source>the header lacks the distance</source>
        <translation>il manque la distance à l’en-tête</translation>
    </message>
    <message>
        <source>&apos;at_km&apos; or &apos;leg_km&apos;</source>
        <translation>« at_km » ou « leg_km »</translation>
    </message>
    <message>
        <source>two columns of distance contradict each other</source>
        <translation>deux colonnes de distance se contredisent</translation>
    </message>
    <message>
        <source>&apos;at_km&apos; or &apos;leg_km&apos;, not both</source>
        <translation>« at_km » ou « leg_km », pas les deux</translation>
    </message>
    <message>
        <source>unknown column &apos;%1&apos; is not used</source>
        <translation>la colonne inconnue « %1 » n’est pas utilisée</translation>
    </message>
    <message>
        <source>the route has no finish</source>
        <translation>la route n’a pas d’arrivée</translation>
    </message>
    <message>
        <source>two rows or more</source>
        <translation>au moins deux lignes</translation>
    </message>
    <message>
        <source>the distance runs backwards</source>
        <translation>la distance va à reculons</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>the minimum purchase is above the limit</source>
        <translation>l’achat minimal dépasse la limite</translation>
    </message>
    <message>
        <source>max_litres or less</source>
        <translation>max_litres ou moins</translation>
    </message>
    <message>
        <source>this is not a time of day</source>
        <translation>ce n’est pas une heure du jour</translation>
    </message>
    <message>
        <source>HH:MM, 00:00 to 24:00</source>
        <translation>HH:MM, 00:00 à 24:00</translation>
    </message>
    <message>
        <source>the file has no route and no track</source>
        <translation>le fichier n’a ni route ni trace</translation>
    </message>
    <message>
        <source>a rte or trk element</source>
        <translation>un élément rte ou trk</translation>
    </message>
    <message>
        <source>two points or more</source>
        <translation>au moins deux points</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation>le fichier ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>256 MiB at most</source>
        <translation>256 Mio au plus</translation>
    </message>
    <message>
        <source>this is not sound XML: %1 at byte %2</source>
        <translation>ce n’est pas du XML valide : %1 à l’octet %2</translation>
    </message>
    <message>
        <source>a document type has no place in a GPX file</source>
        <translation>un type de document n’a pas sa place dans un fichier GPX</translation>
    </message>
    <message>
        <source>this is not GPX 1.1</source>
        <translation>ce n’est pas du GPX 1.1</translation>
    </message>
    <message>
        <source>a gpx element of version 1.1</source>
        <translation>un élément gpx de version 1.1</translation>
    </message>
    <message>
        <source>degrees from -90 to 90</source>
        <translation>degrés de -90 à 90</translation>
    </message>
    <message>
        <source>degrees from -180 to 180</source>
        <translation>degrés de -180 à 180</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2 : %3</translation>
    </message>
    <message>
        <source>%1 points at most</source>
        <translation>%1 points au plus</translation>
    </message>
    <message>
        <source>some points state at_km and some do not</source>
        <translation>certains points donnent at_km, d’autres non</translation>
    </message>
    <message>
        <source>at_km in all rtepts or in none</source>
        <translation>at_km dans tous les rtept ou dans aucun</translation>
    </message>
    <message>
        <source>the track has a gap of %1 after %2: it is not bridged and adds no distance</source>
        <translation>la trace a un trou de %1 après %2 : il n’est pas comblé et n’ajoute pas de distance</translation>
    </message>
    <message>
        <source>waypoint &apos;%1&apos; is too far from the line and is left out</source>
        <translation>le point « %1 » est trop loin de la ligne et n’est pas pris</translation>
    </message>
    <message>
        <source>and %1 more waypoints are too far from the line</source>
        <translation>et %1 autres points sont trop loin de la ligne</translation>
    </message>
    <message>
        <source>the places of this route are not known, and GPX needs them</source>
        <translation>les lieux de cette route ne sont pas connus, et GPX en a besoin</translation>
    </message>
    <message>
        <source>a route that was read from GPX</source>
        <translation>une route lue dans un GPX</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>le fichier ne peut pas être écrit</translation>
    </message>
    <message>
        <source>another program has the logbook open: close it first</source>
        <translation>un autre programme tient le carnet ouvert : le fermer d’abord</translation>
    </message>
    <message>
        <source>this holds views or tables that no Undermark has written</source>
        <translation>il contient des vues ou des tables qu’aucun Undermark n’a écrites</translation>
    </message>
    <message>
        <source>nothing of this logbook can be read</source>
        <translation>rien de ce carnet ne peut être lu</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>le dossier ne peut pas être créé : %1</translation>
    </message>
    <message>
        <source>this is not a logbook</source>
        <translation>ce n’est pas un carnet</translation>
    </message>
    <message>
        <source>a newer Undermark wrote this logbook (schema %1, this program knows %2); this one can read it, but not write</source>
        <translation>un Undermark plus récent a écrit ce carnet (schéma %1, ce programme connaît %2) ; celui-ci peut le lire, mais pas l’écrire</translation>
    </message>
    <message>
        <source>a newer Undermark wrote this logbook (schema %1, this program knows %2); please update this one</source>
        <translation>un Undermark plus récent a écrit ce carnet (schéma %1, ce programme connaît %2) ; mettre celui-ci à jour</translation>
    </message>
    <message>
        <source>%1, with a copy in %2</source>
        <translation>%1, avec une copie dans %2</translation>
    </message>
    <message>
        <source>%1; it was left as it is</source>
        <translation>%1 ; il est resté tel quel</translation>
    </message>
    <message>
        <source>there is no logbook</source>
        <translation>il n’y a pas de carnet</translation>
    </message>
    <message>
        <source>this is not a logbook: the file is empty</source>
        <translation>ce n’est pas un carnet : le fichier est vide</translation>
    </message>
    <message>
        <source>%1; undermark-cli can take out what is readable, or bring a backup back</source>
        <translation>%1 ; undermark-cli peut en tirer ce qui se lit, ou ramener une sauvegarde</translation>
    </message>
    <message>
        <source>another program is writing to the logbook</source>
        <translation>un autre programme écrit dans le carnet</translation>
    </message>
    <message>
        <source>the logbook is damaged: %1</source>
        <translation>le carnet est abîmé : %1</translation>
    </message>
    <message>
        <source>the logbook can be read, but not written</source>
        <translation>le carnet peut être lu, mais pas écrit</translation>
    </message>
    <message>
        <source>this holds views or triggers that no Undermark has written; it was left as it is</source>
        <translation>il contient des vues ou des déclencheurs qu’aucun Undermark n’a écrits ; il est resté tel quel</translation>
    </message>
    <message>
        <source>the logbook is damaged: %1; it was left as it is</source>
        <translation>le carnet est abîmé : %1 ; il est resté tel quel</translation>
    </message>
    <message>
        <source>this is not a logbook: not an SQLite file</source>
        <translation>ce n’est pas un carnet : pas un fichier SQLite</translation>
    </message>
    <message>
        <source>this is not a logbook: an SQLite file of another program</source>
        <translation>ce n’est pas un carnet : un fichier SQLite d’un autre programme</translation>
    </message>
    <message>
        <source>the logbook is cut short: %1 of %2 bytes are there</source>
        <translation>le carnet est coupé : %1 octets sur %2 sont là</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>the logbook cannot be read</source>
        <translation>le carnet ne peut pas être lu</translation>
    </message>
    <message>
        <source>this is not a logbook: too short for one</source>
        <translation>ce n’est pas un carnet : trop court pour cela</translation>
    </message>
    <message>
        <source>there is no such entry</source>
        <translation>cette entrée n’existe pas</translation>
    </message>
    <message>
        <source>there is no such vehicle</source>
        <translation>cette voiture n’existe pas</translation>
    </message>
    <message>
        <source>there is a vehicle of that name already</source>
        <translation>une voiture de ce nom existe déjà</translation>
    </message>
    <message>
        <source>there is a mode of that name already</source>
        <translation>un mode de ce nom existe déjà</translation>
    </message>
    <message>
        <source>the vehicle has no such mode</source>
        <translation>la voiture n’a pas ce mode</translation>
    </message>
    <message>
        <source>a mode keeps its name</source>
        <translation>un mode garde son nom</translation>
    </message>
    <message>
        <source>trips or proofs name this mode</source>
        <translation>des trajets ou des preuves nomment ce mode</translation>
    </message>
    <message>
        <source>nothing of this entry is left to undo</source>
        <translation>il ne reste rien à annuler dans cette entrée</translation>
    </message>
    <message>
        <source>the logbook is damaged</source>
        <translation>le carnet est abîmé</translation>
    </message>
    <message>
        <source>the bundle is too large</source>
        <translation>le paquet est trop gros</translation>
    </message>
    <message>
        <source>this holds rows that no Undermark has written</source>
        <translation>il contient des entrées qu’aucun Undermark n’a écrites</translation>
    </message>
    <message>
        <source>there are too many copies of older schemas beside the logbook</source>
        <translation>il y a trop de copies d’anciens schémas à côté du carnet</translation>
    </message>
    <message>
        <source>rows of the logbook refer to rows that are not there; it was left as it is</source>
        <translation>des entrées du carnet renvoient à d’autres qui n’existent pas ; il est resté tel quel</translation>
    </message>
    <message>
        <source>the logbook states schema %1, which no Undermark has written; it was left as it is</source>
        <translation>le carnet annonce le schéma %1, qu’aucun Undermark n’a écrit ; il est resté tel quel</translation>
    </message>
    <message>
        <source>the file is there already</source>
        <translation>le fichier existe déjà</translation>
    </message>
    <message>
        <source>impossible value</source>
        <translation>valeur impossible</translation>
    </message>
    <message>
        <source>a number of 0 or more, up to 1e9</source>
        <translation>un nombre de 0 ou plus, jusqu’à 1e9</translation>
    </message>
    <message>
        <source>a number above 0, up to 1e9</source>
        <translation>un nombre au-dessus de 0, jusqu’à 1e9</translation>
    </message>
    <message>
        <source>a number from -1e9 to 1e9</source>
        <translation>un nombre de -1e9 à 1e9</translation>
    </message>
    <message>
        <source>a time in the years 1900 to 9999</source>
        <translation>un moment entre les années 1900 et 9999</translation>
    </message>
    <message>
        <source>text of 1 to 200 bytes of UTF-8 without control characters</source>
        <translation>un texte de 1 à 200 octets UTF-8 sans caractères de commande</translation>
    </message>
    <message>
        <source>1 or more</source>
        <translation>1 ou plus</translation>
    </message>
    <message>
        <source>at most 10000</source>
        <translation>10000 au plus</translation>
    </message>
    <message>
        <source>degrees Celsius above absolute zero</source>
        <translation>degrés Celsius au-dessus du zéro absolu</translation>
    </message>
    <message>
        <source>some distance, or some idling</source>
        <translation>un peu de distance, ou de ralenti</translation>
    </message>
    <message>
        <source>0 to 1000000</source>
        <translation>0 à 1000000</translation>
    </message>
    <message>
        <source>km past the zero mark</source>
        <translation>le chemin au-delà du repère zéro</translation>
    </message>
    <message>
        <source>the litres poured in</source>
        <translation>la quantité versée</translation>
    </message>
    <message>
        <source>the litres pumped out, or those found left behind</source>
        <translation>la quantité pompée, ou celle qui est restée</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>pas utilisée : %1</translation>
    </message>
    <message>
        <source>contradicts what was known: check the entry</source>
        <translation>contredit ce qu’on savait : vérifier l’entrée</translation>
    </message>
    <message>
        <source>the level is not known: the log holds no full fill yet</source>
        <translation>le niveau n’est pas connu : le carnet n’a encore aucun plein complet</translation>
    </message>
    <message>
        <source>the last full fill has no odometer to count from</source>
        <translation>le dernier plein complet n’a pas de compteur d’où partir</translation>
    </message>
    <message>
        <source>the odometer is lower than at the last full fill</source>
        <translation>le compteur est plus bas qu’au dernier plein complet</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>log: full, then %1 and %2 more</source>
        <translation>carnet : plein, puis %1 et %2 de plus</translation>
    </message>
    <message>
        <source>log: full, then %1</source>
        <translation>carnet : plein, puis %1</translation>
    </message>
    <message>
        <source>the fuel as given</source>
        <translation>le carburant tel que donné</translation>
    </message>
    <message>
        <source>sender at %1 and %2 %3</source>
        <translation>jauge à %1 et %2 %3</translation>
    </message>
    <message>
        <source>sender at %1 %2</source>
        <translation>jauge à %1 %2</translation>
    </message>
    <message>
        <source>%1, on the float&apos;s lower stop</source>
        <translation>%1, sur la butée basse du flotteur</translation>
    </message>
    <message>
        <source>%1, on the float&apos;s upper stop</source>
        <translation>%1, sur la butée haute du flotteur</translation>
    </message>
    <message>
        <source>the sender reads open: check its wire and connector</source>
        <translation>la jauge se lit comme coupée : vérifier son fil et son connecteur</translation>
    </message>
    <message>
        <source>the sender reads shorted: check its wire for contact with ground</source>
        <translation>la jauge se lit en court-circuit : vérifier si son fil touche la masse</translation>
    </message>
    <message>
        <source>the sender cannot give this reading: check its unit, wire and connector</source>
        <translation>la jauge ne peut pas donner cette lecture : vérifier l’unité, le fil et le connecteur</translation>
    </message>
    <message>
        <source>at most %1 usable</source>
        <translation>au plus %1 utilisables</translation>
    </message>
    <message>
        <source>at least %1 usable</source>
        <translation>au moins %1 utilisables</translation>
    </message>
    <message>
        <source>a reading says nothing before the sender is calibrated</source>
        <translation>une lecture ne dit rien avant que la jauge soit étalonnée</translation>
    </message>
    <message>
        <source>this saddle tank has two senders: one reading is not enough</source>
        <translation>ce réservoir à deux poches a deux jauges : une lecture ne suffit pas</translation>
    </message>
    <message>
        <source>both readings</source>
        <translation>les deux lectures</translation>
    </message>
    <message>
        <source>this tank was calibrated with one signal</source>
        <translation>ce réservoir a été étalonné avec un seul signal</translation>
    </message>
    <message>
        <source>one reading</source>
        <translation>une lecture</translation>
    </message>
    <message>
        <source>%1; the distance is from the log alone</source>
        <translation>%1 ; la distance vient du carnet seul</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1; the distance is from the log</source>
        <translation>le flotteur repose sur sa butée : %1 ; la distance vient du carnet</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1; the log disagrees, the distance follows the reading</source>
        <translation>le flotteur repose sur sa butée : %1 ; le carnet n’est pas d’accord, la distance suit la lecture</translation>
    </message>
    <message>
        <source>the float rests on its stop: %1</source>
        <translation>le flotteur repose sur sa butée : %1</translation>
    </message>
    <message>
        <source>there is no driving mode of this name</source>
        <translation>aucun mode de conduite n’a ce nom</translation>
    </message>
    <message>
        <source>compare one reading with a measured pour, look at the sender&apos;s wiring, ground and float, and calibrate again if it stays; until then trust the log more than the reading</source>
        <translation>comparer une lecture à une quantité mesurée, regarder le câblage, la masse et le flotteur de la jauge, et étalonner de nouveau si cela reste ; d’ici là, croire le carnet plus que la lecture</translation>
    </message>
    <message>
        <source>over %1 full fills the sender reads %2 higher with each year: %3</source>
        <translation>sur %1 pleins complets, la jauge lit %2 plus haut chaque année : %3</translation>
    </message>
    <message>
        <source>over %1 full fills the sender reads %2 lower with each year: %3</source>
        <translation>sur %1 pleins complets, la jauge lit %2 plus bas chaque année : %3</translation>
    </message>
    <message>
        <source>no calibration is stored: readings cannot be used</source>
        <translation>aucun étalonnage n’est gardé : les lectures ne peuvent pas servir</translation>
    </message>
    <message>
        <source>%1 of %2 full fills since the calibration note the reading before pumping: note it and the sender is watched</source>
        <translation>%1 pleins complets sur %2 depuis l’étalonnage notent la lecture avant de remplir : la noter, et la jauge est surveillée</translation>
    </message>
    <message>
        <source>the calibration is %1 years old: compare one reading with a measured pour</source>
        <translation>l’étalonnage a %1 ans : comparer une lecture à une quantité mesurée</translation>
    </message>
    <message>
        <source>opening hours are not looked at: they need a departure and a speed</source>
        <translation>les heures d’ouverture ne sont pas regardées : il faut un départ et une vitesse</translation>
    </message>
    <message>
        <source>detours are counted without minutes: they need a speed</source>
        <translation>les détours sont comptés sans minutes : il faut une vitesse</translation>
    </message>
    <message>
        <source>the event demands a limit for every refuel zone</source>
        <translation>l’épreuve demande une limite pour chaque zone de ravitaillement</translation>
    </message>
    <message>
        <source>max_litres</source>
        <translation>max_litres</translation>
    </message>
    <message>
        <source>the way needs more fuel than can be counted</source>
        <translation>le chemin demande plus de carburant qu’on n’en peut compter</translation>
    </message>
    <message>
        <source>a price is missing while other points have one</source>
        <translation>un prix manque alors que d’autres points en ont un</translation>
    </message>
    <message>
        <source>a price per litre</source>
        <translation>un prix par litre</translation>
    </message>
    <message>
        <source>the tank&apos;s capacity must be above 0</source>
        <translation>la capacité du réservoir doit dépasser 0</translation>
    </message>
    <message>
        <source>litres above 0</source>
        <translation>litres au-dessus de 0</translation>
    </message>
    <message>
        <source>the level at the start does not fit the tank</source>
        <translation>le niveau au départ ne tient pas dans le réservoir</translation>
    </message>
    <message>
        <source>0 to %1</source>
        <translation>0 à %1</translation>
    </message>
    <message>
        <source>the floor and the level at the finish must fit the tank</source>
        <translation>le minimum et le niveau à l’arrivée doivent tenir dans le réservoir</translation>
    </message>
    <message>
        <source>a standard deviation of the level must be 0 or more</source>
        <translation>l’écart type du niveau doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>litres of 0 or more</source>
        <translation>litres à partir de 0</translation>
    </message>
    <message>
        <source>every mode needs one rate and its covariances</source>
        <translation>chaque mode demande une consommation et ses covariances</translation>
    </message>
    <message>
        <source>a rate must be above 0</source>
        <translation>une consommation doit dépasser 0</translation>
    </message>
    <message>
        <source>L/100 km above 0</source>
        <translation>L/100 km au-dessus de 0</translation>
    </message>
    <message>
        <source>the variance of a rate must be 0 or more</source>
        <translation>la variance d’une consommation doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>leg noise and idling rate must be 0 or more</source>
        <translation>dispersion des étapes et consommation au ralenti doivent être de 0 ou plus</translation>
    </message>
    <message>
        <source>a confidence must be from 0.5 to below 1</source>
        <translation>une confiance doit aller de 0,5 à moins de 1</translation>
    </message>
    <message>
        <source>0.5 to 0.999999</source>
        <translation>0,5 à 0,999999</translation>
    </message>
    <message>
        <source>a stop costs 0 or more</source>
        <translation>un arrêt coûte 0 ou plus</translation>
    </message>
    <message>
        <source>cans need a number and the litres of each</source>
        <translation>les bidons demandent un nombre et le contenu de chacun</translation>
    </message>
    <message>
        <source>the pump&apos;s flow and the speed must be above 0</source>
        <translation>le débit de la pompe et la vitesse doivent dépasser 0</translation>
    </message>
    <message>
        <source>the departure must be a time of day</source>
        <translation>le départ doit être une heure du jour</translation>
    </message>
    <message>
        <source>00:00 to 24:00</source>
        <translation>00:00 à 24:00</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>point %1</translation>
    </message>
    <message>
        <source>point %1 &apos;%2&apos;</source>
        <translation>point %1 « %2 »</translation>
    </message>
    <message>
        <source>%1: the distance is not a number</source>
        <translation>%1 : la distance n’est pas un nombre</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>%1: an amount is negative</source>
        <translation>%1 : une quantité est négative</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 ou plus</translation>
    </message>
    <message>
        <source>%1: nothing may be bought</source>
        <translation>%1 : rien ne peut être acheté</translation>
    </message>
    <message>
        <source>a limit above 0</source>
        <translation>une limite au-dessus de 0</translation>
    </message>
    <message>
        <source>%1: the minimum purchase is above the limit</source>
        <translation>%1 : l’achat minimal dépasse la limite</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>the route has no point of this name</source>
        <translation>la route n’a aucun point de ce nom</translation>
    </message>
    <message>
        <source>at least two points</source>
        <translation>au moins deux points</translation>
    </message>
    <message>
        <source>%1: the distance runs backwards</source>
        <translation>%1 : la distance va à reculons</translation>
    </message>
    <message>
        <source>this place is not on the way to the finish</source>
        <translation>cet endroit n’est pas sur le chemin de l’arrivée</translation>
    </message>
    <message>
        <source>from %1 to below %2</source>
        <translation>de %1 à moins de %2</translation>
    </message>
    <message>
        <source>nothing follows this point, so nothing can be driven again</source>
        <translation>rien ne suit ce point, donc rien ne peut être refait</translation>
    </message>
    <message>
        <source>both lengths of the check section must be above 0</source>
        <translation>les deux longueurs du tronçon de contrôle doivent dépasser 0</translation>
    </message>
    <message>
        <source>there is no consumption for this mode of driving, at &apos;%1&apos;</source>
        <translation>il n’y a pas de consommation pour ce mode de conduite, à « %1 »</translation>
    </message>
    <message>
        <source>the point at %1</source>
        <translation>le point à %1</translation>
    </message>
    <message>
        <source>autonomy: distance between two chances to refuel</source>
        <translation>autonomie : chemin entre deux occasions de ravitailler</translation>
    </message>
    <message>
        <source>%1 to %2 is %3, %4 are allowed</source>
        <translation>de %1 à %2 il y a %3, %4 sont permis</translation>
    </message>
    <message>
        <source>autonomy: a full tank</source>
        <translation>autonomie : un réservoir plein</translation>
    </message>
    <message>
        <source>%1 need %2, a full tank has %3 above the floor</source>
        <translation>%1 demandent %2, un réservoir plein a %3 au-dessus du minimum</translation>
    </message>
    <message>
        <source>no plan was found for the confidence of the whole way with equal confidence on every arrival; one with unequal confidence is not ruled out</source>
        <translation>aucun plan n’a été trouvé pour la confiance du trajet entier avec la même confiance à chaque arrivée ; un plan à confiances inégales n’est pas exclu</translation>
    </message>
    <message>
        <source>opening hours stand in the way: with all places open there would be a plan</source>
        <translation>les heures d’ouverture font obstacle : tous lieux ouverts, il y aurait un plan</translation>
    </message>
    <message>
        <source>too many ways to be late: places closed on arrival are avoided, but another order of stops might suit the hours better</source>
        <translation>trop de façons d’être en retard : les lieux fermés à l’arrivée sont évités, mais un autre ordre d’arrêts conviendrait peut-être mieux</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 fermé</translation>
    </message>
    <message>
        <source>from %1 driven twice</source>
        <translation>depuis %1, parcouru deux fois</translation>
    </message>
    <message>
        <source>rate up by %1</source>
        <translation>consommation en hausse de %1</translation>
    </message>
    <message>
        <source>no tank is left</source>
        <translation>il ne reste pas de réservoir</translation>
    </message>
    <message>
        <source>less than the capacity</source>
        <translation>moins que la capacité</translation>
    </message>
    <message>
        <source>every fill %1 short</source>
        <translation>chaque plein plus court de %1</translation>
    </message>
    <message>
        <source>the road since the level was known must have a rate and km of 0 or more</source>
        <translation>la route depuis que le niveau était connu demande une consommation et des km de 0 ou plus</translation>
    </message>
    <message>
        <source>what surge makes unusable must be 0 or more, by mode</source>
        <translation>ce que le ballottement rend inutilisable doit être de 0 ou plus, par type de conduite</translation>
    </message>
    <message>
        <source>surge must be told of every mode or of none</source>
        <translation>le ballottement doit être donné pour tous les types de conduite ou pour aucun</translation>
    </message>
    <message>
        <source>the weights of what the rates may be must sum to 1</source>
        <translation>les poids des consommations possibles doivent faire 1 ensemble</translation>
    </message>
    <message>
        <source>the fuel above the limit must be finite, its spread 0 or more</source>
        <translation>le carburant au-dessus de la limite doit être fini, sa dispersion de 0 ou plus</translation>
    </message>
    <message>
        <source>a leg must have a known mode and a length of 0 or more</source>
        <translation>une étape demande un mode connu et une longueur de 0 ou plus</translation>
    </message>
    <message>
        <source>the spread of the consumption must be 0 or more</source>
        <translation>la dispersion de la consommation doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>filled up with %1 from the zero mark</source>
        <translation>plein de %1 depuis le repère zéro</translation>
    </message>
    <message>
        <source>filled up with %1 from %2 above zero</source>
        <translation>plein de %1 depuis %2 au-dessus de zéro</translation>
    </message>
    <message>
        <source>%1 drained from the zero mark</source>
        <translation>%1 vidangés depuis le repère zéro</translation>
    </message>
    <message>
        <source>%1 drained from %2 above zero</source>
        <translation>%1 vidangés depuis %2 au-dessus de zéro</translation>
    </message>
    <message>
        <source>stalled %1 past zero</source>
        <translation>en panne %1 au-delà de zéro</translation>
    </message>
    <message>
        <source>%1 past zero, still running</source>
        <translation>%1 au-delà de zéro, roulait encore</translation>
    </message>
    <message>
        <source>stalled %1 past zero (%2)</source>
        <translation>en panne %1 au-delà de zéro (%2)</translation>
    </message>
    <message>
        <source>%1 past zero, still running (%2)</source>
        <translation>%1 au-delà de zéro, roulait encore (%2)</translation>
    </message>
    <message>
        <source>a base proof needs the litres poured after draining</source>
        <translation>une preuve par base demande la quantité versée après vidange</translation>
    </message>
    <message>
        <source>base of %1 poured after draining</source>
        <translation>base de %1 versée après vidange</translation>
    </message>
    <message>
        <source>a drained proof needs the litres pumped out or found behind</source>
        <translation>une preuve par vidange demande la quantité pompée ou celle qui est restée</translation>
    </message>
    <message>
        <source>a drained proof from a reading needs a calibration for that reading</source>
        <translation>une preuve par vidange depuis une lecture demande un étalonnage pour cette lecture</translation>
    </message>
    <message>
        <source>%1 found left behind</source>
        <translation>%1 restés au fond</translation>
    </message>
    <message>
        <source>a proof past zero needs the distance past the zero mark</source>
        <translation>une preuve au-delà de zéro demande le chemin au-delà du repère zéro</translation>
    </message>
    <message>
        <source>a proof past zero needs the consumption of its driving mode</source>
        <translation>une preuve au-delà de zéro demande la consommation de son mode de conduite</translation>
    </message>
    <message>
        <source>the distance past zero must be 0 or more</source>
        <translation>le chemin au-delà de zéro doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>the consumption of a proof must be above 0</source>
        <translation>la consommation d’une preuve doit dépasser 0</translation>
    </message>
    <message>
        <source>Do not drive until it stops: running low harms pumps, and in diesels the injection.</source>
        <translation>Ne pas rouler jusqu’à l’arrêt : manquer de carburant abîme les pompes, et l’injection des diesels.</translation>
    </message>
    <message>
        <source>Have a qualified person drain it: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers, extinguisher in reach; stop pumping at the first spit.</source>
        <translation>Faire vidanger par une personne qualifiée : la vapeur d’essence s’enflamme. Moteur froid et coupé, aucune source d’allumage, aéré, mis à la terre, bidons homologués, extincteur à portée ; cesser de pomper au premier crachement.</translation>
    </message>
    <message>
        <source>Drain the tank, pour a measured base and read the zero mark anew</source>
        <translation>Vidanger le réservoir, verser une base mesurée et relire le repère zéro</translation>
    </message>
    <message>
        <source>Drain the tank and measure what the pump left behind, with the tank open</source>
        <translation>Vidanger le réservoir et mesurer, réservoir ouvert, ce que la pompe a laissé</translation>
    </message>
    <message>
        <source>The reading stands still while fuel is burnt: the float is stuck or its arm is bent. Check the float and arm for free travel; count on consumption until then.</source>
        <translation>La lecture ne bouge pas alors que du carburant est brûlé : le flotteur est coincé ou son bras tordu. Vérifier que flotteur et bras sont libres ; d’ici là, compter sur la consommation.</translation>
    </message>
    <message>
        <source>The reading stays on the upper stop although the tank must be below it: the float is stuck at full. Check the float&apos;s travel; count on consumption until then.</source>
        <translation>La lecture reste sur la butée haute alors que le réservoir doit être en dessous : le flotteur est coincé à plein. Vérifier la course du flotteur ; d’ici là, compter sur la consommation.</translation>
    </message>
    <message>
        <source>The signal went to its high end: a broken wire, an open connector or a worn contact. Check the plug at the sender, the signal wire and the ground.</source>
        <translation>Le signal est parti à son extrémité haute : un fil coupé, un connecteur ouvert ou un contact usé. Vérifier la prise de la jauge, le fil du signal et la masse.</translation>
    </message>
    <message>
        <source>The signal went to its low end: a chafed wire to ground or a lost supply. Check the signal wire for chafing and the supply of the sender.</source>
        <translation>Le signal est parti à son extrémité basse : un fil usé qui touche la masse ou une alimentation perdue. Vérifier l’usure du fil du signal et l’alimentation de la jauge.</translation>
    </message>
    <message>
        <source>The reading shifted in one step without a stop for fuel: a bad ground, a slipped float arm, or fuel was lost. Look for a leak first, then check ground and arm.</source>
        <translation>La lecture a sauté d’un coup sans arrêt pour remplir : une mauvaise masse, un bras de flotteur qui a glissé, ou du carburant perdu. Chercher d’abord une fuite, puis vérifier masse et bras.</translation>
    </message>
    <message>
        <source>Reading and consumption part more and more: a fouled float, a drifting supply, or a leak. Look for a leak first, then compare the level after the next full fill.</source>
        <translation>Lecture et consommation s’écartent de plus en plus : un flotteur qui frotte, une alimentation qui dérive ou une fuite. Chercher d’abord une fuite, puis comparer le niveau après le prochain plein complet.</translation>
    </message>
    <message>
        <source>No reading arrives: the source is silent. Check the connection to the sender or the bus.</source>
        <translation>Aucune lecture n’arrive : la source est muette. Vérifier la liaison avec la jauge ou le bus.</translation>
    </message>
    <message>
        <source>The reading falls out and comes back: a loose connector or a worn track. Move the wires at the sender while watching the reading.</source>
        <translation>La lecture disparaît et revient : un connecteur lâche ou une piste usée. Bouger les fils de la jauge en regardant la lecture.</translation>
    </message>
    <message>
        <source>One half of the saddle tank does not empty while the other does: the transfer is not working. Count only on the half with the pump and check the transfer line.</source>
        <translation>Une moitié du réservoir à deux poches ne se vide pas alors que l’autre si : le transfert ne marche pas. Ne compter que sur la moitié de la pompe et vérifier la conduite de transfert.</translation>
    </message>
    <message>
        <source>The fuel-flow or distance source counts far off the level: a wrong unit, tyre size or injector constant. Check the source&apos;s settings against a full fill.</source>
        <translation>La source de débit ou de distance compte loin du niveau : une mauvaise unité, taille de pneu ou constante d’injecteur. Vérifier les réglages de la source sur un plein complet.</translation>
    </message>
    <message>
        <source>a shorter way</source>
        <translation>un trajet plus court</translation>
    </message>
    <message>
        <source>The signal turned back while the level went on one way, at and above %1. The float may be fouling the tank or a baffle, or a row was noted wrongly: repeat these readings.</source>
        <translation>Le signal est revenu en arrière alors que le niveau continuait dans un sens, à partir de %1. Le flotteur frotte peut-être le réservoir ou une cloison, ou une ligne a été mal notée : refaire ces lectures.</translation>
    </message>
    <message>
        <source>%1 where about %2 were expected: please check fuel and distance</source>
        <translation>%1 là où on attendait environ %2 : vérifier la quantité et la distance</translation>
    </message>
    <message>
        <source>over %1 full fills reading and fuel pumped come to %2 more than the full tank of the calibration: %3</source>
        <translation>sur %1 pleins complets, lecture et quantité pompée donnent %2 de plus que le réservoir plein de l’étalonnage : %3</translation>
    </message>
    <message>
        <source>over %1 full fills reading and fuel pumped come to %2 less than the full tank of the calibration: %3</source>
        <translation>sur %1 pleins complets, lecture et quantité pompée donnent %2 de moins que le réservoir plein de l’étalonnage : %3</translation>
    </message>
    <message>
        <source>rows of the logbook are missing</source>
        <translation>des lignes du carnet manquent</translation>
    </message>
    <message>
        <source>a row needs a name</source>
        <translation>une ligne a besoin d’un nom</translation>
    </message>
    <message>
        <source>another row has this name</source>
        <translation>une autre ligne porte déjà ce nom</translation>
    </message>
    <message>
        <source>a name of its own</source>
        <translation>un nom à elle</translation>
    </message>
    <message>
        <source>the logbook is not there any more</source>
        <translation>le carnet n’est plus là</translation>
    </message>
    <message>
        <source>needs: litres to the next row.  sure: litres on arrival with 99 % probability.  even: half the time there is more.</source>
        <translation>besoin : litres jusqu’à la ligne suivante.  sûr : litres à l’arrivée à 99 %.  moy. : une fois sur deux il y en a plus.</translation>
    </message>
    <message>
        <source>take on: litres to ask for, &quot;full&quot; is to the first click.  no return after: turn back by then, or there must be fuel ahead.</source>
        <translation>prendre : litres à demander, « plein » au premier déclic.  demi-tour avant : au-delà il faut du carburant devant.</translation>
    </message>
    <message>
        <source>Strip: a lane for each leg, dark as far as the engine is sure to run if nobody stops again. Post: gauge at zero. Hatched: hidden reserve.</source>
        <translation>Bande : une voie par étape, sombre tant que le moteur tourne sûrement sans autre arrêt. Poteau : jauge à zéro. Hachures : réserve cachée.</translation>
    </message>
    <message>
        <source>An estimate, not a promise. Keep a margin; the event&apos;s rules and the law come first.</source>
        <translation>Une estimation, pas une promesse. Gardez une marge ; le règlement de l’épreuve et la loi priment.</translation>
    </message>
    <message>
        <source>Refuel with the engine off, no flame or spark near; cans approved, filled on the ground.</source>
        <translation>Ravitaillez moteur coupé, sans flamme ni étincelle ; bidons homologués, remplis au sol.</translation>
    </message>
    <message>
        <source>Never try out the reserve on a public road. Nothing is typed while driving.</source>
        <translation>N’essayez jamais la réserve sur route ouverte. On ne tape rien en conduisant.</translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation>Fiche carburant</translation>
    </message>
    <message>
        <source>1 stop, %1 to buy.</source>
        <translation>1 arrêt, %1 à prendre.</translation>
    </message>
    <message>
        <source>%1 stops, %2 to buy.</source>
        <translation>%1 arrêts, %2 à prendre.</translation>
    </message>
    <message>
        <source>No spread was given: bare sums without any margin.</source>
        <translation>Aucune dispersion donnée : de simples sommes, sans marge.</translation>
    </message>
    <message>
        <source>Risk of running dry on the way: %1 %.</source>
        <translation>Risque de panne sèche en route : %1 %.</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>mode</source>
        <translation>conduite</translation>
    </message>
    <message>
        <source>needs</source>
        <translation>besoin</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>even</source>
        <translation>moy.</translation>
    </message>
    <message>
        <source>take on</source>
        <translation>prendre</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>départ</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>%1 full</source>
        <translation>%1 plein</translation>
    </message>
    <message>
        <source>Stops only; the other points did not fit.</source>
        <translation>Arrêts seuls ; les autres points ne tenaient pas.</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>vers %1</translation>
    </message>
    <message>
        <source>pour 1 can</source>
        <translation>verser 1 bidon</translation>
    </message>
    <message>
        <source>pour %1 cans</source>
        <translation>verser %1 bidons</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>%1 off the way</source>
        <translation>%1 de détour</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>no return after %1</source>
        <translation>demi-tour avant %1</translation>
    </message>
    <message>
        <source>pump passed</source>
        <translation>pompe dépassée</translation>
    </message>
    <message>
        <source>zone passed</source>
        <translation>zone dépassée</translation>
    </message>
    <message>
        <source>dry %1 %</source>
        <translation>à sec %1 %</translation>
    </message>
    <message>
        <source>idles %1 min</source>
        <translation>ralenti %1 min</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>chronométré</translation>
    </message>
    <message>
        <source>%1 wanted here</source>
        <translation>%1 voulus ici</translation>
    </message>
    <message>
        <source>The odometer or a reading is missing.</source>
        <translation>Il manque le compteur ou une lecture.</translation>
    </message>
    <message>
        <source>The odometer stood at %1 at the zero mark already.</source>
        <translation>Le compteur était déjà à %1 au repère zéro.</translation>
    </message>
    <message>
        <source>by the last full fills the sender reads %1 too high: the level is counted lower by that</source>
        <translation>d’après les derniers pleins, la sonde indique %1 de trop : le niveau est compté plus bas d’autant</translation>
    </message>
    <message>
        <source>by the last full fills the sender reads %1 too low: the level is counted higher by that</source>
        <translation>d’après les derniers pleins, la sonde indique %1 de moins : le niveau est compté plus haut d’autant</translation>
    </message>
    <message>
        <source>contradicts what was known: it does not count before another proof says the same, or what it contradicts is corrected</source>
        <translation>contredit ce qui était connu : ne compte pas avant qu’une autre preuve dise de même, ou que soit corrigé ce qu’elle contredit</translation>
    </message>
    <message>
        <source>the same drive past zero as another entry: it counts once</source>
        <translation>le même trajet sous zéro qu’une autre entrée : il compte une fois</translation>
    </message>
    <message>
        <source>All of it went into cans: nothing is left for the tank</source>
        <translation>Tout est allé dans des bidons : il ne reste rien pour le réservoir</translation>
    </message>
    <message>
        <source>These are guesses. Does the pump show the same litres?</source>
        <translation>Ce sont des suppositions. La pompe affiche-t-elle les mêmes litres ?</translation>
    </message>
    <message>
        <source>poured_l, the litres put in at each step, or total_l, the litres since the tank was drained</source>
        <translation>poured_l, les litres versés à chaque étape, ou total_l, les litres depuis la vidange</translation>
    </message>
    <message>
        <source>added_l can be read in two ways, which makes a tank wrong by half</source>
        <translation>added_l peut se lire de deux façons, ce qui fausse un réservoir de moitié</translation>
    </message>
    <message>
        <source>the litres stand there twice</source>
        <translation>les litres y sont deux fois</translation>
    </message>
    <message>
        <source>one of poured_l and total_l</source>
        <translation>l’un de poured_l et total_l</translation>
    </message>
    <message>
        <source>a column of litres is missing</source>
        <translation>une colonne de litres manque</translation>
    </message>
    <message>
        <source>the level cannot be followed before the sender is calibrated</source>
        <translation>le niveau ne peut être suivi avant l’étalonnage du capteur</translation>
    </message>
    <message>
        <source>Some of the pumps have no price: planned without looking at the cost.</source>
        <translation>Certaines pompes n’ont pas de prix : planifié sans regarder le coût.</translation>
    </message>
    <message>
        <source>A tank was filled since &quot;%1&quot; was told: the log knows some of it by now, and %2 are counted on top.</source>
        <translation>Un plein a été fait depuis que « %1 » a été indiqué : le carnet en sait une partie, et %2 s’y ajoutent.</translation>
    </message>
    <message>
        <source>How much more it burns is a percentage above 0, %1 at most.</source>
        <translation>Le surplus de consommation est un pourcentage au-dessus de 0, %1 au plus.</translation>
    </message>
    <message>
        <source>&lt;%1</source>
        <translation>&lt;%1</translation>
    </message>
    <message>
        <source>No stop is needed.</source>
        <translation>Aucun arrêt nécessaire.</translation>
    </message>
    <message>
        <source>No plan: at this confidence the fuel lasts to %1, behind %2; it is %3 short of %4.</source>
        <translation>Pas de plan : à cette confiance le carburant suffit jusqu’à %1, après %2 ; il manque %3 jusqu’à %4.</translation>
    </message>
    <message>
        <source>start with %1 more</source>
        <translation>partir avec %1 de plus</translation>
    </message>
    <message>
        <source>carry %1 in own cans</source>
        <translation>emporter %1 dans ses propres bidons</translation>
    </message>
    <message>
        <source>drive so that it burns %1 less</source>
        <translation>conduire de façon à consommer %1 de moins</translation>
    </message>
    <message>
        <source>a pump at %1 at the latest</source>
        <translation>une pompe à %1 au plus tard</translation>
    </message>
    <message>
        <source>Engine off, no flame or spark near; to the first click at most.</source>
        <translation>Moteur arrêté, ni flamme ni étincelle à proximité ; au plus jusqu’au premier déclic.</translation>
    </message>
    <message>
        <source>Approved cans only, filled on the ground and never past their nominal volume; poured in with the engine off and no ignition source near. Local law and event rules come first.</source>
        <translation>Bidons homologués seulement, remplis au sol et jamais au-delà de leur volume nominal ; versés moteur arrêté, sans source d’allumage à proximité. La loi et le règlement de l’épreuve priment.</translation>
    </message>
    <message>
        <source>Not to be relied on: what it burns is known only afterwards.</source>
        <translation>Ne pas s’y fier : la consommation n’est connue qu’après coup.</translation>
    </message>
    <message>
        <source>Make sure beforehand that it is open and sells this fuel.</source>
        <translation>S’assurer d’avance qu’elle est ouverte et vend ce carburant.</translation>
    </message>
    <message>
        <source>That is %1.</source>
        <translation>Soit %1.</translation>
    </message>
    <message>
        <source>little, but the way without it is dearer</source>
        <translation>peu, mais sans lui le trajet coûte plus cher</translation>
    </message>
    <message>
        <source>needed: without it the fuel does not last</source>
        <translation>nécessaire : sans lui le carburant ne suffit pas</translation>
    </message>
    <message>
        <source>%1, then about %2 that nobody wrote down</source>
        <translation>%1, puis environ %2 que personne n&apos;a notés</translation>
    </message>
    <message>
        <source>%1 days without a record, and nothing says how far this car goes in a day. What was driven since is not in these distances: tell the odometer, a reading or the litres</source>
        <translation>%1 jours sans saisie, et rien ne dit combien cette voiture roule par jour. Ce qui a été roulé depuis n&apos;est pas compté dans ces distances : indiquez le compteur, une mesure ou les litres</translation>
    </message>
    <message>
        <source>A day without a record. By what this car usually goes in a day the tank may be empty: tell the odometer, a reading or the litres</source>
        <translation>Un jour sans saisie. D&apos;après ce que cette voiture roule d&apos;habitude par jour, le réservoir peut être vide : indiquez le compteur, une mesure ou les litres</translation>
    </message>
    <message>
        <source>%1 days without a record. By what this car usually goes in a day the tank may be empty: tell the odometer, a reading or the litres</source>
        <translation>%1 jours sans saisie. D&apos;après ce que cette voiture roule d&apos;habitude par jour, le réservoir peut être vide : indiquez le compteur, une mesure ou les litres</translation>
    </message>
    <message>
        <source>%1 days without a record. By what this car usually goes in a day %2 more are counted as driven: tell the odometer, a reading or the litres</source>
        <translation>%1 jours sans saisie. D&apos;après ce que cette voiture roule d&apos;habitude par jour, %2 de plus sont comptés comme roulés : indiquez le compteur, une mesure ou les litres</translation>
    </message>
    <message>
        <source>How far it went is missing</source>
        <translation>La distance parcourue manque</translation>
    </message>
    <message>
        <source>A calibration lies open: it does not count before it is saved.</source>
        <translation>Un étalonnage est en cours : il ne compte qu&apos;une fois enregistré.</translation>
    </message>
    <message>
        <source>%1 to the first click is less than the %2 that were poured in while it was calibrated.</source>
        <translation>%1 au premier déclic, c&apos;est moins que les %2 versés à l&apos;étalonnage.</translation>
    </message>
    <message>
        <source>By what was poured into the drained tank it takes %1 to the first click; the car&apos;s sheet says %2.</source>
        <translation>D&apos;après ce qui est entré dans le réservoir vidangé, il prend %1 au premier déclic ; la fiche dit %2.</translation>
    </message>
    <message>
        <source>The calibration read %1, which this circuit cannot give.</source>
        <translation>L&apos;étalonnage a lu %1, ce que ce circuit ne peut pas donner.</translation>
    </message>
    <message>
        <source>The lamp would light in a full tank.</source>
        <translation>Le témoin s&apos;allumerait réservoir plein.</translation>
    </message>
    <message>
        <source>The zero mark would lie above a full tank.</source>
        <translation>La marque zéro serait au-dessus du plein.</translation>
    </message>
    <message>
        <source>More would be left behind than the tank takes.</source>
        <translation>Il resterait plus que la contenance du réservoir.</translation>
    </message>
    <message>
        <source>The reading moves against the fuel. Is it right?</source>
        <translation>La lecture va à l&apos;encontre du carburant. Est-elle juste ?</translation>
    </message>
    <message>
        <source>By the readings so far this step is about %1, not %2. Is it right?</source>
        <translation>D&apos;après les lectures précédentes, c&apos;est environ %1 et non %2. Est-ce juste ?</translation>
    </message>
    <message>
        <source>That makes %1 in a tank that takes %2 to the first click. Is it right?</source>
        <translation>Cela fait %1 dans un réservoir qui prend %2 au premier déclic. Est-ce juste ?</translation>
    </message>
    <message>
        <source>That is %1 more than was poured in. Is it right?</source>
        <translation>C&apos;est %1 de plus que ce qui a été versé. Est-ce juste ?</translation>
    </message>
    <message>
        <source>The day of the fill is missing</source>
        <translation>Le jour du plein manque</translation>
    </message>
    <message>
        <source>there is no calibration to verify</source>
        <translation>il n’y a pas d’étalonnage à vérifier</translation>
    </message>
    <message>
        <source>there is no level to verify at</source>
        <translation>il n’y a pas de niveau où vérifier</translation>
    </message>
    <message>
        <source>this tank is read by two signals</source>
        <translation>ce réservoir se lit par deux signaux</translation>
    </message>
    <message>
        <source>this tank has one signal</source>
        <translation>ce réservoir a un seul signal</translation>
    </message>
    <message>
        <source>there is no row of a level</source>
        <translation>il n’y a pas de ligne avec un niveau</translation>
    </message>
    <message>
        <source>one or more rows</source>
        <translation>une ligne ou plus</translation>
    </message>
    <message>
        <source>Estimates, not promises: keep a margin. Never try out the reserve on a public road.</source>
        <translation>Des estimations, pas des promesses : garder une marge. Ne jamais essayer la réserve sur la voie publique.</translation>
    </message>
    <message>
        <source>Draining and pouring: petrol vapour ignites. Engine cold and off, no ignition source, ventilated, earthed, approved containers on the ground, extinguisher in reach; by a qualified person, as local rules ask.</source>
        <translation>Vidange et remplissage : les vapeurs d’essence s’enflamment. Moteur froid et arrêté, aucune source d’ignition, aéré, mis à la terre, récipients homologués posés au sol, extincteur à portée ; par une personne qualifiée, selon les règles locales.</translation>
    </message>
    <message>
        <source>Calibrate again after work on tank, sender, wiring or display.</source>
        <translation>Étalonner à nouveau après un travail sur le réservoir, la jauge, le câblage ou l’afficheur.</translation>
    </message>
    <message>
        <source>this car has no calibration to hand over</source>
        <translation>cette voiture n’a pas d’étalonnage à remettre</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>The logbook has more of them.</source>
        <translation>Le carnet en contient d’autres.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Hand-over sheet</source>
        <translation>Fiche de remise</translation>
    </message>
    <message>
        <source>Car and sender</source>
        <translation>Voiture et jauge</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remise</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>carburant</translation>
    </message>
    <message>
        <source>capacity to the first click</source>
        <translation>contenance au premier déclic</translation>
    </message>
    <message>
        <source>circuit</source>
        <translation>circuit</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>alimentation</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>rappel</translation>
    </message>
    <message>
        <source>odometer, last noted</source>
        <translation>compteur, dernier noté</translation>
    </message>
    <message>
        <source>calibrated</source>
        <translation>étalonné</translation>
    </message>
    <message>
        <source>zero mark, since drained</source>
        <translation>repère zéro, depuis la vidange</translation>
    </message>
    <message>
        <source>full, since drained</source>
        <translation>plein, depuis la vidange</translation>
    </message>
    <message>
        <source>Level since drained; grey: with 90 %</source>
        <translation>Niveau depuis la vidange ; gris : à 90 %</translation>
    </message>
    <message>
        <source>Gauge table</source>
        <translation>Table de la jauge</translation>
    </message>
    <message>
        <source>Steps as poured</source>
        <translation>Étapes, comme versées</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lectures</translation>
    </message>
    <message>
        <source>The logbook has %1 more.</source>
        <translation>Le carnet en a %1 de plus.</translation>
    </message>
    <message>
        <source>Hidden reserve</source>
        <translation>Réserve cachée</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>estimation</translation>
    </message>
    <message>
        <source>sure (99 %) past zero</source>
        <translation>sûr (99 %) sous zéro</translation>
    </message>
    <message>
        <source>even (50 %)</source>
        <translation>à 50 %</translation>
    </message>
    <message>
        <source>No proof yet: from the calibration alone.</source>
        <translation>Pas encore de preuve : par le seul étalonnage.</translation>
    </message>
    <message>
        <source>Verification</source>
        <translation>Vérification</translation>
    </message>
    <message>
        <source>Litres taken out: ______   reading: ______   by the gauge: ______</source>
        <translation>Litres retirés : ______   lecture : ______   selon la jauge : ______</translation>
    </message>
    <message>
        <source>Checked by: ____________   on: ____________</source>
        <translation>Vérifié par : ____________   le : ____________</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>by the curve</source>
        <translation>selon la courbe</translation>
    </message>
    <message>
        <source>Passed at %1.</source>
        <translation>Réussie à %1.</translation>
    </message>
    <message>
        <source>NOT PASSED at %1: the rows in bold do not agree.</source>
        <translation>NON RÉUSSIE à %1 : les lignes en gras ne concordent pas.</translation>
    </message>
    <message>
        <source>None found.</source>
        <translation>Aucun trouvé.</translation>
    </message>
    <message>
        <source>zero mark</source>
        <translation>repère zéro</translation>
    </message>
    <message>
        <source>wait %1 min for the opening</source>
        <translation>attendre %1 min l’ouverture</translation>
    </message>
    <message>
        <source>to the click, expect %1 to %2</source>
        <translation>jusqu’au déclic, environ %1 à %2</translation>
    </message>
    <message>
        <source>not to be passed</source>
        <translation>ne pas passer sans arrêt</translation>
    </message>
    <message>
        <source>past only with %1 (gauge %2)</source>
        <translation>ne passer qu’avec %1 (jauge %2)</translation>
    </message>
    <message>
        <source>past only with %1</source>
        <translation>ne passer qu’avec %1</translation>
    </message>
    <message>
        <source>one way from %1</source>
        <translation>sens unique à partir de %1</translation>
    </message>
    <message>
        <source>Supposed: %1.</source>
        <translation>Supposé : %1.</translation>
    </message>
    <message>
        <source>nobody waits longer than a day for an opening</source>
        <translation>personne n’attend une ouverture plus d’un jour</translation>
    </message>
    <message>
        <source>0 to 1440 minutes</source>
        <translation>0 à 1440 minutes</translation>
    </message>
    <message>
        <source>there is no fuel at this point, so it cannot be closed</source>
        <translation>il n’y a pas de carburant à ce point, il ne peut donc pas être fermé</translation>
    </message>
    <message>
        <source>another plan could save %1 of cost at most</source>
        <translation>un autre plan pourrait épargner au plus %1 de coût</translation>
    </message>
    <message>
        <source>another plan could save %1 stops at most</source>
        <translation>un autre plan pourrait épargner au plus %1 arrêts</translation>
    </message>
    <message>
        <source>another plan could save %1 minutes at most</source>
        <translation>un autre plan pourrait épargner au plus %1 minutes</translation>
    </message>
    <message>
        <source>another plan could save %1 litre-km at most</source>
        <translation>un autre plan pourrait épargner au plus %1 litres-km</translation>
    </message>
    <message>
        <source>a name is not text that can be shown</source>
        <translation>un nom n’est pas un texte qui puisse être affiché</translation>
    </message>
    <message>
        <source>UTF-8 without control characters</source>
        <translation>UTF-8 sans caractères de commande</translation>
    </message>
    <message>
        <source>no route or track of this name or number</source>
        <translation>aucun itinéraire ni trace de ce nom ou de ce numéro</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>l’un de %1</translation>
    </message>
    <message>
        <source>the file has several ways, and only one is driven</source>
        <translation>le fichier a plusieurs trajets, et un seul est parcouru</translation>
    </message>
    <message>
        <source>one %1 element, or the name of one</source>
        <translation>un élément %1, ou le nom de l’un d’eux</translation>
    </message>
    <message>
        <source>the level as it was followed on the way</source>
        <translation>le niveau, tel qu’il a été suivi en route</translation>
    </message>
    <message>
        <source>a number from 0 to 1</source>
        <translation>un nombre de 0 à 1</translation>
    </message>
    <message>
        <source>there is a tank of that name already</source>
        <translation>il y a déjà un réservoir de ce nom</translation>
    </message>
    <message>
        <source>a tank keeps its name</source>
        <translation>un réservoir garde son nom</translation>
    </message>
    <message>
        <source>the vehicle has no such tank</source>
        <translation>le véhicule n’a pas de tel réservoir</translation>
    </message>
    <message>
        <source>this trip of the car&apos;s journal is kept already</source>
        <translation>ce trajet du journal de la voiture est déjà noté</translation>
    </message>
    <message>
        <source>other entries name this tank</source>
        <translation>d’autres entrées nomment ce réservoir</translation>
    </message>
    <message>
        <source>three capital letters, such as EUR</source>
        <translation>trois lettres majuscules, EUR par exemple</translation>
    </message>
    <message>
        <source>64 hexadecimal digits in lower case</source>
        <translation>64 chiffres hexadécimaux en minuscules</translation>
    </message>
    <message>
        <source>text of 1 to 1048576 bytes</source>
        <translation>un texte de 1 à 1048576 octets</translation>
    </message>
    <message>
        <source>There is no plan to go by: the fuel has to be typed.</source>
        <translation>Il n’y a pas de plan à suivre : le carburant est à saisir.</translation>
    </message>
    <message>
        <source>%1 sure on each arrival.</source>
        <translation>Sûr à %1 à chaque arrivée.</translation>
    </message>
    <message>
        <source>%1 sure on each arrival, %2 at the end of a timed section.</source>
        <translation>Sûr à %1 à chaque arrivée, à %2 à la fin d’un secteur chronométré.</translation>
    </message>
    <message>
        <source>%1 sure of the whole way.</source>
        <translation>Sûr à %1 sur tout le trajet.</translation>
    </message>
    <message>
        <source>Starts with %1.</source>
        <translation>Départ avec %1.</translation>
    </message>
    <message>
        <source>Starts with %1, give or take %2.</source>
        <translation>Départ avec %1, à %2 près.</translation>
    </message>
    <message>
        <source>Each stop counts as %1 in the cost.</source>
        <translation>Chaque arrêt compte pour %1 dans le coût.</translation>
    </message>
    <message>
        <source>no stop is planned at %1: were it closed, the fuel would not last to another</source>
        <translation>aucun arrêt n’est prévu à %1 : s’il était fermé, le carburant ne suffirait pas jusqu’à un autre</translation>
    </message>
    <message>
        <source>%1: no stop any more.</source>
        <translation>%1 : plus d’arrêt.</translation>
    </message>
    <message>
        <source>At the finish %1 instead of %2.</source>
        <translation>À l’arrivée %1 au lieu de %2.</translation>
    </message>
    <message>
        <source>%1: take on %2, which was not planned.</source>
        <translation>%1 : prendre %2, ce qui n’était pas prévu.</translation>
    </message>
    <message>
        <source>%1: take on %2 instead of %3.</source>
        <translation>%1 : prendre %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>Risk of running dry %1 instead of %2.</source>
        <translation>Risque de panne sèche %1 au lieu de %2.</translation>
    </message>
    <message>
        <source>There is no plan any more.</source>
        <translation>Il n’y a plus de plan.</translation>
    </message>
    <message>
        <source>There is a plan again.</source>
        <translation>Il y a de nouveau un plan.</translation>
    </message>
    <message>
        <source>with the same confidence on timed sections as elsewhere there would be a plan</source>
        <translation>avec la même sûreté sur les secteurs chronométrés qu’ailleurs, il y aurait un plan</translation>
    </message>
    <message>
        <source>planning was stopped: this is the best plan so far</source>
        <translation>la planification a été interrompue : voici le meilleur plan jusqu’ici</translation>
    </message>
    <message>
        <source>rests %1 min</source>
        <translation>repos %1 min</translation>
    </message>
    <message>
        <source>due %1, late by %2 min</source>
        <translation>prévu à %1, %2 min de retard</translation>
    </message>
    <message>
        <source>due %1, %2 min to spare</source>
        <translation>prévu à %1, %2 min de marge</translation>
    </message>
    <message>
        <source>if closed nothing else is sure to be reached</source>
        <translation>si fermé, rien d’autre n’est sûr d’être atteint</translation>
    </message>
    <message>
        <source>if closed on to %1</source>
        <translation>si fermé, continuer jusqu’à %1</translation>
    </message>
    <message>
        <source>Least cost.</source>
        <translation>Moindre coût.</translation>
    </message>
    <message>
        <source>Fewest stops.</source>
        <translation>Le moins d’arrêts.</translation>
    </message>
    <message>
        <source>Least time.</source>
        <translation>Le moins de temps.</translation>
    </message>
    <message>
        <source>Lightest car.</source>
        <translation>Voiture la plus légère.</translation>
    </message>
    <message>
        <source>the plan has too many stops for a card</source>
        <translation>le plan a trop d’arrêts pour une fiche</translation>
    </message>
    <message>
        <source>Fuel card, page %1 of %2</source>
        <translation>Fiche carburant, page %1 sur %2</translation>
    </message>
    <message>
        <source>day ____________</source>
        <translation>jour ____________</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>compteur %1</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>pris</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>jauge</translation>
    </message>
    <message>
        <source>late at %1 by %2 min</source>
        <translation>en retard à %1 de %2 min</translation>
    </message>
    <message>
        <source>due times are not looked at: they need a departure and a speed</source>
        <translation>les heures prévues ne sont pas prises en compte : il leur faut un départ et une vitesse</translation>
    </message>
    <message>
        <source>the speed of a mode needs the speed of the others</source>
        <translation>la vitesse d’un mode demande celle des autres</translation>
    </message>
    <message>
        <source>calibrate it: there is no calibration yet</source>
        <translation>étalonner : il n’y a pas encore d’étalonnage</translation>
    </message>
    <message>
        <source>calibrate it again: the calibration is older than two years</source>
        <translation>étalonner de nouveau : l’étalonnage a plus de deux ans</translation>
    </message>
    <message>
        <source>verify the calibration: take some litres out and read again</source>
        <translation>vérifier l’étalonnage : retirer quelques litres et relire</translation>
    </message>
    <message>
        <source>look for the cause: the last verification was not passed</source>
        <translation>chercher la cause : la dernière vérification n’a pas réussi</translation>
    </message>
    <message>
        <source>hand it over: this was not done since the calibration</source>
        <translation>remettre la voiture : cela n’a pas été fait depuis l’étalonnage</translation>
    </message>
    <message>
        <source>photos that are not what their names say were left out: %1</source>
        <translation>photos laissées de côté, car elles ne sont pas ce que dit leur nom : %1</translation>
    </message>
    <message>
        <source>This picture cannot be drawn.</source>
        <translation>Cette image ne peut pas être dessinée.</translation>
    </message>
    <message>
        <source>the photo is too large</source>
        <translation>la photo est trop grande</translation>
    </message>
    <message>
        <source>the photo cannot be read</source>
        <translation>la photo ne peut pas être lue</translation>
    </message>
    <message>
        <source>this is no picture</source>
        <translation>ce n’est pas une image</translation>
    </message>
    <message>
        <source>a whole JPEG or PNG</source>
        <translation>un JPEG ou PNG entier</translation>
    </message>
    <message>
        <source>the photo is not beside the logbook</source>
        <translation>la photo n’est pas à côté du journal</translation>
    </message>
    <message>
        <source>the photo is not what was kept</source>
        <translation>la photo n’est pas celle qui avait été gardée</translation>
    </message>
    <message>
        <source>this is no tile of heights</source>
        <translation>ce n’est pas une tuile d’altitudes</translation>
    </message>
    <message>
        <source>1201 or 3601 rows and columns of two bytes</source>
        <translation>1201 ou 3601 lignes et colonnes de deux octets</translation>
    </message>
    <message>
        <source>this is no folder</source>
        <translation>ce n’est pas un dossier</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>le fichier ne peut pas être lu</translation>
    </message>
    <message>
        <source>this is no sound extract: %1</source>
        <translation>ce n’est pas un extrait de carte sain : %1</translation>
    </message>
    <message>
        <source>an OpenStreetMap extract (.osm.pbf)</source>
        <translation>un extrait d’OpenStreetMap (.osm.pbf)</translation>
    </message>
    <message>
        <source>no pump along the track is called this</source>
        <translation>aucune pompe le long du trajet ne porte ce nom</translation>
    </message>
    <message>
        <source>a name or id that is listed</source>
        <translation>un nom ou un identifiant de la liste</translation>
    </message>
    <message>
        <source>too many roads within reach: detours are estimated from the straight line</source>
        <translation>trop de routes à portée : les détours sont estimés d’après la ligne droite</translation>
    </message>
    <message>
        <source>%1 of the track are outside the map: pumps there are not known</source>
        <translation>%1 du trajet sont hors de la carte : les pompes y sont inconnues</translation>
    </message>
    <message>
        <source>the map has no pump within %1 of the track</source>
        <translation>la carte n’a aucune pompe à moins de %1 du trajet</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is closed when you pass and is left out</source>
        <translation>« %1 » est fermée au passage et laissée de côté</translation>
    </message>
    <message>
        <source>of %1 of %2 pumps the map tells no opening hours: ask before you count on one</source>
        <translation>pour %1 pompes sur %2 la carte ne donne pas d’horaires : demandez avant de compter dessus</translation>
    </message>
    <message>
        <source>another program keeps this car&apos;s drive</source>
        <translation>un autre programme tient le trajet de cette voiture</translation>
    </message>
    <message>
        <source>The source&apos;s clock jumped: the level goes on from what it shows now.</source>
        <translation>L’horloge de la source a sauté : le niveau repart de ce qu’elle montre maintenant.</translation>
    </message>
    <message>
        <source>The sender saw %1 go in, give or take %2: what does the pump show? If none went in, say so on Now.</source>
        <translation>La jauge a vu entrer %1, à %2 près : qu’affiche la pompe ? Si rien n’a été ajouté, dites-le sur Ici.</translation>
    </message>
    <message>
        <source>%1: not understood: &apos;%2&apos;</source>
        <translation>%1 : pas compris : « %2 »</translation>
    </message>
    <message>
        <source>%1: the device was lost; it is tried again</source>
        <translation>%1 : l’appareil a été perdu ; nouvel essai en cours</translation>
    </message>
    <message>
        <source>%1 comes from several senders: the first is heard, the others are left out</source>
        <translation>%1 vient de plusieurs émetteurs : le premier est écouté, les autres sont écartés</translation>
    </message>
    <message>
        <source>values that cannot be are left out</source>
        <translation>les valeurs impossibles sont écartées</translation>
    </message>
    <message>
        <source>What is driven is not written into the logbook: %1</source>
        <translation>Ce qui est roulé n’est pas inscrit au carnet : %1</translation>
    </message>
    <message>
        <source>the map says of none of them that it sells %1: ask before you count on one</source>
        <translation>la carte ne dit d’aucune qu’elle vend %1 : demandez avant de compter dessus</translation>
    </message>
    <message>
        <source>The sources kept with the car are not heard: %1</source>
        <translation>Les sources gardées avec la voiture ne sont pas écoutées : %1</translation>
    </message>
    <message>
        <source>%1: the device is not there yet; it is tried again</source>
        <translation>%1 : l’appareil n’est pas encore là ; nouvel essai en cours</translation>
    </message>
    <message>
        <source>The calibration of the logbook: touch a level to correct it; to try it fill up to the first click, take some out and read.</source>
        <translation>L’étalonnage du journal : touchez un niveau pour le corriger ; pour le vérifier, faites le plein jusqu’au premier déclic, retirez-en un peu et lisez.</translation>
    </message>
    <message>
        <source>handed over before</source>
        <translation>remis auparavant</translation>
    </message>
    <message>
        <source>further tank</source>
        <translation>autre réservoir</translation>
    </message>
    <message>
        <source>There is no calibration to take up.</source>
        <translation>Il n’y a pas d’étalonnage à reprendre.</translation>
    </message>
    <message>
        <source>the tanks read</source>
        <translation>les réservoirs lus</translation>
    </message>
    <message>
        <source>the vehicle has no tank of this name</source>
        <translation>le véhicule n’a pas de réservoir de ce nom</translation>
    </message>
    <message>
        <source>the climb takes %1, give or take %2</source>
        <translation>la montée prend %1, à %2 près</translation>
    </message>
    <message>
        <source>downhill saves %1, give or take %2</source>
        <translation>la descente épargne %1, à %2 près</translation>
    </message>
    <message>
        <source>%1: the climb is not a number</source>
        <translation>%1 : la montée n’est pas un nombre</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>what a climb takes must be 0 or more</source>
        <translation>ce que prend une montée doit être 0 ou plus</translation>
    </message>
    <message>
        <source>a car&apos;s mass must be above 0</source>
        <translation>la masse d’une voiture doit être au-dessus de 0</translation>
    </message>
    <message>
        <source>kg above 0</source>
        <translation>kg au-dessus de 0</translation>
    </message>
    <message>
        <source>an engine&apos;s efficiency must be between 0 and 1</source>
        <translation>le rendement d’un moteur doit être entre 0 et 1</translation>
    </message>
    <message>
        <source>pour 1 can of the crew</source>
        <translation>verser 1 jerrican de l’équipe</translation>
    </message>
    <message>
        <source>pour %1 cans of the crew</source>
        <translation>verser %1 jerricans de l’équipe</translation>
    </message>
    <message>
        <source>crew passed</source>
        <translation>équipe dépassée</translation>
    </message>
    <message>
        <source>dates are not looked at: they need the day and time of the departure, and a speed</source>
        <translation>les dates ne sont pas prises en compte : il faut le jour et l’heure du départ, et une vitesse</translation>
    </message>
    <message>
        <source>%1: the last day is before the first</source>
        <translation>%1 : le dernier jour précède le premier</translation>
    </message>
    <message>
        <source>none, pump, zone, can or crew</source>
        <translation>none, pump, zone, can ou crew</translation>
    </message>
    <message>
        <source>metres of height, -100000 to 100000</source>
        <translation>mètres de dénivelé, de -100000 à 100000</translation>
    </message>
    <message>
        <source>the last day is before the first</source>
        <translation>le dernier jour précède le premier</translation>
    </message>
    <message>
        <source>%1 full fills taught nothing of consumption: what is burnt shows only between two halts at which every tank is filled to the first click, %2 too</source>
        <translation>%1 pleins n’ont rien appris de la consommation : elle ne se voit qu’entre deux arrêts où chaque réservoir est rempli jusqu’au premier déclic, %2 aussi</translation>
    </message>
    <message>
        <source>The reading stands still while fuel is burnt: another tank feeds, or the float is stuck. Look at the tap or the transfer pump; if this tank feeds, count on consumption.</source>
        <translation>La mesure reste immobile alors que du carburant est brûlé : un autre réservoir alimente, ou le flotteur est bloqué. Regarder le robinet ou la pompe de transfert ; si ce réservoir alimente, compter d’après la consommation.</translation>
    </message>
    <message>
        <source>The fuel is told in one way: as litres or as a reading.</source>
        <translation>Le carburant se dit d’une seule façon : en litres ou par une lecture.</translation>
    </message>
    <message>
        <source>The reading of the lobe with the pump is missing.</source>
        <translation>La lecture de la poche de la pompe manque.</translation>
    </message>
    <message>
        <source>this is no time of day</source>
        <translation>ce n’est pas une heure</translation>
    </message>
    <message>
        <source>0830 or 8.30, say</source>
        <translation>par exemple 0830 ou 8.30</translation>
    </message>
    <message>
        <source>The time of departure and the speed go together.</source>
        <translation>L’heure de départ et la vitesse vont ensemble.</translation>
    </message>
    <message>
        <source>How much is in each can is missing.</source>
        <translation>Il manque la contenance de chaque jerrican.</translation>
    </message>
    <message>
        <source>this is no date</source>
        <translation>ce n’est pas une date</translation>
    </message>
    <message>
        <source>20260531, say</source>
        <translation>par exemple 20260531</translation>
    </message>
    <message>
        <source>The reading is missing.</source>
        <translation>Il manque la lecture.</translation>
    </message>
    <message>
        <source>a reading, or litres</source>
        <translation>une lecture ou des litres</translation>
    </message>
    <message>
        <source>the first reading, too</source>
        <translation>aussi la première lecture</translation>
    </message>
    <message>
        <source>the litres of %1</source>
        <translation>les litres du %1</translation>
    </message>
    <message>
        <source>the reading of %1</source>
        <translation>la lecture du %1</translation>
    </message>
    <message>
        <source>the level as it was followed until %1</source>
        <translation>le niveau suivi jusqu’au %1</translation>
    </message>
    <message>
        <source>the odometer is lower than at the level that was kept</source>
        <translation>le compteur est plus bas qu’au niveau gardé</translation>
    </message>
    <message>
        <source>from %1: %2</source>
        <translation>d’après %1 : %2</translation>
    </message>
    <message>
        <source>%1, then %2 and %3 more</source>
        <translation>%1, puis %2 et %3 de plus</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, puis %2</translation>
    </message>
    <message>
        <source>neither the kept level nor the last full fill has an odometer to count from</source>
        <translation>ni le niveau gardé ni le dernier plein complet n’a de compteur d’où partir</translation>
    </message>
    <message>
        <source>the odometer is lower than it was before the kept level</source>
        <translation>le compteur est plus bas qu’avant le niveau gardé</translation>
    </message>
    <message>
        <source>not used: another zero mark was in force then, and nothing says how far it was from today&apos;s</source>
        <translation>pas utilisée : un autre repère zéro était alors en vigueur, et rien ne dit à quelle distance de celui d’aujourd’hui</translation>
    </message>
    <message>
        <source>a level needs a reading or litres</source>
        <translation>un niveau demande une lecture ou des litres</translation>
    </message>
    <message>
        <source>a second reading or a noise goes with a reading</source>
        <translation>une deuxième lecture ou un bruit va avec une lecture</translation>
    </message>
    <message>
        <source>%1, at a zero mark %2 higher than today&apos;s</source>
        <translation>%1, à un repère zéro %2 plus haut que celui d’aujourd’hui</translation>
    </message>
    <message>
        <source>%1, at a zero mark %2 lower than today&apos;s</source>
        <translation>%1, à un repère zéro %2 plus bas que celui d’aujourd’hui</translation>
    </message>
    <message>
        <source>no more than %1 further tanks can be heard</source>
        <translation>on ne peut pas écouter plus de %1 réservoirs supplémentaires</translation>
    </message>
    <message>
        <source>one of the first, in the order in which they were added</source>
        <translation>un des premiers, dans l’ordre où ils ont été ajoutés</translation>
    </message>
    <message>
        <source>No more fuel comes over from the other tank, in which there is some left: its pump is switched off or has failed.</source>
        <translation>Il ne vient plus de carburant de l’autre réservoir, où il en reste : sa pompe est arrêtée ou en panne.</translation>
    </message>
    <message>
        <source>No more fuel comes over from %1: about %2 came, about %3 are left in it. Is its pump switched off, or has it failed?</source>
        <translation>Il ne vient plus de carburant de %1 : environ %2 sont venus, environ %3 y restent. La pompe est-elle arrêtée, ou en panne ?</translation>
    </message>
    <message>
        <source>%1 does not empty while the tank beside it does: about %2 in it do not come over. Count only on the vehicle&apos;s own tank and check what joins them.</source>
        <translation>%1 ne se vide pas alors que le réservoir voisin se vide : environ %2 n’en viennent pas. Ne compter que sur le réservoir propre du véhicule et vérifier ce qui les relie.</translation>
    </message>
    <message>
        <source>the fill of %1 seems to have been in the tank already when the level was kept: it is not counted twice</source>
        <translation>le plein de %1 semble avoir déjà été dans le réservoir quand le niveau a été gardé : il n’est pas compté deux fois</translation>
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
</context>
<context>
    <name>undermark::TankChoice</name>
    <message>
        <source>The car&apos;s own</source>
        <translation>Celui de la voiture</translation>
    </message>
    <message>
        <source>Which tank?</source>
        <translation>Quel réservoir ?</translation>
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
        <source>%1. It would leave ± %2.</source>
        <translation>%1. Il resterait ± %2.</translation>
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
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>passed, %1</source>
        <translation>réussie, %1</translation>
    </message>
    <message>
        <source>NOT PASSED, %1</source>
        <translation>NON RÉUSSIE, %1</translation>
    </message>
    <message>
        <source>verified</source>
        <translation>vérification</translation>
    </message>
</context>
<context>
    <name>undermark::TransferViewModel</name>
    <message>
        <source>Written: %1. In it are the tables for a spreadsheet, and logbook.sqlite for another device.</source>
        <translation>Écrit : %1. Il contient les tableaux pour un tableur, et logbook.sqlite pour un autre appareil.</translation>
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
    <message>
        <source>Everything goes into a new folder, beside the logbook or on a stick; nothing is written over.</source>
        <translation>Tout va dans un nouveau dossier, à côté du carnet ou sur une clé ; rien n&apos;est écrasé.</translation>
    </message>
    <message>
        <source>A table is a .csv file with the columns date, km and mode, and what may follow: idle_min, starts, climb_m.</source>
        <translation>Un tableau est un fichier .csv avec les colonnes date, km et mode, et ce qui peut suivre : idle_min, starts, climb_m.</translation>
    </message>
</context>
</TS>
