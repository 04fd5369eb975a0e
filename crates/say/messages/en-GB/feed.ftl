## Sugar for a shortage.

feed-short = stores that are short (kg)
feed-feeder = what the feeder holds (L)
feed-slab = thickness of the slab (mm)

feed-syrup-too-late = The day for syrup has passed: bees can no longer ripen it. Give frames of stores, else solid feed.
feed-syrup-autumn = Syrup must be finished by its day, not begun. No 1:1 in autumn: bees would have to dry away three times the water of 2:1.
feed-syrup-winter = No syrup in winter: clustered bees neither reach nor ripen it, and it chills them.
feed-syrup-spring = Syrup only once days stay above 10 °C (50 °F); 1:1 is taken as a flow, so feed no more than is short.

feed-which-stores = What a colony winters on matters: sugar and most honeys keep; honeydew and heather foul bees shut in for months; ivy and rape set hard, and bees starve beside them for want of water. Feed sugar last, so that it is eaten first.
feed-frames-first = A frame of sealed stores from a heavy, healthy hive of the same yard comes first where there is one.
feed-over-the-cluster = Solid feed lies right over the cluster; leave bees a path round it.
feed-fondant-alone = Fondant can be the whole autumn feed, as many keep it in Britain: a block of { MASS(12.5, digits: 1) } lasts a colony four to five weeks, put on while days are mild.
feed-no-pollen = Pollen or protein in the feed starts brood early, which must be kept warm and fed: plain sugar until bees carry pollen in. Some mix it in all the same; then it must not run out.
feed-dry-sugar = Dry sugar is taken only where damp reaches it: on paper over the top bars, misted, a path left free.

## A need far over what the trade of the region feeds.

feed-rule-asks = the model asks for { MASS($need) } in all, the rule ({ $region }) for { MASS($low) } to { MASS($high) }.
feed-rule-eaten = Half of such colonies here eat { MASS($eaten) } by { DAY($by) }; the rest is for the hungriest winter in ten, and { MASS($left) } left over.
feed-rule-now = So far apart neither is sure: { $fed ->
    [yes] feed to the rule now, { MASS($first) } of stores more
   *[no] it has what the rule asks for
}, weigh in midwinter, and keep { MASS($later) } of fondant at hand

feed-sources-stores = stores from sugar: { $source }
feed-sources-densities = densities of syrup: from memory of handbook tables of sucrose at { TEMPERATURE(20) }
feed-sources-poured = poured sugar { NUMBER($density, digits: "all") } kg/L: { $source }
feed-sources-frame = a full frame: 0.30 (Swedish Beekeepers) to 0.35 kg/dm² (Bienen-Zeitung wiki)
feed-sources-candy = candy cannot replace autumn stores in deep cold: University of Minnesota

feed-solid-dry = dry sugar on paper
feed-solid-damp = damp sugar, set hard
feed-solid-cooked = cooked candy board
feed-solid-fondant = bought fondant
