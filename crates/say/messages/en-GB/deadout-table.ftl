## A dead hive examined: what each cause is and does to comb and stores, what is asked of each sign, what else to do.

deadout-table-sunken-cappings = Are caps of brood sunken, greasy-dark or with ragged holes?
deadout-table-sunken-cappings-seen = sunken cappings
deadout-table-ropy-larvae = Does a dead larva, stirred with a match, draw a thread longer than 2 cm (3/4 in)?
deadout-table-ropy-larvae-seen = ropy larvae
deadout-table-foul-smell = Does the brood smell of glue or rot?
deadout-table-foul-smell-seen = foul smell
deadout-table-black-scale = Is there black scale stuck hard to the lower walls of cells?
deadout-table-black-scale-seen = black scale

deadout-table-mites = mites and the viruses they carry
deadout-table-mites-comb = use it: mites die with their bees; freezing is no harm
deadout-table-mites-stores = give them to bees

deadout-table-starved = starvation, no food left
deadout-table-starved-comb = use it: brush out the dead and let it dry
deadout-table-starved-stores = what is left, give to bees

deadout-table-isolation = starvation beside food it could not reach
deadout-table-isolation-comb = use it: brush out the dead and let it dry
deadout-table-isolation-stores = give them to bees as they are

deadout-table-queen = a failed queen
deadout-table-queen-comb = use it
deadout-table-queen-stores = give them to bees

deadout-table-small = too few bees to keep warm
deadout-table-small-comb = use it: brush out the dead and let it dry
deadout-table-small-stores = give them to bees as they are

deadout-table-damp = wet under the lid
deadout-table-damp-comb = use what bees can clean; cut out the worst mould
deadout-table-damp-stores = mouldy or fermented stores: no

deadout-table-dysentery = dysentery, perhaps nosema
deadout-table-dysentery-comb = scrape it; scrap old and soiled comb (acetic acid or heat disinfect, and are a hazard of their own)
deadout-table-dysentery-stores = not to bees untreated

deadout-table-mice = mice
deadout-table-mice-comb = cut out what is soiled
deadout-table-mice-stores = soiled stores: no

deadout-table-robbed = robbed out
deadout-table-robbed-comb = use it once the brood has been looked at
deadout-table-robbed-stores = none left; what is, give to bees only if the brood is clean

deadout-table-poison = poison
deadout-table-poison-comb = comb with pollen: no
deadout-table-poison-stores = no

deadout-table-other = something else
deadout-table-other-comb = look at the brood again before you use it
deadout-table-other-stores = keep them closed off until you know

deadout-table-small-cluster = Is the dead cluster small, the size of a fist or a softball?
deadout-table-hive-empty = Is the hive all but empty of bees, dead or alive?
deadout-table-hive-empty-yes = Bees seldom leave a hive in the cold half of the year. A hive that stands empty has mostly dwindled: one by one they flew out and did not return, and mites are the usual reason.
deadout-table-pile-of-dead = Is there a pile of dead bees on the { -floor }, thousands?
deadout-table-no-food = Is there no honey anywhere in the hive?
deadout-table-food-near = Is there honey within a hand's width of the dead cluster?
deadout-table-heads-in-cells = Are many bees head-first in empty cells?
deadout-table-heads-in-cells-yes = Heads in cells do not prove hunger: a cluster grown too small, from mites or cold, is found the same way.
deadout-table-spotty-brood = Is capped brood scattered, with bees dead as they hatched, tongues out?
deadout-table-white-crystals = Are there white salt-like crystals on the { -roofs } of brood cells? (droppings of mites: they were there)
deadout-table-white-crystals-yes = The crystals say that mites were there; they do not prove that mites ended it.
deadout-table-crumpled-wings = Are there dead bees with crumpled wings or short bodies?
deadout-table-mites-over-line = Was the last count over 3 mites in 100 bees, or does a wash of half a cup of dead bees from the cluster show so many?
deadout-table-died-before-midwinter = Did it die before the turn of the year?
deadout-table-drone-cells = Is there drone brood in worker cells, or more than one egg in a cell?
deadout-table-queen-cells = Are there queen cells out of their season?
deadout-table-queen-found = Is the queen among the dead?
deadout-table-droppings-inside = Are there many brown streaks inside, on frames and top bars?
deadout-table-droppings-inside-yes = Streaks do not prove nosema: only a laboratory can tell (Mussen 2011, University of California, Davis).
deadout-table-wet-mould = Are bees and comb wet or mouldy? (mould mostly grows after death)
deadout-table-wet-mould-yes = Mould did not kill them: it grows on bees that are dead already.
deadout-table-chewed-comb = Is comb chewed away, with a nest, droppings or a smell of mice?
deadout-table-ragged-cappings = Are caps of honey torn ragged, with wax crumbs on the { -floor }?
deadout-table-tongues-out = Did many die at once in flying weather, tongues out, perhaps in several hives?
deadout-table-weak-in-autumn = Was it weak in autumn, fewer bees than its neighbours?
deadout-table-light-in-autumn = Was it light in autumn, or not fed to its mark?
deadout-table-queen-trouble = Was its queen old, new late in the season, or in doubt?
deadout-table-long-cold = Was there a long cold spell just before?
deadout-table-pictures = Pictures
deadout-table-pictures-do = Before anything is moved: the cluster, both sides of the combs, the { -floor }.
deadout-table-order = Order
deadout-table-order-do = From the top down, the { -floor } last: what lies there tells the story of the whole winter.
deadout-table-wash = Mites
deadout-table-wash-do = Wash half a cup of dead bees in soapy water and count the mites. Take them from the cluster, not from the { -floor }.
deadout-table-laboratory = Laboratory
deadout-table-laboratory-do = Freeze 30 to 60 dead bees of the cluster. Nosema is told by a laboratory alone, and dead bees may tell otherwise than living ones: in one study the two disagreed in 36 of 100 colonies, so send both where you can.
deadout-table-wax-moth = Wax moth
deadout-table-wax-moth-do = Cold kills all its stages: 2 hours at -15 °C (5 °F), 3 at -12 °C (10 °F), 4.5 at -7 °C (19 °F), counted once the comb itself is so cold. Two days in a deep freezer are usual; then keep the comb cold and moth-tight.
