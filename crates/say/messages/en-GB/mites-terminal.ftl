## A count of mites, in the terminal.

mites-terminal-line = Line
mites-terminal-line-says = { $says } ({ $region }: { $source })
mites-terminal-a-day = a day
mites-terminal-per-100 = per 100 bees
mites-terminal-in-bees = { $mites ->
    [one] { NUMBER($mites) } mite
   *[other] { NUMBER($mites) } mites
} in { NUMBER($bees) } bees
mites-terminal-in-days = { $mites ->
    [one] { NUMBER($mites) } mite
   *[other] { NUMBER($mites) } mites
} in { NUMBER($days, digits: "all") } days
mites-terminal-found = { $mites ->
    [one] { NUMBER($mites) } mite
   *[other] { NUMBER($mites) } mites
}

mites-terminal-one = { $counted }, { NUMBER($rate, digits: 1) } { $unit }: { $verdict }
mites-terminal-range = Range
mites-terminal-ranges = { NUMBER($even-low, digits: 1) } to { NUMBER($even-high, digits: 1) } { $unit } in 95 of 100 such samples if mites sat evenly; they do not: { NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) } is nearer
mites-terminal-truly = Truly
mites-terminal-missed = { NUMBER($rate, digits: 1) } per 100 bees ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) }) with those the { $method } misses; lines are drawn for the count as it is
mites-terminal-chance = Chance
mites-terminal-over = { NUMBER($hundred) } in 100 that the truth is over { NUMBER($line, digits: "all") } per 100
mites-terminal-clean = A clean one
mites-terminal-finds-none = finds no mite at a true { LIST($misses, between: "; ") }
mites-terminal-miss = { NUMBER($mites, digits: "all") } per 100 in { $samples } of 100 samples
mites-terminal-under-one = under 1
mites-terminal-at-most = at most { NUMBER($most) }
mites-terminal-about = { NUMBER($samples) }
mites-terminal-between = { NUMBER($least) } to { NUMBER($most) }

mites-terminal-most = Most: { $colony }, { NUMBER($rate, digits: 1) } { $unit }. { NUMBER($colonies) } colonies sampled
mites-terminal-of-several = { $counted }, { NUMBER($rate, digits: 1) } { $unit } ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) }): { $verdict }
mites-terminal-yard = Yard
mites-terminal-mean = Mean
mites-terminal-mean-is = { NUMBER($mean, digits: 1) } { $unit }, { NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) } for the yard's mean
mites-terminal-not-counted = Not counted: { LIST($colonies) }. They may be the worst.

mites-terminal-what-counted = what was counted at { $colony }? Write such as: snowhum mites { $colony } 14/300
mites-terminal-wrong-count = "{ $count }": write mites and bees, such as 14/300
mites-terminal-nobody-counted = nobody counted mites in { $yard }; give --found and --bees, or write mites in the yard file
mites-terminal-days-wanted = a board is read a day: give --days, how long it lay there
mites-terminal-sample-right = write NAME=MITES/BEES, such as Alder=2/300
mites-terminal-the-colony = the colony
