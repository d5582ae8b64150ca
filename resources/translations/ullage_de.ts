<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>LockText</name>
    <message>
        <source>cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>Take the lock off %1 without a check?</source>
        <translation>Die Sperre von %1 ohne Prüfung aufheben?</translation>
    </message>
    <message>
        <source>After this, nothing would keep %1 locked, and there may be %2 in it. Go on only if none ever went in. Otherwise release the line by a check.</source>
        <translation>Danach würde nichts mehr %1 gesperrt halten, und es kann %2 darin sein. Nur fortfahren, wenn nie welcher hineinkam. Sonst die Leitung durch eine Prüfung freigeben.</translation>
    </message>
    <message>
        <source>None went in: take it off</source>
        <translation>Es kam keiner hinein: aufheben</translation>
    </message>
    <message>
        <source>Keep it locked</source>
        <translation>Gesperrt lassen</translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>Can’t write %1: %2.</source>
        <translation>%1 lässt sich nicht schreiben: %2.</translation>
    </message>
</context>
<context>
    <name>KindWords</name>
    <message>
        <source>Struck out</source>
        <translation>Gestrichen</translation>
    </message>
    <message>
        <source>Brought back</source>
        <translation>Zurückgeholt</translation>
    </message>
</context>
<context>
    <name>LogKinds</name>
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
        <translation>Räume</translation>
    </message>
    <message>
        <source>Routine work</source>
        <translation>Regelmäßige Arbeit</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Berichtigungen</translation>
    </message>
</context>
<context>
    <name>LostWords</name>
    <message>
        <source>Entry %1</source>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source> by %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>not known what it was</source>
        <translation>was es war, ist nicht bekannt</translation>
    </message>
    <message numerus="yes">
        <source>%n entries could not be saved:</source>
        <translation>
            <numerusform>%n Eintrag konnte nicht gerettet werden:</numerusform>
            <numerusform>%n Einträge konnten nicht gerettet werden:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more</source>
        <translation>
            <numerusform>… und %n weiterer</numerusform>
            <numerusform>… und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>The end of the journal is among what is broken: entries after the last one shown may be missing too.</source>
        <translation>Auch das Ende des Logbuchs ist beschädigt: Einträge nach dem letzten, der zu sehen ist, können ebenfalls fehlen.</translation>
    </message>
</context>
<context>
    <name>BeersRowsText</name>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>kalt</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>kühl</translation>
    </message>
    <message>
        <source>at cellar temperature</source>
        <translation>bei Kellertemperatur</translation>
    </message>
    <message>
        <source>temperature not known</source>
        <translation>Temperatur nicht bekannt</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>Fob</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>Line cleaning</source>
        <translation>Leitungsreinigung</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>Short fill</source>
        <translation>Zu knapp gefüllt</translation>
    </message>
    <message>
        <source>Spilt</source>
        <translation>Verschüttet</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation>Verschenkt</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>%1.  %2</source>
        <translation>%1.  %2</translation>
    </message>
    <message>
        <source>best by %1</source>
        <translation>haltbar bis %1</translation>
    </message>
    <message>
        <source>no best-by date</source>
        <translation>kein Haltbarkeitsdatum</translation>
    </message>
    <message>
        <source>in the cold since %1</source>
        <translation>kalt gestellt seit %1</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>on faucet %1</source>
        <translation>am Hahn %1</translation>
    </message>
    <message>
        <source>on tap %1</source>
        <translation>am Hahn %1</translation>
    </message>
    <message>
        <source>held back</source>
        <translation>zurückgehalten</translation>
    </message>
    <message>
        <source>%1, batch %2</source>
        <translation>%1, Sud %2</translation>
    </message>
    <message>
        <source>RECALLED %1: %2</source>
        <translation>ZURÜCKGERUFEN %1: %2</translation>
    </message>
    <message>
        <source>in no keg yet</source>
        <translation>noch in keinem Fass</translation>
    </message>
    <message>
        <source>was in 1 keg</source>
        <translation>war in 1 Fass</translation>
    </message>
    <message>
        <source>was in %1 kegs</source>
        <translation>war in %1 Fässern</translation>
    </message>
    <message>
        <source>%1 and more</source>
        <translation>%1 und mehr</translation>
    </message>
    <message>
        <source>Left of it</source>
        <translation>Davon übrig</translation>
    </message>
    <message>
        <source>can’t tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>Trace…</source>
        <translation>Verfolgen …</translation>
    </message>
    <message>
        <source>Recall…</source>
        <translation>Zurückrufen …</translation>
    </message>
    <message>
        <source>cold through about %1, between %2 and %3</source>
        <translation>durchgekühlt um %1, zwischen %2 und %3</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Beer at</source>
        <translation>Bier bei</translation>
    </message>
    <message>
        <source>keeps about %1 more</source>
        <translation>hält sich noch etwa %1</translation>
    </message>
    <message>
        <source>%1 in since %2: take them out</source>
        <translation>%1 darin seit %2: herausnehmen</translation>
    </message>
    <message>
        <source>%1 in since %2 · next look %3</source>
        <translation>%1 darin seit %2 · nächster Blick %3</translation>
    </message>
    <message>
        <source>Hops out…</source>
        <translation>Hopfen heraus …</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1-mal</translation>
    </message>
    <message>
        <source>cost %1 and more: some has no price</source>
        <translation>kostete %1 und mehr: manches hat keinen Preis</translation>
    </message>
    <message>
        <source>cost %1</source>
        <translation>kostete %1</translation>
    </message>
    <message>
        <source>no price known</source>
        <translation>kein Preis bekannt</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>rented</source>
        <translation>gemietet</translation>
    </message>
    <message>
        <source>the supplier’s</source>
        <translation>vom Lieferanten</translation>
    </message>
    <message>
        <source>since %1, %2</source>
        <translation>seit %1, %2</translation>
    </message>
    <message>
        <source>was due back %1</source>
        <translation>sollte zurück sein %1</translation>
    </message>
    <message>
        <source>due back %1</source>
        <translation>zurück bis %1</translation>
    </message>
    <message>
        <source>deposit %1</source>
        <translation>Pfand %1</translation>
    </message>
    <message>
        <source>runs out %1</source>
        <translation>reicht bis %1</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Reicht bis</translation>
    </message>
    <message>
        <source>tapped %1 ago</source>
        <translation>vor %1 angestochen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Keeps</source>
        <translation>Hält sich</translation>
    </message>
    <message>
        <source>not tapped</source>
        <translation>nicht angestochen</translation>
    </message>
    <message>
        <source>%1 past its best by</source>
        <translation>%1 über dem MHD</translation>
    </message>
    <message>
        <source>%1 to its best by</source>
        <translation>%1 bis zum MHD</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>about %1 over what it keeps</source>
        <translation>etwa %1 über der Haltbarkeit</translation>
    </message>
    <message>
        <source>keeps about %1 more (%2 to %3)</source>
        <translation>hält sich noch etwa %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>do not serve</source>
        <translation>nicht ausschenken</translation>
    </message>
</context>
<context>
    <name>BoxText</name>
    <message>
        <source>Open a cellar</source>
        <translation>Keller öffnen</translation>
    </message>
    <message>
        <source>Cellars (*.cellar);;All files (*)</source>
        <translation>Keller (*.cellar);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Weiter</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Empty, dirty</source>
        <translation>Leer, ungereinigt</translation>
    </message>
    <message>
        <source>Empty, clean</source>
        <translation>Leer, sauber</translation>
    </message>
    <message>
        <source>Empty, sanitised</source>
        <translation>Leer, desinfiziert</translation>
    </message>
    <message>
        <source>Empty, purged</source>
        <translation>Leer, mit CO₂ gespült</translation>
    </message>
    <message>
        <source>Rinse only</source>
        <translation>Nur gespült</translation>
    </message>
    <message>
        <source>Oxygen cleaner</source>
        <translation>Sauerstoffreiniger</translation>
    </message>
    <message>
        <source>Quaternary ammonium</source>
        <translation>Quartäre Ammoniumverbindung</translation>
    </message>
    <message>
        <source>Filled and vented</source>
        <translation>Gefüllt und entlüftet</translation>
    </message>
    <message>
        <source>Liquid pushed out</source>
        <translation>Mit Flüssigkeit ausgeschoben</translation>
    </message>
    <message>
        <source>Swept through</source>
        <translation>Durchströmt</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Still, after fermentation</source>
        <translation>Still, nach der Gärung</translation>
    </message>
    <message>
        <source>Spunded</source>
        <translation>Gespundet</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Table sugar</source>
        <translation>Haushaltszucker</translation>
    </message>
    <message>
        <source>Glucose</source>
        <translation>Glucose</translation>
    </message>
    <message>
        <source>Glucose monohydrate</source>
        <translation>Glucose-Monohydrat</translation>
    </message>
    <message>
        <source>Dry malt extract</source>
        <translation>Trockenmalzextrakt</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Heft, by hand</source>
        <translation>Anheben von Hand</translation>
    </message>
    <message>
        <source>Glasses poured</source>
        <translation>Gezapfte Gläser</translation>
    </message>
    <message>
        <source>Flow meter</source>
        <translation>Durchflusszähler</translation>
    </message>
    <message>
        <source>Short burst</source>
        <translation>Kurz mit hohem Druck</translation>
    </message>
    <message>
        <source>Seat the lid</source>
        <translation>Deckel andrücken</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Not checked</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Coloured cleaner runs clear</source>
        <translation>Farbreiniger läuft klar</translation>
    </message>
    <message>
        <source>Chlorine cleaner</source>
        <translation>Chlorreiniger</translation>
    </message>
    <message>
        <source>Static soak</source>
        <translation>Standreinigung</translation>
    </message>
    <message>
        <source>On the way</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Ours</source>
        <translation>Eigenes</translation>
    </message>
    <message>
        <source>Supplier&apos;s</source>
        <translation>Vom Lieferanten</translation>
    </message>
    <message>
        <source>CO₂ meter</source>
        <translation>CO₂-Messgerät</translation>
    </message>
    <message>
        <source>Keg cleaned</source>
        <translation>Fass gereinigt</translation>
    </message>
    <message>
        <source>Coupler cleaned</source>
        <translation>Zapfkopf gereinigt</translation>
    </message>
    <message>
        <source>Place cleaned</source>
        <translation>Raum gereinigt</translation>
    </message>
    <message>
        <source>Rented</source>
        <translation>Gemietet</translation>
    </message>
    <message>
        <source>Brewed here</source>
        <translation>Hier gebraut</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Geliefert</translation>
    </message>
    <message>
        <source>Cold box</source>
        <translation>Kühlbox</translation>
    </message>
    <message>
        <source>Cellar room</source>
        <translation>Kellerraum</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Theke</translation>
    </message>
    <message>
        <source>Vinyl</source>
        <translation>PVC</translation>
    </message>
    <message>
        <source>Barrier</source>
        <translation>Barriereschlauch</translation>
    </message>
    <message>
        <source>Polyethylene</source>
        <translation>Polyethylen</translation>
    </message>
    <message>
        <source>Stainless</source>
        <translation>Edelstahl</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Regulator dial</source>
        <translation>Manometer am Druckminderer</translation>
    </message>
    <message>
        <source>Spunding dial</source>
        <translation>Manometer am Spundapparat</translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Fridge display</source>
        <translation>Anzeige am Kühlschrank</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Bathroom scale</source>
        <translation>Personenwaage</translation>
    </message>
    <message>
        <source>Parcel scale</source>
        <translation>Paketwaage</translation>
    </message>
    <message>
        <source>Hydrometer</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>Condensation line</source>
        <translation>Kondensrand</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Keg</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>Coupler</source>
        <translation>Zapfkopf</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Alarm</source>
        <translation>Warngerät</translation>
    </message>
    <message>
        <source>Caustic</source>
        <translation>Lauge</translation>
    </message>
    <message>
        <source>Acid</source>
        <translation>Säure</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation>Dichtungen</translation>
    </message>
    <message>
        <source>Alarm check</source>
        <translation>Prüfung des Warngeräts</translation>
    </message>
    <message>
        <source>Bottle retest</source>
        <translation>Wiederholungsprüfung der Flasche</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Lecksuche</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Recirculated</source>
        <translation>Umgepumpt</translation>
    </message>
    <message>
        <source>Flushed</source>
        <translation>Durchgespült</translation>
    </message>
    <message>
        <source>Litmus</source>
        <translation>Lackmus</translation>
    </message>
    <message>
        <source>Set and wait</source>
        <translation>Einstellen und warten</translation>
    </message>
    <message>
        <source>Serving</source>
        <translation>Ausschank</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>Glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>Original</source>
        <translation>Stammwürze</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Vergoren</translation>
    </message>
    <message>
        <source>Soapy water</source>
        <translation>Seifenwasser</translation>
    </message>
    <message>
        <source>Under water</source>
        <translation>Unter Wasser</translation>
    </message>
    <message>
        <source>Listening</source>
        <translation>Hinhören</translation>
    </message>
    <message>
        <source>Pressure drop</source>
        <translation>Druckabfall</translation>
    </message>
    <message>
        <source>Beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>Line cleaning</source>
        <translation>Leitungsreinigung</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>Short fill</source>
        <translation>Zu knapp gefüllt</translation>
    </message>
    <message>
        <source>Spill</source>
        <translation>Verschüttet</translation>
    </message>
    <message>
        <source>Given away</source>
        <translation>Verschenkt</translation>
    </message>
    <message>
        <source>Acid sanitiser</source>
        <translation>Saures Desinfektionsmittel</translation>
    </message>
    <message>
        <source>Iodine</source>
        <translation>Iod</translation>
    </message>
    <message>
        <source>Chlorine</source>
        <translation>Chlor</translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation>Heißes Wasser</translation>
    </message>
    <message>
        <source>Tap apart</source>
        <translation>Hahn zerlegt</translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>&amp;New cellar…</source>
        <translation>&amp;Neuer Keller …</translation>
    </message>
    <message>
        <source>Make a new cellar file</source>
        <translation>Eine neue Kellerdatei anlegen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Öffnen …</translation>
    </message>
    <message>
        <source>Open a cellar file</source>
        <translation>Eine Kellerdatei öffnen</translation>
    </message>
    <message>
        <source>Look at the &amp;demo</source>
        <translation>&amp;Beispielkeller ansehen</translation>
    </message>
    <message>
        <source>Open the demo cellar</source>
        <translation>Den Beispielkeller öffnen</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>E&amp;xportieren …</translation>
    </message>
    <message>
        <source>Write the whole cellar out as JSON</source>
        <translation>Den ganzen Keller als JSON ausgeben</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren …</translation>
    </message>
    <message>
        <source>Read a cellar from JSON</source>
        <translation>Einen Keller aus JSON einlesen</translation>
    </message>
    <message>
        <source>Import a &amp;keg list…</source>
        <translation>&amp;Fassliste importieren …</translation>
    </message>
    <message>
        <source>Register kegs from a CSV file</source>
        <translation>Fässer aus einer CSV-Datei eintragen</translation>
    </message>
    <message>
        <source>Export c&amp;alendar…</source>
        <translation>&amp;Kalender exportieren …</translation>
    </message>
    <message>
        <source>Due work and ready dates for a calendar</source>
        <translation>Fällige Arbeiten und Reifedaten für einen Kalender</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>Jetzt &amp;sichern</translation>
    </message>
    <message>
        <source>Put a copy of the cellar among its backups</source>
        <translation>Eine Kopie des Kellers zu den Sicherungen legen</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Sicherung &amp;zurückholen …</translation>
    </message>
    <message>
        <source>List the backups and restore one</source>
        <translation>Die Sicherungen zeigen und eine zurückholen</translation>
    </message>
    <message>
        <source>&amp;Check the file</source>
        <translation>&amp;Datei prüfen</translation>
    </message>
    <message>
        <source>Look the file over for damage</source>
        <translation>Die Datei auf Schäden durchsehen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Das Fenster schließen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take back what was logged last</source>
        <translation>Den letzten Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Bring back what was undone</source>
        <translation>Zurückgenommenes wiederbringen</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>Units, words, theme, initials</source>
        <translation>Einheiten, Wörter, Aussehen, Kürzel</translation>
    </message>
    <message>
        <source>&amp;Any task…</source>
        <translation>&amp;Beliebige Aufgabe …</translation>
    </message>
    <message>
        <source>Find a task by typing, such as: vent k7</source>
        <translation>Eine Aufgabe durch Tippen finden, etwa: entlüften k7</translation>
    </message>
    <message>
        <source>R&amp;ound…</source>
        <translation>R&amp;undgang …</translation>
    </message>
    <message>
        <source>Walk the cellar and read what matters</source>
        <translation>Durch den Keller gehen und ablesen, worauf es ankommt</translation>
    </message>
    <message>
        <source>Log a &amp;transfer…</source>
        <translation>&amp;Abfüllung eintragen …</translation>
    </message>
    <message>
        <source>&amp;Keg change…</source>
        <translation>&amp;Fasswechsel …</translation>
    </message>
    <message>
        <source>&amp;Gas set…</source>
        <translation>&amp;Gas einstellen …</translation>
    </message>
    <message>
        <source>&amp;Level…</source>
        <translation>Füll&amp;stand …</translation>
    </message>
    <message>
        <source>Temperature &amp;read…</source>
        <translation>&amp;Temperatur ablesen …</translation>
    </message>
    <message>
        <source>&amp;Import temperatures…</source>
        <translation>Temperaturen &amp;importieren …</translation>
    </message>
    <message>
        <source>Gas bottle &amp;weighed…</source>
        <translation>Gasflasche &amp;wiegen …</translation>
    </message>
    <message>
        <source>Gas bottle &amp;changed…</source>
        <translation>Gasflasche we&amp;chseln …</translation>
    </message>
    <message>
        <source>&amp;Do not serve: lock a line…</source>
        <translation>&amp;Nicht ausschenken: Leitung sperren …</translation>
    </message>
    <message>
        <source>&amp;Stock-taking…</source>
        <translation>Bestands&amp;aufnahme …</translation>
    </message>
    <message>
        <source>&amp;Kegs…</source>
        <translation>&amp;Fässer …</translation>
    </message>
    <message>
        <source>&amp;Place…</source>
        <translation>&amp;Raum …</translation>
    </message>
    <message>
        <source>&amp;Instrument…</source>
        <translation>&amp;Messgerät …</translation>
    </message>
    <message>
        <source>&amp;Beer…</source>
        <translation>&amp;Bier …</translation>
    </message>
    <message>
        <source>B&amp;atch…</source>
        <translation>&amp;Sud …</translation>
    </message>
    <message>
        <source>&amp;Line…</source>
        <translation>&amp;Leitung …</translation>
    </message>
    <message>
        <source>&amp;Regulator…</source>
        <translation>&amp;Druckminderer …</translation>
    </message>
    <message>
        <source>&amp;Gas bottle…</source>
        <translation>&amp;Gasflasche …</translation>
    </message>
    <message>
        <source>R&amp;ule…</source>
        <translation>R&amp;egel …</translation>
    </message>
    <message>
        <source>This &amp;cellar…</source>
        <translation>Dieser &amp;Keller …</translation>
    </message>
    <message>
        <source>&amp;Status sheet…</source>
        <translation>&amp;Statusblatt …</translation>
    </message>
    <message>
        <source>Preview and print the status sheet</source>
        <translation>Das Statusblatt ansehen und drucken</translation>
    </message>
    <message>
        <source>&amp;Round sheet…</source>
        <translation>&amp;Rundgangblatt …</translation>
    </message>
    <message>
        <source>Blanks to walk round with, in walking order</source>
        <translation>Leerfelder für den Rundgang, in der Reihenfolge des Wegs</translation>
    </message>
    <message>
        <source>K&amp;eg list…</source>
        <translation>&amp;Fassliste …</translation>
    </message>
    <message>
        <source>All kegs, on paper or as CSV</source>
        <translation>Alle Fässer, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>&amp;Keg tags…</source>
        <translation>Fass&amp;anhänger …</translation>
    </message>
    <message>
        <source>Tags to hang on kegs, with a code to scan</source>
        <translation>Anhänger für Fässer, mit einem Code zum Scannen</translation>
    </message>
    <message>
        <source>&amp;Warning tags…</source>
        <translation>&amp;Warnanhänger …</translation>
    </message>
    <message>
        <source>Do not serve, vent first, out of service, gas</source>
        <translation>Nicht ausschenken, erst entlüften, außer Betrieb, Gas</translation>
    </message>
    <message>
        <source>&amp;Line cleaning log…</source>
        <translation>&amp;Leitungsreinigungsbuch …</translation>
    </message>
    <message>
        <source>Line cleanings over a period</source>
        <translation>Leitungsreinigungen eines Zeitraums</translation>
    </message>
    <message>
        <source>&amp;Temperature log…</source>
        <translation>&amp;Temperaturbuch …</translation>
    </message>
    <message>
        <source>Temperatures over a period</source>
        <translation>Temperaturen eines Zeitraums</translation>
    </message>
    <message>
        <source>&amp;Gas log…</source>
        <translation>&amp;Gasbuch …</translation>
    </message>
    <message>
        <source>Bottles, leaks and alarms over a period</source>
        <translation>Flaschen, Lecks und Alarme eines Zeitraums</translation>
    </message>
    <message>
        <source>W&amp;astage book…</source>
        <translation>&amp;Verlustbuch …</translation>
    </message>
    <message>
        <source>Beer lost over a period, and what it cost</source>
        <translation>Verlorenes Bier eines Zeitraums und was es kostete</translation>
    </message>
    <message>
        <source>&amp;Custody list…</source>
        <translation>Verblei&amp;bsliste …</translation>
    </message>
    <message>
        <source>Kegs lent, rented and a supplier’s</source>
        <translation>Verliehene, gemietete und Fässer des Lieferanten</translation>
    </message>
    <message>
        <source>Recall l&amp;ist…</source>
        <translation>R&amp;ückrufliste …</translation>
    </message>
    <message>
        <source>Where a batch went</source>
        <translation>Wohin ein Sud ging</translation>
    </message>
    <message>
        <source>&amp;Kegs</source>
        <translation>&amp;Fässer</translation>
    </message>
    <message>
        <source>Show the Kegs page</source>
        <translation>Die Seite Fässer zeigen</translation>
    </message>
    <message>
        <source>&amp;Lines</source>
        <translation>&amp;Leitungen</translation>
    </message>
    <message>
        <source>Show the Lines page</source>
        <translation>Die Seite Leitungen zeigen</translation>
    </message>
    <message>
        <source>&amp;Gas</source>
        <translation>&amp;Gas</translation>
    </message>
    <message>
        <source>Show the Gas page</source>
        <translation>Die Seite Gas zeigen</translation>
    </message>
    <message>
        <source>&amp;Safety</source>
        <translation>&amp;Sicherheit</translation>
    </message>
    <message>
        <source>Show the Safety page</source>
        <translation>Die Seite Sicherheit zeigen</translation>
    </message>
    <message>
        <source>&amp;Cleaning</source>
        <translation>&amp;Reinigung</translation>
    </message>
    <message>
        <source>Show the Cleaning page</source>
        <translation>Die Seite Reinigung zeigen</translation>
    </message>
    <message>
        <source>&amp;Beers</source>
        <translation>&amp;Biere</translation>
    </message>
    <message>
        <source>Show the Beers page</source>
        <translation>Die Seite Biere zeigen</translation>
    </message>
    <message>
        <source>Sl&amp;ate</source>
        <translation>Re&amp;chentafel</translation>
    </message>
    <message>
        <source>Show the Slate page: what if</source>
        <translation>Die Rechentafel zeigen: was wäre, wenn</translation>
    </message>
    <message>
        <source>L&amp;og</source>
        <translation>L&amp;ogbuch</translation>
    </message>
    <message>
        <source>Show the Log page</source>
        <translation>Das Logbuch zeigen</translation>
    </message>
    <message>
        <source>&amp;Shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>Show this list</source>
        <translation>Diese Liste zeigen</translation>
    </message>
    <message>
        <source>&amp;About Ullage</source>
        <translation>&amp;Über Ullage</translation>
    </message>
    <message>
        <source>Version and licence</source>
        <translation>Version und Lizenz</translation>
    </message>
    <message>
        <source>Cleaning &amp;day list…</source>
        <translation>Liste des Reinig&amp;ungstags …</translation>
    </message>
    <message>
        <source>The next cleaning day’s steps, with boxes to tick</source>
        <translation>Die Schritte des nächsten Reinigungstags, mit Kästchen zum Abhaken</translation>
    </message>
    <message>
        <source>Keg recei&amp;ved…</source>
        <translation>Fass ge&amp;liefert …</translation>
    </message>
    <message>
        <source>D&amp;ue list…</source>
        <translation>Was fällig &amp;ist …</translation>
    </message>
    <message>
        <source>What is due and by when, on paper or as CSV</source>
        <translation>Was bis wann fällig ist, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>W&amp;hole log…</source>
        <translation>Gesa&amp;mtes Buch …</translation>
    </message>
    <message>
        <source>Everything logged over a period, on paper or as CSV</source>
        <translation>Alle Einträge eines Zeitraums, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>Li&amp;ne list…</source>
        <translation>Leitu&amp;ngsliste …</translation>
    </message>
    <message>
        <source>All lines, on paper or as CSV</source>
        <translation>Alle Leitungen, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>&amp;Batch list…</source>
        <translation>Su&amp;dliste …</translation>
    </message>
    <message>
        <source>All batches, on paper or as CSV</source>
        <translation>Alle Sude, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>List &amp;of rules…</source>
        <translation>R&amp;egelliste …</translation>
    </message>
    <message>
        <source>The rules of this cellar, on paper or as CSV</source>
        <translation>Die Regeln dieses Kellers, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>&amp;More lists…</source>
        <translation>S&amp;onstige Listen …</translation>
    </message>
    <message>
        <source>Gas bottles, regulators, places, instruments, hose, beers, on paper or as CSV</source>
        <translation>Gasflaschen, Druckminderer, Räume, Messgeräte, Schläuche, Biere, auf Papier oder als CSV</translation>
    </message>
    <message>
        <source>&amp;Everything registered…</source>
        <translation>Gan&amp;zer Bestand …</translation>
    </message>
