## Zucker für einen Mangel.

feed-short = fehlende Vorräte (kg)
feed-feeder = was das Futtergeschirr fasst (L)
feed-slab = Dicke des Fladens (mm)

feed-syrup-too-late = Der Tag für Sirup ist vorbei: die Bienen können ihn nicht mehr eindicken. Futterwaben geben, sonst festes Futter.
feed-syrup-autumn = Der Sirup muss bis zu seinem Tag fertig sein, nicht begonnen. Kein 1:1 im Herbst: die Bienen müssten dreimal so viel Wasser verdunsten wie bei 2:1.
feed-syrup-winter = Kein Sirup im Winter: Bienen in der Traube erreichen ihn nicht und dicken ihn nicht ein, und er kühlt sie aus.
feed-syrup-spring = Sirup erst, wenn die Tage über 10 °C (50 °F) bleiben; 1:1 wird wie eine Tracht aufgenommen, also nicht mehr füttern, als fehlt.

feed-which-stores = Worauf ein Volk überwintert, zählt: Zucker und die meisten Honige halten; Honigtau und Heide bringen monatelang eingesperrte Bienen zum Abkoten in der Beute; Efeu und Raps werden hart, und Bienen verhungern daneben aus Wassermangel. Zucker zuletzt füttern, damit er zuerst gefressen wird.
feed-frames-first = Eine Wabe mit verdeckeltem Futter aus einem schweren, gesunden Volk desselben Standes kommt zuerst, wo es eine gibt.
feed-over-the-cluster = Festes Futter liegt direkt über der Traube; den Bienen einen Weg darum lassen.
feed-fondant-alone = Futterteig kann die ganze Herbstfütterung sein, wie viele in Großbritannien es halten: ein Block von { MASS(12.5, digits: 1) } reicht einem Volk vier bis fünf Wochen, aufgelegt, solange die Tage mild sind.
feed-no-pollen = Pollen oder Eiweiß im Futter bringt früh Brut, die warm gehalten und gefüttert werden muss: reiner Zucker, bis die Bienen Pollen eintragen. Manche mischen es trotzdem bei; dann darf es nicht ausgehen.
feed-dry-sugar = Trockener Zucker wird nur genommen, wo Feuchte ihn erreicht: auf Papier über den Oberträgern, angefeuchtet, ein Weg frei gelassen.

feed-rule-asks = das Modell verlangt insgesamt { MASS($need) }, die Regel ({ $region }) { MASS($low) } bis { MASS($high) }.
feed-rule-eaten = Die Hälfte solcher Völker hier frisst { MASS($eaten) } bis zum { DAY($by) }; der Rest ist für den hungrigsten von zehn Wintern, und { MASS($left) } bleiben übrig.
feed-rule-now = So weit auseinander ist keines sicher: { $fed ->
    [yes] jetzt nach der Regel füttern, { MASS($first) } Vorräte mehr
   *[no] es hat, was die Regel verlangt
}, mitten im Winter wiegen und { MASS($later) } Futterteig bereithalten

feed-sources-stores = Vorräte aus Zucker: { $source }
feed-sources-densities = Dichten von Sirup: aus der Erinnerung an Tafeln zu Saccharose bei { TEMPERATURE(20) }
feed-sources-poured = geschütteter Zucker { NUMBER($density, digits: "all") } kg/L: { $source }
feed-sources-frame = eine volle Wabe: 0,30 (Schwedischer Imkerverband) bis 0,35 kg/dm² (Wiki der Bienen-Zeitung)
feed-sources-candy = Zuckertafeln können bei strenger Kälte Herbstvorräte nicht ersetzen: University of Minnesota

feed-solid-dry = trockener Zucker auf Papier
feed-solid-damp = feuchter, fest gewordener Zucker
feed-solid-cooked = gekochte Zuckertafel
feed-solid-fondant = gekaufter Futterteig
