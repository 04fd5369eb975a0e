## What comes into the records.

import-terminal-export = brought in: everything of the export. Kept in { $file }
import-terminal-yard = brought in: { $yard } with { $colonies ->
    [one] one colony
   *[other] { NUMBER($colonies) } colonies
}; notes: { NUMBER($stored) }, and { NUMBER($known) } known already. Kept in { $file }
import-terminal-shown = Nothing is kept yet. To keep it: snowhum import { $file } --keep
import-terminal-kept = Kept in { $file }. To take it back: snowhum import --undo
import-terminal-no-yard = { $file }: no yard is kept yet to which its notes belong; bring yours in first: snowhum import my-yard.toml
import-terminal-asked-about = { $file }: these are asked about, and nothing was kept:
import-terminal-mend-open = if they are right all the same, add --sure; to keep the others alone, add --leave-asked
import-terminal-mend-sure = mend them in the sheet; or to keep the others alone, --leave-asked in place of --sure
import-terminal-nothing-back = no sheet came in that could be taken back
import-terminal-back = taken back: { $notes ->
    [one] one note
   *[other] { NUMBER($notes) } notes
}
import-terminal-back-changed = taken back: { $notes ->
    [one] one note
   *[other] { NUMBER($notes) } notes
}; changed since and left: { NUMBER($changed) }
import-terminal-columns = Columns
import-terminal-row-asked = Asked
import-terminal-row-known = Known
import-terminal-row-read = Read
import-terminal-more = and { $rows ->
    [one] one more row
   *[other] { NUMBER($rows) } more rows
}; --json has all of them
import-terminal-notes = { $notes ->
    [one] one note
   *[other] { NUMBER($notes) } notes
} of { $yard }
import-terminal-asked = asked about: { NUMBER($asked) }
import-terminal-taken = brought in: { NUMBER($stored) }; known already: { NUMBER($known) }; other than what is kept: { NUMBER($differing) }
