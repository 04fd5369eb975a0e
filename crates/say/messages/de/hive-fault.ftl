## Beuten, Räume und Stoffe einer Standdatei.

hive-fault-needs-kind = sagen, nach welchem Maß sie gebaut ist, etwa kind = "Langstroth 10"
hive-fault-no-kind = „{ $written }“ ist keine bekannte Art von Beute
hive-fault-or-own-sizes = { $instead }; oder "own" schreiben, mit den Maßen
hive-fault-stack = eine Beute aus { NUMBER($boxes) } Zargen kann nicht sein
hive-fault-stack-right = 1 bis { NUMBER($most) } Zargen von unten nennen, etwa ["deep", "deep"]
hive-fault-no-sizes = braucht Maße, da die Beute von eigener Art ist
hive-fault-box-right = eine nehmen von { LIST($known) }, oder die Maße ausschreiben
hive-fault-needs-size = jedes Maß einer eigenen Zarge ist nötig, etwa "450 mm"
hive-fault-needs-frames = sagen, wie viele Waben sie fasst
hive-fault-large-combs = hat Waben, die größer sind als die Zarge
hive-fault-large-combs-right = die Wabe innen im Rähmchen messen, die Zarge zwischen ihren Wänden
hive-fault-narrow = ist zu schmal für { NUMBER($frames) } Waben
hive-fault-narrow-right = eine Wabe mit ihrer Gasse braucht { LENGTH(0.032, unit: "no", us: 1) } bis { LENGTH(0.04, us: 1) } der Breite
hive-fault-needs-name = der Beute einen Namen oder eine Nummer geben, etwa name = "Alder"
hive-fault-shut = das Flugloch und alle Löcher sind zu: Bienen kommen weder zum Abkoten hinaus noch um ihre Toten hinauszutragen
hive-fault-shut-right = einen Weg offen lassen, entrance = "reduced" oder upper_hole = "25 mm"; ein Gitterboden lässt Luft hinein und keine Biene hinaus
hive-fault-needs-wall = sagen, was die Wände sind, etwa wall = "pine 19 mm"
hive-fault-no-cover = lässt die Beute ohne Abdeckung
hive-fault-no-cover-right = mindestens eine Lage nennen, etwa ["plywood 10 mm"]
hive-fault-facing = im Uhrzeigersinn von Norden, etwa "180 deg" oder "south"
hive-fault-needs-side = sagen, welche Seite dieser Beute sie berührt: front, back, left oder right
hive-fault-no-hive = eine Beute „{ $name }“ gibt es nicht
hive-fault-no-hive-right = eine Beute dieser Datei nennen
hive-fault-itself = eine Beute kann sich nicht selbst berühren
hive-fault-itself-right = eine andere Beute dieser Datei nennen
hive-fault-sheets = hat { NUMBER($sheets) } Lagen
hive-fault-sheets-right = höchstens { NUMBER($most) } Lagen nennen

hive-fault-materials = die Datei hat { NUMBER($materials) } Stoffe
hive-fault-materials-right = höchstens { NUMBER($most) }
hive-fault-needs-material-name = dem Stoff einen Namen geben
hive-fault-still-air = das { $least }- bis { $most }fache ruhender Luft

hive-fault-rooms = ist Raum { NUMBER($room) }
hive-fault-rooms-right = höchstens { NUMBER($most) } Räume
hive-fault-needs-room-name = dem Raum einen Namen geben, etwa name = "Cellar"
hive-fault-needs-warmth = schreiben, wie warm es darin ist, etwa temperature = "4 C"
hive-fault-warmth = zwischen -20 C und 25 C, etwa "4 C" oder "2 C to 6 C"
hive-fault-coldest-right = das Kälteste zuerst schreiben, { $limits }
hive-fault-no-record = steht ohne Aufzeichnung
hive-fault-no-record-right = auch die Datei nennen, etwa record = "cellar.csv"
hive-fault-out-early = { $out } liegt nicht nach dem Tag des Einstellens, { $enters }
hive-fault-out-early-right = einen Tag nach { $enters } schreiben
hive-fault-out-over = { $out } liegt nicht nach as_of, { $as-of }: dieser Winter ist vorbei
hive-fault-out-over-right = das Jahr berichtigen, oder in und out herausnehmen
hive-fault-in-late = { $enters } ist kein Tag des Winters, der auf as_of folgt, { $as-of }
hive-fault-in-late-right = das Jahr berichtigen
hive-fault-no-room-named = steht ohne Raum
hive-fault-no-room-named-right = ihn auch nennen, etwa indoors = "Cellar"
hive-fault-room-right = in einer Tabelle [[indoors]] mit name und temperature beschreiben, oder "none" schreiben
