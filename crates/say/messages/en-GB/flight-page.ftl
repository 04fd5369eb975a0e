## The page "Flight day".

flight-page-heading = Flight day
flight-page-most-days = Bees fly on most days now.
flight-page-next = The next is most likely <strong>{ DAY($on, style: "weekday") }, { DAY($on, style: "marked") }</strong>, { $ahead ->
    [1] tomorrow
   *[other] { NUMBER($ahead) } days ahead
}: bees can fly in { $chance } of the weather paths.
flight-page-none = None is likely within ten days.
flight-page-lede = On the first calm mild day the living come out. One tap a hive; a second tap mends the first.
flight-page-open-first = Open first
flight-page-noted = Noted on { DAY($on) }.

flight-page-flew-well = flew well
flight-page-thin = thin
flight-page-did-not-fly = did not fly
flight-page-soiled = soiled the hive
flight-page-pollen = pollen carried in

flight-page-wrong = Tap one of the words beside the hive.
