## Was an einer Beute fehlt, die auf einer Seite gewählt und getippt wird.

quick-fault-name = einen Namen geben
quick-fault-same-name = eine andere Beute trägt diesen Namen; jeder ihren eigenen geben
quick-fault-as-of = sagen, an welchem Tag zuletzt nachgesehen wurde, etwa 2025-10-05
quick-fault-latitude = einen Ort wählen, oder Grad Nord schreiben, etwa 61.7
quick-fault-longitude = einen Ort wählen, oder Grad Ost schreiben, etwa 27.3
quick-fault-elevation = einen Ort wählen, oder die Höhe über dem Meer schreiben, etwa 105 m
quick-fault-zone = einen Ort wählen, oder die Zeitzone nach ihrer Stadt schreiben, etwa Europe/Helsinki
quick-fault-kind = die Art der Beute wählen
quick-fault-strength = sagen, wie viele Bienen: schwach, mittel oder stark, oder die Waben, die sie besetzen
quick-fault-food = sagen, wie viel Futter: leicht, mittel oder schwer, oder sein Gewicht ohne Beute und Bienen
quick-fault-mites = die Milben schreiben, die in der Probe waren; 0, wenn keine da waren
quick-fault-mites-of = die Bienen der Probe schreiben, etwa 300
