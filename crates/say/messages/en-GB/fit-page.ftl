## The page "Fit for winter?": six scales for each colony, and a guess before them.

fit-page-heading = Fit for winter?
fit-page-lede = Each colony as it was found on { DAY($on) }, held against what is usual here: { $country }.
fit-page-learning = Learning? <a href="/fit?guess=1">Guess first, then see</a>.
fit-page-last-days = The yard's last days
fit-page-buy = To buy
fit-page-which = <a href="/feed">Which hive gets what, and how</a>.

fit-page-food = Food
fit-page-short = { PORTION($short) } of stores short.
fit-page-why = Why
fit-page-six = Six scales, and says who
fit-page-look = What to look at
fit-page-who = Says who?
fit-page-range = { $region }, { $hive }: { $says } ({ $source }; { $status }).
fit-page-other-school = Other school: { $says }.
fit-page-unite = { $is-verdict ->
    [yes] How the two are put together
   *[no] If you would rather { -unite } it
}
fit-page-carried = In the model, alone: { $alone }. Put to { $other }: { $together }.
fit-page-no-other = none
fit-page-alone = Of 100 hives like this about { NUMBER($so) } come to spring, { NUMBER($not) } do not
fit-page-alone-nearly = { CAPITAL($chance) } hives like this come to spring
fit-page-together = Of 100 hives like this about { NUMBER($so) } do as one, { NUMBER($not) } do not
fit-page-together-nearly = { CAPITAL($chance) } hives like this do as one
fit-page-not-united = Not { -united }

fit-page-picture = { $colony } on six scales
fit-page-usual = usual { $low } to { $high }: { $region }
fit-page-no-range = no range is known for this place
fit-page-stands = { $figure } · { $stands }
fit-page-number = { $is-whole ->
    [yes] { NUMBER($number) }
   *[no] { NUMBER($number, digits: 1) }
}
fit-page-mass = { MASS($mass, digits: 1, us: 0) }
fit-page-mass-bare = { MASS($mass, digits: 1, unit: "no", us: 0) }
fit-page-resistance = { RESISTANCE($lid) }
fit-page-bees = { $number } bees
fit-page-frames = { $number } full-size { $is-one ->
    [yes] frame
   *[no] frames
}
fit-page-winters = { $number } { $is-one ->
    [yes] winter
   *[no] winters
} behind her
fit-page-mites = { $number } { $is-one ->
    [yes] mite
   *[no] mites
} per 100 bees
fit-page-lid = { $number } m² K/W over the bees

## The guess.

fit-page-guesses = Your guesses beside the model's. Neither has looked in spring.
fit-page-facts = The facts of { DAY($on) }, { $country }. What would you do with each colony?
fit-page-show = Show the model's
fit-page-again = Guess again
fit-page-whole = The whole page
fit-page-seen = Seen
fit-page-not-known = not known
fit-page-between = { $middle } ({ $low } to { $high })
fit-page-treated = { $figure }; treated { LIST($days) }
fit-page-day = { DAY($on) }
fit-page-not-noted = nothing is noted either way
fit-page-nothing-wrong = nothing wrong
fit-page-guess = Your guess
fit-page-you = You
fit-page-model = The model
fit-page-same = The same.
fit-page-differ = They differ. Where the reasons do not convince you, look again at the bees: you know what the figures leave out.
