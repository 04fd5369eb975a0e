## Colonies of a yard file, and those counted in a new autumn.

# Keys and values, and what stands in straight quotes, are typed so in every language.
colony-fault-needs-name = give the colony a name, such as name = "Alder"
colony-fault-needs-hive = name its hive, or for a quick start its kind, such as kind = "Langstroth 10"
colony-fault-hive-and-kind = stands beside kind
colony-fault-hive-and-kind-right = give either the hive's name or, for a quick start, its kind
colony-fault-of-hive = belongs to the hive
colony-fault-of-hive-right = write { $key } in the [[hive]] table
colony-fault-hive-right = name a hive of this file, or add a [[hive]] table for it
colony-fault-hive-there = a hive of the colony's name is described already
colony-fault-hive-there-right = write hive = "{ $name }" in place of kind
colony-fault-same-hive = lives in the same hive as colony "{ $other }"
colony-fault-same-hive-right = give each colony a hive of its own; two in one box are two hives side by side

colony-fault-needs-bees = count seams or frames of bees (frames_of_bees = 8), or for a quick start strength = "middling"
colony-fault-needs-likeliest = give the likeliest number beside its low and high
colony-fault-outside = lies outside its own low and high
colony-fault-outside-right = bees_low, bees and bees_high must rise
colony-fault-crowded = { NUMBER($bees, digits: "all") } bees are more than the { NUMBER($hold) } or so that the { NUMBER($combs) } combs of the hive hold
colony-fault-crowded-right = count again, without the bees that hang out below, or mend the hive's boxes
colony-fault-frames-and-seams = stands beside seams_of_bees
colony-fault-frames-and-seams-right = give one of the two; they count the same bees
colony-fault-frames = { NUMBER($frames, digits: "all") } is more than the { NUMBER($combs) } combs of the hive
colony-fault-frames-right = count combs covered on both faces, or mend the hive's boxes
colony-fault-no-brood = "{ $written }" is no amount of brood
colony-fault-brood-right = write { LIST($words) }, "1.5 frames" or "3000 cells"

colony-fault-needs-stores = weigh it (stores = "18 kg"), count it (stores_frames = 6), or for a quick start food = "fair"
colony-fault-two-ways = { $second } stands beside { $first }
colony-fault-two-ways-right = give the food in one way only
colony-fault-word = "{ $word }" is a word, not a weight
colony-fault-heavy = { MASS($food, digits: 1) } is more than the combs of this hive hold, { MASS($most) }
colony-fault-heavy-right = write the food alone, without hive and bees; or mend the hive's boxes
colony-fault-shares = the shares add up to { NUMBER($sum, digits: 3) }
colony-fault-shares-right = let them add up to 1, such as { $example }

colony-fault-mites = { NUMBER($found) } mites on { NUMBER($bees) } bees cannot be
colony-fault-mites-right = write the mites found and the bees in the sample
colony-fault-no-count = "{ $written }" is no count of mites with its day
colony-fault-no-count-right = write mites = "2 of 300 on 2025-08-28", or mites = { $example }
colony-fault-not-counted = { $example }, or "not counted"
colony-fault-needs-count-day = write the day of the count, such as on = 2025-08-28
colony-fault-count-late = { $on } is after the day the colonies were looked at
colony-fault-count-late-right = write the day of the count
colony-fault-queen-year = { $year } cannot be the year of a queen alive in { $now }
colony-fault-queen-year-right = write the year she was born, from { $oldest } to { $youngest }
colony-fault-queen-year-such = such as 2024
colony-fault-treatments = lists { NUMBER($treatments) } treatments
colony-fault-treatments-right = list those since summer, at most { NUMBER($most) }
colony-fault-disorder = { $first } stands before { $then }: out of order
colony-fault-disorder-right = list the earliest first, or mend the date
colony-fault-needs-begun = write the day it began, such as on = 2025-09-15
colony-fault-needs-class = write formic, thymol, oxalic, strips or other
colony-fault-late = { $day } is after as_of, { $as-of }
colony-fault-late-right = write a day up to { $as-of }, or move as_of
colony-fault-early = { $day } is long before as_of, { $as-of }
colony-fault-early-right = give what belongs to this season; mend the year

# A new autumn.
colony-fault-line-right = write its bees; food; mites; queen, such as "Alder=8 frames; 14 kg; 3/300; laying"
colony-fault-short-line = "{ $line }" does not say bees and food
colony-fault-same-winter = { $as-of } is of the winter that the colonies were counted for, on { $counted }
colony-fault-same-winter-right = write a day of the next autumn; its year begins on { DAY($begins) }
colony-fault-none-counted = no colony is counted
colony-fault-none-counted-right = count those that live
colony-fault-counted-twice = is counted twice
colony-fault-counted-twice-right = count it once
colony-fault-earlier = it was counted on { $counted }, and the records hold the autumn of { $year }
colony-fault-earlier-right = take the yard of the records, or a file of that autumn
colony-fault-no-bees = "{ $written }" says no number of bees
colony-fault-bees-right = write the frames they cover, up to { NUMBER($most) }, or weak, middling or strong
colony-fault-no-food = "{ $written }" is no food this hive can hold
colony-fault-food-right = write the food alone, from 0 to { MASS($most) }, without hive and bees
colony-fault-after-look = { $on } is after the day looked at, { $as-of }
colony-fault-no-queen = "{ $written }" says nothing of a queen
