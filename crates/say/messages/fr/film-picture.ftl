## L’hiver raconté, comme un film.

film-picture-then = { $when } :
film-picture-air = { TEMPERATURE($air) }
film-picture-length = { LENGTH($length, us: "few") }
film-picture-mass = { MASS($mass, digits: 1) }
film-picture-bare-mass = { MASS($mass, digits: 1, unit: "no") }
film-picture-end-of-scale = { MASS($mass) }
film-picture-outdoors = { $low } à { $high }, neige { $snow }
film-picture-ahead = { $outdoors } (à venir : ce qui peut arriver)
film-picture-dead = morte
film-picture-alive = en vie, { $hives } ruches pareilles sur 100
film-picture-food = nourriture { $amounts }
film-picture-amounts = { $food } ({ $low } à { $high })
film-picture-unknown = inconnue
film-picture-inside = { LIST($parts, between: " ; ") }
film-picture-cluster = grappe de { $across } de diamètre, cœur { $core }
film-picture-water = { GRAMS($water, us: 2) }
film-picture-wet = couvercle et parois retiennent { $water } d’eau par jour{ $is-frosted ->
    [yes] , givre au trou
   *[no] {""}
}

film-picture-cut-open = { $hive }, coupée
film-picture-bees = abeilles
film-picture-comb-food = nourriture
film-picture-chart = Nourriture de { $hive } au fil de l’hiver : prédite en automne, et telle qu’elle fut
film-picture-chart-key = Nourriture : bande grise prédite (8 sur 10), ligne telle qu’elle fut, jaune ce qui peut venir ; une pointe pour chaque note
film-picture-note = { $when } : { $note }. { $moved }.
film-picture-foretold-and-came = Prédit, et ce qui est venu

film-picture-by-months = { $hive } par mois
film-picture-head-day = Jour
film-picture-head-outdoors = Dehors
film-picture-head-alive = En vie
film-picture-head-food = Nourriture
film-picture-head-foretold = Prédite
film-picture-head-inside = Dedans
film-picture-range = { $low } à { $high }

film-picture-play = Jouer
film-picture-stop = Arrêter
film-picture-week = Une semaine plus loin
film-picture-slider = Jour de l’hiver
film-picture-guess = Deviner d’abord
film-picture-ask = L’hiver court jusqu’à son milieu. Que restera-t-il de la nourriture le { $today }, par rapport à ce que l’automne prédisait ?
film-picture-less = moins
film-picture-as-foretold = comme prédit
film-picture-more = plus
film-picture-show = Montrer ce qui est venu
film-picture-score = Bien deviné : { $right } sur { $asked }. Ce qui est venu se lit plus bas.
