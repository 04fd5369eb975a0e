## Un fichier de rucher illisible : sa forme, son en-tête, son lieu, ses visites.

yard-fault-no-text = ceci n’est pas du texte simple en UTF-8
yard-fault-no-text-right = enregistrer le rucher comme fichier texte en UTF-8 ; un fichier de tableur ou de traitement de texte ne convient pas
yard-fault-missing = manque
yard-fault-no-toml = ne peut se lire comme TOML : { $why }
yard-fault-no-toml-right = écrire key = value, les textes entre "guillemets", et fermer chaque guillemet et chaque crochet
yard-fault-more = a { NUMBER($more) } autres fautes qui ne sont pas écrites
yard-fault-more-right = corriger d’abord celles du dessus
yard-fault-no-yard = ne décrit pas de rucher
yard-fault-empty = est vide
yard-fault-template-right = partir du modèle que `snowhum new` écrit
yard-fault-long = fait { NUMBER($mib) } MiB
yard-fault-long-right = un rucher de { NUMBER($hives) } ruches tient en 4 MiB ; le partager en ruchers
yard-fault-lines = a plus de { NUMBER($lines) } lignes
yard-fault-many-right = au plus { NUMBER($hives) } ruches dans un fichier de rucher ; le partager en ruchers
yard-fault-long-line = cette ligne est beaucoup trop longue
yard-fault-long-line-right = la couper en lignes de moins de 2000 lettres
yard-fault-stops = cette ligne a beaucoup trop de points
yard-fault-stops-right = écrire une clé et une valeur par ligne

yard-fault-text-long = est beaucoup trop long
yard-fault-no-name = « { $written } » n’est pas un nom
yard-fault-name-right = écrire un nom de 1 à { NUMBER($letters) } lettres sur une ligne
yard-fault-number = { NUMBER($number, digits: "all") } ne peut pas être
yard-fault-number-right = écrire un nombre { $limits }
yard-fault-no-whole = { NUMBER($number, digits: "all") } n’est pas un nombre entier
yard-fault-whole-right = écrire un nombre entier { $limits }
yard-fault-limits-right = l’écrire { $limits }
yard-fault-quoted-right = l’écrire { $limits } entre guillemets
yard-fault-unit-right = l’écrire avec son unité, { $limits }
yard-fault-then-limits = { $remedy }, { $limits }
yard-fault-not-a = est { $kind ->
    [text] le texte "{ $text }"
    [number] un nombre nu
    [date] une date
    [list] une liste
    [table] une table
   *[truth] { $text }
}, et non { $wanted ->
    [text] un texte entre guillemets
    [number] un nombre
    [truth] true ou false
    [quantity] un nombre avec son unité
    [date] une date
    [list] une liste
   *[table] une table
}
yard-fault-text-right = l’écrire entre "guillemets"
yard-fault-truth-right = écrire true ou false, sans guillemets
yard-fault-date-right = écrire l’année, le mois et le jour, par exemple 2025-10-05
yard-fault-list-right = écrire une liste entre crochets, par exemple ["deep", "deep"]
yard-fault-table-right = l’écrire comme { $example }
yard-fault-write = écrire { $example }

yard-fault-between = entre { $least } et { $most }, par exemple "{ $such }"
yard-fault-from = de { $least } à { $most }
yard-fault-from-such = de { $least } à { $most }, par exemple { $such }
yard-fault-from-in = de { $least } à { $most }, en { $unit }

yard-fault-no-key = n’est pas une clé connue ici
yard-fault-key-out = l’ôter ; connues ici sont { LIST($known) }
yard-fault-key-out-near = l’ôter ; { $instead }
yard-fault-tables = doit s’écrire [[{ $key }]]
yard-fault-tables-right = écrire [[{ $key }]] avec deux crochets
yard-fault-table = doit être une table [[{ $key }]]
yard-fault-table-below-right = écrire [[{ $key }]] et ses clés sur les lignes suivantes
yard-fault-no-id = « { $written } » n’est pas un identifiant
yard-fault-no-id-right = l’ôter, et un autre se fait du nom ; ou en écrire un comme exporté, long de 36 lettres

yard-fault-needs-head = écrire [apiary] avec name = "…" et as_of = 2025-10-05
yard-fault-needs-name = donner un nom au rucher, par exemple name = "Rowan Bank"
yard-fault-needs-as-of = écrire le jour où les colonies ont été regardées, par exemple as_of = 2025-10-05
yard-fault-needs-colony = décrire au moins une colonie dans une table [[colony]]
yard-fault-many = le fichier a { NUMBER($many) } { $what ->
    [hives] ruches
   *[colonies] colonies
}
yard-fault-same-name = est aussi le nom { $what ->
    [hive] de la ruche
    [room] du local
   *[colony] de la colonie
} à la ligne { NUMBER($line) }
yard-fault-same-name-right = donner à chaque { $what ->
    [hive] ruche
    [room] local
   *[colony] colonie
} son propre nom
yard-fault-same-id = est aussi l’identifiant d’autre chose dans ce fichier
yard-fault-same-id-right = l’ôter, et un autre se fait du nom
yard-fault-needs-site = écrire [site] avec latitude, longitude, elevation et zone
yard-fault-needs-latitude = degrés nord, par exemple latitude = 61.7
yard-fault-needs-longitude = degrés est, par exemple longitude = 27.3
yard-fault-needs-elevation = altitude, par exemple elevation = "105 m"
yard-fault-needs-zone = le fuseau horaire par sa ville, par exemple zone = "Europe/Helsinki"
yard-fault-degrees = de degrés, par exemple 61.7
yard-fault-no-angle = « { $written } » n’est pas un angle
yard-fault-off-globe = { NUMBER($degrees, digits: "all") } est hors du globe
yard-fault-angle-right = écrire des degrés entre -{ $most } et { $most }, par exemple 61.7 ou "61.7 { $letter }"
yard-fault-no-zone = « { $written } » n’est pas un fuseau horaire connu
yard-fault-zone-right = écrire une région et une ville, par exemple "Europe/Helsinki" ou "America/Winnipeg"
yard-fault-no-day-of-year = « { $written } » n’est pas un jour de l’année
yard-fault-day-of-year-right = écrire le mois et le jour, par exemple first_flow = "05-25" ou "25 May"
yard-fault-price = de 0 à 1000000, en sa propre monnaie

yard-fault-visits = est la visite { NUMBER($visit) }
yard-fault-visits-right = un seul hiver par fichier de rucher
yard-fault-needs-seen = écrire [visit.seen] et dessous une ligne pour chaque colonie
yard-fault-needs-at = écrire le jour et l’heure, par exemple at = 2025-11-24T10:00:00
yard-fault-same-visit = dit la même chose qu’une autre visite de la même minute
yard-fault-same-visit-right = ôter l’une des deux, ou écrire l’heure à laquelle on l’a revu
yard-fault-cannot-be = ne peut pas être
yard-fault-air-right = écrire la température de l’air, par exemple "-5 C"
yard-fault-wind-right = écrire le vent, par exemple "3 m/s"
