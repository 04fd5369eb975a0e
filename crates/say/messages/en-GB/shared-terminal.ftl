## What several answers in the terminal share.

## Labels in the margin: eleven letters at most.

shared-terminal-food = Food
shared-terminal-bees = Bees
shared-terminal-alive = Alive
shared-terminal-spring = Spring
shared-terminal-hive = Hive
shared-terminal-frames = Frames
shared-terminal-syrup = Syrup
shared-terminal-mites = Mites
shared-terminal-fit = Fit?
shared-terminal-why = Why
shared-terminal-next = Next
shared-terminal-note = Note
shared-terminal-cost = Cost
shared-terminal-helps = Helps
shared-terminal-or-instead = Or instead

shared-terminal-day = { DAY($on) }
shared-terminal-on-day = on { DAY($on) }
shared-terminal-from-to = from { DAY($from) } to { DAY($to) }
shared-terminal-title = { $hive } at { $yard }, { DAY($on) }: { $verdict }
# Two things, of which the second is said of the first.
shared-terminal-of = { $name }: { $says }
shared-terminal-parts = { LIST($parts, between: "; ") }
shared-terminal-list = { LIST($parts) }
shared-terminal-stop = { $says }.
shared-terminal-cause = { $cause } { NUMBER($hives) }
shared-terminal-money = { NUMBER($amount) } { $currency }
shared-terminal-mass = { MASS($mass, digits: 1) }
shared-terminal-masses = { MASS($likely, digits: 1) } ({ MASS($least, digits: 1) } to { MASS($most, digits: 1) })

shared-terminal-stands-on = Stands on: { LIST($sources, between: "; ") }.
shared-terminal-stands-on-weather = It stands on { $weather }.
shared-terminal-more-all = More: snowhum { $command } --all. Label, law and vet come first.

## What is under way, and which yard is told of.

shared-terminal-reading-weather = reading the weather …
shared-terminal-reckoning-year = reckoning the year …
shared-terminal-watching = watching the colonies …
shared-terminal-computing-winter = computing the winter …
shared-terminal-computing-expected = computing what was to be expected …
shared-terminal-computing-set-ups = computing the set-ups …
shared-terminal-telling-winter = telling the winter …
shared-terminal-of-records = This is { $yard } of your records.
shared-terminal-demo = This is the invented demo yard. For your own: snowhum new my-yard.toml
shared-terminal-granted = { NUMBER($count) } things were taken for granted; to see them:
shared-terminal-early-visit = A visit of { $on } lies before the count of { $counted }: it is kept as history, and this winter's answers do not heed it.
shared-terminal-called = { $name } ({ $says })
shared-terminal-needs-now = needs you now: { LIST($colonies) }
shared-terminal-hungry = hungry: { LIST($hives) }

## What is wrong with what was asked.

shared-terminal-no-colony = there is no colony "{ $name }" in { $yard }; { $which ->
    [nearest] the nearest are
   *[all] there are
} { LIST($names) }
shared-terminal-is-file = "{ $name }" is a file, not a colony: a yard file is given by --apiary { $name }
shared-terminal-no-hive = { $colony } has no hive
shared-terminal-unreadable = { $file }: cannot be read: { $why }
shared-terminal-is-folder = { $file }: is a folder; give the file in it
shared-terminal-too-large = { $file }: larger than 16 MB; is this the right file?
shared-terminal-not-text = { $file }: is not UTF-8 text
shared-terminal-there-already = { $file } exists already and was left as it is; choose another name
shared-terminal-unwritable = { $file } cannot be written: { $why }
shared-terminal-no-records = { $file }: no yard is kept here yet; bring yours in with: snowhum import my-yard.toml
shared-terminal-no-home = there is no home folder to keep records in; name a file with --store
shared-terminal-wrong-option = { $option } "{ $written }": { $right }

shared-terminal-no-answer = the answer cannot be written: { $why }
shared-terminal-last-winter = { $file }: last_winter = "{ $name }": { $why }
shared-terminal-other-yard = is not this yard in an earlier year; name last year's file of the same yard, or take the line out
shared-terminal-visit = { $file }: a visit: { $wrong }
shared-terminal-zone = zone "{ $zone }": { $why }
shared-terminal-room = { $file }: indoors "{ $room }".record: { $why }
shared-terminal-room-columns = record_columns: { $wrong }; such as "{ $right }"
shared-terminal-room-empty = { $file }: nothing in it was measured between { $from } and { $until }; mend the years
shared-terminal-no-word = "{ $term }" is not among the words; see them all: snowhum words
shared-terminal-term = { $british } (North American: { $american })