</context>
<context>
    <name>Forms</name>
    <message>
        <source>How far it may be off, always the same way (95 %).</source>
        <translation>Wie weit es immer in derselben Richtung danebenliegen kann (95 %).</translation>
    </message>
    <message>
        <source>How far two readings of one thing may differ (95 %).</source>
        <translation>Wie weit zwei Ablesungen desselben Werts auseinanderliegen können (95 %).</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>gauge dial thermometer scale hydrometer</source>
        <translation>messgerät manometer thermometer waage spindel</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>&amp;Bias</source>
        <translation>A&amp;bweichung</translation>
    </message>
    <message>
        <source>&amp;Repeatability</source>
        <translation>S&amp;treuung</translation>
    </message>
    <message>
        <source>&amp;Bias, %</source>
        <translation>A&amp;bweichung, %</translation>
    </message>
    <message>
        <source>&amp;Repeatability, %</source>
        <translation>S&amp;treuung, %</translation>
    </message>
    <message>
        <source>&amp;Checked on</source>
        <translation>Geprüft a&amp;m</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Such as: reads 0.3 too high in ice slush.</source>
        <translation>Etwa: zeigt in Eismatsch 0,3 zu hoch.</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>tap hose bore length register</source>
        <translation>hahn schlauch durchmesser länge eintragen</translation>
    </message>
    <message>
        <source>&amp;Tap</source>
        <translation>&amp;Hahn</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Raum</translation>
    </message>
    <message>
        <source>&amp;Regulator that drives it</source>
        <translation>&amp;Druckminderer, der sie treibt</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>&amp;Bore</source>
        <translation>&amp;Innendurchmesser</translation>
    </message>
    <message>
        <source>Ri&amp;se</source>
        <translation>S&amp;teighöhe</translation>
    </message>
    <message>
        <source>Of the tap above the middle of the keg.</source>
        <translation>Des Hahns über der Mitte des Fasses.</translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation>&amp;Material</translation>
    </message>
    <message>
        <source>Restrictor length</source>
        <translation>Länge der Drossel</translation>
    </message>
    <message>
        <source>A narrow piece that is there to slow the beer.</source>
        <translation>Ein enges Stück, das das Bier bremsen soll.</translation>
    </message>
    <message>
        <source>Restrictor bore</source>
        <translation>Innendurchmesser der Drossel</translation>
    </message>
    <message>
        <source>Coupler takes</source>
        <translation>Der Zapfkopf kostet</translation>
    </message>
    <message>
        <source>Of the pressure, as you pour.</source>
        <translation>Vom Druck, während gezapft wird.</translation>
    </message>
    <message>
        <source>Shank takes</source>
        <translation>Die Hahndurchführung kostet</translation>
    </message>
    <message>
        <source>&amp;Clean every, days</source>
        <translation>R&amp;einigen alle … Tage</translation>
    </message>
    <message>
        <source>Your own or your local rule: it differs by country.</source>
        <translation>Nach eigener oder örtlicher Regel: sie ist je nach Land verschieden.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Where the figure comes from</source>
        <translation>Woher die Zahl stammt</translation>
    </message>
    <message>
        <source>Release needs second initials</source>
        <translation>Freigabe braucht ein zweites Kürzel</translation>
    </message>
    <message>
        <source>Keg</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>register keg</source>
        <translation>fass eintragen keg</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>&amp;Kennung</translation>
    </message>
    <message>
        <source>&amp;Nominal volume</source>
        <translation>&amp;Nennvolumen</translation>
    </message>
    <message>
        <source>&amp;Brimful volume</source>
        <translation>Rand&amp;volles Volumen</translation>
    </message>
    <message>
        <source>Filled to the brim with water.</source>
        <translation>Bis zum Rand mit Wasser gefüllt.</translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation>Genau auf ±</translation>
    </message>
    <message>
        <source>Tar&amp;e</source>
        <translation>Le&amp;ergewicht</translation>
    </message>
    <message>
        <source>Empty weight. Weigh it: that narrows every level.</source>
        <translation>Gewicht des leeren Fasses. Selbst wiegen: das macht jeden Füllstand genauer.</translation>
    </message>
    <message>
        <source>Rated &amp;pressure</source>
        <translation>Zulässiger &amp;Druck</translation>
    </message>
    <message>
        <source>As stamped on the keg.</source>
        <translation>Wie auf dem Fass eingeschlagen.</translation>
    </message>
    <message>
        <source>&amp;Coupler or posts</source>
        <translation>&amp;Zapfkopf oder Anschlüsse</translation>
    </message>
    <message>
        <source>&amp;Owner</source>
        <translation>&amp;Eigentümer</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>Ra&amp;um</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Sud</translation>
    </message>
    <message>
        <source>register batch brew lot gyle</source>
        <translation>eintragen sud charge gebinde lieferung</translation>
    </message>
    <message>
        <source>&amp;Beer</source>
        <translation>&amp;Bier</translation>
    </message>
    <message>
        <source>Batch &amp;number</source>
        <translation>Sud&amp;nummer</translation>
    </message>
    <message>
        <source>&amp;Origin</source>
        <translation>&amp;Herkunft</translation>
    </message>
    <message>
        <source>&amp;Original gravity</source>
        <translation>&amp;Stammwürze</translation>
    </message>
    <message>
        <source>&amp;Final gravity</source>
        <translation>&amp;Restextrakt</translation>
    </message>
    <message>
        <source>&amp;Alcohol</source>
        <translation>&amp;Alkohol</translation>
    </message>
    <message>
        <source>Computed from the gravities when left open.</source>
        <translation>Wird aus den Extraktwerten berechnet, wenn es offen bleibt.</translation>
    </message>
    <message>
        <source>&amp;Packaged on</source>
        <translation>Ab&amp;gefüllt am</translation>
    </message>
    <message>
        <source>&amp;Best by</source>
        <translation>Haltbar b&amp;is</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>&amp;Lieferant</translation>
    </message>
    <message>
        <source>&amp;Warmest since fermentation</source>
        <translation>&amp;Wärmstes seit der Gärung</translation>
    </message>
    <message>
        <source>Sets how much CO₂ the still beer kept.</source>
        <translation>Danach richtet sich, wie viel CO₂ das stille Bier behielt.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>register cold box room cellar</source>
        <translation>eintragen kühlbox raum keller</translation>
    </message>
    <message>
        <source>&amp;Set to</source>
        <translation>&amp;Eingestellt auf</translation>
    </message>
    <message>
        <source>&amp;Air volume</source>
        <translation>&amp;Luftvolumen</translation>
    </message>
    <message>
        <source>Without kegs and stock: length × width × height.</source>
        <translation>Ohne Fässer und Vorräte: Länge × Breite × Höhe.</translation>
    </message>
    <message>
        <source>Air c&amp;hanges an hour</source>
        <translation>Luft&amp;wechsel je Stunde</translation>
    </message>
    <message>
        <source>Below the ground</source>
        <translation>Unter der Erde</translation>
    </message>
    <message>
        <source>Alarm sensor at</source>
        <translation>Fühler des Warngeräts auf</translation>
    </message>
    <message>
        <source>Above the floor.</source>
        <translation>Über dem Boden.</translation>
    </message>
    <message>
        <source>Place in a &amp;round</source>
        <translation>Stelle im &amp;Rundgang</translation>
    </message>
    <message>
        <source>Gas bottle</source>
        <translation>Gasflasche</translation>
    </message>
    <message>
        <source>register cylinder co2</source>
        <translation>eintragen flasche co2 kohlensäure</translation>
    </message>
    <message>
        <source>&amp;CO₂ share</source>
        <translation>&amp;CO₂-Anteil</translation>
    </message>
    <message>
        <source>The rest is nitrogen.</source>
        <translation>Der Rest ist Stickstoff.</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>&amp;Leergewicht</translation>
    </message>
    <message>
        <source>As stamped.</source>
        <translation>Wie eingeschlagen.</translation>
    </message>
    <message>
        <source>Gas when &amp;full</source>
        <translation>Gas, wenn &amp;voll</translation>
    </message>
    <message>
        <source>&amp;Water capacity</source>
        <translation>&amp;Wasserinhalt</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Füllfaktor</translation>
    </message>
    <message>
        <source>Gas by weight of the water that fits, as on its label.</source>
        <translation>Gewicht des Gases je Gewicht des Wassers, das hineinpasst, wie auf dem Schild.</translation>
    </message>
    <message>
        <source>&amp;Retest due</source>
        <translation>&amp;Prüfung fällig</translation>
    </message>
    <message>
        <source>Upright, secured, in moving air.</source>
        <translation>Aufrecht, gesichert, in bewegter Luft.</translation>
    </message>
    <message>
        <source>Beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>register beer style</source>
        <translation>eintragen bier sorte</translation>
    </message>
    <message>
        <source>&amp;Style</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>CO₂ &amp;from</source>
        <translation>CO₂ &amp;von</translation>
    </message>
    <message>
        <source>CO₂ &amp;to</source>
        <translation>CO₂ b&amp;is</translation>
    </message>
    <message>
        <source>&amp;Allergens</source>
        <translation>&amp;Allergene</translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation>Druckminderer</translation>
    </message>
    <message>
        <source>register regulator outlet</source>
        <translation>eintragen druckminderer abgang</translation>
    </message>
    <message>
        <source>&amp;Draws from</source>
        <translation>&amp;Hängt an der Flasche</translation>
    </message>
    <message>
        <source>Or is &amp;fed by</source>
        <translation>Oder wird &amp;gespeist von</translation>
    </message>
    <message>
        <source>Secured against falling</source>
        <translation>Gegen Umfallen gesichert</translation>
    </message>
    <message>
        <source>Its &amp;dial</source>
        <translation>Sein &amp;Manometer</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>Ge&amp;wicht</translation>
    </message>
    <message>
        <source>What it adds when it is weighed with a bottle.</source>
        <translation>Um so viel schwerer wird die Flasche, wenn er beim Wiegen daran ist.</translation>
    </message>
    <message>
        <source>This cellar</source>
        <translation>Dieser Keller</translation>
    </message>
    <message>
        <source>altitude zone name</source>
        <translation>höhe zeitzone name</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>&amp;Time zone</source>
        <translation>&amp;Zeitzone</translation>
    </message>
    <message>
        <source>&amp;Country</source>
        <translation>&amp;Land</translation>
    </message>
    <message>
        <source>Two letters, such as DE or US.</source>
        <translation>Zwei Buchstaben, etwa DE oder US.</translation>
    </message>
    <message>
        <source>A keg may &amp;lose a day</source>
        <translation>Ein Fass darf am Tag &amp;verlieren</translation>
    </message>
    <message>
        <source>CO₂ on hold that still passes as tight.</source>
        <translation>CO₂ bei der Druckprobe, bei dem es noch als dicht gilt.</translation>
    </message>
    <message>
        <source>Gas set</source>
        <translation>Gas eingestellt</translation>
    </message>
    <message>
        <source>pressure psi bar regulator gas on</source>
        <translation>druck psi bar druckminderer gas an</translation>
    </message>
    <message>
        <source>&amp;Keg</source>
        <translation>&amp;Fass</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Druck</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <source>&amp;Regulator</source>
        <translation>Druckminde&amp;rer</translation>
    </message>
    <message>
        <source>Read on</source>
        <translation>Abgelesen an</translation>
    </message>
    <message>
        <source>CO₂ share</source>
        <translation>CO₂-Anteil</translation>
    </message>
    <message>
        <source>Of a blend; pure CO₂ when left open.</source>
        <translation>Bei einem Mischgas; reines CO₂, wenn es offen bleibt.</translation>
    </message>
    <message>
        <source>Not above the pressure stamped on the keg. Turning a regulator down does not let pressure out of the keg: vent it too.</source>
        <translation>Nicht über den Druck, der auf dem Fass eingeschlagen ist. Den Druckminderer herunterzudrehen lässt keinen Druck aus dem Fass: auch entlüften.</translation>
    </message>
    <message>
        <source>Gas off</source>
        <translation>Gas ab</translation>
    </message>
    <message>
        <source>disconnect shut</source>
        <translation>gas ab trennen zudrehen</translation>
    </message>
    <message>
        <source>Vented</source>
        <translation>Entlüftet</translation>
    </message>
    <message>
        <source>vent relief let down pressure</source>
        <translation>entlüften ablassen druck</translation>
    </message>
    <message>
        <source>&amp;Down to</source>
        <translation>Hinunter &amp;auf</translation>
    </message>
    <message>
        <source>To the open air when left open.</source>
        <translation>Bis zur freien Luft, wenn es offen bleibt.</translation>
    </message>
    <message>
        <source>Face away from the valve. Let air into the room: CO₂ collects low.</source>
        <translation>Gesicht weg vom Ventil. Luft in den Raum lassen: CO₂ sammelt sich unten.</translation>
    </message>
    <message>
        <source>Rocked or shaken</source>
        <translation>Gerollt oder geschüttelt</translation>
    </message>
    <message>
        <source>shake roll</source>
        <translation>schütteln rollen</translation>
    </message>
    <message>
        <source>&amp;For how long</source>
        <translation>Wie &amp;lange</translation>
    </message>
    <message>
        <source>Shaking takes gas up many times faster and is easily overdone.</source>
        <translation>Schütteln nimmt Gas um ein Vielfaches schneller auf, und leicht wird es zu viel.</translation>
    </message>
    <message>
        <source>Gas bottle weighed</source>
        <translation>Gasflasche gewogen</translation>
    </message>
    <message>
        <source>weigh co2 cylinder</source>
        <translation>wiegen co2 flasche</translation>
    </message>
    <message>
        <source>&amp;Bottle</source>
        <translation>Flas&amp;che</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>W&amp;aage</translation>
    </message>
    <message>
        <source>&amp;Regulator left on</source>
        <translation>Druckminderer war &amp;daran</translation>
    </message>
    <message>
        <source>It weighs about a kilogram: say so if it was on the scale.</source>
        <translation>Er wiegt etwa ein Kilogramm: angeben, ob er mit auf der Waage war.</translation>
    </message>
    <message>
        <source>Gas bottle changed</source>
        <translation>Gasflasche gewechselt</translation>
    </message>
    <message>
        <source>swap cylinder</source>
        <translation>wechsel flasche tauschen</translation>
    </message>
    <message>
        <source>&amp;New bottle</source>
        <translation>&amp;Neue Flasche</translation>
    </message>
    <message>
        <source>CO₂ on the &amp;tag</source>
        <translation>CO₂ laut &amp;Schild</translation>
    </message>
    <message>
        <source>Read the tag, not the paint. In per cent of CO₂.</source>
        <translation>Das Schild lesen, nicht die Farbe. In Prozent CO₂.</translation>
    </message>
    <message>
        <source>Washer renewed</source>
        <translation>Dichtring erneuert</translation>
    </message>
    <message>
        <source>Standing upright and secured</source>
        <translation>Steht aufrecht und gesichert</translation>
    </message>
    <message>
        <source>Open the valve slowly, face away. Never swap CO₂ and mixed-gas regulators. Test the joint for leaks. Licensed practice and local codes come first.</source>
        <translation>Das Ventil langsam öffnen, Gesicht weg. Druckminderer für CO₂ und Mischgas nie vertauschen. Die Verbindung auf Lecks prüfen. Fachbetrieb und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Bottle gauge read</source>
        <translation>Flaschenmanometer abgelesen</translation>
    </message>
    <message>
        <source>high pressure gauge</source>
        <translation>hochdruck manometer flasche</translation>
    </message>
    <message>
        <source>Tells nothing about CO₂ while liquid remains; a blend&apos;s does fall.</source>
        <translation>Sagt nichts über CO₂, solange noch Flüssigkeit da ist; bei Mischgas fällt es.</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Looked for leaks</source>
        <translation>Nach Lecks gesucht</translation>
    </message>
    <message>
        <source>soap bubbles leak lid joint</source>
        <translation>seifenwasser blasen leck deckel verbindung</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Leitung</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Wie</translation>
    </message>
    <message>
        <source>Leak found</source>
        <translation>Leck gefunden</translation>
    </message>
    <message>
        <source>&amp;Where</source>
        <translation>W&amp;o</translation>
    </message>
    <message>
        <source>Found: what is in a keg now</source>
        <translation>Bestand: was jetzt im Fass ist</translation>
    </message>
    <message>
        <source>stock-taking count contents</source>
        <translation>bestandsaufnahme zählen inhalt</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Inhalt</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Sud</translation>
    </message>
    <message>
        <source>Leave open if nobody knows.</source>
        <translation>Offen lassen, wenn es niemand weiß.</translation>
    </message>
    <message>
        <source>&amp;Left in it</source>
        <translation>Noch d&amp;arin</translation>
    </message>
    <message>
        <source>Leave open if unknown.</source>
        <translation>Offen lassen, wenn unbekannt.</translation>
    </message>
    <message>
        <source>On its gauge now.</source>
        <translation>Jetzt an seinem Manometer.</translation>
    </message>
    <message>
        <source>Of the beer, or where it stands.</source>
        <translation>Des Biers oder dort, wo es steht.</translation>
    </message>
    <message>
        <source>C&amp;O₂</source>
        <translation>C&amp;O₂</translation>
    </message>
    <message>
        <source>If somebody measured or knows it.</source>
        <translation>Wenn es jemand gemessen hat oder weiß.</translation>
    </message>
    <message>
        <source>Gas is connected</source>
        <translation>Gas ist angeschlossen</translation>
    </message>
    <message>
        <source>On line</source>
        <translation>An Leitung</translation>
    </message>
    <message>
        <source>If it is on tap.</source>
        <translation>Wenn es angestochen ist.</translation>
    </message>
    <message>
        <source>&amp;Since</source>
        <translation>S&amp;eit</translation>
    </message>
    <message>
        <source>Since when it has held this, if known.</source>
        <translation>Seit wann das darin ist, wenn bekannt.</translation>
    </message>
    <message>
        <source>Keg cleaned</source>
        <translation>Fass gereinigt</translation>
    </message>
    <message>
        <source>wash clean caustic</source>
        <translation>reinigen spülen lauge</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>&amp;Verfahren</translation>
    </message>
    <message>
        <source>&amp;Agent</source>
        <translation>&amp;Mittel</translation>
    </message>
    <message>
        <source>In your own words.</source>
        <translation>In eigenen Worten.</translation>
    </message>
    <message>
        <source>&amp;Strength, %</source>
        <translation>&amp;Stärke, %</translation>
    </message>
    <message>
        <source>As the label says.</source>
        <translation>Laut Etikett.</translation>
    </message>
    <message>
        <source>&amp;Contact time</source>
        <translation>&amp;Einwirkzeit</translation>
    </message>
    <message>
        <source>Vent the keg before opening it. Caustic and acid burn: gloves and goggles. Never let acid meet a chlorine cleaner. Rinse CO₂ out before caustic, or the keg can draw a vacuum. Follow the label and local rules.</source>
        <translation>Vor dem Öffnen das Fass entlüften. Lauge und Säure verätzen: Handschuhe und Schutzbrille. Säure nie mit Chlorreiniger zusammenbringen. Vor Lauge das CO₂ ausspülen, sonst kann im Fass ein Unterdruck entstehen. Etikett und örtliche Vorschriften befolgen.</translation>
    </message>
    <message>
        <source>Hold reading: does it keep its pressure?</source>
        <translation>Druckprobe: hält es den Druck?</translation>
    </message>
    <message>
        <source>hold test pressure leak</source>
        <translation>druckprobe druck leck dichtheit</translation>
    </message>
    <message>
        <source>Use one gauge for all readings of a test: its bias then cancels.</source>
        <translation>Für alle Ablesungen einer Probe dasselbe Manometer: seine Abweichung hebt sich dann auf.</translation>
    </message>
    <message>
        <source>The keg&apos;s, to tell cooling from a leak.</source>
        <translation>Des Fasses, um Abkühlung von einem Leck zu unterscheiden.</translation>
    </message>
    <message>
        <source>First reading of a new test</source>
        <translation>Erste Ablesung einer neuen Probe</translation>
    </message>
    <message>
        <source>Wait half an hour after gassing before the first one.</source>
        <translation>Nach dem Aufpressen eine halbe Stunde warten.</translation>
    </message>
    <message>
        <source>Not above the pressure stamped on the keg. A keg that holds at a high pressure is not proven at a low one: lids seat with pressure.</source>
        <translation>Nicht über den Druck, der auf dem Fass eingeschlagen ist. Was bei hohem Druck hält, ist bei niedrigem noch nicht als dicht erwiesen: der Druck presst den Deckel an.</translation>
    </message>
    <message>
        <source>Purged of air</source>
        <translation>Luft ausgetrieben</translation>
    </message>
    <message>
        <source>purge oxygen co2</source>
        <translation>spülen sauerstoff co2 vorspannen</translation>
    </message>
    <message>
        <source>&amp;Cycles</source>
        <translation>Durch&amp;gänge</translation>
    </message>
    <message>
        <source>Filled with gas and vented this many times.</source>
        <translation>So oft mit Gas gefüllt und entlüftet.</translation>
    </message>
    <message>
        <source>&amp;Pressure of each</source>
        <translation>&amp;Druck jedes Durchgangs</translation>
    </message>
    <message>
        <source>Keg &amp;volumes swept</source>
        <translation>D&amp;urchgeströmte Fassvolumina</translation>
    </message>
    <message>
        <source>CO₂ collects low and is not noticed: purge where the air moves.</source>
        <translation>CO₂ sammelt sich unten und bleibt unbemerkt: dort spülen, wo sich die Luft bewegt.</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Umgestellt</translation>
    </message>
    <message>
        <source>place carry</source>
        <translation>raum tragen umstellen</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Nach</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Zurückgehalten</translation>
    </message>
    <message>
        <source>quarantine hold do not use</source>
        <translation>zurückhalten sperren nicht verwenden</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>Cleared for use again</source>
        <translation>Wieder freigegeben</translation>
    </message>
    <message>
        <source>clear release</source>
        <translation>freigeben</translation>
    </message>
    <message>
        <source>Lent or rented out</source>
        <translation>Verliehen oder vermietet</translation>
    </message>
    <message>
        <source>loan custody deposit</source>
        <translation>verleih verbleib pfand</translation>
    </message>
    <message>
        <source>Lent &amp;to</source>
        <translation>Verliehen &amp;an</translation>
    </message>
    <message>
        <source>A site or a first name is enough.</source>
        <translation>Ein Ort oder ein Vorname genügt.</translation>
    </message>
    <message>
        <source>&amp;Deposit</source>
        <translation>&amp;Pfand</translation>
    </message>
    <message>
        <source>Due &amp;back</source>
        <translation>&amp;Zurück bis</translation>
    </message>
    <message>
        <source>Came back</source>
        <translation>Zurückgekommen</translation>
    </message>
    <message>
        <source>return loan</source>
        <translation>rückgabe zurück</translation>
    </message>
    <message>
        <source>Inspected, seals</source>
        <translation>Durchgesehen, Dichtungen</translation>
    </message>
    <message>
        <source>inspect seal o-ring lubricate lid</source>
        <translation>durchsicht dichtung o-ring fetten deckel</translation>
    </message>
    <message>
        <source>Seals lubricated</source>
        <translation>Dichtungen gefettet</translation>
    </message>
    <message>
        <source>Seals renewed</source>
        <translation>Dichtungen erneuert</translation>
    </message>
    <message>
        <source>Lid seated</source>
        <translation>Deckel sitzt</translation>
    </message>
    <message>
        <source>Fit to use</source>
        <translation>Verwendbar</translation>
    </message>
    <message>
        <source>Vent until nothing comes any more before a lid or spear is touched.</source>
        <translation>Entlüften, bis nichts mehr kommt, bevor Deckel oder Steigrohr angerührt werden.</translation>
    </message>
    <message>
        <source>Keg sanitised</source>
        <translation>Fass desinfiziert</translation>
    </message>
    <message>
        <source>sanitise sanitize</source>
        <translation>desinfizieren</translation>
    </message>
    <message>
        <source>Clean first: a sanitiser does not work through soil. Follow the label.</source>
        <translation>Erst reinigen: ein Desinfektionsmittel wirkt nicht durch Schmutz. Etikett befolgen.</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>interval cleaning due every days</source>
        <translation>frist reinigung fällig alle tage</translation>
    </message>
    <message>
        <source>&amp;Applies to</source>
        <translation>&amp;Gilt für</translation>
    </message>
    <message>
        <source>&amp;Work</source>
        <translation>&amp;Arbeit</translation>
    </message>
    <message>
        <source>Only this &amp;line</source>
        <translation>Nur diese &amp;Leitung</translation>
    </message>
    <message>
        <source>Only this &amp;keg</source>
        <translation>Nur dieses &amp;Fass</translation>
    </message>
    <message>
        <source>Only this &amp;bottle</source>
        <translation>Nur diese Flas&amp;che</translation>
    </message>
    <message>
        <source>Only this &amp;place</source>
        <translation>Nur dieser &amp;Raum</translation>
    </message>
    <message>
        <source>&amp;Every, days</source>
        <translation>All&amp;e … Tage</translation>
    </message>
    <message>
        <source>Leave open for work that is called for by what happens, such as a keg emptied.</source>
        <translation>Offen lassen bei Arbeit, die ein Anlass auslöst, etwa ein leeres Fass.</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>War&amp;um</translation>
    </message>
    <message>
        <source>&amp;Source of the figure</source>
        <translation>&amp;Quelle der Zahl</translation>
    </message>
    <message>
        <source>Who says so: your house, a handbook, the law where you are.</source>
        <translation>Wer das sagt: das Haus, ein Handbuch, das örtliche Recht.</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>In Kraft</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Arbeit erledigt</translation>
    </message>
    <message>
        <source>cleaning strip seals retest done</source>
        <translation>reinigung zerlegen dichtungen prüfung erledigt</translation>
    </message>
    <message>
        <source>&amp;Name of it</source>
        <translation>&amp;Name des Mittels</translation>
    </message>
    <message>
        <source>Cleaner used, liquid</source>
        <translation>Verbrauchter Reiniger, flüssig</translation>
    </message>
    <message>
        <source>Cleaner used, powder</source>
        <translation>Verbrauchter Reiniger, Pulver</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>All of it is done</source>
        <translation>Alles davon ist erledigt</translation>
    </message>
    <message>
        <source>Next due</source>
        <translation>Nächstes Mal fällig</translation>
    </message>
    <message>
        <source>As stamped or certified.</source>
        <translation>Wie eingeschlagen oder bescheinigt.</translation>
    </message>
    <message>
        <source>&amp;Done by</source>
        <translation>Erle&amp;digt von</translation>
    </message>
    <message>
        <source>Countersi&amp;gned by</source>
        <translation>&amp;Gegengezeichnet von</translation>
    </message>
    <message>
        <source>Vent before opening. Caustic and acid burn: gloves and goggles. Never let acid meet a chlorine cleaner.</source>
        <translation>Vor dem Öffnen entlüften. Lauge und Säure verätzen: Handschuhe und Schutzbrille. Säure nie mit Chlorreiniger zusammenbringen.</translation>
    </message>
    <message>
        <source>Piece of hose</source>
        <translation>Schlauchstück</translation>
    </message>
    <message>
        <source>line segment hose python restrictor</source>
        <translation>leitung abschnitt schlauch python drossel</translation>
    </message>
    <message>
        <source>&amp;Counted from the keg</source>
        <translation>Vom Fass aus &amp;gezählt</translation>
    </message>
    <message>
        <source>Len&amp;gth</source>
        <translation>Lä&amp;nge</translation>
    </message>
    <message>
        <source>&amp;Runs through</source>
        <translation>Lä&amp;uft durch</translation>
    </message>
    <message>
        <source>Of its end above its beginning.</source>
        <translation>Seines Endes über seinem Anfang.</translation>
    </message>
    <message>
        <source>Put work off</source>
        <translation>Arbeit verschieben</translation>
    </message>
    <message>
        <source>move postpone due</source>
        <translation>verschieben später fällig</translation>
    </message>
    <message>
        <source>Put off &amp;to</source>
        <translation>&amp;Verschoben auf</translation>
    </message>
    <message>
        <source>Full keg received</source>
        <translation>Volles Fass angenommen</translation>
    </message>
    <message>
        <source>delivery drayman supplier</source>
        <translation>lieferung fahrer lieferant</translation>
    </message>
    <message>
        <source>As it came in. Leave open if not taken.</source>
        <translation>Bei Anlieferung. Offen lassen, wenn nicht gemessen.</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Volumen</translation>
    </message>
    <message>
        <source>Nominal when left open.</source>
        <translation>Nennvolumen, wenn es offen bleibt.</translation>
    </message>
    <message>
        <source>C&amp;O₂ as supplied</source>
        <translation>C&amp;O₂ bei Lieferung</translation>
    </message>
    <message>
        <source>If the supplier states it.</source>
        <translation>Wenn der Lieferant es angibt.</translation>
    </message>
    <message>
        <source>Seal intact</source>
        <translation>Siegel unversehrt</translation>
    </message>
    <message>
        <source>A full keg can weigh as much as a person: roll it or use a lifter.</source>
        <translation>Ein volles Fass kann so viel wiegen wie ein Mensch: rollen oder eine Hebehilfe nehmen.</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>fill rack beer</source>
        <translation>füllen schlauchen bier</translation>
    </message>
    <message>
        <source>Or give the weight below.</source>
        <translation>Oder unten das Gewicht angeben.</translation>
    </message>
    <message>
        <source>&amp;Weight, keg and beer</source>
        <translation>&amp;Gewicht, Fass und Bier</translation>
    </message>
    <message>
        <source>Weighed on</source>
        <translation>Gewogen auf</translation>
    </message>
    <message>
        <source>&amp;Transfer</source>
        <translation>&amp;Abfüllung</translation>
    </message>
    <message>
        <source>Beer &amp;temperature</source>
        <translation>Bier&amp;temperatur</translation>
    </message>
    <message>
        <source>&amp;Gravity</source>
        <translation>&amp;Extrakt</translation>
    </message>
    <message>
        <source>Above the final gravity there is gas still to come.</source>
        <translation>Über dem Restextrakt kommt noch Gas.</translation>
    </message>
    <message>
        <source>CO₂ in it</source>
        <translation>CO₂ darin</translation>
    </message>
    <message>
        <source>Measured CO₂</source>
        <translation>Gemessenes CO₂</translation>
    </message>
    <message>
        <source>Spunding pressure</source>
        <translation>Spunddruck</translation>
    </message>
    <message>
        <source>Never push beer with gas out of glass: it can burst at very little pressure.</source>
        <translation>Bier nie mit Gas aus Glas drücken: es kann schon bei sehr wenig Druck bersten.</translation>
    </message>
    <message>
        <source>Level: how much is left</source>
        <translation>Füllstand: wie viel noch da ist</translation>
    </message>
    <message>
        <source>weigh heft glasses level</source>
        <translation>wiegen anheben gläser füllstand</translation>
    </message>
    <message>
        <source>&amp;Of a full keg</source>
        <translation>&amp;Von einem vollen Fass</translation>
    </message>
    <message>
        <source>In tenths is close enough.</source>
        <translation>Auf Zehntel genau genügt.</translation>
    </message>
    <message>
        <source>&amp;Glasses poured</source>
        <translation>Gezapfte Glä&amp;ser</translation>
    </message>
    <message>
        <source>Since the last reading, or since it was filled.</source>
        <translation>Seit der letzten Ablesung oder seit dem Füllen.</translation>
    </message>
    <message>
        <source>Glass &amp;holds</source>
        <translation>Glas fass&amp;t</translation>
    </message>
    <message>
        <source>&amp;Metered out</source>
        <translation>&amp;Durchgelaufen</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Carbonation reading</source>
        <translation>Karbonisierung gemessen</translation>
    </message>
    <message>
        <source>co2 volumes carbonation</source>
        <translation>co2 volumen karbonisierung</translation>
    </message>
    <message>
        <source>&amp;Pressure at rest</source>
        <translation>&amp;Druck in Ruhe</translation>
    </message>
    <message>
        <source>Gas off, and the keg left alone.</source>
        <translation>Gas ab und das Fass in Ruhe gelassen.</translation>
    </message>
    <message>
        <source>Measured &amp;CO₂</source>
        <translation>Gemessenes &amp;CO₂</translation>
    </message>
    <message>
        <source>With a meter, instead of the pressure.</source>
        <translation>Mit einem Messgerät, statt über den Druck.</translation>
    </message>
    <message>
        <source>Primed with sugar</source>
        <translation>Zucker zugegeben</translation>
    </message>
    <message>
        <source>sugar prime natural</source>
        <translation>zucker nachgärung natürlich</translation>
    </message>
    <message>
        <source>&amp;Sugar</source>
        <translation>&amp;Zucker</translation>
    </message>
    <message>
        <source>&amp;Amount</source>
        <translation>&amp;Menge</translation>
    </message>
    <message>
        <source>A primed keg left warm can climb past its rated pressure: keep an eye on it.</source>
        <translation>Ein Fass mit Zucker kann in der Wärme über seinen zulässigen Druck steigen: im Auge behalten.</translation>
    </message>
    <message>
        <source>Hops in</source>
        <translation>Hopfen hinein</translation>
    </message>
    <message>
        <source>dry hop</source>
        <translation>kalthopfung</translation>
    </message>
    <message>
        <source>&amp;Hops</source>
        <translation>&amp;Hopfen</translation>
    </message>
    <message>
        <source>Vent the keg before opening it; hops make lively beer gush.</source>
        <translation>Vor dem Öffnen das Fass entlüften; Hopfen lässt lebhaftes Bier überschäumen.</translation>
    </message>
    <message>
        <source>Hops out</source>
        <translation>Hopfen heraus</translation>
    </message>
    <message>
        <source>On tap</source>
        <translation>Angestochen</translation>
    </message>
    <message>
        <source>tap broach connect couple</source>
        <translation>anstechen anschließen hahn</translation>
    </message>
    <message>
        <source>Off tap</source>
        <translation>Abgenommen</translation>
    </message>
    <message>
        <source>disconnect</source>
        <translation>trennen abnehmen</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>ran out gone</source>
        <translation>leer ausgelaufen</translation>
    </message>
    <message>
        <source>An empty keg is still under pressure until it is vented.</source>
        <translation>Ein leeres Fass steht unter Druck, bis es entlüftet ist.</translation>
    </message>
    <message>
        <source>Wasted</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>ullage loss spoiled foam</source>
        <translation>schwund verlust verdorben schaum</translation>
    </message>
    <message>
        <source>Gravity read</source>
        <translation>Extrakt gemessen</translation>
    </message>
    <message>
        <source>hydrometer sg plato</source>
        <translation>spindel extrakt plato</translation>
    </message>
    <message>
        <source>If the sample came from one.</source>
        <translation>Wenn die Probe aus einem Fass kam.</translation>
    </message>
    <message>
        <source>Corrected to the temperature the hydrometer is made for.</source>
        <translation>Auf die Temperatur berichtigt, für die die Spindel gemacht ist.</translation>
    </message>
    <message>
        <source>&amp;Stage</source>
        <translation>St&amp;ufe</translation>
    </message>
    <message>
        <source>Hydrometer</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>Best-by changed</source>
        <translation>Haltbarkeit geändert</translation>
    </message>
    <message>
        <source>date expiry</source>
        <translation>datum ablauf</translation>
    </message>
    <message>
        <source>Batch recalled</source>
        <translation>Sud zurückgerufen</translation>
    </message>
    <message>
        <source>recall withdraw</source>
        <translation>rückruf</translation>
    </message>
    <message>
        <source>Line cleaned</source>
        <translation>Leitung gereinigt</translation>
    </message>
    <message>
        <source>clean line caustic acid</source>
        <translation>leitung reinigen lauge säure</translation>
    </message>
    <message>
        <source>&amp;Flush checked with</source>
        <translation>S&amp;pülung geprüft mit</translation>
    </message>
    <message>
        <source>Flush passed</source>
        <translation>Spülung in Ordnung</translation>
    </message>
    <message>
        <source>Coupler cleaned</source>
        <translation>Zapfkopf gereinigt</translation>
    </message>
    <message>
        <source>Foam detector cleaned</source>
        <translation>Schaumstopper gereinigt</translation>
    </message>
    <message>
        <source>&amp;Beer lost</source>
        <translation>&amp;Bierverlust</translation>
    </message>
    <message>
        <source>Caustic and acid burn: gloves and goggles. Never let acid meet a chlorine cleaner. This does not release the line: that takes a check of its own.</source>
        <translation>Lauge und Säure verätzen: Handschuhe und Schutzbrille. Säure nie mit Chlorreiniger zusammenbringen. Die Leitung wird hiermit nicht freigegeben: dazu braucht es eine eigene Prüfung.</translation>
    </message>
    <message>
        <source>Do not serve: lock a line</source>
        <translation>Nicht ausschenken: Leitung sperren</translation>
    </message>
    <message>
        <source>lock cleaning line do not serve</source>
        <translation>sperren reinigen leitung nicht ausschenken</translation>
    </message>
    <message>
        <source>Hang a sign on the tap as well. Never leave a line in soak unattended.</source>
        <translation>Auch ein Schild an den Hahn hängen. Eine Leitung mit Reiniger darin nie unbeaufsichtigt lassen.</translation>
    </message>
    <message>
        <source>Release a line to serve again</source>
        <translation>Leitung wieder freigeben</translation>
    </message>
    <message>
        <source>unlock release check litmus</source>
        <translation>freigeben entsperren prüfen lackmus</translation>
    </message>
    <message>
        <source>&amp;Checked with</source>
        <translation>Geprüft &amp;mit</translation>
    </message>
    <message>
        <source>The check passed: no cleaner is left</source>
        <translation>Die Prüfung ist bestanden: kein Reiniger mehr darin</translation>
    </message>
    <message>
        <source>Checked &amp;by</source>
        <translation>Geprüft &amp;von</translation>
    </message>
    <message>
        <source>Counter&amp;signed by</source>
        <translation>&amp;Gegengezeichnet von</translation>
    </message>
    <message>
        <source>By litmus or pH against tap water, never by finger or taste.</source>
        <translation>Mit Lackmus oder pH gegen Leitungswasser, nie mit Finger oder Zunge.</translation>
    </message>
    <message>
        <source>Timed pour</source>
        <translation>Zapfzeit gemessen</translation>
    </message>
    <message>
        <source>pour seconds flow</source>
        <translation>zapfen sekunden durchfluss</translation>
    </message>
    <message>
        <source>&amp;Glass</source>
        <translation>&amp;Glas</translation>
    </message>
    <message>
        <source>&amp;Took</source>
        <translation>Da&amp;uerte</translation>
    </message>
    <message>
        <source>Temperature read</source>
        <translation>Temperatur abgelesen</translation>
    </message>
    <message>
        <source>thermometer cold box fridge</source>
        <translation>thermometer kühlbox kühlschrank</translation>
    </message>
    <message>
        <source>T&amp;hermometer</source>
        <translation>T&amp;hermometer</translation>
    </message>
    <message>
        <source>&amp;Of</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>Gas alarm checked</source>
        <translation>Gaswarngerät geprüft</translation>
    </message>
    <message>
        <source>co2 alarm sensor</source>
        <translation>co2 alarm fühler</translation>
    </message>
    <message>
        <source>The alarm went off as it should</source>
        <translation>Der Alarm ging los, wie er soll</translation>
    </message>
    <message>
        <source>If a real alarm sounds, stay out and air the place. Never go in to rescue.</source>
        <translation>Bei echtem Alarm draußen bleiben und lüften. Nie zum Retten hineingehen.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>note comment</source>
        <translation>notiz bemerkung</translation>
    </message>
    <message>
        <source>Tap takes</source>
        <translation>Der Hahn kostet</translation>
    </message>
    <message>
        <source>A full one costs</source>
        <translation>Eine volle kostet</translation>
    </message>
    <message>
        <source>In your money, such as 25.50: then what leaks has a price.</source>
        <translation>In eigener Währung, etwa 25,50: dann hat ein Leck seinen Preis.</translation>
    </message>
    <message>
        <source>Tap taken apart and cleaned</source>
        <translation>Hahn zerlegt und gereinigt</translation>
    </message>
    <message>
        <source>In your money, such as 30.00.</source>
        <translation>In Ihrer Währung, etwa 30,00.</translation>
    </message>
    <message>
        <source>Type a part of it: of a style in the list the CO₂ range is known.</source>
        <translation>Einen Teil davon tippen: Bei einem Stil aus der Liste ist der CO₂-Bereich bekannt.</translation>
    </message>
    <message>
        <source>The range it should be served in; that of its style when left open.</source>
        <translation>Der Bereich, in dem es ausgeschenkt werden soll; bleibt er offen, der seines Stils.</translation>
    </message>
    <message>
        <source>&amp;Price a litre</source>
        <translation>&amp;Preis je Liter</translation>
    </message>
    <message>
        <source>In your money, such as 2.40: then what is lost has a price.</source>
        <translation>In Ihrer Währung, etwa 2,40: Dann hat Verlorenes einen Preis.</translation>
    </message>
