## Jobs and dates: what is due at a yard in a year, and when. Of each job: its name of at most 28 letters, what it waits for,
## why, how others go about it (-others), a belief that costs colonies (-belief) and what is so (-so), and what can still be
## done once its time is over (-missed).

jobs-note-usual-year = Dates stand for a usual year here, not for this one: look at the sky and the coming days as well.
jobs-note-not-counted = No colony is counted for this season yet: brood and hunger stand on rules of the trade alone.
jobs-hive = { $hive }: { $verdict }: { $says }
jobs-hive-then = { $hive }: { $says }
jobs-sentence = { SENTENCE($of) }

jobs-due-now = due now
jobs-due-soon = within a month
jobs-due-later = later
jobs-due-past = past

jobs-when = { LIST($parts, between: "; ") }
jobs-when-safe = by { DAY($safe) } to be safe
jobs-when-half = { DAY($half) } is in time in half of all years
jobs-when-from = from about { DAY($on) }
jobs-when-from-until = from about { DAY($on) }, until about { DAY($until) }
jobs-when-about = about { DAY($on) }
jobs-when-about-until = about { DAY($on) }, until about { DAY($until) }
jobs-when-between = between { DAY($earliest) } and { DAY($latest) } in 8 winters of 10
jobs-when-before = in 1 winter of 10 before { DAY($earliest) }
jobs-when-seldom = comes in { $winters } only
jobs-when-never = comes in { $winters } here
jobs-winters-none = no winter that was drawn
jobs-winters-fewest = fewer than 1 winter of 10
jobs-winters = { $tenths ->
    [one] 1 winter of 10
   *[other] { NUMBER($tenths) } winters of 10
}

jobs-mite-count-summer = Count mites in every hive
jobs-mite-count-summer-waits = { NUMBER($days) } days before the treatment that spares the winter bees.
jobs-mite-count-summer-why = A count now says whether honey can stay on. A mean over the yard hides the worst hive.
jobs-mite-count-summer-missed = Count all the same: it still tells which hives to treat.

jobs-winter-bees-waits = { NUMBER($days) } days before the mean of a fortnight falls below { TEMPERATURE($air) } and little brood is begun; or days shorter than { NUMBER($hours) } hours, if that comes first.
jobs-honey-off = Honey off
jobs-honey-off-why = Supers stand in the way of most treatments and of winter feed; the earlier of the two decides here.
jobs-honey-off-others = Where the main flow ends later, from lime, goldenrod or heather, honey comes off when it ends and the treatment goes on the same week: each week later rears more winter bees among mites. Where it ends sooner, so does the waiting.
jobs-honey-off-missed = Take it off now: treatment and feed both wait for it.

jobs-treat-mites = Mite treatment begun
jobs-treat-mites-why = Bees raised from now on must live until spring. A later treatment protects the neighbours and next year, but not bees already hurt.
jobs-treat-mites-belief = Treating in November is enough.
jobs-treat-mites-so = By then the winter bees have been raised, harmed or not; the broodless treatment follows this one and does not replace it.
jobs-treat-mites-missed = Late still protects the neighbours and next year's bees, not those already hurt. The broodless treatment comes on top.

jobs-mite-count-autumn = Count mites again
jobs-mite-count-autumn-waits = When the warmest hours of a fortnight stay below { TEMPERATURE($air) } on average and bees hardly take syrup.
jobs-mite-count-autumn-why = Robbers bring mites home from dying hives. After this day hives are not opened for a sample.
jobs-mite-count-autumn-missed = Leave the hives shut now; a board under a { -mesh-floor } still shows what falls.

jobs-feeding-waits = { NUMBER($days) } days of feeding before syrup must be finished.
jobs-feed-begun = Begin winter feeding
jobs-feed-begun-why = Syrup must be finished in time, not begun in time; a big shortage in a small feeder takes weeks.
jobs-feed-begun-missed = Begin today if it can still be finished by the day for syrup; else give solid food over the bees.
jobs-entrance-reduced = Reduce entrances
jobs-entrance-reduced-why = Feed draws robbers and { -wasps }; nuclei and weak hives first.
jobs-entrance-reduced-missed = Still worth doing, from outside and in a minute.

