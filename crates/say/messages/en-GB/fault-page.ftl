## What cannot be answered as it was asked.

fault-page-missing = There is no { $what ->
    [page] such page
    [note] such note
    [hive] such hive
    [figure] such figure
    [import] import that could be taken back
    [any-colony] colony
   *[colony] such colony
} here.
fault-page-no-colony = There is no colony “{ $asked }” in this yard.
fault-page-elsewhere = It stands at { $address }.
fault-page-foreign = This was sent from another site, and is refused.
fault-page-sign-in = Sign in first.
fault-page-only-shown = This link shows the yard and its hives, and nothing else. Nothing can be changed through it.
fault-page-not-yet = The first estimate is still being computed. Ask again in a moment.
fault-page-trouble = There is no estimate: { $why }
fault-page-cut = A computation ended early. Ask again; if it happens again it is a fault of the program.
fault-page-ended-early = the computation ended early: a fault of the program

fault-page-title-shown = Only to look at
fault-page-title-missing = Not here
fault-page-title-asked = Is that right?
fault-page-title-wrong = Not done
fault-page-yard = <a href="/">Look at the yard</a>.
fault-page-mistyped = The address may be mistyped. <a href="/">Look at the yard</a>.
fault-page-colonies = These are in it:
fault-page-not-noted = Nothing was noted yet.
fault-page-right = It is right: note it
fault-page-mend = Else go back and mend it, or <a href="/">look at the yard</a>.
fault-page-unchanged = Nothing was changed. Go back and mend it, or <a href="/">look at the yard</a>.

fault-page-too-large = This is too large, or broke off.
fault-page-too-slow = This took too long to come.
fault-page-way = This address is not asked in that way.
fault-page-file = { $file } cannot be written: { $why }
fault-page-keep = keep={ $word }: write yes, all or unasked.
fault-page-no-json = This is no note as /api describes it ({ $why }).
