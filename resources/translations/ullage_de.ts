<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>KegTasks</name>
    <message>
        <source>Say what is in it…</source>
        <translation>Inhalt angeben …</translation>
    </message>
    <message>
        <source>Receive…</source>
        <translation>Annehmen …</translation>
    </message>
    <message>
        <source>Change the keg…</source>
        <translation>Fass ändern …</translation>
    </message>
    <message>
        <source>Change the line…</source>
        <translation>Leitung ändern …</translation>
    </message>
    <message>
        <source>Inspect seals…</source>
        <translation>Dichtungen prüfen …</translation>
    </message>
    <message>
        <source>Clean…</source>
        <translation>Reinigen …</translation>
    </message>
    <message>
        <source>Hold reading…</source>
        <translation>Druckhaltung ablesen …</translation>
    </message>
    <message>
        <source>Purge…</source>
        <translation>Spülen …</translation>
    </message>
    <message>
        <source>Log a transfer…</source>
        <translation>Abfüllung eintragen …</translation>
    </message>
    <message>
        <source>Fill…</source>
        <translation>Füllen …</translation>
    </message>
    <message>
        <source>Set gas…</source>
        <translation>Gas einstellen …</translation>
    </message>
    <message>
        <source>Gas off…</source>
        <translation>Gas ab …</translation>
    </message>
    <message>
        <source>Vent…</source>
        <translation>Entlüften …</translation>
    </message>
    <message>
        <source>Read CO₂…</source>
        <translation>CO₂ ablesen …</translation>
    </message>
    <message>
        <source>Read temperature…</source>
        <translation>Temperatur ablesen …</translation>
    </message>
    <message>
        <source>Read level…</source>
        <translation>Füllstand ablesen …</translation>
    </message>
    <message>
        <source>Change keg…</source>
        <translation>Fass wechseln …</translation>
    </message>
    <message>
        <source>Empty…</source>
        <translation>Leer …</translation>
    </message>
    <message>
        <source>Take off…</source>
        <translation>Abnehmen …</translation>
    </message>
    <message>
        <source>Move…</source>
        <translation>Umstellen …</translation>
    </message>
    <message>
        <source>Hold back…</source>
        <translation>Zurückhalten …</translation>
    </message>
    <message>
        <source>Clear it…</source>
        <translation>Freigeben …</translation>
    </message>
    <message>
        <source>Returned…</source>
        <translation>Zurückgegeben …</translation>
    </message>
    <message>
        <source>Check for leaks…</source>
        <translation>Auf Lecks prüfen …</translation>
    </message>
    <message>
        <source>Change best by…</source>
        <translation>Haltbarkeit ändern …</translation>
    </message>
    <message>
        <source>Log waste…</source>
        <translation>Verlust eintragen …</translation>
    </message>
    <message>
        <source>Check and release line…</source>
        <translation>Leitung prüfen und freigeben …</translation>
    </message>
    <message>
        <source>Log line cleaning…</source>
        <translation>Leitungsreinigung eintragen …</translation>
    </message>
    <message>
        <source>Lock line…</source>
        <translation>Leitung sperren …</translation>
    </message>
</context>
<context>
    <name>Menu</name>
    <message>
        <source>&amp;Cellar</source>
        <translation>&amp;Keller</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Log</source>
        <translation>&amp;Eintragen</translation>
    </message>
    <message>
        <source>&amp;Register</source>
        <translation>&amp;Bestand</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
