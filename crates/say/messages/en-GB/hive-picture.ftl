## The hive cut open, and its small sign.

hive-picture-title = { $hive }{ $is-dead ->
    [yes] , dead
   *[no] {""}
}, hive cut open from the front
hive-picture-outside = Outside { TEMPERATURE($air) }
hive-picture-wind = wind { SPEED($wind) } at the hive
hive-picture-boxes = { $boxes ->
    [one] One box, drawn to scale.
   *[other] { NUMBER($boxes) } boxes, drawn to scale.
}
hive-picture-nobody = No bees live in it.
hive-picture-living = A living cluster of about { $bees } bees.
hive-picture-is-dead = The colony is dead; the dashed circle shows where the cluster was.
hive-picture-part = { $heading }: { $says }
hive-picture-weather-told = { LIST($parts) }.
hive-picture-parts = { LIST($parts, between: "; ") }.
hive-picture-alive-small = Alive, about { $bees } bees.
hive-picture-dead-small = Dead.
hive-picture-empty-small = No bees.

## Heads of its table.

hive-picture-head-part = Part
hive-picture-head-known = What is known
hive-picture-weather = Weather

## Parts that are pointed at.

hive-picture-snow-on-roof = Snow on the { -roof }
hive-picture-snow-round = Snow round it
hive-picture-roof = { CAPITAL(-roof) }
hive-picture-lid = Over the bees
hive-picture-rim = Rim over the frames
hive-picture-walls = Walls
hive-picture-wrap = Wrap
hive-picture-warm-zone = Warm zone
hive-picture-cold-zone = Cold zone
hive-picture-under-lid = Underside of the lid
hive-picture-inner-wall = Inner wall
hive-picture-floor-above = { CAPITAL(-floor) }, upper side
hive-picture-dead = Dead colony
hive-picture-cluster = Cluster
hive-picture-floor = { CAPITAL(-floor) }
hive-picture-dead-on-floor = Dead bees on the { -floor }
hive-picture-heading = { CAPITAL($words) }

## Keys to tints.

hive-picture-touched = food touched
hive-picture-in-reach = food in reach
hive-picture-out-of-reach = food out of reach
hive-picture-empty-comb = empty comb
hive-picture-bees = living bees
hive-picture-core = warm core
hive-picture-dead-bees = dead bees
hive-picture-snow = snow

## What is said of a part.

hive-picture-list = { LIST($parts) }
hive-picture-length = { LENGTH($length, us: "few") }
hive-picture-scale = { LENGTH($length) }
hive-picture-over-ground = { LENGTH($depth, us: "few") } over the ground
hive-picture-sheet = { $material } { LENGTH($thickness, us: "few") }
hive-picture-temperature = { TEMPERATURE($temperature) }
hive-picture-wet = { $is-frost ->
    [yes] frosted
   *[no] wet
}, { GRAMS($water, digits: "few", us: 2) } a day
hive-picture-size = about { $bees } bees, mantle { TEMPERATURE($mantle) }
hive-picture-mass = { MASS($mass, digits: "few", us: 0) }
hive-picture-all-open = { AREA($area, digits: "few") }, all open
hive-picture-open = { AREA($area, digits: "few") } open, { NUMBER($percent) } % of it
hive-picture-air-unknown = air not known
hive-picture-air-stands = air stands
hive-picture-air-in = air in { FLOW($flow, digits: 2) }
hive-picture-air-out = air out { FLOW($flow, digits: 2) }
hive-picture-snow-before = snow before it
hive-picture-solid = solid
hive-picture-mesh = mesh, open below
hive-picture-tray = mesh, tray in
hive-picture-stand = stand { LENGTH($stand, us: "few") }
hive-picture-about = about { $count }
