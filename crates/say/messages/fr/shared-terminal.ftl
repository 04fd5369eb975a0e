## Ce que plusieurs réponses partagent dans le terminal.

shared-terminal-food = Nourriture
shared-terminal-bees = Abeilles
shared-terminal-alive = En vie
shared-terminal-spring = Printemps
shared-terminal-hive = Ruche
shared-terminal-frames = Cadres
shared-terminal-syrup = Sirop
shared-terminal-mites = Varroas
shared-terminal-fit = Prête ?
shared-terminal-why = Pourquoi
shared-terminal-next = Ensuite
shared-terminal-note = Note
shared-terminal-cost = Coût
shared-terminal-helps = Aide
shared-terminal-or-instead = Ou bien

shared-terminal-day = { DAY($on) }
shared-terminal-on-day = le { DAY($on) }
shared-terminal-from-to = du { DAY($from) } au { DAY($to) }
shared-terminal-title = { $hive }, { $yard }, { DAY($on) } : { $verdict }
shared-terminal-of = { $name } : { $says }
shared-terminal-parts = { LIST($parts, between: " ; ") }
shared-terminal-list = { LIST($parts) }
shared-terminal-stop = { $says }.
shared-terminal-cause = { $cause } { NUMBER($hives) }
shared-terminal-money = { NUMBER($amount) } { $currency }
shared-terminal-mass = { MASS($mass, digits: 1) }
shared-terminal-masses = { MASS($likely, digits: 1) } ({ MASS($least, digits: 1) } à { MASS($most, digits: 1) })

shared-terminal-stands-on = Repose sur : { LIST($sources, between: " ; ") }.
shared-terminal-stands-on-weather = Cela repose sur { $weather }.
shared-terminal-more-all = Plus : snowhum { $command } --all. Notice, loi et vétérinaire passent d’abord.
