## Was alle Seiten gemeinsam haben.

shared-page-day = { DAY($on) }
shared-page-date = { DAY($on, style: "marked") }
shared-page-weekday = { DAY($on, style: "weekday") }
shared-page-short-day = { DAY($on, style: "short") }
shared-page-masses = { MASS($middle, digits: 1, us: 0) } (8 von 10 zwischen { MASS($low, digits: 1, us: 0) } und { MASS($high, digits: 1, us: 0) })
shared-page-says-who = wer sagt das?
shared-page-as-table = Dasselbe als Tabelle

shared-page-noted-dead = tote Bienen: { $how }
shared-page-noted-hook = tote Bienen mit dem Haken herausgezogen: { $how }
shared-page-noted-hole = am oberen Flugloch: { $how }
shared-page-noted-upper = oberes Flugloch: { $how }
shared-page-noted-poke = Stochern am Loch: { $how }
shared-page-noted-wings = verkrüppelte Flügel: { $how }
shared-page-noted-board = Zuckertafel, Fladen oder Futtergeschirr: { $how }
shared-page-noted-lid = unter dem Deckel, mit der Hand: { $how }
shared-page-noted-snow = Schnee an der Beute: { $how }
shared-page-noted-did = getan: { $how }
shared-page-noted-bees = lebende Bienen { $how }
shared-page-noted-colony = Volk { $how }
shared-page-noted-queen = Königin { $how }
shared-page-noted-other = { $what }: { $how }
shared-page-wind = Wind { SPEED($wind, digits: 1) }
shared-page-air = { TEMPERATURE($air) }
shared-page-weather = { LIST($parts) }

shared-page-skip = Direkt zur Seite
shared-page-tagline = Snowhum, ein gerechneter Winter
shared-page-pages = Seiten
shared-page-menu = Menü
shared-page-yard = Stand
shared-page-round = Rundgang
shared-page-jobs = Arbeiten
shared-page-flight = Flugtag
shared-page-fit = Winterfest?
shared-page-setup = Winteraufbau
shared-page-feed = Füttern
shared-page-mites = Milben
shared-page-treatments = Behandlungen
shared-page-spring = Erster Blick im Frühjahr
shared-page-dead = Totes Volk
shared-page-losses = Verluste und Lehren
shared-page-normal = Ist das normal?
shared-page-inside = In der Traube
shared-page-tell = Der Winter erzählt
shared-page-hives = Völker
shared-page-paper = Auf Papier
shared-page-words = Wörter
shared-page-sources = Quellen
shared-page-settings = Einstellungen
shared-page-programs = Programme
shared-page-sign-out = Abmelden
shared-page-chances = Aussichten gelten für solche Völker mit solchen Zeichen. Zuerst Etikett, Recht, Amtstierarzt und Tierarzt.

shared-page-estimate = Schätzung für den <strong>{ DAY($of, style: "full") }</strong>, berechnet um <time datetime="{ $instant }">{ $clock }</time>, aus { $source }.
shared-page-newer = Neueres ist gespeichert; die nächste Schätzung wird gerechnet.
shared-page-first-estimate = Die erste Schätzung wird gerechnet. Diese Seite sieht von selbst wieder nach.
shared-page-trouble = <strong>{ $is-newer ->
    [yes] Keine neuere Schätzung:
   *[no] Keine Schätzung:
} </strong>{ $trouble }
shared-page-working = Es wird gerechnet.
shared-page-renews = Die Seite erneuert sich selbst.
shared-page-counts-it = Was hier steht, zählt es mit.
shared-page-until-then = Bis dahin: Stand vom { DAY($of, style: "full") }, berechnet um { $clock }.
shared-page-of-clock = von { $clock }
shared-page-of-day = vom { DAY($on) }
shared-page-working-anew = Es wird neu gerechnet.
shared-page-before-change = Was hier steht, wurde um { $clock } berechnet, vor der letzten Änderung.

shared-page-noted = <strong>{ $is-changed ->
    [yes] Geändert
   *[no] Notiert
}</strong> bei { $hive }, { DAY($on) }: <span class="said">{ LIST($what, between: "; ") }</span>.
shared-page-withdrawn = <strong>Zurückgezogen.</strong> Die Notiz zählt nicht mehr.
shared-page-taken-back = <strong>Zurückgenommen</strong>: das zuletzt bei { $hive } Getane.
shared-page-another-day = Jetzt angesehen wird der <strong>{ DAY($on, style: "full") }</strong>.

shared-page-over = Diese Völker wurden am { DAY($on, style: "full") } gezählt, für einen Winter, der vorbei ist. <a href="/season">Den neuen Herbst beginnen</a>.
shared-page-invented = Erfundener Stand<span class="for-room">, zum Ausprobieren</span>
shared-page-look-at = Ansehen im Winter 2025–26, am
shared-page-unread = Noch von keinem Imker der Sprache gelesen; Warnungen auch auf Englisch.

shared-page-show-new = Die neue Antwort ist da. Zeigen (was unten geschrieben steht, geht verloren)
