## Die Seite „In der Traube“, zum Weitergeben an Leute ohne Bienen.

inside-page-heading = In der Traube
inside-page-lede = Was geschieht mit Bienen im Winter?
inside-page-none = Noch ist von keinem lebenden Volk zu erzählen.

inside-page-ball = Es ist der { DAY($on) }, draußen { TEMPERATURE($air) }. Im Volk namens <strong>{ $hive }</strong> hängen etwa { $bees } Bienen beieinander, als Kugel von { $size } Durchmesser. Sie schlafen nicht.
inside-page-inches = { NUMBER($across) } Zoll
inside-page-centimetres = { NUMBER($across) } cm
inside-page-warmth = In der Mitte sind es, solange keine Brut da ist, { TEMPERATURE($core) }; an der Haut, wo die Bienen Kopf nach innen und Schulter an Schulter sitzen, { TEMPERATURE($skin) }. Sie wärmen, indem sie die Flugmuskeln zittern lassen, ohne die Flügel zu bewegen: { NUMBER($heat) } Watt im Ganzen, { $bulb ->
    [less] weniger als
    [more] mehr als
   *[alike] etwa so viel wie
} eine kleine Glühbirne. Sie heizen nicht die Beute: { TEMPERATURE($below) } hat die Luft unter ihnen.
inside-page-fuel = Der Brennstoff ist Futter aus den Waben, heute { GRAMS($food, us: 1) }. Es geht als { GRAMS($water, us: 1) } Wasser in der ausgeatmeten Luft davon; eine trockene Beute lässt es hinaus, eine kalte fängt es als Reif. Keine Biene fliegt zum Abkoten hinaus, bis ein milder Tag kommt.
inside-page-spring = Werden die Tage länger, legt die Königin wieder, die Mitte wird für die Brut bei fast { TEMPERATURE(35) } gehalten, und das Futter geht am schnellsten kurz vor den ersten Blüten.
inside-page-figures = Die Zahlen sind für dieses Volk und diesen Tag berechnet; die letzte Zeile ist, was Imker wissen und auch das Modell enthält.
inside-page-others = Andere Völker
