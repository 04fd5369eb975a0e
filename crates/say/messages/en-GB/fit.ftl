## Whether a colony is fit for winter: six scales, a verdict with its reasons, and what the yard needs.

fit-what = { $what ->
    [bees] Bees
    [brood] Brood
    [stores] Stores
    [queen] Queen
    [mites] Mites
   *[hive] Hive
}
fit-stands = { $stands ->
    [not-known] not known
    [no-range] no usual range known here
    [under] under what is usual
    [perhaps-under] perhaps under what is usual
    [perhaps-over] perhaps over what is usual
    [over] over what is usual
   *[usual] usual
}
# The same beside a scale.
fit-stands-short = { $stands ->
    [not-known] not known
    [no-range] no usual range known here
    [under] under
    [perhaps-under] perhaps under
    [perhaps-over] perhaps over
    [over] over
   *[usual] usual
}
fit-verdict = { $kind ->
    [stop] stop: foulbrood first
    [shake-out] shake out
    [unite] { -unite }
    [look-again] look again for eggs
    [wait] wait for a mild day
    [treat] mites first
    [boost] boost with sealed brood
    [company] warm company
   *[alone] winter alone
}
fit-verdict-queen = { $queen }: { $verdict }
fit-unfed = Short and yet not on this list, since its bees are to be put to others or shaken out: { LIST($names) }.

fit-parts = { LIST($parts, between: "; ") }
fit-any-hive = any hive

fit-bees = about { COUNT($bees) } bees ({ COUNT($low) } to { COUNT($high) }), on { NUMBER($combs, digits: "all") } { $combs ->
    [one] comb
   *[other] combs or seams
} of this hive
fit-bees-hive = { $is-nucleus ->
    [yes] nucleus
   *[no] full-size hive
}
fit-bees-other = 4 frames keep warm in a winter of seven months, but build slowly in spring (high Colorado) ({ $source })
fit-bees-unknown-air = the air at the count is not known: count seams in the morning at 5 to 10 °C (41 to 50 °F), when the cluster shows its size
fit-bees-warm = counted at { TEMPERATURE($air) }: loose bees cover more seams than a cluster; count again at 5 to 10 °C (41 to 50 °F)
fit-bees-cold = counted at { TEMPERATURE($air) }: a tight cluster covers fewer seams than it has bees for

fit-brood-not-looked = nobody looked
fit-brood-none = none
fit-brood = about { NUMBER($frames, digits: 1) } full-size frames of sealed brood
fit-brood-region = this site at this date
fit-brood-usual = { NUMBER($low, digits: "all") } to { NUMBER($high, digits: "all") } frames while days reach { TEMPERATURE($warmth) }
fit-brood-look = look for sealed brood in whole patches, eggs beside it, no sunken, holed or ropy cells; drones raised in worker cells mean a failing queen

fit-stores = { MASS($food, digits: 1) } ({ MASS($low, digits: 1) } to { MASS($high, digits: 1) }); computed for this hive here: { MASS($need, digits: 1) }{ $is-short ->
    [yes] , so { MASS($short, digits: 1) } is short
   *[no] {""}
}
fit-stores-nucleus-region = North America
fit-stores-nucleus = 14 lb (6.4 kg) or more in four full-size frames
fit-stores-boxes = { $boxes ->
    [one] one box
   *[other] { $boxes } boxes
}
fit-stores-region = this site
fit-stores-no-rule = no rule of the trade is known for stores alone here; the computed need stands in for it
fit-stores-computed = computed from this site's weather: 9 in 10 reach spring with food in reach
fit-stores-whole-hive = { $region }: { $says } ({ $source }); that is no weight of stores
fit-stores-honeydew = honeydew: its ash fouls bees that cannot fly for months; keep it for spring and feed sugar over it now
fit-stores-heather = heather: bees foul themselves on it in long confinement; feed sugar over it now
fit-stores-hard = it sets hard: bees can starve beside it for want of water; feed sugar last, so that it is eaten first

fit-queen-born = of { NUMBER($year) }
fit-queen-no-year = her year is not known
fit-queen-late = { $born }, mated in August or later: such queens fail more often
fit-queen-introduced = put in this autumn: look for her own brood before trusting her
fit-queen-cast = a late swarm: only its own sealed worker brood proves her
fit-queen-region = anywhere
fit-queen-young = a young queen, of this year or last
fit-queen-other = a queen of two winters that laid well is kept by many (common practice)
fit-queen-unseen = she was not seen: look for eggs or sealed worker brood; { $too-late ->
    [yes] a queen given after about { DAY($last) } seldom does well here (judgement): if she is missing, { -unite }
   *[no] if she is missing, give a mated queen by about { DAY($last) } here (judgement)
}

