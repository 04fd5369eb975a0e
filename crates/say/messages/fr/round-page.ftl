## La page « Tournée du rucher », et la même tournée sur une feuille au crayon.

round-page-heading = Tournée du rucher
round-page-kept = <strong>{ NUMBER($hives) } { $hives ->
    [one] ruche notée et enregistrée
   *[other] ruches notées et enregistrées
}.</strong> L’estimation suit d’elle-même.
round-page-lede = Toucher ce qui a été vu ; laisser ce qui n’a pas été regardé. Hors de portée, cela attend dans le téléphone et part plus tard.
round-page-sheet = Une feuille pour le crayon
round-page-not-asked = Pas demandées, puisque plus rien n’y vit :
round-page-all = Tout
round-page-before = Ruche d’avant
round-page-end = Fin
round-page-next = Ruche suivante
round-page-keep = Enregistrer la tournée

round-page-outside = Dehors
round-page-air = Air, { $unit }
round-page-snow = Neige devant les ruches
round-page-snow-bare = sol nu
round-page-snow-old = ancienne
round-page-snow-fresh = fraîche

round-page-indoors = Est à l’intérieur : ni vol, ni neige, ni givre à chercher ; ses mortes sont sur son plancher.
round-page-expected = Comme attendu : { $dead } abeilles mortes, entrée libre
round-page-further = Autres signes, poids, un mot
round-page-word = Un mot
round-page-unasked = pas regardé
round-page-untried = pas essayé

round-page-dead = Abeilles mortes, nouvelles
round-page-dead-none = aucune
round-page-dead-few = 1–5
round-page-dead-some = 6–20
round-page-dead-many = 21–100
round-page-dead-most = plus de 100
round-page-entrance = Entrée
round-page-upper = Trou supérieur
round-page-clear = libre
round-page-blocked = bouché
round-page-cleared = je l’ai dégagé
round-page-drifted-over = sous une congère
round-page-iced = glacé
round-page-plugged = bouché d’abeilles
round-page-not-visible = pas visible
round-page-rime = Givre au trou supérieur
round-page-rime-new = nouveau givre
round-page-rime-old = givre
round-page-rime-damp = humide
round-page-rime-dry = sec
round-page-hum = Bourdonnement, l’oreille contre la paroi
round-page-hum-heard = entendu
round-page-hum-silent = silence
round-page-poke = Paille dans le trou ou l’entrée
round-page-poke-answered = une abeille a répondu
round-page-poke-silent = silence
round-page-flight = Vol
round-page-flight-well = bon
round-page-flight-thin = faible
round-page-flight-traffic = va-et-vient
round-page-flight-none = aucune abeille
round-page-pollen = Pollen
round-page-pollen-carried = rentré
round-page-pollen-none = aucun
round-page-droppings = Déjections
round-page-droppings-snow = sur la neige
round-page-droppings-hive = sur la ruche
round-page-droppings-none = aucune
round-page-robbers = Pillardes
round-page-wasps = Guêpes
round-page-yes = oui
round-page-no = non
round-page-lid = Sous le couvercle, à la main
round-page-lid-warm = chaud
round-page-lid-cold = froid
round-page-heft = Soupesée à la main
round-page-heft-light = légère
round-page-heft-fair = correcte
round-page-heft-heavy = lourde
round-page-depth = Neige contre le corps, au-dessus du sol
round-page-count = Abeilles mortes, comptées
round-page-hook = Abeilles mortes tirées au crochet
round-page-scale = Ruche entière sur une balance
round-page-side = Un côté levé, toujours le même

round-page-melted-snow = Un trou fondu dans la neige du toit
round-page-stripes = Bandes fraîches de débris sur le lange, en ruelles
round-page-weight = Poids ou provisions
round-page-inside = Température à l’intérieur
round-page-humidity = Humidité sous le couvercle
round-page-warm-spot = Un point chaud sur une image thermique
round-page-bees-seen = Abeilles vivantes vues sous le couvercle
round-page-drones = Faux-bourdons hors saison
round-page-queen-dead = Une reine morte sur la planche d’envol
round-page-larvae = Larves ou nymphes jetées dehors
round-page-wings = Abeilles aux ailes froissées
round-page-bird = Un oiseau à l’entrée
round-page-mouse = Une souris, ou ses traces
round-page-damage = Dégâts de tempête, d’animaux ou de passants
round-page-smell = Une odeur de pourriture
round-page-seen-dead = La colonie a été vue morte

round-page-wrong-none = Aucune ruche n’a été notée : toucher ce qui a été vu à une au moins.
round-page-wrong-snow = La neige est un de ces mots : none, old, new.

round-page-pencil = Une tournée au crayon
round-page-pencil-day = Jour ____________  heure ______  air ______  neige : sol nu · ancienne · fraîche
round-page-pencil-ring = Entourer un mot par ligne. Le soir, le même ordre figure sur la page « Tournée du rucher ».

## Ce que dit le script de la tournée.

round-page-waiting = { $number } à envoyer encore : { $hives }.
round-page-sign-in = Se connecter pour les envoyer
round-page-refused = { $hive } n’a pas été accepté : { $why }
round-page-declined = refusé
round-page-put-back = Remettre pour corriger ({ $entries })
round-page-stored = { $number } notées et enregistrées : { $hives }.
round-page-in-phone = Gardé dans ce téléphone, à envoyer encore : { $hives }. L’envoi se fait dès que le serveur répond.
round-page-signed-out = Gardé dans ce téléphone, à envoyer encore : { $hives }. L’envoi se fait une fois connecté.
round-page-moved = En vie sur 100 ruches pareilles, avant et après : { $changes }.
round-page-draft = Ce qui a été touché le { $when } est de nouveau là, à cette heure-là.
round-page-anew = Recommencer
round-page-clear-entrance = Dégager l’entrée.
round-page-clear-upper = Dégager le trou supérieur.
round-page-is-answered = En vie : une abeille a répondu.
round-page-alive = En vie.
round-page-most-likely-alive = Très probablement en vie.
round-page-in-doubt = Douteux.
round-page-most-likely-dead = Très probablement morte.
round-page-live = { $chance } ruches pareilles sur 100 vivent, { $before } avant.
round-page-breath = Le givre est leur souffle.
round-page-tells-most = Le plus parlant ensuite : « { $asks } ».
round-page-tells-little = Regarder davantage n’apprendrait guère aujourd’hui.
round-page-other-air = Calculé pour { $air }, non pour l’air mesuré : se fier à ce qui vient après la synchronisation.
round-page-provisional = Provisoire, pour { $air }, jusqu’à la synchronisation.
round-page-next-sync = Gardé ; l’estimation vient avec la prochaine synchronisation.
round-page-step = { $at } sur { $all } · { $noted } notées
round-page-noted = { $noted } notées
round-page-not-looked = pas regardée
round-page-answer = { $asks } : { $answer }
