## One hive: what is going on in there?

hive-page-not-yet = The estimate is on its way. Notes can be made meanwhile.
hive-page-walk = Hives in walking order
hive-page-note = Note
hive-page-weigh = Weigh
hive-page-change = Change
hive-page-winter = Its winter
hive-page-what-to-do = What to do, and its worth
hive-page-dead-found = Dead bees found
hive-page-alive-today = Alive today? Dead bees found
hive-page-expected = What the next look should show
hive-page-before = Before you lift or open it
# The chances are a sentence.
hive-page-well = Well by { $goal }: { $chances }
hive-page-examine = Examine it sign by sign

hive-page-food = Food
hive-page-day-by-day = Day by day
hive-page-noted = <span class="label">Noted</span> { LIST($what, between: "; ") }.
hive-page-noted-on = { DAY($on) } { $what }
hive-page-weigh-it = Known in words alone: weigh it, and the fan narrows.

hive-page-alive-hardly = { CAPITAL($chance) } hives like this are alive today.
hive-page-alive = Of 100 hives like this about { NUMBER($alive) } { $alive ->
    [one] is
   *[other] are
} alive today, { NUMBER($not) } { $not ->
    [one] is
   *[other] are
} not.
hive-page-queen-hardly = { CAPITAL($chance) } hives like this that live have a queen; no sign from outside proves it.
hive-page-queen = Of 100 hives like this about { NUMBER($queen) } that live have a queen, { NUMBER($without) } have none; no sign from outside proves it.
hive-page-ended = { $seen-dead ->
    [yes] What most likely ended it, of 100 such hives
   *[no] If it is dead, of 100 such hives
}: { LIST($causes) }.
hive-page-cause = { $cause } { NUMBER($hives) }
hive-page-ended-between = Most likely { DAY($middle, style: "part") }, between { DAY($early) } and { DAY($late) }.
hive-page-dead-against = { CAPITAL($verdict) }: { $usual }. { SENTENCE($lie) }

## What the next look should show.

hive-page-expected-on = On { DAY($on, style: "marked") } at { TEMPERATURE($air) }:
hive-page-dead-on-floor = Dead bees on its { -floor }
hive-page-new-dead = New dead bees
hive-page-rime = New rime at the hole
hive-page-hum = A hum, with an ear at the wall
hive-page-flight = A cleansing flight

## Heat, air and water.

hive-page-figures = Heat, air and water
hive-page-weather = { $is-in-room ->
    [yes] In its room today
   *[no] At today's weather
}: { TEMPERATURE($air) }, wind { SPEED($wind, digits: 1) } at the hives.
hive-page-heat = Heat of the colony
hive-page-watts = { NUMBER($watts, digits: 1) } W
hive-page-heat-loss = Heat loss
hive-page-loss = { LOSS($loss, digits: 2) }
hive-page-core-mantle = Core, mantle
hive-page-core-and-mantle = { TEMPERATURE($core, digits: 1) }, { TEMPERATURE($mantle, digits: 1) }
hive-page-warm-zone = Air round the cluster
hive-page-degrees = { TEMPERATURE($air, digits: 1) }
hive-page-food-eaten = Food eaten
hive-page-water = Water given off
hive-page-grams = { GRAMS($mass, us: 1) } a day
hive-page-caught = Caught by lid, walls, { -floor }
hive-page-caught-grams = { GRAMS($lid, us: 1) }, { GRAMS($walls, us: 1) }, { GRAMS($floor, us: 1) } a day
hive-page-dripping = Dripping on the cluster
hive-page-air-flow = Air in and out
hive-page-flow = { FLOW($flow, digits: 2, us: 1) }
hive-page-humidity = Humidity, carbon dioxide
hive-page-percent = { NUMBER($humidity) } %, { NUMBER($co2, digits: 1) } %

## What is worth doing.

hive-page-nothing-helps = Nothing that was tried in the model helps by more than chance.
hive-page-action = { $is-instead ->
    [yes] Or instead:{" "}
   *[no] {""}
}<strong>{ CAPITAL($what) }</strong>, { $when }.
hive-page-on = on { DAY($on, style: "marked") }
hive-page-from-to = from { DAY($from, style: "marked") } to { DAY($to, style: "marked") }
hive-page-take-care = <strong>Take care: </strong>{ $caution }.
hive-page-worth = Its worth, and who says so
hive-page-rule = Beside it, a rule of the trade: { $rule }.

## Before it is lifted or opened.

hive-page-lift = { CAPITAL($size) }, { $place }: { MASS($load) } from { LENGTH($hands) }, { $says }.
hive-page-only-box = the only box
hive-page-lowest = the lowest
hive-page-top = the top one
hive-page-from-below = number { NUMBER($number) } from below
hive-page-reckoned = Reckoned with the food hanging from the top down and the bees in the lowest box; straight, close, two hands.
hive-page-which-rule = <a href="/words#lifting">By which rule</a>.
hive-page-hazards = Take care: lifting, ice, stings

## Its notes.

hive-page-notes = Notes, and what each did
hive-page-no-notes = None yet.
hive-page-change-note = change
hive-page-all-notes = All { NUMBER($notes) } notes
hive-page-take-back = Take back the last thing done here
