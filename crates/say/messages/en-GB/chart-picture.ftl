## Charts of a winter: heads of tables and keys that several have.

chart-picture-day = Day
chart-picture-days = Days
chart-picture-what = What
chart-picture-when = When
chart-picture-named = { $what }: { $says }.
chart-picture-range = { $low } to { $high }

## Food left, as a fan of what may come.

chart-picture-amount = { MASS($mass, unit: "no") }
chart-picture-fine-amount = { MASS($mass, digits: 1, unit: "no") }
chart-picture-unit = { MASS($mass, unit: "only") }
chart-picture-mass = { MASS($mass, digits: "few", us: 0) }
chart-picture-eight = 8 in 10
chart-picture-five = 5 in 10
chart-picture-middle = as likely as not
chart-picture-reserve = reserve to have on that day, { MASS($mass, digits: "few", us: 0) }
chart-picture-weighed = weighed, give or take
chart-picture-nothing = Nothing is known of the food left.
chart-picture-left = On { $when }, half of the winters leave more than { MASS($middle, digits: "few", us: 0) }; one in ten leaves less than { MASS($low, digits: "few", us: 0) }, one in ten more than { MASS($high, digits: "few", us: 0) }.
chart-picture-marks = A dashed line marks { $day }.
chart-picture-marks-reserve = A level line marks the reserve, { MASS($mass, digits: "few", us: 0) }.
chart-picture-tenth-below = 1 in 10 below
chart-picture-half = Middle
chart-picture-tenth-above = 1 in 10 above
chart-picture-weighing = weighed: { MASS($mass, digits: "few", us: 0) }, give or take { MASS($error, digits: "few", us: 0) }

## Dead bees found.

chart-picture-found = { $found } found, { $stands }
chart-picture-expected = { $when }: { $found } found, { $low } to { $high } expected, { $stands }.
chart-picture-nine = 9 looks in 10
chart-picture-is-found = found
chart-picture-head-found = Found
chart-picture-head-expected = Expected
chart-picture-head-stands = Which is

## The coming days.

chart-picture-flying-weather = Flying weather
chart-picture-head-cold = Cold
chart-picture-head-wind = Wind, { HEIGHT(10) } up
chart-picture-coldest = Coldest
chart-picture-warmest = Warmest
chart-picture-head-flying = Flying
chart-picture-degrees = { TEMPERATURE($temperature, unit: "no") }°
chart-picture-temperature = { TEMPERATURE($temperature) }
chart-picture-flying = { $flying ->
    [yes] good flying weather
    [perhaps] some bees may fly
   *[not] no flying
}
chart-picture-flying-short = { $flying ->
    [yes] good
    [perhaps] some
   *[not] no
}
chart-picture-cold = { $cold ->
    [mild] no frost
    [frost] frost
   *[hard] hard cold
}
chart-picture-cold-short = { $cold ->
    [mild] mild
    [frost] frost
   *[hard] hard
}
chart-picture-wind = { $wind ->
    [calm] calm
    [breezy] windy
   *[strong] strong wind
}
chart-picture-wind-short = { $wind ->
    [calm] calm
    [breezy] wind
   *[strong] gale
}
chart-picture-blows = { $wind }, { SPEED($speed) }
chart-picture-outlook = { $day }: { $flying }, { $cold }, { $wind }.

## A hundred hives.

chart-picture-of-hundred = { $hives } of 100 { $fare }
chart-picture-fewest = fewer than 1
chart-picture-most = more than 99
chart-picture-head-hundred = Of 100 hives
chart-picture-head-fare = How they fare

## Figures on their scales.

chart-picture-scale = { $name }, { $stands }: { $says }.
chart-picture-not-known = not known
chart-picture-usual = usual
chart-picture-with-error = the figure, its error
chart-picture-head-figure = Figure
chart-picture-head-usual = Usual
chart-picture-head-where = Stands

## Jobs and dates.

chart-picture-window = earliest, usual, latest
