### Die Tabelle: Arten und Merkmale.

table-no-kinds = Was habt ihr? Tragt zuerst die Arten ein, eine je Zeile. Dann ein Merkmal, das ihr euch bei jeder anseht, etwa „Blattrand“.
table-no-characters = Tragt ein Merkmal ein, das ihr euch bei jeder Art anseht, etwa „Blattrand“, „Zahl der Blättchen“ oder „Länge der Blattspreite (mm)“.
table-help = Was in einer Zelle stehen kann
table-help-word = Ein Wort für das, was ihr seht. In der ganzen Spalte dasselbe Wort für dieselbe Sache.
table-help-varies = Verschieden: Manche dieser Art sind so, manche anders.
table-help-counted = Ihr habt gezählt: Acht waren gelappt und zwei nicht.
table-help-range = Gemessen, vom kleinsten bis zum größten.
table-help-count = Gezählt: fünf, sechs oder sieben.
table-help-unknown = Das weiß noch niemand. Es zählt wie eine leere Zelle, aber jemand hat daran gedacht.
table-help-not-there = Diese Art hat das nicht: Ein Blatt aus einem Stück hat keine Blättchen.
table-help-keys = Mit der Tastatur: Die Pfeiltasten gehen von Zelle zu Zelle. Tab geht zur nächsten, Enter nach unten. Wer tippt, überschreibt. F2 schreibt weiter. Esc holt zurück, was vorher da war. Pos1 und Ende gehen an die Enden der Zeile. Ein Stück aus einer Tabellenkalkulation lässt sich in eine Zelle einfügen und füllt die Zellen ab dort.
table-choices = Zellen auswählen, oder als Gruppe schreiben
table-show = Zeigen
table-show-all = alle Zellen
table-show-blank = nur wo noch niemand nachgesehen hat
table-show-differ = nur wo sich nicht alle einig sind
table-show-whole = Die ganze Tabelle zeigen
table-of-kind = Art
table-every-kind = alle Arten
table-of-character = Merkmal
table-every-character = alle Merkmale
table-as = Schreiben als (eine Gruppe; leer: die Tabelle selbst)
table-as-told = Ihr seht und schreibt, was { $who } sagt. Das überschreibt nie die Tabelle oder eine andere Gruppe.
table-choose = Diese zeigen
table-differ-count = { $count ->
    [one] in 1 Zelle sind sich nicht alle einig
   *[other] in { $count } Zellen sind sich nicht alle einig
}
table-none-blank = Hier ist keine Zelle leer.
table-none-differ = Hier sind sich alle einig.
table-none = So eine Zelle gibt es nicht.
table-keep = Speichern, was ich geschrieben habe
table-not-kept = Was ihr zuletzt geschrieben habt, ließ sich nicht speichern: Spinney antwortet nicht. Es steht noch in den Zellen. Drückt „Speichern, was ich geschrieben habe“, sobald Spinney wieder läuft.
table-not-pasted = Nicht alles, was ihr eingefügt habt, passt in die Tabelle. Fügt zuerst Zeilen und Spalten hinzu. Fügt es dann noch einmal ein.
table-to-margin = Hinunter zu dem, was noch gleich ist
table-kind = Art
table-caption = { $kinds }, { $characters }
table-caption-kinds = { $count ->
    [one] 1 Art
   *[other] { $count } Arten
}
table-caption-some = { $count ->
    [one] 1 von { $all } Arten
   *[other] { $count } von { $all } Arten
}
table-caption-characters = { $count ->
    [one] 1 Merkmal
   *[other] { $count } Merkmale
}
table-in = in { $unit }
table-kinds-before = Die Arten davor
table-kinds-after = { $count ->
    [one] noch 1 Art
   *[other] noch { $count } Arten
}
table-clash = gerade geändert
table-clash-told = Jemand hat hier „{ $theirs }“ geschrieben, während ihr „{ $mine }“ geschrieben habt. Was stimmt?
table-clash-cleared = Jemand hat diese Zelle geleert, während ihr „{ $mine }“ geschrieben habt. Was stimmt?
table-clash-mine = Meins schreiben
table-clash-leave = Das andere stehen lassen
table-many-clashes = { $count } dieser Zellen hat jemand in einem anderen Fenster geändert, während ihr geschrieben habt.
table-many-clashes-remedy = Was ihr geschrieben habt, steht unten. Geht zurück, seht nach, was jetzt dasteht, und schreibt noch einmal, was fehlt.
table-differ = nicht einig
table-take = „{ $text }“ nehmen
table-varies = Verschieden: „{ $text }“
table-look-again = Noch einmal nachsehen (?)
table-who = { $count ->
    [one] eine Gruppe
   *[other] { $count } Gruppen
}
table-itself = Die Tabelle
table-says = { $who }: „{ $text }“
table-by-heaps = (so liegt es auf ihren Haufen)
table-too-long = Das ist länger als { $count } Buchstaben.
table-too-long-remedy = Schreibt es kürzer. Längere Notizen gehören zu den Funden.
table-margin-empty = Sobald es Arten gibt, steht hier, was noch gleich ist und wo ihr als Nächstes nachsehen könnt.
table-alike = Noch gleich
table-none-alike = Alle Arten lassen sich unterscheiden.
table-alike-count = { $count ->
    [one] Ein Paar lässt sich mit dieser Tabelle nicht unterscheiden:
   *[other] { $count } Paare lassen sich mit dieser Tabelle nicht unterscheiden:
}
table-pair = { $one } und { $other }
table-told-by-heaps = Die Tabelle kann diese nicht unterscheiden, aber eine Gruppe kann es, mit ihren Haufen:
table-told-pair = { $group } unterscheidet { $one } und { $other }: „{ $words }“
table-hope-one = Eine leere Zelle könnte helfen, sie zu unterscheiden.
table-hope-several = Mehrere leere Zellen zusammen könnten helfen, sie zu unterscheiden.
table-hope-new = Sucht einen Unterschied, der nicht in der Tabelle steht.
table-more-pairs = { $count ->
    [one] und noch ein Paar
   *[other] und noch { $count } Paare
}
table-look-at = Wo Nachsehen am meisten hilft
table-look-cell = { $kind }, { $character }
table-look-parts = Damit ließe es sich vielleicht unterscheiden von: { $kinds }.
table-look-with-others = Zusammen mit anderen leeren Zellen ließe es sich vielleicht unterscheiden von: { $kinds }.
table-look-secures = Damit gäbe es vielleicht einen zweiten Unterschied zu: { $kinds }.
table-and-more = { $kinds } und { $count } weitere
table-to-mend = Was zu beheben ist
table-nothing-to-mend = Nichts.
table-cells-to-mend = { $count ->
    [one] Eine Zelle ist einen Blick wert:
   *[other] { $count } Zellen sind einen Blick wert:
}
table-new-character = Noch ein Merkmal
table-add-character = Spalte hinzufügen
table-new-kind = Noch eine Art
table-add-kind = Zeile hinzufügen
table-full = Eine Tabelle hat höchstens { $count } Merkmale.
table-full-remedy = Nehmt heraus, wonach kein Schlüssel fragt.
table-no-name = Es fehlt ein Name.
table-no-name-remedy = Sagt, was ihr euch anseht: „Blattrand“, „Zahl der Blättchen“.
table-name-taken = „{ $name }“ steht schon in der Tabelle.
table-name-taken-remedy = Nehmt einen anderen Namen, oder die Spalte, die schon da ist.
table-no-state = Es fehlt ein Wort.
table-no-state-remedy = Schreibt ein Wort mit höchstens { $count } Buchstaben.
table-gone = Das steht nicht mehr in der Tabelle.
table-gone-remedy = Jemand hat es in einem anderen Fenster herausgenommen. „Rückgängig“ bringt es zurück.
table-field-clash = Jemand hat dort „{ $theirs }“ geschrieben, während ihr „{ $mine }“ geschrieben habt.
table-field-clash-remedy = Geht zurück und seht nach, was jetzt dasteht. Wenn eures noch stimmt, schreibt es noch einmal.
table-field-name = Name
table-field-question = Wie man fragt
table-help-question = Setzt {"{}"} dorthin, wo das Wort oder die Zahl hingehört: „Ist der Blattrand {"{}"}?“
table-field-second-question = Wie man in der zweiten Sprache fragt
table-help-second-question = Setzt {"{}"} dorthin, wo das Wort hingehört. Bei Zahlen schreibt ihr „oder mehr“ selbst dazu, und {"{}"} für die Zahl: „Czy ogonek ma {"{}"} lub więcej?“
table-field-values = Was in den Zellen steht
table-help-values = Leer: so, wie die Zellen aussehen. Wählt „Wörter“, wo Zahlen nur Namen sind.
table-field-states = Die Möglichkeiten, der Reihe nach
table-help-states = Mit Kommas dazwischen. Leer: die Wörter, die in den Zellen stehen.
table-field-second-states = Die Möglichkeiten in der zweiten Sprache
table-help-second-states = So: gezähnt = ząbkowany, glatt = gładki
table-field-in-order = Die Möglichkeiten haben eine Reihenfolge
table-help-in-order = Klein, mittel, groß: Dann fragt keine Frage nach „klein oder groß“ gegen „mittel“.
table-field-unit = Gemessen in
table-field-gap = Sicherheitsabstand
table-help-gap = So weit bleibt die Grenze einer Frage von allem weg, was gemessen wurde, in derselben Einheit.
table-field-difficulty = Wie schwer zu sehen
table-field-seen-on = Zu sehen an
table-field-season = Zu sehen im
table-field-instrument = Braucht
table-field-by-touch = Muss man anfassen
table-field-applies-when = Nur danach fragen, wenn …
table-help-applies-when = Zum Beispiel: Form = gefiedert.
table-field-read-right = Richtig gesehen, in Prozent
table-help-read-right = Wie viele von hundert Leuten es richtig sehen, wenn jemand gezählt hat.
table-field-words = Wörter, die man kennen muss
table-help-words = Mit Kommas dazwischen: „Blättchen, Knospe“.
table-field-ratio = Eine Länge geteilt durch eine andere
table-help-ratio = „Länge des Blattstiels / Länge der Blattspreite“
table-not-said = noch nichts gesagt
table-more-fields = Mehr dazu
table-keep-character = Speichern
table-asks = Gefragt wird zum Beispiel: „{ $question }“
table-kept-in = Hier wird es in „{ $typed }“ geschrieben. In Fragen und auf Arbeitsblättern steht „{ $kept }“.
table-states = Die Möglichkeiten
table-rename-help = Ein anderes Wort steht dann überall: in jeder Zelle und in jeder Frage danach.
table-state-of = { $count ->
    [one] „{ $state }“, 1 Art
   *[other] „{ $state }“, { $count } Arten
}
table-rename = So schreiben
table-take-out = Diese Spalte herausnehmen
table-close-panel = Schließen
table-word-yes = ja
table-word-no = nein
table-word-easy = leicht, auch auf Armlänge
table-word-fair = man muss genau hinsehen
table-word-hard = braucht Übung oder eine Lupe
table-word-count = eine Zahl, gezählt
table-word-ratio = eine Länge geteilt durch eine andere
table-word-in = Zoll
table-word-ft = Fuß
table-word-words = Wörter
table-word-counts = Zahlen, gezählt
table-word-measure = Zahlen, gemessen
table-word-tree = ein ganzer Baum
table-word-twig = ein Zweig mit Blättern
table-word-leaf = ein Blatt
table-word-rubbing = ein Rubbelbild
table-word-photograph = ein Foto
table-word-winter-twig = ein kahler Zweig
table-word-tray = eine Schale mit Wasser
table-word-spring = Frühling
table-word-summer = Sommer
table-word-autumn = Herbst
table-word-winter = Winter
table-word-eyes = Augen und Finger
table-word-lens = eine Lupe
table-word-ruler = ein Lineal
table-lay-over = Die Tabelle einer Gruppe dazulegen
table-lay-over-help = Ihre Tabelle wird getrennt gespeichert. Wo sie anders ist als eure, entscheidet ihr. Arten und Spalten, die es hier noch nicht gibt, kommen dazu.
table-lay-over-who = Wer sagt das? Leer: die Tabelle selbst. Was dort steht, wird dann ersetzt
table-lay-over-paste = Ihre Tabelle hier einfügen, mit den Überschriften
table-lay-over-file = Oder eine Datei (CSV oder XLSX)
table-lay-over-button = Dazulegen
table-pasted = Was eingefügt wurde
table-nothing-pasted = Darin steht nichts Neues.
table-nothing-pasted-remedy = Fügt eine Tabelle mit einer Zeile Überschriften ein, die Arten in der ersten Spalte.
stood-cell = Jemand hat in einem anderen Fenster { $character } bei { $kind } geändert. Jetzt steht da: { $says }
stood-cell-remedy = Nichts wurde geschrieben. Geht zurück, seht nach, was jetzt dasteht, und entscheidet noch einmal.
stood-nothing = nichts
table-own-words = In eigenen Worten gefragt, darum behalten diese Fragen ihre Worte:
table-own-words-one = „{ $question }“ ({ $key })
