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

# Signs that are not asked for by taps, beside an example of how each is written.
round-page-melted-snow = A hole melted in the snow on the { -roof }
round-page-stripes = Fresh stripes of crumbs on the tray, seams
round-page-weight = Weight or stores
round-page-inside = Temperature inside
round-page-humidity = Humidity under the lid
round-page-warm-spot = A warm spot in a thermal picture
round-page-bees-seen = Living bees seen under the lid
round-page-drones = Drones at an odd season
round-page-queen-dead = A dead queen on the board
round-page-larvae = Larvae or pupae thrown out
round-page-wings = Bees with crumpled wings
round-page-bird = A bird at the entrance
round-page-mouse = A mouse, or its leavings
round-page-damage = Damage by storm, beast or people
round-page-smell = A smell of decay
round-page-seen-dead = The colony was seen dead

round-page-wrong-none = No hive was noted: tap what you saw at one at least.
round-page-wrong-snow = Snow is one of none, old, new.

round-page-pencil = A round with a pencil
round-page-pencil-day = Day ____________  hour ______  air ______  snow: bare · old · fresh
round-page-pencil-ring = Ring one word a line. In the evening the same order stands on the page “Yard round”.

## What the script of the round says: facts in braces are filled in on the phone.

round-page-waiting = { $number } waiting to be sent: { $hives }.
round-page-sign-in = Sign in to send them
round-page-refused = { $hive } was not taken: { $why }
round-page-declined = refused
round-page-put-back = Put back to mend ({ $entries })
round-page-stored = { $number } noted and stored: { $hives }.
round-page-in-phone = Kept in this phone and waiting: { $hives }. They are sent when the server can be reached.
round-page-signed-out = Kept in this phone and waiting: { $hives }. They are sent when you have signed in.
round-page-moved = Alive of 100 such hives, before and after: { $changes }.
round-page-draft = What was tapped { $when } is here again, as of that time.
round-page-anew = Begin anew
round-page-clear-entrance = Clear the entrance.
round-page-clear-upper = Clear the upper hole.
round-page-is-answered = Alive: a bee answered.
round-page-alive = Alive.
round-page-most-likely-alive = Most likely alive.
round-page-in-doubt = In doubt.
round-page-most-likely-dead = Most likely dead.
round-page-live = { $chance } in 100 such hives live, { $before } before.
round-page-breath = The rime is their breath.
round-page-tells-most = Would tell most next: “{ $asks }”.
round-page-tells-little = No further look today would tell much.
round-page-other-air = Reckoned for { $air }, not for the air you measured: trust what comes after the sync.
round-page-provisional = Provisional, for { $air }, until synced.
round-page-next-sync = Kept; the estimate comes with the next sync.
round-page-step = { $at } of { $all } · { $noted } noted
round-page-noted = { $noted } noted
round-page-not-looked = not looked at
round-page-answer = { $asks }: { $answer }
