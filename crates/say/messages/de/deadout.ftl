## Ein totes Volk untersucht: die wahrscheinlichsten Ursachen, wo als Nächstes hinsehen, was noch zu verwenden ist.

deadout-sure = Am wahrscheinlichsten { $first }
deadout-unsure = Am wahrscheinlichsten { $first }, dann { $second }; über die Reihenfolge lässt sich nicht sicher sein
deadout-only = { CAPITAL($cause) }
deadout-look = { $ask } Ein Ja deutet auf { $yes }, ein Nein auf { $no }.

deadout-mites = { NUMBER($mites) } { $mites ->
    [one] Milbe
   *[other] Milben
} auf { NUMBER($bees) } Bienen am { DAY($on) }
deadout-seen-dead = am { DAY($on) } tot gesehen
deadout-seen-living = am { DAY($on) } lebend gesehen
deadout-light = am { DAY($on) } bei der Hebeprobe leicht
deadout-stores = { MASS($stores, digits: 1) } Vorräte; die Regel hier verlangt { MASS($asked) }
deadout-stores-range = { MASS($stores, digits: 1) } Vorräte; die Regel hier verlangt { MASS($least, unit: "no") } bis { MASS($most) }
deadout-strength = { NUMBER($own) } Bienen im Herbst; das mittlere Volk am Stand hatte { NUMBER($middle) }
deadout-queen-dead = am { DAY($on) } eine tote Königin
deadout-queen-late = spät in der Saison begattet
deadout-queen-old = eine Königin von { NUMBER($year) }
deadout-wings = am { DAY($on) } verkrüppelte Flügel
deadout-mouse = am { DAY($on) } eine Maus oder ihre Spuren

deadout-nothing-told = Noch ist kein Zeichen genannt: das hier ist nur, was tote Völker kleiner Imkereien im Norden meist sind.
deadout-food-twice = Kein Futter irgendwo und Futter nahe der Traube geht nicht beides: noch einmal nachsehen.
deadout-chain = Milben im Herbst lassen eine kleine Traube zurück, die dann in der Kälte oder neben ihrem Futter stirbt: beides kann stimmen, und abzustellen ist, womit es begann.
deadout-close = Die Beute heute schließen, damit sie nicht ausgeraubt wird.

deadout-brood-first = erst, wenn die Brut angesehen ist: { $what }
deadout-rules = { LIST($rules, between: "; ", alike: "once") }
deadout-comb-stays = nein: nichts verlässt die Beute, bis der Amtstierarzt es gesehen hat
deadout-stores-stay = nein: nicht an Bienen
deadout-people = Nicht zum Verkauf und nicht für Menschen: Honig aus Bruträumen, die gefüttert oder behandelt wurden.

deadout-sources-foulbrood = Zeichen von Faulbrut: sicher, wenn gesehen, oft übersehen (Milbrath); Sporen leben Jahrzehnte
deadout-sources-signs = welches Zeichen zu welcher Ursache gehört: Milbrath 2016 (Michigan State University Extension), Caron 2018 (Bee Culture)
deadout-sources-counts = wie oft: Einschätzung, jede Tabelle 10 Völker wert; die Spannen sind, was es sein könnte, wenn andere sie ausgefüllt hätten
deadout-contradiction = diese Zeichen widersprechen einander; noch einmal nachsehen

deadout-stop-why = Das kann Amerikanische oder Europäische Faulbrut sein, die sich mit Waben, Honig, Werkzeug und räubernden Bienen ausbreitet. Sporen leben Jahrzehnte.
deadout-stop-do = Die Beute so schließen, dass keine Biene hineinkommt. Nichts bewegen, nichts verleihen, Hände und Werkzeug waschen. Den Amtstierarzt oder die Behörde rufen: vielerorts verlangt das Gesetz das sofort.
deadout-stop-first = Vor allem anderen die Brut ansehen: Deckel eingesunken, fettig oder löchrig, Larven, die Fäden ziehen, Geruch nach Leim, schwarzer Schorf, der an der unteren Zellwand klebt. Eines davon: halt.
deadout-stop-clean = Keines der vier zu sehen, spricht die Brut nicht frei: solche Zeichen sind sicher, wenn sie zu sehen sind, und werden oft übersehen.
