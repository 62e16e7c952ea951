### Was an Fragen gefunden wurde, die zu einer Tabelle gehören sollen, an Dateien, die das festlegen, an
### Wünschen, die sich nicht erfüllen ließen, und an Dateien, die sich nicht verwenden ließen.

## Eine Frage, die zu keiner Spalte gehört, oder nicht sicher.
finding-link-no-ratio = Frage { $question } vergleicht „{ $one }“ mit „{ $other }“, und dafür hat die Tabelle keine Spalte.
finding-link-no-ratio-remedy = Ergänzt im Blatt `characters` eine Zeile, in der unter `ratio of` steht: `{ $one } / { $other }`. Dann wird es ausgerechnet.
finding-link-speaks-of = In Frage { $question } kommt „{ $word }“ vor, und davon handelt keine Spalte der Tabelle.
finding-link-speaks-of-remedy = Macht eine Spalte dafür, oder fragt nach etwas, das in der Tabelle steht.
finding-link-not-yes-or-no = Auf Frage { $question } kann man nicht mit ja oder nein antworten.
finding-link-not-yes-or-no-remedy = Beginnt mit Ist, Sind, Hat oder Haben.
finding-link-two-things = Frage { $question } fragt zwei Dinge auf einmal.
finding-link-two-things-remedy = Fragt hier nach dem einen, und in einer eigenen Frage nach dem anderen.
finding-link-two-choices = Frage { $question } lässt die Wahl zwischen zwei Dingen. Da ist „ja“ keine Antwort.
finding-link-two-choices-remedy = Fragt nach einem davon.
finding-link-one-of-two = Frage { $question } fragt bei „{ $about }“ nach einer von zwei Zahlen. Das ist weder so viel oder mehr noch weniger.
finding-link-one-of-two-remedy = Fragt nach einer Zahl, die in der Tabelle in einer Lücke liegt: { $about }: … oder mehr?
finding-link-exactly = Frage { $question } fragt bei „{ $about }“ nach genau einer Zahl, und die Tabelle hat größere und kleinere.
finding-link-exactly-remedy = Fragt nach dieser Zahl oder mehr, oder nach weniger.
finding-link-several-numbers = In Frage { $question } kommen mehrere Zahlen vor.
finding-link-several-numbers-remedy = Fragt nach einer auf einmal.
finding-link-every-state = Frage { $question } fragt nach allem, was „{ $about }“ sein kann. Da antwortet jede Art mit ja.
finding-link-every-state-remedy = Fragt nach einem davon.
finding-link-no-measure = In Frage { $question } steht „{ $word }“, und das ist kein Maß.
finding-link-no-measure-remedy = Sagt, wie viel: { $about }: 30 { $unit } oder mehr?
finding-link-no-measure-at-all = Fragt nach etwas, das man zählen oder benennen kann.
finding-link-may-ask = Frage { $question } fragt vielleicht nach { $what }.
finding-link-or-for = { $before }, oder nach { $next }
finding-link-may-ask-remedy = Schreibt die Zeile, die gemeint ist, in die Datei für --links, zum Beispiel: { $line }
finding-link-says-not = Frage { $question } sagt „nicht“, und vielleicht ist { $what } gemeint.
finding-link-no-unit = Hinter der Zahl in Frage { $question } fehlt die Einheit. { $may }
finding-link-no-unit-remedy = Schreibt { $unit } hinter die Zahl, oder worin sonst gemessen wird. Oder schreibt die Zeile, die gemeint ist, in die Datei für --links: { $line }
finding-link-asks-both = Frage { $question } fragt zwei Dinge auf einmal: { $first }, und { $second }.
finding-link-asks-both-remedy = Fragt hier nach dem einen, und in einer eigenen Frage nach dem anderen. Ist nur eines gemeint, dann schreibt seine Zeile in die Datei für --links, zum Beispiel: { $line }
finding-link-no-words = Frage { $question } hat keinen Text.
finding-link-no-words-remedy = Schreibt hin, was dort gefragt wird.
finding-link-names-a-kind = Frage { $question } fragt mit dem Namen („{ $name }“) nach dieser Art: { $kind }. Das kann nur beantworten, wer sie schon kennt.
finding-link-names-a-kind-remedy = Fragt nach etwas, das man sehen kann und das nur diese Art hat: { $kind }.
finding-link-nothing-there = In Frage { $question } kommt „{ $about }“ vor, aber nichts, was die Tabelle dort hat.
finding-link-can-whether = Fragt nur, ob es so ist, wie es die Überschrift sagt: { $about }? Ist etwas anderes gemeint, dann macht eine Spalte dafür.
finding-link-can-states = Fragt nach einem davon: { $states }.
finding-link-can-count = Fragt nach einer Anzahl oder mehr.
finding-link-can-measure = Fragt nach so vielen { $unit } oder mehr.
finding-link-nothing = Frage { $question } fragt nach nichts, wovon die Tabelle handelt.
finding-link-nothing-remedy = Macht eine Spalte dafür, oder schreibt eine Zeile in die Datei für --links: question { $question }: { $example } = … (oder: question { $question }: nothing in the table)
finding-link-edge = Rand
finding-link-not-in-table = Frage { $question } fragt nach { $what }, und das hat die Tabelle nicht.
finding-link-not-in-table-remedy = Nehmt die Tabelle, aus der der Schlüssel gemacht wurde, oder sagt in der Datei für --links, was die Frage meint.
finding-link-named = „{ $name }“
finding-link-this-of = etwas von „{ $name }“

