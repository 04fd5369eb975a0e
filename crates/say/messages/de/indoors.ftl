## Wo ein Volk steht, das drinnen überwintert, und was sein Raum verlangt.

indoors-degrees = { TEMPERATURE($air) }
indoors-air = { LIST($ends, alike: "once", between: " bis ") }
indoors-since = { $room }, drin seit dem { DAY($from) }; dort { $air }; kein Tag zum Hinaustragen notiert
indoors-since-until = { $room }, drin seit dem { DAY($from) }, heraus am { DAY($until) }; dort { $air }
indoors-by-plan = { $room }, nach Plan drin seit dem { DAY($from) }; dort { $air }; „carried=into { $room }“ notieren mit dem Tag, an dem es hineinkam
indoors-by-plan-until = { $room }, nach Plan drin seit dem { DAY($from) }, heraus am { DAY($until) }; dort { $air }; „carried=into { $room }“ notieren mit dem Tag, an dem es hineinkam
indoors-to-go = { $room }, hinein am { DAY($from) }; dort { $air }; kein Tag zum Hinaustragen notiert
indoors-to-go-until = { $room }, hinein am { DAY($from) } und heraus am { DAY($until) }; dort { $air }

indoors-warm = { $room } ist mit { TEMPERATURE($air) } zu warm: die Bienen werden unruhig, fressen und beginnen zu brüten; Nachtluft hereinlassen, bei { $best } halten und früh hinaustragen, wenn es warm bleibt
indoors-cold = { $room } ist mit { TEMPERATURE($air) } kalt: das spart wenig Futter; { $best } ist am besten, aber die Luft nie absperren
indoors-light = in { $room } kommt Licht: die Bienen fliegen darauf zu und gehen verloren; verdunkeln und eine rote Lampe nehmen
indoors-damp = { $room } ist feucht: Waben schimmeln; mehr Luft hindurch
indoors-dry = { $room } ist trocken: die Bienen werden durstig und unruhig; den Boden nass machen
