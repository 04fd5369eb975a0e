## Frühjahr, im Terminal.

spring-terminal-title = Frühjahr, { $yard }{ $invented ->
    [yes] {" "}(ein erfundener Stand)
   *[no] {""}
}: { $on }
spring-terminal-lift-first = Zuerst anheben
spring-terminal-lift = { NUMBER($place) }. { $hive }: { $hunger }. { CAPITAL($says) }.
spring-terminal-lift-reach = { NUMBER($place) }. { $hive }: { $hunger }. { CAPITAL($says) }; { MASS($reach, digits: 1, us: 0) } in Reichweite.
spring-terminal-first-look = Beim ersten Blick

spring-terminal-open = Darf geöffnet werden?
spring-terminal-days = Von 100 möglichen Tagen
spring-terminal-lid = Deckel 1 min ab
spring-terminal-look = 1. Blick
spring-terminal-combs = jede Wabe

spring-terminal-feed = In dieser Reihenfolge füttern
spring-terminal-from = etwa ab dem { DAY($on) }
spring-terminal-until = bis etwa zum { DAY($on) }
spring-terminal-hive = Boden, Hülle, Zargen
spring-terminal-step = { $what }: { $when }. { $waits } { $why }

spring-terminal-strong = Wie stark?
spring-terminal-frames = etwa { NUMBER($likely, digits: 1) } Waben mit Bienen (8 von 10: { NUMBER($least, digits: 1) } bis { NUMBER($most, digits: 1) }): { $word }
spring-terminal-usual = Region { $region }: { $says } ({ $source }).
spring-terminal-weak = Ein sehr schwaches Volk
