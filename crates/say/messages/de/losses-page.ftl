## Die Seite „Verluste und Lehren“.

losses-page-heading = Verluste und Lehren
losses-page-kept = Aufbewahrt.
losses-page-on-its-way = Die Schätzung ist unterwegs; sie sagt, wann der Winter hier endet.
losses-page-wrong = { CAPITAL($wrong) }
losses-page-wrong-year = { $text }: bitte das Jahr des Herbstes schreiben, etwa 2025.
losses-page-wrong-count = { $text }: bitte eine Zahl von Völkern schreiben.

losses-page-lede = Winter { $winter }: { NUMBER($lost) } von { NUMBER($at-risk) } Völkern { $is-all-told ->
    [yes] verloren
   *[no] bisher verloren
}.
losses-page-counted = Gezählt vom { DAY($from) } bis zum { DAY($until) }, wenn hier der Winter vorbei ist. Verloren heißt: keine lebenden Bienen, oder zu klein für ein Volk; ein Königinnenproblem, das nicht zu beheben ist; ein Unglück. Schwach, aber lebend ist nicht verloren, und ein mit einem anderen vereinigtes Volk ist eines weniger gefährdet (COLOSS BEEBOOK 2013).
losses-page-each = Jedes Volk
losses-page-one = <strong>{ $colony }</strong>: { $says }.
losses-page-examine = Untersuchen
losses-page-cost = <span class="label">Kosten</span> { NUMBER($colonies) } { $currency } an Völkern, { NUMBER($food) } { $currency } an Futter, soweit notiert.
losses-page-worth = Was ein Volk wert ist
losses-page-unnamed = Verloren an das, was niemand benennt
losses-page-stands-on = Worauf das beruht

losses-page-lost = Verloren
losses-page-lost-of = { NUMBER($rate) } %: { NUMBER($dead) } tot oder leer, { NUMBER($queen-failed) } Königin ausgefallen, { NUMBER($disaster) } Unglück
losses-page-alive = Lebend
losses-page-alive-of = { NUMBER($alive) }
losses-page-alive-weak = { NUMBER($alive) }, davon { NUMBER($weak) } schwach
losses-page-luck = Zufall
losses-page-luck-of = Passt zu einer Jahresrate von { NUMBER($low) } bis { NUMBER($high) } % (exakt); { NUMBER($wilson-low) } bis { NUMBER($wilson-high) } % nach Wilson
losses-page-next = Nächster Winter
losses-page-next-of = { NUMBER($rate) } % ({ NUMBER($low) } bis { NUMBER($high) } %), zum üblichen Verlust von Ständen hin gezogen

losses-page-forecast = Vorhersage gegen das, was geschah
losses-page-not-yet = Noch nicht: gewertet wird, wenn der Winter vorbei und jedes Volk gemeldet ist, denn die zuerst sterben, sind keine faire Auswahl.
losses-page-none-scored = Keines der Völker lässt sich werten.
losses-page-compute = Berechnen, was am { DAY($on) } zu erwarten war
losses-page-seconds = (einige Sekunden)
losses-page-scored = Vorhergesagt, und was kam
losses-page-colony = Volk
losses-page-foretold = Vorhergesagt lebend, von 100
losses-page-foretold-of = { NUMBER($of-hundred) }
losses-page-came = Gekommen
losses-page-came-of = { $is-alive ->
    [yes] lebend
   *[no] tot
}
losses-page-model = Das heutige Modell, befragt für den Tag, an dem die Völker gezählt wurden. Unglücke und Völker, die weggingen, werden nicht gewertet; eine ausgefallene Königin zählt als lebend.
losses-page-log = Log-Wertung
losses-page-log-of = { NUMBER($score, digits: 2) }, Grundrate { NUMBER($base, digits: 2) }. Kleiner ist besser; stimmen die Aussichten, liegt sie zwischen { NUMBER($low, digits: 2) } und { NUMBER($high, digits: 2) }
losses-page-brier = Brier-Wertung
losses-page-brier-of = { NUMBER($score, digits: 2) }, Grundrate { NUMBER($base, digits: 2) }
losses-page-base = Grundrate
losses-page-base-of = { NUMBER($of-hundred) } von 100 lebend: { $source }

