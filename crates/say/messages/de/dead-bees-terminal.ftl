## Tote Bienen vor einem Volk, im Terminal.

dead-bees-terminal-head = { NUMBER($found) } tote Bienen in { NUMBER($days, digits: "all") } Tagen: { $verdict }
dead-bees-terminal-expected = Erwartet
dead-bees-terminal-usual = { $usual }, am ehesten { NUMBER($likely) }
dead-bees-terminal-lie = Sie liegen
dead-bees-terminal-deaths = Totenfall
dead-bees-terminal-normal = { NUMBER($least) } bis { NUMBER($most) } Bienen am Tag sind normal; die meisten bleiben drinnen
dead-bees-terminal-worry = Sorge?
