## Die Seite „Ist das normal?“.

normal-page-heading = Ist das normal?
normal-page-lede = Tote Bienen vor einem Stock sind im Winter üblich. Wie viele sind es?
normal-page-others = Andere Fragen des Winters
normal-page-found = { $exact ->
    [yes] { NUMBER($found) } gefunden
   *[no] Bis zu { NUMBER($found) } gefunden
}; { $usual }.
normal-page-next = Als Nächstes
normal-page-who = Wer sagt das?
normal-page-deaths = { NUMBER($least) } bis { NUMBER($most) } Bienen sterben am Tag in einem gesunden Volk dieser Größe und Jahreszeit; die meisten fallen drinnen.
normal-page-days = { NUMBER($days) } Tage
normal-page-picture = Gefunden, neben dem Erwarteten

normal-page-dead = Tote Bienen
normal-page-up-to = bis { NUMBER($bees) }
normal-page-since = Seit dem letzten Blick, oder seit Schnee die alten zudeckte
normal-page-a-day = einem Tag
normal-page-a-week = einer Woche
normal-page-two-weeks = zwei Wochen
normal-page-a-month = einem Monat
normal-page-lie-on = Sie liegen auf
normal-page-snow = Schnee
normal-page-bare = kahlem Boden
normal-page-exactly = Genau gezählt, oder ein anderer Monat?
normal-page-counted = Gezählte tote Bienen
normal-page-since-days = Tage
normal-page-bees = Bienen im Volk, falls bekannt
normal-page-month = Monat (im Süden der sechs Monate entfernte)
normal-page-ask = Ist es das?

normal-page-wrong = { $text }: bitte { $right } schreiben.
normal-page-right-found = eine ganze Zahl toter Bienen, etwa 30,
normal-page-right-days = die Tage seit dem letzten Blick, etwa 14,
normal-page-right-bees = eine Zahl von Bienen, etwa 12000, oder nichts
