## Les dates d’une année, dans le terminal.

jobs-terminal-title = Travaux et dates, { $yard }{ $invented ->
    [yes] {" "}(un rucher inventé)
   *[no] {""}
} : { $on }
jobs-terminal-due-now = À faire maintenant
jobs-terminal-due-soon = D’ici un mois
jobs-terminal-when = Quand
jobs-terminal-waits = Attend
jobs-terminal-at = Ruches
jobs-terminal-others = D’autres
jobs-terminal-not-so = Non
jobs-terminal-belief = « { $said } » { $so }
jobs-terminal-caution = Attention

jobs-terminal-year = L’année : - de tôt à tard, # d’ordinaire (des dates limites, ! le jour sûr)
jobs-terminal-month = { DAY($on, style: "short-month") }
jobs-terminal-month-of-year = { DAY($on, style: "month") } { NUMBER($year) }
jobs-terminal-window = { $what } : { $when }.
jobs-terminal-missed = Si cela n’a pas été fait : { $then }

jobs-terminal-serve = Jours qui conviennent : d’ordinaire, et 8 hivers sur 10
jobs-terminal-fly = vol possible
jobs-terminal-lid = couvercle 1 min
jobs-terminal-combs = bon pour les cadres
jobs-terminal-half = { NUMBER($from) } au { DAY($to) }
jobs-terminal-days = { NUMBER($likely) } ({ NUMBER($least) }-{ NUMBER($most) })

jobs-terminal-calendar = Le calendrier est dans { $file } ; relu plus tard, il déplace ses entrées et n’en crée pas de nouvelles.