</context>
<context>
    <name>QComboBox</name>
    <message>
        <source>Anything</source>
        <translation>Alles</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>daily</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>before the file was brought up to date</source>
        <translation>bevor die Datei auf den neuen Stand kam</translation>
    </message>
    <message>
        <source>put aside by a restore</source>
        <translation>beim Zurückholen beiseite gelegt</translation>
    </message>
    <message>
        <source>made by hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Open read-only</source>
        <translation>Nur lesend öffnen</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Sicherung zurückholen …</translation>
    </message>
    <message>
        <source>Save what can be read…</source>
        <translation>Lesbares retten …</translation>
    </message>
    <message>
        <source>Choose another file…</source>
        <translation>Andere Datei wählen …</translation>
    </message>
    <message>
        <source>There is no backup of this cellar.</source>
        <translation>Von diesem Keller gibt es keine Sicherung.</translation>
    </message>
    <message>
        <source>The backup is in place.</source>
        <translation>Die Sicherung ist eingesetzt.</translation>
    </message>
    <message>
        <source>What the file was before is kept as %1.</source>
        <translation>Was die Datei vorher war, liegt als %1 bereit.</translation>
    </message>
    <message>
        <source>Where to put what can be read</source>
        <translation>Wohin mit dem, was lesbar ist</translation>
    </message>
    <message>
        <source>Cellar (*.cellar)</source>
        <translation>Keller (*.cellar)</translation>
    </message>
    <message numerus="yes">
        <source>%n entries were saved</source>
        <translation>
            <numerusform>Ein Eintrag wurde gerettet</numerusform>
            <numerusform>%n Einträge wurden gerettet</numerusform>
        </translation>
    </message>
    <message>
        <source>Export the cellar</source>
        <translation>Keller ausgeben</translation>
    </message>
    <message numerus="yes">
        <source>%n entries were exported</source>
        <translation>
            <numerusform>Ein Eintrag wurde ausgegeben</numerusform>
            <numerusform>%n Einträge wurden ausgegeben</numerusform>
        </translation>
    </message>
    <message>
        <source>Import a cellar</source>
        <translation>Keller einlesen</translation>
    </message>
    <message>
        <source>Where to keep the imported cellar</source>
        <translation>Wo der eingelesene Keller liegen soll</translation>
    </message>
    <message>
        <source>… and more</source>
        <translation>… und weitere</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Es wurde nichts eingelesen.</translation>
    </message>
    <message>
        <source>The cellar is backed up.</source>
        <translation>Der Keller ist gesichert.</translation>
    </message>
    <message>
        <source>Ullage %1</source>
        <translation>Ullage %1</translation>
    </message>
    <message>
        <source>A cellar manager for kegs. Free software under the GNU General Public License, version 3 or later; it comes without any warranty. Its figures are estimates: local codes and licensed practice come first.</source>
        <translation>Eine Kellerverwaltung für Fässer. Freie Software unter der GNU General Public License, Version 3 oder später, ohne jede Gewähr. Die Zahlen sind Schätzungen: Vorschriften vor Ort und Fachleute gehen vor.</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation>Nicht angesehen</translation>
    </message>
    <message>
        <source>Log a transfer</source>
        <translation>Abfüllung eintragen</translation>
    </message>
    <message>
        <source>fill rack keg beer</source>
        <translation>füllen abfüllen fass bier transfer</translation>
    </message>
    <message>
        <source>Keg change</source>
        <translation>Fasswechsel</translation>
    </message>
    <message>
        <source>swap tap empty</source>
        <translation>wechseln zapfhahn leer</translation>
    </message>
    <message>
        <source>Register kegs</source>
        <translation>Fässer aufnehmen</translation>
    </message>
    <message>
        <source>new keg add several</source>
        <translation>neu fass mehrere</translation>
    </message>
    <message>
        <source>Stock-taking</source>
        <translation>Bestandsaufnahme</translation>
    </message>
    <message>
        <source>count found contents</source>
        <translation>zählen inhalt</translation>
    </message>
</context>
<context>
    <name>ullage::app::Desk</name>
    <message>
        <source>Looking the file over. You can go on.</source>
        <translation>Die Datei wird durchgesehen. Es kann weitergehen.</translation>
    </message>
    <message>
        <source>The file is sound.</source>
        <translation>Die Datei ist in Ordnung.</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Sicherung zurückholen …</translation>
    </message>
    <message>
        <source>Save what can be read…</source>
        <translation>Lesbares retten …</translation>
    </message>
    <message>
        <source>There is no backup of this cellar yet.</source>
        <translation>Von diesem Keller gibt es noch keine Sicherung.</translation>
    </message>
    <message>
        <source>One is made each day the cellar is opened.</source>
        <translation>An jedem Tag, an dem der Keller geöffnet wird, entsteht eine.</translation>
    </message>
    <message>
        <source>Where to keep the new cellar</source>
        <translation>Wo der neue Keller liegen soll</translation>
    </message>
    <message>
        <source>Cellar (*.cellar)</source>
        <translation>Keller (*.cellar)</translation>
    </message>
</context>
<context>
    <name>ullage::ui::AdviceCard</name>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
</context>
<context>
    <name>ullage::ui::AsOfDialog</name>
    <message>
        <source>The cellar as of a past time</source>
        <translation>Der Keller zu einer früheren Zeit</translation>
    </message>
    <message>
        <source>yesterday 20:00</source>
        <translation>yesterday 20:00</translation>
    </message>
    <message>
        <source>Only what had been &amp;recorded by then</source>
        <translation>Nur was bis dahin &amp;aufgenommen war</translation>
    </message>
    <message>
        <source>&amp;As of</source>
        <translation>&amp;Stand</translation>
    </message>
    <message>
        <source>Such as “24 Nov 18:00” or “Sun 09:00”.</source>
        <translation>Etwa „24 Nov 18:00“ oder „Sun 09:00“.</translation>
    </message>
    <message>
        <source>Without it: what is known today about that time, later corrections included.</source>
        <translation>Ohne: was heute über diese Zeit bekannt ist, spätere Berichtigungen eingeschlossen.</translation>
    </message>
    <message>
        <source>&amp;Show the sheet</source>
        <translation>Blatt &amp;zeigen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::BackupsDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung zurückholen</translation>
    </message>
    <message>
        <source>The chosen backup takes the place of the cellar. What the cellar is now is put aside among the backups; nothing is thrown away.</source>
        <translation>Die gewählte Sicherung tritt an die Stelle des Kellers. Was der Keller jetzt ist, wird zu den Sicherungen gelegt; nichts wird weggeworfen.</translation>
    </message>
    <message>
        <source>Backups, newest first</source>
        <translation>Sicherungen, neueste zuerst</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Entstanden</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>&amp;Restore this one</source>
        <translation>Diese &amp;zurückholen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::CarbonationChart</name>
    <message>
        <source>Carbonation over time</source>
        <translation>Karbonisierung im Verlauf</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>No curve: there is no estimate yet.</source>
        <translation>Keine Kurve: noch keine Schätzung.</translation>
    </message>
    <message>
        <source>From %1 on %2 to %3 on %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It should be served at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ullage::ui::Caution</name>
    <message>
        <source>Danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
