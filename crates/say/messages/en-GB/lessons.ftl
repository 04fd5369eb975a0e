## Losses and lessons: what became of each colony in a winter, what to do next autumn.

lessons-alive = alive
lessons-weak = alive but weak
lessons-queen-failed = queen failed
lessons-dead = dead
lessons-disaster = taken by a disaster
lessons-sold = sold
lessons-united = { -united } with another
lessons-not-told = not told yet

lessons-line = { LIST($parts, between: "; ") }
lessons-not-told-seen = not told yet; last seen living on { DAY($on) }
lessons-noted = { $fate }, noted on { DAY($on) }
lessons-not-examined = not examined
lessons-first-sign = first sign: { $what }, { DAY($on) }
lessons-now = now: { $next }
lessons-next-autumn = next autumn: { $next }

lessons-kept-foulbrood = signs of foulbrood: move nothing, tell the { -bee-inspector } or the authority
lessons-kept-likeliest = likeliest { $cause }, { NUMBER($hives) } of 100 such hives
lessons-kept-no-cause = no cause was kept

lessons-trouble-mites = { NUMBER($mites) } mites in { NUMBER($bees) } bees
lessons-trouble-stores = { MASS($stores, digits: 1) } of stores where the rule here asks for { MASS($least, unit: "no") }
lessons-trouble-small = { NUMBER($bees) } bees in autumn
lessons-trouble-queen-late = a queen mated late
lessons-trouble-queen-old = a queen of { NUMBER($year) }
lessons-trouble-wings = crumpled wings
lessons-trouble-light = hefted light
lessons-trouble-queen-dead = a dead queen on the board
lessons-trouble-drones = drones at an odd season
lessons-trouble-streaks = streaks on the hive
lessons-trouble-mouse = a mouse or its leavings
lessons-trouble-robbers = robbers or { -wasps }
lessons-trouble-entrance = the entrance blocked
lessons-trouble-upper-entrance = the upper hole blocked
lessons-trouble-silence = no sound of bees again

lessons-next-foulbrood = the authority's word first
lessons-next-mites = mites first: count early in { DAY($early, style: "month") }, and treat before the winter bees are reared
lessons-next-starved = weigh in { DAY($late, style: "month") } and feed up to the plan's mark
lessons-next-isolation = bring food against the bees before the hard frost, and winter them on fewer combs
lessons-next-queen = requeen by { DAY($early, style: "month") }, or { -unite } in { DAY($late, style: "month") } if the bees are healthy
lessons-next-small = if it is healthy but small, { -unite } it with a strong one in { DAY($late, style: "month") }, not in winter
lessons-next-damp = dress the lid: warm above the bees first, and a way out for water
lessons-next-dysentery = winter on sugar rather than dark honey, and send a sample of bees in spring
lessons-next-mice = guards on before the nights freeze, with nobody inside
lessons-next-robbed = a narrow entrance while feeding, the weakest first
lessons-next-poison = ask the authority what was sprayed near, and keep a frozen sample
lessons-next-never-counted = its mites were never counted, and living proves nothing of them: count in spring
lessons-next-lived-with = it lived with { NUMBER($mites) } mites in { NUMBER($bees) } bees on { DAY($on) }: count in spring, they are not gone

lessons-remember = { $colony }, winter { $winter }, { $found }.
lessons-remember-next = { $colony }, winter { $winter }, { $found }: { $next }.

lessons-open = { NUMBER($not-told) } of { NUMBER($at-risk) } not told yet: { $over ->
    [yes] count them to close the winter
   *[no] the winter is not over
}. The loss lies between { NUMBER($least) } and { NUMBER($most) } of { NUMBER($at-risk) }.
lessons-winter-ends = Winter here ends about { DAY($on) }; the danger does not end in February.
lessons-no-proof = Living through is no proof of few mites: count in spring.

## The forecast of autumn against what happened.

lessons-forecast-better = The forecast was less surprised by this winter than the base rate was.
lessons-forecast-worse = The base rate was less surprised by this winter than the forecast was.
lessons-forecast-alike = Forecast and base rate were surprised alike.
lessons-forecast-failed = A score over { NUMBER($high, digits: 2) } comes in fewer than 1 of 20 winters if its chances are right: take it with reserve here.
lessons-forecast-lucky = It came out better than its own chances let expect: luck, too.
lessons-forecast-helped = Fed or dressed since that day: { LIST($colonies) }. The forecast is for hives left alone, so that a death you averted counts against it.
lessons-forecast-hives = { $hives ->
    [1] One hive
    [2] Two hives
    [3] Three hives
    [4] Four hives
    [5] Five hives
    [6] Six hives
    [7] Seven hives
    [8] Eight hives
    [9] Nine hives
    [10] Ten hives
    [11] Eleven hives
    [12] Twelve hives
   *[other] { $hives } hives
}
# $hives is the message before this: how many hives were scored.
lessons-forecast-too-few = { $hives } cannot tell a good forecast from luck: it would take about { NUMBER($needed) } like these, over several winters.
lessons-forecast-enough = So many hives begin to tell a good forecast from luck; those of one winter share its weather, and count for fewer.
lessons-forecast-same = { $hives } under a forecast that says what the base rate says tell nothing of it.

## What the yearly surveys of losses ask for.

lessons-survey-before = Colonies before winter, { DAY($on, style: "full") }
lessons-survey-added = Bought or split in since
lessons-survey-removed = Sold or { -united } since: fewer at risk, not lost
lessons-survey-alive = Alive when winter was over here, { DAY($on, style: "full") }
lessons-survey-weak = Of them weak but alive
lessons-survey-queen-failed = Lost: queen problem that cannot be mended
lessons-survey-disaster = Lost: disaster (fire, flood, fall, bear, theft)
lessons-survey-dead = Lost: dead or empty
lessons-survey-not-told = Not told yet
lessons-survey-lost-by = Known lost by { DAY($on) }, as surveys with fixed days ask
lessons-survey-empty = Of the dead: hive empty
lessons-survey-starved = Of the dead: bees dead in cells and no food
lessons-survey-with-food = Of the dead: dead with food in the hive
lessons-survey-not-known = Of the dead: not known
lessons-survey-queens = Queens of this year, of those whose year is known
lessons-survey-counted = Colonies in which mites were counted
lessons-survey-months = Months of treatment against mites
lessons-survey-mesh = Hives with a { -mesh-floor }
lessons-survey-forage = Forage, moves to other places, combs renewed
lessons-survey-number = { NUMBER($number) }
lessons-survey-of = { NUMBER($number) } of { NUMBER($all) }
lessons-survey-treated = { LIST($months) }
lessons-survey-month = { DAY($on, style: "short-month") } ({ $class })
