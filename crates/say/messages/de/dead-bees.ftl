## Tote Bienen: was üblich ist, wo sie liegen, was eine Zählung sagt.

dead-bees-usual = { NUMBER($least) } bis { NUMBER($most) } sind üblich, bei 9 von 10 Gängen
dead-bees-usual-one = { NUMBER($count) } ist üblich, bei 9 von 10 Gängen

dead-bees-hardly-any = es sind kaum welche gestorben
dead-bees-lie = von rund { NUMBER($all) } toten Bienen liegen etwa { LIST($places) }
dead-bees-floor = { NUMBER($bees) } auf dem Boden der Beute
dead-bees-before = { NUMBER($bees) } vor der Beute
dead-bees-snow = { NUMBER($bees) } dort unter Schnee
dead-bees-flown = { NUMBER($bees) } sind abgeflogen oder fortgetragen
dead-bees-taken = { NUMBER($bees) } haben Vögel und Mäuse geholt

dead-bees-few = Wenige tote Bienen sind kein schlechtes Zeichen: bei Kälte bleiben sie drinnen, und ein kleines Volk verliert wenige.
dead-bees-normal = Normal. Ein Volk aus Winterbienen verliert jeden Tag einige; so kommt es ins Frühjahr.
dead-bees-many = Mehr als üblich. Nach einem milden Tag tragen die Bienen die Toten von Wochen auf einmal hinaus: das ist ein Lebenszeichen.
dead-bees-far-more = Weit mehr, als ein Winter Tag für Tag kostet. Nach einem ersten milden Tag kann es noch der Putztrieb sein.

dead-bees-next-few = Nichts zu tun. Zeigen die Nachbarn viele und dieses Volk gar kein Zeichen, an einem windstillen Tag daran horchen.
dead-bees-next-normal = Das Flugloch von ihnen freihalten und die Zahl notieren.
dead-bees-next-many = Das Flugloch freimachen. Nach verkrüppelten Flügeln, braunen Streifen an der Beute und von Spitzmäusen angebissenen Bienen sehen; notieren und wieder zählen.

dead-bees-sources-lives = Lebensdauer von Winterbienen: Übersicht von Minaud 2024 (130 Tage), Fukuda und Sekiguchi 1966 (154 Tage)
dead-bees-sources-watch = wie die Toten liegen und gefunden werden, nach dem Modell der Zeichen: data/watch_parameters.toml, Einschätzung

