## Fragen des Winters, jede kurz beantwortet, mit dem, was man oft anders hört.

questions-alive-asks = Leben meine Bienen?
questions-alive-answer = Die Seite jedes Volkes wägt jedes notierte Zeichen und nennt eine Chance, nie eine Gewissheit. Ein Summen, ein Flug, frischer Reif am Loch oder eine getaute Stelle sprechen für Leben; dass nichts zu sehen ist, sagt wenig.
questions-cold-kills-says = Kälte tötet Bienen
questions-cold-kills-truth = Trockene, satte, große und gesunde Völker überstehen Zeiten von minus vierzig Grad; Milben, Hunger und zu wenige Bienen töten.
questions-hibernate-says = Bienen halten Winterschlaf
questions-hibernate-truth = Sie sitzen in der Traube und zittern den ganzen Winter, wach.
questions-heats-the-hive-says = Die Traube heizt die Beute
questions-heats-the-hive-truth = Sie heizt sich selbst: An den Wänden ist die Luft fast so kalt wie draußen.

questions-dead-bees-asks = Tote Bienen auf dem Schnee: ist das schlimm?
questions-dead-bees-answer = Meist nicht. Aus einem starken Volk sterben mitten im Winter etwa dreißig bis hundertzwanzig am Tag. Zählen und fragen, ob es mehr sind, als ein solches Volk zeigen sollte.
questions-dead-outside-says = Tote Bienen draußen heißen, dass das Volk stirbt
questions-dead-outside-truth = Die meisten sind die gewöhnlichen Toten des Winters, an einem milden Tag hinausgetragen.

questions-open-asks = Darf ich öffnen, und wie warm muss es sein?
questions-open-answer = Um Futter aufzulegen, genügen Sekunden, und Windstille zählt mehr als Wärme. Waben werden im Frühling gezogen, ab etwa 13 °C (55 °F).

questions-hungry-asks = Haben sie Hunger?
questions-hungry-answer = Es zählt das Futter in Reichweite, nicht das in der Beute. Die Seite jedes Volkes sagt, wann es ausgeht, mit der Spanne.
questions-honey-in-the-hive-says = Honig in der Beute, also können sie nicht verhungern
questions-honey-in-the-hive-truth = In einer Kältezeit ist Futter, das zwei leere Waben weiter hängt, außer Reichweite: Bienen verhungern daneben.
questions-danger-ends-says = Im Februar ist die Gefahr vorbei
questions-danger-ends-truth = Am meisten Futter geht im März und April weg, wenn Brut gepflegt wird: Da verhungern mehr als in der Kälte.

questions-left-asks = Wie viel Futter ist noch da?
questions-left-answer = Wiegen: beide Seiten heben oder eine Waage, abzüglich leerer Beute, Bienen, Schnee und nassem Holz. Eine Seite allein zeigt nur, wohin es geht.
questions-weight-is-stores-says = Gewicht ist Futter
questions-weight-is-stores-truth = Brut, Schnee und nasses Holz wiegen auch: { MASS(1, unit: "no") } bis { MASS(3) } Wasser allein im Holz.
questions-twice-one-side-says = Eine Seite mal zwei ist das Gewicht
questions-twice-one-side-truth = Liegt die Last bei einer Beute von { LENGTH(0.5) } um { LENGTH(0.05) } neben der Mitte, ist das um ein Fünftel falsch.

questions-sugar-now-asks = Jetzt Zucker oder warten?
questions-sugar-now-answer = Der Plan vergleicht Füttern und Nichtstun in denselben Wintern. Festes Futter kommt etwa drei Wochen vor dem ersten Hunger auf, in einem Gang.
questions-candy-saves-says = Futterteig rettet ein Volk, das ungefüttert in einen harten Winter ging
questions-candy-saves-truth = In strenger Kälte können Bienen ihn kaum nutzen; Futter in der Wabe ist besser.

