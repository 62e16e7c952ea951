### Unsere Funde.

caution = Vorsicht!
finds-empty = Was habt ihr gefunden? Legt es aus, dann schreibt unten die Namen auf, einen je Zeile, oder legt Bilder hinein. Ein Fund ohne Namen heißt nach einem Buchstaben, bis jemand ihn kennt.
finds-not-named = noch ohne Namen
finds-drawn = Gezeichnet nach dem, was in der Tabelle steht; kein Bildnis.
finds-next = Wie weiter?
finds-next-second = Noch einen Fund dazu: ein Schlüssel unterscheidet mindestens zwei
finds-go-on-sorting = Weiter auf Haufen sortieren
finds-next-try = Den Schlüssel ausprobieren
finds-next-print = Ihn drucken
finds-open-copy = Eine früher gespeicherte Kopie öffnen
finds-share-out = Auf Gruppen verteilen
finds-newcomer = Ein Neuling: ein Fund, der nicht im Schlüssel ist
finds-to-heaps = Auf Haufen sortieren
finds-forget = Etwas endgültig entfernen
finds-met = getroffen: { $often }
finds-all = Alle unsere Funde
finds-add = Funde hinzufügen
finds-names = Namen, einer je Zeile
finds-names-example =
    Hasel
    Eiche
finds-pictures = Oder Bilder, eines je Fund
finds-more-pictures = Mehr Bilder
finds-drop-here = … oder legt sie hier hinein.
finds-dropped = Die Bilder können hinzugefügt werden.
finds-add-button = Hinzufügen
finds-add-pictures = Diese Bilder hinzufügen
finds-too-many = Eine Sammlung hat höchstens { $count } Arten.
finds-too-many-remedy = Beginnt eine zweite Sammlung, etwa eine je Lebensraum.
finds-nothing-new = Es war kein neuer Name und kein Bild dabei.
finds-nothing-new-remedy = Schreibt einen Namen, der noch nicht in der Liste ist, einen je Zeile, oder wählt ein Bild.
finds-long-line = Zeile { $line } ist länger als { $count } Buchstaben.
finds-long-line-remedy = Ein Name je Zeile: beginnt für jeden Fund eine neue Zeile.
finds-long-text = „{ $start }…“ ist länger als { $count } Buchstaben.
finds-long-text-remedy = Sagt es kürzer. Nichts wurde geändert; was ihr geschrieben habt, steht unten.
finds-gone = Diesen Fund gibt es nicht mehr.
finds-gone-remedy = Er wurde herausgenommen, vielleicht in einem anderen Fenster. „Was wir getan haben“ bringt ihn wieder.
finds-paste = Oder fügt eine Tabelle ein: ein Fund je Zeile, Überschriften darüber
finds-paste-example =
    Art, Rand, Länge der Spreite (mm)
    Hasel, gezähnt, 60-110
