## The page on which a hive is weighed on the spot.

weigh-page-heading = Weigh { $hive }
weigh-page-back = Back to { $hive }
weigh-page-lede = Lift one side straight up until it is just clear, read the lowest steady figure; then the other side.

weigh-page-food = Food: { $mass }
weigh-page-whole = Whole hive
weigh-page-tare = Empty, with frames
weigh-page-tare-parts = { $mass }, reckoned from its parts: weigh an empty one to know better
weigh-page-bees = Bees
weigh-page-two-sides = Two sides
weigh-page-lifted = their sum times { NUMBER($factor, digits: 3) } for supports set in and a side lifted
weigh-page-keep = Keep it as a note
weigh-page-kept = Kept with its error: the estimate weighs it by that.
weigh-page-who = Says who?

weigh-page-left = One side, lowest steady reading, { $unit }
weigh-page-right = The other side, { $unit }
weigh-page-inset = From the lifted edge in to where the hive rests, { $unit }
weigh-page-lift = How far the side was lifted, { $unit }
weigh-page-width = Between the lift points, if not the hive's own width, { $unit }
weigh-page-scale = Or the whole hive on a scale, { $unit }
weigh-page-own-tare = The empty hive with its frames, if you weighed it, { $unit }
weigh-page-other = Snow, feeder, wrap, other weight, { $unit }
weigh-page-reckon = Reckon

weigh-page-says = What a weighing says
weigh-page-one-side = One side is no weight; the same side each time is a trend.
weigh-page-supports = Supports set in from the edges make two sides read 4 to 14 % low: give the inset, and it is put right.
weigh-page-by-hand = Light, fair, heavy mean something once one hive of the row was lifted by hand and then weighed: lift that one first each time, and call the others by it.

weigh-page-no-box = The hive has no box.
weigh-page-one-way = Give both sides, or the whole hive on a scale.
weigh-page-wrong = { $text }: write a figure such as 21.5 { $unit }.
