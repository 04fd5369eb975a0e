## Ce que plusieurs réponses partagent dans le terminal.

shared-terminal-food = Nourriture
shared-terminal-bees = Abeilles
shared-terminal-alive = En vie
shared-terminal-spring = Printemps
shared-terminal-hive = Ruche
shared-terminal-frames = Cadres
shared-terminal-syrup = Sirop
shared-terminal-mites = Varroas
shared-terminal-fit = Prête ?
shared-terminal-why = Pourquoi
shared-terminal-next = Ensuite
shared-terminal-note = Note
shared-terminal-cost = Coût
shared-terminal-helps = Aide
shared-terminal-or-instead = Ou bien

shared-terminal-day = { DAY($on) }
shared-terminal-on-day = le { DAY($on) }
shared-terminal-from-to = du { DAY($from) } au { DAY($to) }
shared-terminal-title = { $hive }, { $yard }, { DAY($on) } : { $verdict }
shared-terminal-of = { $name } : { $says }
shared-terminal-parts = { LIST($parts, between: " ; ") }
shared-terminal-list = { LIST($parts) }
shared-terminal-stop = { $says }.
shared-terminal-cause = { $cause } { NUMBER($hives) }
shared-terminal-money = { NUMBER($amount) } { $currency }
shared-terminal-mass = { MASS($mass, digits: 1) }
shared-terminal-masses = { MASS($likely, digits: 1) } ({ MASS($least, digits: 1) } à { MASS($most, digits: 1) })

shared-terminal-stands-on = Repose sur : { LIST($sources, between: " ; ") }.
shared-terminal-stands-on-weather = Cela repose sur { $weather }.
shared-terminal-more-all = Plus : snowhum { $command } --all. Notice, loi et vétérinaire passent d’abord.

## Ce qui est en cours, et de quel rucher on parle.

shared-terminal-reading-weather = lecture de la météo …
shared-terminal-reckoning-year = calcul de l’année …
shared-terminal-watching = estimation des colonies …
shared-terminal-computing-winter = calcul de l’hiver …
shared-terminal-computing-expected = calcul de ce qui était à attendre …
shared-terminal-computing-set-ups = calcul des aménagements …
shared-terminal-telling-winter = récit de l’hiver …
shared-terminal-of-records = Voici { $yard }, de ses propres archives.
shared-terminal-demo = Voici le rucher d’essai inventé. Pour le sien : snowhum new my-yard.toml
shared-terminal-granted = { NUMBER($count) } choses ont été supposées ; pour les voir :
shared-terminal-early-visit = Une visite du { $on } précède le comptage du { $counted } : elle est gardée comme passé, et les réponses de cet hiver n’en tiennent pas compte.
shared-terminal-called = { $name } ({ $says })
shared-terminal-needs-now = à voir maintenant : { LIST($colonies) }
shared-terminal-hungry = ont faim : { LIST($hives) }

## Ce qui ne va pas dans la demande.

shared-terminal-no-colony = il n’y a pas de colonie « { $name } » dans { $yard } ; { $which ->
    [nearest] les plus proches sont
   *[all] il y a
} { LIST($names) }
shared-terminal-is-file = « { $name } » est un fichier, non une colonie : un fichier de rucher se donne par --apiary { $name }
shared-terminal-no-hive = { $colony } n’a pas de ruche
shared-terminal-unreadable = { $file } : ne peut pas être lu : { $why }
shared-terminal-is-folder = { $file } : est un dossier ; donner le fichier qui s’y trouve
shared-terminal-too-large = { $file } : plus de 16 Mo ; est-ce le bon fichier ?
shared-terminal-not-text = { $file } : n’est pas un texte UTF-8
shared-terminal-there-already = { $file } existe déjà et a été laissé tel quel ; choisir un autre nom
shared-terminal-unwritable = { $file } ne peut pas être écrit : { $why }
shared-terminal-no-records = { $file } : aucun rucher n’est encore gardé ici ; apporter le sien avec : snowhum import my-yard.toml
shared-terminal-no-home = il n’y a pas de dossier personnel pour les archives ; nommer un fichier avec --store
shared-terminal-wrong-option = { $option } « { $written } » : { $right }

shared-terminal-no-answer = la réponse ne peut pas être écrite : { $why }
shared-terminal-last-winter = { $file } : last_winter = « { $name } » : { $why }
shared-terminal-other-yard = n’est pas ce rucher une année d’avant ; nommer le fichier de l’an passé du même rucher, ou ôter la ligne
shared-terminal-visit = { $file } : une visite : { $wrong }
shared-terminal-zone = fuseau « { $zone } » : { $why }
shared-terminal-room = { $file } : indoors « { $room } ».record : { $why }
shared-terminal-room-columns = record_columns : { $wrong } ; par exemple « { $right } »
shared-terminal-room-empty = { $file } : rien n’y a été mesuré entre { $from } et { $until } ; corriger les années
shared-terminal-no-word = « { $term } » n’est pas parmi les mots ; les voir tous : snowhum words
shared-terminal-term = { $british } (nord-américain : { $american })
