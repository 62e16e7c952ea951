### Blätter, die einzeln aufgehoben sind.

leaves-title = Einzelne Blätter
leaves-link = Einzelne Blätter
leaves-back = Alle Blätter
leaves-none = Noch ist kein Blatt einzeln aufgehoben. Messt Blätter in einem Scan und übernehmt sie, oder nehmt eine Tabelle mit einer Zeile je Blatt auf.
leaves-all = { $count ->
    [one] 1 Blatt, { $kinds }.
   *[other] { $count } Blätter, { $kinds }.
}
leaves-count = { $count ->
    [one] 1 Blatt
   *[other] { $count } Blätter
}
leaves-of-plants = { $count ->
    [one] { $leaves } von 1 Pflanze
   *[other] { $leaves } von { $count } Pflanzen
}
leaves-reach-of = { $span }, { $leaves }
leaves-far = Weit weg von den anderen
leaves-far-why = Seht euch jedes Blatt noch einmal an. Es zählt, bis ihr sagt, dass es falsch gemessen wurde.
leaves-far-one = { $kind }, { $about }: { $value }. Die anderen haben { $others }.
leaves-right = Es stimmt: Lasst es drin
leaves-wrong = Es wurde falsch gemessen
leaves-other-kind = Es ist eine andere Art:
leaves-other-kind-do = Dorthin legen
leaves-not-counted = Falsch gemessen und deshalb nicht gezählt
leaves-again = Wieder zählen
leaves-is-right = noch einmal angesehen, und es stimmt
leaves-is-wrong = falsch gemessen und deshalb nicht gezählt
leaves-strips = Vom kleinsten zum größten
leaves-dots = Jeder Punkt ist ein Blatt. Ein Ring ist ein Blatt weit weg von den anderen.
leaves-kind = Art
leaves-reach = Blätter
leaves-mean = Mittelwert und Standardabweichung
leaves-each = Alle Blätter
leaves-more-pairs = { $count ->
    [one] 1 weiteres Paar von Arten ist genauso gut oder besser getrennt.
   *[other] { $count } weitere Paare von Arten sind genauso gut oder besser getrennt.
}
leaves-what = Was stimmt nicht?
leaves-nothing-measured = An ihm wurde nichts gemessen.
leaves-take-out = Dieses Blatt herausnehmen
leaves-put-right = Berichtigen, was gemessen wurde
leaves-put-right-why = Seht euch das Blatt noch einmal an. Leert ein Feld, um herauszunehmen, was gemessen wurde.
leaves-not-read = „{ $text }“ lässt sich in der Spalte „{ $name }“ nicht lesen.
leaves-not-read-remedy = Tippt es so, wie es bei den anderen Blättern steht, zum Beispiel 52 mm oder gezähnt.
leaves-unread = Was sich nicht mehr lesen lässt
leaves-unread-why = Die Spalte wurde seither geändert, deshalb zählt das hier nicht. Ändert die Spalte zurück, oder stellt es auf der Seite des Blattes richtig.
leaves-gone = Dieses Blatt ist nicht mehr da.
leaves-gone-remedy = Geht zurück zu allen Blättern.
leaves-moved = Jemand hat dieses Blatt in einem anderen Fenster geändert.
leaves-moved-remedy = Seht es euch noch einmal an, und entscheidet dann.
