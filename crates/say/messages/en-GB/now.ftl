## Where a colony stands now.

now-moved-dead = dead bees { $against }: { $usual }
now-moved-unexplained = fits nothing the model thought possible; taken with reserve. Is it right?
now-moved-alive = alive from { NUMBER($before) } to { NUMBER($after) } in 100
now-moved-food = food from { MASS($before, digits: 1) } to { MASS($after, digits: 1) }
now-moved-queen = with a queen from { NUMBER($before) } to { NUMBER($after) } in 100 of those alive
now-moved-several = { LIST($ways) }
now-moved-noted = noted
now-moved-little = says little more than was known
