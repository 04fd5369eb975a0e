## Die Verluste eines Winters.

losses-price = Preis eines Volkes
losses-season = Wert einer Saison
losses-colonies = Völker
losses-none-at-risk = { NUMBER($all) } Völker, davon { NUMBER($removed) } verkauft oder vereinigt: es bleibt keines gefährdet
losses-more-than-at-risk = { NUMBER($lost) } verloren und { NUMBER($weak) } schwach sind mehr als die { NUMBER($at_risk) } gefährdeten Völker
losses-winter-cannot-be = ein Winter mit { NUMBER($lost) } Verlusten von { NUMBER($at_risk) } Völkern kann nicht sein
losses-no-member = kein Mitglied ist angegeben
losses-member-cannot-be = { $name }: { NUMBER($lost) } Verluste von { NUMBER($colonies) } Völkern können nicht sein
losses-too-many = mehr Völker, als es gibt

losses-quasi-binomial = quasi-binomial, Dispersion nicht unter 1
losses-exact-binomial = exakt binomial

losses-luck = Zum Zufall allein passt jede Jahresrate von { NUMBER($low) } bis { NUMBER($high) } %.
losses-luck-of-few = Bei { $hives ->
    [one] 1 Volk
   *[other] { NUMBER($hives) } Völkern
} { $lost ->
    [0] beweist das Ausbleiben von Verlusten keine Methode
    [one] sagt ein Verlust fast nichts über die eigene Methode
   *[other] sagen { NUMBER($lost) } Verluste wenig über die eigene Methode
}: zum Zufall allein passt jede Jahresrate von { NUMBER($low) } bis { NUMBER($high) } %.
losses-exact = Jedes Volk wurde gezählt, die Rate ist also für diesen Stand und diesen Winter exakt; Spannen sprechen vom Zufall, nicht von einer Stichprobe.
losses-two-rates = Gesamtrate und mittlere Rate unterscheiden sich: im Mittel wiegen kleine Stände so viel wie große, und sie verlieren öfter alles oder nichts.
losses-who-answers = Wer antwortet, ist selten die ganze Mitgliedschaft: wer Verluste hat, oder keine, schweigt vielleicht.
losses-few-members = Bei so wenigen Mitgliedern ist die Spanne mit gutem Grund weit.

losses-definition = Verloren: keine lebenden Bienen, oder zu klein für ein Volk; oder ein Königinnenproblem, das nicht zu beheben ist; oder durch ein Unglück genommen. Schwach, aber lebend ist nicht verloren; mit einem anderen vereinigt ist eines weniger gefährdet, kein Verlust.

losses-sources-rates = Falldefinitionen und Raten: van der Zee et al. 2013, J. Apic. Res. 52(4), COLOSS BEEBOOK, Umfragemethoden 2.3 und 10.3.2; ein Bienenstand ist eine Vollerhebung: vanEngelsdorp et al. 2013
losses-sources-usual = übliche Rate 20 %: COLOSS 12,0 % (2015/16), 20,9 % (2016/17), 16,7 % (2018/19); Kanada 27 % (Mittel 2007 bis 2022, CAPA); ihr Gewicht von 20 Völkern: Einschätzung
losses-sources-intervals = Intervalle: Clopper und Pearson 1934, Wilson 1927, quasi-binomiales Logit

losses-any-yard = Von 100 Völkern, gut gefüttert und mit wenigen Milben, gehen in einem mittleren Winter { $any } an einem Stand wie jedem anderen verloren (Chance 8 von 10); von den eigenen Wintern ist noch keiner gemeldet.
losses-own-yard = Von 100 Völkern, gut gefüttert und mit wenigen Milben, gehen in einem mittleren Winter { $any } an einem Stand wie jedem anderen verloren (Chance 8 von 10); nach { $winters ->
    [one] dem eigenen Winter
   *[other] den { NUMBER($winters) } eigenen Wintern
} ({ NUMBER($lost) } von { NUMBER($at_risk) } so verloren) am eigenen { $own }.
losses-doubt-left = Damit bleiben { NUMBER($percent) } % des Zweifels: Völker eines Standes teilen sein Glück und seine Winter, mehr Winter sagen also mehr als mehr Völker; und eine Zahl sagt nie, warum sie starben.
losses-no-cause = Für { NUMBER($not_told) } der { NUMBER($lost) } nennt die Aufzeichnung keine Ursache: Milben oder Hunger können dahinterstehen, doch hier zählen sie mit.
losses-between = { $least } bis { $most }
losses-in-100 = { $is_small ->
    [yes] { NUMBER($hives, digits: 1) }
   *[no] { NUMBER($hives) }
}

losses-sources-unnamed = verloren an das, was niemand benennt: { $source } ({ $status })
losses-sources-by-year = seine Streuung zwischen Jahren: { $source } ({ $status })
losses-sources-by-yard = seine Streuung zwischen Ständen: { $source } ({ $status })
losses-sources-left-out = nicht berücksichtigt: Größen der Völker (die Zahlen gelten für eines mit 18.000 Bienen), und dass sich Jahre für benachbarte Stände gleich unterscheiden
