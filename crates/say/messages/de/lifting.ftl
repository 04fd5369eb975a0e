## Was mit einer Zarge zu tun ist, nach ihrem Hebeindex.

lifting-one = eine Person kann sie heben, nah am Körper und ohne sich zu drehen
lifting-two = etwa das { NUMBER($index, digits: 1) }-Fache dessen, was eine Person heben sollte: Rähmchen herausnehmen oder ein zweites Paar Hände holen
lifting-never = etwa das { NUMBER($index, digits: 1) }-Fache dessen, was eine Person heben sollte: nie als Ganzes, zuerst die Rähmchen herausnehmen
lifting-nobody = zu hoch, um von irgendwem gehoben zu werden: die Rähmchen an Ort und Stelle herausnehmen
