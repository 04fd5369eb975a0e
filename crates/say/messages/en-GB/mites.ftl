## Mites in a sample.

mites-bees-in-sample = bees in the sample
mites-days-of-board = days of the board
mites-on-board = mites on the board
mites-region = the region
mites-no-sample = no sample is given; give mites found and bees sampled
mites-two-ways = the colonies were counted in different ways; ask for each way alone
mites-swapped = { NUMBER($found) } mites cannot be read from so small a sample ({ NUMBER($bees) } bees); found and bees may be swapped

mites-wash = wash
mites-roll = sugar roll
mites-board = board
mites-a-day = mites a day
mites-per-100-bees = mites per 100 bees

mites-under = under the line
mites-likely-under = under the line, but one sample cannot rule it out
mites-near = near the line: count again soon
mites-likely-over = at or over the line, as far as one sample can say
mites-over = over the line

mites-none-over = None is at or over the line; { $worst } has most.
mites-one-over-though = { $colony } is at or over the line though the mean of the yard is under it: go by { $colony }, not by the mean.
mites-one-over = { $colony } is at or over the line.
mites-several-over = { LIST($colonies) } are at or over the line; { $worst } has most.
mites-too-few = { NUMBER($samples) } samples are too few for a range of the yard's mean.
mites-not-sampled = Colonies not sampled may be worse: in a large yard sample { NUMBER($enough) }.

mites-together = Treat a yard's colonies together: mites drift and are robbed from hive to hive.
mites-board-shows = A board shows what falls, not what is there: ants, wind and brood change it. Where it matters, wash 300 bees.
mites-take-from = Bees from the brood nest carry about twice the mites of bees on honey; take them from a comb with open brood, and see that the queen is not among them.
mites-small-sample = Fewer than 200 bees say little: half a US cup, 118 mL, is about 300.

## What a treatment can still do: by the days of the site.

mites-in-time = The winter bees are still to be raised here: a treatment begun by { DAY($safe) } protects { $later ->
    [yes] this winter ({ DAY($usual) } is in time in half of all years)
   *[no] this winter
}. One begun later comes too late for part of them.
mites-safe-day-past = The safe day to begin a treatment here, { DAY($safe) }, is past; { DAY($usual) } is in time in half of all years. Begin now: each week later comes too late for more of the winter bees.
mites-being-raised = The winter bees are being raised here, from about { DAY($usual) } to about { DAY($raised) }: a treatment now is too late for part of them; it protects the rest, the neighbours and next year.
mites-raised = The winter bees have been raised here, most of them by about { DAY($raised) }: a treatment now protects the neighbours and next year's bees, and no longer mends these.
mites-count-monthly = Mites grow as long as there is brood: count again every month.

## The same by the month, as the north counts its seasons.

mites-july = The winter bees will soon be raised: what is done before them protects this winter.
mites-august = The winter bees are raised from about mid-August: what is done before protects this winter; what is done after comes too late for part of them, and protects the neighbours and next year.
mites-september = The winter bees are being raised: a treatment now is too late for part of them; it protects the rest, the neighbours and next year.
mites-winter = The winter bees are raised: a treatment now protects the neighbours and next year's bees, and no longer mends these.
mites-any-month = Winter bees are raised in August to October: a treatment before them protects this winter, one after them the neighbours and next year.

mites-sources-intervals = intervals: Clopper and Pearson 1934, Wilson 1927, Garwood 1936
mites-sources-unevenness = unevenness k = { NUMBER($k, digits: "all") }: judgement ({ $source })
mites-sources-line = line: { $source } ({ $region })
mites-sources-found = share found: { $source }
mites-sources-sampling = sampling: Lee, Moon, Burkness, Hutchison and Spivak 2010 (300 bees a colony, 8 colonies a yard)
