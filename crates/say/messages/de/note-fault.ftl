## Notizen, die nicht zu lesen sind oder zu denen gefragt wird.

note-fault-too-long = die Notiz ist viel zu lang
note-fault-or-words = { $examples }; was keine Rechnung liest, ist „words={ $written }“
note-fault-examples = schreiben wie { LIST($examples) }
note-fault-nothing = „{ $what }“ lässt sich nicht notieren
note-fault-no-dead = „{ $written }“ ist keine Zahl toter Bienen
note-fault-dead-right = eine Zahl schreiben, „none“, eine Spanne wie „6-20“ oder „over 100“
note-fault-no-seams = „{ $written }“ ist keine Zahl von Wabengassen
note-fault-seams-right = eine Zahl von 0 bis 30 schreiben
note-fault-inside-right = eine Temperatur von -60 C bis 60 C schreiben
note-fault-snow-right = seine Höhe über dem Boden an der Beute schreiben, 0 cm bis 500 cm, etwa „snow=45 cm“
note-fault-no-bees = keine Bienen unter dem Deckel sagt wenig
note-fault-no-bees-right = weglassen, oder „colony=dead“ schreiben, wenn das Volk tot ist

note-fault-no-colony = kein Volk heißt „{ $name }“
note-fault-no-colony-right = den Namen eines Volkes dieses Standes schreiben
note-fault-no-feed = „{ $written }“ sagt nicht, was gefüttert wurde
note-fault-feed-right = am Ende eines von { LIST($kinds) }, etwa „fed=5 kg fondant“
note-fault-no-giver = „{ $written }“ nennt keinen Spender
note-fault-giver-right = schreiben wie „frames=3.6 kg from Alder“
note-fault-no-room = einen Raum „{ $room }“ gibt es nicht
note-fault-no-room-right = in der Standdatei beschreiben: [[indoors]] mit name = "{ $room }" und temperature = "4 C"
note-fault-no-place = „{ $written }“ sagt nicht, wohin
note-fault-carried-right = den Raum der Standdatei schreiben, etwa „carried=into Cellar“, oder „carried=out“
note-fault-no-mites = „{ $written }“ ist keine Milbenzählung
note-fault-mites-right = Milben und Bienen der Probe schreiben, bis { NUMBER($most) }, etwa „mites=14 of 300“
note-fault-signs = { NUMBER($signs) } Zeichen sind genannt
note-fault-no-sign = „{ $written }“ ist kein Zeichen mit seinem Befund
note-fault-signs-right = Zeichen schreiben mit yes, fairly yes, fairly no oder no, etwa „small-cluster yes, no-food no“
note-fault-no-cause = „{ $written }“ ist keine Ursache mit ihrer Wahrscheinlichkeit
note-fault-cause-right = „likeliest mites 71“ schreiben

note-fault-no-sides = „{ $written }“ sind nicht zwei Seiten
note-fault-sides-right = beide mit ihrer Einheit schreiben, etwa „lift=42 kg, 38 kg inset 10 %“
note-fault-inset = die Beute stünde auf ihrer Mitte
note-fault-inset-right = einen Abstand von höchstens 40 % ihrer Breite schreiben
note-fault-mass-right = eine Masse von 0 bis { MASS($most) } schreiben
note-fault-air = so kann die Luft nicht sein
note-fault-air-right = von { TEMPERATURE($least) } bis { TEMPERATURE($most) } lässt sich notieren
note-fault-wind = so kann der Wind nicht sein
note-fault-wind-right = bis { SPEED($most) } lässt sich notieren

note-fault-no-colon = „{ $written }“ hat kein „:“
note-fault-treated-right = schreiben wie „treated=oxalic | product: … | withdrawal: nil“
note-fault-detail-empty = „{ $detail }“ ist leer
note-fault-detail-empty-right = schreiben oder weglassen: dann ist es nicht notiert
note-fault-detail-long = „{ $detail }“ ist zu lang
note-fault-detail-marks = „{ $detail }“ enthält „|“, „;“ oder ein Zeilenende
note-fault-detail-marks-right = stattdessen ein Komma schreiben
note-fault-detail-twice = „{ $detail }“ ist zweimal angegeben

note-fault-no-upper-hole = seine Beute hat kein oberes Flugloch
note-fault-no-upper-hole-right = wurde eines gemacht, das zuerst notieren, etwa „changed=upper hole=25 mm“; das Flugloch ist „entrance=...“

note-fault-ahead = { $at } kommt erst noch; eine Zeit bis jetzt schreiben
note-fault-twice = dasselbe steht schon notiert, um { $at }
note-fault-before-count = { $on } liegt vor der Zählung der Völker, { $counted }: es ist Vergangenheit, und die Antworten dieses Winters achten nicht darauf
