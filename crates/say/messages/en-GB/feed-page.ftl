## The page "Feeding": a shopping list for the yard, and labels for the roofs.

feed-page-heading = Feeding
feed-page-no-table = The table of what is usual cannot be read.
feed-page-wrong = { $text }: write what your feeder holds, such as 6 { $unit }.
feed-page-stood = As it stood on { DAY($on) }, when the hives were counted; that day is past: see <a href="/">The yard</a> for today.
feed-page-lede = What the yard was short of on { DAY($on) }, so that 9 in 10 such hives come to spring with food in reach.
feed-page-labels = Labels for the { -roofs }
feed-page-of-each = Food for each hive

feed-page-none-short = No colony is short: nothing to buy.
feed-page-none = Nothing to buy.
feed-page-too-late = <strong>{ MASS($fondant, digits: 1, us: 0) } of fondant</strong>, or as much damp sugar. The day for syrup here was about { DAY($on, style: "marked") }; bees can no longer ripen it.
feed-page-buy-sugar = <strong>{ MASS($sugar, digits: 1, us: 0) } of white sugar</strong>, which makes { VOLUME($syrup, digits: 1) } of 3:2 syrup. It must be finished, not begun, by { DAY($safe, style: "marked") } to be safe ({ DAY($usual, style: "marked") } is in time in half of all years){ $left ->
    [days] ; { NUMBER($days) } days are left for it.
    [past] ; the safe day is past.
   *[not-told] .
}
feed-page-buy-fondant = <strong>{ MASS($fondant, digits: 1, us: 0) } of fondant</strong>, or as much damp sugar, for what no feeder gives in time.
feed-page-buy-later = At hand for the midwinter weighing, since the need is far over the rule here: { MASS($fondant, digits: 1, us: 0) } of fondant.
feed-page-spared = Frames from heavy, healthy hives of this yard can stand for { MASS($food, digits: 1, us: 0) } of the stores that are short; each frame is counted once.

feed-page-hive = Hive
feed-page-short = Short
feed-page-fondant = Fondant
feed-page-or-candy = Or damp sugar
feed-page-sugar = Sugar
feed-page-water = Water
feed-page-syrup = Syrup 3:2
feed-page-feeders = Feeders full
feed-page-begin-by = Begin by
feed-page-or-frames = Or frames
# Stands beside what is told in place of several columns.
feed-page-feed = Feed
feed-page-mass = { MASS($mass, digits: 1, us: 0) }
feed-page-volume = { VOLUME($volume, digits: 1) }
feed-page-fills = { NUMBER($fills, digits: 1) }
feed-page-not-now = nothing now; weigh it in midwinter, with { MASS($fondant, digits: 1, us: 0) } of fondant at hand
feed-page-candy = { MASS($candy, digits: 1, us: 0) }, { LENGTH($thick, us: 1) } thick
feed-page-solid = { MASS($fondant, digits: 1, us: 0) } of fondant: no feeder is quick enough for syrup now
feed-page-sugar-and-fondant = { MASS($sugar, digits: 1, us: 0) }, and { MASS($fondant, digits: 1, us: 0) } of fondant
feed-page-begin = { DAY($on, style: "marked") } with { $feeder }
feed-page-begins = { LIST($feeders, between: "; ") }
feed-page-frames = { NUMBER($frames) } from { $hive } ({ MASS($food, digits: 1, us: 0) })
feed-page-no-frames = none to spare
feed-page-feeder = A feeder of { VOLUME($feeder, digits: 1) } is taken.

feed-page-label-weigh = Weigh in midwinter
feed-page-label-at-hand = With { MASS($fondant, digits: 1, us: 0) } of fondant at hand.
feed-page-label-fondant = Fondant { MASS($fondant, digits: 1, us: 0) }
feed-page-label-over = Right over the bees, a path left free round it.
feed-page-label-syrup = Syrup 3:2, { VOLUME($syrup, digits: 1) }
feed-page-label-mix = { MASS($sugar, digits: 1, us: 0) } of sugar in { VOLUME($water, digits: 1) } of water, by weight.
feed-page-label-and-fondant = And { MASS($fondant, digits: 1, us: 0) } of fondant: syrup is too late for the rest.
feed-page-label-by = Finished by { DAY($on, style: "marked") }.
feed-page-label-later = Weigh in midwinter, with { MASS($fondant, digits: 1, us: 0) } of fondant at hand.
feed-page-label-given = Given: ________  ________  ________

feed-page-holds = What your feeder holds, { $is-us ->
    [yes] gallons
   *[no] litres
}
feed-page-reckon = Reckon its fills

feed-page-cups = Cups are not kilograms
feed-page-cups-thin = Poured sugar is lighter than water, so cups make thinner syrup than the same figures by weight.
feed-page-cups-are = { $volumes } by cups is { NUMBER($weight, digits: 2) }:1 by weight, { NUMBER($percent) } % sugar, not { NUMBER($meant) } %.
feed-page-spring = 1:1 is for spring, once bees fly every day and carry in.
feed-page-slab = A slab over the bees
feed-page-slab-laid = Laid { LENGTH($thick) } thick over the whole of a { $hive } box:
feed-page-slab-of = { CAPITAL($what) }: { MASS($mass, digits: 1, us: 0) }, feeding as much as { MASS($honey, digits: 1, us: 0) } of honey.
feed-page-before = Before you feed
feed-page-never = Not to be fed
feed-page-never-of = { CAPITAL($what) }: { $why }.
