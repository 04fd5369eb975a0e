## Les leçons d’un hiver, dans le terminal.

lessons-terminal-title = { $yard }{ $invented ->
    [yes] , un rucher inventé
   *[no] {""}
}, hiver { $winter } : { NUMBER($lost) } sur { NUMBER($colonies) } colonies perdues{ $open ->
    [yes] {" "}jusqu’ici
   *[no] {""}
}
lessons-terminal-counted = Compté du { DAY($from) } au { DAY($to) }, comme noté au { DAY($as-of, style: "full") }.
lessons-terminal-cost = { $colonies } de colonies, { $food } de nourriture notée

lessons-terminal-forecast = La prévision face à ce qui est arrivé
lessons-terminal-foretold = prédites vivantes { NUMBER($hives) } sur 100 ; { $alive ->
    [yes] vivante
   *[no] morte
}
lessons-terminal-log-score = Score log
lessons-terminal-log-scored = { NUMBER($score, digits: 2) } ; taux de base de { NUMBER($hives) } vivantes sur 100 : { NUMBER($base, digits: 2) }. Plus petit vaut mieux. Si ses chances sont justes, il est entre { NUMBER($low, digits: 2) } et { NUMBER($high, digits: 2) }
lessons-terminal-brier = Brier
lessons-terminal-brier-scored = { NUMBER($score, digits: 2) } ; taux de base { NUMBER($base, digits: 2) }
lessons-terminal-today = Le modèle d’aujourd’hui, interrogé sur le jour où les colonies ont été comptées.

lessons-terminal-winters = Hivers
lessons-terminal-lost = { NUMBER($lost) } sur { NUMBER($colonies) } perdues
lessons-terminal-lost-open = { NUMBER($lost) } sur { NUMBER($colonies) } perdues, { NUMBER($open) } pas encore renseignées
lessons-terminal-fed = { MASS($food) } donnés pour { $money }
lessons-terminal-mites = le plus de varroas { NUMBER($found) } sur { NUMBER($bees) } abeilles ({ $colony }, { DAY($on) })
lessons-terminal-treated = { NUMBER($colonies) } { $colonies ->
    [one] traitée
   *[other] traitées
}
lessons-terminal-coldest = le plus froid noté { TEMPERATURE($air) } le { DAY($on) }
lessons-terminal-not-counted = colonies comme notées, automne non compté ici

lessons-terminal-others = D’autres
lessons-terminal-survey = { NUMBER($percent, digits: 1) } % ({ NUMBER($least, digits: 1) } à { NUMBER($most, digits: 1) }) : { $who } ; { $source }
lessons-terminal-for-survey = Enquête
lessons-terminal-not-in-records = (pas au registre)
