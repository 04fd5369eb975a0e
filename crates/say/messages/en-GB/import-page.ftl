## The page "Notes from a spreadsheet".

import-page-heading = Notes from a spreadsheet
import-page-kept = Kept: { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}.
import-page-undo = Take them back
import-page-back = Taken back: { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}.
import-page-lede = A row for each look at a hive: its day, its hive, and what was seen. Nothing is kept before you have seen how it is read.
import-page-file = The file: a workbook (.xlsx) or a table as text (.csv)
import-page-sheet = Which sheet of it; the first if you write none
import-page-paste = Or paste its cells here, headings and all
import-page-mend = Its cells; mend them here, or in the sheet
import-page-columns = What the columns are, where their headings do not tell
import-page-see = See how it is read

import-page-not-read = Not read yet
import-page-nothing-kept = Nothing was kept.
import-page-more-faults = And { NUMBER($more) } more of other kinds.

import-page-preview = How it is read
import-page-notes = { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}. Nothing is kept yet.
import-page-right = Is that right?
import-page-asked-rows = Rows that are asked about
import-page-cells = Its cells
import-page-keep = Keep them
import-page-keep-plain = Keep those that nothing is asked about: { NUMBER($notes) }
import-page-keep-all = They are right: keep all { NUMBER($notes) }
import-page-plain = As they would be kept
import-page-rows = Rows
import-page-read-so = The columns were read so: <code>{ $columns }</code>. If that is wrong, say it otherwise:
import-page-row = Row
import-page-hive = Hive
import-page-when = When
import-page-note = Note
import-page-at = { DAY($on, style: "full") }, { $time }
import-page-known = kept already
import-page-more-rows = And { NUMBER($more) } more.

import-page-broken = The form broke off ({ $error }); send it again.
