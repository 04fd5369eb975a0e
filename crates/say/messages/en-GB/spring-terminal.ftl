## Spring, in the terminal.

spring-terminal-title = Spring, { $yard }{ $invented ->
    [yes] {" "}(an invented yard)
   *[no] {""}
}: { $on }
spring-terminal-lift-first = Lift first
spring-terminal-lift = { NUMBER($place) }. { $hive }: { $hunger }. { CAPITAL($says) }.
spring-terminal-lift-reach = { NUMBER($place) }. { $hive }: { $hunger }. { CAPITAL($says) }; { MASS($reach, digits: 1, us: 0) } within reach.
spring-terminal-first-look = At the first look

spring-terminal-open = May I open?
spring-terminal-days = Of 100 possible days
spring-terminal-lid = lid off a minute
spring-terminal-look = first look
spring-terminal-combs = every comb

spring-terminal-feed = Feed in this order
spring-terminal-from = from about { DAY($on) }
spring-terminal-until = until about { DAY($on) }
spring-terminal-hive = { CAPITAL(-floor) }, wrap, boxes
spring-terminal-step = { $what }: { $when }. { $waits } { $why }

spring-terminal-strong = How strong?
spring-terminal-frames = about { NUMBER($likely, digits: 1) } frames of bees (8 in 10: { NUMBER($least, digits: 1) } to { NUMBER($most, digits: 1) }): { $word }
spring-terminal-usual = In { $region }: { $says } ({ $source }).
spring-terminal-weak = A very weak colony