losses-page-winters = Winter nebeneinander
losses-page-winter = Winter
losses-page-food-given = Futter gegeben
losses-page-most-mites = Meiste Milben im Herbst
losses-page-treated = Behandelt
losses-page-treated-of = { NUMBER($times) }
losses-page-coldest = Kälteste notierte
losses-page-winter-lost = { NUMBER($lost) } von { NUMBER($at-risk) }
losses-page-winter-lost-so-far = { NUMBER($lost) } von { NUMBER($at-risk) }, { NUMBER($not-told) } nicht gemeldet
losses-page-food = { MASS($food, digits: 1, us: 0) }, { NUMBER($price) } { $currency }
losses-page-none-noted = nichts notiert
losses-page-mites = { NUMBER($found) } auf { NUMBER($bees) } Bienen, { $colony }, { DAY($on) }
losses-page-no-count = keine Zählung aufbewahrt
losses-page-cold = { TEMPERATURE($air) }, { DAY($on) }
losses-page-earlier = Als Völker früherer Winter gelten die, die darin notiert wurden: die Zählung des Herbstes selbst ist nur für den letzten aufbewahrt.

losses-page-others = Was andere verloren
losses-page-told = Wie Imker es Umfragen sagten, nicht wie ein Labor es fand
losses-page-rate = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) })
losses-page-who = Wer
losses-page-of-which = { $who }; { $of-which }
losses-page-read = Wo gelesen
losses-page-survey = Für die jährliche Umfrage
losses-page-survey-numbers = Die Zahlen, nach denen Verlustumfragen fragen, zum Abschreiben. Was die Aufzeichnungen nicht enthalten, bleibt offen.
losses-page-no-record = nicht in den Aufzeichnungen

losses-page-count = Die Völker zählen
losses-page-count-what = Ist der Winter vorbei, von jedem sagen, was es ist. Ein mit einem anderen vereinigtes Volk wird an seiner Beute notiert, als <code>united=NAME</code>.
losses-page-count-of = <strong>{ $colony }</strong>, { $fate }
losses-page-count-of-untold = <strong>{ $colony }</strong>
losses-page-as-noted = wie notiert
losses-page-is-alive = lebt, Königin legt
losses-page-is-weak = lebt, schwach
losses-page-is-queen-failed = Königin ausgefallen
losses-page-is-dead = tot
losses-page-is-disaster = Unglück
losses-page-is-sold = verkauft
losses-page-day = Tag, wenn nicht { DAY($today) }
losses-page-keep = Die Zählung aufbewahren
losses-page-came-or-went = Völker, die kamen oder gingen und nicht in den Aufzeichnungen stehen
losses-page-added = Seit dem Herbst gekauft oder durch Teilen dazu
losses-page-removed = Seither verkauft oder vereinigt
losses-page-count-too = Auch diese zählen
losses-page-not-kept = Sie ändern auf dieser Seite, was gefährdet war; aufbewahrt werden sie nicht.
losses-page-no-answer = { $colony }: { $text } ist keine der Antworten.
losses-page-not-counted = Kein Volk wurde gezählt; für mindestens eines eine Antwort wählen.

losses-page-club = Der Winter eines Vereins
losses-page-members = Ein Mitglied je Zeile: Name, verloren / Völker
losses-page-example = Anna 1/5
losses-page-pool = Zusammenrechnen
losses-page-too-many = Mehr als { NUMBER($most) } Mitglieder; im Terminal liest snowhum losses --club DATEI eine Liste jeder Länge.
losses-page-wrong-member = { $text }: bitte Name, verloren / Völker schreiben, etwa Anna 1/5.
losses-page-club-lost = { NUMBER($lost) } von { NUMBER($at-risk) } Völkern von { NUMBER($members) } Mitgliedern verloren: <strong>{ NUMBER($rate, digits: 1) } %</strong> insgesamt ({ NUMBER($low, digits: 1) } % bis { NUMBER($high, digits: 1) } %; { $method }).
losses-page-club-mean = Das Mittel der Raten der einzelnen Mitglieder ist { NUMBER($mean, digits: 1) } %.
losses-page-club-spread = Zwischen Mitgliedern streut es { NUMBER($times, digits: 1) }-mal so stark wie allein durch Zufall.
losses-page-club-ends = { NUMBER($without) } ohne Verlust, { NUMBER($lost-all) } verloren alles.
