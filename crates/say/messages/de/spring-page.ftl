## Die Seite „Erster Blick im Frühjahr“.

spring-page-heading = Erster Blick im Frühjahr
spring-page-no-estimate = Er beruht auf der Schätzung, und es gibt keine.
spring-page-ahead = Das Frühjahr ist Monate entfernt: der erste Blick kommt hier um den { DAY($on, style: "marked") }. Diese Seite ist zum Planen; was jetzt zu tun ist, steht unter <a href="/jobs">Arbeiten und Termine</a>.

spring-page-lift = Zuerst anheben
spring-page-lift-one = <strong>{ $hive }</strong>, { $hunger }: { $says }.
spring-page-lift-weighed = <strong>{ $hive }</strong>, { $hunger }: { $says }; { MASS($food, digits: 1, us: 0) } in Reichweite.
spring-page-look-for = Wonach zu sehen ist
spring-page-jobs = Arbeiten und Termine
spring-page-flight = Flugtag

spring-page-open = Darf geöffnet werden?
spring-page-days = Tag für Tag
spring-page-days-table = Tage zum Öffnen
spring-page-days-caption = Von 100 möglichen Wettern eines Tages erlauben so viele: den Deckel eine Minute ab, einen ersten Blick, jede Wabe zu ziehen
spring-page-day = Tag
spring-page-lid = Deckel ab
spring-page-first-look = erster Blick
spring-page-every-comb = jede Wabe
spring-page-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") }

spring-page-feeding = In dieser Reihenfolge füttern
spring-page-step = { LIST($parts, between: ", ") }. { $waits } { $how }
spring-page-step-what = <strong>{ $what }</strong>
spring-page-step-from = etwa ab dem { DAY($from, style: "marked") }
spring-page-step-until = bis etwa zum { DAY($until, style: "marked") }
spring-page-hive = Boden, Hülle, Zargen
spring-page-hive-step = <strong>{ $what }</strong>: { SENTENCE($when) } { $waits } { $why }

spring-page-strength = Wie stark?
spring-page-frames = etwa { NUMBER($middle, digits: 1) } Waben mit Bienen (8 von 10: { NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) }): { $word }
spring-page-usual = Region { $region }: { $says } ({ $source }).
spring-page-no-usual = Für den { DAY($on) } ist in dieser Region keine Zahl bekannt; was in der Prärie üblich ist, ist hier nicht üblich.
spring-page-weak = Ein sehr schwaches Volk
