## The page "Losses and lessons".

losses-page-heading = Losses and lessons
losses-page-kept = Kept.
losses-page-on-its-way = The estimate is on its way; it says when winter ends here.
losses-page-wrong = { CAPITAL($wrong) }
losses-page-wrong-year = { $text }: write the year of the autumn, such as 2025.
losses-page-wrong-count = { $text }: write a number of colonies.

losses-page-lede = Winter { $winter }: { NUMBER($lost) } of { NUMBER($at-risk) } colonies { $is-all-told ->
    [yes] lost
   *[no] lost so far
}.
losses-page-counted = Counted from { DAY($from) } to { DAY($until) }, when winter is over here. Lost is: no living bees, or too small to be a colony; a queen problem that cannot be mended; a disaster. Weak but alive is not lost, and a colony { -united } with another is one fewer at risk (COLOSS BEEBOOK 2013).
losses-page-each = Each colony
losses-page-one = <strong>{ $colony }</strong>: { $says }.
losses-page-examine = Examine it
losses-page-cost = <span class="label">Cost</span> { NUMBER($colonies) } { $currency } of colonies, { NUMBER($food) } { $currency } of food as far as it was noted.
losses-page-worth = What a colony is worth
losses-page-unnamed = Lost to what nobody names
losses-page-stands-on = What this stands on

losses-page-lost = Lost
losses-page-lost-of = { NUMBER($rate) } %: { NUMBER($dead) } dead or empty, { NUMBER($queen-failed) } queen failed, { NUMBER($disaster) } disaster
losses-page-alive = Alive
losses-page-alive-of = { NUMBER($alive) }
losses-page-alive-weak = { NUMBER($alive) }, { NUMBER($weak) } of them weak
losses-page-luck = Luck
losses-page-luck-of = Fits a yearly rate of { NUMBER($low) } to { NUMBER($high) } % (exact); { NUMBER($wilson-low) } to { NUMBER($wilson-high) } % by Wilson
losses-page-next = Next winter
losses-page-next-of = { NUMBER($rate) } % ({ NUMBER($low) } to { NUMBER($high) } %), drawn to what yards usually lose

losses-page-forecast = Forecast against what happened
losses-page-not-yet = Not yet: it is scored once winter is over and every colony told, since those that die first are no fair choice.
losses-page-none-scored = None of the colonies can be scored.
losses-page-compute = Compute what was to be expected on { DAY($on) }
losses-page-seconds = (some seconds)
losses-page-scored = Foretold, and what came
losses-page-colony = Colony
losses-page-foretold = Foretold alive, of 100
losses-page-foretold-of = { NUMBER($of-hundred) }
losses-page-came = Came
losses-page-came-of = { $is-alive ->
    [yes] alive
   *[no] dead
}
losses-page-model = Today's model, asked about the day the colonies were counted. Disasters and colonies that left are not scored; a failed queen counts as alive.
losses-page-log = Log score
losses-page-log-of = { NUMBER($score, digits: 2) }, base rate { NUMBER($base, digits: 2) }. Smaller is better; if its chances are right it lies between { NUMBER($low, digits: 2) } and { NUMBER($high, digits: 2) }
losses-page-brier = Brier score
losses-page-brier-of = { NUMBER($score, digits: 2) }, base rate { NUMBER($base, digits: 2) }
losses-page-base = Base rate
losses-page-base-of = { NUMBER($of-hundred) } of 100 alive: { $source }

losses-page-winters = Winters side by side
losses-page-winter = Winter
losses-page-food-given = Food given
losses-page-most-mites = Most mites in autumn
losses-page-treated = Treated
losses-page-treated-of = { NUMBER($times) }
losses-page-coldest = Coldest noted
losses-page-winter-lost = { NUMBER($lost) } of { NUMBER($at-risk) }
losses-page-winter-lost-so-far = { NUMBER($lost) } of { NUMBER($at-risk) }, { NUMBER($not-told) } not told
losses-page-food = { MASS($food, digits: 1, us: 0) }, { NUMBER($price) } { $currency }
losses-page-none-noted = none noted
losses-page-mites = { NUMBER($found) } in { NUMBER($bees) } bees, { $colony }, { DAY($on) }
losses-page-no-count = no count kept
losses-page-cold = { TEMPERATURE($air) }, { DAY($on) }
losses-page-earlier = Colonies of earlier winters are those that were noted in them: the autumn's own count is kept for the latest alone.

losses-page-others = What others lost
losses-page-told = As keepers told surveys, not as a laboratory found
losses-page-rate = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) })
losses-page-who = Who
losses-page-of-which = { $who }; { $of-which }
losses-page-read = Where read
losses-page-survey = For the yearly survey
losses-page-survey-numbers = The numbers loss surveys ask for, to be copied. What the records do not hold is left open.
losses-page-no-record = not in the records

## The spring count.

losses-page-count = Count the colonies
losses-page-count-what = Once winter is over, say what each is. A colony { -united } with another is noted at its hive, as <code>united=NAME</code>.
losses-page-count-of = <strong>{ $colony }</strong>, { $fate }
losses-page-count-of-untold = <strong>{ $colony }</strong>
losses-page-as-noted = as it is noted
losses-page-is-alive = alive, laying queen
losses-page-is-weak = alive, weak
losses-page-is-queen-failed = queen failed
losses-page-is-dead = dead
losses-page-is-disaster = disaster
losses-page-is-sold = sold
losses-page-day = Day, if not { DAY($today) }
losses-page-keep = Keep the count
losses-page-came-or-went = Colonies that came or went and are not in the records
losses-page-added = Bought or split in since autumn
losses-page-removed = Sold or { -united } since
losses-page-count-too = Count them too
losses-page-not-kept = They change who was at risk on this page; they are not kept.
losses-page-no-answer = { $colony }: { $text } is none of the answers.
losses-page-not-counted = No colony was counted; choose an answer for at least one.

## A club's winter.

losses-page-club = A club's winter
losses-page-members = One member a line: name, lost / colonies
losses-page-example = Ann 1/5
losses-page-pool = Pool them
losses-page-too-many = More than { NUMBER($most) } members; in a terminal snowhum losses --club FILE reads a list of any length.
losses-page-wrong-member = { $text }: write name, lost / colonies, such as Ann 1/5.
losses-page-club-lost = { NUMBER($lost) } of { NUMBER($at-risk) } colonies of { NUMBER($members) } members lost: <strong>{ NUMBER($rate, digits: 1) } %</strong> overall ({ NUMBER($low, digits: 1) } % to { NUMBER($high, digits: 1) } %; { $method }).
losses-page-club-mean = The mean of the members' own rates is { NUMBER($mean, digits: 1) } %.
losses-page-club-spread = Between members it spreads { NUMBER($times, digits: 1) } times as much as luck alone.
losses-page-club-ends = { NUMBER($without) } without a loss, { NUMBER($lost-all) } lost all.
