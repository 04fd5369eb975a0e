## What a weather stands on, and what to know of it.

weather-drawn = weather drawn from the { $climate }
weather-built-in = built-in climate, ERA5 monthly means 2000-2025 at half a degree
weather-given = monthly means as given
weather-of-file = weather file, { NUMBER($years) } { $years ->
    [one] year
   *[other] years
}
weather-files = { $files }: { $weather }
weather-several = { LIST($weathers, between: "; ") }
weather-foretold = { $forecast } for { NUMBER($hours) } hours ({ $standing }), then { $then }

weather-coarse = The built-in climate is coarse here: its ground lies at { HEIGHT($ground) } and the place { HEIGHT($off) } { $above ->
    [yes] above
   *[no] below
} it. Temperatures are corrected by 5 K/km; a weather file of the place would be better.
weather-laws = Days and hours are drawn around the monthly means; wind, sun and humidity by general laws.
weather-few-winters = The file holds { NUMBER($winters) } { $winters ->
    [one] winter
   *[other] winters
}; each path moves its temperature by a drawn slow term and daily residual. A typical year alone misses the cold by up to 5 K: never size stores on it.
weather-no-whole-year = The weather files hold no whole year; its climate stands in.
weather-bent = Bent through { NUMBER($readings) } temperatures noted at the hives.
weather-typical-year = Its months come from different years: a typical year, whose cold is up to 5 K milder than real.
weather-daily = Hours are drawn between the day's highest and lowest temperature by the course of the sun.
weather-dropped = { NUMBER($values) } values of { $column } that no weather can have were dropped

weather-quantity = { $of ->
    [humidity] humidity
    [wind] wind
    [cloud] cloud
    [precipitation] precipitation
    [pressure] pressure
   *[temperature] temperature
}
weather-filled = { NUMBER($hours) } missing hours of { $quantity } were filled by straight lines (gaps of up to { NUMBER($longest) } h).
weather-lacking = { $quantity }: { $all ->
    [yes] all
   *[no] { NUMBER($hours) }
} hours without a value; { $taken }.
weather-dew-point-taken = the dew point is taken near the day's lowest temperature
weather-wind-taken = a steady { SPEED($wind, digits: 1) } is taken
weather-cover-taken = cover follows from the sun of the day where there is any, else from the day's range of temperature
weather-pressure-taken = the standard atmosphere at the place's height is taken
weather-mean-taken = the mean of the others is taken
weather-sun-derived = sun: { NUMBER($hours) } hours without a value; it follows from cloud and the height of the sun.
weather-sun-split = sun: { NUMBER($hours) } hours were split into direct and diffuse by their clearness.
weather-rain-lacking = precipitation: most hours are without a value; { $taken }.
weather-rain-blind = precipitation: the file has next to nothing on { NUMBER($days) } days, as gauges without heating do in frost; { $taken }.
weather-rain-taken = { $known ->
    [yes] the built-in climate's monthly sums are spread evenly
   *[no] { LENGTH(0.05) } a month is taken
}
weather-snow-derived = snow on the ground is derived from temperature and precipitation.
