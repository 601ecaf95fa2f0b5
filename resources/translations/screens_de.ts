<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>%1 regions</source>
        <translation>%1 Bereiche</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Words changed by %1.</source>
        <translation>Wortlaut geändert von %1.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app</name>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>resolved</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>verändert</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>differs, %1</source>
        <translation>verschieden, %1</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>about %1 cm²</source>
        <translation>etwa %1 cm²</translation>
    </message>
    <message>
        <source>%1 worse</source>
        <translation>%1 schlechter</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 neu</translation>
    </message>
    <message>
        <source>%1 better</source>
        <translation>%1 besser</translation>
    </message>
    <message>
        <source>%1 resolved</source>
        <translation>%1 behoben</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 verändert</translation>
    </message>
    <message>
        <source>No change beyond measurement error</source>
        <translation>Keine Veränderung über den Messfehler hinaus</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Veränderung</translation>
    </message>
    <message>
        <source>What counts</source>
        <translation>Was zählt</translation>
    </message>
    <message>
        <source>Less feeling, %1</source>
        <translation>Weniger Gefühl, %1</translation>
    </message>
    <message>
        <source>%1 the same</source>
        <translation>%1 gleich</translation>
    </message>
    <message>
        <source>%1 not comparable</source>
        <translation>%1 nicht vergleichbar</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>No difference beyond measurement error</source>
        <translation>Kein Unterschied über den Messfehler hinaus</translation>
    </message>
    <message>
        <source>1 difference between the sides</source>
        <translation>1 Unterschied zwischen den Seiten</translation>
    </message>
    <message>
        <source>%1 differences between the sides</source>
        <translation>%1 Unterschiede zwischen den Seiten</translation>
    </message>
    <message>
        <source>%1 alike</source>
        <translation>%1 gleich</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>ausgeprägt</translation>
    </message>
    <message>
        <source>heightened</source>
        <translation>gesteigert</translation>
    </message>
    <message>
        <source>Not testable, %1</source>
        <translation>Nicht prüfbar, %1</translation>
    </message>
    <message>
        <source>nothing to go on yet</source>
        <translation>noch kein Anhalt</translation>
    </message>
    <message>
        <source>fits one site well</source>
        <translation>passt gut zu einem Ort</translation>
    </message>
    <message>
        <source>fits one site in part</source>
        <translation>passt teilweise zu einem Ort</translation>
    </message>
    <message>
        <source>fits no one site</source>
        <translation>passt zu keinem Ort</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>little</source>
        <translation>gering</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Notfall</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Dringend</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Decision support for a licensed clinician, not a diagnosis.</source>
        <translation>Entscheidungshilfe für approbierte Fachpersonen, keine Diagnose.</translation>
    </message>
    <message>
        <source> of 10</source>
        <translation> von 10</translation>
    </message>
    <message>
        <source> of 24</source>
        <translation> von 24</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>beide Seiten</translation>
    </message>
    <message>
        <source>not testable, %1</source>
        <translation>nicht prüfbar, %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>woman</source>
        <translation>Frau</translation>
    </message>
    <message>
        <source>man</source>
        <translation>Mann</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>%1 y</source>
        <translation>%1 J.</translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation>Nicht begonnen</translation>
    </message>
    <message>
        <source>Intake, %1 recorded</source>
        <translation>Aufnahme, %1 erfasst</translation>
    </message>
    <message>
        <source>In the room</source>
        <translation>Im Raum</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Zur Durchsicht</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>opened by %1</source>
        <translation>geöffnet von %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>last change %1</source>
        <translation>letzte Änderung %1</translation>
    </message>
    <message>
        <source>drafted %1</source>
        <translation>entworfen %1</translation>
    </message>
    <message>
        <source>signed %1</source>
        <translation>unterschrieben %1</translation>
    </message>
    <message>
        <source>1 red sign</source>
        <translation>1 Warnzeichen</translation>
    </message>
    <message>
        <source>%1 red signs</source>
        <translation>%1 Warnzeichen</translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation>1 Besuch</translation>
    </message>
    <message>
        <source>%1 visits</source>
        <translation>%1 Besuche</translation>
    </message>
    <message>
        <source>Red sign not acknowledged: %1</source>
        <translation>Warnzeichen nicht bestätigt: %1</translation>
    </message>
    <message>
        <source>Warning questions not asked: %1. The page says so.</source>
        <translation>Warnfragen nicht gestellt: %1. Das Blatt vermerkt es.</translation>
    </message>
    <message>
        <source>%1: the findings changed after these words were written.</source>
        <translation>%1: Die Befunde änderten sich nach dem Schreiben dieser Worte.</translation>
    </message>
    <message>
        <source>No plan is written.</source>
        <translation>Es ist kein Plan geschrieben.</translation>
    </message>
    <message>
        <source>no longer in the record (%1)</source>
        <translation>nicht mehr in der Akte (%1)</translation>
    </message>
    <message>
        <source>Clinic created</source>
        <translation>Praxis angelegt</translation>
    </message>
    <message>
        <source>Signed in</source>
        <translation>Angemeldet</translation>
    </message>
    <message>
        <source>Sign-in failed</source>
        <translation>Anmeldung misslungen</translation>
    </message>
    <message>
        <source>Visit opened</source>
        <translation>Besuch geöffnet</translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation>Herausgegeben</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Gedruckt</translation>
    </message>
    <message>
        <source>Setting changed</source>
        <translation>Einstellung geändert</translation>
    </message>
    <message>
        <source>User added</source>
        <translation>Person hinzugefügt</translation>
    </message>
    <message>
        <source>User changed</source>
        <translation>Person geändert</translation>
    </message>
    <message>
        <source>Passphrase changed</source>
        <translation>Passphrase geändert</translation>
    </message>
    <message>
        <source>Visit signed</source>
        <translation>Besuch unterschrieben</translation>
    </message>
    <message>
        <source>Addendum written</source>
        <translation>Nachtrag geschrieben</translation>
    </message>
    <message>
        <source>Duplicate joined</source>
        <translation>Doppelter Eintrag vereint</translation>
    </message>
    <message>
        <source>Duplicate parted</source>
        <translation>Doppelter Eintrag getrennt</translation>
    </message>
    <message>
        <source>Patient added</source>
        <translation>Patient angelegt</translation>
    </message>
    <message>
        <source>Patient corrected</source>
        <translation>Patient berichtigt</translation>
    </message>
    <message>
        <source>Visit begun</source>
        <translation>Besuch begonnen</translation>
    </message>
    <message>
        <source>Erased</source>
        <translation>Gelöscht</translation>
    </message>
    <message>
        <source>Backed up</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Restored</source>
        <translation>Wiederhergestellt</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Unsaved changes brought back</source>
        <translation>Ungespeicherte Änderungen zurückgeholt</translation>
    </message>
    <message>
        <source>Event written</source>
        <translation>Ereignis geschrieben</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Eingelesen</translation>
    </message>
    <message>
        <source>1 finding worse</source>
        <translation>1 Befund schlechter</translation>
    </message>
    <message>
        <source>%1 findings worse</source>
        <translation>%1 Befunde schlechter</translation>
    </message>
    <message>
        <source>Follow-up passed</source>
        <translation>Kontrolle überfällig</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Nicht unterschrieben</translation>
    </message>
    <message>
        <source>follow-up due %1</source>
        <translation>Kontrolle fällig %1</translation>
    </message>
    <message>
        <source>%1 visits not signed</source>
        <translation>%1 Besuche nicht unterschrieben</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>nicht unterschrieben</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>%1 with a red sign</source>
        <translation>%1 mit Warnzeichen</translation>
    </message>
    <message>
        <source>%1 follow-ups passed</source>
        <translation>%1 Kontrollen überfällig</translation>
    </message>
    <message>
        <source>%1 not signed</source>
        <translation>%1 nicht unterschrieben</translation>
    </message>
    <message>
        <source>the first %1 of %2</source>
        <translation>die ersten %1 von %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Familienname</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Aktennummer</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AngleDial</name>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Turn the hand, or type the degrees</source>
        <translation>Zeiger drehen oder Grad eintippen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AuditPage</name>
    <message>
        <source>Back to the settings</source>
        <translation>Zurück zu den Einstellungen</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Name, day or action</source>
        <translation>Name, Tag oder Vorgang</translation>
    </message>
    <message>
        <source>Narrow the audit down</source>
        <translation>Protokoll eingrenzen</translation>
    </message>
    <message>
        <source>Audit, newest first</source>
        <translation>Protokoll, Neuestes zuerst</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>Wen</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Older entries</source>
        <translation>Ältere Einträge</translation>
    </message>
    <message>
        <source>nobody signed in</source>
        <translation>niemand angemeldet</translation>
    </message>
    <message>
        <source>%1 entries, the newest first</source>
        <translation>%1 Einträge, Neuestes zuerst</translation>
    </message>
    <message>
        <source>%1 of %2 entries</source>
        <translation>%1 von %2 Einträgen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AuditWords</name>
    <message>
        <source>%1, visit of %2</source>
        <translation>%1, Besuch vom %2</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 Einträge</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ChangeList</name>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Shows its curve</source>
        <translation>Zeigt den Verlauf</translation>
    </message>
    <message>
        <source>What changed since the visit before</source>
        <translation>Was sich seit dem vorigen Besuch geändert hat</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ChangeTable</name>
    <message>
        <source>Shows or hides them</source>
        <translation>Zeigt oder verbirgt sie</translation>
    </message>
    <message>
        <source>Goes to the finding</source>
        <translation>Führt zum Befund</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ComparePage</name>
    <message>
        <source>Visit %1, %2</source>
        <translation>Besuch %1, %2</translation>
    </message>
    <message>
        <source>A difference smaller than the error of measurement is called the same. Hold the pointer over a row for the source of its threshold.</source>
        <translation>Ein Unterschied unter dem Messfehler heißt gleich. Zeiger über eine Zeile halten: Quelle ihrer Schwelle.</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Was verglichen wird</translation>
    </message>
    <message>
        <source>Right against left</source>
        <translation>Rechts gegen links</translation>
    </message>
    <message>
        <source>Against an earlier visit</source>
        <translation>Gegen einen früheren Besuch</translation>
    </message>
    <message>
        <source>Layer of the figures</source>
        <translation>Ebene der Figuren</translation>
    </message>
    <message>
        <source>Compare with: %1</source>
        <translation>Vergleichen mit: %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>There is no earlier visit to compare with</source>
        <translation>Es gibt keinen früheren Besuch zum Vergleich</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>View of the figures</source>
        <translation>Ansicht der Figuren</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Soles</source>
        <translation>Fußsohlen</translation>
    </message>
    <message>
        <source>Saddle</source>
        <translation>Reithose</translation>
    </message>
    <message>
        <source>No change of the skin where both visits examined it.</source>
        <translation>Keine Veränderung der Haut, wo beide Besuche sie untersuchten.</translation>
    </message>
    <message>
        <source>Outlined: worse in full, better broken.</source>
        <translation>Umrandet: schlechter durchgezogen, besser gestrichelt.</translation>
    </message>
    <message>
        <source>In other views: %1 changed.</source>
        <translation>In anderen Ansichten: %1 verändert.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::EraseDialog</name>
    <message>
        <source>Erase for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>Erase %1 and everything recorded?</source>
        <translation>%1 und alles Erfasste löschen?</translation>
    </message>
    <message>
        <source>%1, signed ones too, are removed for good. The audit keeps that it was done, by whom and why, but no name. Backups made before still hold the person until they are rotated out.</source>
        <translation>%1, auch unterschriebene, werden endgültig entfernt. Das Protokoll behält, dass, durch wen und warum es geschah, aber keinen Namen. Frühere Sicherungen enthalten die Person, bis sie ablaufen.</translation>
    </message>
    <message>
        <source>Reason, kept in the audit (without a name)</source>
        <translation>Grund, bleibt im Protokoll (ohne Namen)</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Type the name to confirm: %1</source>
        <translation>Zur Bestätigung den Namen eingeben: %1</translation>
    </message>
    <message>
        <source>Name of the patient</source>
        <translation>Name des Patienten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::EventsCard</name>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Day: 2026-03-02 or 2.3.2026</source>
        <translation>Tag: 2026-03-02 oder 2.3.2026</translation>
    </message>
    <message>
        <source>Day of the event</source>
        <translation>Tag des Ereignisses</translation>
    </message>
    <message>
        <source>Words, optional</source>
        <translation>Worte, freiwillig</translation>
    </message>
    <message>
        <source>Words about the event</source>
        <translation>Worte zum Ereignis</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>None noted.</source>
        <translation>Keine vermerkt.</translation>
    </message>
    <message>
        <source>awaited %1</source>
        <translation>erwartet %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Veränderung</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>%1 von der Liste nehmen</translation>
    </message>
    <message>
        <source>Add an event</source>
        <translation>Ereignis hinzufügen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Change this event</source>
        <translation>Dieses Ereignis ändern</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Der Tag fehlt.</translation>
    </message>
    <message>
        <source>“%1” is no day. Write it as 2026-03-02 or 2.3.2026.</source>
        <translation>„%1“ ist kein Tag. Als 2026-03-02 oder 2.3.2026 schreiben.</translation>
    </message>
    <message>
        <source>Kind of event: %1</source>
        <translation>Art des Ereignisses: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FigureCanvas</name>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>A press moves on to the next state</source>
        <translation>Ein Druck schaltet zum nächsten Zustand</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>von hinten</translation>
    </message>
    <message>
        <source>Feet, larger</source>
        <translation>Füße, größer</translation>
    </message>
    <message>
        <source>Soles</source>
        <translation>Fußsohlen</translation>
    </message>
    <message>
        <source>Saddle</source>
        <translation>Reithose</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FigurePair</name>
    <message>
        <source>Skin figures: %1</source>
        <translation>Hautfiguren: %1</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>von hinten</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>soles</source>
        <translation>Fußsohlen</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>Reithose</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Finder</name>
    <message>
        <source>Find an item by name</source>
        <translation>Prüfung nach Namen suchen</translation>
    </message>
    <message>
        <source>Items found</source>
        <translation>Gefundene Prüfungen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FindingRow</name>
    <message>
        <source>%1, filled in bulk</source>
        <translation>%1, gesammelt ausgefüllt</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>%1, more</source>
        <translation>%1, mehr</translation>
    </message>
    <message>
        <source>value of the last visit</source>
        <translation>Wert des letzten Besuchs</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>war %1</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>%1: cleared</source>
        <translation>%1: gelöscht</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::GroupCard</name>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More (%1)</source>
        <translation>Mehr (%1)</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Alles %1</translation>
    </message>
    <message>
        <source>Rest normal</source>
        <translation>Rest normal</translation>
    </message>
    <message>
        <source>%1 of %2 recorded</source>
        <translation>%1 von %2 erfasst</translation>
    </message>
    <message>
        <source>, %1 in bulk</source>
        <translation>, %1 gesammelt</translation>
    </message>
    <message>
        <source>when needed</source>
        <translation>bei Bedarf</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HistorySheet</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Never recorded.</source>
        <translation>Nie erfasst.</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation>Besuch %1, %2</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>gelöscht</translation>
    </message>
    <message>
        <source>, filled with the rest</source>
        <translation>, mit dem Rest ausgefüllt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HoldButton</name>
    <message>
        <source>Enter again</source>
        <translation>Nochmals Eingabe</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HowToSheet</name>
    <message>
        <source>What counts: %1</source>
        <translation>Was zählt: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionBar</name>
    <message>
        <source>No site yet</source>
        <translation>Noch kein Ort</translation>
    </message>
    <message>
        <source>Impression: %1</source>
        <translation>Eindruck: %1</translation>
    </message>
    <message>
        <source>; red signs: %1, of these not acknowledged: %2</source>
        <translation>; Warnzeichen: %1, davon nicht bestätigt: %2</translation>
    </message>
    <message>
        <source>Open the impression</source>
        <translation>Eindruck öffnen</translation>
    </message>
    <message>
        <source>Next test: %1</source>
        <translation>Nächste Prüfung: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionFold</name>
    <message>
        <source>Opens the impression</source>
        <translation>Öffnet den Eindruck</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionHead</name>
    <message>
        <source>Impression, %1</source>
        <translation>Eindruck, %1</translation>
    </message>
    <message>
        <source>Fold the impression</source>
        <translation>Eindruck einklappen</translation>
    </message>
    <message>
        <source>Impression</source>
        <translation>Eindruck</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionList</name>
    <message>
        <source>Impression</source>
        <translation>Eindruck</translation>
    </message>
    <message>
        <source>Goes to the finding</source>
        <translation>Führt zum Befund</translation>
    </message>
    <message>
        <source>Shows its reasons and its skin</source>
        <translation>Zeigt seine Gründe und seine Haut</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::JoinDialog</name>
    <message>
        <source>born %1</source>
        <translation>geboren %1</translation>
    </message>
    <message>
        <source>Join a duplicate</source>
        <translation>Doppelten Eintrag vereinen</translation>
    </message>
    <message>
        <source>Who else is %1?</source>
        <translation>Wer ist auch %1?</translation>
    </message>
    <message>
        <source>Name or record number</source>
        <translation>Name oder Aktennummer</translation>
    </message>
    <message>
        <source>Search the duplicate</source>
        <translation>Doppelten Eintrag suchen</translation>
    </message>
    <message>
        <source>Entries that may be the same person</source>
        <translation>Einträge, die dieselbe Person sein können</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Vereinen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>No other entry matches.</source>
        <translation>Kein anderer Eintrag passt.</translation>
    </message>
    <message>
        <source>Choose the entry that is the same person.</source>
        <translation>Den Eintrag derselben Person wählen.</translation>
    </message>
    <message>
        <source>%1 (%2) will stand with %3, and no longer by itself. Nothing is rewritten: the two can be parted again.</source>
        <translation>%1 (%2) steht dann bei %3 und nicht mehr für sich. Nichts wird umgeschrieben: beide lassen sich wieder trennen.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Keypad</name>
    <message>
        <source>Erase the last digit</source>
        <translation>Letzte Ziffer löschen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>%1: cleared</source>
        <translation>%1: gelöscht</translation>
    </message>
    <message>
        <source>Type a number from %1 to %2.</source>
        <translation>Eine Zahl von %1 bis %2 eingeben.</translation>
    </message>
    <message>
        <source>That is out of range: from %1 to %2.</source>
        <translation>Außerhalb des Bereichs: von %1 bis %2.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Von %1 bis %2.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::LayoutCard</name>
    <message>
        <source>Order of the steps</source>
        <translation>Reihenfolge der Schritte</translation>
    </message>
    <message>
        <source>Items that show at once</source>
        <translation>Sofort gezeigte Prüfungen</translation>
    </message>
    <message>
        <source>The others wait behind More. What was recorded, what a red sign asks for and what the program suggests always comes forward.</source>
        <translation>Die anderen warten hinter „Mehr“. Was erfasst wurde, was ein Warnzeichen verlangt und was das Programm vorschlägt, kommt immer hervor.</translation>
    </message>
    <message>
        <source>Find an item</source>
        <translation>Prüfung suchen</translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 später</translation>
    </message>
    <message>
        <source>Shows at once</source>
        <translation>Sofort gezeigt</translation>
    </message>
    <message>
        <source>Behind More</source>
        <translation>Hinter „Mehr“</translation>
    </message>
    <message>
        <source>%1 shows at once</source>
        <translation>%1 sofort gezeigt</translation>
    </message>
    <message>
        <source>No item by this name.</source>
        <translation>Keine Prüfung dieses Namens.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Legend</name>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>filled in bulk</source>
        <translation>gesammelt ausgefüllt</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ListDialog</name>
    <message>
        <source>Bring in a list of patients</source>
        <translation>Eine Patientenliste einlesen</translation>
    </message>
    <message>
        <source>What each column holds</source>
        <translation>Was jede Spalte enthält</translation>
    </message>
    <message>
        <source>As they would be taken</source>
        <translation>Wie sie übernommen würden</translation>
    </message>
    <message>
        <source>Patients as they would be taken</source>
        <translation>Patienten, wie sie übernommen würden</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Aktennummer</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Rows that are left out</source>
        <translation>Ausgelassene Zeilen</translation>
    </message>
    <message>
        <source>Rows that are left out and why</source>
        <translation>Ausgelassene Zeilen und warum</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Column %1 holds</source>
        <translation>Spalte %1 enthält</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>How days are written</source>
        <translation>Wie Tage geschrieben sind</translation>
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
        <source>%1: %2 patients are ready, %3 rows are left out.</source>
        <translation>%1: %2 Patienten sind bereit, %3 Zeilen ausgelassen.</translation>
    </message>
    <message>
        <source>Bring in %1 patients</source>
        <translation>%1 Patienten einlesen</translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>Nichts wurde eingelesen. %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::MainWindow</name>
    <message>
        <source>Patients</source>
        <translation>Patienten</translation>
    </message>
    <message>
        <source>Rhizograph cannot start</source>
        <translation>Rhizograph kann nicht starten</translation>
    </message>
    <message>
        <source>Its medical knowledge cannot be read:
