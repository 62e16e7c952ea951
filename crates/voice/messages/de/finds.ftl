### Unsere Funde.

caution = Vorsicht!
finds-empty = Was habt ihr gefunden? Legt es aus. Schreibt dann unten die Namen auf, einen je Zeile, oder zieht Bilder hinein. Ein Fund ohne Namen heißt nach einem Buchstaben, bis jemand ihn kennt.
finds-not-named = noch ohne Namen
finds-drawn-leaf = Das ist eines der Blätter, nach einem Scan in Linien gezeichnet.
finds-drawn-beside = Die Zeichnung von einem Blatt bleibt hier. Hier, auf den Karten und auf der Seite fürs Handy steht das Foto davor.
finds-drawing-away = Die Zeichnung herausnehmen
finds-drawn = Gezeichnet nach dem, was in der Tabelle steht. Es ist kein genaues Bild.
finds-next = Wie geht es weiter?
finds-next-second = Noch einen Fund dazu: Ein Schlüssel unterscheidet mindestens zwei
finds-go-on-sorting = Weiter auf Haufen sortieren
finds-next-try = Den Schlüssel ausprobieren
finds-next-print = Den Schlüssel drucken
finds-open-copy = Eine gespeicherte Kopie öffnen
finds-share-out = Auf Gruppen verteilen
finds-newcomer = Ein neuer Fund, der nicht im Schlüssel ist
finds-to-heaps = Auf Haufen sortieren
finds-forget = Etwas endgültig löschen
finds-met = Zu sehen: { $often }
finds-all = Alle unsere Funde
finds-add = Funde dazunehmen
finds-names = Namen, einer je Zeile
finds-names-example =
    Hasel
    Eiche
finds-pictures = Oder Bilder, eins je Fund
finds-more-pictures = Mehr Bilder
finds-drop-here = … oder zieht sie hierher.
finds-dropped = Die Bilder sind bereit.
finds-add-button = Dazunehmen
finds-add-pictures = Diese Bilder dazunehmen
finds-too-many = Eine Sammlung hat höchstens { $count } Arten.
finds-too-many-remedy = Beginnt eine zweite Sammlung, zum Beispiel für jeden Lebensraum eine.
finds-nothing-new = Es war kein neuer Name und kein Bild dabei.
finds-nothing-new-remedy = Schreibt einen Namen, der noch nicht in der Liste steht, einen je Zeile. Oder wählt ein Bild.
finds-long-line = Zeile { $line } ist länger als { $count } Buchstaben.
finds-long-line-remedy = Ein Name je Zeile: Beginnt für jeden Fund eine neue Zeile.
finds-long-text = „{ $start }…“ ist länger als { $count } Buchstaben.
finds-long-text-remedy = Schreibt es kürzer. Nichts wurde geändert. Was ihr geschrieben habt, steht unten.
finds-gone = Diesen Fund gibt es nicht mehr.
finds-gone-remedy = Er wurde herausgenommen, vielleicht in einem anderen Fenster. „Was wir gemacht haben“ bringt ihn zurück.
finds-paste = Oder fügt eine Tabelle ein: ein Fund je Zeile, oben die Überschriften
finds-paste-example =
    Art, Blattrand, Länge der Blattspreite (mm)
    Hasel, gezähnt, 60-110
