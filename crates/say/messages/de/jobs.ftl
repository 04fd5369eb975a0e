## Arbeiten und Termine: was an einem Stand im Jahr ansteht, und wann.

jobs-note-usual-year = Die Tage gelten für ein übliches Jahr hier, nicht für dieses: auch den Himmel und die kommenden Tage ansehen.
jobs-note-not-counted = Für diese Saison ist noch kein Volk gezählt: Brut und Hunger beruhen allein auf Regeln der Imkerei.
jobs-hive = { $hive }: { $verdict }: { $says }
jobs-hive-then = { $hive }: { $says }
jobs-sentence = { SENTENCE($of) }

jobs-due-now = jetzt fällig
jobs-due-soon = binnen eines Monats
jobs-due-later = später
jobs-due-past = vorbei

jobs-when = { LIST($parts, between: "; ") }
jobs-when-safe = bis zum { DAY($safe) }, um sicher zu sein
jobs-when-half = der { DAY($half) } reicht in der Hälfte aller Jahre
jobs-when-from = etwa ab dem { DAY($on) }
jobs-when-from-until = etwa ab dem { DAY($on) }, bis etwa zum { DAY($until) }
jobs-when-about = um den { DAY($on) }
jobs-when-about-until = um den { DAY($on) }, bis etwa zum { DAY($until) }
jobs-when-between = in 8 von 10 Wintern zwischen dem { DAY($earliest) } und dem { DAY($latest) }
jobs-when-before = in 1 von 10 Wintern vor dem { DAY($earliest) }
jobs-when-seldom = kommt nur in { $winters }
jobs-when-never = kommt hier in { $winters }
jobs-winters-none = keinem der gezogenen Winter
jobs-winters-fewest = weniger als 1 von 10 Wintern
jobs-winters = { $tenths ->
    [one] 1 von 10 Wintern
   *[other] { NUMBER($tenths) } von 10 Wintern
}

jobs-mite-count-summer = Milben zählen, alle Völker
jobs-mite-count-summer-waits = { NUMBER($days) } Tage vor der Behandlung, die die Winterbienen schützt.
jobs-mite-count-summer-why = Eine Zählung sagt jetzt, ob der Honig noch bleiben kann. Ein Mittel über den Stand verdeckt das schlimmste Volk.
jobs-mite-count-summer-missed = Trotzdem zählen: es zeigt noch, welche Völker zu behandeln sind.

jobs-winter-bees-waits = { NUMBER($days) } Tage, bevor das Mittel von zwei Wochen unter { TEMPERATURE($air) } fällt und nur noch wenig Brut angelegt wird; oder Tage kürzer als { NUMBER($hours) } Stunden, falls das eher kommt.
jobs-honey-off = Honig abnehmen
jobs-honey-off-why = Honigräume stehen den meisten Behandlungen und dem Winterfutter im Weg; der frühere der beiden Tage entscheidet hier.
jobs-honey-off-others = Wo die Haupttracht später endet, aus Linde, Goldrute oder Heide, kommt der Honig ab, wenn sie endet, und die Behandlung folgt in derselben Woche: jede Woche später wachsen mehr Winterbienen unter Milben heran. Wo sie früher endet, endet auch das Warten.
jobs-honey-off-missed = Jetzt abnehmen: Behandlung und Futter warten beide darauf.

jobs-treat-mites = Milbenbehandlung begonnen
jobs-treat-mites-why = Bienen, die ab jetzt aufgezogen werden, müssen bis ins Frühjahr leben. Eine spätere Behandlung schützt die Nachbarn und das nächste Jahr, aber nicht die schon geschädigten Bienen.
jobs-treat-mites-belief = Im November behandeln genügt.
jobs-treat-mites-so = Bis dahin sind die Winterbienen aufgezogen, geschädigt oder nicht; die Behandlung ohne Brut folgt auf diese und ersetzt sie nicht.
jobs-treat-mites-missed = Auch spät schützt sie noch die Nachbarn und die Bienen des nächsten Jahres, nicht die schon geschädigten. Die Behandlung ohne Brut kommt dazu.