jobs-syrup-finished = Syrup finished and capped
jobs-syrup-finished-waits = { NUMBER($days) } days before the warmest hours of a fortnight stay below { TEMPERATURE($air) } on average and bees hardly take syrup.
jobs-syrup-finished-why = Thin food that is not cured and capped ferments. Feeders and empty supers come off with it.
jobs-syrup-finished-others = Some feed fondant as the main autumn food: it is eaten rather than stored and can go on later.
jobs-syrup-finished-custom = { SENTENCE($custom) }
jobs-syrup-finished-belief = Syrup in January helps.
jobs-syrup-finished-so = Clustered bees neither take it nor cure it, and wet chills them. Too late for syrup means fondant, candy or combs of food.
jobs-syrup-finished-missed = Take off what is left and give solid food over the bees, or combs of food from a healthy hive of the yard.

jobs-excluder-out = Queen excluder out
jobs-excluder-out-waits = A week's mean falls below { TEMPERATURE($air) }: bees cluster.
jobs-excluder-out-why = The cluster moves up through winter; a queen left below an excluder dies there.
jobs-excluder-out-missed = Take it out on the next calm mild day, lifting no comb: a queen left below it dies.

jobs-combs-waits = A week's warmest hours fall below { TEMPERATURE($air) } on average.
jobs-consolidate = Boxes to fit the bees
jobs-consolidate-why = The last day for lifting combs: as many boxes as the bees fill, food above and beside them. An empty box above the cluster is a cold attic.
jobs-consolidate-others = How many boxes differs: in Britain the space is shrunk to the bees; Minnesota winters in three deeps.
jobs-consolidate-missed = Too cold for combs: leave the boxes as they are, and see to lid and food above the bees.
jobs-top-and-straps = Warm lid, tilt, straps
jobs-top-and-straps-why = Insulation on the lid keeps water from forming over the cluster; a tilt forward lets it run out; straps hold in winter storms and on ground that heaves.
jobs-top-and-straps-missed = Late is still fine: lid, tilt and straps are done in a minute on any calm day.

jobs-bear-fence-on = Bear fence on, if needed
jobs-bear-fence-on-waits = The first night of frost; bears eat most before winter.
jobs-bear-fence-on-why = A bear that has fed once comes back. Test the fence with a meter.
jobs-bear-fence-on-missed = Still worth it until snow lies, and again before the thaw.

jobs-mouse-guard = Mouse guard on
jobs-mouse-guard-waits = { NUMBER($nights) } nights of frost in a fortnight: mice come in.
jobs-mouse-guard-why = Before the mouse is in; look first that none is. A slot of { LENGTH(0.008, us: 2) } or less, and wide enough not to clog.
jobs-mouse-guard-others = In Finland guards go on when days stay below { TEMPERATURE($air) }.
jobs-mouse-guard-others-about = In Finland guards go on when days stay below { TEMPERATURE($air) }, about { DAY($on) } here, so that no pollen is scraped off.
jobs-mouse-guard-missed = Look first that no mouse is in, then put it on: a guard shuts a mouse in as well as out.

jobs-wrap = Wrap on
jobs-fortnight-falls = The mean of a fortnight falls below { TEMPERATURE($air) }.
jobs-wrap-why = Wrapped too early, bees are kept warm and brood late. The lid matters more than the sides. A wrap or a net held off the walls keeps woodpeckers out too.
jobs-wrap-others = In Manitoba wraps wait for nights of { TEMPERATURE($night) } and days below freezing; many hives are never wrapped.
jobs-wrap-missed = Late is still fine: on any calm day, without knocking.

jobs-winter-yard = Move to a winter yard
jobs-winter-yard-waits = A fortnight without an hour of { TEMPERATURE($air) }.
jobs-winter-yard-why = Bees that no longer fly do not go back to the old place. Later, in hard frost, a jolt breaks the cluster.
jobs-winter-yard-missed = In hard frost leave them where they are: a jolt breaks the cluster.

