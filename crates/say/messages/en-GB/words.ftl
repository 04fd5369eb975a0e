## Words and numbers that many messages are made of.

words-by = by { DAY($on) }
words-in-hundred = about { NUMBER($hives) } in 100
words-fewest = fewer than 1 in 100
words-most = more than 99 in 100
words-both-ways = of 100 hives like this about { NUMBER($alive) } { $alive ->
    [one] is
   *[other] are
}, { NUMBER($not) } { $not ->
    [one] is
   *[other] are
} not
words-early = early-{ DAY($on, style: "month") }
words-mid = mid-{ DAY($on, style: "month") }
words-late = late-{ DAY($on, style: "month") }

words-portion = { PORTION($mass) }
words-poured = { POURED($volume) }
words-unknown = not known

words-to = { NUMBER($least) } to { NUMBER($most) }
words-fewer = fewer than expected
words-as-expected = as expected
words-more = more than expected

words-calibrated = calibrated
words-published = published
words-practice = common practice
words-from-memory = from memory
words-judgement = judgement
