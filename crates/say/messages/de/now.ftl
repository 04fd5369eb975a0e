## Wo ein Volk jetzt steht.

now-moved-dead = tote Bienen { $against }: { $usual }
now-moved-unexplained = passt zu nichts, was das Modell für möglich hielt; mit Vorbehalt genommen. Stimmt es?
now-moved-alive = am Leben: von { NUMBER($before) } auf { NUMBER($after) } von 100
now-moved-food = Futter von { MASS($before, digits: 1) } auf { MASS($after, digits: 1) }
now-moved-queen = mit Königin: von { NUMBER($before) } auf { NUMBER($after) } von 100 der lebenden
now-moved-several = { LIST($ways) }
now-moved-noted = notiert
now-moved-little = sagt wenig mehr, als bekannt war
