## A note written at a hive, and changed.

note-page-not-yet-at = Not noted yet at { $hive }
note-page-not-yet = Not noted yet
note-page-back = Back to { $hive }
note-page-note = Note
note-page-line = Written, several with “;” between, or tapped below
note-page-depth = Snow against the box, over the ground, { $unit }
note-page-mites = Mites, of so many bees
note-page-words = Free words
note-page-day = Day, if not { DAY($today) }
note-page-keep = Keep it
note-page-examples = What can be written
note-page-fed = Fed, { $unit }
note-page-what-fed = What was fed
note-page-syrup-3-2 = 3:2 syrup
note-page-syrup-2-1 = 2:1 syrup
note-page-syrup-1-1 = 1:1 syrup
note-page-fondant = fondant
note-page-candy = candy
note-page-board = Board, slab or feeder put on
note-page-board-on = The { $board } on it
note-page-eaten-up = eaten up
note-page-taken-off = taken off

note-page-at = A note at { $hive }
note-page-signs = Signs and things done, several with “;” between
note-page-keep-change = Keep the change
note-page-withdraw = Withdraw it
note-page-stood = How it stood
note-page-never-lost = Nothing is ever overwritten. A withdrawn note counts no more and can be brought back by keeping it again.
note-page-title = A note
note-page-version = { $kind ->
    [edited] edited
    [withdrawn] withdrawn
    [restored] restored
   *[made] made
} { DAY($on, style: "full") }, { $clock }

note-page-feed-wanted = { $much }: tap what was fed.
note-page-day-wanted = { $day }: write a day such as 2026-01-18.

## What is wrong with a note as it was sent.

note-page-too-many = More than { NUMBER($most) } entries in one note; send them as two.
note-page-nothing = { $hive }: nothing is noted; tap or write something.
note-page-wrong-entry = { $hive }: { $entry }: { $wrong }
note-page-words-long = The free words are longer than { NUMBER($most) } letters; shorten them.
note-page-wrong-air = The air: { $wrong }
note-page-wrong-wind = The wind: { $wrong }
note-page-doubt = { $hive }: { $doubt }.
note-page-after-looked-at = { DAY($on, style: "full") } is still to come: the day looked at is { DAY($until, style: "full") }. Write a day up to then.
note-page-after-today = { DAY($on, style: "full") } is still to come: today is { DAY($until, style: "full") }. Write a day up to today.
note-page-other-yard = a colony of another yard
