### Was auf einem Bild gemessen wurde, und was nicht ging.

## Was gemessen wird.
measure-blade-length = Länge der Spreite
measure-blade-width = Breite der Spreite
measure-stalk-length = Länge des Stiels
measure-blade-area = Fläche der Spreite
measure-perimeter = Umfang der Spreite
measure-length-to-width = Länge zu Breite
measure-stalk-to-blade = Stiel zu Spreite
measure-solidity = Anteil der Spreite an ihrer Hülle
measure-roundness = Rundheit
measure-one = { $what } { $amount }
measure-amount = { $value } ± { $half }{ $unit }

## Bilder.
measure-looking = { $file } wird gemessen …
measure-looking-at = Gemessen sind { $done } von { $all } Bildern …
measure-leaves = { $count ->
    [0] kein Blatt
    [one] 1 Blatt
   *[other] { $count } Blätter
}
measure-picture = { $file }: { $leaves }.
measure-leaf = Blatt { $number }
measure-scale-said = Mit { $dpi } Punkten pro Zoll, wie angegeben.
measure-scale-of-ruler = Mit { $dpi } Punkten pro Zoll, nach dem Lineal im Bild.
measure-scale-of-file = Mit { $dpi } Punkten pro Zoll, wie es in der Datei steht.
measure-scale-doubtful = In der Datei stehen { $dpi } Punkte pro Zoll. Das schreiben viele Programme, wenn sie es nicht wissen. Legt ein Blatt an ein Lineal: Stimmt die Länge nicht, gebt mit --dpi die richtige Zahl an.
measure-scale-of-card = Auf dem Foto ist die Maßkarte: flach gelegt mit { $dpi } Punkten pro Zoll. Ihre Ringe liegen { $off } mm neben ihrem Platz.
measure-scale-of-strip = Auf dem Foto ist der Maßstreifen: { $dpi } Punkte pro Zoll. Seine Ringe liegen { $off } mm neben ihrem Platz. Er sagt wenig darüber, wie schräg die Kamera stand: Längen können um { $unsure } % falsch sein. Fotografiert gerade von oben, dann stimmen sie genauer.
measure-halved = Es ist so groß, dass vor dem Messen je zwei mal zwei Punkte zu einem zusammengefasst wurden.
measure-rubbed = Es ist ein Rubbelbild. Lag das Blatt mit den Adern nach oben, seht ihr seine Unterseite: Von oben gesehen sind am Blatt links und rechts vertauscht.
measure-like-a-rubbing = Das sieht nach einem Rubbelbild aus. Gebt --rubbing an.
measure-no-scale = Nur Form und Verhältnisse: In der Datei steht nicht, wie groß ein Punkt ist. Bei einem Scan gebt die Einstellung des Scanners an, etwa --dpi 300.
measure-no-scale-camera = Nur Form und Verhältnisse: Das Bild stammt aus einer Kamera, und die weiß nicht, wie weit weg das Blatt war. Druckt die Maßkarte, legt die Blätter darauf und fotografiert sie mit allen Ringen; oder scannt die Blätter.
measure-no-scale-too-large = Nur Form und Verhältnisse: In der Datei stehen { $dpi } Punkte pro Zoll, aber dann wäre das Bild { $longer } cm lang. Gebt die Einstellung des Scanners an, etwa --dpi 300.
measure-coarse = Diese Punkte sind zu groß, um den Rand eines Blattes gut zu sehen: Zähne können fehlen, und Längen sind weniger sicher. Scannt es noch einmal mit 300 Punkten pro Zoll.
measure-no-scale-not-square = Nur Form und Verhältnisse: Laut Datei sind die Punkte nicht quadratisch. Scannt es in beiden Richtungen mit derselben Einstellung.
measure-no-scale-rings = Nur Form und Verhältnisse: Auf dem Foto sind Ringe einer Maßkarte oder eines Maßstreifens, aber zu wenige, oder sie liegen nicht wie dort. Legt beiseite, was auf einem Ring liegt, streicht das Papier glatt und fotografiert noch einmal alles.

