## A winter looked back on.

season-frames-of-stores = frames of stores
season-syrup-3-to-2 = syrup 3:2
season-syrup-2-to-1 = syrup 2:1
season-syrup-1-to-1 = syrup 1:1
season-fondant = fondant
season-candy = candy
season-sugar = dry sugar

season-known-frames = frames counted
season-known-scale = weighed
season-known-two-sided-lift = both sides lifted
season-known-heft = lifted by hand
season-known-stated = as stated

season-mites-not-counted = not counted
season-mites = { NUMBER($found) } on { NUMBER($bees) } bees, { $on }

season-queen = of { NUMBER($year) }, { $seen ->
    [yes] seen or laying
    [no] not seen, no eggs
   *[not-looked-for] not looked for
}
season-queen-year-unknown = year not known, { $seen ->
    [yes] seen or laying
    [no] not seen, no eggs
   *[not-looked-for] not looked for
}
season-queen-mated-late = { $queen }, mated late
