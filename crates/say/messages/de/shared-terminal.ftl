## Was mehrere Antworten im Terminal gemeinsam haben.

shared-terminal-food = Futter
shared-terminal-bees = Bienen
shared-terminal-alive = Am Leben
shared-terminal-spring = Frühjahr
shared-terminal-hive = Beute
shared-terminal-frames = Waben
shared-terminal-syrup = Sirup
shared-terminal-mites = Milben
shared-terminal-fit = Winterfest?
shared-terminal-why = Warum
shared-terminal-next = Nun zu tun
shared-terminal-note = Hinweis
shared-terminal-cost = Kosten
shared-terminal-helps = Hilft
shared-terminal-or-instead = Stattdessen

shared-terminal-day = { DAY($on) }
shared-terminal-on-day = am { DAY($on) }
shared-terminal-from-to = vom { DAY($from) } bis zum { DAY($to) }
shared-terminal-title = { $hive } am Stand { $yard }, { DAY($on) }: { $verdict }
shared-terminal-of = { $name }: { $says }
shared-terminal-parts = { LIST($parts, between: "; ") }
shared-terminal-list = { LIST($parts) }
shared-terminal-stop = { $says }.
shared-terminal-cause = { $cause } { NUMBER($hives) }
shared-terminal-money = { NUMBER($amount) } { $currency }
shared-terminal-mass = { MASS($mass, digits: 1) }
shared-terminal-masses = { MASS($likely, digits: 1) } ({ MASS($least, digits: 1) } bis { MASS($most, digits: 1) })

shared-terminal-stands-on = Beruht auf: { LIST($sources, between: "; ") }.
shared-terminal-stands-on-weather = Beruht auf { $weather }.
shared-terminal-more-all = Mehr: snowhum { $command } --all. Etikett, Recht und Tierarzt gehen vor.