questions-which-feed-asks = Trockener Zucker, Zuckerblock, Futterteig oder Sirup?
questions-which-feed-answer = Solange die Bienen fliegen und ihn nehmen: Sirup. In der Kälte: Futterteig oder ein fester Zuckerblock direkt über der Traube. Im Frühling, sobald die Tage über { TEMPERATURE(10) } bleiben: dünner Sirup.
questions-by-cups-says = Zwei zu eins nach Bechern ist zwei zu eins
questions-by-cups-truth = Becher für Becher Zucker und Wasser ergeben etwa 63 von 100 Teilen Zucker, nicht 67.
questions-boiled-says = Sirup soll man kochen oder mit Essig säuern
questions-boiled-truth = Hitze und Säure bilden Stoffe, die Bienen schaden. Heißes Wasser und Rühren genügen.
questions-brown-sugar-says = Brauner oder roher Zucker ist besser
questions-brown-sugar-truth = Seine Asche belastet einen Darm, der sich monatelang nicht leeren kann. Nur weißer Zucker.
questions-syrup-in-january-says = Sirup hilft im Januar
questions-syrup-in-january-truth = Kalte Bienen nehmen ihn nicht, können ihn nicht reifen, und er kühlt sie aus.

questions-ignored-asks = Sie rühren den Futterteig nicht an.
questions-ignored-answer = Er muss direkt über der Traube liegen: eine Handbreit daneben ist außer Reichweite. Bienen mit Futter daneben lassen ihn liegen, und trockener Zucker braucht feuchte Luft. Liegen lassen; in der nächsten windstillen Stunde über sie schieben.

questions-rime-asks = Reif im Loch?
questions-rime-answer = Frischer Reif am oberen Loch ist Atem: ein Lebenszeichen. Abwischen, damit von da an nur neuer Reif zählt.

questions-water-asks = Wasser unter dem Deckel?
questions-water-answer = Wasser an Wänden und Boden schadet wenig, und manches wird getrunken. Wasser über der Traube schadet: den Deckel von oben dämmen und die Beute ein wenig nach vorn neigen.
questions-moisture-says = Feuchte ist immer der Feind
questions-moisture-truth = Ein Teil davon ist ihr Trinkwasser. Wo sie auf die Bienen tropft, tötet sie.
questions-mould-says = Schimmel hat sie umgebracht
questions-mould-truth = Schimmel wächst, wenn die Bienen weg sind.

questions-wrap-asks = Einpacken oder nicht, und in welcher Farbe?
questions-wrap-answer = Eine Hülle hält Wind ab, und eine dunkle nimmt an stillen, klaren Tagen Sonne auf. Die meiste Wärme geht oben hinaus: zuerst den Deckel dämmen. Für die eigene Beute vergleichen.
questions-wrap-warms-says = Eine Hülle hält sie warm
questions-wrap-warms-truth = Sie bremst Wind und nimmt Sonne auf; was über den Bienen liegt, zählt am meisten.

questions-upper-hole-asks = Oberes Loch offen oder zu?
questions-upper-hole-answer = Beide Schulen bringen Bienen durch den Winter. Ein Loch lässt Wasser hinaus und mit ihm etwas Wärme, und es ist ein Ausgang unter Schnee; ohne es muss der Deckel warm sein. Beides für die eigene Beute vergleichen.
questions-top-open-says = Oben muss es immer, oder nie, offen sein
questions-top-open-truth = Es hängt von Deckel, Klima und Volk ab.

questions-mesh-asks = Den Gitterboden schließen?
questions-mesh-answer = Unter einem warmen Deckel schadet ein offenes Gitter außerhalb des Windes wenig; im Wind macht der Schieber den unteren Teil ruhiger. Eine polnische Umfrage fand über Gitter etwas weniger Verluste.

