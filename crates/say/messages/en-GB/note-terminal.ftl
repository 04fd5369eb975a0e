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

note-terminal-noted-at = Noted at { $colony }: { $note }.
note-terminal-examined = Kept as a note of { $colony }.
note-terminal-doubt = { $colony }: { $note }: { $doubt }
note-terminal-doubt-sure = { $colony }: { $note }: { $doubt }; if it is right all the same, add --sure
note-terminal-nothing-back = there is nothing to take back at { $colony }
note-terminal-no-such = --edit: this colony has no note { $id }; see snowhum note NAME --list
note-terminal-wrong-entry = "{ $entry }": { $wrong }
note-terminal-nothing = nothing to note; write such as "hum=heard by ear"
note-terminal-no-time = --at: "{ $written }" is no time; write such as "2026-01-06 10:00"
note-terminal-would-not-read = the file would not read with this note, and was left as it is:
note-terminal-no-sign = no sign is told; look first, then keep what you found
