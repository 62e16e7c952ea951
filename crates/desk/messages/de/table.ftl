### Die Tabelle: Arten und Merkmale.

table-no-kinds = Was habt ihr? Tragt zuerst die Arten ein, eine je Zeile; dann etwas, worauf man bei jeder schaut, etwa „Blattrand“.
table-no-characters = Tragt ein, worauf man bei jeder Art schaut, etwa „Blattrand“, „Zahl der Blättchen“ oder „Länge der Spreite (mm)“.
table-help = Was in einer Zelle stehen kann
table-help-word = Ein Wort für das, was ihr seht. Für dasselbe dasselbe Wort, die ganze Spalte hinunter.
table-help-varies = Beides kommt vor: manche dieser Art sind so und manche so.
table-help-counted = Ihr habt gezählt: acht waren gelappt und zwei nicht.
table-help-range = Gemessen, vom kleinsten bis zum größten.
table-help-count = Gezählt: fünf, sechs oder sieben.
table-help-unknown = Das weiß noch niemand. Dasselbe wie eine leere Zelle, aber jemand hat daran gedacht.
table-help-not-there = Diese Art hat das nicht: ein Blatt aus einem Stück hat keine Blättchen.
table-help-keys = Mit der Tastatur: die Pfeile gehen von Zelle zu Zelle, die Tabulatortaste zur nächsten, die Eingabetaste geht nach unten, Tippen überschreibt, F2 schreibt weiter, Escape bringt zurück, was dort stand, Pos1 und Ende gehen an die Enden der Zeile. Ein Block aus einer Tabellenkalkulation lässt sich in eine Zelle einfügen und füllt die Zellen von dort an.
table-choices = Zellen auswählen, oder als Gruppe schreiben
table-show = Zeigen
table-show-all = alle Zellen
table-show-blank = nur wo niemand etwas weiß
table-show-differ = nur wo ihr euch nicht einig seid
table-show-whole = Die ganze Tabelle zeigen
table-of-kind = Art
table-every-kind = jede Art
table-of-character = Worauf man schaut
table-every-character = alles
table-as = Schreiben als (eine Gruppe; leer: die Tabelle selbst)
table-as-told = Ihr seht und schreibt, was { $who } sagt. Das überschreibt nie die Tabelle oder eine andere Gruppe.
table-choose = Diese zeigen
table-differ-count = { $count ->
    [one] in 1 Zelle seid ihr euch nicht einig
   *[other] in { $count } Zellen seid ihr euch nicht einig
}
table-none-blank = Hier ist keine Zelle leer.
table-none-differ = Hier widerspricht niemand.
table-none = So eine Zelle gibt es nicht.
table-keep = Behalten, was ich geschrieben habe
table-not-kept = Was ihr zuletzt geschrieben habt, konnte nicht behalten werden: Spinney antwortet nicht. Es steht noch in seinen Zellen; drückt „Behalten, was ich geschrieben habe“, sobald es wieder läuft.
table-not-pasted = Nicht alles, was ihr eingefügt habt, passt in die Tabelle. Fügt erst Zeilen und Spalten hinzu, dann noch einmal einfügen.
table-to-margin = Hinunter zu dem, was sich noch gleicht
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
table-clash = inzwischen geändert
table-clash-told = Jemand hat hier „{ $theirs }“ geschrieben, während ihr „{ $mine }“ geschrieben habt. Was stimmt?
table-clash-cleared = Jemand hat diese Zelle geleert, während ihr „{ $mine }“ geschrieben habt. Was stimmt?
table-clash-mine = Meines schreiben
table-clash-leave = Das andere lassen
table-many-clashes = { $count } dieser Zellen wurden in einem anderen Fenster geändert, während ihr geschrieben habt.
table-many-clashes-remedy = Was ihr geschrieben habt, steht unten. Geht zurück, seht nach, was jetzt dasteht, und schreibt noch einmal, was fehlt.
table-differ = nicht einig
table-take = „{ $text }“ nehmen
table-varies = Beides kommt vor: „{ $text }“
table-look-again = Noch einmal hinsehen (?)
table-who = { $count ->
    [one] eine Gruppe
   *[other] { $count } Gruppen
}
table-itself = Die Tabelle
table-says = { $who }: „{ $text }“
table-by-heaps = (so liegt es auf ihren Haufen)
table-too-long = Das ist länger als { $count } Buchstaben.
table-too-long-remedy = Sagt es kürzer. Längere Notizen gehören zu den Funden.
table-margin-empty = Was sich noch gleicht und wo man als Nächstes hinsehen sollte, steht hier, sobald es Arten gibt.
table-too-large = Bei mehr als { $count } Arten wird nicht nach jeder Änderung nach Paaren gesucht, die sich gleichen. Der Schlüssel nennt sie.
table-alike = Gleicht sich noch
table-none-alike = Je zwei Arten lassen sich unterscheiden.
table-alike-count = { $count ->
    [one] Ein Paar lässt sich mit dieser Tabelle nicht unterscheiden:
   *[other] { $count } Paare lassen sich mit dieser Tabelle nicht unterscheiden:
}
table-pair = { $one } und { $other }
table-told-by-heaps = Die Tabelle trennt diese nicht, aber eine Gruppe hat es getan, mit Haufen:
table-told-pair = { $group } trennt { $one } und { $other }: „{ $words }“
table-hope-one = Eine leere Zelle könnte sie trennen.
table-hope-several = Mehrere leere Zellen zusammen könnten sie trennen.
table-hope-new = Sucht einen Unterschied, der nicht in der Tabelle steht.
table-more-pairs = { $count ->
    [one] und noch ein Paar
   *[other] und noch { $count } Paare
}
table-look-at = Wo ein Blick am meisten hilft
table-look-cell = { $kind }, { $character }
table-look-parts = Das könnte es trennen von: { $kinds }.
table-look-with-others = Zusammen mit anderen leeren Zellen könnte das es trennen von: { $kinds }.
table-look-secures = Das könnte einen zweiten Unterschied geben zu: { $kinds }.
table-and-more = { $kinds } und { $count } weiteren
table-to-mend = Was zu verbessern ist
table-nothing-to-mend = Nichts.
table-cells-to-mend = { $count ->
    [one] Eine Zelle sollte man ansehen:
   *[other] { $count } Zellen sollte man ansehen:
}
table-new-character = Noch etwas, worauf man schaut
table-add-character = Spalte hinzufügen
table-new-kind = Noch eine Art
table-add-kind = Zeile hinzufügen
table-full = Eine Tabelle hat höchstens { $count } Merkmale.
table-full-remedy = Nehmt heraus, wonach kein Schlüssel fragt.
table-no-name = Es braucht einen Namen.
table-no-name-remedy = Sagt, worauf man schaut: „Blattrand“, „Zahl der Blättchen“.
table-name-taken = „{ $name }“ steht schon in der Tabelle.
table-name-taken-remedy = Gebt einen anderen Namen, oder nehmt die Spalte, die da ist.
table-no-state = Ein Zustand braucht ein Wort.
table-no-state-remedy = Schreibt ein Wort mit höchstens { $count } Buchstaben.
table-gone = Das steht nicht mehr in der Tabelle.
table-gone-remedy = Es wurde in einem anderen Fenster herausgenommen. Rückgängig bringt es wieder.
table-field-clash = Jemand hat dort „{ $theirs }“ geschrieben, während ihr „{ $mine }“ geschrieben habt.
table-field-clash-remedy = Geht zurück, seht nach, was jetzt dasteht, und schreibt eures noch einmal, wenn es noch stimmt.
table-field-name = Name
table-field-question = Wie man fragt
table-help-question = Setzt {"{}"} dorthin, wo der Zustand oder die Zahl steht: „Ist der Blattrand {"{}"}?“
table-field-values = Was in den Zellen steht
table-help-values = Leer: so, wie die Zellen aussehen. Sagt „Wörter“, wo Zahlen nur Namen sind.
table-field-states = Seine Zustände, in ihrer Reihenfolge
table-help-states = Mit Kommas dazwischen. Leer: die Wörter, die in den Zellen stehen.
table-field-in-order = Die Zustände haben eine Reihenfolge
table-help-in-order = Klein, mittel, groß: eine Frage stellt nie die beiden Enden gegen die Mitte.
table-field-unit = Gemessen in
table-field-gap = Sicherheitsabstand
table-help-gap = Wie weit die Zahl einer Frage von jedem Messbereich wegbleibt, in derselben Einheit.
table-field-difficulty = Wie schwer zu sehen
table-field-seen-on = Zu sehen an
table-field-season = Zu sehen im
table-field-instrument = Braucht
table-field-by-touch = Muss man anfassen
table-field-applies-when = Gibt es nur, wenn
table-help-applies-when = Ein anderes Merkmal und seine Zustände: „Form = Feder or Hand“.
table-field-read-right = Richtig gelesen, in Prozent
table-help-read-right = Wie viele von hundert es richtig sehen, wenn jemand gezählt hat.
table-field-words = Wörter, die man kennen muss
table-help-words = Mit Kommas dazwischen: „Blättchen, Knospe“.
table-field-ratio = Eine Länge durch eine andere
table-help-ratio = „Stiellänge / Spreitenlänge“
table-not-said = nicht gesagt
table-more-fields = Mehr dazu
table-keep-character = Das behalten
table-asks = Es fragt zum Beispiel: „{ $question }“
table-kept-in = Hier steht es in „{ $typed }“. Fragen und Blätter sagen „{ $kept }“.
table-states = Seine Zustände
table-rename-help = Ein anderes Wort wird überall geschrieben: in jeder Zelle und in jeder Frage danach.
table-state-of = { $count ->
    [one] „{ $state }“, 1 Art
   *[other] „{ $state }“, { $count } Arten
}
table-rename = So schreiben
table-take-out = Diese Spalte herausnehmen
table-close-panel = Dieses Blatt schließen
table-word-yes = ja
table-word-no = nein
table-word-easy = leicht, auf Armlänge
table-word-fair = braucht einen genauen Blick
table-word-hard = braucht Übung oder eine Lupe
table-word-count = eine Zahl, gezählt
table-word-ratio = eine Länge durch eine andere
table-word-inch = Zoll
table-word-feet = Fuß
table-word-words = Wörter
table-word-counts = Zahlen, gezählt
table-word-measure = ein Maß
table-word-tree = ein ganzer Baum
table-word-twig = ein Zweig mit Blättern
table-word-leaf = ein Blatt
table-word-rubbing = ein Abrieb
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
table-lay-over = Die Tabelle einer Gruppe über diese legen
table-lay-over-help = Was die Gruppe sagt, kommt in ihre eigene Sicht. Wo es anders ist als das, was andere sagen, entscheidet ihr Zelle für Zelle; niemandes Worte gehen verloren. Arten und Spalten, die es hier noch nicht gibt, kommen dazu.
table-lay-over-who = Wer sagt das? Leer: die Tabelle selbst; das überschreibt, was dort steht
table-lay-over-paste = Die Tabelle hier einfügen, mit ihren Überschriften
table-lay-over-file = Oder eine Datei (CSV oder XLSX)
table-lay-over-button = Darüberlegen
table-pasted = Was eingefügt wurde
table-nothing-pasted = Es steht nichts Neues darin.
table-nothing-pasted-remedy = Fügt eine Tabelle mit einer Zeile Überschriften ein, die Arten in der ersten Spalte.
table-pasted-too-long = „{ $text } …“ ist länger als { $most } Buchstaben.
table-too-much = Das ist mehr, als eine Tabelle fasst.
table-too-much-remedy = Legt nur die Arten und Spalten darüber, die ihr braucht.
stood-cell = Ein anderes Fenster hat inzwischen zu { $kind }, { $character } etwas geschrieben. Jetzt heißt es: { $says }
stood-cell-remedy = Nichts wurde geschrieben. Geht zurück, seht nach, was jetzt da steht, und entscheidet noch einmal.
stood-nothing = nichts
table-own-words = Von Hand formuliert, darum behalten diese Fragen ihre Worte:
table-own-words-one = „{ $question }“ ({ $key })