fit-mites-not-counted = nobody counted
fit-mites = { NUMBER($found) } in { NUMBER($bees) } bees on { DAY($on) }: { NUMBER($rate, digits: 1) } per 100 ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) }), { $verdict }
fit-mites-treated = { $says }; treated since, so the count is no longer what is there
fit-mites-wash = wash 300 bees from a comb with open brood. Seeing no mites says little: of samples of 100 bees 37 in 100 show none where 1 bee in 100 carries one
fit-mites-again = count again in October, before bees cluster about { DAY($cluster) }: robbers bring mites home

fit-hive-lid = { RESISTANCE($lid) } over the bees
fit-hive-region = cold countries
fit-hive-lids = R 0.9 to 3.5 m² K/W (R 5 to R 20) over the bees
fit-hive-sealed-top = others seal the top over foam and leave no upper hole; both schools want no cold surface over the cluster
fit-hive-breathing-top = others lay straw or a moisture board that takes up water under a vented { -roof }; both schools want no cold surface over the cluster
fit-hive-excluder = take the excluder out: the cluster climbs and leaves the queen below it
fit-hive-feeder = take the empty feeder off: a cold hollow over the cluster
fit-hive-empty-super = take the empty super off: a cold room over the cluster
fit-hive-guard = a guard with slots to { LENGTH(0.008, us: 2) } or holes to { LENGTH(0.009, us: 2) }
fit-hive-mice = the entrance is { LENGTH($high, us: 2) } high, and mice pass: { $guard }
fit-hive-large = { NUMBER($combs) } combs for { NUMBER($bees) } of bees: where winters are mild the space is shrunk to the bees, in Minnesota three boxes stay on; an empty box over the cluster is the worst place for one
fit-hive-lean = not in the yard file: look that the hive leans a little forward
fit-hive-not-noted = not in the yard file: whether an excluder, a feeder or an empty super is still on; look, and that the hive leans a little forward

fit-stop = close { $name }, move no bees, combs or tools between hives, and tell the { -bee-inspector } before anything else
fit-stop-why = signs of foulbrood were noted; it is notifiable in most countries, and every frame moved carries it on
fit-queen-first = look for eggs this week; none: { $too-late ->
    [yes] { -unite } it, for it is too late to give a queen here
   *[no] a mated queen by about { DAY($last) }, or { -unite } it
}. If there are eggs: { $verdict }
fit-queen-first-why = no queen seen and no brood on { DAY($today) }: the chances of the plan reckon with a laying queen
fit-want-of-queen = of 100 such hives left as they are { NUMBER($end) } end for want of a queen before spring, and { NUMBER($come) } come to spring with one
fit-sick-too = it is sick too ({ $why })
fit-too-late-for-queen = the last sensible day to give a queen here was about { DAY($last) } (judgement)

fit-count-again = count again before anything else: it was treated, but with so many mites the treatment must be seen to have worked; the broodless time is the next good one
fit-treat-late = treat now within label and law, all of the yard on one day, and again in the broodless time if the count asks for it
fit-treat = treat now within label and law, all of the yard on one day, before its winter bees are raised
fit-treat-why = { NUMBER($rate, digits: 1) } mites per 100 bees at the last count; the line is { $line } ({ $region })
# Why a chance is trusted less than the count it was reckoned from.
fit-viruses = the model reckons mites as shorter lives of the bees they fed on and holds next to nothing of viruses, which nobody has measured here: at such a count trust the count before the chance
fit-treat-by-chance = in the model a treatment today changes this winter of its own by no more than chance does
fit-treat-gain = in the model a treatment today brings { NUMBER($gain) } ± { NUMBER($plus-minus) } hives in 100 more to spring, fed what they are short of
fit-already-hurt = its winter bees are raised, wholly or in part: a treatment now protects the neighbours and next year's bees, not bees already hurt

fit-weak = about { COUNT($bees) } bees; under { COUNT($company) } a colony wants company in { $country }
fit-together = together in the model: { NUMBER($come) } in 100 come to spring, as one colony
fit-unite = put it to { $with }
fit-boost = hang in a frame of sealed brood without its bees from { $giver }, by about { DAY($last) }
fit-boost-gain = in the model one frame of sealed brood from { $giver } brings { NUMBER($gain) } ± { NUMBER($plus-minus) } hives in 100 more of the two to spring
fit-boost-by-chance = { $gain }: no more than chance does
fit-boost-too-late = it is too late for sealed brood: it must hatch before about { DAY($cluster) }
fit-boost-none = no healthy colony of the yard has sealed brood to spare

