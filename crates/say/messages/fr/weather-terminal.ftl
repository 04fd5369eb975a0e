## Le temps sur lequel reposent les réponses, dans le terminal.

weather-terminal-title = { $yard } : temps du { $from } au { $to } ({ NUMBER($paths) } suites) : { $source }
weather-terminal-month = mois
weather-terminal-mean = moyenne
weather-terminal-cold = 1 h sur 100 <
weather-terminal-wind = vent, 10 m
weather-terminal-flying = jours de vol
weather-terminal-snow = neige
weather-terminal-degrees = { TEMPERATURE($air, digits: 1) }
weather-terminal-speed = { SPEED($wind, digits: 1) }
weather-terminal-days = { NUMBER($days, digits: 1) }
weather-terminal-depth = { NUMBER($depth) } { $inches ->
    [yes] po
   *[no] cm
}

weather-terminal-forecast = Prévision de { $service } : { $standing }
weather-terminal-until = Jusqu’à
weather-terminal-attribution = Attribution
weather-terminal-read = { $files } : { NUMBER($hours) } heures à partir du { $from }, la plus froide { TEMPERATURE($coldest, digits: 1) }
weather-terminal-written = Heures entières écrites dans { $file } ; pour s’en servir : --weather "{ $file }" --columns "{ $columns }"