finds-table-file = Oder eine Datei: CSV, TSV oder XLSX
finds-rows = Was ist jede Zeile darin?
finds-rows-kinds = Eine Art: Hasel, Linde, Esche
finds-rows-leaves = Ein Blatt, eine Muschel, ein Tier: Hasel, Hasel, Hasel, Linde. Spinney rechnet die Spannen aus.
finds-several-rows = „{ $kind }“ steht in { $rows } Zeilen dieser Tabelle.
finds-several-rows-remedy = Ist jede Zeile ein einzelnes Blatt (oder eine Muschel, ein Tier)? Dann wählt das unter der Tabelle auf „Unsere Funde“ und übernehmt sie noch einmal. Wenn nicht, gebt jeder Art ihren eigenen Namen. Nichts wurde geändert.
finds-whose = Von wem ist die Tabelle?
finds-whose-example = Gruppe Blau
finds-whose-why = Mit einem Namen bleibt diese Tabelle neben den anderen stehen. Wo zwei Tabellen sich widersprechen, werdet ihr gefragt. Lasst das Feld leer, wenn diese Tabelle gilt.
finds-take-table = Die Tabelle übernehmen
finds-pasted = Was eingefügt wurde
finds-no-table = In der Tabelle stand nichts Neues.
finds-no-table-remedy = Fügt Zellen ein, mit einer Zeile Überschriften darüber und den Funden in der ersten Spalte.
finds-wide-table = Eine Tabelle hat höchstens { $count } Spalten und 100.000 Zellen.
finds-wide-table-remedy = Übernehmt nur die Spalten, die der Schlüssel braucht, ein Tabellenblatt nach dem anderen.
finds-not-read = Was nicht verstanden wurde
finds-not-read-remedy = Behebt es in eurer Tabelle und übernehmt sie noch einmal, oder schreibt es hier hinein. „Rückgängig“ nimmt alles wieder heraus.
finds-far = Weit weg von den anderen
finds-far-one = { $kind }, { $about }: { $finds }
finds-far-remedy = Seht euch jeden noch einmal an und sagt, ob er stimmt, falsch gemessen wurde oder von einer anderen Art ist. Bis dahin zählen sie mit.
finds-taken-for = „{ $theirs }“ gilt hier als „{ $ours }“, denn das gibt es schon. Sind es zwei Funde? Dann macht es rückgängig und gebt einem einen anderen Namen.
finds-leaves-here = { $count ->
    [one] 1 Blatt dieser Tabelle ist schon hier und kam nicht noch einmal dazu.
   *[other] { $count } Blätter dieser Tabelle sind schon hier und kamen nicht noch einmal dazu.
}
finds-leaves-changed = { $count ->
    [one] 1 davon bekam, was diese Tabelle jetzt von ihm sagt.
   *[other] { $count } davon bekamen, was diese Tabelle jetzt von ihnen sagt.
}
finds-drawing-moved = Jemand hat diese Zeichnung in einem anderen Fenster geändert.
finds-drawing-moved-remedy = Seht sie euch noch einmal an und nehmt sie dann heraus, wenn ihr das noch wollt.
finds-no-pictures = { $count ->
    [one] Ein Bild, das in der Tabelle steht, kam nicht mit. Öffnet den Fund und nehmt es dort dazu.
   *[other] { $count } Bilder, die in der Tabelle stehen, kamen nicht mit. Öffnet jeden Fund und nehmt sein Bild dort dazu.
}
finds-here-already = { $count ->
    [one] „{ $names }“ ist schon da und kam nicht noch einmal dazu. Habt ihr einen zweiten Fund, gebt ihm einen anderen Namen.
   *[other] { $names } sind schon da und kamen nicht noch einmal dazu. Habt ihr weitere Funde, gebt ihnen andere Namen.
}
finds-one-name = „{ $first }“ und „{ $second }“ sind fast gleich geschrieben. Ist das ein Fund, oder sind es zwei?
finds-one-name-same = Ein Fund: zusammenlegen
finds-one-name-two = Zwei Funde: diesem einen anderen Namen geben
finds-left = { $count ->
    [one] Eine Sache blieb, wie sie hier steht
   *[other] { $count } Sachen blieben, wie sie hier stehen
}
finds-left-why = In der Datei steht auf anderen Tabellenblättern dazu etwas anderes. Wenn das stimmt, schreibt es hier selbst auf.
finds-left-about = Angaben zum Ausflug
finds-left-one = { $what }, { $field }: hier „{ $ours }“, in der Datei „{ $theirs }“
finds-left-more = { $count ->
    [one] und noch eine Sache
   *[other] und noch { $count } Sachen
}
finds-unit-differs = „{ $name }“ wird hier in { $ours } gemessen und in dieser Tabelle in { $theirs }.
finds-unit-differs-remedy = Gebt der Spalte einen anderen Namen oder die Einheit, die sie hier hat. Nichts wurde übernommen.
finds-unit-nobody-said = In dieser Tabelle wird „{ $name }“ in { $theirs } gemessen. Hier stehen dort Zahlen, aber niemand hat gesagt, worin gemessen wird.
finds-unit-nobody-said-remedy = Öffnet die Spalte in der Tabelle, gebt die Einheit an und übernehmt dann noch einmal. Nichts wurde übernommen.
finds-disagree = { $count ->
    [one] Eine Sache, die nicht alle gleich sehen
   *[other] { $count } Sachen, die nicht alle gleich sehen
}
finds-disagree-why = Seht euch den Fund noch einmal an. Bis jemand entscheidet, fragt der Schlüssel nicht danach.
finds-disagree-more = { $count ->
    [one] Noch eine Sache sehen nicht alle gleich.
   *[other] Noch { $count } Sachen sehen nicht alle gleich.
}
finds-says = { $source }: { $text }
saying-one-of = eins oder mehrere von: { $states }
saying-none-of = { $count ->
    [one] nicht { $states }
   *[other] keins von: { $states }
}
saying-varies = { $count ->
    [one] manchmal { $states }, manchmal nicht
   *[other] manchmal eins oder mehrere von: { $states }; manchmal nicht
}
finds-unlike = { $count ->
    [one] Ein Fund, den nicht alle gleich sortiert haben
   *[other] { $count } Funde, die nicht alle gleich sortiert haben
}
finds-unlike-why = Zwei Schlüssel fragen dasselbe, aber der Fund liegt auf verschiedenen Haufen. Haben alle dasselbe gemeint? Seht gemeinsam hin. Wer sich geirrt hat, legt die Karte um.
finds-unlike-put = { $who }: { $side }
finds-right = „{ $text }“ stimmt
finds-otherwise = Oder was wir jetzt sehen
finds-write = Aufschreiben
finds-nothing-decided = Nichts wurde entschieden.
finds-nothing-decided-remedy = Wählt eins von beiden, oder schreibt, was ihr seht.
finds-scene = Titel, Ort, Jahreszeit und Warnungen
finds-title = Titel
finds-title-example = Spaziergang an Hecke und Straße
finds-place = Wo
finds-place-example = Mühlweg
finds-season = Wann im Jahr
finds-season-example = Anfang Oktober
finds-part = Was man in der Hand haben muss
finds-part-example = einen Zweig mit Blättern
finds-scene-caution = Was alle wissen müssen, die mitgehen. Es steht auf jedem Arbeitsblatt
finds-scene-caution-example = Wascht euch vor dem Essen die Hände.
finds-second-language = Eine zweite Sprache auf den Arbeitsblättern: Ihr schreibt jeden Namen und jede Frage in ihr dazu
finds-second-language-example = Polski
finds-before = Bevor es losgeht: woran die Erwachsenen denken, eine Zeile für jede Sache
finds-before-example = Die Besitzerin des Grundstücks fragen.
finds-second-questions = Fragen in euren eigenen Worten, Titel, Warnungen, ja und nein in der zweiten Sprache: eine Zeile für jede, mit = dazwischen
finds-second-questions-example = Ist er hohl? = Czy jest pusty w środku?
finds-keep = Speichern
finds-name = Name
finds-name-help = Wie die Kinder ihn nennen. Leer: noch ohne Namen. Ändert ihr den Namen später, ändert er sich überall.
finds-how-sure = Wie sicher ist der Name, und wer sagt das?
finds-how-sure-help = Zum Beispiel „ziemlich sicher, die Försterin“ oder „geraten, Gruppe Blau“. Keine Namen von Kindern hier.
finds-scientific = Wissenschaftlicher Name
finds-scientific-help = Wenn ihr ihn kennt.
finds-other-names = Namen in anderen Sprachen oder Gegenden
finds-other-names-help = Vor jedem Namen steht seine Sprache, so: cy: collen; en: hazel
finds-second-name = Der Name in der zweiten Sprache
finds-second-name-help = Er steht unter dem Namen: auf dem Schlüssel, auf den Karten zum Sortieren und auf der Seite fürs Handy.
finds-caution = Was schaden kann
finds-caution-help = Es steht überall, wo der Fund gezeigt wird.
finds-confirm = Woran prüft ihr es am Ende?
finds-confirm-help = Ein Satz, den ein Kind nachprüfen kann.
finds-how-often = Wie oft seht ihr ihn?
finds-how-often-help = Schreibt „often“ (oft), „sometimes“ (manchmal) oder „rarely“ (selten). Was man oft sieht, kommt früher heraus.
finds-where = Wo wurde er gefunden?
finds-where-help = So genau, wie ihr mögt.
finds-when = Wann wurde er gefunden?
finds-when-help = Ein Tag oder eine Jahreszeit.
finds-which = Von welcher Pflanze?
finds-which-help = Damit ihr noch einmal hingehen und nachsehen könnt: „die alte am Tor“.
finds-name-taken = Einen Fund, der „{ $name }“ heißt, gibt es schon.
finds-name-taken-remedy = Wählt einen anderen Namen. Ist es derselbe Fund, öffnet einen der beiden und sagt dort, was er in Wirklichkeit ist.
finds-picture-of = { $kind }, Bild { $number }
finds-picture-number = Bild { $count }
finds-picture-first = Nach vorn
finds-picture-away = Herausnehmen
finds-picture-forget = Endgültig löschen
finds-many-pictures = Ein Fund hat höchstens { $count } Bilder.
finds-many-pictures-remedy = Nehmt zuerst eins heraus.
finds-table-says = Was in der Tabelle dazu steht
finds-table-nothing = Noch nichts.
finds-to-table = Zur Tabelle
finds-merge = Er ist dasselbe wie ein anderer Fund
finds-merge-with = { $kind } ist in Wirklichkeit
finds-merge-why = Bilder und Zellen gehen auf den anderen über, wo er keine hat. „Rückgängig“ macht wieder zwei daraus.
finds-merge-do = Zusammenlegen
finds-split = Es sind zwei Arten
finds-split-name = Die zweite heißt (leer: noch ohne Namen)
finds-split-pictures = Diese Bilder gehören zur zweiten
finds-split-why = Für die zweite steht zuerst dasselbe in der Tabelle wie für die erste. Schreibt dann auf, worin sie verschieden sind.
finds-split-do = Zwei daraus machen
finds-away = Herausnehmen
finds-away-why = Der Fund verschwindet aus der Tabelle und aus jedem Schlüssel. „Rückgängig“ bringt ihn zurück.
finds-away-do = { $kind } herausnehmen
finds-forget-kind = Oder endgültig löschen
picture-not-read = { $file } ließ sich nicht als Bild lesen.
picture-too-large = { $file } hat mehr Bildpunkte, als hier gehen.
picture-remedy = Nehmt eine JPEG- oder PNG-Datei mit höchstens 40 Millionen Bildpunkten. Wo und wann das Bild gemacht wurde, wird nicht gespeichert.

