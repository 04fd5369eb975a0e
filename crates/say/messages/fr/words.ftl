## Des mots et des nombres dont beaucoup de messages sont faits.

words-by = d’ici le { DAY($on) }
words-in-hundred = environ { NUMBER($hives) } sur 100
words-fewest = moins de 1 sur 100
words-most = plus de 99 sur 100
words-both-ways = sur 100 colonies comme celle-ci, environ { NUMBER($alive) } { $alive ->
    [one] est vivante
   *[other] sont vivantes
}, { NUMBER($not) } non
words-early = début { DAY($on, style: "month") }
words-mid = mi-{ DAY($on, style: "month") }
words-late = fin { DAY($on, style: "month") }

words-portion = { PORTION($mass) }
words-poured = { POURED($volume) }
words-unknown = non connu

words-to = { NUMBER($least) } à { NUMBER($most) }
words-fewer = moins qu’attendu
words-as-expected = comme attendu
words-more = plus qu’attendu

words-calibrated = calibré
words-published = publié
words-practice = pratique courante
words-from-memory = de mémoire
words-judgement = notre jugement
