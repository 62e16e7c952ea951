### Den Schlüssel ausprobieren.

try-no-key = Es gibt noch keinen Schlüssel zum Ausprobieren.
try-found = Was habt ihr gefunden?
try-need = Ihr braucht { $part }.
try-how = Lest die Frage. Seht euch mehrere an, nicht nur eins. Messt nach, ratet nicht.
try-sentence = Lest am Ende den Satz: Er muss stimmen.
try-care = Vorsicht
try-before-touch = Vor dem Anfassen lesen
try-may-be = Das kann es noch sein:
try-begin = Los geht’s
try-ways = Zurück und aufhören
try-back = Zurück
try-leave = Aufhören
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
try-trail = Euer Weg bis hierher
try-nobody = Hier kommt nichts heraus, was wir kennen
try-is-it = Es kommt heraus bei
try-may-be-it = Diese Art kann es sein
try-went-both-ways = Bei „{ $words }“ wusstet ihr es nicht. Darum seid ihr beide Wege gegangen.
try-no-sentence = Noch hat niemand aufgeschrieben, woran ihr sie sicher erkennt.
try-second-look = Seht zur Sicherheit noch einmal hin
try-compare = Beide Wege: Vergleicht diese Arten. Welche stimmt?
try-one-of = Es ist eine von diesen: Der Schlüssel unterscheidet sie nicht
try-newcomer = Vielleicht ist es ein neuer Fund.
try-newcomer-how = In den Schlüssel aufnehmen
try-confirm = Stimmt das?
try-another = Noch einen Fund ausprobieren
try-not-it = Es stimmt nicht: zurück