jobs-mite-count-autumn = Milben noch einmal zählen
jobs-mite-count-autumn-waits = Wenn die wärmsten Stunden von zwei Wochen im Mittel unter { TEMPERATURE($air) } bleiben und die Bienen kaum noch Sirup nehmen.
jobs-mite-count-autumn-why = Räuber bringen Milben aus sterbenden Völkern heim. Nach diesem Tag werden Beuten nicht mehr für eine Probe geöffnet.
jobs-mite-count-autumn-missed = Die Beuten jetzt zulassen; eine Windel unter dem Gitterboden zeigt noch, was fällt.

jobs-feeding-waits = { NUMBER($days) } Tage Fütterung, bevor der Sirup fertig sein muss.
jobs-feed-begun = Einfüttern beginnen
jobs-feed-begun-why = Der Sirup muss rechtzeitig fertig sein, nicht rechtzeitig begonnen; großer Mangel in kleinem Futtergeschirr dauert Wochen.
jobs-feed-begun-missed = Heute beginnen, wenn es bis zum Tag für Sirup noch fertig wird; sonst festes Futter über die Bienen geben.
jobs-entrance-reduced = Fluglöcher einengen
jobs-entrance-reduced-why = Futter lockt Räuber und Wespen; Ableger und schwache Völker zuerst.
jobs-entrance-reduced-missed = Lohnt noch, von außen und in einer Minute.

jobs-syrup-finished = Sirup fertig und verdeckelt
jobs-syrup-finished-waits = { NUMBER($days) } Tage, bevor die wärmsten Stunden von zwei Wochen im Mittel unter { TEMPERATURE($air) } bleiben und die Bienen kaum noch Sirup nehmen.
jobs-syrup-finished-why = Dünnes Futter, das nicht eingedickt und verdeckelt ist, gärt. Futtergeschirr und leere Honigräume kommen mit ab.
jobs-syrup-finished-others = Manche geben Futterteig als Hauptfutter im Herbst: er wird eher gefressen als eingelagert und kann später noch aufgelegt werden.
jobs-syrup-finished-custom = { SENTENCE($custom) }
jobs-syrup-finished-belief = Sirup im Januar hilft.
jobs-syrup-finished-so = Bienen in der Traube nehmen ihn nicht und dicken ihn nicht ein, und Nässe kühlt sie aus. Zu spät für Sirup heißt Futterteig, Zuckertafel oder Futterwaben.
jobs-syrup-finished-missed = Den Rest abnehmen und festes Futter über die Bienen geben, oder Futterwaben aus einem gesunden Volk des Standes.

jobs-excluder-out = Absperrgitter herausnehmen
jobs-excluder-out-waits = Das Mittel einer Woche fällt unter { TEMPERATURE($air) }: die Bienen bilden die Traube.
jobs-excluder-out-why = Die Traube wandert im Winter nach oben; eine Königin, die unter dem Absperrgitter zurückbleibt, stirbt dort.
jobs-excluder-out-missed = Am nächsten windstillen, milden Tag herausnehmen, ohne eine Wabe zu heben: eine Königin, die darunter zurückbleibt, stirbt.

jobs-combs-waits = Die wärmsten Stunden einer Woche fallen im Mittel unter { TEMPERATURE($air) }.
jobs-consolidate = Raum den Bienen anpassen
jobs-consolidate-why = Der letzte Tag, um Waben zu ziehen: so viele Zargen, wie die Bienen füllen, Futter über und neben ihnen. Eine leere Zarge über der Traube ist ein kalter Dachboden.
jobs-consolidate-others = Wie viele Zargen, darin gehen die Meinungen auseinander: in Großbritannien wird der Raum auf die Bienen eingeengt; Minnesota wintert in drei großen Zargen.
jobs-consolidate-missed = Zu kalt für Waben: die Zargen lassen, wie sie sind, und für Deckel und Futter über den Bienen sorgen.
jobs-top-and-straps = Oben dämmen, neigen, gurten
jobs-top-and-straps-why = Mit Dämmung auf dem Deckel bildet sich über der Traube kein Wasser; bei einer Neigung nach vorn läuft es ab; Gurte halten in Winterstürmen und auf Boden, den der Frost hebt.
jobs-top-and-straps-missed = Spät geht auch noch: Deckel, Neigung und Gurte sind an jedem windstillen Tag in einer Minute getan.