</context>
<context>
    <name>ullage::ui::DateEdit</name>
    <message>
        <source>24 Nov</source>
        <translation>24 Nov</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Bitte ausfüllen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::EntityPicker</name>
    <message>
        <source>There is no %1 “%2” to choose here.</source>
        <translation>Hier lässt sich kein Eintrag „%2“ wählen (%1).</translation>
    </message>
    <message>
        <source>Choose a %1.</source>
        <translation>Bitte wählen: %1.</translation>
    </message>
    <message>
        <source>keg</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Sud</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>gas bottle</source>
        <translation>Gasflasche</translation>
    </message>
    <message>
        <source>regulator</source>
        <translation>Druckminderer</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Messgerät</translation>
    </message>
</context>
<context>
    <name>ullage::ui::EntryForm</name>
    <message>
        <source>Correct: %1</source>
        <translation>Berichtigen: %1</translation>
    </message>
    <message>
        <source>&amp;Log the correction</source>
        <translation>Berichtigung &amp;eintragen</translation>
    </message>
    <message>
        <source>&amp;Log it</source>
        <translation>&amp;Eintragen</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Initials.</source>
        <translation>Kürzel.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Why &amp;corrected</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>Both versions stay readable in the log.</source>
        <translation>Beide Fassungen bleiben im Logbuch lesbar.</translation>
    </message>
    <message>
        <source>%1 will be: %2</source>
        <translation>%1 wird sein: %2</translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>Not logged yet. What you typed is still here.</source>
        <translation>Noch nicht eingetragen. Das Eingegebene ist noch da.</translation>
    </message>
    <message>
        <source>Leave without logging?</source>
        <translation>Ohne Eintrag schließen?</translation>
    </message>
    <message>
        <source>What you typed would be lost.</source>
        <translation>Das Eingegebene ginge verloren.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::FirstStart</name>
    <message>
        <source>Ullage</source>
        <translation>Ullage</translation>
    </message>
    <message>
        <source>Keeps track of your kegs: what is in them, when it is ready, what to do next.</source>
        <translation>Behält die Fässer im Blick: was darin ist, wann es fertig ist, was als Nächstes ansteht.</translation>
    </message>
    <message>
        <source>Welcome to Ullage</source>
        <translation>Willkommen bei Ullage</translation>
    </message>
    <message>
        <source>&amp;New cellar…</source>
        <translation>&amp;Neuer Keller …</translation>
    </message>
    <message>
        <source>One file on your disk holds it. Nothing leaves this machine.</source>
        <translation>Eine Datei auf der Platte enthält ihn. Nichts verlässt diesen Rechner.</translation>
    </message>
    <message>
        <source>&amp;Open a cellar…</source>
        <translation>Keller ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>A .cellar file you or somebody else made.</source>
        <translation>Eine vorhandene .cellar-Datei.</translation>
    </message>
    <message>
        <source>Look at the &amp;demo</source>
        <translation>&amp;Beispiel ansehen</translation>
    </message>
    <message>
        <source>An invented cellar in full swing, to try things out. It is not kept.</source>
        <translation>Ein erfundener Keller in vollem Betrieb, zum Ausprobieren. Er wird nicht aufgehoben.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegChange</name>
    <message>
        <source>&amp;Log the change</source>
        <translation>Wechsel &amp;eintragen</translation>
    </message>
    <message>
        <source>Keg change</source>
        <translation>Fasswechsel</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Beer left in it</source>
        <translation>Noch Bier darin</translation>
    </message>
    <message>
        <source>The keg that comes off</source>
        <translation>Das Fass, das abkommt</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>A spent keg is still under pressure until it is vented. Don&apos;t lift a full one.</source>
        <translation>Auch ein leeres Fass steht unter Druck, bis es entlüftet ist. Ein volles nicht heben.</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Leitung</translation>
    </message>
    <message>
        <source>Comes off</source>
        <translation>Kommt ab</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es ist</translation>
    </message>
    <message>
        <source>Goes &amp;on</source>
        <translation>Kommt &amp;an</translation>
    </message>
    <message>
        <source>&amp;Gas set to</source>
        <translation>&amp;Gas auf</translation>
    </message>
    <message>
        <source>Leave open if the gas stays as it is.</source>
        <translation>Offen lassen, wenn das Gas bleibt.</translation>
    </message>
    <message>
        <source>&amp;Regulator</source>
        <translation>&amp;Druckminderer</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Initials.</source>
        <translation>Kürzel.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Do not serve from %1</source>
        <translation>Nicht ausschenken aus %1</translation>
    </message>
    <message>
        <source>%1 in it since %2, %3. Release it by a check before anything is poured.</source>
        <translation>%1 darin seit %2, %3. Vor dem Ausschank durch eine Prüfung freigeben.</translation>
    </message>
    <message>
        <source>%1 off, </source>
        <translation>%1 ab, </translation>
    </message>
    <message>
        <source>%1 on faucet %2</source>
        <translation>%1 an Hahn %2</translation>
    </message>
    <message>
        <source>%1 on tap %2</source>
        <translation>%1 an Hahn %2</translation>
    </message>
    <message>
        <source>Not logged yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanel</name>
    <message>
        <source>Can’t tell yet.</source>
        <translation>Noch nicht zu sagen.</translation>
    </message>
    <message>
        <source>Can’t tell yet: %1</source>
        <translation>Noch nicht zu sagen: %1</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Jetzt %1</translation>
    </message>
    <message>
        <source>range %1</source>
        <translation>Bereich %1</translation>
    </message>
    <message>
        <source>settles at %1 like this</source>
        <translation>pendelt sich so bei %1 ein</translation>
    </message>
    <message>
        <source>The chosen keg</source>
        <translation>Das gewählte Fass</translation>
    </message>
    <message>
        <source>Choose a keg to see it here.</source>
        <translation>Ein Fass wählen, um es hier zu sehen.</translation>
    </message>
    <message>
        <source>Made fit to fill</source>
        <translation>Füllbereit gemacht</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>Latest entries</source>
        <translation>Letzte Einträge</translation>
    </message>
    <message>
        <source>CO₂ dissolved, %1</source>
        <translation>Gelöstes CO₂, %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanelEntries</name>
    <message>
        <source>Nothing logged about it yet.</source>
        <translation>Noch nichts dazu eingetragen.</translation>
    </message>
    <message>
        <source>All %1 entries</source>
        <translation>Alle %1 Einträge</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanelHead</name>
    <message>
        <source>Back to the list (Esc)</source>
        <translation>Zurück zur Liste (Esc)</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
    <message>
        <source>All tasks…</source>
        <translation>Alle Aufgaben …</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanelReadiness</name>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegTableHeader</name>
    <message>
        <source>Columns of the keg table</source>
        <translation>Spalten der Fasstabelle</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegTableModel</name>
    <message>
        <source>Keg</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>Two weeks back, two ahead</source>
        <translation>Zwei Wochen zurück, zwei voraus</translation>
    </message>
    <message>
        <source>State and next step</source>
        <translation>Stand und nächster Schritt</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegTableView</name>
    <message>
        <source>Kegs</source>
        <translation>Fässer</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegsBar</name>
    <message>
        <source>Status &amp;sheet</source>
        <translation>&amp;Statusblatt</translation>
    </message>
    <message>
        <source>Log a &amp;transfer</source>
        <translation>Abfüllung ein&amp;tragen</translation>
    </message>
    <message>
        <source>Kegs</source>
        <translation>Fässer</translation>
    </message>
    <message>
        <source>Find a keg</source>
        <translation>Fass suchen</translation>
    </message>
    <message>
        <source>Type to find a keg, beer, state or place</source>
        <translation>Fass, Bier, Stand oder Ort suchen</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Strg+I</translation>
    </message>
    <message>
        <source>Details of the chosen keg (Ctrl+I)</source>
        <translation>Einzelheiten zum gewählten Fass (Strg+I)</translation>
    </message>
    <message>
        <source>Details of the chosen keg</source>
        <translation>Einzelheiten zum gewählten Fass</translation>
    </message>
    <message>
        <source>Sort: %1</source>
        <translation>Ordnung: %1</translation>
    </message>
    <message>
        <source>Opens a menu</source>
        <translation>Öffnet ein Menü</translation>
    </message>
    <message>
        <source>Compact rows</source>
        <translation>Enge Zeilen</translation>
    </message>
    <message>
        <source>Comfortable rows</source>
        <translation>Weite Zeilen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegsPage</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Kegs</source>
        <translation>Fässer</translation>
    </message>
    <message>
        <source>No kegs yet</source>
        <translation>Noch keine Fässer</translation>
    </message>
    <message>
        <source>Register your kegs and say what is in them now. What you don’t know can stay open.</source>
        <translation>Fässer aufnehmen und sagen, was gerade darin ist. Unbekanntes darf offen bleiben.</translation>
    </message>
    <message>
        <source>No keg matches</source>
        <translation>Kein Fass passt</translation>
    </message>
    <message>
        <source>Register your kegs…</source>
        <translation>Fässer aufnehmen …</translation>
    </message>
    <message>
        <source>Show all kegs</source>
        <translation>Alle Fässer zeigen</translation>
    </message>
    <message>
        <source>CO₂, %1</source>
        <translation>CO₂, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n kegs</source>
        <translation>
            <numerusform>%n Fass</numerusform>
            <numerusform>%n Fässer</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 kegs</source>
        <translation>%1 von %2 Fässern</translation>
    </message>
    <message>
        <source>No keg is “%1” just now.</source>
        <translation>Zurzeit ist kein Fass „%1“.</translation>
    </message>
    <message>
        <source>Nothing with “%1” among the kegs shown.</source>
        <translation>Nichts mit „%1“ unter den gezeigten Fässern.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::Kind</name>
    <message>
        <source>The least is %1.</source>
        <translation>Mindestens %1.</translation>
    </message>
    <message>
        <source>The most is %1.</source>
        <translation>Höchstens %1.</translation>
    </message>
    <message>
        <source>last: %1</source>
        <translation>zuletzt: %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LifeLegend</name>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>Life strip, low to high: %1</source>
        <translation>Lebensstreifen, unten nach oben: %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LineRow</name>
    <message>
        <source>DO NOT SERVE</source>
        <translation>NICHT AUSSCHENKEN</translation>
    </message>
    <message>
        <source>%1 in the line since %2, %3. Only a passed check releases it.</source>
        <translation>%1 in der Leitung seit %2, %3. Nur eine bestandene Prüfung gibt sie frei.</translation>
    </message>
    <message>
        <source>%1 bore</source>
        <translation>%1 innen</translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation>steigt %1</translation>
    </message>
    <message>
        <source>length and bore not known</source>
        <translation>Länge und Innenmaß unbekannt</translation>
    </message>
    <message>
        <source>Cleaned %1</source>
        <translation>Gereinigt %1</translation>
    </message>
    <message>
        <source>No cleaning logged</source>
        <translation>Keine Reinigung eingetragen</translation>
    </message>
    <message>
        <source>; no rule set</source>
        <translation>; keine Regel</translation>
    </message>
    <message>
        <source>; was due %1</source>
        <translation>; war fällig %1</translation>
    </message>
    <message>
        <source>; due %1</source>
        <translation>; fällig %1</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>Faucet %1</source>
        <translation>Hahn %1</translation>
    </message>
    <message>
        <source>Tap %1</source>
        <translation>Hahn %1</translation>
    </message>
    <message>
        <source>Nothing on it</source>
        <translation>Nichts dran</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Release by a check…</source>
        <translation>Durch Prüfung freigeben …</translation>
    </message>
    <message>
        <source>Log the cleaning…</source>
        <translation>Reinigung eintragen …</translation>
    </message>
    <message>
        <source>Lock to clean…</source>
        <translation>Zum Reinigen sperren …</translation>
    </message>
    <message>
        <source>Keg change…</source>
        <translation>Fasswechsel …</translation>
    </message>
    <message>
        <source>Timed pour…</source>
        <translation>Zapfen mit Uhr …</translation>
    </message>
    <message>
        <source>Change the line…</source>
        <translation>Leitung ändern …</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LinesPage</name>
    <message>
        <source>Add a line…</source>
        <translation>Leitung hinzufügen …</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>No lines yet</source>
        <translation>Noch keine Leitungen</translation>
    </message>
    <message>
        <source>Register each tap with its hose: then cleaning days, locks and keg changes have a home.</source>
        <translation>Jeden Hahn mit seinem Schlauch aufnehmen: dann haben Reinigung, Sperren und Fasswechsel ihren Ort.</translation>
    </message>
    <message>
        <source>%1 in use, %2 locked</source>
        <translation>%1 in Gebrauch, %2 gesperrt</translation>
    </message>
    <message>
        <source>%1 in use</source>
        <translation>%1 in Gebrauch</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LogPage</name>
    <message>
        <source>Log</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>As of a past time…</source>
        <translation>Stand von früher …</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>Kegs</source>
        <translation>Fässer</translation>
    </message>
    <message>
        <source>Beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Berichtigungen</translation>
    </message>
    <message>
        <source>Find words</source>
        <translation>Wörter suchen</translation>
    </message>
    <message>
        <source>Find words in the log</source>
        <translation>Wörter im Logbuch suchen</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>&amp;Between</source>
        <translation>&amp;Zwischen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To and with</source>
        <translation>Bis einschließlich</translation>
    </message>
    <message>
        <source>&amp;Struck too</source>
        <translation>&amp;Gestrichene auch</translation>
    </message>
    <message>
        <source>Entries, newest first</source>
        <translation>Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>Nothing matches</source>
        <translation>Nichts passt</translation>
    </message>
    <message>
        <source>No entry fits what is asked for above.</source>
        <translation>Kein Eintrag passt zu dem, was oben gesucht wird.</translation>
    </message>
    <message>
        <source>Show everything</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>&amp;Correct…</source>
        <translation>&amp;Berichtigen …</translation>
    </message>
    <message>
        <source>S&amp;trike…</source>
        <translation>S&amp;treichen …</translation>
    </message>
    <message>
        <source>&amp;Restore…</source>
        <translation>&amp;Zurückholen …</translation>
    </message>
    <message>
        <source>Nothing logged yet</source>
        <translation>Noch nichts eingetragen</translation>
    </message>
    <message>
        <source>Whatever you log, on any page, is listed here for good.</source>
        <translation>Was immer eingetragen wird, steht hier auf Dauer.</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>%1 bisher</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n Eintrag</numerusform>
            <numerusform>%n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Select an entry to correct or strike it. Nothing is ever erased.</source>
        <translation>Einen Eintrag wählen, um ihn zu berichtigen oder zu streichen. Gelöscht wird nie etwas.</translation>
    </message>
    <message>
        <source>Recorded %1</source>
        <translation>Aufgenommen %1</translation>
    </message>
    <message>
        <source> by %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>, entry %1</source>
        <translation>, Eintrag %1</translation>
    </message>
    <message>
        <source>. Corrected by entry %1</source>
        <translation>. Berichtigt durch Eintrag %1</translation>
    </message>
    <message>
        <source>That was not logged.</source>
        <translation>Das wurde nicht eingetragen.</translation>
    </message>
    <message>
        <source>Why is this entry struck?</source>
        <translation>Warum wird dieser Eintrag gestrichen?</translation>
    </message>
    <message>
        <source>Struck. The entry stays readable.</source>
        <translation>Gestrichen. Der Eintrag bleibt lesbar.</translation>
    </message>
    <message>
        <source>Why is this entry brought back?</source>
        <translation>Warum wird dieser Eintrag zurückgeholt?</translation>
    </message>
    <message>
        <source>Brought back.</source>
        <translation>Zurückgeholt.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LogTable</name>
    <message>
        <source>Struck: %1</source>
        <translation>Gestrichen: %1</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Gestrichen</translation>
    </message>
    <message>
        <source>Corrected below</source>
        <translation>Unten berichtigt</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Berichtigung</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Worüber</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stand</translation>
    </message>