jobs-cellar-in = Into a cellar, if used
jobs-cellar-in-room = Into { $room }
jobs-cellar-in-why = Cold enough to stay clustered and dark; after the last good flight if there is a choice.
jobs-cellar-in-dark = Where the room is dark and aired they go in and are left in peace.
jobs-cellar-in-missed = On a quiet cold day they can still be carried in without a jolt; else leave them out.
jobs-own-day = The day of your yard file.
jobs-by-weather = By the weather alone: { $when }.

jobs-broodless = Broodless: winter treatment
jobs-broodless-waits = { NUMBER($days) } days after the first night below { TEMPERATURE($night) }.
jobs-broodless-waits-model = No colony has { NUMBER($cells) } cells of brood left, by the model, and { NUMBER($days) } days after the first night below { TEMPERATURE($night) }.
jobs-broodless-why = Some treatments reach only mites on bees: with brood a quarter to two fifths of them, without it nearly all. Be sure first that there is no brood; treat a yard together. A trickle is given once a winter: again, it harms bees.
jobs-broodless-belief = One oxalic treatment mends everything, brood or not.
jobs-broodless-so = It does not reach mites under cappings.
jobs-broodless-missed = With brood back it reaches fewer mites: ask the label, and count as soon as hives are open.

jobs-midwinter-weighing = The winter's weighing
jobs-midwinter-weighing-waits = { NUMBER($days) } days before brood is there again.
jobs-midwinter-weighing-why = A month without brood takes about { MASS(1) }, a month with brood { MASS(3) }. Weighed just before, there is time to put solid food above the cluster.
jobs-midwinter-weighing-missed = Lift them on the next calm day all the same: most food is eaten from now on.

jobs-brood-begins = Brood begins
jobs-brood-begins-waits = A palm's breadth of brood, by the model.
jobs-brood-begins-why = From now on the nest is kept warm day and night, and a colony eats two to three times as much.

jobs-starvation-watch = Lift every { NUMBER($days) } days for food
jobs-starvation-watch-waits = From the first brood to the first flow.
jobs-starvation-watch-why = Most hungry colonies die with brood in spring, not in the coldest month.
jobs-starvation-watch-flowers = In one winter of ten nothing flowers before { DAY($on) }.
jobs-starvation-watch-belief = The danger ends in February.
jobs-starvation-watch-so = It begins then: brood, cold nights and no flowers yet. Most food is eaten in the last weeks.

jobs-food-runs-out = Food may run out
jobs-food-runs-out-waits = Food within reach is gone in the model of your hives.
jobs-food-runs-out-hive = { $hive } { $lasts }
jobs-food-runs-out-why = { LIST($hives, between: "; ") }.

jobs-clean-floor = First flight, { -floors } cleared
jobs-clean-floor-waits = The first calm, dry hour of { TEMPERATURE($air) } after midwinter.
jobs-clean-floor-why = A winter's dead on the { -floor } block the entrance and mould. Hives that do not fly are opened first.
jobs-clean-floor-missed = Still worth doing on the next flying day.

jobs-melt-check = Meltwater, leaning hives
jobs-melt-check-waits = The winter's snow has sunk to { NUMBER($percent) } % of its deepest.
jobs-melt-check-why = Water at the { -floor }, ice before the entrance, a stand that has sunk on one side.
jobs-melt-check-missed = One look is never late: water on the { -floor }, a leaning stand.

jobs-bear-fence-thaw = Bear fence on again
jobs-bear-fence-thaw-waits = The mean of a fortnight stays above { TEMPERATURE($air) }.
jobs-bear-fence-thaw-why = Bears wake hungry and hives smell of brood.
jobs-bear-fence-thaw-missed = Put it on today: bears are about.