### Endgültig löschen.

forget-title = Endgültig löschen
forget-why = „Rückgängig“ kann zurückbringen, was herausgenommen wurde. Darum steht es noch in der Datei. Hier wird es auch aus der Datei gelöscht.
forget-kinds = Ein Fund, mit seinen Bildern und allem, was über ihn geschrieben wurde
forget-taken-out = schon herausgenommen
forget-nameless = Fund Nummer { $number }, ohne Namen
forget-pictures = Bilder, die schon herausgenommen wurden
forget-all = Alles
forget-all-link = Die ganze Sammlung löschen
forget-sure = Ja, endgültig löschen
forget-keep = Alles behalten
forget-no-undo = Das lässt sich nicht rückgängig machen.
forget-copies = Kopien der Datei an anderen Orten und gedruckte Arbeitsblätter ändern sich dadurch nicht.
forget-kind-title = { $kind } endgültig löschen?
forget-kind-goes = Gelöscht wird { $kind }, auch unter früheren Namen: in der Liste, in der Tabelle, in jedem Schlüssel und in „Was wir gemacht haben“.
forget-also = Dazu gehört, was sich als dasselbe herausgestellt hat: { $kinds }.
forget-its-leaves = { $count ->
    [one] Auch das einzelne Blatt davon wird gelöscht.
   *[other] Auch die { $count } einzelnen Blätter davon werden gelöscht.
}
forget-its-pictures = { $count ->
    [one] Auch das Bild wird gelöscht.
   *[other] Auch die { $count } Bilder werden gelöscht.
}
forget-mentions = { $count ->
    [one] Der Name steht noch an einer anderen Stelle
   *[other] Der Name steht noch an { $count } anderen Stellen
}
forget-mentions-more = { $count ->
    [one] und an noch einer Stelle
   *[other] und an noch { $count } Stellen
}
forget-strike = Auch dort streichen
forget-kind-do = { $kind } endgültig löschen
forget-picture-title = Dieses Bild endgültig löschen?
forget-picture-of = Ein Bild von { $kinds }. Es wird bei jedem Fund gelöscht, der es hat.
forget-picture-do = Das Bild endgültig löschen
forget-all-title = Die ganze Sammlung endgültig löschen?
forget-all-kinds = { $count ->
    [one] Ein Fund wird gelöscht, mit seinen Bildern.
   *[other] Alle { $count } Funde werden gelöscht, mit ihren Bildern.
}
forget-all-keys = { $count ->
    [0] Es gibt noch keinen Schlüssel.
    [one] Der Schlüssel wird gelöscht.
   *[other] Alle { $count } Schlüssel werden gelöscht.
}
forget-all-lines = { $count ->
    [one] Die eine Sache in „Was wir gemacht haben“ wird gelöscht.
   *[other] Alle { $count } Sachen in „Was wir gemacht haben“ werden gelöscht.
}
forget-all-do = Alles endgültig löschen
forget-moved = Jemand hat die Sammlung in einem anderen Fenster geändert.
forget-moved-remedy = Bitte die Seite noch einmal ansehen. Dort steht, was gelöscht wird.
forget-unsure = Nichts wurde gelöscht.
forget-unsure-remedy = Wer sicher ist, kreuzt das Kästchen an. Das lässt sich nicht rückgängig machen.

