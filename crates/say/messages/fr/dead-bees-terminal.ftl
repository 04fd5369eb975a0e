## Abeilles mortes devant une ruche, dans le terminal.

dead-bees-terminal-head = { NUMBER($found) } abeilles mortes en { NUMBER($days, digits: "all") } jours : { $verdict }
dead-bees-terminal-expected = Attendu
dead-bees-terminal-usual = { $usual }, { NUMBER($likely) } le plus probablement
dead-bees-terminal-lie = Elles sont
dead-bees-terminal-deaths = Morts
dead-bees-terminal-normal = { NUMBER($least) } à { NUMBER($most) } abeilles par jour est normal ; la plupart restent dedans
dead-bees-terminal-worry = Grave ?
