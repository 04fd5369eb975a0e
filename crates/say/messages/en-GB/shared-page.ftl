## What every page shares.

shared-page-day = { DAY($on) }
shared-page-date = { DAY($on, style: "marked") }
shared-page-weekday = { DAY($on, style: "weekday") }
shared-page-short-day = { DAY($on, style: "short") }
shared-page-masses = { MASS($middle, digits: 1, us: 0) } (8 in 10 between { MASS($low, digits: 1, us: 0) } and { MASS($high, digits: 1, us: 0) })
shared-page-says-who = says who?
shared-page-as-table = The same as a table

## What a keeper notes.

shared-page-noted-dead = dead bees: { $how }
shared-page-noted-hook = dead bees pulled out with a hook: { $how }
shared-page-noted-hole = at the upper hole: { $how }
shared-page-noted-upper = upper hole: { $how }
shared-page-noted-poke = poke at the hole: { $how }
shared-page-noted-wings = crumpled wings: { $how }
shared-page-noted-board = board, slab or feeder: { $how }
shared-page-noted-lid = under the lid, by hand: { $how }
shared-page-noted-snow = snow at the box: { $how }
shared-page-noted-did = done: { $how }
shared-page-noted-bees = living bees { $how }
shared-page-noted-colony = colony { $how }
shared-page-noted-queen = queen { $how }
shared-page-noted-other = { $what }: { $how }
shared-page-wind = wind { SPEED($wind, digits: 1) }
shared-page-air = { TEMPERATURE($air) }
shared-page-weather = { LIST($parts) }

## The ways from page to page.

shared-page-skip = To the page itself
shared-page-tagline = Snowhum, a winter reckoned
shared-page-pages = Pages
shared-page-menu = Menu
shared-page-yard = Yard
shared-page-round = Round
shared-page-jobs = Jobs
shared-page-flight = Flight day
shared-page-fit = Fit for winter?
shared-page-setup = Winter set-up
shared-page-feed = Feeding
shared-page-mites = Mites
shared-page-treatments = Treatment record
shared-page-spring = First look in spring
shared-page-dead = Dead colony
shared-page-losses = Losses and lessons
shared-page-normal = Is this normal?
shared-page-inside = Inside the cluster
shared-page-tell = The winter told
shared-page-hives = Hives
shared-page-paper = On paper
shared-page-words = Words
shared-page-sources = Sources
shared-page-settings = Settings
shared-page-programs = For programs
shared-page-sign-out = Sign out
shared-page-chances = Chances stand for hives like these with these signs. The label, local law, the { -bee-inspector } and the vet come before any word here.

## How old what is shown is.

shared-page-estimate = Estimate for <strong>{ DAY($of, style: "full") }</strong>, computed at <time datetime="{ $instant }">{ $clock }</time>, on { $source }.
shared-page-newer = Something newer is stored; the next estimate is being computed.
shared-page-first-estimate = The first estimate is being computed. This page looks again by itself.
shared-page-trouble = <strong>{ $is-newer ->
    [yes] No newer estimate:
   *[no] No estimate:
} </strong>{ $trouble }
shared-page-working = Working it out.
shared-page-renews = The page renews itself.
shared-page-counts-it = What stands here counts it.
shared-page-until-then = Until then: how it stood on { DAY($of, style: "full") }, worked out at { $clock }.
shared-page-of-clock = of { $clock }
shared-page-of-day = of { DAY($on) }
shared-page-working-anew = Working it out anew.
shared-page-before-change = What stands here was worked out at { $clock }, before the last change.

## What was just done.

shared-page-noted = <strong>{ $is-changed ->
    [yes] Changed
   *[no] Noted
}</strong> at { $hive }, { DAY($on) }: <span class="said">{ LIST($what, between: "; ") }</span>.
shared-page-withdrawn = <strong>Withdrawn.</strong> The note counts no more.
shared-page-taken-back = <strong>Taken back</strong>: the last thing done at { $hive }.
shared-page-another-day = <strong>{ DAY($on, style: "full") }</strong> is looked at now.

## A winter that is over, and an invented yard.

shared-page-over = These colonies were counted on { DAY($on, style: "full") }, for a winter that is over. <a href="/season">Begin the new autumn</a>.
shared-page-invented = An invented yard<span class="for-room">, to try things on</span>
shared-page-look-at = Look at it in winter 2025–26, on
shared-page-unread = Not read by a keeper of the tongue yet; cautions have their English beside them.

shared-page-show-new = The new answer is there. Show it (what is typed below is lost)
