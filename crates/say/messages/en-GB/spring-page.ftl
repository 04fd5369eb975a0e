## The page "First look in spring".

spring-page-heading = First look in spring
spring-page-no-estimate = It stands on the estimate, and there is none.
spring-page-ahead = Spring is months away: the first look comes here about { DAY($on, style: "marked") }. This page is to plan by; what is to be done now stands under <a href="/jobs">Jobs and dates</a>.

spring-page-lift = Lift first
spring-page-lift-one = <strong>{ $hive }</strong>, { $hunger }: { $says }.
spring-page-lift-weighed = <strong>{ $hive }</strong>, { $hunger }: { $says }; { MASS($food, digits: 1, us: 0) } within reach.
spring-page-look-for = What to look for
spring-page-jobs = Jobs and dates
spring-page-flight = Flight day

spring-page-open = May I open?
spring-page-days = Day by day
spring-page-days-table = Days to open
spring-page-days-caption = Of 100 possible weathers of a day so many allow the lid off a minute, a first look, every comb lifted
spring-page-day = Day
spring-page-lid = lid off
spring-page-first-look = first look
spring-page-every-comb = every comb
spring-page-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") }

spring-page-feeding = Feed in this order
spring-page-step = { LIST($parts, between: ", ") }. { $waits } { $how }
spring-page-step-what = <strong>{ $what }</strong>
spring-page-step-from = from about { DAY($from, style: "marked") }
spring-page-step-until = until about { DAY($until, style: "marked") }
spring-page-hive = { CAPITAL(-floor) }, wrap, boxes
spring-page-hive-step = <strong>{ $what }</strong>: { SENTENCE($when) } { $waits } { $why }

spring-page-strength = How strong?
spring-page-frames = about { NUMBER($middle, digits: 1) } frames of bees (8 in 10: { NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) }): { $word }
spring-page-usual = In { $region }: { $says } ({ $source }).
spring-page-no-usual = No figure is known for { DAY($on) } in this region; what is usual on the prairie is not usual here.
spring-page-weak = A very weak colony
