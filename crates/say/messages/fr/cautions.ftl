## Une mise en garde dont les propres mots ne peuvent être lus.

cautions-title = Attention
cautions-says = La notice, la loi locale, les services vétérinaires et le vétérinaire passent d’abord.
