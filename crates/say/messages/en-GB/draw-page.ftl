## Words of pictures.

draw-page-every-part = Every part
draw-page-to-scale = To scale from the yard file. Where cluster and food are is reckoned, not seen; temperatures as without brood.

draw-page-of-hundred = Of 100 hives like this, by { $goal }
draw-page-lives = are alive, fed and queenright
draw-page-hungry = live and are hungry
draw-page-queenless = live and have no queen
draw-page-starved = died of hunger
draw-page-lost = died otherwise

draw-page-days = The coming days
draw-page-weekday = { DAY($on, style: "short-weekday") }
draw-page-day = { DAY($on, style: "weekday") } { DAY($on) }

draw-page-food = Food within reach of { $hive }
draw-page-flow = first flow, most likely { DAY($on) }
draw-page-feed-by = feed by { DAY($on) }
draw-page-month = { DAY($on, style: "short-month") }

draw-page-dead-found = Dead bees found at { $hive }
draw-page-counted = { DAY($since, style: "short") } to { DAY($until, style: "short") }

draw-page-entrance = entrance
draw-page-upper-hole = upper hole
draw-page-mesh = { -mesh-floor }
draw-page-joints = joints
draw-page-seen-dead = seen dead by the keeper
draw-page-shut = noted { $state } on { DAY($on) }
draw-page-left = { MASS($left, digits: 1) } of { MASS($whole, digits: 1) } left{ $state ->
    [reached] , reached
    [not-reached] , not reached
   *[not-said] {""}
}
draw-page-body = { CAPITAL($body) }{ $pollen ->
    [yes] {" "}with pollen
   *[no] {""}
}
draw-page-material = { $material ->
   *[own] { $name }
}
