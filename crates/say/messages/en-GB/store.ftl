## What can go wrong with the records, and what the keeper can do.

store-fault = { $place }: { $wrong }
store-read-only = cannot be written; make the file and its folder writable, or name another place for the store
store-full = the disk is full; free some space and try again. What was answered as stored is safe
store-locked = another program is using the store and did not let go; close it and try again
store-no-database = is not a store of Snowhum's records; name the right file, or restore a backup over it
store-other-program = is a database of another program; name another file, nothing was changed in this one
store-foreign = holds { $what }, which no store of Snowhum's has; nothing of it was read or run. Name another file
store-too-long = could not be looked through in the time there is for it; it is damaged, or made to be slow. Name another file, or restore the last backup
store-newer = was written by a newer Snowhum (form { NUMBER($found) }; this program knows up to { NUMBER($known) }); use the newer program, nothing was changed
store-damaged = is damaged: { $what }; restore the last backup, the damaged file is kept aside
store-not-in-order = is not in order ({ $what }); nothing was put in the place of your records. Name another backup or export
store-missing = there is no such file; check the name
store-already-there = is already there and is not overwritten; name another file
store-disk = cannot be used ({ $what }); check that the folder exists and may be written
store-no-folder = there is no such folder
store-not-empty = already holds records; read the export into a new store, or import yards and notes one by one
store-unreadable = { $at }: { $what }; { $form ->
    [export] read in an export as `export` wrote it
   *[sheet] read in a file with a column `body` as in note_versions.csv
}
store-no-such-note = there is no note { $id }; it may have been written on another device that has not sent it yet
store-in-another-yard = the { $what ->
    [hive] hive
   *[colony] colony
} "{ $name }" stands in another yard of this store; take it out of that yard first, or give it a new id
store-refused = the database refused ({ $what }); run `snowhum doctor`

store-unfit = { $field ->
    [count] the day of the count
    [time] the time
    [yard] the yard
    [hive] the hive
    [colony] the colony
    [note] the note
    [alert] the alert
    [author] the author
    [setting-name] the name of the setting
    [setting] the setting
   *[row] a row
} cannot be kept: { $what }; { $right ->
    [finite] every number must be finite
    [no-nul] leave out the character NUL
    [yard] take the yard of the records, or a file of its latest autumn
   *[years] write a day from 1950 on, and not more than a year ahead
}
store-not-as-it-is = it would not read back as it is
store-holds-nul = it holds the character NUL
store-note-of = note { $id } is of { $time }
