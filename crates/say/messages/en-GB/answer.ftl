## What several answers say.

answer-far = The place of { $files } lies { DISTANCE($distance) } from the yard{ $way ->
    [higher] {" "}and { HEIGHT($height) } higher
    [lower] {" "}and { HEIGHT($height) } lower
   *[level] {""}
}: { $taken }. Give a file of a place within { DISTANCE($near) } of the yard and { HEIGHT($as-high) } of its height, or none, for the built-in climate of the yard; if the yard does stand there, put [site] right.
answer-far-reckoned = all is reckoned for that place, its height, clock and sun, not for the yard
answer-far-taken = its weather is taken as it is
answer-far-warmer = its weather is taken as it is, by height alone about { WARMER($by, digits: 1) } { $is-warmer ->
    [yes] warmer
   *[no] colder
} than the yard (standard atmosphere)

answer-lasts = { $barely ->
    [yes] barely lasts
   *[no] lasts
} to { $goal } in at least 9 of 10 winters
answer-most-last = most likely { $barely ->
    [yes] barely lasts
   *[no] lasts
} to { $goal }; 1 in 10 is out before { DAY($early) }
answer-until = most likely until { DAY($middle, style: "part") }; 1 in 10 is out before { DAY($early) }

answer-by-custom = custom asks for it; its worth is not weighed in the model
answer-too-close = too close to call: chance could turn it either way
answer-helps = helps about { NUMBER($hives) } hives in 100 (± { NUMBER($plus-minus) }){ $worth ->
    [even] , and is worth hardly more or less than its cost of { NUMBER($cost) } { $currency }
    [more] , worth { NUMBER($gain) } { $currency } after its cost of { NUMBER($cost) } { $currency }
   *[less] , but in most such hives is worth less than its cost of { NUMBER($cost) } { $currency }
}
