## The pages of a club.

club-page-week = This week
club-page-sharing = Sharing
club-page-losses = Losses
club-page-night = The night
club-page-language = Language
club-page-who = Signed in: { $member }
club-page-back = Nothing was changed. <a href="/">To the first page</a>.
club-page-missing = There is no such page here, or it is not yours to see.
club-page-unreadable = The club's records cannot be read just now. Try again in a minute; if it stays so, tell whoever runs the club's machine.

## The way in.

club-page-sign-in = Sign in
club-page-sign-in-lede = These are the pages of a club. They open with the key that the club gave you.
club-page-key = Key
club-page-key-lost = This browser then stays signed in for 30 days after its last visit, 180 days at most. Lost? Whoever runs the club's machine makes another with <code>snowhum club member NAME</code>; the old one then opens nothing.
club-page-key-wrong = That is no key of this club. Nothing was opened.

## Who needs help this week.

club-page-help-heading = Who needs help this week
club-page-read = Read here: the night of { DAY($on, style: "full") }, the last that is complete.
club-page-old = That was { NUMBER($days) } days ago. What came since is not in it.
club-page-no-night = No night is complete yet, so nothing is known here.
club-page-no-yards = That night asked about no yard that is yours or shared with you.
club-page-help-needed = <strong>{ NUMBER($yards) }</strong> of { NUMBER($of) } yards { $yards ->
    [one] needs
   *[other] need
} somebody within a week.
club-page-help-none = { $yards ->
    [one] The one yard here needs nobody within a week.
   *[other] None of { NUMBER($yards) } yards needs anybody within a week.
}
club-page-help-none-known = { $yards ->
    [one] The one yard that is known needs nobody within a week.
   *[other] None of the { NUMBER($yards) } yards that are known needs anybody within a week.
}
club-page-help-unknown = { $yards ->
    [one] Of one yard nothing is known for this week.
   *[other] Of { NUMBER($yards) } yards nothing is known for this week.
}
club-page-first = First: { NUMBER($yards) }
club-page-then = Then: { NUMBER($yards) }
club-page-unknown = Not known for this week: { NUMBER($yards) }
club-page-alone = To be left alone, or gone: { NUMBER($yards) }
club-page-invented = { $keeper }, an invented yard
club-page-other-day = Answered for { DAY($of, style: "full") }: that says nothing of this week.
club-page-failed = No answer: { $why }
club-page-later = Later, for the whole yard
club-page-well = Well by spring: { $is-same ->
    [yes] { NUMBER($now) } of 100.
   *[no] { NUMBER($now) } of 100 now, { NUMBER($done) } if all is done.
}

## What is shared.

club-page-sharing-heading = Sharing
club-page-sharing-lede = A yard is seen by its keeper alone until it is shared here. A mentor who reads it sees its name, its keeper's, and what each night says of its hives.
club-page-count-what = What the club counts are colonies and losses of winters that are over. It shows them in sums alone, of { NUMBER($yards) } yards of { NUMBER($members) } members or more.
club-page-no-own = No yard of yours was handed in yet.
club-page-readers = Who reads it
club-page-no-mentors = The club has no other mentor yet.
club-page-count = Count its winters
club-page-keep = Keep

## Losses.

club-page-losses-heading = Losses across the club
club-page-of-own = Counted are yards whose keepers chose it under <a href="/sharing">Sharing</a>.
club-page-none-counted = No winter is counted yet.
club-page-winter = Winter { $winter }
club-page-too-few = Fewer than { NUMBER($yards) } yards of { NUMBER($members) } members are counted: nothing is shown.
club-page-regions = By region
club-page-cells-what = A region is { NUMBER($latitude) }° of latitude by { NUMBER($longitude) }° of longitude. It stands by itself from { NUMBER($yards) } yards of { NUMBER($members) } members on; all others stand together.
club-page-region = Region
club-page-cell = { NUMBER($from-north) }–{ NUMBER($to-north) }° { $is-north ->
    [yes] N
   *[no] S
}, { NUMBER($from-east) }–{ NUMBER($to-east) }° { $is-east ->
    [yes] E
   *[no] W
}
club-page-elsewhere = elsewhere
club-page-yards = Yards
club-page-number = { NUMBER($count) }
club-page-lost = Lost
club-page-lost-of = { NUMBER($lost) } of { NUMBER($at-risk) }
club-page-rate = Rate, and what it may be
club-page-rate-of = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) })

## How the nights go.

club-page-night-heading = The night
club-page-night-of = Night of { DAY($on, style: "full") }
club-page-progress = { COUNT($done) } of { COUNT($asked) } yards
club-page-progress-failed = { COUNT($done) } of { COUNT($asked) } yards; { COUNT($failed) } failed
club-page-workers = { $workers ->
    [0] No worker is alive.
    [one] One worker is alive.
   *[other] { NUMBER($workers) } workers are alive.
}
club-page-waiting = { COUNT($waiting) } yards wait, { COUNT($taken) } are taken.
club-page-left = { COUNT($left) } left, { $minutes ->
    [one] a minute or so
   *[other] some { COUNT($minutes) } minutes
} at this speed.
club-page-stalled = { COUNT($left) } left, and no answer in the last five minutes.
club-page-failure = <strong>{ $yard }</strong>: { $why }
club-page-others-failed = { $yards ->
    [one] One more failed that is not listed: it is not yours to see, or the list is full.
   *[other] { COUNT($yards) } more failed that are not listed: they are not yours to see, or the list is full.
}
