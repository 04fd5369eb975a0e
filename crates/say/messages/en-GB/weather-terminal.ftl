## The weather that answers stand on, in the terminal.

weather-terminal-title = { $yard }: weather from { $from } to { $to } ({ NUMBER($paths) } paths): { $source }
weather-terminal-month = month
weather-terminal-mean = mean
weather-terminal-cold = 1 h in 100 <
weather-terminal-wind = wind, 10 m
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
