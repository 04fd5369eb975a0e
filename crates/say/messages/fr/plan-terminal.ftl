## L’hiver à venir, ruche par ruche, dans le terminal.

plan-terminal-chances = Chances
plan-terminal-chances-done = en vie, nourries et avec reine jusqu’au { $goal } : { $done } si tout cela est fait, { $not } si rien ne l’est.
plan-terminal-chances-gone = en vie, nourries et avec reine jusqu’au { $goal } : ses abeilles vont à une autre ruche ; { $not } si rien n’est fait.
plan-terminal-chances-why = Pourquoi : { $reasons }.
plan-terminal-counted = Compté
plan-terminal-quick-start = seuls les quatre faits du départ rapide sont connus, chaque fourchette est donc large
plan-terminal-left = laissée telle quelle, { $alive } en vie ; en vie, nourries et avec reine : { $queenright }
plan-terminal-once-fed = Une fois donné ce qui lui manque : { $chance }
plan-terminal-to-do = À faire
plan-terminal-no-action = aucune action n’y change maintenant plus que le hasard
plan-terminal-ends = Fins/100

plan-terminal-stores = { MASS($now, digits: 1) } maintenant, { MASS($reach, digits: 1) } à portée ; { $lasts }
plan-terminal-few-starve = peu meurent de faim, mais le dixième le plus mal loti arrive au printemps avec moins de { MASS($left) } à portée
plan-terminal-rule = Règle
plan-terminal-rule-says = { $region } : { $says } ({ $source })
plan-terminal-but = Mais
plan-terminal-short = Manque
plan-terminal-short-nothing = rien : 9 sur 10 arrivent au printemps avec { MASS($left) } à portée ou plus
plan-terminal-short-of = { MASS($short, digits: 1) } de provisions (pour que 9 sur 10 gardent { MASS($left) } à portée) : { MASS($sugar, digits: 1) } de sucre, soit { VOLUME($three-to-two, digits: 1) } de sirop 3:2 ou { VOLUME($two-to-one, digits: 1) } de sirop 2:1
plan-terminal-syrup-by = doit être fini (pris et operculé) ici d’ici le { DAY($safe) } pour être sûr (le { DAY($usual) } est encore à temps une année sur deux){ $late ->
    [yes] ; c’est passé : donner plutôt du candi, du sucre en plaque ou des cadres de provisions
   *[no] {""}
}

plan-terminal-hive-empty = ses abeilles ont disparu avant le mois le plus froid
plan-terminal-hive = au mois le plus froid elle perd { LOSS($loss, digits: 1) }, { FLOW($air, digits: 2, us: 1) } d’air ; eau par jour : couvercle { GRAMS($lid, us: 1) }, parois { GRAMS($walls, digits: 0, us: 1) }, plancher { GRAMS($floor, digits: 0, us: 1) }, gouttant sur la grappe { GRAMS($drips, digits: 0, us: 1) } ; { $hole }
plan-terminal-no-hole = pas de trou supérieur, donc pas de givre à chercher
plan-terminal-frost = givre au trou supérieur { NUMBER($percent) } % du temps
plan-terminal-bees = { $bars } de { NUMBER($now) } maintenant à { NUMBER($low) } ({ NUMBER($least) } à { NUMBER($most) }) vers { DAY($on, style: "part") }
plan-terminal-brood = couvain nettement revenu vers { DAY($on, style: "part") }

plan-terminal-food-day = Nourr./jour
plan-terminal-dead-day = Mortes/jour
plan-terminal-dead-seen = Vues mortes
plan-terminal-month-food = { DAY($month, style: "short-month") } { GRAMS($food, unit: "no", us: 1) }
plan-terminal-month-bees = { DAY($month, style: "short-month") } { NUMBER($bees) }
plan-terminal-month-seen = { DAY($month, style: "short-month") } { $usual }
plan-terminal-months-food = { LIST($months) } { $ounces ->
    [yes] oz
   *[no] g
}
plan-terminal-months-bees = { LIST($months) } abeilles
plan-terminal-months-seen = { LIST($months) } devant la ruche en quinze jours, 9 fois sur 10

plan-terminal-helps = Aide { NUMBER($place) }
plan-terminal-action = { $what } : { $worth }
plan-terminal-action-when = { $what }, { $when } : { $worth }
plan-terminal-trade = Le métier : { $rule }
plan-terminal-mind = Attention : { $caution }
plan-terminal-after = { LIST($sentences, between: ". ") }

plan-terminal-stands = Cela repose sur { $source } ; { NUMBER($members) } membres sur { NUMBER($paths) } suites de temps, graine { $seed }.
plan-terminal-parameters = Paramètres et leurs sources : data/winter_parameters.toml. Suivre la notice, la loi locale, les services vétérinaires et le vétérinaire avant tout mot d’ici.

plan-terminal-of-then = { $yard } a été compté le { $counted }, pour un hiver qui est passé ; voici son plan d’alors. Pour celui de cet automne : snowhum season
