## What a yard file leaves open, and what is taken.

# Keys and values, and what stands in straight quotes, are typed so in every language.
yard-taken-hive = not said about the hive, so taken: { LIST($taken) }
yard-taken-boxes = the boxes the standard usually winters in
yard-taken-floor = solid { -floor }
yard-taken-lid = the standard's usual cover without insulation
yard-taken-entrance = reduced entrance
yard-taken-upper-hole = no upper hole
yard-taken-wrap = no wrap
yard-taken-facing = facing the noon sun
yard-taken-pollen = pollen in it is kept and moves no brood here: the model knows no law of pollen
yard-taken-no-day-in = no day in is written: it stands outdoors until it is noted as carried in
yard-taken-empty-room = no hive is to winter in it: write indoors = "{ $room }" at a hive, or under [apiary] for all of them
yard-taken-shelter = shelter from the wind is not said; taken as "windbreak"
yard-taken-sun = winter sun is not said; taken as "partial"
yard-taken-prices = prices not given, so taken in { $currency }: { LIST($prices) } ({ $source })
yard-taken-colony = only words are known of bees and food, so every range is wide; count and weigh to narrow it
yard-taken-mites = no mite count is given; taken as not counted
yard-taken-stores = what the stores are is not said; taken as sugar

yard-taken-line = line { NUMBER($line) }, { $field }: { $says }
