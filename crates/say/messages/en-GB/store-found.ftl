## What is found not to be as it was kept.

store-found-of-gate = a row of { $table } about the gate
store-found-no-key = a row of { $table } without a key
store-found-changed = { $row } was changed
store-found-moved = { $row } was changed, or is not where it was
store-found-changed-or-gap = { $row } was changed, or a row before it is missing
store-found-gap = { $versions ->
    [one] one version is missing
   *[other] { NUMBER($versions) } versions are missing
} before { $row }
store-found-not-kept = the rows of { $table } are not those that were kept
store-found-last-missing = the last versions of { $table } are missing: { NUMBER($versions) }
store-found-missing = rows of { $table } that are missing: { NUMBER($rows) }
store-found-strange = rows of { $table } that this program did not write: { NUMBER($rows) }
store-found-unproved = { $row } stands, and nothing proves it
store-found-stranger = { $row } is whole and is another in the file it should be mended from
store-found-not-kept-row = { $row } cannot be kept ({ $why })
store-found-older = it is of an older form, whose rows nobody can tell from others
store-found-check = { $what ->
    [header] header
    [form] form
    [file] file
    [links] links
    [bodies] bodies
    [hashes] hashes
    [notes] notes
   *[folder] folder
}
store-found-of = { $name }: { $says }
store-found-loose = rows that point at rows that are not there: { NUMBER($rows) }
store-found-homeless = colonies in hives that do not stand in their yard: { NUMBER($colonies) }
store-found-form = of form { NUMBER($found) }, and { NUMBER($known) } is expected
store-found-rewritten = it counts { NUMBER($changes) } changes of its form instead of { NUMBER($expected) }: another program rewrote it
store-found-orphans = about colonies no yard has yet, kept and not shown: { NUMBER($notes) }
store-found-folder = the folder of the store cannot be written ({ $why })
store-found-several = { LIST($named, between: "; ") }
store-found-more = and { NUMBER($more) } more
store-found-export = the export
store-found-line = line { NUMBER($line) }
store-found-no-text = it is no text
store-found-large = it is larger than { NUMBER($megabytes) } MB
store-found-has-no = it has no { $name }
store-found-unknown = it holds { $name }, which no store has
store-found-no-schema = it does not say { $schema }
store-found-year = it is of a year that no record is of
store-found-opens-gate = it would open the gate, and no export holds such a setting
store-found-body = the body of { $what } cannot be read ({ $why })
store-found-body-alone = the body cannot be read ({ $why })
store-found-no-kind = { $kind } is no kind of version
