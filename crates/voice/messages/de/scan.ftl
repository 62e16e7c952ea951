### Die Seite „Blätter messen“: ein Scan, seine Blätter, und was in die Tabelle kommt.

## Die Seite: ein Bild wählen.
scan-title = Blätter messen
scan-why = Legt die Blätter auf einen Flachbettscanner, mit Abstand voneinander und vom Rand. Scannt sie mit 300 Punkten pro Zoll und wählt das Bild hier aus.
scan-scan = Ein Scan oder ein Foto von genau oben ({ $formats })
scan-drop-here = … oder zieht es hierher.
scan-dpi = Punkte pro Zoll, falls ihr es wisst
scan-dpi-why = In den meisten Scans steht es schon. Dann lasst das Feld leer.
scan-no-scanner = Kein Scanner? Druckt die Maßkarte mit 100 %, legt die Blätter zwischen ihre Ringe und fotografiert den ganzen Bogen von oben.
scan-card-a4 = Maßkarte (A4, PDF)
scan-card-letter = Maßkarte (US Letter, PDF)
scan-rubbing = Es ist ein Rubbelbild: Wachsmalkreide oder weicher Bleistift über einem Blatt unter dem Papier
scan-do = Messen
scan-not-kept = Das Bild wird nicht aufgehoben, und auch nicht der Name der Datei. Aufgehoben wird, was ihr übernehmt: jedes Blatt mit Art, Nummer, Längen und einem kleinen Bild, dazu Pflanze, Ort und Tag, wenn ihr sie eintippt; und von jeder Art ein Blatt als Bild der Art.
scan-no-picture = Es ist kein Bild zum Messen da.
scan-no-picture-remedy = Wählt einen Scan aus, der als PNG oder JPEG gespeichert ist.
scan-odd-dpi = „{ $typed }“ ist keine Anzahl von Punkten pro Zoll.
scan-odd-dpi-remedy = Tippt die Einstellung des Scanners ein, etwa 300.
scan-many = { $found } Blätter wurden gefunden. Diese Seite nimmt { $count } auf einmal.
scan-many-remedy = Scannt sie in zwei Durchgängen.
scan-doubtful = In der Datei stehen { $dpi } Punkte pro Zoll. Das schreiben viele Programme, wenn sie es nicht wissen. Legt ein Blatt an ein Lineal: Stimmt die Länge nicht, tippt unten die richtige Zahl ein.
scan-no-scale = Nur Form und Verhältnisse: In der Datei steht nicht, wie groß ein Punkt ist. Bei einem Scan tippt unten die Einstellung des Scanners ein, etwa 300.
scan-too-large = Nur Form und Verhältnisse: In der Datei stehen { $dpi } Punkte pro Zoll, aber dann wäre das Bild { $longer } cm lang. Tippt unten die Einstellung des Scanners ein, etwa 300.

## Die Seite: die Blätter benennen.
scan-found = { $count ->
    [0] Kein Blatt gefunden
    [one] 1 Blatt gefunden
   *[other] { $count } Blätter gefunden
}
scan-like-a-rubbing = Das sieht nach einem Rubbelbild aus. Wählt das Bild noch einmal aus und kreuzt „Es ist ein Rubbelbild“ an.
scan-no-leaf = Legt die Blätter auf ein einfarbiges Papier, mit Abstand voneinander und vom Rand, und scannt sie noch einmal.
scan-naming = Welche Art ist jedes Blatt? Tippt einen Namen ein und drückt die Eingabetaste, dann kommt das nächste. Ein leeres Feld oder ein ? lässt das Blatt weg.
scan-name = Blatt { $number }: Welche Art?
scan-other-dpi = Andere Punkte pro Zoll eintippen
scan-scale-take = Damit rechnen
scan-ruler = Im Bild ist ein Lineal
scan-ruler-how = Tippt zwei Striche des Lineals ein, die weit auseinander liegen, jeden als zwei Zahlen: Punkte nach rechts und nach unten. Das Bild muss genau von oben aufgenommen sein.
scan-ruler-one = Ein Strich
scan-ruler-other = Der andere Strich
scan-ruler-mm = Dazwischen, in mm
scan-odd-ruler = „{ $typed }“ sagt nicht, wo ein Lineal liegt und wie lang es ist.
scan-odd-ruler-remedy = Klickt auf zwei Striche des Lineals und tippt ein, wie viele mm dazwischen sind.
scan-found-at = Alle diese Blätter
scan-where = Wo wurden sie gefunden?
scan-when = Wann wurden sie gefunden?
scan-called = Nummer { $number } auf einem Scan
scan-here-already = { $count ->
    [one] 1 Blatt dieses Scans ist schon hier und wird nicht noch einmal übernommen.
   *[other] { $count } Blätter dieses Scans sind schon hier und werden nicht noch einmal übernommen.
}
scan-all-here = Alle diese Blätter sind schon hier.
scan-all-here-remedy = Wählt einen anderen Scan, oder ändert unter „Einzelne Blätter“, was an ihnen nicht stimmt.
scan-plant = Von welcher Pflanze ist es?
scan-part = Sonnenblatt, Schattenblatt oder von einem Stockausschlag?
scan-part-sun = Sonne
scan-part-shade = Schatten
scan-part-sucker = Stockausschlag
scan-draw = Nehmt die Zeichnung von Blatt { $number } statt des Fotos. Eine Zeichnung lässt sich gut in Grau kopieren.
scan-draw-instead = Die Zeichnung von Blatt { $number } statt der jetzigen nehmen.
scan-draw-beside = Hebt auch diese Zeichnung von Blatt { $number } auf. Das Foto bleibt vorn.
scan-more = Welche Pflanze, und weitere Maße
scan-look = Weiter: Was kommt in die Tabelle?
scan-another = Ein anderes Bild wählen
scan-picture-alt = { $file }, darin eingezeichnet: Umriss, Mittellinie, Breite und Nummer jedes Blatts

