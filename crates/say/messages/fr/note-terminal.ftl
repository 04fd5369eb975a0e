## Ce qui a été noté, dans le terminal.

note-terminal-noted = { $colony }, { $at } : { $note } ({ $done ->
    [edited] changé
    [known] déjà connu
    [withdrawn] retiré
    [restored] rétabli
   *[stored] enregistré
}, note { $id })
note-terminal-line = { $at } { $note } (note { $id })
note-terminal-none = rien n’est encore noté

note-terminal-noted-at = Noté pour { $colony } : { $note }.
note-terminal-examined = Gardé comme note de { $colony }.
note-terminal-doubt = { $colony } : { $note } : { $doubt }
note-terminal-doubt-sure = { $colony } : { $note } : { $doubt } ; si c’est exact quand même, ajouter --sure
note-terminal-nothing-back = il n’y a rien à reprendre pour { $colony }
note-terminal-no-such = --edit : cette colonie n’a pas de note { $id } ; voir snowhum note NAME --list
note-terminal-wrong-entry = « { $entry } » : { $wrong }
note-terminal-nothing = rien à noter ; écrire par exemple "hum=heard by ear"
note-terminal-no-time = --at : « { $written } » n’est pas une heure ; écrire par exemple "2026-01-06 10:00"
note-terminal-would-not-read = le fichier ne se lirait plus avec cette note, et a été laissé tel quel :
note-terminal-no-sign = aucun signe n’est dit ; regarder d’abord, puis garder ce qui a été trouvé
