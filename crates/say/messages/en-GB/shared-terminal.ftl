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
