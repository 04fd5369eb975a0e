## Zucker für einen Mangel, im Terminal.

feed-terminal-head = { MASS($short, digits: 1) } Vorräte fehlen: { MASS($sugar, digits: 1) } Zucker
feed-terminal-sugar = Zucker
feed-terminal-sugar-range = { MASS($least, digits: 1) } bis { MASS($most, digits: 1) }: Zucker gibt das 1,0- bis 1,2-fache an Vorräten

feed-terminal-recipe = nach Gewicht: { MASS($sugar, digits: 1) } Zucker in { VOLUME($water, digits: 1) } Wasser geben { VOLUME($syrup, digits: 1) }
feed-terminal-litres = je kg Zucker { NUMBER($litres, digits: 2) } L Wasser
feed-terminal-quarts = je 10 lb Zucker { NUMBER($quarts, digits: 1) } Quarts Wasser
feed-terminal-fills = { NUMBER($feeders, digits: 1) } Füllungen
feed-terminal-daily = { VOLUME($syrup, digits: 2) } am Tag

feed-terminal-finished = fertig bis { $by }. { $says }
feed-terminal-finished-in = fertig bis { $by }, { $days ->
    [one] { NUMBER($days) } Tag
   *[other] { NUMBER($days) } Tage
} von jetzt an. { $says }
feed-terminal-no-last-day = { $says } Ob die Zeit reicht, ist hier nicht bekannt: `snowhum plan` nennt den letzten Tag des Standorts; ihn als --syrup-by angeben.

feed-terminal-by-cups = Mit Tassen
feed-terminal-lighter = geschütteter Zucker ist leichter als Wasser: { LIST($cups, between: "; ") }
feed-terminal-cups = { $volumes } Tassen sind { NUMBER($ratio, digits: 2) }:1 nach Gewicht, { NUMBER($percent) } % Zucker
feed-terminal-frames = { NUMBER($frames, digits: 1) } Waben { $size } ({ $hive }), voll und beidseitig verdeckelt, je { MASS($each, digits: 1) }
feed-terminal-slab = { $what }: { MASS($feed, digits: 1) } nähren ebenso viel, { LENGTH($thick, us: 1) } über die ganze Zarge
feed-terminal-own-slab = der eigene Fladen hat { MASS($slab, digits: 1) }, so viel wie { MASS($stores, digits: 1) } Vorräte
feed-terminal-never = Nie

feed-terminal-short-wanted = --short: sagen, was fehlt, oder ein Volk nennen
feed-terminal-no-box = die Beute von { $colony } hat keine Zarge
feed-terminal-enough = { $colony } fehlt am { $on } nichts; um mit einer eigenen Menge zu rechnen, --short angeben
