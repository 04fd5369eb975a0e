## Spring: which hive to lift first, when to open, what to look for, what to feed, how strong is strong.

spring-hungry = hungry
spring-may-run-short = may run short
spring-fed = fed
spring-lasts = food lasts to { $goal } in at least 9 of 10 winters
spring-lasts-most = in 1 of 10 food lasts { NUMBER($early) } days or less; most likely to { $goal }
spring-lasts-days = food for about { NUMBER($days) } days; in 1 of 10 for { NUMBER($early) } or less
spring-lasts-if-alive = { $lasts }; alive: { $alive }

spring-danger = The danger does not end in February. Brood takes two to three times the food of midwinter, and cold days keep bees from fetching any: most colonies that starve do so in March, April or, in the north, early May.
spring-danger-until = Here it is not over before about { DAY($until) }.
spring-danger-none = None of your hives is likely to run out before then; lift them all the same.
spring-danger-none-by = None of your hives is likely to run out by { $goal }; lift them all the same.
spring-danger-hives = In at least 1 winter of 10 food runs out at { LIST($hives) }.

spring-open-likely = The next day fit for a first look is most likely { DAY($on) }, by { $share } of the weather paths.
spring-open-any = Of the next { NUMBER($days) } days none by itself is likely to be fit for a first look, but { $any } of the weather paths have one or more; { DAY($on) } by { $share }.
spring-open-cold = The coming days are too cold for combs; a lid off for a minute is another matter.
spring-open-usual = Here the first such day comes { $when }.
spring-open-others = A first look from { TEMPERATURE($first) }, every comb from { TEMPERATURE($full) }, calm and dry; others say no comb below { TEMPERATURE($least) }. A lid for seconds to save a hungry colony is done in frost by some.

spring-look-pollen = Before you open: do bees carry pollen in?
spring-look-pollen-why = A colony that carries pollen most likely has a laying queen; you may leave its brood alone today.
spring-look-pollen-else = No pollen while neighbours carry it: open this one first.
spring-look-seams = How many seams of bees, and where in the hive?
spring-look-seams-why = Strength and place before anything is moved.
spring-look-seams-else = None alive: close it at once against robbers, and look for foulbrood before anything is used again.
spring-look-food = Food: one to two full combs beside the brood
spring-look-food-why = Brood eats most now, and cold days keep bees at home.
spring-look-food-else = Less than that: feed today, above or beside the cluster.
spring-look-eggs = Eggs or young brood, in worker cells
spring-look-eggs-why = A queen was there three days ago; you need not see her.
spring-look-eggs-else = Only drone brood, or drones already in early spring: the queen is failing or gone; { -unite } it if it is healthy.
spring-look-brood = Brood caps domed, dry and whole; larvae pearly
spring-look-brood-why = What is catching shows in the brood first.
spring-look-droppings = Droppings on combs and bars
spring-look-droppings-why = Long confinement or bad food; from outside nobody can tell nosema from it.
spring-look-droppings-else = Much of it: a sample to a laboratory, soiled combs out later.
spring-look-floor = { CAPITAL(-floor) } clear, no damp above the cluster
spring-look-floor-why = The dead of winter mould and block the way. A little mould on outer combs is no harm: bees clean it.
spring-look-floor-else = Change or scrape the { -floor }; dry the lid.

spring-solid = Solid food
spring-solid-waits = Hunger, in any cold that lets the lid be off for a minute.
spring-solid-how = Fondant, candy or damp sugar on the bars, straight above the cluster; a comb of food from a healthy hive of the same yard is better still. Never on the far side: bees do not cross cold combs.
spring-syrup = Thin syrup, 1:1
spring-syrup-how = Only where food is short; it stirs up brood. About { VOLUME(0.001, us: 1) } at a time, entrance reduced.
spring-pollen = Added pollen
spring-pollen-after-syrup = Not before syrup can be given, in this order; by the flowers alone it would be about { DAY($on) }.
spring-pollen-only = Only where none is carried in.
spring-pollen-how = Early pollen starts brood that must be fed and kept warm to the end; help given too early starves them.

spring-very-weak = very weak
spring-below-usual = below what is usual here
spring-usual = as usual here
spring-above-usual = above what is usual here
spring-usual-not-known = no usual figure is known for this place and date

spring-weak-why = Find out why first. Never { -unite } a sick colony: disease goes with it. Crumpled wings, spotty or sunken brood or droppings all over mean do not { -unite }.
spring-weak-room = Make its room small: bees, brood and food on few combs behind a { -dummy-board }, entrance small, wrap and warm lid left on.
spring-weak-unite = Two weak colonies do not make a strong one. A healthy weak one is put over a strong one with a sheet of newspaper between, once bees fly most days; of two queens keep the better.
spring-weak-feed = Give no brood to warm and no stirring syrup beyond its strength; food straight beside its brood.