jobs-bear-fence-on = Bärenzaun an, wo nötig
jobs-bear-fence-on-waits = Die erste Frostnacht; Bären fressen vor dem Winter am meisten.
jobs-bear-fence-on-why = Ein Bär, der einmal gefressen hat, kommt wieder. Den Zaun mit einem Messgerät prüfen.
jobs-bear-fence-on-missed = Lohnt noch, bis Schnee liegt, und wieder vor dem Tauen.

jobs-mouse-guard = Mäusegitter anbringen
jobs-mouse-guard-waits = { NUMBER($nights) } Frostnächte in zwei Wochen: Mäuse kommen herein.
jobs-mouse-guard-why = Bevor die Maus drin ist; erst nachsehen, dass keine da ist. Ein Schlitz von { LENGTH(0.008, us: 2) } oder weniger, und so breit, dass er nicht verstopft.
jobs-mouse-guard-others = In Finnland kommen die Gitter an, wenn die Tage unter { TEMPERATURE($air) } bleiben.
jobs-mouse-guard-others-about = In Finnland kommen die Gitter an, wenn die Tage unter { TEMPERATURE($air) } bleiben, hier um den { DAY($on) }, damit kein Pollen abgestreift wird.
jobs-mouse-guard-missed = Erst nachsehen, dass keine Maus drin ist, dann anbringen: ein Gitter sperrt eine Maus ebenso ein wie aus.

jobs-wrap = Beuten einpacken
jobs-fortnight-falls = Das Mittel von zwei Wochen fällt unter { TEMPERATURE($air) }.
jobs-wrap-why = Zu früh eingepackt, bleiben die Bienen warm und brüten lange. Der Deckel zählt mehr als die Seiten. Eine Hülle oder ein Netz mit Abstand zur Wand hält auch Spechte ab.
jobs-wrap-others = In Manitoba wartet das Einpacken auf Nächte von { TEMPERATURE($night) } und Tage unter dem Gefrierpunkt; viele Beuten werden nie eingepackt.
jobs-wrap-missed = Spät geht auch noch: an jedem windstillen Tag, ohne zu klopfen.

jobs-winter-yard = An den Winterstand wandern
jobs-winter-yard-waits = Zwei Wochen ohne eine Stunde von { TEMPERATURE($air) }.
jobs-winter-yard-why = Bienen, die nicht mehr fliegen, kehren nicht an den alten Platz zurück. Später, bei hartem Frost, bricht ein Stoß die Traube auf.
jobs-winter-yard-missed = Bei hartem Frost stehen lassen: ein Stoß bricht die Traube auf.

jobs-cellar-in = In den Keller, wo üblich
jobs-cellar-in-room = Hinein: { $room }
jobs-cellar-in-why = Kalt genug, um in der Traube zu bleiben, und dunkel; nach dem letzten guten Flug, wenn sich wählen lässt.
jobs-cellar-in-dark = Wo der Raum dunkel und belüftet ist, kommen sie hinein und werden in Ruhe gelassen.
jobs-cellar-in-missed = An einem ruhigen kalten Tag lassen sie sich noch ohne Stoß hineintragen; sonst draußen lassen.
jobs-own-day = Der Tag der eigenen Standdatei.
jobs-by-weather = Nach dem Wetter allein: { $when }.

jobs-broodless = Brutfrei: Winterbehandlung
jobs-broodless-waits = { NUMBER($days) } Tage nach der ersten Nacht unter { TEMPERATURE($night) }.
jobs-broodless-waits-model = Kein Volk hat nach dem Modell noch { NUMBER($cells) } Brutzellen, und { NUMBER($days) } Tage nach der ersten Nacht unter { TEMPERATURE($night) }.
jobs-broodless-why = Manche Behandlungen erreichen nur Milben auf Bienen: mit Brut ein Viertel bis zwei Fünftel von ihnen, ohne Brut fast alle. Erst sicher sein, dass keine Brut da ist; einen Stand gemeinsam behandeln. Geträufelt wird einmal im Winter: ein zweites Mal schadet den Bienen.
jobs-broodless-belief = Eine Behandlung mit Oxalsäure richtet alles, mit Brut oder ohne.
jobs-broodless-so = Milben unter Zelldeckeln erreicht sie nicht.
jobs-broodless-missed = Ist wieder Brut da, erreicht sie weniger Milben: im Etikett nachlesen und zählen, sobald die Beuten offen sind.