</context>
<context>
    <name>KegFactsText</name>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>off</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>on, pressure not known</source>
        <translation>an, Druck nicht bekannt</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>told %1</source>
        <translation>ermittelt %1</translation>
    </message>
    <message>
        <source>can’t tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Reicht bis</translation>
    </message>
    <message>
        <source>Should be</source>
        <translation>Sollte sein</translation>
    </message>
    <message>
        <source>%1 to hold its CO₂</source>
        <translation>%1, um sein CO₂ zu halten</translation>
    </message>
    <message>
        <source>Takes up CO₂</source>
        <translation>Nimmt CO₂ auf</translation>
    </message>
    <message>
        <source>Beer at</source>
        <translation>Bier bei</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>In der Kälte</translation>
    </message>
    <message>
        <source>Best by</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Faucet</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>Tap</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>Like this</source>
        <translation>In diesem Zustand</translation>
    </message>
    <message>
        <source>Hold test</source>
        <translation>Druckprobe</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Steht in</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Fasst</translation>
    </message>
    <message>
        <source>%1, %2 to the brim</source>
        <translation>%1, %2 bis zum Rand</translation>
    </message>
    <message>
        <source>Empty weight</source>
        <translation>Leergewicht</translation>
    </message>
    <message>
        <source>Rated for</source>
        <translation>Zugelassen bis</translation>
    </message>
    <message>
        <source>%1: not done</source>
        <translation>%1: nicht getan</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source> (no longer counts)</source>
        <translation> (zählt nicht mehr)</translation>
    </message>
    <message>
        <source>In it since</source>
        <translation>Darin seit</translation>
    </message>
