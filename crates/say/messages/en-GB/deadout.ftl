## A dead hive examined: the likeliest causes, where to look next, what can be used again.

deadout-sure = Most likely { $first }
deadout-unsure = Likeliest { $first }, then { $second }; one cannot be sure of the order
deadout-only = { CAPITAL($cause) }
deadout-look = { $ask } A yes points to { $yes }, a no to { $no }.

deadout-mites = { NUMBER($mites) } mites in { NUMBER($bees) } bees on { DAY($on) }
deadout-seen-dead = seen dead on { DAY($on) }
deadout-seen-living = seen living on { DAY($on) }
deadout-light = hefted light on { DAY($on) }
deadout-stores = { MASS($stores, digits: 1) } of stores; the rule here asks for { MASS($asked) }
deadout-stores-range = { MASS($stores, digits: 1) } of stores; the rule here asks for { MASS($least, unit: "no") } to { MASS($most) }
deadout-strength = { NUMBER($own) } bees in autumn; the middle colony of the yard had { NUMBER($middle) }
deadout-queen-dead = a dead queen on { DAY($on) }
deadout-queen-late = mated late in the season
deadout-queen-old = a queen of { NUMBER($year) }
deadout-wings = crumpled wings on { DAY($on) }
deadout-mouse = a mouse or its leavings on { DAY($on) }

deadout-nothing-told = No sign is told yet: this is only what dead hives of small keepers in the north usually are.
deadout-food-twice = No food anywhere and food near the cluster cannot both be: look again.
deadout-chain = Mites in autumn leave a small cluster, which then dies of cold or beside its food: both can be true, and what began it is what to mend.
deadout-close = Close the hive today, so that it is not robbed.

# $what is of the table of causes, such as: use it: brush out the dead and let it dry
deadout-brood-first = only once the brood has been looked at: { $what }
deadout-rules = { LIST($rules, between: "; ", alike: "once") }
deadout-comb-stays = no: nothing leaves the hive until the inspector has seen it
deadout-stores-stay = no: not to bees
deadout-people = Not for sale and not for people: honey of { -brood-boxes } that were fed or treated.

deadout-sources-foulbrood = signs of foulbrood: sure when seen, often missed (Milbrath); spores live for decades
deadout-sources-signs = which sign goes with which cause: Milbrath 2016 (Michigan State University Extension), Caron 2018 (Bee Culture)
deadout-sources-counts = how often: judgement, each table worth 10 hives; ranges are what it could be if others had filled it in
deadout-contradiction = these signs contradict each other; look again

deadout-stop-why = This may be American or European foulbrood, which spreads by comb, honey, tools and robbing bees. Spores live for decades.
deadout-stop-do = Close the hive so that no bee gets in. Move nothing, lend nothing, wash hands and tools. Call the { -bee-inspector } or the authority: in many places the law asks for it at once.
deadout-stop-first = Before anything else look at the brood: caps sunken, greasy or with holes, larvae that draw a thread, a smell of glue, black scale stuck to the lower wall of cells. Any of them: stop.
deadout-stop-clean = None of the four does not clear the brood: such signs are sure when seen and often missed.
