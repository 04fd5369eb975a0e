## Ein neuer Herbst, im Terminal.

season-terminal-history = Der Winter von { $year } ist Geschichte: snowhum losses --season { $year } erzählt ihn.
season-terminal-left = Ausgelassen: { LIST($colonies) }.
season-terminal-wrote = { $file } geschrieben; { $last } bleibt, wie es ist.

season-terminal-ask = { $hive }, { $what }:
season-terminal-bees = Waben mit Bienen, oder weak, middling, strong (leer: es ist weg)
season-terminal-food = Futter, etwa 14 kg, oder light, fair, heavy
season-terminal-mites = Milben, etwa 3/300 (leer: nicht gezählt)
season-terminal-queen = Königin, etwa laying (leer: nicht nachgesehen)

season-terminal-asks = { $yard } wurde zuletzt am { $last } gezählt. Für diesen Herbst von jedem lebenden Volk Bienen, Futter, Milben und Königin nennen, mit weak, middling, strong und light, fair, heavy, wo nicht gezählt wurde, und --gone NAME für eines, das tot oder verkauft ist; etwa:
season-terminal-beside = --out: neben { $file } schreiben, damit der Winter davor gefunden wird
