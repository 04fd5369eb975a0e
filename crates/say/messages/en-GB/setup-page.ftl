## The page "Winter set-up": a hive dressed otherwise, side by side.

setup-page-heading = Winter set-up
setup-page-lede = What would change if { $hive } were dressed otherwise?

setup-page-chance = No real difference: what there is may be chance.
setup-page-hardly = No real difference: fewer than { NUMBER($least) } hives in 100.
setup-page-difference = About { NUMBER($hives) } hives in 100 { $is-better ->
    [yes] more
   *[no] fewer
} come to spring alive, fed and queenright ({ $is-sharp ->
    [yes] ± less than 1
   *[no] ± { NUMBER($error) }
}).
setup-page-beside = Side by side
setup-page-caption = { $hive } from { DAY($from) } to spring, under the same weather
setup-page-alive = Alive in spring, of 100
setup-page-food = Food eaten to spring
setup-page-heat = Heat loss in the coldest month
setup-page-lid-water = Water on the lid, a day
setup-page-wall-water = Water on the walls, a day
setup-page-floor-water = Water on the { -floor }, a day
setup-page-drip = Dripping on the cluster, a day
setup-page-price = Price
setup-page-whole = { NUMBER($number) }
setup-page-eaten = { MASS($food, digits: 1, us: 0) }
setup-page-loss = { LOSS($loss, digits: 2) }
setup-page-water = { GRAMS($water, us: 1) }
setup-page-money = { NUMBER($price) } { $currency }
setup-page-from-count = From the day the colonies were counted, as they were then; notes since do not count here.
setup-page-who = Says who?

setup-page-hive = Hive
setup-page-as-it-is = as it is
setup-page-words = Beside it, in your own words
setup-page-compare = Compare
setup-page-seconds = It takes some seconds: whole winters are computed, each under the same weather.

## Parts of a hive, and what each can be; also on the page that notes a change.

setup-page-lid = Lid
setup-page-foam-thin = { LENGTH(0.025) } foam
setup-page-foam-thick = { LENGTH(0.05) } foam
setup-page-straw = straw quilt
setup-page-bare = bare board
setup-page-wrap = Wrap
setup-page-felt = felt paper
setup-page-no-wrap = none
setup-page-hole = Upper hole
setup-page-hole-small = { LENGTH(0.02, us: 1) }
setup-page-hole-large = { LENGTH(0.025) }
setup-page-hole-shut = shut
setup-page-floor = { CAPITAL(-floor) }
setup-page-floor-solid = solid
setup-page-floor-mesh = open mesh
setup-page-floor-tray = mesh with tray
setup-page-entrance = Entrance
setup-page-entrance-reduced = reduced
setup-page-entrance-full = full
setup-page-entrance-shut = shut
setup-page-boxes = Boxes
setup-page-one-deep = one deep
setup-page-two-deep = two deep

setup-page-wrong = { $change }: { $wrong }
setup-page-too-many = At most { NUMBER($most) } set-ups are compared at once.
setup-page-no-hive = The colony has no hive.
setup-page-too-many-changes = Too many changes for one hive.
