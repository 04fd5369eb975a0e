## The winter ahead: how far it looks, what it leaves out, how sure it is.

plan-goal-spring = spring
plan-goal-without-flow = { DAY($last) } without a flow
plan-without-flow = First flowers are near or past. Food is reckoned to { DAY($last) } as if none gave anything: it is the least there will be, and in cold or wet weeks there is no more.

plan-no-nectar = No nectar is reckoned from { DAY($from) } on: while flowers still give, a hive is short of less than this says. Weigh again when the flow is over and the honey is off, before you feed.
plan-as-counted = It is of the hives as they were counted on { DAY($on) }: food given and colonies put together since are not in it, but in where they stand now.
plan-how-sure = How sure: fitted to real winters, in which colonies counted, fed and treated were lost too, { NUMBER($least) } to { NUMBER($most) } of 100 to causes that nobody names; years and yards differ more than hives (docs/VALIDATION.md, class D).
