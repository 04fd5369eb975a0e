## Set-ups side by side, in the terminal.

setup-terminal-title = { $hive }: winter set-ups under the same weather

## Heads of the table, in two lines: hives alive of 100, food, water caught, heat lost, price, hives gained of 100.

setup-terminal-alive = alive
setup-terminal-food = food
setup-terminal-water = water, { $ounces ->
    [yes] oz
   *[no] g
} a day
setup-terminal-heat = { $british-thermal ->
    [yes] Btu/h
   *[no] W/K
}
setup-terminal-price = price
setup-terminal-gain = gain
setup-terminal-of-hundred = of 100
setup-terminal-unit = { $pounds ->
    [yes] lb
   *[no] kg
}
setup-terminal-faces = lid/walls/base

setup-terminal-number = { NUMBER($number) }
setup-terminal-tenths = { NUMBER($number, digits: 1) }
setup-terminal-loss = { LOSS($loss, digits: 2, unit: "no") }
setup-terminal-stores = { MASS($stores, digits: 1, unit: "no") }
setup-terminal-caught = { GRAMS($lid, unit: "no", us: 2) }/{ GRAMS($walls, unit: "no", us: 2) }/{ GRAMS($base, unit: "no", us: 2) }

setup-terminal-margin = { $more ->
    [yes] +
   *[no] {""}
}{ NUMBER($hives, digits: 1) } ± { NUMBER($plus-minus, digits: 1) } hives in 100
setup-terminal-chance = no real difference: what there is may be chance ({ $margin })
setup-terminal-hardly = no real difference: fewer than { NUMBER($least) } hives in 100 ({ $margin })
setup-terminal-better = better: { $margin } alive, fed and queenright
setup-terminal-worse = worse: { $margin } alive, fed and queenright

setup-terminal-no-change = --try "": says no change; write one such as "lid=50 mm foam"
