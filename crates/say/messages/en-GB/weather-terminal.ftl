## The weather that answers stand on, in the terminal.

weather-terminal-title = { $yard }: weather from { $from } to { $to } ({ NUMBER($paths) } paths): { $source }
weather-terminal-month = month
weather-terminal-mean = mean
weather-terminal-cold = 1 h in 100 <
weather-terminal-wind = wind, { HEIGHT(10) }
weather-terminal-flying = flying days
weather-terminal-snow = snow
weather-terminal-degrees = { TEMPERATURE($air, digits: 1) }
weather-terminal-speed = { SPEED($wind, digits: 1) }
weather-terminal-days = { NUMBER($days, digits: 1) }
weather-terminal-depth = { NUMBER($depth) } { $inches ->
    [yes] in
   *[no] cm
}

weather-terminal-forecast = Forecast of { $service }: { $standing }
weather-terminal-until = Until
weather-terminal-attribution = Attribution
weather-terminal-read = { $files }: { NUMBER($hours) } hours from { $from }, coldest { TEMPERATURE($coldest, digits: 1) }
weather-terminal-written = Whole hours written to { $file }; to use them: --weather "{ $file }" --columns "{ $columns }"

## A day that the weather or the count does not reach.

weather-terminal-before-count = as-of { $on } lies before the day the colonies were counted, { $counted }; ask about a day from then on
weather-terminal-winter-over = { $yard } was counted on { $counted } for a winter that ended here about { $spring }, long before { $on }. It says nothing of how its colonies stand now. The one step: snowhum season, which counts those that live anew and keeps last winter
weather-terminal-after-files = as-of { $on } lies after the weather given, which ends on { $ends }; add a file that goes on from there
weather-terminal-today-alone = A forecast is asked for today alone; another day was asked about.
weather-terminal-no-spring = no spring was found at this site within eight months of midwinter; set first_flow in [site] of the yard file
weather-terminal-too-short = as-of { $on }: spring here is { $spring }; a winter plan starts between high summer and spring, at least a week before it
weather-terminal-no-hours = the weather files hold no hours
weather-terminal-columns-alone = --columns says how to read a station's file; give that file with --weather
weather-terminal-no-folder = there is no home folder to keep forecasts in

weather-terminal-no-service = name a service: --live met-norway, nws or open-meteo
weather-terminal-no-file = no weather file was given
weather-terminal-no-format = { $file }: line 1: of no format that is read. Four are: EPW (begins with LOCATION), ISD-lite (twelve whole numbers a row), GHCN-Daily (rows of ID,YYYYMMDD,ELEMENT,VALUE) and a station's CSV with a line of headings.
weather-terminal-by-headings = By its headings it is the last, read so; check each quantity, unit and the order of day and month:
weather-terminal-no-headings = Its first line has no headings that tell time and temperature; say which they are, such as
weather-terminal-apart = or, where year, month, day and hour stand apart,
