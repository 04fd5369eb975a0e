## Sugar for a shortage, in the terminal.

feed-terminal-head = { MASS($short, digits: 1) } of stores short: { MASS($sugar, digits: 1) } of sugar
feed-terminal-sugar = Sugar
feed-terminal-sugar-range = { MASS($least, digits: 1) } to { MASS($most, digits: 1) }: sugar makes 1.0 to 1.2 times its weight of stores

feed-terminal-recipe = by weight: { MASS($sugar, digits: 1) } of sugar in { VOLUME($water, digits: 1) } of water make { VOLUME($syrup, digits: 1) }
feed-terminal-litres = each kg of sugar { NUMBER($litres, digits: 2) } L of water
feed-terminal-quarts = each 10 lb of sugar { NUMBER($quarts, digits: 1) } quarts of water
feed-terminal-fills = { NUMBER($feeders, digits: 1) } feeders full
feed-terminal-daily = { VOLUME($syrup, digits: 2) } a day

feed-terminal-finished = finished by { $by }. { $says }
feed-terminal-finished-in = finished by { $by }, { $days ->
    [one] { NUMBER($days) } day
   *[other] { NUMBER($days) } days
} from now. { $says }
feed-terminal-no-last-day = { $says } Whether there is time for it is not known here: `snowhum plan` tells your site's last day; give it as --syrup-by.

feed-terminal-by-cups = By cups
feed-terminal-lighter = poured sugar is lighter than water: { LIST($cups, between: "; ") }
feed-terminal-cups = { $volumes } cups are { NUMBER($ratio, digits: 2) }:1 by weight, { NUMBER($percent) } % sugar
feed-terminal-frames = { NUMBER($frames, digits: 1) } { $size } frames ({ $hive }), full and capped on both sides, { MASS($each, digits: 1) } each
feed-terminal-slab = { $what }: { MASS($feed, digits: 1) } feed as much, { LENGTH($thick, us: 1) } over the whole box
feed-terminal-own-slab = your slab is { MASS($slab, digits: 1) }, as much as { MASS($stores, digits: 1) } of stores
feed-terminal-never = Never

feed-terminal-short-wanted = --short: say what is short, or name a colony
feed-terminal-no-box = the hive of { $colony } has no box
feed-terminal-enough = { $colony } is short of nothing as of { $on }; to reckon with an amount of your own give --short