</context>
<context>
    <name>ullage::ui::MainWindow</name>
    <message>
        <source>Another window logged something.</source>
        <translation>Ein anderes Fenster hat etwas eingetragen.</translation>
    </message>
    <message>
        <source>Kegs</source>
        <translation>Fässer</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Read-only</source>
        <translation>Nur lesend</translation>
    </message>
    <message>
        <source>This cellar can be looked at but not written to.</source>
        <translation>Dieser Keller kann angesehen, aber nicht beschrieben werden.</translation>
    </message>
    <message>
        <source>Open re&amp;cent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Brought back.</source>
        <translation>Zurückgeholt.</translation>
    </message>
    <message>
        <source>Undone. The log keeps it, struck.</source>
        <translation>Rückgängig. Das Logbuch behält es, gestrichen.</translation>
    </message>
    <message>
        <source>%1 – Ullage</source>
        <translation>%1 – Ullage</translation>
    </message>
    <message>
        <source>%1 locked</source>
        <translation>%1 gesperrt</translation>
    </message>
</context>
<context>
    <name>ullage::ui::MessageBox</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::NewCellar</name>
    <message>
        <source>New cellar</source>
        <translation>Neuer Keller</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Metrisch</translation>
    </message>
    <message>
        <source>US</source>
        <translation>US</translation>
    </message>
    <message>
        <source>British</source>
        <translation>Britisch</translation>
    </message>
    <message>
        <source>Back room</source>
        <translation>Hinterzimmer</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>What you call it. It stands in the window and on sheets.</source>
        <translation>Wie er heißt. Der Name steht im Fenster und auf den Blättern.</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>Above the sea. It sets the air pressure that dials are read against.</source>
        <translation>Über dem Meer. Danach richtet sich der Luftdruck, gegen den Manometer anzeigen.</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Zeitzone</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>Can be changed any time, each on its own, in the settings.</source>
        <translation>Lassen sich jederzeit einzeln in den Einstellungen ändern.</translation>
    </message>
    <message>
        <source>&amp;Make the cellar</source>
        <translation>Keller &amp;anlegen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>120 m or 400 ft</source>
        <translation>120 m oder 400 ft</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>People keep cellars between %1 and %2.</source>
        <translation>Keller liegen zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>There is no time zone “%1”. Choose one from the list: “Europe/London”, say.</source>
        <translation>Es gibt keine Zeitzone „%1“. Wählbar ist zum Beispiel „Europe/Berlin“.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::NoticeStrip</name>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the notice</source>
        <translation>Hinweis schließen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::QuantityEdit</name>
    <message>
        <source>Fill this in.</source>
        <translation>Bitte ausfüllen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::Rail</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie eingestellt</translation>
    </message>