%1</source>
        <translation>Sein medizinisches Wissen ist nicht lesbar:
%1</translation>
    </message>
    <message>
        <source>Rhizograph</source>
        <translation>Rhizograph</translation>
    </message>
    <message>
        <source>The clinic cannot be opened</source>
        <translation>Die Praxis kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>Open a clinic</source>
        <translation>Eine Praxis öffnen</translation>
    </message>
    <message>
        <source>Clinics (*.rhizo);;All files (*)</source>
        <translation>Praxen (*.rhizo);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The clinic cannot be read</source>
        <translation>Die Praxis kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>Locked. The open visit is kept.</source>
        <translation>Gesperrt. Der offene Besuch bleibt erhalten.</translation>
    </message>
    <message>
        <source>Locked.</source>
        <translation>Gesperrt.</translation>
    </message>
    <message>
        <source>Settings …</source>
        <translation>Einstellungen …</translation>
    </message>
    <message>
        <source>Bring back unsaved changes …</source>
        <translation>Ungespeicherte Änderungen zurückholen …</translation>
    </message>
    <message>
        <source>Switch user</source>
        <translation>Benutzer wechseln</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farben</translation>
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
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Find an item …</source>
        <translation>Prüfung suchen …</translation>
    </message>
    <message>
        <source>In the room</source>
        <translation>Im Raum</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Zur Durchsicht</translation>
    </message>
    <message>
        <source>Bring back unsaved changes</source>
        <translation>Ungespeicherte Änderungen zurückholen</translation>
    </message>
    <message>
        <source>Unsaved changes (*.unsaved);;All files (*)</source>
        <translation>Ungespeicherte Änderungen (*.unsaved);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Changes brought back: %1.</source>
        <translation>Zurückgeholte Änderungen: %1.</translation>
    </message>
    <message>
        <source>Rhizograph: %1</source>
        <translation>Rhizograph: %1</translation>
    </message>
    <message>
        <source>Not everything is saved</source>
        <translation>Nicht alles ist gespeichert</translation>
    </message>
    <message>
        <source>Changes of this visit that are not on disk yet: %1.</source>
        <translation>Änderungen dieses Besuchs noch nicht auf der Platte: %1.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Erneut versuchen</translation>
    </message>
    <message>
        <source>Save a copy and close</source>
        <translation>Kopie sichern und schließen</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hier bleiben</translation>
    </message>
    <message>
        <source>Save a sealed copy of what is not saved</source>
        <translation>Versiegelte Kopie des Ungespeicherten sichern</translation>
    </message>
    <message>
        <source>Unsaved changes (*.unsaved)</source>
        <translation>Ungespeicherte Änderungen (*.unsaved)</translation>
    </message>
    <message>
        <source>A sealed copy is in %1. When the record can be written again, choose “Bring back unsaved changes” in the menu.</source>
        <translation>Eine versiegelte Kopie liegt in %1. Sobald die Akte wieder schreibbar ist, im Menü „Ungespeicherte Änderungen zurückholen“ wählen.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Show the tour</source>
        <translation>Rundgang zeigen</translation>
    </message>
    <message>
        <source>Hand out everything on this patient</source>
        <translation>Alles zu diesem Patienten herausgeben</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <source>%1 was not written: %2.</source>
        <translation>%1 wurde nicht geschrieben: %2.</translation>
    </message>
    <message>
        <source>Everything on %1 is in %2, readable for whoever has the file. The audit notes it.</source>
        <translation>Alles zu %1 steht in %2, lesbar für jeden, der die Datei hat. Das Protokoll vermerkt es.</translation>
    </message>
    <message>
        <source>1 place</source>
        <translation>1 Stelle</translation>
    </message>
    <message>
        <source>%1 places</source>
        <translation>%1 Stellen</translation>
    </message>
    <message>
        <source>Visit %1: </source>
        <translation>Besuch %1: </translation>
    </message>
    <message>
        <source>The backup %1 is whole, but the record it holds is damaged in %2. Older backups are kept; do not remove them.
