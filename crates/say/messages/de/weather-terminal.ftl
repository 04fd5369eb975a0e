## Das Wetter, auf dem Antworten stehen, im Terminal.

weather-terminal-title = { $yard }: Wetter von { $from } bis { $to } ({ NUMBER($paths) } Verläufe): { $source }
weather-terminal-month = Monat
weather-terminal-mean = Mittel
weather-terminal-cold = 1 h von 100 <
weather-terminal-wind = Wind, 10 m
weather-terminal-flying = Flugtage
weather-terminal-snow = Schnee
weather-terminal-degrees = { TEMPERATURE($air, digits: 1) }
weather-terminal-speed = { SPEED($wind, digits: 1) }
weather-terminal-days = { NUMBER($days, digits: 1) }
weather-terminal-depth = { NUMBER($depth) } { $inches ->
    [yes] in
   *[no] cm
}

weather-terminal-forecast = Vorhersage von { $service }: { $standing }
weather-terminal-until = Bis
weather-terminal-attribution = Nachweis
weather-terminal-read = { $files }: { NUMBER($hours) } Stunden ab { $from }, kälteste { TEMPERATURE($coldest, digits: 1) }
weather-terminal-written = Ganze Stunden geschrieben nach { $file }; um sie zu verwenden: --weather "{ $file }" --columns "{ $columns }"
