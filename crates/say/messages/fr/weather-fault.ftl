## Ce qui ne va pas dans un fichier de temps ou un lieu, et ce qui serait juste.

weather-fault-whole = { $file } : { $says }
weather-fault-line = { $file } : ligne { NUMBER($line) }, { $says }
weather-fault-field = { $file } : ligne { NUMBER($line) }, { $field } : { $says }
weather-fault-row = ligne
weather-fault-numbered = champ { NUMBER($number) }
weather-fault-date = date
weather-fault-days = année, mois, jour
weather-fault-hour = heure
weather-fault-hours = année, mois, jour, heure

weather-fault-short = contient { NUMBER($hours) } { $hours ->
    [one] heure
   *[other] heures
} ; donner au moins un jour
weather-fault-gap = la température manque pour { NUMBER($hours) } heures à partir de { $from } ; compléter ces heures par une station voisine, ou couper le fichier avant ou après elles
weather-fault-no-sun = { $why } ; vérifier le lieu et les années
weather-fault-no-rows = ne contient pas de temps ; donner un fichier avec au moins une ligne de données
weather-fault-long = ses lignes couvrent { NUMBER($years) } ans ; donner au plus soixante ans et vérifier les dates de la première et de la dernière ligne
weather-fault-first-date = sa première date est inutilisable ({ $why }) ; vérifier les années
weather-fault-number = « { $text } » n’est pas un nombre ; écrire un nombre, ou laisser le champ vide là où il manque
weather-fault-one-station = donner le fichier d’une seule station

weather-fault-epw-columns = a { NUMBER($columns) } colonnes ; une ligne EPW a 35 colonnes, dont au moins 22 sont nécessaires
weather-fault-epw-date = « { $text } » n’est pas une date ; écrire année, mois 1-12, jour 1-31
weather-fault-epw-hour = « { $text } » n’est pas une heure ; écrire 1 à 24 ; l’heure 1 finit à 01:00
weather-fault-epw-location = il n’y a pas de ligne LOCATION ; un fichier EPW commence par LOCATION,city,state,…
weather-fault-epw-number = LOCATION a comme { $what ->
    [latitude] latitude
    [longitude] longitude
    [zone] fuseau horaire
   *[elevation] altitude
} « { $text } » ; le champ { NUMBER($field) } devrait être un nombre de { NUMBER($lowest) } à { NUMBER($highest) }
weather-fault-epw-zone = fuseau horaire : { $why } ; écrire les heures depuis UTC, comme 2.0

weather-fault-ghcn-long = couvre plus de soixante ans ; le couper aux années qui comptent
weather-fault-ghcn-station = la station « { $other } » suit « { $first } » ; { $right }
weather-fault-ghcn-columns = a { NUMBER($columns) } { $columns ->
    [one] colonne
   *[other] colonnes
} ; une ligne est ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,TIME
weather-fault-ghcn-date = « { $text } » n’est pas une date ; écrire YYYYMMDD
weather-fault-ghcn-number = « { $text } » n’est pas un nombre ; écrire des dixièmes de degré ou de millimètre

weather-fault-isd-number = « { $text } » n’est pas un nombre entier ; une ligne ISD-lite contient 12 nombres entiers
weather-fault-isd-fields = a { NUMBER($fields) } { $fields ->
    [one] champ
   *[other] champs
} ; une ligne ISD-lite en contient 12, séparés par des espaces
weather-fault-isd-hour = « { $text } » n’est pas une heure ; écrire année, mois 1-12, jour 1-31, heure 0-23 en UTC

