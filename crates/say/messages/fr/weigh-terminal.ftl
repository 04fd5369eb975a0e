## Une ruche pesée, dans le terminal.

weigh-terminal-food-by = Nourriture, { $way } : { MASS($food, digits: 1) }
weigh-terminal-whole-by = Ruche entière, { $way } : { MASS($whole, digits: 1) }
weigh-terminal-side-first = { MASS($now, digits: 1) } à un côté : le noter, et lever de nouveau le même côté
weigh-terminal-side-same = Un côté : pas de changement au-delà de la lecture ({ MASS($change, digits: 1) }, à { MASS($plus-minus, digits: 1) } près)
weigh-terminal-side-changed = Un côté est { $lighter ->
    [yes] plus léger
   *[no] plus lourd
} de { MASS($change, digits: 1) }, à { MASS($plus-minus, digits: 1) } près

weigh-terminal-whole = Entière
weigh-terminal-readings = Lectures
weigh-terminal-read = { MASS($sum, digits: 1) } lus, fois { NUMBER($factor, digits: 3) } pour des appuis en retrait de { LENGTH($inset, us: 1) }, un levage de { LENGTH($lift, us: 1) } et le milieu de la charge à { LENGTH($centre, us: 1) } de haut ; il est à { LENGTH($off, us: 1) } { $left ->
    [yes] à gauche
   *[no] à droite
} du milieu
weigh-terminal-empty = Ruche vide
weigh-terminal-empty-of = { $range } : { LIST($parts) }
weigh-terminal-part = { $what } { MASS($mass, digits: 1) }
weigh-terminal-other = Autre
weigh-terminal-stores = { $range } ; dans 8 cas sur 10, c’est dans cette fourchette
weigh-terminal-stores-hive = { $range } ({ $hive }) ; dans 8 cas sur 10, c’est dans cette fourchette
weigh-terminal-back = Le dos
weigh-terminal-heavy = { $what }, { MASS($load, digits: 1) } : { $advice } (conseillé : { MASS($advised, digits: 1) })

weigh-terminal-none-reckoned = cette pesée n’a permis de calculer aucune provision, et rien n’est noté
weigh-terminal-one-alone = { $read } seul : pour la ruche entière sur une balance écrire --scale "{ $read }", pour un côté --one-side "{ $read }"
weigh-terminal-width-wanted = --width : donner la distance entre les points de levage
weigh-terminal-frames-right = écrire un nombre, par exemple 7.5, ou deep=4
