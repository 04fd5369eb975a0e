## A candy board, a slab or a feeder on a hive.

food-body-made = { LIST($parts) }
food-body-food = { MASS($mass, digits: 1) } { $kind }
food-body-food-pollen = { MASS($mass, digits: 1) } { $kind } with pollen
food-body-rim = rim { LENGTH($rim) }
food-body-over-cluster = over the cluster
food-body-to-one-side = to one side
food-body-hole = hole { LENGTH($hole) }

food-body-since-autumn = { $what }, on since autumn
food-body-since = { $what }, on since { DAY($since) }

food-body-reached = { $what }: the cluster has reached it ({ $chance }); { $left }
food-body-in-doubt = { $what }: nobody knows whether the cluster has reached it ({ $chance }); { $when }; { $left }
food-body-not-reached = { $what }: not reached ({ $chance }), so it feeds nobody yet; { $when }
food-body-left = about { MASS($middle, digits: 1) } is left (8 in 10 between { MASS($least, digits: 1) } and { MASS($most, digits: 1) })
food-body-never = in 9 of 10 winters it is not by { $goal }
food-body-hardly = likelier than not it is not by { $goal }; 1 in 10 has it by { DAY($early) }
food-body-by = half of such hives reach it by { DAY($middle) }, 1 in 10 by { DAY($early) }, the slowest by { DAY($late) }
food-body-not-all = half of such hives reach it by { DAY($middle) }, 1 in 10 by { DAY($early) }, the slowest not by { $goal }