### Verteilen.

share-title = Auf Gruppen verteilen
share-why = Jede Gruppe bekommt einen Satz Funde, die sich unterscheiden lassen. Ähnliche sind dabei, damit die Kinder genau hinsehen. Zu jedem Satz gehört ein eigener Schlüssel.
share-groups = Gruppen
share-size = Funde je Gruppe
share-again = Neu verteilen
share-name = Wem gehört der Satz?
share-group = Gruppe { $number }
share-names-why = Eine Farbe oder ein Tier ist ein guter Name. Keine Namen von Kindern.
share-start = Für jede Gruppe einen Schlüssel beginnen
share-pair = { $one } und { $other }
share-alike = { $count ->
    [one] Genau hinsehen: { $pair } unterscheiden sich nur in einem Merkmal.
   *[other] Genau hinsehen: { $pair } unterscheiden sich in { $count } Merkmalen.
}
share-left = In keinem Satz: { $kinds }.
share-short = So viele Funde lassen sich mit der Tabelle in einem Satz nicht unterscheiden: höchstens { $count }.
share-short-few = Es gibt nur { $count } Funde. Darum sind in jedem Satz alle.
share-not-found = Ein größerer Satz als { $count } wurde nicht gefunden. Vielleicht gibt es einen.
share-never = In der Tabelle steht für diese überall dasselbe. Darum kommen sie nie in denselben Satz: { $pairs }.
share-never-more = { $count ->
    [one] Noch bei einem Paar steht überall dasselbe.
   *[other] Noch bei { $count } Paaren steht überall dasselbe.
}
share-never-remedy = Einen Unterschied suchen, in die Tabelle schreiben und neu verteilen.
share-too-few = Für einen Satz braucht es mindestens { $count } Funde.
share-too-many = Es sind zu viele Funde, um jeden mit jedem zu vergleichen. Bitte eine kleinere Sammlung verteilen.
share-begun = Sätze, die schon eine Gruppe hat
share-next = Jetzt die Arbeitsblätter für jede Gruppe drucken: eine Nummer für jeden Fund, ein leerer Schlüssel zum Ausfüllen, eine Liste zum Ankreuzen. Dann sortiert jede Gruppe ihren Satz auf Haufen.
share-more = Noch einmal verteilen
share-to-heaps = Auf Haufen sortieren
share-sheets = Arbeitsblätter für die Gruppe
share-file = satz-{ $number }.pdf
share-nothing = Es gab keinen Satz, mit dem ein Schlüssel beginnen kann.
share-nothing-remedy = Zurückgehen und neu verteilen. Vielleicht haben sich die Funde geändert.
finds-many-at-once = Mehr als { $count } Bilder auf einmal gehen nicht.
finds-many-at-once-remedy = Nehmt sie in mehreren Schritten dazu.
