## Dead bees: what is usual, where they lie, what a count says.

dead-bees-usual = { NUMBER($least) } to { NUMBER($most) } are usual, 9 looks in 10
dead-bees-usual-one = { NUMBER($count) } are usual, 9 looks in 10

dead-bees-hardly-any = hardly any have died
dead-bees-lie = of some { NUMBER($all) } dead about { LIST($places) }
dead-bees-floor = { NUMBER($bees) } on its { -floor }
dead-bees-before = { NUMBER($bees) } before the hive
dead-bees-snow = { NUMBER($bees) } there under snow
dead-bees-flown = { NUMBER($bees) } flown off or carried away
dead-bees-taken = { NUMBER($bees) } taken by birds and mice

dead-bees-few = Few dead bees are no bad sign: in cold weather they stay inside, and a small colony loses few.
dead-bees-normal = Normal. A colony of winter bees loses some every day; that is how it gets to spring.
dead-bees-many = More than usual. After a mild day bees carry out weeks of dead at once: that is a sign of life.
dead-bees-far-more = Far more than a winter's day-to-day loss. After a first mild day this can still be house-cleaning.

dead-bees-next-few = Nothing to do. If neighbours show many and this hive no sign of any kind, listen at it on a calm day.
dead-bees-next-normal = Keep the entrance clear of them, and note the count.
dead-bees-next-many = Clear the entrance. Look for crumpled wings, brown streaks on the hive, shrew-bitten bees; note it and count again.

dead-bees-sources-lives = lives of winter bees: Minaud 2024 review (130 days), Fukuda and Sekiguchi 1966 (154 days)
dead-bees-sources-watch = how the dead lie and are found, as the watch has it: data/watch_parameters.toml, judgement