jobs-midwinter-weighing = Wiegen im Winter
jobs-midwinter-weighing-waits = { NUMBER($days) } Tage, bevor wieder Brut da ist.
jobs-midwinter-weighing-why = Ein Monat ohne Brut kostet etwa { MASS(1) }, ein Monat mit Brut { MASS(3) }. Kurz davor gewogen, bleibt Zeit, festes Futter über die Traube zu geben.
jobs-midwinter-weighing-missed = Trotzdem am nächsten windstillen Tag anheben: das meiste Futter wird erst von jetzt an gefressen.

jobs-brood-begins = Brut beginnt
jobs-brood-begins-waits = Eine Handbreit Brut, nach dem Modell.
jobs-brood-begins-why = Von jetzt an wird das Nest Tag und Nacht warm gehalten, und ein Volk frisst zwei- bis dreimal so viel.

jobs-starvation-watch = Hebeprobe alle { NUMBER($days) } Tage
jobs-starvation-watch-waits = Von der ersten Brut bis zur ersten Tracht.
jobs-starvation-watch-why = Die meisten hungernden Völker sterben mit Brut im Frühjahr, nicht im kältesten Monat.
jobs-starvation-watch-flowers = In einem von zehn Wintern blüht vor dem { DAY($on) } nichts.
jobs-starvation-watch-belief = Die Gefahr endet im Februar.
jobs-starvation-watch-so = Sie beginnt dann: Brut, kalte Nächte und noch keine Blüten. Das meiste Futter wird in den letzten Wochen gefressen.

jobs-food-runs-out = Futter kann ausgehen
jobs-food-runs-out-waits = Das erreichbare Futter ist im Modell der eigenen Völker zu Ende.
jobs-food-runs-out-hive = { $hive }: Futter { $lasts }
jobs-food-runs-out-why = { LIST($hives, between: "; ") }.

jobs-clean-floor = Erster Flug, Böden säubern
jobs-clean-floor-waits = Die erste windstille, trockene Stunde von { TEMPERATURE($air) } nach der Wintermitte.
jobs-clean-floor-why = Die Toten eines Winters auf dem Boden verstopfen das Flugloch und schimmeln. Völker, die nicht fliegen, werden zuerst geöffnet.
jobs-clean-floor-missed = Lohnt noch am nächsten Flugtag.

jobs-melt-check = Tauwasser, schiefe Beuten
jobs-melt-check-waits = Der Schnee des Winters ist auf { NUMBER($percent) } % seiner größten Höhe gesunken.
jobs-melt-check-why = Wasser am Boden, Eis vor dem Flugloch, ein Bock, der auf einer Seite eingesunken ist.
jobs-melt-check-missed = Ein Blick kommt nie zu spät: Wasser auf dem Boden, ein schiefer Bock.

jobs-bear-fence-thaw = Bärenzaun wieder an
jobs-bear-fence-thaw-waits = Das Mittel von zwei Wochen bleibt über { TEMPERATURE($air) }.
jobs-bear-fence-thaw-why = Bären erwachen hungrig, und Beuten riechen nach Brut.
jobs-bear-fence-thaw-missed = Heute einschalten: die Bären sind unterwegs.

jobs-cellar-out = Aus dem Keller, wo üblich
jobs-cellar-out-room = Heraus: { $room }
jobs-cellar-out-waits = Das Mittel von zwei Wochen erreicht { TEMPERATURE($air) }.
jobs-cellar-out-why = Am Abend vor einem Flugtag, jedes an seinen alten Platz.
jobs-cellar-out-dark = So spät, wie der Raum kalt bleibt, so früh, wie Pollen kommt.
jobs-cellar-out-missed = Am Abend vor dem nächsten Flugtag hinaustragen.

jobs-first-look = Erster Blick auf die Waben
jobs-first-look-waits = Die erste windstille, trockene Stunde von { TEMPERATURE($air) }, sobald die Tage { NUMBER($hours) } Stunden lang sind.
jobs-first-look-why = Nur Minuten, und Waben nur so weit wie nötig: Futter, Eier oder Brut, Platz.
jobs-first-look-others = Manche sehen erst ab { TEMPERATURE($full) } nach; niemand hebt Brutwaben unter { TEMPERATURE($least) }.
jobs-first-look-missed = Trotzdem am nächsten windstillen, warmen Tag: Futter, Eier oder Brut, Platz.

