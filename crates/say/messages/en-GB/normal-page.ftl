## The page "Is this normal?".

normal-page-heading = Is this normal?
normal-page-lede = Dead bees before a hive in winter are usual. How many are?
normal-page-others = Other questions of the winter
normal-page-found = { $exact ->
    [yes] { NUMBER($found) } found
   *[no] Up to { NUMBER($found) } found
}; { $usual }.
normal-page-next = Next
normal-page-who = Says who?
normal-page-deaths = { NUMBER($least) } to { NUMBER($most) } bees die a day in a sound colony of this size and season; most fall inside.
normal-page-days = { NUMBER($days) } days
normal-page-picture = Found, against the expected

normal-page-dead = Dead bees
normal-page-up-to = up to { NUMBER($bees) }
normal-page-since = Since the last look, or since snow covered the old ones
normal-page-a-day = a day
normal-page-a-week = a week
normal-page-two-weeks = two weeks
normal-page-a-month = a month
normal-page-lie-on = They lie on
normal-page-snow = snow
normal-page-bare = bare ground
normal-page-exactly = Counted exactly, or another month?
normal-page-counted = Dead bees counted
normal-page-since-days = Days
normal-page-bees = Bees in the colony, if known
normal-page-month = Month (in the south, the one six months away)
normal-page-ask = Is it?

normal-page-wrong = { $text }: write { $right }.
normal-page-right-found = a whole number of dead bees, such as 30
normal-page-right-days = days since the last look, such as 14
normal-page-right-bees = a number of bees, such as 12000, or leave it open