## Blätter.
measure-base-guessed = Es ist kein Stiel zu sehen. Welches Ende der Blattgrund ist, ist deshalb geraten: das untere.
measure-holes = Es hat Löcher oder sehr helle Stellen. Sie zählen zur Spreite.
measure-faint = Es hebt sich kaum vom Untergrund ab, der Rand ist deshalb unscharf. Legt es auf ein helleres oder dunkleres Blatt Papier.
measure-two-stalks = Es scheint zwei Stiele zu haben: Vielleicht sind es zwei Blätter, die sich berühren. Dann trennt sie.
measure-was-cut-apart = Es berührte ein anderes Blatt und wurde davon getrennt. Seht euch die Linie dazwischen an. Ist es doch nur ein einziges Blatt, fügt beide zusammen.
measure-cut-apart = { $leaves } berührten sich und wurden getrennt. Seht euch das Bild mit den Linien an. { $count ->
    [one] Ist es doch nur ein einziges Blatt, schreibt { $lines } in eine Datei und gebt sie mit --mends an.
   *[other] Ist es doch nur ein einziges Blatt, schreibt { $lines } in eine Datei, jedes in eine eigene Zeile, und gebt sie mit --mends an.
}
measure-part-of = „leaf { $other } is part of leaf { $one }“
measure-mended = Von Hand berichtigt.

## Die Form.
measure-unlobed = ungelappt
measure-lobes = { $count ->
    [one] 1 Lappen
   *[other] { $count } Lappen
}
measure-like-a-feather = { $what } wie eine Feder
measure-like-a-hand = { $what } wie eine Hand
measure-along-the-midrib = { $what } entlang der Mittelrippe
measure-from-one-place = { $what }, die von einem Punkt ausgehen
measure-deepest-gap = tiefste Bucht zu { $depth } ± { $half } % eingeschnitten
measure-leaflets = { $count ->
    [one] 1 Blättchen
   *[other] { $count } Blättchen
}
measure-leaflet-at-end = eines davon am Ende
measure-no-leaflet-at-end = keines davon am Ende
measure-edge-entire = Rand glatt
measure-edge-wavy = Rand gewellt
measure-edge-toothed = Rand gezähnt
measure-edge-double-toothed = Rand doppelt gezähnt
measure-edge-toothed-or-double = Rand gezähnt (ob auf den Zähnen kleinere sitzen, ist auf diesem Scan nicht zu sehen)
measure-edge-spiny = Rand stachelig (er kann stechen: Seht die Spitzen an und fasst sie nicht an)
measure-edge-unseen = Rand auf diesem Scan nicht genau genug zu sehen: Scannt mit 300 Punkten pro Zoll oder mehr
measure-edge-rubbed = Lappen, Blättchen und Rand lassen sich an einem Rubbelbild nicht erkennen: Seht am Blatt nach
measure-teeth = Zähne: { $left } links, { $right } rechts
measure-waves = Wellen: { $left } links, { $right } rechts
measure-teeth-of-leaflets = { $count ->
    [one] 1 Zahn an allen Blättchen zusammen
   *[other] { $count } Zähne an allen Blättchen zusammen
}
measure-per-cm = { $value } ± { $half } auf 1 cm
measure-base-heart-shaped = Blattgrund herzförmig
measure-base-cut-off = Blattgrund wie abgeschnitten
measure-base-rounded = Blattgrund gerundet
measure-base-rounded-or-wedge-shaped = Blattgrund gerundet oder keilförmig
measure-base-wedge-shaped = Blattgrund keilförmig
measure-base-drawn-in = Blattgrund in den Stiel verschmälert
measure-base-alike = Blattgrund auf beiden Seiten etwa gleich
measure-base-begins-alike = beide Seiten des Blattgrunds beginnen auf etwa gleicher Höhe
measure-base-as-wide = beide Seiten des Blattgrunds sind etwa gleich breit
measure-base-lower-left = Blattgrund reicht links weiter hinunter (um { $value } ± { $half } % der Länge der Blattspreite)
measure-base-lower-right = Blattgrund reicht rechts weiter hinunter (um { $value } ± { $half } % der Länge der Blattspreite)
measure-base-wider-left = Blattgrund links breiter (dort sind { $value } ± { $half } % der Breite)
measure-base-wider-right = Blattgrund rechts breiter (dort sind { $value } ± { $half } % der Breite)
measure-base-sides-unseen = ob der Blattgrund auf beiden Seiten gleich ist, lässt sich hier nicht sagen
measure-tip-drawn-out = Spitze lang ausgezogen
measure-tip-pointed-or-rounded = Spitze spitz oder gerundet
measure-tip-pointed = Spitze spitz
measure-tip-rounded = Spitze gerundet
measure-tip-notched = Spitze ausgerandet
measure-angle = { $what } ({ $value } ± { $half }°)
measure-widest = am breitesten nach { $value } ± { $half } % des Wegs zur Spitze
measure-veins = Seitennerven: { $left } links, { $right } rechts
measure-veins-opposite = Seitennerven paarweise
measure-veins-alternate = Seitennerven abwechselnd links und rechts
measure-veins-pairs-unseen = ob die Seitennerven paarweise abzweigen, ist hier nicht zu erkennen
measure-veins-unseen = Seitennerven auf diesem Scan nicht sicher zu erkennen