jobs-spring-syrup = Dünner Sirup, falls knapp
jobs-spring-syrup-waits = Die wärmsten Stunden einer Woche bleiben im Mittel über { TEMPERATURE($air) }.
jobs-spring-syrup-why = Bis dahin festes Futter, über der Traube. Sirup holen und dicken Bienen nur an warmen Tagen ein.

jobs-before-flow = { NUMBER($days) } Tage vor der ersten Tracht.
jobs-pollen = Pollen geben, wenn er fehlt
jobs-pollen-why = Das letzte von dreien: festes Futter, dann Sirup, dann Pollen. Brut, die damit beginnt, muss bis zum Ende gefüttert und warm gehalten werden.
jobs-pollen-others = In Minnesota bekommen starke Völker ab Anfang März Pollen, um früh geteilt zu werden.
jobs-pollen-belief = Frühe Pollenfladen helfen immer.
jobs-pollen-so = Sie setzen Brut in Gang, die kalte Nächte und leere Waben dann verhungern lassen.
jobs-pollen-missed = Die Bienen tragen ihn inzwischen wohl selbst ein: erst das Flugloch beobachten.

jobs-unwrap = Beuten auspacken
jobs-unwrap-waits = Die Nächte von zwei Wochen bleiben im Mittel über { TEMPERATURE($air) }, sobald die Tage { NUMBER($hours) } Stunden lang sind.
jobs-unwrap-why = Starke Völker zuerst. Ein schwaches behält die Hülle länger: es hat für seine Bienen die meiste Brut zu wärmen.
jobs-unwrap-missed = Beim nächsten Besuch abnehmen.

jobs-first-flow = Erste Tracht: Weide, Erle
jobs-first-flow-waits = { WARMER($degree-days, unit: "no") } Gradtage über { TEMPERATURE(5) } seit der Wintermitte: Weide und Erle.
jobs-first-flow-why = An Flugtagen kommt nun Futter herein. Der Hunger reicht noch zwei Wochen darüber hinaus.

jobs-dandelion-waits = Löwenzahn in Blüte, bei etwa { WARMER($degree-days, unit: "no") } Gradtagen über { TEMPERATURE(5) }.
jobs-mite-count-spring = Milben zählen
jobs-mite-count-spring-why = Ein Volk, das durchgekommen ist, ist nicht frei von Milben: aus wenigen im Frühjahr werden bis zum Herbst viele.
jobs-mite-count-spring-belief = Es hat überlebt, also hat es keine Milben.
jobs-mite-count-spring-so = Zur Löwenzahnblüte zählen, und noch einmal, bevor der Honig abkommt.
jobs-mite-count-spring-missed = Jetzt zählen: eine Zählung sagt etwas, solange Brut da ist.
jobs-reverse = Zargen tauschen, wenn leer
jobs-reverse-why = Nur wenn die untere Zarge leer ist und keine Brut über beide reicht; sonst reißt es das Nest auseinander.
jobs-reverse-missed = Noch möglich, solange die untere Zarge leer ist und keine Brut über beide reicht.

jobs-source-none = keine
jobs-source-brood = das Wintermodell der eigenen Völker unter dem Wetter dieses Standorts
jobs-source-hunger = das Wintermodell, die eigenen Zählungen und Notizen
jobs-source-own-day = die eigene Standdatei
jobs-source-syrup = 13 °C (55 °F): Merkblatt der Bienenberatung Ontario; drei Wochen zum Eindicken: Merkblatt finnischer Imker
jobs-source-flow = eigene Rechnung; der eigene Tag der ersten Tracht kann in der Standdatei stehen

jobs-calendar-name = { $yard }: Arbeiten und Termine
jobs-calendar-title = { $what } ({ $yard })
jobs-calendar-invented = Ein erfundener Stand.
jobs-calendar-look = Nachsehen gehen
jobs-calendar-look-says = Gegen { NUMBER($hour) } Uhr: { $hives }.
jobs-calendar-round = Gang über den Stand
jobs-calendar-round-says = Zwei Wochen nach dem letzten Blick: jedes Flugloch ansehen, und was davor liegt.
jobs-calendar-belief = Stimmt nicht: „{ $belief }“ { $so }
