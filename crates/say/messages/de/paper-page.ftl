## Die Seite „Auf Papier“, und ihre Blätter.

paper-page-heading = Auf Papier
paper-page-lede = Ein Blatt öffnen und drucken; jedes ist auch in Schwarzweiß vollständig.
paper-page-yard = Standblatt
paper-page-yard-what = Jedes Volk in der Reihenfolge des Gangs: ein Urteil, ein Tag, ein nächster Schritt.
paper-page-round = Rundgangsblatt
paper-page-round-what = Zeichen zum Einkreisen mit Bleistift und Handschuhen, daheim eingetippt.
paper-page-cards = Stockkarten
paper-page-cards-what = Eine für jedes Volk, mit einem Code, der seine Seite öffnet.
paper-page-treatments = Aufzeichnung der Behandlungen
paper-page-treatments-what = Was gegeben wurde, wie eine Kontrolle danach fragt.
paper-page-season = Saisonübersicht
paper-page-season-what = Jedes Volk vom Herbst an: was stand, was getan wurde, was die Schätzung sagte.
paper-page-terminal = Im Terminal schreibt <code>snowhum print --out FOLDER</code> sie alle als Dateien.
paper-page-no-estimate = Die Schätzung ist unterwegs; diese Seite drucken, sobald sie da ist.
paper-page-invented = Ein erfundener Stand.

paper-page-cut = Auseinanderschneiden, laminieren und innen am Deckel oder am Bock anheften.
paper-page-here-alone = Diese Seite ist auf dem Rechner geöffnet, der sie liefert, also führen diese Codes von einem Telefon aus nirgendwohin. Die Seiten am Stand bereitstellen und die Karten von der Adresse drucken, die das Telefon verwendet.
paper-page-code = Die Seite von { $hive }
paper-page-card-invented = { $yard } (erfunden)
paper-page-boxes = { $kind }, Zargen: { NUMBER($boxes) }
paper-page-registration = Registriernummer { $number }
paper-page-queen = Königin: { $year }  Gezeichnet: ______

paper-page-yard-line = Bis: der letzte Tag des nächsten Schritts. Luft ______  Schnee ______  Wind ______  begangen am ____________
paper-page-yard-heading = { $yard }, { DAY($on, style: "full") }
paper-page-hive = Volk
paper-page-verdict = Urteil
paper-page-by = Bis
paper-page-next = Als Nächstes
paper-page-done = Getan
paper-page-see-flight = sehen, ob es fliegt
paper-page-listen-indoors = horchen, die Toten herausharken, das Thermometer des Raums ablesen
paper-page-listen = horchen und die Toten davor zählen

paper-page-season-heading = { $yard }: die Saison
paper-page-season-days = Vom { DAY($from, style: "full") } bis zum { DAY($until, style: "full") }.
paper-page-autumn = Im Herbst
paper-page-stood = etwa { $bees } Bienen auf { NUMBER($frames) } Waben; Futter { $food }, { $known }; Milben { $mites }; Königin { $queen }.
paper-page-visits = Notierte Besuche
paper-page-fed = Gefüttert
paper-page-treated = Behandelt
paper-page-nothing = Nichts notiert.
paper-page-given = { MASS($food, digits: 1, us: 0) } { $what }.
paper-page-treatment = { DAY($on, style: "marked") }: { $class }.
paper-page-months = Was die Schätzung nach dem letzten Besuch jedes Monats sagte
paper-page-after = Nach
paper-page-alive = Von 100 solchen Völkern lebend
paper-page-food = Futter, falls am Leben
paper-page-mass = { MASS($food, digits: 1, us: 0) }