</context>
<context>
    <name>KegHeadText</name>
    <message>
        <source>Cleaner may stand in %1. Flush it, check what runs out and release it before a glass is poured. The agent’s label and your local rules go first.</source>
        <translation>In %1 kann noch Reiniger stehen. Spülen, prüfen, was herausläuft, und freigeben, bevor ein Glas gezapft wird. Das Etikett des Mittels und die örtlichen Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Since %1. </source>
        <translation>Seit %1. </translation>
    </message>
    <message>
        <source>Held back – %1</source>
        <translation>Zurückgehalten – %1</translation>
    </message>
    <message>
        <source>Not to be served or filled until it is cleared.</source>
        <translation>Weder ausschenken noch füllen, bis es freigegeben ist.</translation>
    </message>
    <message>
        <source>An entry doesn’t fit</source>
        <translation>Ein Eintrag passt nicht</translation>
    </message>
    <message>
        <source>Look at the entries</source>
        <translation>Einträge ansehen</translation>
    </message>
    <message>
        <source>Lent to %1</source>
        <translation>Verliehen an %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Sud %1</translation>
    </message>
    <message>
        <source>contains %1</source>
        <translation>enthält %1</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Zurückgehalten</translation>
    </message>
</context>
<context>
    <name>KegListingText</name>
    <message>
        <source>ready to use</source>
        <translation>trinkreif</translation>
    </message>
    <message>
        <source>on tap</source>
        <translation>am Hahn</translation>
    </message>
    <message>
        <source>carbonating</source>
        <translation>nimmt CO₂ auf</translation>
    </message>
    <message>
        <source>need attention</source>
        <translation>brauchen Aufmerksamkeit</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>insgesamt</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Use next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Least left</source>
        <translation>Am wenigsten übrig</translation>
    </message>
    <message>
        <source>Ready first</source>
        <translation>Zuerst reif</translation>
    </message>
</context>
<context>
    <name>KegRowText</name>
    <message>
        <source>failed its hold test</source>
        <translation>Druckprobe nicht bestanden</translation>
    </message>
    <message>
        <source>empty, not clean</source>
        <translation>leer, nicht sauber</translation>
    </message>
    <message>
        <source>empty, clean</source>
        <translation>leer, sauber</translation>
    </message>
    <message>
        <source>empty, %1</source>
        <translation>leer, %1</translation>
    </message>
    <message>
        <source>clean, purged</source>
        <translation>sauber, mit CO₂ gespült</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>lent to %1</source>
        <translation>verliehen an %1</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>can’t tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>can’t tell yet</source>
        <translation>noch nicht zu sagen</translation>
    </message>
    <message>
        <source>below its range</source>
        <translation>unter seinem Bereich</translation>
    </message>
    <message>
        <source>in its range</source>
        <translation>in seinem Bereich</translation>
    </message>
    <message>
        <source>above its range</source>
        <translation>über seinem Bereich</translation>
    </message>
    <message>
        <source>%1 left, %2</source>
        <translation>%1 übrig, %2</translation>
    </message>
    <message>
        <source>Can’t tell yet: %1</source>
        <translation>Noch nicht zu sagen: %1</translation>
    </message>
    <message>
        <source>no beer in it</source>
        <translation>kein Bier darin</translation>
    </message>
    <message>
        <source>likely %1 from %2</source>
        <translation>wahrscheinlich %1 ab %2</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>nothing known of its past</source>
        <translation>nichts über seine Vergangenheit bekannt</translation>
    </message>
    <message>
        <source>cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>Do not serve</source>
        <translation>Nicht ausschenken</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Zurückgehalten</translation>
    </message>
</context>
<context>
    <name>KegTasks</name>
    <message>
        <source>Log the pour…</source>
        <translation>Zapfzeit eintragen …</translation>
    </message>
    <message>
        <source>Log the rocking…</source>
        <translation>Schütteln eintragen …</translation>
    </message>
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
        <translation>Druckprobe ablesen …</translation>
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
    <message>
        <source>Weigh the bottle…</source>
        <translation>Flasche wiegen …</translation>
    </message>
    <message>
        <source>Change the bottle…</source>
        <translation>Flasche wechseln …</translation>
    </message>
    <message>
        <source>Tap it…</source>
        <translation>Anstechen …</translation>
    </message>
    <message>
        <source>Put on tap…</source>
        <translation>Anstechen …</translation>
    </message>
    <message>
        <source>Sanitize…</source>
        <translation>Desinfizieren …</translation>
    </message>
    <message>
        <source>Sanitise…</source>
        <translation>Desinfizieren …</translation>
    </message>
    <message>
        <source>Open the form…</source>
        <translation>Formular öffnen …</translation>
    </message>
    <message>
        <source>Take the hops out…</source>
        <translation>Hopfen herausnehmen …</translation>
    </message>
    <message>
        <source>Give it a CO₂ range…</source>
        <translation>CO₂-Bereich angeben …</translation>
    </message>
</context>
<context>
    <name>KegsToFillPart</name>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 bis %2 Tage</translation>
    </message>
    <message>
        <source>%1 days or more</source>
        <translation>%1 Tage oder mehr</translation>
    </message>
</context>
<context>
    <name>LeaveText</name>
    <message>
        <source>Leave without logging?</source>
        <translation>Schließen, ohne einzutragen?</translation>
    </message>
    <message>
        <source>What you typed would be lost.</source>
        <translation>Was eingetippt ist, ginge verloren.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Ohne Eintrag schließen</translation>
    </message>
    <message>
        <source>Go on typing</source>
        <translation>Weiter eintippen</translation>
    </message>
</context>
<context>
    <name>LineText</name>
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
        <translation>Nichts daran</translation>
    </message>
    <message>
        <source>No gas</source>
        <translation>Kein Gas</translation>
    </message>
    <message>
        <source>should be %1</source>
        <translation>sollte %1 sein</translation>
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
        <source>no rule set</source>
        <translation>keine Regel gesetzt</translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation>war fällig %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>A glass of %1</source>
        <translation>Ein Glas von %1</translation>
    </message>
    <message>
        <source>Pressure should be</source>
        <translation>Der Druck sollte sein</translation>
    </message>
    <message>
        <source>The beer settles at</source>
        <translation>Das Bier geht auf</translation>
    </message>
    <message>
        <source>%1; %2 fills it in %3</source>
        <translation>%1; %2 ist in %3 voll</translation>
    </message>
    <message>
        <source>Hose for a balanced pour</source>
        <translation>Schlauch für ausgeglichenes Zapfen</translation>
    </message>
    <message>
        <source>Bore for a balanced pour</source>
        <translation>Innendurchmesser für ausgeglichenes Zapfen</translation>
    </message>
    <message>
        <source>Pressure for a balanced pour</source>
        <translation>Druck für ausgeglichenes Zapfen</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>The line holds</source>
        <translation>Die Leitung fasst</translation>
    </message>
    <message>
        <source>Lifting the beer takes</source>
        <translation>Das Bier zu heben kostet</translation>
    </message>
    <message>
        <source>Handbook for this hose</source>
        <translation>Handbuchwert für diesen Schlauch</translation>
    </message>
    <message>
        <source>%1; friction explains %2</source>
        <translation>%1; die Reibung erklärt %2</translation>
    </message>
    <message>
        <source>How it is known</source>
        <translation>Woher man es weiß</translation>
    </message>
    <message>
        <source>timed pours that count: %1</source>
        <translation>gemessene Zapfzeiten, die zählen: %1</translation>
    </message>
    <message>
        <source>hose as registered, between handbook and friction</source>
        <translation>Schlauch wie eingetragen, zwischen Handbuch und Reibung</translation>
    </message>
    <message>
        <source>Above equilibrium, pouring</source>
        <translation>Über dem Gleichgewicht, beim Zapfen</translation>
    </message>
    <message>
        <source>%1 s in the line, %2 times at the end</source>
        <translation>%1 s in der Leitung, am Ende das %2-Fache</translation>
    </message>
    <message>
        <source>Pressure set</source>
        <translation>Eingestellter Druck</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Reinigung</translation>
    </message>
</context>
<context>
    <name>LogPaperText</name>
    <message>
        <source>Line cleaning log</source>
        <translation>Leitungsreinigungsbuch</translation>
    </message>
    <message>
        <source>Temperature log</source>
        <translation>Temperaturbuch</translation>
    </message>
    <message>
        <source>Gas log</source>
        <translation>Gasbuch</translation>
    </message>
    <message>
        <source>Wastage book</source>
        <translation>Verlustbuch</translation>
    </message>
    <message>
        <source>Round sheet</source>
        <translation>Rundgangblatt</translation>
    </message>
    <message>
        <source>Custody list</source>
        <translation>Verbleibsliste</translation>
    </message>
    <message>
        <source>Keg list</source>
        <translation>Fassliste</translation>
    </message>
    <message>
        <source>Recall list</source>
        <translation>Rückrufliste</translation>
    </message>
    <message>
        <source>Due list</source>
        <translation>Liste des Fälligen</translation>
    </message>
    <message>
        <source>Whole log</source>
        <translation>Gesamtes Buch</translation>
    </message>
    <message>
        <source>Line list</source>
        <translation>Leitungsliste</translation>
    </message>
    <message>
        <source>Rule list</source>
        <translation>Regelliste</translation>
    </message>
    <message>
        <source>Batch list</source>
        <translation>Sudliste</translation>
    </message>
    <message>
        <source>Gas bottles</source>
        <translation>Gasflaschen</translation>
    </message>
    <message>
        <source>Regulators</source>
        <translation>Druckminderer</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Räume</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schläuche</translation>
    </message>
    <message>
        <source>Beers</source>
        <translation>Biere</translation>
    </message>
</context>
<context>
    <name>LoggerText</name>
    <message>
        <source>The file is empty</source>
        <translation>Die Datei ist leer</translation>
    </message>
    <message>
        <source>The file is too large</source>
        <translation>Die Datei ist zu groß</translation>
    </message>
    <message>
        <source>Up to 32 MB can be read. Let the logger write a shorter time.</source>
        <translation>Bis zu 32 MB können gelesen werden. Den Logger eine kürzere Zeit ausgeben lassen.</translation>
    </message>
    <message>
        <source>This is not a text file</source>
        <translation>Das ist keine Textdatei</translation>
    </message>
    <message>
        <source>Let the logger’s program export CSV or text.</source>
        <translation>Das Programm des Loggers CSV oder Text ausgeben lassen.</translation>
    </message>
    <message>
        <source>The file has too many lines</source>
        <translation>Die Datei hat zu viele Zeilen</translation>
    </message>
    <message>
        <source>Up to a million can be read. Let the logger write a shorter time.</source>
        <translation>Bis zu eine Million können gelesen werden. Den Logger eine kürzere Zeit ausgeben lassen.</translation>
    </message>
    <message>
        <source>No lines with a date and a temperature were found</source>
        <translation>Keine Zeilen mit Datum und Temperatur gefunden</translation>
    </message>
    <message>
        <source>A line looks like this: 2026-11-02 10:00;4,5</source>
        <translation>Eine Zeile sieht so aus: 2026-11-02 10:00;4,5</translation>
    </message>
    <message>
        <source>No column with dates was found</source>
        <translation>Keine Spalte mit Daten gefunden</translation>
    </message>
    <message>
        <source>A date looks like 2026-11-02, 02.11.2026 or 11/02/2026.</source>
        <translation>Ein Datum sieht so aus: 2026-11-02, 02.11.2026 oder 11/02/2026.</translation>
    </message>
    <message>
        <source>No column with temperatures was found</source>
        <translation>Keine Spalte mit Temperaturen gefunden</translation>
    </message>
    <message>
        <source>Choose the decimal mark or the column by hand.</source>
        <translation>Das Dezimalzeichen oder die Spalte von Hand wählen.</translation>
    </message>
    <message>
        <source>That column is not in the file</source>
        <translation>Diese Spalte gibt es in der Datei nicht</translation>
    </message>
    <message>
        <source>too few columns</source>
        <translation>zu wenige Spalten</translation>
    </message>
    <message>
        <source>no date and hour</source>
        <translation>kein Datum mit Uhrzeit</translation>
    </message>
    <message>
        <source>no temperature</source>
        <translation>keine Temperatur</translation>
    </message>
    <message>
        <source>a temperature that can’t be</source>
        <translation>eine Temperatur, die nicht sein kann</translation>
    </message>
    <message>
        <source>too long</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>Line %1: %2: %3</source>
        <translation>Zeile %1: %2: %3</translation>
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
    <message>
        <source>&amp;Paper</source>
        <translation>Pa&amp;pier</translation>
    </message>
</context>
<context>
    <name>PapersText</name>
    <message>
        <source>Export due work and ready dates</source>
        <translation>Fällige Arbeiten und Reifedaten exportieren</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>Import a keg list</source>
        <translation>Fassliste importieren</translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt)</source>
        <translation>CSV (*.csv *.txt)</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) exported</source>
        <translation>
            <numerusform>%n Termin exportiert</numerusform>
            <numerusform>%n Termine exportiert</numerusform>
        </translation>
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
    <message>
        <source>Import temperatures</source>
        <translation>Temperaturen importieren</translation>
    </message>
    <message>
        <source>logger csv file probe</source>
        <translation>logger csv datei fühler</translation>
    </message>
    <message>
        <source>New beer…</source>
        <translation>Neues Bier …</translation>
    </message>
    <message>
        <source>New batch…</source>
        <translation>Neuer Sud …</translation>
    </message>
    <message>
        <source>New place…</source>
        <translation>Neuer Raum …</translation>
    </message>
    <message>
        <source>New line…</source>
        <translation>Neue Leitung …</translation>
    </message>
    <message>
        <source>New gas bottle…</source>
        <translation>Neue Gasflasche …</translation>
    </message>
    <message>
        <source>New regulator…</source>
        <translation>Neuer Druckminderer …</translation>
    </message>
    <message>
        <source>New instrument…</source>
        <translation>Neues Messgerät …</translation>
    </message>
    <message>
        <source>New keg…</source>
        <translation>Neues Fass …</translation>
    </message>
    <message>
        <source>Everything registered</source>
        <translation>Ganzer Bestand</translation>
    </message>
    <message>
        <source>change edit retire instrument regulator list</source>
        <translation>ändern bearbeiten ausmustern Messgerät Druckminderer Liste</translation>
    </message>