questions-mouse-asks = Eine Maus?
questions-mouse-answer = Zernagte Waben, Laub oder Geruch auf dem Schieber: an einem milden Tag hinaustreiben und ein Gitter mit Schlitzen von höchstens { LENGTH(0.008, us: 2) } oder Löchern von höchstens { LENGTH(0.009, us: 2) } anbringen.

questions-snow-asks = Schnee deckt die Beute zu: ausgraben?
questions-snow-answer = Schnee ist porös und warm: liegen lassen. Die Löcher offen halten, wo man hinkommt, und die Beute nicht erschüttern.
questions-snow-smothers-says = Schnee erstickt Bienen
questions-snow-smothers-truth = Selten: Luft geht durch Schnee. Eine Eisschicht über der ganzen Beute ist etwas anderes.

questions-ice-asks = Eis vor dem Flugloch?
questions-ice-answer = Eine Eisschicht über einer Beute oder ihrem Loch wird geöffnet, mit warmem Wasser und ohne Schläge. Tote Bienen dahinter werden mit einem gebogenen Draht herausgezogen.

questions-cold-flight-asks = Bienen fliegen bei { TEMPERATURE(3) }?
questions-cold-flight-answer = Bei Sonne und Windstille fliegen einige auch knapp über dem Gefrierpunkt, und ein paar fallen auf den Schnee. Viele an einem stillen grauen Tag deuten auf Not: Hunger, Räuberei oder kranker Darm.

questions-spots-asks = Braune Flecken an der Beute oder auf dem Schnee?
questions-spots-answer = Nach einem Flugtag, auf Schnee und an der Vorderwand: normal und ein Lebenszeichen. Innen oder auf den Oberträgern: Ruhr, vom Futter, von Nässe oder langem Warten.
questions-nosema-says = Ruhr ist Nosema
questions-nosema-truth = Das eine sieht man, das andere braucht ein Mikroskop, und jedes kommt ohne das andere vor.

questions-noise-asks = Es ist laut, oder still?
questions-noise-answer = Auf ein Klopfen soll ein kurzes Brausen folgen, das abklingt. Stille sagt in strenger Kälte oder durch dicke Wände wenig. Ein langes Heulen an einem milden Tag kann eine fehlende Königin sein: im Frühling nachsehen. Nicht immer wieder klopfen.

questions-on-top-asks = Die Traube sitzt im Dezember oben?
questions-on-top-answer = Entweder ist sie groß, oder sie hat sich hochgefressen, und über ihr ist wenig übrig. Wiegen.

questions-oxalic-asks = Jetzt Oxalsäure?
questions-oxalic-answer = Nur wo Etikett und Recht es erlauben, geträufelt nur einmal im Winter und nur, wenn keine Brut da ist: Milben in Zellen werden nicht erreicht.
questions-one-treatment-says = Eine Oxalsäurebehandlung genügt, ob Brut da ist oder nicht
questions-one-treatment-truth = Mit Brut sitzen die meisten Milben in Zellen, wohin sie nicht reicht.
questions-trickled-again-says = Noch einmal träufeln schadet nicht
questions-trickled-again-truth = Es schadet den Bienen: einmal im Winter.

questions-late-treatment-asks = Gegen Milben wurde nichts getan: zu spät?
questions-late-treatment-answer = Im Spätherbst ist es zu spät für Bienen, die schon geschädigt sind, aber eine Behandlung ohne Brut schützt noch die Nachbarn und das nächste Jahr. Zuerst zählen.
questions-november-says = Eine Behandlung im November genügt
questions-november-truth = Die Bienen des Winters werden von August bis Oktober aufgezogen; die sind zu schützen.
questions-strong-in-autumn-says = Im Herbst stark heißt sicher
questions-strong-in-autumn-truth = Große Völker zogen mit der meisten Brut auch die meisten Milben auf.
questions-no-mites-seen-says = Ich sehe keine Milben, also sind keine da
questions-no-mites-seen-truth = Bei einer Milbe auf hundert Bienen ist mehr als ein Drittel der Proben von hundert Bienen leer.
questions-survived-says = Es hat überlebt, also hat es keine Milben
questions-survived-truth = Im Frühling zählen: Überlebende tragen Milben in den Sommer.