%3</source>
        <translation>Die Sicherung %1 ist unversehrt, aber die Akte darin ist beschädigt: %2. Ältere Sicherungen bleiben; nicht entfernen.
%3</translation>
    </message>
    <message>
        <source>Backed up: %1, %2, read back and verified (%3 visits).</source>
        <translation>Gesichert: %1, %2, zurückgelesen und geprüft (%3 Besuche).</translation>
    </message>
    <message>
        <source>The audit could not be written.</source>
        <translation>Das Protokoll konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Today’s backup is being made …</source>
        <translation>Die heutige Sicherung wird erstellt …</translation>
    </message>
    <message>
        <source>Today’s backup was not made.
%1</source>
        <translation>Die heutige Sicherung wurde nicht erstellt.
%1</translation>
    </message>
    <message>
        <source>Back up the clinic</source>
        <translation>Praxis sichern</translation>
    </message>
    <message>
        <source>Backups (*%1)</source>
        <translation>Sicherungen (*%1)</translation>
    </message>
    <message>
        <source>Being backed up …</source>
        <translation>Wird gesichert …</translation>
    </message>
    <message>
        <source>Not backed up. %1</source>
        <translation>Nicht gesichert. %1</translation>
    </message>
    <message>
        <source>Folder for the daily backups</source>
        <translation>Ordner für die täglichen Sicherungen</translation>
    </message>
    <message>
        <source>Every entry is being recomputed …</source>
        <translation>Jeder Eintrag wird nachgerechnet …</translation>
    </message>
    <message>
        <source>%1 visits, %2 entries, %3 lines of audit</source>
        <translation>%1 Besuche, %2 Einträge, %3 Protokollzeilen</translation>
    </message>
    <message>
        <source>The record is as it was written: %1.</source>
        <translation>Die Akte ist, wie sie geschrieben wurde: %1.</translation>
    </message>
    <message>
        <source>Damaged in %1 (%2). Keep the older backups.
