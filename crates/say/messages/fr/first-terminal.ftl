## Le premier écran d’un rucher dans le terminal.

first-terminal-title = { $yard }{ $invented ->
    [yes] , un rucher inventé
   *[no] {""}
}, { DAY($on) } : { $hives ->
    [one] { NUMBER($hives) } ruche
   *[other] { NUMBER($hives) } ruches
}
first-terminal-mites = varroas non comptés : { $all ->
    [yes] toutes
   *[no] { NUMBER($hives) }
}
first-terminal-lost = perdues ou parties : { $all ->
    [yes] toutes
   *[no] { NUMBER($hives) }
}
first-terminal-short = à court de nourriture : { $all ->
    [yes] toutes
   *[no] { NUMBER($hives) }
}
first-terminal-weigh = nourriture non pesée : { $all ->
    [yes] toutes
   *[no] { NUMBER($hives) }
}
first-terminal-nothing-presses = rien ne presse

first-terminal-today = Ce jour
first-terminal-by = ≤ { DAY($on, style: "short") }
first-terminal-next-walk = Tournée
first-terminal-mild-day = Jour doux
first-terminal-now = Maintenant
first-terminal-then = Ensuite
first-terminal-later = Plus tard
first-terminal-nothing-in-any = rien à faire à aucune ruche ; les laisser fermées
first-terminal-nothing = rien à faire
first-terminal-rest = { NUMBER($more) } de plus : snowhum { $command } --all
first-terminal-all-hives = Toutes les ruches :
first-terminal-hive-by = { $hive } ({ DAY($by, style: "short") })
first-terminal-step = { CAPITAL($task) }
first-terminal-step-from = { CAPITAL($task) }, à partir du { DAY($from, style: "short") }

first-terminal-head-hive = Ruche
first-terminal-head-word = Mot
first-terminal-head-done = Si fait
first-terminal-head-not = Sinon
first-terminal-head-short = Manque
first-terminal-head-why = Raison

first-terminal-stands = Où
first-terminal-chances-on = Sur 100 ruches pareilles, en vie, nourries et avec reine le { DAY($on) }.
first-terminal-chances-to = Sur 100 ruches pareilles, en vie, nourries et avec reine jusqu’au { $goal }.
first-terminal-no-nectar = Aucun nectar n’est compté à partir d’ici : repeser quand la miellée est passée.
first-terminal-indoors = { LIST($hives) } : { $says }.
first-terminal-indoors-all = Toutes les ruches : { $says }.
first-terminal-numbers = Nombres : graine { $seed }, { NUMBER($members) } membres : { $source }
first-terminal-more = Plus : snowhum { $command } NAME, snowhum { $command } --all. Notice, loi et vétérinaire passent d’abord.
