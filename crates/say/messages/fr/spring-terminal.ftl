## Le printemps, dans le terminal.

spring-terminal-title = Printemps, { $yard }{ $invented ->
    [yes] {" "}(un rucher inventé)
   *[no] {""}
} : { $on }
spring-terminal-lift-first = Soupeser d’abord
spring-terminal-lift = { NUMBER($place) }. { $hive } : { $hunger }. { CAPITAL($says) }.
spring-terminal-lift-reach = { NUMBER($place) }. { $hive } : { $hunger }. { CAPITAL($says) } ; { MASS($reach, digits: 1, us: 0) } à portée.
spring-terminal-first-look = À la première visite

spring-terminal-open = Peut-on ouvrir ?
spring-terminal-days = Sur 100 jours possibles
spring-terminal-lid = couvercle 1 min
spring-terminal-look = 1re visite
spring-terminal-combs = tout cadre

spring-terminal-feed = Nourrir dans cet ordre
spring-terminal-from = à partir du { DAY($on) } environ
spring-terminal-until = jusqu’au { DAY($on) } environ
spring-terminal-hive = Plancher, emballage, corps
spring-terminal-step = { $what } : { $when }. { $waits } { $why }

spring-terminal-strong = Quelle force ?
spring-terminal-frames = environ { NUMBER($likely, digits: 1) } cadres d’abeilles (8 sur 10 : { NUMBER($least, digits: 1) } à { NUMBER($most, digits: 1) }) : { $word }
spring-terminal-usual = Région { $region } : { $says } ({ $source }).
spring-terminal-weak = Une colonie très faible
