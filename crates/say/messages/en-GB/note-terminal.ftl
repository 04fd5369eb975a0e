## What was noted, in the terminal.

note-terminal-noted = { $colony }, { $at }: { $note } ({ $done ->
    [edited] edited
    [known] known already
    [withdrawn] withdrawn
    [restored] restored
   *[stored] stored
}, note { $id })
note-terminal-line = { $at } { $note } (note { $id })
note-terminal-none = nothing is noted yet