fit-alone = { LIST($needs, between: ", and ") }
fit-alone-nothing = it needs no other colony's help
fit-beside = set it beside or over { $strong }, wall to wall, to share its warmth; a hive is shifted when its bees no longer fly
fit-no-company = it wants a strong neighbour to warm it, and none is fit for that here
fit-feed-to-rule = feed it to the rule first, { MASS($food, digits: 1) } of stores, and weigh it in midwinter
fit-has-rule = it has what the rule asks for and the model asks for more: weigh it in midwinter
fit-feed = feed it first: { MASS($food, digits: 1) } of stores short
fit-once-fed = once it is given what it is short of, { $chance } live with their queen
fit-chance = as it stands { $chance } come to spring alive, fed and queenright
fit-chance-ends = as it stands { $chance } come to spring alive, fed and queenright; most that die: { $cause }

fit-against-sick = it is sick ({ $why }): a sick colony is never put to another
fit-against-none = no healthy, queenright colony of the yard, its mites under the line or seen to be treated, is stronger: two weak ones do not make a strong one
fit-against-late = it is too late: after about { DAY($last) } colonies here are clustered and no longer merge, least of all in December
fit-step-look = first look through the brood of { $weak } and { $strong }; { $foulbrood }
fit-step-keep = keep { $strong }'s queen; make sure that no queen is left in { $weak }
fit-step-choose = keep { $kept }'s queen: find and remove { $gone }'s the day before; bees left to choose may lose both
fit-step-choose-year = keep { $kept }'s queen (of { NUMBER($year) }): find and remove { $gone }'s the day before; bees left to choose may lose both
fit-step-paper = towards evening lay one sheet of newspaper with a few slits over { $strong } and set { $weak }'s box on it
fit-step-frames = their frames differ: shake or brush the bees of the weak one into an empty box of the other's size over the sheet, and leave combs that do not fit
fit-step-leave = leave them for a week, then take away what is empty; the weak one's own stand is cleared, so that stragglers go to a neighbour
fit-step-by = be done by about { DAY($last) } ({ DAY($early) } to { DAY($late) }) here, before they cluster{ $is-close ->
    [yes] : that is now or not at all
   *[no] {""}
}

fit-say-strong = Strong in autumn is not safe: large colonies raise most mites, and nobody has counted here.
fit-say-clean = A clean sample is not a clean colony: count again.
fit-say-robbed = Robbed or beset by { -wasps }: close the entrance to a bee's width or two, feed it last, and weigh it again.
fit-say-no-room = With what it is short of it would hold { MASS($wanted) }, and its combs take about { MASS($room) } and leave bees room: give it a box of drawn comb, or the rest as fondant in winter.
fit-say-nucleus = A nucleus is fed first and defended first: entrance of a bee's width.
fit-say-feeding = While you feed: entrances first, nuclei and weak hives first, all on one evening.
fit-say-mites-now = Mites now: a treatment after about { DAY($all) } comes too late for part of the winter bees, after about { DAY($none) } for all of them. It protects the neighbours and next year's bees, not bees already hurt; a treatment in November alone is no cure for this winter.
fit-say-count-again = Count a second time in October, before bees cluster about { DAY($cluster) }: robbers bring mites home from dying hives.
fit-say-queens = Queens: the last sensible day to give one here is about { DAY($last) } ({ DAY($early) } to { DAY($late) }), from this site's last flight weather; judgement. A virgin after that means { -unite }.
fit-say-uniting = { CAPITAL(-uniting) }: by about { DAY($last) } here, the weak on the strong, and never with anything sick. Weak on weak is not strong.
fit-say-left-on = The yard file says of no hive whether an excluder, a feeder or an empty super is still on. Look before the first frost.

fit-window = can still work if begun by about { DAY($last) } ({ DAY($early) } to { DAY($late) }) here; protects this winter's bees only before about { DAY($winter-bees) }
fit-window-hot = { $window }; of the { NUMBER($days) } days left of it { NUMBER($hot) } are too hot
fit-window-past = its last day to be begun here was about { DAY($last) }; that is past
fit-window-no-broodless = no broodless time comes out of this plan's days: look before treating
fit-window-broodless = no hive has brood from about { DAY($from) } to about { DAY($until) }
fit-window-look = { $window }; no day is without brood in nine winters of ten: look before treating
fit-window-sure = { $window }, in 9 winters of 10 at least from { DAY($from) } to { DAY($until) }: of those { NUMBER($days) } days about { NUMBER($mild) } are mild enough