</context>
<context>
    <name>ullage::ui::RegisterKegs</name>
    <message>
        <source>Register kegs</source>
        <translation>Fässer aufnehmen</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>&amp;Nummern</translation>
    </message>
    <message>
        <source>One, several with commas, or a run such as K01..K08.</source>
        <translation>Eine, mehrere mit Komma oder eine Reihe wie K01..K08.</translation>
    </message>
    <message>
        <source>&amp;Register</source>
        <translation>&amp;Aufnehmen</translation>
    </message>
    <message>
        <source>Figures from: %1. The stamp on the keg decides.</source>
        <translation>Zahlen aus: %1. Maßgebend ist, was im Fass eingeprägt ist.</translation>
    </message>
    <message>
        <source>Fill in what is stamped on the keg.</source>
        <translation>Eintragen, was im Fass eingeprägt ist.</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) will be registered</source>
        <translation>
            <numerusform>%n Fass wird aufgenommen</numerusform>
            <numerusform>%n Fässer werden aufgenommen</numerusform>
        </translation>
    </message>
    <message>
        <source>Not registered yet.</source>
        <translation>Noch nicht aufgenommen.</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) registered</source>
        <translation>
            <numerusform>%n Fass aufgenommen</numerusform>
            <numerusform>%n Fässer aufgenommen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Metrisch</translation>
    </message>
    <message>
        <source>US</source>
        <translation>US</translation>
    </message>
    <message>
        <source>British</source>
        <translation>Britisch</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Alles %1</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Druck</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
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
        <source>&amp;Volume</source>
        <translation>&amp;Volumen</translation>
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
        <source>Gla&amp;ss</source>
        <translation>&amp;Glas</translation>
    </message>
    <message>
        <source>US pint</source>
        <translation>US-Pint</translation>
    </message>
    <message>
        <source>pint</source>
        <translation>Pint</translation>
    </message>
    <message>
        <source>half litre</source>
        <translation>halber Liter</translation>
    </message>
    <message>
        <source>0.33 L</source>
        <translation>0,33 L</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>Ge&amp;wicht</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>&amp;Bore of hoses</source>
        <translation>&amp;Innenmaß von Schläuchen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>&amp;CO₂ in beer</source>
        <translation>&amp;CO₂ im Bier</translation>
    </message>
    <message>
        <source>volumes</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>g/L</source>
        <translation>g/L</translation>
    </message>
    <message>
        <source>&amp;Gravity</source>
        <translation>&amp;Stammwürze</translation>
    </message>
    <message>
        <source>SG</source>
        <translation>SG</translation>
    </message>
    <message>
        <source>°P</source>
        <translation>°P</translation>
    </message>
    <message>
        <source>You</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>tap, fob</source>
        <translation>tap, fob</translation>
    </message>
    <message>
        <source>faucet, foam</source>
        <translation>faucet, foam</translation>
    </message>
    <message>
        <source>T&amp;rade words</source>
        <translation>Fachwö&amp;rter (englisch)</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Loo&amp;ks</source>
        <translation>Auss&amp;ehen</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>From the next start. German is begun, not finished.</source>
        <translation>Gilt ab dem nächsten Start. Deutsch ist begonnen, nicht fertig.</translation>
    </message>
    <message>
        <source>&amp;Initials</source>
        <translation>&amp;Kürzel</translation>
    </message>
    <message>
        <source>Put beside what you log. Leave empty for none.</source>
        <translation>Steht neben jedem Eintrag. Leer: keines.</translation>
    </message>
    <message>
        <source>A keg reads: %1, %2, %3 or %4, %5; %6; hose %7 of %8; gravity %9.</source>
        <translation>Ein Fass zeigt: %1, %2, %3 oder %4, %5; %6; Schlauch %7 mit %8; Stammwürze %9.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::SheetPreview</name>
    <message>
        <source>Status sheet</source>
        <translation>Statusblatt</translation>
    </message>
    <message>
        <source>Pa&amp;per</source>
        <translation>Pa&amp;pier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;sichern …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>As of %1, told on %2</source>
        <translation>Stand %1, erzählt am %2</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gesichert.</translation>
    </message>
    <message>
        <source>Save the status sheet</source>
        <translation>Statusblatt sichern</translation>
    </message>
    <message>
        <source>status sheet.pdf</source>
        <translation>statusblatt.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>An %1 gesendet.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::ShortcutSheet</name>
    <message>
        <source>Shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::StockTake</name>
    <message>
        <source>Stock-taking</source>
        <translation>Bestandsaufnahme</translation>
    </message>
    <message>
        <source>&amp;Log it, next keg</source>
        <translation>&amp;Eintragen, nächstes Fass</translation>
    </message>
    <message>
        <source>S&amp;kip</source>
        <translation>Ü&amp;berspringen</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>Nothing to count</source>
        <translation>Nichts zu zählen</translation>
    </message>
    <message>
        <source>That was the last keg</source>
        <translation>Das war das letzte Fass</translation>
    </message>
    <message>
        <source>Of every registered keg something is known.</source>
        <translation>Über jedes aufgenommene Fass ist etwas bekannt.</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) logged. What you skipped can be logged any time.</source>
        <translation>
            <numerusform>%n Fass eingetragen. Übersprungenes lässt sich jederzeit eintragen.</numerusform>
            <numerusform>%n Fässer eingetragen. Übersprungenes lässt sich jederzeit eintragen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Keg %1 of %2</source>
        <translation>Fass %1 von %2</translation>
    </message>
    <message>
        <source>Not logged yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::TagListEdit</name>
    <message>
        <source>K01..K08</source>
        <translation>K01..K08</translation>
    </message>
    <message>
        <source>There is a keg %1 already.</source>
        <translation>Ein Fass %1 gibt es schon.</translation>
    </message>
    <message numerus="yes">
        <source>%n kegs: %1</source>
        <translation>
            <numerusform>%n Fass: %1</numerusform>
            <numerusform>%n Fässer: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::TaskPalette</name>
    <message>
        <source>No task is called that. Try “fill”, “vent” or “clean”.</source>
        <translation>So heißt keine Aufgabe. Etwa „fill“, „vent“ oder „clean“.</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>Was ist geschehen?</translation>
    </message>
    <message>
        <source>fill k7</source>
        <translation>fill k7</translation>
    </message>
    <message>
        <source>Task, and what it is about</source>
        <translation>Aufgabe, und worum es geht</translation>
    </message>
    <message>
        <source>Tasks that fit</source>
        <translation>Passende Aufgaben</translation>
    </message>
