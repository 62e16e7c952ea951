### Den Schlüssel ausprobieren.

try-no-key = Noch gibt es keinen Schlüssel zum Ausprobieren.
try-found = Was habt ihr gefunden?
try-need = Ihr braucht { $part }.
try-how = Lest die Frage. Seht euch mehrere an, nicht nur eines. Messt, ratet nicht.
try-sentence = Lest am Ende den Satz: er muss stimmen.
try-care = Vorsicht
try-before-touch = Vor dem Anfassen lesen
try-may-be = Es kann noch eines von diesen sein:
try-begin = Anfangen
try-ways = Zurück und hinaus
try-back = Zurück
try-leave = Hinaus
try-step = Frage { $number }
try-which = Was von beidem stimmt?
try-cannot-tell = Ich weiß es nicht: beide Wege gehen
try-could-not = weiß nicht
try-possible = { $count ->
    [one] Es kann noch 1 Art sein
   *[other] Es kann noch eine von { $count } Arten sein
}
try-words = Die Wörter
try-not-confused = Nicht zu verwechseln mit { $other }
try-trail = So seid ihr hierher gekommen
try-nobody = Hier kommt nichts heraus, was wir kennen
try-is-it = Es kommt heraus als
try-may-be-it = Es kann diese Art sein
try-went-both-ways = Bei „{ $words }“ wusstet ihr es nicht, darum wurden beide Wege gegangen.
try-no-sentence = Niemand hat aufgeschrieben, woran man sie sicher erkennt.
try-second-look = Zur Sicherheit, seht noch einmal hin
try-compare = Beide Wege: vergleicht diese, und seht, was stimmt
try-one-of = Es ist eines von diesen: dieser Schlüssel unterscheidet sie nicht
try-newcomer = Vielleicht ist es ein Neuling.
try-newcomer-how = Hereinbringen
try-confirm = Stimmt das?
try-another = Noch einen Fund ausprobieren
try-not-it = Es stimmt nicht: zurück
