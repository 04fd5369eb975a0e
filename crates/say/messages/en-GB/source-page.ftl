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
source-page-all = All figures
source-page-meaning = Meaning
source-page-unit = Unit
source-page-fact = { $fact ->
    [low] One in ten below
    [high] One in ten above
    [varies] Each computed hive draws its own
    [value] Value
    [values] Values
    [status] Status
    [source] Source
    [name] Name
    [material] Material
    [region] Region
    [range] Range
    [size] Size
    [length] Length
    [width] Width
    [depth] Depth
    [frames] Frames
    [combs] Combs
    [comb] Comb
    [boxes] Boxes
    [box] Box
    [wall] Wall
    [wall_r] Resistance of the wall
    [other] The other side
    [other_r] Resistance of the other side
    [edge] Edge
    [conductivity] Conductivity
    [density] Density
    [specific_heat] Specific heat
    [vapour_resistance] Resistance to vapour
    [absorptance] Sunlight taken up
    [breathes] Breathes
    [days] Days
    [months] Months
    [hour] Hour
    [year] Year
    [winter] Winter
    [from] From
    [to] To
    [place] Place
    [hive] Hive
    [colony] Colony
    [yard] Yard
    [yards] Yards
    [belief] Belief
    [word] Word
    [words] Words
    [prior] Before any look
    [given] Given
    [share] Share
    [cold] Cold
    [cool] Cool
    [mild] Mild
    [warm] Warm
    [heat] Heat
    [sugar] Sugar
    [currency] Currency
    [entrance] Entrance
    [upper_hole] Upper hole
    [lid] Lid
    [wrap] Wrap
   *[none] { $written }
}
source-page-unit-of = { $unit ->
    [C] °C
    [day] day of the year
    [days] days
    [hours] hours
    [years] years
    [share] of 1
    [chance] of 1, a chance
    [times] times
    [degrees] degrees
    [bees] bees
    [cells] cells
    [frames] frames
   *[seams] seams
}
