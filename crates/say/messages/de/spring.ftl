## Frühjahr: welches Volk zuerst anheben, wann öffnen, wonach sehen, was füttern, wie stark stark ist.

spring-hungry = hungrig
spring-may-run-short = kann knapp werden
spring-fed = versorgt
spring-lasts = Futter reicht bis zum { $goal } in mindestens 9 von 10 Wintern
spring-lasts-most = bei 1 von 10 reicht das Futter { NUMBER($early) } Tage oder weniger; am ehesten bis zum { $goal }
spring-lasts-days = Futter für etwa { NUMBER($days) } { $days ->
    [one] Tag
   *[other] Tage
}; bei 1 von 10 für { NUMBER($early) } oder weniger
spring-lasts-if-alive = { $lasts }; am Leben: { $alive }

spring-danger = Die Gefahr endet nicht im Februar. Brut nimmt zwei- bis dreimal so viel Futter wie mitten im Winter, und kalte Tage hindern die Bienen, welches zu holen: die meisten Völker, die verhungern, tun es im März, April oder, im Norden, Anfang Mai.
spring-danger-until = Hier ist sie nicht vor etwa dem { DAY($until) } vorbei.
spring-danger-none = Bis dahin geht wohl keinem der Völker das Futter aus; trotzdem anheben.
spring-danger-none-by = Bis zum { $goal } geht wohl keinem der Völker das Futter aus; trotzdem anheben.
spring-danger-hives = In mindestens 1 von 10 Wintern geht das Futter aus bei { LIST($hives) }.

spring-open-likely = Der nächste Tag, der für einen ersten Blick taugt, ist am ehesten der { DAY($on) }, bei { $share } der Wetterverläufe.
spring-open-any = Von den nächsten { NUMBER($days) } Tagen taugt für sich allein wohl keiner für einen ersten Blick, aber bei { $any } der Wetterverläufe kommen einer oder mehrere vor; der { DAY($on) } bei { $share }.
spring-open-cold = Die kommenden Tage sind zu kalt für Waben; den Deckel für eine Minute abzunehmen, ist etwas anderes.
spring-open-usual = Hier kommt der erste solche Tag { $when }.
spring-open-others = Ein erster Blick ab { TEMPERATURE($first) }, jede Wabe ab { TEMPERATURE($full) }, windstill und trocken; andere sagen: keine Wabe unter { TEMPERATURE($least) }. Den Deckel für Sekunden abnehmen, um ein hungerndes Volk zu retten, tun manche auch bei Frost.

spring-look-pollen = Vor dem Öffnen: tragen die Bienen Pollen ein?
spring-look-pollen-why = Ein Volk, das Pollen trägt, hat höchstwahrscheinlich eine legende Königin; die Brut kann heute in Ruhe bleiben.
spring-look-pollen-else = Kein Pollen, während Nachbarn ihn tragen: dieses zuerst öffnen.
spring-look-seams = Wie viele Wabengassen mit Bienen, und wo in der Beute?
spring-look-seams-why = Stärke und Ort, ehe etwas bewegt wird.
spring-look-seams-else = Keine lebt: sofort gegen Räuber schließen und nach Faulbrut sehen, ehe etwas wiederverwendet wird.
spring-look-food = Futter: eine bis zwei volle Waben neben der Brut
spring-look-food-why = Brut frisst jetzt am meisten, und kalte Tage halten die Bienen zu Hause.
spring-look-food-else = Weniger als das: heute füttern, über oder neben der Traube.
spring-look-eggs = Eier oder junge Brut, in Arbeiterinnenzellen
spring-look-eggs-why = Vor drei Tagen war eine Königin da; sie muss nicht gesehen werden.
spring-look-eggs-else = Nur Drohnenbrut, oder Drohnen schon im zeitigen Frühjahr: die Königin versagt oder ist weg; vereinigen, wenn es gesund ist.
spring-look-brood = Brutdeckel gewölbt, trocken und ganz; Larven perlmuttweiß
spring-look-brood-why = Ansteckendes zeigt sich zuerst an der Brut.
spring-look-droppings = Kot auf Waben und Oberträgern
spring-look-droppings-why = Lange Gefangenschaft oder schlechtes Futter; von außen kann niemand Nosema davon unterscheiden.
spring-look-droppings-else = Viel davon: eine Probe ins Labor, verschmutzte Waben später heraus.
spring-look-floor = Boden frei, keine Feuchte über der Traube
spring-look-floor-why = Die Toten des Winters schimmeln und versperren den Weg. Etwas Schimmel auf äußeren Waben schadet nicht: die Bienen putzen ihn.
spring-look-floor-else = Den Boden wechseln oder abkratzen; den Deckel trocknen.

spring-solid = Festes Futter
spring-solid-waits = Hunger, bei jeder Kälte, in der der Deckel eine Minute ab sein darf.
spring-solid-how = Futterteig, Zuckertafel oder feuchter Zucker auf den Oberträgern, direkt über der Traube; eine Futterwabe aus einem gesunden Volk desselben Standes ist noch besser. Nie auf der fernen Seite: Bienen überqueren keine kalten Waben.
spring-syrup = Dünner Sirup, 1:1
spring-syrup-how = Nur wo Futter fehlt; er treibt die Brut an. Etwa { VOLUME(0.001, us: 1) } auf einmal, Flugloch eingeengt.
spring-pollen = Pollen geben
spring-pollen-after-syrup = Nicht bevor Sirup gegeben werden kann, in dieser Reihenfolge; nach den Blüten allein wäre es um den { DAY($on) }.
spring-pollen-only = Nur wo keiner eingetragen wird.
spring-pollen-how = Früher Pollen setzt Brut in Gang, die bis zum Ende gefüttert und warm gehalten werden muss; zu früh gegebene Hilfe lässt sie verhungern.

spring-very-weak = sehr schwach
spring-below-usual = unter dem hier Üblichen
spring-usual = wie hier üblich
spring-above-usual = über dem hier Üblichen
spring-usual-not-known = für diesen Ort und Tag ist keine übliche Zahl bekannt

spring-weak-why = Zuerst herausfinden, warum. Nie ein krankes Volk vereinigen: die Krankheit geht mit. Verkrüppelte Flügel, lückenhafte oder eingesunkene Brut oder Kot überall heißen: nicht vereinigen.
spring-weak-room = Den Raum klein machen: Bienen, Brut und Futter auf wenigen Waben hinter einem Schied, Flugloch klein, Hülle und warmen Deckel daran lassen.
spring-weak-unite = Zwei schwache Völker ergeben kein starkes. Ein gesundes schwaches kommt über ein starkes mit einem Blatt Zeitung dazwischen, sobald die Bienen an den meisten Tagen fliegen; von zwei Königinnen die bessere behalten.
spring-weak-feed = Keine Brut zum Wärmen geben und keinen Reizsirup über seine Kraft; Futter dicht an die Brut.
