## La page « Première visite de printemps ».

spring-page-heading = Première visite de printemps
spring-page-no-estimate = Elle repose sur l’estimation, et il n’y en a pas.
spring-page-ahead = Le printemps est à des mois d’ici : la première visite vient ici vers le { DAY($on, style: "marked") }. Cette page sert à prévoir ; ce qui est à faire maintenant figure sous <a href="/jobs">Travaux et dates</a>.

spring-page-lift = Soupeser d’abord
spring-page-lift-one = <strong>{ $hive }</strong>, { $hunger } : { $says }.
spring-page-lift-weighed = <strong>{ $hive }</strong>, { $hunger } : { $says } ; { MASS($food, digits: 1, us: 0) } à portée.
spring-page-look-for = Ce qu’il faut chercher
spring-page-jobs = Travaux et dates
spring-page-flight = Jour de vol

spring-page-open = Peut-on ouvrir ?
spring-page-days = Jour par jour
spring-page-days-table = Jours pour ouvrir
spring-page-days-caption = Sur 100 temps possibles d’un jour, tant permettent le couvercle ôté une minute, une première visite, chaque cadre sorti
spring-page-day = Jour
spring-page-lid = couvercle ôté
spring-page-first-look = première visite
spring-page-every-comb = chaque cadre
spring-page-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") }

spring-page-feeding = Nourrir dans cet ordre
spring-page-step = { LIST($parts, between: ", ") }. { $waits } { $how }
spring-page-step-what = <strong>{ $what }</strong>
spring-page-step-from = à partir du { DAY($from, style: "marked") } environ
spring-page-step-until = jusqu’au { DAY($until, style: "marked") } environ
spring-page-hive = Plancher, emballage, corps
spring-page-hive-step = <strong>{ $what }</strong> : { SENTENCE($when) } { $waits } { $why }

spring-page-strength = Quelle force ?
spring-page-frames = environ { NUMBER($middle, digits: 1) } cadres d’abeilles (8 sur 10 : { NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) }) : { $word }
spring-page-usual = Région { $region } : { $says } ({ $source }).
spring-page-no-usual = Aucun chiffre n’est connu pour le { DAY($on) } dans cette région ; ce qui est habituel dans la Prairie ne l’est pas ici.
spring-page-weak = Une colonie très faible
