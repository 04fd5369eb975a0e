## Eine Notiz an einem Volk, geschrieben und geändert.

note-page-not-yet-at = Bei { $hive } noch nicht notiert
note-page-not-yet = Noch nicht notiert
note-page-back = Zurück zu { $hive }
note-page-note = Notieren
note-page-line = Geschrieben, mehrere mit „;“ dazwischen, oder unten angetippt
note-page-depth = Schnee an der Beute, über dem Boden, { $unit }
note-page-mites = Milben, von so vielen Bienen
note-page-words = Freie Worte
note-page-day = Tag, wenn nicht { DAY($today) }
note-page-keep = Speichern
note-page-examples = Was geschrieben werden kann
note-page-fed = Gefüttert, { $unit }
note-page-what-fed = Womit gefüttert wurde
note-page-syrup-3-2 = Sirup 3:2
note-page-syrup-2-1 = Sirup 2:1
note-page-syrup-1-1 = Sirup 1:1
note-page-fondant = Futterteig
note-page-candy = Zuckertafel
note-page-board = Zuckertafel, Fladen oder Futtergeschirr aufgelegt
note-page-board-on = Aufgelegt: { $board }
note-page-eaten-up = aufgefressen
note-page-taken-off = abgenommen

note-page-at = Eine Notiz bei { $hive }
note-page-signs = Zeichen und Getanes, mehreres mit „;“ dazwischen
note-page-keep-change = Änderung speichern
note-page-withdraw = Zurückziehen
note-page-stood = Wie sie lautete
note-page-never-lost = Nichts wird je überschrieben. Eine zurückgezogene Notiz zählt nicht mehr und kommt wieder, wenn sie noch einmal gespeichert wird.
note-page-title = Eine Notiz
note-page-version = { $kind ->
    [edited] geändert
    [withdrawn] zurückgezogen
    [restored] wiederhergestellt
   *[made] geschrieben
} { DAY($on, style: "full") }, { $clock }

note-page-feed-wanted = { $much }: bitte antippen, womit gefüttert wurde.
note-page-day-wanted = { $day }: bitte einen Tag schreiben, etwa 2026-01-18.

## Was an einer gesendeten Notiz nicht stimmt.

note-page-too-many = Mehr als { NUMBER($most) } Einträge in einer Notiz; als zwei senden.
note-page-nothing = { $hive }: nichts ist notiert; etwas antippen oder schreiben.
note-page-wrong-entry = { $hive }: { $entry }: { $wrong }
note-page-words-long = Die freien Worte sind länger als { NUMBER($most) } Zeichen; kürzen.
note-page-wrong-air = Die Luft: { $wrong }
note-page-wrong-wind = Der Wind: { $wrong }
note-page-doubt = { $hive }: { $doubt }.
note-page-after-looked-at = { DAY($on, style: "full") } kommt erst noch: angesehen wird der { DAY($until, style: "full") }. Einen Tag bis dahin schreiben.
note-page-after-today = { DAY($on, style: "full") } kommt erst noch: heute ist der { DAY($until, style: "full") }. Einen Tag bis heute schreiben.
note-page-other-yard = ein Volk eines anderen Standes
