## The page "Dead colony".

dead-page-heading = Dead colony
dead-page-lede = Why did it die, and what of it can be used again? Foulbrood is looked for first.
dead-page-seen-dead = seen dead
dead-page-shut = In winter a hive that is only silent stays shut: <a href="/">the yard page</a> says how likely it is dead.
dead-page-kept = examined { DAY($on) }: { $found }

dead-page-title = { $colony }: dead colony
dead-page-why = { $colony }: why did it die?
dead-page-in-record = In the record: { $kept }.
dead-page-wrong-sign = { $text }: write yes, fairly sure, no, or leave it open.
dead-page-wrong-none = No sign is told; look first, then keep what you found.

dead-page-brood-lede = First the brood. Take out a comb that had brood and look into its cells in good light.
dead-page-go-on = Go on
dead-page-brood-note = A yes or a fairly sure stops here. Such signs are sure when seen and often missed: a no does not clear the brood.
dead-page-what = What do you see?
dead-page-what-note = Leave what you did not look at. The more is told, the narrower the ranges.
dead-page-part-bees = The bees
dead-page-part-food = Food
dead-page-part-brood = Brood
dead-page-part-hive = The hive
dead-page-part-known = What you know of it
dead-page-brood-again = The brood once more
dead-page-ask = Why did it die?
dead-page-yes = yes
dead-page-fairly-sure = fairly sure
dead-page-fairly-sure-not = fairly sure not
dead-page-no = no
dead-page-did-not-look = did not look
dead-page-not-looked-at = not looked at
dead-page-from-records = From the records, unless you say otherwise: { $seen } ({ $because }).

dead-page-stop = Stop: this may be foulbrood
dead-page-seen = Seen: { LIST($signs, between: ", ") }.
dead-page-stop-reuse = Comb: { $comb }. Stores: { $stores }.
dead-page-looked-again = I looked again: back to the four questions

dead-page-look-next = Look next
dead-page-tell-more = Tell more of what you see
dead-page-reuse = What can be used again
dead-page-comb = Comb
dead-page-stores = Stores, for bees
dead-page-people = People
dead-page-open = While it is open
dead-page-watch = What the watch made of it from outside
dead-page-watch-note = From weather and notes alone. It is not mixed into the causes above, since it stands on the same facts.
dead-page-who = Says who?
dead-page-causes = Of 100 hives that look like this; the range is what others who know might say
dead-page-cause = Cause
dead-page-of-hundred = Of 100
dead-page-between = Between
dead-page-range = { NUMBER($low) } and { NUMBER($high) }
dead-page-taken = { NUMBER($signs) } taken from the records
dead-page-taken-one = { $asked } <strong>{ CAPITAL($seen) }</strong>: { $because }.
dead-page-examined-on = Day it was examined, if not { DAY($today) }
dead-page-keep = Keep in the record