## Was kein Blatt ist.
measure-left-out = Nicht gemessen: { $what }.
measure-cut-off = { $count ->
    [one] 1 Ding nur zum Teil im Bild (legt es weiter nach innen und nehmt das Bild neu auf)
   *[other] { $count } Dinge nur zum Teil im Bild (legt sie weiter nach innen und nehmt das Bild neu auf)
}
measure-on-strip = { $count ->
    [one] 1 Ding auf dem Maßstreifen (legt es daneben und nehmt das Bild neu auf)
   *[other] { $count } Dinge auf dem Maßstreifen (legt sie daneben und nehmt das Bild neu auf)
}
measure-label = { $count ->
    [one] 1 Etikett oder Kärtchen
   *[other] { $count } Etiketten oder Kärtchen
}
measure-faint-things = { $count ->
    [one] 1 kaum sichtbares Ding
   *[other] { $count } kaum sichtbare Dinge
}
measure-speck = { $count ->
    [one] 1 Krümel oder etwas Schrift
   *[other] { $count } Krümel oder Schriftzeichen
}

## Bilder, in denen sich nichts messen lässt.
measure-not-read = { $file } ist kein Bild, das hier gelesen werden kann, oder es ist beschädigt.
measure-not-read-remedy = Speichert es als PNG oder JPEG. PDF-Dateien, wie viele Kopierer sie schreiben, werden nicht gelesen.
measure-too-large = { $file } ist zu groß.
measure-too-large-remedy = Scannt es mit 300 Punkten pro Zoll oder nur einen Teil davon: Höchstens { $most } Millionen Punkte werden gelesen.
measure-nothing-there = In { $file } hebt sich nichts vom Untergrund ab.
measure-nothing-there-remedy = Legt die Blätter auf ein einfarbiges Papier, das viel heller oder dunkler ist als sie.

## Berichtigungen: was jemand von Blättern sagt, die anders gefunden wurden.
mend-no-leaf = Blatt { $leaf } ist kein Blatt
mend-a-leaf = was ausgelassen wurde, ist ein Blatt
mend-two = Blatt { $leaf } ist in zwei geteilt
mend-part-of = Blatt { $part } ist ein Teil von Blatt { $leaf }
mend-base = die Spreite von Blatt { $leaf } beginnt woanders
mend-tip = die Spitze von Blatt { $leaf } ist woanders
mend-length = im Bild ist ein Lineal von { $mm } mm
mend-no-such-leaf = Ein Blatt { $leaf } gibt es nicht, oder nicht mehr.
mend-no-such-leaf-remedy = Seht nach den Nummern im Bild mit den Linien.
mend-nothing-there = An dieser Stelle wurde nichts ausgelassen.
mend-nothing-there-remedy = Wählt eine Stelle innerhalb dessen, was ein Blatt ist. Was ein anderes Blatt berührt, muss davon getrennt werden.
mend-not-whole = Im Bild ist nicht alles davon zu sehen. Wie groß es ist, lässt sich deshalb nicht sagen.
mend-not-whole-remedy = Legt es weiter nach innen oder neben den Maßstreifen und nehmt das Bild neu auf.
mend-no-length = Das kann nicht sein: Die Stellen liegen zu nah beieinander, oder die Länge passt nicht zu ihnen.
mend-no-length-remedy = Wählt zwei Stellen eines Lineals, die weit auseinander liegen, und tippt ein, wie viele mm dazwischen sind.
mend-not-across = Die Linie geht nicht ganz durch Blatt { $leaf }.
mend-not-across-remedy = Wählt zwei Stellen auf seinem Rand, je eine an beiden Enden der Stelle, wo sich die Blätter berühren.
mend-part-of-itself = Blatt { $leaf } ist kein Teil von sich selbst.
mend-part-of-itself-remedy = Wählt die Nummer eines anderen Blatts.
mend-far-off = Diese Stelle ist weit weg von Blatt { $leaf }.
mend-far-off-remedy = Wählt eine Stelle auf dem Blatt.
mend-in-line = { $file }, Zeile { $line }, „{ $text }“:
mend-line = { $file }, Zeile { $line }: „{ $text }“ ist keine bekannte Berichtigung.
mend-line-remedy = Schreibt eine Zeile wie „leaf 3 is no leaf“, „at 812 440 is a leaf“, „leaf 5 is two leaves between 120 40 and 180 300“, „leaf 7 is part of leaf 6“, „leaf 4 begins at 120 340“, „leaf 4 ends at 100 20“ oder „from 40 60 to 1221 60 is 100 mm“.
