## Fit for winter, in the terminal.

fit-terminal-scales = Scales
fit-terminal-how = How
fit-terminal-not-known = { $what ->
    [bees] bees
    [brood] brood
    [stores] stores
    [queen] queen
    [mites] mites
   *[hive] hive
} not known
# A figure that lies off what is usual, as "fewer bees".
fit-terminal-off = { $perhaps ->
    [yes] perhaps{" "}
   *[no] {""}
}{ $what ->
    [bees-under] fewer bees
    [bees-over] more bees
    [brood-under] less brood
    [brood-over] more brood
    [stores-under] less food
    [stores-over] more food
    [queen-under] a younger queen
    [queen-over] an older queen
    [mites-under] fewer mites
    [mites-over] more mites
    [hive-under] a colder lid
   *[hive-over] a warmer lid
} than is usual
fit-terminal-yard = The yard
fit-terminal-buy = To buy
fit-terminal-buy-nothing = no feed: no colony is short
fit-terminal-buy-no-feed = no feed
fit-terminal-buy-sugar = { MASS($sugar, digits: 1) } of sugar as { VOLUME($syrup, digits: 1) } of 3:2 syrup
fit-terminal-buy-solid = { MASS($solid, digits: 1) } of fondant, or as much damp sugar, where { $late ->
    [yes] it is too late for syrup here
   *[no] no feeder is quick enough for syrup
}
fit-terminal-buy-later = { MASS($fondant, digits: 1) } of fondant at hand for the midwinter weighing
fit-terminal-buy-spared = frames from heavy hives can stand for { MASS($stores, digits: 1) } of the stores