finds-table-file = Oder eine Datei: CSV, TSV oder XLSX
finds-whose = Wessen Tabelle ist es?
finds-whose-example = Gruppe Blau
finds-whose-why = Mit einem Namen liegt diese Tabelle neben den anderen, und wo zwei sich widersprechen, werdet ihr gefragt. Lasst es leer, wenn sie entscheidet.
finds-take-table = Die Tabelle hereinnehmen
finds-pasted = Was eingefügt wurde
finds-no-table = In der Tabelle stand nichts Neues.
finds-no-table-remedy = Fügt Zellen mit einer Zeile Überschriften darüber ein, die Funde in der ersten Spalte.
finds-table-error = { $error }
finds-wide-table = Eine Tabelle hat höchstens { $count } Spalten und 100.000 Zellen.
finds-wide-table-remedy = Nehmt die Spalten herein, die der Schlüssel braucht, eine Tabelle nach der anderen.
finds-not-read = Was nicht verstanden wurde
finds-not-read-remedy = Verbessert es in eurer Tabelle und nehmt sie noch einmal auf, oder tippt es hier. „Rückgängig“ nimmt heraus, was hereinkam.
finds-taken-for = „{ $theirs }“ wurde für „{ $ours }“ gehalten, das schon hier ist. Sind es zwei Funde, macht es rückgängig und gebt einem einen anderen Namen.
finds-no-pictures = { $count ->
    [one] Ein Bild, das die Tabelle nennt, kam nicht mit. Öffnet den Fund und fügt es dort hinzu.
   *[other] { $count } Bilder, die die Tabelle nennt, kamen nicht mit. Öffnet jeden Fund und fügt sein Bild dort hinzu.
}
finds-here-already = { $count ->
    [one] „{ $names }“ ist schon hier und wurde nicht noch einmal hinzugefügt. Habt ihr einen zweiten gefunden, gebt ihm einen anderen Namen.
   *[other] { $names } sind schon hier und wurden nicht noch einmal hinzugefügt. Habt ihr andere gefunden, gebt ihnen andere Namen.
}
finds-one-name = „{ $first }“ und „{ $second }“ sind fast gleich geschrieben. Ist es derselbe Fund oder sind es zwei?
finds-one-name-same = Derselbe: zusammenlegen
finds-one-name-two = Zwei Funde: diesem einen anderen Namen geben
finds-left = { $count ->
    [one] Eines blieb, wie es hier steht
   *[other] { $count } Dinge blieben, wie sie hier stehen
}
finds-left-why = Die Blätter neben dieser Tabelle sagen dort etwas anderes. Wenn das stimmt, schreibt es hier selbst auf.
finds-left-about = Der Kopf der Blätter
finds-left-one = { $what }, { $field }: hier „{ $ours }“, in der Tabelle „{ $theirs }“
finds-left-more = { $count ->
    [one] und noch eines
   *[other] und noch { $count }
}
finds-unit-differs = „{ $name }“ wird hier in { $ours } gemessen und in dieser Tabelle in { $theirs }.
finds-unit-differs-remedy = Gebt der Spalte einen anderen Namen oder die Einheit, die sie hier hat. Nichts wurde hereingenommen.
finds-unit-nobody-said = In dieser Tabelle wird „{ $name }“ in { $theirs } gemessen. Hier steht dort schon etwas, und niemand hat gesagt, worin es gemessen wird.
finds-unit-nobody-said-remedy = Öffnet die Spalte in der Tabelle, sagt, worin sie gemessen wird, und nehmt diese noch einmal herein. Nichts wurde hereingenommen.
finds-disagree = { $count ->
    [one] Eines, was verschieden gesehen wird
   *[other] { $count } Dinge, die verschieden gesehen werden
}
finds-disagree-why = Seht euch den Fund noch einmal an. Bis jemand entscheidet, fragt der Schlüssel nicht danach.
finds-disagree-more = { $count ->
    [one] Noch eines wird verschieden gesehen.
   *[other] Noch { $count } Dinge werden verschieden gesehen.
}
finds-says = { $source }: { $text }
saying-one-of = eines oder mehrere von: { $states }
saying-none-of = { $count ->
    [one] nicht { $states }
   *[other] keines von: { $states }
}
saying-varies = { $count ->
    [one] manchmal { $states }, manchmal nicht
   *[other] manchmal eines oder mehrere von: { $states }; manchmal nicht
}
finds-unlike = { $count ->
    [one] Ein Fund, der verschieden sortiert ist
   *[other] { $count } Funde, die verschieden sortiert sind
}
finds-unlike-why = Schlüssel fragen mit denselben Worten und sortieren den Fund verschieden. Haben alle dasselbe gemeint? Seht gemeinsam hin; wer sich geirrt hat, legt die Karte um.
finds-unlike-put = { $who }: { $side }
finds-right = „{ $text }“ stimmt
finds-otherwise = Oder was wir jetzt sehen
finds-write = Aufschreiben
finds-nothing-decided = Nichts wurde entschieden.
finds-nothing-decided-remedy = Wählt eines von beiden, oder schreibt, was ihr seht.
finds-scene = Titel, Ort, Jahreszeit und Warnungen
finds-title = Titel
finds-title-example = Gang an Hecke und Straße
finds-place = Wo
finds-place-example = Mühlweg
finds-season = Wann im Jahr
finds-season-example = Anfang Oktober
finds-part = Was man in der Hand haben muss
finds-part-example = einen Zweig mit Blättern
finds-scene-caution = Was alle wissen müssen, die mitgehen; es steht auf jedem Bogen
finds-scene-caution-example = Wascht euch vor dem Essen die Hände.
finds-before = Bevor es losgeht: woran die Erwachsenen denken, eine Zeile für jedes
finds-before-example = Den Besitzer fragen.
finds-keep = Behalten
finds-name = Name
finds-name-help = Wie Kinder es nennen. Leer: noch ohne Namen. Ein späterer Name ändert sich überall.
finds-how-sure = Wie sicher ist der Name, und wer sagt das?
finds-how-sure-help = Etwa „ziemlich sicher, der Förster“ oder „geraten, Gruppe Blau“. Keine Namen von Kindern hier.
finds-scientific = Wissenschaftlicher Name
finds-scientific-help = Wenn ihn jemand kennt.
finds-other-names = Namen in anderen Sprachen oder Gegenden
finds-other-names-help = Jeder mit seiner Sprache davor, so: cy: collen; en: hazel
finds-caution = Was schaden kann
finds-caution-help = Es steht überall, wo der Fund steht.
finds-confirm = Wie prüft ihr es am Ende?
finds-confirm-help = Ein Satz, den ein Kind nachprüfen kann.
finds-how-often = Wie oft trefft ihr es?
finds-how-often-help = Eine Zahl im Vergleich zu den anderen, oder often, sometimes, rarely. Was man oft trifft, kommt früher heraus.
finds-where = Wo wurde es gefunden?
finds-where-help = So genau, wie ihr mögt.
finds-when = Wann wurde es gefunden?
finds-when-help = Ein Tag oder eine Jahreszeit.
finds-which = Von welcher Pflanze?
finds-which-help = Damit jemand noch einmal nachsehen kann: „die alte am Tor“.
finds-name-taken = Es gibt schon einen Fund, der „{ $name }“ heißt.
finds-name-taken-remedy = Wählt einen anderen Namen. Wenn beide dasselbe sind, öffnet einen davon und sagt, was es in Wirklichkeit ist.
finds-picture-of = { $kind }, Bild { $number }
finds-picture-number = Bild { $count }
finds-picture-first = Nach vorn
finds-picture-away = Wegnehmen
finds-picture-forget = Endgültig entfernen
finds-many-pictures = Ein Fund hat höchstens { $count } Bilder.
finds-many-pictures-remedy = Nehmt zuerst eines weg.
finds-table-says = Was die Tabelle dazu sagt
finds-table-nothing = Noch nichts.
finds-to-table = Zur Tabelle
finds-merge = Es ist dasselbe wie ein anderer Fund
finds-merge-with = { $kind } ist in Wirklichkeit
finds-merge-why = Bilder und Zellen gehen hinüber, wo der andere keine hat. „Rückgängig“ trennt sie wieder.
finds-merge-do = Zusammenlegen
finds-split = Es sind zwei Arten
finds-split-name = Die zweite heißt (leer: noch ohne Namen)
finds-split-pictures = Diese Bilder gehen mit der zweiten
finds-split-why = Die zweite beginnt mit dem, was die Tabelle von der ersten sagt. Dann schreibt auf, worin sie verschieden sind.
finds-split-do = Zwei daraus machen
finds-away = Herausnehmen
finds-away-why = Es verlässt die Tabelle und jeden Schlüssel. „Rückgängig“ bringt es wieder.
finds-away-do = { $kind } herausnehmen
finds-forget-kind = Oder endgültig entfernen
picture-not-read = { $file } konnte nicht als Bild gelesen werden.
picture-too-large = { $file } hat mehr Bildpunkte, als hier gelesen werden.
picture-remedy = Nehmt eine JPEG- oder PNG-Datei mit höchstens 40 Millionen Bildpunkten. Wo und wann sie aufgenommen wurde, wird nicht aufgehoben.