</context>
<context>
    <name>ReadinessText</name>
    <message>
        <source>Gas set to %1</source>
        <translation>Gas auf %1 eingestellt</translation>
    </message>
    <message>
        <source>Beer at %1</source>
        <translation>Bier bei %1</translation>
    </message>
    <message>
        <source>%1 in it</source>
        <translation>%1 darin</translation>
    </message>
    <message>
        <source>Most of the ± comes from: %1</source>
        <translation>Das meiste der ± kommt von: %1</translation>
    </message>
    <message>
        <source>Sources and limits: %1, “%2”.</source>
        <translation>Quellen und Grenzen: %1, „%2“.</translation>
    </message>
</context>
<context>
    <name>ScanNoteText</name>
    <message>
        <source>%1 was scanned.</source>
        <translation>%1 wurde gescannt.</translation>
    </message>
    <message>
        <source>It is not opened while this window is open.</source>
        <translation>Es wird nicht geöffnet, solange dieses Fenster offen ist.</translation>
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
    <name>ullage::ui::AdviceList</name>
    <message>
        <source>Because</source>
        <translation>Weil</translation>
    </message>
</context>
<context>
    <name>ullage::ui::AnswerChart</name>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1: from %2 to %3.</source>
        <translation>%1: von %2 bis %3.</translation>
    </message>
    <message>
        <source>Line “%1”: %2 at its end.</source>
        <translation>Linie „%1“: %2 an ihrem Ende.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::AsOfDialog</name>
    <message>
        <source>The cellar as of a past time</source>
        <translation>Der Keller zu einer früheren Zeit</translation>
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
    <name>ullage::ui::BeersPage</name>
    <message>
        <source>Beers</source>
        <translation>Biere</translation>
    </message>
    <message>
        <source>Add a beer…</source>
        <translation>Bier eintragen …</translation>
    </message>
    <message>
        <source>Add a batch…</source>
        <translation>Sud eintragen …</translation>
    </message>
    <message>
        <source>No batches yet</source>
        <translation>Noch keine Sude</translation>
    </message>
    <message>
        <source>Register a beer and a batch of it; kegs are filled from or received with a batch, and can be traced by it.</source>
        <translation>Ein Bier und einen Sud davon eintragen; Fässer werden aus einem Sud gefüllt oder mit ihm geliefert und lassen sich über ihn verfolgen.</translation>
    </message>
    <message>
        <source>Tap next</source>
        <translation>Als Nächstes anstechen</translation>
    </message>
    <message>
        <source>Soonest best by first, then what has been ready longest.</source>
        <translation>Zuerst, was am frühesten abläuft, dann, was am längsten reif ist.</translation>
    </message>
    <message>
        <source>In kegs now</source>
        <translation>Jetzt in Fässern</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Kühlt ab</translation>
    </message>
    <message>
        <source>How fresh it is</source>
        <translation>Wie frisch es ist</translation>
    </message>
    <message>
        <source>A tapped keg keeps about 45 days cold, 21 cool, 7 at cellar temperature: practice, not a law. Taste it.</source>
        <translation>Ein angestochenes Fass hält sich kalt etwa 45 Tage, kühl 21, bei Kellertemperatur 7: Praxis, kein Gesetz. Probieren geht vor.</translation>
    </message>
    <message>
        <source>Hops in</source>
        <translation>Hopfen darin</translation>
    </message>
    <message>
        <source>Lost in the last 30 days</source>
        <translation>Verlust der letzten 30 Tage</translation>
    </message>
    <message>
        <source>Lent out, rented, the supplier’s</source>
        <translation>Verliehen, gemietet, vom Lieferanten</translation>
    </message>
    <message>
        <source>Batches in no keg</source>
        <translation>Sude in keinem Fass</translation>
    </message>
    <message>
        <source>%1 batches, %2 in kegs</source>
        <translation>%1 Sude, %2 in Fässern</translation>
    </message>
    <message>
        <source>Print, save as CSV…</source>
        <translation>Drucken, als CSV speichern …</translation>
    </message>
</context>
<context>
    <name>ullage::ui::BottleChange</name>
    <message>
        <source>Gas bottle changed</source>
        <translation>Gasflasche gewechselt</translation>
    </message>
    <message>
        <source>New washer or sealing ring</source>
        <translation>Neuer Dichtring</translation>
    </message>
    <message>
        <source>Upright and held against falling</source>
        <translation>Aufrecht und gegen Umfallen gesichert</translation>
    </message>
    <message>
        <source>Shut the old bottle’s valve and let the regulator down first. Stand beside the outlet, not before it. CO₂ and mixed-gas regulators are not interchangeable.</source>
        <translation>Zuerst das Ventil der alten Flasche schließen und den Druckminderer entspannen. Neben dem Abgang stehen, nicht davor. Druckminderer für CO₂ und Mischgas sind nicht austauschbar.</translation>
    </message>
    <message>
        <source>&amp;Regulator</source>
        <translation>&amp;Druckminderer</translation>
    </message>
    <message>
        <source>&amp;New bottle</source>
        <translation>&amp;Neue Flasche</translation>
    </message>
    <message>
        <source>CO₂ on the &amp;tag</source>
        <translation>CO₂ laut &amp;Schild</translation>
    </message>
    <message>
        <source>Read the tag, not the paint. The share of CO₂ alone: “70/30” means opposite things in different countries.</source>
        <translation>Das Schild lesen, nicht die Farbe. Nur der Anteil CO₂: „70/30“ heißt in verschiedenen Ländern Gegensätzliches.</translation>
    </message>
    <message>
        <source>Washer</source>
        <translation>Dichtring</translation>
    </message>
    <message>
        <source>Secured</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>No leak</source>
        <translation>Kein Leck</translation>
    </message>
    <message>
        <source>It leaks</source>
        <translation>Es leckt</translation>
    </message>
    <message>
        <source>Not tested</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Leak test with soapy water</source>
        <translation>Leckprüfung mit Seifenwasser</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Leak test and weight</source>
        <translation>Leckprüfung und Gewicht</translation>
    </message>
    <message>
        <source>&amp;Soapy water on the joints</source>
        <translation>Seifenwasser an den &amp;Verbindungen</translation>
    </message>
    <message>
        <source>With the valve open and the pressure up. Bubbles are a leak.</source>
        <translation>Bei offenem Ventil und unter Druck. Blasen sind ein Leck.</translation>
    </message>
    <message>
        <source>W&amp;here</source>
        <translation>W&amp;o</translation>
    </message>
    <message>
        <source>Which joint leaks.</source>
        <translation>Welche Verbindung leckt.</translation>
    </message>
    <message>
        <source>Weight of the new &amp;bottle</source>
        <translation>&amp;Gewicht der neuen Flasche</translation>
    </message>
    <message>
        <source>Without the regulator, before it goes on.</source>
        <translation>Ohne Druckminderer, bevor sie angeschlossen wird.</translation>
    </message>
    <message>
        <source>S&amp;cale</source>
        <translation>W&amp;aage</translation>
    </message>
    <message>
        <source>The tag says %1 % CO₂, the register %2 %</source>
        <translation>Auf dem Schild steht %1 % CO₂, im Verzeichnis %2 %</translation>
    </message>
    <message>
        <source>Trust the tag. If it is not the gas you want, take the bottle off again; otherwise every keg on it changes its carbonation.</source>
        <translation>Das Schild gilt. Ist es nicht das gewünschte Gas, die Flasche wieder abnehmen; sonst ändert jedes Fass daran seine Karbonisierung.</translation>
    </message>
    <message>
        <source>It leaks: shut the bottle</source>
        <translation>Es leckt: Flasche schließen</translation>
    </message>
    <message>
        <source>Air the room, tighten or renew the washer, and test again.</source>
        <translation>Raum lüften, Dichtring nachziehen oder erneuern, nochmals prüfen.</translation>
    </message>
    <message>
        <source>Logged the bottle change and its leak test.</source>
        <translation>Flaschenwechsel und Leckprüfung eingetragen.</translation>
    </message>
    <message>
        <source>Logged the bottle change. Test its joints with soapy water.</source>
        <translation>Flaschenwechsel eingetragen. Die Verbindungen mit Seifenwasser prüfen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::BottleTasks</name>
    <message>
        <source>Weigh…</source>
        <translation>Wiegen …</translation>
    </message>
    <message>
        <source>Read its gauge…</source>
        <translation>Manometer ablesen …</translation>
    </message>
    <message>
        <source>Edit the bottle…</source>
        <translation>Flasche bearbeiten …</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
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
        <translation>Von %1 am %2 bis %3 am %4.</translation>
    </message>
    <message>
        <source>It should be served at %1.</source>
        <translation>Ausgeschenkt werden sollte es bei %1.</translation>
    </message>
    <message>
        <source>Read %1: %2.</source>
        <translation>Abgelesen %1: %2.</translation>
    </message>
    <message>
        <source>Planned %1: %2.</source>
        <translation>Geplant %1: %2.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
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
    <name>ullage::ui::ChangeDialog</name>
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
        <source>&amp;Log the change</source>
        <translation>Wechsel &amp;eintragen</translation>
    </message>
    <message>
        <source>Not logged yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::CleaningListPreview</name>
    <message>
        <source>Cleaning list</source>
        <translation>Reinigungsliste</translation>
    </message>
</context>
<context>
    <name>ullage::ui::CleaningPage</name>
    <message>
        <source>C&amp;lose the list</source>
        <translation>Liste &amp;schließen</translation>
    </message>
    <message>
        <source>&amp;Rules…</source>
        <translation>&amp;Regeln …</translation>
    </message>
    <message>
        <source>Clea&amp;ner and time…</source>
        <translation>Reiniger und &amp;Zeit …</translation>
    </message>
    <message>
        <source>&amp;Print the list…</source>
        <translation>Liste &amp;drucken …</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>Nothing comes round yet</source>
        <translation>Noch kehrt nichts wieder</translation>
    </message>
    <message>
        <source>Say how often lines, kegs and alarms are due, and by whose rule. Ready sets are there to start from.</source>
        <translation>Angeben, wie oft Leitungen, Fässer und Warngeräte dran sind und nach wessen Regel. Fertige Sätze für den Anfang gibt es.</translation>
    </message>
    <message>
        <source>Rules…</source>
        <translation>Regeln …</translation>
    </message>
    <message>
        <source>%1 overdue, %2 soon</source>
        <translation>%1 überfällig, %2 bald</translation>
    </message>
    <message>
        <source>Nothing falls due within two weeks</source>
        <translation>In zwei Wochen wird nichts fällig</translation>
    </message>
    <message>
        <source>Cleaning, begun %1</source>
        <translation>Reinigung, begonnen %1</translation>
    </message>
    <message>
        <source>Not on the list: %1</source>
        <translation>Nicht auf der Liste: %1</translation>
    </message>
    <message>
        <source>Not ticked yet: %1</source>
        <translation>Noch nicht abgehakt: %1</translation>
    </message>
    <message>
        <source>%1 The order keeps people safe.</source>
        <translation>%1 Die Reihenfolge schützt die Leute.</translation>
    </message>
    <message>
        <source>Tick it all the same</source>
        <translation>Trotzdem abhaken</translation>
    </message>
    <message>
        <source>Don’t tick it</source>
        <translation>Nicht abhaken</translation>
    </message>
    <message>
        <source>Logged: %1, %2.</source>
        <translation>Eingetragen: %1, %2.</translation>
    </message>
    <message>
        <source>unticked</source>
        <translation>Haken entfernt</translation>
    </message>
    <message>
        <source>Taken back. The log keeps it, struck.</source>
        <translation>Zurückgenommen. Im Logbuch bleibt es, gestrichen.</translation>
    </message>
    <message>
        <source>%1 has beer in it</source>
        <translation>In %1 ist Bier</translation>
    </message>
    <message>
        <source>It was forecast to have run empty by now. Has it? Then log that first.</source>
        <translation>Nach der Vorhersage müsste es jetzt leer sein. Ist es das? Dann das zuerst eintragen.</translation>
    </message>
    <message>
        <source>The next cleaning day: choose one; the first tick begins its list</source>
        <translation>Der nächste Reinigungstag: einen wählen; der erste Haken beginnt seine Liste</translation>
    </message>
    <message>
        <source>%1: the contact time is up.</source>
        <translation>%1: Die Einwirkzeit ist um.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::DateEdit</name>
    <message>
        <source>such as 24 Nov</source>
        <translation>etwa 24 Nov</translation>
    </message>
    <message>
        <source>Fill this in.</source>
        <translation>Bitte ausfüllen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::DueList</name>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bald</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>Lo&amp;g it…</source>
        <translation>&amp;Eintragen …</translation>
    </message>
    <message>
        <source>&amp;Move to a day…</source>
        <translation>Auf einen Tag &amp;verschieben …</translation>
    </message>
    <message>
        <source>Choose a row to see why it is due.</source>
        <translation>Eine Zeile wählen, um zu sehen, warum es fällig ist.</translation>
    </message>
    <message>
        <source>The next fourteen days</source>
        <translation>Die nächsten vierzehn Tage</translation>
    </message>
    <message>
        <source>Work is dragged here by mouse; by key, Enter on its row moves it.</source>
        <translation>Mit der Maus wird Arbeit hierher gezogen; mit der Tastatur verschiebt sie die Eingabetaste auf ihrer Zeile.</translation>
    </message>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n fällig</numerusform>
            <numerusform>%n fällig</numerusform>
        </translation>
    </message>
    <message>
        <source>Drag it to a day to move it</source>
        <translation>Zum Verschieben auf einen Tag ziehen</translation>
    </message>
    <message>
        <source>To %1:</source>
        <translation>Auf %1:</translation>
    </message>
    <message>
        <source>nothing becomes overdue.</source>
        <translation>nichts wird überfällig.</translation>
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
        <translation>Raum</translation>
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
    <message>
        <source>There is no %1 “%2”. “%3” in the list registers it.</source>
        <translation>%1 „%2“ gibt es nicht. „%3“ in der Liste trägt es ein.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::EntryFields</name>
    <message>
        <source>Further figures</source>
        <translation>Weitere Angaben</translation>
    </message>
</context>
<context>
    <name>ullage::ui::EntryForm</name>
    <message>
        <source>Vented down to it</source>
        <translation>Bis dahin entlüftet</translation>
    </message>
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
        <source>Change: %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>And of kegs</source>
        <translation>Und bei Fässern</translation>
    </message>
    <message>
        <source>The same of these, too: all in one act.</source>
        <translation>Dasselbe auch bei diesen: alles in einem Schritt.</translation>
    </message>
    <message numerus="yes">
        <source>Logged, and of %n more keg(s): %1</source>
        <translation>
            <numerusform>Eingetragen, auch bei einem weiteren Fass: %1</numerusform>
            <numerusform>Eingetragen, auch bei %n weiteren Fässern: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ullage::ui::Figure</name>
    <message>
        <source>Opens the reasons for this number</source>
        <translation>Öffnet die Gründe für diese Zahl</translation>
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
    <name>ullage::ui::GasChart</name>
    <message>
        <source>Gas weighed and expected over time</source>
        <translation>Gas, gewogen und erwartet, über die Zeit</translation>
    </message>
    <message>
        <source>No curve: weigh the bottle twice.</source>
        <translation>Keine Kurve: die Flasche zweimal wiegen.</translation>
    </message>
    <message>
        <source>Weighed %1: %2.</source>
        <translation>Gewogen %1: %2.</translation>
    </message>
    <message>
        <source>By the work of the kegs %1 should be left %2.</source>
        <translation>Nach dem Verbrauch der Fässer sollten %1 noch %2 da sein.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::GasDrawing</name>
    <message>
        <source>What feeds what</source>
        <translation>Was woran hängt</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 feeds %2, which has no keg on it.</source>
        <translation>%1 speist %2, daran hängt kein Fass.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>%1 feeds %2, which feeds %3.</source>
        <translation>%1 speist %2, und das speist %3.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 feeds nothing.</source>
        <translation>%1 speist nichts.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::GasPage</name>
    <message>
        <source>&amp;Weigh a bottle…</source>
        <translation>Flasche &amp;wiegen …</translation>
    </message>
    <message>
        <source>Change a &amp;bottle…</source>
        <translation>Flasche &amp;tauschen …</translation>
    </message>
    <message>
        <source>&amp;Add a bottle…</source>
        <translation>Flasche &amp;eintragen …</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>No gas bottles yet</source>
        <translation>Noch keine Gasflaschen</translation>
    </message>
    <message>
        <source>Register each bottle with its empty weight, and the regulators on it. Weigh it once a week: then what leaks shows.</source>
        <translation>Jede Flasche mit ihrem Leergewicht eintragen, und die Druckminderer daran. Einmal die Woche wiegen: dann zeigt sich, was leckt.</translation>
    </message>
    <message>
        <source>Add a bottle…</source>
        <translation>Flasche eintragen …</translation>
    </message>
    <message numerus="yes">
        <source>%n in use</source>
        <translation>
            <numerusform>%n in Gebrauch</numerusform>
            <numerusform>%n in Gebrauch</numerusform>
        </translation>
    </message>
    <message>
        <source>, %1 losing gas</source>
        <translation>, %1 mit Gasverlust</translation>
    </message>
    <message>
        <source>On no bottle: %1. Change a bottle… says which one it stands on.</source>
        <translation>Auf keiner Flasche: %1. Flasche tauschen … sagt, auf welcher er steht.</translation>
    </message>
    <message>
        <source>Kegs with the gas on from a regulator on no bottle: %1.</source>
        <translation>Fässer mit offenem Gas aus einem Druckminderer ohne Flasche: %1.</translation>
    </message>
    <message>
        <source>Kegs with the gas on and no regulator named: %1. With several supplies nobody can tell whose gas that is: name it when you set the gas.</source>
        <translation>Fässer mit offenem Gas ohne genannten Druckminderer: %1. Bei mehreren Versorgungen ist nicht zu sagen, wessen Gas das ist: beim Einstellen nennen.</translation>
    </message>
    <message>
        <source>Counts for no bottle</source>
        <translation>Zählt bei keiner Flasche</translation>
    </message>
