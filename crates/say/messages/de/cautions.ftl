## Eine Vorsicht, deren eigene Worte nicht lesbar sind.

cautions-title = Vorsicht
cautions-says = Etikett, örtliches Recht, Amtstierarzt und Tierarzt gehen vor.
