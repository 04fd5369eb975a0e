## The yard: how are they all, and what first?

yard-page-title = The yard
yard-page-heading = The yard on { DAY($on) }
yard-page-autumn-begun = <strong>The new autumn is begun.</strong> Last winter is kept under <a href="/losses">losses and lessons</a>.
yard-page-lid-shut = The lid is shut until spring. See what goes on beneath it.
yard-page-begin-own = <a href="/begin">Begin your own yard</a>.
yard-page-dead-bees = Dead bees on the snow? <a href="/normal">Is this normal?</a>
yard-page-begun = <strong>Your yard is begun.</strong>
yard-page-begun-kept = It is kept in <code>{ $path }</code>; <code>snowhum serve</code> opens it again.
yard-page-begun-memory = It is in memory alone and gone when the program ends; save the file to keep it.
yard-page-begun-words = Only words are known of bees and food, so every range is wide: count and weigh to narrow it.

yard-page-calm = Nothing calls for you. Leave the lids shut.
yard-page-next-are = Nothing needs doing this week. Next are { $hives }.
yard-page-needed = <strong>{ $hives }</strong> { $number ->
    [one] needs
   *[other] need
} you first.
yard-page-after = After that { $hives }.
yard-page-names = { LIST($names, last: " and ") }
yard-page-names-more = { LIST($names) } and { NUMBER($more) } more

yard-page-first = First: { NUMBER($hives) }
yard-page-then = Then: { NUMBER($hives) }
yard-page-alone = To be left alone, or gone: { NUMBER($hives) }
yard-page-mind = Mind
yard-page-food = Food
yard-page-next = Next
yard-page-well-in = Well by { $goal }
yard-page-chances = { $is-same ->
    [yes] { NUMBER($now) } of 100.
   *[no] { NUMBER($now) } of 100 now, <strong>{ NUMBER($done) }</strong> if done.
}

yard-page-flight = Flight day
yard-page-flight-most-days = Bees fly on most days now; a hive that does not while others do is opened first.
yard-page-flight-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") }: bees can fly in { $chance } such winters.
yard-page-flight-ready = <a href="/flight">Be ready for it</a>.
yard-page-flight-none = None likely within ten days.
yard-page-look = Go and look
yard-page-lid = The lid, tomorrow at one
yard-page-days = The coming days
yard-page-days-of = The middle of the weather paths the estimate walks, not a forecast unless a forecast was given. Wind is that of open country { HEIGHT(10) } up.
yard-page-told = The winter told
yard-page-hives = Add or change a hive