### Endgültig entfernen.

forget-title = Endgültig entfernen
forget-why = „Rückgängig“ kann wiederbringen, was herausgenommen wurde; darum ist es noch in der Datei. Hier verlässt es auch die Datei.
forget-kinds = Ein Fund, mit seinen Bildern und allem, was über ihn geschrieben wurde
forget-taken-out = schon herausgenommen
forget-nameless = Fund Nummer { $number }, ohne Namen
forget-pictures = Bilder, die schon weggenommen wurden
forget-all = Alles
forget-all-link = Die ganze Sammlung entfernen
forget-sure = Ja, endgültig entfernen
forget-keep = Alles behalten
forget-no-undo = Das lässt sich nicht rückgängig machen.
forget-copies = Kopien der Datei anderswo und gedruckte Blätter ändern sich dadurch nicht.
forget-kind-title = { $kind } endgültig entfernen?
forget-kind-goes = { $kind } geht, unter allen Namen, die es hatte: aus der Liste, der Tabelle, jedem Schlüssel und allem, was „Was wir getan haben“ noch weiß.
forget-also = Mit ihm geht, was sich als dasselbe herausgestellt hat: { $kinds }.
forget-its-pictures = { $count ->
    [one] Auch sein Bild geht.
   *[other] Auch seine { $count } Bilder gehen.
}
forget-mentions = { $count ->
    [one] Der Name wurde an einer anderen Stelle geschrieben
   *[other] Der Name wurde an { $count } anderen Stellen geschrieben
}
forget-mentions-more = { $count ->
    [one] und an noch einer Stelle
   *[other] und an noch { $count } Stellen
}
forget-strike = Auch dort streichen
forget-kind-do = { $kind } endgültig entfernen
forget-picture-title = Dieses Bild endgültig entfernen?
forget-picture-of = Ein Bild von { $kinds }. Es geht von jedem Fund, der es hat.
forget-picture-do = Das Bild endgültig entfernen
forget-all-title = Die ganze Sammlung endgültig entfernen?
forget-all-kinds = { $count ->
    [one] Ein Fund geht, mit seinen Bildern.
   *[other] Alle { $count } Funde gehen, mit ihren Bildern.
}
forget-all-keys = { $count ->
    [0] Es gibt noch keinen Schlüssel.
    [one] Der Schlüssel geht.
   *[other] Alle { $count } Schlüssel gehen.
}
forget-all-lines = { $count ->
    [one] Das eine, was „Was wir getan haben“ noch weiß, geht.
   *[other] Alle { $count } Dinge, die „Was wir getan haben“ noch weiß, gehen.
}
forget-all-do = Alles endgültig entfernen
forget-moved = Inzwischen hat jemand die Sammlung geändert.
forget-moved-remedy = Seht euch die Seite noch einmal an, damit ihr seht, was geht.
forget-unsure = Nichts wurde entfernt.
forget-unsure-remedy = Kreuzt das Kästchen an und sagt damit, dass ihr sicher seid. Es lässt sich nicht rückgängig machen.

