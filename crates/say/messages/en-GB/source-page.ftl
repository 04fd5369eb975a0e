## The page "Where the figures come from".

source-page-heading = Where the figures come from
source-page-lede = Every figure the answers stand on: read in a named publication, common practice, recalled, or our own judgement.
source-page-find = Look for
source-page-look = Look
source-page-title = { $file ->
    [winter_parameters] The winter model
    [winter_start] How a colony enters the winter model
    [winter_hour] An hour and a day of the winter model
    [watch_parameters] What signs say
    [watch_looks] Looks and the days between them
    [now] Words and lids
    [indoors] Rooms that hives winter in
    [jobs] Jobs and dates
    [spring_strength] Strength in spring
    [weighing] Weighing
    [empty_hive] The empty hive
    [mites] Mites
    [edge_losses] Edges of the hive
    [openings] Openings
    [materials] Materials
    [feeds] Feeds
    [fit] Fit for winter
    [rules_of_thumb] Rules of the trade
    [deadout] Dead colonies
    [losses] Losses and lessons
    [weather_generator] How weather is made
    [weather_limits] Weather read, made whole and judged
    [wind] Wind at the hives
    [weather_files] Places of weather files
    [looking_ahead] How long answers look ahead and hold
    [calibration] The model held against real winters
    [drawing] Drawings
    [quick_start] The four quick facts
   *[other] Other figures
}
source-page-file = { $title }, { NUMBER($figures) }
source-page-low = One in ten below
source-page-high = One in ten above
source-page-varies = Each computed hive draws its own
source-page-value = Value
source-page-unit = Unit
source-page-status = Status
source-page-source = Source
source-page-all = All figures
