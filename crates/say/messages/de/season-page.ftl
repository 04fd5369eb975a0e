## Die Seite, auf der ein neuer Herbst beginnt.

season-page-heading = Ein neuer Herbst
season-page-lede = Zuletzt gezählt wurden die Völker am { DAY($counted, style: "full") }. Die lebenden zählen; ihre Beuten bleiben, wie sie sind. Der Winter von { NUMBER($year) } wird aufbewahrt, mit seinen Verlusten, wie sie sind.
season-page-gone = Ausgelassen, wie notiert: { LIST($colonies) }.
season-page-mend = Zu berichtigen
season-page-day = Der Tag, an dem nachgesehen wurde
season-page-new = Ein neues Volk
season-page-begin = Diesen Herbst beginnen

season-page-bees = Waben mit Bienen, oder weak, middling, strong
season-page-food = Futter, oder light, fair, heavy, { $unit }
season-page-mites = Milben, falls gezählt
season-page-queen = Königin, falls nachgesehen
season-page-is-gone = Es ist tot, verkauft oder vereinigt

season-page-invented = Der erfundene Stand hat einen Winter; einen eigenen Stand beginnen.
