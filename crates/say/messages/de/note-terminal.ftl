## Was notiert wurde, im Terminal.

note-terminal-noted = { $colony }, { $at }: { $note } ({ $done ->
    [edited] geändert
    [known] schon bekannt
    [withdrawn] zurückgezogen
    [restored] wiederhergestellt
   *[stored] gespeichert
}, Notiz { $id })
note-terminal-line = { $at } { $note } (Notiz { $id })
note-terminal-none = noch ist nichts notiert

note-terminal-noted-at = Notiert bei { $colony }: { $note }.
note-terminal-examined = Als Notiz von { $colony } aufbewahrt.
note-terminal-doubt = { $colony }: { $note }: { $doubt }
note-terminal-doubt-sure = { $colony }: { $note }: { $doubt }; stimmt es trotzdem, --sure anfügen
note-terminal-nothing-back = bei { $colony } gibt es nichts zurückzunehmen
note-terminal-no-such = --edit: dieses Volk hat keine Notiz { $id }; siehe snowhum note NAME --list
note-terminal-wrong-entry = „{ $entry }“: { $wrong }
note-terminal-nothing = nichts zu notieren; etwa "hum=heard by ear" schreiben
note-terminal-no-time = --at: „{ $written }“ ist keine Zeit; etwa "2026-01-06 10:00" schreiben
note-terminal-would-not-read = mit dieser Notiz ließe sich die Datei nicht lesen; sie blieb, wie sie ist:
note-terminal-no-sign = kein Zeichen ist genannt; erst nachsehen, dann das Gefundene aufbewahren
