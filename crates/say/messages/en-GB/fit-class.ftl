## Classes of treatment, and what limits each. No doses: the label and the law say what, when and how.

fit-class-formic = formic acid
fit-class-formic-weather = day maximum between 10 and 29.5 °C (50 and 85 °F) when it is put on; from { TEMPERATURE(33) } in the first days it costs bees, brood and queens
fit-class-formic-brood = reaches mites under cappings
fit-class-formic-supers = supers off unless the label allows them

fit-class-thymol = thymol
fit-class-thymol-weather = too cold below about 15 °C (59 °F), trouble above about 30 °C (86 °F); slows feeding, and its smell can start robbing
fit-class-thymol-brood = does not reach under cappings: works over weeks
fit-class-thymol-supers = supers off

fit-class-strips = contact strips
fit-class-strips-weather = bees must walk over them: begun while they still move about the brood nest, and taken out before winter; rotate the substance
fit-class-strips-brood = works through brood by lasting
fit-class-strips-supers = supers off

fit-class-trickled = oxalic acid, trickled
fit-class-trickled-weather = a loose cluster and no flight, a few degrees above freezing; once in a winter: a second trickle harms bees
fit-class-trickled-brood = without brood alone: 97 to 99 in 100 mites against 25 to 39 with brood
fit-class-trickled-supers = supers off

fit-class-vaporised = oxalic acid, vaporised
fit-class-vaporised-weather = some degrees above freezing; its vapour harms lungs: not for beginners, and never without the protection the label asks for
fit-class-vaporised-brood = best without brood
fit-class-vaporised-supers = as the label says
