## The page "Yard round", and the same round on a sheet for a pencil.

round-page-heading = Yard round
round-page-kept = <strong>{ NUMBER($hives) } { $hives ->
    [one] hive
   *[other] hives
} noted and stored.</strong> The estimate follows by itself.
round-page-lede = Tap what you saw; leave what you did not look at. Out of reach it waits in the phone and is sent later.
round-page-sheet = A sheet for a pencil
# The names of the hives follow.
round-page-not-asked = Not asked about, as nothing lives there any more:
round-page-all = All of it
round-page-before = Hive before
round-page-end = End
round-page-next = Next hive
round-page-keep = Keep the round

round-page-outside = Outside
round-page-air = Air, { $unit }
round-page-snow = Snow before the hives
round-page-snow-bare = bare
round-page-snow-old = old
round-page-snow-fresh = fresh

round-page-indoors = Stands indoors: no flight, snow or rime to look for; its dead lie on its { -floor }.
round-page-expected = As expected: { $dead } dead bees, entrance clear
round-page-further = Further signs, weight, a word
round-page-word = A word
round-page-unasked = did not look
round-page-untried = not tried

round-page-dead = Dead bees, new
round-page-dead-none = none
round-page-dead-few = 1–5
round-page-dead-some = 6–20
round-page-dead-many = 21–100
round-page-dead-most = over 100
round-page-entrance = Entrance
round-page-upper = Upper hole
round-page-clear = clear
round-page-blocked = blocked
round-page-cleared = I cleared it
round-page-drifted-over = drifted over
round-page-iced = iced
round-page-plugged = plugged with bees
round-page-not-visible = not visible
round-page-rime = Rime at the upper hole
round-page-rime-new = new rime
round-page-rime-old = rime
round-page-rime-damp = damp
round-page-rime-dry = dry
round-page-hum = Hum, ear at the wall
round-page-hum-heard = heard
round-page-hum-silent = silent
round-page-poke = Poke at the hole or entrance
round-page-poke-answered = a bee answered
round-page-poke-silent = silent
round-page-flight = Flying
round-page-flight-well = well
round-page-flight-thin = thin
round-page-flight-traffic = to and fro
round-page-flight-none = no bee
round-page-pollen = Pollen
round-page-pollen-carried = carried in
round-page-pollen-none = none
round-page-droppings = Droppings
round-page-droppings-snow = on snow
round-page-droppings-hive = on the hive
round-page-droppings-none = none
round-page-robbers = Robbers
round-page-wasps = { CAPITAL(-wasps) }
round-page-yes = yes
round-page-no = no
round-page-lid = Under the lid, by hand
round-page-lid-warm = warm
round-page-lid-cold = cold
round-page-heft = Lifted by hand
round-page-heft-light = light
round-page-heft-fair = fair
round-page-heft-heavy = heavy
round-page-depth = Snow against the box, over the ground
round-page-count = Dead bees, counted
round-page-hook = Dead bees pulled out with a hook
round-page-scale = Whole hive on a scale
round-page-side = One side lifted, always the same

round-page-wrong-none = No hive was noted: tap what you saw at one at least.
round-page-wrong-snow = Snow is one of none, old, new.

round-page-pencil = A round with a pencil
round-page-pencil-day = Day ____________  hour ______  air ______  snow: bare · old · fresh
round-page-pencil-ring = Ring one word a line. In the evening the same order stands on the page “Yard round”.
