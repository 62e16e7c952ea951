### Haufen.

answer-yes = ja
answer-no = nein
answer-varies = beides
answer-middle = Mitte
heaps-no-finds = Zuerst die Funde: legt sie aus, dann sortiert sie auf zwei Haufen.
heaps-empty = Legt alle Funde auf den Tisch. Was unterscheidet diese von jenen? Beginnt mit einer Frage und sortiert sie auf einen Ja-Haufen und einen Nein-Haufen.
heaps-whose = Wessen Schlüssel ist es?
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
heaps-yes = Diese sagen ja
heaps-no = Diese sagen nein
heaps-middle = Noch nicht gelegt, oder beides kommt vor
heaps-drag = Zieht eine Karte auf Ja oder Nein, oder tippt auf ihr ja oder nein an.
heaps-tap = Tippt auf jeder Karte ja oder nein an.
heaps-nobody-waits = Kein Fund ist übrig.
heaps-empty-heap = noch nichts
heaps-comes-out = { $kind } kommt hier heraus.
heaps-go-on = Mit diesen { $count } weitermachen
heaps-one-left = Nur noch diese ist da: sie kommt hier heraus.
heaps-difference = Was unterscheidet diese von jenen?
heaps-own-question = In eigenen Worten fragen
heaps-leaf-example = Ist der Rand des Blattes zackig?
heaps-own-example = Hat es mehr als eine Farbe?
heaps-ask = Das fragen
heaps-could-ask = Was ihr hier fragen könntet
heaps-more-offers = { $count ->
    [one] noch eine Frage
   *[other] noch { $count } Fragen
}
heaps-no-table = Sobald die Tabelle etwas über diese Arten sagt, werden hier Fragen angeboten.
heaps-cheapest = der kürzeste Weg
heaps-hardly = kaum länger
heaps-price = { $price } Fragen mehr je Fund
heaps-price-least = mindestens { $price } Fragen mehr je Fund
heaps-say-yes = { $count ->
    [one] 1 sagt ja
   *[other] { $count } sagen ja
}
heaps-say-no = { $count ->
    [one] 1 sagt nein
   *[other] { $count } sagen nein
}
heaps-split-both = { $count ->
    [one] eine sagt beides
   *[other] { $count } sagen beides
}
heaps-does-it-mean = Meint eure Frage das?
heaps-does-it-mean-more = Wenn ja, gehen die Karten dorthin, wo die Tabelle es sagt, und ihr seht nach, ob das stimmt. Wenn nicht, sortiert sie von Hand.
heaps-no-words = Es gibt noch keine Frage.
heaps-no-words-remedy = Schreibt den Unterschied als Frage, auf die man ja oder nein antworten kann.
heaps-gone = Diesen Schlüssel, diese Art oder diese Frage gibt es nicht mehr.
heaps-gone-remedy = Sie wurde herausgenommen, vielleicht in einem anderen Fenster. „Was wir getan haben“ bringt sie wieder.
heaps-not-of-table = Danach kann die Tabelle nicht gefragt werden: so eine Spalte, ein solches Wort oder eine solche Zahl hat sie nicht.
heaps-not-of-table-remedy = Geht zurück und wählt eine der Fragen, die jetzt angeboten werden, oder fragt in euren eigenen Worten.
heaps-cannot-write = Aus Ja und Nein allein ist nicht klar, was in die Tabelle gehört.
heaps-cannot-write-remedy = Öffnet die Tabelle und schreibt, was ihr seht, etwa „gelappt or ganzrandig“ oder „30-60“.
card-not-placed = noch nicht gelegt
card-varies = beides kommt vor: auf beide Haufen
card-table-varies = beides kommt vor, sagt die Tabelle: auf beide Haufen
card-by-table = sagt die Tabelle
card-by-who = { $count ->
    [one] sagt { $who }
   *[other] sagen { $who }
}
card-table-yes = die Tabelle sagt ja.
card-table-no = die Tabelle sagt nein.
card-table-both = die Tabelle sagt, dass beides vorkommt.
card-take-table = Dorthin legen, wo die Tabelle es sagt
card-mend-table = Die Tabelle stimmt nicht: schreiben, was wir sehen
card-differ = hier ist man sich nicht einig.
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
card-we-are-right = Wir haben noch einmal hingesehen: schreiben, was wir sehen
card-decide = Entscheiden, wer recht hat
beside-not-placed = Noch nicht gelegt
beside-all-placed = Kein Fund ist vergessen.
beside-nothing-sorted = Noch ist nichts sortiert.
beside-together = Noch beisammen
beside-first-place = Zuerst bekommt jede Karte ihren Platz.
beside-none-together = Auf keinem Haufen liegen noch zwei Arten.
beside-finish = Der Rest
beside-finish-button = Mach es für mich fertig
beside-finished = Er ist fertig: Jede Art kommt allein heraus.
beside-unfinish = Den Rest wieder uns überlassen
beside-answers = { $count ->
    [one] Eine Antwort mehr würde helfen
   *[other] { $count } Antworten mehr würden helfen
}
answers-title = { $count ->
    [0] Alle Antworten sind da
    [one] Eine Antwort mehr würde helfen
   *[other] { $count } Antworten mehr würden helfen
}
answers-none = Nichts, wonach die Tabelle fragt, ist dort leer, wo es helfen würde. Arten, die noch beisammen sind, brauchen einen neuen Unterschied.
answers-back = Zurück zu den Haufen
answers-look = Seht euch an: { $kind }, { $character }?
answers-why = Das würde es trennen von: { $kinds }.
answers-has-none = so etwas hat es nicht
answers-number = Was seht ihr? Eine Zahl oder ein Bereich, etwa 30-60
answers-write = Aufschreiben
answers-later = Später
heaps-moved = Ein anderes Fenster hat die Frage hier inzwischen geändert. Jetzt heißt sie: { $words }
heaps-moved-remedy = Geht zurück, seht euch den Haufen an, wie er jetzt liegt, und macht es dort noch einmal.
heaps-nothing-asked = noch keine Frage
heaps-way-moved = Ein anderes Fenster hat inzwischen eine Frage auf dem Weg zu diesem Haufen geändert.
heaps-another = Noch einen Schlüssel beginnen
