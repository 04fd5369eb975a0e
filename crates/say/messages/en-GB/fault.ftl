## What is wrong and what would be right, wherever something is read.

fault-both = { $first }; { $then }
fault-at = { $place }: { $says }
fault-ended = { $says }.
fault-sentence = { SENTENCE($says) }
fault-quoted = "{ $text }"
fault-cannot-be = "{ $written }" cannot be
fault-letters = write at most { NUMBER($letters) } letters
fault-no-equals = "{ $written }" has no "="
fault-once = give it once

# Words that are typed in English in every language.
fault-unknown = "{ $written }" is not known here
fault-did-you-mean = did you mean "{ $near }"?
fault-did-you-mean-or = did you mean "{ $near }"? Near it are { LIST($others) }
fault-one-of = write one of { LIST($known) }
fault-nearest = the nearest known are { LIST($near) }
fault-no-share = "{ $written }" is no share
fault-share-right = write a per cent, such as "75 %"

fault-no-day = "{ $written }" is no day
fault-day-right = write year, month and day, such as 2025-10-05, or 5 Oct 2025
fault-no-time = "{ $written }" is no time
fault-time-right = write such as "2026-01-06 10:00"
fault-moving-day = "{ $written }" is another day every day
fault-moving-day-right = a file is read on other days too: write the day itself, such as 2025-10-05
fault-far-day = "{ $written }" is too far away
fault-two-days = "{ $written }" may be two days
fault-either-day = write { $one } or { $other }
fault-every-year = "{ $written }" is a day of every year
fault-every-year-right = write the year too, such as 2025-10-05

fault-hint = hint: { $remedy }
