## The winter ahead, hive by hive, in the terminal.

plan-terminal-chances = Chances
plan-terminal-chances-done = alive, fed and queenright to { $goal }: { $done } if all of that is done, { $not } if nothing is.
plan-terminal-chances-gone = alive, fed and queenright to { $goal }: its bees go to another hive; { $not } if nothing is.
plan-terminal-chances-why = Why: { $reasons }.
plan-terminal-counted = Counted
plan-terminal-quick-start = only the four quick-start facts are known, so every range here is wide
plan-terminal-left = left as it is { $alive } alive; alive, fed and queenright: { $queenright }
plan-terminal-once-fed = Once fed what it is short of: { $chance }
plan-terminal-to-do = To do
plan-terminal-no-action = no action now changes this by more than chance does
plan-terminal-ends = Ends in 100

plan-terminal-stores = { MASS($now, digits: 1) } now, { MASS($reach, digits: 1) } within reach; { $lasts }
plan-terminal-few-starve = few starve, but the worst tenth comes to spring with less than { MASS($left) } within reach
plan-terminal-rule = Rule
plan-terminal-rule-says = { $region }: { $says } ({ $source })
plan-terminal-but = But
plan-terminal-short = Short of
plan-terminal-short-nothing = nothing: 9 in 10 reach spring with { MASS($left) } within reach or more
plan-terminal-short-of = { MASS($short, digits: 1) } of stores (so that 9 in 10 keep { MASS($left) } within reach): { MASS($sugar, digits: 1) } of sugar, as { VOLUME($three-to-two, digits: 1) } of 3:2 or { VOLUME($two-to-one, digits: 1) } of 2:1 syrup
plan-terminal-syrup-by = must be finished (taken and capped) by { DAY($safe) } here to be safe ({ DAY($usual) } is in time in half of all years){ $late ->
    [yes] ; that is past: give fondant, candy or frames of stores instead
   *[no] {""}
}

plan-terminal-hive-empty = its bees are gone before the coldest month
plan-terminal-hive = in the coldest month loses { LOSS($loss, digits: 1) }, { FLOW($air, digits: 2, us: 1) } of air; water a day: lid { GRAMS($lid, us: 1) }, walls { GRAMS($walls, digits: 0, us: 1) }, { -floor } { GRAMS($floor, digits: 0, us: 1) }, drips on the cluster { GRAMS($drips, digits: 0, us: 1) }; { $hole }
plan-terminal-no-hole = no upper hole, so no rime to look for
plan-terminal-frost = frost at the upper hole { NUMBER($percent) } % of the time
plan-terminal-bees = { $bars } from { NUMBER($now) } now to { NUMBER($low) } ({ NUMBER($least) } to { NUMBER($most) }) about { DAY($on, style: "part") }
plan-terminal-brood = brood plainly there again about { DAY($on, style: "part") }

plan-terminal-food-day = Food a day
plan-terminal-dead-day = Dead a day
plan-terminal-dead-seen = Seen dead
plan-terminal-month-food = { DAY($month, style: "short-month") } { GRAMS($food, unit: "no", us: 1) }
plan-terminal-month-bees = { DAY($month, style: "short-month") } { NUMBER($bees) }
plan-terminal-month-seen = { DAY($month, style: "short-month") } { $usual }
plan-terminal-months-food = { LIST($months) } { $ounces ->
    [yes] oz
   *[no] g
}
plan-terminal-months-bees = { LIST($months) } bees
plan-terminal-months-seen = { LIST($months) } before the hive in a fortnight, 9 looks in 10

plan-terminal-helps = Helps { NUMBER($place) }
plan-terminal-action = { $what }: { $worth }
plan-terminal-action-when = { $what }, { $when }: { $worth }
plan-terminal-trade = The trade: { $rule }
plan-terminal-mind = Mind: { $caution }
# What an action is, its rule of the trade and what to mind.
plan-terminal-after = { LIST($sentences, between: ". ") }

plan-terminal-stands = It stands on { $source }; { NUMBER($members) } members on { NUMBER($paths) } paths, seed { $seed }.
plan-terminal-parameters = Parameters and their sources: data/winter_parameters.toml. Follow the label, local law, the { -bee-inspector } and the vet before any word here.

plan-terminal-of-then = { $yard } was counted on { $counted }, for a winter that is over; this is its plan of then. For this autumn's: snowhum season