%3</source>
        <translation>Beschädigt: %1 (%2). Ältere Sicherungen behalten.
%3</translation>
    </message>
    <message>
        <source>A backup is being made or the record verified. Wait until it is done.</source>
        <translation>Eine Sicherung oder Prüfung läuft. Warten, bis sie fertig ist.</translation>
    </message>
    <message>
        <source>Restored as of %1, %2: %3 visits.</source>
        <translation>Wiederhergestellt mit Stand %1, %2: %3 Besuche.</translation>
    </message>
    <message>
        <source>What stood here before is kept as %1.</source>
        <translation>Was vorher hier stand, bleibt als %1.</translation>
    </message>
    <message>
        <source>An earlier visit, only to be read.</source>
        <translation>Ein früherer Besuch, nur zum Lesen.</translation>
    </message>
    <message>
        <source>A list of patients</source>
        <translation>Eine Patientenliste</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt)</source>
        <translation>Tabellen (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>What %1 recorded is not saved yet, so only they can go on with the open visit.</source>
        <translation>Was %1 eingetragen hat, ist noch nicht gespeichert; deshalb kann nur diese Person mit dem offenen Besuch weitermachen.</translation>
    </message>
    <message>
        <source>This visit was signed meanwhile: it can only be read now.</source>
        <translation>Dieser Besuch wurde inzwischen unterschrieben: Er kann jetzt nur noch gelesen werden.</translation>
    </message>
    <message>
        <source>Your role in this clinic was changed.</source>
        <translation>Ihre Rolle in dieser Praxis wurde geändert.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::MarkLegend</name>
    <message>
        <source>Legend: %1</source>
        <translation>Legende: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::NoteEditor</name>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>%1: note</source>
        <translation>%1: Notiz</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PagePreview</name>
    <message>
        <source>The page as it will print</source>
        <translation>Das Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>Changes the words</source>
        <translation>Ändert den Wortlaut</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PainDrawing</name>
    <message>
        <source>Rub out</source>
        <translation>Ausradieren</translation>
    </message>
    <message>
        <source>Pain drawing</source>
        <translation>Schmerzzeichnung</translation>
    </message>
    <message>
        <source>draw with a finger or pen</source>
        <translation>mit Finger oder Stift zeichnen</translation>
    </message>
    <message>
        <source>1 region marked</source>
        <translation>1 Bereich markiert</translation>
    </message>
    <message>
        <source>%1 regions marked</source>
        <translation>%1 Bereiche markiert</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientForm</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Aktennummer</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>1974-05-30 or 30.5.1974</source>
        <translation>1974-05-30 oder 30.5.1974</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Woman</source>
        <translation>Frau</translation>
    </message>
    <message>
        <source>Man</source>
        <translation>Mann</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>Keine Angabe</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>freiwillig</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Save and begin a visit</source>
        <translation>Sichern und Besuch beginnen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>New patient</source>
        <translation>Neuer Patient</translation>
    </message>
    <message>
        <source>Correct the patient&apos;s entry</source>
        <translation>Patienteneintrag berichtigen</translation>
    </message>
    <message>
        <source>The patient needs a name.</source>
        <translation>Der Patient braucht einen Namen.</translation>
    </message>
    <message>
        <source>“%1” is no birth date. Write year-month-day (1974-05-30) or day.month.year (30.5.1974).</source>
        <translation>„%1“ ist kein Geburtsdatum. Jahr-Monat-Tag (1974-05-30) oder Tag.Monat.Jahr (30.5.1974) schreiben.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientPage</name>
    <message>
        <source>Back to the patients</source>
        <translation>Zurück zu den Patienten</translation>
    </message>
    <message>
        <source>Correct entry</source>
        <translation>Eintrag berichtigen</translation>
    </message>
    <message>
        <source>New visit</source>
        <translation>Neuer Besuch</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>Akte %1</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>geboren %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>No visit yet.</source>
        <translation>Noch kein Besuch.</translation>
    </message>
    <message>
        <source>More for this patient</source>
        <translation>Mehr zu diesem Patienten</translation>
    </message>
    <message>
        <source>1 duplicate joined</source>
        <translation>1 doppelter Eintrag vereint</translation>
    </message>
    <message>
        <source>%1 duplicates joined</source>
        <translation>%1 doppelte Einträge vereint</translation>
    </message>
    <message>
        <source>Join a duplicate …</source>
        <translation>Doppelten Eintrag vereinen …</translation>
    </message>
    <message>
        <source>Part again: %1</source>
        <translation>Wieder trennen: %1</translation>
    </message>
    <message>
        <source>Hand out everything …</source>
        <translation>Alles herausgeben …</translation>
    </message>
    <message>
        <source>Erase for good …</source>
        <translation>Endgültig löschen …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientStrip</name>
    <message>
        <source>Back to the patients</source>
        <translation>Zurück zu den Patienten</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Akte %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation>Besuch %1, %2</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientsPage</name>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Durchsehen</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Name or record number</source>
        <translation>Name oder Aktennummer</translation>
    </message>
    <message>
        <source>Search patients by name or record number</source>
        <translation>Patienten nach Name oder Aktennummer suchen</translation>
    </message>
    <message>
        <source>New patient</source>
        <translation>Neuer Patient</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Zur Durchsicht</translation>
    </message>
    <message>
        <source>Unsigned</source>
        <translation>Nicht unterschrieben</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Patients</source>
        <translation>Patienten</translation>
    </message>
    <message>
        <source>in the order of the day</source>
        <translation>in der Reihenfolge des Tages</translation>
    </message>
    <message>
        <source>No visits today. Search for a patient, or add a new one.</source>
        <translation>Heute keine Besuche. Einen Patienten suchen oder neu anlegen.</translation>
    </message>
    <message>
        <source>Nothing waits for review.</source>
        <translation>Nichts wartet auf Durchsicht.</translation>
    </message>
    <message>
        <source>Every visit is signed.</source>
        <translation>Jeder Besuch ist unterschrieben.</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>No visit yet</source>
        <translation>Noch kein Besuch</translation>
    </message>
    <message>
        <source>the first %1; type more to narrow down</source>
        <translation>die ersten %1; mehr tippen zum Eingrenzen</translation>
    </message>
    <message>
        <source>No patients yet.</source>
        <translation>Noch keine Patienten.</translation>
    </message>
    <message>
        <source>Nobody by this name or number. New patient takes it over.</source>
        <translation>Niemand mit diesem Namen oder dieser Nummer. „Neuer Patient“ übernimmt ihn.</translation>
    </message>
    <message>
        <source>Needs a look</source>
        <translation>Braucht einen Blick</translation>
    </message>
    <message>
        <source>Nobody: no open red sign, nothing worse, no follow-up passed, every visit signed.</source>
        <translation>Niemand: kein offenes Warnzeichen, nichts schlechter, keine Kontrolle überfällig, jeder Besuch unterschrieben.</translation>
    </message>
    <message>
        <source>From a list …</source>
        <translation>Aus einer Liste …</translation>
    </message>
    <message>
        <source>Bring in a list of patients</source>
        <translation>Eine Patientenliste einlesen</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ProblemPage</name>
    <message>
        <source>Try again</source>
        <translation>Erneut versuchen</translation>
    </message>
    <message>
        <source>Open another clinic …</source>
        <translation>Andere Praxis öffnen …</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Restore a backup …</source>
        <translation>Sicherung zurückholen …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Rail</name>
    <message>
        <source>, %1 of %2 recorded</source>
        <translation>, %1 von %2 erfasst</translation>
    </message>
    <message>
        <source>, holds something abnormal</source>
        <translation>, enthält Auffälliges</translation>
    </message>
    <message>
        <source>, holds a red sign</source>
        <translation>, enthält ein Warnzeichen</translation>
    </message>
    <message>
        <source>Shows this page</source>
        <translation>Zeigt diese Seite</translation>
    </message>
    <message>
        <source>Steps of the visit</source>
        <translation>Schritte des Besuchs</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RecordCard</name>
    <message>
        <source>There is no backup in this folder yet.</source>
        <translation>In diesem Ordner ist noch keine Sicherung.</translation>
    </message>
    <message>
        <source>The newest is of %1, %2.</source>
        <translation>Die neueste ist vom %1, %2.</translation>
    </message>
    <message>
        <source>Record and backups</source>
        <translation>Akte und Sicherungen</translation>
    </message>
    <message>
        <source>Daily backups to keep</source>
        <translation>Tägliche Sicherungen behalten</translation>
    </message>
    <message>
        <source>Make none</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Back up now …</source>
        <translation>Jetzt sichern …</translation>
    </message>
    <message>
        <source>Another folder …</source>
        <translation>Anderer Ordner …</translation>
    </message>
    <message>
        <source>Verify the record</source>
        <translation>Akte prüfen</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Restore a backup …</source>
        <translation>Sicherung zurückholen …</translation>
    </message>
    <message>
        <source>Backups are encrypted and open only with a passphrase of their day. Each day’s goes to %1</source>
        <translation>Sicherungen sind verschlüsselt und öffnen sich nur mit einer Passphrase ihres Tages. Die tägliche geht nach %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RedSignBar</name>
    <message>
        <source>Emergency</source>
        <translation>Notfall</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Dringend</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Show items</source>
        <translation>Befunde zeigen</translation>
    </message>
    <message>
        <source>Next red sign</source>
        <translation>Nächstes Warnzeichen</translation>
    </message>
    <message>
        <source>Hold for a moment, or press Enter twice</source>
        <translation>Kurz halten oder zweimal Eingabe drücken</translation>
    </message>
    <message>
        <source>Red sign, %1: %2</source>
        <translation>Warnzeichen, %1: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Acknowledge</source>
        <translation>Bestätigen</translation>
    </message>
    <message>
        <source>Acknowledge as %1</source>
        <translation>Bestätigen als %1</translation>
    </message>
    <message>
        <source>Acknowledge the red sign as %1</source>
        <translation>Warnzeichen bestätigen als %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RestorePage</name>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung zurückholen</translation>
    </message>
    <message>
        <source>Choose the backup …</source>
        <translation>Sicherung wählen …</translation>
    </message>
    <message>
        <source>Administrator</source>
        <translation>Verwaltung</translation>
    </message>
    <message>
        <source>Passphrase of that day</source>
        <translation>Passphrase jenes Tages</translation>
    </message>
    <message>
        <source>Also when it was damaged</source>
        <translation>Auch wenn sie beschädigt war</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The record of the backup takes the place of %1. What stands there now is kept beside it under another name.</source>
        <translation>Die Akte der Sicherung tritt an die Stelle von %1. Was jetzt dort steht, bleibt unter anderem Namen daneben.</translation>
    </message>
    <message>
        <source>No backup is chosen yet.</source>
        <translation>Noch keine Sicherung gewählt.</translation>
    </message>
    <message>
        <source>Choose the backup</source>
        <translation>Sicherung wählen</translation>
    </message>
    <message>
        <source>Backups (*%1);;All files (*)</source>
        <translation>Sicherungen (*%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1, as of %2, %3</source>
        <translation>%1, Stand %2, %3</translation>
    </message>
    <message>
        <source>Checking and restoring …</source>
        <translation>Wird geprüft und zurückgeholt …</translation>
    </message>
    <message>
        <source>Choose the backup first.</source>
        <translation>Zuerst die Sicherung wählen.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RowMenu</name>
    <message>
        <source>Both sides not testable</source>
        <translation>Beide Seiten nicht prüfbar</translation>
    </message>
    <message>
        <source>How it is done</source>
        <translation>Wie geprüft wird</translation>
    </message>
    <message>
        <source>Not testable</source>
        <translation>Nicht prüfbar</translation>
    </message>
    <message>
        <source>Change the note</source>
        <translation>Notiz ändern</translation>
    </message>
    <message>
        <source>Add a note</source>
        <translation>Notiz hinzufügen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>%1: cleared</source>
        <translation>%1: gelöscht</translation>
    </message>
    <message>
        <source>%1: not testable</source>
        <translation>%1: nicht prüfbar</translation>
    </message>
    <message>
        <source>What it was before</source>
        <translation>Was es vorher war</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Rows</name>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>right, left</source>
        <translation>rechts, links</translation>
    </message>
    <message>
        <source>Less feeling</source>
        <translation>Weniger Gefühl</translation>
    </message>
    <message>
        <source>%1, about cm²</source>
        <translation>%1, etwa cm²</translation>
    </message>
    <message>
        <source>impression, %</source>
        <translation>Eindruck, %</translation>
    </message>
    <message>
        <source>acknowledged by %1</source>
        <translation>bestätigt von %1</translation>
    </message>
    <message>
        <source>Red sign, %1: %2 %3 %4</source>
        <translation>Warnzeichen, %1: %2 %3 %4</translation>
    </message>
    <message>
        <source>No site yet.</source>
        <translation>Noch kein Ort.</translation>
    </message>
    <message>
        <source>No finding so far bears on a nerve, root or other cause. Until one does, nothing is named here: starting weights are not a finding.</source>
        <translation>Noch betrifft kein Befund einen Nerv, eine Wurzel oder eine andere Ursache. Bis dahin wird hier nichts genannt: Anfangsgewichte sind kein Befund.</translation>
    </message>
    <message>
        <source>%1, %2 support, %3</source>
        <translation>%1, Stütze %2, %3</translation>
    </message>
    <message>
        <source>all other sites together</source>
        <translation>alle anderen Orte zusammen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>for</source>
        <translation>dafür</translation>
    </message>
    <message>
        <source>against</source>
        <translation>dagegen</translation>
    </message>
    <message>
        <source>Reasons for and against %1</source>
        <translation>Gründe für und gegen %1</translation>
    </message>
    <message>
        <source>against: %1, %2 decibans</source>
        <translation>dagegen: %1, %2 Deziban</translation>
    </message>
    <message>
        <source>for: %1, %2 decibans</source>
        <translation>dafür: %1, %2 Deziban</translation>
    </message>
    <message>
        <source>fewer reasons</source>
        <translation>weniger Gründe</translation>
    </message>
    <message>
        <source>%1 more reasons</source>
        <translation>%1 weitere Gründe</translation>
    </message>
    <message>
        <source>Hard to explain:</source>
        <translation>Schwer zu erklären:</translation>
    </message>
    <message>
        <source>Would fit the disc %1</source>
        <translation>Würde zur Bandscheibe %1 passen</translation>
    </message>
    <message>
        <source>; less often %1</source>
        <translation>; seltener %1</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>low: %1</source>
        <translation>gering: %1</translation>
    </message>
    <message>
        <source>not examined: %1</source>
        <translation>nicht untersucht: %1</translation>
    </message>
    <message>
        <source>Screens, %1</source>
        <translation>Suchtests, %1</translation>
    </message>
    <message>
        <source>Screen %1:</source>
        <translation>Suchtest %1:</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>erhöht</translation>
    </message>
    <message>
        <source>Warning questions not asked: %1</source>
        <translation>Warnfragen nicht gestellt: %1</translation>
    </message>
    <message>
        <source>Consistency:</source>
        <translation>Stimmigkeit:</translation>
    </message>
    <message>
        <source>red-sign question, still open</source>
        <translation>Warnfrage, noch offen</translation>
    </message>
    <message>
        <source>would tell most now</source>
        <translation>sagt jetzt am meisten aus</translation>
    </message>
    <message>
        <source>tells the sides apart for %1</source>
        <translation>trennt die Seiten bei %1</translation>
    </message>
    <message>
        <source>parts %1 from %2</source>
        <translation>trennt %1 von %2</translation>
    </message>
    <message>
        <source>Next tests</source>
        <translation>Nächste Prüfungen</translation>
    </message>
    <message>
        <source>Next test: %1, %2</source>
        <translation>Nächste Prüfung: %1, %2</translation>
    </message>
    <message>
        <source>nothing found yet</source>
        <translation>noch nichts gefunden</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SettingsPage</name>
    <message>
        <source>Leave the settings</source>
        <translation>Einstellungen verlassen</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>On this machine</source>
        <translation>Auf diesem Gerät</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farben</translation>
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
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Clinic</source>
        <translation>Praxis</translation>
    </message>
    <message>
        <source>Letterhead: the first line is the clinic&apos;s name</source>
        <translation>Briefkopf: die erste Zeile ist der Name der Praxis</translation>
    </message>
    <message>
        <source>Letterhead</source>
        <translation>Briefkopf</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Längen</translation>
    </message>
    <message>
        <source>Centimeters</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Strength grades</source>
        <translation>Kraftgrade</translation>
    </message>
    <message>
        <source>Whole grades</source>
        <translation>Ganze Grade</translation>
    </message>
    <message>
        <source>Also 4− and 4+</source>
        <translation>Auch 4− und 4+</translation>
    </message>
    <message>
        <source>Lock after</source>
        <translation>Sperren nach</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Lock the screen when nothing was touched for</source>
        <translation>Bildschirm sperren, wenn nichts berührt wurde seit</translation>
    </message>
    <message>
        <source>Save for the clinic</source>
        <translation>Für die Praxis sichern</translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation>Ihre Passphrase</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Neue Passphrase</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Dieselbe noch einmal</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gesichert.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Die beiden Passphrasen sind verschieden.</translation>
    </message>
    <message>
        <source>Changed.</source>
        <translation>Geändert.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Phrases for the plan, one a line; the short ones become buttons</source>
        <translation>Wendungen für den Plan, eine je Zeile; kurze werden Schaltflächen</translation>
    </message>
    <message>
        <source>Phrases for the plan</source>
        <translation>Wendungen für den Plan</translation>
    </message>
    <message>
        <source>Changing …</source>
        <translation>Wird geändert …</translation>
    </message>
    <message>
        <source>Saved for the clinic.</source>
        <translation>Für die Praxis gesichert.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SetupPage</name>
    <message>
        <source>A new clinic</source>
        <translation>Eine neue Praxis</translation>
    </message>
    <message>
        <source>The record will be kept, sealed, in %1</source>
        <translation>Die Akte wird versiegelt aufbewahrt in %1</translation>
    </message>
    <message>
        <source>Name of the clinic</source>
        <translation>Name der Praxis</translation>
    </message>
    <message>
        <source>Your name (administrator)</source>
        <translation>Ihr Name (Verwaltung)</translation>
    </message>
    <message>
        <source>Passphrase, at least %1 characters</source>
        <translation>Passphrase, mindestens %1 Zeichen</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>Dieselbe Passphrase noch einmal</translation>
    </message>
    <message>
        <source>Nobody can open the record without a passphrase. Keep this one safe: it cannot be recovered from the file.</source>
        <translation>Ohne Passphrase kann niemand die Akte öffnen. Gut aufbewahren: aus der Datei lässt sie sich nicht wiederherstellen.</translation>
    </message>
    <message>
        <source>Create the clinic</source>
        <translation>Praxis anlegen</translation>
    </message>
    <message>
        <source>Creating …</source>
        <translation>Wird angelegt …</translation>
    </message>
    <message>
        <source>The clinic needs a name; it stands on every page.</source>
        <translation>Die Praxis braucht einen Namen; er steht auf jedem Blatt.</translation>
    </message>
    <message>
        <source>The administrator needs a name.</source>
        <translation>Die Verwaltung braucht einen Namen.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Die beiden Passphrasen sind verschieden.</translation>
    </message>
    <message>
        <source>The passphrase needs at least %1 characters.</source>
        <translation>Die Passphrase braucht mindestens %1 Zeichen.</translation>
    </message>
    <message>
        <source>Restore a backup instead …</source>
        <translation>Stattdessen Sicherung zurückholen …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SignInPage</name>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Anmelden</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Wird geöffnet …</translation>
    </message>
    <message>
        <source>Type your passphrase.</source>
        <translation>Passphrase eingeben.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SkinFigure</name>
    <message>
        <source>not examined</source>
        <translation>nicht untersucht</translation>
    </message>
    <message>
        <source>about %1 cm²</source>
        <translation>etwa %1 cm²</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>Show a territory</source>
        <translation>Ein Gebiet zeigen</translation>
    </message>
    <message>
        <source>Points to touch</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>Shows where to touch for each level</source>
        <translation>Zeigt, wo für jede Höhe zu berühren ist</translation>
    </message>
    <message>
        <source>Mirror normal</source>
        <translation>Rest normal spiegeln</translation>
    </message>
    <message>
        <source>Marks what is not examined on this layer as normal, the saddle left out</source>
        <translation>Markiert auf dieser Ebene nicht Untersuchtes als normal, außer der Reithose</translation>
    </message>
    <message>
        <source>Enlarge</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Skin figures</source>
        <translation>Hautfiguren</translation>
    </message>
    <message>
        <source>a tap moves on to the next</source>
        <translation>ein Tippen schaltet weiter</translation>
    </message>
    <message>
        <source>Whole figures</source>
        <translation>Ganze Figuren</translation>
    </message>
    <message>
        <source>%1: rest normal</source>
        <translation>%1: Rest normal</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keines</translation>
    </message>
    <message>
        <source>on both sides</source>
        <translation>auf beiden Seiten</translation>
    </message>
    <message>
        <source>all on the left</source>
        <translation>alle links</translation>
    </message>
    <message>
        <source>all on the right</source>
        <translation>alle rechts</translation>
    </message>
    <message>
        <source>Nothing examined on this layer</source>
        <translation>Auf dieser Ebene nichts untersucht</translation>
    </message>
    <message>
        <source>%1 of %2 regions examined, none abnormal</source>
        <translation>%1 von %2 Bereichen untersucht, keiner auffällig</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>nicht markiert</translation>
    </message>
    <message>
        <source>less feeling: &lt;b&gt;%1&lt;/b&gt; of skin</source>
        <translation>weniger Gefühl: &lt;b&gt;%1&lt;/b&gt; Haut</translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>last visit</source>
        <translation>letzter Besuch</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>%1 links</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>%1 rechts</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::StepPage</name>
    <message>
        <source>Rest of step normal</source>
        <translation>Rest des Schritts normal</translation>
    </message>
    <message>
        <source>Marks what shows on all pages of this step and is not examined as normal, in bulk</source>
        <translation>Markiert alles Gezeigte dieses Schritts, das nicht untersucht ist, gesammelt als normal</translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>last visit</source>
        <translation>letzter Besuch</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Strip</name>
    <message>
        <source>Lock the screen</source>
        <translation>Bildschirm sperren</translation>
    </message>
    <message>
        <source>Lock (Ctrl+L)</source>
        <translation>Sperren (Strg+L)</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Menu (F10)</source>
        <translation>Menü (F10)</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SummaryPage</name>
    <message>
        <source>Write the page as a PDF file</source>
        <translation>Blatt als PDF-Datei schreiben</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Writing %1 …</source>
        <translation>%1 wird geschrieben …</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>Print the page</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>Not printed: the printer could not be started.</source>
        <translation>Nicht gedruckt: der Drucker startete nicht.</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>An den Drucker übergeben.</translation>
    </message>
    <message>
        <source>Copied as text.</source>
        <translation>Als Text kopiert.</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>Added.</source>
        <translation>Hinzugefügt.</translation>
    </message>
    <message>
        <source>The audit could not be written: %1</source>
        <translation>Das Protokoll konnte nicht geschrieben werden: %1</translation>
    </message>
    <message>
        <source>Stay active.</source>
        <translation>Aktiv bleiben.</translation>
    </message>
    <message>
        <source>Review in 2 weeks.</source>
        <translation>Kontrolle in 2 Wochen.</translation>
    </message>
    <message>
        <source>Return if worse.</source>
        <translation>Wiederkommen bei Verschlechterung.</translation>
    </message>
    <message>
        <source>Told what would need same-day care.</source>
        <translation>Aufgeklärt, was am selben Tag Hilfe braucht.</translation>
    </message>
    <message>
        <source>Exercises shown and written down.</source>
        <translation>Übungen gezeigt und aufgeschrieben.</translation>
    </message>
    <message>
        <source>Imaging is not needed at present.</source>
        <translation>Bildgebung derzeit nicht nötig.</translation>
    </message>
    <message>
        <source>Imaging is requested.</source>
        <translation>Bildgebung ist angefordert.</translation>
    </message>
    <message>
        <source>Surgical opinion is requested.</source>
        <translation>Chirurgische Meinung ist angefordert.</translation>
    </message>
    <message>
        <source>read only</source>
        <translation>nur lesen</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SummaryPanel</name>
    <message>
        <source>Go there</source>
        <translation>Dorthin</translation>
    </message>
    <message>
        <source>Go there: %1</source>
        <translation>Dorthin: %1</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>What was agreed and advised</source>
        <translation>Was vereinbart und geraten wurde</translation>
    </message>
    <message>
        <source>All phrases</source>
        <translation>Alle Wendungen</translation>
    </message>
    <message>
        <source>Show on the page</source>
        <translation>Auf dem Blatt zeigen</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Figuren</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Items not examined</source>
        <translation>Nicht Untersuchtes</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Write as PDF file</source>
        <translation>Als PDF-Datei schreiben</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Sign and lock</source>
        <translation>Unterschreiben und sperren</translation>
    </message>
    <message>
        <source>Addendum</source>
        <translation>Nachtrag</translation>
    </message>
    <message>
        <source>What is to be added to the signed visit</source>
        <translation>Was dem unterschriebenen Besuch hinzuzufügen ist</translation>
    </message>
    <message>
        <source>Add to the signed visit</source>
        <translation>Dem Besuch hinzufügen</translation>
    </message>
    <message>
        <source>Before signing</source>
        <translation>Vor dem Unterschreiben</translation>
    </message>
    <message>
        <source>Short form</source>
        <translation>Kurzform</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Tour</name>
    <message>
        <source>Tour</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Überspringen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>A visit in one minute</source>
        <translation>Ein Besuch in einer Minute</translation>
    </message>
    <message>
        <source>Six parts, ten seconds each. Escape leaves the tour at any time.</source>
        <translation>Sechs Teile, je zehn Sekunden. Escape beendet den Rundgang jederzeit.</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Die Schritte</translation>
    </message>
    <message>
        <source>Take them in any order. A ring fills as you record; a mark says that something is abnormal.</source>
        <translation>In beliebiger Reihenfolge. Ein Ring füllt sich beim Erfassen; eine Marke zeigt Auffälliges.</translation>
    </message>
    <message>
        <source>One press records</source>
        <translation>Ein Druck erfasst</translation>
    </message>
    <message>
        <source>A second press on the same value clears it. The patient&apos;s right stands on the left half, as when you face each other. Hold a button for a note, for not testable and for how the test is done.</source>
        <translation>Ein zweiter Druck auf denselben Wert löscht ihn. Die rechte Seite des Patienten steht auf der linken Hälfte, wie beim Gegenüberstehen. Eine Schaltfläche halten: Notiz, nicht prüfbar, wie geprüft wird.</translation>
    </message>
    <message>
        <source>The rest normal</source>
        <translation>Der Rest normal</translation>
    </message>
    <message>
        <source>After what is abnormal, one press marks the rest of a card as normal. It stays visible as filled in bulk. What was not examined never looks normal.</source>
        <translation>Nach dem Auffälligen markiert ein Druck den Rest einer Karte als normal. Er bleibt als gesammelt ausgefüllt erkennbar. Nicht Untersuchtes sieht nie normal aus.</translation>
    </message>
    <message>
        <source>The impression</source>
        <translation>Der Eindruck</translation>
    </message>
    <message>
        <source>What the findings speak for, why, and what to test next; each line leads to its item. It supports your decision and is no diagnosis.</source>
        <translation>Wofür die Befunde sprechen, warum und was als Nächstes zu prüfen ist; jede Zeile führt zu ihrer Prüfung. Er stützt Ihre Entscheidung und ist keine Diagnose.</translation>
    </message>
    <message>
        <source>Saved at once</source>
        <translation>Sofort gesichert</translation>
    </message>
    <message>
        <source>Every press is on disk by itself. Undo takes back any step. The slash key finds an item by name; this tour stays in the menu.</source>
        <translation>Jeder Druck ist von selbst auf der Platte. Rückgängig nimmt jeden Schritt zurück. Die Schrägstrichtaste findet eine Prüfung nach Namen; dieser Rundgang bleibt im Menü.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::TrendChart</name>
    <message>
        <source>%1, visit %2: %3</source>
        <translation>%1, Besuch %2: %3</translation>
    </message>
    <message>
        <source>Opens that visit, read only</source>
        <translation>Öffnet diesen Besuch, nur lesen</translation>
    </message>
    <message>
        <source>Course over all visits</source>
        <translation>Verlauf über alle Besuche</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Besuch</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Shows the list of events</source>
        <translation>Zeigt die Liste der Ereignisse</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::TrendPage</name>
    <message>
        <source>All visits</source>
        <translation>Alle Besuche</translation>
    </message>
    <message>
        <source>Which measures</source>
        <translation>Welche Messwerte</translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation>Links und rechts</translation>
    </message>
    <message>
        <source>Scores only</source>
        <translation>Nur Punktzahlen</translation>
    </message>
    <message>
        <source>Choose measures</source>
        <translation>Messwerte wählen</translation>
    </message>
    <message>
        <source>There is one visit so far: a course needs two.</source>
        <translation>Bisher ein Besuch: ein Verlauf braucht zwei.</translation>
    </message>
    <message>
        <source>Left: solid line, filled dots. Right: dashed line, hollow dots. A triangle or diamond marks a change larger than its threshold. A gap: not examined. Decision support, not a diagnosis.</source>
        <translation>Links: durchgezogen, volle Punkte. Rechts: gestrichelt, hohle Punkte. Dreieck oder Raute: Veränderung über ihrer Schwelle. Lücke: nicht untersucht. Entscheidungshilfe, keine Diagnose.</translation>
    </message>
    <message>
        <source>Course over all visits</source>
        <translation>Verlauf über alle Besuche</translation>
    </message>
    <message>
        <source>Chart as PNG …</source>
        <translation>Diagramm als PNG …</translation>
    </message>
    <message>
        <source>Chart as SVG …</source>
        <translation>Diagramm als SVG …</translation>
    </message>
    <message>
        <source>Figures as CSV …</source>
        <translation>Zahlen als CSV …</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Ausgeben</translation>
    </message>
    <message>
        <source>A triangle or diamond marks a change larger than its threshold. A gap in a line: not examined at that visit. Press a point to open that visit, read only.</source>
        <translation>Dreieck oder Raute: Veränderung über ihrer Schwelle. Lücke in einer Linie: bei diesem Besuch nicht untersucht. Einen Punkt drücken öffnet den Besuch, nur lesen.</translation>
    </message>
    <message>
        <source>Recorded, but not in today&apos;s catalogue and so not shown: %1.</source>
        <translation>Erfasst, aber nicht im heutigen Katalog und daher nicht gezeigt: %1.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich geändert hat</translation>
    </message>
    <message>
        <source>Visit %1 to visit %2: %3</source>
        <translation>Besuch %1 zu Besuch %2: %3</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::UsersCard</name>
    <message>
        <source>Nurse</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Clinician</source>
        <translation>Behandelnde</translation>
    </message>
    <message>
        <source>Reviewer</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Administrator</source>
        <translation>Verwaltung</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Add someone</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the new user</source>
        <translation>Name der neuen Person</translation>
    </message>
    <message>
        <source>Role of the new user</source>
        <translation>Rolle der neuen Person</translation>
    </message>
    <message>
        <source>First passphrase</source>
        <translation>Erste Passphrase</translation>
    </message>
    <message>
        <source>First passphrase of the new user</source>
        <translation>Erste Passphrase der neuen Person</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>%1 (may no longer sign in)</source>
        <translation>%1 (darf sich nicht mehr anmelden)</translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation>Rolle von %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>Let in again</source>
        <translation>Wieder zulassen</translation>
    </message>
    <message>
        <source>%1 may no longer sign in</source>
        <translation>%1 darf sich nicht mehr anmelden</translation>
    </message>
    <message>
        <source>%1 may sign in again</source>
        <translation>%1 darf sich wieder anmelden</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitList</name>
    <message>
        <source>Patient</source>
        <translation>Patient</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Besuch</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Stand</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitPage</name>
    <message>
        <source>Try again</source>
        <translation>Erneut versuchen</translation>
    </message>
    <message>
        <source>Save a copy …</source>
        <translation>Kopie sichern …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Signed, read only</source>
        <translation>Unterschrieben, nur lesen</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Nur lesen</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Sichert</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Nicht erfasst: %1</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Gesichert %1</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gesichert</translation>
    </message>
    <message>
        <source>%1 What was recorded since is kept here (changes waiting: %2).</source>
        <translation>%1 Was seither erfasst wurde, bleibt hier erhalten (wartende Änderungen: %2).</translation>
    </message>
    <message>
        <source>Back to the course</source>
        <translation>Zurück zum Verlauf</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitSession</name>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>gelöscht</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitWatch</name>
    <message>
        <source>nothing recorded</source>
        <translation>nichts erfasst</translation>
    </message>
    <message>
        <source>%1: %2 (was %3), by %4</source>
        <translation>%1: %2 (war %3), von %4</translation>
    </message>
    <message>
        <source>Changed by somebody else. %1</source>
        <translation>Von jemand anderem geändert. %1</translation>
    </message>
    <message>
        <source>Somebody else wrote this plan: “%1” Before, it was: “%2”</source>
        <translation>Jemand anders hat diesen Plan geschrieben: „%1“ Vorher stand dort: „%2“</translation>
    </message>
    <message>
        <source>%1 Acknowledged by %2.</source>
        <translation>%1 Bestätigt von %2.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::WordsEditor</name>
    <message>
        <source>Changed from the program&apos;s words</source>
        <translation>Vom Wortlaut des Programms abweichend</translation>
    </message>
    <message>
        <source>What was not examined stays on the page.</source>
        <translation>Nicht Untersuchtes bleibt auf dem Blatt.</translation>
    </message>
    <message>
        <source>Use these words</source>
        <translation>Diesen Wortlaut verwenden</translation>
    </message>
    <message>
        <source>Back to the program&apos;s words</source>
        <translation>Zurück zum Wortlaut des Programms</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Words of %1</source>
        <translation>Wortlaut von %1</translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>Nichts ist geändert.</translation>
    </message>
</context>
<context>
    <name>rhizograph::window</name>
    <message>
        <source>Compare</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Bericht</translation>
    </message>
</context>
</TS>
