## Une note écrite à une ruche, et changée.

note-page-not-yet-at = Pas encore noté pour { $hive }
note-page-not-yet = Pas encore noté
note-page-back = Retour à { $hive }
note-page-note = Note
note-page-line = Écrit, plusieurs séparées par « ; », ou choisi ci-dessous
note-page-depth = Neige contre le corps, au-dessus du sol, { $unit }
note-page-mites = Varroas, sur tant d’abeilles
note-page-words = Mots libres
note-page-day = Jour, si ce n’est pas le { DAY($today) }
note-page-keep = Enregistrer
note-page-examples = Ce qui peut s’écrire
note-page-fed = Donné, { $unit }
note-page-what-fed = Ce qui a été donné
note-page-syrup-3-2 = sirop 3:2
note-page-syrup-2-1 = sirop 2:1
note-page-syrup-1-1 = sirop 1:1
note-page-fondant = candi
note-page-candy = sucre en plaque
note-page-board = Plaque, pain ou nourrisseur posé
note-page-board-on = Posé dessus : { $board }
note-page-eaten-up = tout mangé
note-page-taken-off = ôté

note-page-at = Une note pour { $hive }
note-page-signs = Signes et choses faites, plusieurs séparés par « ; »
note-page-keep-change = Enregistrer le changement
note-page-withdraw = La retirer
note-page-stood = Comme elle était
note-page-never-lost = Rien n’est jamais écrasé. Une note retirée ne compte plus et peut revenir si on la garde de nouveau.
note-page-title = Une note
note-page-version = { $kind ->
    [edited] changée
    [withdrawn] retirée
    [restored] rétablie
   *[made] écrite
} le { DAY($on, style: "full") }, { $clock }

note-page-feed-wanted = { $much } : choisir ce qui a été donné.
note-page-day-wanted = { $day } : écrire un jour, par exemple 2026-01-18.

## Ce qui ne va pas dans une note envoyée.

note-page-too-many = Plus de { NUMBER($most) } entrées dans une note ; les envoyer en deux.
note-page-nothing = { $hive } : rien n’est noté ; toucher ou écrire quelque chose.
note-page-wrong-entry = { $hive } : { $entry } : { $wrong }
note-page-words-long = Les mots libres dépassent { NUMBER($most) } lettres ; les raccourcir.
note-page-wrong-air = L’air : { $wrong }
note-page-wrong-wind = Le vent : { $wrong }
note-page-doubt = { $hive } : { $doubt }.
note-page-after-looked-at = Le { DAY($on, style: "full") } est encore à venir : le jour regardé est le { DAY($until, style: "full") }. Écrire un jour jusque-là.
note-page-after-today = Le { DAY($on, style: "full") } est encore à venir : aujourd’hui est le { DAY($until, style: "full") }. Écrire un jour jusqu’à aujourd’hui.
note-page-other-yard = une colonie d’un autre rucher
