## Questions of the winter, and what is often heard.

questions-page-heard = Often heard
# What is heard follows.
questions-page-heard-here = Often heard:
questions-page-told = “{ $says }.” { $truth }
questions-page-here = In this yard
questions-page-see = See <a href="{ $address }">{ $page }</a> or <code>snowhum { $command }</code>.
questions-page-stands-on = Stands on: { $source } ({ $status }).

questions-page-each = { LIST($hives, between: "; ") }.
questions-page-hive = { $hive }: { $figure }
questions-page-nothing = nothing to tell.
questions-page-dead = { $dead } by { DAY($on) }
questions-page-lid = tomorrow at one: { $lid }
questions-page-most-days = on most days now.
questions-page-flight = on { DAY($on) } bees can fly in { $chance } such winters.
questions-page-no-flight = no flying day is likely within ten days.
