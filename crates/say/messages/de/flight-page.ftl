## Die Seite „Flugtag“.

flight-page-heading = Flugtag
flight-page-most-days = Die Bienen fliegen jetzt an den meisten Tagen.
flight-page-next = Der nächste ist am ehesten <strong>{ DAY($on, style: "weekday") }, { DAY($on, style: "marked") }</strong>, { $ahead ->
    [1] morgen
   *[other] in { NUMBER($ahead) } Tagen
}: bei { $chance } der Wetterverläufe können die Bienen fliegen.
flight-page-none = Binnen zehn Tagen ist wohl keiner.
flight-page-lede = Am ersten windstillen, milden Tag kommen die Lebenden heraus. Einmal tippen je Volk; ein zweites Tippen berichtigt das erste.
flight-page-open-first = Zuerst öffnen
flight-page-noted = Notiert am { DAY($on) }.

flight-page-flew-well = flog gut
flight-page-thin = schwach
flight-page-did-not-fly = flog nicht
flight-page-soiled = verkotete die Beute
flight-page-pollen = Pollen eingetragen

flight-page-wrong = Eines der Wörter neben dem Volk antippen.
