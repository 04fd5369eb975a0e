## Une ruche : que se passe-t-il là-dedans ?

hive-page-not-yet = L’estimation est en route. On peut noter en attendant.
hive-page-walk = Les ruches dans l’ordre de la tournée
hive-page-note = Noter
hive-page-weigh = Peser
hive-page-change = Changer
hive-page-winter = Son hiver
hive-page-what-to-do = Que faire, et ce que cela vaut
hive-page-dead-found = Abeilles mortes trouvées
hive-page-alive-today = En vie aujourd’hui ? Abeilles mortes trouvées
hive-page-expected = Ce que le prochain coup d’œil devrait montrer
hive-page-before = Avant de la soulever ou de l’ouvrir
hive-page-well = Bien au { $goal } : { $chances }
hive-page-examine = L’examiner signe par signe

hive-page-food = Nourriture
hive-page-day-by-day = Jour par jour
hive-page-noted = <span class="label">Noté</span> { LIST($what, between: " ; ") }.
hive-page-noted-on = { DAY($on) } { $what }
hive-page-weigh-it = Connue en mots seulement : la peser, et l’éventail se resserre.

hive-page-alive-hardly = { CAPITAL($chance) } ruches comme celle-ci sont en vie aujourd’hui.
hive-page-alive = Sur 100 ruches comme celle-ci, environ { NUMBER($alive) } { $alive ->
    [one] est en vie
   *[other] sont en vie
} aujourd’hui, { NUMBER($not) } non.
hive-page-queen-hardly = { CAPITAL($chance) } ruches comme celle-ci encore en vie ont une reine ; aucun signe du dehors ne le prouve.
hive-page-queen = Sur 100 ruches comme celle-ci encore en vie, environ { NUMBER($queen) } ont une reine, { NUMBER($without) } n’en ont pas ; aucun signe du dehors ne le prouve.
hive-page-ended = { $seen-dead ->
    [yes] Ce qui l’a le plus probablement emportée, sur 100 ruches pareilles
   *[no] Si elle est morte, sur 100 ruches pareilles
} : { LIST($causes) }.
hive-page-cause = { $cause } { NUMBER($hives) }
hive-page-ended-between = Le plus probablement { DAY($middle, style: "part") }, entre le { DAY($early) } et le { DAY($late) }.
hive-page-dead-against = { CAPITAL($verdict) } : { $usual }. { SENTENCE($lie) }

hive-page-expected-on = Le { DAY($on, style: "marked") } par { TEMPERATURE($air) } :
hive-page-dead-on-floor = Abeilles mortes sur son plancher
hive-page-new-dead = Nouvelles abeilles mortes
hive-page-rime = Nouveau givre au trou
hive-page-hum = Un bourdonnement, l’oreille contre la paroi
hive-page-flight = Un vol de propreté

hive-page-figures = Chaleur, air et eau
hive-page-weather = { $is-in-room ->
    [yes] Dans son local aujourd’hui
   *[no] Par le temps d’aujourd’hui
} : { TEMPERATURE($air) }, vent de { SPEED($wind, digits: 1) } aux ruches.
hive-page-heat = Chaleur de la colonie
hive-page-watts = { NUMBER($watts, digits: 1) } W
hive-page-heat-loss = Perte de chaleur
hive-page-loss = { LOSS($loss, digits: 2) }
hive-page-core-mantle = Cœur, manteau
hive-page-core-and-mantle = { TEMPERATURE($core, digits: 1) }, { TEMPERATURE($mantle, digits: 1) }
hive-page-warm-zone = Air autour de la grappe
hive-page-degrees = { TEMPERATURE($air, digits: 1) }
hive-page-food-eaten = Nourriture mangée
hive-page-water = Eau rejetée
hive-page-grams = { GRAMS($mass, us: 1) } par jour
hive-page-caught = Retenu par couvercle, parois, plancher
hive-page-caught-grams = { GRAMS($lid, us: 1) }, { GRAMS($walls, us: 1) }, { GRAMS($floor, us: 1) } par jour
hive-page-dripping = Eau gouttant sur la grappe
hive-page-air-flow = Air entrant et sortant
hive-page-flow = { FLOW($flow, digits: 2, us: 1) }
hive-page-humidity = Humidité, dioxyde de carbone
hive-page-percent = { NUMBER($humidity) } %, { NUMBER($co2, digits: 1) } %

hive-page-nothing-helps = Rien de ce qui a été essayé dans le modèle n’aide plus que le hasard.
hive-page-action = { $is-instead ->
    [yes] Ou à la place :{" "}
   *[no] {""}
}<strong>{ CAPITAL($what) }</strong>, { $when }.
hive-page-on = le { DAY($on, style: "marked") }
hive-page-from-to = du { DAY($from, style: "marked") } au { DAY($to, style: "marked") }
hive-page-take-care = <strong>Attention : </strong>{ $caution }.
hive-page-worth = Ce que cela vaut, et qui le dit
hive-page-rule = À côté, une règle du métier : { $rule }.

hive-page-lift = { CAPITAL($size) }, { $place } : { MASS($load) } depuis { LENGTH($hands) }, { $says }.
hive-page-only-box = le seul corps
hive-page-lowest = le plus bas
hive-page-top = celui du haut
hive-page-from-below = numéro { NUMBER($number) } depuis le bas
hive-page-reckoned = Calculé avec la nourriture suspendue de haut en bas et les abeilles dans le corps le plus bas ; droit, tout contre soi, à deux mains.
hive-page-which-rule = <a href="/words#lifting">Selon quelle règle</a>.
hive-page-hazards = Attention : levage, glace, piqûres

hive-page-notes = Les notes, et ce que chacune a changé
hive-page-no-notes = Aucune encore.
hive-page-change-note = changer
hive-page-all-notes = Toutes les { NUMBER($notes) } notes
hive-page-take-back = Annuler la dernière chose faite ici
