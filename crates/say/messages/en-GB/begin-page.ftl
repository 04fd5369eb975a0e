## The page "Your own yard".

begin-page-heading = Your own yard
begin-page-lede = Dress your hive as it stands. What you do not say is assumed, grey, and can be put right later.
begin-page-kept-already = { $yard } is kept here already. For another yard save a file, and start <code>snowhum serve --apiary my-yard.toml</code>.
begin-page-to-mend = { $faults ->
    [one] One thing is to be mended
   *[other] Some things are to be mended
}
begin-page-whose = { $hive }: { SENTENCE($fault) }
begin-page-same-name = The yard served now has this name; give yours another.
begin-page-no-town = Choose the town nearest to the hives, or write their own place below it.

begin-page-begin = Begin
begin-page-name = What the yard is called
begin-page-last-looked = The day you last looked
begin-page-town = The town nearest to the hives
begin-page-choose = choose
begin-page-far = Far from all of these, or much higher?
begin-page-latitude = Degrees north
begin-page-longitude = Degrees east; west is negative
begin-page-elevation = Height above the sea, { $unit }
begin-page-zone = Time zone, such as Europe/Helsinki
begin-page-add = Add a hive
begin-page-fewer = One hive fewer
begin-page-save = Save it as a yard file

# Also the name of a hive that the form begins with.
begin-page-hive = Hive { NUMBER($number) }
begin-page-my-yard = My yard
begin-page-hive-name = Name
begin-page-kind = Kind of hive
begin-page-dress = Dress it
begin-page-show = Show it so
begin-page-bees = Bees
begin-page-food = Food
begin-page-mites = Mites in a sample; empty if not counted
begin-page-mites-of = Bees in the sample
begin-page-counted = Counted or weighed?
begin-page-frames = Frames covered with bees on both sides
begin-page-weight = Food without hive and bees, { $unit }
begin-page-mites-on = The day of the mite sample

begin-page-kept-one = The records hold a yard already; start `snowhum serve` to see it. For another yard save a file here, and start `snowhum serve --apiary FILE`.
