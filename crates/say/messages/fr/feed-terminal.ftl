## Du sucre pour ce qui manque, dans le terminal.

feed-terminal-head = il manque { MASS($short, digits: 1) } de provisions : { MASS($sugar, digits: 1) } de sucre
feed-terminal-sugar = Sucre
feed-terminal-sugar-range = { MASS($least, digits: 1) } à { MASS($most, digits: 1) } : le sucre fait 1,0 à 1,2 fois son poids de provisions

feed-terminal-recipe = en poids : { MASS($sugar, digits: 1) } de sucre dans { VOLUME($water, digits: 1) } d’eau font { VOLUME($syrup, digits: 1) }
feed-terminal-litres = par kg de sucre { NUMBER($litres, digits: 2) } L d’eau
feed-terminal-quarts = par 10 lb de sucre { NUMBER($quarts, digits: 1) } pintes d’eau
feed-terminal-fills = { NUMBER($feeders, digits: 1) } nourrisseurs pleins
feed-terminal-daily = { VOLUME($syrup, digits: 2) } par jour

feed-terminal-finished = fini d’ici le { $by }. { $says }
feed-terminal-finished-in = fini d’ici le { $by }, dans { $days ->
    [one] { NUMBER($days) } jour
   *[other] { NUMBER($days) } jours
}. { $says }
feed-terminal-no-last-day = { $says } S’il en est encore temps n’est pas connu ici : `snowhum plan` dit le dernier jour du lieu ; le donner comme --syrup-by.

feed-terminal-by-cups = En tasses
feed-terminal-lighter = le sucre versé est plus léger que l’eau : { LIST($cups, between: " ; ") }
feed-terminal-cups = { $volumes } en tasses, c’est { NUMBER($ratio, digits: 2) }:1 en poids, { NUMBER($percent) } % de sucre
feed-terminal-frames = { NUMBER($frames, digits: 1) } cadres { $size } ({ $hive }), pleins et operculés des deux côtés, { MASS($each, digits: 1) } chacun
feed-terminal-slab = { $what } : { MASS($feed, digits: 1) } nourrissent autant, { LENGTH($thick, us: 1) } sur tout le corps
feed-terminal-own-slab = cette plaque fait { MASS($slab, digits: 1) }, autant que { MASS($stores, digits: 1) } de provisions
feed-terminal-never = Jamais

feed-terminal-short-wanted = --short : dire ce qui manque, ou nommer une colonie
feed-terminal-no-box = la ruche de { $colony } n’a pas de corps
feed-terminal-enough = il ne manque rien à { $colony } au { $on } ; pour calculer avec une quantité à soi donner --short
