## Where a colony stands now.

now-gone-examined = dead and examined: { $found }
now-gone-sold = sold: watched no more
now-gone-disaster = taken by a disaster: watched no more

now-beside-mites = { NUMBER($rate, digits: 1) } mites per 100 bees on { DAY($on) }, over the line here, and no treatment is noted since: the chances hold little of the viruses they bring, so trust the count before the chance
now-beside-opening = { $opening ->
    [entrance] entrance
   *[upper-hole] upper hole
} noted { $state } on { DAY($on) }: { $drifted ->
    [yes] less air is reckoned with through the snow, until it is noted clear
   *[no] next to no air and no bee is reckoned to pass it, until it is noted cleared
}
now-beside-room = what was noted on { DAY($on) } is seen outdoors alone, and by the plan it stands in { $room }: note the day it is carried in
now-beside-mouse = a mouse was noted on { DAY($on) }: on a mild day see that none is inside, then { $guard }
now-beside-drones = drones were noted on { DAY($on) }: at an odd season they speak of a failing queen or none; look for worker brood on the first warm day
now-beside-no-pollen = no pollen was carried in on { DAY($on) } while others carried it: its queen is in doubt; open it first once it is warm

now-moved-dead = dead bees { $against }: { $usual }
now-moved-unexplained = fits nothing the model thought possible; taken with reserve. Is it right?
now-moved-alive = alive from { NUMBER($before) } to { NUMBER($after) } in 100
now-moved-food = food from { MASS($before, digits: 1) } to { MASS($after, digits: 1) }
now-moved-queen = with a queen from { NUMBER($before) } to { NUMBER($after) } in 100 of those alive
now-moved-several = { LIST($ways) }
now-moved-noted = noted
now-moved-little = says little more than was known

now-look-first-nothing-helps = Nothing that was tried in the model helps by more than chance.
now-look-first-queen = No need to weigh first: what is done about its queen hangs on its brood alone.
now-look-first-listen = Listen first; if you hear them, do it now.
now-look-first-dear = It is worth less than it costs in most such hives; the choice is yours.
now-look-first-no-need = No need to look or weigh first: it would not change what to do.
now-look-first-weigh = Weigh it first: { $open ->
    [yes] what to do is open
   *[no] it may change what to do
}.
now-look-first-life = Look for a sign of life first: { $open ->
    [yes] what to do is open
   *[no] it may change what to do
}.

now-open-first-well = flew well
now-open-first-thin = flew thin: few bees, or a queen in doubt
now-open-first-soiled = soiled its hive: long confined, or its food is bad
now-open-first-not-noted = nothing was noted while others flew
now-open-first-did-not-fly = did not fly while others did

now-round = { DAY($on) } about { NUMBER($hour) }:00, at { TEMPERATURE($air) }: { $hives }
now-round-nothing = no look from outside would tell much this week (in doubt are { $hardly ->
    [yes] less than one
   *[no] { NUMBER($doubt) }
} in 100 at most)
now-round-hive = { $name } ({ $look })
now-round-hives = { LIST($hives) }
now-round-hives-more = { LIST($hives) } and { NUMBER($more) } more
now-round-dead-bees = count the dead bees before it
now-round-dead-on-floor = count the dead bees on its { -floor } with a hook
now-round-poke = poke at the hole with a straw
now-round-hole = look for rime at the upper hole
now-round-hum = an ear at the wall
now-round-flight = see whether it flies

now-lid = At { TEMPERATURE($air) } and a wind of { SPEED($wind) } at the hives { $may ->
    [look] combs may be lifted for a short look, brood kept warm
    [minutes] the lid may be off for some minutes; leave combs where they are
    [minute] the lid may be off for a minute: food on, lid on
    [seconds] only to save a hungry colony: seconds, with everything ready in your hands
   *[shut] leave it shut: too cold or too windy
}.
now-lid-other-school = Some prairie keepers wait for { TEMPERATURE($zero) }, better { TEMPERATURE($mild) }; some give sugar at { TEMPERATURE($frost) } in a few seconds.

now-alert-nothing = Nothing calls for you any more.
now-alert-hive = { $name }: { $about }.
