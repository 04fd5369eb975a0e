## The page "Jobs and dates".

jobs-page-heading = Jobs and dates
jobs-page-calendar = Take them into your calendar
jobs-page-first-look = First look in spring
jobs-page-none-due = No date of the yard's year is due today.
jobs-page-due = Due now: { NUMBER($jobs) }
jobs-page-soon = Within a month
jobs-page-later = Later
jobs-page-past = Its day is past
jobs-page-picture = As a picture
jobs-page-serving = Days that serve

jobs-page-missed = If it was not done
jobs-page-at = At { LIST($hives, between: ", ") }.
jobs-page-why = Why
jobs-page-belief = “{ $said }” <em>Not so.</em> { $so }
jobs-page-who = Says who?
jobs-page-source = Says who? { $source }.
jobs-page-caution = The caution of <a href="#{ $id }">{ $job }</a> is this one's too.

jobs-page-autumn = Late summer and autumn
jobs-page-winter = Winter
jobs-page-spring = Spring
jobs-page-window = { DAY($first) } to { DAY($last) }, usually { DAY($usual) }
jobs-page-from = from { DAY($first) }; not every winter
jobs-page-asked-about = { DAY($on) }, the day asked about

jobs-page-serving-lede = Of each half-month bees can fly on so many days, the lid may be off a minute, combs may be lifted; in brackets 8 winters of 10.
jobs-page-days = Days
jobs-page-fly = bees fly
jobs-page-lid = lid off
jobs-page-combs = combs
jobs-page-half = { NUMBER($from) }–{ DAY($to) }