### Verteilen.

share-title = Auf Gruppen verteilen
share-why = Jede Gruppe bekommt Funde, die sich unterscheiden lassen, mit ähnlichen dabei, damit es etwas genau anzusehen gibt. Jeder Satz beginnt einen eigenen Schlüssel.
share-groups = Gruppen
share-size = Funde je Gruppe
share-again = Neu verteilen
share-name = Wessen Satz?
share-group = Gruppe { $number }
share-names-why = Eine Farbe oder ein Tier ist ein guter Name. Keine Namen von Kindern.
share-start = Für jede Gruppe einen Schlüssel beginnen
share-pair = { $one } und { $other }
share-alike = { $count ->
    [one] Seht genau hin: { $pair } unterscheiden sich nur in einem.
   *[other] Seht genau hin: { $pair } unterscheiden sich in { $count } Dingen.
}
share-left = In keinem Satz: { $kinds }.
share-short = Die Tabelle kann in einem Satz nicht so viele unterscheiden: höchstens { $count }.
share-short-few = Es gibt nur { $count } Funde, darum ist jeder Satz alle.
share-not-found = Kein größerer Satz als { $count } wurde gefunden. Vielleicht gibt es einen.
share-never = Diese gleichen sich in allem, was die Tabelle sagt, und kommen darum nie in denselben Satz: { $pairs }.
share-never-more = { $count ->
    [one] Noch ein Paar gleicht sich.
   *[other] Noch { $count } Paare gleichen sich.
}
share-never-remedy = Findet einen Unterschied, schreibt ihn in die Tabelle und verteilt neu.
share-too-few = Für einen Satz braucht es mindestens { $count } Funde.
share-too-many = Es sind zu viele Funde, um jeden mit jedem zu vergleichen. Verteilt eine kleinere Sammlung.
share-begun = Sätze, die Gruppen haben
share-next = Weiter: druckt die Blätter für jede Gruppe, mit einer Nummer für jeden Fund, einem leeren Schlüssel zum Schreiben und Streifen zum Ankreuzen. Dann sortiert jede Gruppe ihre Funde auf Haufen.
share-more = Noch einmal verteilen
share-to-heaps = Auf Haufen sortieren
share-sheets = Blätter für die Gruppe
share-file = satz-{ $number }.pdf
share-nothing = Es gab keinen Satz, um einen Schlüssel zu beginnen.
share-nothing-remedy = Geht zurück und verteilt neu; die Funde können sich inzwischen geändert haben.
finds-many-at-once = Mehr als { $count } Bilder auf einmal werden nicht aufgenommen.
finds-many-at-once-remedy = Füge sie in mehreren Malen hinzu.
