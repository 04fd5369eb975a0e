## Dead bees before a hive, in the terminal.

dead-bees-terminal-head = { NUMBER($found) } dead bees in { NUMBER($days, digits: "all") } days: { $verdict }
dead-bees-terminal-expected = Expected
dead-bees-terminal-usual = { $usual }, { NUMBER($likely) } most likely
dead-bees-terminal-lie = They lie
dead-bees-terminal-deaths = Deaths
dead-bees-terminal-normal = { NUMBER($least) } to { NUMBER($most) } bees a day is normal; most stay inside
dead-bees-terminal-worry = Worry?
