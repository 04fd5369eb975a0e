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
