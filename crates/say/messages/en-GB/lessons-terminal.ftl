## A winter's lessons, in the terminal.

lessons-terminal-title = { $yard }{ $invented ->
    [yes] , an invented yard
   *[no] {""}
}, winter { $winter }: { NUMBER($lost) } of { NUMBER($colonies) } colonies lost{ $open ->
    [yes] {" "}so far
   *[no] {""}
}
lessons-terminal-counted = Counted from { DAY($from) } to { DAY($to) }, as noted by { DAY($as-of, style: "full") }.
lessons-terminal-cost = { $colonies } of colonies, { $food } of food noted

lessons-terminal-forecast = Forecast against what happened
lessons-terminal-foretold = foretold alive { NUMBER($hives) } in 100; { $alive ->
    [yes] alive
   *[no] dead
}
lessons-terminal-log-score = Log score
lessons-terminal-log-scored = { NUMBER($score, digits: 2) }; base rate of { NUMBER($hives) } in 100 alive: { NUMBER($base, digits: 2) }. Smaller is better. If its chances are right it lies between { NUMBER($low, digits: 2) } and { NUMBER($high, digits: 2) }
lessons-terminal-brier = Brier
lessons-terminal-brier-scored = { NUMBER($score, digits: 2) }; base rate { NUMBER($base, digits: 2) }
lessons-terminal-today = Today's model, asked about the day the colonies were counted.

lessons-terminal-winters = Winters
lessons-terminal-lost = { NUMBER($lost) } of { NUMBER($colonies) } lost
lessons-terminal-lost-open = { NUMBER($lost) } of { NUMBER($colonies) } lost, { NUMBER($open) } not told
lessons-terminal-fed = { MASS($food) } fed for { $money }
lessons-terminal-mites = most mites { NUMBER($found) } in { NUMBER($bees) } bees ({ $colony }, { DAY($on) })
lessons-terminal-treated = { NUMBER($colonies) } treated
lessons-terminal-coldest = coldest noted { TEMPERATURE($air) } on { DAY($on) }
lessons-terminal-not-counted = colonies as noted, autumn not counted here

lessons-terminal-others = Others
lessons-terminal-survey = { NUMBER($percent, digits: 1) } % ({ NUMBER($least, digits: 1) } to { NUMBER($most, digits: 1) }): { $who }; { $source }
lessons-terminal-for-survey = For a survey
lessons-terminal-not-in-records = (not in the records)
