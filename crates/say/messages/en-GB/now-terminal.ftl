## Where each hive stands, in the terminal.

now-terminal-sign = { DAY($on, style: "short") } { $note }
now-terminal-stands = It stands on { $source }, seed { $seed }.
now-terminal-judgement = How much a sign can say is judgement throughout: data/watch_parameters.toml. Follow the label, local law, the { -bee-inspector } and the vet before any word here.

now-terminal-flight-day = Flight day
now-terminal-flies-most-days = bees fly on most days now; a hive that does not while others do is opened first
now-terminal-flies = { DAY($on) }, { $days ->
    [one] tomorrow
   *[other] { NUMBER($days) } days ahead
} ({ $chance }): note at every hive who flew well, thin or not at all, and open those that did not fly first
now-terminal-flies-not = none likely within ten days
now-terminal-look = Go and look
now-terminal-open = Open first
now-terminal-lid = Lid
now-terminal-lid-tomorrow = Tomorrow at one: { $lid } { $others }

now-terminal-mind = Mind
now-terminal-queen = Queen
now-terminal-with-queen = { $chance } of those alive have one; no sign from outside proves it
now-terminal-bees = about { NUMBER($likely) } ({ NUMBER($least) } to { NUMBER($most) })
now-terminal-stores = { MASS($likely, digits: 1) } (8 in 10 between { MASS($least, digits: 1) } and { MASS($most, digits: 1) }); within reach { MASS($reach, digits: 1) }
now-terminal-until = Until
now-terminal-board = Board
now-terminal-ahead = Ahead
now-terminal-comes = alive, fed and queenright: { $chance }
now-terminal-comes-to = to { $goal }, alive, fed and queenright: { $chance }
now-terminal-dead = If dead
now-terminal-dead-of = { LIST($causes) } in 100
now-terminal-since = Since
now-terminal-since-day = most likely { DAY($likely, style: "part") }, between { DAY($from) } and { DAY($to) }

now-terminal-next = Next look
now-terminal-next-look = on { DAY($on) } at { TEMPERATURE($air) }: { LIST($parts) }
now-terminal-new-dead = { $dead } new dead bees{ $indoors ->
    [yes] {" "}on its { -floor }
   *[no] {""}
}
now-terminal-new-rime = new rime at the hole { $chance }
now-terminal-new-hum = a hum { $chance }
now-terminal-new-flight = a cleansing flight { $chance }
now-terminal-no-flight = no bee flies in the dark

now-terminal-look-first = Look first?
now-terminal-action = { $what }, { $when }: { $worth }. { $why }.
now-terminal-caution = Caution: { $caution }.
now-terminal-signs = Signs
now-terminal-evidence = { DAY($on) }: { $note }: { $moved }