</context>
<context>
    <name>ullage::ui::GasSupplyCard</name>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>CO₂ %1 % / N₂ %2 %</source>
        <translation>CO₂ %1 % / N₂ %2 %</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>full of liquid at</source>
        <translation>ganz voll Flüssigkeit bei</translation>
    </message>
    <message>
        <source>retest due</source>
        <translation>Prüfung fällig</translation>
    </message>
    <message>
        <source>%1: overdue</source>
        <translation>%1: überfällig</translation>
    </message>
    <message>
        <source>%1: soon</source>
        <translation>%1: bald</translation>
    </message>
    <message>
        <source>no regulator named</source>
        <translation>kein Druckminderer genannt</translation>
    </message>
    <message>
        <source>more than 99.9 % sure</source>
        <translation>mehr als 99,9 % sicher</translation>
    </message>
    <message>
        <source>%1 % sure</source>
        <translation>%1 % sicher</translation>
    </message>
    <message>
        <source>as likely as not none at all</source>
        <translation>ebenso wahrscheinlich gar keiner</translation>
    </message>
    <message>
        <source>%1 a day, %2, but less than this cellar wants to be warned of.</source>
        <translation>%1 am Tag, %2, aber weniger, als dieser Keller zu melden verlangt.</translation>
    </message>
    <message>
        <source>%1 a day: not enough to call it a loss. A steady loss of %2 a day would be called one 9 times in 10.</source>
        <translation>%1 am Tag: zu wenig, um es einen Verlust zu nennen. Ein gleichmäßiger Verlust von %2 am Tag würde 9 von 10 Malen so genannt.</translation>
    </message>
    <message>
        <source>%1 a day, %2</source>
        <translation>%1 am Tag, %2</translation>
    </message>
    <message>
        <source>, steady since %1</source>
        <translation>, gleichmäßig seit %1</translation>
    </message>
    <message>
        <source>, most between %1 and %2</source>
        <translation>, am meisten zwischen %1 und %2</translation>
    </message>
    <message>
        <source>. It began, ended or changed in between</source>
        <translation>. Begonnen, geendet oder sich geändert hat es dazwischen</translation>
    </message>
    <message>
        <source>%1, %2 days or more</source>
        <translation>%1, %2 Tage oder mehr</translation>
    </message>
    <message>
        <source>%1, %2 to %3 days</source>
        <translation>%1, %2 bis %3 Tage</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>: enough</source>
        <translation>: genug</translation>
    </message>
    <message>
        <source>: not enough</source>
        <translation>: nicht genug</translation>
    </message>
    <message>
        <source>: enough with %1 % certainty</source>
        <translation>: genug mit %1 % Sicherheit</translation>
    </message>
    <message>
        <source>%1 ± %2 every 30 days at the bottle’s price</source>
        <translation>%1 ± %2 alle 30 Tage zum Preis der Flasche</translation>
    </message>
    <message>
        <source>Where to look first</source>
        <translation>Wo zuerst zu suchen ist</translation>
    </message>
    <message>
        <source>Weigh…</source>
        <translation>Wiegen …</translation>
    </message>
    <message>
        <source>Gas left, %1</source>
        <translation>Gas übrig, %1</translation>
    </message>
    <message>
        <source>Circles: weighed. Dashes and band: what should be left by the work of the kegs.</source>
        <translation>Kreise: gewogen. Gestrichelt mit Band: was nach dem Verbrauch der Fässer noch da sein sollte.</translation>
    </message>
    <message>
        <source>This is %1. %2</source>
        <translation>Das sind %1. %2</translation>
    </message>
    <message>
        <source>In it now</source>
        <translation>Jetzt darin</translation>
    </message>
    <message>
        <source>it should be empty</source>
        <translation>sie müsste leer sein</translation>
    </message>
    <message>
        <source>its empty weight is not registered</source>
        <translation>ihr Leergewicht ist nicht eingetragen</translation>
    </message>
    <message>
        <source>Lasts until</source>
        <translation>Reicht bis</translation>
    </message>
    <message>
        <source>Used by the kegs</source>
        <translation>Verbrauch der Fässer</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 am Tag</translation>
    </message>
    <message>
        <source>Unexplained</source>
        <translation>Ungeklärt</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kostet</translation>
    </message>
    <message>
        <source>For the kegs on it</source>
        <translation>Für die Fässer daran</translation>
    </message>
    <message>
        <source>Its gauge</source>
        <translation>Ihr Manometer</translation>
    </message>
    <message>
        <source>Full of liquid at</source>
        <translation>Ganz voll Flüssigkeit bei</translation>
    </message>
    <message>
        <source>%1. Keep it cooler.</source>
        <translation>%1. Kühler halten.</translation>
    </message>
    <message>
        <source>Retest due</source>
        <translation>Prüfung fällig</translation>
    </message>
    <message>
        <source>Leak test…</source>
        <translation>Lecksuche …</translation>
    </message>
    <message>
        <source>Gas off…</source>
        <translation>Gas ab …</translation>
    </message>
    <message>
        <source>If soapy water finds nothing: one branch at a time, %1 each</source>
        <translation>Wenn Seifenwasser nichts findet: ein Abgang nach dem anderen, je %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::HoldChart</name>
    <message>
        <source>Hold test</source>
        <translation>Druckprobe</translation>
    </message>
    <message>
        <source>No chart: a hold test takes two readings.</source>
        <translation>Kein Bild: eine Druckprobe braucht zwei Ablesungen.</translation>
    </message>
    <message>
        <source>%1 readings, from %2 on %3 to %4 on %5.</source>
        <translation>%1 Ablesungen, von %2 am %3 bis %4 am %5.</translation>
    </message>
    <message>
        <source>Without a leak it would read %1.</source>
        <translation>Ohne Leck stünde es bei %1.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::HosePieces</name>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Runs through</source>
        <translation>Läuft durch</translation>
    </message>
    <message>
        <source>Rises</source>
        <translation>Steigt</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Stück hinzufügen</translation>
    </message>
    <message>
        <source>Pieces of hose, from the keg to the tap</source>
        <translation>Schlauchstücke, vom Fass zum Hahn</translation>
    </message>
    <message>
        <source>With the keg</source>
        <translation>Beim Fass</translation>
    </message>
    <message>
        <source>%1 of piece %2</source>
        <translation>%1 von Stück %2</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Steighöhe</translation>
    </message>
    <message>
        <source>Move piece %1 towards the keg</source>
        <translation>Stück %1 zum Fass hin rücken</translation>
    </message>
    <message>
        <source>Move piece %1 towards the tap</source>
        <translation>Stück %1 zum Hahn hin rücken</translation>
    </message>
    <message>
        <source>Take out piece %1</source>
        <translation>Stück %1 herausnehmen</translation>
    </message>
    <message>
        <source>None: the hose is one piece, with the length, bore, rise and material above. Add pieces where it changes, or leaves the cold.</source>
        <translation>Keine: der Schlauch ist ein Stück, mit Länge, Innendurchmesser, Steighöhe und Material von oben. Stücke hinzufügen, wo er sich ändert oder die Kälte verlässt.</translation>
    </message>
    <message>
        <source>These count instead of length, bore, rise and material above. Alt+Up and Alt+Down move a piece.</source>
        <translation>Diese zählen statt Länge, Innendurchmesser, Steighöhe und Material von oben. Alt+Auf und Alt+Ab rücken ein Stück.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::ImportKegs</name>
    <message>
        <source>Import a keg list</source>
        <translation>Fassliste importieren</translation>
    </message>
    <message>
        <source>Can’t read %1: %2.</source>
        <translation>%1 lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>not in the file</source>
        <translation>nicht in der Datei</translation>
    </message>
    <message>
        <source>Kegs as they would be registered</source>
        <translation>Die Fässer, wie sie eingetragen würden</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Was im Weg steht</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) will be registered</source>
        <translation>
            <numerusform>%n Fass wird eingetragen</numerusform>
            <numerusform>%n Fässer werden eingetragen</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing will be imported until this is put right in the file, or another column is chosen:</source>
        <translation>Nichts wird importiert, bevor dies in der Datei berichtigt oder eine andere Spalte gewählt ist:</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Full volume</source>
        <translation>Randvoll</translation>
    </message>
    <message>
        <source>~%1, assumed</source>
        <translation>~%1, angenommen</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Rated</source>
        <translation>Zugelassen</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>Deposit</source>
        <translation>Pfand</translation>
    </message>
    <message>
        <source>Coupler</source>
        <translation>Zapfkopf</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) imported</source>
        <translation>
            <numerusform>%n Fass importiert</numerusform>
            <numerusform>%n Fässer importiert</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegChange</name>
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
        <source>Logged: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>Do not serve %1</source>
        <translation>%1 nicht ausschenken</translation>
    </message>
    <message>
        <source>%1. On a line it locks the line.</source>
        <translation>%1. An einer Leitung sperrt es die Leitung.</translation>
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
    <message>
        <source>Work it out</source>
        <translation>Ausrechnen</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>CO₂ if nothing is changed</source>
        <translation>CO₂, wenn nichts geändert wird</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanelCard</name>
    <message>
        <source>Log this: %1, %2</source>
        <translation>Dies eintragen: %1, %2</translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegPanelCards</name>
    <message>
        <source>Too much CO₂</source>
        <translation>Zu viel CO₂</translation>
    </message>
    <message>
        <source>Carbonating with sugar</source>
        <translation>Nachgärung mit Zucker</translation>
    </message>
    <message>
        <source>Purging</source>
        <translation>Luft austreiben</translation>
    </message>
    <message>
        <source>O&amp;xygen wanted</source>
        <translation>Gewünschter &amp;Sauerstoff</translation>
    </message>
    <message>
        <source>Oxygen wanted in the purged keg</source>
        <translation>Gewünschter Sauerstoff im gespülten Fass</translation>
    </message>
    <message>
        <source>%1 ppm</source>
        <translation>%1 ppm</translation>
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
    <name>ullage::ui::KegPanelHold</name>
    <message>
        <source>Hold test</source>
        <translation>Druckprobe</translation>
    </message>
    <message>
        <source>Dashed: a tight keg, by what its beer takes up and gives off at that temperature, and how far that is known.</source>
        <translation>Gestrichelt: ein dichtes Fass, nach dem, was sein Bier bei dieser Temperatur aufnimmt und abgibt, und wie genau das bekannt ist.</translation>
    </message>
    <message>
        <source>Dashed: a tight keg, and below it what water left inside may take up. Lines: the leak that fits, through a scratch (full) or a hole (dotted).</source>
        <translation>Gestrichelt: ein dichtes Fass und darunter, was ein Wasserrest aufnehmen kann. Linien: das passende Leck, durch einen Kratzer (durchgezogen) oder ein Loch (gepunktet).</translation>
    </message>
    <message>
        <source>Read it again…</source>
        <translation>Nochmals ablesen …</translation>
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
    <name>ullage::ui::KegRowReasons</name>
    <message>
        <source>Reasons for a number</source>
        <translation>Gründe für eine Zahl</translation>
    </message>
    <message>
        <source>Reasons: %1, %2</source>
        <translation>Gründe: %1, %2</translation>
    </message>
    <message>
        <source>Nothing is worked out for this keg yet</source>
        <translation>Für dieses Fass ist noch nichts ausgerechnet</translation>
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
        <source>Find a keg, beer, state or place</source>
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
    <message>
        <source>Take stoc&amp;k…</source>
        <translation>&amp;Bestand aufnehmen …</translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) registered, contents not known yet. Say what is in them now.</source>
        <translation>
            <numerusform>Von einem Fass ist noch nicht bekannt, was darin ist. Jetzt angeben.</numerusform>
            <numerusform>Von %n Fässern ist noch nicht bekannt, was darin ist. Jetzt angeben.</numerusform>
        </translation>
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
    <name>ullage::ui::KegsToFillPart</name>
    <message>
        <source>%1 and others</source>
        <translation>%1 und weitere</translation>
    </message>
    <message>
        <source>Standing empty (%1): %2.</source>
        <translation>Leer stehen (%1): %2.</translation>
    </message>
    <message>
        <source>No batch is logged that waits for them.</source>
        <translation>Kein Sud ist eingetragen, der auf sie wartet.</translation>
    </message>
    <message>
        <source>Not in a keg yet: %1.</source>
        <translation>Noch in keinem Fass: %1.</translation>
    </message>
    <message>
        <source>%1 to %2 days</source>
        <translation>%1 bis %2 Tage</translation>
    </message>
    <message>
        <source>%1 days or more</source>
        <translation>%1 Tage oder mehr</translation>
    </message>
    <message>
        <source>can’t tell: how much is in it is not known</source>
        <translation>nicht zu sagen: wie viel darin ist, ist nicht bekannt</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>not enough</source>
        <translation>nicht genug</translation>
    </message>
    <message>
        <source>enough with %1 % certainty</source>
        <translation>genug mit %1 % Sicherheit</translation>
    </message>
    <message>
        <source>Kegs still to fill</source>
        <translation>Noch zu füllende Fässer</translation>
    </message>
    <message>
        <source>Each of</source>
        <translation>Jedes mit</translation>
    </message>
    <message>
        <source>They take</source>
        <translation>Sie brauchen</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>With the kegs on it</source>
        <translation>Mit den Fässern daran</translation>
    </message>
    <message>
        <source>about %1: %2</source>
        <translation>etwa %1: %2</translation>
    </message>
    <message>
        <source>At the use so far that is</source>
        <translation>Beim bisherigen Verbrauch sind das</translation>
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
    <name>ullage::ui::KitDialog</name>
    <message>
        <source>Cleaner and time</source>
        <translation>Reiniger und Zeit</translation>
    </message>
    <message>
        <source>For lines and kegs</source>
        <translation>Für Leitungen und Fässer</translation>
    </message>
    <message>
        <source>It is c&amp;hlorinated: acid then waits for another day</source>
        <translation>Er ist c&amp;hlorhaltig: Säure wartet dann auf einen anderen Tag</translation>
    </message>
    <message>
        <source>Acid</source>
        <translation>Säure</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>&amp;Time at hand</source>
        <translation>Verfügbare &amp;Zeit</translation>
    </message>
    <message>
        <source>Hands-on work and waiting together.</source>
        <translation>Handarbeit und Warten zusammen.</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Strength in use</source>
        <translation>Gebrauchsstärke</translation>
    </message>
    <message>
        <source>Active by weight. The label comes first.</source>
        <translation>Wirkstoff nach Gewicht. Das Etikett geht vor.</translation>
    </message>
    <message>
        <source>Strength on the label</source>
        <translation>Stärke laut Etikett</translation>
    </message>
    <message>
        <source>Relative density</source>
        <translation>Relative Dichte</translation>
    </message>
    <message>
        <source>How many times as heavy as water. Leave open for a powder.</source>
        <translation>Wievielmal so schwer wie Wasser. Bei Pulver offen lassen.</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>Einwirkzeit</translation>
    </message>
    <message>
        <source>A liquid cleaner is 0.5 to 2.5 times as heavy as water.</source>
        <translation>Ein flüssiger Reiniger ist 0,5- bis 2,5-mal so schwer wie Wasser.</translation>
    </message>
    <message>
        <source>At most 20 %, and no more than the label’s own strength.</source>
        <translation>Höchstens 20 %, und nicht mehr als die Stärke laut Etikett.</translation>
    </message>
    <message>
        <source>&amp;Amounts and minutes</source>
        <translation>Me&amp;ngen und Minuten</translation>
    </message>
    <message>
        <source>Amounts</source>
        <translation>Mengen</translation>
    </message>
    <message>
        <source>Cleaning vessel</source>
        <translation>Reinigungsbehälter</translation>
    </message>
    <message>
        <source>What it and its hose hold besides the lines.</source>
        <translation>Was er und sein Schlauch außer den Leitungen fassen.</translation>
    </message>
    <message>
        <source>Solution to wash a keg</source>
        <translation>Lösung zum Waschen eines Fasses</translation>
    </message>
    <message>
        <source>Rinses</source>
        <translation>Spülungen</translation>
    </message>
    <message>
        <source>At least so many times what a line holds; the check decides.</source>
        <translation>Mindestens so oft, was eine Leitung fasst; die Prüfung entscheidet.</translation>
    </message>
    <message>
        <source>Purge cycles of a keg</source>
        <translation>Spülgänge eines Fasses mit CO₂</translation>
    </message>
    <message>
        <source>Purge to</source>
        <translation>Spülen bis</translation>
    </message>
    <message>
        <source>No more than the keg is rated for.</source>
        <translation>Nicht mehr, als das Fass aushält.</translation>
    </message>
    <message>
        <source>Minutes of work at each</source>
        <translation>Arbeitsminuten an jedem</translation>
    </message>
    <message>
        <source>Lock a line</source>
        <translation>Eine Leitung sperren</translation>
    </message>
    <message>
        <source>Let the pressure off</source>
        <translation>Druck ablassen</translation>
    </message>
    <message>
        <source>Flush the beer out</source>
        <translation>Bier ausspülen</translation>
    </message>
    <message>
        <source>Fill a line with cleaner</source>
        <translation>Eine Leitung mit Reiniger füllen</translation>
    </message>
    <message>
        <source>Rinse a line or keg</source>
        <translation>Leitung oder Fass spülen</translation>
    </message>
    <message>
        <source>Check and release a line</source>
        <translation>Eine Leitung prüfen und freigeben</translation>
    </message>
    <message>
        <source>Take a tap apart</source>
        <translation>Einen Hahn zerlegen</translation>
    </message>
    <message>
        <source>Brush a coupler</source>
        <translation>Einen Zapfkopf bürsten</translation>
    </message>
    <message>
        <source>Renew a keg’s seals</source>
        <translation>Dichtungen eines Fasses erneuern</translation>
    </message>
    <message>
        <source>Wash a keg</source>
        <translation>Ein Fass waschen</translation>
    </message>
    <message>
        <source>Close and purge a keg</source>
        <translation>Ein Fass schließen und spülen</translation>
    </message>
    <message>
        <source>Clean floor and cooler</source>
        <translation>Boden und Kühler reinigen</translation>
    </message>
    <message>
        <source>Try a gas alarm</source>
        <translation>Ein Warngerät prüfen</translation>
    </message>
    <message>
        <source>Test for leaks</source>
        <translation>Auf Lecks prüfen</translation>
    </message>
    <message>
        <source>Set a bottle aside</source>
        <translation>Eine Flasche beiseitestellen</translation>
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
    <name>ullage::ui::LineColumn</name>
    <message>
        <source>Lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Add a line…</source>
        <translation>Leitung eintragen …</translation>
    </message>
    <message>
        <source>No lines yet</source>
        <translation>Noch keine Leitungen</translation>
    </message>
    <message>
        <source>Register each tap with its hose: then cleaning days, locks and keg changes have a home.</source>
        <translation>Jeden Hahn mit seinem Schlauch eintragen: dann haben Reinigungstage, Sperren und Fasswechsel ihren Platz.</translation>
    </message>
    <message>
        <source>Tap</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>Beer</source>
        <translation>Bier</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>A glass in</source>
        <translation>Ein Glas in</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>%1 in use, %2 locked</source>
        <translation>%1 in Gebrauch, %2 gesperrt</translation>
    </message>
    <message>
        <source>%1 in use</source>
        <translation>%1 in Gebrauch</translation>
    </message>
    <message>
        <source>Faucet</source>
        <translation>Hahn</translation>
    </message>
    <message>
        <source>Print, save as CSV…</source>
        <translation>Drucken, als CSV sichern …</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LinePanel</name>
    <message>
        <source>The chosen line</source>
        <translation>Die gewählte Leitung</translation>
    </message>
    <message>
        <source>Choose a line to see how it pours.</source>
        <translation>Eine Leitung wählen, um zu sehen, wie sie zapft.</translation>
    </message>
    <message>
        <source>Pressure along the line</source>
        <translation>Druck entlang der Leitung</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>Nothing is written until you apply it.</source>
        <translation>Nichts wird geschrieben, bis es übernommen ist.</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 bore</source>
        <translation>Innendurchmesser %1</translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation>steigt %1</translation>
    </message>
    <message>
        <source>DO NOT SERVE</source>
        <translation>NICHT AUSSCHENKEN</translation>
    </message>
    <message>
        <source>%1 in the line since %2, %3. Only a passed check releases it.</source>
        <translation>%1 in der Leitung seit %2, %3. Nur eine bestandene Prüfung gibt sie frei.</translation>
    </message>
    <message>
        <source>%1: %2. Clear it or take it off.</source>
        <translation>%1: %2. Freigeben oder abnehmen.</translation>
    </message>
    <message>
        <source>Release by a check…</source>
        <translation>Nach Prüfung freigeben …</translation>
    </message>
    <message>
        <source>Log the cleaning…</source>
        <translation>Reinigung eintragen …</translation>
    </message>
    <message>
        <source>Clear the keg…</source>
        <translation>Fass freigeben …</translation>
    </message>
    <message>
        <source>Keg change…</source>
        <translation>Fasswechsel …</translation>
    </message>
    <message>
        <source>Lock to clean…</source>
        <translation>Zum Reinigen sperren …</translation>
    </message>
    <message>
        <source>Timed pour…</source>
        <translation>Zapfzeit messen …</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>A glass would take %1.</source>
        <translation>Ein Glas würde %1 dauern.</translation>
    </message>
    <message>
        <source>
Turning a regulator down does not vent the keg.</source>
        <translation>
Den Druckminderer herunterzudrehen entlüftet das Fass nicht.</translation>
    </message>
    <message>
        <source>Log this as done now?</source>
        <translation>Dies als jetzt getan eintragen?</translation>
    </message>
    <message>
        <source>Log it</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Not logged yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>Nothing to log.</source>
        <translation>Nichts einzutragen.</translation>
    </message>
    <message>
        <source>The temperature can’t be logged: %1 stands in no place. Say where it stands first.</source>
        <translation>Die Temperatur lässt sich nicht eintragen: %1 steht an keinem Ort. Erst sagen, wo es steht.</translation>
    </message>
    <message>
        <source>The CO₂ wanted can’t be logged: nobody said which beer is in %1.</source>
        <translation>Das gewünschte CO₂ lässt sich nicht eintragen: Niemand hat gesagt, welches Bier in %1 ist.</translation>
    </message>
    <message>
        <source>%1 feeds %2, too: their pressure changes with it and is logged as well.</source>
        <translation>%1 versorgt auch %2: Deren Druck ändert sich mit und wird ebenfalls eingetragen.</translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation>Eingetragen: %1</translation>
    </message>
    <message>
        <source>Print a tag for the tap…</source>
        <translation>Anhänger für den Hahn drucken …</translation>
    </message>
    <message>
        <source>Change the line or its hose…</source>
        <translation>Leitung oder Schlauch ändern …</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>%1: %2. Mend it and log a leak test that finds none, or take it off.</source>
        <translation>%1: %2. Abdichten und eine Lecksuche ohne Befund eintragen, oder abnehmen.</translation>
    </message>
    <message>
        <source>Leak test…</source>
        <translation>Lecksuche …</translation>
    </message>