jobs-cellar-out = Out of the cellar, if used
jobs-cellar-out-room = Out of { $room }
jobs-cellar-out-waits = The mean of a fortnight reaches { TEMPERATURE($air) }.
jobs-cellar-out-why = In the evening before a flying day, each to its old place.
jobs-cellar-out-dark = As late as the room stays cold, as early as pollen comes.
jobs-cellar-out-missed = Carry them out on the evening before the next flying day.

jobs-first-look = First look at combs
jobs-first-look-waits = The first calm, dry hour of { TEMPERATURE($air) } once days are { NUMBER($hours) } hours long.
jobs-first-look-why = Minutes, and combs only as far as you must: food, eggs or brood, room.
jobs-first-look-others = Some look only from { TEMPERATURE($full) }; nobody lifts brood combs below { TEMPERATURE($least) }.
jobs-first-look-missed = On the next calm warm day all the same: food, eggs or brood, room.

jobs-spring-syrup = Thin syrup, if food is short
jobs-spring-syrup-waits = A week's warmest hours stay above { TEMPERATURE($air) } on average.
jobs-spring-syrup-why = Until then solid food, above the cluster. Bees fetch syrup and cure it only on warm days.

jobs-before-flow = { NUMBER($days) } days before the first flow.
jobs-pollen = Added pollen, if none comes
jobs-pollen-why = Last of the three: solid food, then syrup, then pollen. Brood begun with it must be fed and kept warm to the end.
jobs-pollen-others = In Minnesota strong hives get pollen from early March, to be split early.
jobs-pollen-belief = Pollen patties early always help.
jobs-pollen-so = They start brood that cold nights and empty combs then starve.
jobs-pollen-missed = Bees most likely carry it in themselves by now: watch the entrance first.

jobs-unwrap = Wrap off
jobs-unwrap-waits = The nights of a fortnight stay above { TEMPERATURE($air) } on average, once days are { NUMBER($hours) } hours long.
jobs-unwrap-why = Strong hives first. A weak one keeps its wrap longer: it has the most brood to warm for its bees.
jobs-unwrap-missed = Take it off at the next visit.

jobs-first-flow = First flow: willow, alder
jobs-first-flow-waits = { WARMER($degree-days, unit: "no") } degree-days above { TEMPERATURE(5) } since midwinter: willow and alder.
jobs-first-flow-why = Food begins to come in on flying days. Hunger runs a fortnight past it.

jobs-dandelion-waits = Dandelions in bloom, at about { WARMER($degree-days, unit: "no") } degree-days above { TEMPERATURE(5) }.
jobs-mite-count-spring = Count mites
jobs-mite-count-spring-why = A colony that came through is not free of mites: few in spring are many by autumn.
jobs-mite-count-spring-belief = It survived, so it has no mites.
jobs-mite-count-spring-so = Count at dandelion bloom, and again before honey comes off.
jobs-mite-count-spring-missed = Count now: a count tells something as long as there is brood.
jobs-reverse = Boxes may be reversed
jobs-reverse-why = Only if the lower box is empty and no brood lies across both; else it tears the nest in two.
jobs-reverse-missed = Still possible while the lower box is empty and no brood lies across both.

# Who says so.
jobs-source-none = none
jobs-source-brood = the winter model of your colonies under this site's weather
jobs-source-hunger = the winter model, your counts and your notes
jobs-source-own-day = your yard file
jobs-source-syrup = 13 °C (55 °F): Ontario beekeeping extension leaflet; three weeks to cure: Finnish beekeepers' leaflet
jobs-source-flow = our own reckoning; your own date of the first flow can stand in the yard file

# In the keeper's own calendar.
jobs-calendar-name = { $yard }: jobs and dates
jobs-calendar-title = { $what } ({ $yard })
jobs-calendar-invented = An invented yard.
jobs-calendar-look = Go and look
jobs-calendar-look-says = About { NUMBER($hour) }:00: { $hives }.
jobs-calendar-round = Yard round
jobs-calendar-round-says = Two weeks after the last look: a look at every entrance, and what lies before it.
jobs-calendar-belief = Not so: "{ $belief }" { $so }
