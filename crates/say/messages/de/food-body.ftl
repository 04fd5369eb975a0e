## Eine Zuckertafel, ein Fladen oder ein Futtergeschirr auf einer Beute.

food-body-made = { LIST($parts) }
food-body-food = { MASS($mass, digits: 1) } { $kind }
food-body-food-pollen = { MASS($mass, digits: 1) } { $kind } mit Pollen
food-body-rim = Rand { LENGTH($rim) }
food-body-over-cluster = über der Traube
food-body-to-one-side = auf einer Seite
food-body-hole = Loch { LENGTH($hole) }

food-body-since-autumn = { $what }, seit dem Herbst aufgelegt
food-body-since = { $what }, seit dem { DAY($since) } aufgelegt

food-body-reached = { $what }: die Traube hat es erreicht ({ $chance }); { $left }
food-body-in-doubt = { $what }: niemand weiß, ob die Traube es erreicht hat ({ $chance }); { $when }; { $left }
food-body-not-reached = { $what }: nicht erreicht ({ $chance }), es ernährt also noch niemanden; { $when }
food-body-left = etwa { MASS($middle, digits: 1) } sind übrig (8 von 10 zwischen { MASS($least, digits: 1) } und { MASS($most, digits: 1) })
food-body-never = in 9 von 10 Wintern bis zum { $goal } nicht
food-body-hardly = eher nicht bis zum { $goal }; 1 von 10 hat es bis zum { DAY($early) }
food-body-by = die Hälfte solcher Völker erreicht es bis zum { DAY($middle) }, 1 von 10 bis zum { DAY($early) }, die langsamsten bis zum { DAY($late) }
food-body-not-all = die Hälfte solcher Völker erreicht es bis zum { DAY($middle) }, 1 von 10 bis zum { DAY($early) }, die langsamsten bis zum { $goal } nicht
