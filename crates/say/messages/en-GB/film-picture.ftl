## The winter told, as a film. What its script writes is said once with marks such as #0 in the place of the day's figures.

film-picture-then = { $when }:
film-picture-air = { TEMPERATURE($air) }
film-picture-length = { LENGTH($length, us: "few") }
film-picture-mass = { MASS($mass, digits: 1) }
film-picture-bare-mass = { MASS($mass, digits: 1, unit: "no") }
film-picture-end-of-scale = { MASS($mass) }
film-picture-outdoors = { $low } to { $high }, snow { $snow }
film-picture-ahead = { $outdoors } (ahead: what may come)
film-picture-dead = dead
film-picture-alive = alive in { $hives } of 100 such hives
film-picture-food = food { $amounts }
film-picture-amounts = { $food } ({ $low } to { $high })
film-picture-unknown = unknown
film-picture-inside = { LIST($parts, between: "; ") }
film-picture-cluster = cluster { $across } across, core { $core }
film-picture-water = { GRAMS($water, us: 2) }
film-picture-wet = lid and walls catch { $water } of water a day{ $is-frosted ->
    [yes] , frost at the hole
   *[no] {""}
}

film-picture-cut-open = { $hive }, cut open
film-picture-bees = bees
film-picture-comb-food = food
film-picture-chart = Food of { $hive } over the winter: foretold in autumn, and as it stood
film-picture-chart-key = Food: grey band foretold (8 in 10), line as it stood, yellow what may come; a peak for each note
film-picture-note = { $when }: { $note }. { $moved }.
film-picture-foretold-and-came = Foretold, and what came

## Its table by months.

film-picture-by-months = { $hive } by months
film-picture-head-day = Day
film-picture-head-outdoors = Outdoors
film-picture-head-alive = Alive
film-picture-head-food = Food
film-picture-head-foretold = Foretold
film-picture-head-inside = Inside
film-picture-range = { $low } to { $high }

## What it is moved by, and what people are asked before it is shown.

film-picture-play = Play
film-picture-stop = Stop
film-picture-week = A week on
film-picture-slider = Day of the winter
film-picture-guess = Guess first
film-picture-ask = The winter runs to its middle. What will be left of the food on { $today }, against what autumn foretold?
film-picture-less = less
film-picture-as-foretold = as foretold
film-picture-more = more
film-picture-show = Show what came
film-picture-score = Guessed right: { $right } of { $asked }. What came stands below.