</context>
<context>
    <name>ullage::ui::TextEdit</name>
    <message>
        <source>Too long by %1: the most is %2 characters.</source>
        <translation>Um %1 zu lang: höchstens %2 Zeichen.</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Bitte ausfüllen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::TransferForm</name>
    <message>
        <source>Log a transfer</source>
        <translation>Abfüllung eintragen</translation>
    </message>
    <message>
        <source>New batch…</source>
        <translation>Neuer Sud …</translation>
    </message>
    <message>
        <source>Into &amp;keg</source>
        <translation>In das &amp;Fass</translation>
    </message>
    <message>
        <source>From &amp;batch</source>
        <translation>Aus dem &amp;Sud</translation>
    </message>
    <message>
        <source>Gravity checked</source>
        <translation>Extrakt geprüft</translation>
    </message>
    <message>
        <source>Keg holds pressure</source>
        <translation>Fass hält Druck</translation>
    </message>
    <message>
        <source>Cleaned</source>
        <translation>Gereinigt</translation>
    </message>
    <message>
        <source>Vent before opening. Gloves and goggles. Never acid with chlorine.</source>
        <translation>Vor dem Öffnen entlüften. Handschuhe und Brille. Nie Säure zu Chlor.</translation>
    </message>
    <message>
        <source>Sanitised</source>
        <translation>Desinfiziert</translation>
    </message>
    <message>
        <source>Seals lubricated</source>
        <translation>Dichtungen gefettet</translation>
    </message>
    <message>
        <source>Purged of air</source>
        <translation>Luft ausgespült</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Never push beer with gas out of glass: it can burst.</source>
        <translation>Bier nie mit Gas aus Glas drücken: es kann bersten.</translation>
    </message>
    <message>
        <source>Short burst</source>
        <translation>Kurzer Stoß</translation>
    </message>
    <message>
        <source>Set and wait</source>
        <translation>Einstellen und warten</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>No gas yet</source>
        <translation>Noch kein Gas</translation>
    </message>
    <message>
        <source>How it is carbonated</source>
        <translation>Wie karbonisiert wird</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Gas set</source>
        <translation>Gas eingestellt</translation>
    </message>
    <message>
        <source>Primed</source>
        <translation>Zucker zugegeben</translation>
    </message>
    <message>
        <source>Lid seated, no bubbles</source>
        <translation>Deckel sitzt, keine Blasen</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Initials.</source>
        <translation>Kürzel.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>&amp;Log the transfer</source>
        <translation>Abfüllung &amp;eintragen</translation>
    </message>
    <message>
        <source>From %1 to %2: %3 alcohol, apparent extract %4 °P</source>
        <translation>Von %1 auf %2: %3 Alkohol, scheinbarer Extrakt %4 °P</translation>
    </message>
    <message>
        <source>Transfer logged. %1</source>
        <translation>Abfüllung eingetragen. %1</translation>
    </message>
    <message>
        <source>Not logged yet. What you typed is still here.</source>
        <translation>Noch nicht eingetragen. Das Eingegebene ist noch da.</translation>
    </message>
    <message>
        <source>Leave without logging?</source>
        <translation>Ohne Eintrag schließen?</translation>
    </message>
    <message>
        <source>What you typed would be lost.</source>
        <translation>Das Eingegebene ginge verloren.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::TransferStep</name>
    <message>
        <source>Log it now</source>
        <translation>Jetzt eintragen</translation>
    </message>
    <message>
        <source>Log now: %1</source>
        <translation>Jetzt eintragen: %1</translation>
    </message>
    <message>
        <source>✓ will be logged</source>
        <translation>✓ wird eingetragen</translation>
    </message>
    <message>
        <source>✓ done %1</source>
        <translation>✓ erledigt %1</translation>
    </message>
    <message>
        <source>not done since it was last used (%1)</source>
        <translation>seit der letzten Benutzung nicht erledigt (%1)</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht erledigt</translation>
    </message>
</context>
<context>
    <name>ullage::ui::WhenEdit</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>1 h ago</source>
        <translation>vor 1 h</translation>
    </message>
    <message>
        <source>Yesterday evening</source>
        <translation>Gestern Abend</translation>
    </message>
</context>
</TS>
