### Ein neuer Fund: einer, der nicht im Schlüssel ist.

newcomer-title = Ein neuer Fund
newcomer-why = Ihr habt einen Fund, der nicht im Schlüssel ist. Geht mit ihm durch den Schlüssel, als wäre er schon darin. Seht, wo er herauskommt. Dann sagt, was anders ist, und er bekommt seinen eigenen Platz.
newcomer-no-finds = Legt zuerst die Funde aus, für die der Schlüssel ist.
newcomer-no-key = Es gibt noch keinen Schlüssel, durch den ihr mit einem neuen Fund gehen könntet.
newcomer-make-key = Einen Schlüssel für unsere Funde finden
newcomer-or-heaps = Oder selbst einen mit Haufen machen
newcomer-key-name = Unser Schlüssel
newcomer-no-question = Der Schlüssel fragt noch nichts. Beginnt mit zwei Haufen.
newcomer-nowhere = Dieser Schlüssel führt nirgendwohin. Seht ihn euch zuerst an.
newcomer-name = Wie heißt der neue Fund? Wenn es niemand weiß, lasst das Feld leer.
newcomer-walk = Durch den Schlüssel gehen
newcomer-question = Frage { $count }
newcomer-cannot-tell = weiß nicht
newcomer-back = Eine Frage zurück
newcomer-trail = Die Fragen bis hierher
newcomer-nameless = neuer Fund
newcomer-comes-out = Er kommt heraus bei { $kinds }
newcomer-comes-out-nowhere = Er kommt nirgends heraus
newcomer-look = Legt die beiden nebeneinander. Seht genau hin: Was ist anders?
newcomer-is-new = noch nicht im Schlüssel
newcomer-same = Es ist doch { $kind }: ein Bild dazunehmen
newcomer-number-yes = Bei „{ $words }“ habt ihr ja gesagt. Schreibt die Zahl dazu: Erst dann kann die Tabelle sie daran unterscheiden.
newcomer-number-no = Bei „{ $words }“ habt ihr nein gesagt. Schreibt die Zahl dazu: Erst dann kann die Tabelle sie daran unterscheiden.
newcomer-on-the-way = Was der Schlüssel unterwegs gefragt hat
newcomer-others = Was man sich noch ansehen kann
newcomer-of = { $kind }
newcomer-blank = Wo noch niemand nachgesehen hat, lasst das Feld leer. Schreibt, was ihr seht, etwa „gelappt / ganzrandig“ oder „30-60“. Wo es so etwas nicht gibt, schreibt „n/a“.
newcomer-difference = Etwas Neues, das anders ist
newcomer-difference-name = Was ist es?
newcomer-difference-example = Unterseite des Blattes
newcomer-half-difference = Der neue Unterschied ist erst halb da.
newcomer-half-difference-remedy = Sagt, was es ist und wie es beim neuen Fund ist. Wie es beim anderen ist, hilft auch.
newcomer-known-difference = „{ $name }“ steht schon in der Tabelle.
newcomer-known-difference-remedy = Füllt lieber die Zeile oben aus.
newcomer-slot = Sehen, wie er in den Schlüssel passt
newcomer-slot-title = Ein Platz im Schlüssel: { $kind }
newcomer-in-key = Im Schlüssel „{ $key }“:
newcomer-into-heap = Dieser Schlüssel wird noch von Hand gemacht. Darum ändert sich darin nichts: Der neue Fund liegt auf dem Haufen, bei dem er herauskam. Macht mit diesem Haufen weiter.
newcomer-alike = Er kommt zusammen mit { $kinds } heraus: Die Tabelle unterscheidet sie nicht.
newcomer-alike-remedy = Geht zurück und schreibt einen Unterschied auf.
newcomer-no-change = Keine Frage ändert sich.
newcomer-added-first = Ganz am Anfang kommt eine Frage dazu: „{ $words }“
newcomer-added = Nach Frage { $after } („{ $before }“) kommt eine Frage dazu: „{ $words }“
newcomer-rewritten = Frage { $number } („{ $before }“) fragt dann etwas anderes: „{ $words }“
newcomer-struck = Frage { $number } („{ $before }“) wird nicht mehr gefragt.
newcomer-stayed = { $count ->
    [one] Die andere Frage bleibt, wie sie war.
   *[other] Die anderen { $count } Fragen bleiben, wie sie waren.
}
newcomer-dearer = Ein ganz neuer Schlüssel wäre bis zu { $questions } Fragen je Fund kürzer. Dieser behält, was die Gruppe schon kennt.
newcomer-stopped = Die Zeit reichte nicht, um zu prüfen, ob es auch mit weniger Änderungen geht.
newcomer-inexact = Einige Fragen sucht der Computer neu. Sie können in anderer Reihenfolge kommen.
newcomer-keep = Einfügen
newcomer-again = Zurück zu den beiden Karten
newcomer-is-in = { $kind } hat einen Platz im Schlüssel
newcomer-its-page = Seine eigene Seite: ein Bild dazunehmen
newcomer-to-key = Der ganze Schlüssel
newcomer-to-heaps = Die Haufen
newcomer-next = Noch ein neuer Fund
newcomer-not-yet = Noch ist nichts gespeichert.
newcomer-clashes = { $count ->
    [one] An einer Stelle steht in der Tabelle schon etwas anderes.
   *[other] An { $count } Stellen steht in der Tabelle schon etwas anderes.
}
newcomer-clashes-remedy = Seht euch den Fund noch einmal an und entscheidet, was dort stehen soll.
newcomer-table-says = Die Tabelle: { $text }
newcomer-you-say = Was ihr geschrieben habt: { $text }
newcomer-leave-it = So lassen, wie es dasteht
newcomer-write-it = Von jetzt an heißt es „{ $text }“
newcomer-clash-moved = Jemand hat einen Fund neben dem neuen geändert, vielleicht in einem anderen Fenster.
newcomer-clash-moved-remedy = Geht zurück zu den beiden Karten und seht nach, was jetzt dort steht. Nichts wurde geändert.
newcomer-heap-asks = Dieser Haufen fragt dann: „{ $words }“
newcomer-not-asked = „{ $name }“ steht in der Tabelle. Der Schlüssel fragt hier nach etwas anderem.
newcomer-picture = Ein Bild vom neuen Fund, wenn es eins gibt
newcomer-many-pictures-remedy = Wählt weniger aus.
newcomer-walk-moved = Jemand hat in einem anderen Fenster eine Frage auf dem Weg des neuen Fundes geändert. Die Antworten passten zu anderen Fragen.
newcomer-walk-moved-remedy = Nichts wurde gespeichert. Geht noch einmal von der ersten Frage an durch den Schlüssel.
newcomer-change-moved = Jemand hat in einem anderen Fenster etwas geändert: Der neue Fund käme nicht mehr so hinein, wie es auf der Seite stand.
newcomer-change-moved-remedy = Nichts wurde gespeichert. Geht zurück zu den beiden Karten und seht nach, wie er jetzt in den Schlüssel passt.
