### Ein Neuling: ein Fund, der nicht im Schlüssel ist.

newcomer-title = Ein Neuling
newcomer-why = Jemand bringt einen Fund, der nicht im Schlüssel ist. Geht mit ihm durch den Schlüssel, als wäre er darin, und seht, wo er herauskommt. Dann sagt, was anders ist, und er bekommt seinen eigenen Platz.
newcomer-no-finds = Legt zuerst die Funde aus, für die der Schlüssel ist.
newcomer-no-key = Es gibt noch keinen Schlüssel, durch den ein Neuling gehen könnte.
newcomer-make-key = Einen Schlüssel für unsere Funde finden
newcomer-or-heaps = Oder einen aus Haufen machen
newcomer-key-name = Unser Schlüssel
newcomer-no-question = Der Schlüssel fragt noch nichts. Beginnt mit zwei Haufen.
newcomer-nowhere = Dieser Schlüssel führt nirgendwohin. Seht ihn euch zuerst an.
newcomer-name = Wie heißt der Neuling? Lasst es leer, wenn es niemand weiß.
newcomer-walk = Durch den Schlüssel gehen
newcomer-question = Frage { $count }
newcomer-cannot-tell = weiß nicht
newcomer-back = Eine Frage zurück
newcomer-trail = Die Fragen bisher
newcomer-nameless = der Neuling
newcomer-comes-out = Er kommt heraus bei { $kinds }
newcomer-comes-out-nowhere = Er kommt nirgends heraus
newcomer-look = Legt die beiden nebeneinander. Seht genau hin: was ist anders?
newcomer-is-new = noch nicht im Schlüssel
newcomer-same = Es ist doch { $kind }: ein Bild dazulegen
newcomer-number-yes = Ihr habt ja gesagt zu „{ $words }“. Schreibt die Zahl dazu: erst dann kann die Tabelle sie daran unterscheiden.
newcomer-number-no = Ihr habt nein gesagt zu „{ $words }“. Schreibt die Zahl dazu: erst dann kann die Tabelle sie daran unterscheiden.
newcomer-on-the-way = Was der Schlüssel unterwegs gefragt hat
newcomer-others = Worauf man noch schauen kann
newcomer-of = { $kind }
newcomer-blank = Lasst leer, was niemand angesehen hat. Schreibt, was ihr seht, etwa „gelappt or ganzrandig“, „30-60“, oder „n/a“, wo es so etwas nicht hat.
newcomer-difference = Etwas Neues, das anders ist
newcomer-difference-name = Was ist es?
newcomer-difference-example = Unterseite des Blattes
newcomer-half-difference = Der neue Unterschied ist erst halb da.
newcomer-half-difference-remedy = Sagt, was es ist und wie es beim Neuling ist. Wie es beim anderen ist, hilft auch.
newcomer-known-difference = „{ $name }“ steht schon in der Tabelle.
newcomer-known-difference-remedy = Füllt stattdessen die Zeile oben aus.
newcomer-slot = Sehen, wie er in den Schlüssel passt
newcomer-slot-title = Ein Platz für { $kind }
newcomer-in-key = Im Schlüssel „{ $key }“:
newcomer-into-heap = Der Schlüssel wird noch von Hand gemacht, darum ändert sich nichts darin: der Neuling liegt auf dem Haufen, wo er herauskam. Macht mit diesem Haufen weiter.
newcomer-alike = Er wird zusammen mit { $kinds } herauskommen: die Tabelle unterscheidet sie nicht.
newcomer-alike-remedy = Geht zurück und schreibt einen Unterschied auf.
newcomer-no-change = Keine Frage wird sich ändern.
newcomer-added-first = Eine Frage kommt ganz am Anfang dazu: „{ $words }“
newcomer-added = Eine Frage kommt nach Frage { $after } („{ $before }“) dazu: „{ $words }“
newcomer-rewritten = Frage { $number } („{ $before }“) wird etwas anderes fragen: „{ $words }“
newcomer-struck = Frage { $number } („{ $before }“) wird nicht mehr gefragt werden.
newcomer-stayed = { $count ->
    [one] Die andere Frage bleibt, wie sie war.
   *[other] Die anderen { $count } Fragen bleiben, wie sie waren.
}
newcomer-dearer = Ein ganz neuer Schlüssel wäre bis zu { $questions } Fragen je Fund kürzer. Dieser behält, was die Gruppe kennt.
newcomer-stopped = Die Zeit reichte nicht, um sicher zu sein, dass es nicht mit weniger Änderungen ginge.
newcomer-inexact = Manche Fragen findet die Maschine wieder, und sie können in anderer Reihenfolge kommen.
newcomer-keep = Einfügen
newcomer-again = Zurück zu den beiden Karten
newcomer-is-in = { $kind } hat einen Platz im Schlüssel
newcomer-its-page = Seine eigene Seite: ein Bild dazulegen
newcomer-to-key = Der ganze Schlüssel
newcomer-to-heaps = Die Haufen
newcomer-next = Noch ein Neuling
newcomer-not-yet = Noch ist nichts gespeichert.
newcomer-clashes = { $count ->
    [one] An einer Stelle sagt die Tabelle schon etwas anderes.
   *[other] An { $count } Stellen sagt die Tabelle schon etwas anderes.
}
newcomer-clashes-remedy = Seht euch den Fund noch einmal an und entscheidet, was dort stehen soll.
newcomer-table-says = Die Tabelle: { $text }
newcomer-you-say = Was ihr geschrieben habt: { $text }
newcomer-leave-it = Lassen, wie es da steht
newcomer-write-it = Von jetzt an ist es „{ $text }“
newcomer-clash-moved = Inzwischen wurde über einen Fund, der neben dem Neuling liegt, etwas anderes aufgeschrieben, vielleicht in einem anderen Fenster.
newcomer-clash-moved-remedy = Geht zurück zu den beiden Karten und seht, was jetzt dort steht. Nichts wurde geändert.
newcomer-heap-asks = Dieser Haufen fragt dann: „{ $words }“
newcomer-not-asked = „{ $name }“ steht in der Tabelle. Der Schlüssel fragt hier nach etwas anderem.
newcomer-picture = Ein Bild des Neulings, wenn es eines gibt
newcomer-many-pictures-remedy = Wählt weniger aus.
newcomer-walk-moved = Ein anderes Fenster hat inzwischen eine Frage auf dem Weg des Neulings geändert. Die Antworten galten anderen Fragen.
newcomer-walk-moved-remedy = Nichts wurde gespeichert. Geht den Schlüssel noch einmal von der ersten Frage an.
newcomer-change-moved = In einem anderen Fenster hat jemand etwas geändert: Der Neuling käme nicht so hinein, wie es auf der Seite stand.
newcomer-change-moved-remedy = Nichts wurde gespeichert. Geht zurück zu den zwei Karten und seht nach, wie er jetzt in den Schlüssel passt.