## Die Datei, die sagt, was Fragen meinen.
finding-links-no-question = In der Datei für --links geht es um Frage { $question }, und die hat der Schlüssel nicht.
finding-links-no-question-remedy = Berichtigt dort die Nummer, oder löscht die Zeile.
finding-links-unread = Zeile { $line } der Datei für --links lässt sich nicht lesen: „{ $text }“.
finding-links-unread-remedy = Schreibt es so: question 3: Rand = gezähnt
finding-links-again = Zeile { $line } der Datei für --links sagt noch einmal, was Frage { $question } meint. Es gilt die erste.
finding-links-again-remedy = Löscht eine der beiden Zeilen.
finding-links-no-equals = In Zeile { $line } der Datei für --links fehlt das Gleichheitszeichen: „{ $text }“.
finding-links-no-equals-remedy = Schreibt es so: name Haselstrauch = { $kind }
finding-links-no-such-kind = Zeile { $line } der Datei für --links nennt eine Art, die nicht in der Tabelle steht: „{ $text }“.
finding-links-no-such-kind-remedy = Schreibt es so: name Haselstrauch = { $kind }
finding-links-no-kind = Zeile { $line } der Datei für --links nennt keine Art.
finding-links-no-kind-remedy = Schreibt es so: name Haselstrauch = { $kind }
finding-links-hazel = Hasel
finding-links-nothing-asked = Zeile { $line } der Datei für --links sagt nicht, was gefragt wird: „{ $text }“.
finding-links-nothing-asked-remedy = Schreibt die Spalte, dann = und ein Wort aus der Tabelle, oder >= und eine Zahl.
finding-links-number-of-words = Zeile { $line } der Datei für --links fragt bei „{ $about }“ nach einer Zahl, aber dort stehen Wörter.
finding-links-number-of-words-remedy = Schreibt: { $instead }
finding-links-no-such-column = Zeile { $line } der Datei für --links nennt eine Spalte, die es in der Tabelle nicht gibt: „{ $text }“.
finding-links-no-such-column-remedy = In der Tabelle gibt es: { $known }.
finding-links-no-such-state = Zeile { $line } der Datei für --links fragt bei „{ $about }“ nach etwas, das dort nirgends steht: „{ $text }“.
finding-links-no-such-state-remedy = Bei „{ $about }“ gibt es: { $known }.
finding-links-not-some-states = Zeile { $line } der Datei für --links muss bei „{ $about }“ einige Wörter nennen, nicht alle.
finding-links-not-some-states-remedy = Bei „{ $about }“ gibt es: { $known }.
finding-links-number-unread = In Zeile { $line } der Datei für --links lässt sich eine Zahl nicht lesen: „{ $text }“.
finding-links-number-unread-remedy = Schreibt { $column } >= und dann eine Zahl, { $how }.
finding-links-number-unfit = Zeile { $line } der Datei für --links gibt „{ $about }“ eine Zahl, die nicht dazu passt.
finding-links-number-unfit-remedy = Schreibt { $column } >= und dann eine Zahl, { $how }.
finding-links-in-unit = in { $unit }
finding-links-in-figures = in Ziffern
finding-links-exactly = Zeile { $line } der Datei für --links fragt, ob „{ $about }“ genau { $number } ist. Eine Frage fragt nach so viel oder mehr, oder nach weniger.
finding-links-exactly-remedy = Schreibt: { $least } (oder, für weniger: { $below })

## Ein Schlüssel aus einer Datei von Spinney.
finding-file-remedy = Nehmt die Tabelle, aus der der Schlüssel gemacht wurde, oder macht den Schlüssel noch einmal.
finding-file-wishes = In den Wünschen dieses Schlüssels steht { $name }, und das hat die Tabelle nicht.
finding-file-aim = das Ziel „{ $name }“
finding-file-early = etwas, das weder ein Paar noch eine Art ist
finding-file-hand = „{ $name }“ in der Hand
finding-file-season = die Jahreszeit „{ $name }“
finding-file-too-many-kept = Es sollten mehr als { $most } Fragen bleiben; die übrigen wurden weggelassen.
finding-file-too-many-kept-remedy = Behaltet nur die ersten Fragen, und macht den Schlüssel noch einmal.
finding-file-proof = Im Beweis dieses Schlüssels steht „{ $name }“, und das hat die Tabelle so nicht.

