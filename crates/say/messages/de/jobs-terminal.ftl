## Die Termine eines Jahres, im Terminal.

jobs-terminal-title = Arbeiten und Termine, { $yard }{ $invented ->
    [yes] {" "}(ein erfundener Stand)
   *[no] {""}
}: { $on }
jobs-terminal-due-now = Jetzt fällig
jobs-terminal-due-soon = Binnen eines Monats
jobs-terminal-when = Wann
jobs-terminal-waits = Wartet auf
jobs-terminal-at = Bei
jobs-terminal-others = Andere
jobs-terminal-not-so = Falsch
jobs-terminal-belief = „{ $said }“ { $so }
jobs-terminal-caution = Vorsicht

jobs-terminal-year = Das Jahr: - von früh bis spät, # üblich (bei Fristen ! der sichere Tag)
jobs-terminal-month = { DAY($on, style: "short-month") }
jobs-terminal-month-of-year = { DAY($on, style: "month") } { NUMBER($year) }
jobs-terminal-window = { $what }: { $when }.
jobs-terminal-missed = Falls es nicht geschah: { $then }

jobs-terminal-serve = Taugliche Tage: üblich, und 8 von 10 Wintern
jobs-terminal-fly = Bienenflug
jobs-terminal-lid = Deckel 1 min ab
jobs-terminal-combs = gut für Waben
jobs-terminal-half = { NUMBER($from) } bis { DAY($to) }
jobs-terminal-days = { NUMBER($likely) } ({ NUMBER($least) }-{ NUMBER($most) })

jobs-terminal-calendar = Der Kalender liegt in { $file }; später neu gelesen, verschiebt er seine Einträge und macht keine neuen.
