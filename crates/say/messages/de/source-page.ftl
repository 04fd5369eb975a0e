## Die Seite „Woher die Zahlen kommen“.

source-page-heading = Woher die Zahlen kommen
source-page-lede = Jede Zahl, auf der die Antworten beruhen: in einer genannten Veröffentlichung gelesen, übliche Praxis, aus der Erinnerung, oder eigene Einschätzung.
source-page-find = Suchen nach
source-page-look = Suchen
source-page-file = { $title }, { NUMBER($figures) }
source-page-low = Eines von zehn darunter
source-page-high = Eines von zehn darüber
source-page-varies = Jedes gerechnete Volk zieht seinen eigenen
source-page-value = Wert
source-page-unit = Einheit
source-page-status = Art
source-page-source = Quelle
source-page-all = Alle Zahlen
