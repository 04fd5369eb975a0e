## The page "On paper", and its sheets.

paper-page-heading = On paper
paper-page-lede = Open a sheet and print it; every one is complete in black and white.
paper-page-yard = Yard sheet
paper-page-yard-what = Every hive in walking order: one word, one date, one next thing.
paper-page-round = Round sheet
paper-page-round-what = Signs to ring with a pencil and gloves on, typed in at home.
paper-page-cards = Hive cards
paper-page-cards-what = One for each hive, with a code that opens its page.
paper-page-treatments = Treatment record
paper-page-treatments-what = What was given, as an inspector asks for it.
paper-page-season = Season summary
paper-page-season-what = Each hive from autumn on: what stood, what was done, what the estimate said.
paper-page-terminal = In a terminal <code>snowhum print --out FOLDER</code> writes all of them as files.
paper-page-no-estimate = The estimate is on its way; print this page once it is there.
paper-page-invented = An invented yard.

paper-page-cut = Cut apart, laminate, and pin inside the { -roof } or to the stand.
paper-page-here-alone = You opened this page on the machine that serves it, so these codes lead nowhere from a telephone. Serve the pages to the yard and print the cards from the address the telephone uses.
paper-page-code = The page of { $hive }
paper-page-card-invented = { $yard } (invented)
paper-page-boxes = { $kind }, boxes: { NUMBER($boxes) }
paper-page-registration = Registration { $number }
paper-page-queen = Queen: { $year }  Marked: ______

paper-page-yard-line = By: the last day of the next thing. Air ______  snow ______  wind ______  walked on ____________
paper-page-yard-heading = { $yard }, { DAY($on, style: "full") }
paper-page-hive = Hive
paper-page-verdict = Word
paper-page-by = By
paper-page-next = Next
paper-page-done = Done
paper-page-see-flight = see whether it flies
paper-page-listen-indoors = listen, rake out its dead, read the room's thermometer
paper-page-listen = listen and count the dead before it

paper-page-season-heading = { $yard }: the season
paper-page-season-days = From { DAY($from, style: "full") } to { DAY($until, style: "full") }.
paper-page-autumn = In autumn
paper-page-stood = about { $bees } bees on { NUMBER($frames) } frames; food { $food }, { $known }; mites { $mites }; queen { $queen }.
paper-page-visits = Visits noted
paper-page-fed = Fed
paper-page-treated = Treated
paper-page-nothing = Nothing noted.
paper-page-given = { MASS($food, digits: 1, us: 0) } of { $what }.
paper-page-treatment = { DAY($on, style: "marked") }: { $class }.
paper-page-months = What the estimate said after the last visit of each month
paper-page-after = After
paper-page-alive = Of 100 such hives alive
paper-page-food = Food, if alive
paper-page-mass = { MASS($food, digits: 1, us: 0) }
