## Die Seite „Arbeiten und Termine“.

jobs-page-heading = Arbeiten und Termine
jobs-page-calendar = In den eigenen Kalender übernehmen
jobs-page-first-look = Erster Blick im Frühjahr
jobs-page-none-due = Heute ist kein Termin des Standjahres fällig.
jobs-page-due = Jetzt fällig: { NUMBER($jobs) }
jobs-page-soon = Binnen eines Monats
jobs-page-later = Später
jobs-page-past = Der Tag ist vorbei
jobs-page-picture = Als Bild
jobs-page-serving = Taugliche Tage

jobs-page-missed = Falls es nicht geschah
jobs-page-at = Bei { LIST($hives, between: ", ") }.
jobs-page-why = Warum
jobs-page-belief = „{ $said }“ <em>Stimmt nicht.</em> { $so }
jobs-page-who = Wer sagt das?
jobs-page-source = Wer sagt das? { $source }.
jobs-page-caution = Die Vorsicht bei <a href="#{ $id }">{ $job }</a> gilt auch hier.

jobs-page-autumn = Spätsommer und Herbst
jobs-page-winter = Winter
jobs-page-spring = Frühjahr
jobs-page-window = { DAY($first) } bis { DAY($last) }, üblich { DAY($usual) }
jobs-page-from = ab { DAY($first) }; nicht jeden Winter
jobs-page-asked-about = { DAY($on) }, der Tag, nach dem gefragt wird

jobs-page-serving-lede = In jedem halben Monat können an so vielen Tagen die Bienen fliegen, darf der Deckel eine Minute ab sein, dürfen Waben gezogen werden; in Klammern 8 von 10 Wintern.
jobs-page-days = Tage
jobs-page-fly = Bienen fliegen
jobs-page-lid = Deckel ab
jobs-page-combs = Waben
jobs-page-half = { NUMBER($from) }–{ DAY($to) }