questions-unite-asks = Zwei schwache: jetzt vereinigen?
questions-unite-answer = Nicht mitten im Winter: In der Kälte gehen Trauben nicht zusammen. Im September vereinigen, schwach auf stark, gesund zu gesund.
questions-united-in-december-says = Zwei schwache, im Dezember vereinigt, geben ein starkes
questions-united-in-december-truth = Schwach und schwach bleibt schwach, und das Öffnen kostet beide.

questions-move-asks = Die Beute versetzen?
questions-move-answer = Nicht, während es bei Frost in der Traube sitzt: Ein Stoß lässt Bienen für immer von der Traube fallen. Wenn es sein muss, an einem milden stillen Tag, von Hand, waagrecht; ist wochenlang keine Biene geflogen, spielt die Entfernung keine Rolle.

questions-heat-asks = Die Beute heizen?
questions-heat-answer = Keine Lampe, kein Kabel, kein warmer Raum: Warme Bienen fliegen, fressen mehr und beginnen Brut, die sie nicht ernähren können. Deckel, Wind und Futter in Ordnung bringen.

questions-animals-asks = Ein Specht oder ein Bär?
questions-animals-answer = Runde Löcher in den Wänden: ein Netz oder eine Hülle mit Abstand zu den Seiten. Ein Bär: ein Elektrozaun unter Strom vor dem ersten Herbstfrost und wieder ab dem Tauwetter. Waffen und Fallen sind Sache des örtlichen Rechts.

questions-dead-asks = Es ist tot: warum, und was ist wieder zu gebrauchen?
questions-dead-answer = Nach Faulbrut wird zuerst gesehen, und sie hält alles an. Dann werden die Zeichen zusammen gewogen, mit dem, was sie offen lassen, und es wird gesagt, was wieder zu gebrauchen ist.
questions-heads-in-cells-says = Köpfe in den Zellen, also sind sie verhungert
questions-heads-in-cells-truth = Eine Traube, die nach Milben zu klein ist, um sich warm zu halten, stirbt auch so.
questions-flew-away-says = Sie sind weggeflogen
questions-flew-away-truth = Die meisten schwanden: Alte Bienen starben draußen, eine nach der anderen.

questions-edible-asks = Ist dieser Honig für Menschen?
questions-edible-answer = Vorräte aus Zucker sind kein Honig. Aus einer toten Beute ist nichts für Menschen, wenn sie behandelt, gefüttert, beschmutzt oder ungeklärt ist. Für andere Bienen nur, wenn Faulbrut ausgeschlossen ist.

questions-patties-asks = Wann Pollenteig?
questions-patties-answer = Wenn die Brut ernährt werden kann, bis Blüten ohne Lücke kommen: hier von der ersten Tracht zurückgezählt. Zu früher setzt Brut in Gang, die die Vorräte frisst.
questions-pollen-early-says = Früh Pollen füttern hilft
questions-pollen-early-truth = Es setzt zu früh Brut in Gang, und die Vorräte gehen hinein.

questions-first-look-asks = Wann die erste Durchsicht, das Auspacken, das Teilen?
questions-first-look-answer = Erste Durchsicht: bei Windstille, ab etwa 13 °C (55 °F). Auspacken, wenn das Mittel der Nächte über dem Gefrierpunkt bleibt. Teilen erst, wenn das Volk stark ist und Königinnen begattet werden können.
questions-none-of-two-says = Von meinen zwei ist keines gestorben, also wintere ich richtig ein
questions-none-of-two-truth = Null Verluste von zweien lassen noch zu, dass von so eingewinterten Völkern zwei von dreien eingehen.
