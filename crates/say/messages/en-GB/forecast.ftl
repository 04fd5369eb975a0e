## Forecasts of live services: how they were come by, what to know of them, and why there is none.

forecast-nws = the US National Weather Service
forecast-of = the forecast of { $service }
forecast-fresh = fetched just now
forecast-not-modified = asked just now; the service has nothing newer
forecast-current = fetched { $age } ago and still current
forecast-kept = kept from { $age } ago, since { $why }
forecast-age = { NUMBER($number) } { $unit ->
    [minutes] min
    [hours] h
   *[days] days
}
forecast-was = The forecast was { $standing }.
forecast-between = { NUMBER($hours) } hours of the forecast from { $from } to { $to } lie between its steps: temperature, humidity, wind and cloud run in straight lines, precipitation is spread evenly.
forecast-short-steps = { NUMBER($steps) } steps of the forecast have no temperature on a full hour and were left out.
forecast-gap = The forecast has a gap after { $after } and was cut there.
forecast-dropped = { NUMBER($values) } values of the forecast that no weather can have were left out.
forecast-square = The square of the place was kept from earlier, since { $why }.
forecast-ending = The service says that this form of its data will end (203); look for a newer version of Snowhum.
forecast-cache-damaged = the cached forecast { $file } is damaged ({ $wrong }) and was left out; it is written anew at the next answer
forecast-cache-unwritable = the forecast cannot be kept in { $file } ({ $wrong }); make the folder writable, since each run asks the service anew

forecast-no-contact = { $service } wants to know whom to write to; give a contact, a mail address or the address of a site, which is sent with every request
forecast-unfit-contact = the contact for { $service } { $wrong ->
    [long] is longer than 200 characters
    [letter] holds a blank or a letter that an address cannot have
   *[neither] is neither a mail address nor the address of a site
}; give one like name@host.example or https://host.example
forecast-terms = Open-Meteo is free for use that is not commercial; accept its terms (https://open-meteo.com/en/terms) if that is so, or ask MET Norway
forecast-not-covered = { $service } does not forecast for { $latitude }, { $longitude }; ask MET Norway, which covers the whole world
forecast-position = { $what ->
    [latitude] the latitude of the place cannot be used; give degrees from -90 to 90, north positive
    [longitude] the longitude of the place cannot be used; give degrees from -180 to 180, east positive
   *[elevation] the elevation of the place cannot be used; give metres above the sea, at most 9000
}
forecast-endpoint = the address of { $service }, "{ $address }", { $wrong ->
    [open] is not encrypted
    [server] is no address of a server
   *[address] is no address
}; give one that begins with https://
forecast-none = no forecast; the answers stand on the site's climate. { $service }: { $why }; { $right }
forecast-none-kept = { $none }. { LIST($notes, between: ". ") }
forecast-not-laid = No forecast: { $why }. The answers stand on the site's climate alone.

forecast-slow = no answer within { NUMBER($seconds) } s
forecast-unreachable = cannot be reached ({ $detail })
forecast-refused = the service refuses the request (403)
forecast-too-often = the service is asked too often (429)
forecast-left-alone = the service asked to be left alone until { $until }
forecast-unknown-place = the service does not know this place (404)
forecast-status = the service answered { NUMBER($status) }
forecast-elsewhere = the service points to { $to }, which is another place or not encrypted
forecast-too-big = the answer is larger than { NUMBER($megabytes) } MB
forecast-no-forecast = the answer is no forecast: { $wrong }
forecast-over = the forecast ended at { $end }
forecast-right = { $way ->
    [connection] check the connection and try again later
    [contact] check the contact and try again in an hour, or ask another service
    [place] check the place, or ask MET Norway, which covers the whole world
    [changed] the service may have changed, or something stands in between (a sign-in page of the network); try again later, or ask another service
   *[later] try again later, or ask another service
}