## Die Seite: ein Blatt berichtigen.
mend-open = Blatt { $number } berichtigen
mend-so-far = Berichtigt: { $mends }.
mend-undo = Das Letzte zurücknehmen
mend-is-a-leaf = { $count ->
    [one] Was ausgelassen wurde, ist ein Blatt
   *[other] Etwas Ausgelassenes ist ein Blatt
}
mend-letters = Was ausgelassen wurde, hat im Bild Buchstaben.
mend-take = { $letter } ist ein Blatt
mend-title = Blatt { $number }: Was stimmt nicht?
mend-how = Tippt die Nummer einer Stelle am Umriss ein, 1 bis { $count }.
mend-click = Oder klickt in ein Feld und dann auf seine Stelle im Bild.
mend-picture-alt = Blatt { $number }, groß, mit Nummern um den Umriss, im Uhrzeigersinn von oben
mend-base-elsewhere = Die Spreite beginnt woanders
mend-base-where = Wo der Stiel in die Spreite übergeht
mend-base-do = Dort beginnt sie
mend-tip-elsewhere = Die Spitze ist woanders
mend-tip-where = Wo die Spitze ist
mend-tip-do = Dort ist die Spitze
mend-touching = Es sind zwei Blätter, die sich berühren
mend-one-side = Eine Stelle am Rand, am einen Ende der Berührung
mend-other-side = Ebenso am anderen Ende
mend-two-do = Trennen
mend-part = Es ist ein Teil eines anderen Blatts
mend-part-which = Von welchem?
mend-part-do = Verbinden
mend-none = Es ist kein Blatt
mend-none-do = Weglassen
mend-back = Zurück zu den Blättern
mend-odd-place = „{ $typed }“ ist keine Stelle an diesem Blatt.
mend-odd-place-remedy = Tippt eine Nummer von 1 bis { $count } ein, oder klickt ins Bild.
mend-many = { $count } Dinge wurden in diesem Bild berichtigt, mehr gehen nicht.
mend-many-remedy = Übernehmt die Blätter, und scannt die anderen noch einmal.
mend-nothing-said = Von keinem Blatt wurde etwas gesagt.
mend-nothing-said-remedy = Wählt, was nicht stimmt, und drückt den Knopf dazu.

## Die Seite: was übernommen wird.
scan-look-title = Was in Funde und Tabelle kommt
scan-look-no-scale = Niemand weiß, wie groß ein Punkt ist. Deshalb kommt keine Länge in die Tabelle, nur Namen und Bilder.
scan-leaves-of-kind = { $count ->
    [one] 1 Blatt: { $numbers }.
   *[other] { $count } Blätter: { $numbers }.
}
scan-new-kind = Eine neue Art.
scan-known-kind = Diese Art gibt es schon.
scan-becomes-picture = Blatt { $number } wird ihr Bild.
scan-range = { $count ->
    [one] { $range } mm, von 1 Blatt.
   *[other] { $range } mm, von { $count } Blättern.
}
scan-joined = (Bisher gemessen: { $before }, jetzt: { $now }.)
scan-one-leaf = Ein Blatt ist keine Spanne: Messt mehr Blätter dieser Art.
scan-typed = Jemand hat „{ $typed }“ eingetippt, und das bleibt. Hakt das an, wenn stattdessen gelten soll, was gemessen wurde.
scan-others = { $who } sagt: { $text }. Wo sich das unterscheidet, zeigt die Tabelle beides und ihr entscheidet.
scan-does-not-fit = In der Spalte mit diesem Namen stehen keine Längen, deshalb kommt nichts hinein.
scan-looks-title = Wie die Blätter aussehen
scan-looks-why = Aus jedem Kreuz wird eine Spalte der Tabelle.
scan-looks-ticked = Angekreuzt sind die Fragen, bei denen sich diese Arten unterscheiden, und die, für die es schon eine Spalte gibt.
scan-looks-of-one = Angekreuzt ist, wonach die meisten Schlüssel bei Blättern fragen, und wofür es schon eine Spalte gibt.
scan-looks-compare = Vergleicht mit den echten Blättern: Das Programm kann sich irren, und ein Scan zeigt nicht, ob ein Blatt sticht.
scan-looks-before = (bisher: { $before })
scan-fill-in-table = Tragt es selbst in die Tabelle ein
scan-other-words = In der Spalte „{ $column }“ stehen andere Wörter, deshalb kommt nichts hinein.
scan-left-out-names = { $count ->
    [one] 1 Blatt hat keinen Namen und wird weggelassen.
   *[other] { $count } Blätter haben keinen Namen und werden weggelassen.
}
scan-take = In Funde und Tabelle übernehmen
scan-back = Zurück zu den Namen
scan-none-named = Noch hat kein Blatt einen Namen.
scan-none-named-remedy = Tippt bei mindestens einem Blatt die Art ein.
scan-moved = In einem anderen Fenster wurde etwas geändert: Das hier würde jetzt übernommen.
scan-moved-remedy = Seht es euch noch einmal an und übernehmt es dann.
scan-source = gemessen
scan-column-width = Breite der Blattspreite
scan-link = Blätter auf einem Scan messen
scan-or-link = Oder Blätter auf einem Scan messen und dort benennen
