## A hive weighed, in the terminal.

weigh-terminal-food-by = Food by { $way }: { MASS($food, digits: 1) }
weigh-terminal-whole-by = Whole hive by { $way }: { MASS($whole, digits: 1) }
weigh-terminal-side-first = { MASS($now, digits: 1) } at one side: write it down, and lift the same side again
weigh-terminal-side-same = One side: no change beyond reading ({ MASS($change, digits: 1) }, plus or minus { MASS($plus-minus, digits: 1) })
weigh-terminal-side-changed = One side is { MASS($change, digits: 1) } { $lighter ->
    [yes] lighter
   *[no] heavier
}, plus or minus { MASS($plus-minus, digits: 1) }

weigh-terminal-whole = Whole
weigh-terminal-readings = Readings
weigh-terminal-read = { MASS($sum, digits: 1) } read, times { NUMBER($factor, digits: 3) } for supports set in by { LENGTH($inset, us: 1) }, a lift of { LENGTH($lift, us: 1) } and the middle of the load { LENGTH($centre, us: 1) } up; it lies { LENGTH($off, us: 1) } { $left ->
    [yes] left
   *[no] right
} of the middle
weigh-terminal-empty = Empty hive
weigh-terminal-empty-of = { $range }: { LIST($parts) }
weigh-terminal-part = { $what } { MASS($mass, digits: 1) }
weigh-terminal-other = Other
weigh-terminal-stores = { $range }; in 8 cases of 10 it lies in that range
weigh-terminal-stores-hive = { $range } ({ $hive }); in 8 cases of 10 it lies in that range
weigh-terminal-back = Your back
weigh-terminal-heavy = { $what }, { MASS($load, digits: 1) }: { $advice } (advised: { MASS($advised, digits: 1) })

weigh-terminal-none-reckoned = no food could be reckoned from this weighing, and nothing is noted
weigh-terminal-one-alone = { $read } alone: of the whole hive on a scale write --scale "{ $read }", of one side --one-side "{ $read }"
weigh-terminal-width-wanted = --width: give the distance between the lift points
weigh-terminal-frames-right = write a number, such as 7.5, or deep=4