weather-fault-station-empty = est vide ; donner un fichier CSV avec une ligne de titres
weather-fault-station-column = il n’y a pas de colonne « { $asked } » ; les titres sont « { LIST($headings, between: " », « ") } »
weather-fault-station-place = { NUMBER($latitude) }, { NUMBER($longitude) } suit { NUMBER($first-latitude) }, { NUMBER($first-longitude) } ; { $right }
weather-fault-station-coordinate = « { $text } » n’est pas une { $what ->
    [latitude] latitude
    [longitude] longitude
   *[elevation] altitude
} ; écrire un nombre de { NUMBER($lowest) } à { NUMBER($highest) }{ $what ->
    [elevation] {" "}m
   *[other] {""}
}
weather-fault-station-number = « { $text } » n’est pas un nombre ; { $comma ->
    [yes] écrire un nombre avec une virgule décimale
   *[no] écrire un nombre avec un point décimal, ou dire que le fichier a des virgules décimales
}
weather-fault-station-no-time = « { $text } » n’est pas une heure ; { $right }
weather-fault-station-no-date = « { $text } » n’est pas une date ; { $right }
weather-fault-station-right = { $form ->
    [years] écrire une année de 1 à 9998
    [order] l’ordre du jour et du mois est ouvert ; le nommer par time=titre:mdy ou :dmy
    [time] écrire une heure du jour comme 13:45 ou 1:45 PM
   *[date] écrire une date comme 2025-01-31, 31.1.2025, ou nommer l’ordre par time=titre:mdy ou :dmy
}
weather-fault-station-time-lacks = n’est pas là
weather-fault-station-day = « { NUMBER($day) } » n’est pas un jour du mois { NUMBER($month) } de { NUMBER($year) } ; écrire un jour que le mois a
weather-fault-station-part = « { $text } » n’est pas { $what ->
    [year] une année
    [month] un mois
    [day] un jour
    [hour] une heure
   *[minute] une minute
} ; écrire un nombre entier de { NUMBER($lowest) } à { NUMBER($highest) }
weather-fault-station-unit = la colonne « { $column } », lue en { $unit }, a une moyenne de { TEMPERATURE($mean, digits: 0) } là où { TEMPERATURE($usual, digits: 0) } sont courants ces jours-là ; écrire temperature={ $column }:{ $other } si la colonne est en { $other }

weather-fault-columns-form = « { $text } » n’est pas une correspondance ; écrire grandeur=titre:unité, comme temperature=Temp Out:F
weather-fault-columns-role = « { $text } » n’est pas une grandeur ; écrire l’une de celles-ci : { $roles }
weather-fault-columns-unit = « { $unit } » n’est pas une unité de { $role } ; écrire l’une de celles-ci : { $units }
weather-fault-columns-no-unit = { $role }={ $heading } n’a pas d’unité ; écrire l’une de celles-ci : { $units }, comme { $role }={ $heading }:{ $example }
weather-fault-columns-twice = { $role } est donné deux fois ; donner une colonne à chaque grandeur
weather-fault-columns-lacks = rien ne correspond à { $role } ; ajouter { $role }=titre, tel que le titre est dans le fichier
weather-fault-columns-lacks-time = rien ne correspond à time ; ajouter time=titre, tel que le titre est dans le fichier, ou year=, month=, day= et hour= là où ils sont séparés
weather-fault-columns-same-twice = { $one } et { $other } disent la même chose ; n’en donner qu’un

weather-fault-latitude = le climat intégré couvre de 30 à 75 N et de 30 à 56 S, pas la latitude { NUMBER($latitude, digits: 2) } ; donner un fichier de temps du lieu (EPW, ISD-lite, GHCN-Daily ou le CSV d’une station)
weather-fault-no-place = latitude { NUMBER($latitude) }, longitude { NUMBER($longitude) } : ce n’est pas un lieu sur terre ; écrire des degrés, nord et est positifs
weather-fault-open-sea = latitude { NUMBER($latitude, digits: 2) }, longitude { NUMBER($longitude, digits: 2) } : c’est en pleine mer ; vérifier les signes (nord et est sont positifs) ou donner un fichier de temps
weather-fault-damaged = le climat intégré est abîmé ; reconstruire le programme ou donner un fichier de temps
weather-fault-drawn-from = un temps à partir du { $from } ne peut être tiré ; donner une date de 1700 à 2900
weather-fault-drawn-hours = { NUMBER($hours) } heures de temps ne peuvent être tirées ; en demander de 1 à 87840
weather-fault-too-short = le fichier de temps contient { NUMBER($held) } heures et aucune suite de { NUMBER($asked) } heures à partir de { $from } ; donner un fichier d’une année entière, ou un qui couvre ces dates
