## Le temps sur lequel reposent les réponses, dans le terminal.

weather-terminal-title = { $yard } : temps du { $from } au { $to } ({ NUMBER($paths) } suites) : { $source }
weather-terminal-month = mois
weather-terminal-mean = moyenne
weather-terminal-cold = 1 h sur 100 <
weather-terminal-wind = vent, { HEIGHT(10) }
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

## Un jour que ni la météo ni le comptage n’atteignent.

weather-terminal-before-count = as-of { $on } précède le jour où les colonies ont été comptées, { $counted } ; demander un jour à partir de là
weather-terminal-winter-over = { $yard } a été compté le { $counted } pour un hiver qui a fini ici vers le { $spring }, longtemps avant { $on }. Cela ne dit rien de l’état actuel de ses colonies. La seule étape : snowhum season, qui compte de nouveau celles qui vivent et garde l’hiver passé
weather-terminal-after-files = as-of { $on } vient après la météo donnée, qui finit le { $ends } ; ajouter un fichier qui continue à partir de là
weather-terminal-today-alone = Une prévision n’est demandée que pour aujourd’hui ; un autre jour était demandé.
weather-terminal-no-spring = aucun printemps n’a été trouvé en ce lieu dans les huit mois après le milieu de l’hiver ; mettre first_flow dans [site] du fichier de rucher
weather-terminal-too-short = as-of { $on } : le printemps est ici le { $spring } ; un plan d’hiver commence entre le plein été et le printemps, au moins une semaine avant lui
weather-terminal-no-hours = les fichiers météo ne contiennent aucune heure
weather-terminal-columns-alone = --columns dit comment lire le fichier d’une station ; donner ce fichier avec --weather
weather-terminal-no-folder = il n’y a pas de dossier personnel pour les prévisions

weather-terminal-no-service = nommer un service : --live met-norway, nws ou open-meteo
weather-terminal-no-file = aucun fichier de météo n’a été donné
weather-terminal-no-format = { $file } : ligne 1 : d’aucun format qui est lu. Quatre le sont : EPW (commence par LOCATION), ISD-lite (douze nombres entiers par ligne), GHCN-Daily (lignes ID,YYYYMMDD,ELEMENT,VALUE) et le CSV d’une station avec une ligne de titres.
weather-terminal-by-headings = D’après ses titres c’est le dernier, lu ainsi ; vérifier chaque grandeur, unité et l’ordre du jour et du mois :
weather-terminal-no-headings = Sa première ligne n’a pas de titres pour l’heure et la température ; dire lesquels, par exemple
weather-terminal-apart = ou, si année, mois, jour et heure sont séparés,