</context>
<context>
    <name>ullage::ui::LineWhatIf</name>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Druck</translation>
    </message>
    <message>
        <source>&amp;Hose length</source>
        <translation>&amp;Schlauchlänge</translation>
    </message>
    <message>
        <source>&amp;Bore</source>
        <translation>&amp;Innendurchmesser</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>&amp;CO₂ wanted</source>
        <translation>Gewünschtes &amp;CO₂</translation>
    </message>
    <message>
        <source>&amp;Apply…</source>
        <translation>Ü&amp;bernehmen …</translation>
    </message>
    <message>
        <source>Back to &amp;now</source>
        <translation>Zurück zu &amp;jetzt</translation>
    </message>
</context>
<context>
    <name>ullage::ui::ListedRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
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
        <source>. Corrected %1 by entry %2</source>
        <translation>. Berichtigt am %1 durch Eintrag %2</translation>
    </message>
    <message>
        <source>. Struck %1</source>
        <translation>. Gestrichen am %1</translation>
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
    <name>ullage::ui::LogPreview</name>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>&amp;To and with</source>
        <translation>&amp;Bis einschließlich</translation>
    </message>
    <message>
        <source>%1 (recalled)</source>
        <translation>%1 (zurückgerufen)</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>&amp;Sud</translation>
    </message>
    <message>
        <source>&amp;List</source>
        <translation>&amp;Liste</translation>
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
        <source>Corrected</source>
        <translation>Berichtigt</translation>
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
    <name>ullage::ui::LoggerImport</name>
    <message>
        <source>Import temperatures</source>
        <translation>Temperaturen importieren</translation>
    </message>
    <message>
        <source>Choose a &amp;file…</source>
        <translation>&amp;Datei wählen …</translation>
    </message>
    <message>
        <source>No file chosen</source>
        <translation>Keine Datei gewählt</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>What the probe stands in</source>
        <translation>Worin der Fühler steckt</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Raum</translation>
    </message>
    <message>
        <source>&amp;Thermometer</source>
        <translation>&amp;Thermometer</translation>
    </message>
    <message>
        <source>The logger as a registered instrument.</source>
        <translation>Der Logger als eingetragenes Messgerät.</translation>
    </message>
    <message>
        <source>Probe in</source>
        <translation>Fühler in</translation>
    </message>
    <message>
        <source>Air is not beer: its readings count a degree wider.</source>
        <translation>Luft ist nicht Bier: ihre Werte zählen ein Grad ungenauer.</translation>
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
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Senkrechter Strich</translation>
    </message>
    <message>
        <source>Point: 4.5</source>
        <translation>Punkt: 4.5</translation>
    </message>
    <message>
        <source>Comma: 4,5</source>
        <translation>Komma: 4,5</translation>
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
        <source>Year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>Day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>Month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>How the file is written</source>
        <translation>Wie die Datei geschrieben ist</translation>
    </message>
    <message>
        <source>&amp;Columns divided by</source>
        <translation>&amp;Spalten getrennt durch</translation>
    </message>
    <message>
        <source>&amp;Decimal mark</source>
        <translation>De&amp;zimalzeichen</translation>
    </message>
    <message>
        <source>Ti&amp;me in</source>
        <translation>Dat&amp;um in</translation>
    </message>
    <message>
        <source>T&amp;emperature in</source>
        <translation>T&amp;emperatur in</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>Ei&amp;nheit</translation>
    </message>
    <message>
        <source>D&amp;ates are</source>
        <translation>Reihen&amp;folge im Datum</translation>
    </message>
    <message>
        <source>Readings to be imported</source>
        <translation>Zu importierende Werte</translation>
    </message>
    <message>
        <source>Lines that can’t be read</source>
        <translation>Zeilen, die sich nicht lesen lassen</translation>
    </message>
    <message>
        <source>A logger’s file</source>
        <translation>Datei eines Loggers</translation>
    </message>
    <message>
        <source>Text files (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>Textdateien (*.csv *.txt *.tsv *.log);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 can’t be opened</source>
        <translation>%1 lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>The file does not state its unit: it is guessed from the values.</source>
        <translation>Die Datei nennt ihre Einheit nicht: sie ist aus den Werten erraten.</translation>
    </message>
    <message>
        <source>Day and month can’t be told apart in this file: check the dates below.</source>
        <translation>Tag und Monat sind in dieser Datei nicht zu unterscheiden: die Daten unten prüfen.</translation>
    </message>
    <message>
        <source>Time here</source>
        <translation>Zeit hier</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>%1 lines can’t be read and are left out</source>
        <translation>%1 Zeilen lassen sich nicht lesen und bleiben weg</translation>
    </message>
    <message>
        <source>and more</source>
        <translation>und mehr</translation>
    </message>
    <message>
        <source>Nothing in this file can be imported.</source>
        <translation>Nichts in dieser Datei lässt sich importieren.</translation>
    </message>
    <message>
        <source>%1 readings from %2 to %3. %4 of them tell all the rest within %5 and will be logged.</source>
        <translation>%1 Werte von %2 bis %3. %4 davon sagen alles Übrige auf %5 genau und werden eingetragen.</translation>
    </message>
    <message>
        <source> %1 lie in the future and are left out: is the logger’s clock right?</source>
        <translation> %1 liegen in der Zukunft und bleiben weg: geht die Uhr des Loggers richtig?</translation>
    </message>
    <message>
        <source> %1 fall in the hour that the clocks skip.</source>
        <translation> %1 fallen in die Stunde, die die Uhren überspringen.</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Nichts wurde importiert.</translation>
    </message>
    <message>
        <source>Imported %1 temperatures from %2.</source>
        <translation>%1 Temperaturen aus %2 importiert.</translation>
    </message>
    <message>
        <source>All of this is in the log already.</source>
        <translation>All das steht schon im Buch.</translation>
    </message>
    <message>
        <source> Left out as logged already: %1.</source>
        <translation> Ausgelassen, weil schon eingetragen: %1.</translation>
    </message>
    <message>
        <source>&amp;Hour in</source>
        <translation>U&amp;hrzeit in</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>with the date</source>
        <translation>beim Datum</translation>
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
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Reinigung</translation>
    </message>
    <message>
        <source>Beers</source>
        <translation>Biere</translation>
    </message>
    <message>
        <source>Slate</source>
        <translation>Rechentafel</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>No keg %1 is registered in this cellar.</source>
        <translation>Ein Fass %1 ist in diesem Keller nicht eingetragen.</translation>
    </message>
    <message>
        <source>Nothing is due to be cleaned.</source>
        <translation>Nichts ist zu reinigen fällig.</translation>
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
        <source>for example Back room</source>
        <translation>zum Beispiel Hinterzimmer</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Raum</translation>
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
        <source>for example 120 m or 400 ft</source>
        <translation>zum Beispiel 120 m oder 400 ft</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Air pressure can be worked out between %1 and %2.</source>
        <translation>Der Luftdruck lässt sich zwischen %1 und %2 berechnen.</translation>
    </message>
    <message>
        <source>There is no time zone “%1”. Choose one from the list: “Europe/London”, say.</source>
        <translation>Es gibt keine Zeitzone „%1“. Wählbar ist zum Beispiel „Europe/Berlin“.</translation>
    </message>
    <message>
        <source>Fill this in. A guess within 100 m will do.</source>
        <translation>Bitte ausfüllen. Auf 100 m genau geschätzt reicht.</translation>
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
    <message>
        <source>Show the page</source>
        <translation>Seite zeigen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::NumberPad</name>
    <message>
        <source>Number pad</source>
        <translation>Ziffernfeld</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>take back</source>
        <translation>zurücknehmen</translation>
    </message>
    <message>
        <source>change of sign</source>
        <translation>Vorzeichen wechseln</translation>
    </message>
</context>
<context>
    <name>ullage::ui::PaperPreview</name>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Al&amp;s PDF …</translation>
    </message>
    <message>
        <source>Save as CS&amp;V…</source>
        <translation>Als CS&amp;V …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Pa&amp;per</source>
        <translation>Pa&amp;pier</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>Es gibt nichts zu drucken.</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Als CSV speichern</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>An %1 geschickt.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::PlaceSafetyCard</name>
    <message>
        <source>over a working day</source>
        <translation>über einen Arbeitstag</translation>
    </message>
    <message>
        <source>for a short time</source>
        <translation>für kurze Zeit</translation>
    </message>
    <message>
        <source>immediate danger to life</source>
        <translation>unmittelbar lebensgefährlich</translation>
    </message>
    <message>
        <source>all gas mixed, at most</source>
        <translation>alles Gas vermischt, höchstens</translation>
    </message>
    <message>
        <source>symptoms</source>
        <translation>Beschwerden</translation>
    </message>
    <message>
        <source>at least this much oxygen</source>
        <translation>mindestens so viel Sauerstoff</translation>
    </message>
    <message>
        <source>Published figures beside it</source>
        <translation>Veröffentlichte Werte daneben</translation>
    </message>
    <message>
        <source>Alarm checked…</source>
        <translation>Warngerät geprüft …</translation>
    </message>
    <message>
        <source>Edit the place…</source>
        <translation>Raum bearbeiten …</translation>
    </message>
    <message>
        <source>Import temperatures…</source>
        <translation>Temperaturen importieren …</translation>
    </message>
    <message>
        <source> (content not known)</source>
        <translation> (Inhalt nicht bekannt)</translation>
    </message>
    <message>
        <source> (%1 when full)</source>
        <translation> (%1, wenn voll)</translation>
    </message>
    <message>
        <source> (%1 in it)</source>
        <translation> (%1 darin)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>sensor at %1</source>
        <translation>Fühler auf %1</translation>
    </message>
    <message>
        <source>, but carbon dioxide gathers low: is that right for this gas?</source>
        <translation>, aber Kohlendioxid sammelt sich unten: stimmt das für dieses Gas?</translation>
    </message>
    <message>
        <source>no sensor height stated. For carbon dioxide it stands low, where a sleeper’s head would be; maker and code decide. </source>
        <translation>keine Höhe des Fühlers angegeben. Für Kohlendioxid sitzt er tief, wo der Kopf eines Liegenden wäre; Hersteller und Vorschrift entscheiden. </translation>
    </message>
    <message>
        <source>Checked %1.</source>
        <translation>Geprüft %1.</translation>
    </message>
    <message>
        <source>It failed its check %1.</source>
        <translation>Prüfung nicht bestanden %1.</translation>
    </message>
    <message>
        <source>No check is logged.</source>
        <translation>Keine Prüfung eingetragen.</translation>
    </message>
    <message>
        <source>Bottles without a place</source>
        <translation>Flaschen ohne Raum</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The gas in here could fill the whole room</source>
        <translation>Das Gas hier könnte den ganzen Raum füllen</translation>
    </message>
    <message>
        <source>If all of it escapes: %1 carbon dioxide, if evenly mixed</source>
        <translation>Wenn alles entweicht: %1 Kohlendioxid, falls gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>Low spots far higher. %1</source>
        <translation>Unten viel mehr. %1</translation>
    </message>
    <message>
        <source>Oxygen would fall from 20.9 % to %1; nitrogen gives no warning at all.</source>
        <translation>Der Sauerstoff fiele von 20,9 % auf %1; Stickstoff warnt durch nichts.</translation>
    </message>
    <message>
        <source>Oxygen would fall from 20.9 % to %1.</source>
        <translation>Der Sauerstoff fiele von 20,9 % auf %1.</translation>
    </message>
    <message>
        <source>Can’t tell what would be in the air</source>
        <translation>Was in der Luft wäre, ist nicht zu sagen</translation>
    </message>
    <message>
        <source>Say where these bottles stand.</source>
        <translation>Angeben, wo diese Flaschen stehen.</translation>
    </message>
    <message>
        <source>State the room’s net volume, without kegs and stock, and the bottles’ content.</source>
        <translation>Das Luftvolumen des Raums ohne Fässer und Vorräte angeben, und den Inhalt der Flaschen.</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Net volume</source>
        <translation>Luftvolumen</translation>
    </message>
    <message>
        <source>For 3 % at most</source>
        <translation>Für höchstens 3 %</translation>
    </message>
    <message>
        <source>%1 would be wanted (a German insurer’s rule)</source>
        <translation>%1 wären nötig (Regel eines deutschen Unfallversicherers)</translation>
    </message>
    <message>
        <source>If air can leave</source>
        <translation>Wenn Luft entweichen kann</translation>
    </message>
    <message>
        <source>%1 carbon dioxide, when mixed air leaves as the gas comes</source>
        <translation>%1 Kohlendioxid, wenn vermischte Luft weicht, während das Gas kommt</translation>
    </message>
    <message>
        <source>Air changes</source>
        <translation>Luftwechsel</translation>
    </message>
    <message>
        <source>%1 an hour</source>
        <translation>%1 in der Stunde</translation>
    </message>
    <message>
        <source>The loss logged now</source>
        <translation>Der jetzt eingetragene Verlust</translation>
    </message>
    <message>
        <source>What may be lost now</source>
        <translation>Was jetzt verloren gehen mag</translation>
    </message>
    <message>
        <source>settles at %1, if evenly mixed</source>
        <translation>stellt sich auf %1 ein, falls gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>Below ground</source>
        <translation>Unter der Erde</translation>
    </message>
    <message>
        <source>yes: some codes ask for detection at any amount</source>
        <translation>ja: manche Vorschrift verlangt ein Warngerät bei jeder Menge</translation>
    </message>
    <message>
        <source>Alarm</source>
        <translation>Warngerät</translation>
    </message>
    <message>
        <source> (seen in print)</source>
        <translation> (in gedruckter Quelle gesehen)</translation>
    </message>
    <message>
        <source> (from memory)</source>
        <translation> (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>No country is stated in This cellar…: these are of every country.</source>
        <translation>In Dieser Keller … ist kein Land genannt: diese sind aus allen Ländern.</translation>
    </message>
    <message>
        <source>The list has no figure for oxygen of %1. Of other countries:</source>
        <translation>Für Sauerstoff hat die Liste keinen Wert von %1. Aus anderen Ländern:</translation>
    </message>
    <message>
        <source>The list has no figure for carbon dioxide of %1. Of other countries:</source>
        <translation>Für Kohlendioxid hat die Liste keinen Wert von %1. Aus anderen Ländern:</translation>
    </message>
    <message>
        <source>The list has no figure of %1 at all. Of other countries:</source>
        <translation>Die Liste hat überhaupt keinen Wert von %1. Aus anderen Ländern:</translation>
    </message>
    <message>
        <source>. It would fall below this</source>
        <translation>. Es fiele darunter</translation>
    </message>
    <message>
        <source>. It would rise above this</source>
        <translation>. Es stiege darüber</translation>
    </message>
    <message>
        <source>If all escapes</source>
        <translation>Wenn alles entweicht</translation>
    </message>
    <message>
        <source>%1 carbon dioxide, if evenly mixed</source>
        <translation>%1 Kohlendioxid, falls gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>Oxygen then</source>
        <translation>Sauerstoff dann</translation>
    </message>
</context>
<context>
    <name>ullage::ui::ProfileChart</name>
    <message>
        <source>Pressure along the line</source>
        <translation>Druck entlang der Leitung</translation>
    </message>
    <message>
        <source>%1 from the keg</source>
        <translation>%1 vom Fass</translation>
    </message>
    <message>
        <source>pouring</source>
        <translation>beim Zapfen</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>beer needs</source>
        <translation>das Bier braucht</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie es ist</translation>
    </message>
    <message>
        <source>No profile: there is nothing to compute it from.</source>
        <translation>Kein Verlauf: es fehlt, woraus er zu rechnen wäre.</translation>
    </message>
    <message>
        <source>At rest %1 at the keg and %2 at the tap.</source>
        <translation>In Ruhe %1 am Fass und %2 am Hahn.</translation>
    </message>
    <message>
        <source>How warm it is there was never told: %1.</source>
        <translation>Wie warm es dort ist, hat nie jemand gesagt: %1.</translation>
    </message>
    <message>
        <source>Gas breaks out %1 from the keg: %2 there, %3 needed at %4.</source>
        <translation>%1 hinter dem Fass entbindet sich CO₂: dort %2, nötig wären %3 bei %4.</translation>
    </message>
    <message>
        <source>Pouring, the pressure falls below what the beer needs %1 from the keg, as in every line before its tap.</source>
        <translation>Beim Zapfen fällt der Druck %1 vom Fass unter das, was das Bier braucht, wie in jeder Leitung vor ihrem Hahn.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::PutOffDialog</name>
    <message>
        <source>Move to another day</source>
        <translation>Auf einen anderen Tag verschieben</translation>
    </message>
    <message>
        <source>A day e&amp;arlier</source>
        <translation>Einen Tag &amp;früher</translation>
    </message>
    <message>
        <source>A day &amp;later</source>
        <translation>Einen Tag s&amp;päter</translation>
    </message>
    <message>
        <source>A &amp;week later</source>
        <translation>Eine &amp;Woche später</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Auf</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>Wa&amp;rum</translation>
    </message>
    <message>
        <source>&amp;Move it</source>
        <translation>&amp;Verschieben</translation>
    </message>
    <message>
        <source>Nothing becomes overdue.</source>
        <translation>Nichts wird überfällig.</translation>
    </message>
    <message>
        <source>Moved to %1.</source>
        <translation>Auf %1 verschoben.</translation>
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
    <name>ullage::ui::ReasonsPopup</name>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Reasons for %1</source>
        <translation>Gründe für %1</translation>
    </message>
    <message>
        <source>Worked out from</source>
        <translation>Errechnet aus</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>What would narrow it</source>
        <translation>Was es genauer machte</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>%1 (%2). Written out in %3, “%4”.</source>
        <translation>%1 (%2). Ausgeführt in %3, „%4“.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::ui::RecallDialog</name>
    <message>
        <source>Recall a batch</source>
        <translation>Sud zurückrufen</translation>
    </message>
    <message>
        <source>Recall %1</source>
        <translation>%1 zurückrufen</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>Where it is and was</source>
        <translation>Wo er ist und war</translation>
    </message>
    <message>
        <source>In no keg that is logged.</source>
        <translation>In keinem eingetragenen Fass.</translation>
    </message>
    <message>
        <source>&amp;Recall and hold them all</source>
        <translation>Zu&amp;rückrufen und alle zurückhalten</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>Jetzt &amp;nicht</translation>
    </message>
    <message>
        <source>Not recalled.</source>
        <translation>Nicht zurückgerufen.</translation>
    </message>
    <message>
        <source>Recalled. 1 keg is held back.</source>
        <translation>Zurückgerufen. 1 Fass wird zurückgehalten.</translation>
    </message>
    <message>
        <source>Recalled. %1 kegs are held back.</source>
        <translation>Zurückgerufen. %1 Fässer werden zurückgehalten.</translation>
    </message>
    <message>
        <source>Every keg that has it is held back at once. Take it off the line as well, and tell those who have it: what the law asks of you comes first.</source>
        <translation>Jedes Fass damit wird sofort zurückgehalten. Es auch von der Leitung nehmen und allen Bescheid sagen, die es haben: was das Recht verlangt, geht vor.</translation>
    </message>
    <message>
        <source>&amp;Print the list…</source>
        <translation>Liste &amp;drucken …</translation>
    </message>
    <message>
        <source>Print the list, take it to the kegs, and sign for each one secured.</source>
        <translation>Die Liste drucken, zu den Fässern mitnehmen und für jedes gesicherte unterschreiben.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
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
    <name>ullage::ui::RegisterList</name>
    <message>
        <source>Everything registered</source>
        <translation>Ganzer Bestand</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Find: a name, a kind, “thermometer”</source>
        <translation>Suchen: ein Name, eine Art, „Thermometer“</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>As it stands</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>A change counts from when it is logged as happening; what was before stays in the log. A mistake is better corrected in the log.</source>
        <translation>Eine Änderung gilt ab dem Zeitpunkt, zu dem sie eingetragen wird; was vorher war, bleibt im Logbuch. Ein Fehler wird besser im Logbuch berichtigt.</translation>
    </message>
    <message>
        <source>C&amp;hange…</source>
        <translation>Ä&amp;ndern …</translation>
    </message>
    <message>
        <source>Take out of &amp;use</source>
        <translation>A&amp;ußer Gebrauch nehmen</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Put back in &amp;use</source>
        <translation>Wieder in Gebra&amp;uch nehmen</translation>
    </message>
    <message>
        <source>%1 is in use again.</source>
        <translation>%1 ist wieder in Gebrauch.</translation>
    </message>
    <message>
        <source>Nothing is registered yet.</source>
        <translation>Noch ist nichts eingetragen.</translation>
    </message>
    <message>
        <source>%1 is out of use.</source>
        <translation>%1 ist außer Gebrauch.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::RoundDialog</name>
    <message>
        <source>Round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Back
Page Up</source>
        <translation>Zurück
Bild auf</translation>
    </message>
    <message>
        <source>Skip
Page Down</source>
        <translation>Überspringen
Bild ab</translation>
    </message>
    <message>
        <source>Log and go on
Enter</source>
        <translation>Eintragen und weiter
Eingabe</translation>
    </message>
    <message>
        <source>Close, go on later
Esc</source>
        <translation>Später weiter
Esc</translation>
    </message>
    <message>
        <source> · skipped before</source>
        <translation> · vorhin übersprungen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Nothing to walk to</source>
        <translation>Nichts abzugehen</translation>
    </message>
    <message>
        <source>That was the round</source>
        <translation>Das war der Rundgang</translation>
    </message>
    <message>
        <source>%1 logged, %2 skipped</source>
        <translation>%1 eingetragen, %2 übersprungen</translation>
    </message>
    <message>
        <source>Register places and kegs first.</source>
        <translation>Zuerst Räume und Fässer eintragen.</translation>
    </message>
    <message>
        <source>Nothing was skipped.</source>
        <translation>Nichts wurde übersprungen.</translation>
    </message>
    <message>
        <source>Go back to what was skipped, or close it.</source>
        <translation>Zu dem Übersprungenen zurück oder schließen.</translation>
    </message>
    <message>
        <source>To what was skipped
Enter</source>
        <translation>Zum Übersprungenen
Eingabe</translation>
    </message>
    <message>
        <source>Not logged yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>pour nothing from it</source>
        <translation>nichts daraus zapfen</translation>
    </message>
    <message>
        <source>Place not known</source>
        <translation>Raum nicht bekannt</translation>
    </message>
    <message>
        <source>Place out of use: %1</source>
        <translation>Raum außer Gebrauch: %1</translation>
    </message>
    <message>
        <source> · logged already: type to correct it</source>
        <translation> · schon eingetragen: neu tippen berichtigt</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Take back the last
Ctrl+Z</source>
        <translation>Zurücknehmen
Strg+Z</translation>
    </message>
    <message>
        <source>Not taken back.</source>
        <translation>Nicht zurückgenommen.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>%1 was scanned.</source>
        <translation>%1 wurde gescannt.</translation>
    </message>
    <message>
        <source>Log what is typed here first, or clear it.</source>
        <translation>Erst eintragen, was hier getippt ist, oder es löschen.</translation>
    </message>
    <message>
        <source>It has no station on this round.</source>
        <translation>Es hat keine Station auf diesem Rundgang.</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>nichts angeschlossen</translation>
    </message>
    <message>
        <source>DO NOT SERVE: %1</source>
        <translation>NICHT AUSSCHENKEN: %1</translation>
    </message>
    <message>
        <source>cleaned %1</source>
        <translation>gereinigt %1</translation>
    </message>
    <message>
        <source>not cleaned yet</source>
        <translation>noch nicht gereinigt</translation>
    </message>
    <message>
        <source>cleaning was due %1</source>
        <translation>Reinigung war fällig %1</translation>
    </message>
    <message>
        <source>next cleaning %1</source>
        <translation>nächste Reinigung %1</translation>
    </message>
    <message>
        <source>a glass timed %1</source>
        <translation>ein Glas gestoppt %1</translation>
    </message>
    <message>
        <source>no glass timed yet</source>
        <translation>noch kein Glas gestoppt</translation>
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
        <source>Faucets</source>
        <translation>Hähne</translation>
    </message>
    <message>
        <source>Taps</source>
        <translation>Hähne</translation>
    </message>
</context>
<context>
    <name>ullage::ui::RoundValueEdit</name>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Gas on the dial</source>
        <translation>Gas am Manometer</translation>
    </message>
    <message>
        <source>Pressure at rest</source>
        <translation>Druck in Ruhe</translation>
    </message>
    <message>
        <source>Pressure it holds</source>
        <translation>Gehaltener Druck</translation>
    </message>
    <message>
        <source>Left, by lifting it</source>
        <translation>Übrig, nach Anheben</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
    </message>
    <message>
        <source>High-pressure gauge</source>
        <translation>Hochdruckmanometer</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Mehr: %1</translation>
    </message>
    <message>
        <source>Less: %1</source>
        <translation>Weniger: %1</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht abgelesen</translation>
    </message>
    <message>
        <source>last %1, %2</source>
        <translation>zuletzt %1, %2</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>eingestellt auf %1</translation>
    </message>
    <message>
        <source>The least is %1.</source>
        <translation>Mindestens %1.</translation>
    </message>
    <message>
        <source>The most is %1.</source>
        <translation>Höchstens %1.</translation>
    </message>
    <message>
        <source>Much more than the last %1. Read it again?</source>
        <translation>Viel mehr als zuletzt %1. Nochmals ablesen?</translation>
    </message>
    <message>
        <source>Much less than the last %1. Read it again?</source>
        <translation>Viel weniger als zuletzt %1. Nochmals ablesen?</translation>
    </message>
    <message>
        <source>More than the last %1. Is it the same keg?</source>
        <translation>Mehr als zuletzt %1. Ist es dasselbe Fass?</translation>
    </message>
    <message>
        <source>Heavier than the last %1. Is it the same one?</source>
        <translation>Schwerer als zuletzt %1. Ist es dieselbe?</translation>
    </message>
    <message>
        <source>a pint</source>
        <translation>ein britisches Pint</translation>
    </message>
    <message>
        <source>a US pint</source>
        <translation>ein US-Pint</translation>
    </message>
    <message>
        <source>half a litre</source>
        <translation>einen halben Liter</translation>
    </message>
    <message>
        <source>a third of a litre</source>
        <translation>einen Drittelliter</translation>
    </message>
    <message>
        <source>Seconds for a glass</source>
        <translation>Sekunden für ein Glas</translation>
    </message>
    <message>
        <source>Seconds for %1</source>
        <translation>Sekunden für %1</translation>
    </message>
    <message>
        <source>On the scale, its regulator on</source>
        <translation>Auf der Waage, mit Druckminderer</translation>
    </message>
    <message>
        <source>Read on?</source>
        <translation>Abgelesen an?</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>keines genannt</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>%1, read on: %2, %3</source>
        <translation>%1, abgelesen an: %2, %3</translation>
    </message>
    <message>
        <source>F2: next</source>
        <translation>F2: weiter</translation>
    </message>
    <message>
        <source>Start
F3</source>
        <translation>Start
F3</translation>
    </message>
    <message>
        <source>Stop
F3</source>
        <translation>Stopp
F3</translation>
    </message>
    <message>
        <source>Stop the watch: %1</source>
        <translation>Die Uhr anhalten: %1</translation>
    </message>
    <message>
        <source>Start the watch: %1</source>
        <translation>Die Uhr starten: %1</translation>
    </message>
</context>
<context>
    <name>ullage::ui::RulesDialog</name>
    <message>
        <source>No rules of your own yet. A line with an interval of its own goes by that; for the rest, make a rule or take over a ready set.</source>
        <translation>Noch keine eigenen Regeln. Eine Leitung mit eigener Frist richtet sich nach dieser; für alles Übrige eine Regel anlegen oder einen fertigen Satz übernehmen.</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Ready sets</source>
        <translation>Fertige Sätze</translation>
    </message>
    <message>
        <source>&amp;Take these over</source>
        <translation>Diese &amp;übernehmen</translation>
    </message>
    <message>
        <source>These are your rules, not the program’s: what the law asks differs by place. Where several fit, the one that falls due first counts.</source>
        <translation>Das sind die Regeln des Hauses, nicht die des Programms: was das Recht verlangt, ist je nach Ort verschieden. Passen mehrere, zählt die, die zuerst fällig wird.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>In Kraft</translation>
    </message>
    <message>
        <source>&amp;New rule…</source>
        <translation>&amp;Neue Regel …</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Ändern …</translation>
    </message>
    <message>
        <source>Take out of &amp;force</source>
        <translation>&amp;Außer Kraft setzen</translation>
    </message>
    <message>
        <source>Ready sets, strictest first</source>
        <translation>Fertige Sätze, die strengsten zuerst</translation>
    </message>
    <message>
        <source>Put in &amp;force</source>
        <translation>In &amp;Kraft setzen</translation>
    </message>
    <message>
        <source>every %1 days</source>
        <translation>alle %1 Tage</translation>
    </message>
    <message>
        <source>when called for</source>
        <translation>wenn es nötig wird</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1, %2: %3 (%4)</source>
        <translation>%1, %2: %3 (%4)</translation>
    </message>
    <message>
        <source>All of these are in force already.</source>
        <translation>Diese sind schon alle in Kraft.</translation>
    </message>
    <message>
        <source>One rule logged.</source>
        <translation>Eine Regel eingetragen.</translation>
    </message>
    <message>
        <source>%1 rules logged.</source>
        <translation>%1 Regeln eingetragen.</translation>
    </message>
    <message>
        <source>&amp;Print, save as CSV…</source>
        <translation>&amp;Drucken, als CSV speichern …</translation>
    </message>
</context>
<context>
    <name>ullage::ui::SafetyPage</name>
    <message>
        <source>Cautions, never an all-clear</source>
        <translation>Warnungen, nie eine Entwarnung</translation>
    </message>
    <message>
        <source>These figures suppose that gas mixes evenly with the air of the whole room. It does not: carbon dioxide gathers low, in pits, at the floor and in chest freezers, far above the figure. Nobody smells it. Local code and licensed people decide what a room needs. Never go in to rescue somebody: call for help from outside.</source>
        <translation>Diese Zahlen nehmen an, dass sich Gas gleichmäßig mit der Luft des ganzen Raums mischt. Das tut es nicht: Kohlendioxid sammelt sich unten, in Gruben, am Boden und in Kühltruhen, weit über dieser Zahl. Niemand riecht es. Was ein Raum braucht, entscheiden örtliche Vorschriften und Fachleute. Nie hineingehen, um jemanden zu retten: von draußen Hilfe rufen.</translation>
    </message>
    <message>
        <source>No gas bottle stands in a registered place yet. Register places with their net volume (kegs and stock taken off), and say where each bottle stands.</source>
        <translation>Noch steht keine Gasflasche in einem eingetragenen Raum. Räume mit ihrem Luftvolumen (ohne Fässer und Vorräte) eintragen und angeben, wo jede Flasche steht.</translation>
    </message>
    <message>
        <source>Add a place…</source>
        <translation>Raum eintragen …</translation>
    </message>
    <message>
        <source>Add a bottle…</source>
        <translation>Flasche eintragen …</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Letting pressure out, in this order</source>
        <translation>Druck ablassen, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>Air the room: door open, ventilation on. Look at the alarm before you go in, and again while you are in.</source>
        <translation>Raum lüften: Tür auf, Lüftung an. Auf das Warngerät sehen, bevor man hineingeht, und drinnen wieder.</translation>
    </message>
    <message>
        <source>Shut the bottle’s valve, then turn the regulator down.</source>
        <translation>Das Flaschenventil schließen, dann den Druckminderer herunterdrehen.</translation>
    </message>
    <message>
        <source>Take the gas off the keg.</source>
        <translation>Das Gas vom Fass nehmen.</translation>
    </message>
    <message>
        <source>Face away from the relief valve. Let it down slowly, until nothing comes any more.</source>
        <translation>Gesicht weg vom Sicherheitsventil. Langsam ablassen, bis nichts mehr kommt.</translation>
    </message>
    <message>
        <source>Only then open the keg. A lid or a fitting that does not come off easily is still under pressure: stop.</source>
        <translation>Erst dann das Fass öffnen. Ein Deckel oder Anschluss, der nicht leicht abgeht, steht noch unter Druck: aufhören.</translation>
    </message>
    <message>
        <source>Cleaning agents, in this order</source>
        <translation>Reinigungsmittel, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>Goggles and gloves first. Water into the bucket, then the agent: never the other way round.</source>
        <translation>Zuerst Schutzbrille und Handschuhe. Erst Wasser in den Eimer, dann das Mittel: nie andersherum.</translation>
    </message>
    <message>
        <source>Let the carbon dioxide out and rinse before caustic goes in: the two react, and a closed keg can be sucked in.</source>
        <translation>Vor der Lauge das Kohlendioxid herauslassen und spülen: beide reagieren, und ein geschlossenes Fass kann eingezogen werden.</translation>
    </message>
    <message>
        <source>Rinse with water after every agent, and check that it is out.</source>
        <translation>Nach jedem Mittel mit Wasser spülen und prüfen, dass es heraus ist.</translation>
    </message>
    <message>
        <source>Never acid after a chlorinated cleaner, nor the other way round, without a rinse between: together they give off chlorine, which has killed.</source>
        <translation>Nie Säure nach einem Chlorreiniger oder umgekehrt, ohne dazwischen zu spülen: zusammen setzen sie Chlor frei, daran sind Menschen gestorben.</translation>
    </message>
    <message>
        <source>Caustic is a cleaner, not a disinfectant. A line with cleaner in it stays locked until a check has passed.</source>
        <translation>Lauge reinigt, sie desinfiziert nicht. Eine Leitung mit Reiniger bleibt gesperrt, bis eine Prüfung bestanden ist.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::ScanOffer</name>
    <message>
        <source>Scanned</source>
        <translation>Gescannt</translation>
    </message>
    <message>
        <source>&amp;Other task…</source>
        <translation>&amp;Andere Aufgabe …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>DO NOT SERVE: its line holds a cleaner.</source>
        <translation>NICHT AUSSCHENKEN: in seiner Leitung steht Reiniger.</translation>
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
        <translation>E&amp;xtrakt</translation>
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
        <source>From the next start. What is told of a keg in a sentence, and all paper, stays English.</source>
        <translation>Ab dem nächsten Start. Was in einem Satz über ein Fass gesagt wird, und alles Papier, bleibt englisch.</translation>
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
        <source>As of %1, told on %2</source>
        <translation>Stand %1, ausgegeben am %2</translation>
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
    <message>
        <source>In the table of kegs</source>
        <translation>In der Fasstabelle</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>All about the chosen keg</source>
        <translation>Alles über das gewählte Fass</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Why its numbers are what they are</source>
        <translation>Warum seine Zahlen so sind</translation>
    </message>
    <message>
        <source>A letter</source>
        <translation>Ein Buchstabe</translation>
    </message>
    <message>
        <source>Find a keg by tag, beer, state or place</source>
        <translation>Ein Fass nach Kennung, Bier, Zustand oder Raum finden</translation>
    </message>
</context>
<context>
    <name>ullage::ui::SlateForm</name>
    <message>
        <source>Further figures</source>
        <translation>Weitere Angaben</translation>
    </message>
</context>
<context>
    <name>ullage::ui::SlatePage</name>
    <message>
        <source>how long, purge, alcohol …</source>
        <translation>wie lange, spülen, Alkohol …</translation>
    </message>
    <message>
        <source>Find a computation</source>
        <translation>Eine Rechnung finden</translation>
    </message>
    <message>
        <source>Computations</source>
        <translation>Rechnungen</translation>
    </message>
    <message>
        <source>No computation is called that. Try “pressure”, “purge” or “weigh”.</source>
        <translation>So heißt keine Rechnung. Etwa „pressure“, „purge“ oder „weigh“ versuchen.</translation>
    </message>
    <message>
        <source>Slate</source>
        <translation>Rechentafel</translation>
    </message>
    <message>
        <source>Without the keg</source>
        <translation>Ohne das Fass</translation>
    </message>
    <message>
        <source>From %1: what is known of it stands in the fields.</source>
        <translation>Von %1: was darüber bekannt ist, steht in den Feldern.</translation>
    </message>
    <message>
        <source>To be filled in: %1.</source>
        <translation>Noch einzutragen: %1.</translation>
    </message>
    <message>
        <source>Assumed, not known: %1.</source>
        <translation>Angenommen, nicht bekannt: %1.</translation>
    </message>
    <message>
        <source>“%1” can’t be read as it stands.</source>
        <translation>„%1“ lässt sich so nicht lesen.</translation>
    </message>
    <message>
        <source>No answer yet: see the marked field.</source>
        <translation>Noch keine Antwort: siehe das markierte Feld.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ullage::ui::StepCard</name>
    <message>
        <source>Again…</source>
        <translation>Nochmals …</translation>
    </message>
    <message>
        <source>Answer…</source>
        <translation>Antworten …</translation>
    </message>
    <message>
        <source>Start the %1 timer</source>
        <translation>Uhr auf %1 starten</translation>
    </message>
    <message>
        <source>Stop the timer</source>
        <translation>Uhr anhalten</translation>
    </message>
    <message>
        <source>%1:%2 left</source>
        <translation>noch %1:%2</translation>
    </message>
    <message>
        <source>Time is up: rinse</source>
        <translation>Die Zeit ist um: spülen</translation>
    </message>
    <message>
        <source>Over an hour too long: rinse now</source>
        <translation>Über eine Stunde zu lang: jetzt spülen</translation>
    </message>
    <message>
        <source>Stood %1</source>
        <translation>Eingewirkt: %1</translation>
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
    <message>
        <source>such as K02, K05..K08</source>
        <translation>etwa K02, K05..K08</translation>
    </message>
    <message>
        <source>There is no keg %1. Register it first.</source>
        <translation>Ein Fass %1 gibt es nicht. Bitte zuerst eintragen.</translation>
    </message>
</context>
<context>
    <name>ullage::ui::TagPreview</name>
    <message>
        <source>Keg tags</source>
        <translation>Fassanhänger</translation>
    </message>
    <message>
        <source>Warning tags</source>
        <translation>Warnanhänger</translation>
    </message>
    <message>
        <source>&amp;Which</source>
        <translation>&amp;Welche</translation>
    </message>
    <message>
        <source>Four to a page</source>
        <translation>Vier je Blatt</translation>
    </message>
    <message>
        <source>One to a page, A6</source>
        <translation>Einzeln, A6</translation>
    </message>
    <message>
        <source>Si&amp;ze</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <source>&amp;Backs</source>
        <translation>&amp;Rückseiten</translation>
    </message>
    <message>
        <source>All kegs at hand</source>
        <translation>Alle Fässer</translation>
    </message>
    <message>
        <source>All there is reason for</source>
        <translation>Alles, wofür es Grund gibt</translation>
    </message>
    <message>
        <source>Do not serve: %1</source>
        <translation>Nicht ausschenken: %1</translation>
    </message>
    <message>
        <source>Under pressure: %1</source>
        <translation>Unter Druck: %1</translation>
    </message>
    <message>
        <source>Out of service: %1</source>
        <translation>Außer Betrieb: %1</translation>
    </message>
    <message>
        <source>Recalled: %1</source>
        <translation>Zurückgerufen: %1</translation>
    </message>
    <message>
        <source>Gas: %1</source>
        <translation>Gas: %1</translation>
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
    <message>
        <source>%1: Change what is registered</source>
        <translation>%1: Bestand ändern</translation>
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
    <name>ullage::ui::TraceDialog</name>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <source>%1: has it, since %2</source>
        <translation>%1: hat es, seit %2</translation>
    </message>
    <message>
        <source>, served through %1</source>
        <translation>, ausgeschenkt durch %1</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Kegs of this batch</source>
        <translation>Fässer dieses Sudes</translation>
    </message>
    <message>
        <source>None that is logged.</source>
        <translation>Kein eingetragenes.</translation>
    </message>
    <message>
        <source>Recalled %1 by %2: %3</source>
        <translation>%1 zurückgerufen von %2: %3</translation>
    </message>
    <message>
        <source>What else %1 held</source>
        <translation>Was sonst in %1 war</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Nothing else.</source>
        <translation>Sonst nichts.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>, do not serve</source>
        <translation>, nicht ausschenken</translation>
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
        <translation>Luft ausgetrieben</translation>
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
        <translation>Kurz mit hohem Druck</translation>
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
        <source>Sanitized</source>
        <translation>Desinfiziert</translation>
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
