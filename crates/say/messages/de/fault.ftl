## Was falsch ist und was richtig wäre, wo immer etwas gelesen wird.

fault-both = { $first }; { $then }
fault-at = { $place }: { $says }
fault-ended = { $says }.
fault-sentence = { SENTENCE($says) }
fault-quoted = „{ $text }“
fault-cannot-be = „{ $written }“ kann nicht sein
fault-letters = höchstens { NUMBER($letters) } Zeichen schreiben
fault-no-equals = „{ $written }“ hat kein „=“
fault-once = einmal angeben

fault-unknown = „{ $written }“ ist hier nicht bekannt
fault-did-you-mean = gemeint ist „{ $near }“?
fault-did-you-mean-or = gemeint ist „{ $near }“? Ähnlich sind { LIST($others) }
fault-one-of = eines schreiben von { LIST($known) }
fault-nearest = am nächsten kommen { LIST($near) }
fault-no-share = „{ $written }“ ist kein Anteil
fault-share-right = Prozente schreiben, etwa „75 %“

fault-no-day = „{ $written }“ ist kein Tag
fault-day-right = Jahr, Monat und Tag schreiben, etwa 2025-10-05 oder 5.10.2025
fault-no-time = „{ $written }“ ist keine Zeit
fault-time-right = schreiben wie „2026-01-06 10:00“
fault-moving-day = „{ $written }“ ist jeden Tag ein anderer Tag
fault-moving-day-right = eine Datei wird auch an anderen Tagen gelesen: den Tag selbst schreiben, etwa 2025-10-05
fault-far-day = „{ $written }“ liegt zu fern
fault-two-days = „{ $written }“ kann zwei Tage meinen
fault-either-day = { $one } oder { $other } schreiben
fault-every-year = „{ $written }“ ist ein Tag jedes Jahres
fault-every-year-right = auch das Jahr schreiben, etwa 2025-10-05

fault-hint = Rat: { $remedy }
