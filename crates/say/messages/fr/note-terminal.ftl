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
