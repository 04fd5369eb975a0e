## The dates of a year, in the terminal.

jobs-terminal-title = Jobs and dates, { $yard }{ $invented ->
    [yes] {" "}(an invented yard)
   *[no] {""}
}: { $on }
jobs-terminal-due-now = Due now
jobs-terminal-due-soon = Within a month
jobs-terminal-when = When
jobs-terminal-waits = Waits for
jobs-terminal-at = At
jobs-terminal-others = Others
jobs-terminal-not-so = Not so
jobs-terminal-belief = "{ $said }" { $so }
jobs-terminal-caution = Caution

jobs-terminal-year = The year: - from early to late, # usual (of deadlines ! the safe day)
# Three letters of it stand over the bars.
jobs-terminal-month = { DAY($on, style: "short-month") }
jobs-terminal-month-of-year = { DAY($on, style: "month") } { NUMBER($year) }
jobs-terminal-window = { $what }: { $when }.
jobs-terminal-missed = If it was not done: { $then }

jobs-terminal-serve = Days that serve: usual, and 8 winters in 10
jobs-terminal-fly = bees can fly
jobs-terminal-lid = lid off a minute
jobs-terminal-combs = fit for combs
jobs-terminal-half = { NUMBER($from) } to { DAY($to) }
jobs-terminal-days = { NUMBER($likely) } ({ NUMBER($least) }-{ NUMBER($most) })

jobs-terminal-calendar = The calendar is in { $file }; read again later, it moves its entries and makes no new ones.
