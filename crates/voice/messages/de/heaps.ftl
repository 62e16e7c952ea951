### Haufen.

answer-yes = ja
answer-no = nein
answer-varies = beides
answer-middle = Mitte
heaps-no-finds = Zuerst die Funde: Legt sie aus, dann sortiert sie auf zwei Haufen.
heaps-empty = Legt alle Funde auf den Tisch. Was ist der Unterschied zwischen diesen und jenen? Beginnt mit einer Frage. Sortiert die Funde auf einen Ja-Haufen und einen Nein-Haufen.
heaps-whose = Wem gehört der Schlüssel?
heaps-whose-example = Gruppe Blau
heaps-unnamed = Schlüssel { $number }
heaps-start = Mit zwei Haufen beginnen
heaps-title = Zwei Haufen
heaps-copy = Einen Schlüssel vom Papier abschreiben
heaps-on-paper = Steht der Schlüssel schon auf Papier?
heaps-path = Der Weg zu diesem Haufen
heaps-here = { $count ->
    [one] hier: 1 Art
   *[other] hier: { $count } Arten
}
heaps-ask-otherwise = Hier etwas anderes fragen
heaps-yes = Hier heißt es ja
heaps-no = Hier heißt es nein
heaps-middle = Noch nicht sortiert, oder beides
heaps-drag = Zieht eine Karte auf Ja oder Nein. Oder tippt auf der Karte auf ja oder nein.
heaps-tap = Tippt auf jeder Karte auf ja oder nein.
heaps-nobody-waits = Kein Fund ist übrig.
heaps-empty-heap = noch nichts
heaps-comes-out = { $kind } kommt hier heraus.
heaps-go-on = Mit diesen { $count } weitermachen
heaps-one-left = Nur diese Art ist noch übrig: Sie kommt hier heraus.
heaps-difference = Was ist der Unterschied zwischen diesen und jenen?
heaps-own-question = In euren eigenen Worten fragen
heaps-leaf-example = Hat der Blattrand Zacken?
heaps-own-example = Hat es mehr als eine Farbe?
heaps-ask = Das fragen
heaps-could-ask = Was ihr hier fragen könntet
heaps-more-offers = { $count ->
    [one] noch eine Frage
   *[other] noch { $count } Fragen
}
heaps-too-many = In dieser Tabelle stehen so viele verschiedene Messungen, dass hier nicht alle Fragen verglichen werden. Tippt eure eigene Frage.
heaps-no-table = Sobald in der Tabelle etwas über diese Arten steht, findet ihr hier Fragen.
heaps-cheapest = der kürzeste Weg
heaps-hardly = kaum länger
heaps-price = { $price } Fragen mehr je Fund
heaps-price-least = mindestens { $price } Fragen mehr je Fund
heaps-say-yes = { $count ->
    [one] 1-mal ja
   *[other] { $count }-mal ja
}
heaps-say-no = { $count ->
    [one] 1-mal nein
   *[other] { $count }-mal nein
}
heaps-split-both = { $count ->
    [one] 1-mal beides, oder niemand hat nachgesehen
   *[other] { $count }-mal beides, oder niemand hat nachgesehen
}
heaps-does-it-mean = Ist eure Frage so gemeint?
heaps-does-it-mean-more = Wenn ja, kommen die Karten dorthin, wo es die Tabelle sagt, und ihr seht nach, ob das stimmt. Wenn nein, sortiert sie selbst.
heaps-no-words = Es gibt noch keine Frage.
heaps-no-words-remedy = Schreibt den Unterschied als Frage, auf die man mit ja oder nein antworten kann.
heaps-gone = Diesen Schlüssel, diese Art oder diese Frage gibt es nicht mehr.
heaps-gone-remedy = Jemand hat das herausgenommen, vielleicht in einem anderen Fenster. „Was wir gemacht haben“ bringt es zurück.
heaps-not-of-table = Danach könnt ihr die Tabelle nicht fragen: Sie hat keine solche Spalte, kein solches Wort oder keine solche Zahl.
heaps-not-of-table-remedy = Geht zurück und wählt eine der Fragen, die jetzt dastehen. Oder fragt in euren eigenen Worten.
heaps-cannot-write = Mit Ja und Nein allein ist nicht klar, was in die Tabelle gehört.
heaps-cannot-write-remedy = Öffnet die Tabelle und schreibt, was ihr seht, etwa „gelappt / ganzrandig“ oder „30-60“.
card-not-placed = noch nicht sortiert
card-varies = beides: auf beide Haufen
card-table-varies = die Tabelle sagt beides: auf beide Haufen
card-by-table = sagt die Tabelle
card-by-who = { $count ->
    [one] sagt { $who }
   *[other] sagen { $who }
}
card-table-yes = Die Tabelle sagt ja.
card-table-no = Die Tabelle sagt nein.
card-table-both = Die Tabelle sagt beides.
card-take-table = Dorthin legen, wo es die Tabelle sagt
card-mend-table = Die Tabelle stimmt nicht: aufschreiben, was wir sehen
card-differ = Hier sind sich nicht alle einig.
card-we-put = Ihr habt es { $side ->
    [yes] auf den Ja-Haufen
    [no] auf den Nein-Haufen
   *[both] auf beide Haufen
} gelegt.
card-we-put-at = Ihr habt es bei „{ $words }“ { $side ->
    [yes] auf den Ja-Haufen
    [no] auf den Nein-Haufen
   *[both] auf beide Haufen
} gelegt.
card-who-put = Bei „{ $who }“ liegt es { $side ->
    [yes] auf dem Ja-Haufen
    [no] auf dem Nein-Haufen
   *[both] auf beiden Haufen
}.
card-who-put-at = Bei „{ $who }“ liegt es unter „{ $words }“ { $side ->
    [yes] auf dem Ja-Haufen
    [no] auf dem Nein-Haufen
   *[both] auf beiden Haufen
}.
card-take-back = Unsere Karte zurücknehmen
card-we-are-right = Wir haben noch einmal hingesehen: aufschreiben, was wir sehen
card-decide = Entscheiden, wer recht hat
beside-not-placed = Noch nicht sortiert
beside-all-placed = Kein Fund ist vergessen.
beside-nothing-sorted = Noch ist nichts sortiert.
beside-together = Bleiben noch zusammen
beside-first-place = Zuerst kommt jede Karte an ihren Platz.
beside-none-together = Auf keinem Haufen liegen mehr zwei Arten.
beside-finish = Der Rest
beside-finish-button = Mach es für mich fertig
beside-finished = Der Schlüssel ist fertig: Jede Art kommt allein heraus.
beside-unfinish = Den Rest wieder der Gruppe überlassen
beside-answers = { $count ->
    [one] Eine Antwort mehr würde helfen
   *[other] { $count } Antworten mehr würden helfen
}
answers-title = { $count ->
    [0] Alle Antworten sind da
    [one] Eine Antwort mehr würde helfen
   *[other] { $count } Antworten mehr würden helfen
}
answers-none = In der Tabelle fehlt nichts mehr, was helfen würde. Arten, die noch zusammenbleiben, brauchen einen neuen Unterschied.
answers-back = Zurück zu den Haufen
answers-look = Seht nach: { $kind }, { $character }?
answers-why = Damit ließe es sich unterscheiden von: { $kinds }.
answers-has-none = so etwas hat es nicht
answers-number = Was seht ihr? Eine Zahl, oder von-bis, etwa 30-60
answers-write = Aufschreiben
answers-later = Später
heaps-moved = Jemand hat die Frage hier in einem anderen Fenster geändert. Jetzt heißt sie: { $words }
heaps-moved-remedy = Geht zurück, seht euch den Haufen noch einmal an und macht es dort neu.
heaps-moved-away = Jemand hat die Frage hier in einem anderen Fenster herausgenommen.
heaps-moved-away-remedy = { heaps-moved-remedy }
heaps-way-moved = Jemand hat in einem anderen Fenster eine Frage auf dem Weg zu diesem Haufen geändert.
heaps-way-moved-remedy = { heaps-moved-remedy }
heaps-another = Noch einen Schlüssel beginnen
