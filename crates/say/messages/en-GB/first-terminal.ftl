## The first screen of a yard in the terminal.

first-terminal-title = { $yard }{ $invented ->
    [yes] , an invented yard
   *[no] {""}
}, { DAY($on) }: { $hives ->
    [one] { NUMBER($hives) } hive
   *[other] { NUMBER($hives) } hives
}
first-terminal-mites = mites not counted in { $all ->
    [yes] all
   *[no] { NUMBER($hives) }
}
first-terminal-lost = { $all ->
    [yes] all
   *[no] { NUMBER($hives) }
} lost or gone
first-terminal-short = { $all ->
    [yes] all
   *[no] { NUMBER($hives) }
} short of food
first-terminal-weigh = food not weighed in { $all ->
    [yes] all
   *[no] { NUMBER($hives) }
}
first-terminal-nothing-presses = nothing presses

first-terminal-today = Today
first-terminal-by = By { DAY($on, style: "short") }
first-terminal-next-walk = Next walk
first-terminal-mild-day = Mild day
first-terminal-now = Now
first-terminal-then = Then
first-terminal-later = Later
first-terminal-nothing-in-any = nothing is due in any hive; leave them shut
first-terminal-nothing = nothing is due
first-terminal-rest = { NUMBER($more) } more: snowhum { $command } --all
first-terminal-all-hives = All hives:
first-terminal-hive-by = { $hive } ({ DAY($by, style: "short") })
first-terminal-step = { CAPITAL($task) }
first-terminal-step-from = { CAPITAL($task) }, from { DAY($from, style: "short") }

## Heads of the table: a hive's word, its chance if all is done and if nothing is, what it is short of, and why. At most twelve letters for the hive and
## eleven for the word, seven for the others.

first-terminal-head-hive = Hive
first-terminal-head-word = Word
first-terminal-head-done = If done
first-terminal-head-not = If not
first-terminal-head-short = Short
first-terminal-head-why = Why

first-terminal-stands = Where
first-terminal-chances-on = Of 100 hives like it alive, fed and queenright on { DAY($on) }.
first-terminal-chances-to = Of 100 hives like it alive, fed and queenright to { $goal }.
first-terminal-no-nectar = No nectar is reckoned from here on: weigh again when the flow is over.
first-terminal-indoors = { LIST($hives) }: { $says }.
first-terminal-indoors-all = All hives: { $says }.
first-terminal-numbers = Numbers: seed { $seed }, { NUMBER($members) } members: { $source }
first-terminal-more = More: snowhum { $command } NAME, snowhum { $command } --all. Label, law and vet come first.
