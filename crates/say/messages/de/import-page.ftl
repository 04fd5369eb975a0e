## Die Seite „Notizen aus einer Tabelle“.

import-page-heading = Notizen aus einer Tabelle
import-page-kept = Behalten: { NUMBER($notes) } { $notes ->
    [one] Notiz
   *[other] Notizen
}.
import-page-undo = Zurücknehmen
import-page-back = Zurückgenommen: { NUMBER($notes) } { $notes ->
    [one] Notiz
   *[other] Notizen
}.
import-page-lede = Eine Zeile für jeden Blick auf ein Volk: sein Tag, sein Volk, und was zu sehen war. Nichts wird behalten, ehe zu sehen ist, wie es gelesen wird.
import-page-file = Die Datei: eine Arbeitsmappe (.xlsx) oder eine Tabelle als Text (.csv)
import-page-sheet = Welches Blatt davon; das erste, wenn keines genannt ist
import-page-paste = Oder die Zellen hier einfügen, samt Überschriften
import-page-mend = Die Zellen; hier berichtigen, oder im Blatt
import-page-columns = Was die Spalten sind, wo ihre Überschriften es nicht sagen
import-page-see = Sehen, wie es gelesen wird

import-page-not-read = Noch nicht gelesen
import-page-nothing-kept = Nichts wurde behalten.
import-page-more-faults = Und { NUMBER($more) } weitere anderer Art.

import-page-preview = Wie es gelesen wird
import-page-notes = { NUMBER($notes) } { $notes ->
    [one] Notiz
   *[other] Notizen
}. Noch ist nichts behalten.
import-page-right = Stimmt das?
import-page-asked-rows = Zeilen, zu denen gefragt wird
import-page-cells = Ihre Zellen
import-page-keep = Behalten
import-page-keep-plain = Die behalten, zu denen nichts gefragt wird: { NUMBER($notes) }
import-page-keep-all = Sie stimmen: alle { NUMBER($notes) } behalten
import-page-plain = Wie sie behalten würden
import-page-rows = Zeilen
import-page-read-so = Die Spalten wurden so gelesen: <code>{ $columns }</code>. Ist das falsch, anders sagen:
import-page-row = Zeile
import-page-hive = Volk
import-page-when = Wann
import-page-note = Notiz
import-page-at = { DAY($on, style: "full") }, { $time }
import-page-known = schon behalten
import-page-more-rows = Und { NUMBER($more) } weitere.

import-page-broken = Das Formular brach ab ({ $error }); noch einmal senden.