## Wünsche, die sich nicht erfüllen ließen.
finding-unmet = { $wish }: { $why }.
finding-unmet-question = „{ $words }“ konnte nicht bleiben, wo ihr es wolltet
finding-unmet-order = „{ $about }“ konnte nicht unter den ersten Fragen sein
finding-unmet-early = Der Wunsch „{ $wish }“ ließ sich nicht erfüllen
finding-unmet-apart = { $one } und { $other } werden früh unterschieden
finding-unmet-out = { $kind } kommt zuerst heraus
finding-unmet-goal = Nach dem Ziel „{ $goal }“ ließ sich nicht suchen
finding-aim-effort = so wenige Fragen je Fund wie möglich
finding-aim-longest = kein langer Weg
finding-aim-right = möglichst viele Funde beim richtigen Namen
finding-aim-even = wenige neue Wörter auf einmal
finding-aim-words = wenige verschiedene Wörter
finding-aim-rulers = so wenig messen wie möglich
finding-unmet-blocked = { $kind } ist noch dabei und hat darauf keine klare Antwort
finding-unmet-blocked-remedy = Fragt weiter unten danach, wenn { $kind } nicht mehr dabei ist, oder füllt die Zelle aus: „{ $about }“ bei { $kind }.
finding-unmet-alike = alle Arten, die noch übrig sind, antworten darauf gleich
finding-unmet-alike-remedy = Lasst sie weg: Sie trennt dort nichts.
finding-unmet-no-state = danach kann man bei „{ $about }“ nicht fragen
finding-unmet-no-state-remedy = Nehmt eines der Wörter, die in der Tabelle stehen.
finding-unmet-after = die Frage davor konnte nicht bleiben
finding-unmet-after-remedy = Bringt zuerst die Frage davor in Ordnung.
finding-unmet-left-out = nach „{ $about }“ soll nicht gefragt werden, oder man sieht es nicht an dem, was man in der Hand hat
finding-unmet-left-out-remedy = Nehmt einen der beiden Wünsche zurück.
finding-unmet-never = nichts, wonach gefragt werden darf, unterscheidet sie
finding-unmet-never-remedy = Sucht einen Unterschied zwischen ihnen, und tragt ihn in die Tabelle ein.
finding-unmet-too-large = zusammen mit den Wünschen davor braucht das größere Zahlen, als hier genau gerechnet werden können
finding-unmet-too-large-remedy = Wünscht euch weniger auf einmal.
finding-unmet-together = Wegen eurer Wünsche bleiben diese zusammen: { $pairs }.
finding-unmet-together-remedy = Sucht einen Unterschied, nach dem gefragt werden darf, oder nehmt einen Wunsch zurück.
finding-unmet-pair = { $one } und { $other }
finding-unmet-more-pairs = { $count ->
    [one] noch { $count } Paar
   *[other] noch { $count } Paare
}

## Bilder und Dateien.
finding-picture = Das Bild { $picture } von { $kind } wurde weggelassen: { $why }.
finding-picture-remedy = Legt eine PNG- oder JPEG-Datei mit diesem Namen neben die Tabelle. Ohne sie bleibt ein leeres Feld.
finding-picture-damaged = Das Bild von { $kind } lässt sich nicht lesen und wurde weggelassen.
finding-picture-damaged-remedy = Fügt es am Bildschirm noch einmal hinzu. Ohne das Bild bleibt ein leeres Feld.
finding-picture-too-many = alle Bilder zusammen brauchen zu viel Speicher
finding-picture-elsewhere = es liegt nicht neben der Tabelle
finding-picture-no-file = neben der Tabelle gibt es keine solche Datei
finding-picture-too-large = es ist größer als { $most } MiB
finding-picture-not-read = es ist weder eine ganze PNG- noch eine ganze JPEG-Datei
finding-picture-pixels = es hat zu viele Bildpunkte. Verkleinert es
finding-file-not-there = an dieser Stelle gibt es nichts, oder dort darf nichts geschrieben werden
finding-file-no-right = dazu habt ihr dort kein Recht
finding-file-is-there = dort gibt es schon etwas mit diesem Namen
finding-file-not-a-folder = ein Teil des Namens ist eine Datei und kein Ordner
finding-file-is-a-folder = es ist ein Ordner
finding-file-read-only = auf diesem Datenträger darf nichts geschrieben werden
finding-file-full = der Datenträger ist voll
finding-file-too-large = so groß darf eine Datei dort nicht sein
finding-file-bad-name = dieser Name ist zu lang, oder er enthält ein Zeichen, das in keinem Namen stehen darf
finding-file-in-use = ein anderes Programm ist gerade damit beschäftigt
finding-file-no-address = dieser Rechner hat keine solche Adresse
finding-file-no-answer = der Datenträger antwortet nicht
finding-file-closed = die andere Seite hat aufgehört
finding-file-no-memory = der Speicher reicht nicht
finding-file-gone = jemand hat die Datei verschoben oder weggenommen
finding-file-disk-failed = der Datenträger hat nicht getan, was er sollte
finding-file-disk-refused = der Datenträger hat nicht angenommen, was geschrieben wurde
finding-file-bad-place = der Datenträger oder der Ort der Datei arbeitet nicht, wie er soll
finding-file-not-held = etwas darin ist zu groß, um es aufzuheben
finding-file-unknown = der Rechner nennt keinen Grund, den Spinney kennt

## Wo etwas gefunden wurde.
place-line = Zeile { $line }
place-question = Frage { $question }
place-table = Tabelle
place-key = Schlüssel
